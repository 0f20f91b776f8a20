"""Facts that say what a fact beside them is: a row of numbers by set that closes in an effort, a small "call it 2".

Each rule sees the facts of the whole message in the order of the text and gives them back, most often as they were. A
rule stands behind those whose facts it looks for, so the order below is part of what they mean; each file tells its
own rules by example.
"""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.rules import Rule, Rules
from bot.reading.ties import (
    left_open,
    load_turns,
    loads_told,
    repeated,
    rounds_told,
    set_by_set,
    sets_named,
    spoken_of,
)
from bot.reading.ties.after_each import after_each
from bot.reading.ties.all_of_a_side import all_of_a_side
from bot.reading.ties.all_with import all_with
from bot.reading.ties.at_the_hour import at_the_hour
from bot.reading.ties.back_offs import back_offs, top_by_load
from bot.reading.ties.bands_apart import bands_apart
from bot.reading.ties.breaths import breaths
from bot.reading.ties.by_place import by_place
from bot.reading.ties.circuits import circuits, named_ahead, rounds_and_more
from bot.reading.ties.counted import (
    counted_and_listed,
    counted_by_name,
    counted_each,
    counted_singles,
    counted_with_load,
    counted_words,
    holds_counted,
    told_one_by_one,
)
from bot.reading.ties.crossed import crossed
from bot.reading.ties.cut_short import cut_short
from bot.reading.ties.denied import denied_marks, stuck_joint, untried
from bot.reading.ties.dotted import dotted
from bot.reading.ties.doubled import doubled
from bot.reading.ties.dropped import dropped_to
from bot.reading.ties.each_its_load import each_its_load
from bot.reading.ties.each_rated import each_rated
from bot.reading.ties.effort_heads import effort_heads
from bot.reading.ties.end_ahead import end_ahead
from bot.reading.ties.ended_at import ended_at
from bot.reading.ties.every_time import every_time
from bot.reading.ties.failed_at import failed_at, to_failure
from bot.reading.ties.far_off import far_off
from bot.reading.ties.feats import feats_told
from bot.reading.ties.full_range import full_range
from bot.reading.ties.held_by_side import held_by_side
from bot.reading.ties.held_for import held_for
from bot.reading.ties.helped import helped_by, of_the_band, off_the_body, taken_off, weighed_band
from bot.reading.ties.instead_ahead import instead_ahead
from bot.reading.ties.instead_led import instead_led
from bot.reading.ties.joined_on import in_place_of, instead_of, joined_on, went_for
from bot.reading.ties.judged_beside import judged_beside
from bot.reading.ties.lacked import lacked
from bot.reading.ties.last_apart import last_apart
from bot.reading.ties.left_out import all_but_so_many, not_so_many, sets_left_out
from bot.reading.ties.load_heads import load_heads, titled_load
from bot.reading.ties.load_passed_on import load_passed_on
from bot.reading.ties.loads_ahead import loads_ahead
from bot.reading.ties.loads_of_all import loads_of_all
from bot.reading.ties.loads_taken import felt_heavier, in_turn, loads_before, taken
from bot.reading.ties.lost_count import lost_count
from bot.reading.ties.made_do import made_do
from bot.reading.ties.maxes import maxes, to_the_utmost
from bot.reading.ties.meant_otherwise import meant_otherwise
from bot.reading.ties.mended_again import another_lift, mended_again
from bot.reading.ties.named_behind import named_behind
from bot.reading.ties.narrated import narrated, sets_by_load
from bot.reading.ties.of_that_load import load_again, of_that_load
from bot.reading.ties.of_the_body import body_alone
from bot.reading.ties.of_those import of_those
from bot.reading.ties.off_after import off_after
from bot.reading.ties.one_last import one_last
from bot.reading.ties.one_set_of import one_set_of
from bot.reading.ties.one_unit import one_unit
from bot.reading.ties.others import done_by_others
from bot.reading.ties.paced import paced
from bot.reading.ties.ramps import ramps
from bot.reading.ties.rated_ahead import rated_ahead
from bot.reading.ties.rated_lifts import led_alike, rated_lifts
from bot.reading.ties.ratings import (
    in_brackets,
    judged,
    last_hedged,
    listed_efforts,
    named_and_rated,
    rated,
)
from bot.reading.ties.rep_of_set import rep_gone_for, rep_of_set, set_of_rep
from bot.reading.ties.reps_more import reps_more
from bot.reading.ties.rings_turned import rings_turned
from bot.reading.ties.run_on import run_on
from bot.reading.ties.sections import sections
from bot.reading.ties.set_by_reps import set_by_reps
from bot.reading.ties.sets_of_figures import sets_of_figures
from bot.reading.ties.shared_load import shared_load
from bot.reading.ties.shared_out import shared_out
from bot.reading.ties.side_nothing import side_nothing
from bot.reading.ties.side_ties import efforts_of_sides, side_of_one_set, sided
from bot.reading.ties.singles_told import singles_told
from bot.reading.ties.so_many_by_ten import so_many_by_ten
from bot.reading.ties.some_of_them import some_of_them
from bot.reading.ties.somebody import somebody
from bot.reading.ties.stopped_at import stopped_at
from bot.reading.ties.sums import sum_ahead, sums
from bot.reading.ties.taken_back import taken_back
from bot.reading.ties.then_the_rest import so_many_then_rest, then_the_rest
from bot.reading.ties.those_before import those_before
from bot.reading.ties.time_had import time_had
from bot.reading.ties.told_ahead import load_kept, miss_of_lift, misses_ahead, sets_ahead, total_of_sides
from bot.reading.ties.told_twice import announced, echoed, heads_ladder
from bot.reading.ties.tried import (
    all_missed,
    last_missed,
    misses_counted,
    next_missed,
    nothing_on_last,
    single_missed,
    tried,
    tried_and_missed,
)
from bot.reading.ties.tries_by_side import tries_by_side
from bot.reading.ties.unsure import (
    added,
    cells,
    held_in_total,
    in_the_hang,
    one_of_each,
    over_the_bar,
    plates,
    rated_row,
    summed,
)
from bot.reading.ties.verdicts import verdicts
from bot.reading.ties.went_and_not import went_and_not
from bot.reading.ties.with_that import with_that
from bot.reading.ties.without import without

