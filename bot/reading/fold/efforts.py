"""Efforts find their sets: beside a side or a scope theirs, else the last set."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from bot.reading.bounds import THEN, ends_sentence
from bot.reading.facts import Fact
from bot.reading.fold.state import FoldState


def on_effort(fold: FoldState, fact: Fact) -> None:
    value = fact.value
    if fact.note.get("session"):
        fold.early_effort = value
        return
    fold.last_effort = value
    if _of_set_to_come(fold, fact):
        fold.rpe = value
        return
    if fold.mend:
        fold.mend = False
    if (
        not fold.rows
        and (fold.moved or fact.note.get("words"))
        and value == 10
        and fold.count is None
        and fold.scope is None
        and not fold.side
    ):
        fold.failure = value
        return
    if not fold.rows and (fold.scope == "last" or (fold.next is not None and fold.next.value == "last")):
        fold.last_rpe, fold.early_effort = value, None  # "rpe 9 on the last, pull-ups 4x3"
        return
    if not fold.rows and fold.next is not None and fold.next.kind == "scope" and fold.next.value == "all":
        fold.all_rpe = value  # "two left on every set, dips 4x6"
        return
    if not fold.rows:
        if fold.count is not None or fold.scope == "all" or fold.load_said or fold.side:
            fold.all_rpe = value if fold.scope == "all" or fold.count is not None else None
            if fold.side in ("left", "right") and fold.flags is not None:
                fold.side_efforts = {**fold.side_efforts, fold.side: value}
                fold.side = None
            elif fold.all_rpe is None:
                fold.early_effort = value
        else:
            fold.early_effort = value
        return
    if fold.side in ("left", "right"):
        if _both_rated(fold):
            fold.each()  # "3 sets of 2, left rpe 7.5, right rpe 6.5"
        rows = [row for row in fold.rows if row.side == fold.side]
        if rows:
            rows[-1].rpe = value
            fold.effort_inside, fold.side = True, None
            return
        if all(row.side is None for row in fold.rows) and len(fold.last_group()) == 1 and fold.block.one_sided:
            fold.rows[-1].side, fold.rows[-1].rpe = fold.side, value
            fold.template = replace(fold.rows[-1], side=None, rpe=None)
            fold.side, fold.effort_inside = None, True
            return
        if fold.template is not None:
            fold.rows.append(replace(fold.template, side=fold.side, rpe=value))
            fold.side = None
            return
    across = fold.next is not None and fold.next.kind == "scope" and fold.next.value == "over"
    if fold.scope == "all" or (across and fold.scope is None):  # "rpe 8 across"
        for row in fold.rows[fold.work_from :]:
            row.rpe = value
        fold.effort_inside = True
        return
    if fold.scope == "over":
        fold.ask("rpe", fact)
        return
    if fold.scope is not None:
        rows = [row for row in fold.rows if row.rpe is None] if fold.scope == "rest" else fold.scoped()
        if rows:
            for row in rows:
                row.rpe = value
            fold.scope = None
            fold.effort_inside = True
            return
    # "left 3 rpe 8, right 3 rpe 7": the last pair's, but never over a side that has its own already.
    tail = fold.tail(fold.rows)
    fold.effort_rows = [row for row in tail if row.rpe is None] or tail
    for row in fold.effort_rows:
        row.rpe = value
    own_sentence = fold.after_sentence and not said_since_sentence(fold, fact)
    comma = fold.prev is not None and fold.prev.kind == "sep"
    if own_sentence or comma:
        fold.efforts_open.append((value, 2 if own_sentence else 1))
    else:
        fold.effort_inside = True


def _of_set_to_come(fold: FoldState, fact: Fact) -> bool:
    """ "3x5 with 20, then bodyweight to failure: 11": of the set that follows."""
    at = fold.place(fact)
    before = [one.kind for one in fold.block.facts[max(0, at - 2) : at]]
    new = before == ["sep", "load"] and fold.block.facts[at - 2].value == THEN
    return bool(fold.rows) and new and bool(fact.note.get("words")) and fold.next_is("bare", "rows")


def said_since_sentence(fold: FoldState, fact: Fact) -> bool:
    at = next((i for i, f in enumerate(fold.block.facts) if f.start == fact.start), 0)
    for before in reversed(fold.block.facts[:at]):
        if ends_sentence(before):
            return False
        if before.kind in ("rows", "load", "bare", "side"):
            return True
    return True


def _both_rated(fold: FoldState) -> bool:
    """Whether sets of one-sided work were told without a side, and each side has its effort."""
    rated = {
        one.value for one, after in pairwise(fold.block.facts) if one.kind == "side" and after.kind in ("effort", "at")
    }
    group = fold.last_group()
    whole = len(group) == len(fold.rows) > 1 and not any(row.side for row in group)
    return whole and fold.block.one_sided and {"left", "right"} <= rated


def on_efforts(fold: FoldState, fact: Fact) -> None:
    rows = fold.rows
    if len(rows) == len(fact.value):
        for row, value in zip(rows, fact.value, strict=True):
            row.rpe = value
        fold.effort_inside = True
        return
    if len(rows) == 2 * len(fact.value):
        for i, row in enumerate(rows):
            row.rpe = fact.value[i // 2]
        return
    group = fold.last_group()
    if len(group) == len(fact.value) and not any(row.side for row in group):
        for row, value in zip(group, fact.value, strict=True):
            row.rpe = value  # "warm-up 2x5, main 4x4 rpe 7 8 8 9"
        fold.effort_inside = True
        return
    fold.ask("rpe", fact)


def on_effort_range(fold: FoldState, fact: Fact) -> None:
    low, high = fact.value
    whole = (
        fold.over is not None
        or fold.scope in ("over", "all")
        or (fold.next_is("scope") and fold.next is not None and fold.next.value in ("over", "all"))
    )
    if whole or fact.note.get("between") or over_all_told(fold, fact):
        fold.ask("rpe", fact)
        return
    on_effort(fold, Fact("effort", fact.start, fact.end, (low + high) / 2))


def over_all_told(fold: FoldState, fact: Fact) -> bool:
    """ "4x6, rpe 6-8 over the four sets", "rpe 7-9 in all 3": as many sets as were told, the number told once more."""
    after = fold.block.facts[fold.place(fact) + 1 :]
    told = next((one for one in after if one.kind not in ("word", "plan")), None)
    if told is None or len(fold.last_group()) < 2:
        return False
    if told.kind == "scope":
        return told.value in ("over", "all")
    those = told.kind == "bare" and "the" in str(fold.block.facts[fold.place(told) - 1].value).split()  # "in the three"
    if told.value != len(fold.last_group()) or not (told.kind == "count" or those):
        return False
    told.note["spent"] = True
    return True
