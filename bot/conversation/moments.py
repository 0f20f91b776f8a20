"""What falls due: the day's plan, the pain questions, the nudge, the coach's week. Each plants the next."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime, time, timedelta

from sqlmodel import Session as Tx

from bot.conversation import alerts, next_due, open_sets, pain_questions, plans, privacy, reports, summary
from bot.conversation.answers import COMPLETE, NUDGED
from bot.conversation.asking import EXPIRED
from bot.conversation.desk import Desk, Mail
from bot.conversation.next_due import PLAN, SUMMARY
from planner.facts import Record, Session
from planner.rules import rules_of
from storage import due, notes, outbox, persons, questions
from storage.due import Due

MORNING_LASTS = timedelta(hours=16)
PAIN_MORNING, NUDGE = "pain_morning", "nudge"


def begin(tx: Tx, athlete_id: int, now: datetime) -> None:
    """An athlete starts: their first plan falls due today, be its hour gone by or not."""
    desk = Desk.of(Mail(tx, now, f"begin:{athlete_id}"), athlete_id, said_by="bot")
    desk.plant(PLAN, desk.today, desk.moment(desk.today, desk.athlete.plan_at))
    if not desk.athlete.screened:
        say = desk.say_coach
        desk.tell_coach(
            say.say("not-screened", name=desk.person.name), buttons=[(say.say("button-approve"), f"s:{athlete_id}")]
        )


def at_new_hours(tx: Tx, athlete_ids: Sequence[int], now: datetime) -> None:
    """Whose zone or hour has changed: what is yet to come comes at the hour of its day where they are now.

    A day's plan that fell due by the old zone would be of tomorrow in one further west, and be lost.
    """
    for athlete_id in athlete_ids:
        desk = Desk.of(Mail(tx, now, f"hours:{athlete_id}"), athlete_id, said_by="bot")
        for row in due.open_for(tx, desk.person):
            if row.kind in (PLAN, PAIN_MORNING):
                desk.plant(row.kind, row.for_date, desk.moment(row.for_date, desk.athlete.plan_at))
            elif row.kind == NUDGE:
                desk.plant(row.kind, row.for_date, _nudged_at(desk, desk.record, row.for_date))


def begin_coach(tx: Tx, coach_id: int, now: datetime) -> None:
    """A coach starts, or comes with other settings: the next weekly summary falls due."""
    next_due.plant_summary_anew(tx, persons.coach(tx, coach_id), now)


def have_at_hand(tx: Tx, rows: Sequence[Due], now: datetime) -> None:
    """Read at once what handling these rows will ask for, so that each finds its own at hand."""
    Desk.have_at_hand(tx, list({row.athlete_id: None for row in rows if row.athlete_id is not None}), now)


def handle_due(tx: Tx, row: Due, now: datetime) -> None:
    """Do what is due, if it is still of use, and plant the next."""
    mail = Mail(tx, now, f"due:{row.id}")
    if row.kind == SUMMARY:
        assert row.coach_id is not None
        _summary(mail, row)
        return
    assert row.athlete_id is not None
    desk = Desk.of(mail, row.athlete_id, said_by="bot")
    if row.kind == EXPIRED:
        _expired(desk)
    elif row.kind == PLAN:
        _plan(desk, row)
    elif desk.athlete.silenced or row.for_date < desk.today:
        return
    elif row.kind == PAIN_MORNING:
        if not pain_questions.answered_today(desk, pain_questions.MORNING):
            question, buttons = pain_questions.ask_morning(desk)
            desk.tell(question, buttons=buttons, stale_after=desk.now + MORNING_LASTS)
    elif row.kind == NUDGE:
        _nudge(desk)


ERASE_AGAIN_AFTER = timedelta(hours=1)


def go_on(tx: Tx, row: Due, now: datetime) -> None:
    """What follows a moment that had to be given up: the next plan, the next summary, an erasure that was promised."""
    if row.kind == privacy.ERASE:
        due.schedule(tx, row.who, row.kind, row.for_date + timedelta(days=1), now + ERASE_AGAIN_AFTER)
    elif row.kind == PLAN:
        next_due.plant_plan(tx, persons.athlete(tx, row.who.id), row.for_date, now)
    elif row.kind == SUMMARY:
        next_due.plant_summary(tx, persons.coach(tx, row.who.id), row.for_date, now)


def plant_after_report(desk: Desk, sessions: list[Session]) -> None:
    """Next morning's pain question, and no nudge for a day that was told of."""
    for session in sessions:
        if not reports.trained(session):
            continue
        due.cancel(desk.tx, desk.person, NUDGE, session.on)
        morning = session.on + timedelta(days=1)
        if session.sets and morning >= desk.today and not desk.athlete.silenced:
            moment = desk.moment(morning, desk.athlete.plan_at)
            if moment > desk.now:
                desk.plant(PAIN_MORNING, morning, moment)


