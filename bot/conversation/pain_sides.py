"""The side told after the pain: "no, right" after "left elbow 3", "left" after "shoulder 2"."""

from __future__ import annotations

from dataclasses import replace
from typing import cast

from bot.conversation.desk import Desk
from bot.conversation.placing import message_of
from bot.reading.pain.words import body_words
from bot.reading.reading import PainRead, Reading
from planner.facts import PainAnswer, Side
from storage import facts

MOST_WORDS = 6
MOST_OF_A_SIDE = 3  # words of a side told alone, where none was told before: "the left one"
NOTHING = {"smalltalk", "unknown"}


def put_right(desk: Desk, reading: Reading, text: str) -> Reading:
    """The reading, with today's last pain on the side that is named now; the old entry is taken back."""
    if not set(reading.intents) <= NOTHING or reading.ask or len(text.split()) > MOST_WORDS:
        return reading
    side = _side_named(desk, text)
    last = max((one for one in desk.record.pain if one.on == desk.said_on), key=lambda one: one.fact or 0, default=None)
    if side is None or last is None or last.side == side or last.fact is None or _is_known(desk, last, side):
        return reading
    if last.side is None and (last.site is None or len(text.split()) > MOST_OF_A_SIDE):
        return reading
    facts.withdraw(desk.tx, "pain", last.fact, desk.now, by=desk.cause)
    desk.forget()
    return replace(reading, intents=("pain",), pain=(PainRead(last.site, side, last.score, last.when),))


def _side_named(desk: Desk, text: str) -> Side | None:
    words = body_words(message_of(desk, text))
    named = set(words.sides.values()) if words is not None else set()
    return cast(Side, next(iter(named))) if named in ({"left"}, {"right"}) else None


def _is_known(desk: Desk, last: PainAnswer, side: Side) -> bool:
    """Whether the other side has a score of its own today: then "no, right" is no exchange."""
    return any(one.on == last.on and one.site == last.site and one.side == side for one in desk.record.pain)
