"""Words beside a place of the body are of it: "5x3 at 20 - elbows fine" says nothing of the sets."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from bot.reading.bounds import is_strong
from bot.reading.facts import Fact
from bot.reading.message import Message

LED = 4  # facts before a side: "did only the"
WORK = frozenset({"move", "rows", "load", "loads", "at", "count", "rounds", "effort", "efforts", "scope", "instead"})


def body_alone(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """Without sides, misses and "a" where a sentence tells of the body: "se me quedó dormido el brazo un rato"."""
    out: list[Fact] = []
    sentence: list[Fact] = []
    for fact in [*facts, None]:
        if fact is not None and not is_strong(fact):
            sentence.append(fact)
            continue
        out += [one for one in sentence if not _of_body(one)] if _tells_body(sentence) else sentence
        out += [fact] if fact is not None else []
        sentence = []
    return out


def _tells_body(sentence: Sequence[Fact]) -> bool:
    pain = any(fact.kind == "claim" and getattr(fact.value, "kind", "") == "pain" for fact in sentence)
    return (
        pain
        and not _did_a_side(sentence)
        and not any(
            fact.kind in WORK or (fact.kind == "bare" and not (fact.note.get("spelled") and fact.value == 1))
            for fact in sentence
        )
    )


def _did_a_side(sentence: Sequence[Fact]) -> bool:
    """ "Did only the left side, right wrist sore": a side trained, and a word for it; behind pain it follows."""
    hurt = False
    for at, fact in enumerate(sentence):
        hurt = hurt or fact.kind == "claim"
        before = [one for one in sentence[max(0, at - LED) : at] if "the" not in _names(one)][-2:]
        only = any("only" in _names(one) for one in before) and fact.kind == "side"
        after = sentence[at + 1 : at + 2]
        if only and hurt:
            return any(one.value == "got" or "done" in _names(one) for one in after)
        verb = any(one.value == "got" or "done" in _names(one) for one in (*before, *after))
        if only and (verb or any("only" in _names(one) and one.end > one.start + 1 for one in before)):
            return True
    return False


def _names(fact: Fact) -> Collection[str]:
    names: Collection[str] = fact.note.get("names", ())
    return names or ((str(fact.value),) if fact.kind == "plan" else ())


def _of_body(fact: Fact) -> bool:
    return fact.kind in ("side", "fail", "bare")
