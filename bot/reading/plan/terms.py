"""The facts of a message in terms of the day's plan: the rules that say what it lets them mean, in their order."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.plan.a_set import of_everything, reps_a_set
from bot.reading.plan.all_of_them import all_of_them
from bot.reading.plan.all_told import all_told, both_halves, nothing_added, nothing_but
from bot.reading.plan.asides import without_asides
from bot.reading.plan.besides import so_many_words, told_besides
from bot.reading.plan.by_one_side import (
    counted_by_side,
    one_side_of_next,
    pair_of_set,
    that_side,
    times_of_pair,
    up_to_of_side,
    which_of_side,
)
from bot.reading.plan.by_so_much import by_so_much
from bot.reading.plan.counted import (
    hold_lift_counted,
    holds_counted,
    lone_count,
    named_and_counted,
    sets_instead,
    so_many_done,
    the_sets_of,
)
from bot.reading.plan.counted_again import counted_again, said_times
from bot.reading.plan.departures import (
    all_but_lift,
    but_for,
    but_only,
    but_then,
    ended_behind,
    last_of_lift,
    left_at,
    less_by_sign,
    missed_once,
    nth_go,
    stopped_after,
    stopped_at_reps,
    stopped_before,
    taken_off,
)
from bot.reading.plan.dropped_lift import lift_dropped_to
from bot.reading.plan.each_set_of import each_set_of, list_behind
from bot.reading.plan.each_so_many import each_so_many, not_reached
from bot.reading.plan.going_on import listed_of_sets, listed_of_side, ranges_of_sets, then_list
from bot.reading.plan.ground import planned
from bot.reading.plan.halves import halves
from bot.reading.plan.help_told import help_told
from bot.reading.plan.in_place import ended_as, in_place_of, old_first, parted_instead, rest_instead
from bot.reading.plan.in_running_order import in_running_order
from bot.reading.plan.in_turn import loads_in_turn, told_in_turn
from bot.reading.plan.lacking import reps_lacked
from bot.reading.plan.lift_by_lift import counted_alike, half_weight, only_the_weight
from bot.reading.plan.lifts_left import leaving_lifts, lift_denied, lift_not_managed
from bot.reading.plan.missed_reps import (
    all_but_a_rep,
    every_rep_but,
    rep_numbered,
    rep_of_a_set,
    rep_tried,
)
from bot.reading.plan.more_of_another import more_of_another
from bot.reading.plan.named_by_reps import missed_by_reps, named_by_reps, named_only, reps_in_figures, sets_of_so_many
from bot.reading.plan.no_numbers import hold_named, names_joined, no_numbers, set_led
from bot.reading.plan.of_each_lift import of_each_lift
from bot.reading.plan.of_holds import planned_holds
from bot.reading.plan.of_several import (
    a_set_left_out,
    change_restated,
    rated_by_lift,
    shared_change,
    so_many_of_them,
)
from bot.reading.plan.one_by_one import values_one_by_one
from bot.reading.plan.only_so_often import only_so_often
from bot.reading.plan.others_counted import others_counted, places_counted
from bot.reading.plan.outcomes import by_outcome
from bot.reading.plan.parts_of_lift import parts_of_lift
from bot.reading.plan.paused import stops_denied
from bot.reading.plan.quoted import quoted_pieces
from bot.reading.plan.rated_in_turn import rated_in_turn
from bot.reading.plan.rated_instead import rated_instead
from bot.reading.plan.reasons import without_reasons
from bot.reading.plan.reps_changed import reps_changed
from bot.reading.plan.said_again import (
    all_of_lift,
    cut_by_sets,
    more_in_extra_set,
    not_finished,
    numbers_of_lift,
    of_another_too,
    planned_scheme_denied,
)
from bot.reading.plan.sentence_goes_on import before_as_planned, set_goes_on
from bot.reading.plan.set_on_top import set_on_top
from bot.reading.plan.sets_of_lift import all_so_many, sets_more_of_lift
from bot.reading.plan.short import (
    all_but_for,
    did_these,
    first_then_rest,
    less_on_a_side,
    minus_sets,
    one_last_set,
    one_short,
    sets_by_load,
)
from bot.reading.plan.side_goes_on import side_goes_on
from bot.reading.plan.singles import singles_named
from bot.reading.plan.so_many_more import said_once_more
from bot.reading.plan.this_not_that import neither, that_instead, this_not_that
from bot.reading.plan.ticks import ticked_off
from bot.reading.plan.too_heavy import too_heavy
from bot.reading.plan.up_to import up_to
from bot.reading.plan.up_to_lift import up_to_lift
from bot.reading.plan.value_again import value_again
from bot.reading.rules import Rule, Rules


def in_terms(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The facts as the plan lets them be understood; doing it twice changes nothing more."""
    quoted = quoted_pieces(message)
    told = [fact for fact in facts if not any(start <= fact.start < end for start, end in quoted)] if quoted else facts
    return TERMS.apply(message, told, planned(message))


