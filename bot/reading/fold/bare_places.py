"""Bare numbers of a set that is pointed at: "first two sets 5, third 4, last 3", "5x3, last set 9"."""

from __future__ import annotations

from bot.reading.facts import Entry, Fact
from bot.reading.fold.bare_loads import LEAST_RATED, after_scheme
from bot.reading.fold.efforts import on_effort
from bot.reading.fold.rows import Row
from bot.reading.fold.state import FoldState
from bot.reading.little import little

MOST_OF_A_SET = 2  # a set, or the pair of a one-sided one


def short_of_scope(fold: FoldState, fact: Fact) -> bool:
    """ "5x3 with 20, last set to failure, got 2": what came of the set that is named before its effort."""
    beside = [one for one in (fold.prev, fold.next) if one is not None and one.kind == "scheme"]
    if not any(one.value == "got" for one in beside) or fold.based or fold.scope:
        return False
    silent = ("word", "sep", "scheme")
    before = [one for one in fold.block.facts[: fold.place(fact)] if one.kind not in silent][-2:]
    if [one.kind for one in before] != ["scope", "effort"] or fact.value != int(fact.value):
        return False
    fold.scope = before[0].value
    rows = fold.scoped()
    if len(rows) > MOST_OF_A_SET or not rows:
        fold.scope = None
        return False
    fold.override(rows, Entry(int(fact.value)))
    return True


def by_place(fold: FoldState, fact: Fact) -> bool:
    """ "first two sets 5, third 4, last 3": sets told one by one."""
    whole = fact.value == int(fact.value) and not fact.note.get("comma")
    first = fold.scope[1] if isinstance(fold.scope, tuple) and fold.scope[0] == "first" else 1
    counted = fold.count is not None and (fold.scope in (1, "first") or 1 < first < fold.count)
    if not fold.rows and whole and (fold.count is None or counted):
        fold.count, fold.expected = None, fold.count or fold.expected  # "vier Sätze: im ersten acht, im zweiten …"
        fold.by_ordinals = fold.by_ordinals or first > 1 or fold.scope in (1, "first")
        if first > 1:
            fold.add([Entry(int(fact.value)) for _ in range(first)], fact)
            return True
    nth = 1 if fold.scope == "first" else fold.scope
    if fold.by_ordinals and nth == len(fold.rows) + 1 and whole and fact.note.get("spelled") and not fold.side:
        fold.add([Entry(int(fact.value))], fact)  # "im ersten satz acht im zweiten sieben"
        return True
    last = fold.scope == "last" or (isinstance(fold.scope, tuple) and fold.scope[0] == "last")
    if last and fold.by_ordinals and whole and not fold.based:
        many = fold.scope[1] if isinstance(fold.scope, tuple) else 1
        fold.add([Entry(int(fact.value)) for _ in range(many)], fact)
        return True
    return False


def rates_last(fold: FoldState, fact: Fact) -> bool:
    """ "5x2 at 30, 9 on the last": a number far above the reps of the set that is named behind it is its effort.

    One more than those ("3x8, 9 on the last") may be either, and is asked.
    """
    last, follow = fold.rows[-1:], fold.next
    behind = follow is not None and follow.kind == "scope" and fold.scope is None
    behind = behind and follow is not None and follow.value in ("last", ("last", 1))
    if not behind or not last or last[0].reps is None or fold.based or not LEAST_RATED <= fact.value <= 10:
        return False
    if fact.value <= last[0].reps or fact.note.get("comma"):
        return False
    got = after_scheme(fold, "got") or (fold.prev is not None and fold.prev.kind == "plan")
    scheme = len(fold.last_group()) > 1
    if got or (scheme and fact.value == last[0].reps + 1):
        last[0].reps, last[0].rpe = int(fact.value), None  # "3x5+, got 8 on the last"
        if not got:
            fold.ask("reps", fact)
            last[0].reps = None
        if follow is not None:
            follow.note["spent"] = True
        return True
    if fact.value == last[0].reps + 1:
        return False
    on_effort(fold, Fact("effort", fact.start, fact.end, float(fact.value)))
    return True


