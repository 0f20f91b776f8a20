"""Sets counted from the first, on a day with a plan of four."""

import pytest

from bot.reading import read
from planner.facts import PlannedSet
from tests.bot.reading.messages import context

PLAN = tuple(PlannedSet("pull_up", "main", 4, load_kg=11.25, rpe=7.0) for _ in range(4))


@pytest.mark.parametrize(
    ("words", "reps"),
    [
        ("1st set 4, 2nd set 4, 3rd set 3, stopped", [4, 4, 3]),
        ("set 1 4, set 2 3, stopped", [4, 3]),
        ("erster satz 4, zweiter 4, dritter 3, dann schluss", [4, 4, 3]),
        ("primera 4, segunda 4, tercera 3 y pare", [4, 4, 3]),
        ("first set 5, rest as planned", [5, 4, 4, 4]),
    ],
)
def test_a_list_of_sets_covers_what_it_lists(words, reps):
    assert [one.reps for one in read(words, context(today=PLAN)).sets] == reps
