"""How many one-arm reps and skill sets a week and a day bear."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import date

from planner.calendar import week_length
from planner.draft import DAY, Draft, Today
from planner.facts import PlannedSet, Side
from planner.history import SIDES
from planner.movements import movement

WEEK = 7
FARTHEST_WEEK = 7  # of the weeks before, the farthest that may stand for one of the last three


def fits(today: Today, adds: Mapping[Side, int], *, hold: bool = False) -> bool:
    """Whether so many more exposures today keep the week's cap on each side.

    The week is the training week of today, and the calendar's where the two differ: after an absence the weeks of
    the block begin on another day, and the elbows know neither. With `hold` the week may not be above the last one.
    """
    length = week_length(today.history.athlete.schedule)
    starts = {today.slot.week_start}
    if length == WEEK:
        starts.add(today.day - today.day.weekday() * DAY)
    return all(_fits_from(today, start, length, adds, hold) for start in starts)


def _fits_from(today: Today, start: date, length: int, adds: Mapping[Side, int], hold: bool) -> bool:
    """The cap on the week from `start`: the three before it make the mean, a deload counting as the week before it.

    By the calendar a deload can reach into two weeks; both count as the week before.
    """
    rules = today.history.rules
    share, least = rules.number("skill.rise_share"), rules.whole("skill.rise_reps")
    starts = [start - back * length * DAY for back in range(FARTHEST_WEEK)]
    deload = [_is_deload_week(today, first, length) for first in starts]
    for side in SIDES:
        weeks = [_exposures(today, side, first, length) for first in starts]
        before = [weeks[_loading(deload, back)] for back in (1, 2, 3)]
        mean = sum(before) / 3
        cap = max(mean * (1 + share), mean + least)
        if hold and any(before):
            cap = min(cap, float(max(before)))
        if weeks[0] + adds[side] > cap + 1e-9:
            return False
    return True


def _loading(deload: Sequence[bool], back: int) -> int:
    """The week itself, or the nearest before it that was none of a deload."""
    return next((at for at in range(back, len(deload)) if not deload[at]), len(deload) - 1)


def _exposures(today: Today, side: Side, first: date, length: int) -> int:
    """One-arm reps of a side in the week from `first`, before today's; planned ones of days still ahead included."""
    total = 0
    for ahead in range(length):
        day = first + ahead * DAY
        if day != today.day:
            done = today.history.exposures.get(day) or today.planned_ahead.get(day)
            total += done[side] if done else 0
    return total


def _is_deload_week(today: Today, first: date, length: int) -> bool:
    """Whether a week from `first` holds a session of a deload that was done or is still to come: one that was missed
    leaves a week of little work, not a light one of much."""
    history, by_day = today.history, today.timeline.by_day
    return any(
        (slot := by_day.get(day)) is not None
        and slot.is_deload
        and slot.pulling
        and (day >= history.on or day in history.session_days)
        for day in (first + ahead * DAY for ahead in range(length))
    )


def share_joints(today: Today, draft: Draft) -> None:
    """Several ladders, one pair of elbows: sets over the day's budget are taken from the ladders named last."""
    budget = today.history.rules.whole("skill.joint_sets_a_day")
    used: dict[str, int] = {}
    kept: list[PlannedSet] = []
    left_out: set[str] = set()
    for one in draft.skill:
        joints = movement(one.movement).loads
        if any(used.get(joint, 0) >= budget for joint in joints):
            left_out.add(one.rung or one.movement)
            continue
        for joint in joints:
            used[joint] = used.get(joint, 0) + 1
        kept.append(one)
    for rung in sorted(left_out):
        draft.decide("dose", rung, "joints_shared", {"rung": rung, "sets": budget})
    draft.skill = kept
