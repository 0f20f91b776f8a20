"""Groups of sets told by their place, one after the other: "first 3 sets with 20, last 2 with 17.5"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bot.reading.bounds import is_comma
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

MOST_SETS = 12
MOST_REPS = 30
LEAST_EFFORT, MOST_EFFORT = 5, 10
SILENT = frozenset({"word", "scheme"})
PLACES = ("first", "last", "next")


@dataclass
class Group:
    """So many sets, and what is told of them; `sets` is -1 for "the rest"."""

    sets: int
    end: int  # the fact behind it
    reps: int | None = None
    load: float | None = None
    effort: float | None = None
    either: tuple[float, float] | None = None  # "at 7.5": a load or an effort, and the load in kg


def sets_counted(facts: Sequence[Fact], at: int, place: str) -> tuple[int, int, int | None]:
    """How many sets a scope names, the fact behind, and reps beside the number: "the last two", "last 2 5 reps"."""
    value = facts[at].value
    if isinstance(value, tuple) and value[0] == place and isinstance(value[1], int):
        return value[1], at + 1, None
    if value != place:
        return 0, at, None
    if facts[at].end > facts[at].start + 1 and [one.kind for one in facts[at + 1 : at + 3]] != ["bare", "rows"]:
        return 1, at + 1, None  # "last one 3 with 15"; "las primeras 2 5 reps" are two
    return _beside(facts, at)


def _beside(facts: Sequence[Fact], at: int) -> tuple[int, int, int | None]:
    """The number right behind a scope, and reps told with it."""
    behind = facts[at + 1] if at + 1 < len(facts) else None
    if behind is None or behind.start != facts[at].end:
        return 0, at, None
    if behind.kind == "bare":
        return few(behind.value, MOST_SETS) or 0, at + 2, None
    listed = behind.kind == "rows" and behind.note.get("mark") == " "
    pair: list[Entry] = behind.value if listed else []
    if len(pair) == 2 and pair[0].reps and pair[1].reps and pair[0].reps <= MOST_SETS:
        return int(pair[0].reps), at + 2, int(pair[1].reps)
    return 0, at, None


def few(value: float, most: int) -> int | None:
    return int(value) if value == int(value) and 0 < value <= most else None


def groups_from(message: Message, facts: Sequence[Fact], at: int) -> tuple[list[Group], int]:
    """The groups from a place on, and the fact behind the last."""
    groups: list[Group] = []
    end = at
    while (group := _group(message, facts, at, bool(groups))) is not None:
        groups.append(group)
        at = end = group.end
        while at < len(facts) and (facts[at].kind == "sep" or (silent(facts[at]) and not _next(message, facts[at]))):
            at += 1
    return groups, end


def _group(message: Message, facts: Sequence[Fact], at: int, later: bool) -> Group | None:
    """One group that begins here: so many sets, and their reps, load and effort, each once."""
    sets, at, reps = _sets(message, facts, at, later)
    if sets == 0:
        return None
    group = Group(sets, at, reps)
    while at < len(facts):
        fact = facts[at]
        if fact.kind == "move" and not later and group.load is None:
            pass  # "first 3 sets of dips"
        elif is_comma(fact) and group.reps is None and group.load and one_set(facts, at + 1):
            pass  # "first 3 sets with 20, 5 reps"
        elif fact.kind == "move":
            return None  # "then 3x8 with 10 on dips"
        elif not silent(fact) and not _takes(group, facts, at):
            break
        at += 1
        if not silent(fact):
            group.end = at
    return None if group == Group(sets, group.end) else group


def _takes(group: Group, facts: Sequence[Fact], at: int) -> bool:
    """Take what a fact tells of the group; False: it tells nothing that the group has not yet."""
    fact = facts[at]
    if fact.kind == "load" and fact.value is not None and group.load is None:
        group.load = float(fact.value)
    elif fact.kind == "bare" and group.reps is None and group.load is None and _loaded(facts, at):
        group.reps = few(fact.value, MOST_REPS)
    elif fact.kind == "rows" and len(fact.value) == 1 and group.reps is None and fact.value[0].reps:
        if "own_load" in fact.note and group.load is not None:
            return False
        group.reps = int(fact.value[0].reps)
        group.load = fact.note.get("own_load", group.load)  # "the first three at 20kg x 4"
    elif fact.kind == "at" and group.either is None and group.load is None:
        group.either = fact.value
    elif fact.kind == "effort" and group.effort is None and LEAST_EFFORT <= fact.value <= MOST_EFFORT:
        group.effort = float(fact.value)
    else:
        return False
    return True


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
        for place in PLACES if later else ("first",):
            many, end, reps = sets_counted(facts, at, place)
            if many:
                return many, end, reps
        if later and fact.value == "rest":
            named = [token.value for token in message.tokens[fact.start : fact.end] if token.value is not None]
            if named:
                return few(named[0], MOST_SETS) or 0, at + 1, None  # "the other two"
            many, end, reps = _beside(facts, at)
            return (many, end, reps) if many else (-1, at + 1, None)  # "the remaining three", "the rest"
        return 0, at, None
    if later and fact.kind == "plan" and fact.value == "rest":
        return -1, at + 1, None
    if later and _next(message, fact) and at + 1 < len(facts):
        at, fact = at + 1, facts[at + 1]
        if plan_names(fact) == {"pair"}:
            return 2, at + 1, None  # "in den nächsten beiden"
    alike = fact.kind == "rows" and len({(entry.reps, entry.load_kg) for entry in fact.value}) == 1
    if later and alike and len(fact.value) > 1 and fact.value[0].reps:
        return len(fact.value), at + 1, int(fact.value[0].reps)  # "next 2 sets 5 reps"
    if fact.kind in ("count", "bare"):
        return few(fact.value, MOST_SETS) or 0, at + 1, None  # "then 2 sets with 10"
    return 0, at, None


def one_set(facts: Sequence[Fact], at: int) -> bool:
    """Whether the reps of one set stand here, and its clause ends with them."""
    ends = at + 1 >= len(facts) or facts[at + 1].kind == "sep"
    return at < len(facts) and facts[at].kind == "rows" and len(facts[at].value) == 1 and ends


def silent(fact: Fact) -> bool:
    return fact.kind in SILENT or (fact.kind == "plan" and fact.value == "the")
