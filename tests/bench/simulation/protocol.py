"""The rehearsal protocol from both ends: driving a planner's process, and being one."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Callable, Iterator
from typing import Any


class PlannerProcess:
    """A planner as a subprocess. `tell` returns all the messages that an input line causes."""

    def __init__(self, command: list[str]) -> None:
        # Kept bytecode spares each of many planners seconds of starting.
        kept = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
        self.process = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, env=kept)

    def tell(self, line: dict[str, Any]) -> list[dict[str, Any]]:
        assert self.process.stdin
        assert self.process.stdout
        self.process.stdin.write(json.dumps(line) + "\n")
        self.process.stdin.flush()
        answers = []
        for raw in self.process.stdout:
            try:
                answer = json.loads(raw)
            except json.JSONDecodeError as error:
                raise RuntimeError(f"no JSON after {line}: {raw!r}") from error
            if "settled" in answer:
                return answers
            answers.append(answer)
        raise RuntimeError(f"the planner ended after {line}")

    def close(self) -> None:
        assert self.process.stdin
        assert self.process.stdout
        self.process.stdin.close()
        self.process.wait(timeout=60)
        self.process.stdout.close()


def serve(answer: Callable[[dict[str, Any]], Iterator[dict[str, Any]]]) -> None:
    """Be a planner: hand each input line to `answer`, print what it yields, then settle."""
    for raw in sys.stdin:
        line = json.loads(raw)
        for message in answer(line):
            print(json.dumps(message))
        print(json.dumps({"settled": line["at"]}), flush=True)


def planned_set(
    movement: str, part: str, reps: int | None, load_kg: float = 0.0, rpe: float | None = None, **more: Any
) -> dict[str, Any]:
    plain = {
        "side": None,
        "hold_s": None,
        "assist_kg": 0.0,
        "rom": "full",
        "eccentric": False,
        "pauses": [],
        "failed": False,
        "linked": False,
        "on": None,
        "rung": None,
    }
    return {"movement": movement, "part": part, "reps": reps, "load_kg": load_kg, "rpe": rpe, **plain, **more}
