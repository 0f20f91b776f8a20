"""Loads told by what was done with them: taken, felt, told before each set or in turn."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.reading.bounds import ends_sentence
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.ties.unsure import one_word

LEAST_IN_TURN = 2
LEAST_TAKEN = 15
WITH_WHAT = 3  # tokens from "with" to the words for how it felt: "con lo que parecían"
LEAST_EACH = 9  # a load told bare in a row of loads


def taken(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Hab 22,5 genommen": what is taken is a load, where it cannot be a number of sets or reps."""
    out = list(facts)
    for at, (one, took) in enumerate(pairwise(facts)):
        if one.kind == "bare" and one.value >= LEAST_TAKEN and took.kind == "scheme" and took.value == "attempt":
            out[at : at + 2] = [took, one]  # "30 probiert": as "tried 30"
            continue
        sure = one.kind == "bare" and (one.value != int(one.value) or one.value >= LEAST_TAKEN)
        if sure and took.kind == "plan" and "took" in took.note.get("names", ()):
            out[at] = Fact("load", one.start, one.end, one.note.get("kg", one.value), {"how": "at"})
    return out


def felt_heavier(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "20 felt like 30": what it felt like is no load; "with what felt like 20 kg" is asked where no other is told."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        before = facts[at - 1] if at else None
        led = before is not None and before.kind == "word" and before.value in little("felt_like")
        if led and fact.kind in ("bare", "load") and not (fact.kind == "bare" and fact.value <= 10):
            with_it = fact.kind == "load" and bool(fact.note.get("unit")) and _carried(message, facts, at - 1)
            others = any(one.kind in ("load", "loads") and one is not fact and one.value for one in facts)
            if with_it and not others:
                fact = Fact("ask", fact.start, fact.end, "load_kg")
            else:
                fact = Fact("word", fact.start, fact.end, None, {"noise": True})
        out.append(fact)
    return out


def _carried(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """Whether "with", "with what" stands right before a fact."""
    low = max(0, facts[at].start - WITH_WHAT)
    return any(token.text in little("with") for token in message.tokens[low : facts[at].start])


def loads_before(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Started with 10, then 15, then 20, 5 pull-ups each": loads in turn, then what was done with each."""
    each = next((at for at, fact in enumerate(facts) if fact.kind == "side" and fact.note.get("plain")), None)
    if each is None or each + 1 >= len(facts) or facts[each + 1].kind != "bare":
        return facts
    reps = facts[each + 1].value
    listed = facts[each - 1] if each else None
    if listed is not None and listed.kind == "loads" and facts[each].start == listed.end:
        # "20 22,5 25 jeweils 3"
        work = Fact("rows", facts[each + 1].start, facts[each + 1].end, [Entry(int(reps))], {"reps": True})
        return [*facts[: each - 1], replace(listed, note={}), work, *facts[each + 2 :]]
    loads: list[int] = []
    for at in range(each - 1, -1, -1):
        fact = facts[at]
        if fact.kind == "bare" and fact.value > max(reps, LEAST_EACH) and not fact.note.get("before_move"):
            loads.insert(0, at)
        elif fact.kind == "load" and fact.value and fact.note.get("how") != "plus":
            loads.insert(0, at)
            break
        elif fact.kind not in ("sep", "word", "scheme", "claim") or ends_sentence(fact):
            break
    if len(loads) < LEAST_IN_TURN or facts[loads[0]].kind != "load":
        return facts
    kgs = [float(facts[at].note.get("kg", facts[at].value)) for at in loads]
    merged = Fact("loads", facts[loads[0]].start, facts[loads[-1]].end, kgs)
    work = Fact("rows", facts[each + 1].start, facts[each + 1].end, [Entry(int(reps))], {"reps": True})
    return [*facts[: loads[0]], merged, work, *facts[each + 2 :]]


def in_turn(_: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "3x5, first with 10, then 15, then 20": as many loads as sets are one a set."""
    out = list(facts)
    for at, one in enumerate(facts):
        if one.kind != "rows" or not one.note.get("plain") or len(one.value) < LEAST_IN_TURN:
            continue
        loads: list[Fact] = []
        end = at + 1
        for place in range(at + 1, len(facts)):
            fact = facts[place]
            heavy = fact.kind == "bare" and loads and fact.value > max(entry.reps or 0 for entry in one.value)
            if (fact.kind == "load" and fact.value and fact.note.get("how") != "plus") or heavy:
                loads.append(fact)
                end = place + 1
            elif (fact.kind == "bare" and fact.note.get("spelled") and fact.value == 1) or one_word(fact):
                continue  # "una con 10, otra con 15"
            elif fact.kind in ("sep", "word", "move", "scope", "plan") and not ends_sentence(fact):
                continue
            else:
                break
        parted = all(
            any(fact.kind == "sep" for fact in facts if first.end <= fact.start < second.start)
            for first, second in pairwise(loads)
        )
        if len(loads) == len(one.value) and parted:
            kgs = [float(fact.note["kg"] if fact.kind == "bare" else fact.value) for fact in loads]
            kept = [fact for fact in facts[at + 1 : end] if fact.kind == "move"]
            merged = Fact("loads", loads[0].start, loads[-1].end, kgs)
            return [*out[: at + 1], *kept, merged, *out[end:]]
    return out
