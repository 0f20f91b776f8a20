"""The inbox: each update once, each person's in order, what keeps failing set aside."""

from concurrent.futures import ThreadPoolExecutor, wait
from datetime import timedelta

import pytest

from storage import health, inbox, invites
from tests.storage.sample import NOW, update


def take_all(store, now=NOW):
    texts = []
    while True:
        with store.transaction() as tx:
            row = inbox.next_unhandled(tx, now)
            if row is None:
                return texts
            inbox.mark_handled(tx, row.id, now)
            texts.append(row.update_key)


def accept(store, *updates):
    with store.transaction() as tx:
        return inbox.accept(tx, updates, NOW)


def test_an_update_delivered_again_counts_once(store, mira):
    assert accept(store, update(1), update(2), update(2)) == 2
    assert accept(store, update(2), update(3)) == 1
    assert take_all(store) == ["1", "2", "3"]


def test_more_updates_than_a_statement_holds(store, mira):
    assert accept(store, *(update(key) for key in range(450))) == 450


def test_a_failed_row_holds_back_its_sender_and_nobody_else(store, mira):
    accept(store, update(1), update(2), update(3, "jonas"))
    with store.transaction() as tx:
        row = inbox.next_unhandled(tx, NOW)
    for _ in range(2):
        with store.transaction() as tx:
            assert not inbox.note_failure(tx, row.id, "RuntimeError", NOW)
    assert take_all(store) == ["3"]
    assert take_all(store, NOW + timedelta(seconds=2)) == ["1", "2"]


def test_the_fifth_failure_sets_a_row_aside_and_the_next_goes_on(store, mira):
    accept(store, update(1), update(2))
    with store.transaction() as tx:
        row = inbox.next_unhandled(tx, NOW)
    answers = []
    for _ in range(5):
        with store.transaction() as tx:
            answers.append(inbox.note_failure(tx, row.id, "RuntimeError", NOW))
    assert answers == [False, False, False, False, True]
    assert take_all(store) == ["2"]
    with store.transaction() as tx:
        assert [row.set_aside_because for row in inbox.set_aside(tx)] == ["RuntimeError"]
        inbox.keep_aside(tx, "terminal", "3", "unreadable: no chat", NOW)
        seen = health.look(tx, NOW)
        assert (seen.set_aside, seen.unreadable) == (1, 1)
        assert inbox.retry(tx) == 1
        assert inbox.retry(tx) == 0
    assert take_all(store) == ["1"]


def test_what_a_stranger_wrote_before_joining_stays_before_what_they_write_after(store, mira):
    accept(store, update(1, "new", "/start CODE"), update(2, "new"))
    with store.transaction() as tx:
        code = invites.new_invite(tx, mira, NOW)
    with store.transaction() as tx:
        first = inbox.next_unhandled(tx, NOW)
        invites.redeem(tx, code, "terminal", "new", NOW)
        inbox.mark_handled(tx, first.id, NOW)
    accept(store, update(3, "new"))
    with store.transaction() as tx:
        second = inbox.next_unhandled(tx, NOW)
    assert (second.update_key, second.athlete_id, second.sender) == ("2", mira.id, f"athlete:{mira.id}")
    assert take_all(store) == ["2", "3"]


def test_a_row_is_found_by_the_services_number(store, mira):
    accept(store, update(1), update(2, text="second"))
    with store.transaction() as tx:
        assert inbox.by_key(tx, "terminal", "2").text == "second"
        assert inbox.by_key(tx, "telegram", "2") is None


def test_what_comes_in_while_a_stranger_joins_is_theirs(store, mira):
    if store.path is not None:
        pytest.skip("SQLite has one writer: nothing comes in meanwhile")
    accept(store, update(1, "new", "/start CODE"))
    with store.transaction() as tx:
        code = invites.new_invite(tx, mira, NOW)
    with ThreadPoolExecutor(1) as beside:
        with store.transaction() as tx:
            first = inbox.next_unhandled(tx, NOW)
            invites.redeem(tx, code, "terminal", "new", NOW)
            inbox.mark_handled(tx, first.id, NOW)
            coming = beside.submit(accept, store, update(2, "new"))
            wait([coming], timeout=0.5)
        coming.result()
    with store.transaction() as tx:
        second = inbox.next_unhandled(tx, NOW)
    assert (second.update_key, second.athlete_id, second.sender) == ("2", mira.id, f"athlete:{mira.id}")
