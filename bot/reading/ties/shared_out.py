"""Sets told together and then shared out by their load: "4x6, two with 10 kg and two without"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import within_sentence
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message


def shared_out(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, each part of the sets with its load, where the parts are all the sets there are."""
    if message.context.today:
        return facts
    for at, fact in enumerate(facts):
        if fact.kind != "rows" or len(fact.value) < 2 or any(entry.load_kg is not None for entry in fact.value):
            continue
        start = at + 1
        while start < len(facts) and facts[start].kind in ("move", "sep", "word"):
            start += 1
        parts, end = _parts(message, facts, start)
        if len(parts) < 2 or sum(many for many, _ in parts) != len(fact.value) or facts[start - 1].kind != "sep":
            continue
        loads = [kg for many, kg in parts for _ in range(many)]
        rows = [replace(entry, load_kg=kg) for entry, kg in zip(fact.value, loads, strict=True)]
        moves = [one for one in facts[at + 1 : start] if one.kind == "move"]
        return [*facts[:at], replace(fact, value=rows), *moves, *facts[end:]]
    return facts


def _parts(message: Message, facts: Sequence[Fact], at: int) -> tuple[list[tuple[int, float]], int]:
    """So many sets and their load, one part after the other, and where they end."""
    parts: list[tuple[int, float]] = []
    end = at
    while at + 1 < len(facts):
        many, load = facts[at : at + 2]
        counts = many.kind in ("bare", "count") and many.value == int(many.value) and many.value > 0
        kg = _load(message, load)
        if not counts or kg is None:
            break
        parts.append((int(many.value), kg))
        at = end = at + 2
        while at < len(facts) and within_sentence(facts[at]):
            at += 1
    return parts, end


def _load(message: Message, fact: Fact) -> float | None:
    if fact.kind == "load":
        return None if fact.value is None else float(fact.value)
    without = fact.kind in ("word", "plan") and message.tokens[fact.end - 1].text in little("without")
    return 0.0 if without else None
