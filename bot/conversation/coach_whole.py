"""Whether an order is whole: every word of it understood, movements and ladders named as the athlete has them."""

from __future__ import annotations

from dataclasses import replace

from bot.conversation.coach_vocabulary import words_of
from bot.conversation.coach_words import Command, parse
from bot.conversation.desk import Desk
from bot.conversation.movement_names import family_called
from bot.conversation.office import Office
from bot.conversation.reasons import ladder_name
from planner import ladders

SHOWN = frozenset("card week why roster rungs summary unheard tests".split())  # nothing is changed by these
EXACT = frozenset(
    "sets lock hold unlock approve decline restart pause resume seen move deload undo".split()
)  # done only where every word was understood
NAMING = frozenset(
    {"exclude", "include", "rung"}
)  # the words beside these name something; days beside them are no part of it
ORDERS = EXACT | NAMING
OF_ATHLETES = ORDERS | {"card", "week", "why", "tell", "note", "invite", "rule"}  # what can be said with a name


def is_whole(office: Office, text: str, handle: str) -> bool:
    """Whether words are a whole order, a question or words for an athlete."""
    names = [(row.handle, row.name) for row in office.rows]
    command, desk = parse(text, names, office.coach.language, office.said_on), office.desk(handle)
    if command is None or desk is None or command.handle != handle or command.verb not in OF_ATHLETES:
        return False
    if command.verb in SHOWN:
        return not command.over
    return command.verb not in EXACT or not odd_in(resolved(office, command, desk))


def odd_in(command: Command) -> tuple[str, ...]:
    """The words, numbers and days of an order that nobody has understood."""
    return command.odd if command.verb in EXACT else command.left if command.verb in NAMING else ()


def resolved(office: Office, command: Command, desk: Desk) -> Command:
    """An order with the movement or the ladder that it names, as this athlete has them."""
    return _of_a_ladder(_of_a_movement(office, command, desk), desk)


def _of_a_movement(office: Office, command: Command, desk: Desk) -> Command:
    """ "mira dips 5x3 at 20": sets of the movement that is named, in another grip too; the main lift's name adds
    nothing. A bare family, "archers", is what her rung has of it."""
    if command.verb != "sets" or not command.odd:
        return command
    name = _as_written(command)
    named = office.movement(name)
    if named is None:
        rungs = [ladders.get(one.ladder).by_id[one.rung].movement for one in desk.review.ladders]
        of_rung = set(family_called(name, desk.say_coach)).intersection(rungs)
        named = of_rung.pop() if len(of_rung) == 1 else None
    if named is None:
        return command
    return replace(command, odd=(), movement=None if named == desk.review.main_lift else named)


def _as_written(command: Command) -> str:
    """The words that nobody has understood with the small ones between them: "hand on shoulder"."""
    words = words_of(command.rest)
    places = [at for at, word in enumerate(words) if word in command.odd]
    return " ".join(words[places[0] : places[-1] + 1]) if places else " ".join(command.odd)


def _of_a_ladder(command: Command, desk: Desk) -> Command:
    """ "mira hold front lever 3 weeks": the one of her ladders whose name, or part of it, is said."""
    if command.verb != "hold" or not command.odd:
        return command
    said = "_".join(command.odd).replace("-", "_")
    meant = [ladder for ladder, _ in desk.record.athlete.ladders if said in (ladder, _ladder_said(ladder, desk))]
    return replace(command, odd=(), ladder=meant[0]) if len(meant) == 1 else command


def _ladder_said(ladder: str, desk: Desk) -> str:
    """A ladder's name in the coach's language, as its id would be written."""
    return ladder_name(ladder, desk.say_coach).casefold().replace(" ", "_").replace("-", "_")
