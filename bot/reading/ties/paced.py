"""Sets at a pace: "singles on the minute for 10 min", "emom 12 min, odd 5 dips, even 4 pull-ups"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.ties.values import reps_of

PACES = frozenset({"emom", "every"})
MOST_SETS, MOST_REPS = 60, 30
MINUTE = 60.0  # s
HOURS = ("8", "hours")


def paced(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with a set for each turn of the clock; two movements share the turns, or that is asked."""
    facts, turns = _hourly(message, facts) or (facts, _turns(facts))
    if turns is None:
        return facts
    spent = {id(fact) for fact in facts if _clock(fact)} | _said_again(facts, turns)
    told = [fact for fact in facts if id(fact) not in spent]
    work = [at for at, fact in enumerate(told) if fact.kind in ("rows", "bare", "count", "loads")]
    moves = [fact for fact in told if fact.kind == "move"]
    values = [reps_of(told[at]) for at in work]
    if not all(reps and reps <= MOST_REPS for reps in values) or any(map(_of_some, told)):
        return facts
    if len(values) == 1 and len(moves) <= 1:
        return _repeated(told, {work[0]: turns})
    if len(values) == len(moves) == 2:
        words = [fact for fact in told if fact.kind == "word"]
        turned = [fact for fact in words if message.tokens[fact.start].text in little("by_turns")]
        if turned:
            shared = _repeated(told, {work[0]: turns - turns // 2, work[1]: turns // 2})
            return [
                replace(fact, kind="sep", value=1, note={"mark": ","}) if fact in turned else fact for fact in shared
            ]
        if not any(fact.kind == "sep" and fact.note.get("mark") == "and" for fact in told[work[0] : work[1]]):
            asked = Fact("ask", told[work[0]].start, told[work[1]].end, "sets")
            return [*_repeated(told, dict.fromkeys(work, turns)), asked]
        return _repeated(told, dict.fromkeys(work, turns))
    return facts


def _hourly(message: Message, facts: Sequence[Fact]) -> tuple[Sequence[Fact], int] | None:
    """ "10 pull-ups every hour for 8 hours", "every 30 min for 3 hours": the facts without the clock, and its turns."""
    tokens = message.tokens
    hours = [fact for fact in facts if fact.kind == "word" and fact.note.get("noise") and _hours(message, fact)]
    paces = [at for at, fact in enumerate(facts) if fact.value in ("every", "all") and fact.kind in ("scheme", "scope")]
    if len(hours) != 1 or len(paces) != 1 or paces[0] + 1 >= len(facts):
        return None
    pace, unit = facts[paces[0] : paces[0] + 2]
    whole = unit.kind == "word" and tokens[unit.start].text in little("hour_words")
    minutes = MINUTE if whole else unit.value[0].hold_s / MINUTE if _clock(unit) and unit.kind == "rows" else 0
    turns = (_hours(message, hours[0]) or 0) * MINUTE / minutes if minutes else 0
    if turns != int(turns) or not 1 < turns <= MOST_SETS:
        return None
    return [fact for fact in facts if fact not in (pace, unit, hours[0])], int(turns)


def _hours(message: Message, fact: Fact) -> float | None:
    """How many hours a fact tells of."""
    told = message.tokens[fact.start : fact.end]
    hours = len(told) == len(HOURS) and told[0].value is not None and told[1].text in little("hour_words")
    return told[0].value if hours else None


def _clock(fact: Fact) -> bool:
    """What tells of the clock alone: "emom", "10 min", "for"."""
    minutes = fact.kind == "rows" and fact.note.get("unit") == "min" and bool(fact.note.get("one"))
    return minutes or (fact.kind == "scheme" and fact.value in PACES)


def _said_again(facts: Sequence[Fact], turns: int) -> set[int]:
    """ "Made all ten", "finished all 8 rounds": the turns of the clock once more."""
    out: set[int] = set()
    for before, fact in pairwise(facts):
        whole = before.kind == "scope" and before.value == "all"
        if fact.value == turns and (fact.kind == "rounds" or (whole and fact.kind in ("bare", "count"))):
            out |= {id(fact), id(before)} if whole else {id(fact)}
    return out


def _of_some(fact: Fact) -> bool:
    """What is said of some of the sets only."""
    missed = fact.kind == "fail" and not fact.note.get("weak")
    return missed or fact.kind == "left" or (fact.kind == "scope" and fact.value != "all")


def _turns(facts: Sequence[Fact]) -> int | None:
    """How often the clock comes round; None where it is not said."""
    paces = {fact.value for fact in facts if fact.kind == "scheme"} & PACES
    minutes = [fact.value[0].hold_s / MINUTE for fact in facts if _clock(fact) and fact.kind == "rows"]
    if len(paces) != 1 or len(minutes) != len(paces) + (paces == {"every"}):
        return None
    turns = max(minutes) / (min(minutes) if len(minutes) > 1 else 1)
    return int(turns) if turns == int(turns) and 1 < turns <= MOST_SETS else None


def _repeated(facts: Sequence[Fact], turns: dict[int, int]) -> list[Fact]:
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        if at in turns:
            entries = [Entry(reps_of(fact))] * turns[at]
            fact = Fact("rows", fact.start, fact.end, entries, {"plain": True})
        out.append(fact)
    return out
