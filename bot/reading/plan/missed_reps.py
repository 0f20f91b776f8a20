"""Which rep of which set was missed: "on the third I missed the fifth", "en la última la cuarta no subió"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

REACH = 5  # facts from "except" to the set that the rep is of


def rep_of_a_set(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, where of two ordinals beside a miss one is the set, the other the rep."""
    most = max((row.reps or 0 for row in rows), default=0)
    out: list[Fact] = []
    piece: list[Fact] = []
    for fact in facts:
        piece.append(fact)
        if fact.kind == "sep":
            out += _told(piece, most)
            piece = []
    return out + _told(piece, most)


def all_but_a_rep(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Everything except the last rep of the last set": all was done, and one rep missed; no set is left out."""
    out = list(facts)
    for at, fact in enumerate(facts):
        told = [one for one in facts[at + 1 : at + 1 + REACH] if one.kind != "word"][:2]
        if "except" not in plan_names(fact) or [one.kind for one in told] != ["last_rep", "scope"]:
            continue
        rep, of_set = told
        if of_set.value != "last" and not isinstance(of_set.value, int):
            continue
        done = Fact("plan", fact.start, fact.end, "done", {"names": ["done"]})
        comma = Fact("sep", fact.end, fact.end, 1, {"mark": ","})
        missed = Fact("fail", rep.start, rep.end, "last", {"rep": True})
        after = facts.index(of_set)
        out = [*facts[:at], done, comma, of_set, missed, *facts[after + 1 :]]
        break
    return out


def _told(piece: list[Fact], most: int) -> list[Fact]:
    fails = [fact for fact in piece if fact.kind == "fail" and not fact.note.get("weak")]
    scopes = [fact for fact in piece if fact.kind == "scope" and (isinstance(fact.value, int) or fact.value == "last")]
    if len(fails) != 1 or any(fact.kind in ("rows", "bare", "count") for fact in piece):
        return piece
    missed = fails[0]
    if len(scopes) == 1 and isinstance(missed.value, int) and 0 < missed.value <= most:
        # the set stands before or behind: "missed the fifth on the last set"
        return [replace(f, note={**f.note, "rep": True}) if f is missed else f for f in piece]
    led = len(scopes) == 2 and missed.value is None and missed.start >= scopes[1].end
    nth = scopes[1].value if led else None
    of_set = led and nth == "last" and isinstance(scopes[0].value, int)  # "in the third the last didn't go up"
    if not of_set and (not isinstance(nth, int) or nth > most):
        return piece
    told = replace(missed, value=nth, note={**missed.note, "rep": True})
    return [told if f is missed else f for f in piece if f is not scopes[1]]
