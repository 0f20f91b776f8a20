"""Loads told apart from their sets: "5x3 @ 20, 22.5, 22.5, 25, 25", "25 for the first three, 20 for the rest"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.reading.facts import Fact, FactKind
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.rules import Rule
from bot.reading.ties.values import in_kg, kgs_of

LEAST_LOAD = 11  # a bare whole number below it may be reps or an effort
LEAST_SETS = 2
LEAST_PLATE = 15
OF_KILOGRAMS = frozenset({"load", "assist"})
ASIDE = frozenset({"word", "move", "weighted"})  # what may stand between sets and their loads


def _most_reps(facts: Sequence[Fact]) -> int:
    """Of any set told; where none is, its loads are of something else."""
    return max((entry.reps or 0 for fact in facts if fact.kind == "rows" for entry in fact.value), default=0)


def _by_plate(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "20er: 5 5 4, 15er: 6 6": nobody does a fifteenth set, the plate is meant."""
    if not _most_reps(facts):
        return facts
    out = list(facts)
    for at, (plate, work) in enumerate(pairwise(facts)):
        numbered = plate.kind == "scope" and isinstance(plate.value, int) and plate.value >= LEAST_PLATE
        if numbered and plate.note.get("numbered") and work.kind == "rows" and work.note.get("list"):
            out[at] = Fact("load", plate.start, plate.end, float(plate.value), {"how": "at"})
    return out


