"""One round told apart from the others: "3 rounds of 5 chins and 10 dips, last round only 8 dips"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import ends_sentence
from bot.reading.facts import Fact
from bot.reading.fold.sets import Work
from bot.reading.little import little
from bot.reading.message import Message

LEAST = 2  # sets of a movement that was done in rounds
NUMBERS = frozenset({"bare", "rows", "count", "loads"})


def of_a_round(message: Message, work: Work, own: Sequence[Fact], movement: str, before: int | None) -> int | None:
    """The round that the facts name, where they say what a movement was in it; its set is changed then.

    `before`: the round that the facts of the movement before were of; it holds where no other is named.
    """
    scopes = [fact for fact in own if fact.kind == "scope"]
    numbers = [fact for fact in own if fact.kind in NUMBERS]
    places = [at for at, one in enumerate(work.sets) if one.movement == movement and one.reps is not None]
    if len(scopes) > 1 or len(numbers) != 1 or len(places) < LEAST or numbers[0].kind != "bare":
        return None
    if not scopes and any(ends_sentence(fact) for fact in own[:-1]):
        return None
    nth = _round(message, scopes[0], len(places)) if scopes else before
    reps = numbers[0].value
    if nth is None or nth > len(places) or reps != int(reps) or (scopes and scopes[0].start > numbers[0].start):
        return None
    work.sets[places[nth - 1]] = replace(work.sets[places[nth - 1]], reps=int(reps))
    return nth


def _round(message: Message, scope: Fact, rounds: int) -> int | None:
    """Which round "last round", "round 3" means; None where no round is named."""
    words = {token.text for token in message.tokens[scope.start : scope.end]}
    if words.isdisjoint(little("a_round")):
        return None
    nth = {"first": 1, "last": rounds}.get(scope.value) if isinstance(scope.value, str) else scope.value
    return nth if isinstance(nth, int) and nth > 0 else None
