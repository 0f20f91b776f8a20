"""The day's plan: sent, sent again when it changed, shown when asked; the week; why."""

from __future__ import annotations

from datetime import time as clock_time
from datetime import timedelta

from bot import metrics
from bot.conversation.desk import Desk
from bot.conversation.placing import context_of
from bot.conversation.reasons import decisions_in_words, reason_in_words, unusual
from bot.conversation.reports import trained
from bot.reading.days.asked import day_asked
from bot.wording import Wording
from bot.wording.sets import plan_in_words, short_plan
from planner.facts import SentPlan
from planner.plan import DayPlan
from storage import facts, outbox

WEEK_DAYS = 7
MOST_REASONS = 3


def send(desk: Desk, plan: DayPlan, opening: str | None = None, importance: int = outbox.PLAN) -> None:
    """Send the plan of a day and keep it as a fact."""
    text = in_words(plan, desk.say)
    delivered = desk.tell(
        f"{opening}\n\n{text}" if opening else text,
        plan=plan,
        importance=importance,
        stale_after=desk.moment(plan.on + timedelta(days=1), clock_time.min),
    )
    if not delivered:
        return  # nobody to send it to: no fact
    desk.add_sent(plan)
    for decision in plan.decisions:
        metrics.DECISIONS.labels(decision.reasons[0].code).inc()


def refresh(desk: Desk) -> DayPlan | None:
    """Send today's plan again where what was just said changed it; the plan that was sent, if one was."""
    today = desk.today
    before = desk.record.sent_by_day.get(today)
    if _is_trained(desk):
        return None
    new = desk.review.today
    if before is None:
        # A session moved to today, or a stop lifted: the plan's hour may have gone by.
        if new.kind == "rest" or desk.now < desk.moment(today, desk.athlete.plan_at):
            return None
        send(desk, new, importance=outbox.REPLY)
        return new
    if _is_as_sent(new, before):
        return None
    if before.kind == "rest" and new.kind == "rest":
        return None
    send(desk, new, desk.say.say("plan-changed"), importance=outbox.REPLY)
    return new


def _is_as_sent(plan: DayPlan, before: SentPlan) -> bool:
    return plan.kind == before.kind and plan.sets == before.sets and plan.holds == before.holds


def _is_trained(desk: Desk) -> bool:
    return any(session.on == desk.today and trained(session) for session in desk.record.sessions)


def keep_shown(desk: Desk, plan: DayPlan) -> None:
    """Today's plan, kept as sent where an answer shows it otherwise than it went out: it does not go out once more."""
    before = desk.record.sent_by_day.get(desk.today)
    if plan.on == desk.today and before is not None and not _is_as_sent(plan, before) and not _is_trained(desk):
        desk.add_sent(plan)


def withdrawn(desk: Desk) -> DayPlan | None:
    """Today's rest, kept as sent, where what the athlete just said takes today's session away; the answer says so."""
    today, new = desk.today, desk.review.today
    before = desk.record.sent_by_day.get(today)
    if before is None or not before.sets or new.kind != "rest" or new.sets:
        return None
    if _is_trained(desk):
        return None
    desk.add_sent(new)
    return new


def in_words(plan: DayPlan, say: Wording) -> str:
    """Heading, the work, and what is unusual today with its reasons."""
    if not plan.sets:
        lines = [say.say("plan-rest", day=say.long_day(plan.on))]
    else:
        lines = [say.say(f"plan-heading-{plan.kind}", day=say.long_day(plan.on), block=plan.block, week=plan.week)]
        lines.append(plan_in_words(plan, say))
    told = decisions_in_words(unusual(plan.decisions), say)
    if told:
        lines += ["", *told[:MOST_REASONS]]
    if plan.kind == "test":
        lines += ["", say.say("caution-test")]
    return "\n".join(lines)


def today(desk: Desk) -> tuple[str, DayPlan]:
    """Today's plan in words; when today is free, the next session too."""
    plan = desk.review.today
    text = in_words(plan, desk.say)
    following = next_work(desk)
    if not plan.sets and following is not None:
        work = short_plan(following, desk.say)
        text += "\n" + desk.say.say("plan-next", day=desk.say.long_day(following.on), work=work)
    return text, plan


def following(desk: Desk) -> str:
    """The next session that is not done yet, whole; today's plan where none is in sight."""
    plan = next_work(desk)
    return in_words(plan, desk.say) if plan is not None else today(desk)[0]


def asked(desk: Desk, text: str) -> tuple[str, DayPlan]:
    """The plan of the day that a question names, within the week; else today's."""
    day = day_asked(text, context_of(desk, desk.said_at))
    if day is None or not timedelta() < day - desk.today <= timedelta(WEEK_DAYS):
        return today(desk)
    plan = desk.plan(day)
    return in_words(plan, desk.say), plan


def next_work(desk: Desk) -> DayPlan | None:
    """The next session that has work in it; None where none is in sight or all is stopped."""
    review = desk.review
    if review.next_training_on is None or review.stopped is not None:
        return None
    following = desk.plan(review.next_training_on)
    if following.sets:
        return following
    return next((plan for plan in desk.week_ahead(WEEK_DAYS) if plan.sets), None)


def week(desk: Desk, say: Wording) -> str:
    lines = [say.say("week-heading")]
    for plan in desk.week_ahead(WEEK_DAYS):
        if plan.sets:
            kind = say.say(f"day-kind-{plan.kind}")
            lines.append(say.say("week-line", day=say.day(plan.on), kind=kind, work=short_plan(plan, say)))
    if len(lines) == 1:
        lines.append(say.say("week-empty"))
        if desk.review.stopped is not None:
            lines.append(reason_in_words(desk.review.stopped, say))
        elif desk.review.next_training_on is not None:  # a session with nothing in it: what hurts, mostly
            lines += decisions_in_words(unusual(desk.plan(desk.review.next_training_on).decisions), say)[:MOST_REASONS]
    return "\n".join(lines)


def why(desk: Desk, say: Wording) -> str:
    """The decisions behind the newest plan, in numbers; the standing ones where that plan has none."""
    review = desk.review
    if review.stopped is not None:
        return reason_in_words(review.stopped, say)
    sent = desk.record.sent_by_day.get(desk.today)
    if sent is not None and sent.sets:
        # The numbers asked about are those that were sent, whatever today's report has moved since.
        told = decisions_in_words(facts.decisions_sent(desk.tx, desk.id, limit=1), say)
    else:
        plan = review.today
        if not plan.sets and review.next_training_on is not None:
            plan = desk.plan(review.next_training_on)
        told = decisions_in_words(plan.decisions, say)
    if not told:
        told = decisions_in_words(review.decisions[-MOST_REASONS:], say)
    strength = [one for one in review.strength if one.movement == review.main_lift and one.side is None]
    if strength:
        one = strength[0]
        told.append(
            say.say(
                "why-strength",
                movement=say.movement(one.movement),
                middle=say.about(one.e1rm_kg),
                cautious=say.about(one.cautious_kg),
                bodyweight=say.load(one.bodyweight_kg),
            )
        )
    return "\n".join(told) if told else say.say("why-nothing")
