"""The planned sets told by their number: "push-ups, the three of 20", "45 las tres veces"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import counted_rows
from bot.reading.plan.ground import members, plan_names


def sets_of_plan(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts with such numbers as the sets of the plan, where the plan has so many."""
    out: list[Fact] = []
    named: Sequence[Row] = ()
    for at, fact in enumerate(facts):
        if fact.kind == "move":
            named = [row for row in rows if row.movement in members(fact.value)]
        elif fact.kind == "sep" and fact.value == 3:
            named = ()
        closes = at + 1 == len(facts) or facts[at + 1].kind in ("sep", "claim")
        if closes and _each_time(out, fact, named or rows):
            out[-1] = Fact("scope", out[-1].start, fact.end, "all", {"text": ""})
            continue
        if closes and _all_there_were(out, fact, rows):
            continue
        many = _as_planned(message, out, fact, named or rows) if closes else 0
        if many:
            start = out[-2].start
            del out[-2:]
            entries = [Entry(int(fact.value)) for _ in range(many)]
            out.append(Fact("rows", start, fact.end, entries, {"plain": True}))
            continue
        out.append(fact)
    return out


def _each_time(before: Sequence[Fact], fact: Fact, rows: Sequence[Row]) -> bool:
    """ "45 the three times" of three planned sets."""
    led = bool(before) and bool(plan_names(before[-1]) & {"the"})
    return led and fact.kind == "repeat" and bool(counted_rows(rows, int(fact.value)))


def _all_there_were(before: Sequence[Fact], fact: Fact, rows: Sequence[Row]) -> bool:
    """ "Two more sets on top of the six": as many as were planned."""
    more = next((one for one in reversed(before) if one.kind in ("count", "sep")), None)
    told = more is not None and more.kind == "count" and bool(more.note.get("more"))
    return told and fact.kind == "bare" and bool(fact.note.get("the")) and bool(counted_rows(rows, int(fact.value)))


def _as_planned(message: Message, before: Sequence[Fact], fact: Fact, rows: Sequence[Row]) -> int:
    """How many sets "the three of 20" are, where the plan has three of twenty; else 0."""
    if fact.kind != "bare" or [one.kind for one in before[-2:]] != ["bare", "word"] or not before[-2].note.get("the"):
        return 0
    of = message.tokens[before[-1].start : before[-1].end]
    many = int(before[-2].value)
    own = [row for row in rows if fact.value in (row.reps, row.hold_s)]
    sets = len({(row.group, row.side) for row in own if row.side != "right"})
    alike = {row.movement for row in own}
    return many if len(of) == 1 and of[0].text in little("sets_of_reps") and sets == many and len(alike) == 1 else 0
