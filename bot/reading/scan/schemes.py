"""Factors in a row: "5x3", "5 sets of 3", "+20x5x3 sets"."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.scan.factors import Factor, factor
from bot.reading.scan.lists import listed
from bot.reading.scan.lone import of_free_weight
from bot.reading.scan.scanner import Scanner

SETS_TOLD = 12  # so many items back a word for sets makes "three of four" sets too
MOST_SETS = 40
MOST_KG = 250  # no first factor is a load beyond this: "500x4" is asked
LEAST_LED, MOST_LED = 15, 12  # "with 35 x 3": kilograms, and reps
MOST_TOLD_SHORT = 11  # sets of "4 de 8"
PAIR = 2  # of dumbbells
LEAST_LOAD = 13  # beside a count of sets and a smaller number


def _joint(s: Scanner, i: int, before: Factor) -> int | None:
    """The place after "x", "of", "for" … between two factors."""
    item = s.at(i)
    if item.has("times", "x"):
        return i + 1
    if before.role is None and before.pair is None and item.has("times", "of") and not item.has("load", "at"):
        # "two sets of six and three of four"
        told = any(s.at(at).has("sets", "sets") for at in range(max(0, i - SETS_TOLD), i)) or _in_pairs(s, i)
        told = told or _sets_of_reps(s, i, before)
        return i + 1 if told and s.at(i + 1).kind == "num" and not s.at(i + 2).has("sets") else None
    if before.role in ("sets", "reps") and item.has("times", "of"):
        if item.has("load", "at") and not before.unloaded:
            # "4 sets with 20": reps only when they are called so
            ahead = factor(s, i + 1)
            return i + 1 if ahead is not None and ahead.role in ("reps", "hold") else None
        return i + 1
    if before.unloaded and item.text == ":" and s.at(i + 1).kind == "num" and s.at(i + 2).text not in (",", "/", "-"):
        return i + 1
    if before.role == "sets" and item.text in (",", ":") and s.at(i + 1).kind == "num":
        ahead = factor(s, i + 1)
        return i + 1 if ahead is not None and ahead.role == "reps" else None
    if before.role == "reps" and item.text == "," and s.at(i + 1).kind in ("num", "known"):
        counted = s.at(i - 3).has("side") and s.at(i - 4).has("sets")  # "3 sets left 2 reps, 3 sets right 2 reps"
        ahead = factor(s, i + 1) if not counted else None
        return i + 1 if ahead is not None and ahead.role == "sets" else None
    if before.role == "sets" and (item.kind == "num" or item.has("load", "plus")):
        return i if item.kind == "num" and not _lists_on(s, i, before) else None
    return None


def _lists_on(s: Scanner, i: int, sets: Factor) -> bool:
    """ "3 sets 12 10 8": a list of as many numbers as there are sets."""
    row = listed(s, i)
    return row is not None and row[0][0].kind == "rows" and len(row[0][0].value) == sets.value > 1


def _sets_of_reps(s: Scanner, i: int, before: Factor) -> bool:
    """ "Fondos: cuatro de ocho", "4 de 4 en supino": sets of reps, as Spanish says it; not where a plan has sets."""
    reps = s.at(i + 1)
    held = s.unit_at(i + 2) == "sec"  # "planche lean 4 de 20 segundos"
    unit = s.unit_at(i + 2) is not None and not held
    if s.planned or s.at(i).text not in little("sets_of_reps") or reps.kind != "num" or unit:
        return False
    if s.at(i - 2).has("fail"):
        return False
    return before.value in range(1, MOST_TOLD_SHORT) and (held or (reps.value or 0) in range(1, MOST_SETS))


def _in_pairs(s: Scanner, i: int) -> bool:
    """ "Two of five and two of four": so many sets of so many, told twice."""
    for of in (i + 4, i - 4):
        between = min(i, of) + 2
        other = s.at(of).has("times", "of") and s.at(of - 1).value is not None and s.at(of + 1).value is not None
        if other and (s.at(between).has("sep", "and") or s.at(between).text == ","):
            return True
    return False


def chain(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "5x3", "5 sets of 3", "+20x5x3 sets", "20kg x 5", "3 x 5 x 20kg"."""
    first = factor(s, i)
    if first is None:
        return None
    told = _reps_at_load(s, i, first)
    if told is not None:
        return told
    factors = [first]
    end = first.end
    while len(factors) < 4:
        after = _joint(s, end, factors[-1])
        if after is None:
            break
        heavy = first.role == "load" or _load_by_list(s, first, end)
        row = listed(s, after) if heavy and len(factors) == 1 and s.at(after + 1).text in (",", "/") else None
        if row is not None and row[0][0].kind == "rows":
            kg = first.kg if first.role == "load" else s.kg(first.value)
            load = Fact("load", s.at(i).start, s.at(end - 1).end, kg, {"how": "plus"})
            return [load, *row[0]], row[1]  # "20 kg x 5,5,4"
        nxt = factor(s, after)
        if nxt is None:
            break
        factors.append(nxt)
        end = nxt.end
    if len(factors) == 1:
        return None
    facts = _pair_of_weights(s, i, factors) or _resolve(s, i, factors)
    more = any(s.at(j).has("sets", "more") for j in range(i, end))
    return [_further(fact) for fact in facts] if more else facts, end


