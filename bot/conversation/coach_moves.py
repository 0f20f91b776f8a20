"""A coach moves a session: where it is then, what moves with it, or why it cannot."""

from __future__ import annotations

from datetime import date, timedelta

from bot.conversation.coach_words import Command
from bot.conversation.desk import Desk
from bot.conversation.office import Office
from planner.facts import Move
from storage import facts

BACK = timedelta(days=7)  # how far back a session can have been planned that is still ahead


def move(office: Office, command: Command, desk: Desk) -> None:
    """ "mira move thursday to friday"; "move mira to friday" is the next session."""
    since, until = command.day or desk.review.next_training_on, command.until
    if since is None or until is None or since == until or not desk.plan(since).sets:
        office.answer("moved-how", name=desk.person.name)
        return
    before, shown = _sessions(desk), desk.say_coach
    meant = next((planned for planned, on in before.items() if on == since), since)
    fact = desk.add(Move(desk.said_on, since, until))
    after = _sessions(desk)
    if after.get(meant) != until or not desk.plan(until).sets:
        facts.withdraw(desk.tx, "move", fact, desk.now)
        desk.forget()
        office.answer("moved-no-room", name=desk.person.name, since=shown.day(since), until=shown.day(until))
        return
    say = desk.say
    desk.tell(say.say("told-moved", coach=office.coach.name, since=say.long_day(since), until=say.long_day(until)))
    lines = [shown.say("moved", name=desk.person.name, since=shown.day(since), until=shown.day(until))]
    for planned, on in after.items():
        was = before.get(planned)
        if planned != meant and was is not None and on != was:
            key = "moved-too" if on is not None else "moved-gone"
            lines.append(shown.say(key, since=shown.day(was), until=shown.day(on) if on is not None else ""))
    office.confirmed(desk, "\n".join(lines))


def _sessions(desk: Desk) -> dict[date, date | None]:
    """Where the sessions of the days ahead are, by the day that they were planned for."""
    return {slot.planned_for: slot.on for slot in desk.view.timeline.slots if slot.planned_for >= desk.today - BACK}
