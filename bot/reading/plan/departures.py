"""How a day departed from the plan, in words that name no new value: "took 5 off", "a 4th rep on the last"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

VALUED = frozenset({"bare", "load"})


def but_for(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Only change was the chins, took 35": all else was as planned."""
    out: list[Fact] = []
    for fact in facts:
        out.append(fact)
        words = message.span(fact.start, fact.end).lower()
        if fact.kind == "plan" and words in little("only_change"):
            out[-1:] = [
                Fact("plan", fact.start, fact.end, "planned", {"names": ["planned", "all_lifts"]}),
                Fact("sep", fact.end, fact.end, 1, {"mark": ","}),
            ]
    return out


def last_of_lift(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Last dip set 5": five of it; no set has two places."""
    out: list[Fact] = []
    for fact in facts:
        last = out[-2:]
        named = [one.kind for one in last] == ["scope", "move"] and last[0].value in ("last", "first")
        if named and fact.kind == "scope" and fact.note.get("numbered"):
            fact = Fact("bare", fact.start, fact.end, float(fact.value), {"kg": float(fact.value)})
        out.append(fact)
    return out


def nth_go(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Only 1 on the second go": the second set."""
    return [
        fact
        for at, fact in enumerate(facts)
        if not (
            fact.value == "attempt" and at and facts[at - 1].kind == "scope" and isinstance(facts[at - 1].value, int)
        )
    ]


def taken_off(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Took 5 off for the last two": less by so much, where it can be no load by itself."""
    if any(row.assist_kg for row in rows):
        return list(facts)  # help that was taken off the body
    out: list[Fact] = []
    for fact in facts:
        number = out[-1] if out else None
        if number is not None and "off" in plan_names(fact) and number.kind in VALUED and number.value:
            kg = number.note.get("kg", number.value)
            if any(row.load_kg and row.load_kg > kg for row in rows):
                out[-1] = Fact("delta", number.start, fact.end, (kg, "load", -1), {"open": False})
                continue
        out.append(fact)
    return out


def stopped_after(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Stopped the pull-ups after set 2": so many of its sets."""
    out: list[Fact] = []
    for fact in facts:
        last = [one for one in out[-5:] if one.value != "the"][-3:]
        led = [one.kind for one in last] == ["plan", "move", "word"] and bool(plan_names(last[0]) & {"quit", "stopped"})
        led = led and message.tokens[last[2].start].text in little("after_set")
        if led and fact.kind == "scope" and isinstance(fact.value, int):
            out[-1] = Fact("count", fact.start, fact.end, fact.value, {"only": True, "stopped": True})
            out = [one for one in out if one is not last[0]]
            continue
        out.append(fact)
    return out


def missed_once(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Missed the last rep of the last set, got stuck halfway": one miss, told twice."""
    out: list[Fact] = []
    told = False
    for at, fact in enumerate(facts):
        if fact.kind == "fail" and told and fact.value is None and facts[at - 1].kind == "sep":
            continue
        told = (told or (fact.kind == "fail" and bool(fact.note.get("rep")))) and fact.value != 3
        out.append(fact)
    return out
