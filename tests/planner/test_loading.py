import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.loading import Basis, BestSet, Plates, cap_kg, prescribe

KG = Plates(1.25)


def test_the_load_is_what_hangs_on_the_belt_rounded_down_to_the_plates():
    # 100 kg at 4 reps to failure from 4: 100 * 33 / 36 = 91.67, less 70 is 21.67
    loading = prescribe(Basis(100.0, (4, 4)), 3, 9, 70.0, KG)

    assert loading.load_kg == 21.25
    assert loading.limited_by == "strength"


def test_it_is_never_more_than_the_cap_above_the_best_set_of_late():
    loading = prescribe(Basis(130.0), 3, 9, 70.0, KG, best=[BestSet(90.0, 3, 4)])

    assert loading.system_load_kg <= 90.0 * 1.05
    assert loading.limited_by == "best_set"


def test_sets_of_the_same_kind_are_what_a_rise_is_measured_from():
    heavy, volume, long = BestSet(95.0, 3, 4), BestSet(85.0, 6, 8), BestSet(70.0, 12, 12)

    assert cap_kg([heavy, volume, long], 5, 8, 0.05) == pytest.approx(85.0 * 1.05)
    assert cap_kg([heavy, volume, long], 3, 8, 0.05) == pytest.approx(95.0 * 1.05)


def test_without_a_set_of_the_kind_others_count_at_what_they_were_worth():
    assert cap_kg([BestSet(90.0, 12, 12)], 3, 8, 0.0) == 90.0
    assert cap_kg([BestSet(90.0, 3, 4)], 6, 8, 0.0) < 90.0
    assert cap_kg([], 3, 8, 0.05) is None


def test_a_ceiling_from_outside_holds():
    loading = prescribe(Basis(100.0), 3, 8, 70.0, KG, ceiling_kg=80.0)

    assert loading.load_kg == 10.0
    assert loading.limited_by == "ceiling"


def test_below_bodyweight_the_reps_are_cut_and_the_load_is_zero():
    # 85 kg allows about five reps to failure at 75 kg; six at RPE 8 are too many.
    loading = prescribe(Basis(85.0, (5, 5)), 6, 8, 75.0, KG)

    assert (loading.load_kg, loading.assist_kg) == (0.0, 0.0)
    assert 1 <= loading.reps < 6
    assert loading.limited_by == "bodyweight"


def test_weaker_than_one_rep_asks_for_assistance_rounded_up():
    loading = prescribe(Basis(70.0, (1, 1)), 3, 8, 75.0, KG)

    assert loading.load_kg == 0.0
    assert loading.assist_kg >= 75.0 - 70.0
    assert loading.assist_kg % 1.25 == pytest.approx(0.0)


def test_with_a_pulley_the_reps_stay_and_kilograms_come_off():
    loading = prescribe(Basis(85.0, (5, 5)), 6, 8, 75.0, KG, assistance=True)

    assert loading.reps == 6
    assert loading.assist_kg > 0.0


@given(
    st.floats(30, 250),
    st.floats(1, 12),
    st.integers(1, 12),
    st.floats(5, 10),
    st.floats(40, 130),
    st.sampled_from([Plates(0.5), Plates(1.25), Plates(2.5), Plates(5.0), Plates(2.5, "lb"), Plates(10, "lb")]),
    st.floats(0.8, 1.0),
)
def test_no_load_is_ever_above_what_strength_gives(e1rm, n, reps, rpe, bodyweight, plates, scale):
    loading = prescribe(Basis(e1rm, (n, n)), reps, rpe, bodyweight, plates, scale=scale)

    assert loading.load_kg >= 0.0
    assert loading.assist_kg >= 0.0
    assert loading.load_kg == 0.0 or loading.assist_kg == 0.0
    assert 1 <= loading.reps <= reps
    if loading.reps == reps:
        assert loading.system_load_kg <= loading.uncapped_kg + 1e-4
