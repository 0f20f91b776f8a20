"""Each thing that can be wrong is found, and nothing that is right."""

import errno
import os
import shutil
import sqlite3
from contextlib import closing
from datetime import UTC, datetime, timedelta
from email.utils import format_datetime
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from threading import Thread

import pytest
import sqlalchemy as sa
from pydantic import SecretStr

from bot import doctor
from bot.settings import Settings
from storage import backup, chats, erasure, health, inbox, outbox, persons
from storage.database import run
from storage.inbox import IncomingUpdate
from storage.loading import load_roster
from storage.persons import Who
from storage.store import Store
from tests.storage.sample import small_roster

NOW = datetime.now(UTC).replace(microsecond=0)  # noqa: TID251  files made here have the machine's own time
TOKEN = "7000000001:not-a-real-token-only-for-tests"


class Service:
    """What the doctor asks of the chat service: an answer with a date, and a name for a token."""

    def __init__(self) -> None:
        self.date, self.knows = NOW, True
        outer = self

        class Handler(BaseHTTPRequestHandler):
            def do_GET(self):
                self.answer(200, b"{}")

            def do_POST(self):
                self.rfile.read(int(self.headers.get("content-length", 0)))
                known = b'{"ok": true, "result": {"id": 7, "is_bot": true, "first_name": "s", "username": "slow_bot"}}'
                unknown = b'{"ok": false, "error_code": 401, "description": "Unauthorized"}'
                self.answer(200 if outer.knows else 401, known if outer.knows else unknown)

            def answer(self, status, body):
                self.send_response_only(status)
                self.send_header("Date", format_datetime(outer.date, usegmt=True))
                self.send_header("Content-Length", str(len(body)))
                self.end_headers()
                self.wfile.write(body)

            def log_message(self, *_):
                pass

        self.server = ThreadingHTTPServer(("127.0.0.1", 0), Handler)
        self.server.block_on_close = True
        self.server.daemon_threads = False
        self.url = f"http://127.0.0.1:{self.server.server_address[1]}"
        self.thread = Thread(target=self.server.serve_forever, args=(0.02,))
        self.thread.start()

    def stop(self) -> None:
        self.server.shutdown()
        self.server.server_close()
        self.thread.join()


@pytest.fixture
def service():
    made = Service()
    yield made
    made.stop()


@pytest.fixture
def settings(tmp_path, service, monkeypatch):
    for name in [one for one in os.environ if one.startswith("SLOWRUNG_")]:
        monkeypatch.delenv(name)
    home = tmp_path / "home"
    home.mkdir(mode=0o700)
    return Settings(home=home, telegram_token=SecretStr(TOKEN), telegram_api_url=service.url)


@pytest.fixture
def sound(settings):
    """Everything as it should be: a roster, a sweep just now, a backup of tonight."""
    before = os.umask(0o077)
    with closing(Store.open(settings.database)) as store, store.transaction() as tx:
        load_roster(tx, small_roster("mira"), NOW - timedelta(days=40))
        health.beat(tx, "sweep", NOW - timedelta(seconds=5))
    backup.backup(settings.database, settings.backups, NOW)
    os.umask(before)
    return settings


def wrong(settings, now=NOW):
    fine, findings = doctor.examine(settings, now)
    found = [one for one in findings if one.startswith("!")]
    assert fine == (not found)
    return "\n".join(found)


def change(settings, work):
    with closing(Store.open(settings.database)) as store, store.transaction() as tx:
        return work(tx)


def test_where_all_is_well_nothing_is_wrong(sound):
    fine, findings = doctor.examine(sound, NOW)
    assert fine, findings
    said = "\n".join(findings)
    for word in ("slow_bot", "clock agrees", "Time zone data", "sweep is 5 s", "1 backups", "MB left", "365 days"):
        assert word in said
    assert TOKEN not in said


def test_a_token_that_is_missing_malformed_or_unknown(sound, service):
    assert "is not set" in wrong(sound.model_copy(update={"telegram_token": None}))
    assert "has not the form" in wrong(sound.model_copy(update={"telegram_token": SecretStr("7:short")}))
    service.knows = False
    assert "does not know this" in wrong(sound)


def test_a_service_that_does_not_answer(sound, service):
    service.stop()
    try:
        assert "does not answer" in wrong(sound)
    finally:
        service.__init__()  # the fixture stops it once more


