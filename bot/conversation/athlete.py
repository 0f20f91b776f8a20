"""What an athlete says: read once, facts added, one answer put together."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import datetime

import structlog

from bot.conversation import absences, alerts, asking, mending, pains, passing_on, plans, privacy, progress, reports
from bot.conversation.desk import Buttons, Desk
from bot.conversation.eccentrics import asks_for_eccentrics, refuse
from bot.conversation.moments import plant_after_report
from bot.reading.reading import Reading
from planner.facts import Session
from planner.plan import DayPlan
from storage import questions
from storage.inbox import Incoming

log = structlog.get_logger(__name__)

NUMBER_ALONE = re.compile(r"\s*\d{1,2}(?:[.,]\d)?(?:\s*/\s*10)?\s*")
LONGEST_READ = 10_000
ABSENT = {"move", "missed", "away", "ill", "pause", "resume", "stop", "equipment"}
FACTS = {"report", "pain", "bodyweight"}


def handle(desk: Desk, incoming: Incoming) -> None:
    """Answer one message of an athlete."""
    if incoming.kind == "clip":
        desk.tell(passing_on.clip(desk, incoming.text, incoming.data.get("media")))
        if incoming.text.strip():
            _text(desk, incoming.text, incoming.sent_at, quiet=True)
        alerts.send_new(desk)
        return
    if incoming.kind == "press" and incoming.data.get("data") == reports.MORE_PAIN:
        pains.ask_more(desk)
        return
    pressed = str(incoming.data.get("data", "")) if incoming.kind == "press" else None
    if privacy.handle(desk, incoming.text, pressed):
        return
    text = _pressed(incoming) if incoming.kind == "press" else incoming.text
    if text is None:
        log.warning("press refused", incoming=incoming.id, athlete=desk.id)
        desk.tell(desk.say.say("press-unknown"))
        return
    if not text.strip():
        desk.tell(desk.say.say("empty"))
        return
    _text(desk, text, incoming.sent_at)
    plans.refresh(desk)
    alerts.send_new(desk)


def _pressed(incoming: Incoming) -> str | None:
    """A button stands for words: "t:3" is the athlete saying 3."""
    data = str(incoming.data.get("data", ""))
    return data[2:] if data.startswith("t:") else None


def _text(desk: Desk, text: str, sent_at: datetime, quiet: bool = False) -> None:
    if len(text) > LONGEST_READ:
        desk.tell(desk.say.say("too-long", limit=LONGEST_READ))
        text = text[:LONGEST_READ]
    context = asking.context_of(desk, sent_at)
    number_alone = NUMBER_ALONE.fullmatch(text) is not None
    asked = questions.open_question(desk.tx, desk.person)
    if number_alone and asked is None:
        desk.tell(desk.say.say("number-alone", number=text.strip()))
        return
    # A number alone answers what was asked last: for pain, or what an earlier message meant.
    to_pain = number_alone and asked is not None and asked.kind == pains.QUESTION
    completed = None if to_pain else asking.completed(desk, text)
    if completed is not None:
        reading, text, sent_at = completed
    else:
        reading = asking.read_by_plan(desk, text, context)
    if quiet:
        # A caption says what a clip shows; what is unclear in it is not worth a question.
        reading = replace(reading, ask=())
    _answer(desk, reading, text, sent_at, quiet)


def _answer(desk: Desk, reading: Reading, text: str, sent_at: datetime, quiet: bool) -> None:
    """Facts first, most urgent words first, one message."""
    say, intents = desk.say, set(reading.intents)
    before = reports.Snapshot(desk, counts=reading.performed_on is not None)
    parts: list[str] = []
    plan: DayPlan | None = None
    if "undo" in intents:
        parts.append(mending.undo(desk))
    sessions: list[Session] = []
    if "correction" in intents:
        if not reading.ask:
            parts.append(mending.correct(desk, reading))
    else:
        sessions = reports.store(desk, reading)
    felt = pains.store(desk, reading)
    alarm = pains.alarm(desk, reading)
    if alarm:
        parts.insert(0, alarm)
    if reading.past_flags:
        desk.tell_coach(desk.say_coach.say("history-for-coach", name=desk.person.name, text=text))
        parts.append(say.say("history-noted"))
    if sessions and not reading.ask and any(one.reps is None and one.hold_s is None for one in reading.sets):
        # "Done as planned" where the plan left the reps open: nothing is written down for them unasked.
        parts.append(say.say("report-open-sets"))
    if sessions:
        parts.append(reports.read_back(desk, sessions, before))
        plant_after_report(desk, sessions)
    elif reading.sets and reports.known_sets(reading) and "correction" not in intents:
        parts.append(say.say("report-again"))
    if reading.bodyweight_kg is not None:
        parts.append(say.say("bodyweight-noted", weight=say.load(reading.bodyweight_kg)))
    acknowledged = None if alarm else pains.acknowledge(desk, felt)
    if acknowledged:
        parts.append(acknowledged)
    if intents & ABSENT:
        parts += absences.handle(desk, reading, text)
    if "for_coach" in intents:
        parts.append(passing_on.to_coach(desk, text))
    if asks_for_eccentrics(reading, text) and not reading.sets:
        parts.append(refuse(desk, text))
    if "plan_today" in intents:
        shown, plan = plans.today(desk)
        parts.append(shown)
    if "plan_week" in intents:
        parts.append(plans.week(desk, say))
    if "why" in intents:
        parts.append(plans.why(desk, say))
    if "progress" in intents:
        parts.append(progress.in_words(desk.review, say))
    if "help" in intents and not reading.pain:
        parts.append(say.say("help"))
    if reading.unread and sessions:
        parts.append(say.say("unread", pieces=say.listed([say.quoted(piece) for piece in reading.unread])))
    if not parts and not reading.ask and not felt and not quiet:
        parts.append(say.say("smalltalk" if "smalltalk" in intents else "unknown"))
    buttons: Buttons = []
    if reading.ask:
        question, buttons = asking.ask(desk, reading, text, sent_at)
        parts.append(question)
    elif not alarm and (score := pains.ask_score(desk, felt)) is not None:
        question, buttons = score
        parts.append(question)
    elif sessions and _pain_to_ask(desk, reading, sessions):
        question, buttons = pains.ask_after(desk, sessions[-1].on)
        parts.append(question)
    if parts:
        desk.tell("\n\n".join(part for part in parts if part), plan=plan, buttons=buttons)


def _pain_to_ask(desk: Desk, reading: Reading, sessions: list[Session]) -> bool:
    """Asked after today's session where nothing was said of pain; yesterday's was asked for this morning."""
    late = sessions[-1].on >= desk.today or (desk.local.hour < 4 and (desk.today - sessions[-1].on).days <= 1)
    return bool(sessions[-1].sets) and not reading.pain and not reading.red_flags and late
