"""What a coach says and presses."""

from __future__ import annotations

from datetime import date

import pytest

from bot.conversation.coach_words import parse
from storage.roster import RosterTest

from .conftest import Chat, athlete


def test_sets_for_a_day_are_what_the_athlete_gets_that_day(chat):
    answer = chat.answer("coach", "mira 4x3 at 17.5 on thursday", "09:00")
    chat.waits_until("08:00", "2027-01-07")

    (plan,) = [one["plan"] for one in chat.heard if one["plan"] and one["plan"]["date"] == "2027-01-07"]
    assert "pull-ups 4×3 +17.5 kg" in answer
    assert [(one["reps"], one["load_kg"]) for one in plan["sets"] if one["part"] == "main"] == [(3, 17.5)] * 4


def test_a_lock_shows_in_the_plan_where_it_acts(chat):
    chat.answer("coach", "mira lock 17.5 until 1 march", "07:10")
    plan = chat.waits_until("08:00")[0]

    assert "locked the load at 17.5 kg" in plan["text"]
    assert {one["load_kg"] for one in plan["plan"]["sets"] if one["part"] == "main"} == {17.5}


@pytest.mark.parametrize(
    ("words", "shown"),
    [
        ("mira", "Mira, Monday 4 January"),
        ("card mira", "Mira, Monday 4 January"),
        ("everyone", "One athlete:"),
        ("summary", "Nobody needs you"),
        ("mira week", "Thu 7 Jan"),
        ("mira hold rung 3 weeks", "rung held until Mon 25 Jan"),
        ("mira rung archer_shoulder", "archers at shoulder height"),
        ("mira pause", "paused"),
        ("mira note: sleeps badly", "Noted about Mira"),
        ("mira rule block.loading_weeks 5", "block.loading_weeks is 5"),
        ("rule block.loading_weeks 5", "for everyone"),
        ("rule block.loading_weeks 50", "must be a whole number from 3 to 6"),
        ("rule nonsense 5", "There is no rule"),
        ("call archers with low ring ALR", "“ALR” is archers, ring at elbow height"),
        ("mira rung nonsense", "There is no rung"),
        ("approve mira", "nothing to decide"),
        ("mira 4x3 at 900 on thursday", "did not get the sets"),
        ("help", "invite mira"),
        ("", "invite mira"),
        ("the weather is fine", "did not understand"),
    ],
)
def test_each_order_is_confirmed_by_what_was_understood(chat, words, shown):
    assert shown in chat.answer("coach", words, "07:10")


def test_an_invitation_is_a_code_to_pass_on(chat):
    assert "/start " in chat.answer("coach", "invite mira", "07:10")


def test_a_coachs_nickname_is_read_in_the_athletes_reports(chat):
    chat.answer("coach", "call archers with low ring ALR", "07:10")
    chat.answer("mira", "ALR 2x1 each arm", "18:00")

    assert {one.movement for one in chat.record().sessions[-1].sets} == {"archer_ring_elbow"}


def test_a_nickname_has_a_greatest_length(chat):
    too_long = chat.answer("coach", f"call archers with low ring {'x' * 41}", "07:10")
    assert too_long == "A nickname can have 40 characters at most. This one is not set."
    assert "from now on" in chat.answer("coach", f"call archers with low ring {'x' * 40}", "07:11")


def test_words_for_the_coach_are_passed_on_and_the_answer_comes_back(chat):
    chat.answer("mira", "tell the coach my grip feels weak", "09:00")
    answers = chat.says("coach", "Reply to Mira: do more hangs", "09:05")

    assert "my grip feels weak" in chat.to_coach()[0]["text"]
    assert "Inês: do more hangs" in [one["text"] for one in answers if one["to"] == "mira"]


def test_plain_words_answer_the_one_who_waits(chat):
    chat.answer("mira", "tell the coach my grip feels weak", "09:00")
    answers = chat.says("coach", "do more hangs", "09:05")

    assert [one["to"] for one in answers] == ["mira", "coach"]


def test_plain_words_go_to_nobody_where_two_wait(two):
    two.answer("mira", "tell the coach my grip feels weak", "09:00")
    two.answer("tom", "tell the coach my belt broke", "09:01")
    answers = two.says("coach", "do more hangs", "09:05")

    assert [one["to"] for one in answers] == ["coach"]


