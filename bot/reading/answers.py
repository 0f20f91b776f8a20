"""A short answer to a question asked back ("20", "reps", "the first one", "kg") completes the reading it belongs to.

The answer is put into the earlier words where the question stood, and the whole is read again: so an answer can say
everything that a message can, and nothing else is guessed.
"""

from __future__ import annotations

from dataclasses import replace

from bot.reading.answered import names_of, rewritten
from bot.reading.assemble import read
from bot.reading.message import Message, read_message
from bot.reading.movements import find_movements
from bot.reading.reading import Ask, Context, Reading

MOST_WORDS = 12  # a longer answer is a message of its own
OWN_WILL = frozenset(
    {
        "plan_today",
        "plan_week",
        "why",
        "progress",
        "move",
        "missed",
        "away",
        "ill",
        "undo",
        "stop",
        "help",
        "for_coach",
        "pause",
    }
)


def complete(earlier_text: str, earlier: Reading, ask: Ask, answer: str, context: Context) -> Reading | None:
    """The earlier reading with the answer in it, or None where the answer is none (a new message).

    Questions that stay open are in `ask` of what comes back; their spans are words of either text.
    """
    said = read_message(answer, replace(context, language=context.language or earlier.language))
    if not said.tokens or len(said.tokens) > MOST_WORDS:
        return None
    names = names_of(said)
    if "unknown" in names:
        return replace(earlier, ask=tuple(one for one in earlier.ask if one != ask))
    alone = read(answer, context)
    if set(alone.intents) & OWN_WILL and ask.about not in ("dates", "performed_on"):
        return None
    if _is_report(said, alone, earlier, ask) or _is_of_the_body(said, alone, ask):
        return None
    text = rewritten(earlier_text, earlier, ask, said)
    if text is None:
        return None
    return _merged(earlier_text, earlier, ask, answer, read(text, context))


def _is_report(said: Message, alone: Reading, earlier: Reading, ask: Ask) -> bool:
    """Whether an answer tells sets of a movement: a report of its own, unless sets of that movement were asked for."""
    told = {one.movement for one in alone.sets if one.reps is not None or one.hold_s is not None}
    if not told or not find_movements(said):
        return False
    if ask.about in ("sets", "reps", "side", "hold_s", "rom"):
        return not told <= {one.movement for one in earlier.sets} | {None}
    return True


def _is_of_the_body(said: Message, alone: Reading, ask: Ask) -> bool:
    """Whether an answer's numbers are all of pain, weight, sleep or time, and none was asked: "left elbow 3"."""
    if alone.red_flags:
        return True
    scored = [one for one in alone.pain if one.site is not None and one.score is not None]
    told = {"bodyweight_kg": alone.bodyweight_kg, "sleep_h": alone.sleep_h, "duration_min": alone.duration_min}
    doubted = {one.about for one in alone.ask}
    measured = [name for name, value in told.items() if value is not None or name in doubted]
    if ask.about in ("score", "pain", *measured) or not (scored or measured):
        return False
    return sum(token.value is not None for token in said.tokens) <= len(scored) + len(measured)


def _merged(text: str, earlier: Reading, ask: Ask, answer: str, new: Reading) -> Reading | None:
    """The new reading, unless it is no better than the earlier one."""
    still = {(one.about, one.span) for one in new.ask}
    if (ask.about, ask.span) in still and len(new.ask) >= len(earlier.ask):
        return None
    asks = []
    for one in new.ask:
        if one.span in text or one.span in answer:
            asks.append(one)
        else:
            asks.append(Ask(one.about, ask.span if one.about == ask.about else answer.strip()))
    performed = new.performed_on
    if ask.about != "performed_on" and earlier.performed_on is not None:
        performed = earlier.performed_on
    unread = tuple(piece for piece in new.unread if piece in text or piece in answer)
    return replace(new, ask=tuple(asks), performed_on=performed, unread=unread, language=earlier.language)
