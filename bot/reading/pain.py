"""Pain: where, which side, how much, when.

A place of the body becomes an entry where a score, a word of pain or a warning sign belongs to it; the name alone
("hand on the shoulder") does not. Scores outside 0-10 are asked about.
"""

from __future__ import annotations

import itertools
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import NamedTuple, cast

from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Claim, Message
from bot.reading.phrases import longest, sentence_bounds
from bot.reading.reading import Ask, PainRead
from bot.reading.red_flags import Cues, Sign, signs_in, views
from bot.reading.tokens import Token
from planner.facts import Moment, Side

JOINTS = frozenset(
    "elbow elbow_inner elbow_outer wrist shoulder knee hip ankle neck lower_back upper_back biceps".split()
)
WORST = 10
REACH = 9  # tokens between a place and its bare score
SOFT_REACH = 4  # tokens between a place and a word like "stiff"


def _entry(site: str | None, side: str | None, score: float | None, when: str | None) -> PainRead:
    """An entry from the words' own names, which are the contract's."""
    return PainRead(site, cast(Side | None, side), score, cast(Moment | None, when))


class Score(NamedTuple):
    start: int
    end: int
    value: float
    scaled: bool  # "3/10", "3 out of 10"


@dataclass
class Place:
    """Places named together ("hip and ankle"), with all that is said of them."""

    start: int
    end: int
    sites: list[Hit]
    sides: list[str | None] = field(default_factory=list)
    scores: list[tuple[Score, str | None, str | None]] = field(default_factory=list)  # score, its own side, moment
    hurts: bool = False
    free: bool = False
    signs: list[Sign] = field(default_factory=list)
    moment: str | None = None

    @property
    def told(self) -> bool:
        # "no chest pain" answers a question about a sign; it is no score
        return bool(self.scores or self.hurts or self.signs or (self.free and self.sites[0].name != "chest"))


@dataclass
class _Words:
    """What the words of a message say of the body, by place."""

    tokens: Sequence[Token]
    sites: list[Hit]
    sides: dict[int, str]
    moments: list[Hit]
    hurts: list[Hit]
    none: list[Hit]
    pain_words: list[Hit]
    scales: list[Hit]
    filler: set[int]
    rep_like: set[int]
    session: set[int]
    limbs: set[int]
    woken: set[int]  # before the hour that pain woke one at
    parts: dict[int, str]  # inner, outer


def _words(message: Message) -> _Words | None:
    tokens = message.tokens
    body = message.hits("body")
    places = longest(hit for hit in message.hits("body") if hit.table in ("site", "not_site"))
    pain = [hit for hit in body if hit.table == "pain"]
    none = longest([hit for hit in pain if hit.name == "none"])
    free = {at for hit in none for at in range(hit.start, hit.end)}
    scales = [hit for hit in pain if hit.name == "scale"]
    sites = [hit for hit in places if hit.table == "site"]
    sides: dict[int, str] = {}
    barred = {at for hit in (hit for hit in body if hit.table == "not_side") for at in range(hit.start, hit.end)}
    inside = {at for hit in sites for at in range(hit.start, hit.end)}
    for hit in longest(hit for hit in body if hit.table == "side"):
        behind_score = any(scale.end == hit.start for scale in scales)
        if hit.start in inside or behind_score or not barred & set(range(hit.start, hit.end)):
            sides[hit.start] = hit.name
    fill = {
        at for hit in pain if hit.name in ("more", "hurt", "soft", "word", "none") for at in range(hit.start, hit.end)
    }
    effort = [hit for hit in body if hit.table == "session_rpe"]
    return _Words(
        tokens,
        sites,
        sides,
        longest(hit for hit in body if hit.table == "when"),
        [hit for hit in pain if hit.name in ("hurt", "soft") and hit.start not in free],
        none,
        [hit for hit in pain if hit.name == "word" and hit.start not in free],
        scales,
        fill,
        {hit.start for hit in (hit for hit in body if hit.table == "unit") if hit.name == "rep_like"},
        {at for hit in effort if hit.name in ("cue", "effort", "whole") for at in range(hit.start, hit.end)},
        {hit.start for hit in pain if hit.name == "limb"},
        {hit.end - 1 for hit in pain if hit.name == "woken"},
        {hit.start: hit.name for hit in pain if hit.name in ("inner", "outer")},
    )


