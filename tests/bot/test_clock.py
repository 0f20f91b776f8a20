from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo, available_timezones

import pytest

from bot.clock import ClockRanBack, SystemClock, UnknownZone, VirtualClock, moment_of, next_moment, zone_named


@pytest.mark.parametrize("name", ["localtime", "Factory", "posixrules", "Europe", "", "Mars/Olympus", "../etc/passwd"])
def test_names_that_are_no_place_are_refused(name):
    with pytest.raises(UnknownZone, match="IANA"):
        zone_named(name)


def test_a_place_is_a_zone():
    assert zone_named("America/Argentina/Buenos_Aires") == ZoneInfo("America/Argentina/Buenos_Aires")


def test_a_virtual_clock_never_runs_back():
    clock = VirtualClock(datetime(2027, 1, 4, 7, tzinfo=UTC))
    clock.move_to(datetime(2027, 1, 4, 7, tzinfo=UTC))
    with pytest.raises(ClockRanBack):
        clock.move_to(datetime(2027, 1, 4, 6, 59, 59, tzinfo=UTC))


def test_a_virtual_clock_that_was_never_set_says_so():
    with pytest.raises(ClockRanBack, match="not been set"):
        VirtualClock().now()


def test_the_machine_is_asked_in_utc():
    assert SystemClock().now().utcoffset() == timedelta(0)


def test_the_moment_now_is_already_past():
    berlin = ZoneInfo("Europe/Berlin")
    now = moment_of(date(2026, 5, 4), time(7), berlin)
    assert next_moment(now, berlin, time(7)) == now + timedelta(days=1)


def test_only_the_days_asked_for():
    found = next_moment(datetime(2026, 5, 5, tzinfo=UTC), ZoneInfo("Europe/Lisbon"), time(18), {6})
    assert found == datetime(2026, 5, 10, 17, tzinfo=UTC)


def test_no_weekday_at_all_is_an_error_and_no_endless_search():
    with pytest.raises(ValueError, match="weekday"):
        next_moment(datetime(2026, 5, 5, tzinfo=UTC), ZoneInfo("Europe/Lisbon"), time(18), set())


@pytest.mark.parametrize("at", [time(0), time(0, 30), time(2), time(2, 30), time(3), time(23, 45)])
def test_every_local_day_of_a_year_has_exactly_one_moment_in_every_zone(at):
    # A sample of the zones at each hour: every zone is met by one of the hours.
    zones = sorted(available_timezones())[[0, 30, 2, 32, 3, 45].index(at.minute or at.hour) :: 6]
    for name in zones:
        if name in ("localtime", "Factory", "posixrules"):
            continue
        zone = ZoneInfo(name)
        now, days = datetime(2026, 1, 1, 12, tzinfo=UTC), []
        while now < datetime(2027, 1, 1, tzinfo=UTC):
            now = next_moment(now, zone, at)
            days.append(now.astimezone(zone).date())
        assert all(after - before == timedelta(days=1) for before, after in pairwise(days)), name
