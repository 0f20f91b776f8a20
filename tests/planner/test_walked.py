"""A walk taken up where it was left gives what the whole walk gives, whatever was reported since."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from planner import review
from planner.facts import Absence, Bodyweight, Move, Order, PainAnswer, PlannedSet, Record, SentPlan, Session, WorkSet
from planner.history import History
from planner.timeline import Timeline
from planner.view import View
from planner.walked import Walked
from tests.planner.athletes import athlete, day
from tests.planner.test_invariants import arms, pulls, records

scores = st.sampled_from([None, None, None, 0.0, 2.0, 3.0, 4.0, 6.0])
visits = st.tuples(st.integers(1, 5), st.lists(pulls | arms, min_size=1, max_size=3).map(tuple), scores, st.booleans())


@st.composite
def lived(draw: st.DrawFn) -> Record:
    """Half a year: what `records` draws in its first two months, and visits with pain and plans until the end."""
    record, number = draw(records()), 0
    sessions, pain, sent = list(record.sessions), list(record.pain), list[SentPlan]()
    for gap, sets, score, was_sent in draw(st.lists(visits, min_size=45, max_size=55)):
        number += gap
        sessions.append(Session(day(number), sets))
        if score is not None:
            pain.append(PainAnswer(day(number), "elbow_inner", None, score, "after"))
        if was_sent:
            asked = tuple(PlannedSet(one.movement, "main", one.reps, rpe=7.0) for one in sets)
            sent.append(SentPlan(day(number), 1, 1, "training", asked))
    further = [Absence("away", day(since), day(since), day(since + 12)) for since in draw(st.lists(late, max_size=1))]
    further += [Absence("missed", day(since), day(since), day(since)) for since in draw(st.lists(late, max_size=2))]
    moves = [Move(day(since), day(since), day(since + 2)) for since in draw(st.lists(late, max_size=2))]
    return replace(
        record,
        sessions=tuple(sorted(sessions, key=lambda one: one.on)),
        pain=tuple(sorted(pain, key=lambda one: one.on)),
        sent=tuple(sent),
        absences=(*record.absences, *further),
        moves=(*record.moves, *moves),
    )


late = st.integers(50, 150)


def known_on(record: Record, on: date) -> Record:
    """What was reported by `on`, with the very sessions of the whole record."""
    return replace(
        record,
        sessions=tuple(one for one in record.sessions if one.on <= on),
        sent=tuple(one for one in record.sent if one.on <= on),
    )


def anew(record: Record) -> Record:
    """The same facts with nothing kept from an earlier review."""
    return replace(record, sessions=tuple(replace(one) for one in record.sessions))


def words(record: Record, on: date) -> str:
    view = View(record, on)
    return repr((view.timeline.slots, view.timeline.exposures, view.timeline.by_day, view.review()))


@settings(max_examples=40, deadline=None, suppress_health_check=list(HealthCheck))
@given(record=lived(), back=st.lists(st.integers(0, 90), min_size=3, max_size=5))
def test_a_review_with_all_that_was_kept_equals_one_without(record: Record, back: list[int]):
    last = record.sessions[-1].on
    for on in (last - timedelta(days) for days in sorted(back, reverse=True)):
        known = known_on(record, on)
        assert words(known, on) == words(anew(known), on)


def two_hundred_days() -> Record:
    done = [Session(day(number), (WorkSet("pull_up", 5, load_kg=10.0, rpe=7.0),)) for number in range(0, 200, 3)]
    return Record(athlete(), sessions=tuple(done))


def kept_in(record: Record) -> list[Walked]:
    return [one.__dict__["_walked"][2] for one in record.sessions if "_walked" in one.__dict__]


def taken_up(record: Record, on: date) -> bool:
    """Whether a walk through `record` begins with the slots that were kept."""
    (kept,) = kept_in(record)
    slots = Timeline(History(record, on), on).slots
    return bool(kept.slots) and slots[0] is kept.slots[0]


def test_a_later_review_takes_up_the_walk_and_keeps_one_only():
    record = two_hundred_days()
    for on in (day(120), day(160), day(199)):
        review(known_on(record, on), on)
    assert len(kept_in(record)) == 1
    assert taken_up(record, day(199))


def test_a_walk_is_taken_anew_where_something_early_was_mended():
    record, on = two_hundred_days(), day(199)
    review(record, on)
    assert taken_up(record, on)
    mended = [
        replace(record, sessions=record.sessions[1:]),
        replace(record, bodyweights=(Bodyweight(day(1), 80.0),)),
        replace(record, absences=(Absence("missed", day(6), day(6), day(6)),)),
        replace(record, absences=(Absence("away", day(20), day(20), day(40)),)),
        replace(record, moves=(Move(day(6), day(7), day(8)),)),
        replace(record, pain=(PainAnswer(day(9), "wrist", None, 5.0, "after"),)),
        replace(record, sent=(SentPlan(day(3), 1, 1, "training", ()),)),
        replace(record, orders=(Order("set_rule", day(190), rule="block.loading_weeks", value=3),)),
        replace(record, orders=(Order("deload", day(100), for_date=day(100)),)),
        replace(record, athlete=replace(record.athlete, started_on=day(7))),
        replace(record, athlete=replace(record.athlete, equipment=frozenset({"rings"}))),
    ]
    for changed in mended:
        assert Timeline(History(changed, on), on).slots[0] is not Timeline(History(record, on), on).slots[0]
        review(record, on)
        assert taken_up(record, on)
        assert words(changed, on) == words(anew(changed), on)
        review(record, on)


def test_what_is_late_leaves_the_walk_as_it_was():
    record, on = two_hundred_days(), day(199)
    review(record, on)
    for changed in (
        replace(record, pain=(PainAnswer(on, "wrist", None, 5.0, "after"),)),
        replace(record, absences=(Absence("away", day(195), day(195), None),)),
        replace(record, sessions=record.sessions[:-1]),
    ):
        assert taken_up(changed, on)
