"""Lists of numbers: "5,5,4", "20-18-15", "12s 10s 9s", "2+2+1", "15, 17.5, 20 kg"."""

from __future__ import annotations

from dataclasses import dataclass, field

from bot.reading.facts import Entry, Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner

LEGEND = 3  # items: "left/right"
MOST_LIST = 60
MOST_PLUS = 4  # reps added after a breath; a load would be more
LEAST_LOAD = 15  # numbers from it on, before "singles", are loads
LEAST_ROW = 10  # of a row of loads whose last number alone has its unit
FIGURES_OF_TEMPO = (3, 4)
MOST_HOLDS = 10  # that one number counts: "10 20 second hangs"
FAR_LONGER = 3
FRACTIONS = ([3, 4], [1, 2], [2, 3], [1, 3])  # so far a rep went: "about 3/4 up"


@dataclass
class Row:
    """Numbers in a row: each with its unit and its item, the marks between them, and where each ends."""

    first: int
    told: list[tuple[float, str | None, Item]] = field(default_factory=list)
    marks: list[str] = field(default_factory=list)
    ends: list[int] = field(default_factory=list)
    reps_said: bool = False
    unsure: set[int] = field(default_factory=set)  # "12, 10, 8 or 9": the places of numbers that may be another

    @property
    def values(self) -> list[float]:
        return [value for value, _, _ in self.told]

    @property
    def newest_unit(self) -> str | None:
        return self.told[-1][1] if self.told else None


