"""Planned sets counted: "done 4/5", "las 3 de arqueras", "4 levers instead of 5", "3 sets, then the alarm went"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import counted_rows
from bot.reading.plan.ground import PARTS, members, plan_names
from bot.reading.plan.value import MORE_REPS, near_load

PARTED = frozenset({*PARTS, "done", "planned", "all_lifts"})  # what plus joins more to


def named_and_counted(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Warm-up plus two sets of pull-ups", "did it all plus 10 push-ups": plus joins what follows, a lift."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        before = next((one for one in reversed(out[-2:]) if one.kind != "word"), None)
        named = before is None or before.kind in ("move", "sep") or bool(plan_names(before) & PARTED)
        if plan_names(fact) == {"by"} and named and message.tokens[fact.start].text in little("on_top"):
            behind = [one for one in facts[at + 1 : at + 4] if one.kind != "word" and plan_names(one) != {"the"}]
            lead = behind[1:2] if behind and behind[0].kind in ("count", "bare") else behind[:1]
            if lead and (lead[0].kind == "move" or plan_names(lead[0]) & set(PARTS)):
                fact = Fact("sep", fact.start, fact.end, 1, {"mark": "and"})
        out.append(fact)
    return out


def so_many_done(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Done 4/5" of five planned threes: four of the five sets; where it may be reps too, that is asked."""
    out: list[Fact] = []
    done = any(plan_names(fact) & {"done", "planned", "only"} for fact in facts)
    moves = any(fact.kind == "move" for fact in facts)
    for fact in facts:
        last = out[-2:]
        if fact.kind == "bare" and len(last) == 2 and last[0].kind == "bare" and last[1].kind == "word":
            of = message.tokens[last[1].start].text in little("out_of") and last[1].end - last[1].start == 1
            own = counted_rows(rows, int(fact.value)) if of else []
            if own and last[0].value <= fact.value and all(rows[at].reps != fact.value for at in own):
                note = {"of_plan": int(fact.value)}  # "pull-ups 4 of 5"
                out[-2:] = [Fact("count", last[0].start, fact.end, int(last[0].value), note)]
                continue
        pair = fact.value if fact.kind == "rows" and fact.note.get("mark") == "/" and len(fact.value) == 2 else []
        most = max((one.reps or 0 for one in pair), default=0)
        by_side = bool(pair) and any(row.side and most <= (row.reps or 0) <= most + 1 for row in rows)
        own = counted_rows(rows, pair[1].reps or 0) if pair and not by_side else []
        if own and not moves and not any(rows[at].side for at in own) and (pair[0].reps or 0) <= (pair[1].reps or 0):
            most = max(rows[at].reps or 0 for at in own)
            if most + MORE_REPS < (pair[1].reps or 0) or (done and most < (pair[1].reps or 0)):
                note = {"of_plan": pair[1].reps}
                out.append(Fact("count", fact.start, fact.end, pair[0].reps, note))
                continue
            if done:
                out.append(Fact("ask", fact.start, fact.end, "sets"))
                continue
        out.append(fact)
    return out


def the_sets_of(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Las 3 de arqueras" of three planned pairs: all of its sets, where it cannot be the reps of one."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        after = facts[at + 1 : at + 3]
        named = fact.kind == "bare" and fact.note.get("the") and [one.kind for one in after] == ["word", "move"]
        if named and after[0].end - after[0].start == 1:
            own = [row for row in rows if row.movement in members(after[1].value)]
            sets = len(own) // 2 if any(row.side for row in own) else len(own)
            if sets == fact.value and all(row.reps != fact.value for row in own):
                out.append(Fact("count", fact.start, fact.end, int(fact.value), {"of_plan": int(fact.value)}))
                continue
        out.append(fact)
    return out


def holds_counted(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "3 holds, then the wrists gave up": so many of the planned sets."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        after = facts[at + 1] if at + 1 < len(facts) else None
        of_holds = (
            fact.kind == "bare" and after is not None and "holds" in plan_names(after) and after.start == fact.end
        )
        if of_holds and fact.value == int(fact.value) and any(row.hold_s not in (None, fact.value) for row in rows):
            out.append(Fact("count", fact.start, fact.end, int(fact.value), {"only": True}))
            continue
        out.append(fact)
    return out


def hold_lift_counted(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "All fine but only 3 lever holds": so many of the planned sets, where no second is named."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        after = facts[at + 1] if at + 1 < len(facts) else None
        if fact.kind == "bare" and after is not None and after.kind == "move" and after.start == fact.end:
            own = [row for row in rows if row.movement in members(after.value) and row.side != "right"]
            held = bool(own) and all(row.hold_s is not None for row in own)
            named = message.tokens[after.end - 1].text in little("hold_word")
            if held and named and fact.value in range(1, len(own) + 1) and all(fact.value != row.hold_s for row in own):
                out.append(Fact("count", fact.start, fact.end, int(fact.value), {"only": True}))
                continue
        out.append(fact)
    return out


def sets_instead(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "4 levers instead of 5" of five planned sets: so many sets, where neither reps nor loads are near."""
    out: list[Fact] = []
    for fact in facts:
        move = out[-1].value if out and out[-1].kind == "move" else None
        if fact.kind == "instead" and fact.value[2] is None and move is not None:
            new, old, _ = fact.value
            own = [row for row in rows if row.movement in members(move) and row.side != "right"]
            alike = any(old in (row.reps, row.hold_s, row.load_kg) or near_load(old, [row]) for row in own)
            if len(own) == old and not alike:
                out.append(Fact("count", fact.start, fact.end, int(new), {"of_plan": int(old)}))
                continue
        out.append(fact)
    return out


def _got(facts: Sequence[Fact]) -> bool:
    """ "Did 4 sets": whether a word for done leads the count."""
    return any(one.kind == "scheme" and one.value == "got" and after.kind == "count" for one, after in pairwise(facts))


def lone_count(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "3 sets, then the alarm went": the only number told is how many sets were done."""
    if any(fact.kind in ("rows", "bare", "loads", "load", "at", "move", "left", "side") for fact in facts):
        return facts
    if any(fact.kind == "scope" and not (fact.value == "last" and _got(facts)) for fact in facts):
        return facts  # but "did 4 sets, the last one was a grinder"
    counts = [fact for fact in facts if fact.kind == "count"]
    if (
        len(counts) != 1
        or counts[0].note.get("of_plan")
        or any(plan_names(f) & {"skipped", "less", "more"} for f in facts)
    ):
        return facts
    told = counts[0]
    return [
        replace(f, note={**f.note, "only": True, "lone": not f.note.get("only")}) if f is told else f for f in facts
    ]
