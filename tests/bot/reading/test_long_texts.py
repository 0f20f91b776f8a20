"""A text twice as long takes about twice as many steps, with and without a plan; of what repeats one phrase too."""

import sys

import pytest

from bot.reading import read
from planner.facts import PlannedSet
from tests.bot.reading.messages import context

PLAN = tuple(PlannedSet("pull_up", "main", 3, load_kg=20.0, rpe=8.0) for _ in range(5))
LENGTH = 1200  # characters
MOST = 2.4  # times the steps of half the length; a square would be four


def steps(text, plan):
    """How many functions are called to read it, Python's own counted: the same on every machine."""
    called = 0

    def count(_frame, event, _arg):
        nonlocal called
        called += event in ("call", "c_call")

    told = context(today=plan)
    before = sys.getprofile()
    sys.setprofile(count)
    try:
        read(text, told)
    finally:
        sys.setprofile(before)
    return called


@pytest.mark.parametrize("plan", [None, PLAN], ids=["no plan", "a plan"])
@pytest.mark.parametrize(
    "phrase",
    [
        "5x3@8/",
        "20kg 3 ",
        "2nd 5 ",
        "\N{FLEXED BICEPS}5 ",
        "last set 5 ",
        "yesterday ",
        "elbow 3, ",
        "left 5 right 4 ",
        "dip 8\n",
    ],
)
def test_steps_grow_with_the_length(phrase, plan):
    texts = [(phrase * LENGTH)[: half * LENGTH] for half in (1, 2)]
    for text in texts:
        read(text, context(today=plan))  # words met before
    short, long = (steps(text, plan) for text in texts)
    assert long < MOST * short
