from datetime import UTC, datetime, timedelta

import pytest
import sqlalchemy as sa
from psycopg.errors import DeadlockDetected, ProgramLimitExceeded
from sqlalchemy.exc import OperationalError

from bot import conversation, schedule, worker
from bot.roster import parse_roster
from storage import chats, due, inbox, invites, outbox
from storage.fact_tables import Report
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


def refused_by_the_database(kind):
    return OperationalError("insert", {}, kind("made here"))


def test_a_message_that_the_database_will_not_take_is_counted_and_holds_up_nobody(store, monkeypatch):
    real = conversation.handle

    def too_much(tx, row, person, now):
        if row.text == "poison":
            raise refused_by_the_database(ProgramLimitExceeded)
        real(tx, row, person, now)

    monkeypatch.setattr(conversation, "handle", too_much)
    hear(store, "mira", "poison", "1")
    hear(store, "tomas", "help", "2")
    for minute in range(MAX_ATTEMPTS + 1):
        worker.handle_all(store, NOW + timedelta(minutes=minute))
    with store.reading() as tx:
        assert [row.set_aside_because for row in inbox.set_aside(tx)] == ["OperationalError"]
    assert {who for who, _ in told(store, NOW + timedelta(hours=1))} == {"mira", "tomas", "coach"}


def test_two_that_met_in_the_database_are_no_failure_of_the_message(store, monkeypatch):
    real, meetings = conversation.handle, iter([True, True, False])

    def meets(tx, row, person, now):
        real(tx, row, person, now)
        if next(meetings):
            raise refused_by_the_database(DeadlockDetected)

    monkeypatch.setattr(conversation, "handle", meets)
    hear(store, "mira", "help", "1")
    assert worker.handle_next(store, NOW)
    with store.reading() as tx:
        row = inbox.by_key(tx, "phone", "1")
    assert (row.attempts, row.handled_at) == (0, NOW)
    assert [who for who, _ in told(store, NOW)] == ["mira"]


def test_a_due_row_that_the_database_will_not_take_stops_no_other(store, monkeypatch):
    done = []

    def sometimes(tx, row, now):
        if row.kind == "bad":
            raise refused_by_the_database(ProgramLimitExceeded)
        done.append(row.kind)

    monkeypatch.setattr(conversation, "handle_due", sometimes)
    with store.transaction() as tx:
        for minute, kind in enumerate(("bad", "good", "better")):
            due.schedule(tx, Who("athlete", 1), kind, NOW.date(), NOW + timedelta(minutes=minute))
    assert schedule.sweep(store, NOW + timedelta(minutes=5)) == 3
    assert done == ["good", "better"]


def test_a_flood_from_one_lets_everybody_else_in_between(store, monkeypatch):
    seen = []
    monkeypatch.setattr(conversation, "handle", lambda tx, row, person, now: seen.append(person.handle))
    for key in range(300):
        hear(store, "mira", "help", f"m{key}")
    later = NOW + timedelta(seconds=20)
    with store.transaction() as tx:
        for key in range(3):
            inbox.accept(tx, [IncomingUpdate("phone", f"t{key}", "tomas", "text", "help", later)], later)
    worker.handle_all(store, later, 40)
    assert seen.count("tomas") == 3
    worker.handle_all(store, later)
    assert seen.count("mira") == 300


def test_a_flood_is_read_whole_and_answered_little(store):
    for key in range(60):
        hear(store, "mira", f"pull-ups 3x{1 + key % 5} +{key // 5 + 1}", f"m{key}")
    assert worker.handle_all(store, NOW) == 60
    with store.reading() as tx:
        posted = outbox.posted_since(tx, 0, "", 1)
        reports = {row[0] for row in tx.execute(sa.select(Report.cause).where(Report.cause.is_not(None)))}
    slow = [one for one in posted if "writing faster" in one.text]
    assert len(slow) == 1
    assert worker.A_MINUTE <= len(posted) < 30
    assert len(reports) == 60


def test_a_warning_sign_in_a_flood_is_answered_and_the_coach_told(store):
    for key in range(30):
        hear(store, "mira", "thanks", f"m{key}")
    hear(store, "mira", "sharp chest pain and my left arm is numb", "sign")
    worker.handle_all(store, NOW)
    with store.reading() as tx:
        row = inbox.by_key(tx, "phone", "sign")
        urgent = [one for one in outbox.posted_since(tx, 0, "", 1) if one.importance == outbox.ALERT]
    assert row.handled_at is not None
    assert {one.to for one in urgent} >= {"coach"}
    with store.reading() as tx:
        assert [one for one in outbox.posted_since(tx, 0, f"incoming:{row.id}", None) if one.address == "mira"]