def _scores(words: _Words, bounds: tuple[int, int]) -> list[Score]:
    """The numbers of a sentence that can be scores."""
    tokens = words.tokens
    scaled = {hit.start: hit.end for hit in words.scales}
    site_starts = {hit.start for hit in words.sites}
    out: list[Score] = []
    at = bounds[0]
    while at < bounds[1]:
        token = tokens[at]
        if (
            token.value is None
            or token.kind == "clock"
            or (at and tokens[at - 1].kind == "word" and not token.space and at not in scaled)  # the "A2" pulley
            or (at - 1 in words.woken and at not in scaled)
            or (token.spelled and token.value == 1 and at - 1 in words.sides and at not in scaled)  # "the left one"
            or (token.spelled and token.value == 1 and at not in scaled and not _ends(tokens, at + 1, words))
        ):
            at += 1
            continue
        if at + 1 in site_starts and at not in scaled:
            at += 1  # "two fingers" counts them
            continue
        end, value, is_scaled = at + 1, token.value, False
        if at in scaled:
            end, is_scaled = scaled[at], True
        elif at + 2 < bounds[1] and tokens[at + 1].text in "-~" and tokens[at + 2].value is not None:
            upper = at + 2
            value = max(value, tokens[upper].value or 0)
            end = upper + 1
            if upper in scaled:
                end, is_scaled = scaled[upper], True
        elif (
            at + 2 < bounds[1]
            and tokens[at + 2].value is not None
            and tokens[at + 1].text in little("range") | little("or")
        ):
            upper = at + 2
            if upper in scaled or tokens[upper].value == value + 1:
                value = max(value, tokens[upper].value or 0)
                end = upper + 1
                if upper in scaled:
                    end, is_scaled = scaled[upper], True
        before = tokens[at - 1] if at > bounds[0] else None
        after = tokens[end] if end < len(tokens) else None
        row = (before is not None and before.text in ("/", "x", "@", "+")) or (
            after is not None and after.text in ("/", "x", "@", "+") and not after.space
        )
        of_session = any(a in words.session for a in range(max(bounds[0], at - 3), min(at, len(tokens))))
        if not row and not of_session and (is_scaled or _bare(words, at, end, value)):
            out.append(Score(at, end, value, is_scaled))
        at = end
    return out


def _ends(tokens: Sequence[Token], at: int, words: _Words) -> bool:
    return at >= len(tokens) or tokens[at].kind != "word" or any(hit.start == at for hit in words.moments)


def _bare(words: _Words, at: int, end: int, value: float) -> bool:
    """Whether a number without a scale may be a score: no unit behind it, whole or half."""
    tokens = words.tokens
    if tokens[at].comma and value * 2 % 1:
        return False
    if value * 2 % 1 or value > 100:
        return False
    if end < len(tokens):
        after = tokens[end]
        if end in words.rep_like and not (end in words.sides or any(hit.start == end for hit in words.moments)):
            return False
        if after.kind == "word" and not after.space and after.text not in ("ish",):
            return False
    return True


def _groups(words: _Words, bounds: tuple[int, int]) -> list[Place]:
    """The places of a sentence; those joined by "and" without anything else between are one."""
    tokens = words.tokens
    places: list[Place] = []
    for site in words.sites:
        if not bounds[0] <= site.start < bounds[1]:
            continue
        if places:
            between = range(places[-1].end, site.start)
            joins = [a for a in between if a not in words.sides]
            if (between and all(tokens[a].text in little("between_places") for a in joins) and joins) and not any(
                hit.start in between for hit in (*words.hurts, *words.none)
            ):
                places[-1].sites.append(site)
                places[-1].end = site.end
                continue
            if not between and site.name in ("hand", "other"):
                continue
        places.append(Place(site.start, site.end, [site]))
    return places


def _side_of(words: _Words, place: Place, index: int, low: int, high: int) -> tuple[str | None, int, int]:
    """The side of one site of a place, and the tokens that it and its side take."""
    site = place.sites[index]
    start, end = site.start, site.end
    for at in range(site.start, site.end):
        if at in words.sides:
            return words.sides[at], start, end
    for at in range(site.start - 1, max(low, site.start - 5) - 1, -1):
        if at in words.sides:
            skipped = words.tokens[at + 1 : site.start]
            if all(t.kind == "word" for t in skipped) and len(skipped) <= 3:
                return words.sides[at], at, end
        if words.tokens[at].kind != "word":
            break
    for at in range(site.end, high):
        if at in words.sides:
            return words.sides[at], start, end
    return None, start, end


