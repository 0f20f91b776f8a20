from datetime import date

import pytest

from planner.facts import Athlete
from planner.rules import RuleError, Rules, catalogue, check, default_rules, read, rules_of

GOOD = '[strength.max_rise]\nvalue = 0.05\nrange = [0.0, 0.1]\nsource = "common practice"\nmeans = "A cap."\n'


def test_every_rule_of_the_file_keeps_its_own_bounds_and_names_a_source():
    for rule in catalogue().values():
        assert rule.check(rule.value) == rule.value
        assert rule.source
        assert rule.means


def test_an_athletes_own_value_stands_above_the_default():
    athlete = Athlete("mira", date(2027, 1, 4), 62.0, rules={"strength.max_rise": 0.02})

    assert rules_of(athlete).number("strength.max_rise") == 0.02
    assert default_rules().number("strength.max_rise") == 0.05


def test_an_override_no_rule_allows_is_refused_and_named():
    rules = Rules({"strength.max_rise": 5.0, "strength.no_such": 1})

    assert rules.number("strength.max_rise") == 0.05
    assert rules.refused == ("strength.max_rise", "strength.no_such")


@pytest.mark.parametrize("value", [0.2, -1, True, "much", float("nan"), None])
def test_a_value_outside_the_range_is_told_with_the_range(value):
    with pytest.raises(RuleError, match=r"strength\.max_rise: must be"):
        check("strength.max_rise", value)


def test_a_whole_number_stays_whole():
    assert check("strength.best_set_days", 21.0) == 21
    with pytest.raises(RuleError, match="whole"):
        check("strength.best_set_days", 21.5)


@pytest.mark.parametrize(
    ("text", "error"),
    [
        (GOOD.replace("means", "meens"), r"mine\.toml, line 1: strength\.max_rise: unknown key 'meens'"),
        (GOOD.replace("0.05", "0.5"), r"mine\.toml, line 1: strength\.max_rise: must be from 0 to 0\.1"),
        ("# a line\n" + GOOD.replace("range = [0.0, 0.1]\n", ""), r"line 2: strength\.max_rise: 'range'"),
        ("lonely = 3\n", r"line 1: lonely: a rule is a table"),
        ("[strength", r"mine\.toml: "),
    ],
)
def test_a_mistake_in_the_file_is_told_with_file_line_and_key(text, error):
    with pytest.raises(RuleError, match=error):
        read(text, "mine.toml")
