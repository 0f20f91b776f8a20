"""What was said comes back as it was said, until it is withdrawn."""

from dataclasses import fields, replace
from datetime import timedelta

import pytest
import sqlalchemy as sa

from planner import facts as f
from planner.plan import Decision, Reason
from storage import facts, records
from storage.database import run
from storage.fact_forms import BY_FACT, FORMS, set_names
from storage.fact_tables import PerformedSet
from tests.storage.sample import EVERY_FACT, HOUR, NOW, TODAY


def standing(record):
    """Every fact of a record without storage's ids and the roster's tests."""
    named = [field.name for field in fields(f.Record) if field.name != "athlete"]
    all_facts = [fact for name in named for fact in getattr(record, name)]
    return [replace(fact, fact=None) for fact in all_facts if not getattr(fact, "is_test", False)]


def test_the_sample_has_every_kind_of_fact():
    assert {type(fact) for fact in EVERY_FACT} == {form.fact for form in FORMS}


@pytest.mark.parametrize("form", FORMS, ids=lambda form: form.kind)
def test_every_field_of_a_fact_has_a_column(form):
    assert set(form.names) <= set(form.table.c.keys())


def test_every_field_of_a_set_has_a_column():
    assert set(set_names()) <= set(PerformedSet.model_fields)


def test_facts_come_back_as_they_were_said(store, mira):
    with store.transaction() as tx:
        for fact in EVERY_FACT:
            facts.add(tx, mira.id, fact, "athlete", NOW, 1)
    with store.transaction() as tx:
        back = standing(records.record(tx, mira.id))
    assert sorted(back, key=repr) == sorted(EVERY_FACT, key=repr)


@pytest.mark.parametrize("value", [0.45, "chin_up", True, False, None])
def test_an_orders_value_keeps_its_type(memory_mira, value):
    memory, mira = memory_mira
    with memory.transaction() as tx:
        facts.add(tx, mira, f.Order("swap", TODAY, movement="pull_up", value=value), "coach", NOW, None)
        (order,) = records.record(tx, mira).orders
    assert order.value == value
    assert type(order.value) is type(value)


def test_facts_are_in_order_of_day_then_of_arrival(store, mira):
    late, early = f.Bodyweight(TODAY, 62.0), f.Bodyweight(TODAY - timedelta(days=3), 61.0)
    with store.transaction() as tx:
        for fact in (late, early, replace(late, kg=62.5)):
            facts.add(tx, mira.id, fact, "athlete", NOW, 1)
        kilos = [fact.kg for fact in records.record(tx, mira.id).bodyweights]
    assert kilos == [61.0, 62.0, 62.5]


def test_undo_withdraws_all_that_a_message_brought_and_nothing_else(store, mira):
    with store.transaction() as tx:
        facts.add(tx, mira.id, f.Bodyweight(TODAY, 62.0), "athlete", NOW, 7)
        facts.add(tx, mira.id, f.PainAnswer(TODAY, "elbow", None, 3.0, None), "athlete", NOW, 8)
        facts.add(tx, mira.id, EVERY_FACT[0], "athlete", NOW, 8)
        facts.add(tx, mira.id, EVERY_FACT[-1], "bot", NOW, 8)
        assert facts.last_cause(tx, mira.id) == 8
        assert [kind for kind, _ in facts.withdraw_caused_by(tx, mira.id, 8, NOW)] == ["session", "pain"]
        record = records.record(tx, mira.id)
        assert facts.last_cause(tx, mira.id) == 7
    assert (len(record.bodyweights), record.pain, len(record.sent)) == (1, (), 1)
    assert [session.is_test for session in record.sessions] == [True]


def test_undoing_a_correction_brings_the_first_report_back(store, mira):
    first = f.Session(TODAY, (f.WorkSet("pull_up", 5, load_kg=20.0),))
    second = f.Session(TODAY, (f.WorkSet("pull_up", 5, load_kg=22.5),))
    with store.transaction() as tx:
        old = facts.add(tx, mira.id, first, "athlete", NOW, 7)
        new = facts.replace_session(tx, old, second, NOW + HOUR, 8)
        assert [s.sets for s in facts.sessions(tx, mira.id) if not s.is_test] == [second.sets]
        assert facts.withdraw_caused_by(tx, mira.id, 8, NOW + HOUR) == [("session", new)]
        assert [s.sets for s in facts.sessions(tx, mira.id) if not s.is_test] == [first.sets]
        assert facts.last_cause(tx, mira.id) == 7


def test_withdrawing_twice_does_nothing(store, mira):
    with store.transaction() as tx:
        fact = facts.add(tx, mira.id, f.Resume(TODAY), "athlete", NOW, 1)
        assert facts.withdraw(tx, "resume", fact, NOW)
        assert not facts.withdraw(tx, "resume", fact, NOW)


def test_a_clip_is_seen_and_keeps_its_media(store, mira):
    with store.transaction() as tx:
        clip = facts.add(tx, mira.id, f.Clip(TODAY, "pull_up", None, False), "athlete", NOW, 1, media="clip-1")
        records.record(tx, mira.id)
        facts.mark_clip_seen(tx, clip)
        assert run(tx, sa.select(facts.clips.c.media)).scalars().all() == ["clip-1"]
        assert records.record(tx, mira.id).clips[0].seen_by_coach


def test_decisions_stay_with_the_plan_that_carried_them(store, mira):
    decision = Decision(TODAY, "load", "pull_up", (Reason("held", {"load_kg": 12.5, "since": TODAY, "grip": "2027"}),))
    with store.transaction() as tx:
        facts.add_sent(tx, mira.id, EVERY_FACT[-1], NOW, None, (decision,))
        assert facts.decisions_sent(tx, mira.id) == (decision,)


@pytest.mark.parametrize("kind", [form.kind for form in FORMS])
def test_what_a_message_put_aside_stands_again_when_that_is_taken_back(store, mira, kind):
    fact = next(one for one in EVERY_FACT if BY_FACT[type(one)].kind == kind)
    with store.transaction() as tx:
        number = facts.add(tx, mira.id, fact, "athlete", NOW, 1)
        facts.withdraw(tx, kind, number, NOW + HOUR, by=2)
        assert fact not in standing(records.record(tx, mira.id))
    with store.transaction() as tx:
        assert facts.restore(tx, mira.id, 3) == []
        assert facts.restore(tx, mira.id, 2) == [(kind, number)]
        assert fact in standing(records.record(tx, mira.id))
        assert facts.restore(tx, mira.id, 2) == []
