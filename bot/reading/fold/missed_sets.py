"""Sets that did not go up."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.bounds import clause_end, is_comma
from bot.reading.facts import Entry, Fact
from bot.reading.fold.miss import Miss, newest
from bot.reading.fold.missed_tries import LEAST_TRIED
from bot.reading.fold.rows import Row
from bot.reading.fold.state import FoldState


def in_its_list(fold: FoldState, miss: Miss) -> bool:
    """ "3, 3, 3, 2(f)"."""
    if not miss.fact.note.get("of_set") or not fold.rows:
        return False
    fold.rows[-1].failed = True
    return True


def count_alone(fold: FoldState, miss: Miss) -> bool:
    """ "5x5, missed 2 of them": sets or reps, and which, is not said; asked."""
    fact, at, last = miss.fact, fold.next, newest(fold)
    behind = at is not None and at.kind == "bare" and at.start == fact.end and at.value == int(at.value)
    if not behind or at is None or last is None or not last.reps or fold.based or fact.value is not None:
        return False
    if fold.scope is not None or fold.side or miss.weak or not 0 < at.value < LEAST_TRIED:
        return False
    fold.ask("sets", Fact("fail", fact.start, at.end))
    for one in _rest_of_clause(fold, at):
        one.note["spent"] = True
    return True


def _rest_of_clause(fold: FoldState, fact: Fact) -> list[Fact]:
    facts = fold.block.facts[fold.place(fact) :]
    end = clause_end(facts)
    return [one for one in facts[:end] if one.kind in ("bare", "scope")]


def weakly(fold: FoldState, miss: Miss) -> bool:
    """ "Tried +50 twice. no.": a small word is a miss where it is a sentence, and a try was told."""
    if not miss.weak:
        return False
    alone = (fold.prev is None or fold.prev.kind in ("sep", "fail")) and (fold.next is None or fold.next_is("sep"))
    if not alone or "attempt" not in fold.schemes:
        return True
    load = fold.load if fold.load_said else None
    if not miss.made_it:
        times = next((one.value for one in fold.block.facts if one.kind == "repeat"), 1) if not fold.rows else 1
        fold.rows += [Row(0, failed=True, load_kg=load, group=fold.group + 1) for _ in range(times)]
    elif fold.attempt_load is None:
        fold.rows.append(Row(1, load_kg=load, group=fold.group + 1))
    return True


def told_twice(fold: FoldState, miss: Miss) -> bool:
    """ "The fourth got stuck half way, missed": two words for one miss, nothing of sets between them."""
    last = newest(fold)
    if last is None or not last.failed:
        return False
    words: Fact | None = None
    for one in reversed(fold.block.facts[: fold.place(miss.fact)]):
        if one.kind == "fail":
            words = one
            break
        if one.kind not in ("word", "flag", "scheme", "claim") and not is_comma(one):
            break
    return words is not None and fold.span(words.start, words.end) != fold.span(miss.fact.start, miss.fact.end)


def sets_named(fold: FoldState, miss: Miss) -> bool:
    """ "5x3, the last two failed", "single 4 failed", "last two on the left failed"."""
    if fold.scope is None or not fold.rows:
        return False
    rows = _named(fold)
    singles = all(one.reps == 1 for one in fold.rows)
    for row in rows:
        row.failed = True
        if isinstance(miss.nth, int):
            row.reps = miss.nth - 1
        elif row.reps == 1 and (singles or fold.based):
            row.reps = 0  # "5 singles at 40, single 4 failed"
        elif row.reps and (_of_last_rep(fold) or (miss.nth == "last" and miss.of_rep)):
            row.reps -= 1
        elif row.reps is not None and fold.based:
            row.reps = None
        elif miss.nth is None and _of_last_ones(fold) and _one_like_the_others(rows, fold.last_group()):
            _miss_whole(fold, miss.fact, rows)
            break
    if rows:
        fold.scope = None
    return bool(rows)


def _named(fold: FoldState) -> list[Row]:
    rows = fold.scoped()
    if fold.side not in ("left", "right"):
        return rows
    own = [row for row in fold.rows if row.side == fold.side]
    many = fold.scope[1] if isinstance(fold.scope, tuple) and fold.scope[0] == "last" else 0
    if many:
        fold.side = None
        return own[-many:]
    return [row for row in rows if row.side == fold.side] or rows


def side_named(fold: FoldState, miss: Miss) -> bool:
    """ "Left failed"."""
    if fold.side not in ("left", "right"):
        return False
    fold.add([Entry(0)], miss.fact)
    fold.rows[-1].failed = True
    return True


def none_done_yet(fold: FoldState, miss: Miss) -> bool:
    """The first that is told of the work is a miss."""
    if fold.rows:
        return False
    fact, nth = miss.fact, miss.nth
    if _tried_next(fold, miss):
        fold.miss_next = True  # "missed a single at 47.5"
        return True
    if isinstance(nth, int) and (miss.of_rep or _told_as_done(fold, nth - 1, fact)):
        fold.add([Entry(nth - 1)], fact)
    else:
        fold.add([Entry(0) for _ in range(1 if fold.count is None else fold.count)], fact)
        fold.count = None
    for row in fold.last_group():
        row.failed = True
    return True


def zero_already(fold: FoldState, miss: Miss) -> bool:
    """ "Left: miss, miss.": the newest set had none, and this says so, or tells of one more."""
    last = fold.rows[-1]
    if last.reps != 0:
        return False
    last.failed = True
    if _missed_again(fold, miss.fact):
        fold.rows.append(replace(last))
    return True


def last_set(fold: FoldState, miss: Miss) -> bool:
    """ "5x3, missed the last set"."""
    last = fold.rows[-1]
    if miss.nth != "last" or last.failed or not _one_like_the_others([last], fold.last_group()):
        return False
    _miss_whole(fold, miss.fact, [_of_side_behind(fold, miss.fact, last)])
    return True


def set_by_number(fold: FoldState, miss: Miss) -> bool:
    """ "3x5, failed the second": a set, of which some reps went up where it was no single."""
    if not isinstance(miss.nth, int) or miss.nth > len(fold.rows):
        return False
    row = fold.rows[miss.nth - 1]
    row.failed = True
    if all(one.reps == 1 for one in fold.rows):
        row.reps = 0
    return True


def one_set_more(fold: FoldState, _miss: Miss) -> bool:
    """ "5, 5, then failed": another like the last."""
    new = replace(fold.rows[-1], reps=0, failed=True, rpe=None, linked=False)
    spelled = fold.prev is not None and fold.prev.kind == "bare" and fold.prev.note.get("spelled")
    if fold.count is not None or spelled:
        fold.group += 1
        new = replace(new, group=fold.group, load_kg=None)
        fold.count = None
    fold.rows.append(new)
    return True


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


def _of_last_rep(fold: FoldState) -> bool:
    """ "The last rep of the last set failed"."""
    return bool(fold.scope_fact and fold.scope_fact.note.get("rep") and not fold.based)


def _missed_again(fold: FoldState, fact: Fact) -> bool:
    """ "Left: miss, miss." """
    before = fold.block.facts[max(0, fold.place(fact) - 2) : fold.place(fact)]
    if [one.kind for one in before] != ["fail", "sep"] or before[1].note.get("mark") != ",":
        return False
    return fold.span(before[0].start, before[0].end).lower() == fold.span(fact.start, fact.end).lower()


def _tried_next(fold: FoldState, miss: Miss) -> bool:
    """Whether the set missed is told right after the word for it: "a single", "the double"."""
    follow = fold.next
    tried = follow is not None and follow.kind == "rows" and len(follow.value) == 1 and bool(follow.value[0].reps)
    return tried and miss.fact.value is None and not miss.weak


def _told_as_done(fold: FoldState, reps: int, fact: Fact) -> bool:
    """ "Failed the 7th dip, so 6": the number that follows is the reps done, told once more."""
    at = fold.place(fact)
    again = next((one for one in fold.block.facts[at + 1 :] if one.kind in ("bare", "rows")), None)
    if again is None or again.kind != "bare" or again.value != reps or reps < 1:
        return False
    again.note["spent"] = True
    return True
