"""Questions for what is to come of the block: "when's my next test", "when's the deload", "how many weeks left"."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from datetime import date
from typing import Literal

from bot.conversation.coach_vocabulary import words_of
from bot.conversation.desk import Desk
from bot.conversation.reasons import reason_in_words
from bot.conversation.words import phrases
from bot.wording import Wording
from planner.ahead import Ahead, look_ahead
from planner.facts import PlannedSet

MOST_WORDS = 10
About = Literal["test", "deload", "block"]
ABOUT: tuple[About, ...] = ("test", "deload", "block")


def about(text: str, names: Collection[str] = ()) -> About | None:
    """What a short question is about; None where it is none of these.

    Args:
        names: The athlete's, in a coach's question: they add nothing.
    """
    words = [word for word in words_of(text.replace(":", " ").replace("¿", " ")) if word not in names]
    known, said = phrases("block_asked"), f" {' '.join(words)} "
    if not words or len(words) > MOST_WORDS or any(sign.isdigit() for sign in said):
        return None
    if not any(said.startswith(f" {one} ") for one in known["begins"]) or set(words) & set(known["others"]):
        return None
    found = next((one for one in ABOUT if set(words) & set(known[one])), None)
    if found is not None:
        return found
    of_week = any(said.startswith(f" {one} ") for one in known["which_week"])
    return "block" if of_week and set(words) <= {*known["small"], *" ".join(known["which_week"]).split()} else None


def in_words(desk: Desk, what: About, say: Wording) -> str:
    """One line, as things stand; why, where nothing is planned."""
    stopped = desk.review.stopped
    if stopped is not None:
        return reason_in_words(stopped, say)
    ahead = look_ahead(desk.record, desk.today)
    if what == "test":
        return _test(ahead, say)
    if what == "deload":
        return f"{_deload(ahead, desk.today, say)} {_test_day(ahead, say)}".strip()
    return f"{_block(ahead, say)} {_deload(ahead, desk.today, say)} {_test_day(ahead, say)}".strip()


def _test(ahead: Ahead, say: Wording) -> str:
    if ahead.test is None:
        return say.say("ahead-no-test")
    tested = [one for one in ahead.test.sets if one.part in ("skill", "main")]
    return say.say("ahead-test", day=say.long_day(ahead.test.on), what=_movements(tested, say))


def _movements(sets: Sequence[PlannedSet], say: Wording) -> str:
    return say.listed(list(dict.fromkeys(say.movement(one.movement) for one in sets))) or "–"


def _test_day(ahead: Ahead, say: Wording) -> str:
    return say.say("ahead-test-day", day=say.day(ahead.test.on)) if ahead.test is not None else ""


def _deload(ahead: Ahead, today: date, say: Wording) -> str:
    if ahead.block is not None and ahead.block.deload and ahead.block.starts_on <= today:
        return say.say("ahead-deload-now", until=say.day(ahead.block.ends_on))
    if ahead.deload_on is None:
        return say.say("ahead-no-deload")
    return say.say("ahead-deload", day=say.long_day(ahead.deload_on))


def _block(ahead: Ahead, say: Wording) -> str:
    block = ahead.block
    if block is None:
        return ""
    weeks = block.loading_weeks + 1
    return say.say("ahead-block", block=block.block, week=block.week, weeks=weeks, until=say.day(block.ends_on))
