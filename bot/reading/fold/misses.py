"""Misses: sets and reps that did not go up, and tries at a load.

A word for a miss is met by rules in their order; the first that it fits settles what it changes.
"""

from __future__ import annotations

from collections.abc import Callable

from bot.reading.facts import Fact
from bot.reading.fold.miss import Miss, miss_of
from bot.reading.fold.missed_reps import (
    further_set_at_its_load,
    hold_lost,
    last_rep,
    rep_beyond_the_sets,
    rep_by_number,
    rep_of_last,
    rep_of_next_set,
    rep_of_set_more,
    rep_of_side,
    rep_of_try,
    stopped_at,
)
from bot.reading.fold.missed_sets import (
    count_alone,
    in_its_list,
    last_set,
    none_done_yet,
    one_set_more,
    set_by_number,
    sets_named,
    side_named,
    told_twice,
    weakly,
    zero_already,
)
from bot.reading.fold.missed_tries import (
    at_a_load_told,
    next_load,
    number_missed,
    only_missed,
    single_just_told,
    tried_row,
    tries_at_load,
    try_told,
)
from bot.reading.fold.state import FoldState

Rule = Callable[[FoldState, Miss], bool]  # whether it fits, and then all that it changes is changed

RULES: tuple[Rule, ...] = (
    in_its_list,
    further_set_at_its_load,
    rep_of_last,
    hold_lost,
    stopped_at,
    count_alone,
    try_told,
    at_a_load_told,
    only_missed,
    number_missed,
    tried_row,
    weakly,
    told_twice,
    rep_of_try,
    next_load,
    rep_of_side,
    sets_named,
    rep_beyond_the_sets,
    rep_of_next_set,
    rep_of_set_more,
    side_named,
    tries_at_load,
    none_done_yet,
    zero_already,
    last_rep,
    last_set,
    rep_by_number,
    set_by_number,
    single_just_told,
    one_set_more,
)


def on_fail(fold: FoldState, fact: Fact) -> None:
    if fact.note.get("spent"):
        return
    miss = miss_of(fold, fact)
    for fits in RULES:
        if fits(fold, miss):
            return
