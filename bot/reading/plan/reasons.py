"""Reasons: "because grip failed" tells why, and nothing of the sets."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names
from bot.reading.plan.value import SAME_KG

SPOKEN = frozenset({"fine", "skipped", "done", "quit", "rest", "no_rest", "not", "off", "out", "less", "more", "up"})


def without_reasons(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts without the misses and the plan words of reasons.

    Numbers stay, a reason may tell the load; but not the planned one behind another: "22.5, since 20 felt easy".
    """
    because = message.book("prose").named("because")
    out: list[Fact] = []
    reason, began = False, 0
    for at, fact in enumerate(facts):
        if fact.kind == "sep":
            reason = reason and fact.value == 1 and fact.note.get("mark") == "and"
        elif fact.kind == "word" and _because(message, fact, because):
            reason, began = any(one.kind not in ("word", "sep") for one in facts[:at]), len(out) + 1
        elif reason and (
            (fact.kind == "fail" and fact.value is None)
            or (fact.kind == "plan" and plan_names(fact) and plan_names(fact) <= SPOKEN)
            or _named_thing(message, fact)
            or (fact.kind == "scope" and fact.value == "all" and _no_value(facts, at))  # "because it was all full"
            or (_planned(fact, rows) and any(one.kind in ("bare", "load") for one in out))
        ):
            continue
        elif reason and _remains(message, fact, out[began:]):
            if out[-2].kind == "bare":
                del out[-2]  # "because the playlist had 3 songs left"
            continue
        out.append(fact)
    return out


def _no_value(facts: Sequence[Fact], at: int) -> bool:
    """Whether the clause of a fact tells no number."""
    piece = facts[clause_start(facts, at) : clause_end(facts, at)]
    return all(one.kind in ("word", "plan", "scope", "scheme", "move", "fail") for one in piece)


def _remains(message: Message, fact: Fact, before: Sequence[Fact]) -> bool:
    """ "3 songs left", "5 minutes left": no side, and no number of the sets."""
    if fact.kind != "side" or len(before) < 2 or message.tokens[fact.start].text not in little("left"):
        return False
    number, thing = before[-2:]
    counted = number.kind == "bare" and number.end == thing.start
    return thing.kind == "word" and (counted or message.tokens[thing.start].value is not None)


def _because(message: Message, fact: Fact, because: Collection[str]) -> bool:
    """Whether a reason begins: "because", or behind a comma what elsewhere is another word, "que me dejé la goma"."""
    tokens = message.tokens
    if any(token.text in because for token in tokens[fact.start : fact.end]):
        return True
    if not fact.start or tokens[fact.start - 1].text != ",":
        return False
    words = [token.text for token in tokens[fact.start : fact.start + 3]]
    return any(" ".join(words[:many]) in little("because_led") for many in (2, 3))


def _named_thing(message: Message, fact: Fact) -> bool:
    """ "Because of double rehearsal": a word for reps that is of what stands behind "of"."""
    led = message.tokens[fact.start - 1].text if fact.start else ""
    return fact.kind == "rows" and bool(fact.note.get("word")) and led in little("because_of")


def _planned(fact: Fact, rows: Sequence[Row]) -> bool:
    """Whether a number is the load that the plan has."""
    if fact.kind not in ("bare", "load") or not fact.value:
        return False
    kg = fact.note.get("kg", fact.value)
    return any(row.load_kg and abs(row.load_kg - kg) < SAME_KG for row in rows)
