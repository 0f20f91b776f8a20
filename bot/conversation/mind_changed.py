"""A change of mind about what was just agreed: "no, from saturday" after a journey, "leave it thursday" after a move.

Taken for one only where every word is understood: days, words that turn a word around, and small ones beside them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import Any

from bot.conversation import absences, moves
from bot.conversation.desk import Desk
from bot.conversation.outcomes import outcome
from bot.conversation.placing import message_of
from bot.conversation.words import folded
from bot.reading.days import Day, named_days
from bot.reading.message import Message
from bot.reading.reading import Correction, Reading
from planner.facts import Absence, Equipment, Move
from storage import facts

WITHIN = timedelta(days=1)
MOST_CHARACTERS = 80
BOUNDS = ("from", "until", "back", "since", "open")
KINDS: dict[type[Any], str] = {Move: "move", Absence: "absence", Equipment: "equipment"}
NO_WISH = frozenset({"unknown", "smalltalk"})


Agreed = Move | Absence | Equipment


@dataclass(frozen=True)
class Change:
    """What was agreed, and what is to stand instead; None: nothing, it stays as it was before.

    `unclear`: a day is named, and nobody can say which of those agreed it is.
    """

    agreed: Agreed
    now: Agreed | None
    unclear: bool = False


def meant(desk: Desk, text: str) -> Change | None:
    """The change that a message makes to what the newest message brought; None where it is about something else."""
    if len(text) > MOST_CHARACTERS:
        return None
    message = message_of(desk, text)
    days = [day for day in named_days(message).days if day.kind not in ("vague", "bad", "rough")]
    turned, keeps = _words(message, days)
    if turned is None or not (days or keeps):
        return None
    bounded = bool(days) and all(day.link in BOUNDS or day.kind == "length" for day in days)
    if not turned and not keeps and not (bounded and set(desk.read(text, message.context).intents) <= NO_WISH):
        return None
    agreed = _newest(desk)
    if agreed is None:
        return None
    if isinstance(agreed, Move):
        return _of_a_move(agreed, days, keeps)
    return _of_days(desk, agreed, days, keeps)


def other_day(desk: Desk, text: str) -> Reading | None:
    """ "No wait, that was Friday", of the report that the newest message brought: its day put right."""
    if len(text) > MOST_CHARACTERS:
        return None
    message = message_of(desk, text)
    days = named_days(message).days
    turned, _ = _words(message, days)
    if not turned or len(days) != 1 or days[0].back is None or days[0].link in BOUNDS:
        return None
    cause = facts.last_cause(desk.tx, desk.id)
    brought = facts.caused_by(desk.tx, desk.id, cause) if cause is not None else []
    told = [one for one in desk.record.sessions if ("session", one.fact) in brought and one.sets]
    if len(told) != 1 or told[0].on == days[0].back[1]:
        return None
    correction = Correction("performed_on", None, days[0].back[1].isoformat(), None, None, "all")
    return Reading(("correction",), correction=correction, language=message.language)


def carry_out(desk: Desk, change: Change) -> str:
    """Put it in the place of what was agreed, and say so."""
    agreed, now, say = change.agreed, change.now, desk.say
    assert agreed.fact is not None
    if change.unclear:
        return say.say("absence-which-days")
    stood = agreed if not isinstance(agreed, Equipment) else None
    if isinstance(now, Move) and not outcome(desk, now.moved_from, now.moved_to, stood).fits:
        return say.say("mind-not-changed", day=say.day(now.moved_to))
    facts.withdraw(desk.tx, KINDS[type(agreed)], agreed.fact, desk.now, by=desk.cause)
    desk.forget()
    if isinstance(now, Move):
        told = moves.carry_out(desk, now.moved_from, now.moved_to)
    elif isinstance(now, Equipment):
        told = f"{absences.note_equipment(desk, now)} {moves.next_training(desk)}"
    elif now is not None:
        told = absences.note(desk, now)
    elif isinstance(agreed, Move):
        told = f"{say.say('move-stays', day=say.day(agreed.moved_from))} {moves.next_training(desk)}"
    else:
        told = f"{say.say('absence-called-off')} {moves.next_training(desk)}"
    return f"{say.say('mind-changed')} {told}".strip()


def _words(message: Message, days: Sequence[Day]) -> tuple[bool | None, bool]:
    """Whether words turn something around, and whether some say that it stays as it was; None: others are in it."""
    named = {at for day in days for at in range(day.start, day.end)}
    words = [
        token.text for at, token in enumerate(message.tokens) if at not in named and token.kind not in ("sym", "nl")
    ]
    known = folded("mind_changed")
    said = f" {' '.join(words)} "
    keeps = [one for one in known["keeps"] if f" {one} " in said]
    for one in keeps:
        said = said.replace(f" {one} ", " ")
    left = said.split()
    if not set(left) <= {*known["turns"], *known["small"]}:
        return None, False
    return bool(set(left) & set(known["turns"])), bool(keeps)


def _newest(desk: Desk) -> Agreed | None:
    """The move, the absence or the equipment that the athlete's newest message with facts brought, of late."""
    cause = facts.last_cause(desk.tx, desk.id)
    if cause is None:
        return None
    brought = facts.caused_by(desk.tx, desk.id, cause)
    known: tuple[Agreed, ...] = (*desk.record.moves, *desk.record.absences, *desk.record.equipment)
    agreed = [one for one in known if (KINDS[type(one)], one.fact) in brought]
    if not agreed or agreed[0].fact is None:
        return None
    told_at = facts.said_at(desk.tx, KINDS[type(agreed[0])], agreed[0].fact)
    return agreed[0] if told_at is not None and abs(desk.said_at - told_at) <= WITHIN else None


