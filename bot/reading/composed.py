"""Warning signs that are said in parts: "woke up at 3 in the morning because of the left elbow".

Which parts in which order are which sign stands in words/composed.toml, the words of the parts in
words/<language>/signs.toml. Between two parts only what neither joins nor parts may stand: numbers, times, degrees,
sides, places, words of pain. So a new way to say one part is heard with all ways to say the others.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import lru_cache

import tomli

from bot.reading.lexicon import WORDS, Hit
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.phrases import longest

Recipe = tuple[frozenset[str], ...]  # for each part the names it may have
Parts = dict[str, dict[int, set[int]]]  # by name: where parts start, and where those end


@lru_cache(maxsize=1)
def _recipes() -> list[tuple[str, Recipe]]:
    with (WORDS / "composed.toml").open("rb") as file:
        data: dict[str, dict[str, list[str]]] = tomli.load(file)
    return [
        (sign, tuple(frozenset(part.split("|")) for part in row.split()))
        for sign, rows in data["sign"].items()
        for row in rows
    ]


def composed_signs(message: Message) -> list[Hit]:
    """The signs that the parts in a message make, none over another of its name."""
    found: list[Hit] | None = message.notes.get("composed signs")
    if found is None:
        heads = message.hits("signs", "head")
        found = message.notes["composed signs"] = _composed(message, heads) if heads else []
    return found


def _composed(message: Message, heads: Sequence[Hit]) -> list[Hit]:
    parts = _parts(message, heads)
    walls = _walls(message)
    found: list[Hit] = []
    for sign, recipe in _recipes():
        if not any(map(parts.keys().isdisjoint, recipe)):
            found += (Hit(start, end, "sign", sign) for start, end in _runs(recipe, parts, walls))
    return [
        hit for sign in dict.fromkeys(hit.name for hit in found) for hit in longest(h for h in found if h.name == sign)
    ]


def hours_of_waking(message: Message) -> set[int]:
    """The tokens of clock times and counts beside a pain that wakes: "woke me at 4" gives no score of 4."""
    if not any(sign.name == "night_pain" for sign in composed_signs(message)):
        return set()
    hours = (hit for hit in message.hits("signs", "part") if hit.name == "night_hour")
    return {at for hit in hours for at in range(hit.start, hit.end)}


def _parts(message: Message, heads: Sequence[Hit]) -> Parts:
    parts: Parts = {}
    for hit in (*heads, *message.hits("signs", "part"), *_of_the_body(message)):
        parts.setdefault(hit.name, {}).setdefault(hit.start, set()).add(hit.end)
    return parts


def _of_the_body(message: Message) -> Iterator[Hit]:
    """Places as `site`, joints and muscles with a name of their own as `place`; words of pain as `hurt`."""
    body = message.hits("body")
    for hit in longest(hit for hit in body if hit.table in ("site", "not_site")):
        if hit.table == "site":
            yield hit._replace(name="site")
            if hit.name != "other":
                yield hit._replace(name="place")
    for hit in body:
        if hit.table == "pain" and hit.name in ("hurt", "word"):
            yield hit._replace(name="hurt")


def _walls(message: Message) -> list[int]:
    """For each token the next one, itself counted, that parts cannot reach across."""
    between = message.hits("signs", "between")
    passed = {at for hit in between for at in range(hit.start, hit.end)}
    for hit in message.hits("body"):
        if hit.table in ("site", "side", "when") or (hit.table == "pain" and hit.name in ("hurt", "soft")):
            passed.update(range(hit.start, hit.end))
    small = little("between_parts")
    walls = [len(message.tokens)] * (len(message.tokens) + 1)
    for at in range(len(message.tokens) - 1, -1, -1):
        token = message.tokens[at]
        passes = at in passed or token.value is not None or token.word in small or token.text in small
        walls[at] = walls[at + 1] if passes else at
    return walls


def _runs(recipe: Recipe, parts: Parts, walls: Sequence[int]) -> Iterator[tuple[int, int]]:
    """Where a recipe's parts stand one behind the other, each as near as can be."""
    for start, ends in _named(recipe[0], parts):
        reached = set(ends)
        for names in recipe[1:]:
            reached = {
                after
                for end in reached
                for begun, stops in _named(names, parts)
                if end <= begun <= walls[end]
                for after in stops
            }
        if reached:
            yield start, min(reached)


def _named(names: frozenset[str], parts: Parts) -> Iterator[tuple[int, set[int]]]:
    for name in names:
        yield from parts.get(name, {}).items()
