"""An athlete on one card, and the roster on one page, for the coach."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from zoneinfo import ZoneInfo

from bot.conversation import coach_waiting, days_told, progress
from bot.conversation.alerts import alert_buttons, alert_in_words, proposal_buttons, proposal_in_words
from bot.conversation.desk import Buttons, Desk
from bot.conversation.reasons import order_in_words, orders_in_words, place, reason_in_words, until_in_words
from bot.wording.sets import done_in_words, short_plan
from planner.facts import Order, OrderKind, SentPlan, Session, WorkSet
from planner.gained import gain_of
from planner.orders import Orders
from storage import notes, questions

NEWEST_SESSIONS = 3
SEEN_AHEAD = 14  # days
STOPPED = frozenset({"stopped_by_sign", "screening_open"})
NEWEST_ORDERS = 3
LASTING: tuple[OrderKind, ...] = ("hold_rung", "lock_load", "exclude", "swap")


def next_session(desk: Desk) -> str:
    """The next session in one line: what a decision has led to."""
    say, following = desk.say_coach, desk.review.next_training_on
    if following is None:  # stopped now; a pause with an end is followed by sessions
        following = next((plan.on for plan in desk.week_ahead(SEEN_AHEAD) if plan.sets), None)
    if following is None:
        return say.say("effect-none")
    work = short_plan(desk.plan(following), say)
    # After a stop the next training day has nothing on it: that is no session.
    return say.say("effect", day=say.day(following), work=work) if work else say.say("effect-none")


def card(desk: Desk) -> tuple[str, Buttons]:
    """Everything a coach looks for before deciding, newest first where it is a list."""
    say, review = desk.say_coach, desk.review
    lines = [say.say("card-heading", name=desk.person.name, day=say.long_day(desk.today))]
    buttons: Buttons = []
    if review.stopped is not None and not any(one.code in STOPPED for one in review.alerts):
        lines.append(reason_in_words(review.stopped, say))  # a pause; of other stops the alert speaks
    lines += [alert_in_words("", one, say).lstrip(" :") for one in review.alerts if not one.code.startswith("proposal")]
    buttons += [button for alert in review.alerts for button in alert_buttons(desk.id, alert, say)]
    waiting = notes.unanswered(desk.tx, [desk.id]).get(desk.id)
    if waiting:
        lines.append(coach_waiting.in_words(waiting, ZoneInfo(desk.coach.timezone), say))
        buttons += coach_waiting.settle_button(desk.id, waiting, say)
    clips = coach_waiting.clips_to_see(desk.record)
    if clips:
        lines.append(coach_waiting.clips_in_words(clips, say))
        buttons += coach_waiting.see_button(desk.id, clips, say)
    for position in review.ladders:
        if position.proposal is not None:
            lines.append(proposal_in_words(desk.person.name, position.proposal, say))
            buttons += proposal_buttons(desk.id, position.proposal, say)
    if review.block is not None:
        lines.append(
            say.say(
                "card-block", block=review.block.block, week=review.block.week, weeks=review.block.loading_weeks + 1
            )
        )
    lines.append(progress.in_words(review, say, gain_of(desk.record, review)))
    lines.append(say.say("card-bodyweight", weight=say.load(review.bodyweight_kg)))
    for one in review.pain:
        lines.append(
            say.say("card-pain", place=place(one.site, one.side, say), score=say.number(one.score), day=one.on)
        )
    for session in reversed(days_told.newest(desk.record, NEWEST_SESSIONS)):
        work = done_in_words(_worked(session, desk.record.sent_by_day.get(session.on)), say)
        lines.append(say.say("card-session", day=say.day(session.on), work=work))
    lines.append(next_session(desk))
    for orders in _newest(desk.record.orders)[-NEWEST_ORDERS:]:
        lines.append(say.say("card-order", day=say.day(orders[0].on), what=orders_in_words(orders, say)))
    lines += _lasting(desk)
    doubt = questions.open_question(desk.tx, desk.person, "ask")
    if doubt is not None:
        lines.append(say.say("card-doubt", text=doubt.text[:200], span=doubt.span or ""))
    lines += [say.say("card-note", text=note.text) for note in notes.notes_of(desk.tx, desk.id)[-3:]]
    return "\n".join(line for line in lines if line), buttons


def _worked(session: Session, sent: SentPlan | None) -> Sequence[WorkSet]:
    """The sets done without the warm-up that the plan of the day asked for."""
    warm_up = [(one.movement, one.reps, one.load_kg) for one in sent.sets if one.part == "warm_up"] if sent else []
    worked = []
    for one in session.sets:
        if (one.movement, one.reps, one.load_kg) in warm_up:
            warm_up.remove((one.movement, one.reps, one.load_kg))
        else:
            worked.append(one)
    return worked or session.sets


def _newest(given: Sequence[Order]) -> list[list[Order]]:
    """The orders of a moment or a day, without what others have been ordered for since or was lifted; what one message
    ordered for several days together."""
    known, found = Orders(given), dict[Order, list[Order]]()
    for order in given:
        day = order.for_date
        stands = {"set_sets": known.sets_for, "step_sets": known.steps_for}.get(order.kind)
        if order.kind in LASTING or (stands is not None and day is not None and order not in stands(day)):
            continue
        alike = replace(order, fact=None, for_date=None, until=None) if stands is not None else order
        found.setdefault(alike, []).append(order)
    return list(found.values())


def _lasting(desk: Desk) -> list[str]:
    """A line for each order that acts until it is lifted or its time is over, however many came since; of those that
    say the same thing the newest, and what one message left out together."""
    say, acting = desk.say_coach, Orders(desk.record.orders).acting(LASTING, desk.today)
    newest = {(one.kind, one.ladder, one.movement): one for one in acting}
    left_out: dict[tuple[date, date | None], list[str]] = {}
    for one in newest.values():
        if one.kind == "exclude" and one.movement is not None:
            left_out.setdefault((one.on, one.until), []).append(say.movement(one.movement))
    told = [(one.on, order_in_words(one, say)) for one in newest.values() if one.kind != "exclude"]
    for (on, until), names in left_out.items():
        without = say.say("order-exclude", movement=say.listed(names), until=until_in_words(until, say, on))
        told.append((on, without))
    return [say.say("card-order", day=say.day(on), what=what) for on, what in told]
