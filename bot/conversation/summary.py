"""The coach's week: who needs you, most urgent first and why; who is away; then who is fine, a line each.

One message where it fits in one; else those in need come first, with the buttons, and the others after them.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from zoneinfo import ZoneInfo

from bot.conversation import coach_waiting, open_sets
from bot.conversation.alerts import alert_buttons, proposal_buttons, proposal_in_words
from bot.conversation.desk import Buttons, Desk, Mail
from bot.conversation.reasons import dose_in_words, place, reason_in_words, rung_name, until_in_words
from bot.wording import Wording, wording_for
from planner.absence import absences
from planner.facts import Record
from planner.plan import Alert, Review
from planner.rules import rules_of
from storage import notes, outbox, questions
from storage.notes import PassedOn
from storage.persons import Person
from storage.questions import Question

MOST_BUTTONS = 12
FITS = 3800  # letters a message; a chat takes 4096 and counts some of them twice
NEEDS = 2
TOLD_FROM = 3  # the score from which loads hold


@dataclass
class Entry:
    """One athlete's part of the message."""

    urgency: int
    name: str
    line: str
    away: bool = False
    buttons: Buttons = field(default_factory=list)
    waits: tuple[int, float] = (0, 0.0)  # how long it can wait among those of the same urgency


def send(mail: Mail, coach: Person, desks: Sequence[Desk], importance: int = outbox.SUMMARY) -> None:
    """Owe the coach the week of all their athletes."""
    for text, buttons in compose(mail, coach, desks):
        mail.post(coach, text, buttons=buttons, importance=importance)


def compose(mail: Mail, coach: Person, desks: Sequence[Desk]) -> list[tuple[str, Buttons]]:
    """Texts and buttons of the whole roster's week."""
    ids, week = [desk.id for desk in desks], mail.now - timedelta(days=7)
    waiting, lapsed = notes.unanswered(mail.tx, ids), questions.lapsed_since(mail.tx, ids, open_sets.KIND, week)
    entries = []
    for desk in desks:
        entries.append(_entry(desk, waiting.get(desk.id, []), lapsed.get(desk.id, [])))
        desk.leave()
    say = wording_for(coach.language)
    needing = sorted(
        (one for one in entries if one.urgency >= NEEDS), key=lambda one: (-one.urgency, one.waits, one.name)
    )
    others = [one for one in entries if one.urgency < NEEDS]
    away, fine = ([one for one in others if one.away == wanted] for wanted in (True, False))
    week_ends = mail.now.astimezone(ZoneInfo(coach.timezone)).date()
    lines = [say.say("summary-heading", day=say.long_day(week_ends), count=len(desks))]
    if needing:
        lines += ["", say.say("summary-needing", count=len(needing)), *(one.line for one in needing)]
    else:
        lines += ["", say.say("summary-nobody")]
    rest = []
    if away:
        rest += ["", say.say("summary-away", count=len(away)), *(one.line for one in away)]
    if fine:
        rest += ["", say.say("summary-fine", count=len(fine)), *(one.line for one in fine)]
    buttons = [button for one in needing for button in one.buttons][:MOST_BUTTONS]
    if sum(len(line) + 1 for line in lines + rest) <= FITS:
        return [("\n".join(lines + rest), buttons)]
    first, *more = _parts(lines)
    return [(first, buttons), *((part, []) for part in [*more, *(_parts(rest) if rest else [])])]


def _parts(lines: list[str]) -> list[str]:
    """The lines in as few texts as they fit in, of about the same length."""
    total = sum(len(line) + 1 for line in lines)
    each = total / math.ceil(total / FITS)
    parts, current, length = list[str](), list[str](), 0
    for line in lines:
        if current and length + len(line) / 2 > each:
            parts.append("\n".join(current).strip())
            current, length = [], 0
        current.append(line)
        length += len(line) + 1
    return [*parts, "\n".join(current).strip()]


