"""Lists of numbers: "5,5,4", "20-18-15", "12s 10s 9s", "2+2+1", "15, 17.5, 20 kg"."""

from __future__ import annotations

from typing import Any

from bot.reading.facts import Entry, Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner

MOST_LIST = 60
MOST_PLUS = 4  # reps added after a breath; a load would be more
LEAST_LOAD = 15  # numbers from it on, before "singles", are loads
LEAST_ROW = 10  # of a row of loads whose last number alone has its unit
FIGURES_OF_TEMPO = (3, 4)


MOST_HOLDS = 10  # that one number counts: "10 20 second hangs"
FAR_LONGER = 3
FRACTIONS = ([3, 4], [1, 2], [2, 3], [1, 3])  # so far a rep went


def listed(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "5,5,4", "5/5/4", "20-18-15", "12s 10s 9s", "2+2+1", "15, 17.5, 20 kg"."""
    numbers: list[tuple[float, str | None, Item]] = []
    marks: list[str] = []
    ends: list[int] = []
    side_first = s.at(i - 1).has("side") or (s.at(i - 1).text == ":" and s.at(i - 2).has("side"))
    paused = _clusters(s, i)
    if paused is not None:
        return paused
    j = i
    reps_said = False
    unsure: set[int] = set()  # "12, 10, 8 or 9": the places of numbers that may be another
    while len(numbers) < MOST_LIST:
        item = s.at(j)
        if item.kind != "num" or item.value is None:
            break
        if item.spelled and item.value == 1 and numbers == [] and not s.at(j + 1).spelled:
            break
        if item.text in little("a") and numbers == [] and s.at(j + 1).kind == "num":
            break  # "eine neun von zehn"
        if item.spelled and item.value == 1 and s.at(j + 1).kind == "num" and not s.at(j + 1).spelled:
            break  # "one 20 and one 5"
        if marks[-1:] == [" "] and item.text in little("such_a_one") and not numbers[-1][2].spelled:
            break  # "the 15 one"
        after = j + 1
        unit = s.unit_at(after)
        if unit in ("kg", "lb", "sec") or unit == "min":
            after += 1
        elif unit == "other":
            break
        else:
            unit = None
        nxt = s.at(after)
        if unit in ("kg", "lb") and len(numbers) == 1 and s.at(i - 1).has("side", "per"):
            break  # "je 3, 25 kg"
        if unit in ("kg", "lb") and reps_said:
            break  # "5 reps, 15 kg"
        if (
            unit in ("sec", "min")
            and numbers
            and numbers[-1][1] is None
            and (nxt.has("noise", "rest") or s.rest_paused(i))
        ):
            break  # "8, 20 sec of rest, 3"
        if numbers and (
            (nxt.has("times", "x") and s.at(after + 1).kind in ("num", "move"))
            or nxt.has("sets")
            or (nxt.has("reps") and not _ends_list(s, after))
            or (nxt.has("side", "left", "right") and not side_first and not _of_side(s, after, marks))
            or nxt.has("effort", "rir")
            or nxt.has("unit", "percent")
            or (nxt.kind == "move" and marks[:1] == [","] and _after_movement(s, i) and not _own_list(s, after, item))
            or (unit in ("kg", "lb") and numbers[-1][1] is None and marks[-1:] == [" "] and not _alike(numbers, item))
            or (
                unit in ("kg", "lb") and numbers[-1][1] is None and marks[-1] == "/" and "," in marks
            )  # "8,8 / 10 kg 6,6"
            or (nxt.has("count") and min(item.value, *(one[0] for one in numbers)) < LEAST_LOAD)
            or (nxt.text.isalpha() and not nxt.space and nxt.text in little("ordinal_ending"))
            or (nxt.text == "." and s.at(after + 1).has("sets", "sets"))  # "1. Satz 6, 2. Satz 5"
            or (bool(numbers) and nxt.text in little("a_miss"))
            or (nxt.text in little("out_of") and s.at(after + 1).text in little("those"))  # "5, 5, 5, 2 of those …"
            or (bool(numbers) and nxt.text in little("of_those_sets"))
            or _times_in_doubt(s, after)  # "5 reps, 6 or 7 times"
            or (reps_said and nxt.text in little("times_after"))  # "five reps, four times"
        ):
            break
        if nxt.has("reps") and not numbers and s.at(after + 1).text != ",":
            break
        if unit in ("sec", "min") and marks[-1:] == [","] and set(marks[:-1]) - {","} and numbers[-1][1] is None:
            break  # "5 4 4, 10 sec hang"
        if numbers and unit in ("sec", "min") and nxt.has("noise", "rest"):
            break  # "10, 15s breather, 4"
        numbers.append((item.value, unit, item))
        ends.append(after)
        if s.at(after).has("reps"):
            reps_said = True
            after += 1
            ends[-1] = after
        other = s.or_other(after) if unit is None and s.at(after).has("sep", "or") else None
        if other is not None and not s.at(other + 1).has("times", "x"):
            goes_on = s.at(other + 1).text in (",", "/") and s.at(other + 2).kind == "num"
            if (len(numbers) < 2 and not goes_on) or s.unit_at(other + 1) is not None or s.at(other + 1).has("sets"):
                break
            unsure.add(len(numbers) - 1)
            after = ends[-1] = other + 1 + s.at(other + 1).has("reps")
            if not goes_on:
                break
        mark = s.at(after)
        if mark.text in (",", "/", "-", "+") and s.at(after + 1).kind == "num":
            if mark.text in ("-", "+") and s.at(after).space and not s.at(after + 1).space:
                break  # "5 +20"
            if mark.text == "-" and unit is None and len(marks) and marks[-1] not in ("-",):
                break
            if mark.text == "+" and marks and set(marks) != {"+"}:
                break  # "9/9/8 + 32"
            if mark.text == "," and ((len(marks) > 1 and set(marks) == {"/"}) or set(marks) == {"+"}):
                break  # "8 / 3 / 2, 15 sec each"
            marks.append(mark.text)
            j = after + 1
        elif mark.has("load", "plus") and s.unit_at(after + 2) in ("kg", "lb"):
            break
        elif mark.has("sep", "and") and s.at(after + 1).kind == "num":
            goes_on = s.at(after + 2).kind == "num" or (
                s.at(after + 2).text in (",", "/") and s.at(after + 3).kind == "num"
            )
            if set(marks) == {"+"} or (goes_on and len(numbers) > 2 and set(marks) <= {",", " ", "/"}):
                break  # "2+1+1 and 2+1+1", "4 4 4 4 and 8 8 8": two lists
            marks.append("&")
            j = after + 1
        elif mark.text == "," and s.at(after + 1).has("sep", "and") and s.at(after + 2).kind == "num":
            marks.append(",")
            j = after + 2
        elif mark.kind == "num":
            marks.append(" ")
            j = after
        else:
            break
    marks = marks[: max(0, len(numbers) - 1)]
    if len(numbers) < 2:
        return None
    if [number[0] for number in numbers] in FRACTIONS and s.at(i - 1).text in little("perhaps"):
        return [Fact("word", s.at(i).start, s.at(ends[-1] - 1).end, None, {"noise": True})], ends[-1]  # "about 3/4 up"
    if marks == ["+"] and numbers[1][0] > max(numbers[0][0], MOST_PLUS):
        return None  # "5+10": reps and their load; nobody does more after a breath
    if len(numbers) == 2 and marks == ["-"]:
        return None  # a range
    if "/" in marks and set(marks[0::2]) == {"/"} and len(numbers) % 2 == 0 and set(marks[1::2]) <= {",", "&", " "}:
        pairs: list[Entry] = []
        for at in range(0, len(numbers), 2):
            pairs += [Entry(int(numbers[at][0]), side="left"), Entry(int(numbers[at + 1][0]), side="right")]
        if len(numbers) > 2:
            span = (numbers[0][2].start, s.at(ends[-1] - 1).end)
            return [Fact("rows", span[0], span[1], pairs, {"list": True})], ends[-1]
    if len(set(marks)) > 2 or ("+" in marks and set(marks) != {"+"}):
        return None
    if len(numbers) == 2 and marks == ["&"] and numbers[0][1] is None and numbers[1][1] is None:
        return None
    if len(numbers) == 2 and marks == ["/"] and numbers[1][0] == 10 and numbers[0][0] != 10:
        return None  # "7/10" is a score
    if len(numbers) == 2 and marks == ["/"] and s.at(ends[1]).text in little("would"):
        return None  # "10/10 would do it again"
    start, end = numbers[0][2].start, s.at(ends[len(numbers) - 1] - 1).end
    if s.has_tempo and len(numbers) in FIGURES_OF_TEMPO and set(marks) == {"-"} and max(n[0] for n in numbers) < 10:
        return [Fact("word", start, end, None, {"noise": True})], ends[-1]  # "tempo pull-ups 3-1-3"
    values = [value for value, _, _ in numbers]
    units = [unit for _, unit, _ in numbers]
    last = units[-1]
    units = [unit or last for unit in units]
    heavy = s.at(ends[-1]).has("count") and min(values) >= LEAST_LOAD and not any(units)
    if all(unit in ("kg", "lb") for unit in units) or heavy:  # "40 42.5 45 singles"
        return [Fact("loads", start, end, [s.kg(v, u) for v, u in zip(values, units, strict=True)])], ends[-1]
    if all(unit in ("sec", "min") for unit in units):
        if _counts_holds(s, numbers, marks, ends[-1]):  # "three 30-second hangs"
            held = Entry(hold_s=values[1] * (60 if last == "min" else 1))
            return [Fact("rows", start, end, [held] * int(values[0]), {})], ends[-1]
        rows = [Entry(hold_s=v * (60 if u == "min" else 1)) for v, u in zip(values, units, strict=True)]
        return [Fact("rows", start, end, rows, {"list": True})], ends[-1]
    if any(unit is not None for unit in units):
        return None
    if any(value != int(value) for value in values) or any(item.comma for _, _, item in numbers):
        return [Fact("loads", start, end, [s.kg(v) for v in values], {"unsure": True})], ends[-1]
    rows = [Entry(int(v)) for v in values]
    for place in unsure:
        rows[place] = Entry(ask="reps")
    more = _plus(s, ends[-1], rows[-1].reps or 0)
    if more is not None and "+" not in marks:
        told = Fact("rows", start, end, rows, {"list": True, "mark": marks[0], "values": values})
        return [told, *more[0]], more[1]
    note: dict[str, Any] = {"list": True, "mark": marks[0], "values": values}
    return [Fact("rows", start, end, rows, note)], ends[-1]


def _counts_holds(s: Scanner, numbers: list[tuple[float, str | None, Item]], marks: list[str], end: int) -> bool:
    """Whether the first of two numbers counts the holds that the second is the time of: "two 20s l-sits"."""
    if len(numbers) != 2 or marks != [" "] or numbers[0][1] is not None:
        return False
    many, held = numbers[0], numbers[1]
    if many[0] not in range(2, MOST_HOLDS + 1):
        return False
    seconds = held[0] * (60 if held[1] == "min" else 1)
    named = s.at(end).kind == "move" or s.at(end).text in little("hold")
    # written apart, or far shorter than the other: nobody lists holds of 3 and 30 seconds
    return many[2].spelled != held[2].spelled or seconds >= FAR_LONGER * many[0] or (named and seconds > many[0])


def _times_in_doubt(s: Scanner, i: int) -> bool:
    other = s.or_other(i)
    return other is not None and s.at(other + 1).text in little("times_after")


def _alike(numbers: list[tuple[float, str | None, Item]], last: Item) -> bool:
    """ "10 10 12.5 12.5kg": numbers that may all be loads, as the last one is."""
    values = [value for value, _, _ in numbers]
    return len(values) > 1 and min(values) >= LEAST_ROW and (last.value or 0) <= 2 * min(values)


def _clusters(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "4+1 4+1 3+2": each a set and what was done after a breath; None where it is not so at least twice."""
    found: list[Fact] = []
    j = end = i
    while s.at(j).kind == "num" and (s.at(j).value or 0.5) % 1 == 0:
        more = _plus(s, j + 1, int(s.at(j).value or 0))
        if more is None:
            break
        rows = [Entry(int(s.at(j).value or 0)), *more[0][1].value]
        found.append(Fact("rows", s.at(j).start, more[0][1].end, rows, {"list": True, "mark": "+"}))
        end = more[1]
        j = end + (s.at(end).text in (",", "/"))
    return (found, end) if len(found) > 1 else None


def _plus(s: Scanner, at: int, last: int) -> tuple[list[Fact], int] | None:
    """ "5, 5, 4+1": one more after a breath, where a load would be told apart from the number."""
    sign, number = s.at(at), s.at(at + 1)
    tight = sign.has("load", "plus") and not sign.space and number.kind == "num" and not number.space
    value = number.value or 0.0
    if not tight or value not in range(1, MOST_PLUS + 1) or value > last or s.unit_at(at + 2) is not None:
        return None
    link = Fact("link", sign.start, sign.end, "straight")
    rows = [Entry(int(value))]
    return [link, Fact("rows", number.start, number.end, rows, {"one": True, "reps": True})], at + 2


def _of_side(s: Scanner, side: int, marks: list[str]) -> bool:
    """Whether the side behind a list is the whole list's: "3/3/2 left, right all fine", and not "5, 3 left 2 right"."""
    if len(marks) < 2 or len(set(marks)) > 1 or marks[0] not in ("/", ",", " "):
        return False
    after = s.at(side + 1)
    if after.text in (",", ";") or after.has("sep", "and"):
        after, side = s.at(side + 2), side + 1
    return not (after.kind == "num" and s.at(side + 2).has("side"))


def _own_list(s: Scanner, move: int, last: Item) -> bool:
    """Whether the movement has a list behind it, so that the number before it ends the list of the one named before.

    "Chins 6,6,6,6 ring rows 12,12,12" against "pull-ups 5, 5, 5, 8 dips".
    """
    first = s.at(move + 1)
    listed = s.at(move + 2).text in (",", "/") and s.at(move + 3).kind == "num"
    return first.kind == "num" and (listed or not last.space)


def _after_movement(s: Scanner, i: int) -> bool:
    """Whether the sentence has named a movement before: "pull-ups 5, 5, 5, 8 dips" against "5, 5, 5 pull-ups"."""
    for place in range(i - 1, -1, -1):
        item = s.at(place)
        if item.kind == "move":
            return True
        if item.kind == "nl" or item.text in (".", "!", "?", ";"):
            return False
    return False


def _ends_list(s: Scanner, after: int) -> bool:
    return s.at(after + 1).text not in (",", "/") and s.at(after + 1).kind != "num"
