"""Reps told of every set: "halved the dips, 4 reps a set"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message

MOST = 9  # sets, or reps, told so


def reps_a_set(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """The facts with "every set" in place of "a set" behind reps."""
    out: list[Fact] = []
    for fact in facts:
        before = out[-2:]
        told = [one.kind for one in before] == ["rows", "word"] and before[0].note.get("reps")
        text = message.tokens[fact.start].text if fact.kind == "word" and fact.end == fact.start + 1 else ""
        article = told and message.tokens[before[1].start].text in little("a") and before[1].end == before[1].start + 1
        if article and text in little("one_set"):
            note = {"text": "", "names": ["every"]}
            out[-1] = Fact("scope", before[1].start, fact.end, "all", note)
            continue
        out.append(fact)
    return out


def of_everything(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Did 3 of everything": of reps or of sets is not said, and asked."""
    out: list[Fact] = []
    for fact in facts:
        before = out[-2:]
        so_many = [one.kind for one in before] == ["bare", "word"] and before[0].value in range(1, MOST + 1)
        so_many = so_many and message.tokens[before[1].start].text in little("of_each")
        if so_many and "all_lifts" in fact.note.get("names", ()):
            out[-2:] = [Fact("ask", before[0].start, fact.end, "sets", {"whole": True, "outcome": True})]
            continue
        out.append(fact)
    return out
