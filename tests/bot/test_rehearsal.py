import io
import json

import pytest

from bot.channels.rehearsal import Rehearsal, rehearse
from bot.demo import demo_roster
from storage.store import Store
from tests.journeys.rehearsing import talk
from tests.journeys.twelve_weeks import ROSTER

MORNING = "2027-01-04T08:00:00+01:00"
FIELDS = {"at", "to", "about", "text", "buttons", "picture", "plan"}


@pytest.fixture
def lived():
    with talk(ROSTER) as made:
        yield made


def raw(lived, line):
    return list(lived.rehearsal.line(line))


def test_nothing_is_said_before_the_first_line():
    sink, store = io.StringIO(), Store.open("sqlite://")
    rehearse(store, demo_roster, io.StringIO(""), sink)
    store.close()
    assert sink.getvalue() == ""


def test_a_message_has_the_fields_of_the_contract_and_settled_repeats_at_verbatim(lived):
    answers = raw(lived, json.dumps({"at": MORNING}))
    assert answers[-1] == {"settled": MORNING}
    assert all(set(answer) == FIELDS for answer in answers[:-1])
    assert {answer["to"] for answer in answers[:-1]} == {"ana", "ben", "cleo"}


def test_a_plan_lists_sets_one_by_one_with_warm_ups_without_effort(lived):
    lived.line(at=MORNING)
    plan = lived.plans("ana")["2027-01-04"]
    assert set(plan) == {"date", "week", "block", "kind", "sets"}
    assert {one["part"] for one in plan["sets"]} <= {"warm_up", "skill", "main", "accessory"}
    assert all(one["rpe"] is None for one in plan["sets"] if one["part"] == "warm_up")
    assert all(
        {"reps", "load_kg", "rpe", "part", "rung", "movement", "side", "rom"} <= set(one) for one in plan["sets"]
    )


def test_everything_due_before_a_line_happens_first_each_at_its_own_moment(lived):
    lived.line(at="2027-01-04T06:00:00+01:00")
    answers = lived.line(at="2027-01-05T12:00:00+01:00", **{"from": "ana"}, text="help")
    moments = [answer["at"] for answer in answers]
    assert moments == sorted(moments)
    assert answers[0]["at"] == "2027-01-04T06:30:00+00:00"
    assert answers[-1]["at"] == "2027-01-05T11:00:00+00:00"


@pytest.mark.parametrize(
    "line",
    [
        "no json",
        "[]",
        "{}",
        '{"at": 5}',
        '{"at": "soon"}',
        '{"at": "2027-01-04T08:00:00"}',
        '{"at": "0001-01-01T00:00:00+14:00"}',
        '{"at": "2027-01-04T08:00:00+01:00", "from": "nobody", "text": "hi"}',
        '{"at": "2027-01-04T08:00:00+01:00", "from": "ana"}',
        '{"at": "2027-01-04T08:00:00+01:00", "from": "ana", "text": 5}',
        '{"at": "2027-01-04T08:00:00+01:00", "from": ["ana"], "text": "hi"}',
        '{"at": "2027-01-04T08:00:00+01:00", "text": "hi"}',
        '{"at": "2027-01-04T08:00:00+01:00", "from": "ana", "says": "hi"}',
        '{"at": "2027-01-04T08:00:00+01:00", "from": "coach", "press": "Approve"}',
        '{"at": "2027-01-04T07:59:59+01:00"}',
    ],
)
def test_a_bad_line_is_an_error_then_settled_and_the_run_goes_on(lived, line):
    lived.line(at=MORNING)
    answers = raw(lived, line)
    assert set(answers[0]) == {"error"}
    assert answers[0]["error"]
    assert set(answers[1]) == {"settled"}
    assert lived.line(at=MORNING, **{"from": "ana"}, text="help")


def test_a_press_means_the_newest_message_that_has_the_button(lived):
    lived.line(at=MORNING)
    lived.says("2027-01-04 18:00", "ana", "pull-ups 4x4 +7.5 @7")
    answers = lived.presses("2027-01-04 18:05", "ana", "3")
    assert answers[0]["to"] == "ana"
    assert "3/10" in answers[0]["text"]


def test_a_press_about_somebody_else_is_an_error(lived):
    lived.line(at=MORNING)
    lived.says("2027-01-04 18:00", "ana", "pull-ups 4x4 +7.5 @7")
    at = lived.at("2027-01-04 18:05")
    answers = raw(lived, json.dumps({"at": at, "from": "ana", "press": "3", "about": "ben"}))
    assert "about ben" in answers[0]["error"]


def test_a_video_reaches_the_coach(lived):
    lived.line(at=MORNING)
    at = lived.at("2027-01-04 18:00")
    answers = lived.line(at=at, **{"from": "ana"}, video="clip-1", text="pull-ups, last set")
    assert any(answer["to"] == "coach" and answer["about"] == "ana" for answer in answers)


def test_a_later_run_on_the_same_database_goes_on_where_the_first_ended(tmp_path):
    url = f"sqlite:///{tmp_path / 'kept.sqlite3'}"
    first, second = Store.open(url), None
    list(Rehearsal(first, demo_roster).line(json.dumps({"at": MORNING})))
    first.close()
    second = Store.open(url)
    answers = list(Rehearsal(second, None).line('{"at": "2027-01-04T18:00:00+01:00", "from": "mira", "text": "help"}'))
    second.close()
    assert any(answer.get("to") == "mira" for answer in answers)
