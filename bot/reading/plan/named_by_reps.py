"""Planned sets named by their reps: "fives done at 15", "los de 5", "the last two were 1s", "the 3s went 3 3 2"."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.fold.block import to_kg
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import plan_names
from bot.reading.plan.value import near_load, near_reps
from bot.reading.prose import not_managed

FIGURE_S = re.compile(r"(\d+)s", re.IGNORECASE)


def reps_in_figures(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """Reps that look like seconds or like the word for a set, each by what the plan has."""
    out: list[Fact] = []
    for fact in facts:
        named = bool(out) and out[-1].kind == "scope" and out[-1].value == "back"  # "back-offs 3s"
        told = _of_reps(message, fact, [row for row in rows if row.part != "warm_up"], named=named)
        if told.kind == "load" and fact.kind == "rows" and _begins_back(message, fact):
            out.append(Fact("scope", fact.start, fact.start + 1, "back", {"text": ""}))  # "back-offs with 30"
        out.append(told)
    return out


def _begins_back(message: Message, fact: Fact) -> bool:
    return any((hit.table, hit.name) == ("scope", "back") for hit in message.beginning("grammar")[fact.start])


def _of_reps(message: Message, fact: Fact, rows: Sequence[Row], *, named: bool) -> Fact:
    """ "the last two were 1s": beside a plan of reps no seconds; "waren 2er" tells reps too."""
    if any(row.hold_s is not None for row in rows):
        return fact
    if fact.kind == "load" and FIGURE_S.fullmatch(message.span(fact.start, fact.end).strip()):
        return Fact("bare", fact.start, fact.end, float(fact.value), {"kg": fact.value, "figure": True})  # "only 8s"
    if fact.kind != "rows" or len(fact.value) != 1:
        return fact
    reps = fact.value[0].reps
    if fact.note.get("each_of") and reps and not near_reps(reps, rows):
        kg = to_kg(reps, message.context.unit)
        if near_load(kg, rows):  # "the first two sets with 20" of planned fives
            return Fact("load", fact.start, fact.end, kg, {"how": "at"})
    if fact.note.get("each_of") and reps and _with(message, fact) and all(row.reps != reps for row in rows):
        kg = to_kg(reps, message.context.unit)
        if any(row.load_kg == kg for row in rows):  # "first dip set with 10" of planned eights with 10
            return Fact("load", fact.start, fact.end, kg, {"how": "at"})
    figure = FIGURE_S.fullmatch(message.span(fact.start, fact.end).strip()) if fact.note.get("one") else None
    if figure is None:
        return fact
    value = int(figure[1])
    if any(row.reps == value for row in rows) and not named and not any(row.side for row in rows):
        return replace(fact, value=[Entry(value)], note={"the": True})
    kg = to_kg(value, message.context.unit)
    return Fact("bare", fact.start, fact.end, float(value), {"kg": kg, "figure": True})


def _with(message: Message, fact: Fact) -> bool:
    return any(token.text in little("with_arm") for token in message.tokens[fact.start : fact.end])


def named_by_reps(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "los de 5": the sets of five."""
    out: list[Fact] = []
    for fact in facts:
        before = out[-2:]
        if (
            fact.kind == "bare"
            and len(before) == 2
            and plan_names(before[0]) & {"the"}
            and before[1].kind == "word"
            and before[1].end - before[1].start == 1
            and any(row.reps == fact.value for row in rows)
        ):
            out[-2:] = [Fact("rows", before[0].start, fact.end, [Entry(int(fact.value))], {"the": True})]
            continue
        out.append(fact)
    return out


def missed_by_reps(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Couldn't get the triple, only 2": the one set of three of the main lift, by its place."""
    main = [rows[at] for at in main_rows(rows)]
    out: list[Fact] = []
    for fact in facts:
        missed = bool(out) and out[-1].kind == "fail" and out[-1].value is None and not out[-1].note.get("weak")
        if missed and fact.kind == "rows" and fact.note.get("the") and len(fact.value) == 1:
            places = [n for n, row in enumerate(main, 1) if row.reps == fact.value[0].reps and row.side is None]
            if len(places) == 1:
                out[-1] = replace(out[-1], end=fact.end, value=places[0])
                continue
        out.append(fact)
    return out


def sets_of_so_many(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "fives done at 15", "Dreier erledigt, Fünfer nicht": the sets of so many, where nothing else is told."""
    facts = _reps_of_sides(facts)
    beside = any(fact.note.get("back_offs") for fact in facts)  # "triple done, two back-off sets"
    told = [fact for fact in facts if fact.kind in ("rows", "bare", "count") and not fact.note.get("back_offs")]
    alone = len(told) == 1 and not beside
    if not told or not all(_of_so_many(message, fact, rows, alone=alone) for fact in told):
        return facts
    if len({fact.value[0].reps for fact in told}) != len(told):
        return facts
    out: list[Fact] = []
    for fact in facts:
        if any(fact is one for one in told):
            fact = replace(fact, note={"the": True})
        elif fact.kind == "fail" and fact.value is None and len(told) > 1 and not_managed(message, fact):
            fact = Fact("plan", fact.start, fact.end, "skipped", {"names": ["skipped"]})
        out.append(fact)
    return out


def _reps_of_sides(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Threes on the left, twos on the right": the reps of that side in each set, and no name of planned sets."""
    beside = [_side_beside(facts, at) for at in range(len(facts))]
    return [
        Fact("bare", fact.start, fact.end, float(fact.value[0].reps), {"figure": True})
        if fact.kind == "rows" and fact.note.get("word") and fact.note.get("each_of") and side in ("left", "right")
        else fact
        for fact, side in zip(facts, beside, strict=True)
    ]


def _side_beside(facts: Sequence[Fact], at: int) -> str | None:
    """The side that stands right beside a fact, or before it with no more than "all" between."""
    led = next((one for one in reversed(facts[max(0, at - 3) : at]) if one.kind != "word" and one.value != "all"), None)
    near = (led, *facts[at + 1 : at + 2])
    return next((one.value for one in near if one is not None and one.kind == "side"), None)


def _of_so_many(message: Message, fact: Fact, rows: Sequence[Row], *, alone: bool) -> bool:
    """Whether a fact is a word for sets of so many, of which the plan has some; a lone one tells so by its form."""
    planned = sum(row.reps == fact.value[0].reps for row in rows) if fact.kind == "rows" else 0
    word = fact.note.get("word") and fact.note.get("each_of")
    one = planned == 1 and len(fact.value) == 1 and not fact.note and not alone  # "a triple at 30, then the fours"
    if not planned or not (fact.note.get("the") or word or one):
        return False
    if planned < 1 + alone:
        return False
    if fact.note.get("the") or not alone:
        led = message.tokens[fact.start - 1].text if fact.start else ""
        return bool(fact.note.get("the")) or planned == 1 or led not in little("a")
    opens = not fact.start or message.tokens[fact.start - 1].kind in ("sym", "nl")
    if opens and message.tokens[fact.start].text in little("one_or_many"):
        return True  # "Vierer mit 20 gemacht": one would have its article
    return message.span(fact.start, fact.end).lower().endswith(tuple(little("plural")))


def named_only(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "the 3s went 3 3 2": once a list tells them, "the 3s" only names them."""
    lists = any(fact.kind == "rows" and fact.note.get("list") for fact in facts)
    if not lists:
        return facts
    return [fact for fact in facts if not (fact.kind == "rows" and fact.note.get("the"))]
