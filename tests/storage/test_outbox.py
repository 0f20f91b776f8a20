"""The outbox: once a cause, in order within a chat, the important first."""

from datetime import timedelta

import sqlalchemy as sa

from storage import erasure, outbox
from storage.database import run
from storage.outbox import ALERT, PLAN, REPLY, SUMMARY
from tests.storage.sample import HOUR, NOW, message


def post(store, *messages):
    with store.transaction() as tx:
        return [outbox.post(tx, one) for one in messages]


def claim(store, now=NOW, **more):
    with store.transaction() as tx:
        return outbox.claim(tx, now, 10, **more)


def send_all(store, now=NOW):
    causes = []
    while claimed := claim(store, now):
        for row in claimed:
            causes.append(row.cause)
            with store.transaction() as tx:
                outbox.mark_sent(tx, row.id, now, "77")
    return causes


def given_up(tx):
    query = sa.select(outbox.outgoing).where(outbox.outgoing.c.given_up_at.is_not(None))
    return [(row.cause, row.given_up_because) for row in run(tx, query)]


def test_one_cause_and_part_is_one_message(store, mira):
    first, again, other = post(store, message("a"), message("a"), message("a", part=1))
    assert first is not None
    assert again is None
    assert other is not None


def test_the_important_go_first_and_then_the_older(store, mira):
    kinds = {"summary": SUMMARY, "plan": PLAN, "reply": REPLY, "reply 2": REPLY, "alert": ALERT}
    post(store, *(message(cause, importance=importance) for cause, importance in kinds.items()))
    assert send_all(store) == ["alert", "reply", "reply 2", "plan", "summary"]


def test_a_claim_takes_one_message_a_chat(store, mira):
    post(store, message("a"), message("b"), message("c", "jonas"))
    assert [row.cause for row in claim(store)] == ["a", "c"]
    assert claim(store) == []


def test_a_claim_left_by_a_dead_process_can_be_taken_again(store, mira):
    post(store, message("a"))
    claim(store)
    assert claim(store, NOW + outbox.LEASE - timedelta(seconds=1)) == []
    assert [row.cause for row in claim(store, NOW + outbox.LEASE)] == ["a"]


def test_a_deferred_message_holds_back_its_chat_but_not_an_alert(store, mira):
    post(store, message("a"), message("b"))
    (row,) = claim(store)
    with store.transaction() as tx:
        outbox.defer(tx, row.id, NOW + HOUR)
    assert claim(store) == []
    post(store, message("alert", importance=ALERT))
    assert send_all(store) == ["alert"]
    assert send_all(store, NOW + HOUR) == ["a", "b"]


def test_nothing_goes_before_it_is_due(store, mira):
    post(store, message("later", due_at=NOW + HOUR), message("now"))
    assert send_all(store) == ["now"]
    with store.transaction() as tx:
        assert outbox.next_open_at(tx) == NOW + HOUR


def test_yesterdays_plan_is_dropped_and_a_claimed_one_is_not(store, mira):
    post(store, message("old", stale_after=NOW), message("claimed", "jonas", stale_after=NOW + HOUR))
    with store.transaction() as tx:
        assert outbox.drop_stale(tx, NOW) == [("terminal", "mira")]
    claim(store, NOW + HOUR)
    with store.transaction() as tx:
        assert outbox.drop_stale(tx, NOW + HOUR) == []
        assert given_up(tx) == [("old", "stale")]


def test_what_was_given_up_is_not_sent_and_says_why(store, mira):
    post(store, message("a"), message("b"))
    (row,) = claim(store)
    with store.transaction() as tx:
        outbox.give_up(tx, row.id, "blocked", NOW)
        assert given_up(tx) == [("a", "blocked")]
    assert send_all(store) == ["b"]


def test_only_the_named_channels_messages_are_claimed(store, mira):
    post(store, message("a"))
    assert claim(store, channel="telegram") == []
    assert len(claim(store, channel="terminal")) == 1


def test_a_message_knows_whose_it_is_and_whom_it_is_about(store, mira):
    post(store, message("a"), message("b", "coach", about="mira"))
    rows = claim(store)
    assert [(row.athlete_id, row.coach_id) for row in rows] == [(mira.id, None), (mira.id, mira.coach_id)]


def test_the_newest_message_with_buttons_is_found_first(store, mira):
    post(store, message("a", buttons=[["Approve", "approve:1"]]), message("b"), message("c", buttons=[["Hold", "h"]]))
    send_all(store)
    with store.transaction() as tx:
        assert [row.cause for row in outbox.with_button(tx, "terminal", "mira")] == ["c", "a"]


def test_what_is_owed_goes_to_the_chats_new_address(store, mira):
    post(store, message("a"), message("b"))
    (first,) = claim(store)
    with store.transaction() as tx:
        outbox.mark_sent(tx, first.id, NOW)
        outbox.readdress(tx, "terminal", "mira", "mira 2")
    assert [row.address for row in claim(store)] == ["mira 2"]


def test_a_send_that_ends_after_an_erasure_marks_nobody_elses_message(store, mira):
    post(store, message("hers"))
    (under_way,) = claim(store)
    with store.transaction() as tx:
        erasure.erase(tx, mira.id, NOW)
    post(store, message("his", "jonas"))
    with store.transaction() as tx:
        outbox.mark_sent(tx, under_way.id, NOW)
    assert send_all(store) == ["his"]
