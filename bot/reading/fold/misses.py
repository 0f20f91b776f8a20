"""Misses: sets and reps that did not go up, and tries at a load."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.fold.state import FoldState
from bot.reading.missed import load_missed

MOST_WORDS = 2  # from a miss to the seconds of a hold
LEAST_TRIED = 15  # a bare number after "missed" that is a load


def on_fail(fold: FoldState, fact: Fact) -> None:
    if fact.note.get("spent"):
        return
    ordinal = fact.value
    if fact.note.get("of_set") and fold.rows:
        fold.rows[-1].failed = True  # "3, 3, 3, 2(f)"
        return
    if _missed_with_more(fold, fact):
        return
    if _rep_of_last(fold, fact) or _missed_after(fold, fact) or _missed_so_many(fold, fact) or _the_try(fold, fact):
        return
    follow = fold.next
    if follow is not None and follow.start == fact.end and follow.value and not fold.block.hold:
        told = fold.attempt_load is not None or loads_told(fold)
        at_load = follow.kind == "load" and follow.note.get("how") == "at" and told
        heavy = at_load or (follow.kind == "bare" and follow.value >= LEAST_TRIED and told)
        if heavy and ordinal is None and not fact.note.get("weak"):
            missed_at(fold, follow)  # "hit 42.5 for a single, missed 45 twice"
            return
    if ordinal is None and fold.last_rep:
        ordinal, fact.note["rep"] = "last", True
    if fact.note.get("name") == "yes" and fold.tried is not None:
        return
    if fold.tried is not None and fold.rows and fold.rows[-1] is fold.tried:
        fold.tried.reps, fold.tried.failed = 0, True
        return
    if fact.note.get("weak"):
        if not (fold.prev is None or fold.prev.kind == "sep" or fold.prev.kind == "fail") or not (
            fold.next is None or fold.next_is("sep")
        ):
            return
        if fact.note.get("name") == "yes":
            if "attempt" in fold.schemes and fold.attempt_load is None:
                fold.rows.append(Row(1, load_kg=fold.load if fold.load_said else None, group=fold.group + 1))
            return
        if "attempt" in fold.schemes:
            times = next((one.value for one in fold.block.facts if one.kind == "repeat"), 1) if not fold.rows else 1
            missed = Row(0, failed=True, load_kg=fold.load if fold.load_said else None, group=fold.group + 1)
            fold.rows += [replace(missed) for _ in range(times)]  # "tried +50 twice. no."
        return
    newest = fold.rows[-1] if fold.rows else None
    if newest is not None and newest.failed and _told_twice(fold, fact):
        return
    if newest is not None and newest.failed and "attempt" in fold.schemes and fold.scope == (newest.reps or 0) + 1:
        fold.scope = None
        return  # "tried a triple, got 2, third one stuck"
    led = load_missed(fold.block.facts[: fold.place(fact)])
    if led is not None and fold.rows and fold.rows[-1].load_kg not in (None, led.value) and ordinal is None:
        fold.rows.append(Row(0, failed=True, load_kg=led.value, group=fold.group + 1))  # "with 45 failed"
        fold.group, fold.second_load, fold.load_said = fold.group + 1, None, False
        return
    if fold.scope is not None and newest is not None:
        if _rep_of_side(fold, fact, newest):
            return
        rows = fold.scoped()
        if fold.side in ("left", "right"):
            own = [row for row in fold.rows if row.side == fold.side]
            many = fold.scope[1] if isinstance(fold.scope, tuple) and fold.scope[0] == "last" else 0
            rows = own[-many:] if many else [row for row in rows if row.side == fold.side] or rows
            fold.side = None if many else fold.side  # "last two on the left failed"
        if rows:
            singles = all(one.reps == 1 for one in fold.rows)
            for row in rows:
                row.failed = True
                if isinstance(ordinal, int):
                    row.reps = ordinal - 1
                elif row.reps == 1 and (singles or fold.based):
                    row.reps = 0  # "5 singles at 40, single 4 failed"
                elif row.reps and (_of_last_rep(fold) or (ordinal == "last" and fact.note.get("rep"))):
                    row.reps -= 1
                elif row.reps is not None and fold.based:
                    row.reps = None
                elif ordinal is None and _of_last_ones(fold) and _one_like_the_others(rows, fold.last_group()):
                    _miss_whole(fold, fact, rows)
                    break
            fold.scope = None
            return
        if fold.scope == (newest.reps or 0) + 1 and fold.scope > len(fold.rows) + 1:
            newest.failed, fold.scope = True, None  # "5, 5, 4 and the fifth wouldn't go": the fifth rep
            return
        if _rep_of_next_set(fold, fact, newest):
            return
    if isinstance(ordinal, int) and fold.rows and fold.scope == len(fold.rows) + 1 and not fold.based:
        fold.add([Entry(ordinal - 1)], fact)  # "8, 7, and on the third I failed the 7th"
        fold.rows[-1].failed = True
        return
    if fold.side in ("left", "right"):
        fold.add([Entry(0)], fact)
        fold.rows[-1].failed = True
        return
    if not (isinstance(ordinal, int) and fact.note.get("rep")) and (
        fold.attempt_load is not None or (fold.load_said and not fold.rows)
    ):
        fold.add([Entry(0) for _ in range(fold.tries)], fact)
        for row in fold.last_group():
            row.failed = True
            row.load_kg = fold.attempt_load if fold.attempt_load is not None else row.load_kg
        fold.attempt_load, fold.tries = None, 1
        fold.load_said = False
        return
    if not fold.rows:
        if _tried_next(fold, fact):
            fold.miss_next = True  # "missed a single at 47.5"
            return
        if isinstance(ordinal, int) and (fact.note.get("rep") or _told_as_done(fold, ordinal - 1, fact)):
            fold.add([Entry(ordinal - 1)], fact)
        elif fold.count is not None:
            fold.add([Entry(0) for _ in range(fold.count)], fact)
            fold.count = None
        else:
            fold.add([Entry(0)], fact)
        for row in fold.last_group():
            row.failed = True
        return
    last = fold.rows[-1]
    if last.reps == 0:
        last.failed = True
        if _missed_again(fold, fact):
            fold.rows.append(replace(last))
        return
    group = fold.last_group()
    if ordinal == "last" and fact.note.get("rep") and last.reps:
        last.failed, last.reps = True, last.reps - 1
        return
    if ordinal == "last" and not last.failed and _one_like_the_others([last], group):
        _miss_whole(fold, fact, [_of_side_behind(fold, fact, last)])
        return
    if isinstance(ordinal, int):
        if fact.note.get("rep") or (
            len(group) == 1 and last.reps is not None and ordinal == last.reps + 1 and last.reps != 1
        ):
            last.failed = True
            last.reps = ordinal - 1
            return
        if last.reps is not None and ordinal == last.reps + 1 > len(fold.rows):
            last.failed = True  # "5, 5, 4, missed the fifth": there are three sets, it is a rep
            return
        if len(fold.rows) + 1 < ordinal <= (last.reps or 0) and len(group) > 1 and not fold.based:
            if ordinal == last.reps:
                last.reps, last.failed = None, True
                fold.ask("reps", fact)  # "3x5, missed the fifth": of which set
                return
            fold.rows.append(replace(last, reps=ordinal - 1, failed=True, rpe=None, linked=False))
            return  # "5, 5, stuck on the fourth"
        if ordinal <= len(fold.rows) and not all(row.reps == 1 for row in fold.rows):
            fold.rows[ordinal - 1].failed = True
            return
        if ordinal <= len(fold.rows):
            fold.rows[ordinal - 1].failed, fold.rows[ordinal - 1].reps = True, 0
            return
    if (
        fold.prev is not None
        and fold.prev.kind == "sep"
        and fold.word_row is last
        and len(fold.rows) == 1
        and last.reps == 1
        and ("attempt" in fold.schemes or not fold.more_sets_follow(fact))
    ):
        last.reps, last.failed = 0, True  # "+45 single, failed"; "tried a single at 45, missed it, then hit 42.5"
        return
    adjacent = fold.prev is not None and fold.prev.kind in ("load", "rows") and fold.prev.end == fact.start
    if fold.word_row is last and len(fold.rows) == 1 and last.reps == 1 and adjacent:
        last.reps, last.failed = 0, True  # "a single at 45 failed, then 3x3 with 35"
        return
    one_more = len(fold.rows) > 1 and len(group) == 1 and last.reps == 1 and ordinal is None
    bracket = fold.prev is not None and fold.prev.kind == "sep" and fold.prev.note.get("mark") == "("
    both = fold.prev is not None and fold.prev.kind == "sep" and fold.prev.note.get("mark") == "and"
    if both and fold.word_row is last and len(fold.rows) == 1 and last.reps == 1 and ordinal is None:
        last.reps, last.failed = 0, True  # "a 45 kg single and missed"
        return
    tried = "attempt" in fold.schemes and fold.prev is not None and fold.prev.note.get("mark") == "and"
    if one_more and tried:
        last.reps, last.failed = 0, True  # "tried a single and missed it"
        return
    if one_more and bracket and fold.prev is not None and fold.prev.end == fact.start:
        last.reps, last.failed = 0, True  # "+25 x 1 (fail)"
        return
    if one_more and adjacent:
        last.reps, last.failed = 0, True  # "then a single at fifty five, missed it"
        return
    new = replace(last, reps=0, failed=True, rpe=None, linked=False)
    if fold.count is not None or (fold.prev is not None and fold.prev.kind == "bare" and fold.prev.note.get("spelled")):
        fold.group += 1
        new = replace(new, group=fold.group, load_kg=None)
        fold.count = None
    fold.rows.append(new)


def _of_last_ones(fold: FoldState) -> bool:
    return fold.scope == "last" or (isinstance(fold.scope, tuple) and fold.scope[0] == "last")


def _one_like_the_others(rows: list[Row], group: list[Row]) -> bool:
    """Whether sets were told by the scheme of all, so that their own reps are not said: those of "5x3"."""
    return len(group) > len(rows) and bool(group[0].reps) and len({one.reps for one in (*group, *rows)}) == 1


def _miss_whole(fold: FoldState, fact: Fact, rows: list[Row]) -> None:
    """ "5x3, missed the last set": how many of it went up is not said; of a single none."""
    if any(row.reps != 1 for row in rows):
        fold.ask("reps", fact)
    for row in rows:
        row.reps, row.failed = 0 if row.reps == 1 else None, True


def _of_side_behind(fold: FoldState, fact: Fact, last: Row) -> Row:
    """ "Missed the last on the left": the last of the side that is named behind."""
    after = next((one for one in fold.block.facts[fold.place(fact) + 1 :] if one.kind != "word"), None)
    named = after.value if after is not None and after.kind == "side" else None
    return next((row for row in reversed(fold.rows) if row.side == named), last) if named else last


def _rep_of_side(fold: FoldState, fact: Fact, newest: Row) -> bool:
    """ "Left 2, right 1 and stuck on the second", "left 1, right failed at the second": which rep of that side."""
    nth = fold.scope
    if fold.based or not isinstance(nth, int) or nth < 2 or fact.value is not None or newest.side is None:
        return False
    own = [row for row in fold.rows if row.side == (fold.side or newest.side)]
    if fold.side is None and len(own) == 1 and nth == (newest.reps or 0) + 1:
        newest.failed, fold.scope = True, None
        return True
    if fold.side not in ("left", "right") or newest.side == fold.side:
        return False
    if own:
        fold.ask("reps", fact)  # its second rep, or a second try
    fold.rows.append(replace(newest, side=fold.side, reps=None if own else nth - 1, failed=True, rpe=None))
    fold.scope, fold.side = None, None
    return True


def _rep_of_next_set(fold: FoldState, fact: Fact, newest: Row) -> bool:
    """ "5, 5, stuck on the fourth": of a set more, as no fourth set can follow the second."""
    nth = fold.scope
    if fold.based or fold.side or not isinstance(nth, int) or fact.value is not None:
        return False
    if not len(fold.rows) + 1 < nth <= (newest.reps or 0) or fold.load_said:
        return False
    fold.rows.append(replace(newest, reps=nth - 1, failed=True, rpe=None, linked=False))
    fold.scope = None
    return True


def _missed_with_more(fold: FoldState, fact: Fact) -> bool:
    """ "5 at 15, 5 at 17.5, failed on rep 4 at 20": a further set with its own load."""
    load, last = fold.next, fold.rows[-1] if fold.rows else None
    behind = load is not None and load.kind == "load" and load.start == fact.end and bool(load.value)
    if not behind or load is None or last is None or fold.based or not isinstance(fact.value, int):
        return False
    if fold.scope is not None or last.load_kg in (None, load.value) or fact.value < 2:
        return False
    load.note["spent"] = True
    fold.group += 1
    fold.rows.append(Row(fact.value - 1, load_kg=load.value, failed=True, side=last.side, group=fold.group))
    return True


def _missed_after(fold: FoldState, fact: Fact) -> bool:
    """ "4x3, tried a fifth but failed at 2": so many reps of one more set."""
    at, last = fold.next, fold.rows[-1] if fold.rows else None
    small = at is not None and at.kind == "load" and at.note.get("how") == "at" and not at.note.get("unit")
    behind = fold.block.facts[fold.place(fact) + 1 :][:MOST_WORDS] if fold.block.hold and last is not None else []
    seconds = next((one for one in behind if one.kind != "word"), None)
    if seconds is not None and last is not None and _hold_lost(fold, seconds, last):
        return True
    whole = fact.value == "last" and not fact.note.get("rep")  # "4x4, failed the last set at 2"
    if not small or at is None or last is None or not last.reps or fold.based or not (whole or fact.value is None):
        return False
    facts, place = fold.block.facts, fold.place(at)
    which = facts[place + 1] if place + 1 < len(facts) else None
    if which is not None and which.kind == "scope" and fold.scope is None:
        fold.scope = which.value  # "failed at 4 on the last"
        which.note["spent"] = True
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


def _hold_lost(fold: FoldState, at: Fact, last: Row) -> bool:
    """ "4x10 s, last one failed at 6": the seconds that it was held."""
    value = at.value[0] if at.kind == "at" else at.value
    if at.kind not in ("load", "at") or not isinstance(value, float) or not last.hold_s or at.note.get("unit"):
        return False
    rows = fold.scoped() if isinstance(fold.scope, int) or fold.scope in ("last", "first") else [last]
    if len(rows) != 1 or not 0 < value < (rows[0].hold_s or 0):
        return False
    rows[0].hold_s, rows[0].failed, fold.scope = value, True, None
    at.note["spent"] = True
    return True


def _rep_of_last(fold: FoldState, fact: Fact) -> bool:
    """ "Failed the fourth of the last set", "im letzten Satz die vierte nicht geschafft": which rep of it."""
    facts, at = fold.block.facts, fold.place(fact)
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
    last = fold.rows[-1] if fold.rows else None
    if "last" not in told or not nth or last is None or of_based or not last.reps or nth > last.reps:
        return False
    last.failed, last.reps, fold.scope = True, nth - 1, None
    if after is not None and after.kind in ("scope", "bare"):
        after.note["spent"] = True
    return True


def _the_try(fold: FoldState, fact: Fact) -> bool:
    """ "Tried a single with 45 but it didn't go up": the set that was tried is the one missed."""
    told = [one for one in fold.block.facts[: fold.place(fact)] if one.kind not in ("word", "sep", "plan")]
    work = [one.kind for one in told[-3:] if one.kind != "load"]
    tried = len(work) == len(told[-3:]) - 1 and work in (["scheme", "rows"], ["scheme", "bare"])
    group = fold.last_group()
    if not tried or told[-3].value != "attempt" or fact.value is not None or fact.note.get("weak"):
        return False
    if len(group) != 1 or not group[0].reps or group[0].failed or fold.based or fold.side or fold.scope is not None:
        return False
    if group[0].reps != 1:
        fold.ask("reps", fact)  # of a triple that was tried, one or two may have gone up
    group[0].reps, group[0].failed = 0 if group[0].reps == 1 else None, True
    fold.load_said = False
    return True


def _missed_so_many(fold: FoldState, fact: Fact) -> bool:
    """ "5x5, missed 2 of them": sets or reps, and which, is not said; asked."""
    at, last = fold.next, fold.rows[-1] if fold.rows else None
    behind = at is not None and at.kind == "bare" and at.start == fact.end and at.value == int(at.value)
    if not behind or at is None or last is None or not last.reps or fold.based or fact.value is not None:
        return False
    if fold.scope is not None or fold.side or fact.note.get("weak") or not 0 < at.value < LEAST_TRIED:
        return False
    fold.ask("sets", Fact("fail", fact.start, at.end))
    for one in _rest_of_clause(fold, at):
        one.note["spent"] = True
    return True


def _rest_of_clause(fold: FoldState, fact: Fact) -> list[Fact]:
    facts = fold.block.facts[fold.place(fact) :]
    end = next((at for at, one in enumerate(facts) if one.kind == "sep"), len(facts))
    return [one for one in facts[:end] if one.kind in ("bare", "scope")]


def _of_last_rep(fold: FoldState) -> bool:
    """ "The last rep of the last set failed"."""
    return bool(fold.scope_fact and fold.scope_fact.note.get("rep") and not fold.based)


def _told_twice(fold: FoldState, fact: Fact) -> bool:
    """ "The fourth got stuck half way, missed": two words for one miss, nothing of sets between them."""
    facts = fold.block.facts
    at = fold.place(fact)
    words: Fact | None = None
    for one in reversed(facts[:at]):
        if one.kind == "fail":
            words = one
            break
        if one.kind not in ("word", "flag", "scheme", "claim") and not (one.kind == "sep" and one.value == 1):
            break
    return words is not None and fold.span(words.start, words.end) != fold.span(fact.start, fact.end)


def _missed_again(fold: FoldState, fact: Fact) -> bool:
    """ "Left: miss, miss." """
    before = fold.block.facts[max(0, fold.place(fact) - 2) : fold.place(fact)]
    if [one.kind for one in before] != ["fail", "sep"] or before[1].note.get("mark") != ",":
        return False
    return fold.span(before[0].start, before[0].end).lower() == fold.span(fact.start, fact.end).lower()


def _tried_next(fold: FoldState, fact: Fact) -> bool:
    """Whether the set missed is told right after the word for it: "a single", "the double"."""
    follow = fold.next
    tried = follow is not None and follow.kind == "rows" and len(follow.value) == 1 and bool(follow.value[0].reps)
    return tried and fact.value is None and not fact.note.get("weak")


def _told_as_done(fold: FoldState, reps: int, fact: Fact) -> bool:
    """ "Failed the 7th dip, so 6": the number that follows is the reps done, told once more."""
    at = fold.place(fact)
    again = next((one for one in fold.block.facts[at + 1 :] if one.kind in ("bare", "rows")), None)
    if again is None or again.kind != "bare" or again.value != reps or reps < 1:
        return False
    again.note["spent"] = True
    return True


def loads_told(fold: FoldState) -> bool:
    return any(row.load_kg for row in fold.rows)


def missed_at(fold: FoldState, tried: Fact) -> None:
    """A load that did not go up, told bare after the word for it; "twice" after it counts the tries."""
    tried.note["spent"] = True
    kg = tried.value if tried.kind == "load" else tried.note.get("kg", tried.value)
    fold.rows.append(Row(0, failed=True, load_kg=kg, group=fold.group + 1))
    fold.group += 1
