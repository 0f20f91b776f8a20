from datetime import UTC, datetime, timedelta

import pytest

from bot.channels.terminal import Terminal
from bot.clock import VirtualClock
from bot.demo import demo_roster
from storage.store import Store

HOURS = [datetime(2026, 11, 25, 0, 38, tzinfo=UTC) + timedelta(hours=hour) for hour in range(24)]


@pytest.fixture
def store():
    opened = Store.open("sqlite://")
    yield opened
    opened.close()


@pytest.mark.parametrize("moment", HOURS, ids=lambda moment: f"{moment:%H}h")
def test_the_demo_shows_a_plan_at_any_hour_and_counts_its_report_for_that_day(store, capsys, moment):
    terminal = Terminal(store, VirtualClock(moment))
    terminal.begin(demo_roster(moment))
    terminal.catch_up()
    terminal.look_at("mira")
    shown = capsys.readouterr().out
    terminal.hear("done as planned")
    answer = capsys.readouterr().out

    day = next(line for line in shown.splitlines() if "· block 1, week 1" in line).split(" ")
    assert "Welcome, Mira" in shown
    assert f"Noted for {day[0][:3]} {day[1]} Nov" in answer
    assert "has changed" not in answer


@pytest.mark.parametrize("line", ["as planned", "me duele el codo izquierdo, 2/10"])
def test_words_that_name_nobody_are_said_to_the_bot(store, capsys, line):
    terminal = Terminal(store, VirtualClock(HOURS[12]))
    terminal.begin(demo_roster(HOURS[12]))
    terminal.look_at("mira")
    capsys.readouterr()
    terminal.typed(line)
    assert terminal.who == "mira"
    assert "There is no" not in capsys.readouterr().out


def test_another_person_is_named_with_as(store, capsys):
    terminal = Terminal(store, VirtualClock(HOURS[12]))
    terminal.begin(demo_roster(HOURS[12]))
    terminal.typed("as tomas")
    assert terminal.who == "tomas"
    terminal.typed("/as bob")
    assert terminal.who == "tomas"
    assert "There is no bob here" in capsys.readouterr().out
