"""The scorer, on readings that are wrong on purpose."""

from __future__ import annotations

import copy
from typing import Any

import pytest

from tests.corpus.lines import Theme
from tests.corpus.notation import sets
from tests.corpus.score import judge


def a_line(*told: Any, **more: Any) -> dict[str, Any]:
    theme = Theme("judged", "en")
    theme.say(*told, **more)
    return theme.lines[0]


REPORT = a_line("pull-ups 5x3 +20 @8, elbow 2/10", "pull_up 5x3 +20 last@8", pain="elbow - 2")
QUESTION = a_line("pull ups 20", "pull_up ? +?", ask="reps: 20")


def changed(line: dict[str, Any], **values: Any) -> dict[str, Any]:
    return copy.deepcopy(line["gold"]) | values


def test_gold_itself_is_exact():
    assert judge(REPORT, changed(REPORT)).exact


def test_order_of_sets_is_free():
    backwards = list(reversed(REPORT["gold"]["sets"]))
    assert judge(REPORT, changed(REPORT, sets=backwards)).exact


def test_a_wrong_load_is_a_silent_misread():
    verdict = judge(REPORT, changed(REPORT, sets=sets("pull_up 5x3 +25 last@8")))
    assert verdict.silent_misread
    assert verdict.sets == (0, 5, 5)


def test_an_effort_left_out_is_wrong_but_asserts_nothing():
    verdict = judge(REPORT, changed(REPORT, sets=sets("pull_up 5x3 +20")))
    assert verdict.wrong == ["sets"]
    assert not verdict.misread


def test_a_lost_pain_entry_is_a_silent_loss_until_something_is_asked():
    lost = judge(REPORT, changed(REPORT, pain=[]))
    asked = judge(REPORT, changed(REPORT, pain=[], ask=[{"about": "pain", "span": "2/10"}]))
    assert lost.silent_loss
    assert not asked.silent_loss


def test_a_question_where_gold_has_none_is_needless():
    assert judge(REPORT, changed(REPORT, ask=[{"about": "reps", "span": "5x3"}])).needless_ask


def test_a_guess_where_gold_asks_is_a_missed_question_and_a_misread():
    verdict = judge(QUESTION, changed(QUESTION, sets=sets("pull_up 20"), ask=[]))
    assert verdict.missed_ask
    assert verdict.silent_misread


def test_sets_left_out_beside_a_question_are_right():
    assert judge(QUESTION, changed(QUESTION, sets=[])).exact


def test_a_link_that_is_missing_is_not_exact_but_counts_as_a_right_set():
    line = a_line("chins rest-pause 8+3", "chin_up 8; chin_up 3 link")
    verdict = judge(line, changed(line, sets=sets("chin_up 8,3")))
    assert not verdict.exact
    assert verdict.sets == (2, 0, 0)


def test_an_alternative_is_as_good_as_gold():
    line = a_line("left shoulder 2", pain="shoulder L 2", pain_or=("shoulder L 2 after",))
    verdict = judge(line, changed(line, pain=[line["gold"]["pain"][0] | {"when": "after"}]))
    assert verdict.exact


@pytest.mark.parametrize(
    "broken",
    [
        {"intents": []},
        {"intents": ["smalltalk", "report"]},
        {"ask": [{"about": "reps", "span": "not said"}]},
        {"unread": ["not said"]},
    ],
)
def test_what_breaks_the_contract_is_never_exact(broken: dict[str, Any]):
    assert not judge(REPORT, changed(REPORT, **broken)).exact
