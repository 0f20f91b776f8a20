"""Erasing and handing over: every table, every word, and the file itself."""

import csv
import io
import json

import pytest

from planner import facts as f
from storage import chats, due, erasure, export, facts, health, inbox, invites, notes, outbox, questions, rules, tables
from storage.database import run
from storage.errors import NoSuchPerson
from storage.loading import load_roster
from storage.persons import Who, person, update_athlete
from storage.store import Store
from tests.storage.sample import EVERY_FACT, NOW, TODAY, message, small_roster, update

# A word for all that is hers: nothing else has it.
MARK = "quillback"


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
    yield store, her, him
    store.close()


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
    erasure.erase_athlete(store, her.id)
    left = all_rows(store)
    assert MARK not in repr(left).lower()
    assert "overdoes" not in repr(left)
    assert [name for name, rows in left.items() for row in rows if row.get("athlete_id") == her.id] == []


def test_the_others_keep_all_of_theirs(full):
    store, her, him = full
    mine = {name: [r for r in rows if r.get("athlete_id") == him.id] for name, rows in all_rows(store).items()}
    erasure.erase_athlete(store, her.id)
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
    erasure.erase_athlete(store, loaded.athlete_ids[MARK])
    assert traces() == []
    store.close()
    assert traces() == []


def test_the_copies_that_still_know_them_are_named(tmp_path):
    from storage import backup

    store = Store.open(f"sqlite:///{tmp_path}/slowrung.sqlite3")
    with store.transaction() as tx:
        loaded = load_roster(tx, small_roster(MARK), NOW)
    copy = backup.backup(store.url, tmp_path / "copies", NOW)
    assert erasure.erase_athlete(store, loaded.athlete_ids[MARK], tmp_path / "copies").copies == (copy,)
    store.close()


def test_erasing_nobody_is_an_error(memory):
    with pytest.raises(NoSuchPerson):
        erasure.erase_athlete(memory, 99)


def test_an_export_has_every_table_that_knows_the_athlete(full):
    store, her, _ = full
    with store.reading() as tx:
        given = export.files(tx, her.id)
    data = json.loads(given["everything.json"])
    assert set(data) == {"athlete", *(name for name, t in tables.metadata.tables.items() if "athlete_id" in t.c)}
    assert [name for name, rows in data.items() if not rows] == []
    assert "jonas" not in given["everything.json"].decode()
    assert "code_hash" not in given["everything.json"].decode()
    sets = list(csv.DictReader(io.StringIO(given["performed_set.csv"].decode())))
    assert [row["movement"] for row in sets] == ["pull_up", "pull_up", "archer_ring_elbow", "front_lever"]


def test_the_diary_tells_of_each_day_in_order(full):
    store, her, _ = full
    with store.reading() as tx:
        days = export.diary(tx, her.id)
    assert [day.on for day in days] == sorted({day.on for day in days})
    assert [(len(day.sessions), len(day.pain), day.plan is not None) for day in days] == [(1, 0, False), (1, 2, True)]
