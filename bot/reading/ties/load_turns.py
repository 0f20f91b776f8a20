"""Loads told by what they were before, or in turn: "then took ten off", "alternating 25 and 30", "doubles: 30, 35"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.reading.bounds import within_sentence
from bot.reading.facts import Entry, Fact
from bot.reading.fold.block import to_kg
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.missed import miss_behind
from bot.reading.rules import Rule
from bot.reading.ties.values import in_kg, listed, reps_of

MOST_CHANGE_KG = 15.0
LEAST_LOAD = 15.0  # of a row of loads that follows "doubles:"
MOST_OF_A_WORD = 20  # "singles: 20" may be so many of them
REACH = 4  # so far behind a change stands the work that is done with it
LEAST_IN_TURN = 2
ASIDE = frozenset({"word", "sep", "scheme", "plan"})


def _more_or_less(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Five sets of two with 25, then took ten off and did six", "then added another 5 and did 3"."""
    out = list(facts)
    for at in range(1, len(out) - 1):
        fact = out[at]
        kg = _change(fact)
        if not kg or not 0 < kg <= MOST_CHANGE_KG:
            continue
        led = [one for one in out[max(0, at - 2) : at] if one.kind == "plan"][-1:]
        names = led[0].note.get("names", ()) if led else ()
        off = out[at + 1].kind == "plan" and "off" in out[at + 1].note.get("names", ())
        further = out[at - 1].kind == "word" and out[at - 1].value in little("another")
        risen = fact.kind == "delta" and fact.value[2] > 0 and _then_did(out, at)
        off = off and "took" in names
        taken = off or _taken_off(message, out, at)
        sign = -1 if taken else 1 if risen or (further and "sure" in names) else 0
        if not sign or not _worked(out, at + 1):
            continue
        before = [one for one in out[:at] if one.kind == "load" and one.value]
        if not before or not any(one.kind == "rows" for one in out[:at]):
            continue
        last = float(before[-1].value)
        if sign < 0 and kg > last:
            continue
        out[at] = Fact("load", fact.start, fact.end, last + sign * kg, {"how": "at", "turned": True, "unit": "kg"})
        if off or _behind(message, out[at + 1]):
            out[at + 1] = Fact("word", out[at + 1].start, out[at + 1].end, None, {"noise": True})
        work = next(n for n in range(at + 1, len(out)) if out[n].kind in ("rows", "bare"))
        if out[work].kind == "bare" and out[work].value == int(out[work].value):
            reps = [Entry(int(out[work].value))]  # "then 10 less for 6"
            out[work] = Fact("rows", out[work].start, out[work].end, reps, {"one": True, "reps": True})
    return out


