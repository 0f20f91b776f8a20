"""Where an athlete stands on a ladder: rung and dose, block by block. What may come next is in prospects.py."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from itertools import islice
from typing import Literal

from planner import ladders
from planner.digest import sets_in
from planner.facts import Order, Rom, Session, WorkSet
from planner.history import SIDES, History
from planner.ladders import Ladder, Rung, Step
from planner.plan import Decision, Reason
from planner.shown import (
    VOLUME_RPE,
    did,
    dose_effort,
    median_effort,
    placed_by_tests,
    proven,
    reps_left_to,
    worst_effort,
)
from planner.timeline import Slot, Timeline

DAY = timedelta(days=1)
FAILED_SESSIONS = 2  # so many sessions in a row with a missed rep, before a step back is proposed


@dataclass(frozen=True, slots=True)
class Position:
    """A place on a ladder. `step`: index of the dose in the rung's steps; `held`: the hardest one held, -1 for none;
    `other_reps`: reps a set on the other day, where that has work of its own, at most the dose's."""

    ladder: Ladder
    rung: Rung
    since: date
    step: int = 0
    held: int = -1
    other_reps: int = 1
    step_since: date | None = None  # when the dose was last made easier

    @property
    def dose(self) -> Step:
        return self.rung.steps[min(self.step, len(self.rung.steps) - 1)]

    @property
    def other_dose(self) -> Step:
        """The dose of the other day: without the variant, and never more reps than its own effort allowed so far."""
        return replace(self.dose, reps=min(self.dose.reps, self.other_reps), pauses=(), load_kg=0.0)


