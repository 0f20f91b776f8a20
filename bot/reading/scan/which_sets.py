"""Which sets are meant: "the last two sets", "set 3 and 4", "sets 1-3", "from the third set on"."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.scan.beginning import begins_with
from bot.reading.scan.figured_sets import figured_set, figured_sets
from bot.reading.scan.scanner import Scanner

MOST_RANGE = 12  # the highest number of a set
MOST_NAMED = 6  # so many sets are named by their number: "the last two"
REACH = 6  # so far from "after the second set" stands what changed


def which_sets(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "the last two sets", "third and fourth set", "set 3 and 4", "las tres últimas": which sets are meant."""
    item, j = s.at(i), i + 1
    name = item.name("scope")
    nxt = s.at(j)
    if item.has("plan", "all_lifts") and nxt.has("sets", "sets"):
        return [Fact("scope", item.start, nxt.end, "all", {"text": item.text})], j + 1  # "3/3 both sets"
    many = nxt.spelled and (nxt.value or 0) in range(2, MOST_NAMED + 1) and item.text.split()[-1] not in little("with")
    if name == "all" and many and not any(s.at(j + 1).has(kind) for kind in ("reps", "sets", "unit")):
        return [Fact("scope", item.start, nxt.end, "all", {"text": item.text})], j + 1  # "bei allen vier"
    if name in ("first", "last") and not begins_with(s, i):
        two = nxt.has("plan", "pair")
        n = 2 if two else nxt.value
        whole = item.text.endswith(tuple(little("one_set"))) and not s.at(j + 1).has("sets", "sets")  # "first set five"
        if n is not None and 2 <= n <= MOST_NAMED and n == int(n) and not whole:
            sets = s.at(j + 1).has("sets", "sets")
            the = s.at(i - 1).has("plan", "the") or item.text.split()[0] in little("article")
            several = item.text.split()[-1] in little("several_sets")  # "las primeras 2"
            led = several or (the and s.at(j + 1).has("load", "at", "plus"))  # "die ersten 3 mit 22,5"
            alone = item.text.startswith(tuple(little("of_one_set")))  # "im letzten sechs"
            rated = n > 1 and s.at(j + 1).has("effort", "rpe") and not alone  # "last 2 rpe 8"
            if sets or two or (nxt.spelled and not alone) or led or rated or _of_so_many(s, i, j + 1):
                end = j + 1 + sets
                if not s.at(end).has("unit"):
                    return [Fact("scope", item.start, s.at(end - 1).end, (name, int(n)), {"text": item.text})], end
    if (
        name == "rest"
        and nxt.kind == "num"
        and (nxt.value or 0) in range(2, MOST_NAMED + 1)
        and (
            s.at(j + 1).has("plan", "fine", "done", "planned", "same")
            or s.at(j + 1).has("sets", "sets")
            or s.at(i - 1).text in little("load_for")  # "17,5 für die restlichen 4"
            or (nxt.spelled and s.at(j + 1).has("load", "at"))  # "the remaining two with 25"
        )
    ):
        end = j + 1 + s.at(j + 1).has("sets", "sets")  # "the other 3 fine"
        return [Fact("scope", item.start, s.at(end - 1).end, "rest", {"text": item.text})], end
    led = s.at(i - 1).has("plan", "the") or s.at(i - 1).text in little("article")
    named = item.spelled or (led and nxt.text.endswith(tuple(little("plural"))))  # "las 2 últimas"
    ends = nxt.has("scope", "first", "last") and nxt.text.partition(" ")[0] not in little("upon")  # "two on the last"
    if item.value is not None and 2 <= item.value <= MOST_NAMED and named and ends:
        end = j + 1 + s.at(j + 1).has("sets", "sets")
        way = nxt.name("scope")
        return [Fact("scope", item.start, s.at(end - 1).end, (way, int(item.value)), {"text": nxt.text})], end
    if name == "first" and nxt.has("sep", "and"):
        name = "1"  # "first and third set with 22.5"
    if name is not None and name.isdigit() and nxt.has("sep", "and"):
        k = j + 1
        while s.at(k).has("plan", "the") or s.at(k).text in little("article", "before_number"):
            k += 1
        other = s.at(k).name("scope")
        if other is not None and (other.isdigit() or other == "last") and other != name:
            end = k + 1 + s.at(k + 1).has("sets", "sets")
            which = ("these", (int(name), -1 if other == "last" else int(other)))
            return [Fact("scope", item.start, s.at(end - 1).end, which, {"text": item.text})], end
    if (
        item.has("sets", "sets")
        and s.at(i - 1).value is None
        and nxt.kind == "num"
        and s.at(j + 1).has("sep", "and")
        and s.at(j + 2).kind == "num"
        and 0 < (nxt.value or 0) < (s.at(j + 2).value or 0) <= 20
        and not s.at(j + 3).has("reps")
        and not s.at(j + 3).has("times", "x")
    ):
        which = ("these", (int(nxt.value or 0), int(s.at(j + 2).value or 0)))
        return [Fact("scope", item.start, s.at(j + 2).end, which)], j + 3
    if (
        item.has("sets", "rounds")
        and item.text in little("a_round")
        and not s.at(i - 1).has("scope")
        and _numbers_a_round(s, i)
    ):
        return [Fact("scope", item.start, nxt.end, int(nxt.value or 0), {"numbered": True})], j + 1
    told = _range_of_sets(s, i) or _row_of_sets(s, i) or figured_sets(s, i) or figured_set(s, i)
    told = told or _in_figures(s, i) or _in_order(s, i)
    if told is not None:
        return told
    if (
        item.has("sets", "sets")
        and s.at(i - 1).value is None
        and nxt.spelled
        and 1 <= (nxt.value or 0) <= 20
        and not s.at(j + 1).has("reps")
        and not s.at(j + 1).has("sets")
        and not s.at(j + 1).has("plan", "more_reps", "less_reps")  # "all four sets one rep more"
    ):
        return [Fact("scope", item.start, nxt.end, int(nxt.value or 0), {"numbered": True})], j + 1
    return None


