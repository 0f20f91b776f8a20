"""Every sentence that the code asks for stands in every language, and every slot gets its value."""

from __future__ import annotations

import ast
import re
from datetime import date
from pathlib import Path

import pytest

from bot.conversation.reasons import order_in_words, reason_in_words
from bot.wording.catalogue import CATALOGUES, NoSuchSentence, Wording, languages, wording_for
from planner import ladders, movements
from planner.facts import Order, OrderKind
from planner.plan import Alert, Reason
from planner.reasons import ALERTS, REASONS
from tests.bot.wording.catalogues import messages

BOT = CATALOGUES.parent
DAY = date(2027, 1, 4)
EVERY = sorted(languages())
# What a key with a slot in its name may become: `f"plan-part-{part}"`.
FAMILIES = {
    "plan-part": ("warm_up", "skill", "main", "accessory"),
    "plan-heading": ("training", "deload", "test", "rest"),
    "day-kind": ("training", "deload", "test", "rest"),
    "pain": ("fine", "hold", "step_down", "stop", "step_back"),
    "side": ("left", "right"),
    "set": ("lower_half", "upper_half"),
    "set-at": ("top", "middle", "bottom"),
    "equipment": (
        "bar",
        "rings",
        "belt",
        "pulley",
        "bands",
        "lat_pulldown",
        "parallettes",
        "wall",
        "dumbbells",
        "bench",
    ),
    "decided": ("approve", "decline"),
    "told": ("promotion", "step_back"),
    "proposal": ("promotion", "step_back"),
}


def asked_for() -> set[str]:
    """The plain keys in calls of `say` and `answer`."""
    found = set()
    for path in [*BOT.rglob("*.py")]:
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if not isinstance(node, ast.Call) or not isinstance(node.func, ast.Attribute) or not node.args:
                continue
            at = 1 if node.func.attr == "_confirm" else 0
            if node.func.attr not in ("say", "answer", "_confirm") or len(node.args) <= at:
                continue
            if isinstance(node.args[at], ast.JoinedStr):
                continue  # a family: see FAMILIES
            words = [part.value for part in ast.walk(node.args[at]) if isinstance(part, ast.Constant)]
            found |= {word for word in words if isinstance(word, str) and re.fullmatch(r"[a-z_]+(-[a-z_]+)+", word)}
    return found


@pytest.mark.parametrize("language", EVERY)
def test_every_sentence_asked_for_is_there(language):
    there, wanted = messages(language), asked_for()

    assert len(wanted) > 100  # the search itself finds what it looks for
    assert not sorted(wanted - set(there))


@pytest.mark.parametrize("language", EVERY)
def test_every_member_of_a_family_of_sentences_is_there(language):
    there = messages(language)
    wanted = {f"{family}-{one}" for family, members in FAMILIES.items() for one in members}

    assert not sorted(wanted - set(there))


@pytest.mark.parametrize("language", EVERY)
def test_every_movement_rung_ladder_site_and_sign_has_a_name(language):
    from bot.reading.reading import RED_FLAGS, SITES

    there = messages(language)
    wanted = {f"movement-{one}" for one in movements.catalogue()}
    wanted |= {f"rung-{rung}" for ladder in ladders.shipped().values() for rung in ladder.by_id}
    wanted |= {f"ladder-{one}" for one in ladders.shipped()}
    wanted |= {f"site-{one}" for one in SITES} | {f"sign-{one}" for one in RED_FLAGS}

    assert not sorted(wanted - set(there))


def _value(name: str) -> object:
    if name in ("since", "until", "day", "from_day", "to_day", "on_day", "done_on"):
        return DAY
    words = {
        "movement": "pull_up", "before": "chin_up", "rung": "archer_shoulder", "site": "elbow_inner", "side": "left",
        "sides": "left, right", "sign": "pop", "dose": "2x1 pause top", "ladder": "one_arm_pull_up",
        "kind": "promotion", "why": "pain_rising",
    }  # fmt: skip
    return words.get(name, 2.5)


