from datetime import UTC, date, datetime, time, timedelta

import pytest

from bot.importing.entries import entries_from_notes
from bot.importing.load import understand, write
from bot.importing.preview import MOST_DAYS, told
from bot.importing.table import entries_from_table
from bot.wording import wording_for
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
    return understand(entries_from_notes(NOTES, "en"), athlete, (), lambda done, total: None, NOW)


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
    outcome = understand(entries_from_notes(notes, "en"), athlete, (), lambda done, total: None, NOW)
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


def left_out(notes, athlete, order="DMY"):
    entries = list(entries_from_notes(notes, "en", order))
    outcome = understand(entries, athlete, (), lambda done, total: None, NOW)
    return outcome, [(one.line, one.why) for one in outcome.left_out]


def test_a_day_that_is_still_to_come_is_left_out_by_its_lines(athlete):
    outcome, left = left_out("2027-01-04\npull-ups 4x4 +20\n2027-01-05\n\npull-ups 4x4 +20\ndips 3x8\n", athlete)
    assert [one.entry.on for one in outcome.understood] == [date(2027, 1, 4)]
    assert left == [(5, "future"), (6, "future")]


def test_what_is_not_read_is_named_by_the_line_it_stands_in(athlete):
    notes = (
        "2024-03-01\npull-ups 4x4 +20kg\npull-ups 4x4 20\n2024-03-05: dips 3x8\ngobbledigook foo 12\n\n"
        "archers 3x2\nfelt fine\n"
    )
    _, left = left_out(notes, athlete)
    assert left == [(3, "doubt"), (5, "nothing"), (7, "doubt")]


def test_an_effort_that_may_be_a_load_is_not_written_before_anybody_said_which(athlete):
    outcome, left = left_out("2024-03-01\npull-ups 4x4 @8\n", athlete)
    assert all(one.rpe is None for day in outcome.understood for session in day.sessions for one in session.sets)
    assert left == [(2, "doubt")]


def test_a_row_with_a_cell_that_is_no_number_is_left_out_alone_and_a_decimal_comma_is_read(athlete):
    table = 'Day,Exercise,Sets,Reps,Load,RPE\n2026-11-09,Pull-up,5,abc,17.5,8\n2026-11-09,Pull-up,4,4,"15,5","8,5"\n'
    columns = {"date": "Day", "movement": "Exercise", "sets": "Sets", "reps": "Reps", "load": "Load", "rpe": "RPE"}
    entries = entries_from_table(table, columns, "kg", "en")
    outcome = understand(entries, athlete, (), lambda done, total: None, NOW)
    sets = [one for day in outcome.understood for session in day.sessions for one in session.sets]
    assert [(one.reps, one.load_kg) for one in sets] == [(4, 15.5)] * 4
    assert sets[-1].rpe == 8.5
    assert [(one.line, one.why, one.text) for one in outcome.left_out] == [(2, "cell", "abc")]


def test_the_preview_shows_each_day_in_words_and_counts_the_rest(athlete):
    days = [date(2024, 3, 1) + timedelta(days=day) for day in range(MOST_DAYS + 5)]
    notes = "\n".join(f"{day}\npull-ups 5x3 +20kg, left elbow 2/10" for day in days)
    entries = list(entries_from_notes(notes, "en"))
    outcome = understand(entries, athlete, (), lambda done, total: None, NOW)
    lines = told(outcome, entries, "DMY", wording_for("en"))
    assert lines[1:4] == ["Friday 1 March 2024 (line 1)", "  pull-ups 5×3 +20 kg", "  Pain: left elbow 2/10"]
    assert sum("pull-ups" in line for line in lines) == MOST_DAYS
    assert "5 more days with 25 sets" in lines[-1]


@pytest.mark.parametrize("language", ["en", "de", "es"])
def test_the_preview_has_a_sentence_for_every_reason(athlete, language):
    notes = (
        "log\n2026-11-04: dips 3x8\npull-ups 4x4 20\n2026-11-05\ndips 3x8\n\ngobbledigook foo 12\n11/9\n"
        "dips 4x8\n2026-11-10\ndips 3x8\nFlobber 4x4 +10kg rpe 9\n2026-11-31\n"
        "11/20/2026\n12/11/2026\ndips 5x8\n2030-01-01: dips 3x8\n"
    )
    entries = list(entries_from_notes(notes, "en"))
    outcome = understand(entries, athlete, (), lambda done, total: None, NOW)
    whys = {one.why for one in outcome.left_out}
    assert whys == {"no-date", "doubt", "nothing", "two-days", "unread", "no-day", "other-order", "future"}
    shown = "\n".join(told(outcome, entries, "DMY", wording_for(language)))
    assert "--month-first" in shown
    assert "load_kg" not in shown
