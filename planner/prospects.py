"""What may come next on a ladder: gates, tests, proofs, proposals. Promotions wait for the coach."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from planner import blocks
from planner.facts import Session
from planner.history import GRIPS, SIDES, History
from planner.ladders import GateRule, Rung
from planner.plan import Gate, Proposal, Reason
from planner.progress import FAILED_SESSIONS, Climb, Position
from planner.shown import best_hold, both_sides, did, proven, relative_added, reps_shown, sets_of, value_of

DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True)
class Prospects:
    """What one climb allows on a day."""

    climb: Climb

    @property
    def history(self) -> History:
        return self.climb.history

    @property
    def position(self) -> Position:
        return self.climb.position

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
            have = relative_added(self.history, day, [one for one in recent if self.climb.tested(one)])
        elif rule.kind == "held":
            held = self.climb.held_now(day)
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
            have = reps_shown(recent, rule)
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

    def margin_test(self, day: date) -> int | None:
        """The reps of the present dose's own test on a test day `day` without another: as many as its ceiling leaves.

        Only where the dose stood for the block and was told too hard: near failure an effort is told best.
        """
        now, rules = self.position, self.history.rules
        if now.rung.work != "skill" or now.dose.is_variant or now.step + 1 >= len(now.rung.steps):
            return None
        if self.history.orders.rung_held(now.ladder.id, day) is not None:
            return None
        done = [one for one in self.history.between(self.climb.block_start, day - DAY) if did(one, now.rung, now.dose)]
        if len(done) < 2 or self.climb.is_held(now, self.climb.block_start, day - DAY):
            return None
        return now.dose.reps + round(blocks.shipped().test_rung_rpe - rules.number("skill.rpe"))

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
            sent = self.history.record.sent_by_day.get(session.on)
            asked = sent is not None and rung.id in sent.rungs
            if not (asked or (gates_met and (session.is_test or self.climb.in_test_week(session.on)))):
                continue
            values = proven(session, rung, self.history, rules)
            if values is not None:
                return session, values
        return None

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
        if now.rung.work != "skill" or before is None or now.step > 0:
            return None
        done = [
            one
            for one in self.history.between(now.step_since or now.since, day)
            if not one.is_test and sets_of(one, now.rung)
        ]
        last = done[-FAILED_SESSIONS:]
        if len(last) < FAILED_SESSIONS or not all(any(w.failed for w in sets_of(one, now.rung)) for one in last):
            return None
        if self._answered(before.id, last[-1].on, day):
            return None
        reason = Reason("reps_missed", {"sessions": FAILED_SESSIONS, "rung": now.rung.id})
        return Proposal("step_back", now.ladder.id, before.id, last[-1].on, (reason,))
