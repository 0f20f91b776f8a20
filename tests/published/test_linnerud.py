"""The pull-ups of twenty middle-aged men: chins and weight in pounds.

Source: linnerud (Tenenhaus 1998, in scikit-learn, BSD).
"""

import math
from datetime import date

import numpy as np
import pytest
from sklearn.datasets import load_linnerud

from planner.evidence import errors_of, measure
from planner.facts import Session, WorkSet
from planner.repetitions import NoEvidence, one_rep_max_kg
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
    estimates = []
    for chins, pounds in zip(CHINS, POUNDS, strict=True):
        kg = kg_from_lb(float(pounds))
        try:
            estimates.append((kg, one_rep_max_kg(kg, int(chins), 10)))
        except NoEvidence:
            continue

    assert (len(estimates), len(CHINS) - len(estimates)) == (13, 7)
    assert all(one >= kg for kg, one in estimates)


def test_the_seven_are_floors_of_twelve():
    errors = errors_of(default_rules())
    found = [
        measure(Session(date(1998, 1, 1), (WorkSet("chin_up", int(chins), rpe=10),)), 80.0, errors)["chin_up", None]
        for chins in CHINS
    ]

    floors = [one for one in found if one.kind == "floor"]
    assert len(floors) == 7
    assert all(math.exp(one.log_e1rm) == pytest.approx(80.0 * 1.4) for one in floors)