def _reps_at_load(s: Scanner, i: int, reps: Factor) -> tuple[list[Fact], int] | None:
    """ "5 reps @ 20 x 3 sets", "5 at 20kg for 3 sets": the load stands between the reps and their sets."""
    j = reps.end
    if reps.role not in (None, "reps") or not s.at(j).has("load", "at", "sign") or reps.pair or reps.high:
        return None
    load, unit = s.at(j + 1), s.unit_at(j + 2)
    end = j + 2 + (unit in ("kg", "lb"))
    if load.kind != "num" or load.value is None or unit not in (None, "kg", "lb") or not s.whole(reps.value):
        return None
    if not s.at(end).has("times", "x") and s.at(end).text not in little("load_for"):
        return None
    sets = factor(s, end + 1)
    if sets is None or not 0 < sets.value <= MOST_SETS or sets.pair or sets.high:
        return None
    if sets.role is None and s.at(end).has("times", "x"):
        return [Fact("ask", s.at(i).start, s.at(sets.end - 1).end, "sets")], sets.end  # "3 @ 25 x 4"
    if sets.role != "sets":
        return None
    rows = [Entry(int(reps.value)) for _ in range(int(sets.value))]
    note = {"own_load": s.kg(load.value, unit)}
    return [Fact("rows", s.at(i).start, s.at(sets.end - 1).end, rows, note)], sets.end


def _pair_of_weights(s: Scanner, i: int, factors: list[Factor]) -> list[Fact]:
    """ "split squats 3x8 with 2x12 kg": a pair of dumbbells by its figure; of a pull-up, two plates or their sum."""
    led = s.at(i - 1).has("load", "at") or s.at(factors[-1].end).has("load", "word")
    told = s.at(i - 2).kind == "num" or any(s.at(i - 2).has(name) for name in ("side", "reps", "count"))
    pair = [one.role for one in factors] == [None, "load"] and factors[0].value == PAIR and factors[0].pair is None
    if not (led and told and pair):
        return []
    start, end = s.at(i).start, s.at(factors[-1].end - 1).end
    if of_free_weight(s, i):
        return [Fact("load", start, end, factors[1].kg, {"how": "at", "unit": "kg"})]
    return [Fact("ask", start, end, "load_kg")]


def _further(fact: Fact) -> Fact:
    """ "2 more sets of 3": of the work before, so with its load."""
    return replace(fact, note={**fact.note, "more": True}) if fact.kind == "rows" else fact


def _load_by_list(s: Scanner, first: Factor, times: int) -> bool:
    """ "Curls 30 x 12, 12, 10": so many sets nobody does, and the reps of further ones follow."""
    told = s.at(times).has("times", "x") and first.role is None and first.pair is None and first.high is None
    return told and not s.planned and LEAST_LOAD <= first.value <= MOST_KG and (s.at(times + 1).value or 0) <= MOST_LED


def _load_by_reps(s: Scanner, i: int, factors: list[Factor]) -> bool:
    """ "DB rows 40 x 10": a free weight always has a load, and so many sets of it nobody does."""
    first, reps = factors
    if s.planned or not LEAST_LOAD <= first.value <= MOST_KG or reps.value > MOST_LED or first.pair or reps.pair:
        return False
    after = s.at(reps.end)
    loaded = after.has("load") or s.unit_at(reps.end) is not None or after.kind == "num"
    return of_free_weight(s, i) and not loaded and not after.has("sets")


