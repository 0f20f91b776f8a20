"""Places with all that was said of them, as entries of pain."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from operator import attrgetter
from typing import cast

from bot.reading.little import little
from bot.reading.message import Claim, Message
from bot.reading.pain.belonging import REACH
from bot.reading.pain.places import Place
from bot.reading.pain.scores import Score
from bot.reading.pain.words import BodyWords
from bot.reading.reading import Ask, PainRead
from planner.facts import Moment, Side

WORST = 10


def entry_of(site: str | None, side: str | None, score: float | None, when: str | None) -> PainRead:
    """An entry from the words' own names, which are the contract's."""
    return PainRead(site, cast(Side | None, side), score, cast(Moment | None, when))


def _entries(words: BodyWords, place: Place) -> list[tuple[PainRead, Score | None, Ask | None]]:
    scores = place.scores
    if len(scores) > 1:
        moments = [moment for _, _, moment in scores]
        behind = scores[0][0].start >= place.start
        if len(scores) > 2 and behind and moments[0] is None and place.leading is not None:
            # "this morning the elbow was 1, during training 3, now 0"
            moments[0] = place.leading
            scores = [(*scores[0][:2], place.leading), *scores[1:]]
        sided = [side for _, side, _ in scores]
        both = scores[0][0].end + 1 == scores[1][0].start and words.tokens[scores[0][0].end].text in little(
            "both_scores"
        )
        if len(scores) == 2 and both and not any(sided) and place.sides in ([None], ["both"]):
            scores = [(scores[0][0], "left", moments[0]), (scores[1][0], "right", moments[1])]
        elif place.sides == ["both"] and sorted(map(str, sided)) in (["None", "left"], ["None", "right"]):
            # "both elbows ache, left 2 right 3": the words for one side stand in the place's own
            other = "left" if "right" in sided else "right"
            scores = [(score, side or other, moment) for score, side, moment in scores]
        elif not any(sided) and not _parted(words, place, moments):
            same = len(set(moments)) == 1 and moments[0] is not None
            # "2 with chins, 4 with dips": of one moment the worst; else one value that changed
            scores = [max(scores, key=lambda row: row[0].value)] if same else scores[-1:]
    out: list[tuple[PainRead, Score | None, Ask | None]] = []
    for site, side in zip(place.sites, place.sides, strict=True):
        whole = side if side is not None else _common(place.sides)
        rows: list[tuple[Score | None, str | None, str | None]] = [*scores] or [(None, None, None)]
        if place.hurts and len(scores) == 1 and scores[0][0].value == 0 and scores[0][1] not in (None, side):
            rows = [(None, None, place.moment), *rows]  # "left hurts in archers, right nothing"
        for score, own, moment in rows:
            value: float | None = None if score is None else score.value
            if score is None and place.free and not place.hurts:
                value = 0.0
            ask = None
            if score is not None and (score.value > WORST or score.doubt):
                value = None
                ask = Ask("score", "")
            several = len(rows) > 1 and not any(side for _, side, _ in rows)
            apart = own is not None and any(told is not None for _, _, told in rows)  # "left 2 after, right nothing"
            when = moment if several or apart else moment or place.moment
            if any(sign.name == "night_pain" for sign in place.signs):
                when = "rest"
            for one in ("left", "right") if (own or whole) == "both" else (own or whole,):
                out.append((entry_of(site.name, one, value, when), score, ask))
    return out


def _parted(words: BodyWords, place: Place, moments: Sequence[str | None]) -> bool:
    """Whether several scores are of several moments; "4 last week, 2 after training" is a change of one."""
    if len(set(moments)) != len(moments):
        return False
    first = place.scores[0][0]
    if None not in moments or all(
        moment is not None or score.start - 1 in words.heads
        for moment, (score, _, _) in zip(moments, place.scores, strict=True)
    ):
        return True
    if first.end in words.earlier:
        # "elbow 4 before, 2 after" has changed; "2 before, 3 during, 1 after" tells of a session
        return len(moments) > 2 and None not in moments[1:]
    last = place.scores[-1][0].start
    if moments.index(None) == len(moments) - 1:
        end = place.scores[-1][0].end
        if words.now & {last - 1, end} or (len(moments) > 2 and last - 2 in words.now):
            return True
    return moments[0] is None and all(
        at in words.sides or words.tokens[at].kind == "sym" for at in range(place.end, first.start)
    )


def _common(sides: Sequence[str | None]) -> str | None:
    return sides[0] if sides and all(side == sides[0] for side in sides) else None


def _reaches(words: BodyWords, place: Place, score: Score) -> bool:
    """Whether a score stands behind its place with no other place between, which then claims it."""
    if score.start < place.end:
        return False
    behind = bisect_left(words.sites, place.end, key=attrgetter("start"))
    return behind == len(words.sites) or words.sites[behind].start >= score.start


def claims_of(message: Message, words: BodyWords, place: Place) -> list[Claim]:
    claims: list[Claim] = []
    used: set[int] = set()
    for entry, score, ask in _entries(words, place):
        start, end = place.start, place.end
        if score is not None and ask is not None:
            ask = Ask("score", message.span(score.start, score.end))
        if score is not None and abs(score.start - place.end) <= REACH + 3 and _reaches(words, place, score):
            end = score.end
        if used & set(range(start, end)):
            start, end = (score.start, score.end) if score is not None and score.start not in used else (0, 0)
        used |= set(range(start, end))
        claims.append(Claim(start, end, "pain", entry, ask))
    for score, _, _ in place.scores:
        if score.start not in used and (score.end <= place.start or _reaches(words, place, score)):
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
