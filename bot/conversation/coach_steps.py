"""Orders of a step on what is planned, "+1.25", "a set more for mira": read, and made into sets with numbers."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

from bot.conversation.coach_vocabulary import vocabulary
from bot.reading.little import little
from planner.facts import PlannedSet
from planner.units import lb_from_kg

# A larger step is a load or a scheme that was meant otherwise; common practice, no source.
MOST = {"set": 3.0, "rep": 5.0, "kg": 5.0, "lb": 10.0, "percent": 30.0}


@dataclass(frozen=True, slots=True)
class Step:
    """`by` is below 0 where it is less. `unit`: of a load, where one was named. `percent` is of the system load."""

    what: Literal["set", "rep", "load", "percent"]
    by: float
    unit: Literal["kg", "lb"] | None = None


@dataclass(frozen=True, slots=True)
class Stepped:
    """What is planned, a step on: `load` is None where it stays the planned one."""

    sets: int
    reps: int
    load: float | None
    unit: Literal["kg", "lb"]


def step_of(text: str, language: str) -> tuple[Step | None, str]:
    """The one step in an order, and the order without it."""
    for pattern in _patterns(language):
        found = list(pattern.finditer(text))
        if len(found) == 1:
            step = _step(found[0], language)
            if step is not None:
                return step, f"{text[: found[0].start()]} {text[found[0].end() :]}".strip()
    return None, text


def stepped(
    step: Step, sets: Iterable[PlannedSet], unit: Literal["kg", "lb"], at_share: Callable[[float, float], float]
) -> Stepped | None:
    """The sets of one movement with the step on them; None where they are not all alike, or the step is too large.

    Args:
        unit: The athlete's, where the step names none.
        at_share: The added load [kg] on the athlete's plates that makes a share of the system load with another; 0
            where bodyweight alone is more.
    """
    planned = tuple(sets)
    if len({(one.reps, one.load_kg, one.assist_kg, one.hold_s) for one in planned}) != 1 or planned[0].reps is None:
        return None
    unit, first = step.unit or unit, planned[0]
    if abs(step.by) > MOST[unit if step.what == "load" else step.what]:
        return None
    count = len(planned) // len({one.side for one in planned}) + (int(step.by) if step.what == "set" else 0)
    reps = planned[0].reps + (int(step.by) if step.what == "rep" else 0)
    load = None
    if step.what == "percent":
        if first.assist_kg or not first.load_kg:
            return None  # bodyweight cannot be taken off
        load, unit = round(at_share(first.load_kg, 1.0 + step.by / 100.0), 2), "kg"
    if step.what == "load":
        if first.assist_kg:
            return None
        load = round((lb_from_kg(first.load_kg) if unit == "lb" else first.load_kg) + step.by, 2)
    return Stepped(count, reps, load, unit) if count >= 1 and reps >= 1 and (load or 0.0) >= 0.0 else None


@lru_cache(maxsize=8)
def _patterns(language: str) -> tuple[re.Pattern[str], ...]:
    words = vocabulary(language, "steps")
    units = [*words["set"], *words["rep"], *words["percent"], *little("kilos"), *little("pounds")]
    unit, number = f"(?P<unit>{_any(units)})", f"(?P<number>\\d+(?:[.,]\\d+)?|{_any(_counts(language))})"
    more, less = f"(?P<more>{_any(words['more'])})", f"(?P<less>{_any(words['less'])})"
    before = f"(?:(?P<more>{_any(words['add'])})|(?P<less>{_any(words['off'])}))"
    forms = (
        rf"{number}\s*{unit}\s+(?:{more}|{less})",
        rf"{number}\s+(?:{more}|{less})\s+{unit}",
        rf"{before}\s+{number}\s*{unit}",
        rf"(?P<more>{_any(words['another'])})\s+{unit}" if words["another"] else r"(?!)",
        rf"(?:(?P<more>\+)|(?P<less>[-\u2212]))\s*(?P<number>\d+(?:[.,]\d+)?)\s*(?:{unit})?",
    )
    return tuple(re.compile(rf"(?<![\w.,]){form}(?![\w.,]*\d)(?!\w)", re.IGNORECASE) for form in forms)


def _any(words: Iterable[str]) -> str:
    return "|".join(sorted(map(re.escape, words), key=len, reverse=True))


def _counts(language: str) -> dict[str, float]:
    return {word: float(count) for count, words in vocabulary(language, "counts").items() for word in words}


def _step(found: re.Match[str], language: str) -> Step | None:
    parts, words = found.groupdict(), vocabulary(language, "steps")
    number, unit = (parts.get("number") or "1").casefold(), (parts.get("unit") or "").casefold()
    by = _counts(language).get(number)
    by = float(number.replace(",", ".")) if by is None else by
    by = by if parts.get("more") else -by
    if unit in words["set"] or unit in words["rep"]:
        return Step("set" if unit in words["set"] else "rep", by) if by == int(by) and by else None
    if unit in words["percent"]:
        return Step("percent", by) if by else None
    return Step("load", by, None if not unit else "lb" if unit in little("pounds") else "kg") if by else None
