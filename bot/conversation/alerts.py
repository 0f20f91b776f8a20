"""What the coach hears unasked: proposals with buttons and alerts, each once."""

from __future__ import annotations

from typing import cast

from bot.conversation.desk import Buttons, Desk
from bot.conversation.reasons import reason_in_words, rung_name
from bot.wording import Wording
from planner.facts import Side
from planner.pain import place_id
from planner.plan import Alert, Proposal, Review
from storage import facts, outbox

NOW, DECISION = 3, 2


def send_new(desk: Desk, review: Review | None = None) -> None:
    """Tell the coach what the review (the athlete's own, of now, where none is given) shows and was not told before."""
    review = review or desk.review
    for position in review.ladders:
        if position.proposal is not None:
            tell_proposal(desk, position.proposal)
    for alert in review.alerts:
        if alert.urgency >= DECISION and not _is_proposal(alert) and alert.code not in TOLD_ELSEWHERE:
            tell_alert(desk, alert)


def tell_proposal(desk: Desk, proposal: Proposal) -> None:
    say = desk.say_coach
    desk.tell_coach(
        proposal_in_words(desk.person.name, proposal, say),
        buttons=proposal_buttons(desk.id, proposal, say),
        cause=f"proposal:{desk.id}:{proposal.ladder}:{proposal.rung}:{proposal.since.isoformat()}",
    )


def proposal_in_words(name: str, proposal: Proposal, say: Wording) -> str:
    reasons = " ".join(reason_in_words(reason, say) for reason in proposal.reasons)
    return say.say(f"proposal-{proposal.kind}", name=name, rung=rung_name(proposal.rung, say), reasons=reasons).strip()


def proposal_buttons(athlete_id: int, proposal: Proposal, say: Wording) -> Buttons:
    """Short ids only: what they mean is looked up among the coach's own athletes when they are pressed."""
    return [
        (say.say("button-approve"), f"a:{athlete_id}:{proposal.rung}"),
        (say.say("button-hold"), f"h:{athlete_id}:{proposal.rung}"),
    ]


def tell_alert(desk: Desk, alert: Alert) -> None:
    say = desk.say_coach
    desk.tell_coach(
        alert_in_words(desk.person.name, alert, say),
        buttons=alert_buttons(desk.id, alert, say),
        importance=outbox.ALERT if alert.urgency >= NOW else outbox.REPLY,
        cause=f"alert:{desk.id}:{alert.code}:{alert.since.isoformat()}{_whereof(alert)}{_anew(desk, alert)}",
    )


def _whereof(alert: Alert) -> str:
    """Two places that hurt since the same day are two things to be told of."""
    return "".join(f":{alert.values[name]}" for name in ("site", "side") if alert.values.get(name))


def _anew(desk: Desk, alert: Alert) -> str:
    """A stop for pain is told again at another score, and at any after the coach has lifted the one before: that can
    be on the same day."""
    if alert.code != "pain_stop":
        return ""
    return f":{alert.values.get('score')}:{facts.restarts_ever(desk.tx, desk.id)}"


def alert_buttons(athlete_id: int, alert: Alert, say: Wording) -> Buttons:
    """What the coach can decide of it: a stop lifted, or a step back for pain."""
    if alert.code in RESTARTABLE:
        return [(say.say("button-restart"), f"r:{athlete_id}")]
    if alert.code != STEPPED_BACK:
        return []
    return [(say.say("button-train-on"), f"b:{athlete_id}:{alert_place(alert)}")]


def alert_place(alert: Alert) -> str:
    """The place that an alert is about, as an order names it."""
    return place_id(str(alert.values["site"]), cast(Side | None, alert.values.get("side")))


STEPPED_BACK = "pain_step_back"
RESTARTABLE = {"stopped_by_sign", "pain_stop"}


def alert_in_words(name: str, alert: Alert, say: Wording) -> str:
    return say.say("alert", name=name, what=reason_in_words(alert, say, "alert"))


# The athlete's own message about a sign, and the start of an athlete, tell the coach with more words.
TOLD_ELSEWHERE = {"stopped_by_sign", "screening_open"}


def _is_proposal(alert: Alert) -> bool:
    return alert.code.startswith("proposal")
