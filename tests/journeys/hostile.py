"""Hostile updates, made at random from a seed: for the fuzz test and its long run in `tests/bench/fuzz.py`.

Two coaches with two athletes each, whose names, handles and words carry a mark of their own; nothing that one side's
messages ever say may carry a mark of the other's.
"""

from __future__ import annotations

import json
import random
from collections import Counter
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, date, datetime, timedelta
from datetime import time as clock_time
from typing import Any

import sqlalchemy as sa
from sqlmodel import Session as Tx
from sqlmodel import col

from bot import conversation, schedule, worker
from bot.channels.telegram import CHANNEL, Unreadable, to_incoming
from planner.facts import Weekly
from storage import chats, inbox
from storage.inbox import Incoming
from storage.loading import load_roster
from storage.outbox import Outgoing
from storage.persons import Who
from storage.roster import Roster, RosterAthlete, RosterCoach, RosterTest
from storage.store import Store

START = datetime(2027, 3, 1, 7, 0, tzinfo=UTC)
MARKS = ("qzxvarna", "wkjphelm")  # words that nobody says
COACHES = {0: 100, 1: 200}
ATHLETES = {101: 0, 102: 0, 201: 1, 202: 1}
STRANGERS = (666, 667)
SCRAPS = (
    "pull-ups 5x3 +20 @8", "dips 3x8", "inner elbow 4/10", "why", "plan", "week", "help", "undo", "/start", "stop",
    "export", "erase", "delete everything", "yes", "no", "0", "10", "bw 70", "sick until friday",
    "move today to sunday",
    "invite a", "summary", "notes", "rule", "approve", "restart", "how is", "tell", "deload", "/start " + "A" * 32,
    "'; DROP TABLE athlete; --", "{text}", "%s%s%n", "<b>&_*[", "\u202e", "\x00", "🙂", "١٢٣", "1e309", "-5x-3 +-9kg",
    "9" * 400, "NaN", "31/02/2027", "a\u0301" * 40, "\ud83d",
)  # fmt: skip
JUNK: tuple[Any, ...] = (None, True, -1, 0, 10**30, 1.5, "", "x", [], {}, [[]], {"a": {}}, "\x00")


