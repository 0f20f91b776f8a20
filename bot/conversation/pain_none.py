"""No pain, in answer to the question for it: "nope", "all good", "no, what's tomorrow?"; a thumb up is asked about."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date
from typing import cast

from bot.conversation.desk import Buttons, Desk
from bot.conversation.pain_questions import buttons_of, places_of
from bot.conversation.placing import read_alone
from bot.conversation.words import phrases
from bot.reading.reading import PainRead, Reading
from planner.facts import Side
from storage.questions import Question

WORD = re.compile(r"[^\W\d_]+")
THUMBS = re.compile(r"[\s\u200d\ufe0f\U0001f3fb-\U0001f3ff👍👌💪🙂😊✅🆗]+")
DENIED = re.compile(r"(?i)\bno(?:\s+\w+)?\s+(?:good|fine|bien)\b")
AS_ASKED = re.compile(r"(?i)\s*¿?\s*(?:any |algún |algun )?(?:pain|aches|schmerz|schmerzen|dolor|dolores)\s*\?\s*")
LED = re.compile(r"\s*(?P<word>[^\W\d_]+)\s*(?:[,.;!–—-]\s*(?P<rest>.*))?", re.DOTALL)


def told(desk: Desk, asked: Question, text: str) -> Reading | None:
    """Zero at every place asked for, with what else a message says behind a clear no; None where it is no such. The
    question may stand before it, "pain? no"."""
    text = AS_ASKED.sub("", text)
    if _is_clear(text):
        return _zero(asked, Reading(("pain",), language=desk.athlete.language))
    led = LED.fullmatch(text)
    if led is None or not led["rest"] or led["word"].casefold() not in phrases("no_pain")["no"]:
        return None
    words = set(WORD.findall(led["rest"].casefold()))
    rest = read_alone(desk, led["rest"])
    if rest.pain or rest.red_flags or rest.sets or rest.ask or words & set(phrases("no_pain")["but"]):
        return None
    if any(sign.isdigit() for sign in led["rest"]):
        return None
    others = tuple(one for one in rest.intents if one not in ("smalltalk", "unknown", "pain"))
    return _zero(asked, replace(rest, intents=("pain", *others)))


def is_vague(text: str) -> bool:
    """ "Ok", a thumb: agreement with a question that none is an answer to."""
    words = set(WORD.findall(text.casefold()))
    if any(sign.isdigit() for sign in text):
        return False  # "ok 2", "ok 22.5": the number says what it is
    return (bool(words) and words <= set(phrases("no_pain")["vague"])) or THUMBS.fullmatch(text) is not None


def ask_again(desk: Desk, asked: Question) -> tuple[str, Buttons]:
    assert asked.id is not None
    return desk.say.say("ask-pain-none"), buttons_of(asked.id, desk.say)


def _is_clear(text: str) -> bool:
    words, known = set(WORD.findall(text.casefold())), phrases("no_pain")
    if any(sign.isdigit() for sign in text) or "?" in text:
        return False
    said = " ".join(WORD.findall(text.casefold()))
    if said in known["whole"] or (words & set(known["all"]) and words <= {*known["all"], *known["vague"]}):
        return True
    if DENIED.search(text):
        return False  # "no good"
    return bool(words & {*known["no"], *known["good"]}) and words <= {*known["no"], *known["good"], *known["small"]}


def _zero(asked: Question, reading: Reading) -> Reading:
    when = asked.data.get("when")
    entries = tuple(
        PainRead(one["site"], cast(Side | None, one.get("side")), 0.0, when) for one in places_of(asked)
    ) or (PainRead(None, None, 0.0, when),)
    on = asked.data.get("on")
    return replace(reading, pain=entries, performed_on=date.fromisoformat(on) if on else None)
