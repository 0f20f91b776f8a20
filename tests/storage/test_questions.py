"""Which questions words can answer: those that stood open when the words were said."""

from datetime import timedelta

from storage import questions
from storage.questions import CLOCKS_APART
from tests.storage.sample import HOUR, NOW


def test_what_lapsed_since_was_open_and_what_was_asked_since_was_not(store, mira):
    with store.transaction() as tx:
        evening = questions.ask(tx, mira, "pain", NOW)
        questions.expire(tx, mira, "pain", NOW + 10 * HOUR)
        morning = questions.ask(tx, mira, "pain", NOW + 10 * HOUR)

        def at(moment):
            return [one.id for one in questions.stood_open(tx, mira, moment, "pain")]

        assert at(NOW - HOUR) == []
        assert at(NOW + HOUR) == [evening]
        assert at(NOW + 11 * HOUR) == [morning]


def test_clocks_may_differ_a_little(store, mira):
    with store.transaction() as tx:
        asked = questions.ask(tx, mira, "pain", NOW)
        assert [one.id for one in questions.stood_open(tx, mira, NOW - CLOCKS_APART)] == [asked]
        assert questions.stood_open(tx, mira, NOW - CLOCKS_APART - timedelta(seconds=1)) == []


def test_what_was_answered_is_open_to_no_other_answer(store, mira):
    with store.transaction() as tx:
        questions.close(tx, questions.ask(tx, mira, "pain", NOW), NOW + HOUR)
        assert questions.stood_open(tx, mira, NOW) == []


def test_what_lapsed_is_told_of_each_who_let_it_lapse(store, mira):
    with store.transaction() as tx:
        first = questions.ask(tx, mira, "open_sets", NOW)
        questions.expire(tx, mira, "open_sets", NOW + HOUR)
        questions.ask(tx, mira, "open_sets", NOW + 2 * HOUR)

        lapsed = questions.lapsed_since(tx, [mira.id, mira.id + 1], "open_sets", NOW)
        assert {who: [one.id for one in found] for who, found in lapsed.items()} == {mira.id: [first]}
        assert questions.lapsed_since(tx, [mira.id], "open_sets", NOW + 2 * HOUR) == {}
