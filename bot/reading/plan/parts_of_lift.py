"""Sets of a planned lift told in parts that add up: "two full sets, then 3 and 3", "two as planned, two with 10"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, plan_names

WHOLE = frozenset({"planned", "done", "fine", "same"})
TOLD_TWICE = frozenset({"stopped", "only", "of_plan", "back_offs", "more", "those"})  # counts that say something else


@dataclass(frozen=True)
class _Part:
    """So many sets, told at a place of the facts; `whole`: as they were planned, by the words of their clause."""

    at: int
    many: int
    whole: bool
    reps: int | None = None  # told of each with their number: "3x6"
    spoken: Fact | None = None  # the number beside its scope: "the remaining two"


def parts_of_lift(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts, with the counts of such parts as the sets that they are of; unchanged where they do not add up."""
    own = _rows_of(facts, rows)
    if not own or any(rows[at].side is not None for at in own):
        return facts
    parts: list[_Part] = []
    for at in range(len(facts)):
        part = _part(message, facts, at, sum(one.many for one in parts))
        parts += [part] if part is not None else []
    if not parts or facts[parts[0].at].kind == "scope" or not (parts[0].whole or parts[0].reps):
        return facts
    singles = _listed(facts, parts[-1].at) if len(parts) == 1 and parts[0].whole else []
    left = len(own) - sum(part.many for part in parts)
    if left != len(singles) or len(parts) + len(singles) == 1:
        return facts
    out: list[Fact] = []
    done = 0
    counts = {part.at: part for part in parts}
    for at, fact in enumerate(facts):
        if any(fact is part.spoken for part in parts):
            continue
        if at in counts:
            part = counts[at]
            value: object = (
                ("first", part.many) if not done else ("these", tuple(range(done + 1, done + part.many + 1)))
            )
            fact = Fact("scope", fact.start, fact.end, value, {**fact.note, "text": ""})
            out.append(fact)
            if part.whole and not any(plan_names(one) & WHOLE for one in _clause(facts, at)):
                out.append(Fact("plan", fact.end, fact.end, "planned", {"names": ["planned"]}))
            if part.reps:
                reps = float(part.reps)
                out.append(Fact("bare", facts[at].start, facts[at].end, reps, {"kg": reps}))
            done += part.many
            continue
        if at in singles:
            done += 1
            out.append(Fact("scope", fact.start, fact.start, done, {"text": ""}))
        out.append(fact)
    return out


def _rows_of(facts: Sequence[Fact], rows: Sequence[Row]) -> list[int]:
    """The planned sets spoken of: of the one lift named, or of the main lift."""
    moves = [fact.value for fact in facts if fact.kind == "move" and fact.value.movement != "!"]
    if not moves:
        return main_rows(rows)
    named = [at for at, row in enumerate(rows) if row.movement in members(moves[0]) and row.part != "warm_up"]
    return named if len(moves) == 1 else []


def _clause(facts: Sequence[Fact], at: int) -> Sequence[Fact]:
    return facts[clause_start(facts, at) : clause_end(facts, at)]


def _part(message: Message, facts: Sequence[Fact], at: int, before: int) -> _Part | None:
    """The sets told at a place, where it tells how many; `before`: those told so far."""
    fact = facts[at]
    if fact.kind == "rows" and not before and len(fact.value) > 1 and not fact.note.get("list"):
        reps = {entry.reps for entry in fact.value}
        return _Part(at, len(fact.value), False, reps.pop()) if len(reps) == 1 else None
    said_else = any(fact.note.get(name) for name in TOLD_TWICE)
    if fact.kind == "count" and not said_else and fact.value == int(fact.value) > 0:
        beside = [one for one in _clause(facts, at) if one is not fact]
        words = {token.text for token in message.tokens[fact.start : fact.end]}
        whole = bool(words & little("full_way")) or any(plan_names(one) & WHOLE for one in beside)
        told = any(one.kind in ("rows", "bare", "load", "at", "delta") for one in beside)
        return _Part(at, int(fact.value), whole and not told) if whole or told else None
    loaded = at + 1 < len(facts) and facts[at + 1].kind == "load" and facts[at + 1].start == fact.end
    if before and fact.kind == "bare" and loaded and fact.value == int(fact.value) > 0 and facts[at - 1].kind == "sep":
        return _Part(at, int(fact.value), False)  # "then 2 with 20"
    if fact.kind == "scope" and at and not _only_rated(facts, at):
        value = fact.value
        if value == "last" or (before and value == before + 1):
            return _Part(at, 1, False)
        if value == "rest":
            named = [token.value for token in message.tokens[fact.start : fact.end] if token.value is not None]
            number = facts[at + 1] if not named and at + 1 < len(facts) else None
            if number is not None and number.kind == "bare" and number.start == fact.end:
                named = [number.value]  # "the remaining two"
            return _Part(at, int(named[0]), False, spoken=number) if len(named) == 1 else None
        if isinstance(value, tuple) and value[0] == "last" and isinstance(value[1], int):
            return _Part(at, value[1], False)
    return None


def _only_rated(facts: Sequence[Fact], at: int) -> bool:
    """ "4 sets done, the last was RPE 9.5": how hard a set was, which is one of those told."""
    beside = {one.kind for one in _clause(facts, at)}
    return "effort" in beside and not beside & {"rows", "bare", "load", "at", "delta"}


def _listed(facts: Sequence[Fact], at: int) -> list[int]:
    """The places of reps told one by one behind the parts, each in its own clause: "… and then 3 and 3"."""
    found = []
    for place in range(clause_end(facts, at), len(facts)):
        fact = facts[place]
        if fact.kind == "bare":
            found.append(place)
        elif fact.kind not in ("sep", "word", "scheme", "claim") or (fact.kind == "sep" and fact.value > 2):
            return []
    return found
