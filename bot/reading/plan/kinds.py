"""A movement named by less than its name, on a day that plans a kind of it: "hangs", "curls" for hammer curls."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.movements.combine import combine
from bot.reading.movements.mention import Mention

SKILLS = ("front_lever", "planche")
# what a bare name means, and the kind that the plan may have of it
ONE_ARMED = ("one_arm_pull_up", "one_arm_chin_up")
HELPED = "one_arm_counterweight"
KINDS = {"dead_hang": "one_arm_hang", "biceps_curl": "hammer_curl"}


def of_planned_kind(message: Message, mentions: Sequence[Mention]) -> None:
    """Such mentions become the planned movement; not where the whole name is said, or the plan has both."""
    planned = {one.movement for one in message.context.today or ()}
    helped = HELPED in planned and _help_told(message)
    for mention in mentions:
        _of_planned_skill(mention, planned)
        kind = HELPED if helped and mention.movement in ONE_ARMED else KINDS.get(mention.movement)
        if kind not in planned or mention.movement in planned:
            continue
        words = {message.tokens[at].text for start, end in mention.spans for at in range(start, end)}
        if kind is not None and words.isdisjoint(little("whole_name")):
            mention.movement = kind


def _help_told(message: Message) -> bool:
    """ "One-arm pull-ups as planned, 2.5 kg less help": whether help is spoken of, and not denied."""
    told = [
        hit for found in message.beginning("grammar") for hit in found if (hit.table, hit.name) == ("assist", "off")
    ]
    return any(not hit.start or message.tokens[hit.start - 1].text not in little("without") for hit in told)


def _of_planned_skill(mention: Mention, planned: set[str]) -> None:
    """ "Adv tuck instead" of a planned tuck front lever: the position of the lever, and not of the planche."""
    if mention.movement != "?straddle" and not (mention.movement == "?tuck" and "advanced" in mention.features):
        return
    advanced = "advanced" in mention.features
    family = [one for one in combine().families[mention.movement[1:]] if one.startswith("advanced") == advanced]
    fits = [one for one in family if one in planned]
    fits = fits or [one for one in family if any(one.endswith(skill) and _has(planned, skill) for skill in SKILLS)]
    if len(fits) == 1:
        mention.movement = fits[0]


def _has(planned: set[str], skill: str) -> bool:
    return any(name.endswith(skill) for name in planned)
