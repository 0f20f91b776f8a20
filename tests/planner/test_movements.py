import pytest

from planner.movements import MovementError, catalogue, closest_possible, joint_of, movement, read

# The ids of the reading contract.
CONTRACT = """
dead_hang scapular_pull_up ring_row lat_pulldown band_pull_up pull_up chin_up neutral_grip_pull_up ring_pull_up
archer_pull_up archer_ring_elbow archer_ring_shoulder one_arm_hand_on_biceps one_arm_hand_on_shoulder
one_arm_counterweight one_arm_pull_up one_arm_chin_up one_arm_hang pull_up_top_hold muscle_up ring_muscle_up row
biceps_curl hammer_curl wrist_curl face_pull external_rotation
push_up dip ring_dip pike_push_up handstand_push_up handstand_hold planche_lean tuck_planche advanced_tuck_planche
straddle_planche full_planche
tuck_front_lever advanced_tuck_front_lever one_leg_front_lever straddle_front_lever full_front_lever back_lever
hollow_hold l_sit hanging_leg_raise squat pistol_squat split_squat nordic_curl
""".split()
SITES = """elbow_inner elbow_outer elbow biceps forearm wrist hand shoulder neck upper_back lower_back chest hip knee
ankle other""".split()


def test_the_catalogue_has_every_movement_of_the_reading_contract_and_no_other():
    assert sorted(catalogue()) == sorted(CONTRACT)


def test_every_pain_site_but_other_has_a_joint():
    assert [site for site in SITES if joint_of(site) is None] == ["other"]


def test_one_arm_reps_are_exposures_and_always_one_sided():
    exposures = {name for name, made in catalogue().items() if made.one_arm}

    assert "one_arm_pull_up" in exposures
    assert "archer_ring_elbow" in exposures
    assert "pull_up" not in exposures
    assert all(catalogue()[name].one_sided for name in exposures)


def test_a_stack_carries_no_bodyweight_and_the_bar_all_of_it():
    assert movement("lat_pulldown").bodyweight_share == 0.0
    assert movement("pull_up").bodyweight_share == 1.0


@pytest.mark.parametrize(
    ("wanted", "equipment", "found"),
    [
        ("pull_up", {"bar"}, "pull_up"),
        ("pull_up", {"rings"}, "ring_pull_up"),
        ("pull_up", {"dumbbells"}, "row"),
        ("pull_up", set(), None),
        ("one_arm_counterweight", {"bar"}, "one_arm_hand_on_biceps"),
        ("push_up", set(), "push_up"),
    ],
)
def test_travel_gets_the_closest_movement_that_the_equipment_allows(wanted, equipment, found):
    assert closest_possible(wanted, equipment) == found


def test_an_excluded_movement_is_passed_over():
    assert closest_possible("pull_up", {"bar", "rings"}, excluded={"pull_up"}) == "ring_pull_up"


def test_a_movement_of_the_coachs_own_is_taken_to_load_the_arms():
    assert movement("towel_pull").loads_site("elbow_inner")


def test_a_substitute_that_does_not_exist_is_told_with_its_line():
    text = '\n[movement.a]\npattern = "x"\nsubstitutes = ["b"]\n'
    with pytest.raises(MovementError, match=r"mine\.toml, line 2: a: no movement 'b'"):
        read(text, "mine.toml")


def test_an_unknown_key_is_told_with_its_line():
    with pytest.raises(MovementError, match=r"mine\.toml, line 1: a: unknown key 'patern'"):
        read('[movement.a]\npatern = "x"\n', "mine.toml")
