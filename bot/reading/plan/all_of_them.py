"""All of the planned sets, by their number: "all 5 sets rpe 8", "las dos series", "27,5 en las cuatro"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import ends_sentence
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import counted_rows
from bot.reading.plan.ground import members, plan_names


def all_of_them(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "All 5 sets rpe 8" of five planned: all of them, not five of something."""
    out: list[Fact] = []
    move: Fact | None = None  # named before in the sentence
    first = next((at for at, fact in enumerate(facts) if fact.kind in ("bare", "count", "rows", "load")), None)
    for at, fact in enumerate(facts):
        move = fact if fact.kind == "move" else None if ends_sentence(fact) else move
        if move is not None and _all_of_lift(facts, at, move, rows):
            out[-1] = Fact("scope", out[-1].start, fact.end, "all", {"text": "", "names": ["done"]})
            continue
        counted = fact.kind == "count" and not fact.note.get("of_plan") and out and out[-1].kind == "scope"
        led = bool(out) and bool(plan_names(out[-1]) & {"the"})
        the = fact.kind == "count" and len(facts) > 2 and led
        if the and not fact.note.get("of_plan") and counted_rows(rows, int(fact.value)):
            out[-1] = Fact("scope", out[-1].start, fact.end, "all", {"text": ""})  # "las dos series"
            continue
        of_load = (
            led
            and fact.kind == "bare"
            and (fact.note.get("spelled") or any(one.kind == "instead" for one in out))
            and any(one.kind in ("bare", "load", "instead") for one in out[-4:])
        )
        if of_load and counted_rows(rows, int(fact.value)):
            out[-1] = Fact("scope", out[-1].start, fact.end, "all", {"text": ""})  # "27,5 en las cuatro"
            continue
        ends = at + 1 == len(facts) or facts[at + 1].kind == "sep"
        those = led and fact.kind == "bare" and fact.note.get("spelled") and ends and len(facts) > 2
        if those and at == first and len(counted_rows(rows, int(fact.value))) == len(rows):
            out[-1] = Fact("scope", out[-1].start, fact.end, "all", {"text": "", "names": ["done"]})
            continue  # "did the four and then a fifth"
        verb = at + 1 < len(facts) and facts[at + 1].value == "got"
        again = led and verb and fact.kind == "bare"
        if again and any(one.kind == "count" and one.value == fact.value for one in out):
            continue  # "stopped after three sets. The three were clean"
        of_all = fact.kind == "bare" and ends and bool(out) and out[-1].kind == "scope" and out[-1].value == "all"
        of_all = of_all and any(one.kind in ("instead", "rows", "load") for one in out)
        if of_all and counted_rows(rows, int(fact.value)) and not any(row.reps == fact.value for row in rows):
            continue  # "doubles not triples, all 5"
        all_in = fact.kind == "bare" and bool(out) and out[-1].kind == "scope" and out[-1].value == "all"
        behind = {token.text for token in message.tokens[fact.end : fact.end + 1]}
        all_in = all_in and fact.start == out[-1].end and not behind.isdisjoint(little("all_in"))  # "all 4 in"
        all_in = all_in and len(counted_rows(rows, int(fact.value))) == len(rows)
        if (counted or all_in) and out[-1].value == "all" and counted_rows(rows, int(fact.value)):
            out[-1] = replace(out[-1], end=fact.end, note={**out[-1].note, "sets": int(fact.value), "names": ["done"]})
            continue
        out.append(_all_sets(message, facts, at, rows))
    return out


def _all_of_lift(facts: Sequence[Fact], at: int, move: Fact, rows: Sequence[Row]) -> bool:
    """ "Planche good, all 4": a number behind "all" or "the" that is of the sets of the lift, and of no reps there."""
    fact, before = facts[at], facts[at - 1] if at else None
    after = facts[at + 1] if at + 1 < len(facts) else None
    if fact.kind != "bare" or before is None or before is move or before.end != fact.start:
        return False
    led = bool(plan_names(before) & {"the"}) or (before.kind, before.value) == ("scope", "all")
    closes = after is None or after.kind == "sep" or bool(plan_names(after) & {"fine", "done", "planned"})
    own = [row for row in rows if row.movement in members(move.value)]
    if not led or not closes or any(fact.value in (row.reps, row.hold_s) for row in own):
        return False
    return fact.value in (len(own), len(own) / (2 if own and own[0].side else 1))


def _all_sets(message: Message, facts: Sequence[Fact], at: int, rows: Sequence[Row]) -> Fact:
    """ "All five sets, but with 20" of five planned: they were done."""
    fact = facts[at]
    told = message.tokens[fact.end - 1] if fact.kind == "scope" and fact.value == "all" and fact.end else None
    if told is None or not told.spelled or not told.value or len(counted_rows(rows, int(told.value))) != len(rows):
        return fact
    after = facts[at + 1] if at + 1 < len(facts) else None
    sets = after is not None and after.kind == "word" and str(after.value) in little("sets_only")
    if not sets and message.tokens[fact.end : fact.end + 1] and message.tokens[fact.end].text not in little("all_in"):
        return fact
    return replace(fact, note={**fact.note, "sets": int(told.value), "names": ["done"]})
