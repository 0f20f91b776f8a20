"""The facts of a message in terms of the day's plan: "1s" of a plan of reps are reps, quoted plans are no report."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.reading.facts import Entry, Fact
from bot.reading.fold.block import to_kg
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.all_told import all_told, both_halves, nothing_added
from bot.reading.plan.besides import so_many_words, told_besides
from bot.reading.plan.by_so_much import by_so_much
from bot.reading.plan.choosing import counted_rows
from bot.reading.plan.departures import but_for, last_of_lift, missed_once, nth_go, nth_rep, stopped_after, taken_off
from bot.reading.plan.ground import PARTS, members, plan_names, planned
from bot.reading.plan.in_place import in_place_of, parted_instead
from bot.reading.plan.lacking import reps_lacked
from bot.reading.plan.missed_reps import rep_of_a_set
from bot.reading.plan.outcomes import by_outcome
from bot.reading.plan.paused import stops_denied
from bot.reading.plan.reasons import without_reasons
from bot.reading.plan.short import (
    all_but_for,
    did_these,
    first_then_rest,
    less_on_a_side,
    minus_sets,
    one_short,
    sets_by_load,
)
from bot.reading.plan.side_goes_on import side_goes_on, side_of_miss
from bot.reading.plan.singles import singles_named
from bot.reading.plan.ticks import ticked_off
from bot.reading.plan.value import MORE_REPS, SAME_KG, near_load, near_reps
from bot.reading.prose import not_managed
from bot.reading.rules import Rule, Rules

QUOTES = {"'": "'", '"': '"', "“": "”", "„": "“", "‘": "’", "«": "»", "»": "«", "‚": "‘"}
RANGE = re.compile(r"(\d+) ?[-–] ?(\d+)")
LATELY = 60  # facts back; farther away stands nothing that is gone on with
FIGURE_S = re.compile(r"(\d+)s", re.IGNORECASE)


def in_terms(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The facts as the plan lets them be understood; doing it twice changes nothing more."""
    quoted = _quoted(message)
    told = [fact for fact in facts if not any(start <= fact.start < end for start, end in quoted)] if quoted else facts
    return TERMS.apply(message, told, planned(message))


def _quoted(message: Message) -> list[tuple[int, int]]:
    """The pieces between quotation marks that hold a number: the plan as it was sent."""
    found: list[tuple[int, int]] = []
    if not any(sign in message.text for sign in QUOTES):
        return found
    at = 0
    tokens = message.tokens
    while at < len(tokens):
        sign = message.text[tokens[at].start : tokens[at].end] if tokens[at].kind == "sym" else ""
        shut = QUOTES.get(sign)
        closing = range(at + 1, len(tokens)) if shut else ()
        end = next((k for k in closing if message.text[tokens[k].start : tokens[k].end] == shut), None)
        if end is not None and any(token.value is not None for token in tokens[at:end]):
            found.append((at, end + 1))
            at = end
        at += 1
    return found


