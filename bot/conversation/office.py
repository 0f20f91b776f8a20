"""A coach at work: who writes, their athletes, and how an order is confirmed."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from zoneinfo import ZoneInfo

from bot.conversation import alerts, cards, passing_on, plans
from bot.conversation.coach_words import Command
from bot.conversation.desk import Desk, Mail
from bot.conversation.movement_names import movement_called
from bot.wording import Wording, wording_for
from planner.units import kg_from_lb, round_down_to_plates
from storage import persons
from storage.inbox import Incoming
from storage.persons import Person, Who
from storage.rules import nicknames_of

SAME_KG = 0.01


class Office:
    """A coach's matters within one transaction. Every athlete is looked for among their own only."""

    def __init__(self, mail: Mail, coach: Person, incoming: Incoming) -> None:
        self.mail, self.coach, self.incoming = mail, coach, incoming
        self.say: Wording = wording_for(coach.language)
        self.rows = persons.athletes_of(mail.tx, coach.id)
        self.order = incoming.text  # the words that are carried out just now: those of a press were written before
        self.sure = False  # whether the coach was warned of this order and wants it all the same
        self.for_all = False  # whether the coach was asked of this order for everyone and wants it
        self.brief = False  # whether an answer is one of many, and shows no next session
        self._ours = set[int]()  # the athletes who are locked

    @property
    def said_on(self) -> date:
        """The day on which the coach said it, where they are: what "thursday" is counted from."""
        return self.incoming.sent_at.astimezone(ZoneInfo(self.coach.timezone)).date()

    def answer(self, key: str, **values: object) -> None:
        self.mail.post(self.coach, self.say.say(key, **values))

    def desk(self, handle: str | None) -> Desk | None:
        """The athlete's, who is ours from here on: what is decided is decided by all that they have told, and not
        beside a message of theirs or the sweep."""
        for row in self.rows:
            if row.handle == handle and row.id is not None:
                waited = row.id not in self._ours and persons.lock(self.mail.tx, Who("athlete", row.id))
                self._ours.add(row.id)
                desk = Desk.of(self.mail, row.id, self.incoming.id, "coach", self.incoming.sent_at)
                if waited:
                    desk.forget()
                return desk
        return None

    def desks(self) -> list[Desk]:
        """Of all their athletes, by handle, to look at: nobody has to wait."""
        ids = [row.id for row in self.rows if row.id is not None]
        return Desk.of_all(self.mail, ids, self.incoming.id, "coach", self.incoming.sent_at)

    def desk_of(self, athlete_id: str) -> Desk | None:
        row = next((row for row in self.rows if str(row.id) == athlete_id), None)
        return self.desk(row.handle) if row is not None else None

    def pass_on(self, desk: Desk, text: str) -> None:
        reached = passing_on.to_athlete(desk, text)
        self.answer("told" if reached else "told-nobody", name=desk.person.name)

    def effect(self, desk: Desk) -> None:
        """What the decision changes: today's plan goes out anew, and what the coach should hear of it."""
        plans.refresh(desk)
        alerts.send_new(desk)

    def confirm(self, desk: Desk, key: str, more: Sequence[str] = (), **values: object) -> None:
        """Say what was understood, `more` of it, and the next session as it is now."""
        self.confirmed(desk, "\n".join([desk.say_coach.say(key, name=desk.person.name, **values), *more]))

    def confirmed(self, desk: Desk, text: str) -> None:
        """As `confirm`, where the words are made already."""
        desk.tell_coach(text if self.brief else text + "\n" + cards.next_session(desk))
        self.effect(desk)

    def movement(self, name: str) -> str | None:
        return movement_called(name, self.coach.language, nicknames_of(self.mail.tx, self.coach.id))

    def load_kg(self, command: Command, desk: Desk) -> float | None:
        """The load ordered; one in another unit than the athlete's plates is what these can make of it."""
        meant_kg = self._meant_kg(command, desk)
        if meant_kg is None or (command.unit or desk.athlete.unit) == desk.record.athlete.plate_unit:
            return meant_kg
        return on_plates(meant_kg, desk)

    def rounded(self, command: Command, desk: Desk) -> str | None:
        """What the athlete's plates make of a load that they cannot make; None where they can."""
        meant_kg, load_kg = self._meant_kg(command, desk), self.load_kg(command, desk)
        if meant_kg is None or load_kg is None:
            return None
        below_kg = on_plates(meant_kg, desk)
        if abs(meant_kg - below_kg) < SAME_KG:
            return None
        given = f"{command.load:g} {command.unit or desk.athlete.unit}"
        key = "load-rounded" if abs(load_kg - below_kg) < SAME_KG else "load-between"
        return desk.say_coach.say(key, given=given, name=desk.person.name, load=desk.say_coach.load(below_kg))

    @staticmethod
    def _meant_kg(command: Command, desk: Desk) -> float | None:
        if command.load is None:
            return None
        return kg_from_lb(command.load) if (command.unit or desk.athlete.unit) == "lb" else command.load


def on_plates(load_kg: float, desk: Desk) -> float:
    """The heaviest load [kg] not above this one that the athlete's plates make."""
    return round_down_to_plates(load_kg, desk.record.athlete.plate_step, desk.record.athlete.plate_unit)
