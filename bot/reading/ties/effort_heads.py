"""Efforts behind their one word: "rpe last set: dips 9, chins 7", "first set rpe 7, second 7.5, third 8"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import SENTENCE
from bot.reading.facts import Fact
from bot.reading.message import Message

LEAST, MOST = 5, 10
LEAST_IN_TURN = 3  # efforts set by set, of which only the first has its word
NUMBERS = frozenset("rows bare loads load at count percent effort_range instead delta assist".split())
ASIDE = frozenset({"word", "scope", "move", "plan", "sep", "side", "scheme", "claim"})


def effort_heads(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the numbers that one word for the effort leads as efforts."""
    for at, fact in enumerate(facts):
        word = fact.kind == "word" and _rates(message, fact)
        if not word and fact.kind != "effort":
            continue
        end = _end(facts, at + 1)
        told = [one for one in facts[at + 1 : end] if one.kind in NUMBERS]
        rest = [one for one in facts[at + 1 : end] if one.kind not in NUMBERS]
        if not told or not all(_effort(one) for one in told) or any(one.kind not in ASIDE for one in rest):
            continue
        if any(one.note.get("mark") in ("(", ")") for one in rest):
            continue  # "8 (rpe 7), 8 (8)"
        plain = all(one.kind == "sep" for one in rest)
        if fact.kind == "effort" and (len(told) + 1 < LEAST_IN_TURN or not (plain or _in_turn(facts[at + 1 : end]))):
            continue
        if fact.kind == "effort" and plain:
            values = [fact.value, *(one.value for one in told)]
            return [*facts[:at], Fact("efforts", fact.start, told[-1].end, values), *facts[end:]]
        if word and not any(one.kind in ("scope", "move") for one in rest):
            continue
        return [*facts[: at + 1], *_rated(facts, at, end), *facts[end:]]
    return facts


def _rated(facts: Sequence[Fact], head: int, end: int) -> list[Fact]:
    """The numbers as efforts; one that a "then" leads is of the set after the one before."""
    out: list[Fact] = []
    before = facts[head - 1] if head else None
    nth = 1 if before is not None and before.kind == "scope" and before.value == "first" else 0
    named = False
    for one in facts[head + 1 : end]:
        if one.kind == "scope":
            nth, named = one.value if isinstance(one.value, int) else nth, True
        if one.kind != "bare":
            out.append(one)
            continue
        if not named and nth:
            nth += 1
            out.append(Fact("scope", one.start, one.start, nth, {"text": ""}))
        out.append(Fact("effort", one.start, one.end, one.value, {"led": True}))
        named = False
    return out


def _rates(message: Message, fact: Fact) -> bool:
    """Whether a word is one for the effort, that no number stood beside."""
    tokens = range(fact.start, fact.end)
    return any(hit.table == "effort" and hit.name == "rpe" for at in tokens for hit in message.beginning("grammar")[at])


def _end(facts: Sequence[Fact], at: int) -> int:
    """Where the sentence ends; a semicolon before one more number does not end it."""
    while at < len(facts):
        fact = facts[at]
        goes_on = fact.note.get("mark") == ";" and at + 1 < len(facts) and _effort(facts[at + 1])
        if fact.kind == "sep" and fact.value == SENTENCE and not goes_on:
            return at
        at += 1
    return at


def _effort(fact: Fact) -> bool:
    return fact.kind == "bare" and LEAST <= fact.value <= MOST and fact.value * 2 == int(fact.value * 2)


def _in_turn(facts: Sequence[Fact]) -> bool:
    """Whether each number stands behind a set that is named, or a "then"."""
    named = False
    for fact in facts:
        named = named or fact.kind == "scope" or (fact.kind == "sep" and fact.value > 1)
        if fact.kind == "bare":
            if not named:
                return False
            named = False
    return True
