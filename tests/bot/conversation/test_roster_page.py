"""The roster a line each, rungs across it, and what a rule may be."""

from bot.conversation.rule_words import allowed
from bot.wording import wording_for
from planner import rules


def test_the_roster_is_a_line_each_without_buttons(two):
    two.says("mira", "pull-ups 5,5,5 +15", "19:00")
    heard = two.says("coach", "roster", "19:10")

    assert heard[0]["buttons"] == []
    assert heard[0]["text"].splitlines() == [
        "2 athletes:",
        "· mira: archers at elbow height, full range; last Mon 4 Jan, next Thu 7 Jan",
        "· tom: archers at elbow height, full range; last none, next Mon 4 Jan",
    ]


def test_how_long_rungs_take_is_told_with_who_is_still_there(two):
    two.answer("coach", "mira rung archer_shoulder", "10:00", "2027-02-01")
    said = two.answer("coach", "how long do rungs take?", "10:00", "2027-03-01").splitlines()

    assert "archers at elbow height, full range: half have moved on by 4" in said[1]
    assert "1 moved on, 1 did not yet" in said[1]
    assert "too few have moved on" in said[2]


def test_nobody_on_a_rung_yet_is_said(chat):
    assert "Nobody has been on a rung" in chat.answer("coach", "rungs", "08:00")


def test_a_value_a_rule_may_not_take_is_answered_with_what_it_may(chat):
    assert chat.answer("coach", "rule block.loading_weeks 50", "08:00") == (
        "block.loading_weeks must be a whole number from 3 to 6 weeks."
    )


def test_every_rule_can_say_what_it_may_be():
    for rule in rules.catalogue().values():
        assert allowed(rule, wording_for("en")).startswith(rule.name)


def test_a_rung_without_a_dose_shows_none(chat):
    chat.answer("coach", "mira rung weighted_pull_up", "08:00")
    assert "–" not in chat.answer("coach", "mira", "08:05").split("Bodyweight")[0].split("dose")[-1]
    assert ", –" not in chat.answer("coach", "summary", "08:10")
