"""Loads told by the place of their sets: "5 reps each, first 3 sets with 20, last 2 with 17.5"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

MOST_SETS = 12
MOST_REPS = 30
LEAST_GROUPS = 2
SILENT = frozenset({"word", "scheme"})
SENTENCE = 3  # the value of a mark that ends a sentence


@dataclass(frozen=True)
class _Group:
    """So many sets with one load; `sets` is -1 for "the rest", `reps` where they are told here."""

    sets: int
    load: float
    reps: int | None
    end: int  # the fact behind it


def loads_by_place(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with one list in place of such groups; unchanged where a number of sets or reps is not said.

    The reps are told in each group, in one of them, before them all or behind ("all fives").
    """
    if message.context.today:
        return facts  # a plan's own rules know how many there are
    first = next((at for at, fact in enumerate(facts) if _opens(facts, at)), None)
    if first is None:
        return facts
    groups, end = _groups(message, facts, first)
    if len(groups) < LEAST_GROUPS:
        return facts
    start, total, reps = _told_before(message, facts, first)
    if reps is None:
        end, reps = _told_behind(facts, end)
    own = [group.reps for group in groups if group.reps is not None]
    if reps is None and (len(own) == len(groups) or len(set(own)) == 1):
        reps = own[0]
    elif own:
        return facts  # told twice
    counts = _counts(groups, total)
    if reps is None or counts is None:
        return facts
    entries = [
        Entry(group.reps or reps, load_kg=group.load)
        for group, many in zip(groups, counts, strict=True)
        for _ in range(many)
    ]
    moves = [fact for fact in facts[first:end] if fact.kind == "move"]
    told = Fact("rows", facts[start].start, facts[end - 1].end, entries, {"list": True, "mark": ","})
    return [*facts[:start], *moves, told, *facts[end:]]


def _opens(facts: Sequence[Fact], at: int) -> bool:
    """Whether "the first 3 sets" stand here."""
    return facts[at].kind == "scope" and _counted(facts, at, "first")[0] is not None


def _counted(facts: Sequence[Fact], at: int, place: str) -> tuple[int | None, int]:
    """How many sets a scope names, and the fact behind: "the last two", "last 2", "last one"."""
    value = facts[at].value
    if isinstance(value, tuple) and value[0] == place and isinstance(value[1], int):
        return value[1], at + 1
    if value != place:
        return None, at
    if facts[at].end > facts[at].start + 1:
        return 1, at + 1
    behind = facts[at + 1] if at + 1 < len(facts) else None
    if behind is not None and behind.kind == "bare" and behind.start == facts[at].end:
        return _few(behind.value, MOST_SETS), at + 2
    return None, at


def _few(value: float, most: int) -> int | None:
    return int(value) if value == int(value) and 0 < value <= most else None


def _groups(message: Message, facts: Sequence[Fact], at: int) -> tuple[list[_Group], int]:
    """The groups from a place on, and the fact behind the last."""
    groups: list[_Group] = []
    end = at
    while (group := _group(message, facts, at, bool(groups))) is not None:
        groups.append(group)
        at = end = group.end
        while at < len(facts) and (facts[at].kind == "sep" or (_silent(facts[at]) and not _next(message, facts[at]))):
            at += 1
    return groups, end


def _group(message: Message, facts: Sequence[Fact], at: int, later: bool) -> _Group | None:
    """One group that begins here: so many sets and their load, each once, in either order with the reps."""
    sets, at, reps = _sets(message, facts, at, later)
    if sets == 0:
        return None
    load: float | None = None
    end = at
    while at < len(facts):
        fact = facts[at]
        if fact.kind == "load" and fact.value is not None and load is None:
            load = float(fact.value)
        elif fact.kind == "bare" and reps is None and load is None and _loaded(facts, at):
            reps = _few(fact.value, MOST_REPS)
        elif fact.kind == "rows" and len(fact.value) == 1 and reps is None and fact.value[0].reps:
            reps = int(fact.value[0].reps)
        elif fact.kind == "move" and not later and load is None:
            pass  # "first 3 sets of dips"
        elif fact.kind == "sep" and fact.value == 1 and reps is None and load is not None and _one(facts, at + 1):
            pass  # "first 3 sets with 20, 5 reps"
        elif fact.kind == "move":
            return None  # "then 3x8 with 10 on dips"
        elif not _silent(fact):
            break
        at += 1
        if not _silent(fact):
            end = at
    return None if load is None else _Group(sets, load, reps, end)


def _loaded(facts: Sequence[Fact], at: int) -> bool:
    return at + 1 < len(facts) and facts[at + 1].kind == "load"


