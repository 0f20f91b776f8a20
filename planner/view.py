"""The whole of an athlete on one day: position, strength, the day's plan, and why. A pure function of the record."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import date, timedelta

from planner.draft import Today
from planner.facts import Absence, PlannedSet, Record, SentPlan, Side
from planner.forecast import gate_interval
from planner.history import GRIPS, History
from planner.ladders import Rung
from planner.movements import movement
from planner.pain import Pain
from planner.plan import (
    Alert,
    DayPlan,
    Decision,
    Forecast,
    Gate,
    LadderPosition,
    Reason,
    Review,
    Strength,
)
from planner.prescription import fill
from planner.progress import Climb, climbs
from planner.prospects import Prospects
from planner.shown import value_of
from planner.timeline import AS_IF_TEST, Slot, Timeline

DAY = timedelta(days=1)
AHEAD_DAYS = 14  # how far the walk looks beyond the day asked for, to know the next sessions
REVIEW_DAYS = 56  # decisions told
ADHERENCE_DAYS = 28
LEAST_OF_A_PACE = 6  # measurements: fewer are no pace; common practice, no source


class View:
    """One fold of a record, asked for several days."""

    def __init__(self, record: Record, on: date, ahead_days: int = AHEAD_DAYS) -> None:
        self.on = on
        self.history = History(record, on)
        self.record = self.history.record
        self.timeline = Timeline(self.history, on + ahead_days * DAY)
        self._made: dict[date, DayPlan] = {}
        self._planned_ahead: dict[date, Mapping[Side, int]] = {}
        self._climbs: dict[date, tuple[Climb, ...]] = {}

    # ---- Plans --------------------------------------------------------------------------------------------------

    def plan(self, day: date) -> DayPlan:
        """The plan of `day`: the one that was sent, unless an exception came or went since."""
        if day not in self._made:
            for before in range((day - self.on).days):
                self._make(self.on + before * DAY)
            self._make(day)
        return self._made[day]

    def _make(self, day: date) -> None:
        if day in self._made:
            return
        fresh = self._fresh(day)
        sent = self.record.sent_by_day.get(day)
        made = fresh if sent is None else self._as_sent(sent, fresh, day)
        self._made[day] = made
        if day >= self.on:
            self._planned_ahead[day] = exposures_of(made.sets)

    def _as_sent(self, sent: SentPlan, fresh: DayPlan, day: date) -> DayPlan:
        decisions = tuple(one for one in fresh.decisions if _is_of(one, sent.sets))
        kept = DayPlan(sent.on, sent.block, sent.week, sent.kind, sent.sets, sent.holds, decisions)
        if day < self.on:
            return kept
        same = sent.kind == fresh.kind and sent.holds == fresh.holds
        done = day in self.history.session_days
        stopped = any(hold.startswith(("stop", "pain:stop", "ill", "pause")) for hold in fresh.holds)
        return kept if same or (done and not stopped) else fresh

    def _fresh(self, day: date) -> DayPlan:
        slot = self.timeline.by_day.get(day)
        at = self.timeline.slot_at(day)
        block, week = (at.block, at.week) if at is not None else (0, 0)
        stop = self.stopped(day)
        if stop is not None:
            hold = ":".join(["stop", stop.code, *[str(value) for value in stop.values.values() if value is not None]])
            return _rest(day, block, week, (hold,), (Decision(day, "stop", "training", (stop,)),))
        away = next((one for one in self.history.aways if one.covers(day)), None)
        if away is not None:
            reason = Reason(f"away_{away.kind}", {"since": away.since, "until": away.until})
            return _rest(
                day, block, week, (f"{away.kind}:{away.since}",), (Decision(day, "absence", "training", (reason,)),)
            )
        ordered = self.history.orders.sets_for(day)
        if slot is None and ordered and at is not None:
            slot = at._replace(on=day, planned_for=day, kind="support", pulling=False, why=None, comeback=None)
        if slot is None:
            return self._no_session(day, block, week)
        if slot.pulling and not ordered and self._gives_way(slot, day):
            gone = Decision(day, "absence", "session", (Reason("session_dropped", {"day": day}),))
            return _rest(day, slot.block, slot.week, ("session_dropped:ordered",), (gone,))
        today = Today(
            self.history, self.timeline, self.climbs(day), slot, day, self.history.pain.at(day), self._planned_ahead
        )
        draft = fill(today)
        sore = today.pain_of(slot.main) if slot.kind == "test" else None
        cut = sore is not None and sore.level != "hold" and not draft.skill  # its main lift is a deload's then
        kind = "test" if slot.kind in AS_IF_TEST and not cut else "deload" if slot.is_deload else "training"
        worth = draft.main or draft.skill or (slot.kind == "support" and draft.accessories)
        if not worth:
            return _rest(day, slot.block, slot.week, tuple(draft.holds), tuple(draft.decisions))
        decisions = [*self._of_day(day), *draft.decisions]
        return DayPlan(day, slot.block, slot.week, kind, draft.sets, tuple(draft.holds), tuple(decisions))  # type: ignore[arg-type]

    def _gives_way(self, slot: Slot, day: date) -> bool:
        """Whether a moved session falls within 48 hours of sets that the coach ordered for the day it was moved from:
        they are in its stead, as long as somebody trains that day."""
        gap, left = self.history.rules.whole("block.gap_days"), slot.planned_for
        if day in self.history.session_days or not 0 < abs((day - left).days) < gap or left in self.timeline.by_day:
            return False
        if not any(_pulls(order.movement) for order in self.history.orders.sets_for(left)):
            return False
        missed = any(one.kind == "missed" and _covers(one, left) for one in self.record.absences)
        missed = missed or any(away.covers(left) for away in self.history.aways)
        # Of a day gone by only a word is known, and silence is none: the sets may have been done.
        return not missed and (left < self.on or bool(self._fresh(left).sets))

    def _no_session(self, day: date, block: int, week: int) -> DayPlan:
        """A day off: by the calendar, or because its session went elsewhere."""
        gone = next((slot for slot in self.timeline.slots if slot.planned_for == day and slot.on != day), None)
        if gone is None or gone.why is None:
            return _rest(day, block, week, (), ())
        hold = f"{gone.why.code}:{gone.on or 'dropped'}"
        why = gone.why if gone.on is None else replace(gone.why, code="session_gone")
        return _rest(day, block, week, (hold,), (Decision(day, "absence", "session", (why,)),))

    def _of_day(self, day: date) -> list[Decision]:
        return [one for climb in self.climbs(day) for one in climb.decisions if one.on == day]

    def climbs(self, day: date) -> tuple[Climb, ...]:
        """The athlete's ladders as climbed up to `day`."""
        if day not in self._climbs:
            self._climbs[day] = climbs(self.history, self.timeline, day)
        return self._climbs[day]

    # ---- Stops --------------------------------------------------------------------------------------------------

    def stopped(self, day: date) -> Reason | None:
        """Why nothing at all may be trained on `day`: not screened, a warning sign, a pause."""
        athlete, orders = self.record.athlete, self.history.orders
        if not athlete.screened and orders.started_on(min(day, self.on)) is None:
            return Reason("not_screened")
        for sign in reversed(self.record.signs):
            if sign.sign == "fever" or sign.on > min(day, self.on):
                continue
            if not orders.restarted_since(sign.on, min(day, self.on)):
                return Reason("warning_sign", {"sign": sign.sign, "since": sign.on})
        pause = next((one for one in self.history.aways if one.kind == "pause" and one.covers(day)), None)
        if pause is not None:
            return Reason("paused", {"since": pause.since, "until": pause.until})
        return None

    # ---- The review ---------------------------------------------------------------------------------------------

    def review(self) -> Review:
        on, history, timeline = self.on, self.history, self.timeline
        today = self.plan(on)
        at = timeline.slot_at(on)
        stopped = self.stopped(on)
        now = history.pain.at(on)
        positions = tuple(self._position(climb) for climb in self.climbs(on))
        done, planned = self._adherence()
        silent = self._silent_sessions()
        slot = at if at is not None and at.planned_for <= on else None
        return Review(
            on=on,
            started=bool(timeline.slots) and timeline.slots[0].planned_for <= on,
            stopped=stopped,
            block=slot.position if slot else None,
            bodyweight_kg=history.bodyweight.on(on),
            main_lift=self._main_lift(slot),
            ladders=positions,
            strength=self._strength(),
            pain=tuple(site for one in now if (site := one.as_site) is not None),
            today=today,
            decisions=self._decisions(today),
            alerts=self._alerts(stopped, now, positions, silent),
            adherence=(done, planned),
            silent_sessions=silent,
            next_training_on=None if stopped else self._next_training(),
        )

    def _main_lift(self, slot: Slot | None) -> str | None:
        if not any(climb.position.ladder.main_rung for climb in self.climbs(self.on)):
            return None
        return slot.main if slot is not None else (self.timeline.slots[0].main if self.timeline.slots else None)

    def _next_training(self) -> date | None:
        for day in sorted(self.timeline.by_day):
            ahead = day > self.on or (day == self.on and day not in self.history.session_days)
            if ahead and not any(away.covers(day) for away in self.history.aways):
                return day
        return None

    def _strength(self) -> tuple[Strength, ...]:
        history, on = self.history, self.on
        percentile = history.rules.number("strength.cautious_percentile")
        found = []
        for (name, side), trend in history.strength.items():
            estimate = trend.at(on)
            found.append(
                Strength(
                    movement=name,
                    side=side,
                    e1rm_kg=estimate.e1rm_kg,
                    cautious_kg=estimate.percentile_kg(percentile),
                    sd_log=estimate.sd_log,
                    bodyweight_kg=history.bodyweight.on(on) * movement(name).bodyweight_share,
                )
            )
        return tuple(found)

    def _position(self, climb: Climb) -> LadderPosition:
        on, now, ahead = self.on, climb.position, Prospects(climb)
        rung = ahead.next_rung(on)
        gates = ahead.gates(rung, on) if rung is not None else ()
        held = self.history.orders.rung_held(now.ladder.id, on)
        return LadderPosition(
            ladder=now.ladder.id,
            rung=now.rung.id,
            since=now.since,
            dose=now.dose.label if now.rung.work != "main" else "",
            next_rung=rung.id if rung is not None else None,
            gates=gates,
            may_test=rung is not None and ahead.may_test(on) is not None,
            held_until=held.until if held is not None else None,
            proposal=ahead.proposal(on),
            forecasts=self._forecasts(rung, gates) if rung is not None else (),
        )

    def _forecasts(self, rung: Rung, gates: tuple[Gate, ...]) -> tuple[Forecast, ...]:
        """Only gates of strength are forecast, and only while they are not met."""
        found = []
        for rule, gate in zip(rung.gates, gates, strict=True):
            if rule.kind != "relative_added" or gate.met:
                continue
            known = [one for (name, _), one in self.history.strength.items() if name in GRIPS]
            if not known:
                continue
            best = max(known, key=lambda one: one.at(self.on).e1rm_kg)
            wanted = (1.0 + value_of(rule.want, self.history.rules)) * self.history.bodyweight.on(self.on)
            weeks = max(1.0, (self.on - self.history.sessions[0].on).days / 7) if self.history.sessions else 1.0
            interval = gate_interval(best, wanted, self.on, weeks, self.history.rules)
            found.append(
                Forecast(
                    gate.name,
                    interval.earliest if interval else None,
                    interval.latest if interval else None,
                    too_early=interval is None and best.measured < LEAST_OF_A_PACE,
                )
            )
        return tuple(found)

    def _decisions(self, today: DayPlan) -> tuple[Decision, ...]:
        since = self.on - REVIEW_DAYS * DAY
        found = [one for climb in self.climbs(self.on) for one in climb.decisions]
        found += [Decision(one.on, "deload", "block", (one.reason,)) for one in self.timeline.early]
        kept = [one for one in found if since <= one.on <= self.on]
        kept += [one for one in today.decisions if one not in kept]
        return tuple(sorted(kept, key=lambda one: one.on))

    def _adherence(self) -> tuple[int, int]:
        since = self.on - (ADHERENCE_DAYS - 1) * DAY
        planned = [day for day in self.timeline.by_day if since <= day <= self.on]
        done = [day for day in self.history.session_days if since <= day <= self.on]
        due = [day for day in planned if day < self.on or day in self.history.session_days]
        return len(done), len(due)

    def _silent_sessions(self) -> int:
        record, on = self.record, self.on  # nothing of which was said later
        words = [one.on for one in self.history.trained]
        words += [one.on for one in record.pain] + [one.on for one in record.signs]
        words += [one.on for one in record.bodyweights] + [one.on for one in record.clips]
        # The coach's word about an athlete is none of theirs.
        words += [one.on for one in record.resumes if one.said_by == "athlete"]
        words += [one.said_on for one in record.absences if one.said_by == "athlete"]
        words += [one.said_on for one in record.moves if one.said_by == "athlete"]
        last = max(words, default=record.athlete.started_on - DAY)
        if self.stopped(on) is not None:
            return 0
        return sum(last < day < on for day in self.timeline.by_day)

    def _alerts(
        self, stopped: Reason | None, now: tuple[Pain, ...], positions: tuple[LadderPosition, ...], silent: int
    ) -> tuple[Alert, ...]:
        on, found = self.on, list[Alert]()
        if stopped is not None and stopped.code == "warning_sign":
            since = stopped.values["since"]
            found.append(Alert("stopped_by_sign", 3, since if isinstance(since, date) else on, stopped.values))
        if stopped is not None and stopped.code == "not_screened":
            found.append(Alert("screening_open", 2, self.record.athlete.started_on))
        for one in now:
            values = {"site": one.site, "side": one.side, "score": one.acted_on}
            if one.level == "stop":
                found.append(Alert("pain_stop", 3, one.since, values))
            elif one.level in ("step_down", "step_back"):
                found.append(Alert(f"pain_{one.level}", 2, one.since, {**values, "why": one.why}))
        for position in positions:
            if position.proposal is not None:
                proposal = position.proposal
                values = {"ladder": proposal.ladder, "rung": proposal.rung, "kind": proposal.kind}
                found.append(Alert("proposal_waiting", 2, proposal.since, values))
        if silent >= self.history.rules.whole("silence.sessions"):
            found.append(Alert("silent", 1, on, {"sessions": silent}))
        for early in self.timeline.early:
            if early.reason.code == "deload_strength_down" and (on - early.on).days < 14:
                found.append(Alert("strength_down", 1, early.on, early.reason.values))
        return tuple(sorted(found, key=lambda alert: (-alert.urgency, alert.since)))


