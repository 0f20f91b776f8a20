"""Reps, loads or efforts told by the place of their sets: "5 reps each, first 3 sets with 20, last 2 with 17.5"."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

from bot.reading.bounds import SENTENCE
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import GLOBAL
from bot.reading.ties.placed_groups import (
    LEAST_EFFORT,
    MOST_EFFORT,
    MOST_REPS,
    MOST_SETS,
    PLACES,
    SILENT,
    Group,
    few,
    groups_from,
    one_set,
    sets_counted,
    silent,
)

LEAST_GROUPS = 2
BEYOND = frozenset({"load", "rows", "bare", "at", "effort", "scope", "count", "move", "side"})  # says more of the sets


@dataclass
class _Ahead:
    """What is told of all the sets before the first group; `total` where it says how many there are."""

    start: int  # its first fact
    reps: int | None = None
    total: int | None = None
    load: Fact | None = None


def by_place(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with one list in place of such groups; unchanged where a number of sets or reps is not said.

    The reps are told in each group, in one of them, before them all or behind ("all fives"); loads of which no reps are
    told are asked. A first and a last set, and nothing between, are asked.
    """
    first = next((at for at, fact in enumerate(facts) if _opens(facts, at)), None)
    placed = first is not None
    if first is None:
        first = _counted_first(message, facts)
        placed = first is not None
    if first is None:
        first = _counted_out(facts)
    if first is None:
        return facts
    groups, end = groups_from(message, facts, first)
    planned = _planned(message, facts[:end])
    leans = any(_leans(fact) for fact in facts[:first]) or any(_leans(fact) for fact in facts[end:])
    if planned and (leans or sum(group.sets for group in groups) in planned):
        return _beside_plan(facts, (first, end), groups, planned)
    if len(groups) < LEAST_GROUPS or (end < len(facts) and facts[end].kind in BEYOND - {"move"}):
        return facts
    ahead = _told_before(message, facts, first)
    if not _settled(groups, ahead) or not (placed or _told_out(facts[first:end], groups, ahead)):
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
    if counts is None or mixed or not told or (reps is None and told not in ([loads], [efforts])):
        return facts
    sets = [group for group, many in zip(groups, counts, strict=True) for _ in range(many)]
    entries = [Entry(group.reps or reps, load_kg=group.load, ask=None if reps else "reps") for group in sets]
    start, stop = facts[ahead.start].start, facts[end - 1].end
    made = [fact for fact in facts[ahead.start : end] if fact.kind == "move"]
    made.append(Fact("rows", start, stop, entries, {"list": True, "mark": ","}))
    if ahead.load is not None:
        made.append(ahead.load)
    if efforts:
        made.append(Fact("efforts", stop, stop, [float(group.effort or 0) for group in sets]))
    if ahead.total is None and [group.sets for group in groups] == [1, 1]:
        made.append(Fact("ask", start, stop, "sets"))
    return [*facts[: ahead.start], *made, *facts[end:]]


def _beside_plan(
    facts: Sequence[Fact], span: tuple[int, int], groups: Sequence[Group], planned: list[int]
) -> Sequence[Fact]:
    """Loads of so many sets as the plan has are the plan's to tell; of another number, these are asked."""
    first, end = span
    if len(groups) < LEAST_GROUPS or any(not group.load or group.reps or group.sets < 1 for group in groups):
        return facts
    inside = list(facts[first:end])
    if sum(group.sets for group in groups) in planned:
        for at in range(len(inside) - 1, 0, -1):
            scope, many = inside[at - 1 : at + 1]
            if scope.kind == "scope" and scope.value in PLACES and many.kind == "bare" and scope.end == many.start:
                inside[at - 1 : at + 1] = [Fact("scope", scope.start, many.end, (scope.value, int(many.value)))]
        return [*facts[:first], *inside, *facts[end:]]
    asked = Fact("ask", facts[first].start, facts[end - 1].end, "sets")
    return [*facts[:first], *(fact for fact in inside if fact.kind == "move"), asked, *facts[end:]]


def _leans(fact: Fact) -> bool:
    return fact.kind == "plan" and fact.value in GLOBAL


