"""A coach takes back what they last ordered: of an athlete, or a rule or nickname for all."""

from __future__ import annotations

from collections.abc import Sequence

from bot.conversation import coach_together
from bot.conversation.coach_words import Command
from bot.conversation.desk import Desk
from bot.conversation.office import Office
from bot.conversation.reasons import orders_in_words, until_in_words
from bot.wording import Wording
from planner.rules import catalogue
from storage import facts, rules

TOLD = frozenset({"approve", "restart"})  # orders of which the athlete was told at once


def undo(office: Office, command: Command) -> None:
    """ "mira undo"; without a name, the newest order, be it about an athlete or for all."""
    named = office.desk(command.handle)
    if named is not None and command.odd:
        _of_a_day(office, command, named)
        return
    desks = [named] if named is not None else office.desks()
    for_all = rules.last_cause_for_all(office.mail.tx, office.coach.id) if named is None and not command.odd else None
    newest_of = facts.last_causes(office.mail.tx, [desk.id for desk in desks], "coach")
    causes = [(newest_of[desk.id], desk) for desk in desks if desk.id in newest_of]
    if for_all is not None and all(cause < for_all for cause, _ in causes):
        back = rules.take_back(office.mail.tx, office.coach.id, for_all)
        office.answer("taken-back-for-all", what="; ".join(_for_all_in_words(one, office.say) for one in back))
        return
    if not causes or (command.odd and named is None):
        office.answer("taken-back-nothing")
        return
    newest = max(cause for cause, _ in causes)
    meant = [desk.person.handle for cause, desk in causes if cause == newest]  # one order can be for several

    def take_back(office: Office, _command: Command, desk: Desk) -> None:
        _take_back(office, desk, newest)

    if len(meant) > 1:
        coach_together.carry_out(office, [(handle, command) for handle in meant], take_back)
        return
    desk = office.desk(meant[0])
    assert desk is not None  # looked at among the coach's own
    take_back(office, command, desk)


def _of_a_day(office: Office, command: Command, desk: Desk) -> None:
    """ "mira cancel thursday": the newest order, where it is one for that day; what is not named is not taken back."""
    cause = facts.last_cause(office.mail.tx, desk.id, "coach")
    brought = facts.caused_by(desk.tx, desk.id, cause) if cause is not None and command.only_day else []
    for_day = {one.fact for one in desk.record.orders if one.for_date == command.day}
    moved = {one.fact for one in desk.record.moves if command.day in (one.moved_from, one.moved_to)}
    if cause is not None and any(fact in (moved if kind == "move" else for_day) for kind, fact in brought):
        _take_back(office, desk, cause)
        return
    words = " ".join(command.odd)
    office.answer("coach-not-done", words=words, name=desk.person.name, handle=desk.athlete.handle)


def _take_back(office: Office, desk: Desk, cause: int) -> None:
    brought = facts.caused_by(desk.tx, desk.id, cause)
    said_at = facts.said_at(desk.tx, *brought[0])
    said_on = said_at.astimezone(desk.zone).date() if said_at is not None else desk.said_on
    numbers = {fact for kind, fact in brought if kind == "order"}
    orders = [order for order in desk.record.orders if order.fact in numbers]
    moved = any(kind == "move" for kind, _ in brought)
    facts.withdraw_caused_by(desk.tx, desk.id, cause, desk.said_at)
    again = facts.restore(desk.tx, desk.id, cause)
    desk.forget()
    stands = _standing(desk, again)
    more = [desk.say_coach.say("taken-back-again", what=stands)] if stands else []
    if moved or any(order.kind in TOLD for order in orders):
        desk.tell(desk.say.say("told-taken-back", coach=office.coach.name, day=desk.say.day(said_on)))
    if orders:
        office.confirm(desk, "taken-back", more, what=orders_in_words(orders, desk.say_coach))
    else:
        office.confirm(desk, "taken-back-other", more, day=desk.say_coach.day(said_on))


def _standing(desk: Desk, again: Sequence[tuple[str, int]]) -> str:
    """The orders and pauses among facts, in words."""
    say, known = desk.say_coach, desk.record
    orders = orders_in_words((order for order in known.orders if ("order", order.fact) in again), say)
    pauses = [
        say.say("summary-away-pause", until=until_in_words(one.until, say, desk.said_on))
        for one in known.absences
        if ("absence", one.fact) in again
    ]
    return "; ".join([orders] * bool(orders) + pauses)


def _for_all_in_words(one: rules.TakenBack, say: Wording) -> str:
    """What a rule or a nickname is again."""
    if one.kind == "nickname":
        movement = say.movement(one.value) if one.value is not None else ""
        return say.say("nickname-again" if movement else "nickname-gone", nickname=one.name, movement=movement)
    value = one.value if one.value is not None else catalogue()[one.name].value
    return say.say("rule-again", rule=one.name, value=value)
