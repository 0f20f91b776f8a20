"""How many sets: "4 sets", "4x4 and 2 extra sets", "20 pull-ups in 5 sets", rounds."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.fold.marks import for_so_many
from bot.reading.fold.rows import Row
from bot.reading.fold.state import FoldState

MOST_FURTHER = 20  # sets more than told before


def on_count(fold: FoldState, fact: Fact) -> None:
    value = fact.value
    if fact.note.get("spent"):
        return
    if fact.note.get("bare") and fold.scope not in (None, "all") and (rows := fold.scoped()):
        fold.override(rows, Entry(value))  # "in the fourth I was done after 4"
        return
    if fold.based:
        fold.keep(value)
        return
    if fact.note.get("more") and fold.rows:
        fold.one_more = True
        at = fold.place(fact)
        told = next((one for one in fold.block.facts[at + 1 :] if one.kind not in ("sep", "word")), None)
        if told is None or told.kind not in ("rows", "bare"):
            last = fold.tail(fold.rows)
            if _turned(fold):
                last = [replace(row, load_kg=fold.load) for row in last]  # "then dropped to 20 for two more sets"
            fold.rows += [replace(row, rpe=None) for _ in range(min(value, MOST_FURTHER)) for row in last]
            return  # "4x4 and 2 extra sets"
    summed = fact.note.get("within") or "total" in fold.all_schemes
    if summed and len(fold.bares) == 1 and len(fold.rows) == 1:
        # "20 pull-ups in 5 sets", "20 in total (5 sets)": how many in each is not said
        fold.ask("sets", fact)
        fold.rows = [Row(None)]
        fold.bares = []
        return
    if value < 0 or value > 40 or (_turned(fold) and fold.rows and not fold.more_sets_follow(fact)):
        fold.ask("sets", fact)  # "3x5 at 25, then dropped to 20 for two sets": of these, or two more
        return
    group = fold.last_group()
    if fold.mend and fold.count is not None:
        fold.count, fold.mend = value, False
        return
    if fold.mend and group and len({(row.reps, row.hold_s, row.load_kg) for row in group}) == 1 and value:
        # "5 sets of 3. No wait, only 4 sets"
        fold.rows = [row for row in fold.rows if row.group != fold.group]
        fold.rows += [replace(group[0]) for _ in range(value)]
        fold.mend = False
        return
    pairs = group and len(group) == 2 and {row.side for row in group} == {"left", "right"}
    if group and (len(group) == 1 or pairs) and not fact.note.get("only"):
        follow = fold.next is not None and fold.next.kind == "rows"
        if fold.one_of_some and value > 1:
            fold.ask("sets", fact)
            return
        if (len(fold.rows) == len(group) or for_so_many(fold, fact)) and not follow:
            fold.rows = [row for row in fold.rows if not any(row is one for one in group)]
            fold.rows += [replace(row) for _ in range(value) for row in group]
            return
    fold.count = value


def _turned(fold: FoldState) -> bool:
    """Whether a changed load stands right before: "dropped to 20"."""
    return fold.prev is not None and fold.prev.kind == "load" and bool(fold.prev.note.get("turned"))


def on_rounds(fold: FoldState, fact: Fact) -> None:
    if fold.rows and fact.note.get("after"):
        fold.flags, fold.late = fold.flags | fold.late, set()  # "3 each side, lower half, x2"
    if fact.note.get("pair") and not fact.note.get("after") and _each_side_told(fold, fact.value):
        return  # "2 sets: left 2,2 right 2,1"
    if fact.note.get("pair") and fold.rows:
        pair = fold.tail(fold.rows)
        for row in pair if fact.note.get("after") else ():
            row.group = fold.group  # what is told behind is of all of them
        fold.rows += [replace(row) for _ in range(fact.value - 1) for row in pair]
    elif fold.rows and fact.note.get("after") and len(fold.rows) > 1 and fold.tail(fold.rows) != fold.rows:
        fold.ask("sets", fact)
    elif fold.rows:
        fold.rows = [replace(row, group=fold.group + i) for i in range(fact.value) for row in fold.rows]
    else:
        fold.block.rounds = fact.value


def _each_side_told(fold: FoldState, often: int) -> bool:
    """Whether so many sets of either side stand already."""
    sides = [row.side for row in fold.rows]
    return often > 1 and sides.count("left") == sides.count("right") == often and len(sides) == 2 * often
