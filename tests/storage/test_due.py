"""Due rows: one a person, kind and day, handled once."""

from datetime import timedelta

from storage import due
from storage.persons import Who
from tests.storage.sample import HOUR, NOW, TODAY


def test_scheduling_again_moves_an_open_row_and_leaves_a_done_one(store, mira):
    with store.transaction() as tx:
        due.schedule(tx, mira, "plan", TODAY, NOW)
        due.schedule(tx, mira, "plan", TODAY, NOW + HOUR)
        assert due.due_now(tx, NOW) == []
        (row,) = due.due_now(tx, NOW + HOUR)
        due.finish(tx, row.id, NOW + HOUR)
        due.schedule(tx, mira, "plan", TODAY, NOW)
        assert due.due_now(tx, NOW + HOUR) == []
        assert due.next_due_at(tx) is None


def test_rows_come_in_order_of_their_moment(store, mira):
    coach = Who("coach", mira.coach_id)
    with store.transaction() as tx:
        due.schedule(tx, mira, "check", TODAY, NOW)
        due.schedule(tx, coach, "summary", TODAY, NOW - 2 * HOUR)
        due.schedule(tx, mira, "plan", TODAY, NOW - HOUR)
        assert [(row.kind, row.who) for row in due.due_now(tx, NOW)] == [
            ("summary", coach),
            ("plan", Who("athlete", mira.id)),
            ("check", Who("athlete", mira.id)),
        ]
        assert due.next_due_at(tx) == NOW - 2 * HOUR
        assert len(due.due_now(tx, NOW, limit=2)) == 2


def test_taking_a_row_that_was_done_or_moved_gives_nothing(store, mira):
    with store.transaction() as tx:
        due.schedule(tx, mira, "plan", TODAY, NOW)
        due.schedule(tx, mira, "check", TODAY, NOW)
        plan, check = due.due_now(tx, NOW)
        assert due.take(tx, plan.id, NOW).kind == "plan"
        due.finish(tx, plan.id, NOW)
        due.schedule(tx, mira, "check", TODAY, NOW + HOUR)
        assert due.take(tx, plan.id, NOW) is None
        assert due.take(tx, check.id, NOW) is None


def test_cancelling_takes_the_kind_and_day_that_are_named(store, mira):
    tomorrow = TODAY + timedelta(days=1)
    with store.transaction() as tx:
        for kind, day in (("plan", TODAY), ("plan", tomorrow), ("check", TODAY)):
            due.schedule(tx, mira, kind, day, NOW)
        assert due.cancel(tx, mira, "plan", tomorrow) == 1
        assert due.cancel(tx, Who("coach", mira.coach_id)) == 0
        assert [row.kind for row in due.open_for(tx, mira)] == ["plan", "check"]
        assert due.cancel(tx, mira) == 2


def test_a_row_that_keeps_failing_is_given_up_and_meanwhile_waits(store, mira):
    with store.transaction() as tx:
        due.schedule(tx, mira, "plan", TODAY, NOW)
        (row,) = due.due_now(tx, NOW)
        answers = [due.note_failure(tx, row.id, "RuntimeError", NOW) for _ in range(4)]
        assert due.due_now(tx, NOW + timedelta(seconds=539)) == []
        assert len(due.due_now(tx, NOW + timedelta(seconds=540))) == 1
        answers.append(due.note_failure(tx, row.id, "RuntimeError", NOW))
        assert answers == [False, False, False, False, True]
        assert due.next_due_at(tx) is None


def test_several_rows_are_taken_and_finished_at_once_without_those_that_moved(store, mira):
    coach = Who("coach", mira.coach_id)
    with store.transaction() as tx:
        for who, kind in ((mira, "plan"), (mira, "check"), (coach, "summary")):
            due.schedule(tx, who, kind, TODAY, NOW)
        ids = [row.id for row in due.due_now(tx, NOW)]
        due.schedule(tx, mira, "check", TODAY, NOW + HOUR)
    with store.transaction() as tx:
        taken = due.take_all(tx, ids, NOW)
        assert [row.kind for row in taken] == ["plan", "summary"]
        due.finish_all(tx, [row.id for row in taken], NOW)
        assert due.take_all(tx, ids, NOW) == []
        assert [row.kind for row in due.due_now(tx, NOW + HOUR)] == ["check"]
