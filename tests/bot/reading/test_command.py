"""`slowrung read` answers every line and goes on after a bad one."""

import io
import json

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
