"""Tries that are told by how they went: "erster Versuch ging, zweiter auch, dritter nicht", "52.5 up, 55 failed"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message

LEAST_TRIES = 2
LEAST_LOAD = 15  # a bare number that went up as a load
MOST_TRIES = 13
TRIED = frozenset({"one_rm", "amrap", "attempt"})


def verdicts(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with a single for each try that has its verdict."""
    facts = _counted(facts)
    schemes = {fact.value for fact in facts if fact.kind == "scheme"}
    if not schemes & TRIED or any(fact.kind in ("rows", "count", "rounds") for fact in facts):
        return facts
    return _by_place(message, _by_load(_by_number(facts)))


def _by_number(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Tried three times with the right and got one": so many singles, the rest missed."""
    told = [(at, fact) for at, fact in enumerate(facts) if fact.kind not in ("word", "sep", "plan")]
    for n in range(len(told)):
        for size in (2, 3):
            tried = _number_of("attempt", [fact for _, fact in told[n : n + size]])
            made = _number_of("got", [fact for _, fact in told[n + size : n + size + 2]])
            closes = told[n + size + 2 :][:1]
            if tried is None or made is None or tried.value not in range(max(LEAST_TRIES, int(made.value)), MOST_TRIES):
                continue
            if made.value != int(made.value) or (closes and closes[0][1].kind != "move"):
                continue
            side = next((fact.value for _, fact in told[n : n + size] if fact.kind == "side"), None)
            entries = [Entry(1 if at < made.value else 0, side=side) for at in range(int(tried.value))]
            first, last = told[n], told[n + size + 1]
            rows = Fact("rows", first[1].start, last[1].end, entries, {"list": True, "mark": "/"})
            return [*facts[: first[0]], rows, *facts[last[0] + 1 :]]
    return facts


def _number_of(scheme: str, facts: Sequence[Fact]) -> Fact | None:
    """The number beside "tried" or "got": "three attempts", "tried right three times", "einmal geschafft"."""
    words = [fact for fact in facts if fact.kind == "scheme" and fact.value == scheme]
    numbers = [fact for fact in facts if fact.kind in ("repeat", "bare")]
    sides = [fact for fact in facts if fact.kind == "side" and fact.value in ("left", "right")]
    alone = len(words) == len(numbers) == 1 and len(words + numbers + sides) == len(facts)
    if not alone or (scheme == "attempt" and numbers[0].kind == "bare" and facts[0] is words[0]):
        return None  # "tried 3 with 45": reps
    return numbers[0]


def _counted(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "3 tries: 12 s, 14 s, 11 s": the number of those that follow."""
    for at in range(len(facts) - 3):
        many, tries, mark, told = facts[at : at + 4]
        listed = told.kind == "rows" and told.note.get("list") and mark.note.get("mark") in (":", ",", "-")
        if many.kind == "bare" and tries.value == "attempt" and listed and len(told.value) == many.value:
            return [*facts[:at], *facts[at + 2 :]]
    return facts


def _by_load(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "1RM: 52.5 kg up", "got 52.5 kg up": a load that went up is a single."""
    out: list[Fact] = []
    tested = any(fact.value == "one_rm" for fact in facts if fact.kind == "scheme")
    for at, fact in enumerate(facts):
        out.append(fact)
        if tested and fact.kind == "bare" and fact.value >= LEAST_LOAD and at + 1 < len(facts) and _went(facts[at + 1]):
            out[-1] = Fact("rows", fact.start, fact.end, [Entry(1)], {"own_load": fact.note.get("kg", fact.value)})
            continue
        loads = [one for one in facts[max(0, at - 1) : at + 2] if one.kind == "load" and one.value]
        went = fact.kind == "scheme" and fact.value == "got" and len(loads) == 1
        if went and (loads[0].end == fact.start or fact.end == loads[0].start):
            one = Fact("rows", fact.start, fact.end, [Entry(1)], {"one": True, "reps": True})
            out[-1:] = [fact, one] if loads[0].end == fact.start else [one]
    return out


def _went(fact: Fact) -> bool:
    return fact.kind == "scheme" and fact.value == "got"


def _by_place(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "The first try went up, the second too, the third not"."""
    made: list[int] = []
    start, end, at = -1, -1, 0
    while at < len(facts):
        fact = facts[at]
        nth = 1 if fact.kind == "scope" and fact.value == "first" else fact.value
        if fact.kind != "scope" or nth != len(made) + 1:
            at += 1
            continue
        stop = next((n for n in range(at + 1, len(facts)) if facts[n].kind in ("sep", "scope")), len(facts))
        verdict = _verdict(message, facts[at + 1 : stop], made[-1] if made else None)
        if verdict is None:
            return facts
        made.append(verdict)
        start, end, at = (at if start < 0 else start), stop, stop
    if len(made) < LEAST_TRIES:
        return facts
    rows = Fact("rows", facts[start].start, facts[end - 1].end, [Entry(one) for one in made], {"list": True})
    sides = [fact for fact in facts[start:end] if fact.kind == "side"]
    return [*facts[:start], *sides, rows, *facts[end:]]


def _verdict(message: Message, clause: Sequence[Fact], before: int | None) -> int | None:
    """1: it went up, 0: it did not, None: not said; "the second too" is as the one before it."""
    names = {name for fact in clause for name in fact.note.get("names", ())}
    if any(fact.kind == "fail" for fact in clause) or names & {"not_this", "not"}:
        return 0
    if any(fact.kind == "scheme" and fact.value == "got" for fact in clause) or names & {"done", "fine"}:
        return 1
    words = {message.tokens[at].text for fact in clause for at in range(fact.start, fact.end)}
    return before if not words.isdisjoint(little("too")) else None
