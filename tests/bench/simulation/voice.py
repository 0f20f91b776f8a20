"""How a virtual athlete tells of a session: natural text within the reading contract, several styles."""

from __future__ import annotations

import random
from itertools import groupby

NAMES = {
    "pull_up": "pull-ups",
    "chin_up": "chin-ups",
    "neutral_grip_pull_up": "neutral grip pull-ups",
    "ring_pull_up": "ring pull-ups",
    "archer_ring_elbow": "archers with the ring at elbow height",
    "archer_ring_shoulder": "archers with the ring at shoulder height",
    "one_arm_hand_on_biceps": "one arm hand on biceps",
    "one_arm_hand_on_shoulder": "one arm hand on shoulder",
    "one_arm_counterweight": "one arm with counterweight",
    "one_arm_pull_up": "one arm pull-up",
    "one_arm_chin_up": "one arm chin-up",
    "scapular_pull_up": "scap pulls",
    "band_pull_up": "band pull-ups",
    "ring_row": "ring rows",
    "lat_pulldown": "lat pulldown",
    "external_rotation": "external rotation",
    "wrist_curl": "wrist curls",
    "face_pull": "face pulls",
    "push_up": "push-ups",
    "dead_hang": "dead hang",
    "hollow_hold": "hollow hold",
    "hanging_leg_raise": "hanging leg raises",
    "biceps_curl": "biceps curls",
    "hammer_curl": "hammer curls",
    "dip": "dips",
    "row": "rows",
}
ROM = {"lower_half": "bottom half ", "upper_half": "top half ", "full": ""}


def number(value: float) -> str:
    return f"{value:.2f}".rstrip("0").rstrip(".")


def load_words(done: dict, unit: str) -> str:
    each = 0.45359237 if unit == "lb" else 1.0
    if done["assist_kg"]:
        return f" with {number(done['assist_kg'])} kg counterweight"
    return f" +{number(done['load_kg'] / each)}{unit}" if done["load_kg"] else ""


def name_of(done: dict) -> str:
    pauses = f" with a pause at the {' and the '.join(done['pauses'])}" if done["pauses"] else ""
    return ROM[done["rom"]] + NAMES.get(done["movement"], done["movement"].replace("_", " ")) + pauses


def effort_words(rpe: float | None, count: int, style: str) -> str:
    if rpe is None:
        return ""
    if style == "reserve" and rpe == int(rpe):
        left = f"{int(10 - rpe)} in reserve" if rpe < 10 else "nothing left"
        return f", {left} on the last set" if count > 1 else f", {left}"
    return f", last set rpe {number(rpe)}" if count > 1 else f", rpe {number(rpe)}"


def line(sets: list[dict], unit: str, style: str) -> str:
    """One movement at one load: "pull-ups +20kg: 5, 5, 4, last @8.5" and the like."""
    first = sets[0]
    head = name_of(first) + load_words(first, unit)
    if first["side"]:
        return head + ": " + ", ".join(one_side(s) for s in sets)
    if first["hold_s"] is not None:
        return head + ": " + ", ".join(f"{number(s['hold_s'])}s" for s in sets)
    reps = [s["reps"] for s in sets]
    effort = effort_words(sets[-1]["rpe"], len(sets), style)
    if style == "slashes" and len(sets) > 1:
        return f"{head}: " + "/".join(str(r) for r in reps) + effort
    if len(set(reps)) == 1 and not sets[-1]["failed"]:
        return (
            f"{NAMES.get(first['movement'], first['movement'])} {len(sets)}x{reps[0]}{load_words(first, unit)}{effort}"
            if not first["pauses"] and first["rom"] == "full"
            else f"{head}: {len(sets)}x{reps[0]}{effort}"
        )
    return head + ": " + ", ".join(str(r) for r in reps) + effort


def one_side(done: dict) -> str:
    effort = f" rpe {number(done['rpe'])}" if done["rpe"] is not None else ""
    missed = " (missed)" if done["failed"] and not done["reps"] else ""
    return f"{done['side']} {done['reps']}{missed}{effort}"


def same_work(done: dict) -> tuple:
    return (
        done["part"],
        done["movement"],
        done["rom"],
        done["load_kg"],
        done["assist_kg"],
        tuple(done["pauses"]),
        done["side"] is not None,
    )


def as_planned(sets: list[dict]) -> bool:
    """Nothing missed, nothing harder than asked: what some then write no more about than "done"."""
    return not any(s["failed"] or (s["rpe"] or 0) > (s["ceiling"] or 10) for s in sets)


def report(sets: list[dict], unit: str, rng: random.Random, style: str) -> str:
    """The whole session, warm-ups left out as people do. Styles: plain, reserve, slashes, brief."""
    if style == "brief" and as_planned(sets) and rng.random() < 0.4:
        return rng.choice(["done", "all as planned", "Done as planned 💪"])
    told = [s for s in sets if s["part"] != "warm_up"]
    lines = [line(list(group), unit, style) for _, group in groupby(told, same_work)]
    if style == "brief" and rng.random() < 0.3:
        lines.append(rng.choice(["slept 7h", "slept badly, 5.5 hours", "took 55 min"]))
    return rng.choice(["\n", ". ", "\n"]).join(lines) if lines else "did the warm-up only"