def _plan(desk: Desk, row: Due) -> None:
    if desk.athlete.silenced:
        return
    next_due.plant_plan(desk.tx, desk.athlete, row.for_date, desk.now)
    if row.for_date != desk.today:
        return
    record, review = desk.record, desk.review
    first = not record.sent
    before = record.sent_by_day.get(desk.today)
    plan = review.today
    if before is None and (plan.sets or first):
        opening = desk.say.say("welcome", name=desk.person.name, coach=desk.coach.name) if first else None
        plans.send(desk, plan, opening)
    # By what was known before the plan went out: that it went changes neither, and reading all anew costs as much
    # again as planning.
    if plan.sets:
        _plant_nudge(desk, record)
    alerts.send_new(desk, review)


def _plant_nudge(desk: Desk, record: Record) -> None:
    moment = _nudged_at(desk, record, desk.today)
    if moment > desk.now:
        desk.plant(NUDGE, desk.today, moment)


def _nudged_at(desk: Desk, record: Record, day: date) -> datetime:
    hour = rules_of(record.athlete).number("message.nudge_hour")
    return desk.moment(day, time(int(hour), int(hour * 60 % 60)))


MOST_NUDGES = 3


def _nudge(desk: Desk) -> None:
    if desk.review.silent_sessions >= MOST_NUDGES:
        return  # who does not answer is the coach's, in the week's summary; more of the same would only annoy
    if any(one.on == desk.today and reports.trained(one) for one in desk.record.sessions) or not desk.review.today.sets:
        return
    say = desk.say
    buttons = [(say.say(f"button-{name}"), f"n:{desk.today.isoformat()}:{name}") for name in NUDGED]
    desk.tell(say.say("nudge"), buttons=buttons, stale_after=desk.now + timedelta(hours=3))


def _expired(desk: Desk) -> None:
    """A question nobody answered for a day goes to the coach; what was sure of the report stays counted."""
    say = desk.say_coach
    for question in questions.open_questions(desk.tx, desk.person):
        if question.kind not in COMPLETE or desk.now - question.asked_at < timedelta(hours=23):
            continue
        questions.expire(desk.tx, desk.person, question.kind, desk.now)
        if question.kind == open_sets.KIND:
            continue  # what a test lacks is told in the week's summary
        notes.pass_on(desk.tx, desk.id, "to_coach", question.text, desk.now)
        desk.tell_coach(
            say.say("ask-expired", name=desk.person.name, text=question.text[:500], span=question.span or ""),
            importance=outbox.SUMMARY,
        )


def _summary(mail: Mail, row: Due) -> None:
    assert row.coach_id is not None
    coach = persons.coach(mail.tx, row.coach_id)
    next_due.plant_summary(mail.tx, coach, row.for_date, mail.now)
    ids = [row.id for row in persons.athletes_of(mail.tx, row.coach_id) if row.id is not None]
    summary.send(mail, persons.person_of(coach), Desk.of_all(mail, ids, said_by="bot"))
