""" "Can I do pull-ups on Thursday?": the plan of the day answers. Nothing is moved by it; a free day is offered one."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from bot.conversation import asked_by_them, for_the_coach, moves, plans
from bot.conversation.desk import Buttons, Desk
from bot.conversation.outcomes import is_done, outcome
from bot.conversation.placing import context_of, message_of, read_by_plan
from bot.conversation.reasons import reason_in_words
from bot.conversation.words import phrases, starts
from bot.reading.days import named_days
from bot.reading.movements import find_movements
from bot.reading.reading import Reading
from planner.plan import DayPlan

MOST_WORDS = 12
SAID = frozenset({"move", "plan_today", "unknown"})  # as what the reader takes such a question
OF_BODY = frozenset({"pain"})  # what may be told beside it
SEEN_AHEAD = 14  # days
NEAR = 3  # days: a session further away is not the one that is meant


def answered(desk: Desk, reading: Reading, text: str) -> tuple[str, Buttons] | None:
    """The answer, and a button where a session could go to that day; None where a message asks something else."""
    named = _asked(desk, reading, text) if not OF_BODY & set(reading.intents) else None
    if named is None:
        return None
    day, movement = named
    say, stopped = desk.say, desk.review.stopped
    if stopped is not None:
        return f"{say.say('resume-not-yet')} {reason_in_words(stopped, say)}", []
    if is_done(desk, day):
        return f"{say.say('work-done', day=say.day(day))} {moves.next_training(desk)}".strip(), []
    plan = desk.plan(day)
    if plan.sets:
        told = plans.in_words(plan, say)
        if movement is None:
            return told, []
        key = "work-planned" if _has(plan, movement) else "work-other"
        return f"{say.say(key, movement=say.movement(movement))}\n\n{told}", []
    if movement is not None and not any(_has(one, movement) for one in desk.week_ahead()):
        return for_the_coach.offer(desk, text)  # no work of the plan: dips for fun are the coach's to allow
    since = _nearest(desk, day)
    told = f"{say.say('work-none', day=say.day(day))} {moves.next_training(desk)}".strip()
    if since is None or not outcome(desk, since, day).fits:
        return told, []
    return f"{told} {say.say('work-move', since=say.day(since), day=say.day(day))}", moves.offer(desk, since, day)


def _has(plan: DayPlan, movement: str) -> bool:
    return any(one.movement == movement for one in plan.sets)


def without_what_is_asked(desk: Desk, reading: Reading, text: str) -> Reading:
    """ "Off to the gym. Can I do pull-ups first and then the archers?" tells of nothing that was done: the sets of a
    plan that a question only names are none, and the plan is what it asks for."""
    if not reading.sets or any(sign.isdigit() for sign in text) or not asked_by_them.asks_leave(text):
        return reading
    stated = asked_by_them.without_questions(text)
    if stated and read_by_plan(desk, stated, context_of(desk, desk.said_at)).sets:
        return reading
    intents = tuple(one for one in reading.intents if one not in ("report", "plan_today"))
    return replace(reading, intents=("plan_today", *intents), sets=(), performed_on=None, ask=())


def without_a_move(desk: Desk, reading: Reading, text: str) -> Reading:
    """The reading where such a question stands beside pain, "my elbow hurts, can I do pull-ups today?": it asks for the
    plan, and which days are meant is no doubt."""
    if "move" not in reading.intents or _asked(desk, reading, text) is None:
        return reading
    intents = tuple("plan_today" if one == "move" else one for one in reading.intents)
    return replace(reading, intents=intents, dates=None, ask=tuple(one for one in reading.ask if one.about != "dates"))


def _nearest(desk: Desk, day: date) -> date | None:
    """The session ahead that is nearest to a day; of two the one before it."""
    near = sorted((day + timedelta(away) for away in range(-NEAR, NEAR + 1) if away), key=lambda one: abs(one - day))
    return next((one for one in near if one >= desk.today and desk.plan(one).sets and not is_done(desk, one)), None)


def _asked(desk: Desk, reading: Reading, text: str) -> tuple[date, str | None] | None:
    """The one day ahead and the movement (None: anything) that a short question for leave names, where it speaks of no
    other day."""
    short = len(text.split()) <= MOST_WORDS and (bool(reading.pain) or not any(sign.isdigit() for sign in text))
    if not short or not set(reading.intents) <= SAID | OF_BODY or reading.sets or reading.red_flags:
        return None
    if not asked_by_them.asks_leave(text) or starts(text.casefold(), phrases("work_asked")["moved"]):
        return None
    message = message_of(desk, text)
    days = {day.ahead for day in named_days(message).days}
    movements = [str(one.movement) for one in find_movements(message)]
    ahead = days.pop() if len(days) == 1 else None
    anything = bool(starts(text.casefold(), phrases("work_asked")["anything"]))
    if ahead is None or ahead[0] != ahead[1] or not (movements or anything):
        return None
    return (ahead[0], movements[0] if movements else None) if 0 <= (ahead[0] - desk.today).days <= SEEN_AHEAD else None
