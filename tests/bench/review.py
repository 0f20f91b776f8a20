"""Print how long one review of five years takes, and how it grows: `python -m tests.bench.review`.

1,000 sessions with 25 sets each, pain answers twice a session, a bodyweight a week, the plans that were sent.
"""

from __future__ import annotations

import argparse
import random
import time
from datetime import date, timedelta
from statistics import median

from planner import review
from planner.facts import Athlete, Bodyweight, PainAnswer, PlannedSet, Record, SentPlan, Session, WorkSet

START = date(2027, 1, 4)
SIDES = ("left", "right")


def session(on: date, number: int, chance: random.Random) -> Session:
    load = 15.0 + round(number * 0.02 / 1.25) * 1.25
    skill = [WorkSet("archer_ring_elbow", 2, side=side, rom="lower_half", rpe=7.0) for _ in range(2) for side in SIDES]
    main = [WorkSet("pull_up", 4, load_kg=load, rpe=None if n else 7.0 + chance.random()) for n in range(4, -1, -1)]
    rest = [WorkSet("ring_row", 10) for _ in range(4)] + [WorkSet("dip", 6, load_kg=10.0) for _ in range(6)]
    return Session(
        on, (*skill, *main, *rest, *(WorkSet("hollow_hold", None, hold_s=30.0) for _ in range(6))), fact=number
    )


def record(sessions: int) -> tuple[Record, date]:
    chance = random.Random(1)
    days = [START + timedelta(days=n * 7 // 4) for n in range(sessions)]
    done = tuple(session(day, number, chance) for number, day in enumerate(days))
    pain = tuple(
        PainAnswer(day + timedelta(days=later), "elbow", "right", float(chance.choice([0, 0, 1, 2])), when)
        for day in days
        for later, when in ((0, "after"), (1, "morning"))
    )
    sent = tuple(
        SentPlan(one.on, 1, 1, "training", tuple(PlannedSet(s.movement, "main", s.reps, side=s.side) for s in one.sets))
        for one in done
    )
    weighed = tuple(Bodyweight(START + timedelta(weeks=n), 70.0 + chance.random()) for n in range(sessions // 4))
    athlete = Athlete("mira", START, 70.0, equipment=frozenset({"bar", "rings", "belt", "bands"}), screened=True)
    return Record(athlete, done, pain, bodyweights=weighed, sent=sent), days[-1] + timedelta(days=1)


def seconds(sessions: int, times: int) -> float:
    spent = []
    for _ in range(times):
        facts, on = record(sessions)  # anew, so that nothing kept from the last review helps
        began = time.perf_counter()
        review(facts, on)
        spent.append(time.perf_counter() - began)
    return median(spent)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--times", type=int, default=5)
    asked = parser.parse_args()
    review(*record(20))
    print("sessions    sets   one review")
    for sessions in (125, 250, 500, 1000):
        print(f"{sessions:8d}{sessions * 25:8d}{1000 * seconds(sessions, asked.times):9.0f} ms")


if __name__ == "__main__":
    main()