def _reps_in_figures(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    out: list[Fact] = []
    for fact in facts:
        told = _of_reps(message, fact, rows)
        if told.kind == "load" and fact.kind == "rows" and _begins_back(message, fact):
            out.append(Fact("scope", fact.start, fact.start + 1, "back", {"text": ""}))  # "back-offs with 30"
        out.append(told)
    return out


def _begins_back(message: Message, fact: Fact) -> bool:
    return any((hit.table, hit.name) == ("scope", "back") for hit in message.beginning("grammar")[fact.start])


def _of_reps(message: Message, fact: Fact, rows: Sequence[Row]) -> Fact:
    """ "the last two were 1s": beside a plan of reps no seconds; "waren 2er" tells reps too."""
    if fact.kind != "rows" or len(fact.value) != 1 or any(row.hold_s is not None for row in rows):
        return fact
    reps = fact.value[0].reps
    if fact.note.get("each_of") and reps and not near_reps(reps, rows):
        kg = to_kg(reps, message.context.unit)
        if near_load(kg, rows):  # "the first two sets with 20" of planned fives
            return Fact("load", fact.start, fact.end, kg, {"how": "at"})
    figure = FIGURE_S.fullmatch(message.span(fact.start, fact.end).strip()) if fact.note.get("one") else None
    if figure is None:
        return fact
    value = int(figure[1])
    if any(row.reps == value for row in rows) and not any(row.side for row in rows):
        return replace(fact, value=[Entry(value)], note={"the": True})
    kg = to_kg(value, message.context.unit)
    return Fact("bare", fact.start, fact.end, float(value), {"kg": kg, "figure": True})


def _named_by_reps(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
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


def _plural(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "fives done at 15", "Dreier erledigt, Fünfer nicht": the sets of so many, where nothing else is told."""
    told = [fact for fact in facts if fact.kind in ("rows", "bare", "count")]
    if not told or not all(_of_so_many(message, fact, rows, alone=len(told) == 1) for fact in told):
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


def _of_so_many(message: Message, fact: Fact, rows: Sequence[Row], *, alone: bool) -> bool:
    """Whether a fact is a word for sets of so many, of which the plan has some; a lone one tells so by its form."""
    if fact.kind != "rows" or not (fact.note.get("the") or (fact.note.get("word") and fact.note.get("each_of"))):
        return False
    if sum(row.reps == fact.value[0].reps for row in rows) < 2:
        return False
    if fact.note.get("the") or not alone:
        led = message.tokens[fact.start - 1].text if fact.start else ""
        return bool(fact.note.get("the")) or led not in little("a")
    return message.span(fact.start, fact.end).lower().endswith(tuple(little("plural")))


def _not_managed(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Pull-ups done, dips nicht geschafft": no set of theirs was done, where no set or repetition is named."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        if fact.kind == "fail" and fact.value is None and not fact.note.get("weak") and not_managed(message, fact):
            low = next((n + 1 for n in range(at - 1, -1, -1) if facts[n].kind == "sep"), 0)
            high = next((n for n in range(at + 1, len(facts)) if facts[n].kind == "sep"), len(facts))
            clause = [one for one in facts[low:high] if one is not fact]
            named = any(one.kind == "move" or plan_names(one) & set(PARTS) for one in clause)
            if named and all(one.kind in ("move", "word", "plan", "claim") for one in clause):
                fact = Fact("plan", fact.start, fact.end, "skipped", {"names": ["skipped"]})
        out.append(fact)
    return out


def _leaving(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "all done bar the pull-ups": "bar" there is no part of the movement's name."""
    grammar = message.beginning("grammar")
    out: list[Fact] = []
    for fact in facts:
        if fact.kind == "move" and out and plan_names(out[-1]) & {"done", "planned", "all_lifts"}:
            start = min(first for first, _ in fact.value.spans)
            if any(hit.table == "plan" and hit.name == "except" for hit in grammar[start]):
                out.append(Fact("plan", start, start + 1, "except", {"names": ["except"]}))
        out.append(fact)
    return out


def _ranges(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
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


def _all_of_them(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "All 5 sets rpe 8" of five planned: all of them, not five of something."""
    out: list[Fact] = []
    first = next((at for at, fact in enumerate(facts) if fact.kind in ("bare", "count", "rows", "load")), None)
    for at, fact in enumerate(facts):
        counted = fact.kind == "count" and not fact.note.get("of_plan") and out and out[-1].kind == "scope"
        led = bool(out) and bool(plan_names(out[-1]) & {"the"})
        the = fact.kind == "count" and len(facts) > 2 and led
        if the and not fact.note.get("of_plan") and counted_rows(rows, int(fact.value)):
            out[-1] = Fact("scope", out[-1].start, fact.end, "all", {"text": ""})  # "las dos series"
            continue
        of_load = (
            led
            and fact.kind == "bare"
            and (fact.note.get("spelled") or any(one.kind == "instead" for one in out))
            and any(one.kind in ("bare", "load", "instead") for one in out[-4:])
        )
        if of_load and counted_rows(rows, int(fact.value)):
            out[-1] = Fact("scope", out[-1].start, fact.end, "all", {"text": ""})  # "27,5 en las cuatro"
            continue
        ends = at + 1 == len(facts) or facts[at + 1].kind == "sep"
        those = led and fact.kind == "bare" and fact.note.get("spelled") and ends and len(facts) > 2
        if those and at == first and len(counted_rows(rows, int(fact.value))) == len(rows):
            out[-1] = Fact("scope", out[-1].start, fact.end, "all", {"text": "", "names": ["done"]})
            continue  # "did the four and then a fifth"
        of_all = fact.kind == "bare" and ends and bool(out) and out[-1].kind == "scope" and out[-1].value == "all"
        of_all = of_all and any(one.kind in ("instead", "rows", "load") for one in out)
        if of_all and counted_rows(rows, int(fact.value)) and not any(row.reps == fact.value for row in rows):
            continue  # "doubles not triples, all 5"
        all_in = fact.kind == "bare" and bool(out) and out[-1].kind == "scope" and out[-1].value == "all"
        behind = {token.text for token in message.tokens[fact.end : fact.end + 1]}
        all_in = all_in and fact.start == out[-1].end and not behind.isdisjoint(little("all_in"))  # "all 4 in"
        all_in = all_in and len(counted_rows(rows, int(fact.value))) == len(rows)
        if (counted or all_in) and out[-1].value == "all" and counted_rows(rows, int(fact.value)):
            out[-1] = replace(out[-1], end=fact.end, note={**out[-1].note, "sets": int(fact.value), "names": ["done"]})
            continue
        out.append(_all_sets(message, facts, at, rows))
    return out


def _all_sets(message: Message, facts: Sequence[Fact], at: int, rows: Sequence[Row]) -> Fact:
    """ "All five sets, but with 20" of five planned: they were done."""
    fact = facts[at]
    told = message.tokens[fact.end - 1] if fact.kind == "scope" and fact.value == "all" and fact.end else None
    if told is None or not told.spelled or not told.value or len(counted_rows(rows, int(told.value))) != len(rows):
        return fact
    after = facts[at + 1] if at + 1 < len(facts) else None
    sets = after is not None and after.kind == "word" and str(after.value) in little("sets_only")
    if not sets and message.tokens[fact.end : fact.end + 1] and message.tokens[fact.end].text not in little("all_in"):
        return fact
    return replace(fact, note={**fact.note, "sets": int(told.value), "names": ["done"]})


def _so_many_of(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
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


def _the_sets_of(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
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


def _holds(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
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


def _too_heavy(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "22.5 felt heavy so I did 20": the planned load, and the one that was used."""
    told = [at for at, fact in enumerate(facts) if fact.kind in ("bare", "load", "rows", "count", "scope")]
    told = [at for at in told if not (facts[at].kind == "scope" and facts[at].value == "all" and at > told[0])]
    moves = [at for at, fact in enumerate(facts) if fact.kind == "move"]
    if len(moves) > 1 or (moves and told and moves[0] > told[0]):
        return facts
    if len(told) != 2 or any(facts[at].kind not in ("bare", "load") for at in told):
        return facts
    first, second = (facts[at].note.get("kg", facts[at].value) for at in told)
    planned = [row.load_kg for row in rows if row.load_kg and first and abs(row.load_kg - first) < SAME_KG]
    between = facts[told[0] + 1 : told[1]]
    used = any((f.kind == "scheme" and f.value == "got") or plan_names(f) & {"took", "only"} for f in between[-2:])
    spoken = any(fact.kind == "word" for fact in between)
    so = bool(between) and (
        str(between[-1].value) in little("so_then") or (between[-1].kind == "sep" and between[-1].value == 2)
    )
    used = used or (spoken and so)
    if not planned or not second or not used or not spoken or not near_load(second, rows) or near_reps(second, rows):
        return facts
    took = Fact("plan", facts[told[1]].start, facts[told[1]].start, "took", {"names": ["took"], "outcome": True})
    return [*facts[: told[0]], *between, took, *facts[told[1] :]]


def _no_numbers(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    return [fact for at, fact in enumerate(facts) if not (_article(facts, at) or _at_first(facts, at))]


def _article(facts: Sequence[Fact], at: int) -> bool:
    """ "tough one", "the third one": no number."""
    fact = facts[at]
    if fact.kind != "bare" or not fact.note.get("spelled") or fact.value != 1:
        return False
    if at and facts[at - 1].kind == "scheme" and facts[at - 1].value == "got":
        return False  # "con el izquierdo me salió una"
    beside = [*facts[max(0, at - 1) : at], *facts[at + 1 : at + 2]]
    return not any(one.kind == "side" or plan_names(one) & {"only"} for one in beside)


def _then_list(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
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


def _sets_instead(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
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


def _names_joined(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    return [_joining(facts, at) for at in range(len(facts))]


def _joining(facts: Sequence[Fact], at: int) -> Fact:
    """The "+" of "warm-up + top set only"."""
    fact = facts[at]
    if fact.kind != "word" or fact.value != "+":
        return fact
    beside = [one for one in (*facts[at - 1 : at], *facts[at + 1 : at + 2]) if one.kind in ("plan", "scope", "move")]
    if len(beside) != 2:
        return fact
    return Fact("sep", fact.start, fact.end, 1, {"mark": "and"})


def _at_first(facts: Sequence[Fact], at: int) -> bool:
    """ "Did the L-sits first, then the levers": the order, not the first set."""
    fact = facts[at]
    if fact.kind != "scope" or fact.note.get("text") not in little("at_first"):
        return False
    before = facts[at - 1] if at else None
    after = facts[at + 1] if at + 1 < len(facts) else None
    named = before is not None and (before.kind == "move" or bool(plan_names(before) & set(PARTS)))
    return named and (after is None or after.kind in ("sep", "claim"))


def _chosen(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "the 3s went 3 3 2": once a list tells them, "the 3s" only names them."""
    lists = any(fact.kind == "rows" and fact.note.get("list") for fact in facts)
    if not lists:
        return facts
    return [fact for fact in facts if not (fact.kind == "rows" and fact.note.get("the"))]


def _listed(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "left 3 and 3": two sets of one side."""
    out: list[Fact] = []
    for fact in facts:
        last = out[-3:]
        if (
            fact.kind == "bare"
            and len(last) == 3
            and last[2].kind == "sep"
            and last[2].note.get("mark") in ("and", ",")
            and last[1].kind == "bare"
            and (last[0].kind == "side" or plan_names(last[0]) & {"only"})
            and any(one.kind == "side" for one in out[-4:])
        ):
            entries = [Entry(int(last[1].value)), Entry(int(fact.value))]
            out[-2:] = [Fact("rows", last[1].start, fact.end, entries, {"list": True, "mark": "and"})]
            continue
        out.append(fact)
    return out


def _got(facts: Sequence[Fact]) -> bool:
    """ "Did 4 sets": whether a word for done leads the count."""
    return any(one.kind == "scheme" and one.value == "got" and after.kind == "count" for one, after in pairwise(facts))


def _lone_count(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
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


# In their order, each with the facts without which it changes nothing.
RULES: tuple[tuple[Rule, str], ...] = (
    (both_halves, "=most side"),
    (nothing_added, "=done|=planned load"),
    (stops_denied, "flag fail|=skipped|=except"),
    (_reps_in_figures, "rows"),
    (reps_lacked, "rows|bare 'lacked"),
    (but_for, "=planned"),
    (nth_rep, "scope word"),
    (last_of_lift, "scope move"),
    (nth_go, "scheme scope bare"),
    (by_so_much, "bare|load"),
    (taken_off, "=off bare|load"),
    (stopped_after, "=quit|=stopped move scope"),
    (missed_once, "fail sep"),
    (so_many_words, "rows load|delta"),
    (told_besides, "=done|=planned|=all_lifts rows load"),
    (minus_sets, "=minus count|bare =done|=planned"),
    (sets_by_load, "count load"),
    (first_then_rest, "=rest|scope rows|count"),
    (parted_instead, "=instead bare scope|side|=every"),
    (less_on_a_side, "side =less|delta"),
    (one_short, "=less bare move"),
    (all_but_for, "=only =done|=planned|=all_lifts scope|side|load"),
    (did_these, "scheme move"),
    (_no_numbers, "bare|scope"),
    (_names_joined, "word plan|scope|move"),
    (side_of_miss, "side fail"),
    (side_goes_on, "side scope|bare sep"),
    (rep_of_a_set, "scope fail"),
    (singles_named, "rows"),
    (_the_sets_of, "bare word move"),
    (_plural, "rows"),
    (_named_by_reps, "=the word bare"),
    (_not_managed, "fail move|=part_warm_up|=part_main|=part_accessory|=part_skill"),
    (_leaving, "=done|=planned|=all_lifts move"),
    (ticked_off, "sep|fail move|side|=part_warm_up|=part_main|=part_accessory|=part_skill|=rest|=holds"),
    (without_reasons, "word fail|plan|load|bare|rows|count"),
    (_holds, "=holds bare"),
    (_so_many_of, "bare|rows"),
    (_ranges, "rows|bare scope"),
    (_all_of_them, "scope|=the"),
    (_too_heavy, "bare|load word"),
    (in_place_of, "=instead rows"),
    (_then_list, "bare sep scope|rows"),
    (_chosen, "rows"),
    (_sets_instead, "instead move"),
    (all_told, "rounds|count|bare|word|scope move|scope|plan"),
    (_listed, "bare sep side"),
    (_lone_count, "count"),
    (by_outcome, "rows|side"),
)
TERMS = Rules(RULES)