@pytest.mark.parametrize("off", [timedelta(hours=1), timedelta(hours=-1), timedelta(seconds=31)])
def test_a_clock_that_is_off(sound, service, off):
    service.date = NOW + off
    assert "off the service's" in wrong(sound)


def test_a_clock_that_was_set_back_shows_by_the_last_sweep(sound):
    change(sound, lambda tx: health.beat(tx, "sweep", NOW + timedelta(hours=3)))
    assert "in the future" in wrong(sound)


def test_a_webhook_that_is_open_or_not_encrypted(sound):
    assert "WEBHOOK_SECRET" in wrong(sound.model_copy(update={"webhook_url": "https://bot.example"}))
    assert "https://" in wrong(
        sound.model_copy(update={"webhook_url": "http://bot.example", "webhook_secret": SecretStr("x")})
    )


def test_replicas_on_a_file(sound):
    assert "move to PostgreSQL" in wrong(sound.model_copy(update={"replicas": 2}))


def test_no_database_yet_and_none_is_made(settings):
    assert "There is no database" in wrong(settings)
    assert list(settings.home.iterdir()) == []


def test_a_damaged_database(sound):
    path = sound.home / "slowrung.sqlite3"
    content = bytearray(path.read_bytes())
    content[3 * 4096 : 4 * 4096] = b"\x99" * 4096
    path.write_bytes(content)
    assert "is damaged" in wrong(sound)


def test_a_database_that_is_away(sound):
    assert "does not open" in wrong(sound.model_copy(update={"database_url": "postgresql://nobody@127.0.0.1:1/x"}))


def test_tables_of_another_version_are_only_looked_at(sound):
    path = sound.home / "slowrung.sqlite3"
    with closing(sqlite3.connect(path)) as connection:
        connection.execute("UPDATE alembic_version SET version_num = '0001'")
        connection.commit()
    assert "at 0001" in wrong(sound)
    with closing(sqlite3.connect(path)) as connection:
        assert connection.execute("SELECT version_num FROM alembic_version").fetchall() == [("0001",)]


def test_an_empty_database_wants_a_roster(settings):
    Store.open(settings.database).close()
    assert "no roster yet" in wrong(settings)


def test_a_zone_that_nobody_knows_any_more(sound):
    change(sound, lambda tx: persons.update_athlete(tx, 1, {"timezone": "Atlantis/Capital"}))
    assert "no time zone data for Atlantis/Capital" in wrong(sound)


def test_messages_that_wait_and_messages_set_aside(sound):
    old = NOW - timedelta(minutes=10)

    def receive(tx):
        inbox.accept(tx, [IncomingUpdate("terminal", str(n), f"a{n}", "text", "hi", old) for n in range(2)], old)
        for _ in range(inbox.MAX_ATTEMPTS):
            inbox.note_failure(tx, 1, "ValueError", old)

    change(sound, receive)
    said = wrong(sound)
    assert "1 messages could not be handled" in said
    assert "slowrung retry" in said
    assert "1 messages wait to be handled, the oldest 10 min" in said


def test_an_update_that_nobody_could_read_is_told_of_and_no_fault_for_ever(sound):
    change(sound, lambda tx: inbox.keep_aside(tx, "telegram", "7", "unreadable: no chat", NOW))
    assert wrong(sound) == ""
    assert "1 updates could not be read" in "\n".join(doctor.examine(sound, NOW)[1])


def owe(tx, address, **more):
    values = {"channel": "terminal", "to": address, "text": "hi", "cause": f"c:{more}", "due_at": NOW} | more
    return outbox.post(tx, outbox.Outgoing(address=address, **values))


def test_messages_that_nobody_got_are_wrong_and_those_given_up_for_good_reason_are_not(sound):
    def give_up(tx, why, at=NOW):
        outbox.give_up(tx, owe(tx, "mira", cause=why), why, at)

    change(sound, lambda tx: [give_up(tx, why) for why in ("stale", "unreachable")])
    assert wrong(sound) == ""
    assert "2 messages were given up" in "\n".join(doctor.examine(sound, NOW)[1])
    change(sound, lambda tx: give_up(tx, "refused: long ago", NOW - timedelta(days=8)))
    assert wrong(sound) == ""
    for why in ("refused: Wrong file identifier", "refused: Message is too long", "failed: ValueError"):
        change(sound, lambda tx, why=why: give_up(tx, why))
    assert "3 messages were lost in 7 days (failed 1, refused 2)" in wrong(sound)


