"""Efforts: "RPE 8", "2 RIR", "9 out of ten", "one more in the tank"."""

from __future__ import annotations

from bot.reading.facts import Entry, Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner

LEAST_LISTED = 5  # no effort below it stands in a list of efforts
MOST_EFFORT = 10
NAMED_SETS = frozenset({"first", "last", "2", "3", "4", "5", "6"})
BETWEEN = (":", "=", "-")  # signs between a set and its effort
MOST_LED = 5  # words and signs of "on each set:"
MOST_LISTED = 60  # efforts; a longer row is no list of them
MOST_SPREAD = 3  # words of "ranged from"
MOST_HEDGES = 5  # words of "war heute eher schon"
MOST_LEFT = 6  # reps left; who has more left does not count them


def effort(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    compared = _rather_than(s, i)
    if compared is not None:
        return compared
    item = s.at(i)
    if item.has("effort", "almost"):
        return [], i + 1
    if item.has("effort", "ten"):
        return [Fact("effort", item.start, item.end, 10.0, {"words": True})], i + 1
    if item.has("effort", "nine"):
        return [Fact("effort", item.start, item.end, 9.0)], i + 1
    if item.has("effort", "could"):
        j = i + 1
        while (s.at(j).kind == "word" and j < i + 3) or s.at(j).text in little("perhaps"):
            j += 1
        number = s.at(j)
        would = any(word in little("would_have") for word in item.text.split())
        k = j + 2 if would and s.at(j + 1).has("reps") else j + 1  # "hätte ich noch zwei Wiederholungen geschafft"
        if number.value is not None and number.value <= 5 and s.at(k).has("effort", "more", "rir"):
            return [Fact("effort", item.start, s.at(k).end, 10.0 - number.value)], k + 1
        could = number.kind == "num" and would
        if could and s.at(j + 1).text in (".", ",", "!", ";", ")") and (s.at(i - 1).text in (",", ".", "(") or i == 0):
            # "3 at 37.5, could have done 4": no set, and no effort told
            return [Fact("word", item.start, number.end, None, {"noise": True})], j + 1
        after = s.at(j + 1)
        other = after.has("effort") or after.has("unit") or after.has("reps") or after.has("sets") or after.has("times")
        rated = number.value is not None and 5 <= number.value <= 10 and not number.spelled
        if rated and item.text in little("felt_like") and not other and after.kind != "num":
            return _effort_value(s, i, j, rir=False)  # "felt like 8"
    if item.has("effort", "between") and s.at(i + 2).has("sep", "and") and s.at(i + 3).kind == "num":
        low, high = s.at(i + 1).value or 0, s.at(i + 3).value or 0
        after = s.at(i + 4)
        rated = "rpe" in item.text or (low >= 5 and not after.has("reps") and not after.has("unit"))
        if rated and 0 < low < high <= 10:
            return [Fact("effort_range", item.start, s.at(i + 3).end, (low, high), {"between": True})], i + 4
    if item.has("effort", "rpe") or (item.has("load", "sign") and s.at(i + 1).has("effort", "rpe")):
        j = i + 1 if item.has("effort", "rpe") else i + 2
        while s.at(j).text in little("before_effort"):
            j += 1
        one = _of_named_set(s, i, j) or _of_named_side(s, j)
        return one or _spread(s, i, j) or _by_set(s, i, j) or _effort_value(s, i, j, rir=False)
    if item.text in little("was"):
        a = i + 1
        while a < i + MOST_HEDGES and (s.at(a).text in little("rather") or s.at(a).kind == "claim"):
            a += 1  # "was more of a 9", "war heute eher ne 9"
        after = s.at(a + 2)
        rated = s.at(a).text in little("a") and 5 <= (s.at(a + 1).value or 0) <= 10
        if rated and not after.has("reps") and not after.has("unit") and not after.has("sets") and after.text != "/":
            return _effort_value(s, i, a + 1, rir=False)
    if (
        item.has("effort", "before_rir")
        and s.at(i + 1).kind == "num"
        and not s.at(i + 2).has("sets")
        and s.at(i + 2).kind != "move"
    ):
        return _effort_value(s, i, i + 1, rir=True)
    return None


def _rather_than(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "More of a 9 than an 8", "eher ne 9 als ne 8", "más un 9 que un 8": the first of the two."""
    j = i
    while j < i + MOST_HEDGES and s.at(j).text in little("rather", "rather_a"):
        j += 1
    first, than = s.at(j), s.at(j + 1)
    if j == i or not LEAST_LISTED <= (first.value or 0) <= MOST_EFFORT or than.text not in little("rather_than"):
        return None
    k = j + 2
    while s.at(k).text in little("a", "rather_a"):
        k += 1
    other = s.at(k)
    rated = LEAST_LISTED - 1 <= (other.value or 0) <= MOST_EFFORT and other.value != first.value
    after = s.at(k + 1)
    if not rated or after.has("reps") or after.has("unit") or after.has("sets") or after.has("times"):
        return None
    return [Fact("effort", s.at(i).start, other.end, float(first.value or 0))], k + 1


def _of_named_set(s: Scanner, i: int, j: int) -> tuple[list[Fact], int] | None:
    """ "RPE beim letzten 9,5", "rpe on the last set: 9": the set stands between the word and its number."""
    which = s.at(j)
    name = which.name("scope")
    if name is None or name not in NAMED_SETS:
        return None
    k = j + 1 + s.at(j + 1).has("sets", "sets")
    while s.at(k).text in BETWEEN or s.at(k).text in little("was", "before_number"):
        k += 1
    told = _effort_value(s, i, k, rir=False) if s.at(k).kind == "num" else None
    if told is None or told[0][0].kind != "effort":
        return None
    scope = Fact("scope", which.start, which.end, name if name in ("first", "last") else int(name), {"text": ""})
    return [scope, Fact("effort", s.at(k).start, s.at(told[1] - 1).end, told[0][0].value)], told[1]


def _of_named_side(s: Scanner, j: int) -> tuple[list[Fact], int] | None:
    """ "Rpe left 8, right 7": the side stands between the word and its number."""
    side, number = s.at(j), s.at(j + 1)
    if not side.has("side", "left", "right") or not LEAST_LISTED <= (number.value or 0) <= MOST_EFFORT:
        return None
    told = _effort_value(s, j + 1, j + 1, rir=False)
    first = Fact("side", side.start, side.end, side.name("side"), {"plain": False})
    return ([first, *told[0]], told[1]) if told is not None else None


def _effort_value(s: Scanner, i: int, j: int, rir: bool) -> tuple[list[Fact], int] | None:
    number = s.at(j)
    if number.value is None or number.kind not in ("num", "known"):
        return None
    between = s.at(i - 1).has("effort", "between") or s.at(i + 1).has("effort", "between")
    between = between or any(f"{one} " in f"{s.at(i).text} " for one in little("from_effort"))
    between = between or (s.at(j - 1).text in little("from") and s.at(j + 1).text in little("changed_to"))
    between = between or s.at(i - 1).text in little("from") or _of_the_sets(s, i)
    low = high = number.value
    end = j + 1
    ranged = False
    joined = s.at(end)
    place = s.or_other(end) or end + 1
    told, k = _listed(s, j, rir)
    if len(told) > (1 if joined.text == "," else 2):
        return [Fact("efforts", s.at(i).start, s.at(k - 1).end, [10.0 - one for one in told] if rir else told)], k
    if (
        joined.text == "/"
        or joined.text in little("until", "range", "changed_to")
        or joined.has("sep", "and", "or")
        or joined.has("times", "to")
    ) and s.at(place).kind == "num":
        second = s.at(place).value or 0
        if joined.text == "/" and _rates_next(s, place + 1):
            pass  # "6 @ rpe 7 / 6 @ rpe 8": reps of the next set
        elif not (joined.text == "/" and second == 10):
            if joined.text == "/" and LEAST_LISTED <= second <= low:
                return [Fact("ask", s.at(i).start, s.at(end + 1).end, "rpe")], end + 2  # "rpe 7 / 6": of what?
            if second > low and second <= 10:
                high, end, ranged = second, place + 1, True
        else:
            end += 2
    if s.at(end).text in little("score_ending") and not s.at(end).space:
        end += 1  # "rpe 8ish"
    if s.at(end).has("effort", "after", "rpe") and not s.at(end).has("scope") and s.at(end + 1).kind != "num":
        end += 1
    start, stop = s.at(i).start, s.at(end - 1).end
    if s.at(end).text == "%":
        return None  # "como un 80% del máximo"
    if rir:
        low, high = 10 - high, 10 - low
    if not 0 <= low <= 10 or not 0 <= high <= 10:
        return [Fact("ask", start, stop, "rpe")], end
    if ranged:
        return [Fact("effort_range", start, stop, (low, high), {"between": between})], end
    return [Fact("effort", start, stop, low)], end


def _spread(s: Scanner, i: int, j: int) -> tuple[list[Fact], int] | None:
    """ "RPE ranged from 6 to 8", "rpe went 7 to 9": over the sets, and of none of them for certain."""
    k = j
    while k < j + MOST_SPREAD and s.at(k).text in little("ranged", "upward"):
        k += 1
    told = _effort_value(s, i, k, rir=False) if k > j else None
    if told is not None and told[0][0].kind == "efforts":
        return told  # "rpe crept up 7 7 8 8 9"
    if told is None or told[0][0].kind != "effort_range":
        return None
    told[0][0].note["between"] = True
    return told


def _by_set(s: Scanner, i: int, j: int) -> tuple[list[Fact], int] | None:
    """ "RPEs set by set: 7, 7.5, 8, 8", "rpe in order 7 7 8 9": that there is one a set is said before the list."""
    k = j
    while k < j + MOST_LED and (
        s.at(k).has("scope", "all") or s.at(k).text in BETWEEN or s.at(k).text in little("before_efforts")
    ):
        k += 1
    number = s.at(k)
    if k == j or number.kind != "num" or not LEAST_LISTED <= (number.value or 0) <= MOST_EFFORT:
        return None
    told, end = _listed(s, k, rir=False)
    if len(told) == 1 and s.at(j).has("scope", "all") and not s.at(end).has("unit") and not s.at(end).has("reps"):
        every = Fact("scope", s.at(j).start, s.at(j).end, "all", {"names": []})
        return [every, Fact("effort", s.at(i).start, number.end, told[0])], end  # "rpe on every set: 8"
    if len(told) == 1:
        return None
    return [Fact("efforts", s.at(i).start, s.at(end - 1).end, told)], end


def _of_the_sets(s: Scanner, i: int) -> bool:
    """ "The sets were rpe 6 to 8": what follows is of several sets."""
    sets = s.at(i - 2)
    many = sets.has("sets", "sets") and sets.text.split()[-1] not in little("one_set")
    return i > 1 and many and s.at(i - 1).text in little("feels")


def _listed(s: Scanner, j: int, rir: bool) -> tuple[list[float], int]:
    """The efforts, or the reps left, that stand in a row from `j`, and where it ends: "8/8/9", "7, 8, 9", "3 2 2 1"."""
    low, high = (0, MOST_LEFT) if rir else (LEAST_LISTED, 10)
    told, k = [s.at(j).value or 0.0], j + 1
    mark = s.at(k).text if s.at(k).text in ("/", ",", "-") else ""
    while len(told) < MOST_LISTED and (
        s.at(k).text == mark or (not mark and s.at(k).kind == "num") or (len(told) > 1 and s.at(k).has("sep", "and"))
    ):
        last = s.at(k).has("sep", "and")  # "7, 7, 8 and 9"
        step = 1 if mark or last else 0
        number, after = s.at(k + step), s.at(k + step + 1)
        if number.kind != "num" or number.value is None:
            break
        pieces = _two(number) if mark == "," and len(told) > 1 and not rir else ()
        if pieces and not last:
            told.extend(pieces)  # "8,8.5,9,9": the last comma is no decimal
            return told, k + step + 1
        if not low <= number.value <= high:
            break
        if after.has("times", "x") or after.has("sets") or after.has("reps") or after.has("unit"):
            break
        if _rates_next(s, k + step + 1):
            break  # "10 at rpe 7, 10 at rpe 8": reps of the next set
        if (mark == "," or last) and after.kind in ("word", "move"):
            break
        told.append(number.value)
        k += step + 1
        if last:
            break
    return told, k


def _rates_next(s: Scanner, i: int) -> bool:
    """Whether a word for an effort stands at `i` or behind an "at" there, and its number follows."""
    j = i + (s.at(i).has("load", "at", "sign"))
    while s.at(j).has("effort", "rpe"):
        j += 1
        if s.at(j).kind == "num":
            return True
    return False


def _two(item: Item) -> tuple[float, ...]:
    """The two efforts of "9,9" at the end of a list; none where it is one number for sure."""
    pieces = [piece.strip() for piece in item.text.split(",")] if item.comma else []
    values = tuple(float(piece) for piece in pieces if piece.isdigit())
    return values if len(values) == 2 and all(LEAST_LISTED <= one <= 10 and one > 5 for one in values) else ()


def effort_after(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "2 RIR", "8 rpe", "9 out of ten", "one more in the tank", "1-2 in reserve"."""
    number = s.at(i)
    if number.value is None:
        return None
    told, k = _listed(s, i, rir=False) if LEAST_LISTED <= number.value <= MOST_EFFORT else ([], i)
    worded = s.at(k).has("effort", "rpe", "after") and s.at(k + 1).kind != "num"
    if worded and (len(told) > 2 or (len(told) == 2 and told[1] != MOST_EFFORT)) and s.at(i + 1).text in ("/", ","):
        return [Fact("efforts", number.start, s.at(k).end, told)], k + 1  # "7/7/8/8/9 rpe"
    j = i + 1
    low = high = number.value
    other = s.or_other(j) or (j + 1 if s.at(j).text in little("until") and s.at(j + 1).kind == "num" else None)
    if other is not None:
        high = s.at(other).value or high
        j = other + 1
    if s.at(j).text == "/" and s.at(j + 1).value == 10 and s.at(j + 2).has("effort", "after"):
        j += 2
    if s.at(j).has("reps") and s.at(j + 1).has("effort", "rir"):
        j += 1  # "two repetitions in reserve"
    elif s.at(j).has("reps") and s.at(j + 1).text == "." and s.at(j + 2).has("effort", "rir"):
        j += 2  # "eine Wdh. wäre noch gegangen"
    if s.at(j).text in little("score_ending") and not s.at(j).space:
        j += 1  # "8ish rpe"
    mark = s.at(j)
    within = s.at(j + 1).has("times", "within", "of") and s.at(j + 2).kind == "move"
    moved = s.at(j + 1).kind == "move" or within
    few = high < LEAST_LISTED and (moved or s.at(i - 1).has("scheme", "got"))
    of_ten = (
        mark.has("effort", "after") and mark.end - mark.start > 1 and mark.text.split()[0] in little("sets_of_reps")
    )
    if few and of_ten and not s.planned and not s.at(i - 1).has("scheme", "got") and s.whole(high) and low == high:
        rows = [Entry(10) for _ in range(int(high))]
        return [Fact("rows", number.start, mark.end, rows, {"plain": True})], j + 1  # "tres de diez de curl"
    if mark.has("effort", "after") and mark.end - mark.start > 1 and (s.at(j + 1).kind == "move" or few):
        return [Fact("ask", number.start, mark.end, "sets")], j + 1  # "tres de diez flexiones": no score
    if mark.has("effort", "after") and mark.end - mark.start > 1 and number.spelled and high == 1:
        return None  # "un disco de 20 y uno de 10"
    if mark.has("effort", "after") and high > 10:
        return None  # "+20 rpe …"
    if mark.has("effort", "rir"):
        if high > MOST_LEFT:
            return None
        start, stop = number.start, mark.end
        if high != low:
            return [Fact("effort_range", start, stop, (10 - high, 10 - low))], j + 1
        return [Fact("effort", start, stop, 10 - low)], j + 1
    if mark.has("effort", "after") and not (mark.has("effort", "rpe") and s.at(j + 1).kind == "num"):
        if not 0 <= high <= 10:
            return [Fact("ask", number.start, mark.end, "rpe")], j + 1
        if high != low:
            return [Fact("effort_range", number.start, mark.end, (low, high))], j + 1
        return [Fact("effort", number.start, mark.end, low)], j + 1
    return None
