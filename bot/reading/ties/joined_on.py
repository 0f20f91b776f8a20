"""Work joined on with a word that elsewhere adds a load, or told against what was meant: "plus two dead hangs"."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names
from bot.reading.ties.values import whole_number

WORK = frozenset({"rows", "bare", "count", "rounds"})
MOST_SETS = 12
REACH = 6  # facts from a try to what it came to
SENTENCE = 3  # the value of a mark that ends a sentence


def joined_on(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The facts, with "plus" as an "and" where work with a name of its own follows."""
    out: list[Fact] = []
    plus = little("plus")
    worked = False
    paired = any(one.kind == "rounds" or (one.kind == "scheme" and one.value == "superset") for one in facts)
    for at, fact in enumerate(facts):
        if not worked:
            worked = fact.kind in WORK
            out.append(fact)
            continue
        spelled = message.tokens[fact.start].text in plus if fact.start < len(message.tokens) else False
        named = any(one.kind == "move" for one in facts[at + 1 : at + 3])
        if spelled and named and "by" in plan_names(fact):
            out.append(Fact("sep", fact.start, fact.end, 1, {"mark": "and"}))
            continue
        many = whole_number(message, fact) if fact.kind == "load" and not fact.note.get("unit") else None
        counts = many is not None and many <= MOST_SETS
        if spelled and counts and facts[at + 1 : at + 2] and facts[at + 1].kind == "move":
            out += _and_so_many(fact, many or 0)
            continue
        beside = counts and fact.note.get("how") == "at" and facts[at + 1 : at + 2] and facts[at + 1].kind == "move"
        if paired and beside and facts[at + 1].start == fact.end:
            # of pairs the second may be led by "with": "superset x3: 5 chin-ups +10 with 10 push-ups"
            out += _and_so_many(fact, many or 0)
            continue
        out.append(fact)
    return out


def _and_so_many(fact: Fact, many: int) -> list[Fact]:
    """The "and", and the number behind it."""
    number = Fact("bare", fact.start + 1, fact.end, float(many), {"kg": float(many)})
    return [Fact("sep", fact.start, fact.start + 1, 1, {"mark": "and"}), number]


def instead_of(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5 5 4 instead of sixes" of no known plan: what was meant is not done."""
    if message.context.today:
        return facts
    out: list[Fact] = []
    told = False
    for fact in facts:
        single = fact.kind == "bare" or (fact.kind == "rows" and len(fact.value) == 1)
        if told and single and "instead" in plan_names(out[-1]):
            fact = Fact("word", fact.start, fact.end, None, {"noise": True})
        out.append(fact)
        told = told or fact.kind == "rows"
    return out


def in_place_of(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Chin-ups instead of pull-ups 4x5" of no known plan: the movement behind was meant, and is not done."""
    if message.context.today:
        return facts
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        if fact.kind == "move" and _led_by_instead(out) and (_named(reversed(out)) or _named(facts[at + 1 :])):
            fact = Fact("word", fact.start, fact.end, None, {"noise": True})
        out.append(fact)
    return out


def _led_by_instead(before: Sequence[Fact]) -> bool:
    """ "Instead of the regular …"."""
    last = next((f for f in reversed(before) if f.kind != "word" and not plan_names(f) & {"the"}), None)
    return last is not None and "instead" in plan_names(last) and "not_this" not in plan_names(last)


def _named(facts: Iterable[Fact]) -> bool:
    """Whether a movement is named before the sentence ends."""
    for fact in facts:
        if fact.kind == "move":
            return True
        if fact.kind == "sep" and fact.value == SENTENCE:
            break
    return False


def went_for(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "Went for 3 at 30 but only got 2", "tried 3 at 30 …": a try of one set, and what it came to."""
    out = list(facts)
    for at, fact in enumerate(facts[:-1]):
        tried = fact.kind == "scheme" and fact.value == "attempt"
        led = tried or message.span(fact.start, fact.end).lower() in little("went_for")
        aimed = facts[at + 1]
        if not led or aimed.kind != "bare" or aimed.value != int(aimed.value):
            continue
        got = next((n for n in range(at + 2, min(at + REACH, len(facts))) if _got(facts[n])), None)
        if got is None or any(one.kind in ("rows", "bare", "move") for one in facts[at + 2 : got]):
            continue
        came_to = next((one for one in facts[got + 1 : got + 3] if one.kind == "bare"), None)
        if came_to is not None and came_to.value < aimed.value:
            out[at] = replace(fact, kind="scheme", value="attempt", note={"names": []})
            out[at + 1] = Fact("rows", aimed.start, aimed.end, [Entry(int(aimed.value))], {"reps": True})
    return out


def _got(fact: Fact) -> bool:
    return fact.kind == "scheme" and bool(fact.value == "got")
