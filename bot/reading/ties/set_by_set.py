"""Sets told one after the other in a sentence: which of the numbers beside them are reps, and which are loads."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import is_strong
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.rules import Rule

LOADED = frozenset("pull_up chin_up neutral_grip_pull_up ring_pull_up dip ring_dip muscle_up".split())
LEAST_IN_TURN = 2
MOST_REPS = 25
LEAST_LOAD = 10  # of "then 20 and 5": kilograms and reps


def _at_the_end(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5x3 mit 20 und zum Schluss zehn ohne Gewicht": further work, with its own load; "die ersten drei je fünf"."""
    if message.context.today:
        return facts
    out = list(facts)
    for at, fact in enumerate(facts[:-1]):
        after = facts[at + 1 : at + 3]
        if fact.kind == "scope" and isinstance(fact.value, tuple) and _each_of_them(after):
            out[at + 1] = Fact("word", after[0].start, after[0].end, None, {"noise": True})
        if fact.kind != "scope" or fact.value != "last" or fact.note.get("text") not in little("at_the_end"):
            continue
        if {one.kind for one in after} in ({"load", "bare"}, {"load", "rows"}):
            out[at] = Fact("sep", fact.start, fact.end, 2)
            for n, one in enumerate(after, at + 1):
                if one.kind == "bare" and one.value == int(one.value) <= MOST_REPS:
                    out[n] = Fact("rows", one.start, one.end, [Entry(int(one.value))], {"one": True, "reps": True})
    return out