def _moment(words: _Words, start: int, end: int) -> str | None:
    for hit in words.moments:
        if start <= hit.start < end:
            return hit.name
    return None


def find_pain(message: Message) -> list[Claim]:
    """Claims `pain`, one an entry, and `noise` for the words that belong to them elsewhere in the message."""
    claims = _pain_of(message)
    if not any(claim.kind == "pain" for claim in claims):
        for view in views(message)[1:]:  # a sign said in another language, at a place of that language
            claims = [claim for claim in _pain_of(view) if claim.kind == "pain" and claim.value.score is None]
            if claims:
                break
    sided = {c.value.site for c in claims if c.kind == "pain" and c.value.side is not None and c.value.score is None}
    # "my grip went, can't hold a cup in my left hand" is one place
    return [
        claim
        for claim in claims
        if claim.kind != "pain"
        or claim.value != PainRead(claim.value.site, None, None, None)
        or claim.value.site not in sided
    ]


def _pain_of(message: Message) -> list[Claim]:
    words = _words(message)
    if words is None or not (
        words.sites or words.none or words.pain_words or words.scales or len(message.tokens) <= 24
    ):
        return []
    signs = [sign for sign in signs_in(message) if not sign.past]
    cues = Cues(message) if words.sites else None
    told: list[Place] = []
    mentioned: list[Place] = []
    loose: list[tuple[Score, str | None]] = []
    without: list[Hit] = []
    for bounds in sentence_bounds(message.tokens):
        places = _groups(words, bounds)
        scores = _scores(words, bounds)
        if places:
            left = _attach(words, places, scores, bounds, signs, cues)
            mentioned.extend(places)
            told.extend(place for place in places if place.told)
            loose.extend((score, _near_moment(words, score, bounds)) for score in left if score.scaled)
            continue
        if scores and told and told[-1].scores and len(told[-1].scores) == 1 and _only_small(words, bounds):
            told[-1].scores = [(scores[-1], None, None)]  # "elbow 4... hm more like a 3"
            continue
        pained = any(bounds[0] <= hit.start < bounds[1] for hit in words.pain_words)
        for score in scores:
            if score.scaled or (pained and _by_pain_word(words, score, bounds)):
                loose.append((score, _near_moment(words, score, bounds)))
        if not any(bounds[0] <= score.start < bounds[1] for score, _ in loose):
            without.extend(hit for hit in words.none if bounds[0] <= hit.start < bounds[1])
    claims = [claim for place in told for claim in _claims(message, words, place)]
    if not claims and without and sum(1 for t in message.tokens if t.value is not None) > 1:
        claims = _answer(message, words)
        if claims:
            return claims
    claims = _loose(message, words, claims, told, mentioned, loose, without)
    return claims or _answer(message, words)


def _only_small(words: _Words, bounds: tuple[int, int]) -> bool:
    return all(
        at in words.filler or words.tokens[at].value is not None or words.tokens[at].kind == "sym"
        for at in range(*bounds)
    )


