"""Walk the items of a message once and give all its facts in order."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.forms import forms_of
from bot.reading.scan.noise import noise_after
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.schemes import chain
from bot.reading.scan.steps import step

FEW_SETS, LEAST_REPS = range(1, 7), 5  # of "+3x12 face pulls"


def scan(scanner: Scanner) -> list[Fact]:
    """Facts in the order of the text. Linear: every form looks at a handful of items."""
    facts: list[Fact] = []
    i = 0
    while i < len(scanner.items):
        made, after = _one(scanner, i, facts)
        facts.extend(fact for fact in made if fact.kind != "rows" or fact.value)  # no sets at all are no fact
        i = max(after, i + 1)
    return facts


def _one(s: Scanner, i: int, before: list[Fact]) -> tuple[list[Fact], int]:
    item = s.at(i)
    if item.kind == "claim":
        return [Fact("claim", item.start, item.end, item.claim)], i + 1
    if item.kind == "move":
        return [Fact("move", item.start, item.end, item.mention)], i + 1
    if item.kind == "nl":
        return [Fact("sep", item.start, item.end, 3, {"nl": True})], i + 1
    if item.kind == "sym" and not item.labels:
        if not item.text.isascii():
            return [Fact("sep", item.start, item.end, 1, {"mark": "emoji"})], i + 1
        if item.text == "|":
            return [Fact("sep", item.start, item.end, 2, {"mark": "|"})], i + 1
        shortened = item.text == "." and not item.space and s.at(i - 1).text in little("cut_short")
        if shortened and s.at(i + 1).has("side"):
            return [Fact("word", item.start, item.end, None, {"noise": True})], i + 1  # "20 Sek. links"
        if item.text in (".", "!", "?", ";"):
            return [Fact("sep", item.start, item.end, 3, {"mark": item.text})], i + 1
        if item.text in (",", ":", "(", ")", "/"):
            noise = noise_after(s, i)
            if noise is not None:
                return [Fact("word", item.start, s.at(noise - 1).end)], noise
            return [Fact("sep", item.start, item.end, 1, {"mark": item.text})], i + 1
    if item.text == "-" and item.space and _goes_on_in_words(s.at(i + 1)):
        return [Fact("sep", item.start, item.end, 1, {"mark": ","})], i + 1  # "5x3 at 20 - elbows fine"
    first, then = forms_of(item)
    told = step(s, i)
    for form in first:
        told = told or form(s, i, before)
    if told is not None:
        return told
    if item.text == "+" and _sets_more(s, i):
        return [Fact("sep", item.start, item.end, 1, {"mark": "and"})], i + 1
    if item.has("load", "plus") and s.at(i + 1).space and s.at(i + 1).kind == "num":
        row = chain(s, i + 1)
        if row is not None and row[0][0].note.get("plain"):
            return [Fact("sep", item.start, item.end, 1, {"mark": "and"})], i + 1
        if s.at(i + 2).kind == "move" and item.space and before and before[-1].kind == "move":
            return [Fact("sep", item.start, item.end, 1, {"mark": "and"})], i + 1  # "6 chins + 10 push-ups"
    for form in then:
        told = form(s, i, before)
        if told is not None:
            return told
    if item.kind in ("num", "clock") and not item.spelled:
        return [Fact("left", item.start, item.end, item.value, {"text": item.text})], i + 1
    return [Fact("word", item.start, item.end, item.text)], i + 1


def _goes_on_in_words(item: Item) -> bool:
    """Whether a dash before an item parts two clauses."""
    rated = item.has("effort", "rpe") and item.space  # "dips 3x8 +10 - rpe 8"
    return item.kind == "claim" or (item.kind == "word" and item.space) or rated


def _sets_more(s: Scanner, i: int) -> bool:
    """ "done, +3x12 face pulls": further sets, where so few kilograms would be told with more reps than anyone does."""
    sets, reps, move = s.at(i + 1), s.at(i + 3), s.at(i + 4)
    if sets.kind != "num" or not s.at(i + 2).has("times", "x") or reps.kind != "num" or move.kind != "move":
        return False
    parted = s.at(i - 1).text in (",", ";", ".") or s.at(i - 1).kind == "nl"
    return i > 0 and parted and (sets.value or 0) in FEW_SETS and (reps.value or 0) >= LEAST_REPS
