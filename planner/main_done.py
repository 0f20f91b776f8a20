"""The main lift as it was done in a session, against what the plan asked for."""

from __future__ import annotations

import math
from datetime import date
from typing import NamedTuple

from planner.digest import main_sets
from planner.facts import SentPlan, Session, WorkSet
from planner.history import History
from planner.layout import layout_of
from planner.slots import Slot, ceiling_of

SAME_LOAD_KG = 0.06  # loads told in pounds and kilograms differ by less


class Exposure(NamedTuple):
    """The main lift as it was done in one session, against its slot. Loads are system loads [kg] of that day."""

    on: date
    slot: Slot
    movement: str
    top_kg: float
    added_kg: float
    reps: int
    over: float | None  # RPE told above the ceiling, the worst set; None where no effort was told
    short: int = 0  # reps fewer than asked in the worst set at the asked load, where no effort was told


def exposure_of(history: History, session: Session, slot: Slot) -> Exposure | None:
    """The main lift of a session against its slot; None where none was done."""
    on = session.on
    done = _main_done(session, history.record.sent_by_day.get(on), slot.main)
    if done is None:
        return None
    _, _, name, top_load_kg, reps, effort, ceiling, short = done
    # The effort as it was told, whatever is known of the athlete's way of telling: a habit learned wrong must not take
    # a hold away.
    over = None if effort is None else effort - (ceiling or ceiling_of(slot))
    return Exposure(on, slot, name, history.bodyweight.on(on) + top_load_kg, top_load_kg, reps, over, short)


class MainDone(NamedTuple):
    """The main lift of a session: its heaviest sets, the worst effort told, and the ceiling that was sent.

    `sent`, `main`: the plan of its day and the slot's main lift, by which it was read.
    """

    sent: SentPlan | None
    main: str
    movement: str
    top_load_kg: float
    reps: int
    effort: float | None
    ceiling: float | None
    short: int


def _main_done(session: Session, sent: SentPlan | None, main: str) -> MainDone | None:
    """Kept with the session for as long as the same plan was sent for its day."""
    kept: MainDone | None = session.__dict__.get("_main_done")
    if kept is not None and kept.sent is sent and kept.main == main:
        return kept
    sets = main_sets(session)
    if not sets:
        return None
    found = _read_main(sets, sent, main)
    session.__dict__["_main_done"] = found
    return found


class Asked(NamedTuple):
    """What a plan asked of the main lift; None for what it left open."""

    movement: str
    rpe: float | None = None
    reps: int | None = None
    load_kg: float = 0.0  # added, less help


def _read_main(sets: list[WorkSet], sent: SentPlan | None, main: str) -> MainDone:
    asked = _main_asked(sent, main) if sent else Asked(main)
    own = [work for work in sets if work.movement == asked.movement] or sets
    top_load, reps, effort = -math.inf, 0, None
    for work in own:
        load = work.load_kg - work.assist_kg
        if load > top_load:
            top_load, reps = load, work.reps or 0
        elif load == top_load:
            reps = max(reps, work.reps or 0)
        told = 10.0 if work.failed else work.rpe
        if told is not None and (effort is None or told > effort):
            effort = told
    short = _short_of(asked, own) if effort is None else 0
    return MainDone(sent, main, own[0].movement, top_load, reps, effort, asked.rpe, short)


def _short_of(asked: Asked, done: list[WorkSet]) -> int:
    """Reps fewer than asked, in the worst of the sets with at least the load that was asked for."""
    if asked.reps is None or done[0].movement != asked.movement:
        return 0
    heavy = [work.reps or 0 for work in done if work.load_kg - work.assist_kg > asked.load_kg - SAME_LOAD_KG]
    return max(0, asked.reps - min(heavy, default=asked.reps))


def _main_asked(sent: SentPlan, main: str) -> Asked:
    """The main work of a plan: the movement, `main` where it has none, and its first set that has a ceiling."""
    name = None
    for at in layout_of(sent.sets).grips:
        one = sent.sets[at]
        if one.part == "main":
            name = name or one.movement
            if one.rpe is not None:
                return Asked(name, one.rpe, one.reps, one.load_kg - one.assist_kg)
    return Asked(name or main)
