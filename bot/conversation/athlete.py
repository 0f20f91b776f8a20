"""What an athlete says: read once, facts added, one answer put together."""

from __future__ import annotations

from dataclasses import replace

import structlog

from bot import metrics
from bot.conversation import (
    absences,
    alerts,
    answers,
    asking,
    block_asked,
    cut_short,
    for_the_coach,
    mending,
    mind_changed,
    open_sets,
    own_settings,
    pain_questions,
    pain_sides,
    pains,
    passing_on,
    plans,
    privacy,
    progress,
    reports,
    taken_out,
    told_back,
    work_asked,
)
from bot.conversation.answers import Said, Understood
from bot.conversation.desk import Buttons, Desk
from bot.conversation.eccentrics import asks_for_eccentrics, refuse
from bot.conversation.moments import plant_after_report
from bot.conversation.reasons import reason_in_words
from bot.conversation.words import medical
from planner.gained import gain_of
from planner.plan import DayPlan
from storage.inbox import Incoming

log = structlog.get_logger(__name__)

LONGEST_READ = 10_000
FEWEST_WORDS = 3  # of a message that is passed on though nothing in it was understood
ABSENT = {"move", "missed", "away", "ill", "pause", "resume", "stop", "equipment"}


def handle(desk: Desk, incoming: Incoming) -> None:
    """Answer one message of an athlete; what it changed of today's plan, and for the coach, goes out after it."""
    if _answered(desk, incoming):
        review = desk.review  # by which a plan goes out: that it went changes no alert
        plans.refresh(desk)
        alerts.send_new(desk, review)


def _answered(desk: Desk, incoming: Incoming) -> bool:
    """Answer it. False: nothing was told of training."""
    if incoming.kind == "clip":
        desk.tell(passing_on.clip(desk, incoming.text, incoming.data.get("media")))
        if incoming.text.strip():
            _text(desk, Said(incoming.text), quiet=True)
        return True
    pressed = str(incoming.data.get("data", "")) if incoming.kind == "press" else None
    if privacy.handle(desk, incoming.text, pressed):
        return False
    said = Said(incoming.text)
    if pressed is not None:
        found = answers.pressed(desk, pressed)
        if found is None:
            log.warning("press refused", incoming=incoming.id, athlete=desk.id)
            desk.tell(desk.say.say("press-unknown"))
            return False
        said = found
    if said.to is not None and said.text == pain_questions.MORE:
        pain_questions.ask_more(desk, said.to)
        return False
    if not said.text.strip():
        desk.tell(desk.say.say("empty"))
        return False
    passed_on = for_the_coach.taken_up(desk, said)
    if passed_on is not None:
        desk.tell(passed_on)
        return False
    _text(desk, said)
    return True


def _text(desk: Desk, said: Said, quiet: bool = False) -> None:
    if len(said.text) > LONGEST_READ:
        desk.tell(desk.say.say("too-long", limit=LONGEST_READ))
        said = replace(said, text=said.text[:LONGEST_READ])
    if said.to is None and not quiet and told_back.is_asked(said.text):
        desk.tell(told_back.in_words(desk))
        return
    if said.to is None and not quiet and (what := block_asked.about(said.text)) is not None:
        desk.tell(block_asked.in_words(desk, what, desk.say))
        return
    if said.to is None and not quiet and told_back.is_of_the_next(said.text):
        desk.tell(plans.following(desk))
        return
    if said.to is None and not quiet and told_back.is_of_effort(said.text):
        desk.tell(desk.say.say("rpe-means"))
        return
    if said.to is None and not quiet and for_the_coach.are_days(said.text):
        question, buttons = for_the_coach.offer(desk, said.text)
        desk.tell(question, buttons=buttons)
        return
    if said.to is None and not quiet:
        for carried_out in (own_settings.carried_out, taken_out.carried_out, cut_short.answered):
            answer = carried_out(desk, said.text)
            if answer is not None:
                desk.tell(answer)
                return
    found = answers.understood(desk, said)
    if found is None:
        desk.tell(desk.say.say("number-alone", number=answers.number_in(said.text)))
        return
    if found.asks is not None:
        question, buttons = found.asks
        desk.tell(question, buttons=buttons)
        return
    if quiet:
        # A caption says what a clip shows; what is unclear in it is not worth a question.
        found = replace(found, reading=replace(found.reading, ask=()))
    elif said.to is None:
        found = replace(found, reading=work_asked.without_what_is_asked(desk, found.reading, said.text))
        of_a_day = work_asked.answered(desk, found.reading, said.text)
        if of_a_day is not None:
            question, buttons = of_a_day
            desk.tell(question, buttons=buttons)
            return
        found = replace(found, reading=work_asked.without_a_move(desk, found.reading, said.text))
    _answer(desk, found, quiet)


