"""Asking back: one question a message, about the most important doubt; the answer completes the earlier message."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import datetime, timedelta

from bot.conversation import asked_by_them, followups, told_anew, whose
from bot.conversation.desk import Buttons, Desk
from bot.conversation.movement_names import family_called
from bot.conversation.placing import context_of, message_of, placed, read_alone
from bot.reading import complete
from bot.reading.days import named_days
from bot.reading.mending.value_alone import value_alone
from bot.reading.reading import Ask, Context, Reading, SetRead
from bot.wording import Wording
from planner.units import KG_PER_LB
from storage import facts, questions

KIND = "ask"
EXPIRED = "ask_expired"
PATIENCE = timedelta(days=1)
MOST_BESIDE_FIGURES = 1  # words
OF_PAIN = ("score", "pain", "side")
EITHER = ("reps", "load_kg")
OF_ITS_OWN = frozenset("pain ill equipment correction undo for_coach why progress resume stop".split())
FIGURE = re.compile(r"\d+(?:[.,]\d+)?")
SAME_LOAD_KG = 0.06
NUMBER = re.compile(r"\s*(?:[@+]|(?:at|with|mit|bei|con|a)\s)?\s*(\d+(?:[.,]\d+)?)\s*", re.IGNORECASE)
EFFORTS = ("7", "8", "9", "10")
MOST_REPS, MOST_LOAD = 100, 200  # common practice; more is a slip of the thumb
MOST_ADDED = 150  # kilograms hung from the body; common practice
# What is asked first: without the movement or the sets nothing can be used, an effort is the least of it.
WEIGHT = (
    "movement sets reps load_kg assist_kg hold_s performed_on side rom bodyweight_kg score pain dates field rpe"
).split()


def ask(desk: Desk, reading: Reading, text: str) -> tuple[str, Buttons]:
    """The one question and its buttons, noted as open; it falls to the coach after a day."""
    doubt = most_important(reading)
    question = in_words(doubt, reading, desk.say)
    asked = questions.ask(
        desk.tx,
        desk.person,
        KIND,
        desk.now,
        text=text,
        about=doubt.about,
        span=doubt.span,
        cause=desk.cause,
        data={"sent_at": desk.said_at.isoformat()},
    )
    plant_expiry(desk)
    return question, [(label, f"q:{asked}:{words}") for label, words in _choices(desk, doubt, reading)]


def in_words(doubt: Ask, reading: Reading, say: Wording) -> str:
    """The question that settles a doubt."""
    key = f"ask-{doubt.about}"
    if _beyond_belief(doubt):
        key = f"ask-{doubt.about}-beyond"
    elif doubt.about in EITHER and not _is_number(doubt.span):
        key = f"ask-{doubt.about}-of"
    elif _can_be_effort(doubt, reading):
        key = "ask-at" if _is_led(doubt.span) else "ask-bare-of-set"
    return say.say(key if say.has(key) else "ask-other", span=doubt.span)


def plant_expiry(desk: Desk) -> None:
    """After a day without an answer the coach hears of it."""
    due_at = desk.now + PATIENCE
    desk.plant(EXPIRED, due_at.astimezone(desk.zone).date(), due_at)


def most_important(reading: Reading) -> Ask:
    def weight(doubt: Ask) -> int:
        return WEIGHT.index(doubt.about) if doubt.about in WEIGHT else len(WEIGHT)

    return min(reading.ask, key=weight)


def _choices(desk: Desk, doubt: Ask, reading: Reading) -> Buttons:
    """Label and words, where the answers are few: left or right, the number as reps or as load, the half."""
    say = desk.say
    if doubt.about == "movement":
        return [(say.movement(one), say.movement(one)) for one in family_called(doubt.span, say)]
    choices = {
        "side": ("left", "right"),
        "rom": ("full", "lower", "upper"),
        "reps": ("reps", "load"),
        "load_kg": ("reps", "load"),
        "field": ("reps", "load"),
        whose.ABOUT: (whose.MINE, whose.OTHERS),
    }.get(doubt.about, ())
    if _beyond_belief(doubt):
        return []
    if doubt.about in EITHER and not _is_number(doubt.span):
        return []
    if _can_be_effort(doubt, reading):
        choices = ("load", "effort") if _is_led(doubt.span) else (*choices, "effort")
    shown = _number_of(doubt.span) or doubt.span
    return [(say.say(f"choice-{doubt.about}-{one}", span=shown), _as_text(one)) for one in choices]


def _is_number(span: str) -> bool:
    """A number alone, or behind "at", can be reps or load; with words it is clear which, and only the amount is not."""
    return NUMBER.fullmatch(span) is not None


def _number_of(span: str) -> str:
    """The 10 of "at 10"; "" where there is more than the number."""
    found = NUMBER.fullmatch(span)
    return found[1] if found is not None else ""


def _is_led(span: str) -> bool:
    """ "At 10" is a load or an effort; no one tells repetitions so."""
    return _number_of(span) != "" and not span.strip().lstrip("@+").strip()[:1].isdigit()


def without_doubtful_values(desk: Desk, reading: Reading, text: str) -> Reading:
    """The reading without efforts and loads that may as well be what is asked for."""
    kept = without_doubtful_efforts(reading)
    if any(doubt.about == "load_kg" for doubt in kept.ask) and any(one.load_kg is not None for one in kept.sets):
        alone = read_alone(desk, text)
        kept = replace(kept, sets=_with_loads_told(kept.sets, alone))
    return kept


def without_doubtful_efforts(reading: Reading) -> Reading:
    """The reading without efforts that may as well be loads: what "4x4 at 10" means is asked, and not noted before."""
    loads = [doubt for doubt in reading.ask if doubt.about == "load_kg"]
    efforts = {float(number.replace(",", ".")) for one in loads if (number := _number_of(one.span))}
    sets = tuple(replace(one, rpe=None) if one.rpe in efforts else one for one in reading.sets)
    return replace(reading, sets=sets) if efforts else reading


def _with_loads_told(sets: tuple[SetRead, ...], alone: Reading) -> tuple[SetRead, ...]:
    """The sets without loads that only the plan has: another one is told, and asked for."""
    told = {one.load_kg for one in alone.sets if one.load_kg is not None}
    bare = [one for one in alone.sets if one.load_kg is None]
    named, reps = {one.movement for one in bare} - {None}, {one.reps for one in bare}

    def is_doubtful(one: SetRead) -> bool:
        meant = one.movement in named if named else bool(one.load_kg) or one.reps in reps - {None}
        return meant and one.load_kg not in told

    return tuple(replace(one, load_kg=None) if is_doubtful(one) else one for one in sets)


def _can_be_effort(doubt: Ask, reading: Reading) -> bool:
    """ "The last one was 9": weight, reps or effort. Where the reps are missing, it is hardly the effort."""
    told = [one.reps is not None for one in reading.sets]
    full = any(told) and (all(told) or doubt.about == "reps")  # "5x3, last set 9"
    return doubt.about in EITHER and _number_of(doubt.span) in EFFORTS and full


def is_another_number(question: questions.Question, answer: str) -> bool:
    """ "3" to "20: reps or added weight?" leaves open what 20 is, so that is asked again."""
    doubt = Ask(question.about or "", question.span or "")
    loaded = doubt.span.lstrip().startswith("+")  # "+250" is a load: a number now is the right one
    alone = _is_number(doubt.span) and _is_number(answer) and not _beyond_belief(doubt) and not loaded
    return alone and doubt.about in EITHER and answer.strip() != doubt.span.strip()


def _beyond_belief(doubt: Ask) -> bool:
    """Whether the number is more than anyone does: it is asked for again, not what it means."""
    found = re.search(r"\d+(?:[.,]\d+)?", doubt.span)
    value = float(found[0].replace(",", ".")) if found else 0.0
    most_load = MOST_ADDED if doubt.span.lstrip().startswith("+") else MOST_LOAD
    return value > {"reps": MOST_REPS, "load_kg": most_load}.get(doubt.about, float("inf"))


def _as_text(choice: str) -> str:
    words = {"full": "full range", "lower": "lower half", "upper": "upper half", "load": "weight", "others": "not mine"}
    return words.get(choice, choice)


def completed(desk: Desk, question: questions.Question, answer: str) -> tuple[Reading, str] | None:
    """The earlier message with this answer in it, and its text; None where this is no answer to it.

    It is said when the earlier message was. The facts of the sure part are taken back: the whole report is written
    down again.
    """
    if question.about is None or asked_by_them.is_question(answer) or _names_other_work(desk, answer):
        return None
    sent_at = datetime.fromisoformat(question.data["sent_at"])
    if question.about == whose.ABOUT:
        own = whose.own_part(desk, question.text, answer)
        if not own:
            return None
        _answered(desk, question)
        desk.said_at = sent_at
        return placed(desk, own, context_of(desk, sent_at)).reading, own
    earlier = placed(desk, question.text, context_of(desk, sent_at), question.cause)
    if (mended := _with_its_load(question, answer, earlier)) is not None:
        _answered(desk, question)
        desk.said_at = sent_at
        return placed(desk, mended, context_of(desk, sent_at), question.cause).reading, mended
    if earlier.mends or "correction" in earlier.reading.intents:
        anew = told_anew.in_place_of_old(desk, answer, earlier.reading.performed_on)
        if anew is not None:
            _answered(desk, question)
            return anew, answer
    if question.about == "dates" and (not _tells_days(desk, answer) or _has_its_own(desk, answer, earlier.reading)):
        return None  # "nope, all good" is no day, and nobody is away because of it
    if question.about not in OF_PAIN and _tells_pain(desk, answer):
        return None  # "nada de dolor" is no answer to "reps or weight?"
    doubt = Ask(question.about, question.span or "")
    whole: Reading | None = earlier.reading
    if earlier.mends and doubt.about == "reps" and (filled := followups.filled(earlier.reading, answer)) is not None:
        whole = filled
    elif not is_another_number(question, answer):
        whole = complete(question.text, earlier.reading, doubt, answer, earlier.context)
    if whole is None:
        return None
    told = followups.told_on(desk, whole.performed_on, question.cause) if whole.performed_on is not None else []
    otherwise = followups.told_otherwise(told, whole, question.text, earlier.context)
    _answered(desk, question)
    desk.said_at = sent_at
    return (otherwise or earlier.again(whole)).reading, question.text


def _with_its_load(question: questions.Question, answer: str, earlier: followups.Placed) -> str | None:
    """The earlier message with the load put right that it told, "no wait, it was 13.75" to "9: reps or effort?"."""
    asked = _number_of(question.span or "")
    alone = value_alone(answer, earlier.context) if asked and question.about in EITHER else None
    told = {one.load_kg for one in earlier.reading.sets if one.load_kg}
    if alone is None or not alone.puts_right or len(told) != 1 or alone.value == float(asked.replace(",", ".")):
        return None
    (load_kg,) = told
    here = [one for one in FIGURE.finditer(question.text) if _is_load(one[0], load_kg, earlier.context)]
    if "load_kg" not in alone.fields or len(here) != 1:
        return None
    return f"{question.text[: here[0].start()]}{alone.span}{question.text[here[0].end() :]}"


def _is_load(figure: str, load_kg: float, context: Context) -> bool:
    value = float(figure.replace(",", "."))
    return abs((value * KG_PER_LB if context.unit == "lb" else value) - load_kg) < SAME_LOAD_KG


def _names_other_work(desk: Desk, answer: str) -> bool:
    """Whether an answer tells sets of a movement that it names and that is not known for sure: a report of its own."""
    alone = read_alone(desk, answer)
    named = any(doubt.about == "movement" and doubt.span[:1].isalpha() for doubt in alone.ask)
    return named and any(one.reps is not None or one.hold_s is not None for one in alone.sets)


def _tells_pain(desk: Desk, answer: str) -> bool:
    """Whether an answer speaks of pain and of no sets: it is a message of its own."""
    alone = read_alone(desk, answer)
    figures = any(sign.isdigit() for sign in answer)  # a number alone is what was asked for
    placed = any(one.site is not None or not figures for one in alone.pain)
    return (placed or bool(alone.red_flags)) and not alone.sets


def _has_its_own(desk: Desk, answer: str, earlier: Reading) -> bool:
    """Whether an answer says what the earlier message did not: "only bands this week" is a message of its own."""
    alone = read_alone(desk, answer)
    named = any(one.movement is not None for one in alone.sets)  # "28/2 - 3/3" looks like sets, of no movement
    return named or bool(set(alone.intents) & OF_ITS_OWN - set(earlier.intents))


def _tells_days(desk: Desk, answer: str) -> bool:
    """Whether an answer names a day, or is hardly more than figures that can be one: not "see you at 18"."""
    message = message_of(desk, answer)
    words = [token for token in message.tokens if token.kind == "word" and token.value is None]
    figures = any(sign.isdigit() for sign in answer) and len(words) <= MOST_BESIDE_FIGURES
    return figures or bool(named_days(message).days)


def _answered(desk: Desk, question: questions.Question) -> None:
    """It is settled, and what the sure part of its message brought is taken back: it is told whole now."""
    assert question.id is not None
    questions.close(desk.tx, question.id, desk.now)
    if question.cause is not None:
        facts.withdraw_caused_by(desk.tx, desk.id, question.cause, desk.now)
        desk.forget()
