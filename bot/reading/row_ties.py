"""Rows of numbers and what is told behind them: the side of a whole list, an effort of each set."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Entry, Fact

LEAST_RATED, MOST_RATED = 5, 10
LEAST_ALIKE = 6  # no effort below it is mistaken for a load
LIST = 3  # numbers that are a list whatever stands in the other


def lists_of_sides(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "3 3 2 left, 3 3 3 right": the side that closes a list is each set's."""
    found: list[tuple[int, int, list[Entry]]] = []
    for at, fact in enumerate(facts):
        if fact.kind != "side" or fact.value not in ("left", "right"):
            continue
        first, entries = _list_before(facts, at, found[-1][1] if found and found[-1][2] else -1)
        found.append((first, at, entries))
    sides = [facts[at].value for _, at, _ in found]
    sizes = [len(entries) for _, _, entries in found]
    if sorted(sides) != ["left", "right"] or min(sizes) < LIST and (sizes[0] != sizes[1] or min(sizes) < LIST - 1):
        return facts
    out = list(facts)
    for first, at, entries in reversed(found):
        sided = [replace(one, side=facts[at].value) for one in entries]
        out[first : at + 1] = [Fact("rows", facts[first].start, facts[at].end, sided, {"list": True, "reps": True})]
    return out


def _list_before(facts: Sequence[Fact], at: int, closed: int) -> tuple[int, list[Entry]]:
    """Where the numbers that stand right before the side at a place begin, and what they tell.

    `closed`: where the side stands that closes the list before.
    """
    entries: list[Entry] = []
    first = at
    place = at - 1
    while place >= 0 and facts[place].end == facts[place + 1].start:
        fact = facts[place]
        comma = fact.kind == "sep" and fact.note.get("mark") in (",", "and", "/") and first == place + 1
        if comma and entries and place:
            place -= 1
            continue
        told = _entries(fact)
        led = place and place - 1 != closed and facts[place - 1].kind in ("side", "effort", "count")
        if not told or led:
            break
        entries = [*told, *entries]
        first = place
        place -= 1
    return first, entries


def _entries(fact: Fact) -> list[Entry]:
    if fact.kind == "bare" and fact.value == int(fact.value) and not fact.note.get("spelled"):
        return [Entry(int(fact.value))]
    alone = fact.kind == "rows" and (fact.note.get("list") or fact.note.get("one")) and not fact.note.get("own_load")
    return list(fact.value) if alone else []


def rated_row(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5x3 @20kg (8, 8, 8, 8.5, 9)": as many numbers as sets, behind their load, are efforts; without a load, asked."""
    out = list(facts)
    for at, fact in enumerate(facts):
        if fact.kind != "loads" or not fact.note.get("unsure") or not at:
            continue
        before = [one for one in facts[:at] if one.kind not in ("sep", "word", "claim", "weighted")]
        loaded = bool(before) and before[-1].kind == "load" and before[-1].value
        rows = next((one for one in reversed(before) if one.kind == "rows"), None)
        if rows is None or len(rows.value) != len(fact.value):
            continue
        low, high = min(fact.value), max(fact.value)
        if loaded and LEAST_RATED <= low and high <= MOST_RATED:
            out[at] = replace(fact, kind="efforts", note={})
        elif LEAST_ALIKE <= low and high <= MOST_RATED:
            out[at] = replace(fact, kind="ask", value="load_kg", note={})
    return out
