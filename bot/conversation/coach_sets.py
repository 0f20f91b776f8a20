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
    if command.step is not None:
        on = _a_step_on(command, desk, days[0])
        if on is None:
            office.answer("step-how", name=desk.person.name, day=desk.say_coach.day(days[0]))
            return
        command = on
    load = office.load_kg(command, desk)
    if command.scheme is None or not days or (load is not None and load > beyond.LOADS_UP_TO_KG):
        office.answer("sets-how", name=desk.person.name)
        return
    refused = beyond.refusal(desk, command.scheme, load, command.movement)
    if refused is not None:
        desk.tell_coach(refused)
        return
    doubt = beyond.far_off(desk, command.movement)
    if doubt is not None and not office.sure:
        coach_whom.ask_whether(office, desk, doubt)
        return
    before = [plan.on for plan in desk.week_ahead(SEEN_AHEAD) if plan.sets]
    orders = [
        Order(
            "set_sets",
            desk.said_on,
            movement=command.movement,
            for_date=day,
            sets=command.scheme[0],
            reps=command.scheme[1],
            load_kg=load,
        )
        for day in days
    ]
    met = coach_conflicts.lines(desk, *orders)
    for one in orders:
        desk.add(one)
    more = [beyond.warning(desk, command.scheme[1], load, command.movement), office.rounded(command, desk)]
    told = [*ordered_sets.outcome(desk, days[0], before), *met, *(line for line in reversed(more) if line is not None)]
    if command.every:
        shown = desk.say_coach
        others = shown.listed([shown.day(day) for day in days[1:]]) or "–"
        told.append(shown.say("sets-every" if command.until is not None else "sets-every-block", days=others))
    desk.tell_coach("\n".join(told))
    office.effect(desk)


def _days(command: Command, desk: Desk) -> list[date]:
    """The day ordered, else that of the next session; of every week, all that are meant."""
    if not command.every:
        return [command.day or desk.review.next_training_on or desk.today]
    done = any(session.on == desk.said_on and session.sets for session in desk.record.sessions)
    since = desk.said_on + timedelta(days=1) if done else desk.said_on
    return coach_every.days(command.every, since, command.until, desk.review.block)


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
