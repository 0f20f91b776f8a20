"""A step on what is planned for a day of every week, "+1.25 every monday": kept for each of the days, within the
rules' caps."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from bot.conversation import coach_conflicts
from bot.conversation.coach_steps import MOST, Step
from bot.conversation.coach_words import Command
from bot.conversation.desk import Desk
from bot.conversation.office import Office
from bot.conversation.reasons import step_in_words
from bot.wording.sets import in_a_line
from planner.facts import Order
from planner.plan import DayPlan
from planner.rules import rules_of
from planner.steps import raises
from planner.units import kg_from_lb

HELD = "step_held"


def step(office: Office, command: Command, desk: Desk, days: Sequence[date]) -> None:
    """The step, the days, what they come to as things stand, and what the rules will hold back."""
    assert command.step is not None
    say, name = desk.say_coach, desk.person.name
    if command.movement is not None:
        office.answer("step-main-only", name=name)
        return
    unit = command.step.unit or ("lb" if desk.athlete.unit == "lb" else "kg")
    if not days:
        office.answer("step-no-session", name=name)
        return
    if abs(command.step.by) > MOST[unit if command.step.what == "load" else command.step.what]:
        office.answer("sets-how", name=name)
        return
    orders = [_order(command.step, unit == "lb", day, desk) for day in days]
    met = coach_conflicts.lines(desk, *orders)
    for one in orders:
        desk.add(one)
    key = "sets-step" if command.until is not None or office.brief else "sets-step-block"
    listed = say.listed([say.day(day) for day in days])
    lines = [say.say(key, name=name, step=step_in_words(orders[0], say), days=listed), *_as_things_stand(desk, days)]
    if raises(orders[0]) and not office.brief:
        percent = round(100 * rules_of(desk.record.athlete).number("strength.max_rise"))
        lines.append(say.say("sets-step-caps", percent=percent))
    desk.tell_coach("\n".join([*lines, *met]))
    office.effect(desk)


def _order(step: Step, pounds: bool, day: date, desk: Desk) -> Order:
    """The order of one day; it ends with the day."""
    count, on = int(step.by), desk.said_on
    if step.what == "set":
        return Order("step_sets", on, for_date=day, until=day, sets=count)
    if step.what == "rep":
        return Order("step_sets", on, for_date=day, until=day, reps=count)
    if step.what == "percent":
        return Order("step_sets", on, for_date=day, until=day, value=step.by)
    return Order("step_sets", on, for_date=day, until=day, load_kg=kg_from_lb(step.by) if pounds else step.by)


def _as_things_stand(desk: Desk, days: Sequence[date]) -> list[str]:
    """A line of what each day has now, and one of those on which the step waits."""
    say, plans = desk.say_coach, [desk.plan(day) for day in days]
    with_work = [(plan, in_a_line(main, say)) for plan in plans if (main := [s for s in plan.sets if s.part == "main"])]
    lines = [say.say("sets-step-now", work=_in_a_row(with_work, desk))] if with_work else []
    held = [plan.on for plan, _ in with_work if any(one.code == HELD for d in plan.decisions for one in d.reasons)]
    none = [plan.on for plan in plans if not any(plan is one for one, _ in with_work)]
    lines += [say.say("sets-step-held", days=say.listed([say.day(day) for day in held]))] if held else []
    return [*lines, say.say("sets-step-none", days=say.listed([say.day(day) for day in none]))] if none else lines


def _in_a_row(with_work: Sequence[tuple[DayPlan, str]], desk: Desk) -> str:
    return "; ".join(f"{desk.say_coach.day(plan.on)} {work}" for plan, work in with_work)
