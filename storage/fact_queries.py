"""Standing facts of several athletes at once: one query a kind, however many athletes and years."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence
from typing import Any

import sqlalchemy as sa
from sqlmodel import Session

from planner import facts as f
from storage.database import Among, run, run_plain, table_of
from storage.fact_forms import BY_KIND, FORMS, Form, set_names, work_set
from storage.fact_tables import PerformedSet, Report

_reports = table_of(Report)
_sets = table_of(PerformedSet)
_IDS: sa.BindParameter[Any] = sa.bindparam("ids", expanding=True)


def _standing(form: Form, *whose: sa.ColumnElement[bool]) -> sa.Select[Any]:
    c = form.table.c
    columns = [c[name] for name in form.names]
    query = sa.select(c.athlete_id, c.id, *columns).where(*whose, c.withdrawn_at.is_(None))
    return query.order_by(c[form.day], c.id)


def _sets_of(*whose: sa.ColumnElement[bool]) -> sa.Select[Any]:
    query = sa.select(_sets.c.report_id, *(_sets.c[name] for name in set_names()))
    query = query.join(_reports, _reports.c.id == _sets.c.report_id)
    return query.where(*whose, _reports.c.withdrawn_at.is_(None)).order_by(_sets.c.report_id, _sets.c.position)


def _ids_of(at: int, form: Form) -> sa.Select[Any]:
    c = form.table.c
    return sa.select(sa.literal_column(str(at), sa.Integer).label("form"), c.athlete_id, c.id).where(
        c.withdrawn_at.is_(None)
    )


_FACTS = {kind: _standing(form, form.table.c.athlete_id.in_(_IDS)) for kind, form in BY_KIND.items()}
_NAMED = {kind: _standing(form, form.table.c.id.in_(_IDS)) for kind, form in BY_KIND.items()}
_SETS = _sets_of(_sets.c.athlete_id.in_(_IDS))
_SETS_OF_NAMED = _sets_of(_sets.c.report_id.in_(_IDS))
_all_ids = sa.union_all(*(_ids_of(at, form) for at, form in enumerate(FORMS))).subquery()
_WHICH = Among(sa.select(_all_ids), _all_ids.c.athlete_id)
# More facts than this are read anew rather than by name.
_MANY = 500

By = dict[int, tuple[Any, ...]]


def facts_of(tx: Session, kind: str, athlete_ids: Sequence[int]) -> By:
    """Standing facts of one kind (all but "session") by athlete, each in order of day, then of arrival."""
    return _facts(tx, kind, _FACTS[kind], athlete_ids)


def sessions_of(tx: Session, athlete_ids: Sequence[int]) -> dict[int, tuple[f.Session, ...]]:
    """Standing reports with their sets by athlete, in order of day, then of arrival. Two queries."""
    return _sessions(tx, _FACTS["session"], _SETS, athlete_ids)


def facts_since(tx: Session, before: Mapping[int, f.Record]) -> dict[str, By]:
    """As `facts_of` every kind, `sessions_of` among them, taking from the records before what still stands there.

    A fact that stands is what it was: only which ones stand can have changed. So it is one query, and one or two for
    each kind of which there is something new.
    """
    if not before:
        return {}
    standing: dict[str, dict[int, list[int]]] = {form.kind: {} for form in FORMS}
    for at, athlete_id, fact_id in _WHICH(tx, list(before)):
        standing[FORMS[at].kind].setdefault(athlete_id, []).append(fact_id)
    return {kind: _since(tx, kind, before, ids) for kind, ids in standing.items()}


def _since(tx: Session, kind: str, before: Mapping[int, f.Record], standing: Mapping[int, list[int]]) -> By:
    form = BY_KIND[kind]
    # But for a clip, which the coach may have looked at since.
    records = before.values() if kind != "clip" else ()
    known = {fact.fact: fact for record in records for fact in getattr(record, form.field)}
    missing = [fact_id for ids in standing.values() for fact_id in ids if fact_id not in known]
    if len(missing) > _MANY:
        return sessions_of(tx, list(before)) if kind == "session" else facts_of(tx, kind, list(before))
    if missing and kind == "session":
        new = _sessions(tx, _NAMED[kind], _SETS_OF_NAMED, missing)
    else:
        new = _facts(tx, kind, _NAMED[kind], missing)
    known |= {fact.fact: fact for those in new.values() for fact in those}
    found: By = {}
    for athlete_id, ids in standing.items():
        # Not known is what was withdrawn between the two queries; that is noticed by the stamp.
        those = [known[fact_id] for fact_id in ids if fact_id in known]
        found[athlete_id] = tuple(sorted(those, key=form.order))
    return found


def _facts(tx: Session, kind: str, query: sa.Select[Any], ids: Sequence[int]) -> By:
    if not ids:
        return {}
    form = BY_KIND[kind]
    names = form.names
    converters = [(at, form.from_column[name]) for at, name in enumerate(names) if name in form.from_column]
    found: defaultdict[int, list[Any]] = defaultdict(list)
    for athlete_id, fact_id, *values in run(tx, query, {"ids": list(ids)}).all():
        for at, convert in converters:
            values[at] = convert(values[at])
        found[athlete_id].append(form.fact(**dict(zip(names, values, strict=True)), fact=fact_id))
    return {athlete_id: tuple(those) for athlete_id, those in found.items()}


def _sessions(tx: Session, reports: sa.Select[Any], sets: sa.Select[Any], ids: Sequence[int]) -> By:
    if not ids:
        return {}
    those: defaultdict[int, list[f.WorkSet]] = defaultdict(list)
    for row in run_plain(tx, sets, {"ids": list(ids)}):
        those[row[0]].append(work_set(row[1:]))
    names = BY_KIND["session"].names
    found: defaultdict[int, list[f.Session]] = defaultdict(list)
    for athlete_id, report_id, *values in run(tx, reports, {"ids": list(ids)}).all():
        own = dict(zip(names, values, strict=True))
        found[athlete_id].append(f.Session(sets=tuple(those.get(report_id, ())), fact=report_id, **own))
    return {athlete_id: tuple(sessions) for athlete_id, sessions in found.items()}
