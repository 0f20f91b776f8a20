"""Everything stored of an athlete, to hand over: as JSON, as CSV, and for reading: day by day, then row by row."""

from __future__ import annotations

import base64
import csv
import io
import json
from dataclasses import dataclass
from datetime import date, datetime, time
from typing import Any

import sqlalchemy as sa
from sqlmodel import Session

from planner import facts as f
from storage import tables
from storage.chats import chats
from storage.database import run
from storage.erasure import at_address
from storage.outbox import outgoing
from storage.persons import athlete, athletes
from storage.records import record

# Of use to the machine alone, or a secret. `sender` says again what `address` or the athlete's id say.
LEFT_OUT = frozenset({"stamp", "code_hash", "claimed_until", "not_before", "turn_at", "sender", "document"})
# Of what the coach was told about them: where the coach is reached is the coach's own.
OF_THE_COACH = ("address", "service_id")


@dataclass(frozen=True)
class DiaryDay:
    """What stands of one day, for a text that a person reads. `plan`: the last one that was sent."""

    on: date
    plan: f.SentPlan | None
    sessions: tuple[f.Session, ...]
    pain: tuple[f.PainAnswer, ...]
    signs: tuple[f.WarningSign, ...]
    bodyweights: tuple[f.Bodyweight, ...]
    orders: tuple[f.Order, ...]


def everything(tx: Session, athlete_id: int) -> dict[str, list[dict[str, Any]]]:
    """All rows by table, withdrawn ones too, as JSON can hold them: what they said, what they were told, what the
    coach was told of them and noted about them, and what came from their address before they were known.

    What the coach wrote to the bot is not in it: it can speak of others. What followed from it is.

    Raises NoSuchPerson.
    """
    athlete(tx, athlete_id)
    found: dict[str, list[dict[str, Any]]] = {"athlete": _rows(tx, athletes, athletes.c.id == athlete_id)}
    where = sa.select(chats.c.channel, chats.c.address).where(chats.c.athlete_id == athlete_id)
    addresses = [(row.channel, row.address) for row in run(tx, where)]
    for table in tables.metadata.sorted_tables:
        whose = [table.c.athlete_id == athlete_id] if "athlete_id" in table.c else []
        if "address" in table.c:
            whose += [at_address(table, channel, address) for channel, address in addresses]
        if whose:
            found[table.name] = _rows(tx, table, sa.or_(*whose))
    for row in found[outgoing.name]:
        if row["coach_id"] is not None:
            row.update(dict.fromkeys(OF_THE_COACH))
    return found


def files(tx: Session, athlete_id: int) -> dict[str, bytes]:
    """The export as files by name: `everything.json`, and a CSV a table that has rows. UTF-8.

    Raises NoSuchPerson.
    """
    all_rows = everything(tx, athlete_id)
    made = {"everything.json": json.dumps(all_rows, ensure_ascii=False, indent=1).encode()}
    for name, rows in all_rows.items():
        if rows:
            made[f"{name}.csv"] = _as_csv(rows).encode()
    return made


def in_lines(rows: dict[str, list[dict[str, Any]]]) -> list[str]:
    """Everything as lines to read, a table after the other; what is empty in a row is left out."""
    lines: list[str] = []
    for table, of_table in rows.items():
        if of_table:
            lines += ["", f"{table} ({len(of_table)})"]
            lines += [
                "· " + ", ".join(f"{name}: {_said(name, value)}" for name, value in row.items() if value not in _EMPTY)
                for row in of_table
            ]
    return lines


_EMPTY: tuple[Any, ...] = (None, "", [], {})


def _said(name: str, value: Any) -> str:
    if name == "picture":
        return "…"  # nothing to read; the JSON has it
    return json.dumps(value, ensure_ascii=False) if isinstance(value, (dict, list)) else str(value)


def diary(tx: Session, athlete_id: int) -> tuple[DiaryDay, ...]:
    """The standing facts day by day, oldest first; days of which nothing is known are left out. Raises NoSuchPerson."""
    known = record(tx, athlete_id)
    by_kind = {
        "sessions": _by_day(known.sessions),
        "pain": _by_day(known.pain),
        "signs": _by_day(known.signs),
        "bodyweights": _by_day(known.bodyweights),
        "orders": _by_day(known.orders),
    }
    days = sorted({*known.sent_by_day, *(day for of in by_kind.values() for day in of)})
    return tuple(
        DiaryDay(on=day, plan=known.sent_by_day.get(day), **{name: of.get(day, ()) for name, of in by_kind.items()})
        for day in days
    )


def _by_day(facts: tuple[Any, ...]) -> dict[date, tuple[Any, ...]]:
    found: dict[date, tuple[Any, ...]] = {}
    for fact in facts:
        found[fact.on] = (*found.get(fact.on, ()), fact)
    return found


def _rows(tx: Session, table: sa.Table, where: sa.ColumnElement[bool]) -> list[dict[str, Any]]:
    columns = [column for column in table.c if column.name not in LEFT_OUT]
    query = sa.select(*columns).where(where).order_by(table.c.id)
    return [{name: _plain(value) for name, value in row._mapping.items()} for row in run(tx, query)]


def _plain(value: Any) -> Any:
    if isinstance(value, (datetime, date, time)):
        return value.isoformat()
    return base64.b64encode(value).decode() if isinstance(value, bytes) else value


def _as_csv(rows: list[dict[str, Any]]) -> str:
    text = io.StringIO(newline="")
    writer = csv.DictWriter(text, list(rows[0]))
    writer.writeheader()
    for row in rows:
        writer.writerow(
            {
                name: json.dumps(value, ensure_ascii=False) if isinstance(value, (dict, list)) else value
                for name, value in row.items()
            }
        )
    return text.getvalue()
