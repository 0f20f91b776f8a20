"""What the coach says: which order it is, for whom, and who carries it out."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from bot.conversation import (
    block_asked,
    coach_decisions,
    coach_everyone,
    coach_follow,
    coach_load_alone,
    coach_moves,
    coach_of_all,
    coach_of_one,
    coach_orders,
    coach_remembered,
    coach_sets,
    coach_several,
    coach_together,
    coach_undo,
    coach_whole,
    coach_whom,
    what_if,
)
from bot.conversation.coach_several import Names
from bot.conversation.coach_steps import step_of
from bot.conversation.coach_vocabulary import marks, vocabulary, words_of
from bot.conversation.coach_whole import EXACT, ORDERS, SHOWN
from bot.conversation.coach_words import SCHEME, Command, behind_colon, names_of, parse, whom, with_owners
from bot.conversation.desk import Desk, Mail
from bot.conversation.office import Office
from storage import notes
from storage.inbox import Incoming
from storage.persons import Person

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
        order = coach_whom.typed(office, incoming.text)
        if order == "":
            office.answer("coach-not-wanted")
        else:
            _said(office, incoming.text if order is None else order)


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
    follow = coach_follow.meant(office, text, names)
    if follow is not None:
        handles, ordered = [handle for handle, _ in follow.orders], follow.orders[0][1]
        if not (follow.for_all and _held_back(office, ordered, len(handles))):
            coach_follow.carry_out(office, follow, _act)
            coach_remembered.keep(office, handles, ordered, of_all=follow.for_all)
        return
    if _for_everyone(office, text, names):  # "everyone but mira and jon": that row is whom it is not for
        return
    several = coach_several.orders(text, names, office.coach.language)
    if several:
        _for_several(office, several, names)
        return
    command = parse(text, names, office.coach.language, today)
    meant = _for_whom(office, command, text, names)
    if meant:
        coach_whom.ask(office, meant)
        return
    if command is None:
        if not coach_load_alone.is_asked(office, text, names):
            _answered(office, text)
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
    if command.verb == "tell":
        command = _ordered(office, behind_colon(text, names, office.coach.language, today), desk) or command
    if command.verb in EXACT and coach_whole.resolved(office, command, desk).odd and _asks(office, text):
        coach_of_one.card(office, command, desk)  # "has mira approved the questions yet"
        return
    before = desk.record
    _act(office, command, desk)
    if command.verb in ORDERS and desk.record != before:
        coach_remembered.keep(office, [desk.athlete.handle], command)
    elif command.verb in SHOWN:
        coach_remembered.keep(office, [desk.athlete.handle], None)


def _act(office: Office, command: Command, desk: Desk) -> None:
    """Carry out an order for an athlete, where every word of it was understood."""
    command = coach_whole.resolved(office, command, desk)
    odd = coach_whole.odd_in(command)
    if odd and command.step is not None and odd[0] in marks(office.coach.language, "every"):
        office.answer("step-every")  # "+1.25 every session"
        return
    if odd:
        # An order with a condition, a question or a day that nobody understood is none: "restart when …".
        office.answer("coach-not-done", words=" ".join(odd), name=desk.person.name, handle=desk.athlete.handle)
        return
    OF_ONE.get(command.verb, _unknown)(office, command, desk)


def _for_several(office: Office, several: Sequence[tuple[str, str]], names: Names) -> None:
    """For all of them or for none: the first that is no whole order says what is odd."""
    refused = [order for handle, order in several if not coach_whole.is_whole(office, order, handle)]
    commands = [parse(order, names, office.coach.language, office.said_on) for _, order in several]
    if refused or any(command is None or command.verb not in ORDERS for command in commands):
        for order in refused[:1] or [order for _, order in several]:
            _said(office, order)
        return
    _together(office, [(handle, one) for (handle, _), one in zip(several, commands, strict=True) if one is not None])


def _together(office: Office, orders: Sequence[tuple[str, Command]], *, of_all: bool = False) -> None:
    coach_together.carry_out(office, orders, _act)
    coach_remembered.keep(office, [handle for handle, _ in orders], orders[0][1], of_all=of_all)


def _held_back(office: Office, command: Command, count: int) -> bool:
    """Whether an order for everyone is refused, or asked for a second time; the coach is told."""
    if coach_everyone.must_be_by_name(command):
        office.answer("order-by-name")
    elif coach_everyone.is_asked_twice(command) and not office.for_all:
        coach_whom.ask_for_all(office, count)
    else:
        return False
    return True


def _for_everyone(office: Office, text: str, names: Names) -> bool:
    """Carry out an order for everyone, or say why not. False: it is none."""
    language, today = office.coach.language, office.said_on
    everyone = coach_everyone.orders(text, names, language)
    bare = parse(text, [], language, today)  # "tell everyone", "how is everyone"
    named = parse(text, names, language, today) if bare is not None and bare.verb == "tell_all" else None
    if named is not None and named.verb == "tell_all":
        coach_of_all.tell_all(office, named)  # whoever is named in it: "tell everyone but mira and jon"
        return True
    if not everyone or (bare is not None and bare.verb in GENERAL.keys() - {"roster"}):
        return False
    found = [(handle, parse(order, names, language, today)) for handle, order in everyone]
    orders = [(handle, one) for handle, one in found if one is not None and one.verb in ORDERS]
    if orders and orders[0][1].verb == "undo":
        coach_undo.undo(office, Command("undo", None, ""))
        return True
    behind = coach_everyone.words_behind(text, names, language)
    if not orders:
        if behind:
            coach_of_all.tell_all(office, Command("tell_all", None, behind))
        return bool(behind)
    whole = [(handle, one) for (handle, one), (_, order) in zip(found, everyone, strict=True)
             if one is not None and coach_whole.is_whole(office, order, handle)]  # fmt: skip
    if not whole:
        office.answer("order-for-all", words=" ".join(coach_whole.odd_in(orders[0][1])))
    elif not _held_back(office, whole[0][1], len(everyone)):
        _together(office, orders, of_all=True)
    return True


def _for_whom(office: Office, command: Command | None, text: str, names: Names) -> list[tuple[str, str]]:
    """Whom an order without a name we know can be for, each with the order; nobody where a name is there, or none is
    wanted."""
    if command is not None and (command.handle is not None or command.verb in GENERAL.keys() - OF_ONE_TOO):
        return []

    def is_whole(order: str, handle: str) -> bool:
        return coach_whole.is_whole(office, order, handle)

    near = coach_whom.near(text, names, office.coach.language, is_whole)
    talk = SCHEME.search(text) is None if command is None else command.verb in GENERAL
    if near or (talk and not _is_step(office, text)):
        return near
    office.desks()  # at hand at once: whether an order is whole is asked of each
    return [one for one in coach_whom.everyone(office, text) if is_whole(one[1], one[0])]


def _is_step(office: Office, text: str) -> bool:
    """ "+1.25", "a set more", said of nobody."""
    return step_of(text, office.coach.language)[0] is not None


def _ordered(office: Office, behind: Command | None, desk: Desk) -> Command | None:
    """The order behind "mira:", where it is a whole one; anything left over makes it words for her."""
    whole = coach_whole.resolved(office, behind, desk) if behind is not None else None
    return behind if whole is not None and whole.verb in EXACT and not whole.odd else None


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
