"""Sets: schemes, lists, and those told by words ("doubles", "set 4", "the 3s")."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.factors import factor
from bot.reading.scan.labelled import labelled
from bot.reading.scan.lists import listed
from bot.reading.scan.lone import lone_number, of_free_weight
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.schemes import chain
from bot.reading.scan.usual import usual_thing

TIMES = range(2, 11)
MOST_TRIES = 20
TOLD_WITHIN = 8  # items of "3 each side, lower half, x2"
TRIES_TOLD = 6  # so far behind the tries stands how many went up
LEAST_RUNGS = 2  # steps of a ladder told by its ends
LEAST_IN_TURN = 3  # numbers of a list behind "set"
MOST_NAMED = 20  # the highest number of a set
LEAST_DUMBBELL = 9  # below it "the 3s" are sets of three


def sets(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    item = s.at(i)
    interval = _on_and_off(s, i) if item.kind == "num" else None
    if interval is not None:
        return interval
    if (
        item.kind == "num"
        and s.at(i + 1).text in little("or")
        and s.at(i + 2).kind == "num"
        and s.at(i + 3).has("sets")
    ):
        return [Fact("ask", item.start, s.at(i + 3).end, "sets", {"how_many": True})], i + 4  # "6 or 7 sets"
    if item.kind == "num" and _sets_of_named(s, i):
        return [Fact("count", item.start, s.at(i + 1).end, int(item.value or 0))], i + 2
    form = labelled(s, i)
    if form is not None:
        return form
    if item.has("ofsets"):
        return [Fact("rows", item.start, item.end, [Entry(int(item.name("ofsets") or 1))], {"each_of": True})], i + 1
    if item.has("sets", "vague"):
        return [Fact("vague", item.start, item.end)], i + 1
    usual = usual_thing(s, i)
    if usual is not None:
        return usual
    if item.has("load", "thing"):
        return [Fact("thing", item.start, item.end)], i + 1
    if item.has("sets", "sets") and item.value is None:
        plural = item.text.endswith(tuple(little("plural")))
        told = _set_word(s, i, plural)
        if told is not None or plural:
            return told
    if (
        (item.text in little("a") or item.text in little("one"))
        and s.unit_at(i + 1) == "min"
        and not s.at(i + 2).has("noise", "rest")
    ):
        item = replace(item, kind="num", value=1.0)
    if item.has("scheme", "ladder"):
        rungs = _rungs(s, i)
        if rungs is not None:
            return rungs
    often = {"twice": 2, "thrice": 3}.get(item.name("times") or "")
    if often is not None and s.at(i + 1).value is not None:
        one = factor(s, i + 1)
        if one is not None and one.role in (None, "reps", "hold") and one.pair is None and s.whole(one.value):
            entry = Entry(hold_s=one.value) if one.role == "hold" else Entry(int(one.value))
            rows = [replace(entry) for _ in range(often)]
            return [Fact("rows", item.start, s.at(one.end - 1).end, rows, {"plain": True})], one.end
    times = s.at(i + 1)
    if (item.value in TIMES and times.text in little("times_after") and s.at(i + 2).value is None) or _so_often(s, i):
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
    if numbered and item.value in range(1, 21) and s.at(i + 2).has("sets", "sets") and not next_set:
        go_on = i + 4 if s.at(i + 3).text in (":", "-") else i + 3
        return [Fact("scope", item.start, s.at(i + 2).end, int(item.value or 0), {"numbered": True})], go_on
    follow = s.at(i + 2)
    if numbered and item.value in range(1, 21) and ending.text.isalpha() and follow.kind == "num" and follow.space:
        return [Fact("scope", item.start, ending.end, int(item.value or 0), {"numbered": True})], i + 2  # "2nd 5"
    if numbered and item.value in range(1, 21) and s.at(i + 2).text in (":", ")"):
        return [Fact("scope", item.start, s.at(i + 2).end, int(item.value or 0), {"numbered": True})], i + 3
    told = _counted_by_word(s, i, item)
    if told is not None:
        return told
    if item.kind == "clock" and item.value is not None:
        return [Fact("left", item.start, item.end, item.value, {"clock": True})], i + 1
    if item.value is None and not item.has("load", "plus"):
        return _times_each(s, i)
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
        or _pair_times(s, i)
        or _by_so_many(s, i)
        or _tries(s, i)
        or _judged_tries(s, i)
        or _of_attempts(s, i)
        or chain(s, i)
    )
    if told is not None:
        other = chain(s, told[1] + 1) if s.at(told[1]).has("sep", "or") else None
        if other is not None:
            return [Fact("ask", item.start, s.at(other[1] - 1).end, "sets")], other[1]  # "3x8 or 4x8"
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
    other = s.at(end + 1)
    rows = facts[-1]
    if not s.at(end).has("sep", "or") or other.kind != "num" or not s.whole(other.value or 0.5):
        return None
    if len(facts) > 1 or rows.kind != "rows" or s.unit_at(end + 2) is not None or s.at(end + 2).has("times", "x"):
        return None
    if len({entry.reps for entry in rows.value}) > 1 or None in {entry.reps for entry in rows.value}:
        return None
    stop = end + 2 + s.at(end + 2).has("reps")
    asked = [Entry(ask="reps") for _ in rows.value]
    return [Fact("rows", rows.start, s.at(stop - 1).end, asked, rows.note)], stop


def _so_often(s: Scanner, i: int) -> bool:
    """ "20s per side, 3x": so many times what was told, at the end of its clause."""
    item, times, after = s.at(i), s.at(i + 1), s.at(i + 2)
    glued = times.text in little("by_sign") and not times.space and item.value in TIMES and item.kind == "num"
    closes = after.kind == "nl" or after.text in (".", ";", ",", ")", "!")
    led = s.at(i - 2)
    told = s.at(i - 1).text in (",", "-", "(") and (led.has("unit") or led.has("side") or led.has("pause"))
    return glued and closes and told


def _rungs(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Ladder 1 to 5", "Leiter von 1 bis 5": a set of each number."""
    j = i + 1
    while s.at(j).text in (":",) or s.at(j).text in little("from"):
        j += 1
    low, high = s.at(j), s.at(j + 2)
    joined = s.at(j + 1).text in little("until") or s.at(j + 1).text in little("range")
    if low.kind != "num" or high.kind != "num" or not joined or s.at(j + 3).text in ("-", "/", ",", "x"):
        return None
    first, last = int(low.value or 0), int(high.value or 0)
    if not 0 < first < last <= MOST_TRIES or last - first < LEAST_RUNGS:
        return None
    rows = [Entry(reps) for reps in range(first, last + 1)]
    mark = Fact("scheme", s.at(i).start, s.at(i).end, "ladder", {"names": []})
    return [mark, Fact("rows", low.start, high.end, rows, {"list": True, "mark": "-"})], j + 3


