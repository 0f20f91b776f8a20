"""Strangers, joining by a code, and a chat that takes no messages."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest

from bot import worker
from storage import inbox, invites, outbox, persons
from storage.inbox import IncomingUpdate
from storage.persons import Who

NOW = datetime(2027, 1, 4, 9, tzinfo=UTC)


def hear(store, text, address="77", key="1", kind="text", data=None):
    """What the bot says to a Telegram address after one message."""
    update = IncomingUpdate("telegram", key, address, kind, text, NOW, data or {})
    with store.transaction() as tx:
        inbox.accept(tx, [update], NOW)
    worker.handle_all(store, NOW)
    with store.transaction() as tx:
        return [one.text for one in outbox.claim(tx, NOW, 50, "telegram") if one.address == address]


@pytest.mark.parametrize("text", ["hello", "/start", "pull-ups 5x3 +20", "who is mira?", ""])
def test_a_stranger_learns_only_that_a_code_is_needed(chat, text):
    (answer,) = hear(chat.store, text)

    assert "invitation" in answer
    assert "Mira" not in answer


def test_a_wrong_code_opens_nothing(chat):
    (answer,) = hear(chat.store, "/start nonsense")

    assert "does not work" in answer


def test_a_code_makes_the_stranger_an_athlete_once(chat):
    with chat.store.transaction() as tx:
        coach = persons.all_coaches(tx)[0]
        mira = persons.athlete_by_handle(tx, coach.id, "mira")
        code = invites.new_invite(tx, Who("athlete", mira.id), NOW)
    (joined,) = hear(chat.store, f"/start {code}")

    assert "Hello Mira" in joined
    assert "does not work" in hear(chat.store, f"/start {code}", address="78", key="2")[0]


def test_a_coach_claims_the_bot_with_a_code(chat):
    with chat.store.transaction() as tx:
        code = invites.new_invite(tx, Who("coach", persons.all_coaches(tx)[0].id), NOW)

    assert "this bot is yours" in hear(chat.store, f"/start {code}")[0]


def test_forged_buttons_are_refused(chat):
    with chat.store.transaction() as tx:
        code = invites.new_invite(tx, Who("coach", persons.all_coaches(tx)[0].id), NOW)
    hear(chat.store, f"/start {code}")
    for number, data in enumerate(("a:999:archer_shoulder", "r:999", "nonsense", "", "v:999:1", "s:999")):
        answers = hear(chat.store, "", key=f"p{number}", kind="press", data={"data": data})
        assert len(answers) <= 1

    assert not chat.record().orders


@pytest.mark.parametrize(("who", "words"), [("mira", "that was 22.5, not 20"), ("coach", "Write the order anew")])
def test_an_edit_is_not_read_and_that_is_said_once_a_message(chat, who, words):
    said = [chat.waited(who, "", f"2027-01-04T18:0{at}", "2027-01-04T18:05", kind="edit", message=of)
            for at, of in enumerate((7, 7, 8))]  # fmt: skip
    assert [words in one for one in said] == [True, False, True]