def _of_a_move(agreed: Move, days: Sequence[Day], keeps: bool) -> Change | None:
    named = [_nearest(day, agreed.moved_to) for day in days]
    if not named:
        return Change(agreed, None) if keeps else None
    if len(named) > 2 or None in named:
        return None
    since, until = agreed.moved_from, named[-1]
    if len(named) == 2 and named[0] is not None:
        since = named[0]
    elif days[0].link in ("from", "since", "open") and named[0] is not None:
        since, until = named[0], agreed.moved_to
    if until is None or (since, until) == (agreed.moved_from, agreed.moved_to):
        return None
    return Change(agreed, None if since == until else replace(agreed, moved_from=since, moved_to=until, fact=None))


def _of_days(desk: Desk, agreed: Absence | Equipment, days: Sequence[Day], keeps: bool) -> Change | None:
    if not days:
        return Change(agreed, None) if keeps else None
    since, until = agreed.since, agreed.until
    for day in days:
        first, last = _nearest(day, since), _within(day, since, until) or _nearest(day, until or since)
        if day.kind == "length":
            until = since + timedelta(days=day.days - 1)
        elif first is None or last is None:
            return None
        elif day.kind in ("range", "week", "weekend") and day.ahead is not None:
            since, until = day.ahead
        elif day.link == "until":
            until = last
        elif day.link == "back":
            until = last - timedelta(days=1)
        elif day.link in BOUNDS or until is None:
            since = first
        elif since == until and len(days) == 1 and _was_missed(agreed) and since <= desk.said_on < first:
            return Change(agreed, Move(desk.said_on, since, first))  # "missed it": "actually friday": done then
        elif since == until and len(days) == 1:
            since = until = first
        else:
            return Change(agreed, None, unclear=True)  # "no, saturday": the first day or the last one
    if until is not None and until < since:
        return None
    now = replace(agreed, since=since, until=until, fact=None)
    if isinstance(now, Absence):
        now = replace(now, said_on=desk.said_on)
    return None if (since, until) == (agreed.since, agreed.until) else Change(agreed, now)


def _within(day: Day, since: date, until: date | None) -> date | None:
    """The last such weekday of the days agreed: "only until Wednesday"."""
    if day.kind != "weekday" or until is None or day.ahead is None:
        return None
    last = until - timedelta(days=(until.weekday() - day.ahead[0].weekday()) % 7)
    return last if last >= since else None


def _was_missed(agreed: Absence | Equipment) -> bool:
    return isinstance(agreed, Absence) and agreed.kind == "missed"


def _nearest(day: Day, to: date) -> date | None:
    """The day of a name that is nearest to the one agreed."""
    found = [one[0] for one in (day.back, day.ahead) if one is not None]
    return min(found, key=lambda one: abs(one - to), default=None)
