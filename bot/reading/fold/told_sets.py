"""Reps and times of sets told before, or of none: "only 2 reps on the fifth", "4 reps each", "5x1 hangs, 12 s"."""

from __future__ import annotations

from typing import Any

from bot.reading.facts import Entry, Fact
from bot.reading.fold.state import FoldState

PAUSED = frozenset({"pause_pause", "pause_top", "pause_middle", "pause_bottom"})
SOON = 4  # facts


def placed_behind(fold: FoldState, fact: Fact, entries: list[Entry]) -> bool:
    """ "5x3, only 2 reps on the fifth": the reps of a set that is named behind them."""
    after = [one for one in fold.block.facts[fold.place(fact) + 1 :] if one.kind != "word" and one.value != "the"]
    scope = after[0].value if after and after[0].kind == "scope" else None
    named = scope == "last" or isinstance(scope, int)
    if not named or fold.scope is not None or len(entries) != 1 or entries[0].reps is None or fold.based:
        return False
    if len(fold.rows) < 2 or fact.note.get("word") or fold.side in ("left", "right"):
        return False
    fold.scope = scope
    rows = fold.scoped()
    fold.scope = None
    if not rows or any((row.reps or 0) < (entries[0].reps or 0) for row in rows):
        return False
    fold.override(rows, entries[0])
    after[0].note["spent"] = True
    return True


def named_again(fold: FoldState, fact: Fact, entries: list[Entry]) -> bool:
    """ "RPE 9 on the double", sentences after it was told: the effort is that set's."""
    rows = [row for row in fold.rows if row.reps == entries[0].reps]
    rated = len(rows) == 1 and _effort_soon(fold, fact)  # "5@25 3@45 1@65, the single was a true RPE 10"
    behind = fold.prev is not None and fold.prev.kind == "effort"
    rates = behind and len(rows) == 1  # "nothing left on that double"
    told = fact.note.get("the") or (fact.note.get("word") and fold.after_sentence and rated)
    if not told or not (fold.after_sentence or rated or rates) or not rows or fold.based:
        return False
    if rated:
        fold.scope = fold.rows.index(rows[0]) + 1
        return True
    if behind:
        for row in fold.effort_rows:
            row.rpe = None
        for row in rows:
            row.rpe = fold.last_effort
        fold.efforts_open.clear()
        fold.effort_inside = True
    return True


def _effort_soon(fold: FoldState, fact: Fact) -> bool:
    """Whether an effort follows, with hardly a word between."""
    after = [one for one in fold.block.facts[fold.place(fact) + 1 :][:SOON] if one.kind not in ("word", "scheme")]
    return bool(after) and after[0].kind == "effort"


def each_again(fold: FoldState, entries: list[Entry]) -> bool:
    """ "3 sets of 4, 4 reps each": the reps told once more."""
    each = fold.next is not None and fold.next.kind == "side" and bool(fold.next.note.get("plain"))
    group = fold.last_group()
    told = len(entries) == 1 and entries[0].reps is not None
    return each and told and len(group) > 1 and all(row.reps == entries[0].reps for row in group)


def seconds_of_holds(fold: FoldState, fact: Fact, entries: list[Entry]) -> bool:
    """ "5x1 hangs, 12 s": the seconds of holds whose number is told; of "3x3, 12 s" the number is asked."""
    holds, group = fold.plain_at, fold.last_group()
    timed = bool(fact.note.get("one") and fact.note.get("unit") == "sec")
    if not fold.block.hold or not timed or holds is None or fold.based or fold.scope is not None:
        return False
    if any(one.hold_s for one in holds.value):
        return False
    for row in group:
        row.hold_s = entries[0].hold_s
    if any(one.reps != 1 for one in holds.value):
        fold.ask("sets", holds)
    return True


def time_of_other(fold: FoldState, entries: list[Entry], note: dict[str, Any]) -> bool:
    """Whether a time is no hold: minutes of the session, seconds of lowering, a set every minute."""
    if (
        note.get("unit") == "min"
        and note.get("one")
        and not fold.block.hold
        and not {"emom", "every"} & fold.all_schemes
    ):
        return True  # minutes of something else; holds of minutes are hangs and handstands
    if (
        note.get("one")
        and note.get("unit") == "sec"
        and not fold.block.hold
        and fold.rows
        and fold.rows[-1].reps is not None
    ):
        return True  # seconds of lowering or of a stop
    seconds = note.get("one") and note.get("unit") == "sec" and not fold.block.hold and not fold.rows
    if seconds and fold.scope == "all":
        return True  # "alle 90 Sekunden 3 Klimmzüge"
    if seconds and fold.prev is not None and fold.prev.kind == "flag" and fold.flags & PAUSED:
        return True  # "paused at the top 2 s each: pull-ups 3x4"
    timed = [one.hold_s for one in entries if one.hold_s is not None]
    last = fold.last_group()
    lowered = "eccentric" in fold.flags | fold.late and not fold.block.hold and len(timed) == len(entries)
    if lowered and len(last) == 1 and last[0].reps == len(entries) > 1:
        return True  # "3 negatives left (5s, 5s, 4s)"
    if note.get("one") and note.get("unit") == "min" and {"emom", "every"} & fold.all_schemes:
        fold.minutes.append(entries[0].hold_s or 0)
        return True
    return False
