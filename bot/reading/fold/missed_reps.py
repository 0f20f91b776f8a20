"""Reps that did not go up, of one set or another."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Entry
from bot.reading.fold.miss import Miss, newest
from bot.reading.fold.rows import Row
from bot.reading.fold.state import FoldState

MOST_WORDS = 3  # from a miss to the seconds of a hold


def further_set_at_its_load(fold: FoldState, miss: Miss) -> bool:
    """ "5 at 15, 5 at 17.5, failed on rep 4 at 20": a further set with its own load."""
    fact, load, last = miss.fact, fold.next, newest(fold)
    behind = load is not None and load.kind == "load" and load.start == fact.end and bool(load.value)
    if not behind or load is None or last is None or fold.based or not isinstance(fact.value, int):
        return False
    if fold.scope is not None or last.load_kg in (None, load.value) or fact.value < 2:
        return False
    load.note["spent"] = True
    fold.group += 1
    fold.rows.append(Row(fact.value - 1, load_kg=load.value, failed=True, side=last.side, group=fold.group))
    return True


def rep_of_last(fold: FoldState, miss: Miss) -> bool:
    """ "Failed the fourth of the last set", "im letzten Satz die vierte nicht geschafft": which rep of it."""
    fact, facts, at = miss.fact, fold.block.facts, fold.place(miss.fact)
    scopes = [one for one in facts[:at] if one.kind not in ("word", "plan")][-2:]
    told = [one.value for one in scopes if one.kind == "scope"]
    after = next((one for one in facts[at + 1 : at + 3] if one.kind != "word"), None)
    if isinstance(fact.value, int) and after is not None and after.kind == "scope":
        told = [fact.value, after.value]
    if fact.value == "last" and after is None:  # "failed the last set on rep 2"
        words = facts[at + 1 : at + 3]
        after = facts[at + 3] if at + 3 < len(facts) and any(one.value == "rep" for one in words) else None
        told = ["last", int(after.value)] if after is not None and after.kind == "bare" else told
    of_based = fold.based and fact.value != "last"
    nth = next((value for value in told if isinstance(value, int)), 0)
    last = newest(fold)
    if "last" not in told or not nth or last is None or of_based or not last.reps or nth > last.reps:
        return False
    last.failed, last.reps, fold.scope = True, nth - 1, None
    if after is not None and after.kind in ("scope", "bare"):
        after.note["spent"] = True
    return True


def hold_lost(fold: FoldState, miss: Miss) -> bool:
    """ "4x10 s, last one failed at 6": the seconds that it was held."""
    behind = fold.block.facts[fold.place(miss.fact) + 1 :][:MOST_WORDS] if fold.block.hold and fold.rows else []
    at = next((one for one in behind if one.kind != "word" and one.value != "the"), None)
    led = fold.next is not at or (at is not None and at.kind != "bare")
    if at is None or not led or at.kind not in ("load", "at", "bare") or at.note.get("unit"):
        return False
    value = at.value[0] if at.kind == "at" else at.value
    rows = fold.scoped() if isinstance(fold.scope, int) or fold.scope in ("last", "first") else fold.rows[-1:]
    if len(rows) != 1 or not isinstance(value, float) or not 0 < value < (rows[0].hold_s or 0):
        return False
    rows[0].hold_s, rows[0].failed, fold.scope = value, True, None
    at.note["spent"] = True
    return True


def stopped_at(fold: FoldState, miss: Miss) -> bool:
    """ "4x3, tried a fifth but failed at 2": so many reps of one more set."""
    fact, at, last = miss.fact, fold.next, newest(fold)
    small = at is not None and at.kind == "load" and at.note.get("how") == "at" and not at.note.get("unit")
    whole = fact.value == "last" and not fact.note.get("rep")  # "4x4, failed the last set at 2"
    if not small or at is None or last is None or not last.reps or fold.based or not (whole or fact.value is None):
        return False
    facts, place = fold.block.facts, fold.place(at)
    behind = facts[place + 1] if place + 1 < len(facts) else None
    if behind is not None and behind.kind == "scope" and fold.scope is None:
        fold.scope = behind.value  # "failed at 4 on the last"
        behind.note["spent"] = True
    further = fold.scope == len(fold.rows) + 1  # "two sets of five, third set failed at four"
    named = fold.scoped() if isinstance(fold.scope, int) or fold.scope in ("last", "first") else []
    named = [last] if whole else named
    if not 0 < at.value < last.reps or at.value != int(at.value):
        return False
    if len(named) == 1 and len(fold.rows) > 1:
        named[0].reps, named[0].failed, fold.scope = int(at.value), True, None  # "4x5, the last failed at 3"
        at.note["spent"] = True
        return True
    if "attempt" not in fold.schemes and not further:
        return False
    at.note["spent"] = True
    fold.rows.append(replace(last, reps=int(at.value), failed=True, rpe=None, linked=False, group=fold.group + 1))
    fold.group, fold.scope = fold.group + 1, None
    return True


def rep_of_try(fold: FoldState, _miss: Miss) -> bool:
    """ "Tried a triple, got 2, third one stuck": which is known already."""
    last = newest(fold)
    known = last is not None and last.failed and "attempt" in fold.schemes and fold.scope == (last.reps or 0) + 1
    if known:
        fold.scope = None
    return known


def rep_of_side(fold: FoldState, miss: Miss) -> bool:
    """ "Left 2, right 1 and stuck on the second", "left 1, right failed at the second": which rep of that side."""
    fact, nth, last = miss.fact, fold.scope, newest(fold)
    if last is None or last.side is None or fold.based or not isinstance(nth, int) or nth < 2 or fact.value is not None:
        return False
    own = [row for row in fold.rows if row.side == (fold.side or last.side)]
    if fold.side is None and len(own) == 1 and nth == (last.reps or 0) + 1:
        last.failed, fold.scope = True, None
        return True
    if fold.side not in ("left", "right") or last.side == fold.side:
        return False
    if own:
        fold.ask("reps", fact)  # its second rep, or a second try
    fold.rows.append(replace(last, side=fold.side, reps=None if own else nth - 1, failed=True, rpe=None))
    fold.scope, fold.side = None, None
    return True


def rep_beyond_the_sets(fold: FoldState, _miss: Miss) -> bool:
    """ "5, 5, 4 and the fifth wouldn't go": the fifth rep, as there is no fourth set yet."""
    last = newest(fold)
    if last is None or fold.scope != (last.reps or 0) + 1 or fold.scope <= len(fold.rows) + 1:
        return False
    last.failed, fold.scope = True, None
    return True


def rep_of_next_set(fold: FoldState, miss: Miss) -> bool:
    """ "5, 5, stuck on the fourth": of a set more, as no fourth set can follow the second."""
    nth, last = fold.scope, newest(fold)
    if last is None or fold.based or fold.side or not isinstance(nth, int) or miss.fact.value is not None:
        return False
    if not len(fold.rows) + 1 < nth <= (last.reps or 0) or fold.load_said:
        return False
    fold.rows.append(replace(last, reps=nth - 1, failed=True, rpe=None, linked=False))
    fold.scope = None
    return True


def rep_of_set_more(fold: FoldState, miss: Miss) -> bool:
    """ "8, 7, and on the third I failed the 7th"."""
    if not isinstance(miss.nth, int) or not fold.rows or fold.scope != len(fold.rows) + 1 or fold.based:
        return False
    fold.add([Entry(miss.nth - 1)], miss.fact)
    fold.rows[-1].failed = True
    return True


def last_rep(fold: FoldState, miss: Miss) -> bool:
    """ "Missed the last rep"."""
    last = fold.rows[-1]
    if miss.nth != "last" or not miss.of_rep or not last.reps:
        return False
    last.failed, last.reps = True, last.reps - 1
    return True


def rep_by_number(fold: FoldState, miss: Miss) -> bool:
    """ "Missed the fifth", where it can be no set."""
    last, nth, group = fold.rows[-1], miss.nth, fold.last_group()
    if not isinstance(nth, int):
        return False
    behind = last.reps is not None and nth == last.reps + 1
    if miss.of_rep or (behind and len(group) == 1 and last.reps != 1):
        last.failed, last.reps = True, nth - 1
        return True
    if behind and nth > len(fold.rows):
        last.failed = True  # "5, 5, 4, missed the fifth": there are three sets, it is a rep
        return True
    if not len(fold.rows) + 1 < nth <= (last.reps or 0) or len(group) < 2 or fold.based:
        return False
    if nth == last.reps:
        last.reps, last.failed = None, True
        fold.ask("reps", miss.fact)  # "3x5, missed the fifth": of which set
    else:
        # "5, 5, stuck on the fourth"
        fold.rows.append(replace(last, reps=nth - 1, failed=True, rpe=None, linked=False))
    return True
