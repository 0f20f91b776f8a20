"""Erasing and handing over: every table, every word, and the file itself."""

import csv
import io
import json
import os
from contextlib import closing
from dataclasses import replace
from datetime import timedelta

import pytest
import sqlalchemy as sa

from planner import facts as f
from storage import (
    backup,
    chats,
    due,
    erasure,
    export,
    facts,
    health,
    inbox,
    invites,
    notes,
    outbox,
    pace,
    questions,
    rules,
    tables,
    tombstones,
)
from storage.database import run
from storage.errors import NoSuchPerson
from storage.loading import load_roster
from storage.persons import Who, athletes, person, update_athlete
from storage.records import record
from storage.store import Store
from tests.storage.filled import fill, row_of
from tests.storage.sample import EVERY_FACT, NOW, TODAY, message, small_roster, update

# A word for all that is hers: nothing else has it.
MARK = "quillback"

ABOUT_HER = {
    "athlete",
    *(name for name, t in tables.metadata.tables.items() if {"athlete_id", "address"} & set(t.c.keys())),
}


@pytest.fixture
def full(url):
    """A store with a row of two athletes in every table; all that is the first one's carries the mark."""
    store = Store.open(url)
    with store.transaction() as tx:
        loaded = load_roster(tx, small_roster(MARK, "jonas"), NOW)
        her = person(tx, Who("athlete", loaded.athlete_ids[MARK]))
        him = person(tx, Who("athlete", loaded.athlete_ids["jonas"]))
        coach = person(tx, Who("coach", loaded.coach_id))
        update_athlete(tx, her.id, {"rules": {MARK: 1.0}})
        # From her address before anyone knew whose it is.
        inbox.accept(tx, [update("0", f"{MARK}-chat", f"hello {MARK}")], NOW)
        invites.redeem(tx, "wrong", "terminal", f"{MARK}-chat", NOW)
        for who, mark in ((her, MARK), (him, "jonas"), (coach, "coach")):
            chats.bind_chat(tx, "terminal", f"{mark}-chat", who, NOW)
            invites.new_invite(tx, who, NOW)
            due.schedule(tx, who, "plan", TODAY, NOW)
            questions.ask(tx, who, "ask", NOW, text=f"{mark} 20?", data={"words": mark})
            inbox.accept(tx, [update(f"{mark} 1", f"{mark}-chat", f"report of {mark}")], NOW)
            outbox.post(tx, message(f"{mark} plan", f"{mark}-chat", text=f"plan of {mark}", to=mark))
        for who, mark in ((her, MARK), (him, "jonas")):
            for fact in EVERY_FACT:
                facts.add(tx, who.id, fact, "athlete", NOW, 1)
            facts.add(tx, who.id, f.PainAnswer(TODAY, mark, None, 3.0, None), "athlete", NOW, 1)
            notes.add_note(tx, who.id, f"note on {mark}", NOW)
            notes.pass_on(tx, who.id, "to_coach", f"words of {mark}", NOW)
        # The coach speaks of both, and is told of both.
        notes.add_note(tx, him.id, f"Jonas is well.\nTrains with {MARK.capitalize()}.", NOW)
        inbox.accept(tx, [update("both", "coach-chat", f"jonas 4x3\nhold {MARK} three weeks")], NOW)
        summary = f"jonas: fine\n{MARK}: elbow"
        outbox.post(
            tx, message("summary", "coach-chat", to="coach", text=summary, picture=MARK.encode(), picture_alt=MARK)
        )
        outbox.post(tx, message("card", "coach-chat", to="coach", about=MARK, text="the elbow again"))
        # An order that names nobody, answered to a card of hers.
        inbox.accept(tx, [update("unnamed", "coach-chat", "rest her, she overdoes everything")], NOW)
        cause = run(tx, tables.metadata.tables["incoming"].select().where(inbox.incoming.c.update_key == "unnamed"))
        facts.add(tx, her.id, f.Order("unlock", TODAY), "coach", NOW, cause.one().id)
        rules.set_coach_rule(tx, coach.id, "x", 1.0)
        rules.set_nickname(tx, coach.id, "rainbows", "archer_pull_up")
        health.beat(tx, "sweep", NOW)
        pace.take(tx, "terminal", pace.room(tx, "terminal", NOW, timedelta(seconds=1), timedelta(seconds=1)).first, NOW)
        tombstones.bury(tx, coach.id, "somebody before her", NOW)
        fill_rest(tx)
    yield store, her, him
    store.close()


