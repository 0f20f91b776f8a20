"""Where an athlete stands on a ladder: rung, dose, gates, tests, proposals. Promotions wait for the coach."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import Literal

from planner import ladders
from planner.digest import digest
from planner.evidence import counts, system_load_kg
from planner.facts import Order, Session, Side, WorkSet
from planner.history import GRIPS, SIDES, History
from planner.ladders import GateRule, Ladder, Number, Rung, Shown, Step
from planner.movements import movement
from planner.plan import Decision, Gate, Proposal, Reason
from planner.repetitions import MAX_REPS_AS_EVIDENCE, expected_reps_to_failure, one_rep_max_factor, reps_to_failure
from planner.rules import Rules
from planner.timeline import Slot, Timeline
from planner.units import step_kg

DAY = timedelta(days=1)
FAILED_SESSIONS = 2  # so many sessions in a row with a missed rep, before a step back is proposed


@dataclass(frozen=True, slots=True)
class Position:
    """A place on a ladder. `step`: index of the dose in the rung's steps; `held`: the hardest one held, -1 for none."""

    ladder: Ladder
    rung: Rung
    since: date
    step: int = 0
    held: int = -1

    @property
    def dose(self) -> Step:
        return self.rung.steps[min(self.step, len(self.rung.steps) - 1)]


