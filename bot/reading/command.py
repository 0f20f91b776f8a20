"""`slowrung read`: messages in, readings out, one JSON object a line."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from datetime import datetime
from typing import Any, TextIO, TypeVar
from zoneinfo import ZoneInfo

from bot import garbage, streams
from bot.clock import UnknownZone, zone_named
from bot.reading import read
from bot.reading.reading import Context
from planner.facts import PlannedSet

T = TypeVar("T")

# Fields of a set of the day's plan by what they hold; `movement` is the one that must be there.
WORDS = ("movement", "part", "side", "rom", "rung")
WHOLE = ("reps",)
NUMBERS = ("hold_s", "load_kg", "assist_kg", "rpe")
BEYOND = 1e9  # of kilograms, seconds and repetitions; NaN and infinity are no smaller
LONGEST = 100_000  # characters of a text; what takes minutes would keep the lines behind it waiting
YEARS = range(2, 9999)  # at the ends of the calendar there is no day before or after


class BadLine(ValueError):
    """An input line that is no message; the sentence names the field, as in today[2].reps, and says what to mend."""

    def __init__(self, why: str, *where: str | int) -> None:
        self.why, self.where = why, where
        field = "".join(f"[{part}]" if isinstance(part, int) else f".{part}" for part in where).lstrip(".")
        super().__init__(f"{field}: {why}" if field else why)

    def within(self, *outer: str | int) -> BadLine:
        """The same of what stands deeper."""
        return BadLine(self.why, *outer, *self.where)


def context_of(data: Mapping[str, Any]) -> Context:
    """The context fields of an input line.

    Raises:
        BadLine: a field is missing or no good.
    """
    return Context(
        sent_at=_moment(data),
        timezone=_zone(data),
        unit="lb" if _field(data, "unit", _unit, "kg") == "lb" else "kg",
        language=_field(data, "language", _text),
        bodyweight_kg=_field(data, "bodyweight_kg", _number),
        today=_field(data, "today", _plan),
    )


def _field(data: Mapping[str, Any], name: str, kind: Callable[[Any], T], default: T | None = None) -> T | None:
    """A field that may be left out or null. Raises BadLine with what `kind` says of it."""
    value = data.get(name)
    if value is None:
        return default
    try:
        return kind(value)
    except BadLine as error:
        raise error.within(name) from error


def _needed(data: Mapping[str, Any], name: str, kind: Callable[[Any], T]) -> T:
    found = _field(data, name, kind)
    if found is None:
        raise BadLine("missing", name)
    return found


def _moment(data: Mapping[str, Any]) -> datetime:
    def moment(value: Any) -> datetime:
        try:
            found = datetime.fromisoformat(value)
        except (TypeError, ValueError) as error:
            raise BadLine(_should(value, "a moment such as 2027-01-04T18:30:00+01:00")) from error
        if found.tzinfo is None:
            raise BadLine("needs an offset, such as 2027-01-04T18:30:00+01:00")
        if found.year not in YEARS:
            raise BadLine(f"{value} is outside the calendar")
        return found

    return _needed(data, "sent_at", moment)


def _zone(data: Mapping[str, Any]) -> ZoneInfo:
    def zone(value: Any) -> ZoneInfo:
        try:
            return zone_named(_text(value))
        except UnknownZone as error:
            raise BadLine(str(error)) from error

    return _field(data, "timezone", zone) or ZoneInfo("UTC")


def _unit(value: Any) -> str:
    if value not in ("kg", "lb"):
        raise BadLine(_should(value, "kg or lb"))
    return str(value)


def _text(value: Any) -> str:
    if not isinstance(value, str):
        raise BadLine(_should(value, "a string"))
    return value


def _message(value: Any) -> str:
    if len(text := _text(value)) > LONGEST:
        raise BadLine(f"{len(text)} characters are no message; {LONGEST} at most are read")
    return text


def _number(value: Any) -> float:
    if isinstance(value, bool) or not isinstance(value, (int, float)) or not abs(value) < BEYOND:
        raise BadLine(_should(value, "a number"))
    return float(value)


def _count(value: Any) -> int:
    if (found := _number(value)) != int(found):
        raise BadLine(_should(value, "a whole number"))
    return int(found)


def _flag(value: Any) -> bool:
    if not isinstance(value, bool):
        raise BadLine(_should(value, "true or false"))
    return value


def _texts(value: Any) -> tuple[str, ...]:
    if not isinstance(value, list) or not all(isinstance(one, str) for one in value):
        raise BadLine(_should(value, "a list of strings"))
    return tuple(value)


def _plan(value: Any) -> tuple[PlannedSet, ...]:
    if not isinstance(value, list):
        raise BadLine(_should(value, "a list of sets"))
    found = []
    for at, one in enumerate(value):
        if not isinstance(one, dict):
            raise BadLine(_should(one, "a set with its fields"), at)
        try:
            found.append(_planned(one))
        except BadLine as error:
            raise error.within(at) from error
    return tuple(found)


def _planned(one: Mapping[str, Any]) -> PlannedSet:
    fields: dict[str, Any] = {name: _field(one, name, _text) for name in WORDS}
    fields |= {name: _field(one, name, _count) for name in WHOLE}
    fields |= {name: _field(one, name, _number) for name in NUMBERS}
    fields["eccentric"] = _field(one, "eccentric", _flag)
    fields["pauses"] = _field(one, "pauses", _texts)
    given = {name: value for name, value in fields.items() if value is not None}
    if "movement" not in given:
        raise BadLine("missing", "movement")
    return PlannedSet(**{"part": "main", "reps": None, **given})


def _should(value: Any, what: str) -> str:
    shown = json.dumps(value, ensure_ascii=False)
    return f"{shown if len(shown) <= 40 else shown[:39] + '…'} should be {what}"


def answer(line: str, number: int = 1) -> dict[str, Any]:
    """The output object of an input line; a bad line's says what is wrong, and where it stands."""
    key: Any = None
    try:
        data = _object(line)
        key = data.get("id")
        return {"id": key, "reading": read(_needed(data, "text", _message), context_of(data)).to_json()}
    except BadLine as error:
        return {"id": key, "error": f"line {number}: {error}"}
    except Exception as error:  # a fault of ours in one message must not lose the answers to the next
        return {"id": key, "error": f"line {number}: could not be read ({type(error).__name__}: {error})"}


def _object(line: str) -> dict[str, Any]:
    try:
        line.encode()
    except UnicodeEncodeError as error:
        raise BadLine("not UTF-8 text") from error
    try:
        data = json.loads(line)
    except json.JSONDecodeError as error:
        raise BadLine(f"no JSON: {error.msg} at character {error.pos + 1}") from error
    except (ValueError, RecursionError) as error:  # a number of very many digits, brackets in brackets
        raise BadLine(f"no JSON: {error}") from error
    if not isinstance(data, dict):
        raise BadLine("should be one JSON object")
    return data


def run() -> None:
    """The command: from standard input to standard output."""
    garbage.look_hardly_ever()
    read_lines(*streams.json_lines())


def read_lines(stdin: TextIO, stdout: TextIO) -> None:
    """Answer every line until the input ends; each answer is flushed."""
    for number, line in enumerate(stdin, 1):
        if line.strip():
            stdout.write(json.dumps(answer(line, number), ensure_ascii=False) + "\n")
            stdout.flush()


if __name__ == "__main__":
    run()