def _taken_off(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """ "10 less", "dropped 10", "bajé 10", "10 runter": less by so much, and not down to so much."""
    fact, before = facts[at], facts[at - 1]
    if fact.kind == "delta":
        return bool(fact.value[2] < 0)
    if fact.kind == "load" and fact.note.get("how") is not None:
        return False
    led = before.end == fact.start and before.kind in ("plan", "word")
    minus = led and "minus" in before.note.get("names", ())
    return (
        minus
        or (led and message.tokens[before.end - 1].text in little("dropped_by"))
        or _behind(message, facts[at + 1])
    )


def _behind(message: Message, fact: Fact) -> bool:
    """The "runter" of "10 runter"."""
    return fact.kind in ("plan", "word") and message.tokens[fact.start].text in little("off_the_load")


def _change(fact: Fact) -> float | None:
    """The kilograms that a number may change a load by."""
    if fact.kind == "bare":
        return float(fact.note.get("kg", fact.value))
    if fact.kind == "delta":
        return float(fact.value[0]) if fact.value[1] == "load" else None
    return fact.value if fact.kind == "load" else None


def _then_did(facts: Sequence[Fact], at: int) -> bool:
    """ "Then added ten kilos and did five more": a further set with more, and no change of those told."""
    kinds = [(fact.kind, fact.note.get("mark"), fact.value) for fact in facts[at + 1 : at + 3]]
    return len(kinds) == 2 and kinds[0][:2] == ("sep", "and") and kinds[1][0::2] == ("scheme", "got")


def _worked(facts: Sequence[Fact], at: int) -> bool:
    """Whether a set follows, in the same breath."""
    after = [fact for fact in facts[at : at + 2 * REACH] if fact.kind not in ASIDE or fact.value == 3]
    return bool(after) and after[0].kind in ("rows", "bare")


def _in_turn(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "6x2, alternating 25 and 30": one set with the one, the next with the other."""
    alternating = little("alternating")
    for at in range(len(facts) - 3):
        word, first, joined, second = facts[at : at + 4]
        if word.kind != "word" or str(word.value) not in alternating:
            continue
        weights = all(fact.kind in ("bare", "load") and fact.value for fact in (first, second))
        rows = next((fact for fact in reversed(facts[:at]) if fact.kind == "rows"), None)
        if weights and joined.kind == "sep" and rows is not None and len(rows.value) > 1:
            pair = [float(fact.note.get("kg", fact.value)) for fact in (first, second)]
            loads = Fact("loads", first.start, second.end, [pair[n % 2] for n in range(len(rows.value))])
            return [*facts[:at], loads, *facts[at + 4 :]]
    return facts


def _by_word(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Doubles: 30, 32.5, 35": a double with each."""
    for at in range(len(facts) - 2):
        word, colon, told = facts[at : at + 3]
        one = word.kind == "rows" and bool(word.note.get("word")) and len(word.value) == 1
        values = listed(message, told)
        if one and colon.note.get("mark") == ":" and told.kind == "bare" and told.value > MOST_OF_A_WORD:
            load = Fact("load", told.start, told.end, float(told.note.get("kg", told.value)), {"how": "plus"})
            return [*facts[:at], load, replace(word, note={"reps": True}), *facts[at + 3 :]]  # "5RM: 27.5"
        if one and colon.note.get("mark") == ":" and len(values) > 1 and _rising(values):
            loads = replace(told, kind="loads", value=in_kg(message, values), note={})
            return [*facts[:at], loads, replace(word, note={"reps": True}), *facts[at + 3 :]]
        values = listed(message, colon)
        if (
            _many_of(word)
            and colon.kind == "rows"
            and len(values) >= LEAST_IN_TURN
            and _rising(values)
            and max(values) > min(values)
        ):
            loads = replace(colon, kind="loads", value=in_kg(message, values), note={})
            return [*facts[:at], loads, replace(word, note={"reps": True}), *facts[at + 2 :]]  # "singles 10, 20, 30"
    return facts


def _rising(values: Sequence[float]) -> bool:
    """Whether numbers are rather loads than reps: large, or rising to large ones."""
    rises = all(low < high for low, high in pairwise(values))
    return min(values) >= LEAST_LOAD or (rises and max(values) >= LEAST_LOAD)


def _by_reps(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "20, 30, 35 all for 2", "20/25/30 for triples", "10, 20, 30, singles": so many reps with each."""
    for at, told in enumerate(facts):
        values = listed(message, told)
        if len(values) < LEAST_IN_TURN or not _rising(values) or list(values) != sorted(values):
            continue
        named = any(one.kind == "move" for one in facts[:at])
        after = [one for one in facts[at + 1 : at + 2 + REACH] if not (_for_each(one) or _between(one, named))]
        led = facts[at + 1 : at + 3]
        spoken = any(one.kind == "word" and str(one.value) in little("load_for") for one in led)
        spoken = spoken or (bool(after) and _many_of(after[0]))
        reps = reps_of(after[0]) if after and spoken else None
        sure = told.kind == "loads" or not min(values)
        if reps is None or (reps >= min(values) and not sure):
            continue
        end = next(n for n, one in enumerate(facts) if one is after[0]) + 1
        kept = [one for one in facts[at + 1 : end] if one.kind == "move"]
        end += end < len(facts) and _for_each(facts[end])
        # "a heavy double: 20, 30, 35 for 2" only names what follows
        before = [one for one in facts[:at] if not (one.kind == "rows" and one.note.get("top") and len(one.value) == 1)]
        loads = replace(told, kind="loads", value=in_kg(message, values), note={})
        work = Fact("rows", after[0].start, after[0].end, [Entry(reps)], {"reps": True})
        return [*before, *kept, loads, work, *facts[end:]]
    return facts


def _many_of(fact: Fact) -> bool:
    """ "Singles", "3er": a word for sets of so many reps."""
    return fact.kind == "rows" and bool(fact.note.get("word") and fact.note.get("each_of"))


def _between(fact: Fact, named: bool) -> bool:
    """What may part loads from the word for their reps: "10, 20, 30 en dominadas, singles"; one name of the lift."""
    return (
        fact.kind == "word"
        or (fact.kind == "move" and not named)
        or (fact.kind == "sep" and fact.note.get("mark") == ",")
    )


def _for_each(fact: Fact) -> bool:
    """The words between loads and the reps that each was done for: "all for", "for 2 each"."""
    each = (fact.kind == "scope" and fact.value == "all") or (fact.kind == "side" and bool(fact.note.get("plain")))
    return each or (fact.kind == "word" and str(fact.value) in little("load_for"))


def _on(fact: Fact) -> bool:
    """ "One set of five each on chins at …"."""
    return fact.kind == "word" and str(fact.value) in little("on_lift")


def _reps_at_loads(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Triples at 20, 25 and 30", "5 reps with 10, then 15, then 20": a set with each."""
    for at, fact in enumerate(facts):
        one = fact.kind == "rows" and len(fact.value) == 1
        # "one set of five each at …" has no note at all
        reps = reps_of(fact) if one and (fact.note.keys() & {"word", "reps", "each_of"} or not fact.note) else None
        if not reps:
            continue
        start = at + 1
        while start < len(facts) and (facts[start].kind == "move" or _for_each(facts[start]) or _on(facts[start])):
            start += 1
        whole = facts[start] if start < len(facts) and facts[start].kind == "loads" else None
        unsaid = not fact.note.keys() & {"word", "reps"}  # "singles at 20, 25" is read by its word
        if whole is not None and unsaid and None not in whole.value and len(whole.value) >= LEAST_IN_TURN:
            kept = [one for one in facts[at + 1 : start] if one.kind == "move"]
            return [*facts[:at], *kept, whole, replace(fact, note={"reps": True}), *facts[start + 1 :]]
        said, end = _in_a_row(message, facts, start, rising=not fact.note.get("each_of"))
        if len(said) < LEAST_IN_TURN or min(said) <= reps:
            continue
        loads = Fact("loads", facts[start].start, facts[end - 1].end, in_kg(message, said))
        kept = [one for one in facts[at + 1 : start] if one.kind == "move"]
        return [*facts[:at], *kept, loads, replace(fact, note={"reps": True}), *facts[end:]]
    return facts


def _in_a_row(message: Message, facts: Sequence[Fact], start: int, *, rising: bool) -> tuple[list[float], int]:
    """Loads as they were said, and where they end; the first is led by a word for loads.

    They rise, or are all too heavy for anything else: "triples at 20, 20, 22.5, 22.5".
    """
    said: list[float] = []
    a_unit = to_kg(1.0, message.context.unit)
    at = end = start
    while at < len(facts):
        fact = facts[at]
        if within_sentence(fact) and said:
            at += 1
            continue
        led = fact.kind == "load" and fact.value and fact.note.get("how") == "at"
        if not said:
            told = [fact.value / a_unit] if led else [float(fact.value[0])] if fact.kind == "at" else []
        elif fact.kind == "bare" or led:
            told = [float(fact.value) if fact.kind == "bare" else fact.value / a_unit]
        else:
            told = listed(message, fact)
        row = [*said, *told]
        if not told or ((rising or min(row) < LEAST_LOAD) and (row != sorted(row) or len({*row}) < len(row))):
            break
        if at + 1 < len(facts) and (miss_behind(facts, at + 1) is not None or facts[at + 1].value == "attempt"):
            break  # "one with 42.5, at 45 failed", "dann 40 versucht"
        said += told
        at = end = at + 1
    return said, end


RULES: tuple[tuple[Rule, str], ...] = (
    (_more_or_less, "rows load"),
    (_in_turn, "'alternating word sep rows"),
    (_by_word, "rows"),
    (_by_reps, "rows|loads rows|bare"),
    (_reps_at_loads, "rows load|at|loads"),
)
