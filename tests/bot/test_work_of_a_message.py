"""What one message costs that does not depend on the machine: statements, and how often its words are read."""

from datetime import UTC, datetime, timedelta

import pytest
import sqlalchemy as sa

from bot import worker
from bot.conversation import desk
from bot.roster import parse_roster
from storage import chats, inbox
from storage.inbox import IncomingUpdate
from storage.loading import load_roster
from storage.persons import Who
from storage.store import Store
from tests.journeys.serving import ROSTER

NOW = datetime(2027, 1, 4, 18, tzinfo=UTC)
# Of the handling: the row, its chats, the athlete with their coach, how many came of late, questions, nicknames; the
# report, its sets, the stamp, the nudge that is not needed any more, the answer, the mark; the transaction's own.
OF_A_REPORT = 14
# As it is now, as the answer to the question that is open, and what that question was about.
READ_BESIDE_A_QUESTION = 3


class House:
    """A database with two athletes, one of whom writes."""

    def __init__(self) -> None:
        self.store, self.now, self.said = Store.open("sqlite://"), NOW, 0
        with self.store.transaction() as tx:
            loaded = load_roster(tx, parse_roster(ROSTER), NOW)
            chats.bind_chat(tx, "phone", "mira", Who("athlete", loaded.athlete_ids["mira"]), NOW)

    def hear(self, text: str) -> None:
        self.said += 1
        self.now += timedelta(minutes=5)
        with self.store.transaction() as tx:
            inbox.accept(tx, [IncomingUpdate("phone", str(self.said), "mira", "text", text, self.now)], self.now)

    def handle(self) -> None:
        assert worker.handle_next(self.store, self.now)

    def says(self, text: str) -> None:
        self.hear(text)
        self.handle()


@pytest.fixture
def house():
    made = House()
    yield made
    made.store.close()


def test_a_report_takes_few_statements(house):
    house.says("pull-ups 5x3 +7.5, last @8")
    house.hear("dips 3x6 +5 @7")
    seen = []
    sa.event.listen(house.store._engine, "before_cursor_execute", lambda *given: seen.append(given[2]))
    house.handle()
    assert len(seen) <= OF_A_REPORT, "\n".join(seen)


def read_while(monkeypatch, work):
    """The words that were read, each time they were."""
    found, real = [], desk.read
    monkeypatch.setattr(desk, "read", lambda text, context: found.append(text) or real(text, context))
    work()
    return found


def test_a_report_is_read_once(house, monkeypatch):
    house.says("pull-ups 5x3 +7.5, last @8")
    assert read_while(monkeypatch, lambda: house.says("dips 3x6 +5 @7")) == ["dips 3x6 +5 @7"]


def test_words_beside_an_open_question_are_not_read_again_for_each_rule(house, monkeypatch):
    house.says("pull-ups 5x3 +7.5, last @8")
    house.says("rows 3x10 @7")
    assert len(read_while(monkeypatch, lambda: house.says("leg raises 3x8"))) <= READ_BESIDE_A_QUESTION
