"""Planned sets as one clause changes them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.block import fold_block
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.by_weight import BY_WEIGHT
from bot.reading.plan.choosing import addressed
from bot.reading.plan.clauses import Clause
from bot.reading.plan.fitting import fill, fit
from bot.reading.plan.ground import GLOBAL
from bot.reading.plan.value import apply, near_load, weighed
from bot.reading.reading import Ask

PLAIN = frozenset({"bare", "load", "instead", "delta"})
STRUCTURE = frozenset("loads count fail assist percent at efforts effort_range link scheme".split())
RATED = ("@", "rpe", "/", "rir")  # marks of an effort
LEAST_RATED = 6  # no effort below it is told as a bare number
NO_SCHEME = ("got", "amrap")  # "did", "straight": they say nothing of how the sets were done


def change(message: Message, rows: list[Row], targets: list[int], clause: Clause, asks: list[Ask]) -> list[Row] | None:
    """The target rows as the clause changes them."""
    base = [rows[at] for at in targets]
    singles = bool(base) and all(row.reps == 1 for row in base)
    facts = [f for f in clause.facts if not (f.kind == "rows" and (f.note.get("the") or _names_top(f, base)))]
    facts = [weighed(_rated(message, f, clause, base, asks), base) for f in facts]
    if singles:  # "the second not": of singles no rep but the set
        facts = [replace(f, note={**f.note, "rep": False}) if f.kind == "fail" else f for f in facts]
    scoped = [f for f in facts if f.kind == "scope" and f.value != "all"]
    whole = bool(clause.names & {"every", "all_lifts"}) or any(f.kind == "scope" and f.value == "all" for f in facts)
    whole = whole or (not scoped and any(f.note.get("figure") for f in facts))  # "straight 2s"
    if not any(row.side for row in base):
        whole = whole or any(f.kind == "side" and f.value == "each" for f in facts)  # "3 reps each": each set
        facts = [f for f in facts if not (f.kind == "side" and f.value == "each")]
    elif len([f for f in facts if f.kind in ("bare", "rows")]) == 1:
        whole = whole or any(f.kind == "side" and f.value == "each" for f in facts)  # "only 10 per side"
    side = next((f.value for f in facts if f.kind == "side" and f.value in ("left", "right")), None)
    sides = [f for f in facts if f.kind == "side"]
    one_sided = len({f.value for f in sides}) < 2  # "right with 12, right is still catching up"
    stated = [f for f in facts if f.kind == "rows"]
    if side is not None and len(sides) == 1 and not scoped:
        told = _one_side(base, side, facts)
        if told is not None:
            return told
    paired = _pairs(message, base, facts, scoped, whole, asks)
    if paired is not None:
        return paired
    if _sides_unknown(message, base, stated, clause, asks):
        return []
    if _sides_in_turn(base, stated, sides):
        asks.append(Ask("reps", message.span(stated[0].start, stated[0].end)))
        return [replace(row, reps=None) for row in base]  # "archers three and three then three and two"
    if _came_to(base, facts, scoped):
        return base
    part = bool(clause.names & BY_WEIGHT.keys())  # "the top set", "the back-offs"
    if part and len(base) == 1 and _missed_whole(facts):
        base[0].failed = True
        if base[0].reps is not None and base[0].reps > 1:
            base[0].reps = None
            asks.append(Ask("reps", message.span(clause.facts[0].start, clause.facts[-1].end)))
        elif base[0].reps:
            base[0].reps = 0
        for fact in facts:
            if fact.kind == "load":
                apply(message, fact, base, clause, asks, verb=False, sure=True)
        return base
    single = [f for f in facts if f.kind in PLAIN or (f.kind == "rows" and len(f.value) == 1 and not f.note.get("top"))]
    if len(single) > 1 and all(f.kind == "load" and f.note.get("none") for f in single):
        single = single[-1:]  # "no belt so chins without weight"
    others = [f for f in facts if f.kind in STRUCTURE and f.value not in NO_SCHEME and f not in single]
    others += [f for f in stated if f not in single]
    drop = [f for f in others if f.kind == "link" and f.value == "drop"]
    if len(single) == 1 and not [f for f in others if f not in drop] and one_sided and base:
        where = addressed(base, scoped[-1].value if scoped else None, side)
        if not where:
            asks.append(Ask("sets", message.span(scoped[-1].start, scoped[-1].end)) if scoped else _all_of_it(message))
            return base
        verb = bool(drop) or "turned_to" in clause.names
        sure = bool(scoped) or whole or part or (side is not None) or "rest" in clause.names
        if apply(message, single[0], where, clause, asks, verb=verb, sure=sure):
            left = [f for f in facts if f is not single[0]]
            if scoped:
                for row in where:
                    row.touched = True
            if any(f.kind == "effort" for f in left):
                return fold_block(message, base[0].movement, left, None, None, base).rows
            return base
    where = addressed(base, scoped[-1].value, side) if scoped else base
    if where and (scoped or len(where) == 1) and len(sides) < 2 and _load_and_reps(single) and not others:
        for fact in single:
            apply(message, fact, where, clause, asks, verb=False, sure=True)
        for fact in facts:
            where[-1].rpe = fact.value if fact.kind == "effort" else where[-1].rpe
        return base  # "top set went up to 40 for 2", "first two 4 at 17.5"
    move = next((f for f in clause.facts if f.kind == "move"), None)
    movement = base[0].movement if base else None
    if stated and (not scoped or len(stated[0].value) > 1):
        one = len(stated) == 1 and len(stated[0].value) == 1 and stated[0].note.get("one")
        if one and clause.names & GLOBAL and len(base) > 1:
            asks.append(Ask("sets", message.span(stated[0].start, stated[0].end)))
            return base
        folded = fold_block(message, movement, [weighed(fact, base) for fact in clause.facts], move)
        asks += folded.asks
        fitted = fit(folded.rows, base, stated) if folded.rows else None
        for fact in facts:
            if fitted and (fact.kind == "instead" or (fact.kind == "delta" and fact.value[1] == "load")):
                apply(message, fact, fitted, clause, [], verb=False, sure=True)
        return fitted
    if len(sides) > 2 and len([f for f in facts if f.kind == "bare"]) > 2:
        folded = fold_block(message, movement, clause.facts, move)
        asks += folded.asks
        for at, made in enumerate(folded.rows):
            fill(made, base[min(at, len(base) - 1)])
        return folded.rows
    of_rep = any(f.kind == "scope" and f.note.get("rep") for f in facts)  # "the last rep of the last set failed"
    facts = [
        replace(f, value="last", note={**f.note, "rep": True}) if of_rep and f.kind == "fail" and f.value is None else f
        for f in facts
    ]
    facts = [part for fact in facts for part in _missed_set(fact)]
    order = {"scope": 0, "side": 1}
    ordered = [f for f in facts if f.kind in order or f.kind in PLAIN | STRUCTURE | {"rows"}]
    closing_side = len(sides) == 1 and bool(ordered) and ordered[-1].kind == "side"  # "missed the second right"
    if len(ordered) < 3 or closing_side or ordered[-1].kind == "scope":
        facts = sorted(facts, key=lambda f: order.get(f.kind, 2))  # "2 on the last": the scope leads
    folded = fold_block(message, movement, facts, None, None, base)
    asks += folded.asks
    missed = next((f for f in facts if f.kind == "fail"), None)
    for row in folded.rows if singles else ():
        if row.failed and row.reps is None and row.hold_s is None:
            row.reps = 0  # a single missed has no rep
    if missed is not None and any(row.failed and row.reps is None and row.hold_s is None for row in folded.rows):
        asks.append(Ask("reps", message.span(missed.start, missed.end)))
    for fact in stated:
        for entry in fact.value[:1]:
            if entry.ask and not folded.asks and any(row.reps is None and row.hold_s is None for row in folded.rows):
                asks.append(Ask(entry.ask, message.span(fact.start, fact.end)))  # "the last set was 3 or 4"
    return folded.rows


def _sides_in_turn(base: Sequence[Row], stated: Sequence[Fact], sides: Sequence[Fact]) -> bool:
    """Whether a list has a number for each side of each planned set, and says nothing of sides."""
    if sides or len(stated) != 1 or not stated[0].note.get("list") or stated[0].note.get("mark") == "/":
        return False
    numbers = stated[0].value
    pairs = {row.side for row in base} == {"left", "right"} and all(row.reps for row in base)
    return pairs and len(numbers) == len(base) > 2 and not any(one.side or one.hold_s for one in numbers)


def _names_top(fact: Fact, base: Sequence[Row]) -> bool:
    """Whether "the top single" names the planned top set, and tells nothing of its reps."""
    if not fact.note.get("top") or len(fact.value) != 1:
        return False
    return any(row.reps == fact.value[0].reps for row in addressed(base, "top", None))


def _missed_whole(facts: Sequence[Fact]) -> bool:
    """Whether a clause says that its set was missed, perhaps with its load, and no more."""
    told = [fact for fact in facts if fact.kind in PLAIN | STRUCTURE | {"rows", "scope", "last_rep"}]
    missed = [fact for fact in told if fact.kind == "fail"]
    plain = all(fact.value is None and not fact.note.get("rep") for fact in missed)
    return len(missed) == 1 and plain and all(fact.kind in ("fail", "load") for fact in told)


def _load_and_reps(single: Sequence[Fact]) -> bool:
    """Whether no more is told of one set than its load and its reps."""
    kinds = sorted(fact.kind for fact in single)
    return kinds in (["load", "rows"], ["bare", "load"]) and all(f.value or f.note.get("none") for f in single)


def _missed_set(fact: Fact) -> list[Fact]:
    """ "Failed the last" is of that set: how many reps it had is asked."""
    if fact.kind != "fail" or fact.value is None or fact.note.get("rep"):
        return [fact]
    return [Fact("scope", fact.start, fact.end, fact.value, {"text": ""}), replace(fact, value=None)]


def _sides_unknown(message: Message, base: list[Row], stated: list[Fact], clause: Clause, asks: list[Ask]) -> bool:
    """ "12/12 and 10/12" of a movement that has no sides: asked."""
    paired = [fact for fact in stated if any(entry.side for entry in fact.value)]
    if not base or not paired or any(row.side for row in base):
        return False
    about = "sets" if (clause.targets and clause.outside) or any(f.kind == "move" for f in clause.facts) else "movement"
    asks.append(Ask(about, message.span(paired[0].start, paired[-1].end)))
    return True


def _came_to(base: list[Row], facts: list[Fact], scoped: list[Fact]) -> bool:
    """ "Couldn't finish the last set, got 2": what the set missed came to."""
    missed = [f for f in facts if f.kind == "fail"]
    told = [f for f in facts if f.kind == "bare" or (f.kind == "rows" and len(f.value) == 1 and f.value[0].reps)]
    nth = missed[0].value or (scoped[-1].value if scoped else None) if missed else None
    short = [row for row in base if row.touched and row.reps is not None and row.reps + 1 == nth]
    if len(missed) == len(short) == 1 and not told and (not scoped or len(base) == 1):
        short[0].failed = True  # "the top set only 2, failed the third"
        return True
    if len(missed) != 1 or len(told) != 1 or missed[0].note.get("rep") or any(f.kind in ("load", "at") for f in facts):
        return False
    reps = int(told[0].value if told[0].kind == "bare" else told[0].value[0].reps)
    next_rep = missed[0].value == reps + 1  # "top set only 2, failed the third"
    scope = scoped[-1].value if scoped else None if next_rep else missed[0].value
    where = addressed(base, scope, None) if scope is not None else base if next_rep and len(base) == 1 else []
    if len(where) > 1 and not isinstance(scope, tuple):
        return False
    if not where or any(row.reps is None or reps > row.reps for row in where):
        return False
    for row in where:
        row.reps, row.failed, row.touched = reps, True, True
    return True


def _pairs(
    message: Message, base: list[Row], facts: list[Fact], scoped: list[Fact], whole: bool, asks: list[Ask]
) -> list[Row] | None:
    """ "Left 2 right 1 both sets", "2/1 on the last": a pair told for those sets; None: not said of which."""
    told: dict[str, int] = {}
    kinds = [f for f in facts if f.kind in ("side", "bare", "rows")]
    if [fact.kind for fact in kinds] in (["side", "bare"] * 2, ["bare", "side"] * 2):
        sides = [f.value for f in kinds if f.kind == "side"]
        told = dict(zip(sides, [int(f.value) for f in kinds if f.kind == "bare"], strict=True))
    elif len(kinds) == 1 and kinds[0].kind == "rows" and kinds[0].note.get("mark") == "/" and len(kinds[0].value) == 2:
        told = {"left": kinds[0].value[0].reps or 0, "right": kinds[0].value[1].reps or 0}
    if set(told) != {"left", "right"} or {row.side for row in base} != {"left", "right"}:
        return None
    if not scoped and not whole and len(base) > 2 and len(set(told.values())) > 1:
        if kinds[0].kind == "rows" or any(f.kind in STRUCTURE for f in facts):
            return None
        asks.append(Ask("sets", message.span(kinds[0].start, kinds[-1].end)))  # "2 left 1 right" of several pairs
        return []
    for row in addressed(base, scoped[-1].value if scoped else None, None):
        many = told[row.side or "left"]
        if row.hold_s is not None:
            row.hold_s = float(many)  # "hang: 15 right 12 left, both sets"
            continue
        row.reps, row.failed = many, many == 0
    return base


def _rated(message: Message, fact: Fact, clause: Clause, base: list[Row], asks: list[Ask]) -> Fact:
    """ "The last one was a 5" of planned eights tells reps; "was a 7" is reps or an effort: asked.

    So is "at 7.5" of sets with a small load.
    """
    span = message.span(fact.start, fact.end)
    value = fact.value[0] if fact.kind == "at" else fact.value
    if (
        fact.note.get("led")
        or fact.note.get("rated")
        or fact.kind not in ("effort", "at")
        or any(mark in span.lower() for mark in RATED)
        or not isinstance(value, float)
    ):
        return fact
    reps = max((row.reps or 0 for row in base), default=0)
    scoped = any(f.kind == "scope" and f.value != "all" for f in clause.facts)
    if fact.kind == "at":
        kg = fact.value[1]
        if kg is not None and near_load(kg, base):
            asks.append(Ask("load_kg", span))
            for row in base:
                row.load_kg, row.load_open = None, True
            return Fact("word", fact.start, fact.end)
        return fact
    if not scoped or value != int(value) or not span[-1:].isdigit() or value > reps:
        return fact
    if value < LEAST_RATED:
        return Fact("bare", fact.start, fact.end, value, {"kg": value})
    asks.append(Ask("rpe", span))
    return Fact("word", fact.start, fact.end)


def _all_of_it(message: Message) -> Ask:
    return Ask("sets", message.text.strip()[:80])


def _one_side(base: list[Row], side: str, facts: list[Fact]) -> list[Row] | None:
    """ "right 2 2 1", "only two sets on the left": the sets of one side; None where the clause says something else."""
    own = [row for row in base if row.side == side]
    counted = next((f.value for f in facts if f.kind == "count"), None)
    if counted is not None:
        kept = own[:counted]
        return [row for row in base if row.side != side or any(row is one for one in kept)]
    lists = [f for f in facts if f.kind == "rows" and len(f.value) > 1]
    if (
        len(lists) != 1
        or len(lists[0].value) > len(own)
        or any(f.kind in STRUCTURE | {"bare", "load"} and f.value not in NO_SCHEME for f in facts)
    ):
        return None
    told = {id(row): entry for row, entry in zip(own, lists[0].value, strict=False)}
    out = []
    for row in base:
        if row.side != side:
            out.append(row)
        elif id(row) in told:
            entry = told[id(row)]
            timed = row.hold_s is not None and entry.hold_s is None  # "hangs: left 9, 9, 8"
            reps, hold = (None, float(entry.reps or 0)) if timed else (entry.reps, entry.hold_s)
            out.append(replace(row, reps=reps, hold_s=hold, failed=entry.reps == 0))
    return out
