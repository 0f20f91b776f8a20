"""Who has a test before long, and who is in a deload: for the coach who plans a week."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from bot.conversation.desk import Desk
from bot.wording import Wording
from planner.timeline import AS_IF_TEST

AHEAD = timedelta(days=14)  # as far as the walk of a review looks


def in_words(desks: Sequence[Desk], say: Wording) -> str:
    """Two lines, the tests by day."""
    tests, light = list[tuple[date, str]](), list[str]()
    for desk in desks:
        day = _test_on(desk)
        if day is not None:
            tests.append((day, desk.person.name))
        block = desk.review.block
        if block is not None and block.deload and desk.review.stopped is None:
            light.append(desk.person.name)
        desk.leave()
    told = say.listed([say.say("who-tests-one", name=name, day=say.day(day)) for day, name in sorted(tests)])
    lines = [say.say("who-tests", told=told) if told else say.say("who-tests-nobody")]
    return "\n".join([*lines, say.say("who-deloads", names=say.listed(light))] if light else lines)


def _test_on(desk: Desk) -> date | None:
    """The next test day that is not done; None where none is near or training is stopped."""
    if desk.review.stopped is not None:
        return None
    slots = desk.view.timeline.slots
    days = [slot.on for slot in slots if slot.kind in AS_IF_TEST and slot.on is not None and slot.on >= desk.today]
    left = [day for day in days if day <= desk.today + AHEAD and day not in desk.view.history.session_days]
    return min(left, default=None)
