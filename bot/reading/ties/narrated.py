"""Sets told one after the other by their place: "first set 7 with 15 kg, the next two were 6, the last one 4"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from bot.reading.facts import Entry, Fact
from bot.reading.fold.block import to_kg
from bot.reading.little import little
from bot.reading.message import Message

MOST_REPS = 30
MOST_SETS = 12  # of one clause
LEAST_CLAUSES = 2
LEAST_LOAD = 10  # so many sets of one clause are rather kilograms
SILENT = frozenset({"word", "plan", "scheme"})


@dataclass(frozen=True)
class Group:
    """So many sets of so many reps, told in one clause; `load` where it is named with its unit."""

    sets: int
    reps: int
    load: Fact | None
    open: Fact | None  # what does not say how many sets it is of: "the rest"
    counted: bool  # whether the clause says how many sets it is of, by more than "first" and "last"
    own_kg: float | None  # the load that is told with the reps: "20kg x 4"


def narrated(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The clauses that name sets by their place, as one list; unchanged where one of them is not plain."""
    if message.context.today or any(_scheme(fact) and not _by_load(facts, at) for at, fact in enumerate(facts)):
        return facts
    start = next((at for at, fact in enumerate(facts) if fact.kind == "scope" and _opens(fact)), None)
    if start is None:
        return facts
    if start and facts[start - 1].kind in ("bare", "rows") and not _parted(facts, start - 1):
        start -= 1  # "8 on the first"
    groups, end = _groups(message, facts, start)
    loads = [group.load for group in groups if group.load is not None]
    if len(groups) < LEAST_CLAUSES or not any(group.counted for group in groups):
        return facts
    if len(loads) == len(groups) > 1 or (loads and any(one.own_kg is not None for one in groups)):
        groups = [one if one.load is None else replace(one, own_kg=float(one.load.value)) for one in groups]
        loads = []  # each with its own
    if len(loads) > 1 or (loads and groups[0].load is None and groups[-1].load is None):
        return facts  # "7 with 15, the next two 6 with 17.5" is told load by load
    if any(fact.kind == "scope" for fact in facts[end : end + 3]):
        return facts  # a set more is told by its place, and not plainly
    moves = [fact for fact in facts[start:end] if fact.kind == "move"]
    if len(moves) > 1:
        return facts
    entries = [Entry(group.reps, load_kg=group.own_kg) for group in groups for _ in range(group.sets)]
    told = Fact("rows", facts[start].start, facts[end - 1].end, entries, {"list": True, "mark": ","})
    unsaid = [Fact("ask", group.open.start, group.open.end, "sets") for group in groups if group.open is not None]
    return [*facts[:start], *moves, told, *loads, *unsaid, *facts[end:]]


def _scheme(fact: Fact) -> bool:
    if fact.kind != "rows" or len(fact.value) < 2:
        return False
    return bool(fact.note.get("plain")) and len({entry.reps for entry in fact.value}) == 1


def _by_load(facts: Sequence[Fact], at: int) -> bool:
    """The "20x5" of "first two sets 20x5": kilograms by reps, where the sets are counted before it."""
    scope = facts[at - 1] if at else None
    return scope is not None and scope.kind == "scope" and len(facts[at].value) >= LEAST_LOAD


def _opens(fact: Fact) -> bool:
    return fact.value in ("first", 1) or (isinstance(fact.value, tuple) and fact.value[0] == "first")


def _parted(facts: Sequence[Fact], at: int) -> bool:
    """Whether a value stands in another clause than the scope behind it: nothing but its own clause leads it."""
    return at > 0 and facts[at - 1].kind not in ("move", "sep", "load", "word")


def _groups(message: Message, facts: Sequence[Fact], start: int) -> tuple[list[Group], int]:
    """The clauses from `start` on that tell a group each, and where they end."""
    groups: list[Group] = []
    at = end = start
    while at < len(facts):
        stop = next((n for n in range(at, len(facts)) if _ends(facts, n, at)), len(facts))
        group = _group(message, facts[at:stop], sum(one.sets for one in groups))
        if group is None:
            break
        groups.append(group)
        at = end = stop
        while at < len(facts) and facts[at].kind == "sep":
            at += 1
    return groups, end


def _ends(facts: Sequence[Fact], at: int, start: int) -> bool:
    """Whether a clause ends here; the "next" of "7 on the next two" ends none."""
    if facts[at].kind != "sep":
        return False
    inside = facts[at].value == 2 and at > start and at + 1 < len(facts) and facts[at + 1].kind == "count"
    return not (inside and facts[at - 1].kind in SILENT)


