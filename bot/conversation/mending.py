"""Corrections and undo: find the fact that is meant, change it, and say what changed."""

from __future__ import annotations

from collections.abc import Sequence, Set
from dataclasses import replace
from datetime import date
from typing import Any

from bot.conversation import asking, open_sets, said_instead, taken_back
from bot.conversation.desk import Desk
from bot.conversation.reports import known_sets
from bot.reading.reading import Correction, Reading
from bot.wording.sets import done_in_words
from planner.facts import Session, WorkSet
from storage import facts, questions

SAME = 0.06
# More is no value of a set; common practice, no source.
MOST = {"reps": 100, "load_kg": 300.0, "assist_kg": 150.0, "rpe": 10.0, "hold_s": 3600.0, "sets": 20}


def undo(desk: Desk) -> str:
    """Take back what the newest message brought."""
    for kind in (asking.KIND, said_instead.KIND):
        questions.expire(desk.tx, desk.person, kind, desk.now)  # what is taken back needs no answer
    open_sets.close(desk)
    cause = taken_back.newest_cause(desk)
    return desk.say.say("undo-nothing") if cause is None else taken_back.take_back(desk, cause)


def correct(desk: Desk, reading: Reading) -> str:
    """Mend the report that is meant and say how it reads now."""
    say = desk.say
    change = reading.correction
    if change is not None and not _believable(change):
        return say.say("correct-beyond")
    restated = [work for _, work in known_sets(reading)]
    if any((getattr(work, name) or 0) > most for work in restated for name, most in MOST.items() if name != "sets"):
        return say.say("correct-beyond")
    if change is None and restated:
        return _restate(desk, restated, reading.performed_on)
    session = _meant(desk, reading)
    if session is None or session.fact is None:
        return say.say("correct-nothing")
    sets = _restated(session, restated) if restated else _changed(session, change, _warm_ups(desk, session))
    moved = reading.performed_on if change is not None and change.field == "performed_on" else None
    if moved is None and change is not None and change.field == "performed_on" and isinstance(change.now, str):
        moved = date.fromisoformat(change.now)
    if sets is None and moved is None:
        return say.say("correct-no-match")
    mended = replace(session, sets=sets if sets is not None else session.sets, on=moved or session.on)
    if mended.sets == session.sets and mended.on == session.on:
        return say.say("correct-same", day=say.day(session.on), work=done_in_words(session.sets, say))
    facts.replace_session(desk.tx, session.fact, mended, desk.said_at, desk.cause)
    desk.forget()
    return say.say("correct-done", day=say.day(mended.on), work=done_in_words(mended.sets, say))


def _restate(desk: Desk, restated: list[WorkSet], on: date | None) -> str:
    """Put the sets of a day's movements in the place of those told before, report by report."""
    say, lines = desk.say, []
    own: dict[int, list[WorkSet]] = {}
    by_fact = {one.fact: one for one in desk.record.sessions if one.fact is not None and not one.is_test and one.sets}
    for name in dict.fromkeys(work.movement for work in restated):
        new = [work for work in restated if work.movement == name]
        session = _of_movement([one for one in by_fact.values() if on in (None, one.on)] or [*by_fact.values()], new)
        place = session.fact if session is not None else next(iter(own), None)
        if place is not None:
            own.setdefault(place, []).extend(new)
    for place, sets in own.items():
        before = by_fact[place]
        mended = replace(before, sets=_restated(before, sets))
        work, day = done_in_words(mended.sets, say), say.day(before.on)
        if mended.sets == before.sets:
            lines.append(say.say("correct-same", day=day, work=work))
            continue
        facts.replace_session(desk.tx, place, mended, desk.said_at, desk.cause)
        names = {work.movement for work in sets}
        was = [one for one in before.sets if one.movement in names]
        lines.append(say.say("report-now-reads", day=day, work=work))
        if [replace(one, rpe=None) for one in was] != [replace(one, rpe=None) for one in sets]:
            lines.append(say.say("report-read-before", work=done_in_words(was, say)))
    desk.forget()
    return "\n".join(lines) if lines else say.say("correct-nothing")


def _of_movement(reports: list[Session], new: list[WorkSet]) -> Session | None:
    """The newest report of a movement; sooner the one whose sets have the same repetitions."""
    having = [one for one in reports if any(work.movement == new[0].movement for work in one.sets)]
    having.sort(key=lambda one: (_reps_of(one.sets, new[0].movement) == _reps_of(new, new[0].movement), one.fact or 0))
    return having[-1] if having else None


def _reps_of(sets: Sequence[WorkSet], movement: str) -> list[int | None]:
    return [work.reps for work in sets if work.movement == movement]


def _believable(change: Correction) -> bool:
    """Whether the new value is one that can be: a slip of the thumb in a correction is not written down either."""
    most = MOST.get(change.field)
    return most is None or not isinstance(change.now, (int, float)) or 0 <= change.now <= most


