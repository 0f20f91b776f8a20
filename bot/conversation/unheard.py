"""Who has a session today and has not told of it."""

from __future__ import annotations

from collections.abc import Iterable

from bot.conversation.desk import Desk
from bot.conversation.reports import trained
from bot.wording import Wording


def in_words(desks: Iterable[Desk], say: Wording) -> str:
    """One line for the coach, each on the day it is where they are."""
    waited_for = [desk.athlete.handle for desk in desks if _waits(desk)]
    return say.say("unheard", names=say.listed(waited_for)) if waited_for else say.say("unheard-nobody")


def _waits(desk: Desk) -> bool:
    told = any(session.on == desk.today and trained(session) for session in desk.record.sessions)
    planned = bool(desk.review.today.sets)
    desk.leave()
    return planned and not told