def test_an_athlete_who_is_not_cleared_gets_no_sets_before_the_coach_approves(newcomer):
    before = [one for one in newcomer.waits_until("08:00") if one["plan"] and one["plan"]["sets"]]
    newcomer.says("coach", None, "09:00", press="Approve")

    assert not before
    assert newcomer.record().orders[-1].kind == "start"


def test_a_clip_goes_to_the_coach_and_is_marked_as_seen(chat):
    chat.says("mira", "archers left", "09:00", video="clip-1")
    chat.says("coach", None, "09:05", press="Seen")

    (clip,) = chat.record().clips
    assert (clip.movement, clip.side, clip.seen_by_coach) == ("archer_ring_elbow", "left", True)


def test_a_clips_caption_changes_the_plan_as_words_do(chat):
    chat.waits_until("08:00")
    chat.says("mira", "left elbow hurts 7/10", "09:00", video="clip-1")

    plans = [one["plan"] for one in chat.heard if one["to"] == "mira" and one["plan"]]
    assert len(plans) == 2
    assert "archer_ring_elbow" in {work["movement"] for work in plans[0]["sets"]}
    assert not {"pull_up", "archer_ring_elbow"} & {work["movement"] for work in plans[1]["sets"]}


def test_the_weekly_summary_comes_at_the_coachs_hour(two):
    two.waits_until("19:30", "2027-01-10")

    # 18:00 in Lisbon is 19:00 in Zurich.
    (summary,) = [one for one in two.to_coach() if one["text"].startswith("Week to")]
    assert summary["at"].startswith("2027-01-10T18:00")


@pytest.mark.parametrize(
    ("text", "verb", "handle"),
    [
        ("mira", "card", "mira"),
        ("Mira 4x3 at 17.5 on thursday", "sets", "mira"),
        ("mira lock 17.5 until 1 march", "lock", "mira"),
        ("Reply to Mira: ok", "tell", "mira"),
        ("mira: ok", "tell", "mira"),
        ("decline mira", "decline", "mira"),
    ],
)
def test_orders_are_read_as_verb_and_athlete(text, verb, handle):
    command = parse(text, [("mira", "Mira"), ("tom", "Tom")], "en", date(2027, 1, 4))

    assert command is not None
    assert (command.verb, command.handle) == (verb, handle)


@pytest.fixture
def ready():
    """Mira on strict pull-ups, with tests that show what the weighted ones ask: 6 reps with the smallest plate."""
    tests = (
        RosterTest(date(2027, 1, 3), "ring_row", 12),
        RosterTest(date(2027, 1, 3), "ring_row", 12),
        RosterTest(date(2027, 1, 3), "ring_row", 12),
        RosterTest(date(2027, 1, 3), "pull_up", 12),
        RosterTest(date(2027, 1, 3), "pull_up", 6, 5.0),
    )
    made = Chat(athlete("mira", rung="pull_up", tests=tests))
    made.waits_until("08:00")
    yield made
    made.close()


def test_a_promotion_goes_to_the_coach_once_with_buttons(ready):
    ready.waits_until("08:00", "2027-01-06")

    (proposal,) = [one for one in ready.to_coach() if one["buttons"]]
    assert proposal["buttons"] == ["Approve", "Hold"]
    assert proposal["about"] == "mira"
    assert "weighted pull-ups" in proposal["text"]


def test_approving_moves_the_athlete_and_tells_them(ready):
    answers = ready.says("coach", None, "09:00", press="Approve", about="mira")

    assert [(one.kind, one.rung) for one in ready.record().orders] == [("approve", "weighted_pull_up")]
    assert any(one["to"] == "mira" and "approved" in one["text"] for one in answers)


def test_pressing_twice_decides_once(ready):
    ready.says("coach", None, "09:00", press="Approve")
    again = ready.says("coach", None, "09:01", press="Approve")

    assert "nothing to decide" in again[0]["text"]
    assert len(ready.record().orders) == 1


def test_words_do_the_same_as_buttons(ready):
    assert "held back" in ready.answer("coach", "decline mira", "09:00")
    assert [one.kind for one in ready.record().orders] == ["decline"]


def test_what_waits_for_a_decision_stands_first_in_the_summary_with_buttons(ready):
    (summary,) = ready.says("coach", "summary", "09:00")

    assert "Need you (1)" in summary["text"]
    assert summary["buttons"] == ["Approve: Mira", "Hold: Mira"]
