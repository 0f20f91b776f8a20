"""An athlete on one card, and the roster on one page, for the coach."""

from __future__ import annotations

from collections.abc import Sequence

from bot.conversation import progress
from bot.conversation.alerts import alert_buttons, alert_in_words, proposal_buttons, proposal_in_words
from bot.conversation.desk import Buttons, Desk
from bot.conversation.reasons import order_in_words, place, reason_in_words
from bot.wording.sets import done_in_words, short_plan
from planner.facts import Order
from planner.gained import gain_of
from planner.orders import Orders
from storage import notes, questions

NEWEST_SESSIONS = 3
NEWEST_ORDERS = 3


def next_session(desk: Desk) -> str:
    """The next session in one line: what a decision has led to."""
    say, following = desk.say_coach, desk.review.next_training_on
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
    if review.stopped is not None:
        lines.append(reason_in_words(review.stopped, say))
    lines += [alert_in_words("", one, say).lstrip(" :") for one in review.alerts if not one.code.startswith("proposal")]
    buttons += [button for alert in review.alerts for button in alert_buttons(desk.id, alert, say)]
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
    sessions = [one for one in desk.record.sessions if one.sets and not one.is_test][-NEWEST_SESSIONS:]
    for session in reversed(sessions):
        lines.append(say.say("card-session", day=say.day(session.on), work=done_in_words(session.sets, say)))
    lines.append(next_session(desk))
    for order in _standing(desk.record.orders)[-NEWEST_ORDERS:]:
        lines.append(say.say("card-order", day=say.day(order.on), what=order_in_words(order, say)))
    doubt = questions.open_question(desk.tx, desk.person, "ask")
    if doubt is not None:
        lines.append(say.say("card-doubt", text=doubt.text[:200], span=doubt.span or ""))
    lines += [say.say("card-note", text=note.text) for note in notes.notes_of(desk.tx, desk.id)[-3:]]
    return "\n".join(line for line in lines if line), buttons


def _standing(given: Sequence[Order]) -> list[Order]:
    """The orders without sets for a day that others have been ordered for since."""
    known = Orders(given)
    dated = {at: one.for_date for at, one in enumerate(given) if one.kind == "set_sets"}
    return [one for at, one in enumerate(given) if (day := dated.get(at)) is None or one in known.sets_for(day)]