def test_a_coach_who_cannot_be_reached_is_wrong(sound):
    change(sound, lambda tx: chats.bind_chat(tx, "terminal", "mira", Who("athlete", 1), NOW))
    assert "the coach, cannot be reached" in wrong(sound)
    change(sound, lambda tx: chats.bind_chat(tx, "terminal", "coach", Who("coach", 1), NOW))
    assert wrong(sound) == ""
    change(sound, lambda tx: chats.set_blocked(tx, "terminal", "coach", True))
    change(sound, lambda tx: owe(tx, "coach", due_at=NOW - timedelta(hours=5)))
    said = wrong(sound)
    assert "1 messages wait for them" in said
    assert "wait to be sent" not in said


def test_a_sweep_that_stopped(sound):
    assert "is the service running?" in wrong(sound, NOW + timedelta(minutes=3))


def test_backups_that_are_missing_or_old(sound):
    assert "newest of 1 backups is 72 h old" in wrong(sound, NOW + timedelta(days=3))
    shutil.rmtree(sound.backups)
    assert "no backup" in wrong(sound)


def test_no_backup_yet_is_no_fault_in_the_first_days(sound):
    shutil.rmtree(sound.backups)
    change(sound, lambda tx: persons.update_athlete(tx, 1, {"started_on": NOW.date()}))
    assert wrong(sound) == ""


def test_copies_that_should_be_gone_and_people_who_should(sound):
    with closing(Store.open(sound.database)) as store:
        erasure.erase_athlete(store, 1, NOW + timedelta(seconds=1))
        later = NOW + backup.KEEP_ERASED + timedelta(seconds=1)
        assert "copies know somebody" in wrong(sound, later)
        with store.transaction() as tx:
            kept = run(tx, sa.text("SELECT * FROM tombstone")).mappings().all()
    shutil.copy(backup.copies(sound.backups)[0], sound.home / "slowrung.sqlite3")
    names = ("coach_id", "key", "handle_hash", "erased_at")
    change(
        sound,
        lambda tx: run(
            tx,
            sa.text("INSERT INTO tombstone (coach_id, key, handle_hash, erased_at) VALUES (:coach_id, :key, "
                    ":handle_hash, :erased_at)"),
            [{name: row[name] for name in names} for row in kept],
        ),
    )  # fmt: skip
    assert "1 athletes who had all their data erased are back" in wrong(sound)


def test_an_erasure_after_which_the_files_were_not_rewritten(sound):
    change(sound, lambda tx: erasure.erase(tx, 1, NOW - timedelta(hours=3)))
    assert "erased 3 h ago" in wrong(sound)


@pytest.mark.parametrize("name", ["", "slowrung.sqlite3", "backups"])
def test_what_others_can_read(sound, name):
    place = sound.home / name
    place.chmod(0o755 if place.is_dir() else 0o644)
    assert f"{place} can be read by others" in wrong(sound)


def test_a_disk_that_is_nearly_full(sound, monkeypatch):
    monkeypatch.setattr(shutil, "disk_usage", lambda _place: shutil._ntuple_diskusage(10**9, 9 * 10**8, 10**8))
    assert "100 MB left, 500 are wanted" in wrong(sound)


def test_a_setting_that_is_misspelt_is_named_with_the_one_that_is_meant(sound, monkeypatch):
    monkeypatch.setenv("SLOWRUNG_WEBHOK_URL", "https://bot.example")
    monkeypatch.setenv("SLOWRUNG_COLOUR", "red")
    monkeypatch.setenv("SLOWRUNG_TEST_POSTGRES_URL", "of the tests")
    said = wrong(sound)
    assert "SLOWRUNG_WEBHOK_URL is no setting: SLOWRUNG_WEBHOOK_URL is one." in said
    assert "SLOWRUNG_COLOUR is no setting." in said
    assert "TEST" not in said


def test_a_folder_in_place_of_the_database_is_a_finding_among_others(sound, tmp_path):
    said = wrong(sound.model_copy(update={"database_url": f"sqlite:///{tmp_path}"}))
    assert f"{tmp_path} cannot be opened" in said


def test_a_home_that_is_closed_to_this_user_is_a_finding(sound, monkeypatch):
    # Nothing is closed to root, who runs these tests in places: the system's answer is given in its stead.
    def closed(place):
        raise PermissionError(errno.EACCES, os.strerror(errno.EACCES), str(place))

    monkeypatch.setattr(shutil, "disk_usage", closed)
    assert f"{sound.home}: Permission denied. Run this as the user of the service." in wrong(sound)
