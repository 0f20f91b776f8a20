"""Reps that a set came to where it got stuck or ended: "im letzten Satz bei 3 hängen geblieben", "bei 5 war Schluss".

They are no load, and no hang; the end of attempts that go up in load ("20, 22.5, bei 25 war Schluss") is none of reps.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import clause_start
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

MOST = 30  # more are kilograms sooner than reps


def stuck_at(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the reps in place of the load "at 3" right before a word for being stuck."""
    out = list(facts)
    for at, fact in enumerate(facts):
        if fact.kind == "at" and fact.value:
            fact = replace(fact, kind="load", value=fact.value[0])  # "bei 6": an effort as well, elsewhere
        if fact.kind not in ("load", "bare") or not fact.value:
            continue
        after = message.tokens[fact.end].text if fact.end < len(message.tokens) else ""
        if after not in little("stuck_end") and not (_ended(message, fact.end) and _of_a_set(facts, at, fact)):
            continue
        led = message.tokens[fact.start].text if fact.kind == "load" else message.tokens[fact.start - 1].text
        if led not in little("at_score") or fact.note.get("unit") or not 0 < fact.value == int(fact.value) <= MOST:
            continue
        out[at] = Fact("bare", fact.end - 1, fact.end, float(fact.value), {"kg": fact.value})
        if at + 1 < len(out) and out[at + 1].kind == "fail":
            out[at + 1] = Fact("word", out[at + 1].start, out[at + 1].end, None, {"noise": True})
    return out


def _ended(message: Message, at: int) -> bool:
    """Whether "war Schluss" stands here."""
    while at < len(message.tokens) and message.tokens[at].text in little("before_end"):
        at += 1
    return at < len(message.tokens) and message.tokens[at].text in little("set_end")


def _of_a_set(facts: Sequence[Fact], at: int, ended: Fact) -> bool:
    """Whether the clause names a set, or as many reps were told before."""
    start = clause_start(facts, at)
    if any(fact.kind == "scope" and fact.value != "all" for fact in facts[start:at]):
        return True
    told = [fact.value for fact in facts[:at] if fact.kind == "bare"]
    told += [entry.reps or 0 for fact in facts[:at] if fact.kind == "rows" for entry in fact.value]
    return bool(told) and 0 < ended.value <= max(told) <= MOST
