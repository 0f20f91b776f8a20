"""The main lift as it was done in a session, against what the plan asked for."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import NamedTuple

from planner.digest import digest
from planner.facts import SentPlan, Session
from planner.history import History
from planner.layout import GRIPS
from planner.slots import Slot, ceiling_of

_GRIPS = frozenset(GRIPS)


@dataclass(frozen=True, slots=True)
class Exposure:
    """The main lift as it was done in one session, against its slot. Loads are system loads [kg] of that day."""

    on: date
    slot: Slot
    movement: str
    top_kg: float
    added_kg: float
    reps: int
    over: float | None  # RPE above the ceiling as meant, the worst set; None where no effort was told


def exposure_of(history: History, session: Session, slot: Slot) -> Exposure | None:
    """The main lift of a session against its slot; None where none was done."""
    done = _main_done(session, history.record.sent_by_day.get(session.on), slot.main)
    if done is None:
        return None
    over = None
    if done.effort is not None:
        meant = history.effort_meant(done.movement, session.on, done.effort)
        over = meant - (done.ceiling or ceiling_of(slot))
    top_kg = history.bodyweight.on(session.on) + done.top_load_kg
    return Exposure(session.on, slot, done.movement, top_kg, done.top_load_kg, done.reps, over)


class MainDone(NamedTuple):
    """The main lift of a session: its heaviest sets, the worst effort told, and the ceiling that was sent."""

    movement: str
    top_load_kg: float
    reps: int
    effort: float | None
    ceiling: float | None


def _main_done(session: Session, sent: SentPlan | None, main: str) -> MainDone | None:
    """Kept with the session for as long as the same plan was sent for its day."""
    kept: tuple[SentPlan | None, str, MainDone | None] | None = session.__dict__.get("_main_done")
    if kept is not None and kept[0] is sent and kept[1] == main:
        return kept[2]
    found = _read_main(session, sent, main)
    session.__dict__["_main_done"] = (sent, main, found)
    return found


def _read_main(session: Session, sent: SentPlan | None, main: str) -> MainDone | None:
    sets = digest(session).main
    if not sets:
        return None
    planned = [one for one in sent.sets if one.movement in _GRIPS and one.part == "main"] if sent else []
    name = planned[0].movement if planned else main
    own = [work for work in sets if work.movement == name] or sets
    loads = [work.load_kg - work.assist_kg for work in own]
    top_load = max(loads)
    efforts = [10.0 if work.failed else work.rpe for work in own if work.failed or work.rpe is not None]
    return MainDone(
        own[0].movement,
        top_load,
        max([work.reps or 0 for work, load in zip(own, loads, strict=True) if load == top_load]),
        max([effort for effort in efforts if effort is not None], default=None),
        next((one.rpe for one in planned if one.rpe is not None), None),
    )