def _answer(desk: Desk, found: Understood, quiet: bool) -> None:
    """Facts first, most urgent words first, one message with at most one question."""
    text = found.text
    reading = pains.at_last_place(desk, pain_sides.put_right(desk, found.reading, text), found.pain)
    reading = asking.without_doubtful_values(desk, reading, text)
    say, intents = desk.say, set(reading.intents)
    if passing_on.is_for_coach_by_name(desk, text):
        intents = {*intents - {"unknown", "smalltalk"}, "for_coach"}
    metrics.count_reading(bool(reading.ask), intents != {"unknown"})
    before = reports.Snapshot(desk, reading)
    if found.completes == open_sets.KIND or open_sets.settle(desk, reading):
        before.forget()
    was_stopped = desk.review.stopped is not None
    parts: list[str] = []
    offered: tuple[str, Buttons] | None = None
    plan: DayPlan | None = None
    if "undo" in intents:
        parts.append(mending.undo(desk))
    stored = reports.Stored([])
    if "correction" in intents:
        if not reading.ask:
            parts.append("\n".join([mending.correct(desk, reading), *reports.changes(desk, before)]))
    else:
        stored = reports.store(desk, reading, text)
    sessions = stored.sessions
    felt = pains.store(desk, reading, found.pain)
    alarm = pains.alarm(desk, reading)
    if alarm:
        parts.insert(0, alarm)
    if reading.past_flags:
        desk.tell_coach(desk.say_coach.say("history-for-coach", name=desk.person.name, text=text))
        parts.append(say.say("history-noted", heard=desk.heard))
    left = open_sets.of(reading) if not quiet and not alarm else ()
    if sessions:
        parts.append(reports.read_back(desk, stored, before, whole=not left))
        plant_after_report(desk, sessions)
    elif reading.sets and reports.known_sets(reading) and "correction" not in intents:
        parts.append(say.say("report-again"))
    if reading.bodyweight_kg is not None:
        parts.append(say.say("bodyweight-noted", weight=say.load(reading.bodyweight_kg)))
    acknowledged = None if alarm else pains.acknowledge(desk, felt, before.pain)
    if acknowledged:
        parts.append(acknowledged)
    buttons: Buttons = []
    if found.changes is not None:
        parts.append(mind_changed.carry_out(desk, found.changes))
    elif intents & ABSENT:
        absent, buttons = absences.handle(desk, reading, text)
        parts += absent
    if "for_coach" in intents:
        parts.append(passing_on.to_coach(desk, text))
    if found.swaps:
        parts.append(say.say("swap-passed-on", coach=desk.coach.name))
    if asks_for_eccentrics(reading, text) and not reading.sets:
        parts.append(refuse(desk, text))
    stopped = desk.review.stopped
    if stopped is None and not sessions and not quiet and not intents & {"for_coach"} and medical(text):
        # What a doctor said outranks the plan, and is the coach's to turn into one.
        passing_on.to_coach(desk, text)
        parts.append(say.say("medical-passed-on", coach=desk.coach.name, heard=desk.heard))
        reading = replace(reading, ask=())
    told = not parts and not reading.ask and not felt and not quiet and len(text.split()) >= FEWEST_WORDS
    told_while_stopped = was_stopped and (
        (told and intents <= {"unknown"}) or (bool(intents & {"pause", "away", "ill"}) and "for_coach" not in intents)
    )  # "the doctor says one week off": what a stop turns on, and the coach alone ends it
    if "plan_today" in intents:
        # "Can't make Friday, what's on today?" names a day that is not asked about.
        plain = not (sessions or intents & ABSENT)
        shown, plan = plans.asked(desk, text) if plain else plans.today(desk)
        plans.keep_shown(desk, plan)
        parts.append(shown)
    if "plan_week" in intents:
        parts.append(plans.week(desk, say))
    if "why" in intents:
        parts.append(plans.why(desk, say))
    if "progress" in intents:
        parts.append(progress.in_words(desk.review, say, gain_of(desk.record, desk.review)))
    if "help" in intents and not reading.pain:
        parts += [reason_in_words(stopped, say)] if stopped is not None else []  # "what should I do?"
        parts.append(say.say("help"))
    if reading.unread and sessions:
        parts.append(say.say("unread", pieces=say.listed([say.quoted(piece) for piece in reading.unread])))
    if not parts and not reading.ask and not felt and not quiet:
        if stopped is not None and ("?" in text or "smalltalk" not in intents):
            parts.append(reason_in_words(stopped, say))  # "can I train?"
        elif for_the_coach.is_one(text):
            offered = for_the_coach.offer(desk, text)
        else:
            parts.append(say.say("smalltalk" if "smalltalk" in intents else "unknown"))
    if told_while_stopped:
        parts.append(passing_on.to_coach(desk, text))
    if offered is not None:
        question, buttons = offered
        parts.append(question)
    elif reading.ask:
        question, buttons = asking.ask(desk, reading, text)
        parts.append(question)
    elif left and reading.performed_on is not None:
        # "Done as planned" where the plan left the reps open: nothing is written down for them unasked.
        parts.append(open_sets.ask(desk, left, reading.performed_on, text))
    elif not alarm and (score := pain_questions.ask_score(desk, felt)) is not None:
        question, buttons = score
        parts.append(question)
    elif not alarm and (other := pain_questions.ask_next(desk, found.pain, felt)) is not None:
        question, buttons = other
        parts.append(question)
    elif not alarm and (where := pain_questions.ask_place(desk, felt)) is not None:
        question, buttons = where
        parts.append(question)
    elif sessions and (after := pain_questions.ask_of_session(desk, reading, sessions)) is not None:
        question, buttons = after
        parts.append(question)
    if plan is None and intents & ABSENT:
        plan = plans.withdrawn(desk)
    if parts:
        desk.tell("\n\n".join(part for part in parts if part), plan=plan, buttons=buttons)