def _named(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5 sets of 7, weights 5/10/15/20/25": a list, as long as the sets told, that is named as loads."""
    for at, fact in enumerate(facts):
        values = fact.note.get("values") if fact.kind == "rows" and fact.note.get("list") else None
        led = next((n for n in range(at - 1, -1, -1) if not _aside(facts[n]) or _names_loads(facts[n])), None)
        if values is None or led is None or not _names_loads(facts[led]):
            continue
        sets = sum(len(one.value) for one in facts[:led] if one.kind == "rows")
        if sets == len(values) and not any(one.kind in OF_KILOGRAMS for one in facts):
            return [*facts[:at], replace(fact, kind="loads", value=in_kg(message, values), note={}), *facts[at + 1 :]]
    return facts


def _names_loads(fact: Fact) -> bool:
    return fact.kind == "word" and fact.value in little("load_names")


def _once_more(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "3x5 with 20, then again with 22.5": the same sets."""
    if not _most_reps(facts):
        return facts
    out = list(facts)
    for at in range(1, len(facts) - 1):
        led, word, load = facts[at - 1 : at + 2]
        again = word.kind == "word" and word.value in little("once_more") and load.kind == "load"
        if again and led.kind == "sep":
            out[at] = Fact("plan", word.start, word.end, "same", {"names": ["same"]})
    return out


def _one_each(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5x3 @ 20, 22.5, 22.5, 25, 25": as many loads as sets, one each; another number of them is asked."""
    if not _most_reps(facts):
        return facts
    for at, rows in enumerate(facts):
        if rows.kind != "rows" or len(rows.value) < LEAST_SETS or rows.note.keys() & {"own_load", "mark"}:
            continue
        first = next((n for n in range(at + 1, len(facts)) if not _aside(facts[n])), len(facts))
        if first == len(facts) or facts[first].kind != "load" or not facts[first].value:
            continue
        kgs, end = _row(message, facts, first, max(entry.reps or 0 for entry in rows.value))
        if len(kgs) < LEAST_SETS + (len(kgs) != len(rows.value)):
            continue
        span = facts[first].start, facts[end - 1].end
        loads = Fact("loads", *span, kgs) if len(kgs) == len(rows.value) else Fact("ask", *span, "load_kg")
        return [*facts[:first], loads, *_one_each(message, facts[end:])]
    return facts


def _aside(fact: Fact) -> bool:
    return fact.kind in ASIDE or (fact.kind == "sep" and fact.note.get("mark") in (",", ":"))


def _row(message: Message, facts: Sequence[Fact], first: int, reps: int) -> tuple[list[float], int]:
    """The loads in a row from `first` on, and the place after them; numbers too low for a load end it."""
    kgs, end, at = [float(facts[first].value)], first + 1, first + 1
    while at + 1 < len(facts) and facts[at].note.get("mark") in (",", "/", "and"):
        more = kgs_of(message, facts[at + 1])
        if not more or min(more) < LEAST_LOAD or min(more) <= reps + 1:
            break
        kgs += more
        end = at = at + 2
    after = facts[end] if end < len(facts) else None
    if after is not None and after.kind not in ("sep", "move", "effort", "claim", "word"):
        return kgs[:1], first + 1  # "5x3 @ 20, 22.5 for the last": each is of what follows it
    return kgs, end


def _before_their_sets(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "25 for the first three, 20 for the last two", "15 first set, 17.5 second": loads of the sets named."""
    most = _most_reps(facts)
    if not most:
        return facts
    out = _seconds(message, facts)
    told = any(fact.kind in OF_KILOGRAMS and fact.value for fact in out)
    named = any(fact.kind in OF_KILOGRAMS and _scope_behind(out, at, most) is not None for at, fact in enumerate(out))
    least = most + 2 if named else LEAST_LOAD  # "12 kg first set, 10 the others"
    placed = [at for at in range(len(out)) if _scope_behind(out, at, most, least) is not None]
    if not told and not any(out[at].value != int(out[at].value) for at in placed) and len(placed) < LEAST_SETS:
        return facts
    for at in placed:
        behind = _scope_behind(out, at, most, least)
        if behind is None:
            continue
        value, scope = out[at], out[behind]
        kind: FactKind = "assist" if any(fact.kind == "assist" for fact in out[:at]) else "load"
        load = replace(value, kind=kind, value=float(value.note.get("kg", value.value)), note={"how": "at"})
        led = {message.tokens[n].text for n in range(value.end, scope.start)}
        onwards = isinstance(scope.value, int) and not led.isdisjoint(little("onwards"))  # "5 kg from set 7"
        which = ("from", scope.value) if onwards else scope.value
        moved = replace(scope, start=value.start, end=value.start, value=which)
        out[at : behind + 1] = [
            moved,
            value if value.kind in OF_KILOGRAMS else load,
            *[_silent(scope)] * (behind - at - 1),
        ]
    return out


def _silent(fact: Fact) -> Fact:
    return Fact("word", fact.start, fact.end, None, {"noise": True})


def _scope_behind(facts: Sequence[Fact], at: int, most: int, least: int = LEAST_LOAD) -> int | None:
    """Where the sets stand that the load at `at` is of: right behind it, in the same clause."""
    value = facts[at]
    if value.kind == "bare":
        kg = float(value.note.get("kg", value.value))
        whole = value.value == int(value.value)  # as told: pounds are whole in no other unit
        if value.value <= most + 1 or (kg < least and whole) or value.note.get("spelled"):
            return None
    elif value.kind not in OF_KILOGRAMS or not value.value:
        return None
    led = facts[at - 1] if at else None
    if led is not None and led.kind not in ("sep", "move", "rows", "word", "plan", "weighted"):
        return None
    scope = next((n for n in range(at + 1, len(facts)) if facts[n].kind != "word" and facts[n].value != "the"), None)
    if scope is None or facts[scope].kind != "scope" or facts[scope].value in ("all", "over"):
        return None
    if facts[scope].note.get("text") in little("at_the_end"):
        return None  # "4x4 with 17.5 at the end" of the session
    if facts[scope].value == "rest" and not any(fact.kind == "scope" for fact in facts[:scope]):
        return None  # "20 on for some and 22.5 for the others"
    after = facts[scope + 1] if scope + 1 < len(facts) else None
    return scope if after is None or after.kind == "sep" or (after.kind == "word" and after.note.get("noise")) else None


def _seconds(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "15 first set, 17.5 second, 20 third": no seconds, where the first and the third are sets."""
    out: list[Fact] = []
    first = any(fact.kind == "scope" and fact.value in ("first", 1) for fact in facts)
    for fact in facts:
        held = fact.kind == "rows" and fact.note.get("unit") == "sec" and len(fact.value) == 1
        if held and first and message.tokens[fact.end - 1].text == "second":
            value = fact.value[0].hold_s
            out.append(Fact("bare", fact.start, fact.end - 1, value, {"kg": value}))
            out.append(Fact("scope", fact.end - 1, fact.end, 2, {"text": "second"}))
            continue
        out.append(fact)
    return out


RULES: tuple[tuple[Rule, str], ...] = (
    (_by_plate, "scope rows"),
    (_named, "word rows 'load_names"),
    (_once_more, "'once_more sep word load rows"),
    (_one_each, "rows load"),
    (_before_their_sets, "rows scope load|assist|bare|rows"),
)
