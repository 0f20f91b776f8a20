""" "With the green band 3x6, with the thick one (takes 20 kg off) 2x8": the help is that of the second band alone."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.movements.mention import Mention

HELPED = "band_pull_up"
BARE = "pull_up"  # the same without its band
WORK = frozenset({"rows", "bare"})
INSIDE = ("(", ")", ":")  # marks within what is told of one band


def bands_apart(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the movement named once more where another band begins: what helped before is not of it."""
    out: list[Fact] = []
    move: Fact | None = None
    worked = False  # sets with the band before were told
    for at, fact in enumerate(facts):
        if fact.kind == "move":
            move, worked = fact, False
        begins = not out or (out[-1].kind == "sep" and out[-1].note.get("mark") not in INSIDE)
        if begins and worked and move is not None and move.value.movement == HELPED:
            clause = _clause(facts, at)
            if any(_band(message, one) for one in clause) and _told(facts[at:], clause):
                out.append(replace(move, start=fact.start, end=fact.start))
                worked = False
        if worked and move is not None and move.value.movement == HELPED and _taken_off(facts, at):
            move = Fact("move", fact.start, fact.start, Mention(BARE, [(fact.start, fact.start)]))
            out.append(move)  # "…, then took it off for two sets of 4"
        worked = worked or fact.kind in WORK
        out.append(fact)
    return out


def _taken_off(facts: Sequence[Fact], at: int) -> bool:
    """Whether the band was taken off there, and sets follow that are of no other movement."""
    fact = facts[at]
    if fact.kind != "load" or not fact.note.get("none") or not at or facts[at - 1].kind != "sep":
        return False
    after = next((one for one in facts[at + 1 :] if one.kind in (*WORK, "move", "count", "load")), None)
    return after is not None and after.kind == "rows" and after.start > fact.start


def _clause(facts: Sequence[Fact], at: int) -> Sequence[Fact]:
    ends = (
        n
        for n in range(at, len(facts))
        if facts[n].kind == "sep" and n > at and facts[n].note.get("mark") not in INSIDE
    )
    return facts[at : next(ends, len(facts))]


def _told(behind: Sequence[Fact], clause: Sequence[Fact]) -> bool:
    """Whether sets are told of the band of a clause, there or right behind it, and no other movement is."""
    if any(fact.kind == "move" for fact in clause):
        return False
    if any(fact.kind in WORK for fact in clause):
        return True
    after = next((fact for fact in behind[len(clause) :] if fact.kind in WORK or fact.kind == "move"), None)
    return after is not None and after.kind in WORK


def _band(message: Message, fact: Fact) -> bool:
    """Whether a word of the fact is a band."""
    if fact.kind not in ("word", "claim"):
        return False
    return any(
        hit.name == "band" and hit.end <= fact.end
        for at in range(fact.start, fact.end)
        for hit in message.beginning("movements")[at]
    )
