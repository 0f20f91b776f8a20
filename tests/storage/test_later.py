"""What is written together and read together is seen as if it had been done one by one."""

import pytest

from planner.facts import SentPlan
from storage import chats, due, facts, outbox, records
from tests.storage.sample import HOUR, NOW, TODAY


def letter(athlete_id, cause, address="mira-chat"):
    return {
        "channel": "phone",
        "address": address,
        "to": "mira",
        "athlete_id": athlete_id,
        "text": "words",
        "cause": cause,
        "due_at": NOW,
    }


def test_what_is_owed_is_seen_by_the_next_query_and_goes_once(store, mira):
    with store.transaction() as tx:
        outbox.owe(tx, letter(mira.id, "due:1"))
        outbox.owe(tx, letter(mira.id, "due:1"))
        outbox.owe(tx, letter(mira.id, "due:2", "other-chat"))
        assert [row.cause for row in outbox.claim(tx, NOW, 10)] == ["due:1", "due:2"]


def test_what_is_owed_last_is_written_with_the_end_of_the_transaction(store, mira):
    with store.transaction() as tx:
        due.schedule(tx, mira, "plan", TODAY, NOW)
        outbox.owe(tx, letter(mira.id, "due:1"))
    with store.transaction() as tx:
        assert [row.kind for row in due.due_now(tx, NOW)] == ["plan"]
        assert len(outbox.claim(tx, NOW, 10)) == 1


def test_a_transaction_that_fails_writes_nothing_of_what_it_owed(store, mira):
    def stumble():
        with store.transaction() as tx:
            outbox.owe(tx, letter(mira.id, "due:1"))
            raise ZeroDivisionError

    with pytest.raises(ZeroDivisionError):
        stumble()
    with store.transaction() as tx:
        assert outbox.claim(tx, NOW, 10) == []


def test_a_plan_that_was_sent_is_in_the_record_read_next(store, mira):
    with store.transaction() as tx:
        assert records.record(tx, mira.id).sent == ()
        facts.add_sent(tx, mira.id, SentPlan(TODAY, 1, 1, "training", ()), NOW, None, ())
        assert [one.on for one in records.record(tx, mira.id).sent] == [TODAY]
    with store.reading() as tx:
        assert [one.on for one in records.record(tx, mira.id).sent] == [TODAY]


def test_addresses_at_hand_are_those_of_the_database(store, mira):
    def known(tx):
        return [address for channel, address in chats.addresses_of(tx, mira) if channel == "phone"]

    with store.transaction() as tx:
        chats.bind_chat(tx, "phone", "old", mira, NOW + HOUR)
        chats.have_at_hand(tx, [mira.id])
        assert known(tx) == ["old"]
        chats.bind_chat(tx, "phone", "new", mira, NOW + 2 * HOUR)
        assert known(tx) == ["new", "old"]
        chats.have_at_hand(tx, [mira.id])
        chats.set_blocked(tx, "phone", "new", True)
        assert known(tx) == ["old"]


def test_a_transaction_that_ended_holds_no_record(store, mira):
    with store.transaction() as tx:
        records.record(tx, mira.id)
        tx.info["held"] = [tx]
    assert tx.info == {}
