"""Numbers that head the lines of a list of exercises: "(1) pull-ups 3x5 (2) dips 3x8", "#1 dips …", "Exercise 2: …".

One such number alone may be anything; from 1 on, each right before an exercise that has sets of its own, they count
the exercises and nothing that was done.
"""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.items import END, Item
from bot.reading.little import little

OPENS = frozenset({"(", "[", "#"})
MARKS = frozenset({")", "]", "/", ":", "-", "–", "."})
CLOSES = frozenset({")", "]"})
MOST_MARKS = 2  # "1.)"
LEAST_HEADS = 2
MOST_HEADS = 20


def unnumbered(items: Sequence[Item]) -> Sequence[Item]:
    """The items without the heads of such a list, each a new sentence instead."""
    heads = _heads(items)
    if len(heads) < LEAST_HEADS:
        return items
    out: list[Item] = []
    at = 0
    for start, end in heads:
        out += items[at:start]
        if out and out[-1].kind != "nl":
            out.append(Item("sym", items[start].start, items[end - 1].end, ";"))
        at = end
    return [*out, *items[at:]]


def _heads(items: Sequence[Item]) -> list[tuple[int, int]]:
    """Where the heads stand that count up from 1."""
    found: list[tuple[int, int]] = []
    numbers = False  # were told since the last head
    for at, item in enumerate(items):
        if item.value is None:
            continue
        head = _head(items, at) if item.value == len(found) + 1 and (numbers or not found) else None
        if head is not None:
            found.append(head)
            numbers = False
        elif found and at >= found[-1][1]:
            numbers = True
    return found[: len(found) - (not numbers)] if len(found) <= MOST_HEADS else []


def _head(items: Sequence[Item], at: int) -> tuple[int, int] | None:
    """The head of a line whose number stands at `at`: its start and its end, right before the exercise."""
    item = items[at]
    before = items[at - 1] if at else END
    lettered = before.text in little("round_letter") and not item.space and items[at + 1 : at + 2] != []
    lettered = lettered and items[at + 1].text == ":"  # "R1: 10 push-ups"
    named = before.text in little("lift") or before.has("sets", "rounds") or lettered
    opened = before.text in OPENS
    spelled = item.spelled and not before.has("sets", "rounds")  # "round one: 8 dips"
    if item.kind != "num" or spelled or item.value != int(item.value or 0):
        return None
    end = at + 1
    while end < len(items) and end <= at + MOST_MARKS and items[end].text in MARKS:
        end += 1
    if not (named or opened or end > at + 1):
        return None
    follow = items[end] if end < len(items) else END
    counted = before.has("sets", "rounds") or lettered
    told = follow.kind == "num" and (counted or (opened and items[end - 1].text in CLOSES))
    told = told or (counted and follow.has("side", "left", "right"))  # "round 1: L 2, R 2"
    led = end + (follow.kind in ("word", "known") and follow.value is None)
    if not told and not any(place < len(items) and items[place].kind == "move" for place in (end, led)):
        return None
    return at - (named or opened), end
