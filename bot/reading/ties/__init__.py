"""Facts that say what a fact beside them is: a row of numbers by set that closes in an effort, a small "call it 2".

Each rule sees the facts of the whole message in the order of the text and gives them back, most often as they were. A
rule stands behind those whose facts it looks for, so the order below is part of what they mean; each file tells its
own rules by example.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.ties.after_each import after_each
from bot.reading.ties.circuits import circuits
from bot.reading.ties.counted import counted_with_load, told_one_by_one
from bot.reading.ties.counted_through import counted_through
from bot.reading.ties.crossed import crossed
from bot.reading.ties.denied import denied_marks
from bot.reading.ties.dropped import dropped_to
from bot.reading.ties.feats import feats_told
from bot.reading.ties.full_range import full_range
from bot.reading.ties.helped import helped_by, taken_off
from bot.reading.ties.in_part import in_part
from bot.reading.ties.joined_on import instead_of, joined_on, went_for
from bot.reading.ties.last_apart import last_apart
from bot.reading.ties.left_open import left_open
from bot.reading.ties.left_out import not_so_many, sets_left_out
from bot.reading.ties.load_turns import load_turns
from bot.reading.ties.loads_ahead import loads_ahead
from bot.reading.ties.loads_taken import felt_heavier, in_turn, loads_before, taken
from bot.reading.ties.loads_told import loads_told
from bot.reading.ties.maxes import maxes, to_the_utmost
from bot.reading.ties.named_behind import named_behind
from bot.reading.ties.narrated import narrated
from bot.reading.ties.of_the_body import of_the_body
from bot.reading.ties.openings import openings
from bot.reading.ties.others import done_by_others
from bot.reading.ties.ramps import ramps
from bot.reading.ties.rated_lifts import rated_lifts
from bot.reading.ties.ratings import in_brackets, judged, listed_efforts, named_and_rated, rated, reckoned
from bot.reading.ties.repeated import repeated
from bot.reading.ties.rounds_told import rounds_told
from bot.reading.ties.sections import sections
from bot.reading.ties.set_by_set import set_by_set
from bot.reading.ties.sets_named import sets_named
from bot.reading.ties.side_ties import efforts_of_sides, side_of_one_set, sided
from bot.reading.ties.spoken_of import spoken_of
from bot.reading.ties.then_the_rest import then_the_rest
from bot.reading.ties.unsure import (
    added,
    held_in_total,
    in_the_hang,
    many_of_a_weight,
    one_of_each,
    plates,
    rated_row,
    summed,
)
from bot.reading.ties.verdicts import verdicts

Rule = Callable[[Message, Sequence[Fact]], Sequence[Fact]]

RULES: tuple[Rule, ...] = (
    # what is told apart from the sets that it is of
    openings,
    joined_on,
    instead_of,
    went_for,
    loads_ahead,
    of_the_body,
    done_by_others,
    in_part,
    not_so_many,
    denied_marks,
    spoken_of,
    left_open,
    last_apart,
    sets_left_out,
    repeated,
    told_one_by_one,
    counted_with_load,
    counted_through,
    narrated,
    then_the_rest,
    side_of_one_set,
    sets_named,
    load_turns,
    ramps,
    taken_off,
    loads_told,
    rated_lifts,
    crossed,
    added,
    many_of_a_weight,
    one_of_each,
    in_the_hang,
    verdicts,
    maxes,
    set_by_set,
    rounds_told,
    after_each,
    # help, totals and sides
    helped_by,
    dropped_to,
    summed,
    held_in_total,
    full_range,
    sided,
    rated_row,
    feats_told,
    # numbers beside what they are of
    named_behind,
    taken,
    in_brackets,
    circuits,
    loads_before,
    plates,
    felt_heavier,
    # efforts, once no load is taken for one
    efforts_of_sides,
    named_and_rated,
    rated,
    judged,
    listed_efforts,
    to_the_utmost,
    reckoned,
    in_turn,
)


def tie(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The facts, with what their neighbours make of them; each part of the message by itself."""
    out: list[Fact] = []
    for part in sections(facts):
        tied: Sequence[Fact] = part
        for rule in RULES:
            tied = rule(message, tied)
        out += tied
    return out
