"""The first half of the set grammar: items to facts. A fact is one thing said: three sets of five, a load, an effort, a
side, which set is meant. What belongs to what is decided in fold.py.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import Any, Literal

from bot.reading.items import END, Item

KG_PER_LB = 0.45359237  # exact since 1959
MOST_SETS = 40
MOST_LIST = 60

FactKind = Literal[
    "rows",  # value: list[Entry]: these sets
    "bare",  # value: one number, meaning open
    "loads",  # value: list of kg, one a set
    "efforts",  # value: list of efforts, one a set
    "count",  # value: so many sets, of what is not said
    "load",  # value: kg; None: asked
    "at",  # "@ 8": load or effort; value (number, kg)
    "percent",  # of bodyweight
    "assist",  # kg
    "effort",  # value: rpe
    "effort_range",  # value: (low, high)
    "scope",  # value: which sets the next fact is about
    "side",  # value: left, right, each, other, unclear
    "flag",  # value: eccentric, upper_half, lower_half, half, pause_top…
    "fail",  # value: None, or the ordinal
    "link",  # value: cluster, drop, straight
    "scheme",  # value: name
    "rounds",  # value: so many times
    "repeat",  # value: "twice"
    "instead",  # value: (new, old, unit)
    "delta",  # value: (amount, unit, sign)
    "plan",  # value: done, planned, same…
    "move",  # value: Mention
    "weighted",
    "last_rep",
    "vague",  # "a few sets"
    "thing",  # a vest, chains: a load without a number
    "mend",  # what follows replaces what came before
    "sep",  # value: 1 comma, 2 then, 3 sentence
    "claim",
    "word",
    "left",  # a number that nothing took
    "ask",  # value: the field; cannot be read safely
]


@dataclass
class Entry:
    """Reps or a hold of one set, with what is tied to it so closely that nothing else can have it."""

    reps: int | None = None
    hold_s: float | None = None
    load_kg: float | None = None
    side: str | None = None
    ask: str | None = None


@dataclass
class Fact:
    kind: FactKind
    start: int
    end: int
    value: Any = None
    note: dict[str, Any] = field(default_factory=dict)


@dataclass
class _Factor:
    value: float
    end: int  # item index after it
    role: str | None = None  # load, sets, reps, hold
    high: float | None = None  # upper end of a range
    kg: float | None = None
    pair: float | None = None  # 5/5
    comma: bool = False
    spelled: bool = False
    plus: bool = False


class Scanner:
    """Reads items left to right; every method tries one form at a place and gives the facts and the next place."""

    def __init__(self, items: Sequence[Item], unit: str, bodyweight_kg: float | None, text_of: Any) -> None:
        self.items = items
        self.unit = unit
        self.bodyweight_kg = bodyweight_kg
        self.text_of = text_of
        self.has_tempo = any(item.has("noise", "tempo") for item in items)

    def at(self, i: int) -> Item:
        return self.items[i] if 0 <= i < len(self.items) else END

    def kg(self, value: float, unit: str | None = None) -> float:
        return value * KG_PER_LB if (unit or self.unit) == "lb" else value

    def whole(self, value: float) -> bool:
        return value == int(value) and value <= 1000

    # ---- numbers with what hangs on them

    def unit_at(self, i: int) -> str | None:
        return self.at(i).name("unit")

    def factor(self, i: int) -> _Factor | None:
        plus = False
        item = self.at(i)
        if item.has("load", "plus") and item.kind in ("known", "sym"):
            plus, i, item = True, i + 1, self.at(i + 1)
        if item.kind != "num" or item.value is None:
            if item.kind == "known" and item.value is not None and item.spelled and self.at(i + 1).has("sets"):
                pass
            else:
                return None
        value = item.value
        assert value is not None
        made = _Factor(value, i + 1, comma=item.comma, spelled=item.spelled, plus=plus)
        after = self.at(i + 1)
        if after.text in ("-",) and self.at(i + 2).kind == "num" and self.at(i + 3).text != "-":
            high = self.at(i + 2)
            if high.value is not None and high.value > value and not high.space:
                made.high, made.end = high.value, i + 3
                after = self.at(made.end)
        if after.text == "/" and self.at(made.end + 1).kind == "num" and self.at(made.end + 2).text != "/":
            right = self.at(made.end + 1)
            if right.value is not None and not right.space and not after.space:
                made.pair, made.end = right.value, made.end + 2
                after = self.at(made.end)
        unit = after.name("unit")
        if unit == "lb" and after.text == "#" and after.space and self.at(made.end + 1).kind == "num":
            unit = None  # "5x3 #25": the sign belongs to what follows
        if unit in ("kg", "lb"):
            made.role, made.kg, made.end = "load", self.kg(value, unit), made.end + 1
        elif unit == "sec":
            made.role, made.end = "hold", made.end + 1
        elif unit == "min" and value <= 10:
            made.value, made.role, made.end = value * 60, "hold", made.end + 1
        elif after.has("sets") and not (after.has("sets", "rounds")):
            made.role, made.end = "sets", made.end + 1
        elif after.has("reps"):
            made.role, made.end = "reps", made.end + 1
        elif plus:
            made.role, made.kg = "load", self.kg(value)
        if made.role == "hold" and self.at(made.end).has("pause") and self.at(made.end).text in ("hold", "holds"):
            made.end += 1
        return made

    def joint(self, i: int, before: _Factor) -> int | None:
        """The place after "x", "of", "for" … between two factors."""
        item = self.at(i)
        if item.has("times", "x"):
            return i + 1
        if before.role in ("sets", "reps") and item.has("times", "of"):
            if item.has("load", "at"):
                # "4 sets with 20": reps only when they are called so
                ahead = self.factor(i + 1)
                return i + 1 if ahead is not None and ahead.role in ("reps", "hold") else None
            return i + 1
        if before.role == "sets" and item.text in (",", ":") and self.at(i + 1).kind == "num":
            ahead = self.factor(i + 1)
            return i + 1 if ahead is not None and ahead.role == "reps" else None
        if before.role == "reps" and item.text == "," and self.at(i + 1).kind in ("num", "known"):
            ahead = self.factor(i + 1)
            return i + 1 if ahead is not None and ahead.role == "sets" else None
        if before.role == "sets" and (item.kind == "num" or item.has("load", "plus")):
            return i if item.kind == "num" else None
        return None

    def chain(self, i: int) -> tuple[list[Fact], int] | None:
        """ "5x3", "5 sets of 3", "+20x5x3 sets", "20kg x 5", "3 x 5 x 20kg"."""
        first = self.factor(i)
        if first is None:
            return None
        factors = [first]
        end = first.end
        while len(factors) < 4:
            after = self.joint(end, factors[-1])
            if after is None:
                break
            nxt = self.factor(after)
            if nxt is None:
                break
            factors.append(nxt)
            end = nxt.end
        if len(factors) == 1:
            return None
        return self.resolve(i, factors), end

    def resolve(self, i: int, factors: list[_Factor]) -> list[Fact]:
        start, end = self.at(i).start, self.at(factors[-1].end - 1).end
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
                big.role, big.kg = "load", self.kg(big.value)
            loads = [f for f in factors if f.role == "load"]
            open_ = [f for f in factors if f.role is None]
        if not loads and len(open_) + len(work) == 2 and not sets:
            for this, other in ((factors[1], factors[0]), (factors[0], factors[1])):
                if (
                    this.role is None
                    and this.value != int(this.value)
                    and (this.comma or other.value == int(other.value))
                ):
                    this.role, this.kg = "load", self.kg(this.value)
                    loads, open_ = [this], [f for f in open_ if f is not this]
                    break
        if len(loads) > 1 or len(sets) > 1 or (len(work) > 1 and sets):
            return [Fact("ask", start, end, "sets")]
        count: float = 1
        note: dict[str, Any] = {}
        if loads and not sets and len(open_) == 2 and factors[0] is loads[0]:
            work, sets = [open_[0]], [open_[1]]
            note["order"] = "reps_sets"
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
        if count != int(count) or count < 0 or count > MOST_SETS:
            if not loads and note.get("plain") and count > MOST_SETS and one.value <= 30 and self.whole(one.value):
                loads = [_Factor(count, 0, "load", kg=self.kg(count))]
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
        if loads:
            note["own_load"] = loads[0].kg
        return facts

    # ---- lists

    def listed(self, i: int) -> tuple[list[Fact], int] | None:
        """ "5,5,4", "5/5/4", "20-18-15", "12s 10s 9s", "2+2+1", "15, 17.5, 20 kg"."""
        numbers: list[tuple[float, str | None, Item]] = []
        marks: list[str] = []
        ends: list[int] = []
        side_first = self.at(i - 1).has("side") or (self.at(i - 1).text == ":" and self.at(i - 2).has("side"))
        j = i
        while len(numbers) < MOST_LIST:
            item = self.at(j)
            if item.kind != "num" or item.value is None:
                break
            if item.spelled and item.value == 1 and numbers == []:
                break
            after = j + 1
            unit = self.unit_at(after)
            if unit in ("kg", "lb", "sec") or unit == "min":
                after += 1
            elif unit == "other":
                break
            else:
                unit = None
            nxt = self.at(after)
            if numbers and (
                (nxt.has("times", "x") and self.at(after + 1).kind == "num")
                or nxt.has("sets")
                or (nxt.has("reps") and not self._ends_list(after))
                or (nxt.has("side", "left", "right") and not side_first)
                or nxt.has("effort", "rir")
                or nxt.has("unit", "percent")
                or (nxt.kind == "move" and marks and marks[0] == ",")
                or (unit in ("kg", "lb") and numbers[-1][1] is None and marks[-1:] == [" "])
                or nxt.has("count")
            ):
                break
            if nxt.has("reps") and not numbers and self.at(after + 1).text != ",":
                break
            numbers.append((item.value, unit, item))
            ends.append(after)
            if self.at(after).has("reps"):
                after += 1
                ends[-1] = after
            mark = self.at(after)
            if mark.text in (",", "/", "-", "+") and self.at(after + 1).kind == "num":
                if mark.text in ("-", "+") and self.at(after).space and not self.at(after + 1).space:
                    break  # "5 +20"
                if mark.text == "-" and unit is None and len(marks) and marks[-1] not in ("-",):
                    break
                marks.append(mark.text)
                j = after + 1
            elif mark.has("sep", "and") and self.at(after + 1).kind == "num":
                marks.append("&")
                j = after + 1
            elif mark.text == "," and self.at(after + 1).has("sep", "and") and self.at(after + 2).kind == "num":
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
        if len(numbers) == 2 and marks == ["-"]:
            return None  # a range
        if "/" in marks and set(marks[0::2]) == {"/"} and len(numbers) % 2 == 0 and set(marks[1::2]) <= {",", "&", " "}:
            pairs: list[Entry] = []
            for at in range(0, len(numbers), 2):
                pairs += [Entry(int(numbers[at][0]), side="left"), Entry(int(numbers[at + 1][0]), side="right")]
            if len(numbers) > 2:
                span = (numbers[0][2].start, self.at(ends[-1] - 1).end)
                return [Fact("rows", span[0], span[1], pairs, {"list": True})], ends[-1]
        if len(set(marks)) > 2 or ("+" in marks and set(marks) != {"+"}):
            return None
        if len(numbers) == 2 and marks == ["&"] and numbers[0][1] is None and numbers[1][1] is None:
            return None
        if len(numbers) == 2 and marks == ["/"] and numbers[1][0] == 10 and numbers[0][0] != 10:
            return None  # "7/10" is a score
        start, end = numbers[0][2].start, self.at(ends[len(numbers) - 1] - 1).end
        values = [value for value, _, _ in numbers]
        units = [unit for _, unit, _ in numbers]
        last = units[-1]
        units = [unit or last for unit in units]
        if all(unit in ("kg", "lb") for unit in units):
            return [Fact("loads", start, end, [self.kg(v, u) for v, u in zip(values, units, strict=True)])], ends[-1]
        if all(unit in ("sec", "min") for unit in units):
            rows = [Entry(hold_s=v * (60 if u == "min" else 1)) for v, u in zip(values, units, strict=True)]
            return [Fact("rows", start, end, rows, {"list": True})], ends[-1]
        if any(unit is not None for unit in units):
            return None
        if any(value != int(value) for value in values) or any(item.comma for _, _, item in numbers):
            return [Fact("loads", start, end, [self.kg(v) for v in values], {"unsure": True})], ends[-1]
        rows = [Entry(int(v)) for v in values]
        note: dict[str, Any] = {"list": True, "mark": marks[0], "values": values}
        return [Fact("rows", start, end, rows, note)], ends[-1]

    def _ends_list(self, after: int) -> bool:
        return self.at(after + 1).text not in (",", "/") and self.at(after + 1).kind != "num"

    # ---- efforts

    def effort(self, i: int) -> tuple[list[Fact], int] | None:
        item = self.at(i)
        if item.has("effort", "almost"):
            return [], i + 1
        if item.has("effort", "ten"):
            return [Fact("effort", item.start, item.end, 10.0)], i + 1
        if item.has("effort", "nine"):
            return [Fact("effort", item.start, item.end, 9.0)], i + 1
        if item.has("effort", "could"):
            j = i + 1
            while (self.at(j).kind == "word" and j < i + 3) or self.at(j).text in ("maybe", "about"):
                j += 1
            number = self.at(j)
            if number.value is not None and number.value <= 5 and self.at(j + 1).has("effort", "more", "rir"):
                last = self.at(j + 1)
                return [Fact("effort", item.start, last.end, 10.0 - number.value)], j + 2
        if item.has("effort", "between") and self.at(i + 2).has("sep", "and") and self.at(i + 3).kind == "num":
            low, high = self.at(i + 1).value or 0, self.at(i + 3).value or 0
            after = self.at(i + 4)
            rated = "rpe" in item.text or (low >= 5 and not after.has("reps") and not after.has("unit"))
            if rated and 0 < low < high <= 10:
                return [Fact("effort_range", item.start, self.at(i + 3).end, (low, high), {"between": True})], i + 4
        if item.has("effort", "rpe") or (item.has("load", "sign") and self.at(i + 1).has("effort", "rpe")):
            j = i + 1 if item.has("effort", "rpe") else i + 2
            while self.at(j).text in (
                ":",
                "=",
                "~",
                "was",
                "of",
                "a",
                "an",
                "about",
                "around",
                "is",
                "@",
                "at",
                "maybe",
            ):
                j += 1
            return self._effort_value(i, j, rir=False)
        if item.text == "was" and self.at(i + 1).text in ("a", "an") and 5 <= (self.at(i + 2).value or 0) <= 10:
            after = self.at(i + 3)
            if not after.has("reps") and not after.has("unit") and not after.has("sets") and after.text != "/":
                return self._effort_value(i, i + 2, rir=False)
        if (
            item.has("effort", "before_rir")
            and self.at(i + 1).kind == "num"
            and not self.at(i + 2).has("sets")
            and self.at(i + 2).kind != "move"
        ):
            return self._effort_value(i, i + 1, rir=True)
        return None

    def _effort_value(self, i: int, j: int, rir: bool) -> tuple[list[Fact], int] | None:
        number = self.at(j)
        if number.value is None or number.kind not in ("num", "known"):
            return None
        between = self.at(i - 1).has("effort", "between") or self.at(i + 1).has("effort", "between")
        low = high = number.value
        end = j + 1
        efforts = [low]
        ranged = False
        joined = self.at(end)
        if (joined.text in ("-", "to", "/") or joined.has("sep", "and", "or") or joined.has("times", "to")) and self.at(
            end + 1
        ).kind == "num":
            second = self.at(end + 1).value or 0
            if not (joined.text == "/" and second == 10):
                if second > low and second <= 10:
                    high, end, ranged = second, end + 2, True
            else:
                end += 2
        elif joined.text == "," and self.at(end + 1).kind == "num" and not rir:
            # a list of efforts: "RPE 7, 8, 9"
            k = end
            while self.at(k).text == "," and self.at(k + 1).kind == "num":
                value = self.at(k + 1).value or 0
                after = self.at(k + 2)
                if value > 10 or value < 5 or after.has("times", "x") or after.has("sets") or after.has("reps"):
                    break
                if after.kind in ("word", "move") or after.has("unit"):
                    break
                efforts.append(value)
                k += 2
            if len(efforts) > 1:
                return [Fact("efforts", self.at(i).start, self.at(k - 1).end, efforts)], k
        if (
            self.at(end).has("effort", "after", "rpe")
            and not self.at(end).has("scope")
            and self.at(end + 1).kind != "num"
        ):
            end += 1
        start, stop = self.at(i).start, self.at(end - 1).end
        if rir:
            low, high = 10 - high, 10 - low
        if not 0 <= low <= 10 or not 0 <= high <= 10:
            return [Fact("ask", start, stop, "rpe")], end
        if ranged:
            return [Fact("effort_range", start, stop, (low, high), {"between": between})], end
        return [Fact("effort", start, stop, low)], end

    def effort_after(self, i: int) -> tuple[list[Fact], int] | None:
        """ "2 RIR", "8 rpe", "9 out of ten", "one more in the tank", "1-2 in reserve"."""
        number = self.at(i)
        if number.value is None:
            return None
        j = i + 1
        low = high = number.value
        if (self.at(j).text in ("-", "to") or self.at(j).has("sep", "or")) and self.at(j + 1).kind == "num":
            high = self.at(j + 1).value or high
            j += 2
        if self.at(j).text == "/" and self.at(j + 1).value == 10 and self.at(j + 2).has("effort", "after"):
            j += 2
        mark = self.at(j)
        if mark.has("effort", "after") and mark.end - mark.start > 1 and self.at(j + 1).kind == "move":
            return [Fact("ask", number.start, mark.end, "sets")], j + 1  # "tres de diez flexiones": no score
        if mark.has("effort", "after") and high > 10:
            return None  # "+20 rpe …"
        if mark.has("effort", "rir"):
            if high > 6:
                return None
            start, stop = number.start, mark.end
            if high != low:
                return [Fact("effort_range", start, stop, (10 - high, 10 - low))], j + 1
            return [Fact("effort", start, stop, 10 - low)], j + 1
        if mark.has("effort", "after") and not (mark.has("effort", "rpe") and self.at(j + 1).kind == "num"):
            if not 0 <= high <= 10:
                return [Fact("ask", number.start, mark.end, "rpe")], j + 1
            if high != low:
                return [Fact("effort_range", number.start, mark.end, (low, high))], j + 1
            return [Fact("effort", number.start, mark.end, low)], j + 1
        return None

    # ---- loads

    def load(self, i: int) -> tuple[list[Fact], int] | None:
        item = self.at(i)
        if item.text == "#" and item.space and self.at(i + 1).kind == "num" and not self.at(i + 1).space:
            pounds = self.kg(self.at(i + 1).value or 0, "lb")
            return [Fact("load", item.start, self.at(i + 1).end, pounds, {"how": "plus", "unit": "lb"})], i + 2
        if item.has("load", "none"):
            follow = self.at(i + 1)
            if follow.has("load", "plus") and self.at(i + 2).kind == "num":
                return self.load(i + 1)
            if i and self.at(i - 1).kind == "num" and 0 < (self.at(i - 1).value or 0) < 1.5:
                return [], i + 1
            return [Fact("load", item.start, item.end, 0.0, {"none": True})], i + 1
        if item.has("load", "same"):
            return [Fact("load", item.start, item.end, None, {"same": True})], i + 1
        j = i
        how = None
        while self.at(j).has("load", "at", "plus", "sign") and j < i + 3:
            name = self.at(j).name("load")
            how = "plus" if name == "plus" or how == "plus" else "sign" if name == "sign" else how or "at"
            j += 1
        while self.at(j).text in ("about", "around", "an", "a", "~", "roughly", "just", "only", ":", "the") and how:
            j += 1
        number = self.at(j)
        if number.kind != "num" or number.value is None:
            return None
        value, end = number.value, j + 1
        unit = self.unit_at(end)
        told = end + 1 if unit in ("kg", "lb") else end
        if self.at(told).has("plan", "instead") and self.at(told + 1).value is not None:
            return None  # "with 12.5 instead of 15": told against the plan
        after = self.at(told + 1)
        if self.at(told).kind == "word" and after.has("plan", "instead") and after.end - after.start > 1:
            return None  # "with 7.5 off instead of 10"
        if (
            unit is None
            and self.at(told).has("plan", "less", "more")
            and not self.at(told).has("load", "word")
            and self.at(told + 1).kind != "num"
        ):
            return None
        if how and self.at(end).text == "-" and self.at(end + 1).kind == "num" and unit is None:
            high = self.at(end + 1).value or 0
            if how == "sign" and value < high <= 10:
                return [
                    Fact("at", item.start, self.at(end + 1).end, ((value + high) / 2, None), {"range": True})
                ], end + 2
            if high > value:
                return [Fact("ask", item.start, self.at(end + 1).end, "load_kg")], end + 2
        old = told + 1
        if how and self.at(told).has("plan", "instead"):
            while self.at(old).has("load", "plus", "at") and old < told + 3:
                old += 1
            if self.at(old).kind == "num" and old > told + 1:
                old += 2 if self.unit_at(old + 1) in ("kg", "lb") else 1
                return [Fact("load", item.start, self.at(old - 1).end, self.kg(value, unit), {"how": how})], old
        if unit == "percent":
            end += 1
            while self.at(end).text in ("of", "my", "the", "de", "del", "vom", "des") and end < j + 5:
                end += 1
            if self.at(end).has("load", "none"):
                stop = self.at(end).end
                end += 1
                if self.at(end).has("load", "word"):
                    stop, end = self.at(end).end, end + 1
                if self.bodyweight_kg:
                    return [Fact("load", item.start, stop, value * self.bodyweight_kg / 100)], end
                return [Fact("ask", item.start, stop, "load_kg")], end
            if how:
                return [Fact("ask", number.start, self.at(end - 1).end, "load_kg")], end
            return None
        if unit in ("kg", "lb"):
            end += 1
            stop = self.at(end - 1).end
            note: dict[str, Any] = {"how": how, "unit": unit}
            while self.at(end).has("load", "word") or (
                self.at(end).has("times", "of") and self.at(end + 1).has("load", "word")
            ):
                end += 1
                stop = self.at(end - 1).end
            if self.at(end).has("unit", "half") and value == int(value):
                value, end = value + 0.5, end + 1
                stop = self.at(end - 1).end
            kg = self.kg(value, unit)
            if self.at(end).has("plan", "less", "more") and self.at(end + 1).kind != "num":
                sign = -1 if self.at(end).has("plan", "less") else 1
                return [Fact("delta", item.start, self.at(end).end, (kg, "load", sign))], end + 1
            loads = [kg]
            while self.at(end).text == "," or self.at(end).has("sep", "and"):
                j = end + 1
                more = self.at(j)
                if more.kind != "num" or more.value is None or self.unit_at(j + 1) not in ("kg", "lb"):
                    break
                if self.at(j + 2).has("times", "x"):
                    break
                loads.append(self.kg(more.value, self.unit_at(j + 1)))
                end = j + 2
            if len(loads) > 1:
                return [Fact("loads", item.start, self.at(end - 1).end, loads)], end
            if self.at(end).has("times", "x") and self.at(end + 1).kind == "num":
                return None
            if True:
                return [Fact("load", item.start, stop, kg, note)], end
        if unit is not None:
            return None
        if self.at(end).has("times", "x") or self.at(end).has("sets"):
            return None
        if self.at(end).has("reps"):
            return None
        if self.at(end).has("effort", "rir", "after") and self.at(end + 1).kind != "num":
            return None
        if self.at(end).has("load", "plate"):
            return [Fact("ask", number.start, self.at(end).end, "load_kg")], end + 1
        if (self.at(end).text == "or" or self.at(end).has("sep", "or")) and self.at(end + 1).kind == "num" and how:
            return [Fact("ask", number.start, self.at(end + 1).end, "load_kg")], end + 2
        if how is None:
            if self.at(end).has("load", "word"):
                stop = self.at(end).end
                return [Fact("load", item.start, stop, self.kg(value))], end + 1
            return None
        while self.at(end).has("load", "word"):
            end += 1
        stop = self.at(end - 1).end
        if how in ("sign", "at") and 6 <= value <= 10 and how == "sign":
            return [Fact("at", item.start, stop, (value, self.kg(value)))], end
        if how == "at" and self.at(i).text == "at" and 6 <= value <= 10:
            return [Fact("at", item.start, stop, (value, self.kg(value)))], end
        return [Fact("load", item.start, stop, self.kg(value), {"how": how, "comma": number.comma})], end