# In their order, each with the facts without which it changes nothing.
RULES: tuple[tuple[Rule, str], ...] = (
    (more_of_another, "move|'sets_put_on =extra_set|=by|count|rows|'sets_put_on|'on_top"),
    (planned_holds, "flag|scheme|rows|delta|=holds|repeat"),
    (named_and_counted, "=by move"),
    (both_halves, "=most side"),
    (nothing_but, "=not =except"),
    (nothing_added, "=done|=planned load"),
    (stops_denied, "flag fail|=skipped|=except"),
    (every_rep_but, "scope|last_rep|bare|count sep|=except|delta"),
    (reps_in_figures, "rows|load"),
    (rated_in_turn, "effort|efforts|word effort|efforts|bare|loads|at"),
    (halves, "=most"),
    (without_asides, "rows|bare|fail|scope|word|plan"),
    (only_the_weight, "=except|=by word|delta|load"),
    (half_weight, "word"),
    (counted_alike, "move count bare"),
    (help_told, "move|assist|claim load|assist|delta"),
    (before_as_planned, "scope =done|=planned|=same|=fine word 'those_before"),
    (set_goes_on, "scope sep rows|bare|load|instead"),
    (loads_in_turn, "load|bare sep load|bare|repeat"),
    (told_in_turn, "rows|bare|repeat sep rows|bare|loads"),
    (sets_more_of_lift, "delta|bare move"),
    (all_so_many, "bare scope move"),
    (reps_lacked, "rows|bare|word|last_rep 'lacked|'slipped|'put_on|'missing|'short_of_goal|fail"),
    (said_times, "repeat rows"),
    (planned_scheme_denied, "rows mend|fail|=instead"),
    (numbers_of_lift, "move bare sep"),
    (cut_by_sets, "word count"),
    (of_another_too, "sep move delta|count"),
    (each_so_many, "bare|load scope|=turned_to"),
    (not_reached, "=skipped|=instead bare|rows"),
    (left_at, "=skipped|=quit move count|scope"),
    (stopped_before, "=quit scope word"),
    (that_side, "side word"),
    (counted_by_side, "count side bare"),
    (times_of_pair, "rows side bare"),
    (which_of_side, "count scope side"),
    (one_side_of_next, "rows scope side =only"),
    (up_to_of_side, "side scope =stopped|=reached"),
    (pair_of_set, "scope bare|rows"),
    (this_not_that, "=skipped|=instead|=not_this move sep"),
    (that_instead, "word =instead move"),
    (neither, "=skipped move scope"),
    (all_of_lift, "scope word move"),
    (more_in_extra_set, "=extra_set bare"),
    (not_finished, "=skipped rows"),
    (in_running_order, "rows|count|scope sep bare|rows"),
    (set_led, "scope sep bare|rows"),
    (hold_named, "scope flag"),
    (but_for, "=planned"),
    (but_only, "scheme =done|=planned|=all_lifts|=same"),
    (but_then, "=except"),
    (stopped_at_reps, "at =quit|'cut_at move|scope"),
    (all_but_lift, "=done|=planned|=all_lifts sep move"),
    (up_to_lift, "=done|=planned|=all_lifts|scope move|=part_warm_up|=part_main|=part_accessory|=part_skill"),
    (up_to, "scope|count =fine|=planned|=done|=same"),
    (of_each_lift, "scope|count word|=all_lifts"),
    (last_of_lift, "scope move"),
    (lift_dropped_to, "=skipped move|scope bare|load|count|rows"),
    (nth_go, "scheme scope bare"),
    (by_so_much, "bare|load"),
    (less_by_sign, "assist"),
    (rated_by_lift, "effort bare move"),
    (so_many_of_them, "rows move 'out_of_so_many"),
    (a_set_left_out, "=skipped|=less move word"),
    (taken_off, "=off bare|load"),
    (shared_change, "delta move sep"),
    (change_restated, "delta load"),
    (ended_behind, "=quit scope|count word|=stopped"),
    (stopped_after, "=quit|=stopped|=skipped move scope|count"),
    (missed_once, "fail sep"),
    (said_once_more, "delta rows|bare"),
    (so_many_words, "rows load|delta"),
    (told_besides, "=done|=planned|=all_lifts rows|bare|delta load"),
    (reps_changed, "rows|last_rep|word"),
    (set_on_top, "count|rows load|rows|bare =done|=planned|'over_the_plan"),
    (minus_sets, "=minus count|bare =done|=planned"),
    (one_last_set, "rows load count|rows"),
    (sets_by_load, "count|bare load"),
    (only_so_often, "repeat =only move"),
    (places_counted, "scope bare"),
    (others_counted, "scope bare"),
    (missed_by_reps, "fail rows"),
    (values_one_by_one, "bare|load|loads|rows|effort"),
    (parts_of_lift, "count|rows"),
    (first_then_rest, "=rest|scope rows|count"),
    (rest_instead, "=instead bare word"),
    (old_first, "=instead bare|load|rows|count"),
    (ended_as, "=became rows"),
    (parted_instead, "=instead|=skipped bare"),
    (rated_instead, "effort =instead|=every"),
    (less_on_a_side, "side =less|delta"),
    (one_short, "=less bare move"),
    (all_but_for, "=only =done|=planned|=all_lifts scope|side|load|move"),
    (did_these, "scheme move"),
    (no_numbers, "bare|scope"),
    (names_joined, "word plan|scope|move"),
    (side_goes_on, "side scope|bare sep"),
    (all_but_a_rep, "scope|rows =except"),
    (rep_numbered, "fail word bare scope"),
    (rep_tried, "scope|last_rep scheme fail"),
    (rep_of_a_set, "scope fail"),
    (singles_named, "rows"),
    (the_sets_of, "bare word move"),
    (sets_of_so_many, "rows"),
    (named_by_reps, "=the word bare"),
    (lift_not_managed, "fail move|=part_warm_up|=part_main|=part_accessory|=part_skill"),
    (lift_denied, "word|fail|plan move|=part_warm_up|=part_main|=part_accessory|=part_skill 'denies_work"),
    (leaving_lifts, "=done|=planned|=all_lifts move"),
    (ticked_off, "sep|fail move|side|=part_warm_up|=part_main|=part_accessory|=part_skill|=rest|=holds"),
    (without_reasons, "word fail|plan|load|bare|rows|count|scope"),
    (hold_lift_counted, "bare move"),
    (holds_counted, "=holds bare"),
    (so_many_done, "bare|rows"),
    (ranges_of_sets, "rows|bare scope"),
    (each_set_of, "move word"),
    (list_behind, "=done sep move rows"),
    (all_of_them, "scope|=the"),
    (too_heavy, "bare|load word"),
    (in_place_of, "=instead rows"),
    (listed_of_sets, "scope bare sep"),
    (then_list, "bare sep scope|rows"),
    (named_only, "rows"),
    (sets_instead, "instead move"),
    (all_told, "rounds|count|bare|word|scope move|scope|plan"),
    (listed_of_side, "bare sep side"),
    (lone_count, "count"),
    (reps_a_set, "rows word"),
    (of_everything, "bare word =all_lifts"),
    (value_again, "rows move =fine|=done|=planned"),
    (counted_again, "bare|count"),
    (by_outcome, "rows|side"),
)
TERMS = Rules(RULES)
