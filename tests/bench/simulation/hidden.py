"""What a planner cannot see: strength, its response to training, and the tendon behind it. Invented numbers."""

from __future__ import annotations

import math
import random
from dataclasses import dataclass, field

# Share of the bodyweight that the working arm moves. Invented so that the trade's gates and proofs fit each other.
RUNG_LOAD = {
    "archer_elbow_lower": 0.77,
    "archer_elbow_full": 0.81,
    "archer_shoulder": 0.85,
    "hand_on_biceps": 0.90,
    "hand_on_shoulder": 0.945,
    "counterweight": 0.95,
    "one_arm_pull_up": 1.0,
}
MOVEMENT_LOAD = {
    ("archer_ring_elbow", "lower_half"): 0.77,
    ("archer_ring_elbow", "upper_half"): 0.79,
    ("archer_ring_elbow", "full"): 0.81,
    ("archer_ring_shoulder", "lower_half"): 0.82,
    ("archer_ring_shoulder", "upper_half"): 0.83,
    ("archer_ring_shoulder", "full"): 0.85,
    ("one_arm_hand_on_biceps", "lower_half"): 0.88,
    ("one_arm_hand_on_biceps", "upper_half"): 0.885,
    ("one_arm_hand_on_biceps", "full"): 0.90,
    ("one_arm_hand_on_shoulder", "lower_half"): 0.925,
    ("one_arm_hand_on_shoulder", "upper_half"): 0.935,
    ("one_arm_hand_on_shoulder", "full"): 0.945,
    ("one_arm_pull_up", "full"): 1.0,
    ("one_arm_pull_up", "upper_half"): 0.97,
    ("one_arm_pull_up", "lower_half"): 0.97,
    ("one_arm_chin_up", "full"): 0.99,
    ("one_arm_counterweight", "full"): 1.0,
}
GRIP = {"pull_up": 1.0, "chin_up": 1.02, "neutral_grip_pull_up": 1.015, "ring_pull_up": 0.98}
PAUSE_COST = 0.02
BAND_HELP_KG = 15.0
PROOF = 3


def reps_at(ratio: float, law: float) -> float:
    """Reps to failure at a load that is 1RM / `ratio`; 1 at the 1RM itself."""
    return 37.0 - 36.0 / float(ratio ** (1.0 / law))


def ratio_at(reps: float, law: float) -> float:
    """1RM over the load that allows so many reps."""
    return float((36.0 / (37.0 - reps)) ** law)