def of_all(fold: FoldState, fact: Fact) -> bool:
    """ "4x6 with 20, all at 8" rates each set; "all 8" of sixes may be more reps or an effort: no further set."""
    before = fold.prev
    whole = before is not None and before.kind == "scope" and before.value == "all" and before.end == fact.start
    across = fold.next is not None and fold.next.kind == "scope" and fold.next.value == "over"  # "4x6, 8 across"
    scheme = any(one.note.get("plain") for one in fold.block.facts[: fold.place(fact)] if one.kind == "rows")
    if not (whole or across) or before is None or fold.based or not scheme or len(fold.rows) < 2 or fold.side:
        return False
    follows = ("rows", "load", "side", "count") if across else ("rows", "load", "side", "count", "scope")
    if not LEAST_RATED <= fact.value <= 10 or fold.next_is(*follows):
        return False
    if all(row.reps == fact.value for row in fold.rows):
        return True
    if fold.span(before.start, before.end).lower().split()[-1] in little("all_rated_at") and any(
        row.load_kg for row in fold.rows
    ):
        on_effort(fold, Fact("effort", fact.start, fact.end, float(fact.value)))
        return True
    fold.ask("rpe", fact)
    return True


def of_scope(fold: FoldState, fact: Fact) -> bool:
    """The reps of a set that was pointed at."""
    if not fold.rows or fold.scope in (None, "all") or fact.note.get("comma") or fact.value != int(fact.value):
        return False
    rows = fold.scoped()
    if not rows:
        return False
    other = fold.total is not None and len(fold.rows) == 2 and fold.each_of and fact.value != rows[0].reps
    if other and fold.scope in ("last", ("last", 1)):
        fold.add([Entry(int(fact.value))], fact)  # "100 dips, sets of 15 till the last one which was 10"
        return True
    if fold.scope == "last" and _ends_a_list(fold, fact):
        fold.add([Entry(int(fact.value))], fact)  # "3,3,3,3 and on the last 1"
        return True
    more = all(fact.value > (row.reps or 0) + 1 for row in rows)
    held = fold.block.hold and any((row.hold_s or 0) > fact.value for row in rows)  # "the last 6": seconds
    if fold.last_effort is not None and more and LEAST_RATED <= fact.value <= 10 and not held:
        on_effort(fold, Fact("effort", fact.start, fact.end, float(fact.value)))  # "all rpe 7, the last was 8"
        return True
    if more and _either(fold, fact, rows):
        return True
    if fold.side in ("left", "right"):
        rows = [row for row in rows if row.side == fold.side] or rows
    fold.override(rows, Entry(int(fact.value)))
    return True


def _either(fold: FoldState, fact: Fact, rows: list[Row]) -> bool:
    """ "5x3, last set 9": more reps than the scheme's, or its effort; where a word judges it, its effort."""
    one = len(rows) <= MOST_OF_A_SET and len(fold.rows) > len(rows) and not fold.block.hold
    if not one or fold.by_ordinals or not LEAST_RATED <= fact.value <= 10:
        return False
    if after_scheme(fold, "got") or "amrap" in fold.all_schemes or any(row.reps is None for row in rows):
        return False
    if _judged(fold, fact):
        on_effort(fold, Fact("effort", fact.start, fact.end, float(fact.value)))
        return True
    fold.ask("reps", fact)
    for row in rows:
        row.reps = None
    fold.scope = None
    return True


def _judged(fold: FoldState, fact: Fact) -> bool:
    """Whether a word right beside a number says how it went: "a solid 9", "9 knapp"."""
    facts, at = fold.block.facts, fold.place(fact)
    beside = [one for one in facts[max(0, at - 1) : at + 2] if one.kind == "word"]
    return any(fold.span(one.start, one.end).lower() in little("judging") for one in beside)


def _ends_a_list(fold: FoldState, fact: Fact) -> bool:
    """Whether "and the last 1" goes on with a list told set by set, and does not only repeat its end."""
    facts = (fold.block.facts[at] for at in range(fold.place(fact) - 1, -1, -1))
    told = (f for f in facts if f.kind not in ("word", "scope", "move", "load") and f.value != "only")
    mark, rows = next(told, None), next(told, None)
    joined = mark is not None and mark.kind == "sep" and mark.note.get("mark") == "and"
    listed = joined and rows is not None and rows.kind == "rows" and rows.note.get("list") and not fold.based
    return bool(listed) and fold.rows[-1].reps != fact.value and not fold.rows[-1].side
