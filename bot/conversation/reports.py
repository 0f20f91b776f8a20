"""A report becomes facts, and a short read-back says what was understood and what changes because of it."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from bot.conversation.desk import Buttons, Desk
from bot.reading.reading import Reading, SetRead
from bot.wording import Wording
from bot.wording.sets import done_in_words, in_a_line
from planner.facts import Bodyweight, Session, WorkSet
from planner.plan import DayPlan

MORE_PAIN = "more"
DAYS_AHEAD = 9
PAIN_BUTTONS = ("0", "1", "2", "3", "4", "5")


def known_sets(reading: Reading) -> list[tuple[date, WorkSet]]:
    """Sets that can be written down as they are; those with a gap wait for the answer."""
    if reading.performed_on is None:
        return []
    return [(one.on or reading.performed_on, _work(one)) for one in reading.sets if _whole(one)]


def sessions_of(reading: Reading, today: date) -> list[Session]:
    """One session a day told of; effort, time and sleep go with the latest day."""
    days: dict[date, list[WorkSet]] = {}
    for day, work in known_sets(reading):
        days.setdefault(day, []).append(work)
    day_of_all = reading.performed_on or today
    if _has_session_facts(reading):
        days.setdefault(day_of_all, [])
    return [
        Session(
            on=day,
            sets=tuple(sets),
            session_rpe=reading.session_rpe if day == day_of_all else None,
            duration_min=reading.duration_min if day == day_of_all else None,
            sleep_h=reading.sleep_h if day == day_of_all else None,
        )
        for day, sets in sorted(days.items())
    ]


def store(desk: Desk, reading: Reading) -> list[Session]:
    """Add the facts of the training told of; a report that was sent before adds nothing."""
    new = []
    for session in sessions_of(reading, desk.today):
        if _told_before(desk, session):
            continue
        desk.add(session)
        new.append(session)
    if reading.bodyweight_kg is not None:
        desk.add(Bodyweight(reading.performed_on or desk.today, reading.bodyweight_kg))
    return new


def trained(session: Session) -> bool:
    """Whether it tells of training; a night's sleep or a test from the roster does not."""
    told = session.sets or session.session_rpe is not None or session.duration_min is not None
    return bool(told) and not session.is_test


def _told_before(desk: Desk, session: Session) -> bool:
    """The same sets for the same day within the last day: a message sent twice, not a second session."""
    return bool(session.sets) and any(
        one.on == session.on and one.sets == session.sets and not one.is_test for one in desk.record.sessions
    )


def read_back(desk: Desk, sessions: list[Session], before: Snapshot) -> str:
    """ "Noted for Mon 4 Jan: pull-ups 5×3 +20 kg." and what changes because of it."""
    say = desk.say
    lines = []
    for session in sessions:
        if session.sets:
            lines.append(say.say("report-noted", day=say.day(session.on), work=done_in_words(session.sets, say)))
        extras = list(_extras(session, say))
        if extras:
            key = "report-extras" if session.sets else "report-extras-alone"
            lines.append(say.say(key, day=say.day(session.on), extras=say.listed(extras)))
    if any(trained(session) for session in sessions):
        lines += _changes(desk, before)
    return "\n".join(lines)


def _extras(session: Session, say: Wording) -> Iterator[str]:
    if session.session_rpe is not None:
        yield say.say("extra-session-rpe", rpe=say.number(session.session_rpe))
    if session.duration_min is not None:
        yield say.say("extra-duration", minutes=say.number(session.duration_min))
    if session.sleep_h is not None:
        yield say.say("extra-sleep", hours=say.number(session.sleep_h))


class Snapshot:
    """The next session as it stood before a message that `counts`: most tell of no training, and a plan costs time."""

    def __init__(self, desk: Desk, counts: bool) -> None:
        self.next = next_session(desk) if counts else None


def next_session(desk: Desk) -> DayPlan | None:
    """The plan of the first session after today."""
    review = desk.review
    following = review.next_training_on
    if following == desk.today:
        coming = desk.week_ahead(DAYS_AHEAD)[1:]
        return next((plan for plan in coming if plan.sets), None)
    return desk.plan(following) if following is not None else None


def _changes(desk: Desk, before: Snapshot) -> Iterator[str]:
    """The next session's main work, and what it was before this report where that changed it."""
    say = desk.say
    after = next_session(desk)
    now = _main_work(after, say)
    if after is None or not now:
        return
    was = _main_work(before.next, say) if before.next is not None and before.next.on == after.on else now
    kind = "" if after.kind == "training" else say.say("next-kind", kind=say.say(f"day-kind-{after.kind}"))
    key = "report-next" if was == now else "report-next-changed"
    yield say.say(key, day=say.day(after.on), kind=kind, work=now, was=was)


def _main_work(plan: DayPlan | None, say: Wording) -> str:
    sets = [one for one in plan.sets if one.part == "main"] if plan is not None else []
    return in_a_line(sets, say)


def pain_buttons(say: Wording) -> Buttons:
    return [*((score, f"t:{score}") for score in PAIN_BUTTONS), (say.say("button-more-pain"), MORE_PAIN)]


def _has_session_facts(reading: Reading) -> bool:
    return any(value is not None for value in (reading.session_rpe, reading.duration_min, reading.sleep_h))


def _whole(one: SetRead) -> bool:
    known = None not in (one.movement, one.load_kg, one.assist_kg, one.rom)
    return known and (one.reps is not None or one.hold_s is not None)


def _work(one: SetRead) -> WorkSet:
    assert one.movement is not None
    assert one.rom is not None
    return WorkSet(
        movement=one.movement,
        reps=one.reps,
        side=one.side,
        hold_s=one.hold_s,
        load_kg=one.load_kg or 0.0,
        assist_kg=one.assist_kg or 0.0,
        rpe=one.rpe,
        rom=one.rom,
        eccentric=one.eccentric,
        pauses=one.pauses,
        failed=one.failed,
        linked=one.linked,
    )
