"""Efforts told set by set: "rpe 7 on the first, 7.5 on the second, 8 and 9", "first rpe 7, then 7.5, then 8"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import ends_sentence
from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, plan_names

LOW, HIGH = 5.0, 10.0
LEAST = 3  # efforts; of fewer others say whose they are
WIDE = 3  # facts of a set: its reps, its effort, the comma
KINDS = frozenset({"effort", "efforts", "bare", "load", "loads", "at"})
BESIDE = frozenset({"every", "the", "reached", "took"})


def rated_in_turn(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts with one list of efforts, where a sentence tells one for each of the planned sets."""
    facts = _pairs(facts, rows)
    out: list[Fact] = []
    lifts: dict[str, Fact] = {}  # named so far
    start = 0
    while start < len(facts):
        end = next((at for at in range(start, len(facts)) if ends_sentence(facts[at])), len(facts))
        sentence = facts[start:end]
        lifts |= {fact.value.movement: fact for fact in sentence if fact.kind == "move"}
        found = _found(message, sentence, lifts, rows)
        if found is None:
            out += sentence
        else:
            first, last, efforts = found
            listed = Fact("efforts", sentence[first].start, sentence[last].end, efforts, {"in_turn": True})
            out += [*sentence[:first], listed, *sentence[last + 1 :]]
        out += facts[end : end + 1]
        start = end + 1
    return out


def _pairs(facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "6 @7, 6 @7.5, 5 @8, 5 @9": reps and efforts of all planned sets, two lists."""
    many = len(main_rows(rows))
    for start in range(len(facts)) if many >= LEAST else ():
        begins = facts[start].kind == "bare" and facts[start + 1 : start + 2]
        if not begins or begins[0].kind not in ("at", "effort"):
            continue
        told = facts[start : start + WIDE * many - 1]
        reps, rates, marks = told[::WIDE], told[1::WIDE], told[2::WIDE]
        if len(told) < WIDE * many - 1 or not all(_reps(one) for one in reps):
            continue
        if all(one.kind in ("at", "effort") for one in rates) and all(one.kind == "sep" for one in marks):
            efforts = [value for one in rates for value in _values(one)]
            if len(efforts) == many and all(LOW <= one <= HIGH for one in efforts):
                entries = [Entry(int(one.value)) for one in reps]
                listed = Fact("rows", told[0].start, told[-1].start, entries, {"list": True, "in_turn": True})
                rated = Fact("efforts", told[-1].start, told[-1].end, efforts, {"in_turn": True})
                return [*facts[:start], listed, rated, *facts[start + len(told) :]]
    return facts


def _reps(fact: Fact) -> bool:
    return fact.kind == "bare" and fact.value == int(fact.value)


def _planned(lifts: dict[str, Fact], rows: Sequence[Row]) -> int:
    """How many sets the lift has that efforts are told of: the one named, else the main one."""
    if len(lifts) > 1:
        return 0
    named = [members(fact.value) for fact in lifts.values()]
    own = [row for row in rows if named and row.movement in named[0] and row.part != "warm_up"]
    own = own or [rows[at] for at in main_rows(rows)]
    return 0 if any(row.side for row in own) else len(own)


def _found(
    message: Message, sentence: Sequence[Fact], lifts: dict[str, Fact], rows: Sequence[Row]
) -> tuple[int, int, list[float]] | None:
    """Where the efforts begin and end, with those before words that say which set each is of; None: no such list."""
    said = next((at for at, fact in enumerate(sentence) if _says_effort(message, fact)), None)
    planned = _planned(lifts, rows) if said is not None else 0
    if said is None or planned < LEAST:
        return None
    first = last = said
    while first and sentence[first - 1].kind == "scope" and sentence[first - 1].value in ("first", 1):
        first -= 1
    efforts: list[float] = []
    for at in range(said, len(sentence)):
        fact = sentence[at]
        values = _values(fact)
        if values and all(LOW <= one <= HIGH and one * 2 == int(one * 2) for one in values):
            efforts += values
            last = at
        elif fact.kind == "scope" and _of(fact, len(efforts), planned):
            last = max(last, at) if len(efforts) == planned else last
        elif not _beside(fact):
            break
        if len(efforts) > planned:
            return None
    return (first, last, efforts) if len(efforts) == planned else None


def _says_effort(message: Message, fact: Fact) -> bool:
    if fact.kind in ("effort", "efforts"):
        return not fact.note.get("session")
    words = {token.text for token in message.tokens[fact.start : fact.end]}
    return fact.kind == "word" and not words.isdisjoint(little("effort_word"))


def _values(fact: Fact) -> list[float]:
    if fact.kind not in KINDS or fact.value is None:
        return []
    if fact.kind in ("efforts", "loads"):
        return [float(one) for one in fact.value]
    if fact.kind == "at":
        return [float(fact.value[0])]
    return [] if fact.note.get("unit") else [float(fact.value)]


def _of(fact: Fact, told: int, planned: int) -> bool:
    """Whether a scope is that of the effort just told, or of the next one."""
    if fact.value in ("all", "over") and not told:
        return True
    if fact.value == "last":
        return told >= planned - 1
    return fact.value in ("first", told, told + 1) and (fact.value != "first" or told < LEAST - 1)


def _beside(fact: Fact) -> bool:
    return fact.kind in ("word", "sep") or (plan_names(fact) <= BESIDE and fact.kind == "plan")
