"""Words for a whole movement of the plan: "Klimmzüge alle fünf, Dips auch"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import clause_start
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, plan_names

LED = 4  # facts behind "all five" up to the lift: "sets of the muscle-ups"


def all_told(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, where so many sets as planned, and what was done likewise, are told as done."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        closes = at + 1 == len(facts) or facts[at + 1].kind in ("sep", "claim")
        closes = closes and not (fact.value == "all" and _of_another(out, rows))
        if fact.kind == "rounds" and _rounds_of(
            [*_named_behind(facts[at + 1 : at + 3]), *_named_before(out)], fact, rows
        ):
            out.append(Fact("count", fact.start, fact.end, fact.value, {"only": True}))
            continue
        if _those_after_first(out, fact, facts[at + 1 : at + 2], rows):
            out.append(Fact("scope", fact.start, fact.end, ("from", 2), {"text": ""}))
            continue
        if closes and _all_sets(out, fact, rows):
            out[-1] = replace(out[-1], end=fact.end, note={**out[-1].note, "names": ["done"]})
            continue
        if closes and _all_so_many(out, fact, rows):
            out.append(replace(fact, note={**fact.note, "names": ["done"]}))  # "pull-ups all four"
            continue
        if _all_of_lift(message, fact, facts[at + 1 : at + 1 + LED]):
            fact = replace(fact, note={**fact.note, "names": ["done"]})  # "hit all five sets of muscle-ups"
        if _all_planned(out, fact, rows):
            out[-1] = replace(fact, note={**fact.note, "names": ["done"]})  # "then the pull-ups, all four sets"
            continue
        if closes and _whole_movement(out, fact):
            fact = replace(fact, note={**fact.note, "names": [*fact.note.get("names", ()), "done"]})
        if _all_with_extra(out, fact, facts[at + 1 : at + 2], rows):
            continue
        if closes and _likewise(message, out, fact):
            fact = Fact("plan", fact.start, fact.end, "done", {"names": ["done"]})
        out.append(fact)
    return out


def _of_another(before: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "The hang was 45 s both times": whether a clause tells numbers of an exercise that the plan has not."""
    clause = before[clause_start(before, len(before)) :]
    known = {row.movement for row in rows}
    outside = any(fact.kind == "move" and not set(members(fact.value)) & known for fact in clause)
    return outside and any(fact.kind in ("rows", "bare") for fact in clause)