def _group(message: Message, clause: Sequence[Fact], before: int) -> Group | None:
    """The sets of one clause; None where anything in it is not plain. `before`: the sets told so far."""
    loads = [
        fact for fact in clause if fact.kind == "load" and (fact.note.get("unit") or fact.note.get("how") == "plus")
    ]
    rest = [fact for fact in clause if fact.kind not in SILENT | {"sep", "move"} and fact not in loads]
    scopes = [fact for fact in rest if fact.kind == "scope"]
    values = [fact for fact in rest if fact.kind != "scope"]
    if len(loads) > 1 or len(scopes) > 1 or not values:
        return None
    load, unsaid = loads[0] if loads else None, None
    if scopes:
        unsaid = scopes[0] if scopes[0].value == "rest" and _number_in(message, scopes[0]) is None else None
        sets = _sets_of(message, scopes[0], before)
        by_load = [fact for fact in values if _scheme(fact) and len(fact.value) >= LEAST_LOAD]
        kgs = [fact for fact in values if fact.kind == "load" and fact.value]
        others = [fact for fact in values if fact not in kgs]
        if len(values) == 1 and by_load and scopes[0].end == values[0].start:
            own = to_kg(float(len(values[0].value)), message.context.unit)
            values = [replace(values[0], value=values[0].value[:1], note={"own_load": own})]
        elif len(kgs) == len(others) == 1 and load is None and others[0].kind in ("rows", "bare"):
            values = [replace(others[0], note={**others[0].note, "own_load": float(kgs[0].value)})]
        reps = _reps_of(message, values[0]) if len(values) == 1 else None
        counted = scopes[0].value == before + 1 != 1 or scopes[0].value not in ("first", "last", 1)
    elif len(values) == 1 and values[0].kind == "rows" and len(values[0].value) <= MOST_SETS:
        sets, reps, counted = _counted_rows(values[0])
    elif len(values) == 1 and values[0].kind == "load":
        return None  # "set 2 5 reps, set 3 3 reps, chins with 25"
    elif len(values) == 1:
        sets, reps, counted = 1 if before else None, _reps_of(message, values[0]), False  # "then a 6"
    else:
        kgs = [fact for fact in values if fact.kind == "load" and fact.value]
        own_kg = float(kgs[0].value) if len(values) == 3 and len(kgs) == 1 and load is None else None
        values = [fact for fact in values if own_kg is None or fact is not kgs[0]]
        sets, reps = _count_and_reps(message, clause, values)
        values = [replace(fact, note={"own_load": own_kg}) for fact in values[:1]] if own_kg is not None else values
        counted = True
    led = next((float(fact.note["own_load"]) for fact in values if "own_load" in fact.note), None)
    return Group(sets, reps, load, unsaid, counted, led) if sets and reps else None


def _counted_rows(fact: Fact) -> tuple[int | None, int | None, bool]:
    """ "Two sets of 7", "two of 7"."""
    reps = {entry.reps for entry in fact.value}
    plain = len(reps) == 1 and not fact.note.get("list")
    if fact.note.get("list") and fact.note.get("mark") == " " and len(fact.value) == 2:
        return fact.value[0].reps, fact.value[1].reps, True  # "die nächsten zwei 6"
    return (len(fact.value), reps.pop(), len(fact.value) > 1) if plain else (None, None, False)


def _sets_of(message: Message, scope: Fact, before: int) -> int | None:
    """How many sets a scope names, where it goes on from those told before."""
    value = scope.value
    if value in ("first", "last"):
        return 1 if value == "last" or not before else None
    if isinstance(value, int):
        return 1 if value == before + 1 else None
    if isinstance(value, tuple) and value[0] in ("first", "last") and isinstance(value[1], int):
        return value[1] if value[0] == "last" or not before else None
    if value == "rest":  # "the other three"; "the rest" is asked
        return _number_in(message, scope) or 1
    return None


def _number_in(message: Message, scope: Fact) -> int | None:
    named = [token.value for token in message.tokens[scope.start : scope.end] if token.value is not None]
    return int(named[0]) if len(named) == 1 and named[0] == int(named[0]) else None


def _reps_of(message: Message, fact: Fact) -> int | None:
    """Reps told as "7", "7 reps", "8s", "died at 4"."""
    if fact.kind == "rows" and len(fact.value) == 1:
        entry = fact.value[0]
        if entry.reps is None and entry.hold_s and message.tokens[fact.end - 1].text.endswith(tuple(little("plural"))):
            return int(entry.hold_s) if fact.note.get("one") else None  # "were 8s": eights
        return int(entry.reps) if entry.reps else None
    bare = fact.kind == "bare" or (fact.kind == "load" and fact.note.get("how") == "at" and not fact.note.get("unit"))
    if not bare or not fact.value or fact.value != int(fact.value) or fact.value > MOST_REPS:
        return None
    return int(fact.value)


def _count_and_reps(message: Message, clause: Sequence[Fact], values: Sequence[Fact]) -> tuple[int | None, int | None]:
    """ "The next two 6", "two more with 6": a count led or followed by a word for sets that follow."""
    if len(values) == 2 and values[1].kind == "count" and values[0].kind == "bare":
        values = values[::-1]  # "7 on the next two"
    if len(values) != 2 or values[0].kind not in ("count", "bare") or values[0].value > MOST_SETS:
        return None, None
    many, each = values
    low, high = min(many.end, each.end), max(many.start, each.start)
    between = [fact for fact in clause if low <= fact.start < high]
    words = {message.tokens[n].text for fact in clause if fact.kind == "word" for n in range(fact.start, fact.end)}
    follows = many.kind == "count" or bool(words & set(little("that_follow")))
    if not follows or many.value != int(many.value) or any(fact.kind not in SILENT | {"sep"} for fact in between):
        return None, None
    return int(many.value), _reps_of(message, each)


def sets_by_load(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "First two sets 20x5, then 4x4 at 15": two sets of five with 20."""
    for at in range(1, len(facts)):
        scope, rows = facts[at - 1 : at + 1]
        told = rows.kind == "rows" and _scheme(rows) and _by_load(facts, at) and scope.end == rows.start
        if not told or not isinstance(scope.value, tuple) or scope.value[0] != "first":
            continue
        if any(one.kind in ("rows", "bare", "count", "load") for one in facts[: at - 1]) or message.context.today:
            return facts
        own = to_kg(float(len(rows.value)), message.context.unit)
        entries = [replace(rows.value[0]) for _ in range(int(scope.value[1]))]
        return [*facts[: at - 1], replace(rows, value=entries, note={"own_load": own}), *facts[at + 1 :]]
    return facts