def _attach(
    words: _Words,
    places: list[Place],
    scores: list[Score],
    bounds: tuple[int, int],
    signs: Sequence[Sign],
    cues: Cues | None,
) -> list[Score]:
    """Give every score, word of pain and sign of a sentence to a place; the scores that found none."""
    tokens = words.tokens
    edges = [bounds[0], *(place.start for place in places[1:]), bounds[1]]
    leading = _leading(words, bounds[0], places[0].start)
    for number, place in enumerate(places):
        low = places[number - 1].end if number else bounds[0]
        high = edges[number + 1]
        if number + 1 < len(places):
            # the side just before the next place is that one's
            at = high - 1
            while (
                at >= place.end
                and tokens[at].kind == "word"
                and (at in words.sides or tokens[at].text in little("before_place"))
            ):
                at -= 1
            high = at + 1
        place.sides = []
        for index in range(len(place.sites)):
            until = high if index + 1 == len(place.sites) else place.sites[index + 1].start
            if index + 1 < len(place.sites):
                while until > place.sites[index].end and until - 1 in words.sides:
                    until -= 1  # "chest and left arm": the arm's
            side, start, _ = _side_of(words, place, index, low, min(until, _score_end(scores, place, until)))
            place.sides.append(side)
            place.start = min(place.start, start)
        place.moment = _moment(words, place.end, high) or leading
    for place, after in zip(places, [*places[1:], None], strict=True):
        until = after.start if after is not None else bounds[1]
        part = next((name for at, name in words.parts.items() if place.end <= at < until), None)
        if part is not None and place.sites[0].name == "elbow":
            place.sites = [
                site._replace(name=f"elbow_{part}") if site.name == "elbow" else site for site in place.sites
            ]
    left: list[Score] = []
    signed = frozenset(at for sign in signs for at in range(sign.start, sign.end))
    for score in scores:
        owner = _owner(words, places, score, signed)
        if owner is None:
            left.append(score)
            continue
        own = None
        if score.start >= owner.end:
            sided = [
                a
                for a in words.sides
                if owner.end <= a < score.start and not any(s.start < a for s, _, _ in owner.scores if s.start > a)
            ]
            last = max((s.end for s, _, _ in owner.scores), default=None)
            if last is not None:
                own = next((words.sides[a] for a in sorted(sided, reverse=True) if a >= last), None)
        if (
            not score.scaled
            and owner.sites[0].start in words.limbs
            and not any(bounds[0] <= hit.start < bounds[1] for hit in (*words.hurts, *words.pain_words))
        ):
            continue  # "left arm 2" are repetitions
        owner.scores.append((score, own, _near_moment(words, score, bounds)))
    moments = [_near_moment(words, score, bounds) for score in left]
    alone = len(left) > 1 and len(places) == 1 and not places[0].scores
    if alone and None not in moments and len(set(moments)) == len(moments):  # "0 during, 2 after, elbow left"
        places[0].scores = [(score, None, when) for score, when in zip(left, moments, strict=True)]
        left = []
    for hit in (*words.hurts, *words.none):
        if not bounds[0] <= hit.start < bounds[1]:
            continue
        near = _nearest(words, places, hit.start, hit.end)
        if near is None or (cues is not None and cues.of_others(near.start, bounds)):
            continue
        if hit.name == "none":
            near.free = True
        elif hit.name == "hurt":
            if not (cues is not None and _denied_pain(cues, hit, bounds)):
                near.hurts = True
        elif near.sites[0].name in JOINTS and abs(hit.start - near.end) <= SOFT_REACH:
            near.hurts = near.hurts or hit.start >= near.end
    for sign in signs:
        if bounds[0] <= sign.start < bounds[1] and sign.name not in ("fever", "dizziness", "breathless"):
            near = _nearest(words, places, sign.start, sign.end)
            if near is not None:
                near.signs.append(sign)
    for place, after in itertools.pairwise(places):
        # "two fingers go numb, right hand": the side comes with the whole hand or arm
        joined = any(token.text in little("and") for token in tokens[place.end : after.start])
        if (
            place.told
            and not joined
            and not after.told
            and place.sides == [None]
            and after.sites[0].name in ("hand", "other")
        ):
            place.sides = after.sides[:1]
    return left


def _leading(words: _Words, start: int, end: int) -> str | None:
    """The moment that a sentence begins with; "after 3 sets" is none of the pain's."""
    for hit in words.moments:
        if start <= hit.start < end:
            counted = any(token.value is not None for token in words.tokens[hit.end : hit.end + 2])
            return None if hit.name == "after" and counted else hit.name
    return None


def _denied_pain(cues: Cues, hit: Hit, bounds: tuple[int, int]) -> bool:
    before = range(max(bounds[0], hit.start - 2), hit.start)
    return any(cues.covers("deny", at) and not cues.covers("allow", at) for at in before)


def _score_end(scores: list[Score], place: Place, until: int) -> int:
    """A side behind a place's second score is of another one."""
    after = [score for score in scores if score.start >= place.end]
    return after[1].start if len(after) > 1 and after[1].start < until else until


def _near_moment(words: _Words, score: Score, bounds: tuple[int, int]) -> str | None:
    """The moment said right before or behind a score, up to the next comma or number."""
    tokens = words.tokens
    for hit in words.moments:
        if hit.start >= score.end and hit.start < bounds[1]:
            between = tokens[score.end : hit.start]
            if len(between) <= 5 and not any(t.text == "," or t.value is not None for t in between):
                return hit.name
        if hit.end <= score.start and hit.start >= bounds[0]:
            between = tokens[hit.end : score.start]
            if len(between) <= 2 and not any(t.text == "," or t.value is not None for t in between):
                return hit.name
    return None


