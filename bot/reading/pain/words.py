"""What the words of a message say of the body, by place: sites, sides, moments, words of pain."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bot.reading.better import withdrawn
from bot.reading.body.cues import diary_heads
from bot.reading.composed import hours_of_waking
from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.phrases import longest
from bot.reading.tokens import Token


@dataclass
class BodyWords:
    """What the words of a message say of the body, by place."""

    tokens: Sequence[Token]
    sites: list[Hit]
    sides: dict[int, str]
    of_all: dict[int, tuple[str, int]]  # "both left", "both on the right": the side of all places before, its end
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


def body_words(message: Message) -> BodyWords | None:
    tokens = message.tokens
    body = message.hits("body")
    places = longest(hit for hit in message.hits("body") if hit.table in ("site", "not_site"))
    pain = [hit for hit in body if hit.table == "pain"]
    none = longest([hit for hit in pain if hit.name == "none"])
    free = {at for hit in none for at in range(hit.start, hit.end)}
    scales = [hit for hit in pain if hit.name == "scale"]
    sites = [hit for hit in places if hit.table == "site"]
    sides: dict[int, str] = {}
    told = [hit.start for hit in body if hit.table == "side"]
    counted = [at for at in told if at and tokens[at - 1].value is not None]  # "2 left, 1 right"
    barred = {at for hit in (hit for hit in body if hit.table == "not_side") for at in range(hit.start, hit.end)}
    inside = {at for hit in sites for at in range(hit.start, hit.end)}
    ends = {hit.end - 1 for hit in sites}  # "elbow, right, the inner bit"
    for hit in longest(hit for hit in body if hit.table == "side"):
        behind_score = any(scale.end == hit.start for scale in scales)
        opposed = hit.start in counted and any(tokens[at].text != tokens[hit.start].text for at in counted)
        of_site = hit.start - 1 in ends or (hit.start - 2 in ends and tokens[hit.start - 1].text == ",")
        led = [token.text for token in tokens[max(0, hit.start - 2) : hit.start]]  # "on the right after the session"
        named = len(led) > 1 and led[0] in little("on_a_side") and led[1] in little("the")
        if (
            hit.start in inside
            or behind_score
            or opposed
            or of_site
            or named
            or not barred & set(range(hit.start, hit.end))
        ):
            sides[hit.start] = hit.name
    of_all = _of_all(tokens, longest(hit for hit in body if hit.table == "side"))
    for start, (_, end) in of_all.items():
        for at in range(start, end):
            sides.pop(at, None)
    fill = {
        at for hit in pain if hit.name in ("more", "hurt", "soft", "word", "none") for at in range(hit.start, hit.end)
    } | withdrawn(message)
    fill |= {at for hit in body if hit.table == "side" for at in range(hit.start + 1, hit.end)}  # "left side"
    fill |= {at for start, (_, end) in of_all.items() for at in range(start, end)}
    effort = [hit for hit in body if hit.table == "session_rpe"]
    greetings = [hit for hit in message.hits("intents", "talk") if hit.name == "smalltalk"]
    return BodyWords(
        tokens,
        sites,
        sides,
        of_all,
        [
            _reaching(message, hit)
            for hit in longest(h for h in body if h.table == "when")
            if hit.name != "unsaid" and not _of_a_number(tokens, hit) and not _greets(tokens, hit, greetings)
        ],
        [hit for hit in pain if hit.name in ("hurt", "soft", "injured") and hit.start not in free],
        none,
        [hit for hit in pain if hit.name == "word" and hit.start not in free],
        scales,
        fill,
        {hit.start for hit in (hit for hit in body if hit.table == "unit") if hit.name == "rep_like"},
        {at for hit in effort if hit.name in ("cue", "effort", "whole") for at in range(hit.start, hit.end)},
        {hit.start for hit in pain if hit.name == "limb"},
        {hit.end - 1 for hit in pain if hit.name == "woken"},
        {at: hit.name for hit in pain if hit.name in ("inner", "outer") for at in range(hit.start, hit.end)},
        {hit.end: hit.start for hit in pain if hit.name == "lead"},
        {hit.start for hit in pain if hit.name == "follows"},
        [hit for hit in pain if hit.name == "nil"],
        {at for hit in pain if hit.name == "link" for at in range(hit.start, hit.end)},
        {hit.start for hit in body if hit.table == "unit" and hit.name in ("hour", "minute")},
        {hit.start for hit in pain if hit.name == "now"},
        {at for hit in pain if hit.name == "earlier" for at in range(hit.start, hit.end)},
        {at for hit in pain if hit.name == "former" for at in range(hit.start, hit.end)},
        _numbers_of_sets(tokens, body)
        | withdrawn(message)
        | hours_of_waking(message)
        | {hit.start for hit in pain if hit.name == "unscored"}
        | {
            at
            for at, token in enumerate(tokens)
            if at and token.spelled and tokens[at - 1].text in little("before_one")
        }
        | {at for hit in body if hit.table == "side" for at in range(hit.start, hit.end)},  # "los dos"
        {hit.start for hit in pain if hit.name == "inside"},
        {hit.start: hit.end for hit in pain if hit.name == "mine"},
        diary_heads(message),
        {at for hit in pain if hit.name == "asked" for at in range(hit.start, hit.end)},
    )


def _reaching(message: Message, hit: Hit) -> Hit:
    """ "during the pull-ups", "nach dem Training": the movement, or the session, belongs to the moment."""
    if hit.name not in ("during", "after"):
        return hit
    start = hit.end
    while start < len(message.tokens) and message.tokens[start].text in little("the") | little("of"):
        start += 1
    sessions = [one for one in message.hits("body") if one.start == start and one.table == "session_rpe"]
    if any(one.name in ("cue", "whole") for one in sessions):
        return hit._replace(end=max(one.end for one in sessions))
    named = message.beginning("movements")[start] if start < len(message.tokens) else []
    return hit._replace(end=max(one.end for one in named)) if named else hit


def _of_a_number(tokens: Sequence[Token], hit: Hit) -> bool:
    """The "bei" of "Ellbogen bei 3"."""
    lone = hit.end - hit.start == 1 and hit.end < len(tokens) and tokens[hit.start].text in little("before_score")
    return lone and tokens[hit.end].value is not None


def _greets(tokens: Sequence[Token], hit: Hit, greetings: Sequence[Hit]) -> bool:
    """The "morning" of "good morning coach" and "Morning!"."""
    inside = any(one.start <= hit.start and hit.end <= one.end and one != hit for one in greetings)
    longer = any(one.start < hit.start and hit.end <= one.end for one in greetings)
    return longer or (inside and hit.end < len(tokens) and tokens[hit.end].text == "!")


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


def _numbers_of_sets(tokens: Sequence[Token], body: Sequence[Hit]) -> set[int]:
    """Where a number says which set it was ("on set 3"); "in the last set 3" has a score."""
    ordinal = {
        hit.end - 1
        for hit in body
        if hit.table == "when" and hit.end - hit.start > 2 and tokens[hit.end - 2].text not in little("before_site")
    }
    return {
        hit.end - 1
        for hit in body
        if hit.table == "pain" and hit.name == "nth" and hit.start not in ordinal and tokens[hit.end - 1].space
    }


def moment_in(words: BodyWords, start: int, end: int) -> str | None:
    for hit in words.moments:
        if start <= hit.start < end:
            return hit.name
    return None


def in_moment(words: BodyWords, at: int) -> bool:
    return any(hit.start <= at < hit.end for hit in words.moments)
