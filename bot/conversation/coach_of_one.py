"""What a coach asks of one athlete, or has passed on to them; the plan stays as it is."""

from __future__ import annotations

from bot.conversation import block_asked, cards, plans
from bot.conversation.coach_words import Command
from bot.conversation.desk import Desk
from bot.conversation.office import Office
from storage import invites, notes
from storage.persons import Who


def card(_office: Office, _command: Command, desk: Desk) -> None:
    text, buttons = cards.card(desk)
    desk.tell_coach(text, buttons=buttons)


def week(_office: Office, command: Command, desk: Desk) -> None:
    """The week; of a day that is named, its plan."""
    if command.day is None or command.day < desk.today:
        desk.tell_coach(plans.week(desk, desk.say_coach))
    else:
        desk.tell_coach(plans.in_words(desk.plan(command.day), desk.say_coach))


def of_the_block(desk: Desk, what: block_asked.About) -> None:
    """ "When's mira's next test", "mira: when's the deload"."""
    say = desk.say_coach
    desk.tell_coach(say.say("of-athlete", name=desk.person.name, what=block_asked.in_words(desk, what, say)))


def why(_office: Office, _command: Command, desk: Desk) -> None:
    desk.tell_coach(plans.why(desk, desk.say_coach))


def tell(office: Office, command: Command, desk: Desk) -> None:
    if not command.rest:
        office.answer("tell-what", name=desk.person.name)
        return
    office.pass_on(desk, command.rest)


def note(office: Office, command: Command, desk: Desk) -> None:
    notes.add_note(desk.tx, desk.id, command.rest, desk.now)
    office.answer("note-kept", name=desk.person.name)


def invite(office: Office, _command: Command, desk: Desk) -> None:
    code = invites.new_invite(desk.tx, Who("athlete", desk.id), desk.now)
    office.answer("invited", name=desk.person.name, code=code)