@dataclass
class Hidden:
    """One athlete's body. Loads in kg of system load; `pull` is the two-arm 1RM when fresh."""

    rng: random.Random
    bodyweight_kg: float
    pull: float
    ceiling: float
    law: float  # the athlete's own curve, as a power of Brzycki's: above 1 the reps fall faster with load
    deficit: float  # bilateral deficit
    asymmetry: float  # the weaker side's share less than the stronger's
    weaker: str
    response: float  # share of the way to the ceiling that a good session covers
    tendon: float  # strain of a day that is just borne
    effort_bias: float  # reported RPE over felt RPE when far from failure
    skill: dict[str, float] = field(default_factory=dict)  # practice on a movement, 0 to 1
    fatigue: float = 0.0
    damage: float = 0.0
    strain_today: float = 0.0
    usual_strain: float = 4.0  # what training days were like of late: the tendon knows this much
    idle_days: int = 0
    form: float = 1.0

    @classmethod
    def born(cls, seed: int) -> Hidden:
        rng = random.Random(seed)
        bodyweight = rng.uniform(56, 92)
        relative = rng.uniform(1.28, 1.72)
        return cls(
            rng=rng,
            bodyweight_kg=round(bodyweight, 1),
            pull=bodyweight * relative,
            ceiling=bodyweight * (relative + rng.uniform(0.35, 0.6)),
            law=min(max(rng.gauss(1.0, 0.12), 0.75), 1.3),
            deficit=min(max(rng.gauss(0.11, 0.03), 0.03), 0.18),
            asymmetry=abs(rng.gauss(0.0, 0.03)),
            weaker=rng.choice(["left", "right"]),
            response=rng.uniform(0.006, 0.012),
            tendon=rng.uniform(7.5, 11.5),
            effort_bias=min(rng.gauss(0.5, 0.5), 1.2),
        )

    def wake(self) -> None:
        """A new day: recovery, the tendon's slow answer to yesterday, today's form."""
        rng = self.rng
        # Too much for the tendon, or a jump over what it knows: both hurt, days later and for days.
        over = max(0.0, self.strain_today - self.tendon) + max(0.0, self.strain_today - 1.5 * self.usual_strain - 2.0)
        self.damage = self.damage * 0.86 + over * 0.22
        # Collagen answers over months: a little for what was borne, nothing for what was too much.
        if self.strain_today > 0.5 * self.tendon and over == 0:
            self.tendon *= 1.006
        if self.strain_today:
            self.usual_strain += 0.12 * (self.strain_today - self.usual_strain)
        self.idle_days = 0 if self.strain_today else self.idle_days + 1
        self.strain_today = 0.0
        self.fatigue *= 0.62
        if self.idle_days > 10:
            self.pull *= 0.9985
        self.form = math.exp(rng.gauss(0.0, 0.012)) * (0.955 if rng.random() < 0.05 else 1.0)

    def one_arm(self, side: str) -> float:
        """One-arm 1RM, fresh and with full practice [kg]."""
        arm = self.pull / (2 * (1 - self.deficit))
        return arm * (1 - self.asymmetry) if side == self.weaker else arm

    def demand(self, planned: dict) -> tuple[float, float]:
        """(1RM that counts, load moved) [kg] for a set, fresh."""
        movement, rom = planned["movement"], planned["rom"] or "full"
        load = self.bodyweight_kg + (planned["load_kg"] or 0) - (planned["assist_kg"] or 0)
        pauses = 1 + PAUSE_COST * len(planned["pauses"])
        if (movement, rom) in MOVEMENT_LOAD and planned["side"]:
            practised = 0.95 + 0.05 * self.skill.get(movement + rom, 0.0)
            return self.one_arm(planned["side"]) * practised, MOVEMENT_LOAD[movement, rom] * load * pauses
        if movement == "band_pull_up" and not planned["assist_kg"]:
            load -= BAND_HELP_KG
        half = 0.93 if rom != "full" else 1.0
        return self.pull * GRIP.get(movement, 1.0), load * half * pauses

    def most_reps(self, planned: dict, *, fresh: bool = False) -> float:
        """Reps to failure, not whole; below 1: not one. `fresh`: without fatigue and the day's form."""
        strength, load = self.demand(planned)
        if not fresh:
            strength *= self.form * (1 - self.fatigue)
        ratio = strength / load
        return reps_at(ratio, self.law) if ratio >= 1 else ratio

    def rung_reps(self, rung: str, side: str) -> float:
        """Fresh reps on a rung, with practice: what a promotion should rest on."""
        ratio = self.one_arm(side) / (RUNG_LOAD[rung] * self.bodyweight_kg)
        return reps_at(ratio, self.law) if ratio >= 1 else 0.0

    def trains(self, planned: dict, reps: int, felt: float) -> None:
        """The body's answer to one set."""
        strength, load = self.demand(planned)
        missed = False
        if reps == 0:  # a missed rep is tried again with less, and all of it is strain
            load, reps, missed = min(load, 0.95 * strength), 2, True
        if felt >= 5.5:
            hard = min(1.0, (felt - 5) / 4) * min(reps, 6) / 6 * (0.3 if missed else 1.0) / (1 + self.damage / 2)
            self.pull += self.response * hard * 0.3 * (self.ceiling - self.pull)
        self.fatigue += 0.0011 * reps * max(felt - 4, 0.5) / 4
        arm_share = load / self.bodyweight_kg if planned["side"] else load / (2 * self.bodyweight_kg)
        self.strain_today += reps * arm_share**3 * (2.2 if planned["eccentric"] else 1.0) * (1.5 if felt > 9.5 else 1.0)
        if planned["side"]:
            key = planned["movement"] + (planned["rom"] or "full")
            self.skill[key] = min(1.0, self.skill.get(key, 0.0) + 0.04 * reps)

    @property
    def pain(self) -> int:
        return min(10, round(self.damage))

    def says_of(self, felt: float) -> float:
        """Reported effort: people say less is left than is, the more the further from failure; half points."""
        said = felt + self.effort_bias * (10 - felt) / 3 + self.rng.gauss(0, 0.4)
        return min(10.0, max(5.0, round(said * 2) / 2))
