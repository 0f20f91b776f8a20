"""Every language says what English says, with the same values, in the plural forms that it has."""

from __future__ import annotations

import re
from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from bot.conversation import coach_everyone, coach_follow, privacy, what_if
from bot.conversation.coach_words import parse
from bot.conversation.reasons import dose_in_words, place
from bot.reading import read
from bot.reading.reading import SITES, Context
from bot.wording.catalogue import _bundle, languages, wording_for
from planner import movements
from planner.facts import PlannedSet
from tests.bot.wording.catalogues import choices, messages, slots

EVERY = sorted(languages())
OTHERS = sorted(languages() - {"en"})
MONDAY = date(2027, 1, 4)
PLURALS = {"zero", "one", "two", "few", "many", "other"}
QUOTED = re.compile(r"[“„«](.+?)[”“»]")
# Names of a place and its side together, where adjectives agree with the place: no other language needs them.
OWN = re.compile(r"site-\w+-(left|right)")


def test_german_and_spanish_are_there():
    assert {"de", "en", "es"} <= set(EVERY)


@pytest.mark.parametrize("language", OTHERS)
def test_a_language_has_every_message_of_english_and_no_other(language):
    here, english = set(messages(language)), set(messages("en"))

    assert not sorted(english - here), "not said in this language"
    assert not sorted(key for key in here - english if not OWN.fullmatch(key)), "said by nobody"


@pytest.mark.parametrize("language", OTHERS)
def test_a_message_has_the_same_values_in_every_language(language):
    english = messages("en")
    unlike = {
        key: (slots(message), slots(english[key]))
        for key, message in messages(language).items()
        if key in english and slots(message) != slots(english[key])
    }

    assert not unlike


@pytest.mark.parametrize("language", OTHERS)
def test_what_english_tells_apart_is_told_apart(language):
    here = messages(language)
    for key, message in messages("en").items():
        for name, cases in choices(message).items():
            assert set(cases) <= set(choices(here[key]).get(name, [])), key


@pytest.mark.parametrize("language", EVERY)
@pytest.mark.parametrize("count", [0, 1, 2, 5])
def test_every_message_is_said_without_a_gap(language, count):
    bundle = _bundle(language)
    for key, message in messages(language).items():
        cases = choices(message)
        given = {
            name: count if PLURALS & set(cases.get(name, ())) else cases.get(name, ["xylophone"])[0]
            for name in slots(message)
        }
        text, errors = bundle.format_pattern(bundle.get_message(key).value, given)

        assert not errors, key
        assert "{" not in text, key
        assert "???" not in text, key
        assert text.strip() or key == "smalltalk", key


@pytest.mark.parametrize("language", EVERY)
def test_one_is_said_otherwise_than_two(language):
    # The plural categories that German, English and Spanish have for whole numbers below a million (CLDR): one, other.
    for key, message in messages(language).items():
        for name, cases in choices(message).items():
            if not PLURALS & set(cases):
                continue
            others = dict.fromkeys(slots(message) - {name}, "x")
            say = wording_for(language)
            one, two, five = (say.say(key, **{**others, name: count}) for count in (1, 2, 5))

            assert {"one", "other"} <= set(cases), key
            assert one != two.replace("2", "1"), key
            assert two.replace("2", "5") == five, key


@pytest.mark.parametrize(
    ("language", "key", "name", "forms"),
    [
        ("de", "shown-reps", "reps", ("eine Wiederholung", "2 Wiederholungen", "5 Wiederholungen")),
        ("es", "shown-reps", "reps", ("una repetición", "2 repeticiones", "5 repeticiones")),
        ("de", "roster-heading", "count", ("Ein Athlet:", "2 Athleten:", "5 Athleten:")),
        ("es", "roster-heading", "count", ("Un atleta:", "2 atletas:", "5 atletas:")),
        (
            "de",
            "settled",
            "count",
            (
                "name: eine Nachricht braucht keine Antwort.",
                "name: 2 Nachrichten brauchen keine Antwort.",
                "name: 5 Nachrichten brauchen keine Antwort.",
            ),
        ),
    ],
)
def test_plural_forms(language, key, name, forms):
    say = wording_for(language)

    assert tuple(say.say(key, **{name: count}) for count in (1, 2, 5)) == forms


@pytest.mark.parametrize(
    ("language", "short", "long"),
    [
        ("en", "Mon 1 Mar", "Monday 1 March"),
        ("de", "Mo 1. Mär", "Montag, 1. März"),
        ("es", "lun 1 mar", "lunes 1 de marzo"),
    ],
)
def test_days_are_written_as_the_language_writes_them(language, short, long):
    say = wording_for(language)

    assert (say.day(date(2027, 3, 1)), say.long_day(date(2027, 3, 1))) == (short, long)


@pytest.mark.parametrize("language", EVERY)
def test_every_place_has_a_name_with_either_side(language):
    say = wording_for(language)
    for site in SITES:
        left, right = place(site, "left", say), place(site, "right", say)

        assert left != right
        assert not re.search("[{_]|izquierda derecha", left + right)


