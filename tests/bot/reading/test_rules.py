"""Tables of rules: each rule names the kinds of fact and the plan words that it needs."""

from typing import Any, get_args

import pytest

from bot.reading import read
from bot.reading.facts import FactKind
from bot.reading.lexicon import languages, table
from bot.reading.message import Message
from bot.reading.plan.terms import TERMS
from bot.reading.rules import Rules
from bot.reading.ties import TIES
from tests.bench.reading import DATA, LANGUAGES
from tests.corpus.context import context_of, corpus

TABLES = {"ties": TIES, "terms": TERMS}
Seen = tuple[Rules, Message, list[Any], tuple[object, ...]]


def plan_words() -> set[str]:
    """The plan words of the grammar's books."""
    return {name for language in languages() for name in table(language, "grammar").get("plan", {})}


def lists() -> set[str]:
    """The lists of little words."""
    return {name for language in languages() for name in table(language, "little")}


@pytest.mark.parametrize("name", TABLES)
def test_what_a_rule_needs_are_kinds_of_fact_plan_words_and_lists_of_little_words(name):
    needed = {one for _, needs in TABLES[name].needing for names in needs for one in names}
    known = {*get_args(FactKind), *(f"={word}" for word in plan_words()), *(f"'{name}" for name in lists())}
    assert needed <= known


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_rule_changes_nothing_where_what_it_needs_is_missing(language, monkeypatch):
    seen: list[Seen] = []
    apply = Rules.apply

    def noting(self, message, facts, *given):
        seen.append((self, message, list(facts), given))
        return apply(self, message, facts, *given)

    monkeypatch.setattr(Rules, "apply", noting)
    for line in corpus(DATA / f"{language}.jsonl"):
        read(line["in"]["text"], context_of(line["in"]))

    assert {id(rules) for rules, *_ in seen} == {id(TIES), id(TERMS)}
    for rules, message, facts, given in seen:
        told = rules.told(message, facts)
        for rule, needs in rules.needing:
            if any(told.isdisjoint(names) for names in needs):
                assert list(rule(message, facts, *given)) == facts, rule.__name__