def _owner(words: _Words, places: list[Place], score: Score, signed: frozenset[int]) -> Place | None:
    """The place that a score belongs to; the words of a sign (`signed`) may stand between: "elbow swollen, 3"."""
    before = [place for place in places if place.end <= score.start]
    after = [place for place in places if place.start >= score.end]
    if before:
        place = before[-1]
        between = range(place.end, score.start)
        if score.scaled and not (place.scores and after and after[0].start - score.end <= 4):
            return place
        earlier = {a for s, _, _ in place.scores for a in range(s.start, s.end)}
        loose = [
            a
            for a in between
            if a not in earlier
            and a not in signed
            and not (a in words.filler or a in words.sides or words.tokens[a].text in ",:()=~-" or _in_moment(words, a))
        ]
        later = any(s.end <= score.start for s, _, _ in place.scores)
        if not loose and (len(between) <= REACH or later):
            return place
        if any(words.tokens[a].start and a in {h.start for h in words.hurts} for a in between) and len(loose) <= 1:
            return place
    if after:
        place = after[0]
        between = range(score.end, place.start)
        link = [a for a in between if a not in words.sides and words.tokens[a].text not in little("before_site")]
        if not link and (
            score.scaled or any(h.end <= place.start and h.start >= score.start - 2 for h in words.pain_words)
        ):
            return place
    return None


def _in_moment(words: _Words, at: int) -> bool:
    return any(hit.start <= at < hit.end for hit in words.moments)


def _nearest(words: _Words, places: list[Place], start: int, end: int) -> Place | None:
    """The place that words at [start, end) speak of: the one within, else the one before, else the one after."""
    for place in places:
        if place.start < end and start < place.end:
            return place
    before = [place for place in places if place.end <= start]
    after = [place for place in places if place.start >= end]
    if before and after:
        gap = words.tokens[before[-1].end : start]
        if any(t.text in little("then") for t in gap) and after[0].start - end <= 4:
            return after[0]
        return before[-1]
    return before[-1] if before else (after[0] if after else None)


def _by_pain_word(words: _Words, score: Score, bounds: tuple[int, int]) -> bool:
    """Whether a bare number stands beside a word of pain: "pain 3", "zero pain", "Schmerz bei 2"."""
    for hit in words.pain_words:
        if hit.end <= score.start and all(
            a in words.filler or _in_moment(words, a) or words.tokens[a].text in ":=,-"
            for a in range(hit.end, score.start)
        ):
            return True
        if score.end == hit.start:
            return True
    return any(other.end <= score.start and bounds[0] <= other.start for other in words.pain_words) and all(
        a in words.filler or _in_moment(words, a) or words.tokens[a].text in ",;:" or words.tokens[a].value is not None
        for a in range(bounds[0], bounds[1])
    )


def _entries(words: _Words, place: Place) -> list[tuple[PainRead, Score | None, Ask | None]]:
    scores = place.scores
    if len(scores) > 1:
        moments = [moment for _, _, moment in scores]
        sided = [side for _, side, _ in scores]
        both = scores[0][0].end + 1 == scores[1][0].start and words.tokens[scores[0][0].end].text in little(
            "both_scores"
        )
        if len(scores) == 2 and both and place.sides == [None]:
            scores = [(scores[0][0], "left", moments[0]), (scores[1][0], "right", moments[1])]
        elif not any(sided) and not (None not in moments and len(set(moments)) == len(moments)):
            scores = scores[-1:]
    out: list[tuple[PainRead, Score | None, Ask | None]] = []
    for site, side in zip(place.sites, place.sides, strict=True):
        whole = side if side is not None else _common(place.sides)
        rows: list[tuple[Score | None, str | None, str | None]] = [*scores] or [(None, None, None)]
        for score, own, moment in rows:
            value: float | None = None if score is None else score.value
            if score is None and place.free and not place.hurts:
                value = 0.0
            ask = None
            if score is not None and score.value > WORST:
                value = None
                ask = Ask("score", "")
            when = (moment if len(place.scores) > 1 and moment else None) or place.moment or moment
            if any(sign.name == "night_pain" for sign in place.signs):
                when = "rest"
            for one in ("left", "right") if (own or whole) == "both" else (own or whole,):
                out.append((_entry(site.name, one, value, when), score, ask))
    return out


def _common(sides: Sequence[str | None]) -> str | None:
    return sides[0] if sides and all(side == sides[0] for side in sides) else None


