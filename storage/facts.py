"""Facts are added and withdrawn here; each change leaves its mark on the athlete, by which cached records are known."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import Any

import sqlalchemy as sa
from sqlmodel import Session

from planner import facts as f
from planner.facts import SaidBy
from planner.plan import Decision
from storage import fact_queries
from storage.database import BigId, inserting, run, run_later, table_of
from storage.fact_forms import (
    BY_FACT,
    BY_KIND,
    FORMS,
    Fact,
    Form,
    decisions_from_json,
    decisions_to_json,
    set_values,
)
from storage.fact_tables import ClipFact, OrderFact, PerformedSet, PlanSent, Report
from storage.inbox import IMPORTED, incoming
from storage.persons import restamp, touch, touch_later
from storage.record_cache import lose_trail, trail

reports = table_of(Report)
performed_sets = table_of(PerformedSet)
clips = table_of(ClipFact)
orders = table_of(OrderFact)
plans_sent = table_of(PlanSent)


def add(
    tx: Session,
    athlete_id: int,
    fact: Fact,
    said_by: SaidBy,
    said_at: datetime,
    cause: int | None,
    *,
    media: str | None = None,
) -> int:
    """Add one fact and give its id (which counts within its kind). A plan that goes out: `add_sent`.

    Args:
        cause: The inbox row of the message that says it; None for a roster or the bot itself.
        media: With a Clip, the service's id of the video.
    """
    form = BY_FACT[type(fact)]
    whose = {"athlete_id": athlete_id, "said_by": said_by, "said_at": said_at, "cause": cause}
    values = form.values(fact) | whose
    if isinstance(fact, f.Clip):
        values["media"] = media
    fact_id = _insert(tx, form.table, values)
    sets = fact.sets if isinstance(fact, f.Session) else ()
    _insert_sets(tx, athlete_id, fact_id, sets)
    _changed(tx, athlete_id, form.kind, form.as_read(values, fact_id, sets))
    return fact_id


def add_sent(
    tx: Session,
    athlete_id: int,
    sent: f.SentPlan,
    said_at: datetime,
    cause: int | None,
    decisions: tuple[Decision, ...],
) -> None:
    """Add a plan that the bot sends, with what it carried, together with others of the transaction."""
    form = BY_FACT[f.SentPlan]
    whose = {"athlete_id": athlete_id, "said_by": "bot", "said_at": said_at, "cause": cause}
    run_later(tx, _ADD_SENT, {**whose, **form.values(sent), "decisions": decisions_to_json(decisions)})
    lose_trail(tx, athlete_id)
    touch_later(tx, athlete_id)


_ADD_SENT = sa.insert(plans_sent)


def withdraw(tx: Session, kind: str, fact_id: int, at: datetime, by: int | None = None) -> bool:
    """Take one fact back. False: there is none that stands. A report that it had replaced stands again.

    Args:
        by: The message that says otherwise: when that is taken back, the fact stands again (`restore`).
    """
    table = BY_KIND[kind].table
    here = sa.update(table).where(table.c.id == fact_id, table.c.withdrawn_at.is_(None))
    row = run(tx, here.values(withdrawn_at=at, withdrawn_by=by).returning(table.c.athlete_id)).first()
    if row is None:
        return False
    if kind == "session":
        replaced = sa.select(reports.c.replaces).where(reports.c.id == fact_id).scalar_subquery()
        run(tx, sa.update(reports).where(reports.c.id == replaced), {"withdrawn_at": None})
    _changed(tx, row.athlete_id, kind)
    return True


def caused_by(tx: Session, athlete_id: int, cause: int) -> list[tuple[str, int]]:
    """Kind and id of the standing facts that a message brought; plans that were sent are none of them."""
    return [(FORMS[row.form].kind, row.id) for row in run(tx, _CAUSED_BY, {"of": athlete_id, "by": cause})]


def _brought(at: int, form: Form) -> sa.Select[Any]:
    c = form.table.c
    here = sa.select(sa.literal_column(str(at), sa.Integer).label("form"), c.id)
    whose = c.athlete_id == sa.bindparam("of", type_=BigId), c.cause == sa.bindparam("by", type_=BigId)
    return here.where(*whose, c.withdrawn_at.is_(None), c.said_by != "bot")


_CAUSED_BY = sa.union_all(*(_brought(at, form) for at, form in enumerate(FORMS))).order_by("form", "id")


def withdraw_caused_by(tx: Session, athlete_id: int, cause: int, at: datetime) -> list[tuple[str, int]]:
    """Undo a message: withdraw all the facts it brought. What went out before stays sent."""
    found = caused_by(tx, athlete_id, cause)
    for kind, fact_id in found:
        withdraw(tx, kind, fact_id, at)
    return found


def restore(tx: Session, athlete_id: int, by: int) -> list[tuple[str, int]]:
    """Kind and id of the facts that a message had put aside and that stand again now: it is taken back."""
    found: list[tuple[str, int]] = []
    for form in FORMS:
        c = form.table.c
        here = sa.update(form.table).where(c.athlete_id == athlete_id, c.withdrawn_by == by)
        again = run(tx, here.values(withdrawn_at=None, withdrawn_by=None).returning(c.id)).all()
        found += [(form.kind, row.id) for row in again]
        if again:
            _changed(tx, athlete_id, form.kind)
    return found


def last_cause(tx: Session, athlete_id: int, said_by: SaidBy = "athlete") -> int | None:
    """The newest message of the athlete (or of the coach about them) with a fact that still stands, or that put one
    aside; no old note."""
    return last_causes(tx, [athlete_id], said_by).get(athlete_id)


def last_causes(tx: Session, athlete_ids: Sequence[int], said_by: SaidBy = "athlete") -> dict[int, int]:
    """As `last_cause`, of several athletes; who has none is left out."""
    imported = sa.select(incoming.c.id).where(incoming.c.athlete_id.in_(athlete_ids), incoming.c.channel == IMPORTED)
    newest = [
        sa.select(form.table.c.athlete_id, sa.func.max(form.table.c.cause).label("cause"))
        .where(
            form.table.c.athlete_id.in_(athlete_ids),
            form.table.c.said_by == said_by,
            form.table.c.withdrawn_at.is_(None),
            form.table.c.cause.notin_(imported),
        )
        .group_by(form.table.c.athlete_id)
        for form in FORMS
    ]
    # Who put a fact aside is told by the message, for it can be another's fact.
    theirs = incoming.c.coach_id if said_by == "coach" else incoming.c.athlete_id
    newest += [
        sa.select(form.table.c.athlete_id, sa.func.max(form.table.c.withdrawn_by).label("cause"))
        .join(incoming, incoming.c.id == form.table.c.withdrawn_by)
        .where(form.table.c.athlete_id.in_(athlete_ids), theirs.is_not(None))
        .group_by(form.table.c.athlete_id)
        for form in FORMS
    ]
    found = sa.union_all(*newest).subquery()
    latest = sa.select(found.c.athlete_id, sa.func.max(found.c.cause).label("cause")).group_by(found.c.athlete_id)
    # A fact that no message brought has no cause.
    return {row.athlete_id: row.cause for row in run(tx, latest) if row.cause is not None}


def replace_session(
    tx: Session, report_id: int, session: f.Session, said_at: datetime, cause: int | None, said_by: SaidBy = "athlete"
) -> int:
    """Correct a report: the old one is withdrawn, the new one's id given. Withdrawing the new restores the old."""
    old = run(tx, sa.select(reports).where(reports.c.id == report_id)).one()
    run(tx, sa.update(reports).where(reports.c.id == report_id), {"withdrawn_at": said_at})
    values = BY_KIND["session"].values(session)
    who = {"athlete_id": old.athlete_id, "said_by": said_by, "said_at": said_at, "cause": cause}
    new_id = _insert(tx, reports, {**who, **values, "replaces": report_id})
    _insert_sets(tx, old.athlete_id, new_id, session.sets)
    _changed(tx, old.athlete_id, "session")
    return new_id


