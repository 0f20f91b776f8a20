"""A movement named by less than its name, on a day that plans a kind of it: "hangs", "curls" for hammer curls."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.movements.mention import Mention

# what a bare name means, and the kind that the plan may have of it
KINDS = {"dead_hang": "one_arm_hang", "biceps_curl": "hammer_curl"}


def of_planned_kind(message: Message, mentions: Sequence[Mention]) -> None:
    """Such mentions become the planned movement; not where the whole name is said, or the plan has both."""
    planned = {one.movement for one in message.context.today or ()}
    for mention in mentions:
        kind = KINDS.get(mention.movement)
        if kind not in planned or mention.movement in planned:
            continue
        words = {message.tokens[at].text for start, end in mention.spans for at in range(start, end)}
        if kind is not None and words.isdisjoint(little("whole_name")):
            mention.movement = kind
