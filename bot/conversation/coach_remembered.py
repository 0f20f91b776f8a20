"""What a coach ordered last, and whom they spoke of: what "no, 12.5", "the same for jon" and "+1.25" refer to."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields
from datetime import date, timedelta
from typing import Any

from bot.conversation.coach_steps import Step
from bot.conversation.coach_words import Command
from bot.conversation.office import Office
from storage import questions

KIND = "ordered"
REFERRED_TO = timedelta(hours=1)  # for so long a later message can mean it; common practice, no source
DAYS = ("day", "until", "since")
LISTS = ("scheme", "over", "odd", "left")


@dataclass(frozen=True)
class Last:
    """The newest order, without a name. `cause`: the message that it came with; `of_all`: it was for everyone."""

    handles: tuple[str, ...]
    command: Command
    cause: int
    of_all: bool = False


def keep(office: Office, handles: Sequence[str], command: Command | None, *, of_all: bool = False) -> None:
    """Keep an order that was carried out, or, without one, whom the coach looked at."""
    data = {"handles": list(handles), "command": _as_json(command) if command is not None else None, "of_all": of_all}
    questions.keep(office.mail.tx, office.coach, KIND, office.mail.now, cause=office.incoming.id, data=data)


def last(office: Office) -> Last | None:
    """The newest order of the last hour; None where there is none."""
    for one in _kept(office):
        handles, known = _handles(one, office), one.data.get("command")
        if known and handles and one.cause is not None:
            return Last(handles, _from_json(known), one.cause, bool(one.data.get("of_all")))
    return None


def spoken_of(office: Office) -> list[str]:
    """The handles of whom the coach looked at or gave orders for in the last hour, newest first."""
    return list(dict.fromkeys(handle for one in _kept(office) for handle in _handles(one, office)))


def _kept(office: Office) -> list[questions.Question]:
    return questions.kept_since(office.mail.tx, office.coach, KIND, office.mail.now - REFERRED_TO)


def _handles(one: questions.Question, office: Office) -> tuple[str, ...]:
    """Of those who are still there: what was kept of an erased athlete was taken out."""
    known = {row.handle for row in office.rows}
    return tuple(handle for handle in one.data.get("handles") or () if handle in known)


def _as_json(command: Command) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for field in fields(command):
        value = getattr(command, field.name)
        if value is None or value in ((), frozenset()) or field.name == "handle":
            continue
        if field.name in DAYS:
            value = value.isoformat()
        elif field.name == "days":
            value = [day.isoformat() for day in value]
        elif isinstance(value, Step):
            value = [value.what, value.by, value.unit]
        found[field.name] = sorted(value) if isinstance(value, frozenset) else value
    return found


def _from_json(known: dict[str, Any]) -> Command:
    made = dict(known)
    made |= {name: date.fromisoformat(made[name]) for name in DAYS if name in made}
    made |= {name: tuple(made[name]) for name in LISTS if name in made}
    made["days"] = tuple(map(date.fromisoformat, made.get("days", ())))
    if "step" in made:
        made["step"] = Step(*made["step"])
    return Command(**(made | {"handle": None, "every": frozenset(made.get("every", ()))}))
