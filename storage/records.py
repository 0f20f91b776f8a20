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
from storage.fact_queries import facts_of, facts_since, sessions_of
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

    Some fifteen queries; a few where only what is new is read; a second round where others were writing meanwhile: as
    many for eighty athletes as for one.
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
        grown = _grown(tx, athlete_id, stamps[athlete_id])
        if grown is not None:
            found[athlete_id] = grown
            keep(tx, athlete_id, stamps[athlete_id], grown)
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


def _grown(tx: Session, athlete_id: int, stamps: Stamps) -> f.Record | None:
    """The record read before in this transaction with the facts that it has added since; None where there is none, or
    something else changed."""
    before = trail(tx, athlete_id)
    if before is None or before.stamps != stamps or before.otherwise:
        return None
    grown: dict[str, list[Any]] = {}
    for kind, fact in before.added:
        form = BY_KIND[kind]
        insort(grown.setdefault(form.field, list(getattr(before.record, form.field))), fact, key=form.order)
    return replace(before.record, **{field: tuple(those) for field, those in grown.items()})  # type: ignore[arg-type]


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
    before = {athlete_id: known for athlete_id in rows if (known := older(tx, athlete_id)) is not None}
    first = [athlete_id for athlete_id in rows if athlete_id not in before]
    facts = facts_since(tx, before)
    for kind in BY_KIND if first else ():
        new = sessions_of(tx, first) if kind == "session" else facts_of(tx, kind, first)
        facts[kind] = {**facts.get(kind, {}), **new}
    coach_rules: dict[int, dict[str, Any]] = {}
    for rule in run(tx, _RULES, {"ids": list({row.coach_id for row in rows.values()})}):
        coach_rules.setdefault(rule.coach_id, {})[rule.rule] = rule.value
    loaded = {}
    for athlete_id, row in rows.items():
        own = {BY_KIND[kind].field: of.get(athlete_id, ()) for kind, of in facts.items()}
        rules = {**coach_rules.get(row.coach_id, {}), **row.rules, **_ordered_rules(own["orders"])}
        athlete = _athlete(row, {name: value for name, value in rules.items() if value is not None})
        loaded[athlete_id] = f.Record(athlete=athlete, **own)
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
