"""Hostile updates through the whole way; `tests/bench/fuzz.py` does it by the hundred thousand."""

from tests.journeys.hostile import marked

UPDATES = 2000


def test_hostile_updates_break_nothing_and_tell_nobody_of_another_coachs_people():
    with marked(seed=5) as here:
        for _ in range(UPDATES):
            here.take(here.update())
        assert here.failures() == []
        assert here.leaks() == []
        assert here.told_of_their_own() > 0
        assert min(here.outcomes[kind] for kind in ("text", "press", "clip", "member", "nothing to us")) > 50
