"""Missed days, moves, travel, illness, pauses, coming back, equipment, and the wish to be left alone."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from bot.conversation import asked_by_them, moves, next_due, travels
from bot.conversation.desk import Buttons, Desk
from bot.conversation.moves import next_training
from bot.conversation.outcomes import is_done
from bot.conversation.placing import context_of
from bot.conversation.reasons import reason_in_words, until_in_words
from bot.reading.absences import days_spoken_of
from bot.reading.reading import Reading
from planner.absence import Away, return_after
from planner.facts import Absence, Equipment, Resume
from planner.history import History
from planner.rules import rules_of
from storage import due, facts

IN_SIGHT_DAYS = 14  # in which the sessions to come are known
OF_TRAINING = ("plan", "pain_morning", "nudge")  # kinds of due rows that nothing is owed by once training stops


def handle(desk: Desk, reading: Reading, text: str) -> tuple[list[str], Buttons]:
    """Facts and answers for every intent of this kind, in the order of their weight, and the buttons of an offer."""
    answers: list[str] = []
    buttons: Buttons = []
    intents = set(reading.intents)
    if any(doubt.about == "dates" for doubt in reading.ask):
        intents -= {"missed", "move", "away"}  # which days is asked: until then none is written down
    if asked_by_them.asks_for_advice(text):
        intents -= {"missed", "away", "pause"} - _stated(desk, text)  # "should I skip Thursday?": nothing is decided
    if "stop" in intents:
        answers.append(_stop(desk))
    if "resume" in intents:
        answers.append(_resume(desk, text))
    if "ill" in intents:
        answers.append(_absent(desk, "ill", reading))
    elif "pause" in intents:
        answers.append(_absent(desk, "pause", reading))
    elif "away" in intents and _moves(reading):
        answers.append(desk.say.say("absence-which-days"))  # the days told are those of the session that moves
    elif {"away", "equipment"} <= intents:
        told, buttons = _travel(desk, reading, text)
        answers += told
        intents -= {"equipment"}
    elif "away" in intents:
        answers.append(_absent(desk, "away", reading))
    if "move" in intents:
        answer, buttons = moves.move(desk, reading, text)
        answers.append(answer)
    elif "missed" in intents and "ill" not in intents:
        answers.append(_missed(desk, reading, text))
    if "equipment" in intents:
        answers.append(_equipment(desk, reading, text))
    return answers, buttons


def _days_of(desk: Desk, reading: Reading) -> tuple[date, date | None]:
    start = reading.dates.start if reading.dates and reading.dates.start else desk.said_on
    return start, reading.dates.end if reading.dates else None


def _absent(desk: Desk, kind: str, reading: Reading) -> str:
    start, end = _days_of(desk, reading)
    if _moves(reading) and end is not None:
        # "Sick today, can we do Friday instead?": until the day to which the session moves.
        start, end = desk.said_on, end - timedelta(days=1) if end > desk.said_on else None
    fever = "fever" in reading.red_flags
    return note(desk, Absence(kind, desk.said_on, start, end, fever))  # type: ignore[arg-type]


def note(desk: Desk, absence: Absence) -> str:
    """Add an absence and say how it was understood."""
    begin(desk, absence)
    say = desk.say
    if absence.kind == "missed":
        key = "absence-missed" if absence.since <= desk.said_on else "absence-left-out"
        told = say.say(key, day=say.day(absence.since))
    else:
        key = f"absence-{absence.kind}-fever" if absence.fever else f"absence-{absence.kind}"
        until = say.say("absence-until", day=say.day(absence.until)) if absence.until else say.say("absence-open")
        told = say.say(key, since=say.day(absence.since), until=until)
        if _lightens(desk, absence):
            told += f" {say.say('absence-lighter')}"
    return f"{told} {next_training(desk)}".strip()


def _lightens(desk: Desk, absence: Absence) -> bool:
    """Whether the absence is so long that training starts again with less, as the planner will have it."""
    return return_after(Away("away", absence.since, absence.until), rules_of(desk.record.athlete)) is not None


def _moves(reading: Reading) -> bool:
    """Whether the days that a message names are those between which a session moves."""
    dates = reading.dates
    return "move" in reading.intents and dates is not None and None not in (dates.start, dates.end)


def begin(desk: Desk, absence: Absence) -> None:
    """Add an absence. One said after "I'm back" on the same day is not ended by that: days alone don't tell the order.

    What the return had ended is closed with the day before it, and the return is taken back.
    """
    for back in desk.record.resumes if absence.kind != "missed" else ():
        if back.on < desk.said_on or absence.since > desk.said_on or back.fact is None:
            continue
        for earlier in desk.record.absences:
            over = earlier.until is not None and earlier.until < back.on
            if earlier.kind == "missed" or over or earlier.since > back.on or earlier.fact is None:
                continue
            facts.withdraw(desk.tx, "absence", earlier.fact, desk.now)
            if earlier.since < back.on:
                ended = replace(earlier, until=back.on - timedelta(days=1), fact=None)
                facts.add(desk.tx, desk.id, ended, earlier.said_by, desk.said_at, None)
        facts.withdraw(desk.tx, "resume", back.fact, desk.now)
        desk.forget()  # who said twice that they are back did not come back twice
    desk.add(absence)


def _missed(desk: Desk, reading: Reading, text: str) -> str:
    start = reading.dates.start if reading.dates and reading.dates.start else desk.said_on
    end = reading.dates.end if reading.dates and reading.dates.end else start
    if start == end <= desk.said_on and is_done(desk, start):
        # "Can't do any more today", after the report: what was done was no missed day.
        return f"{desk.say.say('absence-told-already', day=desk.say.day(start))} {next_training(desk)}".strip()
    noted = note(desk, Absence("missed", desk.said_on, start, end))
    if start < desk.said_on or not asked_by_them.asks(text):
        return noted
    return f"{desk.say.say('absence-granted')} {noted} {desk.say.say('can-be-undone')}"


def _resume(desk: Desk, text: str) -> str:
    if (stopped := desk.review.stopped) is not None and not _states_return(desk, text):
        # "Am I allowed to train?" tells nobody that it feels fine.
        return f"{desk.say.say('resume-not-yet')} {reason_in_words(stopped, desk.say)}"
    desk.set_own({"silenced": False})
    _call_off(desk)
    desk.add(Resume(desk.said_on))
    plant_next_plan(desk)
    if desk.review.stopped is not None:
        # A warning sign is not talked away: who lifts the stop is the coach, and must hear that it may be over.
        desk.tell_coach(desk.say_coach.say("resume-stopped-for-coach", name=desk.person.name))
        return desk.say.say("resume-stopped", coach=desk.coach.name, heard=desk.heard)
    return f"{desk.say.say('resume')} {next_training(desk)}".strip()


def _states_return(desk: Desk, text: str) -> bool:
    """Whether a message says that one is back or fine, and does not only ask for it."""
    return asked_by_them.without_questions(text) == text.strip() or "resume" in _stated(desk, text)


def _stated(desk: Desk, text: str) -> set[str]:
    """The intents of what a message states beside what it asks."""
    return set(desk.read(asked_by_them.without_questions(text), context_of(desk, desk.said_at)).intents)


def _call_off(desk: Desk) -> None:
    """Who is here, and says so, does not go away as they had said: "my trip got cancelled"."""
    absences = [one for one in desk.record.absences if one.kind == "away" and one.fact is not None]
    if any(one.since <= desk.said_on and (one.until is None or one.until >= desk.said_on) for one in absences):
        return  # back from one journey, the next one still stands
    for one in absences:
        if one.since > desk.said_on and one.fact is not None:
            facts.withdraw(desk.tx, "absence", one.fact, desk.now, by=desk.cause)
    desk.forget()


def _stop(desk: Desk) -> str:
    desk.set_own({"silenced": True})
    cancel_training(desk)
    desk.tell_coach(desk.say_coach.say("stopped-for-coach", name=desk.person.name))
    return desk.say.say("stopped", heard=desk.heard)


def cancel_training(desk: Desk) -> None:
    """Nothing of training falls due any more; an erasure that was promised goes on."""
    for kind in OF_TRAINING:
        due.cancel(desk.tx, desk.person, kind)


def _equipment(desk: Desk, reading: Reading, text: str) -> str:
    told, say = travels.told_of_equipment(text), desk.say
    if told is None:
        desk.tell_coach(desk.say_coach.say("equipment-for-coach", name=desk.person.name, text=text))
        return say.say("equipment-passed-on", heard=desk.heard)
    spoken = reading.dates or days_spoken_of(text, context_of(desk, desk.said_at))
    since, until = (spoken.start or desk.said_on, spoken.end) if spoken is not None else (desk.said_on, None)
    if until is not None and until < desk.said_on:
        since, until = desk.said_on, None  # "my belt broke yesterday"
    has = told.of(History(desk.record, desk.said_on).equipment(desk.said_on))
    return note_equipment(desk, Equipment(since, has, until))


def note_equipment(desk: Desk, now: Equipment, key: str | None = None) -> str:
    """Add what there is to train with, and say how it was understood, with the sentence `key` where it is another."""
    desk.add(now)
    say, since = desk.say, now.since
    shown = say.listed([say.say(f"equipment-{kind}") for kind in sorted(now.has)]) or say.say("equipment-nothing")
    key = key or ("equipment-noted" if since <= desk.said_on else "equipment-noted-from")
    if _nothing_to_train_with(desk, now):
        key = "equipment-too-little"
    return say.say(key, equipment=shown, since=say.day(since), until=until_in_words(now.until, say), heard=desk.heard)


def _nothing_to_train_with(desk: Desk, now: Equipment) -> bool:
    """Whether the sessions of those days, as far as they are in sight, come to nothing with that; the coach hears."""
    last = desk.today + timedelta(days=IN_SIGHT_DAYS)
    ends = last if now.until is None else min(now.until, last)
    days = [day for day in sorted(desk.view.timeline.by_day) if max(now.since, desk.today) <= day <= ends]
    if not days or desk.review.stopped is not None or any(desk.plan(day).sets for day in days):
        return False
    say = desk.say_coach
    shown = say.listed([say.say(f"equipment-{kind}") for kind in sorted(now.has)]) or say.say("equipment-nothing")
    until = until_in_words(now.until, say)
    told = say.say("undone-equipment", equipment=shown, since=say.day(now.since), until=until)
    desk.tell_coach(say.say("equipment-too-little-for-coach", name=desk.person.name, told=told))
    return True


def _travel(desk: Desk, reading: Reading, text: str) -> tuple[list[str], Buttons]:
    """Away with something said of equipment: training with what is there, or none, and the other for a button."""
    since, until = _days_of(desk, reading)
    there = travels.trains_there(text)
    if there is not None:
        noted = note_equipment(desk, Equipment(since, there, until), "travel-noted")
        offered = travels.offer(desk, travels.REST, since, until, text)
        return [f"{noted} {next_training(desk)}".strip()], offered
    noted = _absent(desk, "away", reading)
    if not travels.is_open(text):
        return [noted], []
    return [noted, desk.say.say("travel-open")], travels.offer(desk, travels.TRAIN, since, until, text)


def plant_next_plan(desk: Desk) -> None:
    """The next day's plan falls due at the athlete's hour, whatever was planted before."""
    next_due.plant_plan(desk.tx, desk.athlete, desk.today, desk.now)
