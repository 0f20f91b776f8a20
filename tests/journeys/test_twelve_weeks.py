"""Twelve weeks of three athletes, as a coach would read them (`python -m tests.journeys.rehearsing` prints them)."""

from collections import Counter
from datetime import date, datetime, timedelta
from itertools import pairwise

import pytest

from tests.journeys.rehearsing import talk
from tests.journeys.twelve_weeks import BODIES, FIRST, HOLIDAY, ROSTER, SORE_WEEK, WEEKS, live


@pytest.fixture(scope="module")
def lived():
    with talk(ROSTER) as made:
        live(made)
        yield made


def heaviest(plan):
    """Added load of the heaviest main set [kg], help taken off; None without one."""
    main = [one["load_kg"] - one["assist_kg"] for one in plan["sets"] if one["part"] == "main"]
    return max(main, default=None)


def week_of(day):
    return (date.fromisoformat(day) - FIRST).days // 7 + 1


def plans_of_week(lived, who, week):
    return [plan for day, plan in sorted(lived.plans(who).items()) if week_of(day) == week and plan["sets"]]


def local_day(lived, message):
    return datetime.fromisoformat(message["at"]).astimezone(lived.zone).date()


def test_the_steady_athlete_has_two_training_days_each_week_at_least_48_hours_apart(lived):
    days = [date.fromisoformat(day) for day, plan in sorted(lived.plans("ana").items()) if plan["sets"]]
    assert len(days) == 2 * WEEKS
    assert all(after - before >= timedelta(days=2) for before, after in pairwise(days))


@pytest.mark.parametrize("who", BODIES)
def test_a_plan_comes_at_the_hour_that_was_asked_for(lived, who):
    dated = [one for one in lived.messages(who) if one["plan"] and "block" in one["text"].splitlines()[0]]
    first_of_day = {}
    for one in dated:
        first_of_day.setdefault(one["plan"]["date"], one)
    assert {
        datetime.fromisoformat(one["at"]).astimezone(lived.zone).strftime("%H:%M") for one in first_of_day.values()
    } == {"07:30"}


@pytest.mark.parametrize("who", BODIES)
def test_every_report_is_read_back_as_it_was_told(lived, who):
    told = [line for line in pairwise(lived.said) if line[0].get("in", {}).get("text", "").startswith("pull-ups")]
    mine = [(said["in"]["text"], back["text"]) for said, back in told if said["in"]["from"] == who]
    assert len(mine) > 10
    for said, back in mine:
        sets, effort = said.split()[1], said.split("@")[1].split(".  ")[0].split()[0].rstrip(".")
        assert sets.replace("x", "×").removeprefix("1×") in back
        assert f"RPE {effort}" in back


def test_a_deload_week_is_lighter_than_the_first_week_of_its_block(lived):
    blocks = {plan["block"] for plan in lived.plans("ana").values() if plan["kind"] == "deload"}
    assert blocks
    for block in blocks:
        plans = [plan for plan in lived.plans("ana").values() if plan["block"] == block and plan["sets"]]
        light = [heaviest(plan) for plan in plans if plan["kind"] == "deload"]
        first = [heaviest(plan) for plan in plans if plan["week"] == 1]
        body = BODIES["ana"][0]
        assert max(light) + body <= 0.95 * (max(first) + body)


def test_a_sore_elbow_lightens_the_next_session_by_a_tenth_and_is_told_to_the_coach(lived):
    body = BODIES["ben"][0]
    sore = plans_of_week(lived, "ben", SORE_WEEK)
    steady = plans_of_week(lived, "ben", SORE_WEEK - 1)
    assert body + heaviest(sore[1]) <= 0.9 * (body + heaviest(steady[1])) + 1.25
    told = [one for one in lived.messages("coach") if one["about"] == "ben"]
    assert any("elbow" in one["text"] for one in told)


def test_why_is_answered_in_numbers_that_name_the_pain(lived):
    answers = [back["text"] for said, back in pairwise(lived.said) if said.get("in", {}).get("text") == "why less?"]
    assert answers
    assert all("4/10" in text and "elbow" in text for text in answers)


def test_the_elbow_is_forgotten_when_it_has_been_quiet(lived):
    body = BODIES["ben"][0]
    last, before = plans_of_week(lived, "ben", 11), plans_of_week(lived, "ben", 1)
    assert body + heaviest(last[0]) >= 0.97 * (body + heaviest(before[0]))


def test_nobody_writes_to_an_athlete_on_holiday(lived):
    first = FIRST + timedelta(days=7 * (HOLIDAY[0] - 1))
    away = [one for one in lived.messages("cleo") if first <= local_day(lived, one) < first + timedelta(days=14)]
    assert [one["text"] for one in away] == []


def test_the_first_week_back_is_lighter_and_says_that_this_is_caution(lived):
    body = BODIES["cleo"][0]
    back, before = plans_of_week(lived, "cleo", HOLIDAY[1] + 1), plans_of_week(lived, "cleo", 2)
    assert body + heaviest(back[0]) <= 0.92 * (body + heaviest(before[0]))
    assert all(one["rpe"] is None or one["rpe"] <= 7 for plan in back for one in plan["sets"])
    day = back[0]["date"]
    words = next(one["text"] for one in lived.messages("cleo") if one["plan"] and one["plan"]["date"] == day)
    assert "caution" in words


def test_the_coach_has_one_summary_a_week_and_little_else(lived):
    summaries = [one for one in lived.messages("coach") if one["about"] is None]
    assert len(summaries) == WEEKS
    assert all(name in one["text"] for one in summaries for name in ("Ana", "Ben", "Cleo"))
    assert len(lived.messages("coach")) - len(summaries) <= 6


@pytest.mark.parametrize("who", BODIES)
def test_nobody_is_told_the_same_twice_in_a_day_or_buried_in_messages(lived, who):
    texts = Counter((local_day(lived, one), one["text"]) for one in lived.messages(who))
    assert [text for text, times in texts.items() if times > 1 and "No pain" not in text[1]] == []
    days = Counter(local_day(lived, one) for one in lived.messages(who))
    assert max(days.values()) <= 4


def test_no_message_shows_a_slot_that_was_not_filled(lived):
    for one in lived.said:
        text = one.get("text", "")
        assert not any(sign in text for sign in ("{", "}", "None", "nan", "???", "_pull_up", "0/10, still")), text
