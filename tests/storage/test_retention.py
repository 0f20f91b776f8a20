"""After the days that were set no words are left but those that somebody still waits for."""

from dataclasses import replace
from datetime import timedelta

import sqlalchemy as sa

from storage import due, inbox, invites, notes, outbox, questions, retention
from storage.database import run
from tests.storage.sample import NOW, message, update

YEAR = timedelta(days=365)


def words(store):
    with store.transaction() as tx:
        return sorted(
            row.text
            for table in (inbox.incoming, outbox.outgoing, questions.questions, notes.passed)
            for row in run(tx, sa.select(table))
            if row.text
        )


def test_what_is_over_is_emptied_and_what_waits_stays(store, mira):
    with store.transaction() as tx:
        inbox.accept(tx, [update(1, text="handled"), update(2, text="open")], NOW)
        inbox.mark_handled(tx, 1, NOW)
        sent = outbox.post(tx, message("a", text="sent", picture=b"x", picture_alt="drawn", plan={"a": 1}))
        gone = outbox.post(tx, message("b", text="given up"))
        outbox.post(tx, message("c", text="owed"))
        outbox.mark_sent(tx, sent, NOW)
        outbox.give_up(tx, gone, "gone", NOW)
        for kind in ("answered", "asked"):
            questions.ask(tx, mira, kind, NOW, text=kind, span="x", data={"w": kind})
        questions.close(tx, questions.open_question(tx, mira, "answered").id, NOW)
        notes.pass_on(tx, mira.id, "to_coach", "heard", NOW)
        notes.pass_on(tx, mira.id, "to_athlete", "said", NOW)
        notes.pass_on(tx, mira.id, "to_coach", "waits", NOW)
    everything = ["answered", "asked", "given up", "handled", "heard", "open", "owed", "said", "sent", "waits"]

    with store.transaction() as tx:
        assert retention.let_go_of_words(tx, NOW) == 0
    assert words(store) == everything
    with store.transaction() as tx:
        assert retention.let_go_of_words(tx, NOW + YEAR) == 6
        assert retention.let_go_of_words(tx, NOW + YEAR) == 0
        row = run(tx, sa.select(outbox.outgoing).where(outbox.outgoing.c.id == sent)).one()
    assert words(store) == ["asked", "open", "owed", "waits"]
    assert (row.picture, row.picture_alt, row.plan, row.sent_at) == (None, None, None, NOW)


def test_many_are_emptied_some_at_a_time_and_the_rest_when_all_messages_are(store, mira):
    with store.transaction() as tx:
        inbox.accept(tx, [update(n) for n in range(5)], NOW)
        for n in range(5):
            inbox.mark_handled(tx, n + 1, NOW)
            outbox.mark_sent(tx, outbox.post(tx, message(f"m{n}")), NOW)
        questions.ask(tx, mira, "answered", NOW, text="asked")
        questions.close(tx, questions.open_question(tx, mira, "answered").id, NOW)
    left = []
    for _ in range(4):
        with store.transaction() as tx:
            left.append(retention.let_go_of_words(tx, NOW + YEAR, most=2))
    assert left == [4, 4, 3, 0]
    assert words(store) == []


def rows(store, *tables):
    with store.reading() as tx:
        return [run(tx, sa.select(sa.func.count()).select_from(one)).scalar() for one in tables]


def test_what_is_done_answered_and_tried_is_deleted_after_its_days(store, mira):
    tables = (due.dues, questions.questions, invites.invites, invites.invite_tries)
    with store.transaction() as tx:
        for n in range(5):
            due.schedule(tx, mira, "plan", NOW.date() + timedelta(n), NOW)
            questions.ask(tx, mira, f"kind {n}", NOW)
            invites.redeem(tx, "wrong", "phone", f"stranger {n}", NOW)
        due.finish_all(tx, [row.id for row in due.due_now(tx, NOW)][:4], NOW)
        for n in range(4):
            questions.close(tx, questions.open_question(tx, mira, f"kind {n}").id, NOW)
        invites.redeem(tx, invites.new_invite(tx, mira, NOW), "phone", "mira", NOW)
        invites.new_invite(tx, mira, NOW + YEAR)
    assert rows(store, *tables) == [5, 5, 2, 5]

    def tidied(days, most=100):
        with store.transaction() as tx:
            return retention.tidy(tx, NOW + timedelta(days=days), retention.Keep(done=90, codes=30), most)

    assert tidied(30)
    assert rows(store, *tables) == [5, 5, 2, 5]
    assert tidied(31)
    assert rows(store, *tables) == [5, 5, 1, 0]
    assert not tidied(91, most=2)
    assert rows(store, *tables) == [3, 3, 1, 0]
    assert not tidied(91, most=2)
    assert tidied(91, most=2)
    assert rows(store, *tables) == [1, 1, 1, 0]


def test_what_was_emptied_is_not_read_again(store):
    asked = []
    with store.transaction() as tx:
        connection = tx.connection()
        sqlite = connection.dialect.name == "sqlite"
        if not sqlite:
            run(tx, sa.text("SET LOCAL enable_seqscan = off"))  # so few rows are read whole else
        sa.event.listen(connection, "before_cursor_execute", lambda *given: asked.append(given[2:4]))
        retention.let_go_of_words(tx, NOW)
        explain = "EXPLAIN QUERY PLAN " if sqlite else "EXPLAIN "
        ways = [repr(connection.exec_driver_sql(explain + how, given).all()) for how, given in tuple(asked[:2])]
    assert "ix_incoming_whole" in ways[0]
    assert "ix_outgoing_whole" in ways[1]


def test_presses_clips_and_questions_without_words_are_emptied_as_well(store, mira):
    with store.transaction() as tx:
        press = replace(update(1, "quillback"), kind="press", text="", data={"data": "quillback"})
        clip = replace(update(2), kind="clip", text="", data={"media": "quillback"})
        inbox.accept(tx, [press, clip, update(3, text="quillback")], NOW)  # the press of a stranger
        for row in (1, 2, 3):
            inbox.mark_handled(tx, row, NOW)
        sent = message("stranger:terminal:quillback:9", "quillback", buttons=[["7", "quillback"]], media="quillback")
        again = message("stranger:terminal:quillback:10", "quillback", document_name="quillback")
        alert = message("alert:1:quill:back", "quillback")
        for row in (sent, again, alert):
            outbox.mark_sent(tx, outbox.post(tx, row), NOW)
        questions.ask(tx, mira, "pain", NOW, data={"site": "quillback"})
        questions.expire(tx, mira, "pain", NOW)

    with store.transaction() as tx:
        assert retention.let_go_of_words(tx, NOW + YEAR) == 7
        assert retention.let_go_of_words(tx, NOW + YEAR) == 0
        left = [dict(row._mapping) for t in (inbox.incoming, outbox.outgoing, questions.questions)
                for row in run(tx, sa.select(t))]  # fmt: skip
    assert len(left) == 7
    assert "quillback" not in repr([{**row, "to": None} for row in left])
    assert "alert:1:quill:back" in [row.get("cause") for row in left]  # known again, so that it is told once
    assert f"athlete:{mira.id}" in [row.get("sender") for row in left]
