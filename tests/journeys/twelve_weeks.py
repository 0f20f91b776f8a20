"""Twelve weeks of three athletes: Ana is steady, Ben's elbow is sore in week 4, Cleo is on holiday in weeks 7 and 8."""

from __future__ import annotations

import heapq
from collections.abc import Callable
from datetime import date, timedelta
from itertools import count
from typing import Any

from tests.journeys.rehearsing import Talk

FIRST = date(2027, 1, 4)  # a Monday
WEEKS = 12
SORE_WEEK = 4
HOLIDAY = (7, 8)

_ATHLETE = """
[[athlete]]
handle = "{handle}"
name = "{name}"
timezone = "Europe/Zurich"
bodyweight_kg = {bodyweight}
plate_step_kg = 1.25
equipment = ["bar", "rings", "belt", "bands"]
training_days = ["monday", "thursday"]
plan_at = "07:30"
rung = "weighted_pull_up"
screened = true
tests = [ {{ date = 2027-01-02, movement = "pull_up", reps = 5, load_kg = {load}, rpe = 9.0 }} ]
"""
ROSTER = """
[coach]
name = "Inês"
timezone = "Europe/Lisbon"
summary = { day = "sunday", at = "18:00" }
""" + "".join(
    _ATHLETE.format(handle=handle, name=handle.title(), bodyweight=bodyweight, load=load)
    for handle, bodyweight, load in (("ana", 60.0, 12.5), ("ben", 78.0, 20.0), ("cleo", 66.0, 7.5))
)
# Bodyweight and, at the start, the strongest system load [kg]; how much stronger they get (invented).
BODIES = {"ana": (60.0, 83.6), "ben": (78.0, 113.0), "cleo": (66.0, 84.8)}
GAIN_A_WEEK = 0.004


class Diary:
    """What people mean to do when; the clock of a rehearsal runs one way, so all of it is taken in order."""

    def __init__(self, talk: Talk) -> None:
        self.talk = talk
        self._heap: list[tuple[str, int, Callable[[str], None]]] = []
        self._order = count()

    def note(self, day: date, hour: str, do: Callable[[str], None]) -> None:
        heapq.heappush(self._heap, (f"{day} {hour}", next(self._order), do))

    def live(self) -> None:
        while self._heap:
            when, _, do = heapq.heappop(self._heap)
            self.talk.waits(when)
            do(when)


def live(talk: Talk) -> None:
    """Live through all of it; what was said stays in `talk.said`."""
    diary = Diary(talk)
    diary.note(FIRST, "06:00", lambda _when: None)
    for week in range(1, WEEKS + 1):
        for weekday in (0, 3):
            day = FIRST + timedelta(days=7 * (week - 1) + weekday)
            _evening(diary, "ana", day, "18:10")
            _evening(diary, "ben", day, "19:10", elbow=week == SORE_WEEK)
            if week not in HOLIDAY:
                _evening(diary, "cleo", day, "20:10")
        diary.note(FIRST + timedelta(days=7 * week - 1), "19:30", lambda when: _coach(diary.talk, when))
    first = FIRST + timedelta(days=7 * (HOLIDAY[0] - 1))
    words = f"on holiday from {first:%-d %B} to {first + timedelta(days=13):%-d %B}, no bar there"
    diary.note(first - timedelta(days=3), "12:00", lambda when: diary.talk.says(when, "cleo", words))
    diary.live()


def _evening(diary: Diary, who: str, day: date, hour: str, elbow: bool = False) -> None:
    """Tells of the day's main sets in numbers, and answers about pain, then and in the morning."""
    morning, week = day + timedelta(days=1), (day - FIRST).days // 7 + 1

    def tells(when: str) -> None:
        plan = diary.talk.plans(who).get(day.isoformat())
        if plan is None or not plan["sets"]:
            return
        words = report(plan, who, week) + (". inner elbow 4/10 afterwards" if elbow else "")
        answers = diary.talk.says(when, who, words)
        if any("5" in answer["buttons"] for answer in answers) and not elbow:
            diary.note(day, f"{hour[:3]}55", lambda then: diary.talk.presses(then, who, "0"))
        diary.note(morning, "07:45", wakes)

    def wakes(when: str) -> None:
        if elbow:
            diary.talk.says(when, who, "inner elbow still 4/10 this morning")
            diary.note(morning, "08:00", lambda then: diary.talk.says(then, who, "why less?"))
        elif any(one["at"][:10] == morning.isoformat() and "5" in one["buttons"] for one in diary.talk.messages(who)):
            diary.talk.presses(when, who, "0")

    diary.note(day, hour, tells)


def report(plan: dict[str, Any], who: str, week: int) -> str:
    """The main sets in an athlete's words, with the effort that somebody of their strength would have felt."""
    main = [one for one in plan["sets"] if one["part"] == "main"]
    first = main[0] if main else None
    if first is None or first["movement"] != "pull_up" or first["reps"] is None or any(one != first for one in main):
        return "all done as planned"
    load = f" +{first['load_kg']:g}" if first["load_kg"] else ""
    return f"pull-ups {len(main)}x{first['reps']}{load} @{_effort(who, week, first):g}"


def _effort(who: str, week: int, one: dict[str, Any]) -> float:
    """RPE of one set, to the half point: Brzycki 1993 gives the repetitions that were possible."""
    bodyweight, strongest = BODIES[who]
    possible = 37 - 36 * (bodyweight + one["load_kg"]) / (strongest * (1 + GAIN_A_WEEK * week))
    return min(10.0, max(6.0, round(2 * (10 - (possible - one["reps"]))) / 2))


def _coach(talk: Talk, when: str) -> None:
    """Reads the summary, and approves each promotion that waits for it, once."""
    pressed = [line["in"]["about"] for line in talk.said if line.get("in", {}).get("press") == "Approve"]
    for handle in ("ana", "ben", "cleo"):
        asked = [one for one in talk.messages("coach") if one["about"] == handle and "Approve" in one["buttons"]]
        if len(asked) > pressed.count(handle):
            talk.presses(when, "coach", "Approve", handle)
