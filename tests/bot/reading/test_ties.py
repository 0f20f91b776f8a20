"""The rules that tie facts to one another: each names the kinds of fact that it needs."""

from typing import get_args

import pytest

from bot.reading import read
from bot.reading.assemble import whole
from bot.reading.facts import Fact, FactKind
from bot.reading.message import Message
from bot.reading.ties import NEEDING, tie
from bot.reading.ties.sections import sections
from tests.bench.reading import DATA, LANGUAGES
from tests.corpus.context import context_of, corpus


def test_what_a_rule_needs_are_kinds_of_fact():
    assert {kind for _, needs in NEEDING for needed in needs for kind in needed} <= set(get_args(FactKind))


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_rule_changes_nothing_where_the_facts_that_it_needs_are_missing(language, monkeypatch):
    told: list[tuple[Message, list[Fact]]] = []
    monkeypatch.setattr(whole, "tie", lambda message, facts: told.append((message, facts)) or tie(message, facts))
    for line in corpus(DATA / f"{language}.jsonl"):
        read(line["in"]["text"], context_of(line["in"]))

    for message, facts in told:
        for part in sections(facts):
            kinds = {fact.kind for fact in part}
            for rule, needs in NEEDING:
                if any(kinds.isdisjoint(needed) for needed in needs):
                    assert list(rule(message, part)) == part, rule.__name__
