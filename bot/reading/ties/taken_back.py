"""What was told is taken back in the same breath: "with 17.5... actually it was 25", "5x5, no, 4 sets".

What parts the words for it from the sets is taken for the comma that it is, so that the fold sees both values at once.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

WORK = frozenset({"rows", "load", "at", "effort"})
VALUES = frozenset({"rows", "load", "bare", "count", "scope"})
MEANT = frozenset({"planned", "ahead", "wanted"})
ELLIPSIS = 2  # so many full stops
LONGEST = 2  # words of "en realidad"
MOST_BETWEEN = 5  # facts from the words to the value
MOST_WORDS = 8  # from the words to the end of their clause
ALIKE = 3.0  # so many times a load is another number


def taken_back(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the value that is right behind words that say so."""
    at = 1
    while at < len(facts):
        told = _told_before(message, facts, at)
        ends = _taken(message, facts, at, told) if told is not None else None
        value = _value(facts, ends) if ends is not None else None
        if told is not None and value is not None:
            facts = _put_right(facts, at, told, value)
        at += 1
    return facts


def _told_before(message: Message, facts: Sequence[Fact], at: int) -> int | None:
    """The place of what was told, right before the marks in front of a fact; "eigentlich" needs none."""
    told = at - 1
    while told >= 0 and (_mark(facts[told]) or _dash(message, facts[told])):
        told -= 1
    if told < 0 or facts[told].kind not in WORK:
        return None
    parted = told < at - 1 or _in_truth(message, facts[at].start) > 0 or _was_in_truth(message, facts[at])
    return told if parted else None


def _was_in_truth(message: Message, fact: Fact) -> bool:
    """ "Waren eigentlich"."""
    return fact.kind in ("word", "scheme") and _in_truth(message, fact.start + 1) > 0


def _in_truth(message: Message, start: int) -> int:
    """How many words of "en realidad" begin at a token."""
    words = [token.text for token in message.tokens[start : start + LONGEST]]
    return next((many for many in range(1, LONGEST + 1) if " ".join(words[:many]) in little("in_truth")), 0)


def _mark(fact: Fact) -> bool:
    return fact.kind == "sep" and fact.note.get("mark") in (",", ".", ";") and fact.note.get("nl") is None


def _dash(message: Message, fact: Fact) -> bool:
    return fact.kind == "word" and message.tokens[fact.start].text in ("-", "–", "…")


def _taken(message: Message, facts: Sequence[Fact], at: int, told: int) -> int | None:
    """Where the words end that take back what was told, if these are such words."""
    fact, marks = facts[at], facts[told + 1 : at]
    dots = sum(one.note.get("mark") == "." for one in marks)
    if fact.kind == "mend" and fact.value == "mend":
        return at + 1
    if dots == 1:
        return None  # a new sentence
    comma = at + 1 < len(facts) and facts[at + 1].note.get("mark") == ","
    if fact.kind == "fail" and fact.note.get("weak") and fact.note.get("name") == "no" and comma:
        return at + 1
    many = _in_truth(message, fact.start) or (_was_in_truth(message, fact) and LONGEST)
    if many and _only_meant(message, facts, at, fact.start + many):
        return None
    if many:
        return next((n for n in range(at, len(facts)) if facts[n].start >= fact.start + many), None)
    return None


def _only_meant(message: Message, facts: Sequence[Fact], at: int, start: int) -> bool:
    """ "4x5, eigentlich 5x5 geplant": what was meant to be done."""
    end = next((fact.start for fact in facts[at + 1 : at + MOST_BETWEEN] if fact.kind == "sep"), start + MOST_WORDS)
    hits = (hit for found in message.beginning("grammar")[start:end] for hit in found)
    meant = any(hit.table == "unreal" and hit.name in MEANT for hit in hits)
    return meant or any(token.text in little("should_have") for token in message.tokens[start:end])


def _value(facts: Sequence[Fact], start: int) -> int | None:
    """The place of the value that is right."""
    for n in range(start, min(len(facts), start + MOST_BETWEEN)):
        fact = facts[n]
        if fact.kind in VALUES:
            return n
        small = fact.kind in ("word", "scheme") or fact.note.get("mark") == ","
        if not small and not (fact.kind == "plan" and plan_names(fact) <= {"the", "only"}):
            return None
    return None


def _put_right(facts: Sequence[Fact], at: int, told: int, value: int) -> list[Fact]:
    mend = Fact("mend", facts[at].start, facts[value].start, "mend")
    comma = Fact("sep", facts[told].end, facts[told].end, 1, {"mark": ","})
    right = facts[value]
    behind = facts[value + 1] if value + 1 < len(facts) else None
    closes = behind is None or behind.kind in ("sep", "word")
    rows = next((n for n in range(told, -1, -1) if facts[n].kind in ("rows", "move", "sep")), told)
    if right.kind == "count" and facts[rows].kind == "rows" and facts[rows].note.get("plain") and closes:
        first = facts[rows].value[0]  # "5x5, no, 4 sets"
        entries = [replace(first) for _ in range(int(right.value))]
        return [*facts[:rows], replace(facts[rows], value=entries), *facts[rows + 1 : told + 1], *facts[value + 1 :]]
    loads = [one for one in facts[: told + 1] if one.kind == "load" and one.value]
    if right.kind == "bare" and closes and len(loads) == 1 and _of_load(facts[told], loads[0], right):
        kg = float(right.note.get("kg", right.value))
        right = Fact("load", right.start, right.end, kg, {"how": "at"})
    return [*facts[: told + 1], comma, mend, right, *facts[value + 1 :]]


def _of_load(told: Fact, load: Fact, right: Fact) -> bool:
    """Whether a bare number is the load that was meant: it stands right behind it, or no reps are so many."""
    kg = float(right.note.get("kg", right.value))
    if told is load:
        return bool(load.value / ALIKE <= kg <= load.value * ALIKE)
    entries = [entry.reps or 0 for entry in told.value] if told.kind == "rows" else []
    return bool(entries and max(entries) * 2 <= kg <= load.value * ALIKE)
