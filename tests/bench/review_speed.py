"""Prints how long a review of five years takes: cold (sessions never seen) and warm (their digests kept).

Run: python -m tests.bench.review_speed
"""

from __future__ import annotations

from datetime import date, timedelta
from time import perf_counter

from planner import review, week_ahead
from planner.facts import Athlete, PainAnswer, Record, Session, Weekly, WorkSet

START = date(2022, 1, 3)
YEARS_DAYS = 5 * 365
SIDES = ("left", "right")


def five_years() -> Record:
    """About 1,000 sessions of 25 sets, half of them pulling."""
    who = Athlete(
        "mira",
        START,
        70.0,
        (("one_arm_pull_up", "archer_elbow_lower"),),
        equipment=frozenset({"bar", "rings", "belt", "bands"}),
        screened=True,
        schedule=Weekly(frozenset({0, 1, 3, 5})),
    )
    sessions = [Session(START - timedelta(2), (WorkSet("pull_up", 3, load_kg=35, rpe=9),), is_test=True)]
    for number in range(YEARS_DAYS):
        day = START + timedelta(number)
        if day.weekday() in (0, 3):
            skill = [WorkSet("archer_ring_elbow", 2, side, rpe=7, rom="lower_half") for side in SIDES * 2]
            main = [WorkSet("pull_up", 3, load_kg=25 + number / 365, rpe=7.5)] * 5
            rest = [WorkSet("external_rotation", 12, side) for side in SIDES * 5] + [WorkSet("push_up", 8)] * 6
            sessions.append(Session(day, (*skill, *main, *rest)))
        elif day.weekday() in (1, 5):
            sessions.append(Session(day, (WorkSet("push_up", 8),) * 25))
    pain = tuple(PainAnswer(START + timedelta(7 * n), "elbow_inner", "left", float(n % 3), "after") for n in range(260))
    return Record(who, tuple(sessions), pain=pain)


def main() -> None:
    record, on = five_years(), START + timedelta(YEARS_DAYS)
    print(f"{len(record.sessions)} sessions, {sum(len(one.sets) for one in record.sessions)} sets")
    for name in ("cold", "warm", "warm"):
        began = perf_counter()
        review(record, on)
        print(f"review, {name}: {1000 * (perf_counter() - began):.0f} ms")
    began = perf_counter()
    week_ahead(record, on)
    print(f"week ahead: {1000 * (perf_counter() - began):.0f} ms")


if __name__ == "__main__":
    main()
