"""A crowd for the benches: one coach's fifty athletes live through some weeks, then they are there many times over.

The fifty are lived for real: every morning swept, every plan that came with work told of in the evening. Their copies
are rows made in the database, by one rule: copy number k of the row with id i has id i · STRIDE + k, whatever the
table. So the facts of one day lie together, as they would have come, and not those of one athlete. What was sent on
the way is not copied.

While the copies are made the tables have no indexes but those of their constraints, and foreign keys are not looked up:
each row would touch an index at a place of its own, and twenty million of them are an evening instead of minutes.
"""

from __future__ import annotations

from contextlib import closing
from datetime import UTC, datetime, timedelta
from datetime import time as clock_time

import sqlalchemy as sa
from sqlmodel import Session as Tx

from bot import schedule
from bot.channels.telegram import CHANNEL
from bot.conversation.moments import NUDGE
from bot.conversation.next_due import PLAN
from planner.facts import PlannedSet, Session, Weekly, WorkSet
from storage import chats, due, facts
from storage.database import run, writing_engine
from storage.due import dues
from storage.fact_forms import planned_from_json
from storage.facts import performed_sets, plans_sent, reports
from storage.loading import load_roster
from storage.outbox import outgoing
from storage.persons import Who, athletes, coaches
from storage.roster import Roster, RosterAthlete, RosterCoach, RosterTest
from storage.store import Store

MONDAY = datetime(2027, 3, 1, 7, 0, tzinfo=UTC)
A_COACH = 50
A_WEEK = 2  # sessions of those who train least
BODIES = ((62.0, 5, 20.0), (78.5, 3, 45.0), (55.0, 4, 0.0), (70.0, 5, 15.0))  # kg, repetitions and load of the test
COPIED = (coaches, athletes, chats.chats, reports, performed_sets, plans_sent, dues)
IDS = {"id", "athlete_id", "coach_id", "report_id"}
STRIDE = 10_000  # above the number of copies and of the rows that one of these tables has of the fifty


def fill(url: str, athletes_wanted: int, sessions: int) -> dict[str, float]:
    """Everyone in, with a chat, at least `sessions` sessions told, and Monday's plan due; what an athlete has of each.

    `url` names an empty database; `athletes_wanted` is rounded up to whole fifties.
    """
    copies = -(-athletes_wanted // A_COACH) - 1
    assert copies < STRIDE
    with closing(Store.open(url)) as store:
        _live(store, -(-sessions // A_WEEK))
    engine = writing_engine(url, foreign_keys=False)
    with engine.begin() as connection:
        _copy(connection, copies)
    _settle(engine)
    engine.dispose()
    with closing(Store.open(url)) as store, store.reading() as tx:
        everyone = run(tx, sa.select(sa.func.count()).select_from(athletes)).scalar_one()
        return {"athletes": everyone} | {
            f"{table.name} rows an athlete": run(tx, sa.select(sa.func.count()).select_from(table)).scalar_one()
            / everyone
            for table in (reports, performed_sets, plans_sent)
        }


def _live(store: Store, weeks: int) -> None:
    began = MONDAY - timedelta(weeks=weeks)
    roster = Roster(RosterCoach("Coach", "Europe/Lisbon"), tuple(_athlete(n, began) for n in range(A_COACH)))
    with store.transaction() as tx:
        loaded = load_roster(tx, roster, began)
        chats.bind_chat(tx, CHANNEL, "900", Who("coach", loaded.coach_id), began)
        for athlete_id in loaded.athlete_ids.values():
            who = Who("athlete", athlete_id)
            chats.bind_chat(tx, CHANNEL, str(1_000 + athlete_id), who, began)
            due.schedule(tx, who, PLAN, began.date(), began)
    for day in range(weeks * 7):
        morning = began + timedelta(days=day)
        while schedule.sweep(store, morning):
            pass
        with store.transaction() as tx:
            _train(tx, morning)


def _athlete(n: int, began: datetime) -> RosterAthlete:
    body, reps, load = BODIES[n % len(BODIES)]
    return RosterAthlete(
        handle=f"a{n}",
        name=f"A{n}",
        timezone="Europe/Lisbon",
        bodyweight_kg=body,
        plan_at=clock_time(7),
        schedule=Weekly(frozenset({0, 3} if n % 2 else {0, 2, 4})),
        equipment=frozenset({"bar", "rings", "belt", "bands"}),
        screened=True,
        tests=(RosterTest(began.date() - timedelta(days=2), "pull_up", reps, load, 9.0),),
    )


def _train(tx: Tx, morning: datetime) -> None:
    """Everyone tells of the day's plan as done, without the warm-up, as people do."""
    on = morning.date()
    for athlete_id, sets in run(tx, sa.select(plans_sent.c.athlete_id, plans_sent.c.sets).filter_by(on=on)).all():
        done = tuple(_done(one) for one in planned_from_json(sets) if one.part != "warm_up")
        if done:
            facts.add(tx, athlete_id, Session(on, done), "athlete", morning + timedelta(hours=2), None)
        due.cancel(tx, Who("athlete", athlete_id), NUDGE)


def _done(one: PlannedSet) -> WorkSet:
    reps = None if one.hold_s else one.reps or 5
    same = {name: getattr(one, name) for name in ("side", "hold_s", "load_kg", "assist_kg", "rpe", "rom", "eccentric")}
    return WorkSet(one.movement, reps, **same, pauses=one.pauses)


def _copy(connection: sa.Connection, copies: int) -> None:
    connection.execute(sa.delete(outgoing))
    if not copies:
        return
    if connection.dialect.name == "postgresql":
        connection.execute(sa.text("SET LOCAL session_replication_role = replica"))  # looks up no foreign key
    n = sa.select(sa.literal(1).label("k")).cte("n", recursive=True)
    n = n.union_all(sa.select(n.c.k + 1).where(n.c.k < copies))
    for table in COPIED:
        for index in table.indexes:
            index.drop(connection)
        rows = sa.select(*(_copied(column, n.c.k) for column in table.c)).select_from(table.join(n, sa.true()))
        one = sa.insert(table).from_select(
            [column.name for column in table.c], rows.where(table.c.id == sa.bindparam("of"))
        )
        # In the order of their numbers: each row is written behind the last.
        for of in connection.execute(sa.select(table.c.id).order_by(table.c.id)).scalars().all():
            connection.execute(one, {"of": of})
        for index in table.indexes:
            index.create(connection)
        if connection.dialect.name == "postgresql":
            last = sa.select(sa.func.setval(sa.func.pg_get_serial_sequence(table.name, "id"), sa.func.max(table.c.id)))
            connection.execute(last)
    connection.execute(sa.text("ANALYZE"))


def _settle(engine: sa.Engine) -> None:
    """Leave PostgreSQL's tables as a server does that had some time: its own tidying would fall into the sweep."""
    if engine.dialect.name == "postgresql":
        with engine.connect().execution_options(isolation_level="AUTOCOMMIT") as connection:
            connection.execute(sa.text("VACUUM"))


def _copied(column: sa.Column[object], k: sa.ColumnElement[int]) -> sa.ColumnElement[object]:
    if column.name in IDS:
        return column * STRIDE + k  # type: ignore[no-any-return,operator]
    if column.name == "address":
        return sa.cast(sa.cast(column, sa.BigInteger) * STRIDE + k, sa.String)
    return column
