"""Time: the only module that asks the machine what time it is, and the one place where local hours become moments."""

from __future__ import annotations

from collections.abc import Collection
from datetime import UTC, date, datetime, time, timedelta
from typing import Protocol
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

EVERY_DAY = frozenset(range(7))
# Names that zone databases carry but that say nothing lasting of a place.
NOT_PLACES = frozenset({"localtime", "Factory", "posixrules"})


class UnknownZone(ValueError):
    """A time zone that the IANA database does not have, or that is no place."""

    def __init__(self, name: str) -> None:
        super().__init__(f"{name!r} is no IANA time zone; write one like Europe/Lisbon")
        self.name = name


class ClockRanBack(ValueError):
    """A virtual clock was asked to go back."""


class Clock(Protocol):
    """What time is it? Aware, in UTC."""

    def now(self) -> datetime: ...


class SystemClock:
    """The machine's clock."""

    def now(self) -> datetime:
        return datetime.now(UTC)  # noqa: TID251  the one place


class VirtualClock:
    """A clock that stands still until it is moved, and never runs back."""

    def __init__(self, start: datetime | None = None) -> None:
        self._now = None if start is None else start.astimezone(UTC)

    def now(self) -> datetime:
        if self._now is None:
            raise ClockRanBack("the clock has not been set yet")
        return self._now

    @property
    def started(self) -> bool:
        return self._now is not None

    def move_to(self, moment: datetime) -> None:
        """Set the clock.

        Raises:
            ClockRanBack: `moment` is earlier than the clock.
        """
        moment = moment.astimezone(UTC)
        if self._now is not None and moment < self._now:
            raise ClockRanBack(f"{moment.isoformat()} is before {self._now.isoformat()}")
        self._now = moment


def zone_named(name: str) -> ZoneInfo:
    """The IANA zone of that name.

    Raises:
        UnknownZone: No such zone, or one that names no place (`localtime`, `Factory`).
    """
    if name in NOT_PLACES or name.startswith(("posix/", "right/")):
        raise UnknownZone(name)
    try:
        return ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):  # OSError: "Europe" is a directory of the database
        raise UnknownZone(name) from None


def next_moment(now_utc: datetime, zone: ZoneInfo, at: time, weekdays: Collection[int] = EVERY_DAY) -> datetime:
    """The next moment, in UTC, at which clocks in `zone` show `at` on one of `weekdays` (Monday 0).

    An hour that the clock change leaves out takes the offset before the gap, so the moment is still that day's; of an
    hour that comes twice, the first counts (RFC 5545, 3.3.5). So each local day has one moment, never none or two.

    Raises:
        ValueError: `weekdays` is empty.
    """
    if not EVERY_DAY.intersection(weekdays):
        raise ValueError("no weekday to look for")
    day = now_utc.astimezone(zone).date() - timedelta(days=1)
    while True:
        moment = moment_of(day, at, zone)
        if moment > now_utc and day.weekday() in weekdays:
            return moment
        day += timedelta(days=1)


def moment_of(day: date, at: time, zone: ZoneInfo) -> datetime:
    """The moment, in UTC, of local `at` on `day`; gaps and doubled hours as in `next_moment`."""
    return datetime.combine(day, at.replace(fold=0), zone).astimezone(UTC)