@pytest.mark.parametrize(
    ("site", "words"),
    [("wrist", "muñeca izquierda"), ("elbow", "codo izquierdo"), ("lower_back", "zona lumbar, lado izquierdo")],
)
def test_spanish_sides_agree_with_their_place(site, words):
    assert place(site, "left", wording_for("es")) == words


@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", "2x1 half pause top +2.5 kg"),
        ("de", "2x1 halb Pause oben +2,5 kg"),
        ("es", "2x1 mitad pausa arriba +2,5 kg"),
    ],
)
def test_a_dose_is_told_in_the_readers_words(language, words):
    assert dose_in_words("2x1 half pause top +2.5 kg", wording_for(language)) == words


# ---- What the bot tells people to write, it reads --------------------------------------------------------------------


def reading(text: str, language: str):
    plan = tuple(PlannedSet("pull_up", "main", 4, load_kg=10.0, rpe=7.0) for _ in range(4))
    sent_at = datetime(2027, 1, 4, 18, tzinfo=UTC)
    return read(text, Context(sent_at=sent_at, timezone=ZoneInfo("Europe/Zurich"), language=language, today=plan))


@pytest.mark.parametrize("language", EVERY)
def test_every_name_of_a_movement_is_read_as_that_movement(language):
    # A button with a name stands for the name, as if it had been typed.
    say = wording_for(language)
    for movement in movements.catalogue():
        name = say.movement(movement)
        assert {one.movement for one in reading(f"{name} 2x5", language).sets} == {movement}, name


WISHES = (
    "report report report pain bodyweight move missed away ill plan_today plan_week why progress correction undo "
    "for_coach"
).split()


@pytest.mark.parametrize("language", EVERY)
def test_every_example_of_the_help_is_read_as_what_it_shows(language):
    examples = QUOTED.findall(wording_for(language).say("help"))
    read_as = [reading(example, language) for example in examples]

    assert len(examples) == len(WISHES)
    assert not [one.span for found in read_as for one in found.ask]
    for example, found, wish in zip(examples, read_as, WISHES, strict=True):
        assert wish in found.intents, example
    assert (len(read_as[0].sets), read_as[0].sets[0].load_kg, read_as[0].sets[-1].rpe) == (5, 20.0, 8.0)
    assert (read_as[4].bodyweight_kg, read_as[4].sleep_h, read_as[4].duration_min) == (71.2, 7.0, 65.0)


VERBS = (
    "card roster rungs summary week why sets lock hold unlock unlock sets sets sets sets deload deload undo rung "
    "exclude include rule rule approve decline seen restart pause resume move unheard "
    "tests tell_all tell note invite nickname"
).split()


@pytest.mark.parametrize("language", EVERY)
def test_every_command_of_the_coachs_help_is_understood(language):
    every = QUOTED.findall(wording_for(language).say("coach-help"))
    for_all, following, examples = every[15:18], every[18:21], [*every[:15], *every[21:]]
    commands = [parse(example, [("mira", "Mira")], language, MONDAY) for example in examples]

    assert [one.verb for one in commands[:-2] if one is not None] == VERBS
    by_verb = dict(list(zip(VERBS, commands, strict=False))[::-1])  # the first of each
    assert (by_verb["sets"].scheme, by_verb["sets"].load, by_verb["sets"].day) == ((4, 3), 17.5, date(2027, 1, 7))
    assert (by_verb["lock"].load, by_verb["lock"].until) == (17.5, date(2027, 3, 1))
    assert by_verb["hold"].until == MONDAY + timedelta(weeks=3)
    assert by_verb["rung"].rest.split()[-1] == "archer_shoulder"
    team = [("mira", "Mira"), ("jon", "Jon")]
    ordered = [parse(coach_everyone.orders(one, team, language)[-1][1], team, language, MONDAY) for one in for_all]
    assert [(one.verb, one.handle, one.left) for one in ordered] == [
        (verb, "jon", ()) for verb in ("pause", "exclude", "sets")
    ]
    assert [bool(coach_follow.referring(one, language)[1]) for one in following] == [True] * 3
    supposed = [what_if.about(what_if.question(one), [("mira", "Mira")], language, MONDAY) for one in examples[-2:]]
    assert [(one.verb, one.load, one.until) for one in supposed] == [
        ("days", 3.0, None),
        ("hold", None, MONDAY + timedelta(weeks=5)),
    ]


@pytest.mark.parametrize("language", EVERY)
def test_the_words_that_erase_are_those_that_the_bot_names(language):
    say = wording_for(language)
    named = QUOTED.findall(say.say("data-overview", sessions=1, sets=1, pain=1, weights=1, messages=1, coach="Inês"))
    named += QUOTED.findall(say.say("erase-sure", coach="Inês", days=14))

    assert len(named) == 2
    assert [privacy.wanted(one) for one in named] == ["erase", "erase"]
    assert privacy.calls_off(say.say("button-keep"))


@pytest.mark.parametrize("language", OTHERS)
def test_emergency_numbers_stand_in_the_alarm(language):
    # 112: the European emergency number (Directive 2018/1972, art. 109). 911: North American numbering plan.
    alarm = wording_for(language).say("alarm-emergency", signs="x")

    assert "112" in alarm
    assert "911" in alarm
