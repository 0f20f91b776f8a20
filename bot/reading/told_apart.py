"""What is told apart from the sets it is of, put beside them before anything else is tied (each file has its own)."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.crossed import crossed
from bot.reading.facts import Fact
from bot.reading.left_out import not_so_many, sets_left_out
from bot.reading.load_turns import load_turns
from bot.reading.loads_told import loads_told
from bot.reading.maxes import maxes
from bot.reading.message import Message
from bot.reading.ramps import ramps
from bot.reading.rated_lifts import rated_lifts
from bot.reading.rounds_told import rounds_told
from bot.reading.set_by_set import set_by_set
from bot.reading.sets_named import sets_named
from bot.reading.unsure import added, in_the_hang, many_of_a_weight, one_of_each
from bot.reading.verdicts import verdicts


def told_apart(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """Crosses, loads of two plates, verdicts, sets one by one, rounds and rows of efforts."""
    facts = sets_left_out(message, not_so_many(facts))
    facts = loads_told(message, ramps(load_turns(sets_named(message, facts))))
    facts = one_of_each(many_of_a_weight(added(crossed(message, rated_lifts(message, facts)))))
    return rounds_told(set_by_set(message, maxes(message, verdicts(message, in_the_hang(facts)))))
