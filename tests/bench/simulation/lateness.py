"""When a rung was owed, and which promotions came too late.

A rung is owed from the first day on which the hidden body meets the trade's own gates, with the rung before in the
plan: the relative added strength that the ladder asks for, the reps that the dose to be held leaves at 7, and the reps
of the proof. Nobody skips, so nothing is owed before the rung before was programmed. It is late more than three blocks
after that, promoted or not; rungs owed in the last three blocks of a season are not judged.

Reps are those of a fresh day, with the practice that the body has so far: a test can show no more. `practised` gives
the stricter figure: as if every rung were practised as soon as it is strong enough.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, timedelta

from tests.bench.simulation.hidden import PROOF, RUNG_LOAD, Hidden

BLOCKS_LATE = timedelta(weeks=15)
RUNGS = [rung for rung in RUNG_LOAD if rung != "counterweight"]
PROOFS = dict.fromkeys(RUNGS, PROOF) | {"one_arm_pull_up": 2}
RELATIVE = {"archer_elbow_lower": 0.45, "hand_on_biceps": 0.75}
# Reps to failure that the rung before needs: 2x2, 2x3 and 2x1 at 7 leave three more; two reps shown are two.
BEFORE = {
    "archer_elbow_full": ("archer_elbow_lower", 5),
    "archer_shoulder": ("archer_elbow_full", 6),
    "hand_on_biceps": ("archer_shoulder", 4),
    "hand_on_shoulder": ("hand_on_biceps", 4),
    "one_arm_pull_up": ("hand_on_shoulder", 2),
}
# What each rung's test asks for; those that begin with the lower half are tested in it.
TESTED = {
    "archer_elbow_lower": ("archer_ring_elbow", "lower_half"),
    "archer_elbow_full": ("archer_ring_elbow", "full"),
    "archer_shoulder": ("archer_ring_shoulder", "full"),
    "hand_on_biceps": ("one_arm_hand_on_biceps", "lower_half"),
    "hand_on_shoulder": ("one_arm_hand_on_shoulder", "lower_half"),
    "one_arm_pull_up": ("one_arm_pull_up", "full"),
}


def met(body: Hidden, *, practised: bool = False) -> frozenset[str]:
    """The rungs whose gates and proof the body would meet today."""
    reps = {rung: _practised(body, rung) if practised else _fresh(body, rung) for rung in RUNGS}
    relative = body.pull / body.bodyweight_kg - 1
    found = set()
    for rung in RUNGS:
        before, least = BEFORE.get(rung, (rung, 0))
        if relative >= RELATIVE.get(rung, 0.0) and reps[rung] >= PROOFS[rung] and reps[before] >= least:
            found.add(rung)
    return frozenset(found)


def _practised(body: Hidden, rung: str) -> float:
    return min(body.rung_reps(rung, side) for side in ("left", "right"))


def _fresh(body: Hidden, rung: str) -> float:
    movement, rom = TESTED[rung]
    asked = {"movement": movement, "rom": rom, "load_kg": 0.0, "assist_kg": 0.0, "pauses": ()}
    return min(body.most_reps(asked | {"side": side}, fresh=True) for side in ("left", "right"))


def late(days: list[frozenset[str]], start: date, promotions: Iterable[tuple[date, str]]) -> tuple[int, int]:
    """(promotions too late or still owed, rungs owed early enough to judge). `days`: what was met, day by day."""
    got = {rung: day for day, rung in promotions}
    end, before = start + timedelta(len(days)), start
    too_late = judged = 0
    for rung in RUNGS:
        owed = next((n for n in range((before - start).days, len(days)) if rung in days[n]), None)
        if owed is not None and start + timedelta(owed) + BLOCKS_LATE < end:
            judged += 1
            too_late += got.get(rung, end) > start + timedelta(owed) + BLOCKS_LATE
        if rung not in got:
            break
        before = got[rung]
    return too_late, judged
