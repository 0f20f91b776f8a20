"""Scores and "no pain" without a place: of one named before, of none, or a bare answer to "how is the elbow?"."""

from __future__ import annotations

from functools import cache

from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Claim, Message
from bot.reading.pain.entries import WORST, entry_of
from bot.reading.pain.places import Place
from bot.reading.pain.scores import Score, near_moment, scores_in
from bot.reading.pain.words import BodyWords, in_moment, moment_in
from bot.reading.reading import Ask

MOST_HEDGED = 3  # of "no pain, maybe 1"
SHORT = 8  # words of a message that says no more than that it hurts
LEAST_LISTED = 3  # so many numbers alone are a list of sets
HURTS = frozenset(("hurt", "soft", "injured", "word", "none"))
IDLE = frozenset(("talk", "past", "where", "whole", "unreal", "times"))  # words that want nothing and tell of no set
SETS = frozenset(("last", "first", *map(str, range(2, 7))))


def placeless(
    message: Message,
    words: BodyWords,
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
    hedged = {_hedged(words, hit.end)[1] for hit in words.none}
    for score, moment in loose:
        asked = score.value > WORST or score.doubt
        ask = Ask("score", message.span(score.start, score.end)) if asked else None
        value = None if ask else score.value
        if open_entries:
            for i in open_entries:
                old = claims[i].value
                claims[i] = Claim(
                    claims[i].start, claims[i].end, "pain", entry_of(old.site, old.side, value, old.when or moment), ask
                )
            claims.append(Claim(score.start, score.end, "noise", None))
            open_entries = []
        elif not told and mentioned and score.scaled:
            place = next((p for p in reversed(mentioned) if p.start < score.start), mentioned[-1])
            side = _side_said(message, words, score) or (place.sides[0] if place.sides else None)
            site, when = place.sites[0].name, moment or place.moment
            at = (score.start, score.end)
            for one in ("left", "right") if side == "both" else (side,):
                claims.append(Claim(*at, "pain", entry_of(site, one, value, when), ask))
                at = (0, 0)  # the words are the first entry's
        elif (
            pained
            or score.end in hedged
            or (only_scores(message, words, scaled=score.scaled) and not _in_an_aside(message, score))
        ):
            claims.append(Claim(score.start, score.end, "pain", entry_of(None, None, value, moment), ask))
    if loose and not any(claim.kind == "pain" for claim in claims):
        without = words.none[:1]  # "no pain, energy 6/10": the score is of something else
    for hit in without:
        if _of_the_plan(message, hit):
            continue  # "everything fine, last lever hold was 5s"
        if open_entries:
            for i in open_entries:
                old = claims[i].value
                claims[i] = Claim(
                    claims[i].start, claims[i].end, "pain", entry_of(old.site, old.side, 0.0, old.when), None
                )
            open_entries = []
        elif not any(claim.kind == "pain" for claim in claims):
            moment = moment_in(words, hit.start - 1, hit.end + 2)
            value, end = _hedged(words, hit.end)
            claims.append(Claim(hit.start, end, "pain", entry_of(None, None, value, moment)))
    return claims


def _of_the_plan(message: Message, hit: Hit) -> bool:
    """Whether "everything fine" opens what is told of a planned day, and speaks of no pain."""
    opens = hit.start == 0 and message.tokens[0].text in little("all_of_it")
    goes_on = any(token.value is not None for token in message.tokens[hit.end :])
    return bool(message.context.today) and opens and goes_on


def _in_an_aside(message: Message, score: Score) -> bool:
    """ "10/10 joke", "10/10 would recommend"."""
    return any(hit.start <= score.start < hit.end for hit in message.hits("intents", "aside"))


def _hedged(words: BodyWords, at: int) -> tuple[float, int]:
    """What stands behind "no pain", and where it ends: "no real pain, maybe a 1" is 1, nothing is 0."""
    end, hedged = at, False
    while end < len(words.tokens) and words.tokens[end].value is None:
        said = words.tokens[end].text
        if said not in ",(" and end not in words.filler and said not in little("hedge", "likely"):
            break
        hedged = hedged or said in little("hedge")
        end += 1
    number = words.tokens[end].value if end < len(words.tokens) else None
    if not hedged or number is None or number > MOST_HEDGED:
        return 0.0, at
    scale = next((hit.end for hit in words.scales if hit.start == end), end + 1)
    return number, scale


def _side_said(message: Message, words: BodyWords, score: Score) -> str | None:
    """The one side named in a score's own sentence: "both of them about a 2 out of 10"."""
    low, high = next(((a, b) for a, b in message.sentences if a <= score.start < b), (score.start, score.end))
    sides = {side for at, side in words.sides.items() if low <= at < high}
    return sides.pop() if len(sides) == 1 else None


def only_scores(message: Message, words: BodyWords, *, scaled: bool = False) -> bool:
    """Whether a message is nothing but scores, moments and small words: an answer to "how is the elbow?"."""
    talk = _talk(message)
    return all(
        token.value is not None
        or token.kind in ("sym", "nl")
        or at in talk
        or at in words.filler
        or in_moment(words, at)
        or any(start <= at < end for end, start in words.leads.items())
        or any(hit.start <= at < hit.end for hit in words.scales)
        for at, token in enumerate(message.tokens)
    ) and not _of_a_set(message, words, scaled=scaled)


def _talk(message: Message) -> set[int]:
    """What is said around a bare answer: "thanks, 2", "3. Going to bed now."; a sentence that speaks of no training."""
    named = message.beginning("movements")
    said = [hit for hit in message.hits("intents", "talk") if hit.name == "smalltalk"]
    said = [hit for hit in said if not any(named[hit.start : hit.end])]  # "10/10 would hang again"
    talk = {at for hit in said for at in range(hit.start, hit.end)}
    talk |= {at for at, token in enumerate(message.tokens) if token.text in little("courtesy")}
    body = {hit.start for hit in message.hits("body") if hit.table == "site" or hit.name in HURTS}
    wants = {hit.start for hit in message.hits("intents") if hit.table not in IDLE}
    for low, high in message.sentences:
        spoken = any(
            at in body
            or at in wants
            or named[at]
            or any(hit.table not in IDLE for hit in message.beginning("grammar")[at])
            for at in range(low, high)
        )
        if not spoken and not message.numbers_within(low, high):
            talk |= set(range(low, high))
    return talk


def _of_a_set(message: Message, words: BodyWords, *, scaled: bool) -> bool:
    """ "The last one was 9", "only 3 on the last" speak of a set; "last night 3" of pain."""
    grammar = message.beginning("grammar")
    dates = message.hits("dates")
    for at in range(len(message.tokens)):
        for hit in grammar[at]:
            times = dates if not scaled and _a_set(message, hit) else [*dates, *words.moments]
            apart = not any(one.start <= at and hit.end < one.end for one in times)
            if hit.table == "scope" and hit.name in SETS and apart:
                return True
    return False


def _a_set(message: Message, hit: Hit) -> bool:
    """Whether a word for sets is part of such a scope, or follows it: "third set", "dritter Satz"."""
    grammar = message.beginning("grammar")
    return any(one.table == "sets" for at in range(hit.start, min(hit.end + 1, len(grammar))) for one in grammar[at])


def may_be_bare(message: Message) -> bool:
    """Whether a message has a number, and no sign or word of sets: else it is no bare answer."""
    if not message.numbers_within(0, len(message.tokens)):
        return False
    return _of_work().isdisjoint(token.text for token in message.tokens)


@cache
def _of_work() -> frozenset[str]:
    return little("with") | {"x", "@", "+", "#", "%"}


def bare_answer(message: Message, words: BodyWords) -> list[Claim]:
    """A bare answer: "3", "2-3", "3 during, 1 after"."""
    tokens = message.tokens
    if not may_be_bare(message) or not only_scores(message, words):
        return []
    scores = [score for bounds in message.sentences for score in scores_in(words, bounds)]
    moments = [near_moment(words, score, (0, len(tokens))) for score in scores]
    numbers = sum(
        t.value is not None and not (t.spelled and t.value == 1 and at + 1 < len(tokens) and tokens[at + 1].value)
        for at, t in enumerate(tokens)  # the "un" of "un 3" is no number of its own
    )
    if not scores or any(score.value > WORST or _in_an_aside(message, score) for score in scores):
        return []
    if numbers >= LEAST_LISTED and not any(moments) and message.context.today:
        return []  # "3-3-2" on a day with a plan: its sets
    inside = sum(1 for score in scores for t in tokens[score.start : score.end] if t.value is not None)
    if numbers != inside:
        return []
    if len(scores) == 1:
        return [Claim(scores[0].start, scores[0].end, "pain", entry_of(None, None, scores[0].value, moments[0]))]
    if None in moments or len(set(moments)) != len(moments):
        return []
    return [
        Claim(score.start, score.end, "pain", entry_of(None, None, score.value, moment))
        for score, moment in zip(scores, moments, strict=True)
    ]


def unmeasured(message: Message, words: BodyWords) -> list[Claim]:
    """ "still hurts", and nothing else: where is known from what went before, how much is asked."""
    plain = [hit for hit in message.hits("body", "pain") if hit.name == "plain"]
    spoken = [at for at, token in enumerate(message.tokens) if token.kind == "word"]
    numbers = any(token.value is not None for token in message.tokens)
    if not plain or words.sites or numbers or len(spoken) > SHORT:
        return []
    hit = max(plain, key=lambda hit: hit.end - hit.start)
    entry = entry_of(None, None, None, None)
    return [Claim(hit.start, hit.end, "pain", entry, Ask("score", message.span(hit.start, hit.end)))]
