import pytest

from planner.units import kg_from_lb, lb_from_kg, round_down_to_plates, round_up_to_plates


@pytest.mark.parametrize(
    ("load_kg", "step", "down", "up"),
    [(21.2, 1.25, 20.0, 21.25), (21.25, 1.25, 21.25, 21.25), (0.6, 2.5, 0.0, 2.5), (0.3, 0.1, 0.3, 0.3)],
)
def test_loads_are_rounded_down_and_assistance_up(load_kg, step, down, up):
    assert round_down_to_plates(load_kg, step) == pytest.approx(down)
    assert round_up_to_plates(load_kg, step) == pytest.approx(up)


def test_a_load_is_never_below_zero():
    assert round_down_to_plates(-3.0, 1.25) == 0.0


def test_whole_pounds_stay_whole_pounds():
    load = round_down_to_plates(kg_from_lb(45), 2.5, "lb")

    assert lb_from_kg(load) == pytest.approx(45.0)


def test_a_plate_step_of_nothing_is_refused():
    with pytest.raises(ValueError, match="above 0"):
        round_down_to_plates(10.0, 0.0)
