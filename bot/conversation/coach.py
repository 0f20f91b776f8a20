"""What the coach says: which order it is, for whom, and who carries it out."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from bot.conversation import (
    block_asked,
    coach_decisions,
    coach_moves,
    coach_of_all,
    coach_of_one,
    coach_orders,
    coach_sets,
    coach_several,
    coach_undo,
    coach_whom,
    what_if,
)
from bot.conversation.coach_vocabulary import marks, vocabulary, words_of
from bot.conversation.coach_words import SCHEME, Command, behind_colon, names_of, order_in, parse, whom, with_owners
from bot.conversation.desk import Desk, Mail
from bot.conversation.movement_names import family_called
from bot.conversation.office import Office
from bot.conversation.reasons import ladder_name
from planner import ladders
from storage import notes
from storage.inbox import Incoming
from storage.persons import Person

SHOWN = frozenset("card week why roster rungs summary unheard tests".split())  # nothing is changed by these
EXACT = frozenset(
    "sets lock hold unlock approve decline restart pause resume seen move deload undo".split()
)  # done only where every word was understood
NAMING = frozenset(
    {"exclude", "include", "rung"}
)  # the words beside these name something; days beside them are no part of it
OF_ONE_TOO = frozenset({"undo", "rule"})  # of all where no athlete is named
FEWEST_WORDS = 2  # a single word is a slip, not an answer to pass on


def handle(mail: Mail, coach: Person, incoming: Incoming) -> None:
    """Answer one message or press of a coach."""
    office = Office(mail, coach, incoming)
    pressed = str(incoming.data.get("data", ""))
    if incoming.kind == "press" and pressed.startswith(f"{coach_whom.PRESS}:"):
        order = coach_whom.pressed(office, pressed)
        if order is None:
            office.answer("press-unknown")
        else:
            _said(office, order)
    elif incoming.kind == "press":
        coach_decisions.pressed(office, pressed)
    else:
        _said(office, incoming.text)


def _said(office: Office, text: str) -> None:
    if not text.strip():
        office.answer("coach-help")
        return
    names = [(row.handle, row.name) for row in office.rows]
    text = with_owners(text, names) if whom(text, names) is None else text
    office.order, today = text, office.said_on
    supposed = what_if.question(text)
    if supposed is not None:
        coach_of_all.suppose(office, supposed, what_if.about(supposed, names, office.coach.language, today))
        return
    asked = office.desk(whom(text, names))
    what = block_asked.about(text, names_of(asked.athlete.handle, names)) if asked is not None else None
    if asked is not None and what is not None:
        coach_of_one.of_the_block(asked, what)
        return
    several = coach_several.orders(text, names, office.coach.language)
    if several:
        # For all of them or for none: the first that is no whole order says what is odd.
        whole = _whole(office)
        refused = [order for handle, order in several if not whole(order, handle)]
        for order in refused[:1] or [order for _, order in several]:
            _said(office, order)
        return
    command = parse(text, names, office.coach.language, today)
    meant = _for_whom(office, command, text, names)
    if meant:
        coach_whom.ask(office, meant)
        return
    if command is None:
        _answered(office, text)
        return
    if command.verb == "roster" and order_in(command.over, office.coach.language) in EXACT | NAMING:
        office.answer("order-for-all")  # "everyone rest thursday"
        return
    if command.verb in SHOWN and command.over:
        # Only shown: no order was in it that we know, and the coach must not think so.
        office.answer("coach-only", words=" ".join(command.over))
    general = GENERAL.get(command.verb)
    if general is not None:
        general(office, command)
        return
    desk = office.desk(command.handle)
    if desk is None:
        office.answer("coach-who", names=", ".join(row.handle for row in office.rows[:20]))
        return
    command = _of_a_ladder(_of_a_movement(office, command, desk), desk)
    if command.verb == "tell":
        command = _ordered(office, behind_colon(text, names, office.coach.language, today), desk) or command
    if command.verb in EXACT and command.odd and _asks(office, text):
        coach_of_one.card(office, command, desk)  # "has mira approved the questions yet"
        return
    odd = command.odd if command.verb in EXACT else command.left if command.verb in NAMING else ()
    if odd and command.step is not None and odd[0] in marks(office.coach.language, "every"):
        office.answer("step-every")  # "+1.25 every session"
        return
    if odd:
        # An order with a condition, a question or a day that nobody understood is none: "restart when …".
        office.answer("coach-not-done", words=" ".join(odd), name=desk.person.name, handle=desk.athlete.handle)
        return
    OF_ONE.get(command.verb, _unknown)(office, command, desk)


def _for_whom(
    office: Office, command: Command | None, text: str, names: list[tuple[str, str]]
) -> list[tuple[str, str]]:
    """Whom an order without a name we know can be for, each with the order; nobody where a name is there, or none is
    wanted."""
    if command is not None and (command.handle is not None or command.verb in GENERAL.keys() - OF_ONE_TOO):
        return []
    whole = _whole(office)
    near = coach_whom.near(text, names, whole)
    talk = SCHEME.search(text) is None if command is None else command.verb in GENERAL
    if near or talk:
        return near
    everyone = coach_whom.everyone(office, text)
    if everyone:
        office.desks()  # at hand at once: whether an order is whole is asked of each
    return [one for one in everyone if whole(one[1], one[0])]


def _whole(office: Office) -> Callable[[str, str], bool]:
    """Whether words are a whole order, a question or words for an athlete."""
    names = [(row.handle, row.name) for row in office.rows]

    def is_whole(text: str, handle: str) -> bool:
        command, desk = parse(text, names, office.coach.language, office.said_on), office.desk(handle)
        known = command is not None and (command.verb in OF_ONE or command.verb in OF_ONE_TOO)
        if command is None or desk is None or command.handle != handle or not known:
            return False
        command = _of_a_ladder(_of_a_movement(office, command, desk), desk)
        return not command.odd if command.verb in EXACT else not (command.verb in SHOWN and command.over)

    return is_whole


def _ordered(office: Office, behind: Command | None, desk: Desk) -> Command | None:
    """The order behind "mira:", where it is a whole one; anything left over makes it words for her."""
    whole = _of_a_ladder(_of_a_movement(office, behind, desk), desk) if behind is not None else None
    return whole if whole is not None and whole.verb in EXACT and not whole.odd else None


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
    meant = [ladder for ladder, _ in desk.record.athlete.ladders if said in (ladder, ladder_said(ladder, desk))]
    return replace(command, odd=(), ladder=meant[0]) if len(meant) == 1 else command


def ladder_said(ladder: str, desk: Desk) -> str:
    """A ladder's name in the coach's language, as its id would be written."""
    return ladder_name(ladder, desk.say_coach).casefold().replace(" ", "_").replace("-", "_")


def _asks(office: Office, text: str) -> bool:
    """Whether words begin as a question does."""
    first = words_of(text)[:1]
    return bool(first) and first[0] in vocabulary(office.coach.language, "words")["asks"]


def _answered(office: Office, text: str) -> None:
    """Words that are no order answer the one athlete who waits for an answer; else they are not understood."""
    if " ".join(words_of(text)) in vocabulary(office.coach.language, "words")["greeting"]:
        office.answer("smalltalk")
        return
    unanswered = notes.unanswered(office.mail.tx, [row.id for row in office.rows if row.id is not None])
    waiting = [row.handle for row in office.rows if row.id in unanswered]
    desk = office.desk(waiting[0]) if len(waiting) == 1 else None
    if desk is None or len(text.split()) < FEWEST_WORDS or _meant_otherwise(office, text):
        who = bool(waiting) and not _names_one(office, text)
        office.answer("coach-who" if who else "coach-unknown", names=", ".join(waiting))
        return
    office.pass_on(desk, text.strip())


def _meant_otherwise(office: Office, text: str) -> bool:
    """Whether words look like an order, or are for somebody by name: "mria: …", "and mira deload please"."""
    return ":" in text or SCHEME.search(text) is not None or _names_one(office, text)


def _names_one(office: Office, text: str) -> bool:
    named = {word for row in office.rows for word in (row.handle, *row.name.casefold().split())}
    return not named.isdisjoint(words_of(text))


def _unknown(office: Office, _command: Command, _desk: Desk) -> None:
    office.answer("coach-unknown")


GENERAL: dict[str, Callable[[Office, Command], None]] = {
    "roster": coach_of_all.show_roster,
    "rungs": coach_of_all.show_rungs,
    "summary": coach_of_all.show_summary,
    "help": coach_of_all.show_help,
    "nickname": coach_of_all.set_a_nickname,
    "rule": coach_of_all.set_a_rule,
    "unheard": coach_of_all.show_unheard,
    "tests": coach_of_all.show_tests,
    "tell_all": coach_of_all.tell_all,
    "undo": coach_undo.undo,
}
OF_ONE: dict[str, Callable[[Office, Command, Desk], None]] = {
    "card": coach_of_one.card,
    "week": coach_of_one.week,
    "why": coach_of_one.why,
    "tell": coach_of_one.tell,
    "note": coach_of_one.note,
    "invite": coach_of_one.invite,
    "sets": coach_sets.sets,
    "lock": coach_orders.lock,
    "move": coach_moves.move,
    "hold": coach_orders.hold,
    "rung": coach_orders.rung,
    "exclude": coach_orders.exclude,
    "unlock": coach_orders.unlock,
    "include": coach_orders.include,
    "deload": coach_orders.deload,
    "pause": coach_orders.pause,
    "resume": coach_orders.resume,
    "approve": coach_decisions.approve,
    "decline": coach_decisions.decline,
    "restart": coach_decisions.restart,
    "seen": coach_decisions.seen,
}
