"""The corpora of our own: built from their themes, sound, and of the promised size."""

from __future__ import annotations

from collections import Counter

import pytest

from bot.reading.reading import INTENTS, RED_FLAGS, SITES
from tests.corpus import generate
from tests.corpus.build import CORPORA, DATA, LANGUAGES, as_jsonl, lines_of
from tests.corpus.context import context_of
from tests.corpus.score import alternatives, judge

LEAST = {
    "own": {"english": 350, "german": 130, "spanish": 130},
    "second": {"english": 220, "german": 110, "spanish": 110},
    "third": {"english": 150, "german": 180, "spanish": 180},
    "fourth": {"english": 160, "german": 80, "spanish": 80},
    "fifth": {"english": 150, "german": 65, "spanish": 65},
    "sixth": {"english": 220, "german": 120, "spanish": 120},
}
ALL = [(language, line) for corpus in CORPORA for language in LANGUAGES for line in lines_of(language, corpus)]


@pytest.mark.parametrize("corpus", CORPORA)
@pytest.mark.parametrize("language", LANGUAGES)
def test_the_files_are_what_the_themes_say(language: str, corpus: str):
    built = as_jsonl(lines_of(language, corpus))
    assert (DATA / f"{corpus}_{language}.jsonl").read_text(encoding="utf-8") == built


@pytest.mark.parametrize("corpus", CORPORA)
@pytest.mark.parametrize("language", LANGUAGES)
def test_there_are_enough_messages_and_no_id_twice(language: str, corpus: str):
    ids = Counter(line["id"] for line in lines_of(language, corpus))
    assert len(ids) >= LEAST[corpus][language]
    assert max(ids.values(), default=1) == 1


def test_every_gold_and_alternative_is_right_by_its_own_line():
    wrong = [
        (line["id"], verdict.wrong, verdict.faults)
        for _, line in ALL
        for gold in alternatives(line)
        if not (verdict := judge(line, gold)).exact
    ]
    assert wrong == []


def test_golds_use_the_words_of_the_contract():
    for _, line in ALL:
        gold = line["gold"]
        assert set(gold["intents"]) <= set(INTENTS), line["id"]
        assert set(gold["red_flags"]) <= set(RED_FLAGS), line["id"]
        assert {p["site"] for p in gold["pain"]} <= {None, *SITES}, line["id"]


def test_every_message_gives_a_context():
    assert all(context_of(line["in"]).sent_at.tzinfo for _, line in ALL)


@pytest.mark.parametrize("code", generate.CODES)
def test_generated_lines_repeat_with_their_seed_and_are_sound(code: str):
    lines = generate.messages(200, 5, code)
    assert lines == generate.messages(200, 5, code)
    assert all(judge(line, line["gold"]).exact for line in lines)
