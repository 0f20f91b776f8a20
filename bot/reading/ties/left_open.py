"""Numbers told as one of two: "between 8 and 10 reps", "seven, maybe eight", "with either 12.5 or 15"; asked."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import SENTENCE, is_comma, is_then
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.rules import Rule

MOST_APART = 3  # reps that one may be out by
MOST_REPS = 60
LEAST_LOAD = 10.0
PAIR = 2  # loads told for as many sets are one each


def _open_reps(first: Fact, last: Fact) -> Fact:
    return Fact("rows", first.start, last.end, [Entry(ask="reps")], {"one": True, "bare": True})


def _reps(fact: Fact) -> float | None:
    """The reps that one number may tell."""
    if fact.kind == "bare" and fact.value == int(fact.value) and not fact.note.get("comma"):
        return float(fact.value)
    if fact.kind == "rows" and fact.note.get("reps") and len(fact.value) == 1 and not fact.note.get("own_load"):
        reps = fact.value[0].reps
        return None if reps is None else float(reps)
    return None


def _between(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "Between 8 and 10 reps", "4 Sätze, zwischen 8 und 10": reps by their word, or of sets counted."""
    out = list(facts)
    for at in range(len(out) - 4, -1, -1):
        if at + 4 > len(out):
            continue  # taken by the one behind
        led, low, joined, high = out[at : at + 4]
        if led.kind != "word" or not _says(message, led, "between"):
            continue
        if joined.note.get("mark") != "and" or (_reps(low) or 0) >= (_reps(high) or 0) or _reps(low) is None:
            continue
        untold = any(fact.kind == "count" for fact in out[:at]) and not any(fact.kind == "rows" for fact in out[:at])
        if high.kind == "rows" or untold:
            out[at : at + 4] = [_open_reps(low, high)]
    return out


def _perhaps(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "Seven, maybe eight", "7 vielleicht 8"."""
    out = list(facts)
    for at in range(len(out) - 3, -1, -1):
        low, *rest = out[at : at + 4]
        middle = 1 if rest and is_comma(rest[0]) else 0
        if len(rest) < 2 + middle:
            continue
        doubt, high = rest[middle : middle + 2]
        first, second = _reps(low), _reps(high)
        if doubt.kind != "word" or not _says(message, doubt, "in_doubt") or first is None or second is None:
            continue
        if 0 < abs(second - first) <= MOST_APART and max(first, second) <= MOST_REPS:
            out[at : at + middle + 3] = [_open_reps(low, high)]
    return out


def _says(message: Message, fact: Fact, name: str) -> bool:
    return any(message.tokens[at].text in little(name) for at in range(fact.start, fact.end))


def _either_load(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "4x6 with either 12.5 or 15": behind whole sets and a word that carries, two numbers are loads."""
    out = list(facts)
    for at in range(2, len(out)):
        told = out[at]
        if told.kind != "rows" or len(told.value) != 1 or told.value[0].ask != "reps":
            continue
        led = at - 1
        while led > 0 and at - led < PAIR and out[led].kind == "word" and str(out[led].value) not in little("carrying"):
            led -= 1
        sets = out[led - 1]
        whole = sets.kind == "rows" and "own_load" not in sets.note and all(entry.reps for entry in sets.value)
        if whole and out[led].kind == "word" and str(out[led].value) in little("carrying"):
            out[at] = Fact("ask", told.start, told.end, "load_kg")
    return out


def _loads_for_several(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Three sets of 4, with 15 and 20", "4 sets with 25 then 20": two loads, and which set had which is not said."""
    told = [(at, fact) for at, fact in enumerate(facts) if fact.kind != "word" and fact.note.get("mark") != ","]
    for n in range(len(told) - 3):
        (_, sets), (first, load), (_, joined), (last, other) = told[n : n + 4]
        whole = sets.kind == "rows" and len(sets.value) > PAIR and all(entry.reps for entry in sets.value)
        then = is_then(joined)
        counted = sets.kind == "count" and sets.value >= PAIR and then and not sets.note.get("of_plan")
        if not (whole or counted) or load.kind != "load" or not load.value:
            continue
        figure = other.kind == "bare" and not other.note.get("spelled") and other.value >= LEAST_LOAD
        weight = figure or (other.kind == "load" and bool(other.value) and then)
        ends = n + 4 == len(told) or told[n + 4][1].kind == "sep"
        near = weight and load.value / 2 <= float(other.note.get("kg", other.value)) <= load.value * 2
        goes_on = then and n + 4 < len(told) and told[n + 4][1].value != SENTENCE  # "with 10, then 15, then 20"
        parted = all(fact.kind == "sep" for fact in facts[first + 1 : last])
        if near and ends and not goes_on and parted and (then or joined.note.get("mark") == "and"):
            return [*facts[:first], Fact("ask", load.start, other.end, "load_kg"), *facts[last + 1 :]]
    return facts


RULES: tuple[tuple[Rule, str], ...] = (
    (_between, "'between word sep bare|rows"),
    (_perhaps, "'in_doubt word bare|rows"),
    (_either_load, "'carrying rows word"),
    (_loads_for_several, "rows|count load sep"),
)
