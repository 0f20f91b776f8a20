"""Reps that a set lacked: "en la tercera me faltó una rep", "beim letzten fehlten 2", "missed one rep on the last"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message

MOST_LACKED = 3  # reps; of more it is said what was done


def reps_lacked(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """The facts with so many reps less in place of the number, where a set is named in the same clause."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        last = out[-1] if out else None
        pair = (last, fact) if last is not None and last.end == fact.start else None
        lack = next((one for one in pair or () if _lacks(message, one)), None)
        number = next((one for one in pair or () if one is not lack), None)
        many = _so_many(number) if lack is not None and number is not None else 0
        if many and (_told_reps(number) or _set_named(out, facts[at + 1 :])):
            start, end = min(lack.start, number.start), max(lack.end, number.end)
            missed = lack.kind == "fail" and many == 1
            out[-1] = (
                Fact("fail", start, end, "last", {"rep": True})
                if missed
                else Fact("delta", start, end, (float(many), "reps", -1), {"open": False})
            )
            continue
        out.append(fact)
    return out


def _lacks(message: Message, fact: Fact) -> bool:
    """Whether a fact is a word for what was lacking."""
    words = {token.text for token in message.tokens[fact.start : fact.end]}
    return fact.kind in ("plan", "word", "fail") and bool(words & little("lacked"))


def _so_many(fact: Fact | None) -> int:
    """How many reps a fact counts; 0: it counts none."""
    if fact is None:
        return 0
    value = fact.value
    if fact.kind == "rows" and len(value) == 1 and fact.note.get("one"):
        value = value[0].reps
    elif fact.kind != "bare":
        return 0
    return int(value) if value in range(1, MOST_LACKED + 1) else 0


def _told_reps(fact: Fact | None) -> bool:
    return fact is not None and fact.kind == "rows" and bool(fact.note.get("reps"))


def _set_named(before: Sequence[Fact], after: Sequence[Fact]) -> bool:
    """Whether the clause names a set: "in the last one"."""
    for facts in (reversed(before), after):
        for fact in facts:
            if fact.kind == "sep":
                break
            if fact.kind == "scope" and fact.value != "all":
                return True
    return False