def _told_behind(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "The last set 9 to failure, before that 3x6": what was done before is told behind."""
    at = next(
        (
            n
            for n, fact in enumerate(facts)
            if fact.kind == "word" and message.tokens[fact.start].text in little("before_that")
        ),
        None,
    )
    first = next((n for n, fact in enumerate(facts) if fact.kind in ("scope", "rows", "bare")), len(facts))
    if at is None or at <= first or at + 1 >= len(facts) or any(fact.kind == "count" for fact in facts):
        return facts
    end = next((n for n in range(at + 1, len(facts)) if facts[n].kind in ("sep", "move")), len(facts))
    behind, before = list(facts[at + 1 : end]), list(facts[first:at])
    if not behind or behind[0].kind != "rows" or any(is_strong(fact) for fact in before):
        return facts
    kept = [fact for fact in before if not (fact.kind == "scope" and fact.value == "last")]
    if sum(fact.kind in ("rows", "bare") for fact in kept) != 1 or any(fact.kind == "fail" for fact in kept):
        return facts
    then = Fact("sep", facts[at].start, facts[at].end, 2)
    told = [
        replace(fact, kind="rows", value=[Entry(int(fact.value))], note={"one": True, "reps": True})
        if fact.kind == "bare" and fact.value == int(fact.value)
        else fact
        for fact in kept
    ]
    early = [fact for fact in told if fact.kind == "effort"]
    return [*facts[:first], *behind, then, *(fact for fact in told if fact not in early), *early, *facts[end:]]


def _each_of_them(after: Sequence[Fact]) -> bool:
    """ "Jeweils fünf": each of the sets named before, and no side."""
    each = len(after) > 1 and after[0].kind == "side" and bool(after[0].note.get("plain"))
    return each and after[1].kind == "bare"


def _each_by_its_place(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Three sets, the first with eight, the second with seven": where no reps are told, and they do not rise."""
    if any(fact.kind in ("rows", "bare", "loads", "at") for fact in facts):
        return facts
    told: list[int] = []
    for at, fact in enumerate(facts):
        nth = {"first": 1, "last": len(told) + 1}.get(fact.value, fact.value) if fact.kind == "scope" else None
        after = facts[at + 1] if nth == len(told) + 1 and at + 1 < len(facts) else None
        if after is not None and _plain(after):
            told.append(at + 1)
    values = [float(facts[at].value) for at in told]
    loads = [fact for fact in facts if fact.kind == "load" and fact.value]
    counted = next((fact.value for fact in facts if fact.kind == "count"), len(told))
    falling = values == sorted(values, reverse=True)
    if len(told) < LEAST_IN_TURN or counted != len(told) or not falling or sum(map(_plain, loads)) > len(told):
        return facts
    out = [fact for fact in facts if fact.kind != "count"]
    rows = [Entry(int(value)) for value in values]
    first, last = facts[told[0]], facts[told[-1]]
    merged = Fact("rows", first.start, last.end, rows, {"list": True, "mark": ","})
    scopes = {id(facts[at - 1]) for at in told} | {id(facts[at]) for at in told[1:]}
    return [merged if fact is first else fact for fact in out if id(fact) not in scopes]


def _plain(fact: Fact) -> bool:
    """Whether a load may as well be reps: "with eight", no unit."""
    if fact.kind != "load" or fact.note.get("how") != "at" or fact.note.get("unit") or not fact.value:
        return False
    return bool(fact.value == int(fact.value) <= MOST_REPS)


def _ends_with_one(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5 with 10, then 3 with 20 and at the end one with 25": the last is one rep, and not the last of the sets."""
    out = list(facts)
    steps = 0
    for at, fact in enumerate(facts[:-1]):
        after = facts[at + 1]
        if fact.kind == "bare" and after.kind == "load" and after.value and after.note.get("how") == "at":
            steps += 1
        elif fact.kind == "rows" and len(fact.value) > 1:
            steps = 0
        elif fact.kind == "scope" and fact.value == ("last", 1) and after.kind == "load" and steps >= LEAST_IN_TURN:
            out[at] = Fact("rows", fact.start, fact.end, [Entry(1)], {"one": True, "reps": True})
    return out


def _load_and_reps(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "25 kg and 3 reps, then 20 and 5, then 15 and 7": lighter each time, and more reps."""
    told = [(at, fact) for at, fact in enumerate(facts) if fact.kind not in ("word", "plan", "scheme", "move")]
    led = _first_pair([fact for _, fact in told])
    if led is None:
        return facts
    kg, reps, n = led
    out = list(facts)
    while n + 3 < len(told) and _parts(told[n][1]):
        n += 1
        while n + 3 <= len(told) and _parts(told[n][1]):
            n += 1
        trio = told[n : n + 3]
        if len(trio) < 3 or [fact.kind for _, fact in trio] != ["bare", "sep", "bare"]:
            break
        (load, heavy), (_, mark), (_, many) = trio
        lighter = LEAST_LOAD <= heavy.value < kg and reps < many.value <= MOST_REPS and many.value < heavy.value
        if mark.note.get("mark") != "and" or not lighter:
            break
        kg, reps = float(heavy.value), many.value
        own = {"own_load": float(heavy.note.get("kg", kg)), "one": True, "reps": True}
        out[load] = Fact("rows", heavy.start, many.end, [Entry(int(reps))], own)
        n += 3
    taken = [fact for fact in out if fact.kind == "rows" and "own_load" in fact.note]
    inside = [(fact.start, fact.end) for fact in taken]
    return [
        fact
        for fact in out
        if fact in taken or fact.kind == "move" or not any(start <= fact.start < end for start, end in inside)
    ]


def _parts(fact: Fact) -> bool:
    return fact.kind == "sep" and fact.note.get("mark") != "and"


def _first_pair(told: Sequence[Fact]) -> tuple[float, float, int] | None:
    """The load and the reps of the first set, and where it ends: "25 kg and 3 reps"."""
    at = next((n for n, fact in enumerate(told) if fact.kind == "load" and fact.value), None)
    if at is None or at + 2 >= len(told) or any(fact.kind in ("rows", "bare") for fact in told[:at]):
        return None
    joined, work = told[at + 1], told[at + 2]
    if joined.note.get("mark") != "and" or work.kind != "rows" or len(work.value) != 1 or not work.value[0].reps:
        return None
    return float(told[at].value), float(work.value[0].reps), at + 3


RULES: tuple[tuple[Rule, str], ...] = (
    (_at_the_end, "scope"),
    (_told_behind, "'before_that word rows"),
    (_each_by_its_place, "scope load"),
    (_ends_with_one, "bare load scope"),
    (_load_and_reps, "rows load"),
)
