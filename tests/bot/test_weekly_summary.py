"""The coach's week comes once a week, whatever happens to its day, its hour and its zone; so does each day's plan."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest
import sqlalchemy as sa
from hypothesis import HealthCheck, Phase, given, settings
from hypothesis import strategies as st

from bot import conversation, joining, schedule
from bot.clock import moment_of
from storage import due, persons
from storage.database import run
from storage.persons import Who
from storage.roster import Roster, RosterCoach
from storage.store import Store
from tests.bot.conversation.conftest import athlete

SUNDAY = 6
COACH = RosterCoach("Inês", "Europe/Lisbon", summary_day=SUNDAY, summary_at=time(18))
MONDAY = datetime(2027, 1, 4, 8, tzinfo=UTC)
# Europe, the south, half hours and three quarters of one, a change of half an hour, and none at all.
ZONES = (
    "Europe/Lisbon",
    "Europe/Zurich",
    "America/Santiago",
    "Australia/Sydney",
    "Australia/Adelaide",
    "Australia/Lord_Howe",
    "Pacific/Chatham",
    "Asia/Kolkata",
    "America/St_Johns",
    "UTC",
)


class Bot:
    """A store with one coach and one athlete, swept as time goes."""

    def __init__(self, coach: RosterCoach = COACH, now: datetime = MONDAY, **of_athlete) -> None:
        self.store, self.coach = Store.open("sqlite://"), coach
        self.mira = athlete("mira", timezone=coach.timezone, tests=(), **of_athlete)
        self.load(coach, now)

    def load(self, coach: RosterCoach, now: datetime) -> None:
        self.coach = coach
        with self.store.transaction() as tx:
            joining.load(tx, Roster(coach, (self.mira,)), now)

    def sweep_at(self, now: datetime) -> None:
        schedule.sweep(self.store, now)

    def rows(self, kind: str, done: bool) -> list[due.Due]:
        with self.store.reading() as tx:
            query = sa.select(due.dues).where(due.dues.c.kind == kind, due.dues.c.done_at.is_not(None) == done)
            return run(tx, query.order_by(due.dues.c.for_date)).all()

    def summaries(self, done: bool = True) -> list[tuple[date, datetime]]:
        """Day and local moment at which they were due, of those sent or of those yet to come."""
        zone = ZoneInfo(self.coach.timezone)
        return [(row.for_date, row.due_at.astimezone(zone)) for row in self.rows("summary", done)]


@pytest.fixture
def bot():
    made = Bot()
    yield made
    made.store.close()


def local(text: str) -> datetime:
    return datetime.fromisoformat(text).replace(tzinfo=ZoneInfo("Europe/Lisbon"))


def shown(moments: list[tuple[date, datetime]]) -> list[str]:
    return [f"{moment:%Y-%m-%d %H:%M}" for _, moment in moments]


def test_a_later_hour_set_after_this_weeks_summary_holds_from_next_week_and_they_go_on(bot):
    bot.sweep_at(local("2027-01-10 18:00"))
    bot.load(replace(COACH, summary_at=time(20)), local("2027-01-10 19:00"))
    for day in ("2027-01-10", "2027-01-17", "2027-01-24"):
        bot.sweep_at(local(f"{day} 18:00"))
        bot.sweep_at(local(f"{day} 20:00"))

    assert shown(bot.summaries()) == ["2027-01-10 18:00", "2027-01-17 20:00", "2027-01-24 20:00"]
    assert shown(bot.summaries(done=False)) == ["2027-01-31 20:00"]


def test_another_day_takes_the_place_of_the_day_before(bot):
    bot.load(replace(COACH, summary_day=2), MONDAY)

    assert shown(bot.summaries(done=False)) == ["2027-01-06 18:00"]


def test_an_hour_of_today_that_has_gone_by_already_costs_nobody_the_week(bot):
    bot.load(replace(COACH, summary_at=time(16)), local("2027-01-10 17:00"))
    bot.sweep_at(local("2027-01-10 17:01"))

    assert shown(bot.summaries()) == ["2027-01-10 16:00"]
    assert shown(bot.summaries(done=False)) == ["2027-01-17 16:00"]


def test_a_summary_that_is_late_is_kept_when_the_roster_is_loaded_before_it_went(bot):
    bot.load(COACH, local("2027-01-11 09:00"))
    bot.sweep_at(local("2027-01-11 09:01"))

    assert shown(bot.summaries()) == ["2027-01-10 18:00"]
    assert shown(bot.summaries(done=False)) == ["2027-01-17 18:00"]


def test_a_coach_who_wants_none_any_more_gets_none(bot):
    bot.load(replace(COACH, summary_day=None, summary_at=None), MONDAY)

    assert bot.summaries(done=False) == []


def test_a_row_that_fires_before_the_hour_of_its_own_day_does_not_end_the_line(bot):
    # As where the data of time zones changed between planting and sending.
    (row,) = bot.rows("summary", done=False)
    with bot.store.transaction() as tx:
        due.schedule(tx, Who("coach", row.coach_id), "summary", row.for_date, row.due_at - timedelta(hours=1))
    bot.sweep_at(local("2027-01-10 17:00"))

    assert shown(bot.summaries(done=False)) == ["2027-01-17 18:00"]


@pytest.mark.parametrize(
    ("kind", "begins", "given_up", "following"),
    [
        ("summary", "2027-01-04 08:00", "2027-01-10 18:00", "2027-01-17 18:00"),
        ("summary", "2027-03-15 08:00", "2027-03-21 18:00", "2027-03-28 18:00"),  # clocks go on in that night
        ("summary", "2027-10-18 08:00", "2027-10-24 18:00", "2027-10-31 18:00"),
        ("plan", "2027-03-27 07:30", "2027-03-27 07:30", "2027-03-28 07:30"),
        ("plan", "2027-10-30 07:30", "2027-10-30 07:30", "2027-10-31 07:30"),
    ],
)
def test_what_follows_one_that_was_given_up_comes_at_its_own_hour(monkeypatch, kind, begins, given_up, following):
    bot = Bot(now=local(begins))
    with bot.store.transaction() as tx:
        conversation.begin(tx, 1, local(begins))
    with monkeypatch.context() as patched:
        patched.setattr(conversation, "handle_due", _fails)
        for minute in range(40):
            bot.sweep_at(local(given_up).astimezone(UTC) + timedelta(minutes=minute))
    (after,) = bot.rows(kind, done=False)
    assert f"{after.due_at.astimezone(ZoneInfo('Europe/Lisbon')):%Y-%m-%d %H:%M}" == following

    bot.sweep_at(after.due_at)
    assert len(bot.rows(kind, done=False)) == 1
    bot.store.close()


def _fails(*_):
    raise ValueError


def test_a_zone_that_the_data_no_longer_have_ends_no_line(bot):
    with bot.store.transaction() as tx:
        conversation.begin(tx, 1, MONDAY)
        persons.update_athlete(tx, 1, {"timezone": "Atlantis/Capital"})
        persons.update_coach(tx, 1, {"timezone": "Atlantis/Capital"})
    for day in range(8):
        for minute in range(0, 60, 10):
            bot.sweep_at(MONDAY + timedelta(days=day, hours=12, minutes=minute))

    assert [len(bot.rows(kind, done=False)) for kind in ("plan", "summary")] == [1, 1]


def _lived(bot, kind, at, zone, late, fails):
    """The days of the rows of a kind, each handled so late, those of `fails` given up after all tries."""
    real, seen = conversation.handle_due, list[date]()
    for number, delay in enumerate(late):
        (row,) = bot.rows(kind, done=False)
        seen.append(row.for_date)
        assert row.due_at == moment_of(row.for_date, at, ZoneInfo(zone))
        now = row.due_at + delay
        try:
            conversation.handle_due = _fails if number in fails else real
            for _ in range(6 if number in fails else 1):
                bot.sweep_at(now)
                now += timedelta(minutes=10)
        finally:
            conversation.handle_due = real
    return seen


@settings(max_examples=12, deadline=None, phases=[Phase.generate], suppress_health_check=list(HealthCheck))
@given(
    zone=st.sampled_from(ZONES),
    day=st.integers(0, 6),
    at=st.times().map(lambda one: one.replace(second=0, microsecond=0)),
    week=st.integers(0, 51),
    late=st.lists(st.integers(0, 50), min_size=6, max_size=6),
    fails=st.sets(st.integers(0, 5)),
)
def test_every_week_has_its_summary_once_at_the_local_hour(zone, day, at, week, late, fails):
    """However late each is handled, and whichever are given up; half a year holds every change of the clocks."""
    start = MONDAY + timedelta(weeks=week)
    bot = Bot(RosterCoach("Inês", zone, summary_day=day, summary_at=at), start)
    seen = _lived(bot, "summary", at, zone, [timedelta(hours=one) for one in late], fails)
    assert {one.weekday() for one in seen} == {day}
    assert [later - earlier for earlier, later in pairwise(seen)] == [timedelta(weeks=1)] * 5
    bot.store.close()


@settings(max_examples=12, deadline=None, phases=[Phase.generate], suppress_health_check=list(HealthCheck))
@given(
    zone=st.sampled_from(ZONES),
    at=st.times().map(lambda one: one.replace(second=0, microsecond=0)),
    day=st.integers(0, 364),
    late=st.lists(st.integers(0, 20), min_size=5, max_size=5),
    fails=st.sets(st.integers(0, 4)),
)
def test_every_day_has_its_plan_once_at_the_local_hour(zone, at, day, late, fails):
    start = moment_of(date(2027, 1, 4) + timedelta(day), at, ZoneInfo(zone))
    bot = Bot(RosterCoach("Inês", zone), start, plan_at=at)
    with bot.store.transaction() as tx:
        conversation.begin(tx, 1, start)
    seen = _lived(bot, "plan", at, zone, [timedelta(minutes=one) for one in late], fails)
    assert [later - earlier for earlier, later in pairwise(seen)] == [timedelta(1)] * 4
    bot.store.close()
