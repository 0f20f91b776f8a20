"""What goes on with the sets told before: "sets 1-3 rpe 7, 4-5 rpe 8", "the first two sets 6, then 5 and 4"."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import SENTENCE
from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, plan_names

RANGE = re.compile(r"(\d+) ?[-–] ?(\d+)")
PLACED = ("first", "last")
MOST_IN_ROW = 7  # sets named together: "the last two"
LATELY = 60  # facts back; farther away stands nothing that is gone on with


def ranges_of_sets(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Sets 1-3 rpe 7, 4-5 rpe 8": the second range is of sets too."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        range_ = RANGE.fullmatch(message.span(fact.start, fact.end).strip()) if fact.kind in ("rows", "bare") else None
        these = fact.kind in ("rows", "bare")
        before = [one.value for one in out[-LATELY:] if these and one.kind == "scope" and isinstance(one.value, tuple)]
        before = [value for value in before if value[0] == "these"]
        pair = out[-2:]
        if fact.kind == "bare" and len(pair) == 2 and pair[1].note.get("mark") == "and" and pair[0].kind == "bare":
            low, high = pair[0].value, fact.value
            if any(scope[0] == "these" and max(scope[1]) == low - 1 for scope in before) and high == low + 1:
                out[-2:] = [Fact("scope", pair[0].start, fact.end, ("these", (int(low), int(high))))]
                continue  # "sets 1-3 at 22.5, 4 and 5 at 20"
        if fact.kind == "bare" and before and fact.value == max(max(scope[1]) for scope in before) + 1:
            last = facts[at + 1] if at + 1 < len(facts) else None
            if last is not None and last.kind in ("load", "at", "effort"):
                out.append(Fact("scope", fact.start, fact.end, ("these", (int(fact.value),))))
                continue  # "sets 1-3 at 22.5, 4 at 20"
        if range_ is not None and any(scope[0] == "these" for scope in before):
            which = tuple(range(int(range_[1]), int(range_[2]) + 1))
            out.append(Fact("scope", fact.start, fact.end, ("these", which)))
            continue
        out.append(fact)
    return out


def then_list(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "The first two sets 6, then 5 and 4": the sets that follow, one after the other."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        last = out[-3:]
        ends = at + 1 == len(facts) or facts[at + 1].kind in ("sep", "word")
        row = next((n for n in range(len(out) - 1, -1, -1) if out[n].kind != "sep"), None)
        listed = row is not None and row < len(out) - 1 and out[-1].value == 2 and bool(out[row].note.get("values"))
        if row is not None and listed and fact.kind == "bare" and ends and out[row].note.get("list"):
            entries = [*out[row].value, Entry(int(fact.value))]
            values = [*out[row].note["values"], fact.value]
            out[row:] = [replace(out[row], end=fact.end, value=entries, note={**out[row].note, "values": values})]
            continue  # "8, 8 and then 9"
        ends = at + 1 == len(facts) or facts[at + 1].kind == "sep"
        if (
            fact.kind == "bare"
            and ends
            and len(last) == 3
            and last[2].note.get("mark") in ("and", ",")
            and last[1].kind == "bare"
            and last[0].kind == "sep"
            and last[0].value == 2
            and any(one.kind == "scope" and (one.value == "first" or isinstance(one.value, tuple)) for one in out)
        ):
            entries = [Entry(int(last[1].value)), Entry(int(fact.value))]
            out[-2:] = [Fact("rows", last[1].start, fact.end, entries, {"list": True, "mark": "and"})]
            continue
        out.append(fact)
    return out


def listed_of_sets(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "On the last two I only got 4 and 3": a number for each of the sets named."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        placed = fact.kind == "scope" and isinstance(fact.value, tuple) and fact.value[0] in PLACED
        many = fact.value[1] if placed else 0
        row = _row_of(facts, at + 1, many) if many in range(2, MOST_IN_ROW) else None
        if row is None:
            out.append(fact)
            continue
        first, last = row
        named = next((one for one in facts[at + 1 : first] if one.kind == "move"), None)
        named = named or next((one for one in reversed(facts[:at]) if one.kind == "move"), None)
        own = [one for one in rows if named is not None and one.movement in members(named.value)]
        begin = 1 if fact.value[0] == "first" else len(own or main_rows(rows)) - many + 1
        out += facts[at + 1 : first]
        for nth, number in enumerate(facts[first : last + 1 : 2]):
            out += [Fact("sep", number.start, number.start, 1, {"mark": ","})] if nth else []
            out += [Fact("scope", number.start, number.start, begin + nth, {"text": ""}), number]
        return [*out, *facts[last + 1 :]]
    return out


def _row_of(facts: Sequence[Fact], at: int, many: int) -> tuple[int, int] | None:
    """Where so many numbers stand joined by "and" or commas, behind a few words; None: they do not."""
    while at < len(facts) and (facts[at].kind in ("word", "scheme", "move") or plan_names(facts[at]) & {"the", "only"}):
        at += 1
    last = at + 2 * (many - 1)
    if last >= len(facts) or any(one.kind != "bare" or one.value < 1 for one in facts[at : last + 1 : 2]):
        return None
    joined = all(one.note.get("mark") in ("and", ",") for one in facts[at + 1 : last : 2])
    closes = last + 1 == len(facts) or facts[last + 1].kind == "sep"
    return (at, last) if joined and closes else None


def listed_of_side(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "left 3 and 3", "right: 3, then 2", "right did 4 and then 3 and 3": the sets of one side."""
    out: list[Fact] = []
    made: Fact | None = None
    for fact in facts:
        told = [one for one in out[-5:] if one.kind != "sep" or one.value == SENTENCE]
        marks = next((n for n in range(len(out), 0, -1) if out[n - 1].kind != "sep"), 0)
        joined = 0 < marks < len(out) and all(one.value != SENTENCE for one in out[marks:])
        if fact.kind == "bare" and joined and out[marks - 1] is made:
            out[marks - 1 :] = [replace(made, end=fact.end, value=[*made.value, Entry(int(fact.value))])]
            made = out[-1]
            continue
        if fact.kind == "bare" and joined and out[marks - 1].kind == "bare" and len(told) > 1:
            led = told[-2].kind == "side" or told[-2].value == "got" or bool(plan_names(told[-2]) & {"only"})
            if led and any(one.kind == "side" for one in told):
                first = out[marks - 1]
                entries = [Entry(int(first.value)), Entry(int(fact.value))]
                made = Fact("rows", first.start, fact.end, entries, {"list": True, "mark": "and"})
                out[marks - 1 :] = [made]
                continue
        out.append(fact)
    return out
