"""Kaplan-Meier against statsmodels' `SurvfuncRight`."""

import numpy as np
import pytest
from statsmodels.duration.survfunc import SurvfuncRight

from planner.survival import Stay, still_there, weeks_until


@pytest.mark.parametrize("seed", range(8))
def test_the_curve_and_its_errors_match_the_reference(seed):
    chance = np.random.default_rng(seed)
    weeks = chance.integers(4, 40, 60).astype(float)
    left = chance.random(60) < 0.6
    reference = SurvfuncRight(weeks, left.astype(int))

    steps = still_there(Stay(float(w), bool(gone)) for w, gone in zip(weeks, left, strict=True))

    assert [step.weeks for step in steps] == pytest.approx(list(reference.surv_times))
    assert [step.share for step in steps] == pytest.approx(list(reference.surv_prob))
    alive = [(step.se, float(se)) for step, se in zip(steps, reference.surv_prob_se, strict=True) if step.share > 0]
    assert [ours for ours, _ in alive] == pytest.approx([theirs for _, theirs in alive])
    assert weeks_until(steps, 0.5) == pytest.approx(reference.quantile(0.5))
