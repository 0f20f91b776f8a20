"""The pull-ups of twenty middle-aged men: chins and weight in pounds.

Source: linnerud (Tenenhaus 1998, in scikit-learn, BSD).
"""

import math
from datetime import date

import numpy as np
import pytest
from sklearn.datasets import load_linnerud

from planner.evidence import Measurement, errors_of, measure
from planner.facts import Session, WorkSet
from planner.rules import default_rules
from planner.units import kg_from_lb

DATA = load_linnerud()
CHINS = DATA.data[:, DATA.feature_names.index("Chins")]
POUNDS = DATA.target[:, DATA.target_names.index("Weight")]


def test_the_data_are_those_of_the_source():
    assert CHINS.mean() == pytest.approx(9.45)
    assert np.corrcoef(CHINS, POUNDS)[0, 1] == pytest.approx(-0.3897, abs=5e-5)


def test_pounds_become_kilograms_without_changing_what_goes_with_what():
    kg = [kg_from_lb(float(pounds)) for pounds in POUNDS]

    assert np.corrcoef(CHINS, kg)[0, 1] == pytest.approx(-0.3897, abs=5e-5)
    assert kg_from_lb(45) == pytest.approx(20.41165665, abs=1e-9)


def test_thirteen_count_as_evidence_and_seven_do_not():
    bodies_kg = [kg_from_lb(float(pounds)) for pounds in POUNDS]
    found = [_measured(int(chins), kg) for chins, kg in zip(CHINS, bodies_kg, strict=True)]

    estimates = [(kg, one) for kg, one in zip(bodies_kg, found, strict=True) if one.kind != "floor"]
    assert (len(estimates), len(CHINS) - len(estimates)) == (13, 7)
    assert all(math.exp(one.log_e1rm) >= kg - 1e-9 for kg, one in estimates)


def _measured(chins: int, bodyweight_kg: float) -> Measurement:
    session = Session(date(1998, 1, 1), (WorkSet("chin_up", chins, rpe=10),))
    return measure(session, bodyweight_kg, errors_of(default_rules()))["chin_up", None]


def test_the_seven_are_floors_of_twelve():
    floors = [one for chins in CHINS if (one := _measured(int(chins), 80.0)).kind == "floor"]
    assert len(floors) == 7
    assert all(math.exp(one.log_e1rm) == pytest.approx(80.0 * 1.4) for one in floors)
