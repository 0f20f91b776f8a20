"""Every code a `Reason` or an `Alert` may carry, and the names of its values: the wording has a sentence for each.

Values in brackets of a sentence are optional: `before_kg`, `before_reps` and `before_on` (the day of the last session
of the same kind, that a load is compared with) are missing where nothing comparable was done before, `side`, `score`
and `until` may be None. Units are in the names; `percent` is of 100; days are dates.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

_LOAD = ("movement", "load_kg", "reps", "rpe", "before_kg", "before_reps", "before_on")
_PAIN = ("site", "side", "score")

REASONS: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        # No training at all
        "not_screened": (),
        "warning_sign": ("sign", "since"),
        "paused": ("since", "until"),
        # Days
        "away_away": ("since", "until"),
        "away_ill": ("since", "until"),
        "away_pause": ("since", "until"),
        "session_moved": ("from_day", "to_day"),
        "session_slid": ("from_day", "to_day"),
        "session_gone": ("from_day", "to_day"),  # of the day it left
        "session_dropped": ("day",),
        "session_done_early": ("day", "done_on"),
        "comeback": ("days", "percent", "rpe"),
        # Deload before its time
        "deload_effort": ("over_rpe", "sessions"),
        "deload_strength_down": ("percent",),
        "deload_pain": ("site", "score"),
        "deload_ordered": ("day",),
        # Load of the main lift
        "load_first": (*_LOAD, "e1rm_kg"),  # nothing of this kind of day was done before
        "load_block": (*_LOAD, "e1rm_kg"),  # other reps than last time: the block's week asks for it
        "load_up": (*_LOAD, "e1rm_kg"),
        "load_same": (*_LOAD, "e1rm_kg"),
        "load_down": (*_LOAD, "e1rm_kg"),
        "load_test": (*_LOAD, "e1rm_kg"),
        "load_capped": (*_LOAD, "percent"),  # at most so far above the best comparable set of four weeks
        "load_after_gap": _LOAD,  # nothing comparable of late: not above what was last done
        "load_deload": _LOAD,
        "load_cut_effort": _LOAD,  # last time two or more points over the ceiling
        "load_hold_effort": _LOAD,  # last time a point over the ceiling
        "load_hold_short": _LOAD,  # last time fewer reps than asked, and no effort told
        "load_hold_pain": _LOAD,
        "load_pain_cut": (*_LOAD, "percent"),
        "load_absence": (*_LOAD, "percent"),
        "load_fewer_reps": (*_LOAD, "wanted_reps"),  # bodyweight is all there is to take off
        "load_assisted": ("movement", "assist_kg"),
        "load_pulldown": ("movement", "load_kg"),
        "load_unknown": ("movement", "rpe"),  # no evidence yet: as many as the ceiling allows
        "load_locked": ("load_kg", "until"),
        "sets_ordered": ("movement", "sets", "reps", "load_kg"),
        "step_ordered": ("movement", "sets", "reps", "load_kg", "was_sets", "was_reps", "planned_kg"),
        "step_held": ("movement",),  # the coach's step for every week has no room in the rules today
        "bodyweight_only": ("movement", "reps", "rpe"),  # nothing to hang weight on
        "bodyweight_changed": ("movement", "was_kg", "now_kg", "before_kg"),
        "movement_substituted": ("movement", "before"),
        "movement_left_out": ("movement", "before"),
        "movement_swapped": ("movement", "before"),
        "nothing_to_pull_on": ("movement",),
        "grip_for_pain": ("movement", "before"),
        "grip_of_block": ("movement", "before"),
        # Dose and rung
        "dose_of_rung": ("rung", "dose", "sets"),
        "dose_volume": ("rung", "sets", "reps", "rpe"),
        "dose_grows": ("rung", "dose", "before"),
        "dose_shrinks": ("rung", "dose", "before", "sessions"),
        "third_set": ("rung", "sets"),
        "exposures_capped": ("rung", "reps", "wanted_reps"),  # one-arm reps a side today
        "joints_shared": ("rung", "sets"),
        "hold_of_best": ("rung", "seconds", "best_s", "sets"),
        "hold_unknown": ("rung",),
        "hold_test": ("rung",),
        "skill_not_possible": ("rung", "movement"),
        "skill_left_out": ("rung", "movement"),
        "skill_out_pain": ("rung",),
        "step_back_pain": ("rung", "before"),
        "rung_test": ("rung", "reps"),
        "no_test_pain": ("rung",),
        "no_test_exposures": ("rung",),
        "rung_approved": ("rung", "before"),
        "rung_set_by_coach": ("rung", "before"),
        "rung_after_absence": ("rung", "before", "days"),
        # Proposals
        "proof_shown": ("rung", "on_day", "reps_left", "reps_right", "reps", "seconds"),
        "clips_missing": ("sides", "rung"),
        "reps_missed": ("sessions", "rung"),
        # Pain
        "pain_hold": _PAIN,
        "pain_no_score": _PAIN,
        "pain_next_morning": _PAIN,
        "pain_rising": _PAIN,
        "pain_three_sessions": _PAIN,
        "pain_over": _PAIN,
        "pain_at_rest": _PAIN,
    }
)

ALERTS: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "stopped_by_sign": ("sign", "since"),
        "screening_open": (),
        "pain_stop": _PAIN,
        "pain_step_down": (*_PAIN, "why"),
        "pain_step_back": (*_PAIN, "why"),
        "proposal_waiting": ("ladder", "rung", "kind"),
        "silent": ("sessions",),
        "strength_down": ("percent",),
    }
)