def _claims(message: Message, words: _Words, place: Place) -> list[Claim]:
    claims: list[Claim] = []
    used: set[int] = set()
    for entry, score, ask in _entries(words, place):
        start, end = place.start, place.end
        if score is not None and ask is not None:
            ask = Ask("score", message.span(score.start, score.end))
        if score is not None and abs(score.start - place.end) <= REACH + 3 and score.start >= place.end:
            end = score.end
        if used & set(range(start, end)):
            start, end = (score.start, score.end) if score is not None and score.start not in used else (0, 0)
        used |= set(range(start, end))
        claims.append(Claim(start, end, "pain", entry, ask))
    for score, _, _ in place.scores:
        if score.start not in used:
            used |= set(range(score.start, score.end))
            claims.append(Claim(score.start, score.end, "noise", None))
    for hit in words.moments:
        if (
            any(words.tokens[a].value is not None for a in range(hit.start, hit.end))
            and not used & set(range(hit.start, hit.end))
            and place.end <= hit.start <= place.end + REACH
        ):
            used |= set(range(hit.start, hit.end))
            claims.append(Claim(hit.start, hit.end, "noise", None))
    return claims


def _loose(
    message: Message,
    words: _Words,
    claims: list[Claim],
    told: list[Place],
    mentioned: list[Place],
    loose: list[tuple[Score, str | None]],
    without: list[Hit],
) -> list[Claim]:
    """Scores and "no pain" without a place of their own: of the place named before, or of none."""
    open_entries = [
        i for i, claim in enumerate(claims) if claim.kind == "pain" and claim.value.score is None and claim.ask is None
    ]
    pained = bool(words.pain_words) or not message.tokens
    for score, moment in loose:
        ask = Ask("score", message.span(score.start, score.end)) if score.value > WORST else None
        value = None if ask else score.value
        if open_entries:
            for i in open_entries:
                old = claims[i].value
                claims[i] = Claim(
                    claims[i].start, claims[i].end, "pain", _entry(old.site, old.side, value, old.when or moment), ask
                )
            claims.append(Claim(score.start, score.end, "noise", None))
            open_entries = []
        elif not told and mentioned and score.scaled:
            place = next((p for p in reversed(mentioned) if p.start < score.start), mentioned[-1])
            side = place.sides[0] if place.sides and place.sides[0] != "both" else None
            claims.append(
                Claim(
                    score.start,
                    score.end,
                    "pain",
                    _entry(place.sites[0].name, side, value, moment or place.moment),
                    ask,
                )
            )
        elif pained or _only_scores(message, words):
            claims.append(Claim(score.start, score.end, "pain", _entry(None, None, value, moment), ask))
    for hit in without:
        if open_entries:
            for i in open_entries:
                old = claims[i].value
                claims[i] = Claim(
                    claims[i].start, claims[i].end, "pain", _entry(old.site, old.side, 0.0, old.when), None
                )
            open_entries = []
        elif not any(claim.kind == "pain" for claim in claims):
            moment = _moment(words, hit.start - 1, hit.end + 2)
            claims.append(Claim(hit.start, hit.end, "pain", _entry(None, None, 0.0, moment)))
    return claims


def _only_scores(message: Message, words: _Words) -> bool:
    """Whether a message is nothing but scores, moments and small words: an answer to "how is the elbow?"."""
    return all(
        token.value is not None
        or token.kind in ("sym", "nl")
        or at in words.filler
        or _in_moment(words, at)
        or any(hit.start <= at < hit.end for hit in words.scales)
        for at, token in enumerate(message.tokens)
    )


def _answer(message: Message, words: _Words) -> list[Claim]:
    """A bare answer: "3", "2-3", "3 during, 1 after"."""
    tokens = message.tokens
    if any(t.text in ("x", "@", "+", "#", "%") for t in tokens) or not _only_scores(message, words):
        return []
    scores = [score for bounds in sentence_bounds(tokens) for score in _scores(words, bounds)]
    moments = [_near_moment(words, score, (0, len(tokens))) for score in scores]
    numbers = sum(1 for t in tokens if t.value is not None)
    if not scores or any(score.value > WORST for score in scores):
        return []
    inside = sum(1 for score in scores for t in tokens[score.start : score.end] if t.value is not None)
    if numbers != inside:
        return []
    if len(scores) == 1:
        return [Claim(scores[0].start, scores[0].end, "pain", _entry(None, None, scores[0].value, moments[0]))]
    if None in moments or len(set(moments)) != len(moments):
        return []
    return [
        Claim(score.start, score.end, "pain", _entry(None, None, score.value, moment))
        for score, moment in zip(scores, moments, strict=True)
    ]
