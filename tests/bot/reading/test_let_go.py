"""What a reading was made of is let go with it: the reader's process hardly looks for what is left behind."""

import gc

from bot.reading import read
from tests.bench.reading import DATA, LANGUAGES
from tests.corpus.context import context_of, corpus


def test_a_reading_leaves_nothing_behind_that_holds_itself():
    lines = [line["in"] for language in LANGUAGES for line in corpus(DATA / f"{language}.jsonl")[:60]]
    for line in lines:
        read(line["text"], context_of(line))  # what is read for the first time is kept
    gc.collect()
    gc.disable()
    try:
        for line in lines:
            read(line["text"], context_of(line))
        assert gc.collect() == 0
    finally:
        gc.enable()
