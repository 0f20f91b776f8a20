"""The reply to a message that was understood: facts first, the most urgent words first, at most one question."""

from __future__ import annotations

from dataclasses import replace

from bot import metrics
from bot.conversation import (
    absences,
    asking,
    for_the_coach,
    mending,
    mind_changed,
    open_sets,
    pain_questions,
    pain_sides,
    pains,
    passing_on,
    plans,
    progress,
    reports,
)
from bot.conversation.answers import Understood
from bot.conversation.desk import Buttons, Desk
from bot.conversation.eccentrics import asks_for_eccentrics, refuse
from bot.conversation.moments import plant_after_report
from bot.conversation.reasons import reason_in_words
from bot.conversation.words import medical
from bot.reading.reading import Reading, SetRead
from planner.facts import PainAnswer
from planner.gained import gain_of
from planner.plan import DayPlan

FEWEST_WORDS = 3  # of a message that is passed on though nothing in it was understood
ABSENT = frozenset({"move", "missed", "away", "ill", "pause", "resume", "stop", "equipment"})


def reply_to(desk: Desk, found: Understood, quiet: bool) -> None:
    """Keep what was told and answer it. `quiet`: nothing is asked for, and nothing said of what was not understood."""
    _Reply(desk, found, quiet).made()


class _Reply:
    """One message to an athlete, put together part by part."""

    def __init__(self, desk: Desk, found: Understood, quiet: bool) -> None:
        self.desk, self.found, self.text, self.quiet = desk, found, found.text, quiet
        reading = pains.at_last_place(desk, pain_sides.put_right(desk, found.reading, found.text), found.pain)
        self.reading: Reading = asking.without_doubtful_values(desk, reading, found.text)
        self.intents = set(self.reading.intents)
        if passing_on.is_for_coach_by_name(desk, found.text):
            self.intents = {*self.intents - {"unknown", "smalltalk"}, "for_coach"}
        self.was_stopped = desk.review.stopped is not None
        self.before = reports.Snapshot(desk, self.reading)
        self.stored = reports.Stored([])
        self.felt: list[PainAnswer] = []
        self.alarm: str | None = None
        self.left: tuple[SetRead, ...] = ()  # sets whose reps the plan had left open
        self.parts: list[str] = []
        self.buttons: Buttons = []
        self.plan: DayPlan | None = None  # what the message shows of today's plan
        self.offered: tuple[str, Buttons] | None = None  # a question in place of all others

    def made(self) -> None:
        metrics.count_reading(bool(self.reading.ask), self.intents != {"unknown"})
        self._keep()
        self._tell_what_was_kept()
        self._carry_out_wishes()
        unheard = self._unheard_while_stopped()
        self._answer_questions()
        if self._nothing_said():
            self._say_what_was_not_understood()
        if unheard:
            self._say(passing_on.to_coach(self.desk, self.text))
        question = self._question()
        if question is not None:
            self._say(question[0])
            self.buttons = question[1]
        if self.plan is None and self.intents & ABSENT:
            self.plan = plans.withdrawn(self.desk)
        if self.parts:
            self.desk.tell("\n\n".join(part for part in self.parts if part), plan=self.plan, buttons=self.buttons)

    def _say(self, part: str) -> None:
        self.parts.append(part)

    def _keep(self) -> None:
        """Undo, mend or add facts; an alarm stands before all other words."""
        desk, reading = self.desk, self.reading
        if self.found.completes == open_sets.KIND or open_sets.settle(desk, reading):
            self.before.forget()
        if "undo" in self.intents:
            self._say(mending.undo(desk))
        if "correction" not in self.intents:
            self.stored = reports.store(desk, reading, self.text)
        elif not reading.ask:
            self._say("\n".join([mending.correct(desk, reading), *reports.changes(desk, self.before)]))
        self.felt = pains.store(desk, reading, self.found.pain)
        self.alarm = pains.alarm(desk, reading)
        if self.alarm:
            self.parts.insert(0, self.alarm)

    def _tell_what_was_kept(self) -> None:
        desk, reading, say = self.desk, self.reading, self.desk.say
        if reading.past_flags:
            desk.tell_coach(desk.say_coach.say("history-for-coach", name=desk.person.name, text=self.text))
            self._say(say.say("history-noted", heard=desk.heard))
        self.left = open_sets.of(reading) if not self.quiet and not self.alarm else ()
        if self.stored.sessions:
            self._say(reports.read_back(desk, self.stored, self.before, whole=not self.left))
            plant_after_report(desk, self.stored.sessions)
        elif reading.sets and reports.known_sets(reading) and "correction" not in self.intents:
            self._say(say.say("report-again"))
        if reading.bodyweight_kg is not None:
            self._say(say.say("bodyweight-noted", weight=say.load(reading.bodyweight_kg)))
        acknowledged = None if self.alarm else pains.acknowledge(desk, self.felt, self.before.pain)
        if acknowledged:
            self._say(acknowledged)

    def _carry_out_wishes(self) -> None:
        desk, reading, text = self.desk, self.reading, self.text
        if self.found.changes is not None:
            self._say(mind_changed.carry_out(desk, self.found.changes))
        elif self.intents & ABSENT:
            absent, self.buttons = absences.handle(desk, reading, text)
            self.parts += absent
        if "for_coach" in self.intents:
            self._say(passing_on.to_coach(desk, text))
        if self.found.swaps:
            self._say(desk.say.say("swap-passed-on", coach=desk.coach.name))
        if asks_for_eccentrics(reading, text) and not reading.sets:
            self._say(refuse(desk, text))
        else_told = self.stored.sessions or self.quiet or "for_coach" in self.intents
        if desk.review.stopped is None and not else_told and medical(text):
            # What a doctor said outranks the plan, and is the coach's to turn into one.
            passing_on.to_coach(desk, text)
            self._say(desk.say.say("medical-passed-on", coach=desk.coach.name, heard=desk.heard))
            self.reading = replace(reading, ask=())

    def _nothing_said(self) -> bool:
        return not self.parts and not self.reading.ask and not self.felt and not self.quiet

    def _unheard_while_stopped(self) -> bool:
        """Whether a stop turns on it: "the doctor says one week off". The coach alone ends a stop."""
        if not self.was_stopped:
            return False
        told = self._nothing_said() and len(self.text.split()) >= FEWEST_WORDS and self.intents <= {"unknown"}
        return told or (bool(self.intents & {"pause", "away", "ill"}) and "for_coach" not in self.intents)

    def _answer_questions(self) -> None:
        desk, say = self.desk, self.desk.say
        if "plan_today" in self.intents:
            # "Can't make Friday, what's on today?" names a day that is not asked about.
            plain = not (self.stored.sessions or self.intents & ABSENT)
            shown, self.plan = plans.asked(desk, self.text) if plain else plans.today(desk)
            plans.keep_shown(desk, self.plan)
            self._say(shown)
        if "plan_week" in self.intents:
            self._say(plans.week(desk, say))
        if "why" in self.intents:
            self._say(plans.why(desk, say))
        if "progress" in self.intents:
            self._say(progress.in_words(desk.review, say, gain_of(desk.record, desk.review)))
        if "help" in self.intents and not self.reading.pain:
            if desk.review.stopped is not None:
                self._say(reason_in_words(desk.review.stopped, say))  # "what should I do?"
            self._say(say.say("help"))
        if self.reading.unread and self.stored.sessions:
            pieces = say.listed([say.quoted(piece) for piece in self.reading.unread])
            self._say(say.say("unread", pieces=pieces))

    def _say_what_was_not_understood(self) -> None:
        desk, stopped = self.desk, self.desk.review.stopped
        if stopped is not None and ("?" in self.text or "smalltalk" not in self.intents):
            self._say(reason_in_words(stopped, desk.say))  # "can I train?"
        elif for_the_coach.is_one(self.text):
            self.offered = for_the_coach.offer(desk, self.text)
        else:
            self._say(desk.say.say("smalltalk" if "smalltalk" in self.intents else "unknown"))

    def _question(self) -> tuple[str, Buttons] | None:
        """The one question, about what matters most."""
        desk, reading, felt = self.desk, self.reading, self.felt
        if self.offered is not None:
            return self.offered
        if reading.ask:
            return asking.ask(desk, reading, self.text)
        if self.left and reading.performed_on is not None:
            # "Done as planned" where the plan left the reps open: nothing is written down for them unasked.
            return open_sets.ask(desk, self.left, reading.performed_on, self.text), self.buttons
        if not self.alarm:
            of_pain = (
                pain_questions.ask_score(desk, felt)
                or pain_questions.ask_next(desk, self.found.pain, felt)
                or pain_questions.ask_place(desk, felt)
            )
            if of_pain is not None:
                return of_pain
        if self.stored.sessions:
            return pain_questions.ask_of_session(desk, reading, self.stored.sessions)
        return None
