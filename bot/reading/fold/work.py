"""Sets themselves: schemes of sets and reps, and lists, each to the rule that knows what it is."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.bounds import is_comma
from bot.reading.facts import Entry, Fact
from bot.reading.fold.lists import list_of_loads, spelt_out
from bot.reading.fold.new_sets import to_new_sets
from bot.reading.fold.state import FoldState
from bot.reading.fold.told_sets import each_again, named_again, placed_behind, seconds_of_holds, time_of_other


def on_rows(fold: FoldState, fact: Fact) -> None:
    entries: list[Entry] = list(fact.value)
    fold.one_more = fold.one_more or (bool(fact.note.get("more")) and bool(fold.rows))
    note = fact.note
    counted = fold.bares[0][1] if len(fold.bares) == 1 and len(fold.rows) == 1 else None
    parted = fold.prev is not None and fold.prev.kind == "sep" and fold.prev.note.get("mark") in (",", ":", "-")
    parted = parted and not _own_set(fold, fact)
    if counted is not None and parted and not note.get("list") and counted.reps == len(entries) > 1:
        fold.rows, fold.bares = [], []  # "six, no, five, five sets of two": the number of the sets
    by_word = len(fold.rows) == 1 and fold.word_row is fold.rows[0] and fold.rows[0].load_kg is None
    if by_word and not note.get("word") and not fold.based:
        fold.rows.clear()  # "doubles: 5x2"
    if note.get("plain") and fold.weighted and len(entries) <= 5 and (entries[0].reps or 0) >= 20 and not fold.loaded():
        # "1x35" of weighted chins: reps by load
        note = {**note, "own_load": fold.to_kg(float(entries[0].reps or 0))}
        entries = [Entry(len(entries))]
        fact = Fact("rows", fact.start, fact.end, entries, note)
    if (
        fold.rows
        and all(row.reps is None and row.hold_s is None for row in fold.rows)
        and note.get("list")
        and len(entries) == len(fold.rows)
    ):
        fold.asks = [ask for ask in fold.asks if ask.about != "reps"]
        for row, entry in zip(fold.rows, entries, strict=True):
            row.reps = entry.reps
        return
    if note.get("the") and fold.rows and fold.prev is not None and fold.prev.kind == "link":
        return  # "clusters of 1-1-1 with 20 s between the singles"
    if placed_behind(fold, fact, entries):
        return
    if named_again(fold, fact, entries) or each_again(fold, entries):
        return
    fold.said_sets = True
    if seconds_of_holds(fold, fact, entries):
        return
    if time_of_other(fold, entries, note):
        return
    if (
        fold.scope is not None
        and fold.rows
        and fold.scope not in ("all",)
        and len(entries) == 1
        and not note.get("each_of")
    ):
        rows = fold.scoped()
        if fold.side in ("left", "right"):
            rows = [row for row in rows if row.side == fold.side] or rows
        if rows:
            if entries[0].ask is not None:
                fold.ask(entries[0].ask, fact)  # "3x8, last one 6 or 7"
            own = note.get("own_load")  # "the first three at 20 x 4, the last two at 17.5 x 5"
            fold.override(rows, entries[0] if own is None else replace(entries[0], load_kg=own))
            return
    if list_of_loads(fold, fact, entries) or spelt_out(fold, fact, entries):
        return
    whole = fold.bares[0][1] if len(fold.bares) == 1 and len(fold.rows) == 1 and not fold.based else None
    between = [one for one in fold.block.facts if fold.bares and fold.bares[0][0].end <= one.start < fact.start]
    tied = all(one.kind in ("word", "move") or is_comma(one) for one in between)
    if whole is not None and tied and len(entries) > 1 and whole.reps == sum(one.reps or 0 for one in entries):
        fold.rows, fold.bares = [], []  # "100 push-ups in 10 sets of 10"
    if (
        note.get("word")
        and note.get("each_of")
        and len(fold.bares) == 1
        and fold.rows
        and fold.rows == fold.last_group()
        and fold.prev is not None
        and fold.prev.kind == "sep"
        and 1 < fold.bares[0][0].value <= 20
    ):
        # "4 each arm, singles": so many sets, of so many reps
        many = int(fold.bares[0][0].value)
        pair = [replace(row, reps=entries[0].reps, load_open=False) for row in fold.rows]
        fold.rows = [replace(row) for _ in range(many) for row in pair]
        fold.bares = []
        return
    to_new_sets(fold, fact, entries, note)


def _own_set(fold: FoldState, fact: Fact) -> bool:
    """Whether the number told before these sets is a set by itself: "warm-up 5 bw, work sets 5x2"."""
    told = fold.bares[0][0].end if fold.bares else fact.start
    between = [one for one in fold.block.facts if told <= one.start < fact.start]
    return any(one.kind in ("load", "plan") or one.value == 3 for one in between)