def _next(message: Message, fact: Fact) -> bool:
    """Whether a word is of the sets that follow."""
    return fact.kind == "word" and message.tokens[fact.start].text in little("that_follow")


def _sets(message: Message, facts: Sequence[Fact], at: int, later: bool) -> tuple[int, int, int | None]:
    """How many sets a group has (-1: the rest, 0: not said), the fact behind, and reps right beside the number."""
    if at >= len(facts):
        return 0, at, None
    fact = facts[at]
    if fact.kind == "scope":
        for place in ("first", "last", "next"):
            many, end = _counted(facts, at, place)
            if many is not None:
                return many, end, None
        behind = facts[at + 1] if at + 1 < len(facts) else None
        if later and fact.value == "rest":
            return -1, at + 1, None
        listed = behind is not None and behind.kind == "rows" and behind.note.get("mark") == " "
        pair: list[Entry] = behind.value if listed and behind is not None else []
        if (
            later
            and fact.value == "last"
            and len(pair) == 2
            and pair[0].reps
            and pair[1].reps
            and pair[0].reps <= MOST_SETS
        ):
            return int(pair[0].reps), at + 2, int(pair[1].reps)  # "last 2 5 reps"
    if later and _next(message, fact) and at + 1 < len(facts):
        at, fact = at + 1, facts[at + 1]
        if plan_names(fact) == {"pair"}:
            return 2, at + 1, None  # "in den nächsten beiden"
    alike = fact.kind == "rows" and len({(entry.reps, entry.load_kg) for entry in fact.value}) == 1
    if later and alike and len(fact.value) > 1 and fact.value[0].reps:
        return len(fact.value), at + 1, int(fact.value[0].reps)  # "next 2 sets 5 reps"
    if later and fact.kind in ("count", "bare") and _few(fact.value, MOST_SETS):
        return int(fact.value), at + 1, None  # "then 2 sets with 10"
    return 0, at, None


def _one(facts: Sequence[Fact], at: int) -> bool:
    """Whether the reps of one set stand here, and its clause ends with them."""
    ends = at + 1 >= len(facts) or facts[at + 1].kind == "sep"
    return at < len(facts) and facts[at].kind == "rows" and len(facts[at].value) == 1 and ends


def _silent(fact: Fact) -> bool:
    return fact.kind in SILENT or (fact.kind == "plan" and fact.value == "the")


def _told_before(message: Message, facts: Sequence[Fact], first: int) -> tuple[int, int | None, int | None]:
    """Where the reps told before the first group begin, the number of all sets where it is told, and the reps."""
    at = first
    while at and ((facts[at - 1].kind == "sep" and facts[at - 1].value != SENTENCE) or _silent(facts[at - 1])):
        at -= 1
        fives = facts[at - 1] if at and message.tokens[facts[at].start].text in little("ending_of_these") else None
        if fives is not None and fives.kind == "bare" and fives.end == facts[at].start:
            return at - 1, None, _few(fives.value, MOST_REPS)
    if at and facts[at - 1].kind == "side" and facts[at - 1].value == "each":
        at -= 1
    fact = facts[at - 1] if at else None
    if fact is not None and fact.kind == "rows":
        same = {entry.reps for entry in fact.value}
        plain = len(same) == 1 and not any(entry.load_kg for entry in fact.value)
        reps = same.pop() if plain else None
        return at - 1, len(fact.value) if len(fact.value) > 1 else None, int(reps) if reps else None
    led = at > 1 and facts[at - 2].kind == "word" and fact is not None and fact.kind == "bare"
    reps = _few(fact.value, MOST_REPS) if led and fact is not None else None
    return (at - 2, None, reps) if reps else (first, None, None)  # "pull-ups of 5: …"


def _told_behind(facts: Sequence[Fact], end: int) -> tuple[int, int | None]:
    """ "…, all fives", "…, 5 reps each"."""
    for at in range(end, min(end + 3, len(facts))):
        if facts[at].kind == "rows" and _one(facts, at) and facts[at].value[0].reps and not facts[at].note.get("plain"):
            return at + 1, int(facts[at].value[0].reps)
        if facts[at].kind not in ("sep", "word") and (facts[at].kind, facts[at].value) != ("scope", "all"):
            break
    return end, None


def _counts(groups: Sequence[_Group], total: int | None) -> list[int] | None:
    """How many sets each has; None where it is not said or does not add up."""
    told = sum(group.sets for group in groups if group.sets > 0)
    counts = [group.sets if group.sets > 0 else (total or 0) - told for group in groups]
    open_ones = sum(group.sets == -1 for group in groups)
    if open_ones > 1 or min(counts) < 1 or (total is not None and sum(counts) != total):
        return None
    return counts
