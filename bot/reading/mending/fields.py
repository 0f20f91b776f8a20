"""Which field a value is of, which set and side, and in which unit."""

from __future__ import annotations

from typing import cast

from bot.reading.little import little
from bot.reading.mending.mend import MOST_SCORE, Mend, Value
from bot.reading.movements.mention import Mention
from bot.reading.phrases import longest
from planner.facts import Side
from planner.units import KG_PER_LB

LEAST_RATED = 6
LEAST_ASSIST = 5  # whole kilograms of a counterweight; fewer are reps (from rehearsal, no source)
SMALL = 12  # whole numbers up to here may be reps
# Of the bodyweight: a value so near it is what somebody weighs, sooner than what hangs from the belt.
NEAR_BODY = 0.15
SETS = frozenset("reps load_kg rpe hold_s assist_kg sets movement side".split())


def factor_of(mend: Mend, now: Value, was: Value) -> float:
    unit: str = mend.message.context.unit
    for value in (now, was):
        word = mend.tokens[value.end].text if value.end < len(mend.tokens) else ""
        unit = "kg" if word in little("kilos") else "lb" if word in little("pounds") else unit
    return KG_PER_LB if unit == "lb" else 1.0


def field_of(mend: Mend, now: Value, was: Value, start: int, end: int, mentions: list[Mention]) -> tuple[str, bool]:
    """The field that two values are of, and whether that is a guess to be asked about."""
    if now.text and was.text:
        return "sets", False
    low = next((a for a, b in mend.message.sentences if a <= start < b), 0)
    close = {
        hit.name
        for v in (now, was)
        for hit in mend.between("field", v.end, min(len(mend.tokens), v.end + 2))
        if hit.start == v.end
    }
    said = {hit.name for hit in mend.between("field", low, min(len(mend.tokens), end + 6))}
    whole = now.value == int(now.value) and was.value == int(was.value)
    marks = {now.mark, was.mark}
    known = mend.message.context.bodyweight_kg
    factor = factor_of(mend, now, was)
    body = (
        known is not None
        and abs(now.value * factor - known) <= NEAR_BODY * known
        and abs(was.value * factor - known) <= NEAR_BODY * known
    )
    if "session_rpe" in said:
        return "session_rpe", False
    if "rpe" in said or (marks == {"@"} and now.value <= 10 and was.value <= 10):
        return "rpe", False
    if "+" in marks:
        return "load_kg", False
    if not close and not mentions and all(_rated(mend, value) for value in (now, was)):
        return "rpe", False  # "the last set was a 9, not an 8"
    if "sleep_h" in said:
        return "sleep_h", False
    if ("bodyweight_kg" in said and not mentions) or ("load_kg" in said and body and not mentions):
        return "bodyweight_kg", False
    if ("duration_min" in said and "duration_min" in close) or (
        "duration_min" in said and not mentions and "hold_s" not in close
    ):
        return "duration_min", False
    if "hold_s" in close:
        return "hold_s", False
    if "sets" in close:
        return "sets", False
    light = whole and max(now.value, was.value) < LEAST_ASSIST and not close
    if "assist_kg" in said and light:
        placed = which_set(mend) != "all" or side_of(mend, start, end) is not None
        return "reps", not placed  # "on the pulley 1 instead of 2 on the right"
    if "assist_kg" in said:
        return "assist_kg", False
    if "reps" in close:
        return "reps", False
    if "load_kg" in close:
        return "load_kg", False
    if "score" in said and not mentions and now.value <= 10 and was.value <= 10:
        return "score", False
    if "reps" in said:
        return "reps", False
    before = mend.tokens[now.start - 1].text if now.start else ""
    if not whole or before in little("before_load") or "load_kg" in said:
        return "load_kg", False
    if max(now.value, was.value) > SMALL:
        return "load_kg", max(now.value, was.value) <= 30 and not mentions and min(now.value, was.value) <= SMALL
    if which_set(mend) != "all" or side_of(mend, start, end) is not None or mend.between("which", 0, len(mend.tokens)):
        return "reps", False
    return "reps", True


def which_set(mend: Mend) -> str | int:
    found = longest(mend.hits.get("which", ()))
    # "the last rep of the third set" is of the third; "last set 5" of the last, no fifth
    told = [hit for hit in found if mend.tokens[hit.end - 1].text not in little("rep_word")] or found
    for hit in told:
        return "last" if hit.name == "last" else int(hit.name)
    return "all"


def side_of(mend: Mend, start: int, end: int) -> Side | None:
    found = [h for h in mend.message.hits("body") if h.table == "side" and h.name != "both"]
    sides = {h.name for h in found if not start <= h.start < end}
    if len(sides) > 1:  # "left arm did 2, not 3. Right is correct"
        low, high = next(((a, b) for a, b in mend.message.sentences if a <= start < b), (0, 0))
        sides = {h.name for h in found if low <= h.start < start or end <= h.start < high}
    return cast(Side, sides.pop()) if len(sides) == 1 else None


def _rated(mend: Mend, value: Value) -> bool:
    """Whether a number is told as an effort is: "a 9"."""
    led = mend.tokens[value.start - 1].text if value.start else ""
    return led in little("a") and LEAST_RATED <= value.value <= MOST_SCORE
