from datetime import date

from bot.conversation.mending import _changed
from bot.reading.reading import Correction
from planner.facts import Session, WorkSet

FIVE = Session(date(2027, 1, 4), (WorkSet("pull_up", 4, load_kg=15.0),) * 5 + (WorkSet("dip", 8),))


def test_four_sets_not_five_takes_the_last_one_away():
    mended = _changed(FIVE, Correction("sets", 5, 4, "pull_up"))
    assert mended is not None
    assert [work.movement for work in mended] == ["pull_up"] * 4 + ["dip"]


def test_a_set_more_is_the_last_one_again():
    mended = _changed(FIVE, Correction("sets", None, 6, "pull_up"))
    assert mended is not None
    assert [work.movement for work in mended] == ["pull_up"] * 6 + ["dip"]


def test_a_count_that_does_not_fit_what_was_told_changes_nothing():
    assert _changed(FIVE, Correction("sets", 3, 4, "pull_up")) is None
    assert _changed(FIVE, Correction("sets", 5, 4)) is None


def test_a_warm_up_of_as_many_reps_is_not_meant():
    warmed = Session(date(2027, 1, 4), (WorkSet("pull_up", 3, load_kg=2.5), WorkSet("pull_up", 3, load_kg=15.0)))
    mended = _changed(warmed, Correction("reps", 3, 4), frozenset({0}))
    assert mended is not None
    assert [work.reps for work in mended] == [3, 4]
    alone = _changed(warmed, Correction("reps", 3, 4, side=None), frozenset({0, 1}))
    assert alone is not None
    assert [work.reps for work in alone] == [4, 4]


def test_a_value_that_cannot_be_is_not_written_down(chat):
    chat.answer("mira", "done as planned", "18:30")
    before = chat.record().sessions
    assert "cannot be right" in chat.answer("mira", "the pull-ups were 999999 reps, not 4", "18:40")
    assert chat.record().sessions == before
