"""The word for a set, and the number behind it: "sets of 5", "sets 2 and 3", "set 4:"."""

from __future__ import annotations

from bot.reading.facts import Entry, Fact
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.tries import MOST_TRIES

LEAST_IN_TURN = 3  # numbers of a list behind "set"
MOST_NAMED = 20  # the highest number of a set


def _before_is_number(s: Scanner, i: int) -> bool:
    return s.at(i - 1).value is not None


def set_word(s: Scanner, i: int, plural: bool) -> tuple[list[Fact], int] | None:
    """ "sets of 5", "sets 2 and 3", "set 4:": so many a set, or which set."""
    item, j = s.at(i), i + 1
    if item.has("times", "x") and not _before_is_number(s, i):
        return [Fact("word", item.start, item.end, item.text, {"noise": True})], j  # "heute mal mit 15"
    weighed = s.unit_at(j + 2) in ("kg", "lb") or not s.whole(s.at(j + 1).value or 0.0)
    loaded = s.at(j).has("load", "at") and weighed  # "a back-off set with 10 kilos for 8", "sets with 12.5"
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
    both = s.at(j + 1).text in ("+", "&", "/") or s.at(j + 1).has("sep", "and")
    both = both and s.at(j).kind == s.at(j + 2).kind == "num" and s.whole(s.at(j).value or 0.5)
    both = both and not s.at(j + 3).has("reps") and s.at(j + 3).text not in ("/", ",")
    if both and s.at(j + 2).value == (s.at(j).value or 0) + 1:
        which = (int(s.at(j).value or 0), int(s.at(j + 2).value or 0))
        return [Fact("scope", item.start, s.at(j + 2).end, ("these", which))], j + 3  # "Satz 3+4 mit 20"
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
