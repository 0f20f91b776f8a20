"""The planned sets told by their number: "push-ups, the three of 20", "45 las tres veces"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import ends_sentence
from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import counted_rows
from bot.reading.plan.clauses import clause_around
from bot.reading.plan.ground import members, plan_names

FAR_BACK = 12  # facts from the end of a list to the sets that complete it
NUMBERED = frozenset("rows bare count scope side delta instead loads rounds fail".split())


def sets_of_plan(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts with such numbers as the sets of the plan, where the plan has so many."""
    facts = _in_twos(message, facts, rows)
    out: list[Fact] = []
    named: Sequence[Row] = ()
    for at, fact in enumerate(facts):
        if fact.kind == "move":
            named = [row for row in rows if row.movement in members(fact.value)]
        elif ends_sentence(fact):
            named = ()
        closes = at + 1 == len(facts) or facts[at + 1].kind in ("sep", "claim")
        if closes and _each_time(out, fact, named or rows):
            out[-1] = Fact("scope", out[-1].start, fact.end, "all", {"text": ""})
            continue
        if _part_of_named(message, fact, facts[at + 1 : at + 3], rows):
            note = {"of_plan": fact.value[0].reps}
            out.append(Fact("count", fact.start, fact.end, len(fact.value), note))
            continue
        if _part_of_all(message, out, fact, named or rows):
            note = {"of_plan": fact.value[0].reps}
            out.append(Fact("count", fact.start, fact.end, len(fact.value), note))
            continue
        if closes and _all_there_were(out, fact, rows):
            continue
        if _total_with_extra(out, fact, rows):
            del out[-1]
            continue
        if closes and _completes(out, fact, named):
            continue
        many = _as_planned(message, out, fact, named or rows) if closes else 0
        if many:
            start = out[-2].start
            del out[-2:]
            entries = [Entry(int(fact.value)) for _ in range(many)]
            out.append(Fact("rows", start, fact.end, entries, {"plain": True}))
            continue
        out.append(fact)
    return out