def _closes(s: Scanner, i: int) -> bool:
    """Whether a number tells the work of a set that stands before it, rather than which set comes: "im 1. Satz 6"."""
    before = s.at(i - 1)
    if before.text == ":":
        return s.at(i - 2).kind == "num" or s.at(i - 2).has("scope")
    return (
        before.kind == "num" or before.has("sets") or before.has("scope") or before.has("plan") or before.has("scheme")
    )


def _times_each(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "chin-ups x10 x8 x7": a set each; "30 squats x3": so many sets of what was told."""
    if not s.at(i).has("times", "x") or not s.at(i).text.startswith(tuple(little("by_sign"))):
        return None
    led = s.at(i - 1)
    leads = led.kind in ("move", "nl") or led.text in (":", ",")  # elsewhere only one is read, however many there are
    rows: list[Entry] = []
    j = i
    while s.at(j).has("times", "x") and s.at(j + 1).kind == "num" and s.whole(s.at(j + 1).value or 0.5):
        if s.unit_at(j + 2) is not None or s.at(j + 2).has("sets"):
            break
        rows.append(Entry(int(s.at(j + 1).value or 0)))
        j += 2
        if len(rows) > 1 and not leads:
            return None
        while s.at(j).text == "," and s.at(j + 1).has("times", "x"):
            j += 1
    if len(rows) == 1 and led.has("noise", "rest") and _closes_clause(s, j):
        return [Fact("rounds", s.at(i).start, s.at(j - 1).end, rows[0].reps, {"after": True})], j  # "45s rest x5"
    if len(rows) == 1 and led.text in little("taken_off"):
        return [Fact("rows", s.at(i).start, s.at(j - 1).end, rows, {"one": True, "reps": True})], j  # "15 kg off x 3"
    if len(rows) == 1 and led.has("side", "left", "right") and _amount(s, i - 2) and not s.at(i - 3).has("times", "x"):
        # "20s left 25 right x 3"
        return [Fact("rounds", s.at(i).start, s.at(j - 1).end, rows[0].reps, {"after": True, "pair": True})], j
    if len(rows) == 1 and led.text == "," and _closes_clause(s, j) and _told_before(s, i - 2):
        return [Fact("rounds", s.at(i).start, s.at(j - 1).end, rows[0].reps, {"after": True})], j  # "3 each side, x2"
    if not rows or not leads:
        return None
    if led.text == "," and s.at(i - 2).has("side"):
        if len(rows) == 1 and s.at(i - 2).has("side", "left", "right"):  # "2 left 2 right, x3"
            return [Fact("rounds", s.at(i).start, s.at(j - 1).end, rows[0].reps, {"after": True, "pair": True})], j
        return None
    before = s.at(i - 2)
    held = s.unit_at(i - 2) == "sec"  # "30 s hollow hold x3"
    if len(rows) == 1 and s.at(i - 1).kind == "move" and (before.value is not None or before.has("reps") or held):
        return [Fact("rounds", s.at(i).start, s.at(j - 1).end, rows[0].reps, {"after": True})], j
    note = {"list": True, "mark": ","} if len(rows) > 1 else {"one": True, "reps": True}
    return [Fact("rows", s.at(i).start, s.at(j - 1).end, rows, note)], j


def _on_and_off(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "8 rounds 20s on 10s off": the hold, and its rest."""
    times = s.unit_at(i + 1) == "sec" and s.unit_at(i + 4) == "sec" and s.at(i + 3).kind == "num"
    if not times or s.at(i + 2).text not in little("at_work") or s.at(i + 5).text not in little("at_rest"):
        return None
    held = [Entry(hold_s=s.at(i).value)]
    rest = Fact("word", s.at(i + 2).start, s.at(i + 5).end, None, {"noise": True})
    return [Fact("rows", s.at(i).start, s.at(i + 1).end, held, {"one": True, "unit": "sec"}), rest], i + 6


def _sets_of_named(s: Scanner, i: int) -> bool:
    """ "3x pull-ups 8": so many sets of the reps behind the name."""
    reps = s.at(i + 3)
    named = s.at(i + 1).has("times", "x") and s.at(i + 2).kind == "move" and reps.kind == "num"
    after = s.at(i + 4)
    whole = s.whole(s.at(i).value or 0.5) and s.whole(reps.value or 0.5)
    return named and whole and s.unit_at(i + 4) is None and not after.has("times", "x") and not after.has("sets")


def _closes_clause(s: Scanner, i: int) -> bool:
    return s.at(i).kind == "nl" or s.at(i).text in (",", ".", ";", ")")


def _told_before(s: Scanner, i: int) -> bool:
    """Whether a number stands before this place, behind the movement's name."""
    for at in range(i, max(-1, i - TOLD_WITHIN), -1):
        if s.at(at).kind in ("move", "nl") or s.at(at).text in (".", ";"):
            return False
        if s.at(at).kind == "num":
            return True
    return False


def _amount(s: Scanner, i: int) -> bool:
    """Whether reps or a time stand here."""
    return s.at(i).kind == "num" or s.at(i).has("reps") or s.unit_at(i) == "sec"


def _of_attempts(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "2/6 attempts": two singles, four misses."""
    item, whole = s.at(i), s.at(i + 2)
    if s.at(i + 1).text != "/" or whole.kind != "num" or not s.at(i + 3).has("scheme", "attempt"):
        return None
    made, tried = int(item.value or 0), int(whole.value or 0)
    if not made <= tried <= MOST_TRIES:
        return None
    rows = [Entry(1 if at < made else 0) for at in range(tried)]
    return [Fact("rows", item.start, s.at(i + 3).end, rows, {"list": True, "mark": "/"})], i + 4


def _this_or_that(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "10 seconds or 12": a hold of which nobody is sure."""
    unit, other = s.unit_at(i + 1), s.at(i + 3)
    if s.at(i).kind != "num" or unit != "sec" or s.at(i + 2).text not in little("or") or other.kind != "num":
        return None
    end = i + 4 + (s.unit_at(i + 4) == "sec")
    return [Fact("ask", s.at(i).start, s.at(end - 1).end, "hold_s")], end


def _pair_times(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "L6 R6 x2": the times count the pair."""
    sides = [s.at(at).name("side") for at in (i - 3, i - 1)]
    if set(sides) != {"left", "right"} or s.at(i - 2).kind != "num" or s.at(i).kind != "num":
        return None
    times, many = s.at(i + 1), s.at(i + 2)
    if not times.has("times", "x") or many.kind != "num" or not many.value:
        return None
    value = float(s.at(i).value or 0)
    note = {"spelled": False, "comma": s.at(i).comma, "the": False, "kg": s.kg(value)}
    pair = Fact("rounds", times.start, many.end, int(many.value), {"pair": True})
    return [Fact("bare", s.at(i).start, s.at(i).end, value, note), pair], i + 3


def _by_so_many(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "De 5 en 5 hasta 25": five sets of five."""
    many, total = s.at(i).value, s.at(i + 4).value
    same = s.at(i + 1).has("times", "within") and s.at(i + 2).value == many
    if not many or not total or not same or s.at(i + 3).text not in little("up_to_a_total"):
        return None
    if many != int(many) or total % many or not 1 < total / many <= MOST_TRIES:
        return None
    rows = [Entry(int(many)) for _ in range(int(total / many))]
    return [Fact("rows", s.at(i).start, s.at(i + 4).end, rows, {"plain": True})], i + 5


def _went_up(item: Item) -> bool:
    return not little("went_up").isdisjoint(item.text.split())


def _tries(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "5 attempts, 3 good": three singles, two misses."""
    tried = s.at(i).value
    if tried is None or tried not in range(2, MOST_TRIES + 1) or not s.at(i + 1).has("scheme", "attempt"):
        return None
    timed = s.unit_at(i + 4)
    if s.at(i + 2).has("times", "of") and s.at(i + 3).kind == "num" and timed in ("sec", "min"):
        hold_s = (s.at(i + 3).value or 0) * (60 if timed == "min" else 1)
        holds = [Entry(hold_s=hold_s) for _ in range(int(tried))]
        return [Fact("rows", s.at(i).start, s.at(i + 4).end, holds, {"list": True})], i + 5  # "3 attempts of 20 s"
    for j in range(i + 2, i + 2 + TRIES_TOLD):
        made = s.at(j)
        if made.kind == "nl" or made.text in (".", ";"):
            return None
        if made.value is not None and made.value != int(made.value):
            return None
        if made.value is not None:
            good = any(_went_up(s.at(at)) for at in (j - 1, j + 1, j + 2))
            if not good or made.value > tried:
                return None
            side = next(
                (s.at(at).name("side") for at in range(i + 2, j) if s.at(at).has("side", "left", "right")), None
            )
            rows = [Entry(1 if at < made.value else 0, side=side) for at in range(int(tried))]
            moves = [
                Fact("move", s.at(at).start, s.at(at).end, s.at(at).mention)
                for at in range(i + 2, j)
                if s.at(at).kind == "move"
            ]
            end = j + 1
            while end < j + 3 and _went_up(s.at(end)):
                end += 1
            return [*moves, Fact("rows", s.at(i).start, s.at(end - 1).end, rows, {"list": True, "mark": "/"})], end
    return None


def _judged_tries(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "4 Anläufe, davon 1 daneben": singles, so many of them missed or made."""
    item = s.at(i)
    if item.value not in range(1, MOST_TRIES + 1) or not s.at(i + 1).has("scheme", "attempt"):
        return None
    j = i + 2
    while j < i + 5 and (
        s.at(j).text in (",", ":", "-", "(") or s.at(j).has("sep", "and") or s.at(j).text in little("of_those")
    ):
        j += 1
    part, move = s.at(j), s.at(j + 1) if s.at(j + 1).kind == "move" else None
    verdict = s.at(j + 1 + (move is not None))
    if part.value is None or part.value != int(part.value) or part.value > (item.value or 0):
        return None
    missed = verdict.has("fail", "fail") or verdict.text in little("a_miss")
    if not missed and not verdict.has("scheme", "got") and not verdict.has("fail", "yes"):
        return None
    tried = int(item.value or 0)
    made = tried - int(part.value) if missed else int(part.value)
    rows = [Entry(1 if at < made else 0) for at in range(tried)]
    named = [Fact("move", move.start, move.end, move.mention)] if move is not None else []
    return [*named, Fact("rows", item.start, verdict.end, rows, {"list": True, "mark": ","})], j + 2 + (
        move is not None
    )


def _names_one(s: Scanner, i: int) -> bool:
    """ "5 singles at 40 … single 4 was a grind": which of the sets that were counted by their word."""
    number, name = s.at(i + 1), s.at(i).name("count")
    small = number.kind == "num" and number.value in TIMES and s.unit_at(i + 2) is None
    if not small or s.at(i - 1).value is not None or s.at(i).text.endswith(tuple(little("plural"))):
        return False
    counted = [s.at(j - 1).value for j in range(1, i) if s.at(j).name("count") == name]
    return any(many is not None and (number.value or 0) <= many for many in counted)


def _before_is_number(s: Scanner, i: int) -> bool:
    return s.at(i - 1).value is not None


def _set_word(s: Scanner, i: int, plural: bool) -> tuple[list[Fact], int] | None:
    """ "sets of 5", "sets 2 and 3", "set 4:": so many a set, or which set."""
    item, j = s.at(i), i + 1
    loaded = s.at(j).has("load", "at") and s.unit_at(j + 2) in ("kg", "lb")  # "a back-off set with 10 kilos for 8"
    if s.at(j).has("times", "of") and s.at(j + 1).value is not None and not loaded:
        value, many = s.at(j + 1).value or 0, s.at(j + 3)
        if s.at(j + 2).has("times", "x") and many.kind == "num" and many.value in range(2, MOST_TRIES + 1):
            rows = [Entry(int(value)) for _ in range(int(many.value or 0))]
            return [Fact("rows", item.start, many.end, rows, {"plain": True})], j + 4  # "sets of 5 x 6"
        return [Fact("rows", item.start, s.at(j + 1).end, [Entry(int(value))], {"each_of": True})], j + 2
    if plural and s.at(j).kind == "num" and s.at(j + 1).has("sep", "and") and s.at(j + 2).kind == "num":
        which = (int(s.at(j).value or 0), int(s.at(j + 2).value or 0))
        return [Fact("scope", item.start, s.at(j + 2).end, ("these", which))], j + 3
    if (
        plural
        and s.at(j).kind == "num"
        and (s.at(j + 1).text == "-" or s.at(j + 1).has("sep", "to"))
        and s.at(j + 2).kind == "num"
        and 0 < (s.at(j).value or 0) < (s.at(j + 2).value or 0) <= 20
    ):
        first, last = int(s.at(j).value or 0), int(s.at(j + 2).value or 0)
        return [Fact("scope", item.start, s.at(j + 2).end, ("these", tuple(range(first, last + 1))))], j + 3
    if plural:
        return None
    listed = _in_turn(s, j)
    if listed and listed == list(range(listed[0], listed[0] + len(listed))) and listed[-1] <= MOST_NAMED:
        end = j + 2 * len(listed) - 1
        return [Fact("scope", item.start, s.at(end - 1).end, ("these", tuple(listed)))], end  # "set 2, 3, 4 were hard"
    if listed:
        return None  # "Serie 8-7-6": reps
    if s.at(j).value is not None and s.at(j + 1).text in (":", ",", ")", "-", "."):
        value = s.at(j).value or 0
        if value == int(value) and 1 <= value <= 20:
            go_on = j + 2 if s.at(j + 1).text in (":", ")", "-") else j + 1
            return [Fact("scope", item.start, s.at(j).end, int(value), {"numbered": True})], go_on
    if (
        s.at(j).kind == "num"
        and not _before_is_number(s, i)
        and not s.at(i - 1).has("scope")  # "der dritte Satz 4": its reps
        and not s.at(j + 1).has("times", "x")
        and s.whole(s.at(j).value or 0.5)
    ):
        return [Fact("scope", item.start, s.at(j).end, int(s.at(j).value or 0), {"numbered": True})], j + 1
    return None


def _in_turn(s: Scanner, j: int) -> list[int]:
    """Three or more whole numbers with the same sign between them."""
    numbers: list[int] = []
    mark = s.at(j + 1).text
    while s.at(j).kind == "num" and s.whole(s.at(j).value or 0.5):
        numbers.append(int(s.at(j).value or 0))
        if mark not in ("-", "/", ",") or s.at(j + 1).text != mark:
            break
        j += 2
    return numbers if len(numbers) >= LEAST_IN_TURN else []


def _counted_by_word(s: Scanner, i: int, item: Item) -> tuple[list[Fact], int] | None:
    """ "a top single", "doubles", "a triple", "the 3s", "with the 22s"."""
    if item.has("topcount"):
        top = int(item.name("topcount") or 1)
        return [
            Fact("scope", item.start, item.end, "top"),
            Fact("rows", item.start, item.end, [Entry(top)], {"top": True}),
        ], i + 1
    if item.value is not None and s.at(i + 1).has("link", "cluster", "rest_pause") and item.value <= 20:
        mark = s.at(i + 1)
        return [
            Fact("count", item.start, mark.end, int(item.value)),
            Fact("link", mark.start, mark.end, "cluster"),
        ], i + 2
    if item.value is not None and s.at(i + 1).has("scheme", "ladder") and 1 < item.value <= 20:
        mark = s.at(i + 1)
        return [
            Fact("scheme", mark.start, mark.end, "ladder", {"names": []}),
            Fact("rounds", item.start, mark.end, int(item.value)),
        ], i + 2
    if item.has("count") and _names_one(s, i):
        which = (int(item.name("count") or 1), int(s.at(i + 1).value or 0))
        return [Fact("scope", item.start, s.at(i + 1).end, ("of_reps", which), {"text": item.text})], i + 2
    if item.has("count") and not item.has("times") and not (item.value is not None and s.at(i + 1).has("unit")):
        reps = int(item.name("count") or 1)
        end = i + 1 + (s.at(i + 1).name("count") == item.name("count"))  # "singles one at a time"
        return [Fact("rows", item.start, s.at(end - 1).end, [Entry(reps)], {"each_of": True, "word": True})], end
    plural = s.at(i + 1).text.endswith(tuple(little("plural")))  # "a dobles" are no single one
    if item.text in little("a") and s.at(i + 1).has("count") and not plural:
        return [Fact("rows", item.start, s.at(i + 1).end, [Entry(int(s.at(i + 1).name("count") or 1))], {})], i + 2
    if item.has("plan", "the") and s.at(i + 1).has("count"):
        reps = int(s.at(i + 1).name("count") or 1)
        return [Fact("rows", item.start, s.at(i + 1).end, [Entry(reps)], {"the": True})], i + 2
    if (
        item.has("load", "at")
        and s.at(i + 1).has("plan", "the")
        and s.at(i + 2).kind == "num"
        and s.at(i + 3).has("these")
        and (s.at(i + 2).value or 0) >= LEAST_DUMBBELL
    ):
        # "with the 22s": a pair of dumbbells by its figure
        return [Fact("load", item.start, s.at(i + 3).end, s.kg(s.at(i + 2).value or 0), {"how": "at"})], i + 4
    if (
        item.has("plan", "the")
        and s.at(i + 1).kind == "num"
        and s.at(i + 2).has("load", "at")
        and not s.at(i + 1).comma
    ):
        return [Fact("count", item.start, s.at(i + 1).end, int(s.at(i + 1).value or 0), {"only": True})], i + 2
    these = item.has("plan", "the") or item.text in little("mine")
    if these and s.at(i + 1).kind == "num" and s.at(i + 2).text in little("ending_of_these"):
        if s.at(i - 1).has("load", "at") and of_free_weight(s, i):
            kg = s.kg(s.at(i + 1).value or 0)  # "curls 3x12 with the 8s"
            return [Fact("load", item.start, s.at(i + 2).end, kg, {"how": "at"})], i + 3
        return [Fact("rows", item.start, s.at(i + 2).end, [Entry(int(s.at(i + 1).value or 0))], {"the": True})], i + 3
    return None
