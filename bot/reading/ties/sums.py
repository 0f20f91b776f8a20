"""What the sets come to, told behind them or ahead: "3 sets of 7, that's 21", "8 7 6 5, makes 26"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

REACH = 3  # words from "that's" to the sum: "that's a total of 21"
LEAST = 2  # sets


def sums(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, without a number that is the sum of the sets of one movement told before it, and is led as one."""
    out = list(facts)
    total, sets = 0, 0
    for at, fact in enumerate(facts):
        if fact.kind == "move":
            own = at > 0 and facts[at - 1].kind == "rows"  # "5 sets of 8 push-ups"
            total, sets = _size(facts[at - 1]) if own else (0, 0)
        elif fact.kind == "rows" and all(entry.reps for entry in fact.value):
            total, sets = total + _size(fact)[0], sets + len(fact.value)
        number = fact.kind == "bare" or (fact.kind == "rows" and len(fact.value) == 1 and bool(fact.note.get("reps")))
        value = fact.value if fact.kind == "bare" else fact.value[0].reps if number else None
        before = total - (value or 0) if fact.kind == "rows" else total
        several = sets - (fact.kind == "rows") >= LEAST
        led = {token.text for token in message.tokens[max(0, fact.start - REACH) : fact.start]}
        if not (number and several and value == before):
            continue
        if led & little("comes_to") or (fact.kind == "bare" and _names_all(facts, at)):
            out[at] = Fact("word", fact.start, fact.end, None, {"noise": True})
    return out


def sum_ahead(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Pull-ups, 66 of them, as 6 sets of 11": the facts without what the sets behind it come to."""
    out = list(facts)
    for at, fact in enumerate(facts):
        if fact.kind != "count" or not fact.note.get("those"):
            continue
        end = next((n for n in range(at + 1, len(facts)) if facts[n].kind == "move"), len(facts))
        told = [one for one in facts[at:end] if one.kind == "rows"]
        several = sum(len(one.value) for one in told) >= LEAST
        if several and sum(_size(one)[0] for one in told) == fact.value:
            out[at] = Fact("word", fact.start, fact.end, None, {"noise": True})
    return out


def _size(rows: Fact) -> tuple[int, int]:
    """The reps of sets, and how many sets they are."""
    return sum(entry.reps or 0 for entry in rows.value), len(rows.value)


def _names_all(facts: Sequence[Fact], at: int) -> bool:
    """ "3 sets. 10, 9, 8. 27 push-ups": the one movement stands behind the sum of a list."""
    moves = [one for one in facts if one.kind == "move"]
    listed = any(one.kind == "rows" and one.note.get("list") for one in facts[:at])
    return listed and len(moves) == 1 and moves[0].start == facts[at].end and facts[-1].end <= moves[0].end + 1