def fill_rest(tx):
    """A row in each table that is nobody's and that nothing above fills."""
    for table in tables.metadata.sorted_tables:
        if "athlete_id" not in table.c and run(tx, table.select().limit(1)).first() is None:
            run(tx, sa.insert(table), [row_of(table, 1)])


def all_rows(store):
    with store.transaction() as tx:
        return {
            table.name: [dict(row._mapping) for row in run(tx, table.select())]
            for table in tables.metadata.tables.values()
        }


def test_the_sample_fills_every_table(full):
    assert [name for name, rows in all_rows(full[0]).items() if not rows] == []


def test_nothing_of_an_erased_athlete_is_left_in_any_row(full):
    store, her, _ = full
    erasure.erase_athlete(store, her.id, NOW)
    left = all_rows(store)
    assert MARK not in repr(left).lower()
    assert "overdoes" not in repr(left)
    assert [name for name, rows in left.items() for row in rows if row.get("athlete_id") == her.id] == []


def test_the_others_keep_all_of_theirs(full):
    store, her, him = full
    mine = {name: [r for r in rows if r.get("athlete_id") == him.id] for name, rows in all_rows(store).items()}
    erasure.erase_athlete(store, her.id, NOW)
    left = {name: [r for r in rows if r.get("athlete_id") == him.id] for name, rows in all_rows(store).items()}
    mine["coach_note"][-1]["text"] = "Jonas is well."
    assert left == mine
    texts = [row["text"] for name in ("incoming", "outgoing") for row in all_rows(store)[name]]
    assert "jonas 4x3" in texts
    assert "jonas: fine" in texts


def test_no_trace_is_left_in_the_files(tmp_path):
    store = Store.open(f"sqlite:///{tmp_path}/slowrung.sqlite3")
    with store.transaction() as tx:
        loaded = load_roster(tx, small_roster(MARK, "jonas"), NOW)
        for number in range(300):
            notes.add_note(tx, loaded.athlete_ids[MARK], f"{MARK} {number}", NOW)

    def traces():
        return [path.name for path in tmp_path.iterdir() if MARK in path.read_bytes().decode("latin-1").lower()]

    assert traces()
    erasure.erase_athlete(store, loaded.athlete_ids[MARK], NOW)
    assert traces() == []
    store.close()
    assert traces() == []


def test_the_copies_that_still_know_them_are_named(tmp_path):
    store = Store.open(f"sqlite:///{tmp_path}/slowrung.sqlite3")
    with store.transaction() as tx:
        loaded = load_roster(tx, small_roster(MARK), NOW)
    copy = backup.backup(store.url, tmp_path / "copies", NOW)
    assert erasure.erase_athlete(store, loaded.athlete_ids[MARK], NOW, tmp_path / "copies").copies == (copy,)
    store.close()


def test_erasing_nobody_is_an_error(memory):
    with pytest.raises(NoSuchPerson):
        erasure.erase_athlete(memory, 99, NOW)


def test_an_export_has_every_table_that_knows_the_athlete(full):
    store, her, _ = full
    with store.reading() as tx:
        given = export.files(tx, her.id)
    data = json.loads(given["everything.json"])
    assert set(data) == ABOUT_HER
    assert [name for name, rows in data.items() if not rows] == []
    assert "jonas" not in given["everything.json"].decode()
    assert "code_hash" not in given["everything.json"].decode()
    assert "the elbow again" in given["everything.json"].decode()  # what the coach was told of her
    sets = list(csv.DictReader(io.StringIO(given["performed_set.csv"].decode())))
    assert [row["movement"] for row in sets] == ["pull_up", "pull_up", "archer_ring_elbow", "front_lever"]


def test_an_export_does_not_say_where_the_coach_is_reached(full):
    store, her, _ = full
    with store.transaction() as tx:
        numbered = sa.literal("number of ") + outbox.outgoing.c.address
        run(tx, sa.update(outbox.outgoing).values(service_id=numbered))
        given = export.files(tx, her.id)
        page = "\n".join(export.in_lines(export.everything(tx, her.id)))
    for text in (page, *(content.decode() for content in given.values())):
        assert "coach-chat" not in text
    assert "the elbow again" in page
    assert f"number of {MARK}-chat" in page


def test_the_diary_tells_of_each_day_in_order(full):
    store, her, _ = full
    with store.reading() as tx:
        days = export.diary(tx, her.id)
    assert [day.on for day in days] == sorted({day.on for day in days})
    assert [(len(day.sessions), len(day.pain), day.plan is not None) for day in days] == [(1, 0, False), (1, 2, True)]


def marked(table, column):
    return f"mark {table} {column} end "