def _meant(desk: Desk, reading: Reading) -> Session | None:
    """The newest report that holds what is corrected: of the day named, with the movement and the old value."""
    change = reading.correction
    reports = [one for one in desk.record.sessions if not one.is_test and one.sets]
    if reading.performed_on is not None and change is not None and change.field != "performed_on":
        on_day = [one for one in reports if one.on == reading.performed_on]
        reports = on_day or reports
    reports.sort(key=lambda one: one.fact or 0)
    if change is None:
        return reports[-1] if reports else None
    for one in reversed(reports):
        if any(_fits(work, change) for work in one.sets):
            return one
    return reports[-1] if reports and change.was is None else None


def _fits(work: WorkSet, change: Correction) -> bool:
    if change.movement is not None and work.movement != change.movement:
        return False
    if change.side is not None and work.side not in (change.side, None):
        return False
    return change.was is None or not hasattr(work, change.field) or _same(getattr(work, change.field), change.was)


def _same(a: Any, b: Any) -> bool:
    if isinstance(a, (int, float)) and isinstance(b, (int, float)):
        return abs(a - b) <= SAME
    return bool(a == b)


def _changed(session: Session, change: Correction | None, warmed: Set[int] = frozenset()) -> tuple[WorkSet, ...] | None:
    """The sets with the one value changed in those meant; None where none fits or the value cannot be.

    `warmed`: places of warm-up sets, which are meant only where no other set fits.
    """
    if change is None or change.now is None:
        return None
    if change.field == "sets":
        return _recounted(session, change, warmed)
    if change.field not in WorkSet.__dataclass_fields__:
        return None
    fits = [at for at, work in enumerate(session.sets) if _fits(work, change)]
    meant = [at for at in fits if at not in warmed]  # "4 reps, not 3" is no warm-up set of three
    if not meant and (change.movement is not None or change.which != "last"):
        meant = fits  # "the last set" is never one that warms up
    if change.which == "last":
        meant = meant[-1:]
    elif isinstance(change.which, int):
        meant = meant[change.which - 1 : change.which]
    if not meant:
        return None
    now: Any = int(change.now) if change.field == "reps" and isinstance(change.now, float) else change.now
    return tuple(replace(work, **{change.field: now}) if at in meant else work for at, work in enumerate(session.sets))


def _warm_ups(desk: Desk, session: Session) -> set[int]:
    """Which of the sets done are those that the day's plan has as warm-ups."""
    sent = desk.record.sent_by_day.get(session.on)
    planned = (
        {(one.movement, one.side, one.reps, one.load_kg) for one in sent.sets if one.part == "warm_up"} if sent else ()
    )
    return {
        at for at, work in enumerate(session.sets) if (work.movement, work.side, work.reps, work.load_kg) in planned
    }


MOST_SETS = 20


def _recounted(session: Session, change: Correction, warmed: Set[int]) -> tuple[WorkSet, ...] | None:
    """ "4 sets, not 5": the last of them goes, or is there once more. None where the sets are not of one movement."""
    every = [at for at, work in enumerate(session.sets) if change.movement in (None, work.movement)]
    own = [at for at in every if at not in warmed] or every  # "only 3 sets" counts none that warms up
    if not own or not isinstance(change.now, (int, float)) or not 1 <= change.now <= MOST_SETS:
        return None
    alike = len({(work.movement, work.side) for work in (session.sets[at] for at in own)}) == 1
    if not alike or (isinstance(change.was, (int, float)) and int(change.was) != len(own)):
        return None
    wanted, end = int(change.now), own[-1] + 1
    if wanted <= len(own):
        gone, last = set(own[wanted:]), own[wanted - 1]
        # "Last @8" was said of the last one, whichever that is now.
        effort = session.sets[last].rpe if session.sets[last].rpe is not None else session.sets[own[-1]].rpe
        kept = [replace(work, rpe=effort) if at == last else work for at, work in enumerate(session.sets)]
        return tuple(work for at, work in enumerate(kept) if at not in gone)
    return (*session.sets[:end], *([session.sets[own[-1]]] * (wanted - len(own))), *session.sets[end:])


def _restated(session: Session, restated: list[WorkSet]) -> tuple[WorkSet, ...]:
    """The report with the sets of the restated movements in place of the old ones, of one side where only that is told;
    told efforts stay."""
    places = _places(session, restated)
    old = [session.sets[at] for at in places]
    if len(old) == len(restated):
        restated = [
            replace(new, rpe=was.rpe) if new.rpe is None and new.reps == was.reps else new
            for new, was in zip(restated, old, strict=True)
        ]
    kept = [work for at, work in enumerate(session.sets) if at not in places]
    at = min([*places, len(kept)])
    return tuple(kept[:at] + restated + kept[at:])


def _places(session: Session, restated: list[WorkSet]) -> list[int]:
    """Where the sets stand that are told anew: all of the movement, or those of the one side that is told."""
    sides = {(work.movement, work.side) for work in restated}
    names = {work.movement for work in restated}
    of_one_side = None not in {side for _, side in sides} and len(sides) == len(names)
    return [
        at
        for at, work in enumerate(session.sets)
        if ((work.movement, work.side) in sides if of_one_side else work.movement in names)
    ]
