"""A number behind a planned lift that is its planned load: "squat 3x5 80, dips 3x8 10", "eight dips at 10"."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import takewhile

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import members

SAME_KG = 0.01
WORD_AND_NUMBER = 2  # tokens of "at 10"; "at a 10" is an effort
REACH = 12  # facts from how a load felt to what was done about it
NEAR = 4  # facts from a load back to the set it is of


def planned_load(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, with such a number as a load; "@ 10" stays what it is, an effort."""
    out: list[Fact] = []
    move: Fact | None = None
    for at, fact in enumerate(facts):
        move = fact if fact.kind == "move" else move
        before = out[-1] if out else None
        behind = before is not None and before.kind == "rows" and bool(before.note.get("plain"))
        closes = at + 1 == len(facts) or facts[at + 1].kind == "sep"
        bare = fact.kind == "bare" and behind and closes
        of_one = any(one.kind == "scope" and one.value in ("first", "last") for one in facts[max(0, at - NEAR) : at])
        worded = fact.kind == "at" and fact.value[1] is not None and fact.end - fact.start == WORD_AND_NUMBER
        worded = worded and not of_one and message.tokens[fact.start].kind == "word"  # "last set of dips at 10"
        if move is not None and (bare or (worded and not fact.note.get("range"))):
            kg = float(fact.value[1] if worded else fact.note.get("kg", fact.value))
            own = [row for row in rows if row.movement in members(move.value)]
            if own and all(row.load_kg and abs(row.load_kg - kg) < SAME_KG for row in own):
                fact = Fact("load", fact.start, fact.end, kg, {"how": "at"})
        out.append(fact)
    return out


def felt_load(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "20 kg felt light so I added 2.5 for the last two": the planned load, of which it is told how it felt."""
    out = list(facts)
    for at, fact in enumerate(facts[:-1]):
        kg = fact.note.get("kg", fact.value) if fact.kind == "bare" else fact.value
        if fact.kind not in ("load", "bare") or not kg or facts[at + 1].kind != "word":
            continue
        felt = message.tokens[facts[at + 1].start].text in little("feels")
        planned = any(row.load_kg and abs(row.load_kg - kg) < SAME_KG for row in rows)
        behind = takewhile(lambda one: one.kind != "sep", facts[at + 1 : at + 1 + REACH])
        if felt and planned and any(one.kind == "delta" for one in behind):
            out[at] = Fact("word", fact.start, fact.end, None, {"noise": True})
    return out
