"""What is told of one side of planned pairs: "three sets left and two right", "3 times 2 left 1 right"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import is_comma
from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import members, plan_names

OTHER = {"left": "right", "right": "left"}


def counted_by_side(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Pistols tres series con la izquierda y dos con la derecha" of planned threes: one set less on the right."""
    out: list[Fact] = []
    at = 0
    while at < len(facts):
        told = [facts[n] for n in range(at, min(at + 5, len(facts)))]
        kinds = [fact.kind for fact in told]
        move = next((fact for fact in reversed(out) if fact.kind == "move"), None)
        many = _pairs(rows, move)
        if kinds == ["count", "side", "sep", "bare", "side"] and many and {told[1].value, told[4].value} == set(OTHER):
            counts = {told[1].value: int(told[0].value), told[4].value: int(told[3].value)}
            short = [side for side, count in counts.items() if count < many]
            if max(counts.values()) == many and len(short) == 1:
                side = told[1] if told[1].value == short[0] else told[4]
                fewer = Fact("count", side.start, side.start, many - counts[short[0]])
                less = Fact("plan", side.end, side.end, "less", {"names": ["less"]})
                out += [side, fewer, less]
                at += 5
                continue
        out.append(facts[at])
        at += 1
    return out


def times_of_pair(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Pistols 3 veces 2 izq 1 der": so many pairs."""
    out: list[Fact] = []
    at = 0
    while at < len(facts):
        told = [facts[n] for n in range(at, min(at + 4, len(facts)))]
        if [fact.kind for fact in told] == ["rows", "side", "bare", "side"] and {told[1].value, told[3].value} == set(
            OTHER
        ):
            first, second = told[0].value, int(told[2].value)
            closes = at + 4 == len(facts) or facts[at + 4].kind == "sep"
            alike = len(first) > 1 and len({one.reps for one in first}) == 1 and bool(told[0].note.get("plain"))
            if closes and alike and any(row.side for row in rows):
                reps = {told[1].value: first[0].reps, told[3].value: second}
                entries = [Entry(reps[side], side=side) for _ in first for side in ("left", "right")]
                out.append(Fact("rows", told[0].start, told[3].end, entries, {"list": True}))
                at += 4
                continue
        out.append(facts[at])
        at += 1
    return out


def which_of_side(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Le faltó una serie, la última de la derecha": which one it was, and no other one."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        behind = [one for one in facts[at + 1 : at + 5] if not _of(message, one)][:3]
        kinds = [one.kind for one in behind]
        led = any(plan_names(one) & {"skipped", "less"} for one in out[-3:])
        closes = len(kinds) < 3 or kinds[2] == "sep"
        one = is_comma(fact) and bool(out) and out[-1].kind == "count" and out[-1].value == 1
        if one and led and kinds[:2] == ["scope", "side"] and closes:
            out.pop()
            continue
        out.append(fact)
    return out


def one_side_of_next(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Pistols 2/2, 2/2 y la tercera solo izquierda, 2": the set after those told, done on one side alone."""
    out: list[Fact] = []
    at = 0
    while at < len(facts):
        fact = facts[at]
        pairs = next((n for n in range(len(out) - 1, -1, -1) if out[n].kind != "sep"), None)
        told = out[pairs] if pairs is not None and pairs < len(out) - 1 else None
        sided = told is not None and told.kind == "rows" and bool(told.value) and all(one.side for one in told.value)
        nth = len(told.value) // 2 + 1 if told is not None and sided else 0
        behind = facts[at + 1 : at + 3]
        only = len(behind) == 2 and "only" in plan_names(behind[0]) and behind[1].kind == "side"
        if (
            fact.kind == "scope"
            and nth
            and fact.value in (nth, "last")
            and only
            and told is not None
            and pairs is not None
        ):
            end = at + 3
            number = next((n for n in (end, end + 1) if n < len(facts) and facts[n].kind == "bare"), None)
            joined = number is not None and (number == end or is_comma(facts[end]))
            planned = next((row.reps for row in rows if row.side == behind[1].value), None)
            reps = int(facts[number].value) if joined and number is not None else planned
            if reps:
                out[pairs:] = [replace(told, value=[*told.value, Entry(reps, side=behind[1].value)])]
                at = number + 1 if joined and number is not None else end
                continue
        out.append(fact)
        at += 1
    return out


def that_side(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "My right is weak: pistols 1 rep a set on that side, 2 on the other": the side that was named before."""
    sides = [at for at, fact in enumerate(facts) if fact.kind == "side" and fact.value in OTHER]
    out: list[Fact] = []
    named: str | None = None
    dropped: set[int] = set()
    for at, fact in enumerate(facts):
        if at in sides:
            named = fact.value
        pair = facts[at : at + 2]
        words = " ".join(_text(message, one) for one in pair) if len(pair) == 2 else ""
        if named and fact.kind == "word" and words in little("that_side") and len(sides) == 1:
            out.append(Fact("side", fact.start, pair[1].end, named, {"plain": False}))
            dropped.add(at + 1)
            continue
        if at in dropped:
            continue
        if fact.kind == "side" and fact.value == "other" and dropped and named:
            fact = replace(fact, value=OTHER[named])
        out.append(fact)
    return [fact for fact in out if not (dropped and fact is facts[sides[0]])] if dropped else out


def up_to_of_side(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "La derecha bien hasta la última, que fue 1": what that set of the side came to."""
    out: list[Fact] = []
    at = 0
    while at < len(facts):
        told = facts[at : at + 5]
        sided = [fact.kind for fact in told[:1]] == ["side"] and len(told) == 5
        fine = (
            sided
            and bool(plan_names(told[1]) & {"fine", "planned"})
            and bool(plan_names(told[2]) & {"stopped", "reached"})
        )
        if fine and told[3].kind == "scope" and is_comma(told[4]):
            end = at + 5
            while end < len(facts) and facts[end].kind in ("word", "scheme"):
                end += 1
            if end < len(facts) and facts[end].kind in ("bare", "rows"):
                out += [told[0], told[3], facts[end]]
                at = end + 1
                continue
        out.append(facts[at])
        at += 1
    return out


def pair_of_set(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Primera serie 2 y 2; segunda, 2 izquierda y 1 derecha" of planned pairs: left and right of that set."""
    out: list[Fact] = []
    move: Fact | None = None
    at = 0
    while at < len(facts):
        fact = facts[at]
        move = fact if fact.kind == "move" else move
        one_set = fact.kind == "scope" and (isinstance(fact.value, int) or fact.value in ("first", "last"))
        begin = at + 1 + (one_set and at + 1 < len(facts) and is_comma(facts[at + 1]))
        told = _pair_at(facts, begin) if one_set and _pairs(rows, move) else None
        if told is not None:
            reps, end = told
            entries = [Entry(reps["left"], side="left"), Entry(reps["right"], side="right")]
            note = {"list": True, "mark": "/"}
            out += [fact, Fact("rows", facts[begin].start, facts[end - 1].end, entries, note)]
            at = end
            continue
        out.append(fact)
        at += 1
    return out


def _pair_at(facts: Sequence[Fact], at: int) -> tuple[dict[str, int], int] | None:
    """The reps of both sides told at a place, and where they end."""
    for many in (1, 3, 5):
        told = facts[at : at + many]
        closes = at + many >= len(facts) or facts[at + many].kind == "sep"
        kinds = [one.kind for one in told]
        if not closes or len(told) != many or any(one.kind == "sep" and one.note.get("mark") != "and" for one in told):
            continue
        if kinds == ["rows"] and [one.side for one in told[0].value] == ["left", "right"]:
            return {str(one.side): one.reps or 0 for one in told[0].value}, at + many
        if kinds == ["bare", "sep", "bare"]:
            return {"left": int(told[0].value), "right": int(told[2].value)}, at + many
        if kinds == ["bare", "side", "sep", "bare", "side"] and {told[1].value, told[4].value} == set(OTHER):
            return {told[1].value: int(told[0].value), told[4].value: int(told[3].value)}, at + many
    return None


def _pairs(rows: Sequence[Row], move: Fact | None) -> int:
    """How many pairs the plan has of a lift, or of its one-sided work."""
    own = [row for row in rows if row.side and (move is None or row.movement in members(move.value))]
    return len(own) // 2


def _of(message: Message, fact: Fact) -> bool:
    return fact.kind == "word" and _text(message, fact) in little("of")


def _text(message: Message, fact: Fact) -> str:
    return " ".join(token.text for token in message.tokens[fact.start : fact.end])