def _resolve(s: Scanner, i: int, factors: list[Factor]) -> list[Fact]:
    start, end = s.at(i).start, s.at(factors[-1].end - 1).end
    loads = [f for f in factors if f.role == "load"]
    sets = [f for f in factors if f.role == "sets"]
    work = [f for f in factors if f.role in ("reps", "hold")]
    open_ = [f for f in factors if f.role is None]
    if not loads and len(open_) == 3:
        big = max(open_, key=lambda f: f.value)
        if (
            (big is open_[-1] and big.value >= 10)
            or big.value != int(big.value)
            or (big is open_[0] and big.value >= 10)
        ):
            big.role, big.kg = "load", s.kg(big.value)
        loads = [f for f in factors if f.role == "load"]
        open_ = [f for f in factors if f.role is None]
    led = s.at(i - 1).has("load", "at") and not s.at(i).spelled
    if led and len(open_) == len(factors) == 2 and open_[0].value >= LEAST_LED and open_[1].value <= MOST_LED:
        open_[0].role, open_[0].kg = "load", s.kg(open_[0].value)  # "with 35 x 3"
        loads, open_ = [open_[0]], [open_[1]]
    if not loads and len(open_) == len(factors) == 2 and _load_by_reps(s, i, factors):
        open_[0].role, open_[0].kg = "load", s.kg(open_[0].value)
        loads, open_ = [open_[0]], [open_[1]]
    if not loads and len(open_) + len(work) == 2 and not sets:
        for this, other in ((factors[1], factors[0]), (factors[0], factors[1])):
            if this.role is None and this.value != int(this.value) and (this.comma or other.value == int(other.value)):
                this.role, this.kg = "load", s.kg(this.value)
                loads, open_ = [this], [f for f in open_ if f is not this]
                break
    if sets and not loads and not work and len(open_) == 2:
        heavy = [f for f in open_ if f.value != int(f.value) or f.value >= LEAST_LOAD]
        if len(heavy) == 1:  # "22.5 x 3 x 5 sets"
            heavy[0].role, heavy[0].kg = "load", s.kg(heavy[0].value)
            loads, open_ = heavy, [f for f in open_ if f is not heavy[0]]
    if len(loads) > 1 or len(sets) > 1 or (len(work) > 1 and sets):
        return [Fact("ask", start, end, "sets")]
    count: float = 1
    note: dict[str, Any] = {}
    if loads and not sets and len(open_) == 2 and factors[0] is loads[0]:
        work, sets = [open_[0]], [open_[1]]
        note["order"] = "reps_sets"
    elif not sets and len(open_) == 2 and open_[0].pair is not None and open_[1].pair is None:
        sets, work = [open_[1]], [open_[0]]  # "5/5 x 3"
    elif not sets and len(open_) == 2:
        sets, work = [open_[0]], [open_[1]]
        note["plain"] = True  # sets x reps, unless the plan says otherwise
    elif not sets and len(open_) == 1 and work:
        sets = open_
    elif not work and open_:
        work = [open_[-1]]
        if not sets and len(open_) > 1:
            return [Fact("ask", start, end, "sets")]
    if sets and sets[0].high is not None:
        return [Fact("ask", start, end, "sets")]
    if len(work) != 1:
        if not work and sets and loads:
            return [Fact("count", start, end, int(sets[0].value)), Fact("load", start, end, loads[0].kg)]
        return [Fact("ask", start, end, "sets")]
    if sets:
        count = sets[0].value
    one = work[0]
    if count != int(count) or count < 1 or count > MOST_SETS:
        if not loads and note.get("plain") and MOST_SETS < count <= MOST_KG and one.value <= 30 and s.whole(one.value):
            loads = [Factor(count, 0, "load", kg=s.kg(count))]
            count = 1
        else:
            return [Fact("ask", start, end, "sets")]
    if one.role != "hold" and (one.value != int(one.value) or one.comma):
        return [Fact("ask", start, end, "reps")]
    made: list[Entry] = []
    for _ in range(int(count)):
        if one.pair is not None:
            made += [Entry(int(one.value), side="left"), Entry(int(one.pair), side="right")]
        elif one.role == "hold":
            made.append(Entry(hold_s=one.value))
        else:
            made.append(Entry(int(one.value)))
    if one.high is not None:
        for entry in made:
            entry.reps, entry.ask = None, "reps"
    facts = [Fact("rows", start, end, made, note)]
    if loads or any(f.unloaded for f in sets):
        note["own_load"] = loads[0].kg if loads else 0.0
    return facts
