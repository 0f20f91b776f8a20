"""An athlete on several ladders of the roster: all are planned, shown, proposed and held, each by its name."""

from __future__ import annotations

import pytest

from tests.bot.conversation.conftest import Chat, athlete

MORE = (("front_lever", "tuck_front_lever"), ("handstand_push_up", None))


@pytest.fixture
def climber():
    made = Chat(athlete("mira", more_ladders=MORE, equipment=frozenset({"bar", "rings", "belt", "wall"})))
    made.waits_until("08:00")
    yield made
    made.close()


def test_all_ladders_are_known_and_shown(climber):
    assert [ladder for ladder, _ in climber.record().athlete.ladders] == [
        "one_arm_pull_up", "front_lever", "handstand_push_up"
    ]  # fmt: skip
    card = climber.answer("coach", "mira", "09:00")
    for name in ("one-arm pull-up:", "front lever:", "handstand push-up:"):
        assert name in card


def test_the_week_has_sets_of_each(climber):
    climber.waits_until("09:00", "2027-01-11")
    rungs = {
        one["rung"] for sent in climber.heard if sent["to"] == "mira" and sent["plan"] for one in sent["plan"]["sets"]
    }
    assert {"archer_elbow_full", "tuck_front_lever"} <= rungs


def test_a_rung_is_set_on_the_ladder_that_has_it(climber):
    climber.answer("coach", "mira rung advanced_tuck_front_lever", "09:00")
    assert [(one.ladder, one.rung) for one in climber.record().orders] == [("front_lever", "advanced_tuck_front_lever")]


@pytest.mark.parametrize(
    ("words", "ladder"), [("mira hold rung 3 weeks", None), ("mira hold front lever for three weeks", "front_lever")]
)
def test_one_ladder_or_all_are_held(climber, words, ladder):
    climber.answer("coach", words, "09:00")
    assert [(one.kind, one.ladder) for one in climber.record().orders] == [("hold_rung", ladder)]


def test_a_ladder_that_is_not_hers_is_not_held(climber):
    assert "Nothing is done" in climber.answer("coach", "mira hold planche 3 weeks", "09:00")


def test_a_roster_loaded_again_takes_a_ladder_on():
    from datetime import UTC, datetime, time

    from bot import joining
    from storage.roster import Roster, RosterCoach

    chat = Chat(athlete("mira"))
    chat.waits_until("08:00")
    coach = RosterCoach("Inês", "Europe/Lisbon", summary_day=6, summary_at=time(18))
    with chat.store.transaction() as tx:
        joining.load(tx, Roster(coach, (athlete("mira", more_ladders=MORE),)), datetime(2027, 1, 4, 9, tzinfo=UTC))
    assert "front lever" in chat.answer("mira", "how far am I?", "11:00")
    chat.close()
