"""Strength of an athlete from the record: a trend for each movement and side, and the best sets of late."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Mapping, Sequence
from datetime import date, timedelta

from planner.digest import sets_in
from planner.evidence import counts, errors_of
from planner.facts import Record, Session, Side
from planner.followed import Line, fold
from planner.layout import Key
from planner.loading import LIGHT_SHARE, Basis, BestSet
from planner.movements import movement
from planner.repetitions import reps_to_failure
from planner.rules import Rules
from planner.state_space import model_of
from planner.trend import Trend


class BodyweightHistory:
    """Bodyweight [kg] on any day: the newest word up to it, before the first word the roster's."""

    def __init__(self, record: Record) -> None:
        known = sorted(record.bodyweights, key=lambda fact: fact.on)
        self._days = [fact.on for fact in known]
        self._kg = [fact.kg for fact in known]
        self._first = record.athlete.bodyweight_kg

    def on(self, day: date) -> float:
        index = bisect_right(self._days, day)
        return self._kg[index - 1] if index else self._first

    def on_each(self, days: Sequence[date]) -> list[float]:
        """The bodyweights [kg] of days in order."""
        found: list[float] = []
        kg = self._first
        for since, then in zip(self._days, self._kg, strict=True):
            found += [kg] * (bisect_left(days, since) - len(found))
            kg = then
        return found + [kg] * (len(days) - len(found))


def basis_from(trend: Trend, on: date, rules: Rules) -> Basis:
    """What loads on day `on` are made from: the cautious percentile of the estimate."""
    e1rm_kg = trend.at(on).percentile_kg(rules.number("strength.cautious_percentile"))
    return Basis(e1rm_kg, trend.n_range, trend.habits.steepness)


def lines_of(sessions: Sequence[Session], bodyweights: Sequence[float], rules: Rules) -> Mapping[Key, Line]:
    """What sessions in order of day, `bodyweights` [kg] on their days beside them, say of every movement and side with
    evidence."""
    return fold(sessions, bodyweights, errors_of(rules), model_of(rules)).lines


def strength_of(record: Record, on: date, rules: Rules) -> Mapping[Key, Trend]:
    """A trend for every movement and side with evidence up to the end of day `on`."""
    sessions = sorted((one for one in record.sessions if one.on <= on), key=lambda one: one.on)
    bodyweight = BodyweightHistory(record)
    return followed_of(lines_of(sessions, bodyweight.on_each([one.on for one in sessions]), rules))


def followed_of(lines: Mapping[Key, Line]) -> Mapping[Key, Trend]:
    return {key: trend for key, line in lines.items() if (trend := line.followed()) is not None}


def best_sets(record: Record, movement_id: str, side: Side | None, on: date, rules: Rules) -> tuple[BestSet, ...]:
    """Sets of a movement and side in the days before `on` (`strength.best_set_days`), for the cap on a rise.

    The added load counts with the bodyweight of then or of day `on`, whichever is less: who got lighter has lifted less
    for the plates of today, and who got heavier is given no more for it. Sets that only ramp up to a session's
    heaviest are left out.
    """
    since = on - timedelta(days=rules.whole("strength.best_set_days"))
    bodyweight, share = BodyweightHistory(record), movement(movement_id).bodyweight_share
    today_kg = bodyweight.on(on)
    return tuple(
        best
        for session in record.sessions
        if since <= session.on < on
        for best in _done(
            session,
            movement_id,
            side,
            share * min(today_kg, bodyweight.on(session.on)),
            planned_kg(record, session.on, movement_id),
        )
    )


def planned_kg(record: Record, day: date, movement_id: str) -> float | None:
    """The lightest added load of a movement's work in the plan sent for `day`; None where none was."""
    sent = record.sent_by_day.get(day)
    planned = (
        [one.load_kg - one.assist_kg for one in sent.sets if one.part == "main" and one.movement == movement_id]
        if sent
        else []
    )
    return min(planned, default=None)


def _done(
    session: Session, movement_id: str, side: Side | None, body_kg: float, planned: float | None
) -> list[BestSet]:
    done = []
    for work in sets_in(session, movement_id):
        if work.side not in (side, None) or not counts(work) or not work.reps:
            continue
        n = float(work.reps) if work.rpe is None else reps_to_failure(work.reps, 10.0 if work.failed else work.rpe)
        # What was planned as work is work, however light: a deload, the first week back.
        is_planned = planned is not None and work.load_kg - work.assist_kg >= planned - 1e-6
        told = work.failed or work.rpe is not None
        done.append(BestSet(body_kg + work.load_kg - work.assist_kg, float(work.reps), n, told, is_planned))
    heaviest = max((one.system_load_kg for one in done), default=0.0)
    return [one for one in done if one.system_load_kg >= LIGHT_SHARE * heaviest]
