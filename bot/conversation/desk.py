"""What every answer needs: the transaction, the moment, the athlete, their review, and a way to say something."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from datetime import time as clock_time
from typing import Any
from zoneinfo import ZoneInfo

from sqlmodel import Session

from bot.clock import moment_of
from bot.conversation.plan_json import plan_object
from bot.reading import read
from bot.reading.message import Message
from bot.reading.reading import Context, Reading
from bot.wording import Wording, wording_for
from planner import plan_for
from planner.facts import Record, SaidBy, SentPlan
from planner.plan import DayPlan, Review
from planner.view import View
from storage import chats, due, facts, outbox, own_settings, persons
from storage.fact_forms import Fact
from storage.outbox import Outgoing
from storage.persons import Person, Someone
from storage.record_cache import Fold, folded, leave
from storage.records import record, records

Buttons = list[tuple[str, str]]


@dataclass(frozen=True)
class Gathered:
    """A message that was kept back."""

    text: str
    buttons: Buttons | None


def _key(who: Someone) -> tuple[str, int]:
    return who.role, who.id


@dataclass
class Mail:
    """Messages that one cause owes to people, numbered in order."""

    tx: Session
    now: datetime
    cause: str
    _part: int = 0
    _gathered: tuple[Someone, list[Gathered]] | None = None

    @contextmanager
    def gathering(self, who: Someone) -> Iterator[list[Gathered]]:
        """What this cause owes to a person meanwhile is kept back, to be said as one; what has a cause of its own (an
        alert) goes out as ever."""
        found: list[Gathered] = []
        self._gathered = who, found
        try:
            yield found
        finally:
            self._gathered = None

    def post(
        self,
        who: Person,
        text: str,
        *,
        about: str | None = None,
        buttons: Buttons | None = None,
        plan: DayPlan | None = None,
        importance: int = outbox.REPLY,
        stale_after: datetime | None = None,
        cause: str | None = None,
        media: str | None = None,
        file: tuple[str, bytes] | None = None,
    ) -> bool:
        """Owe `text` to every chat of a person that is not blocked; to a coach's newest where all are, and it is kept
        until they can be reached. By a `cause` of its own each chat gets it once, whoever asks and however often.

        False: they have no such chat, or all were told before.
        """
        if self._gathered is not None and cause is None and (who.role, who.id) == _key(self._gathered[0]):
            self._gathered[1].append(Gathered(text, buttons))
            return True
        posted = False
        for channel, address in self._chats_of(who):
            part = outbox.to_chat(chats.numbers_of(self.tx, who)[channel, address]) if cause else self._part
            self._part += 1
            message: dict[str, Any] = {
                "channel": channel,
                "address": address,
                "to": who.handle,
                "about": about,
                "text": text,
                "buttons": [list(button) for button in buttons or []],
                "plan": plan_object(plan) if plan else None,
                "importance": importance,
                "cause": cause or self.cause,
                "part": part,
                "due_at": self.now,
                "stale_after": stale_after,
                "media": media,
                "document_name": file[0] if file else None,
                "document": file[1] if file else None,
            }
            if cause is None and who.role == "athlete":
                # Nobody else asks by this cause, and all is known: nothing has to be looked up.
                outbox.owe(self.tx, message | {"athlete_id": who.id})
                posted = True
            else:
                posted = outbox.post(self.tx, Outgoing(**message)) is not None or posted
        return posted

    def _chats_of(self, who: Person) -> list[tuple[str, str]]:
        free = chats.addresses_of(self.tx, who)
        return free if free or who.role == "athlete" else chats.addresses_of(self.tx, who, blocked=True)[:1]


@dataclass
class Desk:
    """One athlete's matters within one transaction."""

    mail: Mail
    _athlete: persons.Athlete | None
    person: Person
    coach: Person
    # When the words that are acted upon were said, by their channel: a message can wait, and an answer completes an
    # earlier one. All that is told is dated by this; what is planned, sent and asked goes by the real `now`.
    said_at: datetime
    cause: int | None = None  # the inbox row that is being handled
    said_by: SaidBy = "athlete"
    _record: Record | None = field(default=None, repr=False)
    _fold: Fold | None = field(default=None, repr=False)
    messages: dict[str, Message] = field(default_factory=dict, repr=False)  # `placing.message_of`
    _readings: dict[tuple[str, Context], Reading] = field(default_factory=dict, repr=False)

    @classmethod
    def of(
        cls,
        mail: Mail,
        athlete_id: int,
        cause: int | None = None,
        said_by: SaidBy = "athlete",
        said_at: datetime | None = None,
    ) -> Desk:
        """`said_at`: when the message was sent that is handled; None: nobody's words are."""
        at = min(said_at or mail.now, mail.now)  # a service's clock may run ahead of ours
        ready: Desk | None = mail.tx.info.get("desks", {}).get(athlete_id)
        if ready is not None:
            ready.mail, ready.cause, ready.said_by, ready.said_at = mail, cause, said_by, at
            ready.messages.clear()
            ready._readings.clear()
            return ready
        row = persons.athlete(mail.tx, athlete_id)
        coach = persons.person_of(persons.coach(mail.tx, row.coach_id))
        return cls(mail, row, persons.person_of(row), coach, at, cause, said_by)

    @classmethod
    def have_at_hand(cls, tx: Session, athlete_ids: Sequence[int], now: datetime) -> None:
        """Read at once what the desks of several athletes need: `of` needs no query for them in this transaction."""
        rows = persons.athletes_by_id(tx, athlete_ids)
        coaches = persons.coaches_by_id(tx, sorted({row.coach_id for row in rows.values()}))
        known = records(tx, list(rows))
        chats.have_at_hand(tx, list(rows))
        mail = Mail(tx, now, "")
        ready: dict[int, Desk] = tx.info.setdefault("desks", {})
        for athlete_id, row in rows.items():
            if athlete_id not in ready:
                coach = persons.person_of(coaches[row.coach_id])
                ready[athlete_id] = cls(mail, row, persons.person_of(row), coach, now)
            ready[athlete_id]._know(row, known[athlete_id])

    @classmethod
    def of_all(
        cls,
        mail: Mail,
        athlete_ids: Sequence[int],
        cause: int | None = None,
        said_by: SaidBy = "athlete",
        said_at: datetime | None = None,
    ) -> list[Desk]:
        """As `of`, of several athletes at once: as many queries for eighty as for one."""
        cls.have_at_hand(mail.tx, athlete_ids, mail.now)
        return [cls.of(mail, athlete_id, cause, said_by, said_at) for athlete_id in athlete_ids]

    @property
    def athlete(self) -> persons.Athlete:
        if self._athlete is None:
            self._athlete = persons.athlete(self.tx, self.id)
        return self._athlete

    @property
    def tx(self) -> Session:
        return self.mail.tx

    @property
    def id(self) -> int:
        return self.person.id

    @property
    def now(self) -> datetime:
        return self.mail.now

    @property
    def zone(self) -> ZoneInfo:
        return ZoneInfo(self.athlete.timezone)

    @property
    def today(self) -> date:
        return self.now.astimezone(self.zone).date()

    @property
    def said_on(self) -> date:
        """The calendar day, where the athlete is, on which the words that are acted upon were said."""
        return self.said_at.astimezone(self.zone).date()

    @property
    def say(self) -> Wording:
        """The athlete's wording."""
        return wording_for(self.athlete.language, self.athlete.unit)

    @property
    def say_coach(self) -> Wording:
        """The coach's wording; loads stay in the athlete's unit, which is on their plates."""
        return wording_for(self.coach.language, self.athlete.unit)

    # ---- what is known --------------------------------------------------------------------------------------------

    @property
    def record(self) -> Record:
        if self._record is None:
            self._record = record(self.tx, self.id)
        return self._record

    @property
    def view(self) -> View:
        """The record folded as of today: a review and the plans ahead come from one fold."""
        return self._folded.view

    @property
    def review(self) -> Review:
        fold = self._folded
        if fold.review is None:
            fold.review = fold.view.review()
        return fold.review

    @property
    def _folded(self) -> Fold:
        if self._fold is None:
            self._fold = folded(self.tx, self.id, self.record, self.today)
        return self._fold

    def leave(self) -> None:
        """Done: who writes again today is answered from the same fold, where nothing was told since."""
        if self._fold is not None:
            leave(self.tx, self.id, self._fold)
            self._fold = None

    def plan(self, day: date) -> DayPlan:
        return self.view.plan(day) if day >= self.today else plan_for(self.record, self.today, day)

    def week_ahead(self, days: int = 7) -> list[DayPlan]:
        """The plans of `days` days from today."""
        return [self.plan(self.today + timedelta(ahead)) for ahead in range(days)]

    def add(self, fact: Fact, **more: Any) -> int:
        """Add a fact; what is known is known anew."""
        made = facts.add(self.tx, self.id, fact, self.said_by, self.said_at, self.cause, **more)
        self.forget()
        return made

    def add_sent(self, plan: DayPlan) -> None:
        """A plan that goes out is a fact; what is known is known anew, but for settings."""
        sent = SentPlan(plan.on, plan.block, plan.week, plan.kind, plan.sets, plan.holds)
        facts.add_sent(self.tx, self.id, sent, self.now, self.cause, plan.decisions)
        self._record = self._fold = None

    def set_own(self, changes: Mapping[str, Any]) -> None:
        """Change settings that are the athlete's own, by column name; undone with the message that is handled."""
        own_settings.set_own(self.tx, self.athlete, changes, self.cause)
        self.forget()

    def _know(self, row: persons.Athlete, known: Record) -> None:
        """Settings and record as they are now; the fold of another record is of no use any more."""
        if self._record is not known:
            self._fold = None
        self._athlete, self._record = row, known

    def forget(self) -> None:
        self._athlete = self._record = self._fold = None
        self.messages.clear()

    # ---- what is said ----------------------------------------------------------------------------------------------

    def read(self, text: str, context: Context) -> Reading:
        """What words say, read once however many rules ask: reading is most of the work of a message."""
        found = self._readings.get((text, context))
        if found is None:
            found = self._readings[text, context] = read(text, context)
        return found

    # ---- saying and planting --------------------------------------------------------------------------------------

    def tell(self, text: str, **more: Any) -> bool:
        return self.mail.post(self.person, text, **more)

    def tell_coach(self, text: str, **more: Any) -> bool:
        return self.mail.post(self.coach, text, about=self.athlete.handle, **more)

    @property
    def coach_is_reached(self) -> bool:
        return bool(chats.addresses_of(self.tx, self.coach))

    @property
    def heard(self) -> str:
        """For the athlete: that the coach knows of it, or that nobody could tell them."""
        return self.say.say("coach-knows" if self.coach_is_reached else "coach-not-reached")

    def plant(self, kind: str, for_date: date, moment: datetime, who: Someone | None = None) -> None:
        due.schedule(self.tx, who or self.person, kind, for_date, moment)

    def moment(self, day: date, at: clock_time) -> datetime:
        """The UTC moment of a local hour on a day."""
        return moment_of(day, at, self.zone)
