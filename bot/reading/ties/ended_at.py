"""Reps that a set came to where it ended: "im letzten Satz bei 3 hängen geblieben", "6, 6 and died at 5".

So too where the body gave out: "grip went at 4 on the last", "third set, slipped off at 22s". They are no load, and no
hang; the end of attempts that go up in load ("20, 22.5, bei 25 war Schluss") is none of reps.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import clause_end
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message

MOST = 30  # more are kilograms sooner than reps
ASIDE = frozenset({"word", "plan", "scheme", "move", "flag"})
REACH = 12  # facts back to the sets that it follows
BEFORE_NUMBER = 2  # tokens that may stand between "at" and its number: "at the 4"


def ended_at(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, each such clause being the set that it names and its reps, or the reps alone.

    Behind a list those are of the next set, and beside anything else of a set that is asked.
    """
    out: list[Fact] = []
    start = 0
    while start <= len(facts):
        end = clause_end(facts, start)
        out += _ended(message, facts, start, end)
        out += facts[end : end + 1]
        start = end + 1
    return out


def _ended(message: Message, facts: Sequence[Fact], start: int, end: int) -> Sequence[Fact]:
    """The facts of one clause."""
    clause = facts[start:end]
    numbers = [
        fact for fact in clause if fact.kind not in ASIDE | {"scope", "fail", "claim"} or _at_so_many(message, fact)
    ]
    if len(numbers) != 1:
        return clause
    number = numbers[0]
    value = _reps(message, number)
    if value is None:
        return clause
    scopes = [fact for fact in clause if fact.kind == "scope" and _of_one(fact)]
    stuck = _text(message, value.end) in little("stuck_end")
    missed = any(fact.kind == "fail" for fact in clause)
    if not stuck and (missed or not _over(message, clause)):
        return clause
    if scopes:
        kept = [fact for fact in clause if fact.kind in ("move", "claim")]
        return [*kept, scopes[0], value]
    if not stuck:
        before = facts[max(0, start - REACH) : start]
        if not _told_before(before, value):
            return clause
        value = _next_set(before, number, value, planned=bool(message.context.today))
        if value is None:
            return clause
    noise = [Fact("word", one.start, one.end, None, {"noise": True}) for one in clause if one.kind in ("plan", "fail")]
    kept = [one for one in clause if one.kind in ("move", "claim", "word")]
    return sorted([*kept, *noise, value], key=lambda one: one.start)


def _next_set(before: Sequence[Fact], number: Fact, value: Fact, *, planned: bool) -> Fact | None:
    """The set behind a list; asked behind anything else; None where as many sets are told already."""
    work = next((fact for fact in reversed(before) if fact.kind in ("rows", "loads", "count")), None)
    if work is None or work.kind != "rows" or (number.kind == "count" and number.value == len(work.value)):
        return None
    if len(work.value) > 1 and not work.note.get("list"):
        return None if planned else Fact("ask", number.start, number.end, "sets")
    return value


def _at_so_many(message: Message, fact: Fact) -> bool:
    """ "Opened at 4", which is no time of the day."""
    noise = fact.kind == "word" and fact.note.get("noise") and fact.end == fact.start + 2
    return bool(noise) and _text(message, fact.start) in little("at_score")


def _of_one(fact: Fact) -> bool:
    """Whether a scope is of one set."""
    return fact.value in ("last", "first", ("last", 1)) or isinstance(fact.value, int)


def _reps(message: Message, number: Fact) -> Fact | None:
    """The number as reps of one set, or as the hold that it is, where "at" leads it; None where it is neither."""
    held = number.kind == "rows" and len(number.value) == 1 and number.value[0].load_kg is None
    value = number.value[0] if number.kind == "at" and number.value else number.value
    if number.kind == "word":
        value = message.tokens[number.end - 1].value
    counted = number.kind == "count" and number.note.get("stopped") and number.note.get("bare")
    if not held and not counted and number.kind not in ("load", "bare", "at", "word"):
        return None
    if not held and (not value or number.note.get("unit")):
        return None
    figure = number.start if held else number.end - 1
    led = {token.text for token in message.tokens[max(0, figure - BEFORE_NUMBER) : figure]}
    if led.isdisjoint(little("at_score", "failed_after")):
        return None
    if held:
        return replace(number, note={"one": True, **({"reps": True} if number.value[0].reps else {})})
    whole = 0 < value == int(value) <= MOST
    if not whole:
        return None
    return Fact("rows", figure, number.end, [Entry(int(value))], {"one": True, "reps": True})


def _over(message: Message, clause: Sequence[Fact]) -> bool:
    """Whether the clause says that the set was over: it stopped, somebody fell, or a part of the body gave out."""
    said = {token.text for token in message.tokens[clause[0].start : clause[-1].end]}
    words = " ".join(token.text for token in message.tokens[clause[0].start : clause[-1].end])
    off = any(f" {phrase} " in f" {words} " for phrase in little("fell_off") if " " in phrase)
    gave = said & little("gave_out") and said & little("gives_out_part")
    return bool(said & little("set_end", "fell_off") or off or gave)


def _told_before(facts: Sequence[Fact], value: Fact) -> bool:
    """Whether as many reps were told before."""
    told = [fact.value for fact in facts if fact.kind == "bare"]
    told += [entry.reps or entry.hold_s or 0 for fact in facts if fact.kind == "rows" for entry in fact.value]
    own = value.value[0].reps or value.value[0].hold_s or 0
    return bool(told) and 0 < own <= max(told) <= MOST


def _text(message: Message, at: int) -> str:
    return message.tokens[at].text if at < len(message.tokens) else ""
