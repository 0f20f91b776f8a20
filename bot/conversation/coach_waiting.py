"""One tap for who waits: messages that need no answer, clips to be seen, a word to an athlete who has gone silent."""

from __future__ import annotations

from collections.abc import Sequence
from zoneinfo import ZoneInfo

from bot.conversation.desk import Buttons, Desk
from bot.conversation.office import Office
from bot.wording import Wording
from planner.facts import Clip, Record
from planner.plan import Review
from storage import notes
from storage.notes import PassedOn

SETTLE, ASK, SEE = "n", "k", "u"
SILENT = "silent"
SHOWN = 2  # of an athlete's messages, the newest
LONGEST = 120  # letters of a message that is quoted


def in_words(waiting: Sequence[PassedOn], zone: ZoneInfo, say: Wording) -> str:
    """What an athlete wrote and since when it waits."""
    quoted = say.listed([say.quoted(_short(one.text)) for one in waiting[-SHOWN:]])
    day = waiting[0].passed_at.astimezone(zone).date()
    return say.say("summary-unanswered", count=len(waiting), day=day, words=quoted)


def _short(text: str) -> str:
    words = " ".join(text.split())
    return words if len(words) <= LONGEST else words[:LONGEST].rsplit(" ", 1)[0] + " …"


def settle_button(athlete_id: int, waiting: Sequence[PassedOn], say: Wording) -> Buttons:
    """The newest message is named, so that one which comes later is not settled unseen."""
    return [(say.say("button-settle"), f"{SETTLE}:{athlete_id}:{waiting[-1].id}")]


def clips_to_see(known: Record) -> list[Clip]:
    """An athlete's clips that the coach has not looked at, oldest first."""
    waiting = [one for one in known.clips if not one.seen_by_coach and one.fact is not None]
    return sorted(waiting, key=lambda one: one.fact or 0)


def clips_in_words(clips: Sequence[Clip], say: Wording) -> str:
    return say.say("summary-clips", count=len(clips), day=say.day(clips[0].on))


def see_button(athlete_id: int, clips: Sequence[Clip], say: Wording) -> Buttons:
    """The newest clip is named, so that one which comes later is not marked unseen by anyone."""
    return [(say.say("button-seen"), f"{SEE}:{athlete_id}:{clips[-1].fact}")]


def ask_button(athlete_id: int, say: Wording) -> Buttons:
    return [(say.say("button-ask"), f"{ASK}:{athlete_id}")]


def is_silent(review: Review) -> bool:
    return any(one.code == SILENT for one in review.alerts)


def settle(office: Office, desk: Desk, newest: str) -> None:
    known = newest.isascii() and newest.isdecimal() and len(newest) < 18
    count = notes.settle(desk.tx, desk.id, int(newest), desk.now) if known else 0
    office.answer("settled" if count else "decided-nothing", name=desk.person.name, count=count)


def ask(office: Office, desk: Desk) -> None:
    """A friendly word to who is silent, in the coach's name, once a day."""
    if not is_silent(desk.review):
        office.answer("decided-nothing", name=desk.person.name)
        return
    text = desk.say.say("asked-by-coach", coach=office.coach.name)
    reached = desk.tell(text, cause=f"asked:{desk.id}:{desk.today.isoformat()}")
    office.answer("asked" if reached else "asked-already", name=desk.person.name)
