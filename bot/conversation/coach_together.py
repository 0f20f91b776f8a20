"""One order for several athletes, carried out for each and answered in one message: for whom it was done, for whom not
and why."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence

from bot.conversation.coach_words import Command
from bot.conversation.desk import Desk, Gathered
from bot.conversation.office import Office
from bot.wording import Wording

Act = Callable[[Office, Command, Desk], None]
WHOM = "\x00"  # stands for the name, so that the same said of two athletes is said once


def carry_out(office: Office, orders: Sequence[tuple[str, Command]], act: Act) -> None:
    """Carry out each order by `act`. Doubts that have a button of their own are asked after the one answer."""
    office.desks()  # at hand at once
    done, undone = dict[str, list[str]](), dict[str, list[str]]()
    doubts: list[tuple[str, Gathered]] = []
    office.brief = True
    for handle, command in orders:
        desk = office.desk(handle)
        assert desk is not None  # orders are made from the coach's own rows
        before = desk.record
        with office.mail.gathering(office.coach) as said:
            act(office, command, desk)
        doubts += [(handle, one) for one in said if one.buttons]
        told = " ".join(line for one in said if not one.buttons for line in one.text.splitlines())
        if told:
            about = done if desk.record != before else undone
            about.setdefault(_without_name(told, desk.person.name), []).append(desk.person.name)
        desk.leave()
    office.brief = False
    lines = in_words(done, undone, len(orders), office.say)
    if lines:
        office.mail.post(office.coach, "\n".join(lines))
    for handle, one in doubts:
        office.mail.post(office.coach, one.text, about=handle, buttons=one.buttons)


def in_words(done: dict[str, list[str]], undone: dict[str, list[str]], of: int, say: Wording) -> list[str]:
    """Lines for the coach. `done`, `undone`: what was said, with `WHOM` for the name, to the names it was said of."""
    count = sum(map(len, done.values()))
    if not count:
        return [say.say("together-nobody"), *_listed(undone, say)] if undone else []
    lines = [say.say("together-done", count=count, of=of), *_listed(done, say)]
    return [*lines, say.say("together-not"), *_listed(undone, say)] if undone else lines


def _listed(told: dict[str, list[str]], say: Wording) -> list[str]:
    return [f"· {text.replace(WHOM, say.listed(names))}" for text, names in told.items()]


def _without_name(text: str, name: str) -> str:
    return re.sub(rf"(?<!\w){re.escape(name)}(?!\w)", WHOM, text)
