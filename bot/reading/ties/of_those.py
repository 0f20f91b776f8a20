"""Some of the sets told, and nobody says which: "4x6, 2 of them with 10 kg", "5x5, davon zwei pausiert"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import clause_end
from bot.reading.facts import Entry, Fact
from bot.reading.message import Message

MOST_EITHER = 12  # beyond it nobody does so many sets
OF_A_SET = {"load": "load_kg", "at": "load_kg", "assist": "assist_kg", "effort": "rpe", "thing": "load_kg"}
MARKS = {"eccentric": "eccentric", "upper_half": "rom", "lower_half": "rom", "half": "rom"}  # other flags are pauses


def of_those(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, what is said of some of the sets asked, of all of them theirs; of reps of one set it is dropped."""
    if message.context.today:
        return facts
    for at, fact in enumerate(facts):
        if fact.kind != "count" or not fact.note.get("those"):
            continue
        told = next((one for one in reversed(facts[:at]) if one.kind in ("rows", "bare", "count")), None)
        if told is None or told.note.get("each_of") or told.note.get("mark") == "+":
            continue
        counted = next((one for one in reversed(facts[:at]) if one.kind in ("rows", "count")), None)
        if told.kind == "bare" and counted is not None and counted.kind == "count":
            told = counted  # "5 sets of pull-ups of 5, 3 of them …"
        end = clause_end(facts, at + 1)
        clause = facts[at + 1 : end]
        many, reps = _size(told)
        instead = _said(fact, clause, facts[end - 1].end, many, reps)
        if instead is None:
            continue
        kept = [one for one in clause if one.kind == "move"]
        if instead and instead[0].value == "reps" and told.kind == "rows" and many > 1:
            rows = replace(told, value=[Entry(ask="reps") for _ in told.value])
            noise = Fact("word", fact.start, fact.end, None, {"noise": True})
            return [*(rows if one is told else one for one in facts[:at]), noise, *kept, *facts[end:]]
        if instead and instead[0].kind == "scope":
            kept = list(clause)
        return [*facts[:at], *instead, *kept, *facts[end:]]
    return facts


def _size(told: Fact) -> tuple[int, float]:
    """How many sets a fact tells, and of how many reps where it is one."""
    if told.kind == "rows":
        return len(told.value), float(told.value[0].reps or 0)
    return (int(told.value), 0.0) if told.kind == "count" else (1, float(told.value))


def _said(some: Fact, clause: Sequence[Fact], end: int, many: int, reps: float) -> Sequence[Fact] | None:
    """What stands for "so many of them" and its clause; None: it is left as it is."""
    about = _about(clause)
    asked = Fact("ask", some.start, end, about, {"some": True})
    noise = Fact("word", some.start, some.end, None, {"noise": True})
    if many == 1:
        if reps <= some.value:
            return None  # "3 pull-ups, 5 of those"
        if not about and not clause and reps <= MOST_EITHER:
            return [replace(asked, value="sets")]  # "6 pull-ups, 4 of them": so many sets, or of the six
        return [asked] if about else [noise]
    if many == some.value:
        return [replace(some, kind="scope", value="all", note={"text": ""})]
    if some.value > many:
        return None
    return [asked] if about else [noise]


def _about(clause: Sequence[Fact]) -> str | None:
    """What a clause says of some sets; None: nothing that is kept of a set."""
    for fact in clause:
        if fact.kind in ("rows", "bare"):
            return "reps"
        if fact.kind == "fail" and not fact.note.get("weak"):
            return "sets"
        if fact.kind in OF_A_SET:
            return OF_A_SET[fact.kind]
        if fact.kind == "flag":
            return MARKS.get(fact.value, "pauses")
    return None
