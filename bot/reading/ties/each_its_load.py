"""Sets of a plan told one by one with their loads: "dips 8@10, 8@12.5, 6@15", "10kg 8, 10kg 8, bw 10"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import SENTENCE, is_comma
from bot.reading.facts import Entry, Fact
from bot.reading.message import Message

LEAST, MOST = 2, 24  # sets
MOST_EFFORT = 10  # "8@8, 8@9": efforts
LOADS = frozenset({"load", "at"})


def each_its_load(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with such a row as the sets that it is, so that no comma parts it; on a day with a plan."""
    if not message.context.today:
        return facts
    out: list[Fact] = []
    at = 0
    scoped = False  # "sets 1-3 at 22.5, 4 at 20": the numbers are of sets
    while at < len(facts):
        scoped = facts[at].kind == "scope" or (scoped and facts[at].value != SENTENCE)
        entries, end = _row(facts, at) if not scoped else ([], at)
        if len(entries) >= LEAST:
            out.append(Fact("rows", facts[at].start, facts[end - 1].end, entries, {"list": True}))
            at = end
        else:
            out.append(facts[at])
            at += 1
    return out


def _row(facts: Sequence[Fact], start: int) -> tuple[list[Entry], int]:
    """The sets told in pairs from a place, each with its load; where they end."""
    entries: list[Entry] = []
    marked = False  # a load that is no effort was told
    at = end = start
    order = facts[start].kind in LOADS
    while at + 1 < len(facts) and len(entries) < MOST:
        load, number = (facts[at], facts[at + 1]) if order else (facts[at + 1], facts[at])
        if load.kind not in LOADS or load.value is None or not _reps(number):
            break
        kg = load.value[1] if load.kind == "at" else load.value
        if kg is None:
            break
        marked = marked or load.kind == "load" or load.value[0] > MOST_EFFORT
        entries.append(Entry(int(number.value), load_kg=float(kg)))
        at = end = at + 2
        if at < len(facts) and is_comma(facts[at]):
            at += 1
    follows = facts[end] if end < len(facts) else None
    closed = follows is None or follows.kind in ("sep", "effort", "word", "plan")
    return (entries, end) if marked and closed else ([], start)


def _reps(fact: Fact) -> bool:
    return fact.kind == "bare" and fact.value == int(fact.value) and not fact.note.get("spelled")
