"""What is told in few words: "right one less on each set", "one lever short", "did the dips"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, ends_sentence, is_then
from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, plan_names
from bot.reading.plan.value import near_load, near_reps

VALUES = frozenset({"rows", "bare", "loads", "load", "at", "count", "scope", "side", "delta", "instead", "fail"})
PAIR = 2
MOST_SHORT = 3  # reps; more than that is a number of something else
BESIDE_LOADS = frozenset({"the", "done", "fine", "only", "planned", "same", "every"})  # tell of no set of their own


def less_on_a_side(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Derecha una menos", "right one less", "rechts je eine weniger": reps of that side, in each set."""
    out: list[Fact] = []
    for fact in facts:
        last = out[-2:]
        if plan_names(fact) & {"less"} and last:
            number = last[-1]
            if [one.kind for one in last] == ["side", "bare"] and number.value in range(1, MOST_SHORT + 1):
                out[-1] = Fact("delta", number.start, fact.end, (number.value, "reps", -1), {"open": True})
                continue
            of_one = number.kind == "side" and message.tokens[number.end - 1].value == 1
            if of_one:  # "right one less": the "one" is no part of the side's name
                out.append(Fact("delta", number.end, fact.end, (1.0, "reps", -1), {"open": True}))
                continue
        if fact.kind == "delta" and [(one.kind, one.value == "each") for one in last] == [
            ("side", False),
            ("side", True),
        ]:
            out[-1] = Fact("scope", last[1].start, last[1].end, "all", {"text": ""})  # "rechts je": in each set
        out.append(fact)
    return out


