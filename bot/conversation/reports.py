"""A report becomes facts, and a short read-back says what was understood and what changes because of it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta

from bot.conversation import days_told, one_more
from bot.conversation.desk import Desk
from bot.conversation.words import phrases, starts
from bot.reading.reading import Reading, SetRead
from bot.wording import Wording
from bot.wording.sets import done_in_words, in_a_line
from planner.facts import Bodyweight, Session, WorkSet
from planner.plan import DayPlan
from storage import facts

DAYS_AHEAD = 9
A_REST = timedelta(minutes=1)  # between two sets at least; the same words sooner are a message sent twice


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


@dataclass(frozen=True)
class Stored:
    """What a report brought: the sessions as they are now, and the sets in it that had been told before."""

    sessions: list[Session]
    again: tuple[WorkSet, ...] = ()
    along: tuple[WorkSet, ...] = ()  # all sets of the movement on that day, where this is one more of the same


def store(desk: Desk, reading: Reading, text: str) -> Stored:
    """Add the facts of the training told of; what was told of a day before adds nothing but efforts, unless the words
    say that it was done once more."""
    anew = bool(starts(text.casefold(), phrases("once_more")["said"])) or one_more.is_said(text)
    new: list[Session] = []
    again: list[WorkSet] = []
    along: tuple[WorkSet, ...] = ()
    for session in sessions_of(reading, desk.said_on):
        left = session
        if anew and days_told.is_one_set(session):
            along = _of_that_day(desk, session)
        of_day = [one for one in desk.record.sessions if one.on == session.on and one.sets and not one.is_test]
        for before in of_day if not anew else ():
            if _is_one_more(desk, before, session):
                along = _of_that_day(desk, session)
                continue
            known = _told_in(before, left)
            if not known or before.fact is None:
                continue
            left = replace(left, sets=tuple(work for work in left.sets if work.movement not in known))
            mended = _with_efforts(before, session, known)
            if mended.sets == before.sets:
                again += [work for work in before.sets if work.movement in known]
                continue
            facts.replace_session(desk.tx, before.fact, mended, desk.said_at, desk.cause)
            desk.forget()
            new.append(mended)
        if left.sets or _tells_more(desk, left):
            desk.add(left)
            new.append(left)
    if reading.bodyweight_kg is not None:
        desk.add(Bodyweight(reading.performed_on or desk.said_on, reading.bodyweight_kg))
    return Stored(new, tuple(again), along if new else ())


def trained(session: Session) -> bool:
    """Whether it tells of training; a night's sleep or a test from the roster does not."""
    told = session.sets or session.session_rpe is not None or session.duration_min is not None
    return bool(told) and not session.is_test


def _told_in(before: Session, session: Session) -> frozenset[str]:
    """The movements whose sets are those of an earlier report of the day, efforts aside: a message sent twice, told
    again with efforts, or told again with more beside it."""
    names = {work.movement for work in session.sets}
    return frozenset(name for name in names if _bare(before, name) == _bare(session, name))


def _is_one_more(desk: Desk, before: Session, session: Session) -> bool:
    """Whether a set that is like the one told before is another: told as it was done, with a rest between them.

    Both messages tell of one set alone, of today. The effort told of a set that had none belongs to that.
    """
    if (
        session.on != desk.said_on
        or not (days_told.is_one_set(before) and days_told.is_one_set(session))
        or before.fact is None
    ):
        return False
    name = session.sets[0].movement
    if _bare(before, name) != _bare(session, name) or (before.sets[0].rpe is None) > (session.sets[0].rpe is None):
        return False
    told_at = facts.said_at(desk.tx, "session", before.fact)
    return told_at is not None and desk.said_at - told_at >= A_REST


def _of_that_day(desk: Desk, session: Session) -> tuple[WorkSet, ...]:
    name = session.sets[0].movement
    of_day = [one for one in desk.record.sessions if one.on == session.on and not one.is_test]
    return (*(work for one in of_day for work in one.sets if work.movement == name), *session.sets)


