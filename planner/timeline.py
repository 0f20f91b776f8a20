"""The walk through blocks and weeks: what kind of day each training day is, and on which day it really falls.

Deloads that come early, absences, moves and slides depend on what was reported before, so the walk goes through the
record once, from the first block to the days ahead.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import Literal, NamedTuple

from planner import absence, blocks, calendar
from planner.absence import Away, Return
from planner.digest import GRIPS, digest
from planner.facts import Move, SentPlan, Session
from planner.history import History
from planner.plan import BlockPosition, Reason

DAY = timedelta(days=1)
SlotKind = Literal["heavy", "volume", "light", "support", "deload", "test", "retest"]
AS_IF_TEST: frozenset[str] = frozenset({"test", "retest"})
# A session reported so many days after its day, on no day of its own, still counts as that day's.
LATE_DAYS = 3
LEAST_KNOWN = 6  # measurements before a trend can be said to fall; common practice


@dataclass(frozen=True, slots=True)
class Slot:
    """One session of the plan. `on` None: dropped. `why`: how it came to another day or was dropped."""

    planned_for: date
    on: date | None
    kind: SlotKind
    block: int
    week: int
    loading_weeks: int
    week_start: date
    block_start: date
    pulling: bool
    main: str
    early: bool = False
    comeback: Return | None = None
    why: Reason | None = None

    @property
    def is_deload(self) -> bool:
        return self.week > self.loading_weeks

    @property
    def position(self) -> BlockPosition:
        """Ends are as the plan stands now."""
        length_days = (self.week_start - self.block_start).days // max(1, self.week - 1) if self.week > 1 else 7
        weeks_left = max(0, self.loading_weeks + 1 - self.week)
        ends = self.week_start + timedelta(days=length_days * (weeks_left + 1) - 1)
        return BlockPosition(
            self.block, self.week, self.loading_weeks, self.block_start, ends, self.week > self.loading_weeks
        )


@dataclass(frozen=True, slots=True)
class Exposure:
    """The main lift as it was done in one session, against its slot. Loads are system loads [kg] of that day."""

    on: date
    slot: Slot
    movement: str
    top_kg: float
    added_kg: float
    reps: int
    over: float | None  # RPE above the ceiling, the worst set; None where no effort was told


@dataclass(frozen=True, slots=True)
class Deload:
    """An early deload and why."""

    on: date
    reason: Reason


class Timeline:
    """Slots in order, and what is seen from them."""

    def __init__(self, history: History, until: date) -> None:
        self.history = history
        self.slots: list[Slot] = []
        self.exposures: list[Exposure] = []
        self.early: list[Deload] = []
        self.returns: list[Return] = []
        self._sessions = iter(history.trained)
        self._next_session: Session | None = next(self._sessions, None)
        self._moves: Mapping[date, Move] = {
            move.moved_from: move for move in history.record.moves if move.said_on <= history.on
        }
        self._missed = {
            fact.since + timedelta(ahead): fact.said_on
            for fact in history.record.absences
            if fact.kind == "missed" and fact.said_on <= history.on
            for ahead in range(((fact.until or fact.since) - fact.since).days + 1)
        }
        self.by_day: dict[date, Slot] = {}
        start = first_day(history)
        if start is not None:
            self._walk(start, until)

    def slot_at(self, day: date) -> Slot | None:
        """The newest slot planned for `day` or before it: where the block stands."""
        found = None
        for slot in reversed(self.slots):
            if slot.planned_for <= day:
                return slot
            found = slot
        return found

    def next_on(self, day: date) -> date | None:
        return min((on for on in self.by_day if on >= day), default=None)

    # ---- The walk -----------------------------------------------------------------------------------------------

    def _walk(self, start: date, until: date) -> None:
        history, schedule = self.history, self.history.athlete.schedule
        rules, table = history.rules, blocks.shipped()
        length = calendar.week_length(schedule)
        loading_weeks, gap = rules.whole("block.loading_weeks"), rules.whole("block.gap_days")
        count = rules.whole("block.pulling_days")
        block, week, week_start, block_start = 1, 1, start, start
        main, grip_since = base_grip(history), start
        usual, retest, early = main, False, False
        comeback: Return | None = None
        pulls, of_week = calendar.pulling_days(schedule, start, count, gap), start
        while week_start <= until + length * DAY:
            days = calendar.week_days(schedule, week_start)
            if of_week != week_start:
                pulls = calendar.pulling_days(schedule, week_start, count, gap)
            kinds = dict(zip(pulls, table.days[len(pulls)], strict=True))
            of_following = week_start + length * DAY
            following = calendar.pulling_days(schedule, of_following, count, gap)
            jump: date | None = None
            for day in days:
                away = self._away(day)
                if away is not None and (away.until is None or absence.return_after(away, rules) is not None):
                    back = absence.return_after(away, rules)
                    if back is None:
                        return  # no end in sight: nothing is planned
                    self.returns.append(back)
                    jump = calendar.next_training_day(schedule, back.on)
                    comeback, retest = back, back.retest
                    if back.restart or week > loading_weeks:
                        block, week, block_start, early = block + 1, 1, jump or back.on, False
                    break
                self._take_sessions(day)
                if day in kinds and week <= loading_weeks:
                    reason = self._early_reason(day, block)
                    if reason is not None:
                        self.early.append(Deload(day, reason))
                        week, jump, early = loading_weeks + 1, day, True
                        break
                kind: SlotKind = kinds.get(day, "support")  # type: ignore[assignment]
                if day in kinds and retest:
                    kind, retest = "retest", False
                elif week > loading_weeks:
                    kind = "test" if day == pulls[-1] else "deload"
                self._place(
                    Slot(
                        planned_for=day,
                        on=day,
                        kind=kind,
                        block=block,
                        week=week,
                        loading_weeks=loading_weeks,
                        week_start=week_start,
                        block_start=block_start,
                        pulling=day in kinds,
                        main=main,
                        early=early,
                        comeback=comeback,
                    ),
                    [*(one for one in pulls if one > day), *following],
                    gap,
                )
            pulls, of_week = following, of_following
            if jump is not None:
                week_start = jump
                continue
            if not days:
                return
            comeback = None
            week, week_start = week + 1, week_start + length * DAY
            if week > loading_weeks + 1:
                block, week, block_start, early = block + 1, 1, week_start, False
                main, grip_since = self._grip(main, usual, grip_since, block_start)
        self._take_sessions(until + DAY)

    def _grip(self, main: str, usual: str, since: date, start: date) -> tuple[str, date]:
        """The main lift's grip of the block that begins on `start`: the usual one, another for a block now and then."""
        if main != usual:
            return usual, start
        days = self.history.rules.whole("block.grip_months") * 365 / 12
        if (start - since).days < days:
            return main, since
        has = self.history.equipment(start)
        other = "neutral_grip_pull_up" if "rings" in has else "chin_up" if "bar" in has else main
        return (other, start) if other != usual else ("pull_up", start)

    def _away(self, day: date) -> Away | None:
        return next((away for away in self.history.aways if away.covers(day)), None)

    def _place(self, slot: Slot, later: list[date], gap: int) -> None:
        """Put a slot on its day, or slide it, or drop it."""
        history = self.history
        day = calendar.moved(self._moves, slot.planned_for)
        why = (
            Reason("session_moved", {"from_day": slot.planned_for, "to_day": day}) if day != slot.planned_for else None
        )
        done = day in history.session_days
        missed = not done and (day in self._missed or self._away(day) is not None)
        forgotten = slot.kind == "test" and not done and not missed and day < history.on
        if not slot.pulling:
            if missed or day in self.by_day:
                self._drop(slot, Reason("session_dropped", {"day": day}))
            else:
                self._keep(replace(slot, on=day, why=why))
            return
        last = next((one for one in reversed(self.slots) if one.pulling and one.on is not None), None)
        not_before = last.on + gap * DAY if last and last.on else day
        pulled = history.pulled_before(day)
        if pulled is not None and (day - pulled).days < gap and not done:
            if last is not None and last.on != pulled and last.on in history.session_days:
                self._drop(slot, Reason("session_done_early", {"day": day, "done_on": pulled}))
                return
            not_before = max(not_before, pulled + gap * DAY)
        if done or (not missed and not forgotten and day >= not_before):
            self._keep(slot if why is None else replace(slot, on=day, why=why))
            return
        first = max(not_before, day)
        if missed:
            first = max(first, day + DAY, self._missed.get(day, day))
        if forgotten:  # a test without a word waits for the next free day, and is the session that came instead
            first = max(first, min((one for one in history.pull_days if one > day), default=history.on))
        taken = frozenset(self._missed) | frozenset(on for on, other in self.by_day.items() if other.pulling)
        next_on = calendar.moved(self._moves, later[0]) if later else day + 7 * DAY
        found = calendar.slide(first, not_before, next_on, gap, taken)
        while found is not None and self._away(found) is not None:
            found = calendar.slide(found + DAY, not_before, next_on, gap, taken)
        if found is None and forgotten and day >= not_before:
            self._keep(slot if why is None else replace(slot, on=day, why=why))
        elif found is None:
            self._drop(slot, Reason("session_dropped", {"day": day}))
        else:
            self._keep(replace(slot, on=found, why=Reason("session_slid", {"from_day": day, "to_day": found})))

    def _keep(self, slot: Slot) -> None:
        self.slots.append(slot)
        if slot.on is not None:
            other = self.by_day.get(slot.on)
            if other is None or slot.pulling:
                self.by_day[slot.on] = slot

    def _drop(self, slot: Slot, why: Reason) -> None:
        self.slots.append(replace(slot, on=None, why=why))

    # ---- What was done ------------------------------------------------------------------------------------------

    def _take_sessions(self, day: date) -> None:
        """Match the sessions before `day` to their slots."""
        while self._next_session is not None and self._next_session.on < day:
            session = self._next_session
            self._next_session = next(self._sessions, None)
            slot = self.by_day.get(session.on) or self._late(session.on)
            if slot is not None:
                exposure = _exposure(self.history, session, slot)
                if exposure is not None:
                    self.exposures.append(exposure)

    def _lost(self, name: str, since: date, day: date) -> float:
        """How far a grip's trend fell from `since` to `day`, in log; 0 where it was too young to be said to fall: a
        first test that was too hopeful is no loss."""
        history = self.history
        before, now = history.level_before(name, since), history.level_before(name, day)
        if before is None or now is None or history.levels_before(name, since) < LEAST_KNOWN:
            return 0.0
        return before - now

    def _of_block(self, block: int) -> list[Exposure]:
        first = len(self.exposures)
        while first and self.exposures[first - 1].slot.block == block:
            first -= 1
        return self.exposures[first:]

    def _late(self, day: date) -> Slot | None:
        for slot in reversed(self.slots):
            if slot.pulling and slot.on is not None and slot.on < day:
                return slot if (day - slot.on).days <= LATE_DAYS else None
        return None

    def _early_reason(self, day: date, block: int) -> Reason | None:
        """Why the deload begins now; None where the block goes on."""
        rules, history = self.history.rules, self.history
        done = self._of_block(block)
        if not done:
            return None
        over = rules.number("block.early_deload_over")
        last = done[-2:]
        if len(last) == 2 and all(one.over is not None and one.over >= over for one in last):
            worst = min(one.over for one in last if one.over is not None)
            return Reason("deload_effort", {"over_rpe": worst, "sessions": 2})
        # Sets within their ceilings are no loss: people tell the number they were given.
        if len(last) == 2 and any((one.over or 0.0) > 0 for one in last):
            lost = self._lost(done[-1].movement, done[0].on, day)
            if lost >= rules.number("block.early_deload_loss"):
                return Reason("deload_strength_down", {"percent": round(100 * lost, 1)})
        if history.pain.is_sore(day):
            for pain in history.pain.at(day - DAY):
                if pain.why in ("pain_three_sessions", "pain_rising") and pain.since >= done[0].slot.block_start:
                    return Reason("deload_pain", {"site": pain.site, "score": pain.acted_on})
        return None


