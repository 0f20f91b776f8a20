"""The coach's week: what cannot wait stands first."""

from __future__ import annotations

from types import SimpleNamespace

import pytest

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


def sore_in_three_sessions():
    chat = Chat(athlete("mira"))
    for day in ("2027-01-04", "2027-01-07", "2027-01-11"):
        chat.waits_until("08:00", day)
        chat.answer("mira", "done as planned, left elbow 3/10", "18:00", day)
        chat.answer("mira", "0", "08:00", day[:-2] + f"{int(day[-2:]) + 1:02}")
    return chat


def rungs_of(chat, day):
    chat.waits_until("08:00", day)
    plans = [one["plan"] for one in chat.heard if one["to"] == "mira" and one["plan"] and one["plan"]["date"] == day]
    return {one["rung"] for one in plans[-1]["sets"] if one["part"] == "skill"}


def test_a_step_back_for_pain_is_told_with_its_button():
    chat = sore_in_three_sessions()
    (told,) = [one for one in chat.to_coach() if "three sessions in a row" in one["text"]]
    summary = chat.says("coach", "summary", "09:00", "2027-01-13")[-1]
    chat.close()
    assert told["buttons"] == ["Lift the step back"]
    assert summary["buttons"] == ["Lift the step back: Mira"]


@pytest.mark.parametrize(("lifted", "rung"), [(False, "archer_elbow_lower"), (True, "archer_elbow_full")])
def test_a_step_back_for_pain_is_the_coachs_to_lift(lifted, rung):
    chat = sore_in_three_sessions()
    if lifted:
        chat.says("coach", None, "09:00", "2027-01-13", press="Lift the step back")
        again = chat.says("coach", None, "09:01", "2027-01-13", press="Lift the step back")
        assert again[-1]["text"] == "Mira: there is nothing to decide any more."
    assert rungs_of(chat, "2027-01-14") == {rung}
    chat.close()


def test_a_stop_has_its_button_in_the_summary_and_on_the_card():
    chat = Chat(athlete("mira"))
    chat.waits_until("08:00")
    chat.answer("mira", "left elbow 7/10", "09:00")
    assert "May train again: Mira" in chat.says("coach", "summary", "09:01")[-1]["buttons"]
    assert "May train again" in chat.says("coach", "mira", "09:02")[-1]["buttons"]
    chat.close()
