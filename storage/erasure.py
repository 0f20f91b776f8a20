"""An athlete goes, with every trace: rows, their own words and what was said of them, and the marks in the files."""

from __future__ import annotations

import json
import re
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import sqlalchemy as sa
from sqlmodel import Session

from storage import backup, tables
from storage.chats import chats
from storage.database import run
from storage.fact_forms import FORMS
from storage.inbox import incoming
from storage.invites import invite_tries
from storage.notes import coach_notes, passed
from storage.outbox import outgoing
from storage.persons import Athlete, athlete, athletes
from storage.questions import questions
from storage.store import Store


@dataclass(frozen=True)
class Erased:
    """`rows` deleted or cleaned by table; `copies`: backup files that still know the athlete, for the operator."""

    rows: dict[str, int]
    copies: tuple[Path, ...]


def erase_athlete(store: Store, athlete_id: int, backup_dir: Path | None = None) -> Erased:
    """Erase an athlete from the database and its files.

    Backups are not changed: those in `backup_dir` are named, so that they can be deleted or left to age out.

    Raises NoSuchPerson; StorageError where rows are gone but the files could not be rewritten.
    """
    with store.transaction() as tx:
        rows = erase(tx, athlete_id)
    store.forget_records()
    store.vacuum()
    return Erased(rows, tuple(backup.copies(backup_dir)) if backup_dir else ())


def erase(tx: Session, athlete_id: int) -> dict[str, int]:
    """Delete all rows of an athlete and clean the coach's of their name. How many rows, by table.

    Every table with an `athlete_id` is covered, whoever adds one. Raises NoSuchPerson.
    """
    whose = athlete(tx, athlete_id)
    counts: dict[str, int] = {}
    _forget_causes(tx, athlete_id)
    _clean_coachs(tx, whose, counts)
    _delete_at_addresses(tx, athlete_id, counts)
    for table in reversed(tables.metadata.sorted_tables):
        if "athlete_id" in table.c:
            _count(counts, table, run(tx, sa.delete(table).where(table.c.athlete_id == athlete_id)).rowcount)
    _count(counts, athletes, run(tx, sa.delete(athletes).where(athletes.c.id == athlete_id)).rowcount)
    return counts


def _count(counts: dict[str, int], table: sa.Table, rows: int) -> None:
    if rows:
        counts[table.name] = counts.get(table.name, 0) + rows


def _forget_causes(tx: Session, athlete_id: int) -> None:
    """Empty the coach's messages that made facts of this athlete, whatever name they used."""
    causes = [sa.select(form.table.c.cause).where(form.table.c.athlete_id == athlete_id) for form in FORMS]
    causes.append(sa.select(passed.c.cause).where(passed.c.athlete_id == athlete_id))
    run(tx, sa.update(incoming).where(incoming.c.id.in_(sa.union(*causes))), {"text": "", "data": {}})


def _delete_at_addresses(tx: Session, athlete_id: int, counts: dict[str, int]) -> None:
    """What came from the athlete's addresses before anybody knew whose they are, and went there."""
    where = sa.select(chats.c.channel, chats.c.address).where(chats.c.athlete_id == athlete_id)
    for channel, address in run(tx, where).all():
        for table in (incoming, outgoing, invite_tries):
            here = sa.delete(table).where(table.c.channel == channel, table.c.address == address)
            _count(counts, table, run(tx, here).rowcount)


# Words of and to the coach: the table and its columns of text and of JSON.
_COACHS: tuple[tuple[sa.Table, tuple[str, ...], tuple[str, ...]], ...] = (
    (incoming, ("text",), ("data",)),
    (outgoing, ("text", "picture_alt"), ("plan", "buttons")),
    (questions, ("text", "span"), ("data",)),
)
# Words about others of the coach's athletes.
_OTHERS: tuple[sa.Table, ...] = (coach_notes, passed)


def _clean_coachs(tx: Session, whose: Athlete, counts: dict[str, int]) -> None:
    """Take the lines that name the athlete out of what the coach wrote and was sent, a line at a time."""
    named = re.compile(rf"\b(?:{re.escape(whose.handle)}|{re.escape(whose.name)})\b", re.IGNORECASE)
    for table, texts, data in _COACHS:
        # A roster's picture shows everyone, and nobody can cut one out of it.
        if "picture" in table.c:
            pictures = sa.update(table).where(table.c.coach_id == whose.coach_id, table.c.athlete_id.is_(None))
            run(tx, pictures, {"picture": None})
        columns = [table.c[name] for name in ("id", *texts, *data)]
        query = sa.select(*columns).where(table.c.coach_id == whose.coach_id)
        _clean(tx, table, run(tx, query).all(), texts, data, named, counts)
    team = sa.select(athletes.c.id).where(athletes.c.coach_id == whose.coach_id)
    for table in _OTHERS:
        query = sa.select(table.c.id, table.c.text).where(table.c.athlete_id.in_(team))
        _clean(tx, table, run(tx, query).all(), ("text",), (), named, counts)


def _clean(
    tx: Session,
    table: sa.Table,
    rows: Any,
    texts: tuple[str, ...],
    data: tuple[str, ...],
    named: re.Pattern[str],
    counts: dict[str, int],
) -> None:
    for row in rows:
        values: dict[str, Any] = {}
        for name in texts:
            text = getattr(row, name)
            if text and named.search(text):
                values[name] = "\n".join(line for line in text.splitlines() if not named.search(line))
        for name in data:
            held = getattr(row, name)
            if held and named.search(json.dumps(held, ensure_ascii=False)):
                values[name] = type(held)()
        if values:
            run(tx, sa.update(table).where(table.c.id == row.id), values)
            _count(counts, table, 1)
