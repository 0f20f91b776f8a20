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
        pair = [out[-1], fact] if out and out[-1].end == fact.start else []
        lack = [one for one in pair if _lacks(message, one)][:1]
        number = [one for one in pair if one not in lack and _so_many(one)]
        if lack and number and (_told_reps(number[0]) or _set_named(out, facts[at + 1 :])):
            start, end, many = pair[0].start, pair[1].end, _so_many(number[0])
            missed = lack[0].kind == "fail" and many == 1
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


def _so_many(fact: Fact) -> int:
    """How many reps a fact counts; 0: it counts none."""
    value = fact.value
    if fact.kind == "rows" and len(value) == 1 and fact.note.get("one"):
        value = value[0].reps
    elif fact.kind != "bare":
        return 0
    return int(value) if value in range(1, MOST_LACKED + 1) else 0


def _told_reps(fact: Fact) -> bool:
    return fact.kind == "rows" and bool(fact.note.get("reps"))


def _set_named(before: Sequence[Fact], after: Sequence[Fact]) -> bool:
    """Whether the clause names a set: "in the last one"."""
    for facts in (reversed(before), after):
        for fact in facts:
            if fact.kind == "sep":
                break
            if fact.kind == "scope" and fact.value != "all":
                return True
    return False
