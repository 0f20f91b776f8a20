"""The forms that tell facts: each names the items that it can begin with."""

import pytest

from bot.reading import read
from bot.reading.assemble import whole
from bot.reading.scan import Scanner, scan
from bot.reading.scan.forms import LOADS_FIRST, THEN
from tests.bench.reading import DATA, LANGUAGES
from tests.corpus.context import context_of, corpus


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_form_tells_nothing_where_no_item_stands_that_it_begins_with(language, monkeypatch):
    seen: list[Scanner] = []
    monkeypatch.setattr(whole, "scan", lambda scanner: seen.append(scanner) or scan(scanner))
    for line in corpus(DATA / f"{language}.jsonl"):
        read(line["in"]["text"], context_of(line["in"]))

    for scanner in seen:
        for at, item in enumerate(scanner.items):
            tables = frozenset(table for table, _ in item.labels)
            number = item.value is not None or item.kind in ("num", "clock")
            for form, beginning in LOADS_FIRST + THEN:
                if item.kind in ("word", "known", "num") and not beginning.fits(item.text, tables, number):
                    assert form(scanner, at, []) is None, (item, beginning)
