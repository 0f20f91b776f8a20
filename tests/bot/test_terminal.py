from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from bot.channels.terminal import Terminal
from bot.clock import VirtualClock
from bot.demo import demo_roster
from storage.store import Store

HOURS = [datetime(2026, 11, 25, tzinfo=UTC) + timedelta(hours=hour) for hour in range(24)]


@pytest.fixture
def store():
    opened = Store.open("sqlite://")
    yield opened
    opened.close()


@pytest.mark.parametrize("moment", HOURS, ids=lambda moment: f"{moment:%H}h")
def test_the_demo_welcomes_its_first_athlete_with_their_own_days_plan_at_any_hour(store, capsys, moment):
    terminal = Terminal(store, VirtualClock(moment))
    terminal.begin(demo_roster(moment))
    terminal.catch_up()
    terminal.look_at("mira")
    shown = capsys.readouterr().out
    here = moment.astimezone(ZoneInfo("Europe/Zurich"))
    assert "Welcome, Mira" in shown
    assert f"{here:%A} {here.day} November" in shown
    assert "no training" not in shown
