"""From entries to facts: what is understood, what is not, and writing it down once however often it is run."""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from datetime import UTC, datetime, time
from zoneinfo import ZoneInfo

from sqlmodel import Session as Tx

from bot.conversation.asking import without_doubtful_efforts
from bot.conversation.reports import sessions_of
from bot.importing.doubts import doubts_of
from bot.importing.entries import Entry, Stray
from bot.reading import read
from bot.reading.reading import Context, Reading
from planner.facts import Bodyweight, PainAnswer, Session
from storage import facts, inbox
from storage.persons import Athlete, Who

WRITTEN_AT = time(20)  # notes are of the evening: "last night" is then the night before
Progress = Callable[[int, int], None]


@dataclass(frozen=True)
class Understood:
    """An entry and what it says. `doubts`: what of it was not read, by its lines."""

    entry: Entry
    reading: Reading
    sessions: tuple[Session, ...]
    doubts: tuple[Stray, ...] = ()

    @property
    def says_something(self) -> bool:
        return bool(self.sessions or self.reading.pain or self.reading.bodyweight_kg)


@dataclass
class Outcome:
    """All of a file: entries with facts, entries that say nothing of training, lines that are left out."""

    understood: list[Understood] = field(default_factory=list)
    silent: list[Understood] = field(default_factory=list)
    strays: list[Stray] = field(default_factory=list)

    @property
    def sets(self) -> int:
        return sum(len(session.sets) for one in self.understood for session in one.sessions)

    @property
    def left_out(self) -> list[Stray]:
        """Every line that is left out, whole or in part, as the file goes."""
        doubts = [doubt for one in (*self.understood, *self.silent) for doubt in one.doubts]
        return sorted([*self.strays, *doubts], key=lambda one: one.line)


def understand(
    entries: Iterable[Entry | Stray],
    athlete: Athlete,
    nicknames: tuple[tuple[str, str], ...],
    progress: Progress,
    now: datetime,
) -> Outcome:
    """Read every entry as a message of its day. A day after `now`, where the athlete is, is left out."""
    outcome = Outcome()
    known = list(entries)
    zone = ZoneInfo(athlete.timezone)
    today = now.astimezone(zone).date()
    for done, entry in enumerate(known, 1):
        if isinstance(entry, Stray):
            outcome.strays.append(entry)
        elif entry.on > today:
            outcome.strays += [Stray(at, words, "future", {"day": entry.on}) for at, words in entry.numbered()]
        else:
            context = _context(entry, athlete, zone, nicknames)
            reading = read(entry.text, context)
            sessions = tuple(sessions_of(without_doubtful_efforts(reading), entry.on))
            one = Understood(entry, reading, sessions, doubts_of(entry, reading, context))
            (outcome.understood if one.says_something else outcome.silent).append(one)
        progress(done, len(known))
    return outcome


def write(tx: Tx, athlete: Athlete, outcome: Outcome, now: datetime) -> tuple[int, int]:
    """Add the facts; (entries written, entries that were there from an earlier run)."""
    assert athlete.id is not None
    written = 0
    for one in outcome.understood:
        key = _key(athlete.id, one.entry)
        said_at = datetime.combine(one.entry.on, WRITTEN_AT, ZoneInfo(athlete.timezone)).astimezone(UTC)
        of = Who("athlete", athlete.id)
        update = inbox.IncomingUpdate(inbox.IMPORTED, key, athlete.handle, "text", one.entry.text, said_at, of=of)
        if not inbox.accept(tx, [update], now):
            continue
        row = inbox.by_key(tx, inbox.IMPORTED, key)
        assert row is not None
        assert row.id is not None
        for fact in _facts(one):
            facts.add(tx, athlete.id, fact, "athlete", said_at, row.id)
        inbox.mark_handled(tx, row.id, now)
        written += 1
    return written, len(outcome.understood) - written


def _facts(one: Understood) -> Iterable[Session | PainAnswer | Bodyweight]:
    yield from one.sessions
    on = one.reading.performed_on or one.entry.on
    for entry in one.reading.pain:
        yield PainAnswer(on, entry.site, entry.side, entry.score, entry.when)
    if one.reading.bodyweight_kg is not None:
        yield Bodyweight(on, one.reading.bodyweight_kg)


def _context(entry: Entry, athlete: Athlete, zone: ZoneInfo, nicknames: tuple[tuple[str, str], ...]) -> Context:
    return Context(
        sent_at=datetime.combine(entry.on, WRITTEN_AT, zone),
        timezone=zone,
        unit="lb" if athlete.unit == "lb" else "kg",
        language=athlete.language,
        bodyweight_kg=athlete.bodyweight_kg,
        nicknames=nicknames,
    )


def _key(athlete_id: int, entry: Entry) -> str:
    return hashlib.sha256(f"{athlete_id}\n{entry.on.isoformat()}\n{entry.text}".encode()).hexdigest()
