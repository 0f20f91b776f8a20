"""Reps of every set told in few words: "8 por serie", "all sets, but of six", "brought the reps down to 4"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, plan_names
from bot.reading.plan.value import near_load, near_reps


def each_so_many(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, with the number as the reps of all sets."""
    out: list[Fact] = []
    move: Fact | None = None
    for at, fact in enumerate(facts):
        move = fact if fact.kind == "move" else move
        own = [row for row in rows if move is not None and row.movement in members(move.value)]
        own = own or [rows[n] for n in main_rows(rows)]
        after = facts[at + 1] if at + 1 < len(facts) else None
        if fact.kind == "bare" and after is not None and _per_set(message, after) and _reps(fact.value, own):
            out.append(_reps_of_all(fact))
            continue
        if fact.kind == "load" and not fact.note.get("unit") and _brought_to(message, out, fact) and own:
            the_reps = out[-2:] if len(out) > 1 and plan_names(out[-2]) == {"the"} else out[-1:]
            del out[-len(the_reps) :]
            if out and "turned_to" in plan_names(out[-1]):
                out.pop()
            out += [Fact("scope", fact.start, fact.start, "all", {"text": ""}), _reps_of_all(fact)]
            continue
        out.append(fact)
    return out


def not_reached(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "All four 16 seconds, didn't get to 18", "…, instead of 18": what was planned is no value of a set."""
    planned = {float(value) for row in rows for value in (row.reps, row.hold_s, row.load_kg) if value}
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        before = out[-1] if out else None
        led = before is not None and before.kind == "plan" and _text(message, before) in little("not_reached")
        closes = at + 1 == len(facts) or facts[at + 1].kind == "sep"
        apart = before is not None and "instead" in plan_names(before) and len(out) > 1 and out[-2].kind == "sep"
        led = led or (apart and fact.kind == "bare" and fact.value in planned)
        told = any(one.kind in ("rows", "bare", "load") and (one.value != fact.value) for one in out)
        single = fact.kind == "bare" or (fact.kind == "rows" and bool(fact.note.get("one")))
        if led and single and closes and told and before is not None:
            out[-1] = Fact("word", before.start, fact.end, None, {"noise": True})
            continue
        out.append(fact)
    return out


def _reps_of_all(fact: Fact) -> Fact:
    return Fact("rows", fact.start, fact.end, [Entry(int(fact.value))], {"one": True, "reps": True})


def _per_set(message: Message, fact: Fact) -> bool:
    """ "8 por serie": a number of every set, in words that tell no effort."""
    return fact.kind == "scope" and fact.value == "all" and _text(message, fact) in little("per_set")


def _reps(value: float, own: Sequence[Row]) -> bool:
    return value > 0 and near_reps(value, own) and not near_load(value, own)


def _brought_to(message: Message, before: Sequence[Fact], fact: Fact) -> bool:
    """ "Bajé las reps a 4": reps are what was brought to the number."""
    named = before[-1] if before else None
    if named is None or named.kind != "word" or _text(message, named) not in little("rep_word", "brought_reps"):
        return False
    led = [one for one in before[-3:-1] if plan_names(one) != {"the"}]
    return bool(led) and "turned_to" in plan_names(led[-1]) and fact.value == int(fact.value)


def _text(message: Message, fact: Fact) -> str:
    return " ".join(token.text for token in message.tokens[fact.start : fact.end])
