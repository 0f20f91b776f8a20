"""The day's plan as the ground that a message is told against, and the words that speak of it."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.movements.combine import combine
from bot.reading.movements.mention import Mention

STRONG = frozenset("done planned same skipped except swap extra_set stopped last_time until_lift".split())


GLOBAL = frozenset("done planned same rest fine".split())


PARTS = {
    "part_warm_up": "warm_up",
    "part_main": "main",
    "part_accessory": "accessory",
    "part_skill": "skill",
    "part_top": "top",  # no part in the plan's own words: `by_weight` says which sets these two are
    "part_back": "back",
}


def ground(message: Message) -> list[Row]:
    """The plan's sets as rows, to be changed. The planned effort is a ceiling: it is no report."""
    rows = []
    for at, one in enumerate(message.context.today or ()):
        rows.append(
            Row(
                one.reps,
                one.hold_s,
                one.load_kg,
                one.assist_kg,
                None,
                one.side,
                one.rom,
                one.eccentric,
                tuple(one.pauses),
                movement=one.movement,
                part=one.part,
                group=at,
            )
        )
    return rows


def planned(message: Message) -> Sequence[Row]:
    """The plan's sets as rows that are only looked at: worked out once a message."""
    known: tuple[Row, ...] | None = message.notes.get("planned")
    if known is None:
        known = message.notes["planned"] = tuple(ground(message))
    return known


def plan_names(fact: Fact) -> set[str]:
    """The plan words of a fact."""
    if fact.kind == "plan":
        return set(fact.note.get("names", [fact.value]))
    return set(fact.note.get("names", ()))


def members(mention: Mention) -> tuple[str, ...]:
    """The movements that a mention may mean."""
    if mention.movement.startswith("?"):
        return combine().families.get(mention.movement[1:], ())
    return (mention.movement,)
