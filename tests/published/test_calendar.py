"""Local hours against published rules of the calendar and an independent library.

Sources: IANA time zone database (the clock changes of Berlin, Lord Howe, Apia, São Paulo); RFC 5545, 3.3.5 (a missing
local time takes the offset before the gap, a doubled one its first) and its WKST example in 3.8.5.3 (from memory);
ISO 8601 week dates.
"""

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from dateutil import tz
from dateutil.rrule import MO, SU, TU, WEEKLY, rrule

from bot.clock import moment_of, next_moment

BERLIN = ZoneInfo("Europe/Berlin")


def utc(*parts):
    return datetime(*parts, tzinfo=UTC)


def test_an_hour_that_berlin_leaves_out_takes_the_offset_before_the_gap():
    moment = next_moment(utc(2026, 3, 28, 12), BERLIN, time(2, 30))
    assert moment == utc(2026, 3, 29, 1, 30)
    assert moment.astimezone(BERLIN).time() == time(3, 30)


def test_an_hour_that_berlin_has_twice_counts_once_the_first():
    first = next_moment(utc(2026, 10, 24, 12), BERLIN, time(2, 30))
    assert first == utc(2026, 10, 25, 0, 30)
    assert next_moment(first, BERLIN, time(2, 30)) == utc(2026, 10, 26, 1, 30)


def test_breakfast_in_berlin_moves_with_the_clock_change():
    assert moment_of(date(2026, 3, 28), time(7), BERLIN) == utc(2026, 3, 28, 6)
    assert moment_of(date(2026, 3, 29), time(7), BERLIN) == utc(2026, 3, 29, 5)


def test_lord_howe_leaves_out_half_an_hour():
    howe = ZoneInfo("Australia/Lord_Howe")
    moment = next_moment(utc(2026, 10, 3, 0), howe, time(2, 15))
    assert moment.astimezone(howe).isoformat() == "2026-10-04T02:45:00+11:00"


def test_apia_skipped_a_whole_day_and_friday_is_not_lost_for_the_weekday_after():
    apia = ZoneInfo("Pacific/Apia")
    thursday = moment_of(date(2011, 12, 29), time(7), apia)
    following = next_moment(thursday, apia, time(7))
    assert following - thursday == timedelta(days=1)
    assert following.astimezone(apia).date() == date(2011, 12, 31)


def test_midnight_is_missing_in_sao_paulo_and_the_day_still_has_its_moment():
    sao_paulo = ZoneInfo("America/Sao_Paulo")
    moment = next_moment(utc(2018, 11, 3, 12), sao_paulo, time(0, 30))
    assert moment.astimezone(sao_paulo).isoformat() == "2018-11-04T01:30:00-02:00"


@pytest.mark.parametrize("name", ["Europe/Berlin", "America/New_York", "Australia/Lord_Howe", "America/Santiago"])
@pytest.mark.parametrize("at", [time(0, 30), time(2, 15), time(7)])
def test_dateutil_resolves_every_local_day_of_a_year_to_the_same_moment(name, at):
    zone, theirs = ZoneInfo(name), tz.gettz(name)
    for ahead in range(365):
        day = date(2026, 1, 1) + timedelta(days=ahead)
        # dateutil moves a missing time past the gap only when asked; RFC 5545 says the same moment.
        expected = tz.resolve_imaginary(datetime.combine(day, at, theirs)).astimezone(UTC)
        assert moment_of(day, at, zone) == expected, day


@pytest.mark.parametrize(
    ("week_start", "days"),
    # RFC 5545, 3.8.5.3: "an example where the days generated makes a difference because of WKST".
    [(MO, [(8, 5), (8, 10), (8, 19), (8, 24)]), (SU, [(8, 5), (8, 17), (8, 19), (8, 31)])],
)
def test_weekdays_in_alternate_weeks_agree_with_the_calendar_standard(week_start, days):
    new_york = ZoneInfo("America/New_York")
    start = datetime(1997, 8, 5, 9, tzinfo=new_york)
    rule = rrule(WEEKLY, start, interval=2, count=4, byweekday=(TU, SU), wkst=week_start)
    assert [(moment.month, moment.day) for moment in rule] == days
    found, now = [], moment_of(start.date(), time(9), new_york) - timedelta(seconds=1)
    while now < utc(1997, 9, 1):
        now = next_moment(now, new_york, time(9), {1, 6})
        found.append((now.astimezone(new_york).month, now.astimezone(new_york).day))
    assert set(days) <= set(found)


@pytest.mark.parametrize(
    ("day", "week"),
    [
        (date(2024, 12, 30), (2025, 1, 1)),
        (date(2021, 1, 3), (2020, 53, 7)),
        (date(2027, 1, 3), (2026, 53, 7)),
    ],
)
def test_the_weeks_of_a_new_year_follow_iso_8601(day, week):
    assert tuple(day.isocalendar()) == week
    # Monday 0 here, Monday 1 there: the days of a schedule are the standard's days.
    assert day.weekday() + 1 == week[2]
