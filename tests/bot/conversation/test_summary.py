"""The coach's week: what cannot wait stands first."""

from __future__ import annotations

from types import SimpleNamespace

from bot.conversation import open_sets
from bot.conversation.summary import _waits
from bot.wording import wording_for
from planner.facts import PlannedSet
from planner.plan import Alert
from storage.fact_forms import planned_to_json

from .conftest import MONDAY, Chat, athlete


class Seen:
    """What the order looks at of a review."""

    def __init__(self, *alerts: Alert) -> None:
        self.alerts, self.ladders = alerts, ()


def test_pain_waits_least_then_silence_then_small_things():
    mild, bad = (Seen(Alert("pain_step_down", 2, None, {"score": score})) for score in (4.0, 5.0))
    silent, other = Seen(Alert("silent", 1, None)), Seen()

    assert sorted([other, silent, mild, bad], key=_waits) == [bad, mild, silent, other]


def test_pain_of_three_is_said_of_who_is_fine():
    chat = Chat(athlete("mira"))
    chat.waits_until("07:00")
    chat.answer("mira", "left elbow 3/10", "08:00")
    summary = chat.answer("coach", "summary", "09:00", MONDAY)
    chat.close()

    assert "left elbow 3/10 on Mon 4 Jan" in summary.partition("Fine")[2]


def test_an_open_set_is_said_in_the_coachs_words():
    left = PlannedSet(movement="pull_up", part="main", reps=None, load_kg=20.0)
    asked = SimpleNamespace(data={"sets": planned_to_json((left,))})

    assert open_sets.in_words(asked, wording_for("en")) == "pull-ups +20 kg"
    assert open_sets.in_words(asked, wording_for("de")) != "pull-ups +20 kg"