def nothing_added(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Nothing skipped and nothing added", "nothing added, nothing left out": no set more, and no word of the load."""
    out = list(facts)
    for at, fact in enumerate(facts):
        first = message.tokens[fact.start].text if fact.kind == "load" and fact.note.get("none") else ""
        if first not in little("nothing"):
            continue
        for beside in (facts[max(0, at - 2) : at][::-1], facts[at + 1 : at + 3]):
            alike = [one.kind for one in beside] == ["sep", "plan"] and message.tokens[beside[1].start].text == first
            if alike and plan_names(beside[1]) & {"done", "planned"}:
                out[at] = Fact("word", fact.start, fact.end, None, {"noise": True})
    return out


def nothing_but(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Nothing today except dips 3x8": only those."""
    for at, fact in enumerate(facts):
        if "not" not in plan_names(fact):
            continue
        behind = [n for n in range(at + 1, min(len(facts), at + LED)) if facts[n].kind != "claim"]
        if behind and "except" in plan_names(facts[behind[0]]):
            end = behind[0]
            only = Fact("plan", fact.start, fact.end, "only", {"names": ["only"]})
            return [*facts[:at], only, *(one for one in facts[at + 1 : end] if one.kind == "claim"), *facts[end + 1 :]]
    return facts


def _all_of_lift(message: Message, fact: Fact, behind: Sequence[Fact]) -> bool:
    """Whether "all five sets of" leads a lift: a number in it is that of its planned sets."""
    if fact.kind != "scope" or fact.value != "all" or fact.note.get("names"):
        return False
    move = next((at for at, one in enumerate(behind) if one.kind == "move"), None)
    if move is None or len(str(fact.note.get("text", "")).split()) + move < LED - 1:
        return False
    words = [one for one in behind[:move] if plan_names(one) != {"the"}]
    small = little("set_words", "of_those_sets", "of_another")
    said = [" ".join(token.text for token in message.tokens[one.start : one.end]) for one in words]
    if not said or any(one.kind != "word" for one in words) or not small.issuperset(said):
        return False
    own = [one for one in message.context.today or () if one.movement in members(behind[move].value)]
    many = {len(own), len([one for one in own if one.side != "right"])}
    told = [token.value for token in message.tokens[fact.start : fact.end] if token.value is not None]
    return bool(own) and all(value in many for value in told)


def both_halves(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Half the sets before breakfast, the other half at lunch": all of them."""
    half = next((at for at, fact in enumerate(facts) if "most" in plan_names(fact)), len(facts))
    words = [token.text for token in message.tokens]
    others = [at for at, fact in enumerate(facts) if at > half and fact.kind == "side" and fact.value == "other"]
    others = [
        at for at in others if words[facts[at].end : facts[at].end + 1] and words[facts[at].end] in little("half_of_it")
    ]
    if not others or little("half_of_it").isdisjoint(words[facts[half].start : facts[half].end]):
        return facts
    whole = Fact("plan", facts[half].start, facts[half].end, "done", {"names": ["done"]})
    return [whole if at == half else fact for at, fact in enumerate(facts) if at not in others]


def _named_behind(after: Sequence[Fact]) -> Sequence[Fact]:
    """The movement that a count leads: "only two rounds of archers"."""
    return after[1:] if after and after[0].kind == "word" else after[:1]


def _named_before(before: Sequence[Fact]) -> list[Fact]:
    """The movement that a count stands behind: "archers, only two rounds"."""
    spoken = [fact for fact in before if fact.kind not in ("sep", "word") and not plan_names(fact) & {"only"}]
    return spoken[-1:]


def _rounds_of(beside: Sequence[Fact], fact: Fact, rows: Sequence[Row]) -> bool:
    """ "Only 2 rounds of archers": fewer than the plan has."""
    named = next((one for one in beside if one.kind == "move"), None)
    if named is None:
        return False
    own = [row for row in rows if row.movement in members(named.value)]
    pairs = {row.side for row in own} == {"left", "right"}
    return int(fact.value) in range(1, len(own) // (2 if pairs else 1))


def _those_after_first(before: Sequence[Fact], fact: Fact, after: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "First set 20 kg, then 4 sets with 17.5" of five planned: the others."""
    if fact.kind != "count" or fact.note.get("only") or not after or after[0].kind != "load":
        return False
    told = [one for one in before if one.kind not in ("word", "sep")][-3:]
    kinds = [one.kind for one in told[-2:]]
    if kinds != ["scope", "load"] or told[-2].value not in ("first", 1):
        return False
    named = told[0] if len(told) == 3 and told[0].kind == "move" else None
    own = [row for row in rows if row.movement in members(named.value)] if named is not None else []
    many = len(own) if own else len(main_rows(rows))
    return bool(fact.value == many - 1)


def _all_sets(before: Sequence[Fact], fact: Fact, rows: Sequence[Row]) -> bool:
    """ "Pull-ups all five": as many as the plan has."""
    led = [one.kind for one in before[-2:]] == ["move", "scope"] and before[-1].value == "all"
    if not led or fact.kind != "bare" or not fact.note.get("spelled"):
        return False
    own = [row for row in rows if row.movement in members(before[-2].value)]
    pairs = {row.side for row in own} == {"left", "right"}
    return bool(own) and len(own) == fact.value * (2 if pairs else 1)


def _all_so_many(before: Sequence[Fact], fact: Fact, rows: Sequence[Row]) -> bool:
    """Whether "all four" stands right behind a movement of the plan."""
    if fact.kind != "scope" or fact.value != "all" or len(str(fact.note.get("text", "")).split()) < 2:
        return False
    led = before[-1] if before else None
    return led is not None and led.kind == "move" and any(row.movement in members(led.value) for row in rows)


def _all_planned(before: Sequence[Fact], fact: Fact, rows: Sequence[Row]) -> bool:
    """Whether "all four" stands in a clause of its own behind a movement, and of nothing else."""
    led = [one.kind for one in before[-2:]] == ["move", "sep"] and before[-1].note.get("mark") == ","
    alone = len(before) < 3 or before[-3].kind == "sep" or before[-3].value == "the"
    if not led or not alone or fact.kind != "scope" or fact.value != "all":
        return False
    return any(row.movement in members(before[-2].value) for row in rows)


def _whole_movement(before: Sequence[Fact], fact: Fact) -> bool:
    """ "Dips all": nothing else is said of them."""
    start = clause_start(before, len(before))
    told = [one for one in before[start:] if one.kind != "word" and not plan_names(one) <= {"the"}]
    told += [one for one in before[start:] if one.kind == "move" and one not in told]
    return fact.kind == "scope" and fact.value == "all" and [one.kind for one in told] == ["move"]


def _all_with_extra(before: Sequence[Fact], fact: Fact, after: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "One extra set, 5 in total": the number of the sets, once more."""
    extra = any(one.kind == "plan" and one.value == "extra_set" for one in before[-2:])
    total = bool(after) and after[0].value == "total" and fact.kind == "bare"
    return extra and total and fact.value in (len(rows) + 1, len(main_rows(rows)) + 1)


def _likewise(message: Message, before: Sequence[Fact], fact: Fact) -> bool:
    """ "Dips too": nothing else is said of them, and something was said of work before."""
    alone = len(before) > 1 and before[-1].kind == "move" and before[-2].kind == "sep"
    if not alone or fact.kind != "word" or message.tokens[fact.start].text not in little("likewise"):
        return False
    return any(one.kind in ("rows", "count") or plan_names(one) & {"done", "planned"} for one in before[:-2])
