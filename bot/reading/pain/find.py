"""All the pain that a message tells of.

A place of the body becomes an entry where a score, a word of pain or a warning sign belongs to it; the name alone
("hand on the shoulder") does not. Scores outside 0-10 are asked about.
"""

from __future__ import annotations

from bot.reading.body import find_body
from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Claim, Message
from bot.reading.pain.apart import describe, hand_over, mine_later, only_small, other_side_later, scored_later
from bot.reading.pain.belonging import JOINTS, attach
from bot.reading.pain.entries import WORST, claims_of
from bot.reading.pain.placeless import bare_answer, may_be_bare, placeless, unmeasured
from bot.reading.pain.places import Place, places_in
from bot.reading.pain.scores import Score, by_pain_word, near_moment, scores_in
from bot.reading.pain.words import BodyWords, body_words
from bot.reading.reading import PainRead
from bot.reading.red_flags import Cues, signs_in, views
from bot.reading.tokens import Token

BRIEF = 24  # tokens of a message that may be nothing but a score
TELLING = frozenset({"none", "word", "scale", "nil", "plain"})  # words of pain that need no place
SHORT = 14  # tokens of a sentence whose one number is the score of its one joint


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
    brief = len(message.tokens) <= BRIEF
    if not (_speaks_of_pain(message) or (brief and may_be_bare(message))):
        return []
    words = body_words(message)
    # the 74 of "elbow hurts, bw 74" is no score
    body = {at for claim in find_body(message) for at in range(claim.start, claim.end)}
    if not (words.sites or words.none or words.pain_words or words.scales or brief):
        return []
    signs = [sign for sign in signs_in(message) if not sign.past]
    cues = Cues(message) if words.sites else None
    told: list[Place] = []
    mentioned: list[Place] = []
    loose: list[tuple[Score, str | None]] = []
    without: list[Hit] = []
    waiting: list[Score] = []  # told before their place: "how bad? 6. where? left wrist"
    asked = False
    just_told: Place | None = None  # in the sentence before
    apart: list[tuple[int, int]] = []  # sentences of nothing but a place's scores
    for bounds in _sentences(message):
        places = places_in(words, bounds)
        scores = [one for one in scores_in(words, bounds) if body.isdisjoint(range(one.start, one.end))]
        own = mine_later(words, mentioned, bounds) if scores and not places else None
        if own is None and not places:
            own = other_side_later(words, just_told, scores, bounds)
        before = just_told
        just_told = None if message.numbers_within(*bounds) else just_told
        if own is not None:
            places = [own]  # "my brother's biceps popped. Mine is 0/10"
        if not scores and not places and words.asked.issuperset(range(*bounds)):
            asked = True
            continue
        if places:
            left = attach(words, places, scores, bounds, signs, cues)
            if _of_the_one(message, words, places, left, bounds):
                places[0].scores, left = [(left[0], None, near_moment(words, left[0], bounds))], []
            if waiting and not scores and len(places) == 1 and only_small(words, bounds, places):
                hand_over(words, places[0], waiting)
                loose = [one for one in loose if one[0] not in waiting]
                waiting = []
            just_told = places[-1]
            mentioned.extend(places)
            told.extend(place for place in places if place.told)
            loose.extend((score, near_moment(words, score, bounds)) for score in left if score.scaled)
            continue
        if not scores and told and only_small(words, bounds):
            describe(words, told[-1], bounds, asked)  # "Left, on the inside."
            continue
        again = bool(scores) and message.numbers_within(*bounds) == len(scores) == 1
        if (
            again
            and before is not None
            and told
            and told[-1].scores
            and len(told[-1].scores) == 1
            and only_small(words, bounds)
        ):
            told[-1].scores = [(scores[-1], None, None)]  # "elbow 4... hm more like a 3"
            continue
        judged = bool(scores) or any(bounds[0] <= hit.start < bounds[1] for hit in words.none)
        if judged and any(bounds[0] <= at < bounds[1] for at in words.now):
            for place in mentioned:
                place.moment = None  # "that shoulder kept me up at night. Now 0/10"
        if scores and scored_later(words, told, mentioned, scores, bounds, asked):
            apart.append(bounds)
            continue
        if asked and scores and not mentioned and only_small(words, bounds):
            waiting = scores
        pained = any(bounds[0] <= hit.start < bounds[1] for hit in words.pain_words)
        for score in scores:
            if score.scaled or (pained and by_pain_word(words, score, bounds)):
                loose.append((score, near_moment(words, score, bounds)))
                waiting = [*waiting, score]
        if not any(bounds[0] <= score.start < bounds[1] for score, _ in loose):
            without.extend(hit for hit in words.none if bounds[0] <= hit.start < bounds[1])
    claims = [claim for place in told for claim in claims_of(message, words, place)]
    claims += [
        Claim(score.start, score.end, "noise", None)
        for place in mentioned
        if place.others
        for score, _, _ in place.scores
    ]
    if claims:
        spare = [(start, end) for start, (_, end) in words.of_all.items()]
        # "no pain in the right shoulder", "bruise on the bíceps derecho": that side is no set's
        sites = [(site, side) for place in told for site, side in zip(place.sites, place.sides, strict=True)]
        spare += [(at, at + 1) for site, side in sites for at in (site.start - 1, site.end) if _names(words, at, side)]
        spare += [bounds for bounds in apart if only_small(words, bounds)]
        scored = [(place, score) for place in told for score, _, _ in place.scores if score is not None]
        # "shoulder 2/10 left after pull-ups": the side is the shoulder's
        by_side = [(place, one) for place, one in scored if words.sides.get(one.end) in ("left", "right")]
        spare += [(one.end, one.end + 1) for place, one in by_side if words.sides[one.end] in place.sides]
        tokens = message.tokens  # the "un" of "solo un 3 en el codo" counts no set
        spare += [(one.start - 1, one.start) for _, one in scored if one.start and _article(tokens[one.start - 1])]
        claims += _noise(claims, spare)
    pained = any(claim.kind == "pain" for claim in claims)
    if not pained and without and sum(1 for t in message.tokens if t.value is not None) > 1:
        claims = bare_answer(message, words)
        if claims:
            return claims
    claims = placeless(message, words, claims, told, [p for p in mentioned if not p.others], loose, without)
    return claims or bare_answer(message, words) or unmeasured(message, words)