class Marked:
    """A store with both sides in it."""

    def __init__(self, seed: int) -> None:
        self.rng = random.Random(seed)
        self.store = Store.open("sqlite://")
        self.now = START
        self.outcomes: Counter[str] = Counter()
        self._key = 0
        with self.store.transaction() as tx:
            self._ids = {side: self._side(tx, side) for side in COACHES}

    def _side(self, tx: Tx, side: int) -> list[int]:
        mark = MARKS[side]
        those = tuple(
            RosterAthlete(
                handle=f"{mark}{n}",
                name=f"{mark.title()} {n}",
                timezone="Europe/Lisbon",
                bodyweight_kg=70.0,
                plan_at=clock_time(7),
                schedule=Weekly(frozenset(range(7))),
                screened=True,
                equipment=frozenset({"bar", "rings", "belt"}),
                tests=(RosterTest(date(2027, 1, 2), "pull_up", 5, 15.0, 9.0),),
            )
            for n in (1, 2)
        )
        loaded = load_roster(tx, Roster(RosterCoach(f"Coach {mark}", "Europe/Lisbon", "en", "kg"), those), START)
        chats.bind_chat(tx, CHANNEL, str(COACHES[side]), Who("coach", loaded.coach_id), START)
        homes = [chat for chat, of in ATHLETES.items() if of == side]
        for chat, athlete_id in zip(homes, loaded.athlete_ids.values(), strict=True):
            chats.bind_chat(tx, CHANNEL, str(chat), Who("athlete", athlete_id), START)
            conversation.begin(tx, athlete_id, START)
        return list(loaded.athlete_ids.values())

    # ---- making ---------------------------------------------------------------------------------------------------

    def update(self) -> Any:
        """The JSON of one update, sound or not."""
        self._key += 1
        chat = self.rng.choice((*COACHES.values(), *ATHLETES, *STRANGERS))
        kind = self.rng.choice(("text", "text", "text", "press", "press", "clip", "member", "group"))
        made = {"update_id": self._key, **getattr(self, f"_{kind}")(chat)}
        if self.rng.random() < 0.3:
            self._spoil(made)
        return made

    def _message(self, chat: int, kind: str = "private", **content: Any) -> dict[str, Any]:
        who = {"id": chat, "is_bot": False, "first_name": "P"}
        return {
            "message_id": self._key,
            "date": int(self.now.timestamp()),
            "chat": {"id": chat, "type": kind, "first_name": "P"},
            "from": who,
            **content,
        }

    def _text(self, chat: int) -> dict[str, Any]:
        return {"message": self._message(chat, text=self._words(chat))}

    def _words(self, chat: int) -> str:
        words = self.rng.choices(SCRAPS, k=self.rng.randint(1, 5))
        if self.rng.random() < 0.3:  # naming the other side's people is what a thief would do
            words.insert(self.rng.randrange(len(words) + 1), f"{self._other_mark(chat)}{self.rng.choice('123')}")
        text = self.rng.choice((" ", "\n", ", ", "")).join(words)
        if self.rng.random() < 0.02:
            text = text * (20_000 // max(1, len(text)))
        return text

    def _other_mark(self, chat: int) -> str:
        return MARKS[1 - (_side_of(chat) or 0)]

    def _press(self, chat: int) -> dict[str, Any]:
        who = self.rng.choice([*self._ids[0], *self._ids[1], 0, -1, 10**20])
        verb = self.rng.choice("ahrstpinxq")
        rest = self.rng.choice(("weighted_pull_up", "", "1", "done as planned", ":::", "../..", "é" * 20))
        data = self.rng.choice((f"{verb}:{who}:{rest}", f"{verb}:{rest}", f"{verb}:{who}", rest, "t:" + rest))
        query = {"id": str(self._key), "from": {"id": chat, "is_bot": False, "first_name": "P"}, "chat_instance": "1"}
        return {"callback_query": {**query, "data": data, "message": self._message(chat, text="…")}}

    def _clip(self, chat: int) -> dict[str, Any]:
        video = {
            "file_id": "f" * self.rng.randint(1, 200),
            "file_unique_id": "u",
            "width": 1,
            "height": 1,
            "duration": 1,
        }
        return {"message": self._message(chat, video=video, caption=self._words(chat))}

    def _member(self, chat: int) -> dict[str, Any]:
        me = {"id": 1, "is_bot": True, "first_name": "Bot"}
        old, new = self.rng.sample(("member", "left"), 2)
        change = {"chat": {"id": chat, "type": "private"}, "from": {"id": chat, "is_bot": False, "first_name": "P"}}
        more = {"old_chat_member": {"user": me, "status": old}, "new_chat_member": {"user": me, "status": new}}
        return {"my_chat_member": {**change, "date": int(self.now.timestamp()), **more}}

    def _group(self, chat: int) -> dict[str, Any]:
        return {"message": self._message(chat, self.rng.choice(("group", "supergroup", "channel")), text="plan")}

    def _spoil(self, made: dict[str, Any]) -> None:
        """Put something of the wrong kind somewhere."""
        place: Any = made
        while True:
            key = self.rng.choice(list(place))
            if isinstance(place[key], dict) and place[key] and self.rng.random() < 0.8:
                place = place[key]
                continue
            if self.rng.random() < 0.3:
                del place[key]
            else:
                place[key] = self.rng.choice(JUNK)
            return

    # ---- what comes of them ---------------------------------------------------------------------------------------

    def take(self, update: Any) -> None:
        """As the service takes it: through JSON, parsing, the inbox and the handler."""
        self.now += timedelta(seconds=self.rng.choice((1, 5, 60, 1800)))
        try:
            said = to_incoming(json.loads(json.dumps(update)), self.now)
        except Unreadable:
            self.outcomes["unreadable"] += 1
            return
        if said is None:
            self.outcomes["nothing to us"] += 1
            return
        with self.store.transaction() as tx:
            inbox.accept(tx, [said], self.now)
        self.outcomes[said.kind] += 1
        worker.handle_all(self.store, self.now, 5)
        if self._key % 50 == 0:
            schedule.sweep(self.store, self.now)

    def failures(self) -> list[str]:
        """Of every message that the handler stumbled over, the kind of error."""
        self.now += timedelta(hours=1)
        worker.handle_all(self.store, self.now)
        with self.store.reading() as tx:
            stumbled = sa.select(col(Incoming.set_aside_because)).where(col(Incoming.attempts) > 0)
            return [str(row[0]) for row in tx.connection().execute(stumbled)]

    def leaks(self) -> list[str]:
        """Addresses that were told a name of the other side, or that are strangers' and were told any."""
        return [address for address, mark in self._marks_in() if MARKS.index(mark) != _side_of(int(address))]

    def told_of_their_own(self) -> int:
        """Messages that say a name of the right side: without any, finding no leak would mean nothing."""
        return sum(MARKS.index(mark) == _side_of(int(address)) for address, mark in self._marks_in())

    def _marks_in(self) -> Iterator[tuple[str, str]]:
        """(address, mark) of every message that says a name of either side."""
        with self.store.reading() as tx:
            columns = (col(Outgoing.address), col(Outgoing.text), col(Outgoing.buttons), col(Outgoing.plan))
            for address, *said in tx.connection().execute(sa.select(*columns)):
                words = json.dumps(said, ensure_ascii=False).casefold()
                for mark in MARKS:
                    # As names are written; what a thief wrote and is read back to them has no space.
                    if f"{mark} " in words or f"coach {mark}" in words:
                        yield address, mark


def _side_of(chat: int) -> int | None:
    coaches = {chat: side for side, chat in COACHES.items()}
    return ATHLETES.get(chat, coaches.get(chat))


@contextmanager
def marked(seed: int) -> Iterator[Marked]:
    made = Marked(seed)
    try:
        yield made
    finally:
        made.store.close()
