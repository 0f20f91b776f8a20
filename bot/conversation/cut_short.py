"""Little time, or work that somebody would rather leave out: what of the plan counts, and what goes first."""

from __future__ import annotations

import re
from collections.abc import Sequence

from bot.conversation import followups, plans
from bot.conversation.desk import Desk
from bot.conversation.movement_names import family_called
from bot.conversation.placing import message_of
from bot.conversation.words import phrases
from bot.reading.days import named_days
from bot.reading.movements import find_movements
from bot.wording.sets import in_a_line
from planner import movements
from planner.facts import PlannedSet
from planner.plan import DayPlan

MOST_CHARACTERS = 120
MINUTES = re.compile(r"\b\d{1,3}\s*(?:min|m\b|h\b|hour|stunde|hora)\w*")
FIGURES = re.compile(r"\d")
CLAUSE = re.compile(r"[,.;!?\n]")


def answered(desk: Desk, text: str) -> str | None:
    """What may be left out of the next session; None where a message asks nothing of the kind, or nothing is planned.

    Nothing is decided by it: what was done is told afterwards, and the plan goes on from that.
    """
    if len(text) > MOST_CHARACTERS:
        return None
    said, known = f" {text.casefold().strip(' ?!.¿¡')} ", phrases("cut_short")
    without = MINUTES.sub(" ", said)
    if FIGURES.search(without):
        return None
    short = any(f" {one}" in said for one in known["short"]) or any(map(_is_few_minutes, CLAUSE.split(said)))
    must = not short and any(said.startswith(f" {one} ") for one in known["must"])
    leave = any(f" {one} " in said for one in known["leave"])
    must = must or (not short and leave and any(said.startswith(f" {one} ") for one in known["may"]))
    if not (short or must) or any(f" {one} " in said for one in known["done"]):
        return None
    plan = _meant(desk)
    if plan is None:
        return None
    if short:
        return _of_all(desk, plan)
    if not _is_of(desk, text, plan):
        return None
    if any(f" {one} " in said for one in known["warm_up"]):
        return desk.say.say("must-warm_up", movement=desk.say.say("plan-part-warm_up"), day=desk.say.day(plan.on))
    named = _named(desk, text, plan)
    return _of_one(desk, plan, named) if named is not None else None


def _is_few_minutes(clause: str) -> bool:
    """ "Only have 30 min": no words beside the minutes tell of something else, as of a run."""
    known, left = phrases("cut_short"), MINUTES.sub(" ", clause)
    words = set(left.split())
    return left != clause and bool(words & set(known["only"])) and words <= {*known["only"], *known["small"]}


def _meant(desk: Desk) -> DayPlan | None:
    """Today's plan where it is not done, else the next one with work in it."""
    today = desk.review.today
    return today if today.sets and not followups.told_on(desk, desk.today) else plans.next_work(desk)


def _named(desk: Desk, text: str, plan: DayPlan) -> str | None:
    """The one movement that is named; of a family, "the archers", the one in the plan."""
    message = message_of(desk, text)
    found = find_movements(message)
    if len({one.movement for one in found}) != 1:
        return None
    name = str(found[0].movement)
    if movements.is_known(name):
        return name
    family = family_called(message.span(*found[0].spans[0]), desk.say)
    return next((one.movement for one in plan.sets if one.movement in family), None)


def _is_of(desk: Desk, text: str, plan: DayPlan) -> bool:
    """Whether no other day is named than that of the plan."""
    days = named_days(message_of(desk, text)).days
    return all(day.ahead is not None and day.ahead[0] == plan.on for day in days)


def _of_all(desk: Desk, plan: DayPlan) -> str:
    say, first = desk.say, _accessories(plan)
    counts = in_a_line([one for one in plan.sets if one.part in ("skill", "main")], say)
    if not counts:
        return say.say("cut-short-all", day=say.day(plan.on))
    if not first:
        return say.say("cut-short-main", day=say.day(plan.on), work=counts)
    return say.say("cut-short", day=say.day(plan.on), work=counts, first=_names(first, desk))


def _of_one(desk: Desk, plan: DayPlan, movement: str) -> str:
    say = desk.say
    parts = {one.part for one in plan.sets if one.movement == movement}
    shown = {"movement": say.movement(movement), "day": say.day(plan.on)}
    part = next((one for one in ("main", "skill", "accessory", "warm_up") if one in parts), None)
    if part is None:
        return say.say("must-none", **shown)
    if part == "accessory":
        return say.say("must-accessory", **shown)
    first = _accessories(plan)
    told = say.say("must-warm_up" if part == "warm_up" else "must-work", **shown)
    return f"{told} {say.say('must-first', first=_names(first, desk))}" if first else told


def _accessories(plan: DayPlan) -> list[PlannedSet]:
    return [one for one in plan.sets if one.part == "accessory"]


def _names(sets: Sequence[PlannedSet], desk: Desk) -> str:
    return desk.say.listed(list(dict.fromkeys(desk.say.movement(one.movement) for one in sets)))
