"""What a transaction has read is at hand, and never another thing than the database has."""

import sqlalchemy as sa

from planner.facts import Bodyweight
from storage import chats, due, facts, persons, questions, rules
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
            chats.addresses_of(tx, mira)
            rules.nicknames_of(tx, mira.coach_id)
            questions.open_questions(tx, mira)
            questions.open_question(tx, mira, "pain")
            questions.stood_open(tx, mira, NOW, "pain")
            questions.stood_open(tx, mira, NOW)

        assert selects(store, ask) == 6
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
