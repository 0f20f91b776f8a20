"""Pairs of sides told in turn: "right 12 then 10, left 10 then 8", "left 3, right 2, then 3 and 2", "two of each"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.reading.bounds import SENTENCE, within_sentence
from bot.reading.facts import Entry, Fact

MOST_ROUNDS = 10
PAIR = 2


def paired(facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts of a message that tells both sides, with the numbers that follow a side or a pair as that side's."""
    sides = {fact.value for fact in facts if fact.kind == "side"}
    if not {"left", "right"} <= sides:
        return facts
    return _so_often(_pairs_again(_each_in_turn(_numbered(_each_told(_headed(facts))))))


def _headed(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "R/L: 3/3, 3/2": which of two numbers is which side's, told at the head."""
    for at in range(len(facts) - 3):
        first, mark, second, *rest = facts[at : at + 5]
        rows = next((fact for fact in rest if fact.kind != "sep"), None)
        heads = (first.kind, mark.note.get("mark"), second.kind) == ("side", "/", "side")
        if not heads or {first.value, second.value} != {"left", "right"} or rows is None or rows.kind != "rows":
            continue
        if {entry.side for entry in rows.value} != {"left", "right"}:
            continue
        order = (first.value, second.value)
        told = [replace(entry, side=order[n % PAIR]) for n, entry in enumerate(rows.value)]
        behind = at + 4 + (rest[0] is not rows)
        return [*facts[:at], replace(rows, value=told), *facts[behind:]]
    return facts


def singles(fact: Fact) -> list[Entry]:
    """One set told by its reps or seconds alone."""
    if fact.kind == "bare" and fact.value == int(fact.value):
        return [Entry(int(fact.value))]
    alone = fact.kind == "rows" and fact.note.get("one") and "own_load" not in fact.note
    return list(fact.value) if alone else []


def _each_in_turn(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Right 12 secs then 10, left 10 secs then 8": as many of the one as of the other, each behind its side."""
    runs: list[tuple[int, int, list[Entry]]] = []
    for at, fact in enumerate(facts):
        if fact.kind != "side" or fact.value not in ("left", "right"):
            continue
        entries, end = _run(facts, at + 1)
        runs.append((at, end, entries))
    if len(runs) != PAIR or runs[0][1] > runs[1][0] or {facts[at].value for at, _, _ in runs} != {"left", "right"}:
        return facts
    if len(runs[0][2]) < PAIR or len(runs[0][2]) != len(runs[1][2]):
        return facts
    out = list(facts)
    held = any(one.hold_s for _, _, entries in runs for one in entries)
    if all(_listed(facts[end - 1]) for _, end, _ in runs) and held == all(
        one.hold_s for _, _, entries in runs for one in entries
    ):
        return facts
    for at, end, told in reversed(runs):
        entries = [_held(one) for one in told] if held else told
        own = [replace(one, side=facts[at].value) for one in entries]
        out[at:end] = [Fact("rows", facts[at].start, facts[end - 1].end, own, {"list": True})]
    return out


def _held(one: Entry) -> Entry:
    """ "Left 20 and 18 s, right 15 and 12": seconds too."""
    return one if one.hold_s or not one.reps else replace(one, reps=None, hold_s=float(one.reps))


def _listed(fact: Fact) -> list[Entry]:
    """A list of sets told by their reps or seconds alone."""
    plain = fact.kind == "rows" and fact.note.get("list") and all(not (one.side or one.load_kg) for one in fact.value)
    return list(fact.value) if plain else []


def _run(facts: Sequence[Fact], at: int) -> tuple[list[Entry], int]:
    """The single sets that stand in a row from a place, parted by commas or "then"; where they end."""
    entries: list[Entry] = []
    while at < len(facts) and "only" in facts[at].note.get("names", ()):
        at += 1
    end = at
    while at < len(facts):
        told = singles(facts[at]) or (_listed(facts[at]) if not entries else [])
        if told:
            entries += told
            end = at = at + 1
        elif within_sentence(facts[at]) and entries:
            at += 1
        else:
            break
    return entries, end


def _couples(facts: Sequence[Fact]) -> list[tuple[str, int, int]]:
    """(side, first, end) of each number that stands beside its side; the name may stand between them."""
    found: list[tuple[str, int, int]] = []
    at = 0
    while at + 1 < len(facts):
        end = at + 2
        pair = [facts[at], facts[at + 1]]
        if pair[1].kind == "move" and end < len(facts):
            pair[1], end = facts[end], end + 1
        side = next((fact for fact in pair if fact.kind == "side" and fact.value in ("left", "right")), None)
        if side is not None and any(singles(fact) for fact in pair):
            found.append((side.value, at, end))
            at = end
        else:
            at += 1
    return found


def _pair_ends(facts: Sequence[Fact]) -> list[tuple[int, tuple[str, str]]]:
    """Where each pair of a left and a right ends, and in which order they came."""
    couples = _couples(facts)
    found: list[tuple[int, tuple[str, str]]] = []
    for one, other in pairwise(couples):
        joined = all(fact.kind in ("sep", "word") and fact.value != SENTENCE for fact in facts[one[2] : other[1]])
        if one[0] != other[0] and joined:
            found.append((other[2], (one[0], other[0])))
    return found


def _pairs_again(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Left 5, right 6, then 5 and 5": the pairs that follow come in the order of the first."""
    ends = _pair_ends(facts)
    if not ends:
        return facts
    out = list(facts)
    at, order = ends[-1]
    at = _onwards(out, at)
    while at + 2 < len(out):
        one, joined, other = out[at : at + 3]
        bare = one.kind == other.kind == "bare" and joined.note.get("mark") in ("and", "/")
        closes = at + 3 == len(out) or out[at + 3].kind == "sep"
        if not (bare and closes) or out[at - 1].kind == "side":
            break
        own = [Entry(int(fact.value), side=side) for fact, side in zip((one, other), order, strict=True)]
        out[at : at + 3] = [Fact("rows", one.start, other.end, own, {"list": True})]
        at = _onwards(out, at + 1)
    return out


def _onwards(out: list[Fact], at: int) -> int:
    """The place of the next numbers; the number of a set before them, "second set 4 and 4", says nothing new."""
    while at < len(out) and out[at].kind in ("sep", "word", "move", "scope"):
        if (
            out[at].kind == "scope"
            and at + 1 < len(out)
            and out[at + 1].kind == "bare"
            and isinstance(out[at].value, int)
        ):
            del out[at]
            continue
        at += 1
    return at


def _so_often(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Right 6 s, left 4 s, two of each": the pair so often."""
    ends = _pair_ends(facts)
    if not ends:
        return facts
    at = ends[-1][0]
    tail = [fact for fact in facts[at:] if fact.kind not in ("sep", "word")]
    last = facts[-1] if facts[-1].kind != "sep" else facts[-2]
    counted = len(tail) == PAIR and tail[0].kind == "bare" and tail[1].note.get("plain") and tail[1] is last
    if not counted or tail[0].value not in range(PAIR, MOST_ROUNDS + 1):
        return facts
    rounds = Fact("rounds", tail[0].start, tail[1].end, int(tail[0].value), {"after": True, "pair": True})
    return [*facts[:at], Fact("sep", tail[0].start, tail[0].start, 1, {"mark": ","}), rounds]


def _each_told(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "3 sets, each set left 3 right 2": so many pairs; "each" says nothing new."""
    ends = _pair_ends(facts)
    if len(ends) != 1 or not any(fact.kind == "count" for fact in facts):
        return facts
    first = next((start for _, start, end in _couples(facts) if end <= ends[0][0]), 0)
    each = facts[first - 1] if first else None
    said = each is not None and ((each.kind == "scope" and each.value == "all") or each.value == "each")
    counted = next((fact for fact in facts[:first] if fact.kind == "count"), None)
    if not said or counted is None:
        return facts
    rounds = Fact("rounds", counted.start, counted.end, int(counted.value), {"after": True, "pair": True})
    end = ends[0][0]
    return [*(fact for fact in facts[:end] if fact is not each and fact is not counted), rounds, *facts[end:]]


def _numbered(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "2 left 3 right first set, 2 left 2 right second set": the numbers of pairs told in turn say nothing new."""
    ends = [end for end, _ in _pair_ends(facts)]
    marks = [end for end in ends if end < len(facts) and facts[end].kind == "scope"]
    values = [1 if facts[at].value == "first" else facts[at].value for at in marks]
    if len(marks) < PAIR or values not in (list(range(1, len(marks) + 1)), [*range(1, len(marks)), "last"]):
        return facts
    return [fact for at, fact in enumerate(facts) if at not in marks]
