"""The sets of a planned lift, told one after the other: "2x6, then 5, then 3", "three sixes and the last one 7"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import COMMA, SENTENCE, THEN
from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, plan_names
from bot.reading.plan.value import near_load

MOST_MORE = 3  # reps beyond the planned ones that are believed of a lone number
MOST_LONGER = 2.0  # times the planned seconds
PAIR = 2
LIGHT, HEAVY = 1 / 3, 2  # of the planned load: what a number is believed to be in place of it


def told_in_turn(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, with one list in place of numbers that "then" and "the last one" part, where they are all the sets."""
    out: list[Fact] = []
    planned = _planned(None, rows)
    at = 0
    while at < len(facts):
        if facts[at].kind == "move" or facts[at].value == SENTENCE:
            planned = _planned(facts[at], rows)
        begins = bool(planned) and facts[at].kind in ("rows", "bare", "repeat")
        found = _run(message, facts, at, planned) if begins else None
        if found is None:
            out.append(facts[at])
            at += 1
            continue
        entries, load, end = found
        out.append(Fact("rows", facts[at].start, facts[end - 1].end, entries, {"list": True, "in_turn": True}))
        out += load
        at = end
    return out


def _planned(named: Fact | None, rows: Sequence[Row]) -> list[Row]:
    """The planned sets that a number may be of: those of the lift named before it, else the main lift's."""
    if named is not None and named.kind == "move":
        own = [row for row in rows if row.movement in members(named.value) and row.part != "warm_up"]
    else:
        own = [rows[n] for n in main_rows(rows)]
    return [] if any(row.side for row in own) else own


def _run(
    message: Message, facts: Sequence[Fact], at: int, planned: Sequence[Row]
) -> tuple[list[Entry], list[Fact], int] | None:
    """The entries told from here on, the load told with the last, and where they end; None: no such list."""
    entries: list[Entry] = []
    load: list[Fact] = []
    parted, parts, n, end = False, 0, at, at
    while n < len(facts) and len(entries) < len(planned):
        fact = facts[n]
        if fact.kind == "sep" and fact.value in (COMMA, THEN):
            parted = parted or fact.value == THEN
            n += 1
            continue
        if (parts and _small(message, fact)) or plan_names(fact) & {"only", "the"}:
            n += 1
            continue
        last = fact.kind == "scope" and fact.value in ("last", len(entries) + 1) and len(entries) + 1 == len(planned)
        if parts and last and n + 1 < len(facts):
            told, load = _one(facts[n + 1], planned)
            parted, step = True, PAIR
        elif fact.kind == "repeat" and n + 1 < len(facts):
            told, _ = _one(facts[n + 1], planned)
            told, step = [one for _ in range(int(fact.value)) for one in told[:1]], PAIR
        else:
            told, load = _one(fact, planned)
            step = 1
        if not told:
            return None
        entries += told
        n, parts = n + step, parts + 1
        end = n
    if not parted or parts < PAIR or len(entries) != len(planned):
        return None
    after = facts[end] if end < len(facts) else None
    if after is not None and after.kind in ("rows", "bare", "loads", "effort", "at", "instead"):
        return None
    if after is not None and after.kind == "load" and after.value != planned[0].load_kg:
        return None  # "2x6, then one with 15"
    return [_held(one, planned) for one in entries], load, end


def _one(fact: Fact, planned: Sequence[Row]) -> tuple[list[Entry], list[Fact]]:
    """What a fact tells of one or more sets, and a load behind it; nothing where it may be no reps."""
    most = max(row.hold_s * MOST_LONGER if row.hold_s else (row.reps or 0) + MOST_MORE for row in planned)
    if fact.kind == "loads" and len(fact.value) == PAIR and near_load(fact.value[1], planned):
        reps = fact.value[0]
        if reps == int(reps) and 0 < reps <= most and not near_load(reps, planned):
            load = Fact("load", fact.start, fact.end, fact.value[1], {"how": None})
            return [Entry(int(reps))], [load]  # "the last one 5, 25 kg"
    if fact.kind == "bare" and fact.value == int(fact.value) and 0 < fact.value <= most:
        return [Entry(int(fact.value))], []
    plain = fact.kind == "rows" and fact.note.get("mark") != "/" and not fact.note.get("the")
    if plain and not any(one.side or one.load_kg is not None or one.ask for one in fact.value):
        return [replace(one) for one in fact.value], []
    return [], []


def _held(one: Entry, planned: Sequence[Row]) -> Entry:
    """Seconds, where the plan has holds."""
    if planned[0].hold_s is None or one.reps is None:
        return one
    return Entry(None, float(one.reps))


def _small(message: Message, fact: Fact) -> bool:
    """Whether a word stands only between the numbers: "nochmal", "was"."""
    words = {token.text for token in message.tokens[fact.start : fact.end]}
    return fact.kind in ("word", "scheme") and words <= little("in_turn_beside")


def loads_in_turn(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "12.5 kg, then twice 20 kg, then 32.5", "kilos: 15, then 20, 20 again and 25": one load a planned set."""
    out: list[Fact] = []
    planned = _planned(None, rows)
    at = 0
    while at < len(facts):
        if facts[at].kind == "move" or facts[at].value == SENTENCE:
            planned = _planned(facts[at], rows)
        begins = bool(planned) and bool(planned[0].load_kg) and facts[at].kind in ("load", "bare", "repeat")
        found = _loads(message, facts, at, planned) if begins else None
        if found is None:
            out.append(facts[at])
            at += 1
            continue
        loads, end = found
        out.append(Fact("loads", facts[at].start, facts[end - 1].end, loads))
        at = end
    return out


def _loads(message: Message, facts: Sequence[Fact], at: int, planned: Sequence[Row]) -> tuple[list[float], int] | None:
    """The loads told from here on, and where they end; None: no such list."""
    led = {message.tokens[n].text for fact in facts[max(0, at - PAIR) : at] for n in range(fact.start, fact.end)}
    loads: list[float] = []
    often, parted, weighed, n = 1, False, bool(led & little("load_names")), at
    while n < len(facts) and len(loads) < len(planned):
        fact = facts[n]
        last = fact.kind == "scope" and fact.value == "last" and len(loads) + 1 == len(planned)
        if fact.kind == "repeat":
            often = int(fact.value)
        elif fact.kind in ("load", "bare") and fact.value:
            kg = float(fact.note.get("kg", fact.value))
            if not _plate(kg, planned) or (fact.kind == "load" and fact.note.get("none")):
                return None
            weighed = weighed or (fact.kind == "load" and bool(fact.note.get("unit")))
            loads += [kg] * often
            often = 1
        elif fact.kind == "sep" and fact.value in (COMMA, THEN):
            parted = parted or fact.value == THEN
        elif not last and not _small(message, fact):
            return None
        n += 1
    full = len(loads) == len(planned) and parted and weighed and len(set(loads)) > 1
    return (loads, n) if full else None


def _plate(kg: float, planned: Sequence[Row]) -> bool:
    """Whether a number may be a load in place of the planned one."""
    load = planned[0].load_kg or 0.0
    return load * LIGHT <= kg <= load * HEAVY
