"""All sets told anew in answer to a question about a correction: "sorry, that was 22": reps or load? "5x3 +22.5"."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from bot.conversation.desk import Desk
from bot.conversation.placing import context_of, day_of, placed
from bot.conversation.reports import known_sets
from bot.reading.reading import Reading


def in_place_of_old(desk: Desk, answer: str, named: date | None = None) -> Reading | None:
    """A correction that restates the sets of what was told before; None where the answer is no such thing.

    Without it the sets would stand beside those that the question was about, as a second report.

    Args:
        named: The day that the message asked about speaks of, where it names one.
    """
    context = context_of(desk, desk.said_at)
    told = placed(desk, answer, context).reading
    known = known_sets(told)
    if not known or told.ask or len(known) != len(told.sets) or len({day for day, _ in known}) > 1:
        return None
    today, names = day_of(desk, context.sent_at), {work.movement for _, work in known}
    on = _day_meant(desk, names, known[0][0] if known[0][0] != today else named)
    if on is None:
        return None  # of something that was never told: a report of its own
    if on != today == known[0][0] and names & {work.movement for work in context.today or ()}:
        return None  # the next day's session, as it was planned
    others = tuple(one for one in told.intents if one not in ("report", "correction"))
    sets = tuple(replace(one, on=None) for one in told.sets)
    return replace(told, intents=("correction", *others), correction=None, performed_on=on, sets=sets)


def _day_meant(desk: Desk, names: set[str], named: date | None) -> date | None:
    """The day whose sets of these movements are told anew: the one named, else the one told of last."""
    reports = [one for one in desk.record.sessions if not one.is_test and named in (None, one.on)]
    days: dict[date, set[str]] = {}
    for session in sorted(reports, key=lambda one: one.fact or 0):
        days[session.on] = days.pop(session.on, set()) | {work.movement for work in session.sets}
    return next((day for day, done in reversed(days.items()) if names <= done), None)