def _part_of_named(message: Message, fact: Fact, behind: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "2 of 3 dip sets", where the plan has three."""
    if [one.kind for one in behind] != ["move", "word"] or fact.kind != "rows" or not fact.note.get("plain"):
        return False
    words = {token.text for token in message.tokens[fact.start : fact.end]}
    if words.isdisjoint(little("of")) or str(behind[1].value) not in little("sets_only"):
        return False
    own = [row for row in rows if row.movement in members(behind[0].value)]
    many = len(own) // (2 if {row.side for row in own} == {"left", "right"} else 1)
    return bool(own) and fact.value[0].reps == many >= len(fact.value) and all(row.reps != many for row in own)


def _each_time(before: Sequence[Fact], fact: Fact, rows: Sequence[Row]) -> bool:
    """ "45 the three times" of three planned sets."""
    led = bool(before) and bool(plan_names(before[-1]) & {"the"})
    return led and fact.kind == "repeat" and bool(counted_rows(rows, int(fact.value)))


def _all_there_were(before: Sequence[Fact], fact: Fact, rows: Sequence[Row]) -> bool:
    """ "Two more sets on top of the six": as many as were planned."""
    more = next((one for one in reversed(before) if one.kind in ("count", "sep")), None)
    told = more is not None and more.kind == "count" and bool(more.note.get("more"))
    return told and fact.kind == "bare" and bool(fact.note.get("the")) and bool(counted_rows(rows, int(fact.value)))


def _part_of_all(message: Message, before: Sequence[Fact], fact: Fact, rows: Sequence[Row]) -> bool:
    """ "3 Sätze von 5", "solo 3 series de 5" of five planned sets of another number of reps."""
    if fact.kind != "rows" or not fact.value or fact.note.get("own_load") is not None:
        return False
    reps, many = fact.value[0].reps, len(fact.value)
    if not reps or many >= reps or any(reps == row.reps for row in rows) or not counted_rows(rows, reps):
        return False
    words = {token.text for token in message.tokens[fact.start : fact.end]}
    only = bool(before) and "only" in plan_names(before[-1])
    so_many = fact.end - fact.start == 3 and not words.isdisjoint(little("of"))  # no "2 sets of 5"
    if so_many and fact.start and message.tokens[fact.start - 1].text in little("so_then"):
        return True  # "the alarm went off after 2 sets, so 2 of 4"
    return bool(words & (little("part_of") | (little("out_of") if only else frozenset())))


def _total_with_extra(before: Sequence[Fact], fact: Fact, rows: Sequence[Row]) -> bool:
    """ "One more set, so 5 in total" of four planned: no more than was told."""
    told = before[-1] if before and fact.kind == "scheme" and fact.value == "total" else None
    if told is None or told.kind != "bare":
        return False
    more = any("extra_set" in plan_names(one) or one.value == "extra_set" for one in before)
    return more and bool(counted_rows(rows, int(told.value) - 1))


def _as_planned(message: Message, before: Sequence[Fact], fact: Fact, rows: Sequence[Row]) -> int:
    """How many sets "the three of 20" are, where the plan has three of twenty; else 0."""
    if fact.kind != "bare" or [one.kind for one in before[-2:]] != ["bare", "word"] or not before[-2].note.get("the"):
        return 0
    of = message.tokens[before[-1].start : before[-1].end]
    many = int(before[-2].value)
    own = [row for row in rows if fact.value in (row.reps, row.hold_s)]
    sets = len({(row.group, row.side) for row in own if row.side != "right"})
    alike = {row.movement for row in own}
    return many if len(of) == 1 and of[0].text in little("sets_of_reps") and sets == many and len(alike) == 1 else 0


def _in_twos(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Pull-ups as doubles": each of their planned sets."""
    twos = [fact for fact in facts if _plural_of_reps(message, fact)]
    if not twos:
        return facts
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        if fact in twos:
            clause = clause_around(facts, at)
            moves = [one for one in clause if one.kind == "move"]
            own = [row for row in rows if len(moves) == 1 and row.movement in members(moves[0].value)]
            many = sum(row.part != "warm_up" and row.side != "right" for row in own)
            if many > 1 and not any(one is not fact and one.kind in NUMBERED for one in clause):
                entries = [Entry(fact.value[0].reps) for _ in range(many)]
                out.append(Fact("rows", fact.start, fact.end, entries, {"plain": True}))
                continue
        out.append(fact)
    return out


def _plural_of_reps(message: Message, fact: Fact) -> bool:
    """Whether a fact is a word like "doubles"."""
    if fact.kind != "rows" or len(fact.value) != 1 or not fact.note.get("word") or not fact.note.get("each_of"):
        return False
    return message.span(fact.start, fact.end).lower().endswith(tuple(little("plural")))


def _completes(out: list[Fact], fact: Fact, rows: Sequence[Row]) -> bool:
    """ "3 3 3 and the last two 2" of five planned sets: the list goes on; whether that is what is said."""
    reps = fact.value if fact.kind == "bare" else fact.value[0].reps if _one(fact) else None
    at, between = len(out) - 1, list[Fact]()
    far = max(0, at - FAR_BACK)
    while at > far and len(between) < 2 and not (out[at].kind == "rows" and out[at].note.get("list")):
        one = out[at]
        if ends_sentence(one):
            return False
        if one.kind not in ("word", "sep") and plan_names(one) not in ({"the"}, {"only"}):
            between.append(one)
        at -= 1
    scope = between[0].value if len(between) == 1 and between[0].kind == "scope" else None
    many = scope[1] if isinstance(scope, tuple) and scope[0] == "last" else 1 if scope == "last" else 0
    if at < 1 or not many or not reps:
        return False
    told = out[at]
    if told.kind != "rows" or not told.note.get("list"):
        return False
    own = [row for row in rows if row.part != "warm_up"]
    if len(told.value) + many != len(own) or any(row.side for row in own):
        return False
    entries = [*told.value, *(Entry(int(reps)) for _ in range(many))]
    out[at:] = [Fact("rows", told.start, fact.end, entries, {"list": True, "mark": told.note.get("mark")})]
    return True


def _one(fact: Fact) -> bool:
    return fact.kind == "rows" and len(fact.value) == 1 and fact.value[0].hold_s is None
