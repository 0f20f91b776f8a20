""" "One arm" said apart from its movement: "one arm, free: L 2, R 1 (pull-ups)"."""

from __future__ import annotations

from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.movements.between import breaks, measured_work, numbered
from bot.reading.movements.combine import Combine
from bot.reading.movements.joins import is_traded
from bot.reading.movements.mention import Mention


def whole_arms(message: Message, rules: Combine, mentions: list[Mention]) -> list[Mention]:
    """ "One arm, free: L 2, R 1 (pull-ups)": what is done with one arm may be said elsewhere in the message."""
    if any(one.movement in rules.families["one_arm"] for one in message.context.today or ()):
        return mentions  # the plan says which
    for bare in [mention for mention in mentions if mention.movement == "?one_arm"]:
        if _which_arm(message, rules, bare, mentions):
            mentions = [mention for mention in mentions if mention is not bare]
            continue
        for other in sorted(mentions, key=lambda one: _apart(message, bare, one)):
            if (
                other is bare
                or other.movement == "!"
                or (numbered(message, other.end) and other.start > bare.start + 4)
            ):
                continue
            whole = rules.resolve(bare.features | other.features)
            if whole is None or whole == other.movement:
                continue
            if other.start < bare.start and measured_work(message, other.start) and measured_work(message, bare.start):
                bare.features, bare.movement = bare.features | other.features, whole
                return mentions  # "2x60s dead hangs, 2x25s one arm"
            if is_traded(message, *_between(bare, other)):
                continue  # "two handed hangs instead of one arm"
            keep, drop = (bare, other) if bare.start < other.start else (other, bare)
            keep.features |= drop.features
            keep.movement = whole
            keep.spans += drop.spans
            return [mention for mention in mentions if mention is not drop]
    return mentions


def _which_arm(message: Message, rules: Combine, bare: Mention, mentions: list[Mention]) -> bool:
    """ "One arm pull-ups: with one arm 3, with the other 2": which arm it was, of a lift named before."""
    led = {token.text for token in message.tokens[max(0, bare.start - 1) : bare.start + 1]}
    named = any(one.start < bare.start and one.movement in rules.families["one_arm"] for one in mentions)
    return named and bool(led & little("with_arm"))


def _between(one: Mention, other: Mention) -> tuple[int, int]:
    """The tokens between two movements, from the first of them on."""
    first, second = sorted((one, other), key=lambda mention: mention.start)
    return first.end, second.start


def _apart(message: Message, bare: Mention, other: Mention) -> tuple[bool, int]:
    """How far a movement stands from a word for one arm: another sentence is farther than any of its own."""
    low, high = sorted((bare.start, other.start))
    return breaks(message, low, high, True), high - low
