"""Words beside a place of the body are of it: "5x3 at 20 - elbows fine" says nothing of the sets."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.message import Message

WORK = frozenset({"move", "rows", "load", "loads", "at", "count", "rounds", "effort", "efforts", "scope", "instead"})


def body_alone(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """Without sides, misses and "a" where a sentence tells of the body: "se me quedó dormido el brazo un rato"."""
    out: list[Fact] = []
    sentence: list[Fact] = []
    for fact in [*facts, None]:
        if fact is not None and not (fact.kind == "sep" and fact.value in (2, 3)):
            sentence.append(fact)
            continue
        out += [one for one in sentence if not _of_body(one)] if _tells_body(sentence) else sentence
        out += [fact] if fact is not None else []
        sentence = []
    return out


def _tells_body(sentence: Sequence[Fact]) -> bool:
    pain = any(fact.kind == "claim" and getattr(fact.value, "kind", "") == "pain" for fact in sentence)
    return pain and not any(
        fact.kind in WORK or (fact.kind == "bare" and not (fact.note.get("spelled") and fact.value == 1))
        for fact in sentence
    )


def _of_body(fact: Fact) -> bool:
    return fact.kind in ("side", "fail", "bare")