@pytest.fixture
def marks(url):
    """A store where every text, JSON and binary column of every table has a mark of its own, all of one athlete."""
    store = Store.open(url)
    with store.transaction() as tx:
        fill(tx.connection(), tables.metadata, rows=1, text=marked)
    yield store
    store.close()


def marks_of_hers(kinds=(sa.String, sa.JSON)):
    """Table, column and mark of all that is hers, as the tables themselves say it."""
    for table in tables.metadata.sorted_tables:
        if table.name == "athlete" or {"athlete_id", "address"} & set(table.c.keys()):
            for column in table.c:
                kind = column.type.impl_instance if isinstance(column.type, sa.types.TypeDecorator) else column.type
                if isinstance(kind, kinds):
                    yield table.name, column.name, marked(table.name, column.name).strip()


def test_an_export_holds_every_text_that_is_stored_of_them(marks):
    # The code's hash opens the chat, `sender` repeats the address, and every row here is the coach's as well: the only
    # texts that are left out.
    left_out = {
        ("invite", "code_hash"),
        ("incoming", "sender"),
        ("outgoing", "address"),
        ("outgoing", "service_id"),
    }
    with marks.transaction() as tx:
        run(tx, sa.update(invites.invite_tries), {"channel": "c", "address": "a"})
        run(tx, sa.update(chats.chats), {"channel": "c", "address": "a"})
        rows = export.everything(tx, 1)
        given = export.files(tx, 1)
    page = "\n".join(export.in_lines(rows))
    texts = given["everything.json"].decode()
    csvs = b"".join(content for name, content in given.items() if name.endswith(".csv")).decode()
    wanted = [one for one in marks_of_hers() if one[:2] not in left_out and one[0] not in ("chat", "invite_try")]
    assert len(wanted) > 60
    assert [one for one in wanted if one[2] not in texts] == []
    assert [one for one in wanted if one[2] not in csvs] == []
    assert [one for one in wanted if one[2] not in page] == []
    assert rows["chat"][0]["address"] == rows["invite_try"][0]["address"] == "a"
    assert all(marked(*one).strip() not in texts for one in left_out)


@pytest.mark.parametrize("rows", [1, 3], ids="rows: {}".format)
def test_after_erasing_no_mark_is_in_any_byte_of_the_files(url, rows):
    store = Store.open(url)
    with store.transaction() as tx:
        fill(tx.connection(), tables.metadata, rows=rows, text=marked)
        for table in (chats.chats, invites.invite_tries):
            run(tx, sa.update(table).where(table.c.id == 1), {"channel": "c", "address": "a"})
        for table in (tombstones.tombstones, health.heartbeats):  # erasing makes rows of these, with numbers from 1
            run(tx, sa.delete(table))
        run(tx, sa.text("ANALYZE"))  # a server does so by itself, and keeps samples of what it saw
    kinds = (sa.String, sa.JSON, sa.LargeBinary)
    wanted = [f"{one[2]} 1" for one in marks_of_hers(kinds) if one[0] not in ("chat", "invite_try")]

    def left():
        held = every_byte(store)
        return [one for one in wanted if one.encode() in held]

    assert len(left()) > 50
    erasure.erase_athlete(store, 1, NOW)
    assert left() == []
    store.close()
    assert left() == []


def every_byte(store):
    """What the database's files hold."""
    if store.path is not None:
        return b"".join(path.read_bytes() for path in store.path.parent.iterdir())
    engine = sa.create_engine(store.url, isolation_level="AUTOCOMMIT")
    relations = sa.text("SELECT pg_relation_filepath(oid) FROM pg_class WHERE relkind IN ('r', 'i', 't', 'm')")
    content = sa.text("SELECT pg_read_binary_file(:path, 0, 1 << 29, true)")
    with engine.connect() as connection:
        connection.execute(sa.text("CHECKPOINT"))
        paths = [path for path in connection.execute(relations).scalars() if path]
        found = [connection.execute(content, {"path": path}).scalar() for path in paths]
    engine.dispose()
    return b"".join(bytes(one) for one in found if one is not None)


def test_who_had_the_address_before_is_neither_exported_nor_erased(full):
    store, her, him = full
    with store.transaction() as tx:
        chats.bind_chat(tx, "terminal", "jonas-chat", her, NOW)
        assert "report of jonas" not in export.files(tx, her.id)["everything.json"].decode()
    erasure.erase_athlete(store, her.id, NOW)
    assert "report of jonas" in [row["text"] for row in all_rows(store)["incoming"]]
    assert him.id in [row["athlete_id"] for row in all_rows(store)["outgoing"]]


# ---- coming back ----------------------------------------------------------------------------------------------------


