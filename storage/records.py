"""The record of an athlete: everything the planner reads, in a fixed number of queries however many athletes."""

from __future__ import annotations

import threading
from collections import OrderedDict
from collections.abc import Sequence
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any

import sqlalchemy as sa
from sqlmodel import Session

from planner import facts as f
from storage.database import on_postgres, run
from storage.errors import NoSuchPerson
from storage.fact_queries import facts_of, sessions_of
from storage.persons import athletes, coaches, schedule_from_json
from storage.rules import rule_overrides

# About 100 MB of sets.
CACHE_LIMIT_SETS = 300_000


@dataclass
class RecordCache:
    """Records as they were last read, the longest unused dropped first. May be emptied at any time.

    A record is known by the stamps of athlete and coach, which change with every fact and setting: it can be old,
    never wrong. One lives in each Store and is handed on in `Session.info`.
    """

    limit_sets: int = CACHE_LIMIT_SETS
    _kept: OrderedDict[int, tuple[tuple[int, int], f.Record]] = field(default_factory=OrderedDict)
    _sets: int = 0
    _lock: threading.Lock = field(default_factory=threading.Lock)

    def get(self, athlete_id: int, stamps: tuple[int, int]) -> f.Record | None:
        with self._lock:
            kept = self._kept.get(athlete_id)
            if kept is None or kept[0] != stamps:
                return None
            self._kept.move_to_end(athlete_id)
            return kept[1]

    def put(self, athlete_id: int, stamps: tuple[int, int], record: f.Record) -> None:
        with self._lock:
            self._forget(athlete_id)
            self._kept[athlete_id] = (stamps, record)
            self._sets += _weight(record)
            while self._sets > self.limit_sets and len(self._kept) > 1:
                self._forget(next(iter(self._kept)))

    def clear(self) -> None:
        with self._lock:
            self._kept.clear()
            self._sets = 0

    def _forget(self, athlete_id: int) -> None:
        kept = self._kept.pop(athlete_id, None)
        if kept is not None:
            self._sets -= _weight(kept[1])


def _weight(record: f.Record) -> int:
    return sum(len(session.sets) for session in record.sessions) + sum(len(plan.sets) for plan in record.sent)


def record(tx: Session, athlete_id: int) -> f.Record:
    """Raises NoSuchPerson."""
    found = records(tx, [athlete_id])
    if athlete_id not in found:
        raise NoSuchPerson(f"There is no athlete {athlete_id}.")
    return found[athlete_id]


def records(tx: Session, athlete_ids: Sequence[int]) -> dict[int, f.Record]:
    """Records by athlete id, in the order asked for; ids that nobody has are left out.

    Fourteen queries, and one more on PostgreSQL; a second round where others were writing meanwhile.
    """
    cache = tx.info.get("records")
    rows = {row.id: row for row in run(tx, _ATHLETES, {"ids": list(athlete_ids)})}
    known: dict[int, f.Record] = {}
    if isinstance(cache, RecordCache):
        for athlete_id, row in rows.items():
            kept = cache.get(athlete_id, (row.stamp, row.coach_stamp))
            if kept is not None:
                known[athlete_id] = kept
    missing = [athlete_id for athlete_id in rows if athlete_id not in known]
    if missing:
        loaded = _load(tx, {athlete_id: rows[athlete_id] for athlete_id in missing})
        changed = _changed_meanwhile(tx, {athlete_id: rows[athlete_id] for athlete_id in missing})
        for athlete_id in missing:
            if athlete_id in changed:
                continue
            known[athlete_id] = loaded[athlete_id]
            if isinstance(cache, RecordCache):
                stamps = (rows[athlete_id].stamp, rows[athlete_id].coach_stamp)
                cache.put(athlete_id, stamps, loaded[athlete_id])
        if changed:
            known |= records(tx, sorted(changed))
    return {athlete_id: known[athlete_id] for athlete_id in athlete_ids if athlete_id in known}


_IDS: sa.BindParameter[Any] = sa.bindparam("ids", expanding=True)
_ATHLETES = (
    sa.select(athletes, coaches.c.stamp.label("coach_stamp"))
    .join(coaches, coaches.c.id == athletes.c.coach_id)
    .where(athletes.c.id.in_(_IDS))
)
_RULES = sa.select(rule_overrides).where(rule_overrides.c.coach_id.in_(_IDS))
_KINDS = {  # the field of a Record by kind of fact
    "pain": "pain",
    "sign": "signs",
    "bodyweight": "bodyweights",
    "absence": "absences",
    "resume": "resumes",
    "move": "moves",
    "equipment": "equipment",
    "clip": "clips",
    "order": "orders",
    "sent_plan": "sent",
}


def _load(tx: Session, rows: dict[int, sa.Row[*tuple[Any, ...]]]) -> dict[int, f.Record]:
    ids = list(rows)
    sessions = sessions_of(tx, ids)
    facts = {name: facts_of(tx, kind, ids) for kind, name in _KINDS.items()}
    coach_rules: dict[int, dict[str, Any]] = {}
    for row in run(tx, _RULES, {"ids": list({row.coach_id for row in rows.values()})}):
        coach_rules.setdefault(row.coach_id, {})[row.rule] = row.value
    loaded = {}
    for athlete_id, row in rows.items():
        own = {name: of.get(athlete_id, ()) for name, of in facts.items()}
        rules = {**coach_rules.get(row.coach_id, {}), **row.rules, **_ordered_rules(own["orders"])}
        athlete = _athlete(row, {name: value for name, value in rules.items() if value is not None})
        loaded[athlete_id] = f.Record(athlete=athlete, sessions=sessions.get(athlete_id, ()), **own)
    return loaded


def _changed_meanwhile(tx: Session, rows: dict[int, sa.Row[*tuple[Any, ...]]]) -> set[int]:
    """Whose facts another transaction changed between our queries, so that we may hold a report without its sets.

    On SQLite all queries of a transaction see one state.
    """
    if not on_postgres(tx):
        return set()
    now = {row.id: (row.stamp, row.coach_stamp) for row in run(tx, _ATHLETES, {"ids": list(rows)})}
    return {
        athlete_id for athlete_id in now if now[athlete_id] != (rows[athlete_id].stamp, rows[athlete_id].coach_stamp)
    }


def _ordered_rules(orders: tuple[f.Order, ...]) -> dict[str, Any]:
    return {order.rule: order.value for order in orders if order.kind == "set_rule" and order.rule is not None}


def _athlete(row: sa.Row[*tuple[Any, ...]], rules: dict[str, float | str | bool]) -> f.Athlete:
    return f.Athlete(
        handle=row.handle,
        started_on=row.started_on,
        bodyweight_kg=row.bodyweight_kg,
        ladders=tuple((ladder, rung) for ladder, rung in row.ladders),
        schedule=schedule_from_json(row.schedule),
        equipment=frozenset(row.equipment),
        plate_step=row.plate_step,
        plate_unit=row.plate_unit,
        screened=row.screened,
        rules=MappingProxyType(rules),
    )