# Each with what must be told for it to change anything (`rules.py`); files with several rules have their own tables.
RULES: tuple[tuple[Rule, str], ...] = (
    # what is told apart from the sets that it is of
    (at_the_hour, "at|load"),
    (effort_heads, "bare effort|word"),
    (sets_of_figures, "rows|word move|'ending_of_reps"),
    (rings_turned, "word move rows|bare|count"),
    (taken_back, "mend|fail|word|scheme rows|load sep|word bare|load|rows|count|scope"),
    (mended_again, "mend move"),
    (another_lift, "mend move rows|bare"),
    (dotted, "bare sep"),
    (every_time, "move scope|plan"),
    (with_that, "rows word claim 'that_one"),
    (all_with, "scope load"),
    (without, "load|at plan|word 'without"),
    (joined_on, "rows|bare|count|rounds move 'plus|rounds|scheme"),
    (top_by_load, "flag rows"),
    (one_last, "rows sep scope"),
    (counted_each, "count bare side"),
    (by_place, "scope|count|rows load|rows|bare|effort|at"),
    (one_unit, "scheme load bare rows sep"),
    (back_offs, "scope bare rows"),
    (doubled, "rows =the move"),
    (so_many_by_ten, "effort sep bare word"),
    (time_had, "rows 'had_time"),
    (echoed, "bare sep"),
    (ended_at, "load|bare|at|rows|count 'stuck_end|'set_end|'fell_off|'gave_out"),
    (announced, "rows|bare load sep"),
    (heads_ladder, "rows sep move"),
    (side_nothing, "side rows|bare|word|plan"),
    (held_by_side, "side load rows"),
    (held_for, "move bare 'held_word"),
    (lost_count, "vague bare|load"),
    (each_its_load, "bare load|at"),
    (meant_otherwise, "rows word"),
    (instead_led, "=instead rows|count"),
    (instead_of, "rows =instead"),
    (in_place_of, "move =instead"),
    (went_for, "bare scheme|'went_for"),
    (went_and_not, "load|rows bare|load sep"),
    (load_passed_on, "load rows scope bare"),
    (off_after, "load|at|thing rows scope|count|plan"),
    (made_do, "bare|load rows word"),
    (load_heads, "bare|rows sep rows"),
    (titled_load, "load sep bare"),
    (tries_by_side, "scheme side"),
    (miss_of_lift, "fail move rows"),
    (misses_ahead, "fail rows sep move"),
    (sets_ahead, "scope rows sep bare"),
    (load_kept, "bare move rows sep"),
    (total_of_sides, "side bare move"),
    (all_missed, "scheme bare|count sep|fail"),
    (misses_counted, "bare 'a_miss"),
    (last_missed, "rows fail"),
    (single_missed, "fail rows"),
    (nothing_on_last, "scheme scope rows|bare"),
    (tried_and_missed, "fail|=not scheme sep"),
    (next_missed, "rows|bare fail 'rep_after"),
    (tried, "bare|rows fail|plan"),
    (singles_told, "rows sep scope|fail|bare"),
    (loads_ahead, "load rows sep"),
    (paced, "scheme|scope rows|bare"),
    (body_alone, "claim side|fail|bare"),
    (done_by_others, "rows|bare 'first_person|scheme|'has_done"),
    (somebody, "rows word"),
    (not_so_many, "count sep bare"),
    (instead_ahead, "instead rows scope"),
    (bands_apart, "move rows|bare sep"),
    (some_of_them, "rows sep scope|bare|count"),
    (cut_short, "rows count|scope"),
    (rep_gone_for, "scope fail|'fell"),
    (set_of_rep, "fail"),
    (rep_of_set, "scope fail"),
    (failed_at, "fail rows|scope"),
    (to_failure, "effort bare"),
    (stopped_at, "=quit|=stopped flag"),
    (denied_marks, "flag"),
    (untried, "fail 'untried"),
    (stuck_joint, "claim fail 'joint_stuck"),
    (far_off, "effort|at 'far_off"),
    (breaths, "link sep"),
    *spoken_of.RULES,
    *left_open.RULES,
    (of_that_load, "effort bare load|rows"),
    (load_again, "bare load|rows sep word"),
    (rated_ahead, "scope effort sep bare|rows"),
    (those_before, "scope sep 'those_before"),
    (last_hedged, "scope rows bare"),
    (lacked, "rows scope 'lacked|'slipped|fail|delta"),
    (last_apart, "scope effort|at|rows|load"),
    (sets_left_out, "count bare word move"),
    (all_but_so_many, "=except bare|count"),
    *repeated.RULES,
    (in_brackets, "bare sep"),
    (told_one_by_one, "count bare effort"),
    (counted_and_listed, "count move bare sep"),
    (counted_singles, "scope bare rows"),
    (counted_by_name, "bare move rows"),
    (holds_counted, "bare word rows"),
    (counted_words, "count rows"),
    (counted_with_load, "count load bare|rows"),
    (end_ahead, "scope sep rows|bare"),
    (narrated, "scope"),
    (sets_by_load, "scope rows"),
    (so_many_then_rest, "count scope sep"),
    (then_the_rest, "scope sep"),
    (all_of_a_side, "side rows"),
    (side_of_one_set, "side rows scope bare"),
    *sets_named.RULES,
    (shared_out, "rows count|bare sep"),
    (of_those, "count rows|bare"),
    (each_rated, "rows effort|at load|bare"),
    *load_turns.RULES,
    (loads_of_all, "loads rows|bare scope"),
    (shared_load, "rows sep load"),
    (ramps, "step"),
    (off_the_body, "move bare|load word|plan"),
    (taken_off, "move bare|load|delta"),
    (reps_more, "rows bare plan|word|load"),
    *loads_told.RULES,
    (led_alike, "effort word bare"),
    (rated_lifts, "efforts|bare efforts|move"),
    (crossed, "sep move"),
    (added, "load"),
    (one_of_each, "bare word sep"),
    (over_the_bar, "rows move"),
    (in_the_hang, "rows sep flag"),
    (verdicts, "scheme"),
    (maxes, "rows|scheme move|scheme"),
    *set_by_set.RULES,
    *rounds_told.RULES,
    (after_each, "move rows|bare|count 'after_each_set|'between_sets"),
    # help, totals and sides
    (helped_by, "load plan"),
    (weighed_band, "bare|load word"),
    (of_the_band, "load|bare|instead"),
    (dropped_to, "link"),
    (summed, "rows scheme"),
    (sums, "rows bare|rows"),
    (sum_ahead, "count rows"),
    (held_in_total, "rows scheme"),
    (full_range, "flag"),
    (sided, "side"),
    (rated_row, "loads rows"),
    (feats_told, "move scheme|plan|side|scope"),
    # numbers beside what they are of
    (named_behind, "bare scope"),
    (taken, "bare scheme|plan"),
    (judged_beside, "move rows =done|=fine|=planned|=same|=skipped"),
    (cells, "bare sep"),
    (one_set_of, "rows word bare"),
    (named_ahead, "move count|rounds|repeat"),
    (rounds_and_more, "move rounds bare|load"),
    (circuits, "move count|rounds|repeat|bare"),
    (loads_before, "side bare"),
    (plates, "rows load"),
    (felt_heavier, "word bare|load"),
    # efforts, once no load is taken for one
    (set_by_reps, "rows effort 'by_reps|'by_reps_led bare|rows"),
    (efforts_of_sides, "effort side"),
    (named_and_rated, "scope rows bare"),
    (rated, "effort scope bare"),
    (judged, "bare"),
    (listed_efforts, "effort|at"),
    (to_the_utmost, "bare word"),
    (in_turn, "rows bare|load"),
)
TIES = Rules(RULES)


def tie(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The facts, with what their neighbours make of them; each part of the message by itself."""
    return [fact for part in sections(run_on(facts)) for fact in TIES.apply(message, part)]