def _speaks_of_pain(message: Message) -> bool:
    """Whether a place, or a word that tells of pain without one, stands in a message at all; in most there is none."""
    return bool(message.hits("body", "site")) or any(hit.name in TELLING for hit in message.hits("body", "pain"))


def _sentences(message: Message) -> list[tuple[int, int]]:
    """The sentences of a message; a semicolon parts none: "left wrist 3; right nothing"."""
    out: list[tuple[int, int]] = []
    for low, high in message.sentences:
        if out and low and message.tokens[low - 1].text == ";":
            out[-1] = (out[-1][0], high)
        else:
            out.append((low, high))
    return out


def _of_the_one(
    message: Message, words: BodyWords, places: list[Place], left: list[Score], bounds: tuple[int, int]
) -> bool:
    """ "Same elbow as yesterday, a 2", "a 6, the shoulder!": the one joint and the one number of a short sentence.

    A score lost is a pain that nobody hears of.
    """
    if len(places) != 1 or len(left) != 1 or places[0].scores or places[0].others:
        return False
    score, tokens = left[0], words.tokens
    numbers = sum(token.value is not None and token.kind == "num" for token in tokens[bounds[0] : bounds[1]])
    inside = sum(token.value is not None and token.kind == "num" for token in tokens[score.start : score.end])
    led = score.start == bounds[0] or score.led or tokens[score.start - 1].text in little("before_lone_score")
    sentence, place = range(*bounds), places[0]
    clause = next((at for at in range(score.start, bounds[0], -1) if tokens[at].text == ","), bounds[0])
    if any(hit.start in sentence for hit in words.none) or any(at in words.earlier for at in range(clause, bounds[1])):
        return False  # "free of pain today, yesterday it was a 4"
    worked = any(at in words.session for at in sentence) or any(
        message.beginning("movements")[at]
        for at in sentence
        if not place.start - 1 <= at < place.end  # "al codo"
    )
    short = bounds[1] - bounds[0] <= SHORT and numbers == inside and score.value <= WORST
    return led and short and not worked and {site.name for site in place.sites} <= JOINTS


def _article(token: Token) -> bool:
    return token.spelled and token.value == 1 and token.text in little("a")


def _names(words: BodyWords, at: int, side: str | None) -> bool:
    return side in ("left", "right") and words.sides.get(at) == side


def _noise(claims: list[Claim], spare: list[tuple[int, int]]) -> list[Claim]:
    """Claims `noise` for what no other claim has of these tokens: "during the pull-ups" told of pain is no training."""
    taken = {at for claim in claims for at in range(claim.start, claim.end)}
    return [Claim(at, at + 1, "noise", None) for at in sorted({a for s in spare for a in range(*s)} - taken)]
