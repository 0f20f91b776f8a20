"""Words between athlete and coach, passed on as they are."""

from __future__ import annotations

from bot.conversation.desk import Desk
from storage import notes, outbox


def to_coach(desk: Desk, text: str) -> str:
    """Pass the athlete's message to the coach; the athlete's receipt comes back."""
    notes.pass_on(desk.tx, desk.id, "to_coach", text, desk.now, desk.cause)
    say = desk.say_coach
    desk.tell_coach(say.say("passed-to-coach", name=desk.person.name, handle=desk.athlete.handle, text=text))
    return desk.say.say("passed-on")


def to_athlete(desk: Desk, text: str) -> None:
    """The coach's words to an athlete."""
    notes.pass_on(desk.tx, desk.id, "to_athlete", text, desk.now, desk.cause)
    desk.tell(desk.say.say("from-coach", name=desk.coach.name, text=text), importance=outbox.REPLY)


def clip(desk: Desk, caption: str, media: str | None) -> str:
    """A clip goes to the coach with what it shows."""
    from planner.facts import Clip

    movement, side = _shows(desk, caption)
    desk.add(Clip(desk.today, movement, side, seen_by_coach=False), media=media)
    say = desk.say_coach
    key = "clip-for-coach" if caption.strip() else "clip-for-coach-silent"
    desk.tell_coach(say.say(key, name=desk.person.name, text=caption), media=media)
    return desk.say.say("clip-passed-on")


def _shows(desk: Desk, caption: str):  # type: ignore[no-untyped-def]
    """The movement and side the caption names; else the skill movement of today's plan, no side."""
    from bot.conversation.asking import context_of
    from bot.reading import read

    found = read(caption, context_of(desk, desk.now)).sets if caption.strip() else ()
    if found and found[0].movement is not None:
        return found[0].movement, found[0].side
    skill = [one for one in desk.review.today.sets if one.part == "skill"]
    return (skill[0].movement if skill else None), None
