from datetime import UTC, datetime, timedelta

import pytest
from sqlalchemy.exc import OperationalError

from bot import conversation, schedule, worker
from bot.roster import parse_roster
from storage import chats, due, inbox, outbox
from storage.inbox import MAX_ATTEMPTS, IncomingUpdate
from storage.loading import load_roster
from storage.persons import Who
from storage.store import Store
from tests.journeys.serving import ROSTER

NOW = datetime(2027, 1, 4, 7, tzinfo=UTC)


@pytest.fixture
def store():
    made = Store.open("sqlite://")
    with made.transaction() as tx:
        loaded = load_roster(tx, parse_roster(ROSTER), NOW)
        chats.bind_chat(tx, "phone", "coach", Who("coach", loaded.coach_id), NOW)
        for handle, athlete_id in loaded.athlete_ids.items():
            chats.bind_chat(tx, "phone", handle, Who("athlete", athlete_id), NOW)
    yield made
    made.close()


def hear(store, who, text, key):
    with store.transaction() as tx:
        inbox.accept(tx, [IncomingUpdate("phone", key, who, "text", text, NOW)], NOW)


def told(store, now):
    with store.transaction() as tx:
        return [(one.to, one.text) for one in outbox.claim(tx, now, 100)]


def test_what_came_in_is_handled_once_oldest_first(store, monkeypatch):
    seen = []
    monkeypatch.setattr(conversation, "handle", lambda tx, row, person, now: seen.append((person.handle, row.text)))
    hear(store, "mira", "one", "1")
    hear(store, "tomas", "two", "2")
    hear(store, "mira", "one", "1")
    assert worker.handle_all(store, NOW) == 2
    assert seen == [("mira", "one"), ("tomas", "two")]
    assert not worker.handle_next(store, NOW)


def test_what_fails_half_way_leaves_nothing_behind_and_is_tried_again(store, monkeypatch):
    real, failures = conversation.handle, iter([True, False])

    def sometimes(tx, row, person, now):
        real(tx, row, person, now)
        if next(failures):
            raise RuntimeError("after everything was written")

    monkeypatch.setattr(conversation, "handle", sometimes)
    hear(store, "mira", "help", "1")
    assert worker.handle_next(store, NOW)
    assert told(store, NOW) == []
    assert worker.handle_next(store, NOW + timedelta(minutes=1))
    assert [who for who, _ in told(store, NOW + timedelta(minutes=1))] == ["mira"]


def test_what_keeps_failing_is_set_aside_with_a_word_to_both_and_the_rest_goes_on(store, monkeypatch):
    real = conversation.handle

    def poisoned(tx, row, person, now):
        if row.text == "poison":
            raise RuntimeError(row.text)
        real(tx, row, person, now)

    monkeypatch.setattr(conversation, "handle", poisoned)
    hear(store, "mira", "poison", "1")
    hear(store, "mira", "help", "2")
    for minute in range(MAX_ATTEMPTS + 1):
        worker.handle_all(store, NOW + timedelta(minutes=minute))
    with store.reading() as tx:
        aside = inbox.set_aside(tx)
    assert [(row.text, row.set_aside_because) for row in aside] == [("poison", "RuntimeError")]
    later = NOW + timedelta(hours=1)
    first = told(store, later)
    assert {who for who, _ in first} == {"mira", "coach"}


def test_a_database_that_is_away_counts_as_nobodys_failure(store, monkeypatch):
    def away(tx, row, person, now):
        raise OperationalError("select", {}, Exception("away"))

    hear(store, "mira", "help", "1")
    monkeypatch.setattr(conversation, "handle", away)
    for _ in range(MAX_ATTEMPTS + 1):
        with pytest.raises(OperationalError):
            worker.handle_next(store, NOW)
    monkeypatch.undo()
    assert worker.handle_next(store, NOW)
    assert [who for who, _ in told(store, NOW)] == ["mira"]


def test_a_due_row_that_fails_stops_no_other(store, monkeypatch):
    done = []

    def sometimes(tx, row, now):
        if row.kind == "bad":
            raise RuntimeError("no")
        done.append(row.kind)

    monkeypatch.setattr(conversation, "handle_due", sometimes)
    with store.transaction() as tx:
        for minute, kind in enumerate(("bad", "good", "better")):
            due.schedule(tx, Who("athlete", 1), kind, NOW.date(), NOW + timedelta(minutes=minute))
    assert schedule.sweep(store, NOW + timedelta(minutes=5)) == 3
    assert done == ["good", "better"]


def test_after_days_of_downtime_only_todays_plan_still_goes_and_once(store):
    with store.transaction() as tx:
        conversation.begin(tx, 1, NOW)
    schedule.sweep(store, NOW)
    told(store, NOW)
    later = NOW + timedelta(days=3, hours=5)
    while schedule.sweep(store, later):
        pass
    with store.transaction() as tx:
        outbox.drop_stale(tx, later)
        dates = [one.plan["date"] for one in outbox.claim(tx, later, 100) if one.plan]
    assert dates == [later.date().isoformat()]
