"""What a transaction has read is at hand, and never another thing than the database has."""

import sqlalchemy as sa

from planner.facts import Bodyweight
from storage import chats, due, facts, persons, questions, records, rules
from tests.storage.sample import HOUR, NOW, TODAY


def selects(store, ask):
    """How many statements it takes to ask."""
    seen = []
    listen = lambda *given: seen.append(given[2])  # noqa: E731
    sa.event.listen(store._engine, "before_cursor_execute", listen)
    try:
        ask()
    finally:
        sa.event.remove(store._engine, "before_cursor_execute", listen)
    return sum(statement.startswith("SELECT") for statement in seen)


def test_who_asks_again_is_answered_without_the_database(store, mira):
    with store.transaction() as tx:

        def ask():
            persons.athlete(tx, mira.id)
            persons.coach(tx, mira.coach_id)
            chats.person_at(tx, "terminal", "mira", mira)
            chats.addresses_of(tx, mira)
            chats.addresses_of(tx, mira, blocked=True)
            chats.numbers_of(tx, mira)
            rules.nicknames_of(tx, mira.coach_id)
            questions.stood_open(tx, mira, NOW, "pain")
            questions.stood_open(tx, mira, NOW)
            questions.open_questions(tx, mira)
            questions.open_question(tx, mira, "pain")

        assert selects(store, ask) == 4  # the athlete with their coach, the chats, the nicknames, the questions
        assert selects(store, ask) == 0


def test_another_transaction_asks_the_database(store, mira):
    with store.transaction() as tx:
        persons.athlete(tx, mira.id)
    with store.transaction() as tx:
        assert selects(store, lambda: persons.athlete(tx, mira.id)) == 1


def test_what_is_written_is_seen_at_once(store, mira):
    with store.transaction() as tx:
        assert persons.athlete(tx, mira.id).plate_step == 1.25
        persons.update_athlete(tx, mira.id, {"plate_step": 2.5})
        assert persons.athlete(tx, mira.id).plate_step == 2.5

        assert questions.open_questions(tx, mira) == []
        asked = questions.ask(tx, mira, "pain", NOW)
        assert [one.id for one in questions.open_questions(tx, mira)] == [asked]
        assert [one.id for one in questions.stood_open(tx, mira, NOW)] == [asked]
        questions.close(tx, asked, NOW)
        assert questions.open_question(tx, mira, "pain") is None
        assert questions.stood_open(tx, mira, NOW) == []

        assert rules.nicknames_of(tx, mira.coach_id) == ()
        rules.set_nickname(tx, mira.coach_id, "floaters", "pull_up")
        assert rules.nicknames_of(tx, mira.coach_id) == (("floaters", "pull_up"),)

        before = persons.coach(tx, mira.coach_id).stamp
        persons.touch_coach(tx, mira.coach_id)
        assert persons.coach(tx, mira.coach_id).stamp != before


def test_who_moved_to_another_address_is_not_taken_for_who_was_there(store, mira):
    jonas = persons.Who("athlete", mira.id + 1)
    with store.transaction() as tx:
        chats.bind_chat(tx, "terminal", "mira", jonas, NOW)
        assert chats.person_at(tx, "terminal", "mira", mira).id == jonas.id
        chats.unbind_chat(tx, "terminal", "mira")
        assert chats.person_at(tx, "terminal", "mira", mira) is None


def test_questions_at_hand_are_those_of_the_moment(store, mira):
    """What lapsed after a moment stood open at it, what was asked after it did not; open now is neither of both."""
    with store.transaction() as tx:
        lapsed = questions.ask(tx, mira, "lapsed", NOW - HOUR)
        questions.expire(tx, mira, "lapsed", NOW + HOUR)
        stays = questions.ask(tx, mira, "stays", NOW - HOUR)
        later = questions.ask(tx, mira, "later", NOW + HOUR)
    for asked_first in (True, False):
        with store.transaction() as tx:
            if asked_first:
                questions.open_questions(tx, mira)
            assert [one.id for one in questions.stood_open(tx, mira, NOW)] == [stays, lapsed]
            assert [one.id for one in questions.stood_open(tx, mira, NOW + 2 * HOUR)] == [later, stays]
            assert [one.id for one in questions.open_questions(tx, mira)] == [later, stays]


def test_a_fact_leaves_the_athlete_at_hand_with_the_stamp_that_it_set(store, mira):
    with store.transaction() as tx:
        records.record(tx, mira.id)
        facts.add(tx, mira.id, Bodyweight(TODAY, 70.0), "athlete", NOW, None)
        assert selects(store, lambda: records.record(tx, mira.id)) == 0
        left = persons.athlete(tx, mira.id).stamp
    with store.transaction() as tx:
        assert persons.athlete(tx, mira.id).stamp == left


def test_what_is_to_be_written_later_is_seen_at_once(store, mira):
    with store.transaction() as tx:
        before = persons.athlete(tx, mira.id).stamp
        persons.touch_later(tx, mira.id)
        assert persons.athlete(tx, mira.id).stamp != before


def test_words_of_sql_leave_nothing_at_hand(store, mira):
    with store.transaction() as tx:
        persons.athlete(tx, mira.id)
        facts.run(tx, sa.text("UPDATE athlete SET name = 'Mira the Second'"))
        assert persons.athlete(tx, mira.id).name == "Mira the Second"


def test_a_fact_or_a_moment_forgets_nothing_but_what_it_changes(store, mira):
    with store.transaction() as tx:
        chats.addresses_of(tx, mira)
        facts.add(tx, mira.id, Bodyweight(TODAY, 70.0), "athlete", NOW, None)
        due.schedule(tx, mira, "plan", TODAY, NOW + HOUR)
        assert selects(store, lambda: chats.addresses_of(tx, mira)) == 0