@pytest.mark.parametrize("language", EVERY)
@pytest.mark.parametrize("code", sorted(REASONS))
def test_every_reason_has_a_sentence_with_no_slot_left_open(language, code):
    text = reason_in_words(Reason(code, {name: _value(name) for name in REASONS[code]}), Wording(language))

    assert "{" not in text
    assert "_" not in text


@pytest.mark.parametrize("language", EVERY)
@pytest.mark.parametrize("code", sorted(ALERTS))
def test_every_alert_has_a_sentence_with_no_slot_left_open(language, code):
    text = reason_in_words(
        Alert(code, 2, DAY, {name: _value(name) for name in ALERTS[code]}), Wording(language), "alert"
    )

    assert "{" not in text


@pytest.mark.parametrize("code", sorted(REASONS))
def test_reasons_can_do_without_what_is_optional(code):
    # Missing or None by planner/reasons.py.
    optional = {"before_kg", "before_reps", "before_on", "side", "score", "until"}
    told_with = {name: _value(name) for name in REASONS[code]}
    missing = {"load_up", "load_same", "load_down", "load_block", "load_cut_effort", "load_hold_effort"}
    bare = {name: None if name in optional else value for name, value in told_with.items()}
    if code not in missing:  # these only come where something was done before
        bare = {name: value for name, value in bare.items() if name not in ("before_kg", "before_reps", "before_on")}

    assert "{" not in reason_in_words(Reason(code, bare), Wording("en"))


@pytest.mark.parametrize("kind", OrderKind.__args__)
def test_every_order_has_words(kind):
    order = Order(kind, DAY, rung="archer_shoulder", movement="pull_up", sets=4, reps=3, rule="skill.rpe", value=7.0)

    assert "{" not in order_in_words(order, Wording("en"))


def test_an_unknown_sentence_is_a_fault_of_the_program():
    with pytest.raises(NoSuchSentence):
        Wording("en").say("no-such-sentence")


def test_values_stand_in_the_text_as_they_are():
    assert "<b>&_*" in Wording("en").say("told", name="<b>&_*")


@pytest.mark.parametrize(
    ("tag", "language"),
    [("en-GB", "en"), ("xx", "en"), ("en", "en"), ("de-AT", "de"), ("es-MX", "es"), ("es-419", "es")],
)
def test_a_language_without_a_catalogue_falls_back(tag, language):
    assert wording_for(tag).language == language


@pytest.mark.parametrize(
    ("language", "unit", "kg", "shown"),
    [
        ("en", "kg", 17.5, "17.5 kg"),
        ("de", "kg", 17.5, "17,5 kg"),
        ("en", "kg", 20.0, "20 kg"),
        ("en", "lb", 20.41165665, "45 lb"),  # 45 lb by the agreement of 1959
    ],
)
def test_loads_are_told_in_the_unit_and_notation_of_their_reader(language, unit, kg, shown):
    assert Wording(language, unit).load(kg) == shown


@pytest.mark.parametrize(
    ("tag", "load"),
    # Decimal signs by CLDR.
    [("es", "17,5 kg"), ("es-ES", "17,5 kg"), ("es-MX", "17.5 kg"), ("de-AT", "17,5 kg"), ("de-CH", "17.5 kg")],
)
def test_numbers_follow_the_country_where_one_is_named(tag, load):
    assert wording_for(tag).load(17.5) == load


def test_a_country_that_nobody_knows_changes_nothing():
    assert wording_for("de-QQ").load(17.5) == "17,5 kg"
    assert wording_for("xx-YY").load(17.5) == "17.5 kg"


def test_catalogues_are_plain_text():
    # Channels escape; markup in a sentence would show as itself.
    for path in Path(CATALOGUES).rglob("*.ftl"):
        assert not re.search(r"</?[a-z]+>", path.read_text(encoding="utf-8")), path.name
