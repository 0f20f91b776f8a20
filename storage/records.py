"""The record of an athlete: everything the planner reads, in a fixed number of queries however many athletes."""

from __future__ import annotations

from bisect import insort
from collections.abc import Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType
from typing import Any

import sqlalchemy as sa
from sqlmodel import Session

from planner import facts as f
from storage.at_hand import forget
from storage.database import on_postgres, run
from storage.errors import NoSuchPerson
from storage.fact_forms import BY_KIND
from storage.fact_queries import facts_of, plans_since, sessions_of, sessions_since
from storage.persons import Athlete, athletes, athletes_by_id, coaches, coaches_by_id, schedule_from_json
from storage.record_cache import Stamps, keep, kept, older, own, seen, trail
from storage.rules import rule_overrides


def record(tx: Session, athlete_id: int) -> f.Record:
    """Raises NoSuchPerson."""
    found = records(tx, [athlete_id])
    if athlete_id not in found:
        raise NoSuchPerson(f"There is no athlete {athlete_id}.")
    return found[athlete_id]


def records(tx: Session, athlete_ids: Sequence[int]) -> dict[int, f.Record]:
    """Records by athlete id, in the order asked for; ids that nobody has are left out.

    About fifteen queries, five more where only what is new is read, a second round where others were writing
    meanwhile: as many for eighty athletes as for one.
    """
    rows = athletes_by_id(tx, athlete_ids)
    stamps = _stamps(tx, rows)
    found = {
        athlete_id: known for athlete_id in rows if (known := kept(tx, athlete_id, stamps[athlete_id])) is not None
    }
    for athlete_id, known in found.items():
        before = trail(tx, athlete_id)
        if before is None or before.stamps != stamps[athlete_id]:
            seen(tx, athlete_id, stamps[athlete_id], known)
    for athlete_id in rows.keys() - found.keys():
        mended = _mended(tx, athlete_id, stamps[athlete_id])
        if mended is not None:
            found[athlete_id] = mended
            keep(tx, athlete_id, stamps[athlete_id], mended)
    missing = {athlete_id: row for athlete_id, row in rows.items() if athlete_id not in found}
    if missing:
        loaded = _load(tx, missing)
        changed = _changed_meanwhile(tx, {athlete_id: stamps[athlete_id] for athlete_id in missing})
        for athlete_id in missing.keys() - changed:
            found[athlete_id] = loaded[athlete_id]
            keep(tx, athlete_id, stamps[athlete_id], loaded[athlete_id])
        if changed:
            found |= records(tx, sorted(changed))
    return {athlete_id: found[athlete_id] for athlete_id in athlete_ids if athlete_id in found}


_IDS: sa.BindParameter[Any] = sa.bindparam("ids", expanding=True)
_RULES = sa.select(rule_overrides).where(rule_overrides.c.coach_id.in_(_IDS))
_KINDS = {  # the field of a Record by kind of fact, of the light kinds
    "pain": "pain",
    "sign": "signs",
    "bodyweight": "bodyweights",
    "absence": "absences",
    "resume": "resumes",
    "move": "moves",
    "equipment": "equipment",
    "clip": "clips",
    "order": "orders",
}
_FIELDS = {**_KINDS, "session": "sessions", "sent_plan": "sent"}


def _mended(tx: Session, athlete_id: int, stamps: Stamps) -> f.Record | None:
    """The record read before in this transaction, with the facts that it has added since, and the kinds read anew that
    it has changed otherwise.

    None: something else changed too. Orders change the athlete's rules, so with them all is read.
    """
    before = trail(tx, athlete_id)
    if before is None or before.stamps != stamps or "order" in before.kinds:
        return None
    changed: dict[str, tuple[Any, ...]] = {}
    for kind, fact in before.added:
        name, day = _FIELDS[kind], BY_KIND[kind].day
        those = list(changed.get(name, getattr(before.record, name)))
        insort(those, fact, key=lambda one: (getattr(one, day), one.fact))
        changed[name] = tuple(those)
    for kind in before.kinds:
        if kind == "session":
            found = sessions_since(tx, {athlete_id: before.record.sessions})
        elif kind == "sent_plan":
            found = plans_since(tx, {athlete_id: before.record.sent})
        else:
            found = facts_of(tx, kind, [athlete_id])
        changed[_FIELDS[kind]] = found.get(athlete_id, ())
    return replace(before.record, **changed)  # type: ignore[arg-type]


