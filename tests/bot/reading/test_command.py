"""`slowrung read` answers every line and goes on after a bad one."""

import io
import json

import pytest

from bot.reading.command import read_lines

GOOD = {
    "id": "a",
    "text": "pull-ups 5x3 +20",
    "sent_at": "2027-01-11T18:42:00+00:00",
    "timezone": "Europe/London",
    "unit": "kg",
    "language": "en",
    "bodyweight_kg": 71.5,
    "today": None,
}


def answers(*lines):
    out = io.StringIO()
    read_lines(io.StringIO("".join(f"{line}\n" for line in lines)), out)
    return [json.loads(line) for line in out.getvalue().splitlines()]


def test_a_message_is_answered_with_its_id():
    [answer] = answers(json.dumps(GOOD))
    assert answer["id"] == "a"
    assert len(answer["reading"]["sets"]) == 5


def test_a_bad_line_is_answered_with_an_error_and_the_next_one_read():
    bad = ["no json", "[]", json.dumps(GOOD | {"timezone": "Mars/Olympus"}), json.dumps({"id": "b"})]
    *failed, good = answers(*bad, json.dumps(GOOD))
    assert all("error" in one for one in failed)
    assert failed[-1]["id"] == "b"
    assert "reading" in good


def test_a_planned_set_may_leave_fields_out():
    today = [{"movement": "pull_up", "reps": 3, "load_kg": 20}]
    [answer] = answers(json.dumps(GOOD | {"text": "done", "today": today}))
    assert answer["reading"]["sets"][0]["reps"] == 3


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"text": None}, "text: missing"),
        ({"text": 3}, "text: 3 should be a string"),
        ({"text": "pull-ups " * 20_000}, "text: 180000 characters"),
        ({"sent_at": None}, "sent_at: missing"),
        ({"sent_at": "soon"}, 'sent_at: "soon" should be a moment'),
        ({"sent_at": "2027-01-11T18:42:00"}, "sent_at: needs an offset"),
        ({"sent_at": "0001-01-01T00:00:00+01:00"}, "sent_at: 0001-01-01T00:00:00+01:00 is outside the calendar"),
        ({"timezone": 3}, "timezone: 3 should be a string"),
        ({"timezone": "../etc"}, "timezone: '../etc' is no IANA time zone"),
        ({"unit": "st"}, 'unit: "st" should be kg or lb'),
        ({"language": 3}, "language: 3 should be a string"),
        ({"bodyweight_kg": "heavy"}, 'bodyweight_kg: "heavy" should be a number'),
        ({"bodyweight_kg": True}, "bodyweight_kg: true should be a number"),
        ({"bodyweight_kg": float("nan")}, "bodyweight_kg: NaN should be a number"),
        ({"bodyweight_kg": 10**400}, "should be a number"),
        ({"today": {}}, "today: {} should be a list of sets"),
        ({"today": [3]}, "today[0]: 3 should be a set"),
        ({"today": [{"movement": "dip"}, {"reps": 3}]}, "today[1].movement: missing"),
        ({"today": [{"movement": "dip", "reps": "3"}]}, 'today[0].reps: "3" should be a number'),
        ({"today": [{"movement": "dip", "reps": 2.5}]}, "today[0].reps: 2.5 should be a whole number"),
        ({"today": [{"movement": "dip", "pauses": 3}]}, "today[0].pauses: 3 should be a list"),
    ],
)
def test_an_error_names_line_and_field_and_the_next_line_is_read(change, said):
    good, bad, after = answers(json.dumps(GOOD), json.dumps(GOOD | change), json.dumps(GOOD))
    assert bad["id"] == "a"
    assert bad["error"].startswith("line 2: ")
    assert said in bad["error"]
    assert "Error" not in bad["error"]
    assert good == after
    assert "reading" in after


@pytest.mark.parametrize("bad", ["{", "[]", "3", '{"text": "\udce9"}', "[" * 100_000])
def test_a_line_that_is_no_message_is_told_by_its_number(bad):
    failed, after = answers(bad, json.dumps(GOOD))
    assert failed["error"].startswith("line 1: ")
    assert "reading" in after
