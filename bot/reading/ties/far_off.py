"""An effort that is only set against another: "top set rpe 9, back-offs nowhere near" tells of no miss."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import SENTENCE
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

LONGEST = 3  # words


def far_off(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without "nowhere near" where an effort stands before it, and no load tried."""
    out: list[Fact] = []
    rated = tried = False
    gone = -1
    for fact in facts:
        tried = (tried and fact.kind != "rows" and fact.value != SENTENCE) or fact.value == "attempt"
        tried = tried or (fact.kind in ("bare", "load") and bool(out) and out[-1].kind == "sep")  # "40 nowhere near"
        rated = rated or fact.kind in ("effort", "at")
        end = _end(message, fact) if rated and not tried and fact.kind in ("fail", "plan", "word", "instead") else 0
        gone = max(gone, end)
        out.append(Fact("word", fact.start, fact.end, None, {"noise": True}) if fact.start < gone else fact)
    return out


def _end(message: Message, fact: Fact) -> int:
    """Where the words end that begin with a fact; 0: they are others."""
    words = [token.text for token in message.tokens[fact.start : fact.start + LONGEST]]
    many = next((n for n in range(LONGEST, 0, -1) if " ".join(words[:n]) in little("far_off")), 0)
    return fact.start + many if many else 0
