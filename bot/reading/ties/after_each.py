"""What was done after each set of something else, or between its sets: "dips 4x8, after each set 10 push-ups".

After each set it was done as often as that has sets; between them once less or as often, which is asked.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence

from bot.reading.bounds import COMMA
from bot.reading.facts import Entry, Fact
from bot.reading.fold.block import is_hold
from bot.reading.little import little
from bot.reading.message import Message

MOST_REPS = 30
MOST_SECONDS = 120
REACH = 3  # facts from the words to the exercise
LONGEST = 4  # tokens of the words
AFTER, BETWEEN = "after_each_set", "between_sets"


def after_each(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, such an exercise with all its sets, or with a question for their number."""
    works = [at for at, fact in enumerate(facts) if fact.kind == "rows" and len(fact.value) > 1]
    out = list(facts)
    for at in range(len(facts) - 1, -1, -1):
        fact = facts[at]
        found = _words(message, fact) if fact.kind != "move" else None
        place = bisect_left(works, at)
        if found is None or not (works or message.context.today):
            continue
        work = facts[works[place - 1] if place else works[0]] if works else None  # of the plan
        start, end, name = found
        told = _exercise(message, facts, at, start, end)
        if told is None:
            continue
        move, number, spent = told
        made = Fact("ask", min(start, number.start, move.start), max(end, number.end, move.end), "sets")
        if name == AFTER and work is not None:
            one = _one_set(message, number)
            if one is None:
                continue
            made = Fact("rows", number.start, number.end, [one] * len(work.value), {"plain": True})
        low, high = min(spent), max(spent)
        kept = [facts[n] for n in range(low, high + 1) if n not in spent and facts[n].kind not in ("word", "side")]
        out[low : high + 1] = [*kept, move, made, Fact("sep", move.end, move.end, COMMA, {"mark": ","})]
    return out


def _words(message: Message, fact: Fact) -> tuple[int, int, str] | None:
    """Where the words begin and end that begin in a fact, or end it, and which they are."""
    tokens = message.tokens
    for start in range(fact.start, max(fact.end, fact.start + 1)):
        for end in range(min(len(tokens), start + LONGEST), start, -1):
            text = " ".join(token.text for token in tokens[start:end])
            for name in (AFTER, BETWEEN):
                if text in little(name):
                    return start, end, name
    return None


def _exercise(
    message: Message, facts: Sequence[Fact], at: int, start: int, end: int
) -> tuple[Fact, Fact, list[int]] | None:
    """The exercise told right beside the words, its number, and the places of all that tells them."""
    words = [n for n in range(at, min(len(facts), at + REACH)) if facts[n].start < end]
    if facts[at].start < start and facts[at].note.get("noise"):
        before = facts[at - 1] if at else None  # "hollow holds 30s between sets"
        held = before is not None and before.kind == "move" and is_hold(before.value.movement)
        return (before, facts[at], [at - 1, at]) if held and before is not None else None
    inside = facts[at].kind == "count" and bool(facts[at].note.get("stopped"))  # "nach jedem Satz 10"
    behind = [n for n in range(words[-1] + 1, min(len(facts), words[-1] + 2 + REACH)) if not _silent(facts[n])]
    if inside and behind and facts[behind[0]].kind == "move":
        return facts[behind[0]], facts[at], [at, behind[0]]
    if len(behind) > 1 and facts[behind[1]].kind == "move" and _one_set(message, facts[behind[0]]) is not None:
        return facts[behind[1]], facts[behind[0]], [*words, *behind[:2]]
    ahead = [n for n in range(at - 1, max(-1, at - 2 - REACH), -1) if not _silent(facts[n])][:2]
    if len(ahead) < 2 or any(facts[n].kind == "sep" for n in ahead):
        return None
    for move, number in (ahead, ahead[::-1]):
        if facts[move].kind == "move" and _one_set(message, facts[number]) is not None:
            return facts[move], facts[number], [*words, *ahead]
    return None


def _silent(fact: Fact) -> bool:
    return fact.kind == "word" or (fact.kind == "side" and bool(fact.note.get("plain")))


def _one_set(message: Message, fact: Fact) -> Entry | None:
    """What one set was: reps, bare or "with 10" without a unit, or seconds."""
    if fact.kind == "rows":
        return fact.value[0] if len(fact.value) == 1 and "own_load" not in fact.note else None
    loose = fact.kind == "load" and fact.note.get("how") == "at" and not fact.note.get("unit")
    if not (fact.kind in ("bare", "count") or loose) or not fact.value or fact.value != int(fact.value):
        return None
    units = message.beginning("grammar")[fact.end] if fact.end < len(message.tokens) else []
    if fact.kind == "count" and any((hit.table, hit.name) == ("unit", "sec") for hit in units):
        return Entry(hold_s=float(fact.value)) if fact.value <= MOST_SECONDS else None
    return Entry(int(fact.value)) if fact.value <= MOST_REPS else None
