"""Reps, loads or efforts told by the place of their sets: "5 reps each, first 3 sets with 20, last 2 with 17.5"."""

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
LEAST_EFFORT, MOST_EFFORT = 5, 10
SILENT = frozenset({"word", "scheme"})
SENTENCE = 3  # the value of a mark that ends a sentence
BEYOND = frozenset({"load", "rows", "bare", "at", "effort", "scope", "count", "move", "side"})  # says more of the sets


@dataclass
class _Group:
    """So many sets, and what is told of them; `sets` is -1 for "the rest"."""

    sets: int
    end: int  # the fact behind it
    reps: int | None = None
    load: float | None = None
    effort: float | None = None
    either: tuple[float, float] | None = None  # "at 7.5": a load or an effort, and the load in kg


@dataclass
class _Ahead:
    """What is told of all the sets before the first group; `total` where it says how many there are."""

    start: int  # its first fact
    reps: int | None = None
    total: int | None = None
    load: Fact | None = None


def by_place(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with one list in place of such groups; unchanged where a number of sets or reps is not said.

    The reps are told in each group, in one of them, before them all or behind ("all fives"). A first and a last set,
    and nothing between, are asked.
    """
    if message.context.today:
        return facts  # a plan's own rules know how many there are
    first = next((at for at, fact in enumerate(facts) if _opens(facts, at)), None)
    if first is None:
        return facts
    groups, end = _groups(message, facts, first)
    if len(groups) < LEAST_GROUPS or (end < len(facts) and facts[end].kind in BEYOND - {"move"}):
        return facts
    ahead = _told_before(message, facts, first)
    if not _settled(groups, ahead):
        return facts
    if ahead.load is not None and ahead.reps is None and all(group.load is not None for group in groups):
        ahead = _Ahead(first)  # "started with 20, went to 25: the first of 4 with 20 and then three of 4 with 25"
    reps = ahead.reps
    if reps is None:
        end, reps = _told_behind(facts, end)
    own = [group.reps for group in groups if group.reps is not None]
    if reps is None and (len(own) == len(groups) or len(set(own)) == 1):
        reps = own[0]
    elif own:
        return facts  # told twice
    counts = _counts(groups, ahead.total)
    loads = [group.load for group in groups if group.load is not None]
    efforts = [group.effort for group in groups if group.effort is not None]
    told = [values for values in (own, loads, efforts) if len(values) == len(groups)]
    mixed = any(values and len(values) < len(groups) for values in (loads, efforts)) or (loads and ahead.load)
    if reps is None or counts is None or mixed or not told:
        return facts
    sets = [group for group, many in zip(groups, counts, strict=True) for _ in range(many)]
    entries = [Entry(group.reps or reps, load_kg=group.load) for group in sets]
    start, stop = facts[ahead.start].start, facts[end - 1].end
    made = [fact for fact in facts[first:end] if fact.kind == "move"]
    made.append(Fact("rows", start, stop, entries, {"list": True, "mark": ","}))
    if ahead.load is not None:
        made.append(ahead.load)
    if efforts:
        made.append(Fact("efforts", stop, stop, [float(group.effort or 0) for group in sets]))
    if ahead.total is None and [group.sets for group in groups] == [1, 1]:
        made.append(Fact("ask", start, stop, "sets"))
    return [*facts[: ahead.start], *made, *facts[end:]]


def _opens(facts: Sequence[Fact], at: int) -> bool:
    """Whether "the first 3 sets" stand here."""
    return facts[at].kind == "scope" and _counted(facts, at, "first")[0] > 0


def _counted(facts: Sequence[Fact], at: int, place: str) -> tuple[int, int, int | None]:
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
        return _few(behind.value, MOST_SETS) or 0, at + 2, None
    listed = behind.kind == "rows" and behind.note.get("mark") == " "
    pair: list[Entry] = behind.value if listed else []
    if len(pair) == 2 and pair[0].reps and pair[1].reps and pair[0].reps <= MOST_SETS:
        return int(pair[0].reps), at + 2, int(pair[1].reps)
    return 0, at, None


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
    """One group that begins here: so many sets, and their reps, load and effort, each once."""
    sets, at, reps = _sets(message, facts, at, later)
    if sets == 0:
        return None
    group = _Group(sets, at, reps)
    while at < len(facts):
        fact = facts[at]
        if fact.kind == "move" and not later and group.load is None:
            pass  # "first 3 sets of dips"
        elif fact.kind == "sep" and fact.value == 1 and group.reps is None and group.load and _one(facts, at + 1):
            pass  # "first 3 sets with 20, 5 reps"
        elif fact.kind == "move":
            return None  # "then 3x8 with 10 on dips"
        elif not _silent(fact) and not _takes(group, facts, at):
            break
        at += 1
        if not _silent(fact):
            group.end = at
    return None if group == _Group(sets, group.end) else group


def _takes(group: _Group, facts: Sequence[Fact], at: int) -> bool:
    """Take what a fact tells of the group; False: it tells nothing that the group has not yet."""
    fact = facts[at]
    if fact.kind == "load" and fact.value is not None and group.load is None:
        group.load = float(fact.value)
    elif fact.kind == "bare" and group.reps is None and group.load is None and _loaded(facts, at):
        group.reps = _few(fact.value, MOST_REPS)
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


def _settled(groups: Sequence[_Group], ahead: _Ahead) -> bool:
    """Make of "at 7.5" what it is beside the loads or efforts of the others; False: it may be either."""
    open_ones = [group for group in groups if group.either is not None]
    loaded = any(group.load is not None for group in groups)
    rated = ahead.load is not None or any(group.effort is not None for group in groups)
    for group in open_ones:
        value, kg = group.either or (0.0, 0.0)
        if loaded:
            group.load = kg
        elif rated and group.effort is None and LEAST_EFFORT <= value <= MOST_EFFORT:
            group.effort = value
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
        for place in ("first", "last", "next") if later else ("first",):
            many, end, reps = _counted(facts, at, place)
            if many:
                return many, end, reps
        if later and fact.value == "rest":
            named = [token.value for token in message.tokens[fact.start : fact.end] if token.value is not None]
            if named:
                return _few(named[0], MOST_SETS) or 0, at + 1, None  # "the other two"
            many, end, reps = _beside(facts, at)
            return (many, end, reps) if many else (-1, at + 1, None)  # "the remaining three", "the rest"
        return 0, at, None
    if later and _next(message, fact) and at + 1 < len(facts):
        at, fact = at + 1, facts[at + 1]
        if plan_names(fact) == {"pair"}:
            return 2, at + 1, None  # "in den nächsten beiden"
    alike = fact.kind == "rows" and len({(entry.reps, entry.load_kg) for entry in fact.value}) == 1
    if later and alike and len(fact.value) > 1 and fact.value[0].reps:
        return len(fact.value), at + 1, int(fact.value[0].reps)  # "next 2 sets 5 reps"
    if later and fact.kind in ("count", "bare"):
        return _few(fact.value, MOST_SETS) or 0, at + 1, None  # "then 2 sets with 10"
    return 0, at, None


def _one(facts: Sequence[Fact], at: int) -> bool:
    """Whether the reps of one set stand here, and its clause ends with them."""
    ends = at + 1 >= len(facts) or facts[at + 1].kind == "sep"
    return at < len(facts) and facts[at].kind == "rows" and len(facts[at].value) == 1 and ends


def _silent(fact: Fact) -> bool:
    return fact.kind in SILENT or (fact.kind == "plan" and fact.value == "the")


def _told_before(message: Message, facts: Sequence[Fact], first: int) -> _Ahead:
    """What of the sets stands before the first group, up to their movement or to another sentence."""
    at, crossed = first, False
    load: Fact | None = None
    found = _Ahead(first)
    while at:
        fact = facts[at - 1]
        if fact.kind == "sep":
            if fact.value == SENTENCE and crossed:
                break
            crossed = crossed or fact.value == SENTENCE
        elif fact.kind == "load" and fact.value is not None and load is None:
            load = fact
        elif fact.kind == "rows":
            same = {entry.reps for entry in fact.value}
            reps = same.pop() if len(same) == 1 and not any(entry.load_kg for entry in fact.value) else None
            many = len(fact.value) if len(fact.value) > 1 else None
            return _Ahead(at - 1, int(reps), many, load) if reps else found
        elif fact.kind == "bare" and _of_reps(message, facts, at - 1):
            led = facts[at - 2].kind == "word" and facts[at - 2].value != "x"
            reps = _few(fact.value, MOST_REPS)
            return _Ahead(at - 2 if led else at - 1, reps, None, load) if reps else found
        elif not _silent(fact) and (fact.kind, fact.value) != ("side", "each"):
            break
        at -= 1
        if load is not None and not crossed:
            found = _Ahead(at, load=load)
    return found


def _of_reps(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """Whether a number is of reps: "pull-ups of 5: …", "5er, …"."""
    behind = facts[at + 1]
    fives = behind.start == facts[at].end and message.tokens[behind.start].text in little("ending_of_these")
    return fives or (at > 0 and facts[at - 1].kind == "word")


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
