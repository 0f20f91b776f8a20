"""Everything stored of an athlete, to hand over: as JSON, as CSV, and day by day for reading."""

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
from storage.database import run
from storage.persons import athlete, athletes
from storage.records import record

# Of use to the machine alone, or a secret.
_LEFT_OUT = {"stamp", "code_hash", "claimed_until", "not_before", "sender", "document"}
# Notes are the coach's own; an athlete is handed what was said by them, to them and of their training.
COACHS_OWN = frozenset({"coach_note"})


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


def everything(tx: Session, athlete_id: int, for_athlete: bool = False) -> dict[str, list[dict[str, Any]]]:
    """All rows by table, withdrawn ones too, as JSON can hold them; `for_athlete`: without what is the coach's.

    Raises NoSuchPerson.
    """
    athlete(tx, athlete_id)
    found: dict[str, list[dict[str, Any]]] = {"athlete": _rows(tx, athletes, athletes.c.id == athlete_id)}
    for table in tables.metadata.sorted_tables:
        if "athlete_id" in table.c and not (for_athlete and table.name in COACHS_OWN):
            whose = table.c.athlete_id == athlete_id
            if for_athlete and "coach_id" in table.c:  # a message to the coach about the athlete
                whose = sa.and_(whose, table.c.coach_id.is_(None))
            found[table.name] = _rows(tx, table, whose)
    return found


def files(tx: Session, athlete_id: int, for_athlete: bool = False) -> dict[str, bytes]:
    """The export as files by name: `everything.json`, and a CSV a table that has rows. UTF-8.

    Raises NoSuchPerson.
    """
    all_rows = everything(tx, athlete_id, for_athlete)
    made = {"everything.json": json.dumps(all_rows, ensure_ascii=False, indent=1).encode()}
    for name, rows in all_rows.items():
        if rows:
            made[f"{name}.csv"] = _as_csv(rows).encode()
    return made


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
    columns = [column for column in table.c if column.name not in _LEFT_OUT]
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
