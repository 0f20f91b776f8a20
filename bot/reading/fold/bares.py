"""Bare numbers: reps, a load, an effort, a number told before, or a question."""

from __future__ import annotations

from collections.abc import Callable

from bot.reading.bounds import is_then
from bot.reading.facts import LOADED, Entry, Fact
from bot.reading.fold.altered import MOST_EITHER
from bot.reading.fold.bare_counts import (
    LEAST_LOOSE,
    counts_what_follows,
    holds_counted,
    list_of_side,
    many_of_a_word,
    missed_of_count,
    of_count,
)
from bot.reading.fold.bare_loads import (
    FEW,
    LEAST_OF_WORD,
    added_load,
    after_scheme,
    attempted_load,
    broken_number,
    follows,
    load_of_rest,
    load_of_rows,
    load_of_scheme,
    load_of_word,
    load_of_words,
    load_tried,
    loose_number,
    mended_effort,
    mended_load,
    next_try,
    of_help,
    told_before,
)
from bot.reading.fold.bare_places import by_place, of_all, of_scope, rates_last, short_of_scope
from bot.reading.fold.loads import denied
from bot.reading.fold.missed_tries import loads_told
from bot.reading.fold.rows import Row
from bot.reading.fold.state import FoldState

MOST_OF_A_TRY = 5  # reps that a load which is tried goes up
MOST_REPS = 200
LEAST_SECONDS = 25  # nobody hangs or holds so often in one set: a number so high beside a hold is its seconds
DOUBTFUL_TRY = 20  # "got 25" may be reps or a load
WHOLE_FEATS = frozenset({"muscle_up", "ring_muscle_up", "one_arm_pull_up", "one_arm_chin_up"})


def on_bare(fold: FoldState, fact: Fact) -> None:
    if not any(rule(fold, fact) for rule in RULES):
        _reps(fold, fact)


def _spent(fold: FoldState, fact: Fact) -> bool:
    """Taken by the fact before it, denied, or the reps of a miss told once more."""
    again = fold.rows and fold.rows[-1].failed and fold.rows[-1].reps == fact.value and "got" in fold.schemes
    if fold.one_way == fact.value:
        fold.one_way = None
        return True
    return bool(fact.note.get("spent") or denied(fold, fact) or (again and fold.scope is None))


def _got_at_load(fold: FoldState, fact: Fact) -> bool:
    """ "Tried 30 but only got one": the reps of the load tried."""
    if fold.attempt_load is None or not after_scheme(fold, "got") or fold.based or fact.note.get("comma"):
        return False
    if fact.value != int(fact.value) or not 0 < fact.value <= MOST_OF_A_TRY:
        return False
    fold.group += 1
    fold.rows.append(Row(int(fact.value), load_kg=fold.attempt_load, group=fold.group))
    fold.attempt_load = None
    return True


def _got_fewer(fold: FoldState, fact: Fact) -> bool:
    """ "Tried a triple at 30, got 2"."""
    last = fold.last_group()
    if "attempt" not in fold.schemes or not after_scheme(fold, "got") or len(last) != 1 or fold.based:
        return False
    if last[0].reps is None or fact.value != int(fact.value) or fact.value >= last[0].reps:
        return False
    last[0].reps, last[0].failed = int(fact.value), True
    return True


def _one_of_ten(fold: FoldState, fact: Fact) -> bool:
    """ "fue un nueve de diez", "eine 8 geschafft": an article, no number."""
    return bool(fact.note.get("spelled") and fact.value == 1 and follows(fold, fact, "effort", "bare"))


def _counts_a_word(fold: FoldState, fact: Fact) -> bool:
    """ "one thing": a number in words that counts what is no training; "right: one clean rep" counts reps."""
    sided = fold.side in ("left", "right") and fold.prev is not None and fold.prev.kind in ("side", "sep")
    # "ten then eight then six lol", "six and a half"
    then = fold.prev is not None and is_then(fold.prev)
    told = bool(fold.bares) and (fact.value != int(fact.value) or then)
    return (
        not (sided or told)
        and not _before_sided(fold, fact)
        and bool(fact.note.get("spelled") and follows(fold, fact, "word"))
    )


def _one(fold: FoldState, fact: Fact) -> bool:
    """ "one with 40, one with 42.5" are singles; another "one" is no number."""
    if not fact.note.get("spelled") or fact.value != 1:
        return False
    loaded = follows(fold, fact, "load") and fold.next is not None and fold.next.value
    before = fold.prev is not None and fold.prev.kind == "load" and bool(fold.prev.value)
    if before and fold.prev is not None and fold.prev.end == fact.start and (fold.next is None or fold.next_is("sep")):
        fold.add([Entry(1)], fact)  # "con 20 tres, con 30 una"
        return True
    if loaded and (not fold.rows or loads_told(fold)):
        fold.add([Entry(1)], fact)
        return True
    if _before_sided(fold, fact):
        return False
    return not (fold.side or fold.next_is("side"))


def _before_sided(fold: FoldState, fact: Fact) -> bool:
    """ "One one-arm pull-up per side!"."""
    sided = fold.block.one_sided and any(one.kind == "side" for one in fold.block.facts)
    return sided and bool(fact.note.get("before_move"))


