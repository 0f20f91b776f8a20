"""A coach moves a session: where it is then, what moves with it, or why it cannot."""

from __future__ import annotations

from bot.conversation import cards
from bot.conversation.coach_words import Command
from bot.conversation.desk import Desk
from bot.conversation.office import Office
from bot.conversation.outcomes import is_done, outcome
from planner.facts import Move


def move(office: Office, command: Command, desk: Desk) -> None:
    """ "mira move thursday to friday"; "move mira to friday" is the next session."""
    since, until = command.day or desk.review.next_training_on, command.until
    if command.day is not None and is_done(desk, command.day):
        told = desk.say_coach.say("moved-done", name=desk.person.name, since=desk.say_coach.day(command.day))
        desk.tell_coach(f"{told}\n{cards.next_session(desk)}")
        return
    if since is None or until is None or since == until or not desk.plan(since).sets:
        office.answer("moved-how", name=desk.person.name)
        return
    shown, found = desk.say_coach, outcome(desk, since, until)
    if not found.fits:
        office.answer("moved-no-room", name=desk.person.name, since=shown.day(since), until=shown.day(until))
        return
    desk.add(Move(desk.said_on, since, until))
    say = desk.say
    desk.tell(say.say("told-moved", coach=office.coach.name, since=say.long_day(since), until=say.long_day(until)))
    moved = shown.say("moved", name=desk.person.name, since=shown.day(since), until=shown.day(until))
    office.confirmed(desk, "\n".join([moved, *found.besides_in_words(shown)]))