def value_of(number: Number, rules: Rules) -> float:
    return rules.number(number) if isinstance(number, str) else float(number)


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
        self.position = Position(self.position.ladder, rung, day)

    def _after_long_absence(self, day: date, days: int) -> None:
        now = self.position
        before = now.ladder.before(now.rung.id)
        if before is None or now.rung.work not in ("skill", "hold"):
            return
        self._decide("rung", day, "rung_after_absence", {"rung": before.id, "before": now.rung.id, "days": days})
        self.position = Position(now.ladder, before, day)

    def _end_block(self, start: date, end: date) -> None:
        """From block to block the dose grows, only when the last was within its ceiling."""
        now = self.position
        if now.rung.work == "main" or not self.is_held(now, start, end - DAY):
            return
        held = max(now.held, now.step)
        last = now.step + 1 >= len(now.rung.steps)
        self.position = replace(now, held=held, step=now.step if last else now.step + 1)
        if not last:
            self._decide(
                "dose",
                end,
                "dose_grows",
                {"dose": self.position.dose.label, "before": now.dose.label, "rung": now.rung.id},
            )

    def is_held(self, position: Position, start: date, end: date) -> bool:
        """Whether the dose was done in at least two sessions of the days given, the last within its ceiling."""
        done = [
            one
            for one in self.history.between(start, end)
            if not one.is_test and _did(one, position.rung, position.dose)
        ]
        if len(done) < 2:
            return False
        effort = worst_effort(done[-1], position.rung)
        ceiling = self.history.rules.number("skill.rpe") if position.rung.work == "skill" else 8.0
        return effort is None or effort <= ceiling

    def held_now(self, on: date) -> int:
        """The hardest step held, this block's sessions counted."""
        now = self.position
        return max(now.held, now.step) if self.is_held(now, self.block_start, on) else now.held

    def _decide(self, kind: Literal["rung", "dose"], day: date, code: str, values: dict[str, str | int]) -> None:
        self.decisions.append(Decision(day, kind, self.position.ladder.id, (Reason(code, values),)))

    # ---- Gates, tests, proposals --------------------------------------------------------------------------------

    def next_rung(self, day: date) -> Rung | None:
        return self.position.ladder.after(
            self.position.rung.id, self.history.equipment(day), self.history.orders.excluded(day)
        )

    def gates(self, rung: Rung, day: date) -> tuple[Gate, ...]:
        return tuple(self._gate(rule, day) for rule in rung.gates)

    def _gate(self, rule: GateRule, day: date) -> Gate:
        want = value_of(rule.want, self.history.rules)
        have: float | None
        name = rule.kind
        since = day - self.history.rules.whole("gate.days") * DAY
        recent = self.history.between(since, day)
        if rule.kind == "relative_added":
            have = relative_added(self.history, day)
        elif rule.kind == "held":
            held = self.held_now(day)
            steps = self.position.rung.steps
            reached = [index for index, step in enumerate(steps) if step.sets >= rule.sets and step.reps >= want]
            rom = steps[-1].rom
            full = [index for index in reached if steps[index].rom == rom]
            met = bool(full) and held >= full[0]
            have = float(steps[held].reps) if held >= 0 else 0.0
            return Gate(f"held_{rule.sets}x{want:g}", max(have, want) if met else min(have, want - 1), want, met)
        elif rule.kind == "hold_shown":
            name_of, have = rule.movement, best_hold(recent, rule.movement or "")
            return Gate(f"hold_{name_of}", have, want, have is not None and have >= want)
        elif rule.kind == "shown_either":
            have = max((both_sides(recent, shown) for shown in rule.of), default=0)
        else:
            have = _reps_shown(recent, rule)
            if rule.kind == "reps_shown" and rule.movement in GRIPS:
                name = "reps_shown"
        if rule.movement:
            return Gate(f"{name}_{rule.movement}", have, want, have is not None and have >= want)
        return Gate(name, have, want, have is not None and have >= want)

    def may_test(self, day: date) -> Rung | None:
        """The rung whose test may be tried on a test day `day`; None where a gate or a hold stands before it."""
        rung = self.next_rung(day)
        if rung is None or self.history.orders.rung_held(self.position.ladder.id, day) is not None:
            return None
        return rung if all(gate.met for gate in self.gates(rung, day)) else None

    def proposal(self, day: date) -> Proposal | None:
        """The step that waits for the coach on `day`."""
        if self.history.orders.rung_held(self.position.ladder.id, day) is not None:
            return None
        return self._promotion(day) or self._step_back(day)

    def _promotion(self, day: date) -> Proposal | None:
        rung = self.next_rung(day)
        shown = None if rung is None else self._proof(rung, day)
        if rung is None or shown is None:
            return None
        session, values = shown
        if self._answered(rung.id, session.on, day):
            return None
        reasons = [Reason("proof_shown", {"rung": rung.id, "on_day": session.on, **values})]
        missing = self._clips_missing(rung, session.on)
        if missing:
            reasons.append(Reason("clips_missing", {"sides": missing, "rung": rung.id}))
        return Proposal(
            "promotion", ladder=self.position.ladder.id, rung=rung.id, since=session.on, reasons=tuple(reasons)
        )

    def _answered(self, rung_id: str, since: date, day: date) -> bool:
        """Whether the coach approved or declined it since."""
        return any(
            order.kind in ("approve", "decline") and order.rung == rung_id and since <= order.on <= day
            for order in self.history.record.orders
        )

    def _proof(self, rung: Rung, day: date) -> tuple[Session, dict[str, float | int]] | None:
        """The newest test that shows the rung's proof: in a test week, in a test the plan asked for, or a test brought
        along; never a good day in between, and only where the gates were met."""
        rules = self.history.rules
        if rung.proof.reps is None and rung.proof.hold_s is None:
            return None
        gates_met = all(gate.met for gate in self.gates(rung, day))
        for session in reversed(self.history.between(self.position.since - DAY, day)):
            asked = any(one.rung == rung.id for one in self.history.planned(session.on))
            if not (asked or (gates_met and (session.is_test or self._in_test_week(session.on)))):
                continue
            values = proven(session, rung, self.history, rules)
            if values is not None:
                return session, values
        return None

    def _in_test_week(self, day: date) -> bool:
        slot = self.timeline.by_day.get(day)
        return slot is not None and slot.kind == "test"

    def _clips_missing(self, rung: Rung, since: date) -> str:
        """Sides without a clip that the coach has seen, as "left, right"; "" where none is missing."""
        if not rung.one_sided:
            return ""
        seen = {
            clip.side
            for clip in self.history.record.clips
            if clip.seen_by_coach and clip.on >= since - 28 * DAY and clip.movement in (rung.movement, None)
        }
        return "" if None in seen else ", ".join(side for side in SIDES if side not in seen)

    def _step_back(self, day: date) -> Proposal | None:
        """Proposed after missed reps at the lightest dose in two sessions running."""
        now = self.position
        before = now.ladder.before(now.rung.id)
        if now.rung.work != "skill" or before is None:
            return None
        done = [one for one in self.history.between(now.since, day) if not one.is_test and _sets_of(one, now.rung)]
        last = done[-FAILED_SESSIONS:]
        if len(last) < FAILED_SESSIONS or not all(any(w.failed for w in _sets_of(one, now.rung)) for one in last):
            return None
        if self._answered(before.id, last[-1].on, day):
            return None
        reason = Reason("reps_missed", {"sessions": FAILED_SESSIONS, "rung": now.rung.id})
        return Proposal("step_back", now.ladder.id, before.id, last[-1].on, (reason,))


