"""People, where they are reached, and how they join."""

import string
from dataclasses import replace
from datetime import time, timedelta

import pytest
import sqlalchemy as sa

from planner.facts import Cycle, Weekly
from storage import chats, facts, invites, loading, notes, persons, questions, records, rules
from storage.database import run
from storage.errors import NoSuchPerson
from storage.roster import RosterTest
from tests.storage.sample import HOUR, NOW, TODAY, small_roster


def test_a_roster_comes_back_as_the_planner_wants_it(store, mira):
    with store.transaction() as tx:
        record = records.record(tx, mira.id)
    assert record.athlete.ladders == (("one_arm_pull_up", "weighted_pull_up"),)
    assert record.athlete.schedule == Weekly(frozenset({0, 3}))
    assert (record.athlete.started_on, record.athlete.screened) == (TODAY, True)
    (test,) = record.sessions
    assert (test.is_test, test.sets[0].load_kg, test.sets[0].rpe) == (True, 15.0, 9.0)


def test_loading_a_roster_again_changes_settings_and_doubles_nothing(store, mira):
    roster = small_roster("mira", "lena")
    changed = replace(roster.athletes[0], plate_step=2.5, schedule=Cycle(8, frozenset({1, 3}), TODAY))
    with store.transaction() as tx:
        loaded = loading.load_roster(tx, replace(roster, athletes=(changed, roster.athletes[1])), NOW + 48 * HOUR)
        record = records.record(tx, mira.id)
        everyone = [row.handle for row in persons.athletes_of(tx, mira.coach_id)]
    assert (loaded.coach_added, loaded.added, loaded.absent) == (False, ("lena",), ("jonas",))
    assert loaded.athlete_ids["mira"] == mira.id
    assert (record.athlete.plate_step, record.athlete.started_on, len(record.sessions)) == (2.5, TODAY, 1)
    assert record.athlete.schedule == Cycle(8, frozenset({1, 3}), TODAY)
    assert everyone == ["jonas", "lena", "mira"]


def test_what_athletes_set_for_themselves_stays_until_the_roster_says_something_else(store, mira):
    roster = small_roster("mira", "jonas")

    def loaded_with(**settings):
        with store.transaction() as tx:
            entries = (replace(roster.athletes[0], **settings), roster.athletes[1])
            loaded = loading.load_roster(tx, replace(roster, athletes=entries), NOW)
            row = persons.athlete(tx, mira.id)
        return row.unit, row.plan_at, loaded.own.get("mira", {}), mira.id in loaded.moved

    with store.transaction() as tx:
        persons.update_athlete(tx, mira.id, {"unit": "lb", "plan_at": time(9)})

    both = {"unit": "lb", "plan_at": time(9)}
    assert loaded_with() == ("lb", time(9), both, False)
    assert loaded_with(plate_step=2.5) == ("lb", time(9), both, False)
    assert loaded_with(plan_at=time(6)) == ("lb", time(6), {"unit": "lb"}, True)
    assert loaded_with(plan_at=time(6), unit="lb") == ("lb", time(6), {}, False)
    assert loaded_with(plan_at=time(6)) == ("kg", time(6), {}, False)


def test_where_nobody_noted_what_the_roster_said_it_has_its_way(store, mira):
    with store.transaction() as tx:
        persons.update_athlete(tx, mira.id, {"unit": "lb", "roster_said": None})
        loading.load_roster(tx, small_roster("mira"), NOW)
        assert persons.athlete(tx, mira.id).unit == "kg"


def test_tests_of_two_days_are_two_sessions(memory):
    roster = small_roster("mira")
    tests = (RosterTest(TODAY, "pull_up", 5), RosterTest(TODAY - timedelta(days=9), "chin_up", 6))
    with memory.transaction() as tx:
        entry = replace(roster.athletes[0], tests=tests)
        loaded = loading.load_roster(tx, replace(roster, athletes=(entry,)), NOW)
        sessions = facts.sessions(tx, loaded.athlete_ids["mira"])
    assert [session.sets[0].movement for session in sessions] == ["chin_up", "pull_up"]


def test_a_handle_is_found_whatever_its_case(store, mira):
    with store.transaction() as tx:
        assert persons.athlete_by_handle(tx, mira.coach_id, "Mira").id == mira.id
        assert persons.athlete_by_handle(tx, mira.coach_id, "nobody") is None


def test_an_address_belongs_to_one_person(store, mira):
    with store.transaction() as tx:
        assert chats.person_at(tx, "terminal", "mira") == mira
        assert chats.person_at(tx, "terminal", "stranger") is None
        coach = chats.person_at(tx, "terminal", "coach")
        assert (coach.role, coach.handle, coach.id) == ("coach", "coach", mira.coach_id)
        chats.bind_chat(tx, "terminal", "mira", coach, NOW)
        assert chats.person_at(tx, "terminal", "mira") == coach