def _entry(desk: Desk, waiting: Sequence[PassedOn], lapsed: Sequence[Question]) -> Entry:
    """What the coach should know of one athlete.

    Args:
        waiting: The athlete's words that no one has answered.
        lapsed: The open sets of the week that they never told of.
    """
    known, seen, say = desk.record, desk.review, desk.say_coach
    urgency, needs, buttons = 0, list[str](), Buttons()
    for alert in sorted(seen.alerts, key=lambda one: -one.urgency):
        # Silence is quiet, but those who go silent are the ones that a coach loses.
        urgency = max(urgency, NEEDS if alert.code == coach_waiting.SILENT else alert.urgency)
        if (alert.urgency >= NEEDS or alert.code == coach_waiting.SILENT) and not alert.code.startswith("proposal"):
            needs.append(reason_in_words(alert, say, "alert"))
            askable = alert.code == coach_waiting.SILENT and not desk.athlete.silenced
            asked = coach_waiting.ask_button(desk.id, say) if askable else []
            buttons += _named(desk, alert_buttons(desk.id, alert, say) + asked)
    for position in seen.ladders:
        if position.proposal is not None:
            urgency = max(urgency, NEEDS)
            needs.append(proposal_in_words("", position.proposal, say).lstrip(" :"))
            buttons += _named(desk, proposal_buttons(desk.id, position.proposal, say))
    if waiting:
        urgency = max(urgency, NEEDS)
        needs.append(coach_waiting.in_words(waiting, ZoneInfo(desk.coach.timezone), say))
        buttons += _named(desk, coach_waiting.settle_button(desk.id, waiting, say))
    clips = coach_waiting.clips_to_see(known)
    if clips:
        urgency = max(urgency, NEEDS)
        needs.append(coach_waiting.clips_in_words(clips, say))
        buttons += _named(desk, coach_waiting.see_button(desk.id, clips, say))
    for left in lapsed:
        urgency = max(urgency, NEEDS)
        needs.append(say.say("summary-open-set", span=open_sets.in_words(left, say)))
    if desk.athlete.silenced:
        urgency = max(urgency, NEEDS)
        needs.append(say.say("summary-stopped"))
    away = _away(known, seen.on, say)
    what = " ".join([*needs, *([away] if away else [])]) if needs or away else _fine(known, seen, say)
    line = say.say("summary-line", name=desk.person.name, what=what)
    return Entry(urgency, desk.person.name, line, away is not None, buttons, _waits(seen))


def _named(desk: Desk, buttons: Buttons) -> Buttons:
    """The buttons with the athlete's name on them: they stand under a message about many."""
    return [(desk.say_coach.say("button-for", label=label, name=desk.person.name), data) for label, data in buttons]


def _waits(seen: Review) -> tuple[int, float]:
    """Stops and pain cannot wait, the worse the less; then silence, then proposals, then small things."""
    codes = {one.code for one in seen.alerts}
    scores = [float(str(one.values.get("score", 0))) for one in seen.alerts if one.code.startswith("pain")]
    if scores or "stopped_by_sign" in codes:
        return 0, -max(scores, default=10.0)
    if coach_waiting.SILENT in codes:
        return 1, 0.0
    return (2 if any(position.proposal is not None for position in seen.ladders) else 3), 0.0


def _away(known: Record, on: date, say: Wording) -> str | None:
    """Why and until when there is no training, where that is so."""
    free = rules_of(known.athlete).whole("absence.fever_free_days")
    for one in absences(known, on, free):
        if one.covers(on):
            return say.say(f"summary-away-{one.kind}", until=until_in_words(one.until, say))
    return None


def _pain_told(known: Record, on: date, say: Wording) -> list[str]:
    """The worst pain of the week, where it was more than the rules let pass without a thought."""
    week = [one for one in known.pain if on - timedelta(days=7) < one.on <= on]
    told = [(one.score, one.on, one) for one in week if one.score is not None and one.score >= TOLD_FROM]
    if not told:
        return []
    score, day, worst = max(told, key=lambda one: one[:2])
    return [say.say("fine-pain", place=place(worst.site, worst.side, say), score=say.number(score), day=day)]


def _fine(known: Record, seen: Review, say: Wording) -> str:
    """A line of what a coach wants to see: sessions done, rung and dose, strength, anything small."""
    parts = []
    done, planned = seen.adherence
    if planned:
        parts.append(say.say("fine-sessions", done=done, planned=planned))
    for position in seen.ladders[:2]:
        rung = rung_name(position.rung, say)
        # The main lift has no dose of its own: its sets and loads are the block's.
        parts.append(say.say("fine-rung", rung=rung, dose=dose_in_words(position.dose, say)) if position.dose else rung)
    for one in seen.strength:
        if one.movement == seen.main_lift and one.side is None:
            parts.append(say.say("fine-strength", added=say.about(max(0.0, one.added_e1rm_kg))))
    if seen.block is not None and seen.block.deload:
        parts.append(say.say("fine-deload"))
    parts += _pain_told(known, seen.on, say)
    parts += [reason_in_words(one, say, "alert") for one in _notes(seen.alerts)]
    return "; ".join(parts)


def _notes(alerts: tuple[Alert, ...]) -> list[Alert]:
    return [one for one in alerts if one.urgency < NEEDS and one.code != coach_waiting.SILENT][:1]