# ---- What sets show -------------------------------------------------------------------------------------------------


def _sets_of(session: Session, rung: Rung) -> list[WorkSet]:
    if rung.movement not in digest(session).movements:
        return []
    return [work for work in session.sets if work.movement == rung.movement and not work.eccentric]


def _did(session: Session, rung: Rung, dose: Step) -> bool:
    """Whether a session holds the whole dose: on each side where the work is one-sided."""
    fitting = [
        work
        for work in _sets_of(session, rung)
        if not work.failed
        and (dose.reps == 0 or (work.reps or 0) >= dose.reps)
        and (work.rom == dose.rom or work.rom == "full")
        and work.load_kg >= dose.load_kg
        and set(dose.pauses) <= set(work.pauses)
    ]
    if not rung.one_sided:
        return len(fitting) >= dose.sets
    unsided = sum(work.side is None for work in fitting)
    return all(unsided + sum(work.side == side for work in fitting) >= dose.sets for side in SIDES)


def worst_effort(session: Session, rung: Rung) -> float | None:
    """The highest effort told of a rung's sets; None where none was told."""
    return max((work.rpe for work in _sets_of(session, rung) if work.rpe is not None), default=None)


def best_hold(sessions: Iterable[Session], name: str) -> float | None:
    """The longest hold [s] of a movement."""
    return max(
        (
            work.hold_s
            for one in sessions
            for work in one.sets
            if work.movement == name and work.hold_s and not work.failed
        ),
        default=None,
    )


def _reps_shown(sessions: Iterable[Session], rule: GateRule) -> float | None:
    best: float | None = None
    names = GRIPS if rule.movement in GRIPS else (rule.movement,)
    for one in sessions:
        reps = sorted(
            (
                float(work.reps)
                for work in one.sets
                if work.movement in names
                and work.reps
                and work.rom == "full"
                and not work.assist_kg
                and not work.linked
            ),
            reverse=True,
        )
        if len(reps) >= rule.sets:
            best = max(best or 0.0, reps[rule.sets - 1])
    return best


def both_sides(sessions: Iterable[Session], shown: Shown) -> int:
    """The reps shown by the weaker side's best set."""
    best: dict[Side, int] = {"left": 0, "right": 0}
    for one in sessions:
        for work in one.sets:
            if work.movement != shown.movement or work.rom != "full" or work.eccentric or work.failed:
                continue
            if shown.max_assist_kg is not None and work.assist_kg > shown.max_assist_kg:
                continue
            for side in (work.side,) if work.side else SIDES:
                best[side] = max(best[side], work.reps or 0)
    return min(best.values())


def proven(session: Session, rung: Rung, history: History, rules: Rules) -> dict[str, float | int] | None:
    """What a session shows of a rung's proof, by slot name; None where it is not enough."""
    if rung.movement not in GRIPS and rung.movement not in digest(session).movements:
        return None
    proof, body_kg = rung.proof, history.bodyweight.on(session.on)
    names = GRIPS if rung.movement in GRIPS else (rung.movement,)
    fitting = [
        work
        for work in session.sets
        if work.movement in names and not work.eccentric and work.rom in (rung.rom, "full") and not work.linked
    ]
    if proof.hold_s is not None:
        held = max((work.hold_s or 0.0 for work in fitting if not work.failed), default=0.0)
        return {"seconds": held} if held >= value_of(proof.hold_s, rules) else None
    plate = step_kg(history.athlete.plate_step, history.athlete.plate_unit) if proof.smallest_plate else 0.0
    share = 0.0 if proof.max_assist_share is None else value_of(proof.max_assist_share, rules)
    fitting = [work for work in fitting if work.load_kg >= plate - 1e-6 and work.assist_kg <= share * body_kg + 1e-6]
    want = proof.reps or 1
    if not rung.one_sided:
        reps = max((work.reps or 0 for work in fitting), default=0)
        return {"reps": reps} if reps >= want else None
    best = {side: max((work.reps or 0 for work in fitting if work.side == side), default=0) for side in SIDES}
    if min(best.values()) < want:
        return None
    return {"reps_left": best["left"], "reps_right": best["right"]}


