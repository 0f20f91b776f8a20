"""Words that refer to the last order: "no, make it 12.5", "the same for jon", "and friday too".

What they say takes the place of what the order said; the rest of it stays. A correction puts the last order aside, and
an undo brings it back.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from bot.conversation import coach_everyone, coach_remembered, coach_several, coach_together, coach_whole
from bot.conversation.coach_remembered import Last
from bot.conversation.coach_several import Names
from bot.conversation.coach_steps import MOST
from bot.conversation.coach_together import Act
from bot.conversation.coach_vocabulary import marks, vocabulary, words_of
from bot.conversation.coach_words import Command, parse
from bot.conversation.office import Office
from bot.conversation.reasons import orders_in_words
from storage import facts

CORRECTED = frozenset("sets lock hold exclude pause deload move".split())
KINDS = ("correct", "doubt", "same", "too")


@dataclass(frozen=True)
class Follow:
    """Handle and order of each; `instead_of`: whose part of the last order is put aside for them; `for_all`: it is for
    everyone."""

    last: Last
    orders: tuple[tuple[str, Command], ...]
    instead_of: tuple[str, ...] = ()
    for_all: bool = False


def meant(office: Office, text: str, names: Names) -> Follow | None:
    """What a message makes of the last order; None where it refers to none, or is not understood so."""
    language = office.coach.language
    said, kinds = referring(text, language)
    if not kinds or "?" in text:
        return None
    last = coach_remembered.last(office)
    if last is None:
        return None
    corrects = "correct" in kinds or "doubt" in kinds
    if corrects and (last.command.verb not in CORRECTED or not _stands(office, last)):
        return None
    handles, pieces = _for_whom(said, names, language)
    if handles and _is_order_of_its_own(office, text, names):
        return None
    # A bare "no" before a movement leaves it out: "no archers".
    sure = kinds != {"doubt"}
    command = last.command if handles and not pieces else _with(last, pieces, names, office, sure)
    if command is None:
        return None
    if not (corrects or handles) and _when(command) == _when(last.command):
        return None  # "and 12.5" adds nothing
    orders = tuple((handle, replace(command, handle=handle)) for handle in handles or last.handles)
    for_all = bool(coach_everyone.orders(said, names, language)) or (last.of_all and not handles)
    named = tuple(handles) if handles and set(handles) <= set(last.handles) else last.handles
    return Follow(last, orders, named if corrects else (), for_all)


def _when(command: Command) -> tuple[object, ...]:
    return command.day, command.days, command.every


def carry_out(office: Office, follow: Follow, act: Act) -> None:
    """Carry out what follows; the last order stands again where nothing came of what should take its place."""
    aside = {handle: _put_aside(office, handle, follow.last.cause) for handle in follow.instead_of}
    meant = [handle for handle, _ in follow.orders]
    before = {handle: desk.record for handle in meant if (desk := office.desk(handle)) is not None}
    if len(follow.orders) > 1:
        coach_together.carry_out(office, follow.orders, act)
    else:
        _one(office, follow, act, aside)
    if follow.instead_of and all(desk.record == before[one] for one in meant if (desk := office.desk(one)) is not None):
        for handle in follow.instead_of:
            desk = office.desk(handle)
            if desk is not None and office.incoming.id is not None:
                facts.restore(desk.tx, desk.id, office.incoming.id)
                desk.forget()
        return
    for handle in follow.instead_of:
        desk = office.desk(handle) if handle not in meant else None
        if desk is not None:
            office.confirm(desk, "taken-back", what=aside[handle])


def _one(office: Office, follow: Follow, act: Act, aside: dict[str, str]) -> None:
    ((handle, command),) = follow.orders
    desk = office.desk(handle)
    assert desk is not None  # orders are made from the coach's own rows
    before = desk.record
    with office.mail.gathering(office.coach) as said:
        act(office, command, desk)
    if said and handle in aside and desk.record != before:
        said[0] = replace(said[0], text="\n".join([said[0].text, office.say.say("order-instead", what=aside[handle])]))
    for one in said:
        office.mail.post(office.coach, one.text, about=handle, buttons=one.buttons)


def _put_aside(office: Office, handle: str, cause: int) -> str:
    """Withdraw what an order brought an athlete, until the message that corrects it is taken back; it in words."""
    desk = office.desk(handle)
    assert desk is not None  # remembered handles are the coach's own
    brought = facts.caused_by(desk.tx, desk.id, cause)
    numbers = {fact for kind, fact in brought if kind == "order"}
    words = orders_in_words((one for one in desk.record.orders if one.fact in numbers), desk.say_coach)
    for kind, fact in brought:
        facts.withdraw(desk.tx, kind, fact, desk.said_at, by=office.incoming.id)
    desk.forget()
    return words or desk.say_coach.say("order-of-day", day=desk.say_coach.day(desk.said_on))


def _stands(office: Office, last: Last) -> bool:
    desks = [office.desk(handle) for handle in last.handles]
    return any(desk is not None and facts.caused_by(desk.tx, desk.id, last.cause) for desk in desks)


def referring(text: str, language: str) -> tuple[str, set[str]]:
    """The message without the words that refer to the last order, and which kinds of them it has."""
    table, kinds = vocabulary(language, "follow"), set[str]()
    said = f" {text.strip()} "
    for instead in sorted(table["instead_of"], key=len, reverse=True):
        said = re.sub(rf"(?i)(?<=\s){re.escape(instead)}\s+[+@]?\d+(?:[.,]\d+)?(?=[\s,.!])", " ", said)
    more = True
    while more:
        more = False
        for kind in KINDS:
            for phrase in sorted(table[kind], key=len, reverse=True):
                found = re.match(rf"(?i)[\s,.!]*{re.escape(phrase)}(?=[\s,.!:]|$)(?P<pause>\s*[,:.!])?", said)
                if found:
                    # "No, dips" corrects; "no dips" leaves them out.
                    kinds.add("correct" if kind == "doubt" and found["pause"] else kind)
                    said, more = f" {said[found.end() :].lstrip(' ,.!:')}", True
                    break
    for kind in ("too", "correct"):
        for phrase in sorted(table[f"{kind}_behind"], key=len, reverse=True):
            found = re.search(rf"(?i)[\s,]+{re.escape(phrase)}[\s.!]*$", said)
            if found:
                kinds.add(kind)
                said = said[: found.start()]
    return said.strip(), kinds


def _for_whom(said: str, names: Names, language: str) -> tuple[list[str], str]:
    """The handles named, and the words beside them that say something."""
    small = set(marks(language, "filler"))
    everyone = coach_everyone.orders(said, names, language)
    if everyone:
        handles, rest = [handle for handle, _ in everyone], everyone[0][1].replace(everyone[0][0], " ", 1)
    else:
        found = coach_several.row(names, language, least=1).search(said) if names else None
        handles = coach_several.named(found[0], names) if found else []
        rest = f"{said[: found.start()]} {said[found.end() :]}" if found and handles else said
    return handles, rest.strip(" ,.!") if set(words_of(rest)) - small else ""


def _is_order_of_its_own(office: Office, text: str, names: Names) -> bool:
    command = parse(text, names, office.coach.language, office.said_on)
    return command is not None and command.verb in coach_whole.ORDERS and not coach_whole.odd_in(command)


def _with(last: Last, pieces: str, names: Names, office: Office, sure: bool) -> Command | None:
    """The last order with what the pieces say in it; None where they say something else.

    Args:
        sure: Whether words that are no numbers and no days may be of it: "no, dips".
    """
    command, language, handle = last.command, office.coach.language, last.handles[0]
    phrase = vocabulary(language)[command.verb][0]
    part = parse(f"{handle} {phrase} {pieces}", [(handle, handle)], language, office.said_on)
    if not pieces or part is None or part.verb != command.verb or coach_several.is_any_named(pieces, names):
        return None
    if (part.odd or (command.verb in coach_whole.NAMING and part.rest)) and not sure:
        return None
    desk = office.desk(handle)
    if desk is None or coach_whole.odd_in(coach_whole.resolved(office, part, desk)):
        return None
    whole = replace(
        _with_load(command, part),
        scheme=part.scheme or command.scheme,
        day=None if part.every or part.days else part.day or command.day,
        days=part.days or (() if part.day is not None or part.every else command.days),
        since=part.since if part.every or part.day is not None else command.since,
        until=part.until or command.until,
        every=frozenset() if part.day is not None else part.every or command.every,
        odd=part.odd or command.odd,
        rest=part.rest if part.odd or (command.verb in coach_whole.NAMING and part.rest) else command.rest,
    )
    return whole if whole != command else None


def _with_load(command: Command, part: Command) -> Command:
    """ "No, 2.5" after a step of 1.25 is a step of 2.5; "+12.5" after a load is a load."""
    step, unit = command.step, part.unit or command.unit
    if part.scheme is not None:
        return replace(command, step=None, load=part.load if step is not None or part.load else command.load, unit=unit)
    if part.step is not None:
        if step is None and command.load is not None and part.step.what == "load" and part.step.by > 0:
            return replace(command, load=part.step.by, unit=part.step.unit or command.unit)
        return replace(command, step=part.step, scheme=None, load=None)
    if part.load is None:
        return command
    if step is not None and step.what == "load" and part.load <= MOST["kg"]:
        unit_of = step.unit if part.unit is None else "lb" if part.unit == "lb" else "kg"
        return replace(command, step=replace(step, by=part.load if step.by > 0 else -part.load, unit=unit_of))
    return replace(command, step=None, load=part.load, unit=unit)
