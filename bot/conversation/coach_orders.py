"""What a coach orders for one athlete: loads, rungs, movements left out, deloads, pauses. It shows at once where it
acts."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta

from bot.conversation import absences, beyond, coach_conflicts, gates_ahead
from bot.conversation.coach_days import without_spans
from bot.conversation.coach_words import Command
from bot.conversation.desk import Desk
from bot.conversation.movement_names import family_called
from bot.conversation.office import Office
from bot.conversation.reasons import ladder_name, orders_in_words, rung_name, until_in_words
from planner import ladders
from planner.facts import Absence, Order, OrderKind, Resume
from planner.orders import Orders, lifts
from storage import facts, persons

LIFTED: tuple[OrderKind, ...] = ("lock_load", "hold_rung", "exclude", "step_sets")  # what an unlock ends
SEEN_AHEAD = 14  # days in which sets for one day may push others out


def lock(office: Office, command: Command, desk: Desk) -> None:
    load = office.load_kg(command, desk)
    if load is None or load > beyond.LOADS_UP_TO_KG:
        office.answer("lock-how", name=desk.person.name)
        return
    refused = beyond.refusal(desk, None, load)
    if refused is not None:
        desk.tell_coach(refused)
        return
    met = _add(desk, Order("lock_load", desk.said_on, load_kg=load, until=command.until))
    until = until_in_words(command.until, desk.say_coach, desk.said_on)
    rounded = office.rounded(command, desk)
    if rounded is not None:
        desk.tell_coach(rounded)
    office.confirm(desk, "locked", met, load=desk.say_coach.load(load), until=until)


def _add(desk: Desk, order: Order) -> list[str]:
    """Add an order; what it does to those that stand already."""
    met = coach_conflicts.lines(desk, order)
    desk.add(order)
    return met


def hold(office: Office, command: Command, desk: Desk) -> None:
    """ "mira hold rung 3 weeks"; of several ladders, "mira hold front lever 3 weeks" holds the one."""
    until = command.until or desk.said_on + timedelta(weeks=3)
    met = _add(desk, Order("hold_rung", desk.said_on, ladder=command.ladder, until=until))
    shown = until_in_words(until, desk.say_coach, desk.said_on)
    if command.ladder is None:
        office.confirm(desk, "held", met, until=shown)
    else:
        office.confirm(desk, "held-ladder", met, ladder=ladder_name(command.ladder, desk.say_coach), until=shown)


def rung(office: Office, command: Command, desk: Desk) -> None:
    wanted = command.rest.strip().casefold().replace(" ", "_").replace("-", "_")
    known: list[str] = []
    for ladder_id, _ in desk.record.athlete.ladders:
        known += ladders.get(ladder_id).by_id
        if wanted in ladders.get(ladder_id).by_id:
            short = gates_ahead.unmet(desk, ladder_id, wanted)
            met = _add(desk, Order("set_rung", desk.said_on, ladder=ladder_id, rung=wanted))
            office.confirm(desk, "rung-set", met, rung=" ".join([rung_name(wanted, desk.say_coach), *short]))
            return
    office.answer("rung-unknown", rung=command.rest, rungs=", ".join(known))


def exclude(office: Office, command: Command, desk: Desk) -> None:
    """ "mira no dips this week"; of a family, "no archers", all that it has."""
    meant, named = _named(office, command, desk), without_spans(command.rest, office.coach.language)
    if not meant:
        office.answer("movement-unknown", movement=named)
        return
    met = list[str]()
    for one in meant:
        met += _add(desk, Order("exclude", desk.said_on, movement=one, until=command.until))
    until = until_in_words(command.until, desk.say_coach, desk.said_on)
    shown = desk.say_coach.movement(meant[0]) if len(meant) == 1 else named
    office.confirm(desk, "excluded", met, movement=shown, until=until)


def _named(office: Office, command: Command, desk: Desk) -> list[str]:
    """The movements that an order names: one, or all of a family."""
    named = without_spans(command.rest, office.coach.language)
    movement = office.movement(named)
    return [movement] if movement is not None else family_called(named, desk.say_coach)


def unlock(office: Office, command: Command, desk: Desk) -> None:
    """ "mira unlock" lifts all, "mira unlock rung" the holds, "mira unlock load" the locks."""
    _lift(office, desk, [Order("unlock", desk.said_on, value=command.of_kind)])


def include(office: Office, command: Command, desk: Desk) -> None:
    """ "mira include dips": what was left out may come again."""
    meant = _named(office, command, desk)
    if not meant:
        office.answer("movement-unknown", movement=command.rest)
        return
    _lift(office, desk, [Order("unlock", desk.said_on, movement=one, value="exclude") for one in meant])


def _lift(office: Office, desk: Desk, unlocks: Sequence[Order]) -> None:
    """Add the unlocks that end something, and say what they have ended."""
    stood = Orders(desk.record.orders).acting(LIFTED, desk.said_on)
    lifted = list[Order]()
    for one in unlocks:
        if any(lifts(one, order, desk.said_on) for order in stood):
            desk.add(one)
            lifted += [order for order in stood if lifts(one, order, desk.said_on)]
    if lifted:
        what = orders_in_words(lifted, desk.say_coach)
        office.confirm(desk, "unlocked", what=what)
    else:
        office.answer("unlocked-nothing", name=desk.person.name)


def deload(office: Office, command: Command, desk: Desk) -> None:
    """ "mira deload", "mira deload from monday": the rest of the block is left out."""
    day, shown = max(command.day or desk.said_on, desk.said_on), desk.say_coach
    block = desk.review.block
    if block is not None and block.deload and day == desk.said_on:
        office.answer("deload-stands", name=desk.person.name)
        return
    order = Order("deload", desk.said_on, for_date=day)
    met, fact = coach_conflicts.lines(desk, order), desk.add(order)
    light = [plan.on for plan in desk.week_ahead(SEEN_AHEAD) if plan.on >= day and plan.kind in ("deload", "test")]
    if not light:
        facts.withdraw(desk.tx, "order", fact, desk.now)
        desk.forget()
        office.answer("deload-none", name=desk.person.name, day=shown.day(day))
        return
    office.confirm(desk, "deload-ordered", met, day=shown.day(light[0]))


def pause(office: Office, command: Command, desk: Desk) -> None:
    """ "mira pause until sunday"; "mira rest thursday" is that day alone."""
    if command.day is not None and command.until is None:
        absences.begin(desk, Absence("pause", desk.said_on, command.day, command.day))
        office.confirm(desk, "rested", day=desk.say_coach.day(command.day))
        return
    before = _paused_by_coach(desk)
    for one in before:
        if one.fact is not None:
            facts.withdraw(desk.tx, "absence", one.fact, desk.said_at, by=desk.cause)
    desk.forget()
    absences.begin(desk, Absence("pause", desk.said_on, desk.said_on, command.until))
    say = desk.say_coach
    met = [
        say.say("pause-replaced", until=until_in_words(one.until, say, desk.said_on))
        for one in before
        if one.until != command.until
    ]
    office.confirm(desk, "paused", met, until=until_in_words(command.until, say, desk.said_on))


def _paused_by_coach(desk: Desk) -> list[Absence]:
    """The coach's own pauses that stand today: a new one takes their place."""
    return [
        one
        for one in desk.record.absences
        if one.kind == "pause" and one.said_by == "coach" and one.since <= desk.said_on
        if one.until is None or one.until >= desk.said_on
    ]


def resume(office: Office, _command: Command, desk: Desk) -> None:
    persons.update_athlete(desk.tx, desk.id, {"silenced": False})
    desk.add(Resume(desk.said_on))
    absences.plant_next_plan(desk)
    office.confirm(desk, "resumed")
