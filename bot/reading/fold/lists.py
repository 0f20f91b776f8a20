"""Lists that are no new sets: loads, one a set, or how a scheme came out: "5x5: 5, 5, 5, 4, 3"."""

from __future__ import annotations

from bot.reading.bounds import is_strong
from bot.reading.facts import Entry, Fact
from bot.reading.fold.loads import on_loads
from bot.reading.fold.state import FoldState

ARROWS = frozenset({"-", ">", "=", "->", "→", "⇒", "=>"})  # "5x5 -> 5 5 4 4 3"
LEAST_SPELT_OUT = 3  # sets of a list that tells how a scheme came out
MORE_THAN_ASKED = 3  # so many reps more than the scheme says are still its own sets


def list_of_loads(fold: FoldState, fact: Fact, entries: list[Entry]) -> bool:
    """Whether a list is no list of reps: loads, one a set, or numbers too high to be either for sure."""
    note = fact.note
    if (
        note.get("list")
        and fold.rows
        and len(fold.rows) == len(entries)
        and note.get("values")
        and fold.prev is not None
    ) and (
        fold.prev.kind == "sep"
        and fold.prev.note.get("mark") == ":"
        and min(note["values"]) >= 10 > max(row.reps or 0 for row in fold.rows)
    ):
        on_loads(fold, Fact("loads", fact.start, fact.end, [fold.to_kg(float(v)) for v in note["values"]]))
        return True
    if (
        note.get("list")
        and note.get("values")
        and fold.rows
        and not fold.based
        and fold.prev is not None
        and fold.prev.kind in ("sep", "rows")
        and min(note["values"]) >= 10
        and all(row.load_kg is None for row in fold.rows)
        and not fold.block.hold
        and max(row.reps or 0 for row in fold.rows) < 10
    ):
        fold.ask("load_kg", fact)
        for row in fold.rows:
            row.load_open = True
        return True
    if (
        note.get("list")
        and note.get("values")
        and min(note["values"]) >= 40
        and not fold.loaded()
        and fold.block.movement not in ("push_up", "squat", "dip", None)
        and not fold.block.hold
    ):
        fold.ask("reps", fact)
        return True
    return False


def spelt_out(fold: FoldState, fact: Fact, entries: list[Entry]) -> bool:
    """Whether a list tells the sets of the scheme before it one by one: "5x5: 5, 5, 5, 4, 3"."""
    group = fold.last_group()
    whole = fold.bares[0][1] if len(fold.bares) == 1 and len(fold.rows) == 1 else None
    if whole is not None and fact.note.get("list") and whole.reps == sum(one.reps or 0 for one in entries):
        if whole.load_kg is not None:
            fold.load, fold.load_said = whole.load_kg, True  # "20 pull-ups with 10 kg: 7, 6, 4, 3"
        fold.rows, fold.bares = [], []  # "60 push-ups: 20, 20, 12, 8"
        return False
    if not fact.note.get("list") or fact.note.get("mark") == "+" or fold.plain_at is None or fold.based:
        return False
    between = [one for one in fold.block.facts if fold.plain_at.end <= one.start < fact.start]
    if _came_out_as(fold, fact, entries, between):
        for row, one in zip(group, entries, strict=True):
            row.reps = one.reps
        return True
    arrows = [one for one in between if fold.span(one.start, one.end) in ARROWS]
    tied = ("sep", "move", "load", "effort", "at", "weighted")
    if any(one.kind not in tied for one in between if one not in arrows):
        return False
    seps = [one for one in between if one.kind == "sep" and one not in arrows]
    if any(is_strong(one) for one in seps) or (seps and seps[-1].note.get("mark") not in (":", "(")):
        return False
    most = max(row.reps or 0 for row in group)
    if not seps and not arrows and len(entries) != len(group):
        return False
    if len(entries) != len(group) or any((one.reps or 0) > most + MORE_THAN_ASKED for one in entries):
        fold.ask("sets", fact)
        return True
    for row, one in zip(group, entries, strict=True):
        row.reps, row.side = one.reps, one.side or row.side
    return True


def _came_out_as(fold: FoldState, fact: Fact, entries: list[Entry], between: list[Fact]) -> bool:
    """ "4x6 with 8 kg, 6 6 6 5", "4x6, got 6 6 6 5": as many sets as the scheme has, none with more reps."""
    group = fold.last_group()
    got = any(one.kind == "scheme" and one.value == "got" for one in between)
    apart = [one for one in between if one.kind == "sep"]
    if not (apart or got) or len(entries) != len(group) or len(group) < LEAST_SPELT_OUT or fold.side is not None:
        return False
    if any(one.kind not in ("sep", "load", "effort", "at", "scheme", "claim") for one in between):
        return False
    if any(one.value == 2 or one.note.get("mark") in (":", "(", "and") for one in apart):
        return False  # "4x6, then 6 6 6 5"
    after = [one for one in fold.block.facts[fold.place(fact) + 1 :] if one.kind != "word"][:1]
    if any(one.kind in ("load", "loads", "at", "scope") for one in after) or any(
        one.side or one.hold_s for one in entries
    ):
        return False
    reps, most = [one.reps or 0 for one in entries], max(row.reps or 0 for row in group)
    return max(reps) <= most and (got or reps[0] == most)