def exposures_of(sets: tuple[PlannedSet, ...]) -> dict[Side, int]:
    """One-arm-specific reps that sets ask for, by side."""
    total: dict[Side, int] = {"left": 0, "right": 0}
    for one in sets:
        if one.side is not None and one.reps and movement(one.movement).one_arm:
            total[one.side] += one.reps
    return total


def _covers(one: Absence, day: date) -> bool:
    return one.since <= day <= (one.until or one.since)


def _is_of(decision: Decision, sets: tuple[PlannedSet, ...]) -> bool:
    """Whether a decision can be of these sets: today's report moves strength, and a load made of it is not what was
    asked."""
    loads = {one.load_kg for one in sets if one.part == "main" and one.movement == decision.about}
    told = [reason.values["load_kg"] for reason in decision.reasons if "load_kg" in reason.values]
    return decision.kind != "load" or not loads or loads.issuperset(told)


def _pulls(name: str | None) -> bool:
    """Whether sets of a movement are pulling; those of none are of the main lift."""
    return name is None or movement(name).pattern in ("vertical_pull", "horizontal_pull")


def _rest(day: date, block: int, week: int, holds: tuple[str, ...], decisions: tuple[Decision, ...]) -> DayPlan:
    return DayPlan(day, block, week, "rest", (), holds, decisions)
