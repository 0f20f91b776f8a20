"""What the words of a message say of the body, by place: sites, sides, moments, words of pain."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from bot.reading.better import withdrawn
from bot.reading.body.cues import diary_heads
from bot.reading.composed import hours_of_waking
from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.phrases import longest
from bot.reading.tokens import Token

CARRYING = frozenset({"knee", "hip", "ankle"})  # what hurts on standing up


@dataclass
class BodyWords:
    """What the words of a message say of the body, by place."""

    tokens: Sequence[Token]
    sites: list[Hit]
    sides: dict[int, str]
    of_all: dict[int, tuple[str, int]]  # "both left", "both on the right": the side of all places before, its end
    moments: list[Hit]
    of_work: set[int]  # where moments start that tell of sets in a clause of their own: "one set less on chins, …"
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
    leads: dict[int, int]  # end of words that a score follows ("I give it a"), and their start
    follows: set[int]  # words that may stand right behind a bare score
    nil: list[Hit]  # "hip nothing"
    links: set[int]  # "at the front of the"
    times: set[int]  # hours and minutes
    now: set[int]
    earlier: set[int]  # "yesterday", "before": of the score behind it only with a sign before it
    former: set[int]  # words before a score of an earlier time: "2 (was 4)"
    no_scores: set[int]  # numbers of sets ("on set 3"), articles that end a parted verb ("schlafen … ein")
    inside: set[int]  # "in", between a score and its place
    mine: dict[int, int]  # "mine", behind somebody else's place
    heads: dict[int, str]  # before a score of a diary: "training 1, evening 0"
    asked: set[int]  # questions that one puts to oneself: "where? right shoulder"


def _unit(found: Sequence[Hit]) -> bool:
    return any(hit.table == "unit" for hit in found)


def body_words(message: Message) -> BodyWords:
    tokens = message.tokens
    pain = _named(message.hits("body", "pain"))
    units = _named(message.hits("body", "unit"))
    effort = _named(message.hits("body", "session_rpe"))
    side_words = message.hits("body", "side")
    places = longest(
        [hit for hit in message.hits("body", "site", "not_site") if hit.name != "warmed" or not pain["hurt"]]
    )
    no_place = _within(hit for hit in places if hit.table == "not_site")
    none = [hit for hit in longest(pain["none"]) if hit.start not in no_place]  # "wrists well warmed up"
    free = _within(none)
    grammar = message.beginning("grammar")
    # "3 sets of 3 on 10kg" is no score
    scales = [hit for hit in pain["scale"] if not (hit.end < len(tokens) and _unit(grammar[hit.end]))]
    sites = [hit for hit in places if hit.table == "site"]
    sides: dict[int, str] = {}
    counted = [hit.start for hit in side_words if hit.start and tokens[hit.start - 1].value is not None]  # "2 left, …"
    barred = _within(message.hits("body", "not_side"))
    inside = _within(sites)
    heads = _starts(sites)  # "no pain in left elbow"
    ends = {hit.end - 1 for hit in sites}  # "elbow, right, the inner bit"
    whole_sides = longest(side_words)
    for hit in whole_sides:
        behind_score = any(scale.end == hit.start for scale in scales)
        opposed = hit.start in counted and any(tokens[at].text != tokens[hit.start].text for at in counted)
        of_site = hit.start - 1 in ends or (hit.start - 2 in ends and tokens[hit.start - 1].text == ",")
        led = [token.text for token in tokens[max(0, hit.start - 2) : hit.start]]  # "on the right after the session"
        named = len(led) > 1 and led[0] in little("on_a_side") and led[1] in little("the")
        if (
            hit.start in inside
            or hit.end in heads
            or behind_score
            or opposed
            or of_site
            or named
            or not barred & set(range(hit.start, hit.end))
        ):
            sides[hit.start] = hit.name
    of_all = _of_all(tokens, whole_sides)
    for start, (_, end) in of_all.items():
        for at in range(start, end):
            sides.pop(at, None)
    greetings = [hit for hit in message.hits("intents", "talk") if hit.name == "smalltalk"]
    moments = [
        _reaching(message, hit)
        for hit in longest(message.hits("body", "when"))
        if hit.name != "unsaid"
        and not _of_a_number(tokens, hit)
        and not _of_nothing(message, hit, pain["nil"])
        and not _greets(tokens, hit, greetings)
        and not _stands_up(tokens, hit, sites)
    ]
    fill = _within([*pain["more"], *pain["hurt"], *pain["soft"], *pain["word"], *pain["none"]]) | withdrawn(message)
    fill |= {at for hit in side_words for at in range(hit.start + 1, hit.end)}  # "left side"
    fill |= {at for start, (_, end) in of_all.items() for at in range(start, end)}
    return BodyWords(
        tokens,
        sites,
        sides,
        of_all,
        moments,
        _of_work(message, moments, sites),
        [
            hit
            for hit in message.hits("body", "pain")
            if hit.name in ("hurt", "soft", "injured") and hit.start not in free
        ],
        none,
        [hit for hit in pain["word"] if hit.start not in free],
        scales,
        fill,
        _starts(units["rep_like"]),
        _within([*effort["cue"], *effort["effort"], *effort["whole"]]),
        _starts(pain["limb"]),
        {hit.end - 1 for hit in pain["woken"]},
        {
            at: hit.name
            for hit in message.hits("body", "pain")
            if hit.name in ("inner", "outer")
            for at in range(hit.start, hit.end)
        },
        {hit.end: hit.start for hit in pain["lead"]},
        _starts(pain["follows"]),
        pain["nil"],
        _within(pain["link"]),
        _starts([*units["hour"], *units["minute"]]),
        _starts(pain["now"]),
        _within(pain["earlier"]),
        _within(pain["former"]),
        _numbers_of_sets(tokens, message)
        | _reps_of_sets(message, sites)
        | withdrawn(message)
        | hours_of_waking(message)
        | _starts(pain["unscored"])
        | {
            at
            for at, token in enumerate(tokens)
            if at and token.spelled and tokens[at - 1].text in little("before_one")
        }
        | _within(side_words),  # "los dos"
        _starts(pain["inside"]),
        {hit.start: hit.end for hit in pain["mine"]},
        diary_heads(message),
        _within(pain["asked"]),
    )


def _named(hits: Iterable[Hit]) -> defaultdict[str, list[Hit]]:
    """The hits of a table by name."""
    by_name: defaultdict[str, list[Hit]] = defaultdict(list)
    for hit in hits:
        by_name[hit.name].append(hit)
    return by_name


def _within(hits: Iterable[Hit]) -> set[int]:
    """The places of all tokens of the hits."""
    return {at for hit in hits for at in range(hit.start, hit.end)}


def _starts(hits: Iterable[Hit]) -> set[int]:
    return {hit.start for hit in hits}


def _reaching(message: Message, hit: Hit) -> Hit:
    """ "during the pull-ups", "nach dem Training": the movement, or the session, belongs to the moment."""
    if hit.name not in ("during", "after"):
        return hit
    start = hit.end
    while start < len(message.tokens) and message.tokens[start].text in little("the", "of"):
        start += 1
    sessions = [one for one in message.hits("body") if one.start == start and one.table == "session_rpe"]
    if any(one.name in ("cue", "whole") for one in sessions):
        return hit._replace(end=max(one.end for one in sessions))
    named = message.beginning("movements")[start] if start < len(message.tokens) else []
    return hit._replace(end=max(one.end for one in named)) if named else hit


def _of_work(message: Message, moments: Sequence[Hit], sites: Sequence[Hit]) -> set[int]:
    """ "One set less on chins, both elbows 1/10", "in the last set of dips only 6; shoulder fine": where such begin.

    A clause that names an exercise, and a number that is no score beside the moment, tells of the sets; one that names
    a place tells of the place.
    """
    tokens, found = message.tokens, set()
    for hit in moments:
        low, high = hit.start, hit.end
        while low and not _parts_clauses(tokens, low - 1):
            low -= 1
        while high < len(tokens) and not _parts_clauses(tokens, high):
            high += 1
        near = range(hit.start - 1, hit.end + 1)
        counted = any(tokens[at].value is not None and at not in near for at in range(low, high))
        named = any(message.beginning("movements")[at] for at in range(low, high))
        if counted and named and not any(low <= site.start < high for site in sites):
            found.add(hit.start)
    return found


def _parts_clauses(tokens: Sequence[Token], at: int) -> bool:
    spaced = tokens[at].text in ("-", "–") and tokens[at].space and at + 1 < len(tokens) and tokens[at + 1].space
    return tokens[at].text in (",", ";", ".", "!", "\n") or spaced


def _of_a_number(tokens: Sequence[Token], hit: Hit) -> bool:
    """The "bei" of "Ellbogen bei 3"."""
    lone = hit.end - hit.start == 1 and hit.end < len(tokens) and tokens[hit.start].text in little("before_score")
    return lone and tokens[hit.end].value is not None


def _of_nothing(message: Message, hit: Hit, nil: Sequence[Hit]) -> bool:
    """The "during" of "elbow 1/10, nothing during": the score before is of another time."""
    if not any(one.end == hit.start and message.tokens[one.start].value is None for one in nil):
        return False  # "a one during and a zero after" tells both
    begin = max(start for start, _ in message.sentences if start <= hit.start)
    return any(token.value is not None for token in message.tokens[begin : hit.start - 1])


def _greets(tokens: Sequence[Token], hit: Hit, greetings: Sequence[Hit]) -> bool:
    """The "morning" of "good morning coach" and "Morning!"."""
    inside = any(one.start <= hit.start and hit.end <= one.end and one != hit for one in greetings)
    longer = any(one.start < hit.start and hit.end <= one.end for one in greetings)
    return longer or (inside and hit.end < len(tokens) and tokens[hit.end].text == "!")


def _stands_up(tokens: Sequence[Token], hit: Hit, sites: Sequence[Hit]) -> bool:
    """ "The knee locks when I get up": from a chair as well as from bed, where the place is one that carries."""
    text = " ".join(token.text for token in tokens[hit.start : hit.end])
    bed = any(token.text in little("bed") for token in tokens)
    return text in little("getting_up") and not bed and bool(sites) and all(site.name in CARRYING for site in sites)


def _of_all(tokens: Sequence[Token], told: Sequence[Hit]) -> dict[int, tuple[str, int]]:
    """Where "both" is told a side, "both left", "both on the right", and where that ends; none are sides then."""
    single = {hit.start: hit for hit in told if hit.name != "both"}
    found: dict[int, tuple[str, int]] = {}
    for hit in told:
        behind = hit.end
        while behind < len(tokens) and tokens[behind].text in little("before_side"):
            behind += 1
        if hit.name == "both" and behind in single:
            found[hit.start] = (single[behind].name, single[behind].end)
    return found


def _numbers_of_sets(tokens: Sequence[Token], message: Message) -> set[int]:
    """Where a number says which set it was ("on set 3"); "in the last set 3" has a score."""
    numbers = [hit for hit in message.hits("body", "pain") if hit.name == "nth"]
    if not numbers:
        return set()
    ordinal = {
        hit.end - 1
        for hit in message.hits("body", "when")
        if hit.end - hit.start > 2 and tokens[hit.end - 2].text not in little("before_site")
    }
    return {hit.end - 1 for hit in numbers if hit.start not in ordinal and tokens[hit.end - 1].space}


def _reps_of_sets(message: Message, sites: Sequence[Hit]) -> set[int]:
    """Where reps of a set stand before the place that cost them: "dips 3x8, third only 6, my shoulder (2/10)"."""
    tokens, grammar = message.tokens, message.beginning("grammar")
    if not sites or not any(message.beginning("movements")):
        return set()
    found: set[int] = set()
    start = 0  # of the clause
    for at, token in enumerate(tokens):
        if token.text in (",", ";", "."):
            start = at + 1
        only = any(hit.table == "plan" and hit.name == "only" for hit in grammar[at])
        number = next((hit.end for hit in grammar[at] if hit.name == "only"), at + 1)
        if not only or number >= len(tokens) or tokens[number].kind != "num" or tokens[number].value is None:
            continue
        told = any(hit.table == "scope" and hit.end <= at for place in range(start, at) for hit in grammar[place])
        before = any(start <= site.start < at for site in sites)
        after = tokens[number + 1] if number + 1 < len(tokens) else None
        parted = after is not None and (after.text in little("cause") or after.text in ",;.(")
        if told and parted and not before and any(site.start > number for site in sites):
            found.add(number)
    return found


def moment_in(words: BodyWords, start: int, end: int) -> str | None:
    for hit in words.moments:
        if start <= hit.start < end and hit.start not in words.of_work:
            return hit.name
    return None


def in_moment(words: BodyWords, at: int) -> bool:
    return any(hit.start <= at < hit.end for hit in words.moments)
