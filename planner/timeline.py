"""The walk through blocks and weeks: what kind of day each training day is, and on which day it really falls.

Deloads that come early, absences, moves and slides depend on what was reported before, so the walk goes through the
record once, from the first block to the days ahead.
"""

from __future__ import annotations

from datetime import date, timedelta

from planner import absence, blocks, calendar, walked
from planner.absence import Away, Return
from planner.history import History
from planner.layout import GRIPS
from planner.main_done import Exposure, exposure_of
from planner.plan import Reason
from planner.slots import AS_IF_TEST, Slot, SlotKind, ceiling_of
from planner.walked import Course, Deload, Walked

DAY = timedelta(days=1)
# A session reported so many days after its day, on no day of its own, still counts as that day's.
LATE_DAYS = 3
LEAST_KNOWN = 6  # measurements before a trend can be said to fall; common practice


class Timeline:
    """Slots in order, and what is seen from them."""

    def __init__(self, history: History, until: date) -> None:
        self.history = history
        self.slots: list[Slot] = []
        self.exposures: list[Exposure] = []
        self.early: list[Deload] = []
        self.returns: list[Return] = []
        self.by_day: dict[date, Slot] = {}
        self._taken = 0  # sessions of the history that were matched to their slots
        self._in_block: list[Exposure] = []  # the newest exposures, those of one block
        self._last_pull: Slot | None = None
        self._early_over = history.rules.number("block.early_deload_over")
        self._early_loss = history.rules.number("block.early_deload_loss")
        start = first_day(history)
        if start is not None:
            moves = calendar.where_moved(move for move in history.record.moves if move.said_on <= history.on)
            missed = {
                fact.since + timedelta(ahead): fact.said_on
                for fact in history.record.absences
                if fact.kind == "missed" and fact.said_on <= history.on
                for ahead in range(((fact.until or fact.since) - fact.since).days + 1)
            }
            self._course = Course(start, base_grip(history), moves, missed)
            before = walked.kept(history, self._course)
            self._settled: Walked | None = None
            self._walk(before or Walked(start, 1, self._course.usual, start, False, 0, (), (), (), (), {}), until)
            if self._settled is not None:
                reached = self._course.reached(self._settled.week_start, calendar.week_length(history.athlete.schedule))
                walked.keep(history, self._course, reached, self._settled)

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

    def _walk(self, before: Walked, until: date) -> None:
        """On from the first day of a block, where `before` stood."""
        history, schedule = self.history, self.history.athlete.schedule
        rules, table = history.rules, blocks.shipped()
        length = calendar.week_length(schedule)
        a_week, end = length * DAY, until + length * DAY
        loading_weeks, gap = rules.whole("block.loading_weeks"), rules.whole("block.gap_days")
        count = rules.whole("block.pulling_days")
        self._restore(before)
        block, week, week_start, block_start = before.block, 1, before.week_start, before.week_start
        main, grip_since, retest, early = before.main, before.grip_since, before.retest, False
        comeback: Return | None = None
        offsets, pull_offsets = calendar.offsets(schedule, week_start, count, gap)
        of_week = week_start
        while week_start <= end:
            if of_week != week_start:
                # From week to week the training days are the same ones, as long as no week begins out of turn.
                offsets, pull_offsets = calendar.offsets(schedule, week_start, count, gap)
            pulls = tuple([week_start + offset for offset in pull_offsets])
            kinds = dict(zip(pulls, table.days[len(pulls)], strict=True))
            of_week = week_start + a_week
            following = [of_week + offset for offset in pull_offsets]
            jump: date | None = None
            for offset in offsets:
                day = week_start + offset
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
                    reason = self._early_reason(day, block, block_start)
                    if reason is not None:
                        self.early.append(Deload(day, reason))
                        week, jump, early = loading_weeks + 1, day, True
                        break
                kind: SlotKind = kinds.get(day, "support")  # type: ignore[assignment]
                if day in kinds and retest:
                    kind, retest = "retest", False
                elif week > loading_weeks:
                    kind = "test" if day == pulls[-1] else "deload"
                slot = Slot(
                    day,
                    day,
                    kind,
                    block,
                    week,
                    loading_weeks,
                    week_start,
                    block_start,
                    day in kinds,
                    main,
                    early,
                    comeback,
                )
                self._place(slot, [*[one for one in pulls if one > day], *following], gap)
            if jump is not None:
                week_start = jump
                continue
            if not offsets:
                return
            comeback = None
            week, week_start = week + 1, of_week
            if week > loading_weeks + 1:
                block, week, block_start, early = block + 1, 1, week_start, False
                main, grip_since = self._grip(main, self._course.usual, grip_since, block_start)
                if (history.on - week_start).days < walked.KEPT_DAYS:
                    self._settle(length, week_start, block, main, grip_since, retest)
        self._take_sessions(until + DAY)

    def _restore(self, before: Walked) -> None:
        self.slots, self.exposures = list(before.slots), list(before.exposures)
        self.early, self.returns, self.by_day = list(before.early), list(before.returns), dict(before.by_day)
        self._taken = before.taken
        if self.exposures:
            block = self.exposures[-1].slot.block
            first = next((at for at, one in enumerate(reversed(self.exposures)) if one.slot.block != block), None)
            self._in_block = self.exposures[-first:] if first is not None else self.exposures.copy()
        self._last_pull = next((one for one in reversed(self.slots) if one.pulling and one.on is not None), None)

    def _settle(self, length: int, week_start: date, block: int, main: str, grip_since: date, retest: bool) -> None:
        """Remember where the walk stands, if no day of today or later has a say in it any more."""
        if self._course.reached(week_start, length) <= self.history.on:
            found = (self.slots.copy(), self.exposures.copy(), self.early.copy(), self.returns.copy())
            self._settled = Walked(
                week_start, block, main, grip_since, retest, self._taken, *found, by_day=self.by_day.copy()
            )

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
        for away in self.history.aways:
            if away.covers(day):
                return away
        return None

    def _place(self, slot: Slot, later: list[date], gap: int) -> None:
        """Put a slot on its day, or slide it, or drop it."""
        history, missed_days = self.history, self._course.missed
        day = self._course.moves.get(slot.planned_for, slot.planned_for)
        why = (
            Reason("session_moved", {"from_day": slot.planned_for, "to_day": day}) if day != slot.planned_for else None
        )
        done = day in history.session_days
        missed = not done and (day in missed_days or self._away(day) is not None)
        forgotten = slot.kind == "test" and not done and not missed and day < history.on
        if not slot.pulling:
            if missed or day in self.by_day:
                self._drop(slot, Reason("session_dropped", {"day": day}))
            else:
                self._keep(slot._replace(on=day, why=why))
            return
        last = self._last_pull
        not_before = last.on + gap * DAY if last and last.on else day
        pulled = history.pulled_before(day)
        if pulled is not None and (day - pulled).days < gap and not done:
            if last is not None and last.on != pulled and last.on in history.session_days:
                self._drop(slot, Reason("session_done_early", {"day": day, "done_on": pulled}))
                return
            not_before = max(not_before, pulled + gap * DAY)
        if done or (not missed and not forgotten and day >= not_before):
            self._keep(slot if why is None else slot._replace(on=day, why=why))
            return
        first = max(not_before, day)
        if missed:
            first = max(first, day + DAY, missed_days.get(day, day))
        if forgotten:  # a test without a word waits for the next free day, and is the session that came instead
            first = max(first, history.pulled_after(day) or history.on)
        next_on = self._course.moves.get(later[0], later[0]) if later else day + 7 * DAY
        ahead = [first + number * DAY for number in range((next_on - first).days)]
        taken = frozenset([one for one in ahead if self._is_taken(one)])
        found = calendar.slide(first, not_before, next_on, gap, taken)
        if found is None and forgotten and day >= not_before:
            self._keep(slot if why is None else slot._replace(on=day, why=why))
        elif found is None:
            self._drop(slot, Reason("session_dropped", {"day": day}))
        else:
            self._keep(slot._replace(on=found, why=Reason("session_slid", {"from_day": day, "to_day": found})))

    def _is_taken(self, day: date) -> bool:
        """Whether no session can slide to a day."""
        other = self.by_day.get(day)
        return day in self._course.missed or self._away(day) is not None or (other is not None and other.pulling)

    def _keep(self, slot: Slot) -> None:
        self.slots.append(slot)
        if slot.on is not None:
            other = self.by_day.get(slot.on)
            if other is None or slot.pulling:
                self.by_day[slot.on] = slot
            if slot.pulling:
                self._last_pull = slot

    def _drop(self, slot: Slot, why: Reason) -> None:
        self.slots.append(slot._replace(on=None, why=why))

    # ---- What was done ------------------------------------------------------------------------------------------

    def _take_sessions(self, day: date) -> None:
        """Match the sessions before `day` to their slots."""
        trained, taken = self.history.trained, self._taken
        while taken < len(trained) and (session := trained[taken]).on < day:
            taken += 1
            slot = self.by_day.get(session.on) or self._late(session.on)
            exposure = None if slot is None else exposure_of(self.history, session, slot)
            if exposure is not None:
                if self._in_block and self._in_block[-1].slot.block != exposure.slot.block:
                    self._in_block = []
                self._in_block.append(exposure)
                self.exposures.append(exposure)
        self._taken = taken

    def _lost(self, name: str, since: date, day: date) -> float:
        """How far a grip's trend fell from `since` to `day`, in log; 0 where it was too young to be said to fall: a
        first test that was too hopeful is no loss."""
        history = self.history
        before, now = history.level_before(name, since), history.level_before(name, day)
        if before is None or now is None or history.levels_before(name, since) < LEAST_KNOWN:
            return 0.0
        return before - now

    def _late(self, day: date) -> Slot | None:
        for slot in reversed(self.slots):
            if slot.pulling and slot.on is not None and slot.on < day:
                return slot if (day - slot.on).days <= LATE_DAYS else None
        return None

    def _trained_before_it(self, day: date) -> bool:
        """Whether the session of a day was done by another plan than the light one that was ordered on it."""
        sent = self.history.record.sent_by_day.get(day)
        return day in self.history.session_days and (sent is None or sent.kind not in ("deload", "test"))

    def _early_reason(self, day: date, block: int, block_start: date) -> Reason | None:
        """Why the deload begins now; None where the block goes on."""
        history, done, over = self.history, self._in_block, self._early_over
        ordered = history.orders.deload_in(block_start, day)
        if ordered is not None and not (day == ordered.on and self._trained_before_it(day)):
            return Reason("deload_ordered", {"day": ordered.on})
        if not done or done[-1].slot.block != block:
            return None
        last = [one.over for one in done[-2:] if one.over is not None]
        if len(last) == 2 and min(last) >= over:
            return Reason("deload_effort", {"over_rpe": min(last), "sessions": 2})
        # Sets within their ceilings are no loss: people tell the number they were given.
        if len(done) > 1 and last and max(last) > 0:
            lost = self._lost(done[-1].movement, done[0].on, day)
            if lost >= self._early_loss:
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


__all__ = ["AS_IF_TEST", "Deload", "Exposure", "Slot", "SlotKind", "Timeline", "base_grip", "ceiling_of", "first_day"]
