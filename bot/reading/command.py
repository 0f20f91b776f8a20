"""`slowrung read`: messages in, readings out, one JSON object a line."""

from __future__ import annotations

import json
import sys
from collections.abc import Mapping
from datetime import datetime
from typing import Any, TextIO
from zoneinfo import ZoneInfo

from bot import garbage
from bot.reading import read
from bot.reading.reading import Context
from planner.facts import PlannedSet

KNOWN_SET = ("movement", "part", "reps", "side", "hold_s", "load_kg", "assist_kg", "rpe", "rom", "eccentric", "rung")


class BadLine(ValueError):
    """An input line that is no message; the message says what to mend."""


def context_of(data: Mapping[str, Any]) -> Context:
    """The context fields of an input line.

    Raises:
        BadLine: a field is missing or no good.
    """
    try:
        sent_at = datetime.fromisoformat(data["sent_at"])
        zone = ZoneInfo(data.get("timezone") or "UTC")
        if sent_at.tzinfo is None:
            raise BadLine("sent_at needs an offset, such as 2027-01-04T18:30:00+01:00")
        unit = data.get("unit") or "kg"
        if unit not in ("kg", "lb"):
            raise BadLine(f"unit is kg or lb, not {unit!r}")
        today = data.get("today")
        planned = None if today is None else tuple(_planned(one) for one in today)
        bodyweight = data.get("bodyweight_kg")
        return Context(
            sent_at,
            zone,
            "lb" if unit == "lb" else "kg",
            data.get("language"),
            None if bodyweight is None else float(bodyweight),
            planned,
        )
    except BadLine:
        raise
    except (KeyError, TypeError, ValueError, AttributeError, OSError) as error:
        raise BadLine(f"{type(error).__name__}: {error}") from error


def _planned(one: Mapping[str, Any]) -> PlannedSet:
    fields = {key: one[key] for key in KNOWN_SET if one.get(key) is not None}
    fields.setdefault("part", "main")
    fields.setdefault("reps", None)
    return PlannedSet(pauses=tuple(one.get("pauses") or ()), **fields)


def answer(line: str) -> dict[str, Any]:
    """The output object of one input line; a bad line's says what is wrong."""
    key: Any = None
    try:
        data = json.loads(line)
        if not isinstance(data, dict):
            raise BadLine("a line is one JSON object")
        key = data.get("id")
        text = data.get("text")
        if not isinstance(text, str):
            raise BadLine("text is missing")
        return {"id": key, "reading": read(text, context_of(data)).to_json()}
    except (BadLine, ValueError, RecursionError) as error:
        return {"id": key, "error": str(error)}


def run() -> None:
    """The command: from standard input to standard output."""
    garbage.look_hardly_ever()
    read_lines(sys.stdin, sys.stdout)


def read_lines(stdin: TextIO, stdout: TextIO) -> None:
    """Answer every line until the input ends; each answer is flushed."""
    for line in stdin:
        if not line.strip():
            continue
        try:
            answered = answer(line)
        except Exception as error:  # a fault of ours in one message must not lose the answers to the next
            answered = {"id": _id_of(line), "error": f"{type(error).__name__}: {error}"}
        stdout.write(json.dumps(answered, ensure_ascii=False) + "\n")
        stdout.flush()


def _id_of(line: str) -> Any:
    data = json.loads(line)
    return data.get("id") if isinstance(data, dict) else None


if __name__ == "__main__":
    run()
