"""An athlete's data in chat: handed over, and ended."""

import io
import json
import zipfile
from datetime import UTC, datetime

import pytest
import sqlalchemy as sa

from bot import schedule
from bot.conversation import privacy
from storage import outbox, persons, tables
from storage.notes import add_note
from storage.persons import all_coaches
from storage.retention import Keep
from storage.store import Store
from tests.bot.conversation.conftest import Chat, athlete


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("send me all my data", "ask"),
        ("What do you store about me?", "ask"),
        ("Schick mir bitte alle meine Daten", "ask"),
        ("¿Qué guardas sobre mí?", "ask"),
        ("delete all my data", "erase"),
        ("Lösche bitte alle meine Daten!", "erase"),
        ("borra todos mis datos", "erase"),
        ("don't delete my data", None),
        ("no borres mis datos", None),
        ("delete the last set", None),
        ("pull-ups 5x3 +20, what is my plan", None),
    ],
)
def test_what_is_asked_of_the_data_is_read_in_three_languages(text, kind):
    assert privacy.wanted(text) == kind


def documents(chat, monkeypatch):
    """The files as delivery claims them: they are not kept once sent."""
    found = {}
    real = outbox.mark_sent

    def seen(tx, outgoing_id, *rest):
        row = tx.execute(sa.select(outbox.outgoing).where(outbox.outgoing.c.id == outgoing_id)).one()
        if row.document:
            found[row.document_name] = row.document
        real(tx, outgoing_id, *rest)

    monkeypatch.setattr(outbox, "mark_sent", seen)
    return found


def test_a_page_json_and_tables_are_handed_over_with_all_that_is_stored(chat, monkeypatch):
    chat.says("mira", "pull-ups 5,5,5 +15, bodyweight 61.4", "19:00")
    with chat.store.transaction() as tx:
        mira = persons.athlete_by_handle(tx, all_coaches(tx)[0].id, "mira")
        add_note(tx, mira.id, "careful, xylophone", datetime(2027, 1, 4, 18, tzinfo=UTC))
    found = documents(chat, monkeypatch)
    said = chat.answer("mira", "send me all my data", "19:10")

    assert "my-page.txt" in said
    assert list(found) == ["my-page.txt", "everything.json", "tables.zip"]
    page = found["my-page.txt"].decode()
    assert "61.4 kg" in page
    assert "5×3" in page or "3×5" in page
    rows = json.loads(found["everything.json"])
    assert any(row["text"].startswith("pull-ups 5,5,5") for row in rows["incoming"])
    with zipfile.ZipFile(io.BytesIO(found["tables.zip"])) as archive:
        assert {"athlete.csv", "performed_set.csv", "incoming.csv"} <= set(archive.namelist())
        assert b"xylophone" in archive.read("coach_note.csv")
    assert all("xylophone" in found[name].decode() for name in ("my-page.txt", "everything.json"))
    assert "pull-ups 5,5,5 +15" in page.split("Every row")[1]
    with chat.store.reading() as tx:
        kept = tx.execute(sa.select(outbox.outgoing.c.document).where(outbox.outgoing.c.document.is_not(None))).all()
    assert kept == []


def test_deletion_is_confirmed_then_complete_and_the_coach_told(two):
    two.says("mira", "pull-ups 5,5,5 +15", "19:00")
    assert "cannot be undone" in two.answer("mira", "delete all my data", "19:10")
    answers = two.says("mira", "delete all my data", "19:11")
    assert any(one["to"] == "coach" and "has left" in one["text"] for one in answers)
    two.waits_until("19:40")

    with two.store.reading() as tx:
        for table in tables.metadata.sorted_tables:
            for row in tx.execute(sa.select(table)).all():
                assert "mira" not in repr(row).casefold(), table.name
    assert "mira" not in "\n".join(one["text"] for one in two.says("coach", "summary", "20:00")).casefold()


def test_a_button_of_yesterday_deletes_nothing(chat):
    chat.says("mira", "delete all my data", "19:10")
    chat.waits_until("19:20", "2027-01-06")
    heard = chat.says("mira", None, "19:30", "2027-01-06", press="Delete everything")
    assert any("Nothing is deleted" in one["text"] for one in heard)
    chat.waits_until("22:00", "2027-01-06")
    assert chat.record().sessions


def test_old_words_are_let_go_and_their_facts_stay(chat):
    chat.says("mira", "pull-ups 5,5,5 +15", "19:00")
    chat.says("mira", "bodyweight 61.4", "19:00", "2027-01-20")
    schedule.sweep_and_beat(chat.store, datetime(2027, 1, 21, 20, tzinfo=UTC), keep=Keep(messages=7))
    with chat.store.reading() as tx:
        texts = [row.text for row in tx.execute(sa.select(tables.metadata.tables["incoming"].c.text)).all()]

    assert texts == ["", "bodyweight 61.4"]
    assert len(chat.record().sessions) == 2  # the roster's test, and the one told of


def test_no_mark_of_who_left_is_in_the_database_file(tmp_path, monkeypatch):
    file, real = tmp_path / "bot.sqlite3", Store.open
    monkeypatch.setattr(Store, "open", lambda _url: real(f"sqlite:///{file}"))
    chat = Chat(athlete("miraxylo"), athlete("tom"))
    chat.says("miraxylo", "pull-ups 5,5,5 +15 zebrafish", "19:00")
    chat.says("coach", "miraxylo note: quagga", "19:01")
    chat.says("miraxylo", "delete all my data", "19:02")
    chat.says("miraxylo", None, "19:03", press="Delete everything")

    def marks() -> set[bytes]:
        held = b"".join(one.read_bytes() for one in tmp_path.iterdir()).lower()
        return {mark for mark in (b"miraxylo", b"zebrafish", b"quagga", b"tom") if mark in held}

    assert len(marks()) == 4
    chat.waits_until("19:30")
    assert marks() == {b"tom"}
    chat.close()


def test_words_that_were_let_go_are_in_no_byte_of_the_file(tmp_path, monkeypatch):
    file, real = tmp_path / "bot.sqlite3", Store.open
    monkeypatch.setattr(Store, "open", lambda _url: real(f"sqlite:///{file}"))
    chat = Chat()
    chat.says("mira", "pull-ups 5,5,5 +15 and saw a zebrafish", "19:00")
    chat.says("mira", "bodyweight 61.4, saw a quagga", "19:00", "2027-01-20")
    schedule.sweep_and_beat(chat.store, datetime(2027, 1, 21, 20, tzinfo=UTC), keep=Keep(messages=7))
    chat.close()
    held = b"".join(one.read_bytes() for one in tmp_path.iterdir())
    assert b"quagga" in held
    assert b"zebrafish" not in held
