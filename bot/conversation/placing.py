"""What a message is read against: what is known of the athlete, and the plan or the report that it speaks of."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime, timedelta

from bot.conversation import followups, schemes_told
from bot.conversation.desk import Desk
from bot.conversation.followups import Placed
from bot.conversation.reports import trained
from bot.reading.days import named_days
from bot.reading.message import Message, read_message
from bot.reading.movements import find_movements
from bot.reading.reading import Context, Reading
from planner.facts import PlannedSet, Session
from storage.rules import nicknames_of

SHORT, LATE_DAYS = 300, 3
LATELY = timedelta(days=7)  # how long after a report its sets are put right without naming its day


def context_of(desk: Desk, sent_at: datetime) -> Context:
    """What the reader may know beside the text."""
    return Context(
        sent_at=sent_at,
        timezone=desk.zone,
        unit="lb" if desk.athlete.unit == "lb" else "kg",
        language=desk.athlete.language,
        bodyweight_kg=desk.review.bodyweight_kg,
        today=_planned(desk, day_of(desk, sent_at)),
        nicknames=nicknames_of(desk.tx, desk.coach.id),
    )


def read_alone(desk: Desk, text: str) -> Reading:
    """What words said now say beside no plan."""
    return desk.read(text, replace(context_of(desk, desk.said_at), today=None))


def message_of(desk: Desk, text: str) -> Message:
    """The words of a message said now, cut and named once, however many rules look at them."""
    found = desk.messages.get(text)
    if found is None:
        found = desk.messages[text] = read_message(text, context_of(desk, desk.said_at))
    return found


def day_of(desk: Desk, sent_at: datetime) -> date:
    """The day that a message without a date speaks of: before four in the morning it is still yesterday."""
    return (sent_at.astimezone(desk.zone) - timedelta(hours=4)).date()


def _planned(desk: Desk, day: date) -> tuple[PlannedSet, ...] | None:
    sent = desk.record.sent_by_day.get(day)
    return sent.sets if sent is not None and sent.sets else None


def read_by_plan(desk: Desk, text: str, context: Context) -> Reading:
    """Read a message against the plan that it speaks of: its day's, or on a day off the newest one not told of."""
    return placed(desk, text, context).reading


def placed(desk: Desk, text: str, context: Context, but_by: int | None = None) -> Placed:
    """As `read_by_plan`, with what it was read against. `but_by`: a message whose own reports do not count."""
    found = _placed(desk, text, context, but_by)
    return replace(found, reading=schemes_told.named(desk, found.reading))


def _placed(desk: Desk, text: str, context: Context, but_by: int | None) -> Placed:
    told = followups.told_on(desk, day_of(desk, context.sent_at), but_by)
    earlier = _of_an_earlier_day(desk, told, text, context, but_by)
    if earlier is not None:
        return earlier
    if told:
        alone = desk.read(text, replace(context, today=None))
        on = alone.performed_on
        named = followups.told_on(desk, on, but_by) if on is not None and on != told[0].on else []
        if named:
            return followups.beside(desk, named, text, replace(context, today=_planned(desk, named[0].on)))
        return followups.beside(desk, told, text, context)
    by_day = Placed(desk.read(text, context), context)
    day = by_day.reading.performed_on
    then = followups.told_on(desk, day, but_by) if day not in (None, day_of(desk, context.sent_at)) else []
    if then and day is not None:
        return followups.beside(desk, then, text, replace(context, today=_planned(desk, day)))
    if day is not None and day != day_of(desk, context.sent_at) and _planned(desk, day) is not None:
        other = replace(context, today=_planned(desk, day))
        return Placed(desk.read(text, other), other)
    if day is not None and day != day_of(desk, context.sent_at) and by_day.reading.sets and context.today is not None:
        alone = desk.read(text, replace(context, today=None))
        if not alone.sets:
            # "All done yesterday", where yesterday had no plan: it is not today's, which is still to be done.
            other = replace(context, today=_not_told_of(desk, day))
            return Placed(desk.read(text, other), other)
    if context.today is None and not by_day.reading.sets and len(text) <= SHORT:
        open_plan = _not_told_of(desk, day_of(desk, context.sent_at))
        if open_plan is not None:
            late = Placed(desk.read(text, replace(context, today=open_plan)), replace(context, today=open_plan))
            return late if late.reading.sets else by_day
    return by_day


def _of_an_earlier_day(
    desk: Desk, told: list[Session], text: str, context: Context, but_by: int | None
) -> Placed | None:
    """ "Sorry it was 12 dips", where today knows of none: the last report with dips is put right, if words say so."""
    if len(text) > SHORT or not followups.puts_right(text):
        return None
    message = read_message(text, context)
    named = {one.movement for one in find_movements(message)}
    if len(named) != 1 or named_days(message).days:
        return None
    here = {work.movement for session in told for work in session.sets} | {one.movement for one in context.today or ()}
    today = day_of(desk, context.sent_at)
    had = [
        one.on
        for one in desk.record.sessions
        if not one.is_test
        and timedelta() < today - one.on <= LATELY
        and any(work.movement in named for work in one.sets)
    ]
    if named & here or not had:
        return None
    then = followups.beside(desk, followups.told_on(desk, max(had), but_by), text, replace(context, today=None))
    return then.again(replace(then.reading, performed_on=max(had))) if then.mends else None


def _not_told_of(desk: Desk, day: date) -> tuple[PlannedSet, ...] | None:
    """The plan of the last days that no report answers."""
    for before in range(1, LATE_DAYS + 1):
        planned = _planned(desk, day - timedelta(days=before))
        if planned is not None:
            told = any(one.on >= day - timedelta(days=before) and trained(one) for one in desk.record.sessions)
            return None if told else planned
    return None