def test_a_roster_does_not_bring_back_who_was_erased(full):
    store, her, _ = full
    erasure.erase_athlete(store, her.id, NOW)
    with store.transaction() as tx:
        loaded = load_roster(tx, small_roster(MARK.upper(), "jonas", "kim"), NOW)
    assert (loaded.erased, loaded.added) == ((MARK.upper(),), ("kim",))
    assert MARK not in repr(all_rows(store)).lower()


def test_they_come_back_when_told_and_stay_afterwards(full):
    store, her, _ = full
    erasure.erase_athlete(store, her.id, NOW)
    with store.transaction() as tx:
        assert load_roster(tx, small_roster(MARK), NOW, again=[MARK]).added == (MARK,)
        assert load_roster(tx, small_roster(MARK), NOW).erased == ()
        assert facts.sessions(tx, load_roster(tx, small_roster(MARK), NOW).athlete_ids[MARK])[0].is_test


def test_another_coachs_athlete_of_that_handle_is_nobody_erased(full):
    store, her, _ = full
    erasure.erase_athlete(store, her.id, NOW)
    other = small_roster(MARK)
    with store.transaction() as tx:
        assert load_roster(tx, replace(other, coach=replace(other.coach, name="Rui")), NOW).added == (MARK,)


def test_a_copy_that_is_put_back_lacks_who_was_erased_since(tmp_path):
    store = Store.open(f"sqlite:///{tmp_path}/slowrung.sqlite3")
    with store.transaction() as tx:
        loaded = load_roster(tx, small_roster(MARK, "jonas"), NOW)
    copy = backup.backup(store.url, tmp_path / "copies", NOW)
    erasure.erase_athlete(store, loaded.athlete_ids[MARK], NOW)
    store.close()
    done = erasure.restore_copy(copy, store.path, NOW)
    assert (done.erased_again, done.unsure) == (1, False)
    again = Store.open(store.url)
    assert [row["handle"] for row in all_rows(again)["athlete"]] == ["jonas"]
    with again.transaction() as tx:
        assert load_roster(tx, small_roster(MARK), NOW).erased == (MARK,)
    again.close()
    assert MARK.encode() not in store.path.read_bytes().lower()


def test_who_was_taken_up_again_keeps_what_is_new_and_gets_nothing_back_of_before(tmp_path):
    store, copies = Store.open(f"sqlite:///{tmp_path}/slowrung.sqlite3"), tmp_path / "copies"
    with store.transaction() as tx:
        old = load_roster(tx, small_roster(MARK, "jonas"), NOW).athlete_ids[MARK]
        notes.add_note(tx, old, "from before", NOW)
    before = backup.backup(store.url, copies, NOW)
    erasure.erase_athlete(store, old, NOW)
    with store.transaction() as tx:
        new = load_roster(tx, small_roster(MARK, "jonas"), NOW, again=[MARK.upper()]).athlete_ids[MARK]
        notes.add_note(tx, new, "from after", NOW)
        assert tombstones.come_back(tx) == []
    after = backup.backup(store.url, copies, NOW)

    def put_back(copy):
        store.close()
        done = erasure.restore_copy(copy, store.path, NOW)
        with closing(Store.open(store.url)) as again, again.reading() as tx:
            return done.erased_again, run(tx, sa.select(notes.coach_notes.c.text)).scalars().all()

    assert put_back(after) == (0, ["from after"])
    assert put_back(before) == (1, [])
    assert b"from before" not in store.path.read_bytes()


def test_copies_that_know_who_was_taken_up_again_are_gone_after_the_days(tmp_path):
    store = Store.open(f"sqlite:///{tmp_path}/slowrung.sqlite3")
    with store.transaction() as tx:
        loaded = load_roster(tx, small_roster(MARK), NOW)
    knows = backup.backup(store.url, tmp_path / "copies", NOW)
    os.utime(knows, (NOW.timestamp(), NOW.timestamp()))
    erasure.erase_athlete(store, loaded.athlete_ids[MARK], NOW)
    with store.transaction() as tx:
        load_roster(tx, small_roster(MARK), NOW, again=[MARK])
    assert erasure.let_go_of_copies(store.url, [tmp_path / "copies"], NOW + backup.KEEP_ERASED) == [knows]
    store.close()


def test_an_erasure_counts_wherever_the_clock_was_set_between(full):
    store, her, _ = full
    early = NOW - timedelta(hours=1)
    erasure.erase_athlete(store, her.id, NOW)
    with store.transaction() as tx:
        new = load_roster(tx, small_roster(MARK), early, again=[MARK]).athlete_ids[MARK]
        row = dict(run(tx, sa.select(athletes).where(athletes.c.id == new)).one()._mapping)
        assert tombstones.come_back(tx) == []
    erasure.erase_athlete(store, new, early)
    with store.transaction() as tx:
        run(tx, sa.insert(athletes), row)  # as an older copy has it
        assert tombstones.come_back(tx) == [new]
        assert load_roster(tx, small_roster(MARK), NOW, again=[MARK]).erased == (MARK,)


