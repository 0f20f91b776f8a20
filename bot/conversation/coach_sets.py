"""Sets that a coach orders, for a day or for one of each week, in numbers or as a step on what is planned."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from bot.conversation import beyond, coach_conflicts, coach_every, coach_weekly, coach_whom, ordered_sets
from bot.conversation.coach_steps import stepped
from bot.conversation.coach_words import Command
from bot.conversation.desk import Desk
from bot.conversation.office import Office, on_plates
from planner.facts import Order
from planner.movements import movement

SEEN_AHEAD = 14  # days in which sets for one day may push others out


def sets(office: Office, command: Command, desk: Desk) -> None:
    days = _days(command, desk)
    if command.step is not None and command.every:
        coach_weekly.step(office, command, desk, days)
        return
    ordered = [(day, _a_step_on(command, desk, day) if command.step is not None else command) for day in days]
    for day, one in ordered:
        if one is None:
            office.answer("step-how", name=desk.person.name, day=desk.say_coach.day(day))
            return
    meant = [(day, one, office.load_kg(one, desk)) for day, one in ordered if one is not None]
    too_much = any(one.scheme is None or (load or 0.0) > beyond.LOADS_UP_TO_KG for _, one, load in meant)
    if not meant or too_much:
        office.answer("sets-how", name=desk.person.name)
        return
    refused = [beyond.refusal(desk, one.scheme, load, one.movement) for _, one, load in meant]
    if any(refused):
        desk.tell_coach(next(one for one in refused if one is not None))
        return
    doubt = beyond.far_off(desk, command.movement)
    if doubt is not None and not office.sure:
        coach_whom.ask_whether(office, desk, doubt)
        return
    before = [plan.on for plan in desk.week_ahead(SEEN_AHEAD) if plan.sets]
    orders = [_order(desk, day, one, load) for day, one, load in meant]
    met = coach_conflicts.lines(desk, *orders)
    for order in orders:
        desk.add(order)
    _, first, load = meant[0]
    assert first.scheme is not None  # looked at above
    more = [beyond.warning(desk, first.scheme[1], load, first.movement), office.rounded(first, desk)]
    shown = days if command.step is not None else days[:1]
    told = [line for day in shown for line in ordered_sets.outcome(desk, day, before)]
    told += [*met, *(line for line in reversed(more) if line is not None)]
    if len(shown) < len(days) or command.every:
        others = desk.say_coach.listed([desk.say_coach.day(day) for day in days[1:]]) or "–"
        ends = command.until is not None or not command.every
        told.append(desk.say_coach.say("sets-every" if ends else "sets-every-block", days=others))
    desk.tell_coach("\n".join(told))
    office.effect(desk)


def _order(desk: Desk, day: date, command: Command, load_kg: float | None) -> Order:
    assert command.scheme is not None  # looked at before
    count, reps = command.scheme
    return Order(
        "set_sets", desk.said_on, movement=command.movement, for_date=day, sets=count, reps=reps, load_kg=load_kg
    )


def _days(command: Command, desk: Desk) -> list[date]:
    """The days ordered, else that of the next session; of every week, all that are meant."""
    if not command.every:
        return [*command.days] or [command.day or desk.review.next_training_on or desk.today]
    done = any(session.on == desk.said_on and session.sets for session in desk.record.sessions)
    since = desk.said_on + timedelta(days=1) if done else desk.said_on
    days = coach_every.days(command.every, max(since, command.since or since), command.until, desk.review.block)
    each = len(command.every) == coach_every.DAYS  # every day of a week is every session of it
    return [day for day in days if not each or desk.plan(day).sets]


def _a_step_on(command: Command, desk: Desk, day: date) -> Command | None:
    """The order in numbers, from what is planned for its day; None where there is nothing to step on from."""
    assert command.step is not None
    planned = [one for one in desk.plan(day).sets if one.part != "warm_up"]
    meant = [
        one for one in planned if one.movement == command.movement or (not command.movement and one.part == "main")
    ]
    name = meant[0].movement if meant else ""

    def at_share(load_kg: float, share: float) -> float:
        body_kg = desk.review.bodyweight_kg * movement(name).bodyweight_share
        return on_plates(share * (load_kg + body_kg) - body_kg, desk)

    on = stepped(command.step, meant, "lb" if desk.athlete.unit == "lb" else "kg", at_share) if meant else None
    if on is None:
        return None
    return replace(command, step=None, scheme=(on.sets, on.reps), load=on.load, unit=on.unit, day=day)