def _numbers_a_round(s: Scanner, i: int) -> bool:
    """ "Round 3 only 8 dips": the number is the round's, and another one follows."""
    number, after = s.at(i + 1), s.at(i + 2)
    ordered = s.at(i - 1).text in little("ordinal_ending") or s.at(i - 1).value is not None  # "2nd round 7"
    if ordered or number.kind != "num" or number.value not in range(1, MOST_RANGE + 1):
        return False
    if number.comma or after.has("times", "x") or after.has("unit") or after.has("reps") or after.kind == "move":
        return False
    return after.kind == "num" or s.at(i + 3).kind == "num"


def _of_so_many(s: Scanner, i: int, end: int) -> bool:
    """ "22.5 for the first 3, then 20": so many sets, where a clause ends and a value stands before."""
    k = i - 1
    while s.at(k).has("plan", "the") or s.at(k).text in little("article"):
        k -= 1
    told = s.at(k).text in little("load_for") and (s.at(k - 1).value is not None or s.unit_at(k - 1) is not None)
    after = s.at(end)
    return told and (after.kind in ("nl", "claim") or after.text in (",", ".", ";") or after.has("sep"))


def _range_of_sets(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Sets 1-3", "set 1 to 3": those sets."""
    first, mark, last = s.at(i + 1), s.at(i + 2), s.at(i + 3)
    if not s.at(i).has("sets", "sets") or s.at(i - 1).value is not None or first.kind != "num" or last.kind != "num":
        return None
    low, high = first.value or 0, last.value or 0
    if not 0 < low < high <= MOST_RANGE or low != int(low) or high != int(high) or s.unit_at(i + 4) is not None:
        return None
    if mark.text not in little("range") or s.at(i + 4).has("reps") or s.at(i + 4).has("times", "x"):
        return None
    which = ("these", tuple(range(int(low), int(high) + 1)))
    return [Fact("scope", s.at(i).start, last.end, which)], i + 4


def _row_of_sets(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Series 1 2 y 3 según plan", "sets 1, 2 and 3": those sets, from the first on, where a word for them follows."""
    if not s.planned or not s.at(i).has("sets", "sets") or s.at(i - 1).value is not None:
        return None
    which: list[int] = []
    j = i + 1
    while s.at(j).kind == "num" and s.at(j).value == len(which) + 1 and not s.at(j).spelled:
        which.append(len(which) + 1)
        j += 1
        joined = s.at(j).text == "," or s.at(j).has("sep", "and")
        j += joined and s.at(j + 1).kind == "num"
    if len(which) < 2 or not s.at(j).has("plan", "planned", "done", "fine", "same"):
        return None
    return [Fact("scope", s.at(i).start, s.at(j - 1).end, ("these", tuple(which)), {"text": ""})], j


def onwards(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "From the third set on 12.5", "after the second set down to 7.5": that set and those that follow."""
    item = s.at(i)
    ordinal, far = item.name("scope"), i + 1 + (s.at(i + 1).text in little("before_onwards"))
    if ordinal is not None and (ordinal.isdigit() or ordinal == "first") and s.at(far).text in little("and_onwards"):
        begin = int(ordinal) if ordinal.isdigit() else 1
        return [Fact("scope", item.start, s.at(far).end, ("from", begin), {"text": item.text})], far + 1
    later = item.text in little("after_set")
    if not later and item.text not in little("from_set"):
        return None
    j = i + 1
    while j < i + 4 and s.at(j).value is None and s.at(j).name("scope") is None and not s.at(j).has("sets", "sets"):
        if s.at(j).has("scheme", "got") or (later and s.at(j).kind == "move"):
            return None  # "after that I did three sets", "after dips 3 series of 10"
        j += 1  # "a partir de la", "from the"
    nth, end = s.at(j).name("scope"), j + 1
    first = int(nth) if nth is not None and nth.isdigit() else None
    if later and nth == "first" and s.at(j).text not in little("at_first"):
        first = 1  # "took 20 after the first set"
        if s.at(end).value in range(2, MOST_NAMED + 1) and (s.at(end).spelled or s.at(end + 1).has("sets", "sets")):
            first = int(s.at(end).value or 1)  # "no weight after the first two"
            end += 1 + s.at(end + 1).has("sets", "sets")
    if first is None and s.at(j).has("sets", "sets") and s.at(j + 1).kind == "num":
        first, end = int(s.at(j + 1).value or 0), j + 2
    elif first is None and later and s.at(j).kind == "num" and s.at(j + 1).has("sets", "sets"):
        first, end = int(s.at(j).value or 0), j + 2
    if not first or first > MOST_NAMED or (later and not _changes(s, i, end)):
        return None
    counted = s.at(end).has("times", "of") and s.at(end + 1).kind == "num" and s.at(end + 2).kind == "move"
    if later and counted and s.at(end - 1).has("sets", "sets"):
        return None  # "4 sets of 6 dips and after 3 sets of 12 push-ups"
    return [Fact("scope", item.start, s.at(end - 1).end, ("from", first + later), {"text": item.text})], end


def _changes(s: Scanner, i: int, end: int) -> bool:
    """Whether a new value is told beside "after the second set", in the same clause: not that something hurt."""
    for step, at in ((-1, i - 1), (1, end)):
        for _ in range(REACH):
            one = s.at(at)
            if one.kind in ("nl", "end") or one.text in (",", ".", ";", "!", "?"):
                break
            if one.has("load", "none"):
                return True
            if one.kind == "num" and not s.at(at + 1).has("unit", "min") and s.unit_at(at + 1) not in ("sec", "min"):
                return True
            at += step
    return False


def _in_order(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "La 3ª se me fue a 4": the third set of a day with a plan, where no word for sets or reps is told."""
    number, ending, after = s.at(i), s.at(i + 1), s.at(i + 2)
    led = s.at(i - 1).text.split(" ")[-1] in little("article", "article_or_of")
    if (
        not s.planned
        or not led
        or number.kind != "num"
        or number.spelled
        or number.value not in range(1, MOST_RANGE + 1)
    ):
        return None
    ordered = ending.text in little("ordinal_ending") and ending.text.isalpha() and not ending.space
    if not ordered or after.has("sets") or after.has("reps") or after.text in little("other_time"):
        return None
    return [Fact("scope", number.start, ending.end, int(number.value or 0), {"text": ""})], i + 2


def _in_figures(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "En la 3 y la 4 saqué 2", "in der 3 nur 2": sets of the plan by their number, before what they came to."""
    if not s.planned or s.at(i).text not in little("in_a_set"):
        return None
    which: list[int] = []
    j = i + 1
    while s.at(j).text in little("the", "article") and s.at(j + 1).kind == "num" and not s.at(j + 1).spelled:
        which.append(int(s.at(j + 1).value or 0))
        j += 2
        if not (s.at(j).has("sep", "and") or s.at(j).text == ","):
            break
        j += 1 + (s.at(j + 1).text in little("in_a_set"))
    end = s.at(j - 1)
    told = s.at(j).has("scheme", "got") or s.at(j).has("plan", "only")
    if len(which) == 1 and s.at(j).has("plan", "by", "turned_to", "took"):
        return [Fact("scope", s.at(i).start, end.end, which[0], {"numbered": True})], j  # "en la 4 quité discos"
    if not told or end.kind != "num" or not which or max(which) > MOST_RANGE or s.at(j + 1).value is None:
        return None
    value = which[0] if len(which) == 1 else ("these", tuple(which))
    return [Fact("scope", s.at(i).start, end.end, value, {"numbered": True})], j
