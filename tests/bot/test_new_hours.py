"""A roster that gives an athlete another zone or hour: every day's plan still comes, once, at the new hour."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time

import pytest

from bot import joining
from storage.roster import Roster, RosterCoach
from tests.bot.conversation.conftest import Chat, athlete


def plans(heard):
    return [(one["plan"]["date"], one["at"]) for one in heard if one["to"] == "mira" and one["plan"]]


@pytest.mark.parametrize(
    ("begins_in", "zone", "at", "came"),
    [
        ("Asia/Tokyo", "America/Los_Angeles", time(7, 30), "2027-01-07T15:30:00"),
        ("America/Los_Angeles", "Asia/Tokyo", time(7, 30), "2027-01-06T22:30:00"),
        ("Europe/Zurich", "Europe/Zurich", time(6), "2027-01-07T05:00:00"),
    ],
)
def test_the_next_sessions_plan_comes_at_the_hour_of_its_day(begins_in, zone, at, came):
    mira = athlete("mira", timezone=begins_in)
    chat = Chat(mira)
    try:
        chat.waits_until("20:00")
        chat.waits_until("13:00", "2027-01-06")
        now = datetime(2027, 1, 6, 12, tzinfo=UTC)
        coach = RosterCoach("Inês", "Europe/Lisbon", summary_day=6, summary_at=time(18))
        with chat.store.transaction() as tx:
            joining.load(tx, Roster(coach, (replace(mira, timezone=zone, plan_at=at),)), now)
        heard = chat.waits_until("23:00", "2027-01-08")
    finally:
        chat.close()

    (sent,) = plans(heard)
    assert sent[0] == "2027-01-07"
    assert datetime.fromisoformat(sent[1]).astimezone(UTC).isoformat().startswith(came)


def test_loading_the_roster_again_leaves_the_hour_that_the_athlete_set_and_says_so():
    mira = athlete("mira")
    chat = Chat(mira)
    try:
        chat.waits_until("09:00")
        chat.says("mira", "send the plan at 9", "18:00")
        chat.says("mira", "in pounds please", "18:01")
        coach = RosterCoach("Inês", "Europe/Lisbon", summary_day=6, summary_at=time(18))
        with chat.store.transaction() as tx:
            told = joining.load(tx, Roster(coach, (mira, athlete("tom"))), datetime(2027, 1, 4, 18, tzinfo=UTC))
        heard = chat.waits_until("23:00", "2027-01-07")
    finally:
        chat.close()

    assert "mira (plan at 09:00), mira (loads in lb)" in told
    assert [at[:16] for _, at in plans(heard)] == ["2027-01-07T08:00"]