def test_it_is_said_where_nobody_can_know_who_was_erased_since(tmp_path):
    store = Store.open(f"sqlite:///{tmp_path}/slowrung.sqlite3")
    copy = backup.backup(store.url, tmp_path / "copies", NOW)
    store.close()
    store.path.write_bytes(b"no database " * 1000)
    assert erasure.restore_copy(copy, store.path, NOW).unsure


def test_copies_that_know_them_are_gone_after_the_days_they_were_promised(tmp_path):
    store = Store.open(f"sqlite:///{tmp_path}/slowrung.sqlite3")
    with store.transaction() as tx:
        loaded = load_roster(tx, small_roster(MARK, "jonas"), NOW)
    copies = tmp_path / "copies"
    knows = backup.backup(store.url, copies, NOW)
    beside = backup.copy_file(store.path, tmp_path / "slowrung-before-upgrade-0001.sqlite3")
    for path in (knows, beside):
        os.utime(path, (NOW.timestamp(), NOW.timestamp()))
    erasure.erase_athlete(store, loaded.athlete_ids[MARK], NOW + timedelta(hours=1))
    fresh = backup.backup(store.url, copies, NOW + timedelta(hours=2))
    os.utime(fresh, (NOW.timestamp() + 7200,) * 2)
    promised = NOW + timedelta(hours=1) + backup.KEEP_ERASED

    assert erasure.let_go_of_copies(store.url, [copies], promised - timedelta(seconds=1)) == []
    assert set(erasure.let_go_of_copies(store.url, [copies], promised)) == {knows, beside}
    assert backup.copies(copies) == [fresh]
    assert store.path.exists()
    store.close()


def test_no_copy_is_let_go_while_nobody_was_erased(tmp_path):
    store = Store.open(f"sqlite:///{tmp_path}/slowrung.sqlite3")
    copy = backup.backup(store.url, tmp_path / "copies", NOW)
    assert erasure.let_go_of_copies(store.url, [tmp_path / "copies"], NOW + timedelta(days=1000)) == []
    assert copy.exists()
    store.close()


def test_the_tombstone_says_nothing_of_the_person(full):
    store, her, _ = full
    erasure.erase_athlete(store, her.id, NOW)
    *_, row = all_rows(store)["tombstone"]
    assert set(row) == {"id", "coach_id", "key", "handle_hash", "erased_at"}
    assert row["handle_hash"] != tombstones.hashed("00", MARK)
    assert row["handle_hash"] == tombstones.hashed(row["key"], MARK)


@pytest.mark.parametrize("table", [inbox.incoming, outbox.outgoing, due.dues, questions.questions], ids=str)
def test_numbers_that_buttons_causes_and_sends_name_are_not_given_again(memory, table):
    with memory.transaction() as tx:  # PostgreSQL never gives one twice
        fill(tx.connection(), tables.metadata, rows=2)
        run(tx, sa.delete(table).where(table.c.id == 2))
        values = {**row_of(table, 3), "athlete_id": 1, "coach_id": 1}
        del values["id"]
        assert run(tx, sa.insert(table), values).inserted_primary_key[0] == 3


def test_who_comes_after_the_erased_is_not_taken_for_them(tmp_path):
    store = Store.open(f"sqlite:///{tmp_path}/slowrung.sqlite3")
    with store.transaction() as tx:
        hers = load_roster(tx, small_roster("jonas", MARK), NOW).athlete_ids[MARK]
        facts.add(tx, hers, f.Session(TODAY, (f.WorkSet("pull_up", 5, load_kg=99.0),)), "athlete", NOW, None)
    with store.transaction() as tx:
        record(tx, hers)  # at hand from now on
    with closing(Store.open(store.url)) as beside:  # as the command does while the service runs
        erasure.erase_athlete(beside, hers, NOW)
        with beside.transaction() as tx:
            his = load_roster(tx, small_roster("jonas", "tomas"), NOW).athlete_ids["tomas"]
            facts.add(tx, his, f.Session(TODAY, (f.WorkSet("pull_up", 5, load_kg=10.0),)), "athlete", NOW, None)
    with store.transaction() as tx:
        assert his != hers
        assert 99.0 not in [one.load_kg for session in record(tx, his).sessions for one in session.sets]
    store.close()