def _bare(session: Session, movement: str) -> list[WorkSet]:
    return [replace(work, rpe=None, linked=False) for work in session.sets if work.movement == movement]


def _with_efforts(before: Session, session: Session, known: frozenset[str]) -> Session:
    """The earlier report with the efforts told now of the movements in it."""
    efforts = {name: iter([work.rpe for work in session.sets if work.movement == name]) for name in known}
    told = [(work, next(efforts[work.movement]) if work.movement in known else None) for work in before.sets]
    return replace(before, sets=tuple(work if rpe is None else replace(work, rpe=rpe) for work, rpe in told))


def _tells_more(desk: Desk, session: Session) -> bool:
    """Whether a report without sets of its own tells of effort, time or sleep what was not told of that day."""
    told = [(one.session_rpe, one.duration_min, one.sleep_h) for one in desk.record.sessions if one.on == session.on]
    now = (session.session_rpe, session.duration_min, session.sleep_h)
    return any(value is not None and all(one[at] != value for one in told) for at, value in enumerate(now))


def read_back(desk: Desk, stored: Stored, before: Snapshot, whole: bool = True) -> str:
    """ "Noted for Mon 4 Jan: pull-ups 5×3 +20 kg." and, if the report is `whole`, what changes because of it."""
    say, sessions = desk.say, stored.sessions
    lines: list[str] = []
    for session in sessions:
        if session.sets:
            lines.append(say.say("report-noted", day=say.day(session.on), work=done_in_words(session.sets, say)))
        extras = list(extras_of(session, say))
        if extras:
            key = "report-extras" if session.sets else "report-extras-alone"
            lines.append(say.say(key, day=say.day(session.on), extras=say.listed(extras)))
    if stored.again:
        lines.append(say.say("report-part-again", work=done_in_words(stored.again, say)))
    if stored.along:
        lines.append(say.say("report-so-far", work=done_in_words(stored.along, say)))
    if whole and any(trained(session) for session in sessions):
        lines += changes(desk, before) if before.told & {one.on for one in sessions} else next_work(desk, before)
    return "\n".join(lines)


def extras_of(session: Session, say: Wording) -> Iterator[str]:
    if session.session_rpe is not None:
        yield say.say("extra-session-rpe", rpe=say.number(session.session_rpe))
    if session.duration_min is not None:
        yield say.say("extra-duration", minutes=say.number(session.duration_min))
    if session.sleep_h is not None:
        yield say.say("extra-sleep", hours=say.number(session.sleep_h))


class Snapshot:
    """What stood before a message, as far as it can change it: a plan and the levels of pain cost time to know.

    `told`: the days that had a report.
    """

    def __init__(self, desk: Desk, reading: Reading) -> None:
        counts = reading.performed_on is not None or bool({"correction", "undo"} & set(reading.intents))
        self.next = next_session(desk) if counts else None
        self.told = {one.on for one in desk.record.sessions if trained(one) and one.sets} if counts else set[date]()
        self.pain = desk.review.pain if reading.pain else ()

    def forget(self) -> None:
        """What stood before was half a report: nothing was said of it, and nothing is to be compared with it."""
        self.next, self.told = None, set()


def next_session(desk: Desk) -> DayPlan | None:
    """The plan of the first session after today."""
    review = desk.review
    following = review.next_training_on
    if following == desk.today:
        coming = (desk.plan(desk.today + timedelta(ahead)) for ahead in range(1, DAYS_AHEAD))
        return next((plan for plan in coming if plan.sets), None)
    return desk.plan(following) if following is not None else None


def changes(desk: Desk, before: Snapshot) -> list[str]:
    """The next session's main work where this message changed it; said before where not."""
    after = next_session(desk)
    now, was = (_main_work(one, desk.say) for one in (after, before.next))
    return [] if now == was else list(next_work(desk, before))


def next_work(desk: Desk, before: Snapshot) -> Iterator[str]:
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