def _planned(message: Message, facts: Sequence[Fact]) -> list[int]:
    """How many sets the day's plan has of the movements named, or of each where none is; empty: it has none of them."""
    named = {fact.value.movement for fact in facts if fact.kind == "move"}
    today = Counter(one.movement for one in message.context.today or () if one.side != "right")
    return [today[movement] for movement in named or today if movement in today]


def _opens(facts: Sequence[Fact], at: int) -> bool:
    """Whether "the first 3 sets" stand here."""
    return facts[at].kind == "scope" and sets_counted(facts, at, "first")[0] > 0


def _told_out(between: Sequence[Fact], groups: Sequence[Group], ahead: _Ahead) -> bool:
    """Whether groups without a place are parts of so many sets, told before them."""
    loaded = any(group.load is not None for group in groups)
    named = any(fact.kind == "move" for fact in between)
    return ahead.total is not None and not named and not (loaded and ahead.load)


def _counted_out(facts: Sequence[Fact]) -> int | None:
    """Where "three with 20, two with 17.5" begins, behind so many sets that they may add up to."""
    total = next((at for at, fact in enumerate(facts) if _several(fact)), len(facts))
    for at in range(total + 1, len(facts)):
        if facts[at].kind in ("bare", "count") and facts[at - 1].kind == "sep":
            return at
        if facts[at].kind not in SILENT | {"move", "sep", "bare", "load"}:
            break
    return None


def _counted_first(message: Message, facts: Sequence[Fact]) -> int | None:
    """Where "two sets at 20, two at 22.5, all fives" begins: the only counts and loads before their reps."""
    count = next((at for at, fact in enumerate(facts) if fact.kind in ("count", "rows", "bare", "load")), None)
    if count is None or facts[count].kind != "count" or any(facts[count].note.values()):
        return None
    load = next((fact for fact in facts[count + 1 :] if not silent(fact) and fact.kind != "move"), None)
    if load is None or load.kind != "load" or not load.value:
        return None
    groups, end = groups_from(message, facts, count)
    whole = len(groups) >= LEAST_GROUPS and all(group.load and group.reps is None for group in groups)
    return count if whole and _told_behind(facts, end)[1] is not None else None


def _several(fact: Fact) -> bool:
    return fact.kind == "count" or (fact.kind == "rows" and len(fact.value) > 1 and not fact.note.get("list"))


def _settled(groups: Sequence[Group], ahead: _Ahead) -> bool:
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


def _told_before(message: Message, facts: Sequence[Fact], first: int) -> _Ahead:
    """What of the sets stands before the first group, up to their movement or to another sentence."""
    at, crossed, moved = first, False, False
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
            reps, start = few(fact.value, MOST_REPS), at - 2 if led else at - 1
            count = next((n for n in range(start - 1, -1, -1) if facts[n].kind not in SILENT | {"move"}), start)
            many = few(facts[count].value, MOST_SETS) if facts[count].kind == "count" else None
            return _Ahead(count if many else start, reps, many, load) if reps else found
        elif fact.kind == "count" and fact.value > 1:
            return _Ahead(at - 1, None, few(fact.value, MOST_SETS), load)
        elif fact.kind == "move" and not moved:
            moved = True  # "5 sets of pull-ups, …"
        elif not silent(fact) and (fact.kind, fact.value) != ("side", "each"):
            break
        at -= 1
        if load is not None and not crossed and not moved:
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
        if (
            facts[at].kind == "rows"
            and one_set(facts, at)
            and facts[at].value[0].reps
            and not facts[at].note.get("plain")
        ):
            return at + 1, int(facts[at].value[0].reps)
        if facts[at].kind not in ("sep", "word") and (facts[at].kind, facts[at].value) != ("scope", "all"):
            break
    return end, None


def _counts(groups: Sequence[Group], total: int | None) -> list[int] | None:
    """How many sets each has; None where it is not said or does not add up."""
    told = sum(group.sets for group in groups if group.sets > 0)
    counts = [group.sets if group.sets > 0 else (total or 0) - told for group in groups]
    open_ones = sum(group.sets == -1 for group in groups)
    if open_ones > 1 or min(counts) < 1 or (total is not None and sum(counts) != total):
        return None
    return counts
