"""Sets whose reps (or seconds) a plan left open, as on a test day: "done" does not tell them, so they are asked for."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime

from bot.conversation.asking import plant_expiry
from bot.conversation.desk import Desk
from bot.conversation.placing import context_of
from bot.reading import complete
from bot.reading.reading import Ask, Reading, SetRead
from bot.wording import Wording
from bot.wording.sets import set_in_words
from planner import movements
from planner.facts import PlannedSet
from storage import questions
from storage.fact_forms import planned_from_json, planned_to_json

KIND = "open_sets"
REPS, SECONDS = "reps", "hold_s"


def of(reading: Reading) -> tuple[SetRead, ...]:
    """The sets that lack nothing but what the plan had left open."""
    if reading.ask:
        return ()
    known = [one for one in reading.sets if None not in (one.movement, one.load_kg, one.assist_kg, one.rom)]
    return tuple(one for one in known if one.reps is None and one.hold_s is None)


def ask(desk: Desk, left: tuple[SetRead, ...], on: date, text: str) -> str:
    """The question for the first of them; the others are asked for in turn, and the coach hears of those left."""
    asked = tuple(_planned(one) for one in left)
    work = set_in_words(asked[0], desk.say)
    about = SECONDS if movements.movement(asked[0].movement).hold else REPS
    _make_room(desk, on)
    questions.ask(
        desk.tx,
        desk.person,
        KIND,
        desk.now,
        text=text,
        about=about,
        span=work,
        cause=desk.cause,
        data={"on": on.isoformat(), "sent_at": desk.said_at.isoformat(), "sets": planned_to_json(asked)},
    )
    plant_expiry(desk)
    return desk.say.say(f"ask-open-{about}", work=work)


def in_words(question: questions.Question, say: Wording) -> str:
    """The set that was asked for, in the words of who reads it; the question itself was in the athlete's."""
    return set_in_words(planned_from_json(question.data["sets"])[0], say)


def completed(desk: Desk, question: questions.Question, answer: str) -> tuple[Reading, str] | None:
    """The report of the set asked for, those still open behind it; None where the words are no answer to that."""
    sent_at = datetime.fromisoformat(question.data["sent_at"])
    context = replace(context_of(desk, sent_at), today=None)
    if _is_of_its_own(desk.read(answer, context)):
        return None
    first, *others = planned_from_json(question.data["sets"])
    # As if it had been told without the number: the reader knows how to put an answer into that.
    told = f"{desk.say.movement(first.movement)} 1 set +{first.load_kg:g} kg"
    whole = complete(told, replace(desk.read(told, context), ask=()), Ask(question.about or REPS, ""), answer, context)
    if whole is None or whole.ask or len(whole.sets) != 1:
        return None
    assert question.id is not None
    questions.close(desk.tx, question.id, desk.now)
    filled = replace(_open(first), reps=whole.sets[0].reps, hold_s=whole.sets[0].hold_s, rpe=whole.sets[0].rpe)
    on = date.fromisoformat(question.data["on"])
    sets = (filled, *(_open(one) for one in others))
    desk.said_at = sent_at
    return Reading(("report",), performed_on=on, sets=sets, language=whole.language), question.text


def close(desk: Desk) -> None:
    """Nothing is asked any more: what was asked is taken back or asked anew."""
    for question in questions.open_questions(desk.tx, desk.person, KIND):
        assert question.id is not None
        questions.close(desk.tx, question.id, desk.now)


def _make_room(desk: Desk, on: date) -> None:
    """The question of the same day is put anew; that of another day lapses, and the coach hears of it."""
    if any(question.data["on"] != on.isoformat() for question in questions.open_questions(desk.tx, desk.person, KIND)):
        questions.expire(desk.tx, desk.person, KIND, desk.now)
    close(desk)


def settle(desk: Desk, reading: Reading) -> bool:
    """A report that tells the sets asked for leaves nothing to ask. True: there was a question, and this settles it."""
    question = questions.open_question(desk.tx, desk.person, KIND)
    if question is None or question.id is None:
        return False
    told = {one.movement for one in reading.sets if one.reps is not None or one.hold_s is not None}
    if not {one.movement for one in planned_from_json(question.data["sets"])} <= told:
        return False
    questions.close(desk.tx, question.id, desk.now)
    return True


def _is_of_its_own(alone: Reading) -> bool:
    """Whether it says something by itself: sets of a named movement, a place that hurts, a wish."""
    names_sets = any(one.movement is not None for one in alone.sets)
    names_pain = any(one.site is not None for one in alone.pain) or bool(alone.red_flags)
    return names_sets or names_pain or bool(set(alone.intents) - {"report", "pain", "smalltalk", "unknown"})


def _planned(one: SetRead) -> PlannedSet:
    return PlannedSet(
        movement=one.movement or "",
        part="main",
        reps=None,
        side=one.side,
        load_kg=one.load_kg or 0.0,
        assist_kg=one.assist_kg or 0.0,
        rom=one.rom or "full",
        eccentric=one.eccentric,
        pauses=one.pauses,
    )


def _open(one: PlannedSet) -> SetRead:
    return SetRead(
        movement=one.movement,
        side=one.side,
        load_kg=one.load_kg,
        assist_kg=one.assist_kg,
        rom=one.rom,
        eccentric=one.eccentric,
        pauses=one.pauses,
    )