def _two_by_comma(fold: FoldState, fact: Fact) -> bool:
    """ "left 5,4", "+30: 4,4": two sets, where a decimal makes no sense."""
    after_colon = fold.prev is not None and fold.prev.kind == "sep" and fold.prev.note.get("mark") == ":"
    sided = fold.side in ("left", "right")
    after_colon = after_colon or (fold.prev is not None and bool(fold.prev.note.get("none")))  # "then no belt 8,7"
    if not fact.note.get("comma") or not (sided or (fold.loaded() and (not fold.rows or after_colon))):
        return False
    pieces = [piece.strip() for piece in fold.span(fact.start, fact.end).split(",")]
    if len(pieces) != 2 or not all(piece.isdigit() for piece in pieces):
        return False
    if pieces[1] == "5" and int(pieces[0]) >= LEAST_OF_WORD:
        return False  # "17,5" is a load
    fold.add([Entry(int(piece)) for piece in pieces], fact)
    return True


def _against_plan(fold: FoldState, fact: Fact) -> bool:
    """A number beside the plan's sets: of all of them, or asked."""
    if not fold.based or fact.value != int(fact.value) or fold.mend:
        return False
    if fold.scope == "all":
        fold.override(fold.rows, Entry(int(fact.value)))
    elif not (fold.side in ("left", "right") or fold.next_is("side") or fact.note.get("spelled")):
        fold.ask("reps", fact)
    return True


def _mended_reps(fold: FoldState, fact: Fact) -> bool:
    """ "3x5, no, 4", "right was 2"."""
    if not fold.mend or not fold.rows or fact.value != int(fact.value):
        return False
    sided = [row for row in fold.rows if row.side == fold.side] if fold.side in ("left", "right") else []
    fold.override((sided or fold.rows)[-1:], Entry(int(fact.value)))
    fold.mend = False
    return True


def _too_many(fold: FoldState, fact: Fact) -> bool:
    if fact.value <= MOST_REPS or fold.block.hold:
        return False
    fold.ask("reps", fact)
    fold.rows.append(Row(None, group=fold.group))
    return True


def _reps(fold: FoldState, fact: Fact) -> None:
    """Reps; open to being a load where nothing beside it says so."""
    timed = bool(fold.rows and fold.rows[-1].hold_s is not None) or fact.value >= LEAST_SECONDS
    hold_unsure = fold.block.hold and not timed
    sure = _sure(fold, fact) and not hold_unsure
    several = bool(fold.rows) and fold.bares_open() and not hold_unsure
    if several and not sure:
        for _, row in fold.bares:
            row.load_open = False
    fold.add([Entry(int(fact.value))], fact)
    fold.rows[-1].load_open = fold.rows[-1].load_open if sure or several else True
    if fact.note.get("the") and fact.note.get("spelled"):
        fold.rows[-1].label = "the"
    fold.bares.append((fact, fold.rows[-1]))


def _sure(fold: FoldState, fact: Fact) -> bool:
    """Whether something beside the number says that it is reps."""
    if fold.block.hold and fact.value >= LEAST_SECONDS:
        return True
    untold = fold.attempt_load is None and not fold.loaded()
    counts = bool(fact.note.get("before_move")) and fold.block.movement not in LOADED  # "hice 60 flexiones"
    if after_scheme(fold, "got", "attempt") and untold and fact.value > DOUBTFUL_TRY and not counts:
        return False
    moved = fold.prev is not None and fold.prev.kind == "move"
    return bool(
        fold.side in ("left", "right", "each")
        or fold.next_is("side", "load", "at", "effort", "link")
        or (fold.next is not None and fold.next.kind == "scheme" and fold.next.value == "amrap")
        or fold.loaded()
        or fact.note.get("before_move")
        or (moved and fact.value <= FEW and fold.block.movement in WHOLE_FEATS)
        or fold.schemes & {"amrap", "ladder", "total"}
        or ("got" in fold.schemes and not _loose_behind_name(fold, fact))
        or (fold.by_ordinals and fact.value <= MOST_EITHER)
        or (fold.rows and not fold.bares_open())
        or (fold.next_is("sep") and fact.note.get("spelled"))
    )


def _loose_behind_name(fold: FoldState, fact: Fact) -> bool:
    """ "Did my chins, 16": what was done is the movement; the number is told apart."""
    before = fold.block.facts[max(0, fold.place(fact) - 2) : fold.place(fact)]
    apart = [one.kind for one in before] == ["move", "sep"] and before[1].note.get("mark") == ","
    return apart and fact.value >= LEAST_LOOSE and fold.block.movement in LOADED


# Each takes the number where it is what the rule reads, in this order; the last ones ask.
RULES: tuple[Callable[[FoldState, Fact], bool], ...] = (
    _spent,
    _got_at_load,
    _got_fewer,
    short_of_scope,
    by_place,
    _one_of_ten,
    rates_last,
    load_of_rest,
    of_all,
    of_scope,
    _counts_a_word,
    many_of_a_word,
    holds_counted,
    counts_what_follows,
    load_of_word,
    load_of_words,
    mended_effort,
    missed_of_count,
    load_tried,
    next_try,
    told_before,
    load_of_rows,
    load_of_scheme,
    added_load,
    _one,
    _two_by_comma,
    of_help,
    attempted_load,
    _against_plan,
    mended_load,
    _mended_reps,
    of_count,
    list_of_side,
    broken_number,
    _too_many,
    loose_number,
)