def first_day(history: History) -> date | None:
    """The first training day on which the athlete may train; None before the health questions are cleared."""
    athlete = history.athlete
    start = athlete.started_on
    if not athlete.screened:
        cleared = history.orders.started_on(history.on)
        if cleared is None:
            return None
        start = max(start, cleared)
    return calendar.next_training_day(athlete.schedule, start)


def base_grip(history: History) -> str:
    """The grip that the athlete tests in, the pull-up where nothing is known."""
    for one in reversed(history.sessions):
        if one.is_test:
            found = [work.movement for work in one.sets if work.movement in GRIPS]
            if found:
                return "pull_up" if "pull_up" in found else found[0]
    return "pull_up"


def _exposure(history: History, session: Session, slot: Slot) -> Exposure | None:
    done = _main_done(session, history.record.sent_by_day.get(session.on), slot.main)
    if done is None:
        return None
    over = None if done.effort is None else done.effort - (done.ceiling or ceiling_of(slot))
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
    planned = [one for one in sent.sets if one.part == "main" and one.movement in GRIPS] if sent else []
    name = planned[0].movement if planned else main
    own = [work for work in sets if work.movement == name] or list(sets)
    top_load = max(work.load_kg - work.assist_kg for work in own)
    efforts = [10.0 if work.failed else work.rpe for work in own if work.failed or work.rpe is not None]
    return MainDone(
        movement=own[0].movement,
        top_load_kg=top_load,
        reps=max(work.reps or 0 for work in own if work.load_kg - work.assist_kg == top_load),
        effort=max((effort for effort in efforts if effort is not None), default=None),
        ceiling=next((one.rpe for one in planned if one.rpe is not None), None),
    )


def ceiling_of(slot: Slot) -> float:
    """The effort ceiling of a slot's main lift by the block."""
    table = blocks.shipped()
    if slot.kind in AS_IF_TEST:
        return table.test.rpe
    if slot.kind == "deload":
        return table.deload.rpe
    if slot.kind == "support":
        return 10.0
    return table.work(slot.kind, slot.week, slot.loading_weeks).rpe
