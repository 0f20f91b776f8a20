"""Sets counted before the name of their lift: "one dip set skipped", "only two of the dip sets", "dips all 3"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import members, plan_names

MOST_MORE = 5  # sets on top, told so
ASIDE = 2  # facts between a number and its lift: "two of the dip sets"


def sets_of_lift(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "One dip set", "two of the dip sets": so many sets of that lift, as far as the plan has so many."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        move = next((n for n in range(at + 1, min(len(facts), at + 2 + ASIDE)) if facts[n].kind == "move"), None)
        if fact.kind != "bare" or move is None or not all(_small(message, one) for one in facts[at + 1 : move]):
            out.append(fact)
            continue
        named = facts[move].end < len(message.tokens) and message.tokens[facts[move].end].text in little("set_words")
        own = [row for row in rows if row.movement in members(facts[move].value) and row.side != "right"]
        if named and fact.value == int(fact.value) and 0 < fact.value <= len(own):
            if out and out[-1].kind == "fail" and out[-1].value in ("last", "first"):  # "missed the last two dip sets"
                which = out[-1].value
                out[-1] = replace(out[-1], value=None)
                out.append(Fact("scope", fact.start, fact.end, (which, int(fact.value)), {"text": ""}))
                continue
            note = {"only": True} if out and "only" in plan_names(out[-1]) else {}
            fact = Fact("count", fact.start, fact.end, int(fact.value), note)
        out.append(fact)
    return out


def sets_more_of_lift(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "One extra pull-up set": a set more, and no rep; "two more dip sets"."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        more = fact.kind == "delta" and fact.value[1:] == ("reps", 1) and fact.note.get("open")
        behind = facts[at + 1 : at + 2]
        spelled = fact.kind == "bare" and fact.value in range(1, MOST_MORE + 1)
        if spelled and len(facts) > at + 2 and "more" in plan_names(facts[at + 1]) and facts[at + 2].kind == "move":
            move = facts[at + 2]  # "two more dip sets"
            if move.end < len(message.tokens) and message.tokens[move.end].text in little("set_words"):
                fact = Fact("count", fact.start, fact.end, int(fact.value), {"more": True})
        moved = more and bool(behind) and behind[0].kind == "move" and behind[0].end < len(message.tokens)
        if moved and message.tokens[behind[0].end].text in little("set_words"):
            fact = Fact("count", fact.start, fact.end, int(fact.value[0]), {"more": True})
        out.append(fact)
    return out


def _small(message: Message, fact: Fact) -> bool:
    """ "Of the"."""
    of = fact.kind == "word" and message.tokens[fact.start].text in little("of_those_sets", "of_another")
    return of or plan_names(fact) == {"the"}


def all_so_many(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Dips all 3" of three planned eights: all of them; of planned threes it is reps."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        closes = at + 1 == len(facts) or facts[at + 1].kind == "sep"
        led = [one.kind for one in out[-2:]] == ["move", "scope"] and out[-1].value == "all"
        if led and closes and fact.kind == "bare":
            own = [row for row in rows if row.movement in members(out[-2].value) and row.side != "right"]
            if len(own) == fact.value and all(fact.value not in (row.reps, row.hold_s) for row in own):
                out.append(Fact("plan", fact.start, fact.end, "done", {"names": ["done"]}))
                continue
        out.append(fact)
    return out
