"""A rest-pause set told with "then": "one rest-pause set: 10, then 4, then 3" is one row of what came after breaths."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import is_then, within_sentence
from bot.reading.facts import Entry, Fact
from bot.reading.message import Message

PAUSED = ("cluster", "rest_pause")


def breaths(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the numbers behind a word for rest-pause as one list."""
    for at, fact in enumerate(facts):
        if fact.kind != "link" or fact.value not in PAUSED:
            continue
        start = at + 1
        while start < len(facts) and (facts[start].kind in ("word", "move", "plan") or _mark(facts[start])):
            start += 1
        numbers, end = _numbers(facts, start)
        if len(numbers) > 1 and any(is_then(fact) for fact in facts[start:end]):
            note = {"list": True, "mark": ",", "values": [float(one) for one in numbers]}
            row = Fact("rows", facts[start].start, facts[end - 1].end, [Entry(one) for one in numbers], note)
            return [*facts[:start], row, *facts[end:]]
    return facts


def _mark(fact: Fact) -> bool:
    return within_sentence(fact)


def _numbers(facts: Sequence[Fact], start: int) -> tuple[list[int], int]:
    """Bare numbers that marks and "then" part, and where they end."""
    numbers: list[int] = []
    at = end = start
    while at < len(facts):
        fact = facts[at]
        single = fact.kind == "rows" and len(fact.value) == 1 and fact.note.get("reps") and fact.value[0].reps
        if fact.kind == "bare" and fact.value == int(fact.value):
            numbers.append(int(fact.value))
        elif single:
            numbers.append(fact.value[0].reps)
        elif numbers and fact.kind == "rows" and fact.note.get("list") and all(one.reps for one in fact.value):
            numbers += [one.reps for one in fact.value]
        elif not (numbers and (_mark(fact) or fact.note.get("noise"))):
            break
        at += 1
        end = at if fact.kind in ("bare", "rows") else end
    return numbers, end
