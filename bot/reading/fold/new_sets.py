"""Reps or holds to new sets: the count, the mend and the loads that waited for them, clusters."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.fold.state import FoldState


def to_new_sets(fold: FoldState, fact: Fact, entries: list[Entry], note: dict[str, Any]) -> None:
    """Reps or holds to new sets, with the count, the mend and the loads that waited for them."""
    if not fold.rows and fold.count is None and len(entries) == 1 and isinstance(fold.scope, tuple):
        fold.count = fold.scope[1] if fold.scope[0] == "first" else None  # "first two sets 5 reps at 20, then …"
    count = fold.count
    if count is not None and _told_singly(fold, fact, count):
        count = fold.count = None
    if count is not None and len(entries) == 1 and not note.get("the"):
        entries = [replace(entries[0]) for _ in range(min(count, 40))]
        fold.count = None
    elif count is not None and note.get("mark") != "+" and len(entries) == count:
        fold.count = None
    pair = note.get("mark") == "/" and len(entries) == 2 and fold.side not in ("left", "right")  # "left 4/3, right 5/3"
    if pair and fold.block.one_sided:
        entries[0].side, entries[1].side = "left", "right"
    if fold.mend and fold.rows and not fold.based:
        replace_last(fold, entries, note)
        return
    if fold.waiting and len(entries) in (1, len(fold.waiting)):
        entries = entries if len(entries) > 1 else [replace(entries[0]) for _ in fold.waiting]
        fold.add(entries, fact)
        for row, kg in zip(fold.rows[-len(entries) :], fold.waiting, strict=True):
            row.load_kg = kg
        fold.waiting = []
        return
    heavy = fold.by_load and "own_load" not in note and any(one is fact for one in fold.heavy)
    if note.get("plain") and heavy and not fold.block.hold:
        # "20x5, 22.5x4, 25x3": load by reps
        note = {**note, "own_load": fold.to_kg(float(len(entries)))}
        entries, fact = entries[:1], Fact("rows", fact.start, fact.end, entries[:1], note)
    fold.add(entries, fact)
    fold.plain_at = fact if note.get("plain") and len(entries) > 1 and "own_load" not in note else None
    fold.each_of = bool(note.get("each_of")) and len(entries) == 1
    if (note.get("word") or note.get("top")) and len(entries) == 1:
        fold.word_row = fold.rows[-1]
    own = fold.prev is not None and fold.prev.kind == "load" and len(entries) == 1 and len(fold.rows) == 1
    if own and (note.get("word") or note.get("top") or _another_load(fold, fact)) and fold.prev and fold.prev.value:
        fold.load, fold.load_said = None, False  # "+47.5 for a single, then 3x3 at 40"
        fold.groups[fold.group] = True
    paused = fold.link in ("rest_pause", "cluster") and note.get("list") and len(entries) > 1
    singles = not note.get("plain") and len(entries) > 1 and all(entry.reps == 1 for entry in entries)
    paused = paused or (fold.link == "cluster" and singles and fold.count is None)  # "cluster: 5 singles with 35"
    if (note.get("mark") == "+" or paused) and not fold.block.hold:
        at = fold.place(fact)
        after = [one for one in fold.block.facts[at + 1 :] if one.kind == "rows"]
        if any(one.note.get("mark") == "+" or (paused and one.note.get("list")) for one in after):
            fold.count = None  # "two clusters: 2+1+1 and 2+1+1": each is told
        cluster(fold)


def _another_load(fold: FoldState, fact: Fact) -> bool:
    """ "Worked up to 35 for a single, then 3x3 at 27.5": whether the sets after it have their own load."""
    after = [one for one in fold.block.facts[fold.place(fact) + 1 :] if one.kind not in ("word", "sep")]
    kinds = [one.kind for one in after[:2]]
    return bool(fact.note.get("reps")) and kinds == ["rows", "load"] and bool(after[0].note.get("plain"))


def _told_singly(fold: FoldState, fact: Fact, count: int) -> bool:
    """ "3 sets at +15: 6 reps 3 RIR, 6 reps 2 RIR, 5 reps": as many are told as were counted."""
    plain = fact.note.get("plain") and "own_load" not in fact.note
    if count < 2 or plain or fact.note.get("mark") == "+":
        return False
    told = 0
    for one in fold.block.facts[fold.place(fact) :]:
        if one.kind in ("count", "rounds", "scope", "link") or ("own_load" in one.note and len(one.value) > 1):
            return False
        if one.kind == "rows":
            told += len(one.value)
    return told == count and len(fact.value) < count


def cluster(fold: FoldState) -> None:
    group = fold.last_group()
    goes_on = fold.link == "rest_pause" and len(fold.rows) == len(group) + 1  # "myo reps, 12 then 4 4 3"
    for row in group[not goes_on :]:
        row.linked = True
    if fold.count and fold.count > 1:
        copies = [replace(row) for _ in range(fold.count - 1) for row in group]
        fold.rows.extend(copies)
        fold.count = None
    fold.link = None


def replace_last(fold: FoldState, entries: list[Entry], note: dict[str, Any]) -> None:
    old = fold.last_group()
    fold.rows = [row for row in fold.rows if row.group != fold.group]
    model = old[0] if old else Row()
    for entry in entries:
        row = replace(model, reps=entry.reps, hold_s=entry.hold_s, group=fold.group)
        if "own_load" in note:
            row.load_kg = note["own_load"]
        elif fold.next_is("load"):
            row.load_kg = None  # "4x5 with 20, no, 5x4 with 17.5"
        if fold.load_said and fold.load is not None and model.load_kg is None:
            row.load_kg = fold.load
        fold.rows.append(row)
    fold.mend, fold.groups[fold.group] = False, False