def standing(tx: Session) -> dict[int, tuple[Stamps, f.Record]]:
    """The transaction's own records that are as the database has them: what all may use once it is committed."""
    mine = own(tx)
    if not mine:
        return {}
    now = _stamps(tx, athletes_by_id(tx, list(mine)))
    return {athlete_id: mine[athlete_id] for athlete_id in now if mine[athlete_id][0] == now[athlete_id]}


def _stamps(tx: Session, rows: Mapping[int, Athlete]) -> dict[int, Stamps]:
    """By which a record is known to be of this state: the athlete's and the coach's."""
    of_coaches = coaches_by_id(tx, sorted({row.coach_id for row in rows.values()}))
    return {athlete_id: (row.stamp, of_coaches[row.coach_id].stamp) for athlete_id, row in rows.items()}


def _load(tx: Session, rows: Mapping[int, Athlete]) -> dict[int, f.Record]:
    ids = list(rows)
    before = {athlete_id: known for athlete_id in ids if (known := older(tx, athlete_id)) is not None}
    first = [athlete_id for athlete_id in ids if athlete_id not in before]
    sessions = sessions_of(tx, first) | sessions_since(tx, {key: known.sessions for key, known in before.items()})
    sent = facts_of(tx, "sent_plan", first) | plans_since(tx, {key: known.sent for key, known in before.items()})
    facts = {name: facts_of(tx, kind, ids) for kind, name in _KINDS.items()} | {"sent": sent}
    coach_rules: dict[int, dict[str, Any]] = {}
    for rule in run(tx, _RULES, {"ids": list({row.coach_id for row in rows.values()})}):
        coach_rules.setdefault(rule.coach_id, {})[rule.rule] = rule.value
    loaded = {}
    for athlete_id, row in rows.items():
        own = {name: of.get(athlete_id, ()) for name, of in facts.items()}
        rules = {**coach_rules.get(row.coach_id, {}), **row.rules, **_ordered_rules(own["orders"])}
        athlete = _athlete(row, {name: value for name, value in rules.items() if value is not None})
        loaded[athlete_id] = f.Record(athlete=athlete, sessions=sessions.get(athlete_id, ()), **own)
    return loaded


def _changed_meanwhile(tx: Session, stamps: Mapping[int, Stamps]) -> set[int]:
    """Whose facts another transaction changed between our queries, so that we may hold a report without its sets.

    On SQLite all queries of a transaction see one state.
    """
    if not on_postgres(tx):
        return set()
    forget(tx, athletes)
    forget(tx, coaches)
    now = _stamps(tx, athletes_by_id(tx, list(stamps)))
    return {athlete_id for athlete_id in now if now[athlete_id] != stamps[athlete_id]}


def _ordered_rules(orders: tuple[f.Order, ...]) -> dict[str, Any]:
    return {order.rule: order.value for order in orders if order.kind == "set_rule" and order.rule is not None}


def _athlete(row: Athlete, rules: dict[str, float | str | bool]) -> f.Athlete:
    return f.Athlete(
        handle=row.handle,
        started_on=row.started_on,
        bodyweight_kg=row.bodyweight_kg,
        ladders=tuple((str(ladder), rung) for ladder, rung in row.ladders),
        schedule=schedule_from_json(row.schedule),
        equipment=frozenset(row.equipment),
        plate_step=row.plate_step,
        plate_unit="lb" if row.plate_unit == "lb" else "kg",
        screened=row.screened,
        rules=MappingProxyType(rules),
    )
