"""Standing facts of several athletes at once: one query a kind, however many athletes and years."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from typing import Any

import sqlalchemy as sa
from sqlmodel import Session

from planner import facts as f
from storage.database import run, table_of
from storage.fact_forms import BY_KIND, Form, pauses_from, set_names
from storage.fact_tables import PerformedSet, Report

_reports = table_of(Report)
_sets = table_of(PerformedSet)
_IDS: sa.BindParameter[Any] = sa.bindparam("ids", expanding=True)


def _standing(form: Form) -> sa.Select[Any]:
    c = form.table.c
    columns = [c[name] for name in form.names]
    query = sa.select(c.athlete_id, c.id, *columns).where(c.athlete_id.in_(_IDS), c.withdrawn_at.is_(None))
    return query.order_by(c[form.day], c.id)


_FACTS = {kind: _standing(form) for kind, form in BY_KIND.items()}
_SETS = (
    sa.select(_sets.c.report_id, *(_sets.c[name] for name in set_names()))
    .join(_reports, _reports.c.id == _sets.c.report_id)
    .where(_sets.c.athlete_id.in_(_IDS), _reports.c.withdrawn_at.is_(None))
    .order_by(_sets.c.report_id, _sets.c.position)
)
_PAUSES_AT = set_names().index("pauses")


def facts_of(tx: Session, kind: str, athlete_ids: Sequence[int]) -> dict[int, tuple[Any, ...]]:
    """Standing facts of one kind (all but "session") by athlete, each in order of day, then of arrival."""
    form = BY_KIND[kind]
    names = form.names
    converters = [(at, form.from_column[name]) for at, name in enumerate(names) if name in form.from_column]
    found: defaultdict[int, list[Any]] = defaultdict(list)
    for athlete_id, fact_id, *values in run(tx, _FACTS[kind], {"ids": list(athlete_ids)}):
        for at, convert in converters:
            values[at] = convert(values[at])
        found[athlete_id].append(form.fact(**dict(zip(names, values, strict=True)), fact=fact_id))
    return {athlete_id: tuple(those) for athlete_id, those in found.items()}


def sessions_of(tx: Session, athlete_ids: Sequence[int]) -> dict[int, tuple[f.Session, ...]]:
    """Standing reports with their sets by athlete, in order of day, then of arrival. Two queries."""
    ids = {"ids": list(athlete_ids)}
    sets: defaultdict[int, list[f.WorkSet]] = defaultdict(list)
    for report_id, *values in run(tx, _SETS, ids):
        values[_PAUSES_AT] = pauses_from(values[_PAUSES_AT])
        sets[report_id].append(f.WorkSet(*values))
    names = BY_KIND["session"].names
    found: defaultdict[int, list[f.Session]] = defaultdict(list)
    for athlete_id, report_id, *values in run(tx, _FACTS["session"], ids):
        own = dict(zip(names, values, strict=True))
        found[athlete_id].append(f.Session(sets=tuple(sets.get(report_id, ())), fact=report_id, **own))
    return {athlete_id: tuple(those) for athlete_id, those in found.items()}
