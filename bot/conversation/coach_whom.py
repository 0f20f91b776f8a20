"""Orders that wait for a press: whom "mria 4x3 at 20" is for, with a button for each who can be meant, or whether an
order is wanted all the same."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import timedelta

from rapidfuzz.distance import OSA

from bot.conversation.coach_vocabulary import words_of
from bot.conversation.desk import Buttons, Desk
from bot.conversation.office import Office
from storage import questions

KIND = "whom"
PRESS = "w"
MOST_SHOWN = 8  # athletes offered where no name is near
SHORT, LONG = 3, 7  # letters of a name: with so few only two in the wrong order are a slip, with so many two are
ANSWERABLE = timedelta(days=1)

Names = Sequence[tuple[str, str]]


def near(text: str, names: Names, is_whole: Callable[[str, str], bool]) -> list[tuple[str, str]]:
    """The handles whose name a word of the message nearly is, each with the message as it would be then.

    Args:
        is_whole: Whether words are a whole order for a handle. Other words are talk, whatever they look like.
    """
    found: dict[str, str] = {}
    for word in words_of(text.replace(":", " : ")):
        for handle, name in names:
            called = {handle, *name.casefold().split()[:1]}
            if handle not in found and any(_is_slip(word, one) for one in called):
                meant = _instead(text, word, handle)
                if is_whole(meant, handle):
                    found[handle] = meant
    return list(found.items())


def ask(office: Office, orders: Sequence[tuple[str, str]]) -> None:
    """The question whom, with a button for each handle; what a press would carry out is kept with it."""
    rows = {row.handle: row for row in office.rows}
    asked = questions.ask(
        office.mail.tx, office.coach, KIND, office.mail.now, text=office.incoming.text, data={"orders": dict(orders)}
    )
    buttons: Buttons = [
        (rows[handle].name, f"{PRESS}:{rows[handle].id}:{asked}") for handle, _ in orders if handle in rows
    ]
    office.mail.post(office.coach, office.say.say("coach-whom"), buttons=buttons)


def ask_whether(office: Office, desk: Desk, doubt: str) -> None:
    """The doubt about the order that is carried out just now, with the button that gives it all the same."""
    asked = questions.ask(
        office.mail.tx,
        office.coach,
        KIND,
        office.mail.now,
        text=office.order,
        data={"orders": {desk.athlete.handle: office.order}, "sure": True},
    )
    buttons: Buttons = [(desk.say_coach.say("button-all-the-same"), f"{PRESS}:{desk.id}:{asked}")]
    desk.tell_coach(doubt, buttons=buttons)


def everyone(office: Office, text: str) -> list[tuple[str, str]]:
    """An order that names nobody, for each of a small roster; none where they are too many for buttons."""
    if len(office.rows) > MOST_SHOWN:
        return []
    return [(row.handle, f"{row.handle} {text.strip()}") for row in office.rows]


def pressed(office: Office, data: str) -> str | None:
    """The order that a button stands for; None where it is forged, or its time is over."""
    _, athlete_id, asked_id = [*data.split(":"), "", ""][:3]
    row = next((row for row in office.rows if str(row.id) == athlete_id), None)
    asked = questions.find(office.mail.tx, office.coach, int(asked_id)) if _is_id(asked_id) else None
    if row is None or asked is None or asked.id is None or asked.kind != KIND or asked.answered_at is not None:
        return None
    if office.mail.now - asked.asked_at > ANSWERABLE:
        return None
    questions.close(office.mail.tx, asked.id, office.mail.now)
    office.sure = bool(asked.data.get("sure"))
    order: str | None = asked.data["orders"].get(row.handle)
    return order


def _is_id(text: str) -> bool:
    return text.isascii() and text.isdecimal() and len(text) < 18


def _is_slip(word: str, name: str) -> bool:
    if word == name or len(word) < SHORT:
        return False
    if len(name) <= SHORT:
        return sorted(word) == sorted(name) and word[0] == name[0]
    return OSA.distance(word, name) <= (2 if len(name) >= LONG else 1)


def _instead(text: str, word: str, handle: str) -> str:
    """The message with the handle in the place of a word."""
    parts = text.replace(":", " : ").split()
    at = next(place for place, part in enumerate(parts) if part.strip(",.;!?()").casefold().startswith(word))
    return " ".join([*parts[:at], handle, *parts[at + 1 :]]).replace(" : ", ": ")
