"""Whole conversations: coach, athletes, a store in memory, the rehearsal's clock; nothing stands in for anything."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from datetime import UTC, date, datetime, time
from typing import Any

import pytest

from bot import worker
from bot.channels.rehearsal import CHANNEL, Rehearsal
from planner.facts import Record, Weekly
from storage import inbox, persons
from storage.inbox import IncomingUpdate
from storage.persons import all_coaches
from storage.records import record
from storage.roster import Roster, RosterAthlete, RosterCoach, RosterTest
from storage.store import Store

MONDAY = "2027-01-04"
OFFSET = "+01:00"  # Zurich in winter


def athlete(handle: str, **settings: Any) -> RosterAthlete:
    """An athlete at +15 kg for fives, on the archer's first full rung, training on Mondays and Thursdays."""
    given: dict[str, Any] = {
        "handle": handle,
        "name": handle.title(),
        "timezone": "Europe/Zurich",
        "bodyweight_kg": 62.0,
        "plan_at": time(7, 30),
        "schedule": Weekly(frozenset({0, 3})),
        "equipment": frozenset({"bar", "rings", "belt"}),
        "rung": "archer_elbow_full",
        "screened": True,
        "tests": (RosterTest(date(2027, 1, 2), "pull_up", 5, 15.0, 9.0),),
    }
    return RosterAthlete(**{**given, **settings})


class Chat:
    """Says things at a time of a day and keeps what comes back."""

    def __init__(self, *athletes: RosterAthlete, coach_language: str = "en") -> None:
        coach = RosterCoach("Inês", "Europe/Lisbon", coach_language, summary_day=6, summary_at=time(18))
        self.store = Store.open("sqlite://")
        roster = Roster(coach, athletes or (athlete("mira"),))
        self._rehearsal = Rehearsal(self.store, lambda _moment: roster)
        self.heard: list[dict[str, Any]] = []

    def says(self, who: str | None, text: str | None, at: str, day: str = MONDAY, **more: Any) -> list[dict[str, Any]]:
        """All messages that go out until this is answered."""
        line: dict[str, Any] = {"at": f"{day}T{at}:00{OFFSET}", **more}
        if who is not None:
            line["from"] = who
        if text is not None:
            line["text"] = text
        answers = [one for one in self._rehearsal.line(json.dumps(line)) if "settled" not in one]
        self.heard += answers
        return answers

    def waits_until(self, at: str, day: str = MONDAY) -> list[dict[str, Any]]:
        return self.says(None, None, at, day)

    def answer(self, who: str, text: str, at: str, day: str = MONDAY) -> str:
        """The words that the sender gets back, what falls due on the way left out."""
        self.waits_until(at, day)
        return "\n".join(one["text"] for one in self.says(who, text, at, day) if one["to"] == who)

    def waited(self, who: str, text: str, sent: str, handled: str, **more: Any) -> str:
        """A message that was sent while nobody was there, and handled at a later moment ("2027-01-05T09:00"): the words
        that the sender gets back."""
        moments = [datetime.fromisoformat(f"{one}:00{OFFSET}").astimezone(UTC) for one in (sent, handled)]
        self.waits_until(handled[11:], handled[:10])
        key = f"waited#{sent}#{text}"
        update = IncomingUpdate(CHANNEL, key, who, more.pop("kind", "text"), text, moments[0], more)
        with self.store.transaction() as tx:
            inbox.accept(tx, [update], moments[1])
        worker.handle_all(self.store, moments[1])
        answers = list(self._rehearsal._deliver())
        self.heard += answers
        return "\n".join(one["text"] for one in answers if one["to"] == who)

    def to_coach(self) -> list[dict[str, Any]]:
        return [one for one in self.heard if one["to"] == "coach"]

    def record(self, handle: str = "mira") -> Record:
        with self.store.reading() as tx:
            found = persons.athlete_by_handle(tx, all_coaches(tx)[0].id or 0, handle)
            assert found is not None
            return record(tx, found.id or 0)

    def close(self) -> None:
        self.store.close()


@pytest.fixture
def chat() -> Iterator[Chat]:
    """Mira and her coach, on the morning of a Monday before the plan goes out."""
    made = Chat()
    made.waits_until("07:00")
    yield made
    made.close()


@pytest.fixture
def two() -> Iterator[Chat]:
    made = Chat(athlete("mira"), athlete("tom"))
    made.waits_until("07:00")
    yield made
    made.close()


@pytest.fixture
def newcomer() -> Iterator[Chat]:
    """Mira, whose health questions are not cleared."""
    made = Chat(athlete("mira", screened=False))
    made.waits_until("07:00")
    yield made
    made.close()


@pytest.fixture
def of_language() -> Iterator[Callable[[str], Chat]]:
    chats: list[Chat] = []

    def made(language: str) -> Chat:
        chats.append(Chat(athlete("mira", language=language)))
        chats[-1].waits_until("08:00")
        return chats[-1]

    yield made
    for chat in chats:
        chat.close()