def sessions(tx: Session, athlete_id: int) -> tuple[f.Session, ...]:
    """The athlete's standing reports, by day, then by arrival."""
    return fact_queries.sessions_of(tx, [athlete_id]).get(athlete_id, ())


def said_at(tx: Session, kind: str, fact_id: int) -> datetime | None:
    """When a fact was told; None: there is none of that kind and id."""
    c = BY_KIND[kind].table.c
    found: datetime | None = run(tx, sa.select(c.said_at).where(c.id == fact_id)).scalar()
    return found


def mark_clip_seen(tx: Session, clip_id: int) -> None:
    """The coach has looked at it."""
    here = sa.update(clips).where(clips.c.id == clip_id).values(seen_by_coach=True)
    for (athlete_id,) in run(tx, here.returning(clips.c.athlete_id)).all():
        _changed(tx, athlete_id, "clip")


def restarts_ever(tx: Session, athlete_id: int) -> int:
    """How often the coach lifted a stop of the athlete's, those taken back since among them."""
    lifted = sa.and_(orders.c.athlete_id == athlete_id, orders.c.kind == "restart")
    return int(run(tx, sa.select(sa.func.count()).where(lifted)).scalar_one())


def decisions_sent(tx: Session, athlete_id: int, limit: int = 60) -> tuple[Decision, ...]:
    """The decisions of the newest `limit` plans that went out, oldest plan first."""
    newest = sa.select(plans_sent.c.decisions).where(plans_sent.c.athlete_id == athlete_id)
    found = run(tx, newest.order_by(plans_sent.c.on.desc(), plans_sent.c.id.desc()).limit(limit)).all()
    return tuple(one for row in reversed(found) for one in decisions_from_json(row.decisions))


def _changed(tx: Session, athlete_id: int, kind: str, added: Fact | None = None) -> None:
    """As `touch`, leaving word of what changed, where this transaction has read the record and nobody wrote since.

    `added`: with its number, where that is all.
    """
    before = trail(tx, athlete_id)
    stamp = None if before is None else restamp(tx, athlete_id, before.stamps[0])
    if before is None or stamp is None:
        touch(tx, athlete_id)
        return
    before.stamps = (stamp, before.stamps[1])
    if added is None or kind == "order":  # which can be a rule of the athlete's, too
        before.otherwise = True
    else:
        before.added.append((kind, added))


def _insert(tx: Session, table: sa.Table, values: dict[str, Any]) -> int:
    key = run(tx, inserting(table), values).inserted_primary_key
    assert key is not None
    return int(key[0])


def _insert_sets(tx: Session, athlete_id: int, report_id: int, sets: tuple[f.WorkSet, ...]) -> None:
    if sets:
        whose = {"athlete_id": athlete_id, "report_id": report_id}
        rows = [{**whose, "position": at, **set_values(work)} for at, work in enumerate(sets)]
        run(tx, inserting(performed_sets), rows)
