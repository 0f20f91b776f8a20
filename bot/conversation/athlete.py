"""What an athlete says: a press, a clip or words, and who in the house answers it."""

from __future__ import annotations

from dataclasses import replace

import structlog

from bot.conversation import (
    alerts,
    answers,
    block_asked,
    cut_short,
    for_the_coach,
    own_settings,
    pain_questions,
    passing_on,
    plans,
    privacy,
    taken_out,
    told_back,
    work_asked,
)
from bot.conversation.answers import Said
from bot.conversation.desk import Buttons, Desk
from bot.conversation.reply import reply_to
from storage.inbox import Incoming

log = structlog.get_logger(__name__)

LONGEST_READ = 10_000


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
    fresh = said.to is None and not quiet
    at_once = _at_once(desk, said.text) if fresh else None
    if at_once is not None:
        answer, buttons = at_once
        desk.tell(answer, buttons=buttons)
        return
    found = answers.understood(desk, said)
    if found is None:
        desk.tell(desk.say.say("number-alone", number=answers.number_in(said.text)))
        return
    asked = found.asks
    if asked is None and quiet:
        # A caption says what a clip shows; what is unclear in it is not worth a question.
        found = replace(found, reading=replace(found.reading, ask=()))
    elif asked is None and fresh:
        found = replace(found, reading=work_asked.without_what_is_asked(desk, found.reading, said.text))
        asked = work_asked.answered(desk, found.reading, said.text)
        if asked is None:
            found = replace(found, reading=work_asked.without_a_move(desk, found.reading, said.text))
    if asked is not None:
        question, buttons = asked
        desk.tell(question, buttons=buttons)
        return
    reply_to(desk, found, quiet)


def _at_once(desk: Desk, text: str) -> tuple[str, Buttons] | None:
    """The answer to what tells of no training: a question in plain words, a setting, a report taken out."""
    if told_back.is_asked(text):
        return told_back.in_words(desk), []
    if (what := block_asked.about(text)) is not None:
        return block_asked.in_words(desk, what, desk.say), []
    if told_back.is_of_the_next(text):
        return plans.following(desk), []
    if told_back.is_of_effort(text):
        return desk.say.say("rpe-means"), []
    if for_the_coach.are_days(text):
        return for_the_coach.offer(desk, text)
    for carried_out in (own_settings.carried_out, taken_out.carried_out, cut_short.answered):
        answer = carried_out(desk, text)
        if answer is not None:
            return answer, []
    return None