class Climb:
    """One ladder of one athlete, folded along the timeline up to `until`."""

    def __init__(self, history: History, timeline: Timeline, ladder: Ladder, rung_id: str | None, until: date) -> None:
        self.history = history
        self.timeline = timeline
        self.decisions: list[Decision] = []
        placed = rung_id if rung_id is not None and rung_id in ladder.by_id else placed_by_tests(history, ladder)
        self.position = Position(ladder, ladder.by_id[placed], history.athlete.started_on)
        self._fold(until)

    def _fold(self, until: date) -> None:
        ladder = self.position.ladder
        pending = [
            order
            for order in self.history.record.orders
            if order.kind in ("approve", "set_rung") and order.ladder == ladder.id and order.rung in ladder.by_id
        ]
        block, block_start = 0, self.position.since
        returned: date | None = None
        for slot in self.timeline.slots:
            day = slot.on or slot.planned_for
            if day > until:
                break
            if slot.block != block:
                if block:
                    self._end_block(block_start, day)
                block, block_start = slot.block, day
            if slot.pulling and slot.on is not None:
                self._ease(block_start, day)
            if slot.comeback is not None and slot.comeback.retest and slot.comeback.on != returned:
                returned = slot.comeback.on
                self._after_long_absence(slot.comeback.on, slot.comeback.days)
            for order in [one for one in pending if self._acts_by(one, day)]:
                pending.remove(order)
                self._go_to(order, day)
        for order in [one for one in pending if one.kind == "set_rung" and one.on <= until]:
            self._go_to(order, order.on)
        self.block_start = block_start

    def _acts_by(self, order: Order, day: date) -> bool:
        """Set rungs act at once; an approval from the next training day, after the test week if it came in one."""
        if order.kind == "set_rung":
            return order.on <= day
        if order.on >= day:
            return False
        given_in = next((one for one in reversed(self.timeline.slots) if one.planned_for <= order.on), None)
        in_test_week = given_in is not None and given_in.is_deload
        slot = self.timeline.by_day.get(day)
        return not (in_test_week and given_in is not None and slot is not None and slot.block == given_in.block)

    def _go_to(self, order: Order, day: date) -> None:
        rung = self.position.ladder.by_id[order.rung or ""]
        if rung.id == self.position.rung.id:
            return
        code = "rung_set_by_coach" if order.kind == "set_rung" else "rung_approved"
        self._decide("rung", day, code, {"rung": rung.id, "before": self.position.rung.id})
        step = 1 if order.kind == "approve" and self._bears_doubles(rung, day) else 0
        self.position = Position(self.position.ladder, rung, day, step, other_reps=step + 1)

    def _bears_doubles(self, rung: Rung, day: date) -> bool:
        """Whether the newest test of the rung, its weaker side, says that two reps leave what the ceiling asks."""
        if rung.work != "skill" or len(rung.steps) < 2 or rung.steps[1].is_variant or rung.steps[1].rom != rung.rom:
            return False
        wanted = rung.steps[1].reps + 10.0 - self.history.rules.number("skill.rpe")
        for session in reversed(self.history.between(self.position.since - DAY, day)):
            sent = self.history.record.sent_by_day.get(session.on)
            if not self.tested(session) and (sent is None or rung.id not in sent.rungs):
                continue
            if proven(session, rung, self.history, self.history.rules) is not None:
                return all(reps_left_to(session, rung, side, rung.rom) >= wanted for side in SIDES)
        return False

    def _after_long_absence(self, day: date, days: int) -> None:
        now = self.position
        before = now.ladder.before(now.rung.id)
        if before is None or now.rung.work not in ("skill", "hold"):
            return
        self._decide("rung", day, "rung_after_absence", {"rung": before.id, "before": now.rung.id, "days": days})
        self.position = Position(now.ladder, before, day)

    def _end_block(self, start: date, end: date) -> None:
        """From block to block the dose grows, only when the last was within its ceiling; each day by its own."""
        now = self.position
        if now.rung.work == "main":
            return
        other_reps = now.other_reps
        if now.rung.other_day is not None and not self._other_day_too_hard(now, start, end - DAY):
            other_reps = now.dose.reps + 1
        if not self.is_held(now, start, end - DAY):
            self.position = replace(now, other_reps=min(other_reps, now.dose.reps))
            return
        held = max(now.held, now.step)
        last = now.step + 1 >= len(now.rung.steps)
        self.position = replace(
            now,
            held=held,
            step=now.step if last else now.step + 1,
            other_reps=other_reps,
            step_since=now.step_since if last else end,
        )
        if not last:
            self._decide(
                "dose",
                end,
                "dose_grows",
                {"dose": self.position.dose.label, "before": now.dose.label, "rung": now.rung.id},
            )

    def is_held(self, position: Position, start: date, end: date) -> bool:
        """Whether the dose was done in at least two sessions of the days given, the last two within its ceiling."""
        rung, dose = position.rung, position.dose
        fitting = (
            one for one in reversed(self.history.between(start, end)) if not one.is_test and did(one, rung, dose)
        )
        done = list(islice(fitting, 2))
        if len(done) < 2:
            return False
        effort = dose_effort(reversed(done), rung, dose)
        if effort is None:
            return True
        if rung.work != "skill":
            return effort <= VOLUME_RPE
        return min(effort, self._at_most(position, end)) <= self.history.rules.number("skill.rpe")

    def _at_most(self, position: Position, day: date) -> float:
        """What the dose's effort can be at most, by the late tests of the same movement, its weaker side: who showed
        six reps has three left after three."""
        since = day - self.history.rules.whole("gate.days") * DAY
        shown = max((self._shown_by(one, position) for one in self.history.between(since, day)), default=0.0)
        return 10.0 - (shown - position.dose.reps)

    def _shown_by(self, session: Session, position: Position) -> float:
        """Reps to failure that a test shows of the rung's movement in at least the dose's range, on both sides."""
        if not self.tested(session):
            return 0.0
        return min(reps_left_to(session, position.rung, side, position.dose.rom) for side in SIDES)

    def _other_day_too_hard(self, position: Position, start: date, end: date) -> bool:
        """Whether the other half or the earlier rung of the other day was over the ceiling in its last two sessions."""
        other = position.rung.other_day
        if other is None:
            return False
        days = (
            one
            for one in reversed(self.history.between(start, end))
            if not self.tested(one) and any(work.rom == other.rom for work in sets_in(one, other.movement))
        )
        effort = dose_effort(islice(days, 2), position.rung, position.other_dose, other_day=True)
        return effort is not None and effort > self.history.rules.number("skill.rpe")

    def tested(self, session: Session) -> bool:
        return session.is_test or self.in_test_week(session.on)

    def _ease(self, start: date, day: date) -> None:
        """Inside a block a dose only shrinks: after two sessions of its own in a row far too hard, or with missed reps;
        that of the other day by its own sessions."""
        now = self.position
        if now.rung.work != "skill":
            return
        begun = max(start, now.step_since or now.since)
        done = [one for one in self.history.between(begun, day - DAY) if not self.tested(one)]
        if now.step > 0 and self._hard_in_a_row([_sets_in(one, now.rung.movement, now.dose.rom) for one in done]):
            eased = replace(now, step=now.step - 1, held=min(now.held, now.step - 1), step_since=day)
            before, after = now.dose, eased.dose
        elif (other := now.rung.other_day) is not None and now.other_dose.reps > 1:
            if not self._hard_in_a_row([_sets_in(one, other.movement, other.rom) for one in done]):
                return
            eased = replace(now, other_reps=now.other_dose.reps - 1, step_since=day)
            before, after = replace(now.other_dose, rom=other.rom), replace(eased.other_dose, rom=other.rom)
        else:
            return
        self.position = eased
        values: dict[str, str | int] = {"dose": after.label, "before": before.label}
        self._decide("dose", day, "dose_shrinks", {**values, "rung": now.rung.id, "sessions": FAILED_SESSIONS})

    def _hard_in_a_row(self, sessions: Sequence[list[WorkSet]]) -> bool:
        """Whether the last sessions with such sets were all far over the ceiling, by their median, or missed a rep."""
        rules = self.history.rules
        over = rules.number("skill.rpe") + rules.number("block.early_deload_over")
        last = [sets for sets in sessions if sets][-FAILED_SESSIONS:]
        return len(last) == FAILED_SESSIONS and all(
            any(work.failed for work in sets) or (median_effort(sets) or 0.0) >= over for sets in last
        )

    def held_now(self, on: date) -> int:
        """The hardest step held, this block's sessions counted."""
        now = self.position
        return max(now.held, now.step) if self.is_held(now, self.block_start, on) else now.held

    def _decide(self, kind: Literal["rung", "dose"], day: date, code: str, values: dict[str, str | int]) -> None:
        self.decisions.append(Decision(day, kind, self.position.ladder.id, (Reason(code, values),)))

    def in_test_week(self, day: date) -> bool:
        slot = self.timeline.by_day.get(day)
        return slot is not None and slot.kind == "test"


def _sets_in(session: Session, name: str, rom: Rom) -> list[WorkSet]:
    """A session's sets of a movement in a range; lowering alone is other work."""
    return [work for work in sets_in(session, name) if work.rom == rom and not work.eccentric]


def climbs(history: History, timeline: Timeline, until: date) -> tuple[Climb, ...]:
    """The athlete's ladders, in the order that the roster gives them. Unknown ladder ids are left out."""
    known = ladders.known()
    return tuple(
        Climb(history, timeline, known[name], rung, until) for name, rung in history.athlete.ladders if name in known
    )


def third_set(history: History, climb: Climb, slot: Slot, day: date) -> bool:
    """Whether a third set is allowed: late in the block, the effort down by a point or more at equal work."""
    now = climb.position
    if slot.is_deload or slot.week < slot.loading_weeks - 1 or now.rung.work != "skill":
        return False
    done = [
        one for one in history.between(slot.block_start, day - DAY) if not one.is_test and did(one, now.rung, now.dose)
    ]
    efforts = [effort for one in done if (effort := worst_effort(one, now.rung)) is not None]
    return len(efforts) >= 2 and efforts[0] - efforts[-1] >= history.rules.number("skill.third_set_drop")
