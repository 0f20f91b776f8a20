"""A set that is added at the end, not the last of those told: "dips 3x5 +20 and one last set at bw: 17"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import ends_sentence
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message

LEAST_SETS = 2


def one_last(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, where an article makes "a final AMRAP", "una última serie", a set more: with its own reps and load."""
    out: list[Fact] = []
    most = 0  # reps of the several sets that the sentence has told of
    at = 0
    while at < len(facts):
        fact = facts[at]
        if ends_sentence(fact):
            most = 0
        if fact.kind == "rows" and len(fact.value) >= LEAST_SETS:
            most = max(entry.reps or 1 for entry in fact.value)
        out.append(fact)
        at += 1
        if fact.kind == "sep" and most:
            end = _clause_end(facts, at)
            one = _one(message, facts[at:end], most)
            if one is not None:
                out += one
                at = end
    return out


def _clause_end(facts: Sequence[Fact], at: int) -> int:
    """Where the clause ends that begins at a place; a colon leads to its number."""
    while at < len(facts) and (facts[at].kind != "sep" or facts[at].note.get("mark") == ":"):
        at += 1
    return at


def _one(message: Message, clause: Sequence[Fact], most: int) -> list[Fact] | None:
    """The clause with its set told apart; None where it adds none. `most`: reps of a set before it."""
    scope = next((at for at, fact in enumerate(clause) if fact.kind == "scope" and fact.value == "last"), None)
    if scope is None or any(fact.kind in ("move", "fail", "side", "plan", "instead") for fact in clause):
        return None
    heads = [at for at in range(len(clause) - 1) if _article(message, clause[at])]
    led = [at for at in heads if _amrap(clause[at + 1]) and scope in (at + 2, at - 1, at - 2)]
    head = next((at for at in heads if at + 1 == scope or at in led), None)
    if head is None:
        return None
    rest = [fact for at, fact in enumerate(clause) if at not in (head, scope)]
    numbers = [fact for fact in rest if fact.kind == "bare" or (fact.kind == "rows" and len(fact.value) == 1)]
    loads = [fact for fact in rest if fact.kind == "load"]
    if not numbers and len(loads) == 1 and _reps_so(loads[0], most):
        numbers, loads = [Fact("bare", loads[0].start, loads[0].end, loads[0].value)], []
        rest = [numbers[0] if fact.kind == "load" else fact for fact in rest]
    if not numbers and len(loads) == 1 and loads[0].value and not loads[0].note.get("same"):
        unknown = Entry(load_kg=loads[0].value, ask="reps")  # "and one last set with 20"
        made = Fact("rows", clause[scope].start, loads[0].end, [unknown], {"one": True, "reps": True})
        return [made if fact is loads[0] else fact for fact in rest]
    if len(numbers) != 1 or len(loads) > 1 or any(fact.kind in ("count", "rounds", "at", "loads") for fact in rest):
        return None
    number = numbers[0]
    reps = number.value if number.kind == "bare" else number.value[0].reps
    if reps is None or reps != int(reps):
        return None
    entry = Entry(int(reps), load_kg=loads[0].value if loads else None)
    made = Fact("rows", number.start, number.end, [entry], {"one": True, "reps": True})
    efforts = [fact for fact in rest if fact.kind == "effort"]  # "a last set to failure: 12": of that set
    return [made if fact is number else fact for fact in rest if fact not in (*loads, *efforts)] + efforts


def _reps_so(load: Fact, most: int) -> bool:
    """ "8, 8, 7 and a last set with 5": nobody tells such a load and no reps."""
    return load.note.get("how") == "at" and not load.note.get("unit") and load.value in range(1, most + 1)


def _article(message: Message, fact: Fact) -> bool:
    """ "Ein", "una", "a": also as the one that it may be, and with the set that it is of."""
    if fact.kind not in ("bare", "word", "count") or (fact.kind != "word" and fact.value != 1):
        return False
    token = message.tokens[fact.start]
    return token.kind == "word" and token.text in little("a") | little("an")


def _amrap(fact: Fact) -> bool:
    return fact.kind == "scheme" and fact.value == "amrap"
