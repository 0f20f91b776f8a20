"""`slowrung rehearse`: the whole bot on a virtual clock, JSON lines in and out. A channel like the others."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from datetime import UTC, datetime
from typing import Any, TextIO

from bot import conversation, schedule, worker
from bot.clock import ClockRanBack, VirtualClock
from storage import chats, due, inbox, loading, outbox, persons
from storage.inbox import IncomingUpdate
from storage.persons import Who
from storage.roster import Roster
from storage.store import Store

CHANNEL = "rehearsal"
COACH = "coach"
NEWEST, LONGEST_LOOK_BACK = 8, 2000  # messages, where a pressed button is looked for


class BadLine(ValueError):
    """An input line that means nothing; the sentence says what is wrong."""


class Rehearsal:
    """Coaching on a virtual clock. `messages` are yielded as the contract's objects."""

    def __init__(self, store: Store, roster: Callable[[datetime], Roster] | None) -> None:
        self.store = store
        self.clock = VirtualClock()
        self._roster = roster
        self._handles: set[str] = set()
        self._count = 0

    def line(self, raw: str) -> Iterator[dict[str, Any]]:
        """All that one input line causes, closed by `settled`."""
        at: Any = None
        try:
            data = _object(raw)
            at = data.get("at")
            moment = _moment(at)
            yield from self._run_to(moment)
            yield from self._hear(data, moment)
        except BadLine as error:
            yield {"error": str(error)}
        yield {"settled": at}

    def _run_to(self, moment: datetime) -> Iterator[dict[str, Any]]:
        if not self.clock.started:
            self.clock.move_to(moment)
            self._begin(moment)
        elif moment < self.clock.now():
            raise BadLine(f"the clock never runs back: it is {self.clock.now().isoformat()} already")
        while True:
            with self.store.reading() as tx:
                steps = [at for at in (due.next_due_at(tx), outbox.next_open_at(tx)) if at is not None]
            following = min(steps, default=None)
            if following is None or following > moment:
                break
            self._move_to(max(following, self.clock.now()))
            schedule.sweep(self.store, self.clock.now())
            yield from self._deliver()
        self._move_to(moment)

    def _move_to(self, moment: datetime) -> None:
        try:
            self.clock.move_to(moment)
        except ClockRanBack as error:
            raise BadLine(str(error)) from error

    def _begin(self, now: datetime) -> None:
        """Put the roster in, and everyone at an address of their own: their handle."""
        with self.store.transaction() as tx:
            if self._roster is not None:
                loaded = loading.load_roster(tx, self._roster(now), now)
                fresh = [loaded.athlete_ids[handle] for handle in loaded.added]
                conversation.at_new_hours(tx, loaded.moved, now)
            else:
                fresh = []
            for coach in persons.all_coaches(tx):
                assert coach.id is not None
                chats.bind_chat(tx, CHANNEL, COACH, Who("coach", coach.id), now)
                for athlete in persons.athletes_of(tx, coach.id):
                    assert athlete.id is not None
                    chats.bind_chat(tx, CHANNEL, athlete.handle, Who("athlete", athlete.id), now)
                    self._handles.add(athlete.handle)
                if self._roster is not None:
                    conversation.begin_coach(tx, coach.id, now)
            for athlete_id in fresh:
                conversation.begin(tx, athlete_id, now)

    def _hear(self, data: dict[str, Any], now: datetime) -> Iterator[dict[str, Any]]:
        unknown = set(data) - {"at", "from", "text", "press", "about", "video"}
        if unknown:
            raise BadLine(f"unknown field {sorted(unknown)[0]!r}")
        if "from" not in data:
            if len(data) > 1:
                raise BadLine("a line that says something needs `from`")
            return
        sender = data["from"]
        if not isinstance(sender, str) or (sender != COACH and sender not in self._handles):
            raise BadLine(f"nobody has the handle {sender!r}")
        kind, text, more = self._content(data, sender)
        self._count += 1
        update = IncomingUpdate(CHANNEL, f"{now.isoformat()}#{self._count}", sender, kind, text, now, more)
        with self.store.transaction() as tx:
            inbox.accept(tx, [update], now)
        while worker.handle_next(self.store, now):
            yield from self._deliver()

    def _content(self, data: dict[str, Any], sender: str) -> tuple[Any, str, dict[str, Any]]:
        for field in ("text", "press", "video", "about"):
            if field in data and not isinstance(data[field], str):
                raise BadLine(f"{field} must be a string")
        if "press" in data:
            return "press", data["press"], self._pressed(sender, data["press"], data.get("about"))
        if "video" in data:
            return "clip", data.get("text", ""), {"media": data["video"]}
        if "text" not in data:
            raise BadLine("a line with `from` needs `text`, `press` or `video`")
        return "text", data["text"], {}

    def _pressed(self, sender: str, label: str, about: str | None) -> dict[str, Any]:
        with self.store.reading() as tx:
            # Most presses mean one of the newest messages; the far past is looked at only where those don't have it.
            for limit in (NEWEST, LONGEST_LOOK_BACK):
                for message in outbox.with_button(tx, CHANNEL, sender, limit):
                    if about is not None and message.about != about:
                        continue
                    for name, data in message.buttons:
                        if name == label:
                            return {"data": data, "outgoing": message.id}
        raise BadLine(f"no message to {sender} has a button {label!r}" + (f" about {about}" if about else ""))

    def _deliver(self) -> Iterator[dict[str, Any]]:
        now = self.clock.now()
        with self.store.reading() as tx:
            owed = outbox.next_open_at(tx)
        if owed is None or owed > now:
            return
        with self.store.transaction() as tx:
            outbox.drop_stale(tx, now)
        while True:
            with self.store.transaction() as tx:
                claimed = outbox.claim(tx, now, 100, CHANNEL)
                for message in claimed:
                    assert message.id is not None
                    outbox.mark_sent(tx, message.id, now)
            if not claimed:
                return
            for message in sorted(claimed, key=lambda one: one.id or 0):
                yield _shown(message, now)


def _shown(message: outbox.Outgoing, now: datetime) -> dict[str, Any]:
    return {
        "at": now.isoformat(),
        "to": message.to,
        "about": message.about,
        "text": message.text,
        "buttons": [label for label, _ in message.buttons],
        "picture": message.picture_alt,
        "plan": message.plan,
    }


def _object(raw: str) -> dict[str, Any]:
    try:
        data = json.loads(raw)
    except (ValueError, RecursionError) as error:
        raise BadLine(f"no JSON: {error}") from error
    if not isinstance(data, dict):
        raise BadLine("a line is one JSON object")
    return data


def _moment(at: Any) -> datetime:
    try:
        moment = datetime.fromisoformat(at)
    except (TypeError, ValueError) as error:
        raise BadLine(f"`at` must be an ISO 8601 moment with an offset, not {at!r}") from error
    if moment.tzinfo is None:
        raise BadLine(f"`at` needs an offset: {at!r}")
    try:
        return moment.astimezone(UTC)
    except OverflowError as error:
        raise BadLine(f"`at` is outside the calendar: {at!r}") from error


def rehearse(store: Store, roster: Callable[[datetime], Roster] | None, source: TextIO, sink: TextIO) -> None:
    """Answer each line of `source` on `sink`; flushed when settled, never waited for.

    `roster` makes the roster of the first line's moment; None: the store has one.
    """
    rehearsal = Rehearsal(store, roster)
    for raw in source:
        if raw.strip():
            for answer in rehearsal.line(raw):
                sink.write(json.dumps(answer, ensure_ascii=False) + "\n")
            sink.flush()
