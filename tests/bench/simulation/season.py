"""One virtual athlete through months of a planner: what was asked, what was felt, what hurt."""

from __future__ import annotations

import random
import tempfile
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from typing import Any

from tests.bench.simulation.hidden import PROOF, RUNG_LOAD, Hidden, ratio_at
from tests.bench.simulation.invariants import Watch
from tests.bench.simulation.lateness import met
from tests.bench.simulation.protocol import PlannerProcess
from tests.bench.simulation.voice import name_of, report

START = date(2027, 1, 4)
HANDLE = "ada"
EASIEST = 4.0  # an effort below this is just "light"
MARGIN = {"one_arm_pull_up": 2, "counterweight": 2}
KG_PER_LB = 0.45359237


@dataclass
class Season:
    """What came of it."""

    seed: int
    top_sets: list[tuple[float, float, float]] = field(default_factory=list)  # aimed, felt, told
    sets_asked: int = 0
    impossible: int = 0
    pain_days: int = 0
    days: int = 0
    breaches: list[str] = field(default_factory=list)
    promotions: list[tuple[date, str, bool]] = field(default_factory=list)  # day, rung, with margin
    met: list[frozenset[str]] = field(default_factory=list)  # rungs whose gates the body meets, day by day
    met_practised: list[frozenset[str]] = field(default_factory=list)
    strength_start: float = 0.0
    strength_end: float = 0.0
    strange: list[str] = field(default_factory=list)  # questions asked back, errors
    log: list[str] = field(default_factory=list)


def roster(body: Hidden, rng: random.Random) -> tuple[str, str, Watch]:
    """(TOML, unit, watch) of a roster with the one athlete, placed by an honest test."""
    unit = "lb" if rng.random() < 0.15 else "kg"
    step_kg = 2.5 * KG_PER_LB if unit == "lb" else rng.choice([0.5, 1.25, 2.5])
    step = "plate_step_lb = 2.5" if unit == "lb" else f"plate_step_kg = {step_kg}"
    added = body.pull / ratio_at(4, body.law) - body.bodyweight_kg
    reps = 3 if added > 0 else 5
    days = rng.choice(['["monday", "thursday"]', '["tuesday", "friday"]', '["monday", "wednesday", "saturday"]'])
    load_kg = max(0.0, round(added * 0.97, 1))
    text = f"""
[coach]
name = "Inês"
timezone = "Europe/Lisbon"
summary = {{ day = "sunday", at = "18:00" }}

[[athlete]]
handle = "{HANDLE}"
name = "Ada"
timezone = "Europe/Lisbon"
language = "en"
unit = "{unit}"
bodyweight_kg = {body.bodyweight_kg}
{step}
equipment = ["bar", "rings", "belt", "bands"]
training_days = {days}
plan_at = "07:30"
ladder = "one_arm_pull_up"
screened = true
tests = [
  {{ date = 2027-01-02, movement = "pull_up", reps = {reps}, load_kg = {load_kg}, rpe = 9.0 }},
]
"""
    watch = Watch(body.bodyweight_kg, step_kg, body.weaker)
    watch.lifts.append((START - timedelta(days=2), "pull_up", load_kg, reps))
    return text, unit, watch


def live(
    command: list[str],
    seed: int,
    weeks: int,
    *,
    tell_hidden: bool = False,
    keep_log: bool = False,
    honest: bool = False,
) -> Season:
    """Run one athlete. `tell_hidden`: the planner is an oracle and gets the strength with each line; `honest`: efforts
    are told without a bias, half a point of noise apart."""
    body = Hidden.born(seed)
    if honest:
        body.effort_bias = 0.0
    rng = random.Random(seed * 7919 + 1)
    season = Season(seed, strength_start=body.pull)
    text, unit, watch = roster(body, rng)
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "roster.toml"
        path.write_text(text, encoding="utf-8")
        planner = PlannerProcess([*command, "--roster", str(path)])
        try:
            Life(planner, body, rng, season, unit, watch, tell_hidden, keep_log).run(weeks)
        except RuntimeError as broken:  # one planner's end must not take the other athletes' figures with it
            season.strange.append(f"ended: {broken}")
        finally:
            planner.close()
    season.strength_end = body.pull
    return season