def relative_added(history: History, day: date) -> float | None:
    """Relative added 1RM of the main lift on `day`, the middle of the best grip's trend; None without evidence."""
    body_kg = history.bodyweight.on(day)
    known = [followed.trend.at(day).e1rm_kg for (name, _), followed in history.strength.items() if name in GRIPS]
    return max(known) / body_kg - 1.0 if known else None


def placed_by_tests(history: History, ladder: Ladder) -> str:
    """The highest rung that the tests before the start show, with the margin its proof asks for.

    Without any test it is the first rung that the equipment allows.
    """
    tests = [one for one in history.sessions if one.is_test]
    has = history.equipment(history.athlete.started_on)
    found = next((rung for rung in ladder.rungs if movement(rung.movement).possible_with(has)), ladder.rungs[0])
    for rung in ladder.rungs:
        shows = any(proven(one, rung, history, history.rules) is not None for one in tests)
        if (rung.proof.reps or rung.proof.hold_s) and (
            shows or (rung.work == "main" and _strong_enough(history, rung))
        ):
            found = rung
    return found.id


def _strong_enough(history: History, rung: Rung) -> bool:
    """Whether a test set, heavier or longer, is worth the main lift's proof (six reps with the smallest plate)."""
    body_kg = history.bodyweight.on(history.athlete.started_on)
    plate = step_kg(history.athlete.plate_step, history.athlete.plate_unit)
    for one in history.sessions:
        for work in one.sets if one.is_test else ():
            if work.movement not in GRIPS or not work.reps or not counts(work):
                continue
            # A set of many reps is no estimate of a maximum, but it proves at least twelve of them.
            n = min(reps_to_failure(work.reps, 10.0 if work.rpe is None else work.rpe), MAX_REPS_AS_EVIDENCE)
            maximum = system_load_kg(work, history.bodyweight.on(one.on)) * one_rep_max_factor(n)
            if expected_reps_to_failure(maximum, body_kg + plate) >= (rung.proof.reps or 1):
                return True
    return False


def climbs(history: History, timeline: Timeline, until: date) -> tuple[Climb, ...]:
    """The athlete's ladders, in the order that the roster gives them. Unknown ladder ids are left out."""
    known = ladders.shipped()
    return tuple(
        Climb(history, timeline, known[name], rung, until) for name, rung in history.athlete.ladders if name in known
    )


def weaker_first(history: History, rung: Rung, day: date) -> tuple[Side, Side]:
    """The weaker side, then the other: by the newest session that tells them apart, left where none does."""
    for session in reversed(history.between(day - 180 * DAY, day)):
        works = [work for work in session.sets if work.movement == rung.movement and work.side]
        if not works:
            continue
        left, right = (_worth([work for work in works if work.side == side]) for side in SIDES)
        if left != right and left is not None and right is not None:
            return ("left", "right") if left < right else ("right", "left")
    return SIDES


def _worth(works: list[WorkSet]) -> tuple[float, float] | None:
    """Reps of the best set, then the ease of the hardest."""
    if not works:
        return None
    efforts = [work.rpe for work in works if work.rpe is not None]
    return max(float(work.reps or 0) - (0.5 if work.failed else 0) for work in works), -max(efforts, default=0.0)


def third_set(history: History, climb: Climb, slot: Slot, day: date) -> bool:
    """Whether a third set is allowed: late in the block, the effort down by a point or more at equal work."""
    now = climb.position
    if slot.is_deload or slot.week < slot.loading_weeks - 1 or now.rung.work != "skill":
        return False
    done = [
        one for one in history.between(slot.block_start, day - DAY) if not one.is_test and _did(one, now.rung, now.dose)
    ]
    efforts = [effort for one in done if (effort := worst_effort(one, now.rung)) is not None]
    return len(efforts) >= 2 and efforts[0] - efforts[-1] >= history.rules.number("skill.third_set_drop")
