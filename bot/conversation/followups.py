"""A report in several messages: "pull-ups 4x4 +20", then "last one @8", then "rest as planned". None counts twice."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date

from bot.conversation.desk import Desk
from bot.reading import read
from bot.reading.reading import Context, Reading
from planner.facts import Part, PlannedSet, Session, WorkSet
from storage import facts

MENDS = {"correction", "undo"}


@dataclass(frozen=True)
class Placed:
    """A message read beside what it speaks of: a plan, nothing, or the report that it puts right (`mends`)."""

    reading: Reading
    context: Context
    mends: bool = False

    def again(self, reading: Reading) -> Placed:
        """The same words with more known of them."""
        if not self.mends:
            return replace(self, reading=reading)
        others = tuple(one for one in reading.intents if one not in ("report", "correction"))
        return replace(self, reading=replace(reading, intents=("correction", *others)))


def told_on(desk: Desk, day: date, but_by: int | None = None) -> list[Session]:
    """The reports of a day with sets in them, in order of arrival; without those that came with message `but_by`."""
    own = (
        set()
        if but_by is None
        else {key for kind, key in facts.caused_by(desk.tx, desk.id, but_by) if kind == "session"}
    )
    told = [one for one in desk.record.sessions if one.on == day and one.sets and not one.is_test]
    return sorted((one for one in told if one.fact not in own), key=lambda one: one.fact or 0)


def beside(by_plan: Reading, told: list[Session], text: str, context: Context) -> Placed:
    """A message on a day that was told of: its plan is answered, and must not be answered twice.

    Args:
        by_plan: The message read against the day's plan.
        told: The day's reports, not empty.
    """
    alone = read(text, replace(context, today=None))
    whole = (alone.sets or alone.session_rpe is not None) and not alone.ask
    if MENDS & set(alone.intents) or whole:
        return Placed(alone, replace(context, today=None))
    if not by_plan.sets:
        return Placed(by_plan, context)
    done = {work.movement for session in told for work in session.sets}
    fresh = tuple(one for one in by_plan.sets if one.movement not in done)
    if not fresh and all(one.movement is None for one in alone.sets):
        # It speaks of nothing but what was done: "last one @8" is the last one of the report before.
        parts = _parts(context.today or ())
        last = replace(
            context, today=tuple(_as_asked(work, parts.get(work.movement, "main")) for work in told[-1].sets)
        )
        again = read(text, last)
        if again.sets:
            return Placed(again, last, mends=True).again(again)
    if fresh or by_plan.ask:
        by_plan = replace(by_plan, sets=fresh)  # "rest as planned": the rest is what was not told of
    return Placed(by_plan, context)


def _parts(plan: tuple[PlannedSet, ...]) -> dict[str, Part]:
    """What each movement is to the day; the work where it is its own warm-up too."""
    warm = {one.movement: one.part for one in plan if one.part == "warm_up"}
    return warm | {one.movement: one.part for one in plan if one.part != "warm_up"}


def _as_asked(work: WorkSet, part: Part) -> PlannedSet:
    return PlannedSet(
        movement=work.movement,
        part=part,
        reps=work.reps,
        side=work.side,
        hold_s=work.hold_s,
        load_kg=work.load_kg,
        assist_kg=work.assist_kg,
        rom=work.rom,
        eccentric=work.eccentric,
        pauses=work.pauses,
    )
