"""A load or an effort for each planned set, told one by one: "rpe went 7 then 7.5 then 8", "15, 25 twice, then 35"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from bot.reading.bounds import within_sentence
from bot.reading.facts import Entry, Fact
from bot.reading.fold.block import to_kg
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, plan_names
from bot.reading.plan.value import near_load, near_reps

LEAST = 3  # values; two are a change, and told so
LEAST_EFFORT, MOST_EFFORT = 5, 10
LED = 9  # tokens from the word that names the values to the first of them


@dataclass
class _Run:
    """Numbers one behind the other, from a place of the facts to behind the last of them."""

    start: int
    end: int
    values: list[float] = field(default_factory=list)
    kg: list[float] = field(default_factory=list)
    placed: bool = False  # each names its own set
    rated: bool = False  # the first is an effort
    bare: bool = True  # all are numbers alone
    unit: bool = False  # one of them has a unit of load


def values_one_by_one(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts, with one list in place of such a run; unchanged where it is of another number of sets."""
    sets = _sets(facts, rows)
    if len(sets) < LEAST:
        return facts
    at = 0
    while at < len(facts):
        run = _run(message, facts, at)
        if len(run.values) == len(sets) and len(set(run.values)) > 1:
            first, last = facts[run.start], facts[run.end - 1]
            if run.rated or (_named(message, first, "effort_word") and _efforts(run.values)):
                return _rated(facts, run) if _efforts(run.values) else facts
            if _loads(message, first, run, sets):
                told = Fact("loads", first.start, last.end, run.kg)
                return [*facts[: run.start], told, *facts[run.end :]]
            if run.bare and all(near_reps(value, sets) for value in run.values):
                entries = [Entry(int(value)) for value in run.values]
                told = Fact("rows", first.start, last.end, entries, {"list": True, "mark": ",", "outcome": True})
                return [*facts[: run.start], told, *facts[run.end :]]
        at = max(at + 1, run.end)
    return facts


def _sets(facts: Sequence[Fact], rows: Sequence[Row]) -> list[Row]:
    """The planned sets spoken of: of the one lift named, or of the main lift; none where they have sides."""
    moves = [fact.value for fact in facts if fact.kind == "move" and fact.value.movement != "!"]
    named = [row for row in rows if moves and row.movement in members(moves[0]) and row.part != "warm_up"]
    own = named if moves else [rows[at] for at in main_rows(rows)]
    return [] if len(moves) > 1 or any(row.side is not None for row in own) else own


def _run(message: Message, facts: Sequence[Fact], at: int) -> _Run:
    """The numbers that stand one behind the other from a place on."""
    run = _Run(at, at)
    own, many = 0, 1
    for place in range(at, len(facts)):
        fact = facts[place]
        numbers = _numbers(fact)
        if numbers:
            run.rated = run.rated or (fact.kind == "effort" and not run.values)
            run.unit = run.unit or bool(fact.note.get("unit"))
            run.bare = run.bare and fact.kind == "bare"
            run.values += numbers * many
            weighed = fact.kind in ("load", "loads")
            run.kg += (numbers if weighed else [to_kg(value, message.context.unit) for value in numbers]) * many
            run.end, many = place + 1, 1
        elif fact.kind == "count" and _numbers_next(facts, place):
            many = int(fact.value)  # "two sets at 30"
        elif fact.kind == "repeat" and run.values and isinstance(fact.value, int):
            run.values += [run.values[-1]] * (fact.value - 1)
            run.kg += [run.kg[-1]] * (fact.value - 1)
            run.end = place + 1
        elif fact.kind == "scope" and fact.value != "all" and (run.values or place + 1 < len(facts)):
            own += 1
            run.end = place + 1 if run.values and not _numbers_next(facts, place) else run.end
        elif not _links(message, fact):
            break
    run.placed = own >= len(run.values) > 0
    return run


def _numbers(fact: Fact) -> list[float]:
    if fact.kind == "bare" or (fact.kind in ("load", "effort") and fact.value):
        return [float(fact.value)]
    if fact.kind == "loads":
        return [float(value) for value in fact.value]
    listed = fact.kind == "rows" and fact.note.get("list") and not fact.note.get("reps")
    if listed and all(entry.reps and not entry.load_kg for entry in fact.value):
        return [float(entry.reps) for entry in fact.value]
    return []


def _numbers_next(facts: Sequence[Fact], at: int) -> bool:
    return at + 1 < len(facts) and bool(_numbers(facts[at + 1]))


def _links(message: Message, fact: Fact) -> bool:
    """Whether a fact only leads on to the next number."""
    if within_sentence(fact) or plan_names(fact) == {"the"}:
        return True
    words = {message.tokens[at].text for at in range(fact.start, fact.end)}
    return fact.kind == "word" and words <= little("leads_on")


def _named(message: Message, first: Fact, names: str) -> bool:
    """Whether the values are named ahead of the first: "rpe went 7 …", "the plates went 15 …"."""
    start = next((low for low, high in message.sentences if low <= first.start < high), 0)
    ahead = message.tokens[max(start, first.start - LED) : first.start + 1]
    numbers = [n for n, token in enumerate(ahead[:-1]) if token.value is not None and token.value > LEAST_EFFORT]
    return any(token.text in little(names) for token in ahead[numbers[-1] + 1 if numbers else 0 :])


def _efforts(values: Sequence[float]) -> bool:
    return all(LEAST_EFFORT <= value <= MOST_EFFORT and value * 2 == int(value * 2) for value in values)


def _rated(facts: Sequence[Fact], run: _Run) -> list[Fact]:
    """The facts with the run as efforts: one of each set that is named, or a list."""
    first, last = facts[run.start], facts[run.end - 1]
    if not run.placed:
        told = Fact("efforts", first.start, last.end, run.values)
        return [*facts[: run.start], told, *facts[run.end :]]
    out = list(facts)
    for at in range(run.start, run.end):
        if facts[at].kind == "bare":
            out[at] = Fact("effort", facts[at].start, facts[at].end, float(facts[at].value), {"rated": True})
        elif facts[at].kind == "effort":
            out[at] = replace(facts[at], note={**facts[at].note, "rated": True})
    return out


def _loads(message: Message, first: Fact, run: _Run, sets: Sequence[Row]) -> bool:
    """Whether such numbers are of loads: near what is planned, and no reps."""
    if not all(row.load_kg for row in sets) or not all(near_load(value, sets) for value in run.kg):
        return False
    sure = run.unit or _named(message, first, "load_names")
    halves = any(value != int(value) for value in run.values)
    return sure or halves or not any(near_reps(value, sets) for value in run.values)