def test_a_blocked_address_is_not_written_to(store, mira):
    with store.transaction() as tx:
        chats.bind_chat(tx, "telegram", "900719925474099", mira, NOW + HOUR)
        assert chats.addresses_of(tx, mira) == [("telegram", "900719925474099"), ("terminal", "mira")]
        chats.set_blocked(tx, "telegram", "900719925474099", True)
        assert chats.addresses_of(tx, mira) == [("terminal", "mira")]
        chats.move_chat(tx, "terminal", "mira", "mira 2", NOW)
        assert chats.addresses_of(tx, mira) == [("terminal", "mira 2")]


def test_an_unknown_athlete_is_an_error_that_says_so(memory):
    with memory.transaction() as tx, pytest.raises(NoSuchPerson):
        records.record(tx, 99)


def join(store, code, address="new", now=NOW):
    with store.transaction() as tx:
        return invites.redeem(tx, code, "telegram", address, now)


def invite(store, who):
    with store.transaction() as tx:
        return invites.new_invite(tx, who, NOW)


def test_a_code_works_once_and_its_own_address_may_repeat_it(store, mira):
    code = invite(store, mira)
    assert join(store, code) == mira
    assert join(store, code) == mira
    assert join(store, code, "other") is None


def test_a_code_fits_in_a_deep_link(store, mira):
    # Telegram: at most 64 characters of A-Z, a-z, 0-9, _ and -.
    code = invite(store, mira)
    assert len(code) <= 64
    assert set(code) <= set(string.ascii_letters + string.digits + "_-")


def test_a_code_lapses_after_30_days_or_when_another_is_made(store, mira):
    first = invite(store, mira)
    second = invite(store, mira)
    assert join(store, first) is None
    assert join(store, second, now=NOW + timedelta(days=30)) is None
    assert join(store, second, now=NOW + timedelta(days=29)) == mira


def test_who_tries_ten_wrong_codes_waits_a_day(store, mira):
    code = invite(store, mira)
    for _ in range(invites.TRIES_A_DAY):
        assert join(store, "wrong") is None
    assert join(store, code) is None
    assert join(store, code, now=NOW + timedelta(days=1)) == mira


def test_the_code_itself_is_not_in_the_database(memory_mira):
    memory, mira = memory_mira
    with memory.transaction() as tx:
        code = invites.new_invite(tx, persons.person_of(persons.athlete(tx, mira)), NOW)
        dump = "\n".join(tx.connection().connection.driver_connection.iterdump())
    assert "invite" in dump
    assert code not in dump


def test_one_open_ask_a_person_and_as_many_others_as_there_are(store, mira):
    with store.transaction() as tx:
        questions.ask(tx, mira, "pain", NOW)
        questions.ask(tx, mira, "ask", NOW, text="20?", about="load_kg", span="20")
        last = questions.ask(tx, mira, "ask", NOW, text="8?", about="rpe", span="8", data={"sets": [1]})
        assert [row.kind for row in questions.open_questions(tx, mira)] == ["ask", "pain"]
        found = questions.open_question(tx, mira, "ask")
        assert (found.id, found.about, found.span, found.data) == (last, "rpe", "8", {"sets": [1]})
        questions.close(tx, last, NOW)
        assert questions.open_question(tx, mira).kind == "pain"
        assert questions.expire(tx, mira, None, NOW) == 1
        assert questions.open_question(tx, mira) is None


def test_words_to_the_athlete_answer_what_waits(store, mira):
    with store.transaction() as tx:
        notes.add_note(tx, mira.id, "Films from the wrong side.", NOW)
        notes.pass_on(tx, mira.id, "to_coach", "May I swim?", NOW, cause=3)
        assert [row.text for row in notes.unanswered(tx, [mira.id])[mira.id]] == ["May I swim?"]
        notes.pass_on(tx, mira.id, "to_athlete", "Yes.", NOW)
        assert notes.unanswered(tx, [mira.id]) == {}
        assert [row.text for row in run(tx, sa.select(notes.passed))] == ["May I swim?", "Yes."]
        assert [row.text for row in notes.notes_of(tx, mira.id)] == ["Films from the wrong side."]


def test_a_nickname_is_kept_in_lower_case_and_can_be_dropped(store, mira):
    with store.transaction() as tx:
        rules.set_nickname(tx, mira.coach_id, "Rainbows ", "archer_pull_up")
        rules.set_nickname(tx, mira.coach_id, "rainbows", "archer_ring_elbow")
        assert rules.nicknames_of(tx, mira.coach_id) == (("rainbows", "archer_ring_elbow"),)
        rules.set_nickname(tx, mira.coach_id, "rainbows", None)
        assert rules.nicknames_of(tx, mira.coach_id) == ()