def one_short(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "One lever short": a set of them."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        last = out[-2:]
        named = [one.kind for one in last] == ["bare", "move"] and last[0].value == 1
        short = named and last[0].note.get("spelled") and fact.start == last[1].end and plan_names(fact) & {"less"}
        of_set = short and any(one.kind == "scope" for one in facts[at + 1 : at + 3])
        if of_set and any(row.reps for row in rows if row.movement in members(last[1].value)):
            # "one pull-up short in the last set": a rep
            out[-2:] = [last[1], Fact("delta", last[0].start, fact.end, (1.0, "reps", -1), {"open": True})]
            continue
        if short:
            out[-2:] = [last[1], Fact("count", last[0].start, fact.start, 1)]
        out.append(fact)
    return out


def all_but_for(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Alles gemacht, nur …" as well without the comma: "all done only the last set 6" leaves the rest as done."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        before = out[-1] if out else None
        of_some = any(one.kind in ("scope", "side", "load") for one in facts[at + 1 : at + 4])
        behind = facts[at + 1 : at + 3]
        of_some = of_some or ([one.kind for one in behind[:1]] == ["move"] and "not_this" in plan_names(behind[-1]))
        parted = of_some and before is not None and bool(plan_names(before) & {"done", "planned", "all_lifts"})
        if parted and "only" in plan_names(fact):
            out.append(Fact("sep", fact.start, fact.start, 1, {"mark": ","}))
        out.append(fact)
    return out


def did_these(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Did the pull-ups and the dips" of planned ones: as planned, where no number says otherwise."""
    known = {row.movement for row in rows}
    if any(fact.kind in VALUES or fact.note.get("mark") == "?" for fact in facts):
        return facts
    out = list(facts)
    for at, fact in enumerate(facts):
        named = next((one for one in facts[at + 1 : at + 3] if one.kind not in ("plan", "word")), None)
        own = named is not None and named.kind == "move" and bool(set(members(named.value)) & known)
        if own and fact.kind == "scheme" and fact.value == "got":
            out[at] = Fact("plan", fact.start, fact.end, "done", {"names": ["done"]})
    return out


def minus_sets(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Everything minus one set": so many sets less."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        counted = facts[at + 1] if at + 1 < len(facts) else None
        minus = "minus" in plan_names(fact) and counted is not None and counted.kind in ("count", "bare")
        if minus and counted is not None and any(plan_names(one) & {"done", "planned"} for one in out):
            out.append(Fact("sep", fact.start, fact.start, 1, {"mark": ","}))
            out.append(Fact("plan", fact.start, fact.end, "less", {"names": ["less"]}))
            continue
        out.append(fact)
    return out


def first_then_rest(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "2 sets of 4 at 17.5, then the rest as planned", "3 sets with 20 and the last 2 with 22.5": the first ones."""
    ends = (
        at for at, fact in enumerate(facts) if "rest" in plan_names(fact) or fact.value == "rest" or _last_ones(fact)
    )
    rest = next(ends, None)
    near = next((at for at in range((rest or 0) - 1, -1, -1) if facts[at].kind in ("rows", "count")), 0)
    ended = (at + 1 for at in range(near, -1, -1) if ends_sentence(facts[at]))
    low = next(ended, 0)  # "planche good, all 4. Dips 3 sets with 20 and the last with 22.5"
    told = [at for at in range(low, rest or 0) if facts[at].kind in ("rows", "count")]
    moves = [fact for fact in facts[low:rest] if fact.kind == "move" and fact.value.movement != "!"]
    if rest is None or len(told) != 1:
        return list(facts)
    went = [name for one in facts[told[0] + 1 : clause_end(facts, told[0])] for name in plan_names(one)]
    done = bool({"done", "planned", "same", "fine"} & {*went})  # "2 sets as planned, 17.5 for the rest"
    if any(fact.kind in ("scope", "side") or (fact.kind == "bare" and not done) for fact in facts[low:rest]):
        return list(facts)
    fact = facts[told[0]]
    if fact.kind == "rows" and fact.note.get("one") and fact.value[0].hold_s is not None:
        return list(facts)  # "holds 25s, rest as planned": so long each, and no first set
    many = len(fact.value) if fact.kind == "rows" else int(fact.value)
    main = [rows[at] for at in main_rows(rows)]
    several = len({row.movement for row in rows if row.part != "warm_up"}) > 1
    if moves and several and "rest" in plan_names(facts[rest]) and not is_then(facts[rest - 1]):
        return list(facts)  # "push-ups 2x8, the rest as planned": of the other lifts
    if moves:  # "pull-ups 3 sets with 15 and the 4th with 10"
        main = [row for row in rows if row.movement in members(moves[-1].value)]
        before = next((one for one in reversed(facts[: told[0]]) if one.note.get("mark") != ":"), None)
        if before is not moves[-1] and facts[told[0] + 1] is not moves[-1]:
            return list(facts)
    behind = next((one for one in facts[told[0] + 1 : rest] if one.kind not in ("move", "word")), facts[rest])
    loaded = behind.kind in ("load", "at") or (done and facts[rest - 1].kind in ("bare", "load", "word"))
    whole = bool({"planned", "same", "fine"} & {*went})  # not "4 sets done, the last one 3"
    loaded = loaded or (whole and _last_ones(facts[rest]))  # "3 sets as planned, the last one 4"
    alike = loaded if fact.kind == "count" else len({entry.reps for entry in fact.value}) == 1
    if not alike or not 0 < many < len(main) or any(row.side for row in main):
        return list(facts)
    last = ("last", 1) if facts[rest].value == "last" else facts[rest].value
    if _last_ones(facts[rest]) and (last if isinstance(last, int) else many + last[1]) != len(main):
        return list(facts)
    if isinstance(last, int) and last != many + 1:
        return list(facts)
    out = [*facts[: told[0]], Fact("scope", fact.start, fact.start, ("first", many), {"text": "first"})]
    if fact.kind == "rows" and fact.value[0].reps:
        reps = float(fact.value[0].reps)
        out.append(Fact("bare", fact.start, fact.end, reps, {"kg": reps}))
    return [*out, *facts[told[0] + 1 :]]


def _last_ones(fact: Fact) -> bool:
    nth = isinstance(fact.value, int) and fact.value > 1
    several = isinstance(fact.value, tuple) and fact.value[0] == "last"
    return fact.kind == "scope" and (nth or several or fact.value == "last")


def _one_of_them(message: Message, fact: Fact) -> bool:
    """ "Einer mit 20", "una con 20": a set, and no single, behind sets that are counted."""
    one = fact.kind == "rows" and len(fact.value) == 1 and fact.value[0].reps == 1
    return one and message.tokens[fact.start].text in little("one_try")


def _without_reps_of_all(told: Sequence[Fact]) -> list[Fact]:
    """ "…, siempre siete repeticiones": the reps of all sets, at the end, are no count."""
    scope, reps = told[-2:] if len(told) > PAIR else (None, None)
    whole = scope is not None and (scope.kind, scope.value) == ("scope", "all")
    one = reps is not None and (reps.kind == "bare" or (reps.kind == "rows" and len(reps.value) == 1))
    return list(told[:-2]) if whole and one else list(told)


def _closing_load(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "…, and ended with 25": a load, told with the word for what it turned to."""
    out: list[Fact] = []
    for fact in facts:
        turned = out[-1] if out and "turned_to" in plan_names(out[-1]) else None
        if turned is not None and fact.kind in ("bare", "load") and near_load(fact.note.get("kg", fact.value), rows):
            first = message.tokens[turned.start].text
            if first in little("closed_with"):
                out[-1] = Fact("word", turned.start, turned.end, first)
                fact = Fact("load", fact.start, fact.end, float(fact.note.get("kg", fact.value)), {"how": "at"})
        out.append(fact)
    return out


def _with_ones(message: Message, facts: Sequence[Fact], told: Sequence[Fact]) -> list[Fact]:
    """ "Began with 15, then two sets with 22.5 and closed with 32.5": the one set that a load opens or closes with."""
    out: list[Fact] = []
    for at, fact in enumerate(told):
        lone = fact.kind == "load" and (not out or out[-1].kind == "load")
        words = little("began_with") if at == 0 else little("closed_with")
        place = next((n for n, one in enumerate(facts) if one is fact), 0)
        led = {message.tokens[n].text for one in facts[max(0, place - 2) : place] for n in range(one.start, one.end)}
        if lone and led & words and (at == 0 or at == len(told) - 1):
            out.append(Fact("count", fact.start, fact.start, 1, {"one": True}))
        out.append(fact)
    return out


def one_last_set(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Three full sets and then one with five", "3 sets with 25, then one with 32.5": the set after those counted."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        load = facts[at + 1] if at + 1 < len(facts) else None
        if load is None or load.kind != "load" or not load.value or not _one_of_them(message, fact):
            out.append(fact)
            continue
        moves = [one for one in out if one.kind == "move"]
        main = [row for row in rows if row.movement in members(moves[-1].value)] if moves else []
        main = main or [rows[n] for n in main_rows(rows)]
        counts = [one for one in out if one.kind == "count" or (one.kind == "rows" and len(one.value) > 1)]
        many = next((int(one.value) if one.kind == "count" else len(one.value) for one in counts), 0)
        if len(counts) != 1 or many + 1 != len(main) or any(row.side for row in main):
            out.append(fact)
            continue
        out.append(Fact("scope", fact.start, fact.end, many + 1, {"text": "last"}))
    return [_as_reps(out, at, rows) for at in range(len(out))]


def _as_reps(facts: Sequence[Fact], at: int, rows: Sequence[Row]) -> Fact:
    """ "One with five" of planned sixes with 25 kg: reps."""
    fact = facts[at]
    led = at > 0 and facts[at - 1].kind == "scope" and facts[at - 1].note.get("text") == "last"
    if not led or fact.kind != "load" or fact.note.get("unit") or near_load(fact.value, rows):
        return fact
    if fact.value != int(fact.value) or not near_reps(fact.value, list(rows)):
        return fact
    return Fact("rows", fact.start, fact.end, [Entry(int(fact.value))], {"one": True, "reps": True})


def sets_by_load(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Three sets with 20 and two with 22.5" of five planned: the first three, and those after them."""
    facts = _closing_load(message, facts, rows)
    aside = ("word", "sep", "scheme", "claim")
    told = [one for one in facts if one.kind not in aside]
    told = [one for one in told if not plan_names(one) & ({"done"} if one.value == "all" else BESIDE_LOADS)]
    told = _without_reps_of_all(told)
    moves = [fact for fact in told[:3] if fact.kind == "move"]
    main = [rows[at] for at in main_rows(rows)]
    if moves:  # "two dip sets at 25, three at 20, pull-ups done"
        main = [row for row in rows if row.movement in members(moves[0].value)]
        end = next((at for at, fact in enumerate(told) if fact.kind == "move" and fact is not moves[0]), len(told))
        told = [fact for fact in told[:end] if fact is not moves[0]]
    if [one.kind for one in told[:2]] == ["scope", "count"] and told[0].value == "all" and told[1].value == len(main):
        told = told[2:]  # "all four sets done, but two with 20 and two with 15"
    told = _with_ones(message, facts, told)
    counts, loads = told[::2], told[1::2]
    spelled = all(one.kind == "bare" and one.note.get("spelled") for one in counts)
    spelled = spelled and sum(one.value for one in counts) == len(main)  # "nur zwei mit 20 und dann zwei mit 15"
    paired = len(counts) == len(loads) > 1 and (spelled or any(one.kind == "count" for one in counts))
    paired = paired and all(one.kind in ("count", "bare") or _one_of_them(message, one) for one in counts)
    if not paired or any(one.kind != "load" or not one.value for one in loads) or any(row.side for row in main):
        return list(facts)
    with_reps = any(message.tokens[one.start].text in little("with_reps") for one in loads)
    as_reps = with_reps and all(not one.note.get("unit") and near_reps(one.value, main) for one in loads)
    as_reps = as_reps and any(one.value == row.reps for one in loads for row in main)
    as_reps = as_reps and not any(one.value == row.load_kg for one in loads for row in main)
    many = [1 if one.kind == "rows" else int(one.value) for one in counts]
    if sum(many) != len(main) or min(many) < 1:
        return [Fact("ask", told[0].start, told[-1].end, "sets", {"outcome": True, "whole": True})]
    done = 0
    where: dict[int, tuple[int, ...]] = {}
    for one, n in zip(counts, many, strict=True):
        where[id(one)] = tuple(range(done + 1, done + n + 1))
        done += n
    out: list[Fact] = []
    ones = {id(load): where[id(one)] for one, load in zip(counts, loads, strict=True) if one.note.get("one")}
    for fact in facts:
        if id(fact) in ones:
            out.append(Fact("scope", fact.start, fact.start, ("these", ones[id(fact)])))
        if id(fact) in where:
            fact = Fact("scope", fact.start, fact.end, ("these", where[id(fact)]))
        elif as_reps and any(fact is one for one in loads):  # "ein Satz mit 8, dann zwei mit 6" of planned eights
            fact = Fact("bare", fact.start, fact.end, float(fact.value), {"kg": fact.value})
        out.append(fact)
    return out
