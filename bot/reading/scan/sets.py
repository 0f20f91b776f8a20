"""Sets, whatever tells them: schemes, lists, counts, and holds of which nobody is sure."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.scan.counted_by_word import counted_by_word
from bot.reading.scan.factors import factor
from bot.reading.scan.figured_sets import set_of_lift
from bot.reading.scan.labelled import labelled
from bot.reading.scan.lists import listed
from bot.reading.scan.lone import lone_number
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.schemes import chain
from bot.reading.scan.set_word import set_word
from bot.reading.scan.so_often import TIMES, by_so_many, pair_times, sets_of_named, so_often, times_each
from bot.reading.scan.tries import MOST_TRIES, judged_tries, of_attempts, tries
from bot.reading.scan.usual import usual_of_another, usual_thing


def sets(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    item = s.at(i)
    interval = _on_and_off(s, i) if item.kind == "num" else None
    if interval is not None:
        return interval
    other = s.or_other(i + 1) if item.kind == "num" else None
    counted = other is not None and s.at(other + 1).text in little("times_after")
    if other is not None and (s.at(other + 1).has("sets") or counted):
        return [Fact("ask", item.start, s.at(other + 1).end, "sets", {"how_many": True})], other + 2  # "6 or 7 times"
    if item.kind == "num" and sets_of_named(s, i):
        return [Fact("count", item.start, s.at(i + 1).end, int(item.value or 0))], i + 2
    form = labelled(s, i)
    if form is not None:
        return form
    if item.has("ofsets"):
        return [Fact("rows", item.start, item.end, [Entry(int(item.name("ofsets") or 1))], {"each_of": True})], i + 1
    if item.has("sets", "unsaid"):
        rows = [Entry(ask="reps")]
        return [Fact("rows", item.start, item.end, rows, {"one": True, "bare": True})], i + 1
    if item.has("sets", "vague"):
        return [Fact("vague", item.start, item.end)], i + 1
    usual = usual_thing(s, i)
    if usual is not None:
        return usual
    if item.has("load", "thing") and not usual_of_another(s, i):
        return [Fact("thing", item.start, item.end)], i + 1
    if item.has("sets", "sets") and item.value is None:
        plural = item.text.endswith(tuple(little("plural")))
        told = set_word(s, i, plural)
        if told is not None or plural:
            return told
    if (
        (item.text in little("a") or item.text in little("one"))
        and s.unit_at(i + 1) == "min"
        and not s.at(i + 2).has("noise", "rest")
    ):
        item = replace(item, kind="num", value=1.0)
    if item.has("scheme", "attempt"):
        told = judged_tries(s, i)
        if told is not None:
            return told
    often = {"twice": 2, "thrice": 3}.get(item.name("times") or "")
    if often is not None and s.at(i + 1).value is not None:
        one = factor(s, i + 1)
        if one is not None and one.role in (None, "reps", "hold") and one.pair is None and s.whole(one.value):
            entry = Entry(hold_s=one.value) if one.role == "hold" else Entry(int(one.value))
            rows = [replace(entry) for _ in range(often)]
            return [Fact("rows", item.start, s.at(one.end - 1).end, rows, {"plain": True})], one.end
    times = s.at(i + 1)
    if (item.value in TIMES and times.text in little("times_after") and s.at(i + 2).value is None) or so_often(s, i):
        return [Fact("repeat", item.start, times.end, int(item.value or 1), {"counted": True})], i + 2
    if item.kind == "num" and s.at(i + 1).text == "rm" and item.value in range(1, 11):
        made = [Fact("scheme", item.start, s.at(i + 1).end, "amrap", {"names": []})]  # "1RM test"
        if item.value != 1 and s.at(i + 2).text in (":", "=") and s.at(i + 3).kind == "num":
            best = [Entry(int(item.value or 1))]  # "5RM: 27.5"
            made.append(Fact("rows", item.start, s.at(i + 1).end, best, {"each_of": True, "word": True}))
        if item.value == 1:
            made.append(Fact("scheme", item.start, s.at(i + 1).end, "one_rm", {"names": []}))
        return made, i + 2
    ending = s.at(i + 1)
    numbered = item.kind == "num" and ending.text in little("ordinal_ending") and not ending.space
    next_set = ending.text == "." and s.at(i + 3).kind == "num" and _closes(s, i)  # "set 1: 4. Set 2: 4"
    of_sets = s.at(i + 2).has("sets", "sets") or s.at(i + 2).text in little("a_round")
    if numbered and item.value in range(1, 21) and of_sets and not next_set:
        go_on = i + 4 if s.at(i + 3).text in (":", "-") else i + 3
        return [Fact("scope", item.start, s.at(i + 2).end, int(item.value or 0), {"numbered": True})], go_on
    if numbered and item.value in range(1, 21) and ending.text.isalpha() and set_of_lift(s, i + 2):
        return [Fact("scope", item.start, ending.end, int(item.value or 0), {"numbered": True})], i + 2
    follow = s.at(i + 2)
    if numbered and item.value in range(1, 21) and ending.text.isalpha() and follow.kind == "num" and follow.space:
        return [Fact("scope", item.start, ending.end, int(item.value or 0), {"numbered": True})], i + 2  # "2nd 5"
    if numbered and item.value in range(1, 21) and s.at(i + 2).text in (":", ")"):
        return [Fact("scope", item.start, s.at(i + 2).end, int(item.value or 0), {"numbered": True})], i + 3
    told = counted_by_word(s, i, item)
    if told is not None:
        return told
    if item.kind == "clock" and item.value is not None:
        return [Fact("left", item.start, item.end, item.value, {"clock": True})], i + 1
    if item.value is None and not item.has("load", "plus"):
        return times_each(s, i)
    if item.value is not None and item.value in range(1, 21) and s.at(i + 1).has("count"):
        reps = int(s.at(i + 1).name("count") or 1)
        end = i + 2 + (s.at(i + 2).name("count") == s.at(i + 1).name("count"))
        return [Fact("rows", item.start, s.at(end - 1).end, [Entry(reps) for _ in range(int(item.value))])], end
    judged = s.at(i + 1).text in little("judging") or s.at(i + 1).text in little("how_it_went")
    more = s.at(i + 1).has("plan", "more") and not s.planned  # "3 more singles"
    judged = judged or more
    if item.value is not None and judged and s.at(i + 2).has("count") and item.value <= MOST_TRIES:
        reps = int(s.at(i + 2).name("count") or 1)  # "3 heavy triples"
        note = {"more": True} if more else {}
        return [Fact("rows", item.start, s.at(i + 2).end, [Entry(reps) for _ in range(int(item.value))], note)], i + 3
    if s.at(i + 1).has("times", "x") and s.at(i + 2).text == "(" and s.at(i + 3).kind == "num" and item.value:
        return [Fact("rounds", item.start, s.at(i + 1).end, int(item.value), {"bracket": True})], i + 3
    told = (
        _this_or_that(s, i)
        or pair_times(s, i)
        or by_so_many(s, i)
        or tries(s, i)
        or judged_tries(s, i)
        or of_attempts(s, i)
        or chain(s, i)
    )
    if told is not None:
        again = s.or_other(told[1]) if s.at(told[1]).has("sep", "or") else None
        row = chain(s, again) if again is not None else None
        if row is not None:
            return [Fact("ask", item.start, s.at(row[1] - 1).end, "sets")], row[1]  # "3x8 or 4x8"
        return _or_so_many(s, told) or told
    if item.value is not None and s.at(i + 1).has("sets", "rounds"):
        return [Fact("rounds", item.start, s.at(i + 1).end, int(item.value))], i + 2
    if item.kind == "num":
        told = listed(s, i)
        if told is not None:
            return told
    if item.kind == "num" and item.value is not None:
        return lone_number(s, i, item, item.value)
    if item.value is not None and item.has("sets") is False and s.at(i + 1).has("sets", "sets"):
        return [Fact("count", item.start, s.at(i + 1).end, int(item.value))], i + 2
    return None


def _or_so_many(s: Scanner, told: tuple[list[Fact], int]) -> tuple[list[Fact], int] | None:
    """ "3x6 or 7", "three sets of 6 or 7": so many sets, and nobody knows of how many."""
    facts, end = told
    place = s.or_other(end)
    rows = facts[-1]
    if place is None or not s.whole(s.at(place).value or 0.5):
        return None
    after = place + 1
    if len(facts) > 1 or rows.kind != "rows" or s.unit_at(after) is not None or s.at(after).has("times", "x"):
        return None
    if len({entry.reps for entry in rows.value}) > 1 or None in {entry.reps for entry in rows.value}:
        return None
    stop = after + s.at(after).has("reps")
    asked = [Entry(ask="reps") for _ in rows.value]
    return [Fact("rows", rows.start, s.at(stop - 1).end, asked, rows.note)], stop


def _closes(s: Scanner, i: int) -> bool:
    """Whether a number tells the work of a set that stands before it, rather than which set comes: "im 1. Satz 6"."""
    before = s.at(i - 1)
    if before.text == ":":
        return s.at(i - 2).kind == "num" or s.at(i - 2).has("scope")
    return (
        before.kind == "num" or before.has("sets") or before.has("scope") or before.has("plan") or before.has("scheme")
    )


def _on_and_off(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "8 rounds 20s on 10s off": the hold, and its rest."""
    times = s.unit_at(i + 1) == "sec" and s.unit_at(i + 4) == "sec" and s.at(i + 3).kind == "num"
    if not times or s.at(i + 2).text not in little("at_work") or s.at(i + 5).text not in little("at_rest"):
        return None
    held = [Entry(hold_s=s.at(i).value)]
    rest = Fact("word", s.at(i + 2).start, s.at(i + 5).end, None, {"noise": True})
    return [Fact("rows", s.at(i).start, s.at(i + 1).end, held, {"one": True, "unit": "sec"}), rest], i + 6


def _this_or_that(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "10 seconds or 12": a hold of which nobody is sure."""
    other = s.or_other(i + 2) if s.at(i).kind == "num" and s.unit_at(i + 1) == "sec" else None
    if other is None:
        return None
    end = other + 1 + (s.unit_at(other + 1) == "sec")
    return [Fact("ask", s.at(i).start, s.at(end - 1).end, "hold_s")], end
