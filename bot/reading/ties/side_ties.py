"""Numbers and sides that stand together: a list and its side, rounds of both, an effort of each."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import is_comma
from bot.reading.facts import Entry, Fact
from bot.reading.message import Message
from bot.reading.ties.side_pairs import paired

LEAST_JUDGED = 6
BESIDE = 5  # facts within which the effort of the other side follows
ONE_ARM = "?one_arm"
SIDED = frozenset("?archer archer_pull_up archer_ring_elbow archer_ring_shoulder one_arm_counterweight".split())
LIST = 3  # numbers that are a list whatever stands in the other


def sided(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with what their sides make of them."""
    if not any(fact.kind == "side" for fact in facts):
        return facts
    return paired(lists_of_sides(rounds_of_sides(leading_side(one_arm_or_other(facts)))))


def one_arm_or_other(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Archers, one arm 4 and the other arm 3": a side that is not said, and no movement of its own."""
    moves = [fact for fact in facts if fact.kind == "move"]
    if len(moves) < 2 or moves[0].value.movement not in SIDED:
        return facts
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        other = any(one.kind == "side" and one.value == "other" for one in facts[at : at + BESIDE])
        if fact.kind == "move" and fact.value.movement == ONE_ARM and fact is not moves[0] and other:
            if out and out[-1].kind == "word":
                out.pop()  # "4 on one arm"
            fact = Fact("side", fact.start, fact.end, "unclear")
        out.append(fact)
    return out


def lists_of_sides(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "3 3 2 left, 3 3 3 right": the side that closes a list is each set's."""
    found: list[tuple[int, int, list[Entry]]] = []
    for at, fact in enumerate(facts):
        if fact.kind != "side" or fact.value not in ("left", "right"):
            continue
        first, entries = _list_before(facts, at, found[-1][1] if found and found[-1][2] else -1)
        found.append((first, at, entries))
    sides = [facts[at].value for _, at, _ in found]
    sizes = [len(entries) for _, _, entries in found]
    alike = sizes and min(sizes) == LIST - 1 == max(sizes)
    if sorted(sides) != ["left", "right"] or not (alike or min(sizes) >= LIST):
        return facts
    out = list(facts)
    for first, at, entries in reversed(found):
        sided = [replace(one, side=facts[at].value) for one in entries]
        out[first : at + 1] = [Fact("rows", facts[first].start, facts[at].end, sided, {"list": True, "reps": True})]
    return out


def rounds_of_sides(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "3 one-arm hangs each arm, 25 s left and 30 s right": as often as counted, with what each side did."""
    each = next((at for at, fact in enumerate(facts) if fact.kind == "side" and fact.value == "each"), None)
    if not each or facts[each].note.get("plain"):
        return facts
    counted = each - 2 if facts[each - 1].kind == "move" else each - 1
    count = facts[counted] if counted >= 0 else None
    tail = [fact for fact in facts[each + 1 :] if not is_comma(fact)]
    told = tail[:4]
    pair = sorted(fact.value for fact in told if fact.kind == "side")
    work = [fact for fact in told if len(_entries(fact)) == 1]
    if count is None or count.kind not in ("bare", "count") or pair != ["left", "right"] or len(work) != 2:
        return facts
    if told[0].kind == told[1].kind or told[2].kind == told[3].kind or any(_entries(fact) for fact in tail[4:5]):
        return facts
    rounds = Fact("rounds", count.start, count.end, int(count.value), {"after": True, "pair": True})
    last = facts.index(told[3])
    kept = [fact for at, fact in enumerate(facts[: last + 1]) if at not in (counted, each)]
    return [*kept, rounds, *facts[last + 1 :]]


def leading_side(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "2x2 each, left first": in which order, and nothing of any set."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        after = facts[at + 1 : at + 3]
        leads = fact.kind == "side" and fact.value in ("left", "right") and bool(after) and after[0].value == "first"
        closes = len(after) < 2 or (after[1].kind in ("sep", "effort") and after[1].note.get("mark") != ":")
        behind = not at or facts[at - 1].kind in ("sep", "side", "rows", "move")
        if leads and closes and after[0].kind == "scope" and behind:
            out.append(Fact("word", fact.start, after[0].end, None, {"noise": True}))
            continue
        if out and out[-1].end == fact.end and out[-1].start < fact.start < fact.end:
            continue
        out.append(fact)
    return out


def _list_before(facts: Sequence[Fact], at: int, closed: int) -> tuple[int, list[Entry]]:
    """Where the numbers that stand right before the side at a place begin, and what they tell.

    `closed`: where the side stands that closes the list before.
    """
    entries: list[Entry] = []
    first = at
    place = at - 1
    while place >= 0 and facts[place].end == facts[place + 1].start:
        fact = facts[place]
        comma = fact.kind == "sep" and fact.note.get("mark") in (",", "and", "/") and first == place + 1
        if comma and entries and place:
            place -= 1
            continue
        told = _entries(fact)
        led = place and place - 1 != closed and facts[place - 1].kind in ("side", "effort", "count")
        if not told or led:
            break
        entries = [*told, *entries]
        first = place
        place -= 1
    return first, entries


def _entries(fact: Fact) -> list[Entry]:
    if fact.kind == "bare" and fact.value == int(fact.value) and not fact.note.get("spelled"):
        return [Entry(int(fact.value))]
    alone = fact.kind == "rows" and (fact.note.get("list") or fact.note.get("one")) and not fact.note.get("own_load")
    return list(fact.value) if alone else []


def efforts_of_sides(_: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "rpe 7 left 8 right", "left felt like 7, right like 8": an effort of each side; each stands behind its side."""
    out = list(facts)
    for at in range(len(out) - 3):
        told = [i for i in range(at + 1, min(at + 2 + BESIDE, len(out))) if not _joins(out[i])][:3]
        if len(told) < 3 or out[at].kind not in ("effort", "side"):
            continue
        four = [out[at], *(out[i] for i in told)]
        kinds = [fact.kind for fact in four]
        sides = [fact.value for fact in four if fact.kind == "side"]
        if sorted(sides) != ["left", "right"]:
            continue
        end = told[-1] + 1
        closes = end == len(out) or out[end].kind == "sep"
        if kinds == ["effort", "side", "effort", "side"] and closes:
            out[at:end] = [four[1], four[0], four[3], four[2]]  # "rpe 7 left, rpe 8 right"
            continue
        if kinds == ["side", "bare", "side", "effort"] and closes and LEAST_JUDGED <= four[1].value <= 10:
            out[at:end] = [four[0], replace(four[1], kind="effort"), four[2], four[3]]  # "right 9, left 8 rpe"
            continue
        rated = next((fact for fact in four[2:] if fact.kind == "bare" and LEAST_JUDGED <= fact.value <= 10), None)
        if rated is None:
            continue
        second = replace(rated, kind="effort")
        if kinds == ["effort", "side", "bare", "side"] and closes:
            out[at:end] = [four[1], four[0], four[3], second]
        elif kinds == ["side", "effort", "side", "bare"] and closes:
            out[at:end] = [four[0], four[1], four[2], second]
    return out


def side_of_one_set(_: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "3x3 per side, last one only 2 on the left": that side's reps of that set; the other side stays as told."""
    both = next((n for n, fact in enumerate(facts) if fact.kind == "side" and fact.value == "each"), None)
    if both is None or not any(fact.kind == "rows" for fact in facts[:both]):
        return list(facts)
    out = list(facts[: both + 1])
    clause: list[Fact] = []
    for fact in [*facts[both + 1 :], None]:
        if fact is not None and fact.kind != "sep":
            clause.append(fact)
            continue
        out += _side_before_reps(clause)
        out += [fact] if fact is not None else []
        clause = []
    return out


def _side_before_reps(clause: list[Fact]) -> list[Fact]:
    told = [fact for fact in clause if fact.kind not in ("word", "plan")]
    if sorted(fact.kind for fact in told) != ["bare", "scope", "side"]:
        return clause
    scope, side, reps = (next(fact for fact in told if fact.kind == kind) for kind in ("scope", "side", "bare"))
    if scope.value == "all" or side.value not in ("left", "right"):
        return clause
    return [scope, side, *(fact for fact in clause if fact.kind in ("word", "plan")), reps]


def _joins(fact: Fact) -> bool:
    """A comma, or a word: "right more like 8"."""
    return fact.kind == "word" or is_comma(fact)
