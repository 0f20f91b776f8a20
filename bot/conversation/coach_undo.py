"""A coach takes back what they last ordered of an athlete."""

from __future__ import annotations

from bot.conversation.coach_words import Command
from bot.conversation.desk import Desk
from bot.conversation.office import Office
from bot.conversation.reasons import order_in_words
from planner.facts import Order
from storage import facts

TOLD = frozenset({"approve", "restart"})  # orders of which the athlete was told at once


def undo(office: Office, command: Command) -> None:
    """ "mira undo"; without a name, of the athlete whom the newest order was about."""
    named = office.desk(command.handle)
    desks = [named] if named is not None else office.desks()
    causes = [(cause, desk) for desk in desks if (cause := facts.last_cause(office.mail.tx, desk.id, "coach"))]
    if not causes or (command.odd and named is None):
        office.answer("taken-back-nothing")
        return
    cause, desk = max(causes, key=lambda one: one[0])
    _take_back(office, desk, cause)


def _take_back(office: Office, desk: Desk, cause: int) -> None:
    brought = facts.caused_by(desk.tx, desk.id, cause)
    said_at = facts.said_at(desk.tx, *brought[0])
    said_on = said_at.astimezone(desk.zone).date() if said_at is not None else desk.said_on
    numbers = {fact for kind, fact in brought if kind == "order"}
    orders = [order for order in desk.record.orders if order.fact in numbers]
    moved = any(kind == "move" for kind, _ in brought)
    facts.withdraw_caused_by(desk.tx, desk.id, cause, desk.said_at)
    desk.forget()
    if moved or any(order.kind in TOLD for order in orders):
        desk.tell(desk.say.say("told-taken-back", coach=office.coach.name, day=desk.say.day(said_on)))
    if orders:
        office.confirm(desk, "taken-back", what="; ".join(_in_words(order, desk) for order in orders))
    else:
        office.confirm(desk, "taken-back-other", day=desk.say_coach.day(said_on))


def _in_words(order: Order, desk: Desk) -> str:
    return order_in_words(order, desk.say_coach)
