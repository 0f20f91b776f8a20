"""Which days are for pulling, and where a session slides."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from planner.calendar import pulling_offsets, slide

MONDAY = date(2027, 1, 4)


@pytest.mark.parametrize(
    ("offsets", "length", "count", "expected"),
    [
        ((0, 3), 7, 2, (0, 3)),
        ((0, 1), 7, 2, (0,)),  # no 48 hours between them
        ((0, 2, 4), 7, 2, (0, 4)),
        ((0, 2, 4), 7, 3, (0, 2, 4)),
        ((0, 2, 4, 6), 8, 2, (0, 4)),
        ((0, 1, 2, 3, 4, 5, 6), 7, 3, (0, 2, 4)),
        ((0, 6), 7, 2, (0,)),  # Sunday and Monday are neighbours too
        ((2,), 7, 4, (2,)),
        ((), 7, 2, ()),
    ],
)
def test_pulling_days_are_spread(offsets: tuple[int, ...], length: int, count: int, expected: tuple[int, ...]):
    assert pulling_offsets(offsets, length, count, 2) == expected


def test_a_session_slides_only_where_48_hours_fit():
    next_on = MONDAY + timedelta(3)
    assert slide(MONDAY + timedelta(1), MONDAY, next_on, 2, frozenset()) == MONDAY + timedelta(1)
    assert slide(MONDAY + timedelta(2), MONDAY, next_on, 2, frozenset()) is None
    assert slide(MONDAY + timedelta(1), MONDAY, next_on, 2, frozenset({MONDAY + timedelta(1)})) is None
