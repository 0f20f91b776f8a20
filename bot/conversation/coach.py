"""What the coach says: cards, orders, approvals, words to athletes. What was decided shows at once where it acts."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from zoneinfo import ZoneInfo

import structlog

from bot.conversation import (
    absences,
    alerts,
    beyond,
    cards,
    ordered_sets,
    passing_on,
    plans,
    roster_page,
    rule_words,
    summary,
    unheard,
    what_if,
)
from bot.conversation.coach_words import SCHEME, Command, parse
from bot.conversation.desk import Desk, Mail
from bot.conversation.movement_names import movement_called
from bot.conversation.reasons import rung_name, until_in_words
from bot.wording import Wording, wording_for
from planner import ladders, rules
from planner.facts import Absence, Move, Order, OrderKind, Resume
from planner.history import GRIPS
from planner.units import KG_PER_LB
from storage import facts, invites, notes, outbox, persons
from storage.inbox import Incoming
from storage.persons import Person, Who
from storage.rules import nicknames_of, set_coach_rule, set_nickname

log = structlog.get_logger(__name__)

LOADS_UP_TO_KG = 200.0
SEEN_AHEAD = 14  # days in which sets for one day may push others out
MOST_REHEARSED = 4
SHOWN = frozenset({"card", "week", "why", "roster", "rungs", "summary", "unheard"})  # nothing is changed by these
EXACT = frozenset(
    {"sets", "lock", "hold", "unlock", "approve", "decline", "restart", "pause", "resume", "seen", "move"}
)  # done only where every word was understood
FEWEST_WORDS = 2  # a single word is a slip, not an answer to pass on


def handle(mail: Mail, coach: Person, incoming: Incoming) -> None:
    """Answer one message or press of a coach."""
    office = Office(mail, coach, incoming)
    if incoming.kind == "press":
        office.pressed(str(incoming.data.get("data", "")))
    else:
        office.said(incoming.text)


class Office:
    """A coach's matters within one transaction. Every athlete is looked for among their own only."""

    def __init__(self, mail: Mail, coach: Person, incoming: Incoming) -> None:
        self.mail, self.coach, self.incoming = mail, coach, incoming
        self.say: Wording = wording_for(coach.language)
        self.rows = persons.athletes_of(mail.tx, coach.id)

    def answer(self, key: str, **values: object) -> None:
        self.mail.post(self.coach, self.say.say(key, **values))

    def desk(self, handle: str | None) -> Desk | None:
        for row in self.rows:
            if row.handle == handle and row.id is not None:
                return Desk.of(self.mail, row.id, self.incoming.id, "coach", self.incoming.sent_at)
        return None

    def _desks(self) -> list[Desk]:
        return [desk for row in self.rows if (desk := self.desk(row.handle)) is not None]

    def _desk_of(self, athlete_id: str) -> Desk | None:
        row = next((row for row in self.rows if str(row.id) == athlete_id), None)
        return self.desk(row.handle) if row is not None else None

    # ---- buttons ---------------------------------------------------------------------------------------------------

    def pressed(self, data: str) -> None:
        """Data is what we once sent, or forged: it names an athlete of this coach and a thing that still stands."""
        kind, _, rest = data.partition(":")
        athlete_id, _, rung = rest.partition(":")
        desk = self._desk_of(athlete_id)
        if desk is None:
            self._refuse()
        elif kind in ("a", "h"):
            self._decide(desk, "approve" if kind == "a" else "decline", rung)
        elif kind == "s":
            self._start(desk)
        elif kind == "v":
            self._see(desk, rung)
        elif kind == "r" and any(alert.code in alerts.RESTARTABLE for alert in desk.review.alerts):
            self._restart(desk)
        elif kind == "r":
            # An old button, pressed again: what it was about is over, and a new stop is another decision.
            self.answer("decided-nothing", name=desk.person.name)
        else:
            self._refuse()

    def _refuse(self) -> None:
        """Forged, of somebody else's athlete, or of one who left. The data itself goes into no log."""
        log.warning("press refused", incoming=self.incoming.id, coach=self.coach.id)
        self.answer("press-unknown")

    def _decide(self, desk: Desk, kind: OrderKind, rung: str | None = None) -> None:
        """Approve or hold the proposal that stands; a replayed press finds none and says so."""
        for position in desk.review.ladders:
            proposal = position.proposal
            if proposal is not None and rung in (None, "", proposal.rung):
                desk.add(Order(kind, desk.said_on, ladder=proposal.ladder, rung=proposal.rung))
                rung_in_words = rung_name(proposal.rung, desk.say_coach)
                desk.tell_coach(self.say.say(f"decided-{kind}", name=desk.person.name, rung=rung_in_words))
                if kind == "approve":
                    key = f"told-{proposal.kind}"
                    desk.tell(desk.say.say(key, rung=rung_name(proposal.rung, desk.say), coach=self.coach.name))
                self._effect(desk)
                return
        if kind == "approve" and not desk.review.started:
            self._start(desk)
            return
        self.answer("decided-nothing", name=desk.person.name)

    def _start(self, desk: Desk) -> None:
        if desk.review.started:
            self.answer("started-already", name=desk.person.name)
            return
        desk.add(Order("start", desk.said_on))
        self.answer("started", name=desk.person.name)
        absences.plant_next_plan(desk)
        self._effect(desk)

    def _see(self, desk: Desk, clip_id: str | None = None) -> None:
        """A clip (or all of them) was looked at."""
        waiting = [one for one in desk.record.clips if not one.seen_by_coach and one.fact is not None]
        seen = [one.fact for one in waiting if clip_id in (None, str(one.fact)) and one.fact is not None]
        for fact in seen:
            facts.mark_clip_seen(desk.tx, fact)
        desk.forget()
        desk.tell_coach(self.say.say("clips-seen", name=desk.person.name, count=len(seen)))
        self._effect(desk)

    def _restart(self, desk: Desk) -> None:
        desk.add(Order("restart", desk.said_on))
        desk.tell_coach(self.say.say("restarted", name=desk.person.name) + "\n" + cards.next_session(desk))
        desk.tell(desk.say.say("told-restart", coach=self.coach.name))
        self._effect(desk)

    # ---- words -----------------------------------------------------------------------------------------------------

    def said(self, text: str) -> None:
        if not text.strip():
            self.answer("coach-help")
            return
        today = self.incoming.sent_at.astimezone(ZoneInfo(self.coach.timezone)).date()
        names = [(row.handle, row.name) for row in self.rows]
        supposed = what_if.question(text)
        if supposed is not None:
            self._what_if(supposed, what_if.about(supposed, names, self.coach.language, today))
            return
        command = parse(text, names, self.coach.language, today)
        if command is None:
            self._answered(text)
            return
        if command.verb in SHOWN and command.over:
            # Only shown: no order was in it that we know, and the coach must not think so.
            self.answer("coach-only", words=" ".join(command.over))
        general = GENERAL.get(command.verb)
        if general is not None:
            general(self, command)
            return
        desk = self.desk(command.handle)
        if desk is None:
            self.answer("coach-who", names=", ".join(row.handle for row in self.rows[:20]))
            return
        command = self._of_a_movement(command, desk)
        if command.verb in EXACT and command.odd:
            # An order with a condition, a question or a day that nobody understood is none: "restart when …".
            self.answer(
                "coach-not-done", words=" ".join(command.odd), name=desk.person.name, handle=desk.athlete.handle
            )
            return
        OF_ONE.get(command.verb, Office._unknown)(self, command, desk)

    def _of_a_movement(self, command: Command, desk: Desk) -> Command:
        """ "mira dips 5x3 at 20": sets of the movement that is named; the main lift's name adds nothing."""
        named = self._movement(" ".join(command.odd)) if command.verb == "sets" and command.odd else None
        if named is None or (named in GRIPS and named != desk.review.main_lift):
            return command
        return replace(command, odd=(), movement=None if named == desk.review.main_lift else named)

    def _answered(self, text: str) -> None:
        """Words that are no order answer the one athlete who waits for an answer; else they are not understood."""
        waiting = [row.handle for row in self.rows if row.id is not None and notes.unanswered(self.mail.tx, row.id)]
        desk = self.desk(waiting[0]) if len(waiting) == 1 else None
        if desk is None or len(text.split()) < FEWEST_WORDS or self._meant_otherwise(text):
            self.answer("coach-who" if waiting else "coach-unknown", names=", ".join(waiting))
            return
        self._pass_on(desk, text.strip())

    def _meant_otherwise(self, text: str) -> bool:
        """Whether words look like an order, or are for somebody by name: "mria: …", "and mira deload please"."""
        named = {word for row in self.rows for word in (row.handle, *row.name.casefold().split())}
        words = {word.strip(",.;!?()").casefold() for word in text.split()}
        return ":" in text or SCHEME.search(text) is not None or bool(words & named)

    def _pass_on(self, desk: Desk, text: str) -> None:
        reached = passing_on.to_athlete(desk, text)
        self.answer("told" if reached else "told-nobody", name=desk.person.name)

    def _unknown(self, _command: Command, _desk: Desk) -> None:
        self.answer("coach-unknown")

    def _effect(self, desk: Desk) -> None:
        """What the decision changes: today's plan goes out anew, and what the coach should hear of it."""
        plans.refresh(desk)
        alerts.send_new(desk)

    def _confirm(self, desk: Desk, key: str, **values: object) -> None:
        """Say what was understood and the next session as it is now."""
        desk.tell_coach(desk.say_coach.say(key, name=desk.person.name, **values) + "\n" + cards.next_session(desk))
        self._effect(desk)

    # of everyone

    def _roster(self, _command: Command) -> None:
        self.mail.post(self.coach, roster_page.roster(self.mail, self.coach))

    def _rungs(self, _command: Command) -> None:
        self.mail.post(self.coach, roster_page.rungs(self.mail, self.coach))

    def _summary(self, _command: Command) -> None:
        summary.send(self.mail, self.coach, outbox.REPLY)

    def _what_if(self, said: str, command: Command | None) -> None:
        """Rehearsed for the one named, or for everyone on the rung that is named."""
        if command is None:
            self.answer("what-if-how")
            return
        named = self.desk(command.handle)
        meant = [named] if named is not None else what_if.meant(said, self._desks())[:MOST_REHEARSED]
        if not meant:
            self.answer("coach-who", names=", ".join(row.handle for row in self.rows[:20]))
        for desk in meant:
            desk.tell_coach(what_if.answer(desk, command, said))

    def _unheard(self, _command: Command) -> None:
        self.mail.post(self.coach, unheard.in_words(self._desks(), self.say))

    def _tell_all(self, command: Command) -> None:
        """ "tell everyone: the hall is closed on Friday"."""
        if not command.rest:
            self.answer("tell-all-what")
            return
        reached = [desk.person.name for desk in self._desks() if passing_on.to_athlete(desk, command.rest)]
        self.answer("told-all", count=len(reached), names=self.say.listed(reached))

    def _help(self, _command: Command) -> None:
        self.answer("coach-help")

    def _nickname(self, command: Command) -> None:
        """ "call archers with low ring ALR": the last word is the nickname, the words before it name a movement."""
        *phrase, nickname = command.rest.split() or [""]
        movement = self._movement(" ".join(phrase))
        if movement is None:
            self.answer("nickname-unclear")
            return
        set_nickname(self.mail.tx, self.coach.id, nickname, movement)
        self.answer("nickname-set", nickname=nickname, movement=self.say.movement(movement))

    def _rule(self, command: Command) -> None:
        """ "rule block.loading_weeks 5", for all or, with a name, for one."""
        words = command.rest.split()
        if len(words) < 2:
            self.answer("rule-how")
            return
        name, value = words[0], words[-1]
        if name not in rules.catalogue():
            self.answer("rule-unknown", rule=name)
            return
        try:
            checked = rules.check(name, _value(value))
        except rules.RuleError:
            self.mail.post(self.coach, rule_words.allowed(rules.catalogue()[name], self.say))
            return
        desk = self.desk(command.handle)
        if desk is None:
            set_coach_rule(self.mail.tx, self.coach.id, name, checked)
            self.answer("rule-set-all", rule=name, value=value)
        else:
            desk.add(Order("set_rule", desk.said_on, rule=name, value=checked))
            self._confirm(desk, "rule-set", rule=name, value=value)

    def _movement(self, name: str) -> str | None:
        return movement_called(name, self.coach.language, nicknames_of(self.mail.tx, self.coach.id))

    # of one

    def _card(self, _command: Command, desk: Desk) -> None:
        text, buttons = cards.card(desk)
        desk.tell_coach(text, buttons=buttons)

    def _week(self, _command: Command, desk: Desk) -> None:
        desk.tell_coach(plans.week(desk, desk.say_coach))

    def _why(self, _command: Command, desk: Desk) -> None:
        desk.tell_coach(plans.why(desk, desk.say_coach))

    def _tell(self, command: Command, desk: Desk) -> None:
        if not command.rest:
            self.answer("tell-what", name=desk.person.name)
            return
        self._pass_on(desk, command.rest)

    def _note(self, command: Command, desk: Desk) -> None:
        notes.add_note(desk.tx, desk.id, command.rest, desk.now)
        self.answer("note-kept", name=desk.person.name)

    def _invite(self, _command: Command, desk: Desk) -> None:
        code = invites.new_invite(desk.tx, Who("athlete", desk.id), desk.now)
        self.answer("invited", name=desk.person.name, code=code)

    def _sets(self, command: Command, desk: Desk) -> None:
        load = self._load_kg(command, desk)
        if command.scheme is None or (load is not None and load > LOADS_UP_TO_KG):
            self.answer("sets-how", name=desk.person.name)
            return
        refused = beyond.refusal(desk, command.scheme, load, command.movement)
        if refused is not None:
            desk.tell_coach(refused)
            return
        day = command.day or desk.review.next_training_on or desk.today
        before = [plan.on for plan in desk.week_ahead(SEEN_AHEAD) if plan.sets]
        desk.add(
            Order(
                "set_sets",
                desk.said_on,
                movement=command.movement,
                for_date=day,
                sets=command.scheme[0],
                reps=command.scheme[1],
                load_kg=load,
            )
        )
        hard = beyond.warning(desk, command.scheme[1], load, command.movement)
        desk.tell_coach("\n".join([*ordered_sets.outcome(desk, day, before), *([hard] if hard else [])]))
        self._effect(desk)

    def _lock(self, command: Command, desk: Desk) -> None:
        load = self._load_kg(command, desk)
        if load is None or load > LOADS_UP_TO_KG:
            self.answer("lock-how", name=desk.person.name)
            return
        refused = beyond.refusal(desk, None, load)
        if refused is not None:
            desk.tell_coach(refused)
            return
        desk.add(Order("lock_load", desk.said_on, load_kg=load, until=command.until))
        until = until_in_words(command.until, desk.say_coach)
        self._confirm(desk, "locked", load=desk.say_coach.load(load), until=until)

    def _load_kg(self, command: Command, desk: Desk) -> float | None:
        if command.load is None:
            return None
        return command.load * KG_PER_LB if (command.unit or desk.athlete.unit) == "lb" else command.load

    def _move(self, command: Command, desk: Desk) -> None:
        """ "mira move thursday to friday"."""
        if command.day is None or command.until is None or not desk.plan(command.day).sets:
            self.answer("moved-how", name=desk.person.name)
            return
        desk.add(Move(desk.said_on, command.day, command.until))
        say = desk.say
        desk.tell(
            say.say(
                "told-moved", coach=self.coach.name, since=say.long_day(command.day), until=say.long_day(command.until)
            )
        )
        shown = desk.say_coach
        self._confirm(desk, "moved", since=shown.day(command.day), until=shown.day(command.until))

    def _hold(self, command: Command, desk: Desk) -> None:
        until = command.until or desk.said_on + timedelta(weeks=3)
        desk.add(Order("hold_rung", desk.said_on, until=until))
        self._confirm(desk, "held", until=until_in_words(until, desk.say_coach))

    def _rung(self, command: Command, desk: Desk) -> None:
        wanted = command.rest.strip().casefold().replace(" ", "_").replace("-", "_")
        known: list[str] = []
        for ladder_id, _ in desk.record.athlete.ladders:
            known += ladders.get(ladder_id).by_id
            if wanted in ladders.get(ladder_id).by_id:
                desk.add(Order("set_rung", desk.said_on, ladder=ladder_id, rung=wanted))
                self._confirm(desk, "rung-set", rung=rung_name(wanted, desk.say_coach))
                return
        self.answer("rung-unknown", rung=command.rest, rungs=", ".join(known))

    def _exclude(self, command: Command, desk: Desk) -> None:
        movement = self._movement(command.rest)
        if movement is None:
            self.answer("movement-unknown", movement=command.rest)
            return
        desk.add(Order("exclude", desk.said_on, movement=movement, until=command.until))
        until = until_in_words(command.until, desk.say_coach)
        self._confirm(desk, "excluded", movement=desk.say_coach.movement(movement), until=until)

    def _unlock(self, _command: Command, desk: Desk) -> None:
        desk.add(Order("unlock", desk.said_on))
        self._confirm(desk, "unlocked")

    def _approve(self, _command: Command, desk: Desk) -> None:
        self._decide(desk, "approve")

    def _decline(self, _command: Command, desk: Desk) -> None:
        self._decide(desk, "decline")

    def _do_restart(self, _command: Command, desk: Desk) -> None:
        if any(alert.code in alerts.RESTARTABLE for alert in desk.review.alerts):
            self._restart(desk)
        else:
            self.answer("decided-nothing", name=desk.person.name)

    def _seen(self, _command: Command, desk: Desk) -> None:
        self._see(desk)

    def _pause(self, command: Command, desk: Desk) -> None:
        absences.begin(desk, Absence("pause", desk.said_on, desk.said_on, command.until))
        self._confirm(desk, "paused", until=until_in_words(command.until, desk.say_coach))

    def _resume(self, _command: Command, desk: Desk) -> None:
        persons.update_athlete(desk.tx, desk.id, {"silenced": False})
        desk.add(Resume(desk.said_on))
        absences.plant_next_plan(desk)
        self._confirm(desk, "resumed")


def _value(word: str) -> float | str | bool:
    """A rule's value as typed: a switch, a number, or a word."""
    if word.casefold() in ("true", "false"):
        return word.casefold() == "true"
    try:
        return float(word.replace(",", "."))
    except ValueError:
        return word


GENERAL: dict[str, Callable[[Office, Command], None]] = {
    "roster": Office._roster,
    "rungs": Office._rungs,
    "summary": Office._summary,
    "help": Office._help,
    "nickname": Office._nickname,
    "rule": Office._rule,
    "unheard": Office._unheard,
    "tell_all": Office._tell_all,
}
OF_ONE: dict[str, Callable[[Office, Command, Desk], None]] = {
    "card": Office._card,
    "week": Office._week,
    "why": Office._why,
    "tell": Office._tell,
    "note": Office._note,
    "invite": Office._invite,
    "sets": Office._sets,
    "lock": Office._lock,
    "move": Office._move,
    "hold": Office._hold,
    "rung": Office._rung,
    "exclude": Office._exclude,
    "unlock": Office._unlock,
    "approve": Office._approve,
    "decline": Office._decline,
    "restart": Office._do_restart,
    "seen": Office._seen,
    "pause": Office._pause,
    "resume": Office._resume,
}
