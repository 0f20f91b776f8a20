"""What came of the sets that a coach wrote for a day: the plan now, or why there is none, and what gives way."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from bot.conversation.desk import Desk
from bot.conversation.reasons import decision_in_words
from bot.wording.sets import in_a_line
from planner.layout import layout_of
from planner.orders import Orders
from planner.plan import DayPlan
from planner.rules import rules_of


def outcome(desk: Desk, day: date, before: Sequence[date]) -> list[str]:
    """Lines for the coach.

    Args:
        before: The days ahead that had sets before the order.
    """
    say, plan, name = desk.say_coach, desk.plan(day), desk.person.name
    if day < desk.today:
        return [say.say("sets-past", name=name, day=say.day(day))]
    if not plan.sets:
        why = " ".join(decision_in_words(one, say) for one in plan.decisions if one.reasons)
        return [say.say("sets-not-sent", name=name, day=say.day(day), why=why).strip()]
    # What was ordered is shown, be it work beside the main lift.
    ordered = {one.movement for one in Orders(desk.record.orders).sets_for(day)}
    work = [
        one for one in plan.sets if one.part in ("skill", "main") or (one.movement in ordered and one.part != "warm_up")
    ]
    lines = [say.say("sets-set", name=name, day=say.day(day), work=in_a_line(work, say))]
    gone = [one for one in before if not desk.plan(one).sets]
    lines += [say.say("sets-instead", day=say.day(one)) for one in gone]
    near = (
        [] if day in before or not _pulls(plan) else [one for one in _within_gap(desk, day) if _pulls(desk.plan(one))]
    )
    if near:
        lines.append(say.say("sets-near", days=say.listed([say.day(one) for one in near])))
    return lines


def _within_gap(desk: Desk, day: date) -> list[date]:
    """The days ahead that are nearer to `day` than pulling days should be."""
    gap = rules_of(desk.record.athlete).whole("block.gap_days")
    around = (day + timedelta(days=away) for away in range(1 - gap, gap) if away)
    return [one for one in around if one >= desk.today]


def _pulls(plan: DayPlan) -> bool:
    """Whether a day's work is pulling; warm-ups and what is done beside it do not tire."""
    return layout_of([one for one in plan.sets if one.part in ("skill", "main")]).pulls