def test_messages_of_a_morning_without_the_bot_are_no_flood(store):
    with store.transaction() as tx:
        said = [
            IncomingUpdate("phone", f"m{key}", "mira", "text", "help", NOW - timedelta(minutes=5 * key))
            for key in reversed(range(30))
        ]
        inbox.accept(tx, said, NOW)
    worker.handle_all(store, NOW)
    with store.reading() as tx:
        assert not [one for one in outbox.posted_since(tx, 0, "", 1) if "writing faster" in one.text]


def stranger(key, text, minute=0.0):
    return IncomingUpdate("phone", key, "nobody", "text", text, NOW + timedelta(minutes=minute))


def test_a_strangers_flood_is_refused_once_an_hour_and_not_kept(store):
    kept = 0
    for minute in range(180):
        now = NOW + timedelta(minutes=minute)
        with store.transaction() as tx:
            kept += inbox.accept(tx, [stranger(f"{minute}-{n}", "let me in", minute) for n in range(10)], now)
        worker.handle_all(store, now)
    assert kept == 3
    assert [who for who, _ in told(store, NOW + timedelta(hours=3))] == [""]
    with store.reading() as tx:
        rows = tx.execute(sa.select(sa.func.count()).select_from(outbox.outgoing)).scalar()
    assert rows == 3


def test_ten_codes_a_day_may_be_tried_and_are_answered_the_rest_is_not_kept(store):
    with store.transaction() as tx:
        kept = inbox.accept(tx, [stranger(str(n), f"/start {n:032}", n) for n in range(50)], NOW)
    assert kept == inbox.CODES_A_DAY == invites.TRIES_A_DAY


def test_what_somebody_says_right_after_their_code_is_not_taken_for_a_strangers_flood(store):
    with store.transaction() as tx:
        code = invites.new_invite(tx, Who("athlete", 1), NOW)
        said = [stranger("1", "hello"), stranger("2", f"/start {code}"), stranger("3", "pull-ups 5x3 +7.5, last @8")]
        assert inbox.accept(tx, said, NOW) == 3
    worker.handle_all(store, NOW)
    with store.reading() as tx:
        assert tx.execute(sa.select(sa.func.count()).where(Report.cause.is_not(None))).scalar() == 1


def test_old_rows_of_a_stranger_make_way_for_new_ones(store):
    for day in range(10):
        now = NOW + timedelta(days=day)
        with store.transaction() as tx:
            inbox.accept(tx, [stranger(str(day), "let me in", day * 24 * 60)], now)
        worker.handle_all(store, now)
    with store.reading() as tx:
        assert tx.execute(sa.select(sa.func.count()).select_from(inbox.incoming)).scalar() <= 3


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


def test_a_code_tried_days_after_a_wrong_one_is_welcomed(store):
    with store.transaction() as tx:
        code = invites.new_invite(tx, Who("athlete", 1), NOW)
        inbox.accept(tx, [stranger("1", "/start wrong")], NOW)
    worker.handle_all(store, NOW)
    later = NOW + timedelta(days=3)
    with store.transaction() as tx:
        inbox.accept(tx, [stranger("2", f"/start {code}", 3 * 24 * 60)], later)
        row = inbox.by_key(tx, "phone", "2")
    worker.handle_all(store, later)
    with store.reading() as tx:
        posted = outbox.posted_since(tx, 0, f"incoming:{row.id}", None)
    assert "nobody" in {one.address for one in posted if one.to == "mira"}


def test_what_the_coach_writes_while_a_flood_is_answered_stays(store, monkeypatch):
    real = conversation.handle

    def beside(tx, row, person, now):
        real(tx, row, person, now)
        word = outbox.Outgoing(
            channel="phone", address="mira", to="mira", text="Rest today.", cause=f"coach:{row.id}", due_at=now
        )
        outbox.post(tx, word)

    monkeypatch.setattr(conversation, "handle", beside)
    for key in range(30):
        hear(store, "mira", "thanks", f"m{key}")
    worker.handle_all(store, NOW)
    with store.reading() as tx:
        posted = outbox.posted_since(tx, 0, "", 1)
    assert sum(one.text == "Rest today." for one in posted) == 30
