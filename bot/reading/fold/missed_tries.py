"""Loads that were tried and did not go up."""

from __future__ import annotations

from bot.reading.facts import LOADED, Entry, Fact
from bot.reading.fold.miss import Miss
from bot.reading.fold.rows import Row
from bot.reading.fold.state import FoldState
from bot.reading.missed import load_missed

LEAST_LOAD_MISSED = 25  # so much is a load, also where no other is told
NUMBERS = frozenset({"rows", "bare", "load", "count", "at", "left", "scope"})
LEAST_TRIED = 15  # a bare number after "missed" that is a load


def at_a_load_told(fold: FoldState, miss: Miss) -> bool:
    """ "Hit 42.5 for a single, missed 45 twice"."""
    follow, fact = fold.next, miss.fact
    if follow is None or follow.start != fact.end or not follow.value or fold.block.hold:
        return False
    told = fold.attempt_load is not None or loads_told(fold)
    at_load = follow.kind == "load" and follow.note.get("how") == "at" and told
    heavy = at_load or (follow.kind == "bare" and follow.value >= LEAST_TRIED and told)
    if not heavy or fact.value is not None or miss.weak:
        return False
    missed_at(fold, follow)
    return True


def only_missed(fold: FoldState, miss: Miss) -> bool:
    """ "Missed 45 on the weighted dip": the number is all that is told; "missed 5 on the chin" is asked."""
    follow, fact = fold.next, miss.fact
    if follow is None or follow.kind != "bare" or follow.start != fact.end or not follow.value or fold.block.hold:
        return False
    numbers = [one for one in fold.block.facts if one.kind in NUMBERS]
    alone = not fold.rows and not fold.based and fold.count is None and fold.scope is None and not fold.side
    if not alone or fact.value is not None or miss.weak or len(numbers) != 1:
        return False
    if _surely_a_load(fold, follow) and follow.end != fold.block.move_at:  # not "missed 45 dips"
        missed_at(fold, follow)
    else:
        follow.note["spent"] = True
        fold.ask("sets", Fact("fail", fact.start, follow.end))
    return True


def number_missed(fold: FoldState, miss: Miss) -> bool:
    """ "Dips: 45 nicht geschafft": a bare number and that it was missed are all that is told of a movement."""
    fact = miss.fact
    numbers = [one for one in fold.block.facts if one.kind in NUMBERS]
    alone = len(numbers) == len(fold.rows) == len(fold.bares) == 1 and numbers[0].kind == "bare"
    if not alone or fold.based or fold.side or fact.value is not None or miss.weak:
        return False
    said, row = fold.bares[0]
    if said.end == fold.block.move_at or row is not fold.rows[0] or row.side or said.start > fact.start:
        return False
    if any(one.kind == "sep" for one in fold.block.facts[fold.place(said) : fold.place(fact)]):
        return False  # "dips 45, then failed"
    if not _surely_a_load(fold, said):
        return False
    fold.rows[:] = [Row(0, failed=True, load_kg=said.note.get("kg", said.value), group=fold.group)]
    fold.bares = []
    return True


def _surely_a_load(fold: FoldState, number: Fact) -> bool:
    heavy = number.value >= LEAST_LOAD_MISSED or (fold.weighted and number.value >= LEAST_TRIED)
    return heavy and fold.block.movement in LOADED


def tried_row(fold: FoldState, miss: Miss) -> bool:
    """The set that was told as a try: missed, or made after all."""
    if fold.tried is None:
        return False
    if not miss.made_it and not (fold.rows and fold.rows[-1] is fold.tried):
        return False
    if not miss.made_it:
        fold.tried.reps, fold.tried.failed = 0, True
    return True


def try_told(fold: FoldState, miss: Miss) -> bool:
    """ "Tried a single with 45 but it didn't go up": the set that was tried is the one missed."""
    fact = miss.fact
    told = [one for one in fold.block.facts[: fold.place(fact)] if one.kind not in ("word", "sep", "plan")]
    work = [one.kind for one in told[-3:] if one.kind != "load"]
    tried = len(work) == len(told[-3:]) - 1 and work in (["scheme", "rows"], ["scheme", "bare"])
    group = fold.last_group()
    if not tried or told[-3].value != "attempt" or fact.value is not None or miss.weak:
        return False
    if len(group) != 1 or not group[0].reps or group[0].failed or fold.based or fold.side or fold.scope is not None:
        return False
    if group[0].reps != 1:
        fold.ask("reps", fact)  # of a triple that was tried, one or two may have gone up
    group[0].reps, group[0].failed = 0 if group[0].reps == 1 else None, True
    fold.load_said = False
    return True


def next_load(fold: FoldState, miss: Miss) -> bool:
    """ "3x3 at 40, with 45 failed", "…, then 45 and it did not go"."""
    load = load_missed(fold.block.facts[: fold.place(miss.fact)])
    if load is None or not fold.rows or miss.nth is not None:
        return False
    if fold.rows[-1].load_kg in (None, load.value):
        return False
    fold.rows.append(Row(0, failed=True, load_kg=load.value, group=fold.group + 1))
    fold.group, fold.second_load, fold.load_said = fold.group + 1, None, False
    return True


def tries_at_load(fold: FoldState, miss: Miss) -> bool:
    """ "Tried 45, missed it": as often as it was tried."""
    if (isinstance(miss.nth, int) and miss.of_rep) or not (
        fold.attempt_load is not None or (fold.load_said and not fold.rows)
    ):
        return False
    fold.add([Entry(0) for _ in range(fold.tries)], miss.fact)
    for row in fold.last_group():
        row.failed = True
        row.load_kg = fold.attempt_load if fold.attempt_load is not None else row.load_kg
    fold.attempt_load, fold.tries = None, 1
    fold.load_said = False
    return True


def single_just_told(fold: FoldState, miss: Miss) -> bool:
    """The single that stands before the word for the miss is what was missed, no set more."""
    last, prev = fold.rows[-1], fold.prev
    if last.reps != 1 or prev is None:
        return False
    tried, mark = "attempt" in fold.schemes, prev.note.get("mark")
    parted, adjacent = prev.kind == "sep", prev.kind in ("load", "rows") and prev.end == miss.fact.start
    only = fold.word_row is last and len(fold.rows) == 1
    newest = len(fold.rows) > 1 and len(fold.last_group()) == 1 and miss.nth is None
    meant = (
        # "+45 single, failed"; "tried a single at 45, missed it, then hit 42.5"
        (only and parted and (tried or not fold.more_sets_follow(miss.fact)))
        or (only and adjacent)  # "a single at 45 failed, then 3x3 with 35"
        or (only and parted and mark == "and" and miss.nth is None)  # "a 45 kg single and missed"
        or (newest and tried and mark == "and")  # "tried a single and missed it"
        or (newest and parted and mark == "(" and prev.end == miss.fact.start)  # "+25 x 1 (fail)"
        or (newest and adjacent)  # "then a single at fifty five, missed it"
    )
    if meant:
        last.reps, last.failed = 0, True
    return meant


def loads_told(fold: FoldState) -> bool:
    return any(row.load_kg for row in fold.rows)


def missed_at(fold: FoldState, tried: Fact) -> None:
    """A load that did not go up, told bare after the word for it; "twice" after it counts the tries."""
    tried.note["spent"] = True
    kg = tried.value if tried.kind == "load" else tried.note.get("kg", tried.value)
    fold.rows.append(Row(0, failed=True, load_kg=kg, group=fold.group + 1))
    fold.group += 1
