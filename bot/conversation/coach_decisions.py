"""What a coach decides of what was proposed: approvals, a start, clips seen, a stop lifted; by button or by word."""

from __future__ import annotations

from collections.abc import Sequence

import structlog

from bot.conversation import absences, alerts, cards, coach_waiting
from bot.conversation.coach_words import Command
from bot.conversation.desk import Desk
from bot.conversation.office import Office
from bot.conversation.reasons import place, rung_name
from planner.facts import Clip, Order, OrderKind
from storage import facts

log = structlog.get_logger(__name__)

MOST_DIGITS = 18  # of a number that a button can name


def pressed(office: Office, data: str) -> None:
    """Data is what we once sent, or forged: it names an athlete of this coach and a thing that still stands."""
    kind, _, rest = data.partition(":")
    athlete_id, _, rung = rest.partition(":")
    desk = office.desk_of(athlete_id)
    if desk is None:
        _refuse(office)
    elif kind in ("a", "h"):
        _decide(office, desk, "approve" if kind == "a" else "decline", rung)
    elif kind == "s":
        _start(office, desk)
    elif kind == "v":
        _see(office, desk, [one for one in coach_waiting.clips_to_see(desk.record) if str(one.fact) == rung])
    elif kind == coach_waiting.SEE:
        newest = int(rung) if rung.isascii() and rung.isdecimal() and len(rung) < MOST_DIGITS else 0
        _see(office, desk, [one for one in coach_waiting.clips_to_see(desk.record) if (one.fact or 0) <= newest])
    elif kind == "b":
        _train_on(office, desk, rung)
    elif kind == coach_waiting.SETTLE:
        coach_waiting.settle(office, desk, rung)
    elif kind == coach_waiting.ASK:
        coach_waiting.ask(office, desk)
    elif kind == "r" and any(alert.code in alerts.RESTARTABLE for alert in desk.review.alerts):
        _restart(office, desk)
    elif kind == "r":
        # An old button, pressed again: what it was about is over, and a new stop is another decision.
        office.answer("decided-nothing", name=desk.person.name)
    else:
        _refuse(office)


def _refuse(office: Office) -> None:
    """Forged, of somebody else's athlete, or of one who left. The data itself goes into no log."""
    log.warning("press refused", incoming=office.incoming.id, coach=office.coach.id)
    office.answer("press-unknown")


def _decide(office: Office, desk: Desk, kind: OrderKind, rung: str | None = None) -> None:
    """Approve or hold the proposal that stands; a replayed press finds none and says so."""
    for position in desk.review.ladders:
        proposal = position.proposal
        if proposal is not None and rung in (None, "", proposal.rung):
            desk.add(Order(kind, desk.said_on, ladder=proposal.ladder, rung=proposal.rung))
            rung_in_words = rung_name(proposal.rung, desk.say_coach)
            desk.tell_coach(office.say.say(f"decided-{kind}", name=desk.person.name, rung=rung_in_words))
            if kind == "approve":
                key = f"told-{proposal.kind}"
                desk.tell(desk.say.say(key, rung=rung_name(proposal.rung, desk.say), coach=office.coach.name))
            office.effect(desk)
            return
    if kind == "approve" and not desk.review.started:
        _start(office, desk)
        return
    office.answer("decided-nothing", name=desk.person.name)


def _start(office: Office, desk: Desk) -> None:
    if desk.review.started:
        office.answer("started-already", name=desk.person.name)
        return
    desk.add(Order("start", desk.said_on))
    office.answer("started", name=desk.person.name)
    absences.plant_next_plan(desk)
    office.effect(desk)


def _see(office: Office, desk: Desk, clips: Sequence[Clip]) -> None:
    """Clips were looked at."""
    seen = [one.fact for one in clips if one.fact is not None]
    for fact in seen:
        facts.mark_clip_seen(desk.tx, fact)
    desk.forget()
    desk.tell_coach(office.say.say("clips-seen", name=desk.person.name, count=len(seen)))
    office.effect(desk)


def _restart(office: Office, desk: Desk) -> None:
    desk.add(Order("restart", desk.said_on))
    desk.tell_coach(office.say.say("restarted", name=desk.person.name) + "\n" + cards.next_session(desk))
    if desk.review.stopped is None:  # a word that waited lifts no stop that came after it
        desk.tell(desk.say.say("told-restart", coach=office.coach.name))
    office.effect(desk)


def _train_on(office: Office, desk: Desk, where: str) -> None:
    """The step back for a pain ends on the coach's word."""
    stands = [one for one in desk.review.alerts if one.code == alerts.STEPPED_BACK]
    told = next((one for one in stands if alerts.alert_place(one) == where), None)
    if told is None:
        office.answer("decided-nothing", name=desk.person.name)
        return
    desk.add(Order("train_on", desk.said_on, value=where))
    office.confirm(desk, "trained-on", place=_place_of(where, desk))


def _place_of(where: str, desk: Desk) -> str:
    site, _, side = where.partition(":")
    return place(site, side or None, desk.say_coach)


def approve(office: Office, _command: Command, desk: Desk) -> None:
    _decide(office, desk, "approve")


def decline(office: Office, _command: Command, desk: Desk) -> None:
    _decide(office, desk, "decline")


def restart(office: Office, _command: Command, desk: Desk) -> None:
    if any(alert.code in alerts.RESTARTABLE for alert in desk.review.alerts):
        _restart(office, desk)
    else:
        office.answer("decided-nothing", name=desk.person.name)


def seen(office: Office, _command: Command, desk: Desk) -> None:
    _see(office, desk, coach_waiting.clips_to_see(desk.record))
