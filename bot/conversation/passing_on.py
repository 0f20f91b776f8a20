"""Words between athlete and coach, passed on as they are."""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache

from bot.conversation.coach_vocabulary import plain
from bot.conversation.desk import Desk
from bot.conversation.placing import context_of
from bot.conversation.words import phrases
from planner import ladders
from planner.facts import Clip, PlannedSet, Side
from storage import notes, outbox

ONE_REP = "1 rep"
SIDES: tuple[Side, Side] = ("left", "right")


def to_coach(desk: Desk, text: str) -> str:
    """Pass the athlete's message to the coach; the athlete's receipt comes back."""
    notes.pass_on(desk.tx, desk.id, "to_coach", text, desk.now, desk.cause)
    say = desk.say_coach
    desk.tell_coach(say.say("passed-to-coach", name=desk.person.name, handle=desk.athlete.handle, text=text))
    return desk.say.say("passed-on") if desk.coach_is_reached else desk.heard


def is_for_coach_by_name(desk: Desk, text: str) -> bool:
    """ "Tell Inês the rings are back": words for the coach, who is called by name."""
    said, name = plain(text.strip()), re.escape(plain(desk.coach.name.split()[0]))
    return re.match(rf"{_heads()}\s+{name}\b", said) is not None


@cache
def _heads() -> str:
    heads = "|".join(re.escape(plain(head)) for head in phrases("to_coach")["heads"])
    return rf"(?:(?:please|bitte|por favor)\s+)?(?:{heads})"


def to_athlete(desk: Desk, text: str) -> bool:
    """The coach's words to an athlete. False: they cannot be reached."""
    notes.pass_on(desk.tx, desk.id, "to_athlete", text, desk.now, desk.cause)
    return desk.tell(desk.say.say("from-coach", name=desk.coach.name, text=text), importance=outbox.REPLY)


def clip(desk: Desk, caption: str, media: str | None) -> str:
    """A clip goes to the coach with what it shows, and a button that says that it was looked at."""
    movement, side = _shows(desk, caption)
    clip_id = desk.add(Clip(desk.said_on, movement, side, seen_by_coach=False), media=media)
    say = desk.say_coach
    shown = say.movement(movement) if movement else "–"
    if movement and side:
        shown = say.say("clip-side", movement=shown, side=say.say(f"side-{side}"))
    desk.tell_coach(
        say.say("clip-for-coach" if caption.strip() else "clip-for-coach-silent", name=desk.person.name, text=caption)
        + "\n"
        + say.say("clip-kept-as", shown=shown),
        media=media,
        buttons=[(say.say("button-seen"), f"v:{desk.id}:{clip_id}")],
    )
    return desk.say.say("clip-passed-on") if desk.coach_is_reached else desk.heard


def _shows(desk: Desk, caption: str) -> tuple[str | None, Side | None]:
    """The movement and side that the caption names; else the movement of the athlete's rung, no side."""
    rungs = [ladders.get(one.ladder).by_id[one.rung] for one in desk.review.ladders]
    skill = next((rung.movement for rung in rungs if rung.work in ("skill", "hold")), None)
    named = desk.say.movement(skill) if skill else ""
    # A family name ("archers") is the one of the rung, whatever the day.
    asked = tuple(PlannedSet(skill, "skill", 1, side=side) for side in SIDES) if skill else None
    context = replace(context_of(desk, desk.said_at), today=asked)
    # The reader names movement and side of sets, so the caption is given one where it has none.
    for words in (caption, f"{caption} {ONE_REP}", f"{named} {caption} {ONE_REP}") if caption.strip() else ():
        found = desk.read(words, context).sets
        if found and found[0].movement is not None:
            return found[0].movement, found[0].side
    return skill, None
