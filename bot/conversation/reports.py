"""A report becomes facts, and a short read-back says what was understood and what changes because of it."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta

from bot.conversation.desk import Buttons, Desk
from bot.reading.reading import Reading, SetRead
from bot.wording import Wording
from bot.wording.sets import done_in_words
from planner.facts import Bodyweight, Session, WorkSet
from planner.plan import DayPlan, Strength

MORE_PAIN = "more"
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
    """The next session and the main lift's strength as they stood before a message."""

    def __init__(self, desk: Desk) -> None:
        self.next = next_session(desk)
        self.strength = main_strength(desk)


def next_session(desk: Desk) -> DayPlan | None:
    """The plan of the first session after today."""
    review = desk.review
    following = review.next_training_on
    if following == desk.today:
        following = next((day for day in _days_after(desk) if desk.plan(day).sets), None)
    return desk.plan(following) if following is not None else None


def _days_after(desk: Desk) -> Iterator[date]:
    for ahead in range(1, 9):
        yield desk.today + timedelta(days=ahead)


def main_strength(desk: Desk) -> Strength | None:
    review = desk.review
    return next((one for one in review.strength if one.movement == review.main_lift and one.side is None), None)


def _changes(desk: Desk, before: Snapshot) -> Iterator[str]:
    """The next session's main work, and whether the report moved it."""
    say = desk.say
    after = next_session(desk)
    if after is None:
        return
    main = [one for one in after.sets if one.part == "main"]
    if not main:
        return
    top = max(main, key=lambda one: one.load_kg - one.assist_kg)
    load = signed_load(top.load_kg - top.assist_kg, say)
    slots = {"day": say.day(after.on), "movement": say.movement(top.movement), "load": load}
    was = None
    if before.next is not None and before.next.on == after.on:
        same = [one for one in before.next.sets if one.part == "main" and one.movement == top.movement]
        was = max((one.load_kg - one.assist_kg for one in same), default=None)
    if was is not None and abs(was - (top.load_kg - top.assist_kg)) > 0.01:
        yield say.say("report-next-changed", was=signed_load(was, say), **slots)
    else:
        yield say.say("report-next", **slots)


def signed_load(kg: float, say: Wording) -> str:
    """ "+17.5 kg", "−10 kg" of help, or "no added load"."""
    if not kg:
        return say.say("no-added-load")
    return f"{'+' if kg > 0 else '−'}{say.load(abs(kg))}"


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
