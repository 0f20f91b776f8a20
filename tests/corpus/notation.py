"""Short notation for golds, so that a hundred of them can be written and checked by eye.

Sets: entries parted by ";", each "MOVEMENT WORD …", words in any order:
    5x3  5x10s  3  5,5,4  10s,8s  3x5/4  ?     sets x reps, hold seconds, a list, left/right, not known
    L R LR RL                                  side; LR is left, right, left, right
    +20  +25lb  +?   -7.5  -?                  added load, assistance, not known
    @8  last@8                                 effort of each set, of the last one (the last pair with LR)
    lower upper rom?  ecc  fail  top middle bottom  link (straight after the one before)  on=2027-03-05
"_" as movement is null. Pain: "SITE SIDE SCORE [WHEN]; …", "-" for what is not said.
"""

from __future__ import annotations

import re
from typing import Any

KG_PER_LB = 0.45359237  # exact since 1959
SIDES = {"L": "left", "R": "right", "-": None}
PARTS = {"w": "warm_up", "s": "skill", "m": "main", "a": "accessory"}


def one_set(movement: str | None, **values: Any) -> dict[str, Any]:
    """A set of the contract with every field, null or plain where `values` is silent."""
    blank: dict[str, Any] = {
        "movement": movement,
        "side": None,
        "reps": None,
        "hold_s": None,
        "load_kg": 0,
        "assist_kg": 0,
        "rpe": None,
        "rom": "full",
        "eccentric": False,
        "pauses": [],
        "failed": False,
        "linked": False,
        "on": None,
    }
    assert set(values) <= set(blank), values
    return blank | values


def sets(notation: str) -> list[dict[str, Any]]:
    """The sets that `notation` stands for, in order. Raises ValueError on a word it does not know."""
    return [s for entry in notation.split(";") if entry.strip() for s in _entry(entry.split())]


def prescribed(notation: str) -> list[dict[str, Any]]:
    """A day's plan: entries as in `sets`, each led by part and rung, "m/weighted_pull_up" or "a"."""
    plan = []
    for entry in notation.split(";"):
        place, *words = entry.split()
        part, _, rung = place.partition("/")
        for s in _entry(words):
            bare = {k: v for k, v in s.items() if k not in ("linked", "on")}
            plan.append(bare | {"part": PARTS[part], "rung": rung or None})
    return plan


def pain(notation: str) -> list[dict[str, Any]]:
    """Pain entries."""
    entries = []
    for entry in notation.split(";"):
        if entry.strip():
            site, side, score, *when = entry.split()
            entries.append(
                {
                    "site": None if site == "-" else site,
                    "side": SIDES[side],
                    "score": None if score == "-" else _number(score),
                    "when": when[0] if when else None,
                }
            )
    return entries


def _entry(words: list[str]) -> list[dict[str, Any]]:
    movement, *rest = words
    work: list[dict[str, Any]] = []
    common: dict[str, Any] = {"pauses": []}
    sides: list[str | None] = [None]
    last = None
    for word in rest:
        if word in ("L", "R", "LR", "RL"):
            sides = [SIDES[c] for c in word]
        elif word in ("top", "middle", "bottom"):
            common["pauses"] = [*common["pauses"], word]
        elif word in _FLAGS:
            common |= _FLAGS[word]
        elif word.startswith("on="):
            common["on"] = word[3:]
        elif word.startswith("last@"):
            last = _number(word[5:])
        elif word[0] in "@+-":
            common |= _load(word)
        else:
            work = _work(word)
    assert work, words
    made = []
    for step in work:
        for side in sides:
            part = {"reps": step[side]} if side in step else step
            made.append(one_set(None if movement == "_" else movement, **common, **part, side=side))
    if last is not None:
        for s in made[-len(sides) :]:
            s["rpe"] = last
    return made


_FLAGS: dict[str, dict[str, Any]] = {
    "lower": {"rom": "lower_half"},
    "upper": {"rom": "upper_half"},
    "rom?": {"rom": None},
    "ecc": {"eccentric": True},
    "fail": {"failed": True},
    "link": {"linked": True},
}


def _load(word: str) -> dict[str, Any]:
    field = {"@": "rpe", "+": "load_kg", "-": "assist_kg"}[word[0]]
    if word[1:] == "?":
        return {field: None}
    return {field: float(word[1:-2]) * KG_PER_LB if word.endswith("lb") else _number(word[1:])}


def _work(word: str) -> list[dict[Any, Any]]:
    """Steps of work: {"reps"} or {"hold_s"}, or reps by side."""
    times, _, what = word.rpartition("x")
    if "/" in what:
        left, right = what.split("/")
        return [{"left": int(left), "right": int(right)}] * int(times or 1)
    return [_amount(a) for a in what.split(",")] * int(times or 1)


def _amount(word: str) -> dict[Any, Any]:
    if word == "?":
        return {"reps": None}
    if word.endswith("s"):
        return {"hold_s": _number(word[:-1])}
    if not re.fullmatch(r"\d+", word):
        raise ValueError(f"no amount of work: {word!r}")
    return {"reps": int(word)}


def _number(word: str) -> float | int:
    value = float(word)
    return int(value) if value.is_integer() else value