def listed(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "5,5,4", "5/5/4", "20-18-15", "12s 10s 9s", "2+2+1", "15, 17.5, 20 kg"."""
    paused = _clusters(s, i)
    if paused is not None:
        return paused
    row = _gathered(s, i)
    if len(row.told) < 2:
        return None
    if row.values in FRACTIONS and s.at(i - 1).text in little("perhaps"):
        return [Fact("word", s.at(i).start, s.at(row.ends[-1] - 1).end, None, {"noise": True})], row.ends[-1]
    if row.marks == ["+"] and row.values[1] > max(row.values[0], MOST_PLUS):
        return None  # "5+10": reps and their load; nobody does more after a breath
    pairs = _pairs_of_sides(s, row)
    if pairs is not None:
        return [pairs], row.ends[-1] + (LEGEND if _legend(s, row.ends[-1]) else 0)
    if _is_no_list(s, row):
        return None
    return _facts(s, row)


def _gathered(s: Scanner, i: int) -> Row:
    row = Row(i)
    at: int | None = i
    while at is not None and len(row.told) < MOST_LIST and _goes_in(s, at, row):
        at = _taken(s, at, row)
    row.marks = row.marks[: max(0, len(row.told) - 1)]
    return row


def _unit(s: Scanner, at: int) -> tuple[str | None, int]:
    """The unit behind a number, and the place behind both."""
    unit = s.unit_at(at + 1)
    return (unit, at + 2) if unit in ("kg", "lb", "sec", "min") else (None, at + 1)


def _goes_in(s: Scanner, at: int, row: Row) -> bool:
    """Whether what stands here is one more number of the row."""
    item = s.at(at)
    if item.kind != "num" or item.value is None or s.unit_at(at + 1) == "other":
        return False
    follow = s.at(at + 1)
    if item.spelled and item.value == 1 and follow.kind == "num" and not follow.spelled:
        return False  # "one 20 and one 5"
    if item.spelled and item.value == 1 and follow.has("scope") and item.text in little("a", "an"):
        return False  # "5 5 4, plus ein vierter Satz"
    if not row.told and ((item.spelled and item.value == 1 and not follow.spelled) or _is_article(item, follow)):
        return False
    if row.marks[-1:] == [" "] and item.text in little("such_a_one") and not row.told[-1][2].spelled:
        return False  # "the 15 one"
    unit, after = _unit(s, at)
    if row.marks[-1:] == [","] and set(row.marks[:-1]) == {"-"} and s.at(after).text == "-":
        return False  # "1-2-3, 1-2-3": another ladder
    if unit == "sec" and len(row.told) == 1 and s.at(row.first - 1).has("times", "x"):
        return False  # "negatives x5, 8s each"
    if unit in ("kg", "lb") and (row.reps_said or (len(row.told) == 1 and s.at(row.first - 1).has("side", "per"))):
        return False  # "5 reps, 15 kg"; "je 3, 25 kg"
    if s.at(after).has("reps") and not row.told and s.at(after + 1).text != ",":
        return False
    if s.at(after).text in little("out_of") and s.at(after + 1).text in little("those"):
        return False  # "5, 5, 5, 2 of those paused"
    if _times_in_doubt(s, after):
        return False  # "5 reps, 6 or 7 times"
    return not row.told or not (
        _is_of_what_follows(s, after, item, row) or _is_of_another_kind(s, after, unit, item, row)
    )


def _times_in_doubt(s: Scanner, i: int) -> bool:
    other = s.or_other(i)
    return other is not None and s.at(other + 1).text in little("times_after")


def _is_article(item: Item, follow: Item) -> bool:
    """ "Eine neun von zehn"."""
    return item.text in little("a") and follow.kind == "num"


def _is_of_what_follows(s: Scanner, after: int, item: Item, row: Row) -> bool:
    """Whether the words behind a number take it away from the row: "5, 5, 3 sets"."""
    nxt, then = s.at(after), s.at(after + 1)
    return (
        (nxt.has("times", "x") and then.kind in ("num", "move"))
        or nxt.has("sets")
        or (nxt.has("reps") and not _ends_list(s, after))
        or (
            nxt.has("side", "left", "right")
            and not _side_first(s, row.first)
            and not _of_side(s, after, row.marks)
            and not _legend(s, after)
        )
        or nxt.has("effort", "rir")
        or nxt.has("unit", "percent")
        or (
            nxt.kind == "move"
            and row.marks[:1] == [","]
            and _after_movement(s, row.first)
            and not _own_list(s, after, item)
        )
        or (nxt.has("count") and min(item.value or 0, *row.values) < LEAST_LOAD)
        or (nxt.text.isalpha() and not nxt.space and nxt.text in little("ordinal_ending"))
        or (nxt.text == "." and then.has("sets", "sets"))  # "1. Satz 6, 2. Satz 5"
        or nxt.text in little("a_miss", "of_those_sets")
        or (row.reps_said and nxt.text in little("times_after"))  # "five reps, four times"
    )


def _legend(s: Scanner, at: int) -> bool:
    """ "2/1, 2/1 izq/der": which side is which, behind all pairs."""
    sides = [s.at(at).name("side"), s.at(at + 2).name("side")]
    return s.at(at + 1).text == "/" and sorted(filter(None, sides)) == ["left", "right"]


def _side_first(s: Scanner, first: int) -> bool:
    return s.at(first - 1).has("side") or (s.at(first - 1).text == ":" and s.at(first - 2).has("side"))


def _is_of_another_kind(s: Scanner, after: int, unit: str | None, item: Item, row: Row) -> bool:
    """Whether a number with its unit is no more of the row: a rest, a hold or a load behind reps."""
    nxt, behind = s.at(after), row.newest_unit is None
    if unit in ("kg", "lb") and behind:
        if row.marks[-1:] == [" "] and not _alike(row.told, item):
            return True
        return row.marks[-1] == "/" and "," in row.marks  # "8,8 / 10 kg 6,6"
    if unit not in ("sec", "min"):
        return False
    if nxt.has("noise", "rest") or (behind and s.rest_paused(row.first)):
        return True  # "8, 20 sec of rest, 3"; "10, 15s breather, 4"
    return behind and row.marks[-1:] == [","] and bool(set(row.marks[:-1]) - {","})  # "5 4 4, 10 sec hang"


def _taken(s: Scanner, at: int, row: Row) -> int | None:
    """Put a number into the row; where the next may stand."""
    unit, after = _unit(s, at)
    row.told.append((s.at(at).value or 0.0, unit, s.at(at)))
    if s.at(after).has("reps"):
        row.reps_said = True
        after += 1
    row.ends.append(after)
    other = s.or_other(after) if unit is None and s.at(after).has("sep", "or") else None
    if other is not None and not s.at(other + 1).has("times", "x"):
        goes_on = s.at(other + 1).text in (",", "/") and s.at(other + 2).kind == "num"
        if (len(row.told) < 2 and not goes_on) or s.unit_at(other + 1) is not None or s.at(other + 1).has("sets"):
            return None
        row.unsure.add(len(row.told) - 1)
        after = row.ends[-1] = other + 1 + s.at(other + 1).has("reps")
        if not goes_on:
            return None
    joined = _joined(s, after, unit, row.marks, len(row.told))
    if joined is None:
        return None
    row.marks.append(joined[0])
    return joined[1]


def _joined(s: Scanner, at: int, unit: str | None, marks: list[str], told: int) -> tuple[str, int] | None:
    """The mark that joins the next number to the row, and where that stands; None: the row ends here."""
    mark, then = s.at(at), s.at(at + 1)
    if mark.text in (",", "/", "-", "+") and then.kind == "num":
        apart = (
            (mark.text in ("-", "+") and mark.space and not then.space)  # "5 +20"
            or (mark.text == "-" and unit is None and bool(marks) and marks[-1] != "-")
            or (mark.text == "+" and bool(marks) and set(marks) != {"+"})  # "9/9/8 + 32"
            # "8 / 3 / 2, 15 sec each"
            or (mark.text == "," and ((len(marks) > 1 and set(marks) == {"/"}) or set(marks) == {"+"}))
        )
        return None if apart else (mark.text, at + 1)
    if mark.has("load", "plus") and s.unit_at(at + 2) in ("kg", "lb"):
        return None
    if mark.has("sep", "and") and then.kind == "num":
        goes_on = s.at(at + 2).kind == "num" or (s.at(at + 2).text in (",", "/") and s.at(at + 3).kind == "num")
        if set(marks) == {"+"} or (goes_on and told > 2 and set(marks) <= {",", " ", "/"}):
            return None  # "2+1+1 and 2+1+1", "4 4 4 4 and 8 8 8": two lists
        return "&", at + 1
    if mark.text == "," and then.has("sep", "and") and s.at(at + 2).kind == "num":
        return ",", at + 2
    return (" ", at) if mark.kind == "num" else None


def _pairs_of_sides(s: Scanner, row: Row) -> Fact | None:
    """ "3/2, 3/3": left and right of each set."""
    marks, many = row.marks, len(row.told)
    paired = "/" in marks and set(marks[0::2]) == {"/"} and set(marks[1::2]) <= {",", "&", " "}
    paired = paired or (s.one_sided and s.planned and set(marks[0::2]) == {"&"} and set(marks[1::2]) == {","})
    if not paired or many % 2 or many <= 2:
        return None
    sides = (
        ("right", "left") if _legend(s, row.ends[-1]) and s.at(row.ends[-1]).has("side", "right") else ("left", "right")
    )
    pairs = [Entry(int(value), side=sides[at % 2]) for at, value in enumerate(row.values)]
    return Fact("rows", row.told[0][2].start, s.at(row.ends[-1] - 1).end, pairs, {"list": True})


def _is_no_list(s: Scanner, row: Row) -> bool:
    marks, values = row.marks, row.values
    if len(set(marks)) > 2 or ("+" in marks and set(marks) != {"+"}):
        return True
    if len(values) != 2:
        return False
    if marks == ["-"] or (marks == ["&"] and row.told[0][1] is None and row.told[1][1] is None):
        return True  # a range; two numbers
    score = values[1] == 10 and values[0] != 10  # "7/10"
    return marks == ["/"] and (score or s.at(row.ends[1]).text in little("would"))  # "10/10 would do it again"


def _facts(s: Scanner, row: Row) -> tuple[list[Fact], int] | None:
    """What a row tells by its units: loads, holds or reps; None where they are mixed."""
    start, behind = row.told[0][2].start, row.ends[-1]
    end, values, marks = s.at(behind - 1).end, row.values, row.marks
    if s.has_tempo and len(values) in FIGURES_OF_TEMPO and set(marks) == {"-"} and max(values) < 10:
        return [Fact("word", start, end, None, {"noise": True})], behind  # "tempo pull-ups 3-1-3"
    units = [unit or row.newest_unit for _, unit, _ in row.told]
    heavy = s.at(behind).has("count") and min(values) >= LEAST_LOAD and not any(units)
    if all(unit in ("kg", "lb") for unit in units) or heavy:  # "40 42.5 45 singles"
        return [Fact("loads", start, end, [s.kg(v, u) for v, u in zip(values, units, strict=True)])], behind
    if all(unit in ("sec", "min") for unit in units):
        if _counts_holds(s, row):  # "three 30-second hangs"
            held = Entry(hold_s=values[1] * (60 if row.newest_unit == "min" else 1))
            return [Fact("rows", start, end, [held] * int(values[0]), {})], behind
        rows = [Entry(hold_s=v * (60 if u == "min" else 1)) for v, u in zip(values, units, strict=True)]
        return [Fact("rows", start, end, rows, {"list": True})], behind
    if any(unit is not None for unit in units):
        return None
    if any(value != int(value) for value in values) or any(item.comma for _, _, item in row.told):
        return [Fact("loads", start, end, [s.kg(v) for v in values], {"unsure": True})], behind
    rows = [Entry(ask="reps") if at in row.unsure else Entry(int(v)) for at, v in enumerate(values)]
    told = Fact("rows", start, end, rows, {"list": True, "mark": marks[0], "values": values})
    more = _plus(s, behind, rows[-1].reps or 0)
    if more is not None and "+" not in marks:
        return [told, *more[0]], more[1]
    return [told], behind


def _counts_holds(s: Scanner, row: Row) -> bool:
    """Whether the first of two numbers counts the holds that the second is the time of: "two 20s l-sits"."""
    if len(row.told) != 2 or row.marks != [" "] or row.told[0][1] is not None:
        return False
    many, held = row.told
    if many[0] not in range(2, MOST_HOLDS + 1):
        return False
    seconds = held[0] * (60 if held[1] == "min" else 1)
    behind = s.at(row.ends[-1])
    named = behind.kind == "move" or behind.text in little("hold")
    # written apart, or far shorter than the other: nobody lists holds of 3 and 30 seconds
    return many[2].spelled != held[2].spelled or seconds >= FAR_LONGER * many[0] or (named and seconds > many[0])


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
    """Whether the number before a movement ends the list of the one named before.

    The movement has a list behind it, "chins 6,6,6,6 ring rows 12,12,12" against "pull-ups 5, 5, 5, 8 dips", or what
    became of it, "dips 8, 8, 7 hangs ok"; or the list is written in one, "dips 8,8,7 hangs".
    """
    first = s.at(move + 1)
    listed = s.at(move + 2).text in (",", "/") and s.at(move + 3).kind == "num"
    judged = first.has("plan", "done", "fine", "planned", "skipped", "same")
    return not last.space or judged or (first.kind == "num" and listed)


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
