"""A dash between spaces that parts a report from what is said beside it: "dips 3x8 - can't train tomorrow".

It reads as a semicolon does. Left alone are dashes of lists, ranges and labels ("5 - 4 - 3", "dips - 3x8"), and those
before what says more of the sets ("5x3 - last one @9").
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.lexicon import Book, book
from bot.reading.little import little
from bot.reading.tokens import Token

DASHES = frozenset({"-", "–"})
ENDS = frozenset({".", "!", "?", ";", "\n"})
SIGNS = frozenset({"x", "*", "+"})
OF_THE_SETS = frozenset(
    "unit sets reps count times load assist side effort scope flag pause fail link scheme article".split()
)


def part_dashes(tokens: Sequence[Token], language: str) -> list[Token]:
    """The tokens, with a semicolon for each dash that parts a report from other words."""
    out = list(tokens)
    for at, token in enumerate(tokens):
        free = token.text in DASHES and token.space and 0 < at < len(tokens) - 1 and tokens[at + 1].space
        if free and _stands_alone(tokens, at, language) and _speaks(tokens, at + 1, language):
            out[at] = replace(token, text=";", word=";")
    return out


def _stands_alone(tokens: Sequence[Token], at: int, language: str) -> bool:
    """Whether what stands before in the sentence tells of sets or of the plan; or of neither, where the plan follows.

    "Monday - all done": no lift is named that would be all that was done.
    """
    grammar = book(language, "grammar")
    low = at
    while low and tokens[low - 1].text not in ENDS:
        low -= 1
    before = range(low, at)
    if any(_of_plan(grammar, tokens, n) or tokens[n].value is not None for n in before):
        return True
    lifts = book(language, "movements")
    return _of_plan(grammar, tokens, at + 1) and not any(lifts.at(tokens, n) for n in before)


def _of_plan(grammar: Book, tokens: Sequence[Token], at: int) -> bool:
    return any(hit.table == "plan" for hit in grammar.at(tokens, at))


def _speaks(tokens: Sequence[Token], at: int, language: str) -> bool:
    """Whether words of something else than the sets begin here: "felt good", "8 h sleep"."""
    if tokens[at].kind in ("num", "clock"):
        of_sets = at > 2 and tokens[at - 3].text in SIGNS  # no range of hours
        behind = tokens[at + 1].text if at + 1 < len(tokens) else ""
        return of_sets and (tokens[at].kind == "clock" or behind in little("hour_unit"))
    if tokens[at].kind != "word" or at + 1 >= len(tokens) or tokens[at + 1].kind != "word":
        return False
    while tokens[at].text in little("the", "article") and at + 1 < len(tokens):
        at += 1  # "die ersten zwei 4 Wdh"
    if tokens[at].value is not None or book(language, "movements").at(tokens, at):
        return False
    found = book(language, "grammar").at(tokens, at)
    of_plan = max(
        (hit.end for hit in found if hit.table == "plan"), default=at
    )  # "alles gemacht", and not "alles" alone
    return not any(hit.table in OF_THE_SETS and hit.end >= of_plan for hit in found)
