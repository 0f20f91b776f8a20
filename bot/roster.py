"""Reading a roster file: a coach and their athletes in TOML. One wrong key, and nothing of it is used."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping
from datetime import date, datetime, time
from pathlib import Path
from typing import Any, Literal, cast

import tomli

from bot.clock import UnknownZone, zone_named
from bot.toml_lines import KeyPath, key_lines
from planner import ladders, movements
from planner.datafile import DataError, text_of
from planner.facts import Cycle, Weekly
from storage.roster import Roster, RosterAthlete, RosterCoach, RosterTest

WEEKDAYS = "monday tuesday wednesday thursday friday saturday sunday".split()
EQUIPMENT = "bar rings belt pulley bands lat_pulldown parallettes wall dumbbells bench".split()
COACH_KEYS = "name timezone language unit summary".split()
ATHLETE_KEYS = (
    "handle name timezone language unit bodyweight_kg plate_step_kg plate_step_lb equipment training_days cycle "
    "plan_at ladder rung more_ladders screened tests"
).split()
LADDER_KEYS = ["ladder", "rung"]
TEST_KEYS = "date movement reps load_kg rpe side rom assist_kg hold_s".split()
SUMMARY = {"day": "sunday", "at": "18:00"}
PLAN_AT = "07:00"
LADDER = "one_arm_pull_up"
PLATE_STEP = {"kg": 1.25, "lb": 2.5}
LONGEST_CYCLE_DAYS = 28

_HANDLE = re.compile(r"[a-z0-9][a-z0-9_-]{0,31}")
_LANGUAGE = re.compile(r"[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*")
_MISSING = object()

Problem = tuple[int, str]  # the line, and the sentence that names it


class RosterError(ValueError):
    """A roster that cannot be used. Each of `problems` is a sentence that names file, line and key."""

    def __init__(self, problems: list[str]) -> None:
        super().__init__("\n".join(problems))
        self.problems = problems


def read_roster(path: Path) -> Roster:
    """Read and check a roster file.

    Raises:
        RosterError: The file is missing, no TOML, or has an unknown key, a bad value, or a handle or name twice.
    """
    try:
        text = text_of(path)
    except DataError as error:
        raise RosterError([str(error)]) from error
    return parse_roster(text, path.name)


def parse_roster(text: str, name: str = "roster") -> Roster:
    """The roster in `text`; `name` stands in the errors. Raises RosterError."""
    try:
        data = tomli.loads(text)
    except tomli.TOMLDecodeError as error:
        raise RosterError([f"{name}: {error}"]) from error
    problems: list[Problem] = []
    root = _Table(data, (), name, key_lines(text), problems)
    root.only(["coach", "athlete"])
    coach = _coach(root.table("coach", COACH_KEYS))
    found = [(table, _athlete(table)) for table in root.tables("athlete", ATHLETE_KEYS)]
    if not found and not problems:
        root.wrong("athlete", "no [[athlete]] is there")
    _told_apart(found)
    if problems:
        # As the file goes: whoever mends it reads it from the top. What was asked for first is of no matter.
        raise RosterError([sentence for _, sentence in sorted(problems, key=lambda problem: problem[0])])
    return Roster(coach, tuple(athlete for _, athlete in found))


def _told_apart(found: list[tuple[_Table, RosterAthlete]]) -> None:
    """Nobody has another's handle or name: the coach's orders and answers speak of people by either."""
    handles: set[str] = set()
    names: set[str] = set()
    for table, athlete in found:
        if athlete.handle and athlete.handle in handles:
            table.wrong("handle", f"{athlete.handle!r} is given twice")
        handles.add(athlete.handle)
        name = _as_called(athlete.name)
        if name and name in names:
            table.wrong("name", f"{athlete.name!r} is given twice; orders speak of athletes by name")
        names.add(name)


def _as_called(name: str) -> str:
    """A name as it is heard: without regard to capitals, spaces and the way its letters are written."""
    return " ".join(unicodedata.normalize("NFKC", name).casefold().split())


class _Table:
    """One table of the file, that knows its lines and notes what is wrong."""

    def __init__(
        self, data: Mapping[str, Any], path: KeyPath, name: str, lines: Mapping[KeyPath, int], problems: list[Problem]
    ) -> None:
        self.data, self._path, self._name, self._lines, self._problems = data, path, name, lines, problems

    def wrong(self, key: str, why: str) -> None:
        path = (*self._path, key)
        line = next((self._lines[path[:end]] for end in range(len(path), 0, -1) if path[:end] in self._lines), 1)
        self._problems.append((line, f"{self._name}:{line}: {key}: {why}"))

    def only(self, known: list[str]) -> None:
        for key in self.data:
            if key not in known:
                self.wrong(key, f"unknown key; known here: {', '.join(known)}")

    def table(self, key: str, known: list[str], default: Mapping[str, Any] | None = None) -> _Table:
        value = self.data.get(key, default)
        if not isinstance(value, Mapping):
            self.wrong(key, "missing" if value is None else "should be a table")
            return _Table({}, (*self._path, key), self._name, self._lines, [])  # its own gaps are no news
        inner = _Table(value, (*self._path, key), self._name, self._lines, self._problems)
        inner.only(known)
        return inner

    def tables(self, key: str, known: list[str]) -> list[_Table]:
        value = self.data.get(key, [])
        if not isinstance(value, list) or not all(isinstance(item, Mapping) for item in value):
            self.wrong(key, f"should be a list of tables; for a roster write [[{key}]]")
            return []
        inner = [
            _Table(item, (*self._path, key, at), self._name, self._lines, self._problems)
            for at, item in enumerate(value)
        ]
        for table in inner:
            table.only(known)
        return inner

    def text(self, key: str, default: str | object = _MISSING, pattern: re.Pattern[str] | None = None) -> str:
        value = self.data.get(key, default)
        if value is _MISSING:
            self.wrong(key, "missing")
        elif not isinstance(value, str) or not value.strip() or (pattern and not pattern.fullmatch(value)):
            self.wrong(key, f"{_shown(value)} is no good {key}")
        else:
            return value
        return ""

    def choice(self, key: str, choices: list[str], default: str | None) -> str | None:
        value = self.data.get(key, default)
        if value is not None and value not in choices:
            self.wrong(key, f"{_shown(value)} should be one of {', '.join(choices)}")
            return default
        return cast(str | None, value)

    def number(self, key: str, low: float, high: float, default: float | object | None = _MISSING) -> float:
        value = self.data.get(key, default)
        if value is None:
            return cast(float, None)
        if value is _MISSING:
            self.wrong(key, "missing")
        elif isinstance(value, bool) or not isinstance(value, (int, float)) or not low <= value <= high:
            self.wrong(key, f"{_shown(value)} should be a number from {low:g} to {high:g}")
        else:
            return float(value)
        return low

    def whole(self, key: str, low: int, high: int, default: int | object | None = _MISSING) -> int:
        value = self.data.get(key, default)
        if value is not None and (isinstance(value, bool) or not isinstance(value, int)) and value is not _MISSING:
            self.wrong(key, f"{_shown(value)} should be a whole number from {low} to {high}")
            return low
        number = self.number(key, low, high, default)
        return cast(int, None) if number is None else int(number)

    def flag(self, key: str) -> bool:
        value = self.data.get(key, False)
        if not isinstance(value, bool):
            self.wrong(key, f"{_shown(value)} should be true or false")
            return False
        return value

    def day(self, key: str) -> date:
        value = self.data.get(key, _MISSING)
        if isinstance(value, date) and not isinstance(value, datetime):
            return value
        self.wrong(key, "missing" if value is _MISSING else f"{_shown(value)} should be a day like 2027-01-04")
        return date.min

    def clock_time(self, key: str, default: str) -> time:
        value = self.data.get(key, default)
        if isinstance(value, str) and re.fullmatch(r"([01]\d|2[0-3]):[0-5]\d", value):
            return time.fromisoformat(value)
        self.wrong(key, f'{_shown(value)} should be a time like "07:30"')
        return time()

    def zone(self, key: str) -> str:
        value = self.text(key)
        try:
            return zone_named(value).key if value else ""
        except UnknownZone as error:
            self.wrong(key, str(error))
            return ""

    def several(self, key: str, choices: list[str], default: list[str]) -> list[str]:
        value = self.data.get(key, default)
        if not isinstance(value, list) or not value:
            self.wrong(key, f"{_shown(value)} should be a list out of {', '.join(choices)}")
            return default
        for item in value:
            if item not in choices:
                self.wrong(key, f"{_shown(item)} should be one of {', '.join(choices)}")
        return [item for item in value if item in choices]


def _coach(table: _Table) -> RosterCoach:
    summary = table.table("summary", ["day", "at"], SUMMARY)
    return RosterCoach(
        name=table.text("name"),
        timezone=table.zone("timezone"),
        language=table.text("language", "en", _LANGUAGE),
        unit=cast(Literal["kg", "lb"], table.choice("unit", ["kg", "lb"], "kg")),
        summary_day=WEEKDAYS.index(summary.choice("day", WEEKDAYS, SUMMARY["day"]) or SUMMARY["day"]),
        summary_at=summary.clock_time("at", SUMMARY["at"]),
    )


def _athlete(table: _Table) -> RosterAthlete:
    handle = table.text("handle", pattern=_HANDLE)
    if handle == "coach":
        table.wrong("handle", "'coach' is the coach; take another")
    unit = cast(Literal["kg", "lb"], table.choice("unit", ["kg", "lb"], "kg"))
    ladder, rung = _ladder(table, LADDER)
    step, step_unit = _plate_step(table, unit)
    return RosterAthlete(
        handle=handle,
        name=table.text("name", handle or "-"),
        timezone=table.zone("timezone"),
        bodyweight_kg=table.number("bodyweight_kg", 25, 250),
        plan_at=table.clock_time("plan_at", PLAN_AT),
        schedule=_schedule(table),
        language=table.text("language", "en", _LANGUAGE),
        unit=unit,
        plate_step=step,
        plate_unit=step_unit,
        equipment=frozenset(table.several("equipment", EQUIPMENT, ["bar"])),
        ladder=ladder,
        rung=rung,
        more_ladders=_more_ladders(table, ladder),
        screened=table.flag("screened"),
        tests=tuple(_test(test) for test in table.tables("tests", TEST_KEYS)),
    )


def _ladder(table: _Table, default: str | None) -> tuple[str, str | None]:
    """A ladder and the rung on it; without `default` the ladder must be named."""
    if default is None and "ladder" not in table.data:
        table.wrong("ladder", "missing")
    ladder = table.choice("ladder", sorted(ladders.known()), default) or LADDER
    return ladder, table.choice("rung", [rung.id for rung in ladders.known()[ladder].rungs], None)


def _more_ladders(table: _Table, first: str) -> tuple[tuple[str, str | None], ...]:
    """The ladders climbed beside the first, each of them once."""
    found: dict[str, str | None] = {}
    for one in table.tables("more_ladders", LADDER_KEYS):
        ladder, rung = _ladder(one, None)
        if ladder == first or ladder in found:
            one.wrong("ladder", f"{ladder!r} is given twice")
        found[ladder] = rung
    return tuple(found.items())


def _plate_step(table: _Table, unit: Literal["kg", "lb"]) -> tuple[float, Literal["kg", "lb"]]:
    if "plate_step_kg" in table.data and "plate_step_lb" in table.data:
        table.wrong("plate_step_lb", "give plate_step_kg or plate_step_lb, not both")
    if "plate_step_lb" in table.data:
        return table.number("plate_step_lb", 0.25, 50), "lb"
    if "plate_step_kg" in table.data:
        return table.number("plate_step_kg", 0.1, 25), "kg"
    return PLATE_STEP[unit], unit


def _schedule(table: _Table) -> Weekly | Cycle:
    if "cycle" not in table.data:
        days = table.several("training_days", WEEKDAYS, ["monday", "thursday"])
        return Weekly(frozenset(WEEKDAYS.index(day) for day in days))
    if "training_days" in table.data:
        table.wrong("cycle", "give training_days or cycle, not both")
    cycle = table.table("cycle", ["days", "train", "from"])
    length = cycle.whole("days", 1, LONGEST_CYCLE_DAYS)
    train = cycle.data.get("train")
    if not isinstance(train, list) or not train or not all(type(day) is int and 1 <= day <= length for day in train):
        cycle.wrong("train", f"{_shown(train)} should be a list of days from 1 to {length}")
        train = [1]
    return Cycle(length, frozenset(train), cycle.day("from"))


def _test(table: _Table) -> RosterTest:
    movement = table.text("movement")
    if movement and not movements.is_known(movement):
        table.wrong("movement", f"{_shown(movement)} is no movement of the catalogue")
    if table.data.get("reps") is None and table.data.get("hold_s") is None:
        table.wrong("reps", "missing; give reps or hold_s")
    return RosterTest(
        on=table.day("date"),
        movement=movement,
        reps=table.whole("reps", 0, 100, None),
        load_kg=table.number("load_kg", 0, 300, 0.0),
        rpe=table.number("rpe", 0, 10, None),
        side=cast(Any, table.choice("side", ["left", "right"], None)),
        rom=cast(Any, table.choice("rom", ["full", "lower_half", "upper_half"], "full")),
        assist_kg=table.number("assist_kg", 0, 200, 0.0),
        hold_s=table.number("hold_s", 0, 600, None),
    )


def _shown(value: object) -> str:
    return repr(value) if isinstance(value, (str, int, float, list)) else str(value)
