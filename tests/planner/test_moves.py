"""Where sessions are after moves: what was said later is about the same session."""

from __future__ import annotations

from datetime import date

import pytest

from planner.calendar import where_moved
from planner.facts import Move

MON, THU, FRI, SAT = (date(2027, 1, day) for day in (4, 7, 8, 9))


@pytest.mark.parametrize(
    ("moves", "found"),
    [
        ([(THU, FRI)], {THU: FRI}),
        ([(THU, FRI), (FRI, THU)], {FRI: THU}),
        ([(THU, FRI), (FRI, SAT)], {THU: SAT, FRI: SAT}),
        ([(THU, FRI), (THU, SAT)], {THU: SAT}),
        ([(THU, FRI), (FRI, THU), (THU, SAT)], {THU: SAT, FRI: SAT}),
    ],
)
def test_moves_are_followed_in_the_order_in_which_they_were_said(moves, found):
    assert where_moved(Move(MON, *one) for one in moves) == found