class Life:
    """The days of one athlete and the presses of the coach."""

    def __init__(
        self,
        planner: PlannerProcess,
        body: Hidden,
        rng: random.Random,
        season: Season,
        unit: str,
        watch: Watch,
        tell_hidden: bool,
        keep_log: bool,
    ) -> None:
        self.planner, self.body, self.rng, self.season, self.unit = planner, body, rng, season, unit
        self.watch = watch
        self.first_kg = body.bodyweight_kg
        self.style = rng.choice(["plain", "plain", "reserve", "slashes", "brief"])
        self.away_until: date | None = None
        self.quiet_days = 0
        self.tell_hidden, self.keep_log = tell_hidden, keep_log
        self.plan: dict[str, Any] | None = None
        self.rungs_seen: set[str] = set()

    def run(self, weeks: int) -> None:
        trained_yesterday = False
        for n in range(weeks * 7):
            day = START + timedelta(days=n)
            self.body.wake()
            self.season.met.append(met(self.body))
            self.season.met_practised.append(met(self.body, practised=True))
            self.plan = None
            self.tell(day, time(7, 35))
            if trained_yesterday:
                self.tell(day, time(7, 50), self.pain_words("this morning"))
            if day.weekday() == 6 and self.style != "brief":
                self.weigh(day)
            trained_yesterday = self.train(day)
            self.season.days += 1
            self.season.pain_days += self.body.pain >= 3
            self.go_away(day)
            self.ask_the_coach(day)

    def train(self, day: date) -> bool:
        if not self.plan or self.plan["date"] != day.isoformat() or not self.plan["sets"]:
            return False
        if self.away_until and day <= self.away_until:
            self.season.breaches.append(f"{day} a plan while away")
            return False
        if self.rng.random() < 0.05:
            return False
        plan = self.plan
        self.judge_plan(day, plan)
        done = [self.perform(s, plan["sets"]) for s in plan["sets"]]
        self.watch.done(day, plan, done)
        self.tell(day, time(18, 30), report(done, self.unit, self.rng, self.style))
        if plan["kind"] == "test":
            self.send_clips(day, done)
        self.tell(day, time(19, 0), self.pain_words("after"))
        return True

    def send_clips(self, day: date, done: list[dict[str, Any]]) -> None:
        """One video a side of what was tested one arm at a time."""
        tested = {(one["movement"], one["side"]): one for one in done if one["side"] and one["reps"]}
        for n, one in enumerate(tested.values()):
            self.tell(day, time(18, 40), f"{name_of(one)}, {one['side']}", video=f"clip-{day}-{n}")

    def perform(self, planned: dict[str, Any], whole: list[dict[str, Any]]) -> dict[str, Any]:
        """Do one set as the body allows; say what was felt."""
        done = planned | {"ceiling": planned["rpe"]}
        if planned["part"] in ("warm_up", "accessory") or planned["hold_s"] is not None:
            done["rpe"] = planned["rpe"] if planned["part"] == "accessory" and self.rng.random() < 0.3 else None
            done["reps"] = planned["reps"] if planned["reps"] is not None or planned["hold_s"] is not None else 10
            return done
        most = self.body.most_reps(planned)
        self.season.sets_asked += 1
        ceiling = planned["rpe"] or 9.0
        wanted = planned["reps"] if planned["reps"] is not None else max(0, int(most - (10 - ceiling)))
        reps = wanted if most >= wanted - 0.25 else max(0, int(most))
        felt = min(10.0, 10 - (most - reps)) if reps else 10.0
        if reps < wanted:
            self.season.impossible += self.plan is not None and self.plan["kind"] != "test"
        self.body.trains(planned, reps, felt)
        done |= {"reps": reps, "failed": reps < wanted, "felt": felt, "rpe": self.body.says_of(felt)}
        last_of_kind = [s for s in whole if s["part"] == planned["part"] and s["movement"] == planned["movement"]][-1]
        if not planned["side"] and last_of_kind is not planned:
            done["rpe"] = None
        # A deload is light on purpose: its loads are capped by the block before, whatever they feel like.
        deload = self.plan is not None and self.plan["kind"] == "deload"
        top = planned["part"] == "main" and not planned["side"] and last_of_kind is planned
        if top and planned["rpe"] and planned["reps"] and not deload:
            self.season.top_sets.append((planned["rpe"], max(felt, EASIEST), done["rpe"]))
        return done

    # ---------------------------------------------------------------- what the plan must not do

    def judge_plan(self, day: date, plan: dict[str, Any]) -> None:
        self.season.breaches += [f"{day} {breach}" for breach in self.watch.plan(day, plan)]
        for s in plan["sets"]:
            rung = s["rung"]
            if s["part"] == "skill" and plan["kind"] != "test" and rung in RUNG_LOAD and rung not in self.rungs_seen:
                self.rungs_seen.add(rung)
                margin = min(self.body.rung_reps(rung, side) for side in ("left", "right")) >= MARGIN.get(rung, PROOF)
                self.season.promotions.append((day, rung, margin))

    # ---------------------------------------------------------------- talking

    def go_away(self, day: date) -> None:
        """Now and then a week or three without training, said beforehand."""
        if (self.away_until and day <= self.away_until) or self.rng.random() > 0.004:
            return
        first = day + timedelta(days=1)
        self.away_until = first + timedelta(days=self.rng.choice([4, 6, 9, 17]))
        months = "January February March April May June July August September October November December".split()
        span = [f"{d.day} {months[d.month - 1]}" for d in (first, self.away_until)]
        self.tell(day, time(20, 0), f"I'm away from {span[0]} to {span[1]}, no training")

    def weigh(self, day: date) -> None:
        """Once a week; the body drifts a little around where it began."""
        body = self.body
        body.bodyweight_kg = round(
            body.bodyweight_kg + self.rng.gauss(0, 0.25) + 0.1 * (self.first_kg - body.bodyweight_kg), 1
        )
        self.watch.bodyweight_kg = body.bodyweight_kg
        shown = body.bodyweight_kg / (KG_PER_LB if self.unit == "lb" else 1.0)
        self.tell(day, time(8, 30), f"bodyweight {shown:.1f} {self.unit}")

    def ask_the_coach(self, day: date) -> None:
        """The coach starts again what a stop ended, once a week has been quiet."""
        self.quiet_days = self.quiet_days + 1 if self.body.pain <= 2 else 0
        if self.watch.stopped and self.quiet_days == 7:
            self.watch.stopped = False
            self.tell(day, time(20, 30), "Ada restart", sender="coach")

    def pain_words(self, when: str) -> str:
        self.watch.stopped = self.watch.stopped or self.body.pain > 5
        return f"right elbow {self.body.pain}/10 {when}" if self.body.pain else "no pain"

    def tell(
        self, day: date, at: time, words: str | None = None, *, sender: str = HANDLE, video: str | None = None
    ) -> None:
        moment = datetime.combine(day, at, UTC).isoformat()
        line: dict[str, Any] = {"at": moment}
        if words is not None:
            line |= {"from": sender, "text": words}
        if video is not None:
            line["video"] = video
        if self.tell_hidden:
            b = self.body
            line["hidden"] = {
                "pull": b.pull,
                "law": b.law,
                "bodyweight_kg": b.bodyweight_kg,
                "damage": b.damage,
                "rungs": {r: min(b.rung_reps(r, s) for s in ("left", "right")) for r in RUNG_LOAD},
            }
        if self.keep_log and words is not None:
            self.season.log.append(f"{moment[:16]} {sender}: {words}")
        for answer in self.planner.tell(line):
            self.hear(answer, moment)

    def hear(self, answer: dict[str, Any], moment: str) -> None:
        if "error" in answer:
            self.season.strange.append(f"{moment} {answer['error']}")
            return
        if self.keep_log:
            self.season.log.append(f"{moment[:16]} -> {answer['to']}: {answer['text']} {answer['buttons'] or ''}")
        if answer.get("plan") and answer["to"] == HANDLE:
            self.plan = answer["plan"] if answer["plan"]["date"] == moment[:10] else self.plan
        if answer["to"] == "coach" and "Approve" in answer["buttons"]:
            press: dict[str, Any] = {"at": moment, "from": "coach", "press": "Approve"}
            if answer.get("about"):
                press["about"] = answer["about"]
            for more in self.planner.tell(press):
                self.hear(more, moment)
