"""One thing told of several planned lifts: "2.5 off the dips and the pull-ups", "last sets 9 (dips) and 8 (chins)"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import clause_end, clause_start, is_comma
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import members, plan_names

LEAST_EFFORT, MOST_EFFORT = 5, 10
SAME_KG = 0.3
BRACKETS = ("(", ")")


def shared_change(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "2.5 less on the dips and on the pull-ups": without the "and", for the change is of both."""
    out = list(facts)
    for at in range(len(facts) - 2, 0, -1):
        if not is_comma(facts[at]) or facts[at].note.get("mark") not in ("and", ","):
            continue
        before = facts[clause_start(facts, at) : at]
        after = facts[at + 1 : clause_end(facts, at + 1)]
        if facts[at + 1].kind == "sep":  # "and also on the pull-ups"
            after = facts[at + 2 : clause_end(facts, at + 2)]
        changed = [one for one in (before, after) if any(fact.kind == "delta" for fact in one)]
        named = [one for one in (before, after) if _only_names(message, one)]
        if len(changed) != 1 or len(named) != 1 or not any(fact.kind == "move" for fact in changed[0]):
            continue
        if named[0] is before and not any("all_lifts" in plan_names(fact) for fact in before):
            continue  # "dips and pull-ups with 2.5 less": of the last, or of both
        out[at : at + 1 + (facts[at + 1].kind == "sep")] = []
    return out


def _only_names(message: Message, facts: Sequence[Fact]) -> bool:
    """Whether a clause names a lift and says nothing of it."""
    words = {message.tokens[at].text for fact in facts if fact.kind == "word" for at in range(fact.start, fact.end)}
    if not any(fact.kind == "move" for fact in facts) or words - little("shared_with"):
        return False
    silent = {"the", "all_lifts"}
    return all(f.kind in ("move", "word") or (f.kind == "plan" and plan_names(f) <= silent) for f in facts)


def change_restated(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "With 17.5, 2.5 below plan": without the change, where it says no more than the load does."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        load = next((one for one in reversed(out) if one.kind in ("load", "delta", "rows", "bare")), None)
        told = fact.kind == "delta" and fact.value[1] == "load" and load is not None and load.kind == "load"
        alone = told and all(
            one.kind in ("word", "delta") for one in facts[clause_start(facts, at) : clause_end(facts, at)]
        )
        if alone and load is not None and load.value:
            amount, _, sign = fact.value
            if any(row.load_kg and abs(row.load_kg + sign * amount - load.value) < SAME_KG for row in rows):
                fact = Fact("word", fact.start, fact.end, None, {"noise": True})
        out.append(fact)
    return out


def rated_by_lift(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Last sets 9.5 for the dips and 8 for the pull-ups": the second number is an effort as the first is."""
    out = list(facts)
    for at, fact in enumerate(facts):
        efforts = [n for n in range(at) if facts[n].kind == "effort"]
        if fact.kind != "bare" or not efforts or not LEAST_EFFORT <= fact.value <= MOST_EFFORT:
            continue
        first = efforts[-1]
        between = [one for one in facts[first + 1 : at] if one.note.get("mark") not in BRACKETS]
        kinds = [one.kind for one in between if one.kind != "word" and plan_names(one) != {"the"}]
        own = _lift_behind(facts, at)
        if kinds != ["move", "sep"] or own is None or not any(row.movement in members(own.value) for row in rows):
            continue
        scope = next((one for one in facts[clause_start(facts, first) : first] if one.kind == "scope"), None)
        out[out.index(fact)] = Fact("effort", fact.start, fact.end, float(fact.value), {"rated": True})
        if scope is not None:
            place = next(n for n, one in enumerate(out) if one.start == fact.start)
            out.insert(place, replace(scope, start=fact.start, end=fact.start))
    return out


def _lift_behind(facts: Sequence[Fact], at: int) -> Fact | None:
    """The lift named right behind a number: "8 for the pull-ups", "8 (pull-ups)"."""
    for one in facts[at + 1 :]:
        if one.kind == "move":
            return one
        if one.kind != "word" and plan_names(one) != {"the"} and one.note.get("mark") != "(":
            return None
    return None


def so_many_of_them(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "2 of 3 on the pull-ups" of three planned sets of eight: sets, and no reps."""
    out = list(facts)
    for at, fact in enumerate(facts):
        own = _lift_behind(facts, at)
        if fact.kind != "rows" or own is None or len({entry.reps for entry in fact.value}) != 1:
            continue
        words = {message.tokens[n].text for n in range(fact.start, fact.end)}
        planned = [row for row in rows if row.movement in members(own.value) and row.side != "right"]
        total = fact.value[0].reps
        of_sets = total == len(planned) > len(fact.value) and all(row.reps != total for row in planned)
        if of_sets and words & little("out_of_so_many"):
            out[at] = Fact("count", fact.start, fact.end, len(fact.value), {"of_plan": len(planned)})
    return out


def a_set_left_out(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Cut a set from the dips and a set from the chins": one of each."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        led = out[-1] if out else None
        short = "less" in plan_names(fact) and [one.kind for one in out[-3:]] == ["bare", "side", "word"]
        if short and out[-3].value == 1 and message.tokens[out[-1].start].text in little("one_set"):
            out[-3:] = [Fact("count", out[-3].start, out[-3].end, 1, {}), out[-2]]  # "one right-side set short"
        words = [one for one in (led, fact) if one is not None and one.kind == "word" and one.end == one.start + 1]
        if len(words) == 2 and led is not None:
            article, noun = (message.tokens[one.start].text for one in words)
            left = next((one for one in reversed(out) if "skipped" in plan_names(one)), None)
            if left is not None and article in little("a") and noun in little("one_set"):
                out[-1] = Fact("count", led.start, fact.end, 1, {})
                if left.start < facts[clause_start(facts, at)].start:
                    out.insert(-1, replace(left, start=led.start, end=led.start))
                continue
        out.append(fact)
    return out
