from datetime import UTC, date, datetime, time

import pytest

from bot.importing.entries import entries_from_notes
from bot.importing.load import understand, write
from planner.facts import Bodyweight, Weekly
from storage import facts, inbox, persons, records
from storage.persons import Athlete, Coach, Who
from storage.store import Store

NOW = datetime(2027, 1, 4, 12, tzinfo=UTC)
NOTES = """my training log
2024-03-01
pull-ups 5x3 +20kg
felt fine
2024-03-04: bodyweight 71.5
2024-03-05
dips 3x8, left elbow 2/10
2024-03-07
walked the dog
"""


@pytest.fixture
def store():
    opened = Store.open("sqlite://")
    yield opened
    opened.close()


@pytest.fixture
def athlete(store):
    with store.transaction() as tx:
        coach_id = persons.add_coach(tx, Coach(name="Inês", timezone="Europe/Lisbon"))
        row = Athlete(
            coach_id=coach_id,
            handle="mira",
            name="Mira",
            timezone="Europe/Zurich",
            bodyweight_kg=70.0,
            schedule=persons.schedule_to_json(Weekly(frozenset({0, 3}))),
            plan_at=time(7, 30),
            ladders=[["one_arm_pull_up", None]],
            started_on=date(2027, 1, 4),
        )
        return persons.athlete(tx, persons.add_athlete(tx, row))


def read(athlete):
    return understand(entries_from_notes(NOTES, "en"), athlete, (), lambda done, total: None)


def test_notes_become_the_facts_of_their_days(store, athlete):
    with store.transaction() as tx:
        write(tx, athlete, read(athlete), NOW)
        known = records.record(tx, athlete.id)
    assert [(one.on, len(one.sets)) for one in known.sessions] == [(date(2024, 3, 1), 5), (date(2024, 3, 5), 3)]
    assert [(one.on, one.kg) for one in known.bodyweights] == [(date(2024, 3, 4), 71.5)]
    assert [(one.on, one.site, one.score) for one in known.pain] == [(date(2024, 3, 5), "elbow", 2)]


def test_what_says_nothing_of_training_is_counted_and_lines_without_a_day_are_shown(athlete):
    outcome = read(athlete)
    assert [one.entry.on for one in outcome.silent] == [date(2024, 3, 7)]
    assert [stray.text for stray in outcome.strays] == ["my training log"]


def test_a_second_run_writes_nothing_twice(store, athlete):
    with store.transaction() as tx:
        assert write(tx, athlete, read(athlete), NOW) == (3, 0)
        assert write(tx, athlete, read(athlete), NOW) == (0, 3)
        assert len(records.record(tx, athlete.id).sessions) == 2


def test_no_entry_of_a_full_day_is_taken_for_a_flood(store, athlete):
    notes = "\n".join(f"2024-03-01\npull-ups 5x3 +{load}kg" for load in range(1, 25))
    outcome = understand(entries_from_notes(notes, "en"), athlete, (), lambda done, total: None)
    with store.transaction() as tx:
        assert write(tx, athlete, outcome, NOW) == (24, 0)


def test_an_undo_takes_back_what_was_said_and_no_old_note(store, athlete):
    with store.transaction() as tx:
        said = inbox.IncomingUpdate("telegram", "1", "100", "text", "bw 70", NOW, of=Who("athlete", athlete.id))
        inbox.accept(tx, [said], NOW)
        cause = inbox.by_key(tx, "telegram", "1").id
        facts.add(tx, athlete.id, Bodyweight(NOW.date(), 70.0), "athlete", NOW, cause)
        write(tx, athlete, read(athlete), NOW)

        assert facts.last_cause(tx, athlete.id) == cause
