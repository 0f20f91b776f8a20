"""What is known while the facts of one exercise are walked, and the handles on its sets."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import cached_property
from itertools import accumulate
from typing import Any

from bot.reading.bounds import is_strong
from bot.reading.facts import LOADED, Entry, Fact
from bot.reading.fold.rows import PAUSES, Block, Row
from bot.reading.reading import Ask

LEAST_STEP = 10  # "10x5, 15x4" begins with a load, where it rises to what is surely one
LEAST_OF_MANY, MANY = 8, 3  # and so where three or more rise so
SURELY = 15  # so many sets are rather kilograms
LEAST_TRIED = 15  # a bare number that is a load tried


def _surely_by_load(fact: Fact) -> bool:
    return "own_load" in fact.note or bool(fact.note.get("plain") and len(fact.value) >= SURELY)


def _rises(facts: Sequence[Fact], to_kg: Callable[..., float]) -> bool:
    """Whether the numbers of sets, beside those that are surely loads, rise as a row of loads does."""
    told = [fact for fact in facts if fact.kind == "rows" and ("own_load" in fact.note or fact.note.get("plain"))]
    steps = [fact.note.get("own_load", to_kg(float(len(fact.value)))) for fact in told]
    least = to_kg(float(LEAST_OF_MANY if len(steps) >= MANY else LEAST_STEP))
    return len(steps) > 1 and steps == sorted(steps) and steps[0] < steps[-1] and steps[0] >= least


class FoldState:
    """The sets so far, and what waits for the sets to come."""

    def __init__(self, block: Block, span: Callable[[int, int], str], to_kg: Callable[..., float]) -> None:
        self.block = block
        self.to_kg = to_kg
        self.span = span
        self.rows: list[Row] = [replace(row) for row in block.base] if block.base is not None else []
        self.based = block.base is not None
        self.asks: list[Ask] = []
        self.load: float | None = None  # waits for sets
        self.load_said = False
        self.assist: float | None = None
        self.rpe: float | None = None
        self.side: str | None = None
        self.last_side: str | None = None
        self.scope: Any = None
        self.scope_fact: Fact | None = None
        self.flags: set[str] = set()
        self.late: set[str] = set()
        self.count: int | None = None
        self.counted_ask: Ask | None = None  # how many reps the sets have that were only counted
        self.expected: int | None = None  # so many sets were counted that are told one by one
        self.mend = False
        self.link: str | None = None
        self.drop_head = 0  # the place of the first set behind a word for a drop set
        self.one_way: int | None = None  # the reps that a ladder came back down to
        self.one_of_some = False  # the only set so far was told as one of several: "last set only 3"
        self.miss_next = False  # the set that comes next was missed
        self.one_more = False  # what comes next is one more set of the same
        self.more_of: list[tuple[Row, Row]] = []  # a further set, and the one whose load it has where it tells none
        self.group = 0
        self.groups: dict[int, bool] = {}  # group: its load was said for it alone
        self.schemes: set[str] = set()
        self.bares: list[tuple[Fact, Row]] = []
        self.efforts_open: list[tuple[float, int]] = []
        self.early_effort: float | None = None
        self.effort_inside = False
        self.total: tuple[float, Fact] | None = None
        self.minutes: list[float] = []
        self.attempt_load: float | None = None
        self.attempt: Fact | None = None  # where that load was told
        self.tries = 1  # how often it was tried
        self.after_sentence = False
        self.side_before: str | None = None  # a side that its own sentence told nothing of: "one on the left! Just one"
        self.ats = [f.value[0] for f in block.facts if f.kind == "at" and not f.note.get("range")]
        self.all_schemes = {f.value for f in block.facts if f.kind == "scheme"}
        self.big_loads = [f for f in block.facts if f.kind == "load" and (f.value or 0) > 10]
        # "20x5, 22.5x4, 25x3" is load by reps when several are told so
        self.heavy = [f for f in block.facts if f.kind == "rows" and _surely_by_load(f)]
        decimal = any("own_load" in f.note for f in self.heavy)
        if (decimal or (self.heavy and block.movement in LOADED)) and _rises(block.facts, to_kg):
            self.heavy = [f for f in block.facts if f.kind == "rows"]  # "10x5, 12.5x4, 15x3"
        tried = [f for f in block.facts if f.kind == "bare" and f.value >= LEAST_TRIED]
        # "35x1, attempted 40": beside a load that was tried, so many singles are their load
        self.by_load = len(self.heavy) > 1 or (bool(self.heavy and tried) and "attempt" in self.all_schemes)
        self.weighted = any(f.kind == "weighted" for f in block.facts)
        self.asked_load: Fact | None = None
        self.prev: Fact | None = None
        self.said_sets = False
        self.word_row: Row | None = None
        self.by_ordinals = False  # sets are told one by one, by their place
        self.plain_at: Fact | None = None  # the newest "5x5", when nothing was done since
        self.last_effort: float | None = None
        self.frozen = 0
        self.last_rep = False
        self.work_from = 0  # the rows before it are a warm-up
        self.waiting: list[float] = []
        self.waiting_fact: Fact | None = None
        self.each_of = False
        self.tried: Row | None = None
        self.moved = False  # the movement has been named
        self.failure: float | None = None
        self.last_rpe: float | None = None  # of the last set, said before any
        self.next: Fact | None = None
        self.load_list: list[float] = []  # "with 20kg, 22.5kg and 25kg"
        self.half: Fact | None = None
        self.effort_rows: list[Row] = []  # the rows that the last effort went to
        self.over: Fact | None = None  # "across the sets"
        self.second_load: Fact | None = None
        self.side_efforts: dict[str, float] = {}
        self.side_flags: dict[str, set[str]] = {}
        self.scope_flags: dict[str, tuple[list[Row], set[str]]] = {}
        self.all_rpe: float | None = None
        self.template: Row | None = None  # what both sides did, told once

    def ask(self, about: str, fact: Fact) -> None:
        self.asks.append(Ask(about, self.span(fact.start, fact.end)))

    def place(self, fact: Fact) -> int:
        """Where a fact stands in its block; of one made on the way, where its words stand."""
        found = self._places.get(id(fact))
        return bisect_left(self._reached, fact.start) if found is None else found

    @cached_property
    def _places(self) -> dict[int, int]:
        places = enumerate(self.block.facts)
        return {id(fact): at for at, fact in reversed([*places])}  # the first of a fact told twice

    @cached_property
    def _reached(self) -> list[int]:
        """How far into the message the facts have come, by place."""
        return list(accumulate((fact.start for fact in self.block.facts), max))

    def last_group(self) -> list[Row]:
        return [row for row in self.rows if row.group == self.group] if self.rows else []

    def unsaid(self) -> list[Row]:
        """The sets of which neither reps nor seconds are told yet."""
        return [row for row in self.rows if row.reps is None and row.hold_s is None]

    def scoped(self) -> list[Row]:
        """The rows that the scope said last points at; empty: none of them."""
        rows = self.rows
        scope = self.scope
        if not rows or scope is None:
            return []
        if scope == "all":
            return rows
        if isinstance(scope, tuple):
            name, n = scope
            if name == "from":
                paired = {"left", "right"} <= {row.side for row in rows}
                return rows[(n - 1) * (2 if paired else 1) :]
            if name == "of_reps":
                reps, nth = n
                return [row for row in rows if row.reps == reps][nth - 1 : nth]
            if name == "back":
                backs = self._labelled("back")
                return backs[-1:] if n < 0 else backs[n - 1 : n]
            if name == "these":
                return [rows[at - (at > 0)] for at in n if -1 <= at <= len(rows) and at]
            return rows[:n] if name == "first" else rows[-n:]
        if scope == "rest":
            return self.unsaid() or [row for row in rows if not row.touched]
        if scope == "last":
            return self.tail(rows)
        if scope == "first":
            return self.head(rows)
        if scope in ("top", "back"):
            return self._labelled(scope)
        if isinstance(scope, int):
            sides = {row.side for row in rows}
            if {"left", "right"} <= sides:
                pairs = [rows[i : i + 2] for i in range(0, len(rows), 2)]
                return pairs[scope - 1] if 0 < scope <= len(pairs) else []
            return [rows[scope - 1]] if 0 < scope <= len(rows) else []
        return []

    def _labelled(self, scope: str) -> list[Row]:
        """The top set, or the sets after it."""
        rows = self.rows
        labelled = [row for row in rows if row.label == scope]
        if not labelled and scope == "back" and any(row.label == "top" for row in rows):
            labelled = [row for row in rows if row.label != "top"]
        if not labelled and scope == "top":
            heavy = max((row.load_kg or 0) for row in rows)
            labelled = [row for row in rows if (row.load_kg or 0) == heavy]
            labelled = labelled if len(labelled) == 1 else rows[:1]
        return labelled

    def tail(self, rows: list[Row]) -> list[Row]:
        if len(rows) >= 2 and {rows[-1].side, rows[-2].side} == {"left", "right"}:
            return rows[-2:]
        sides = [row.side for row in rows]
        last = sides.index(sides[-1]) if rows else 0
        if last and set(sides) == {"left", "right"} and len(set(sides[last:])) == 1:
            return [rows[last - 1], rows[-1]]  # "left 3 3 2, right 4 3 3"
        return rows[-1:]

    def head(self, rows: list[Row]) -> list[Row]:
        if len(rows) >= 2 and {rows[0].side, rows[1].side} == {"left", "right"}:
            return rows[:2]
        return rows[:1]

    def next_is(self, *kinds: str) -> bool:
        return self.next is not None and self.next.kind in kinds

    def loaded(self) -> bool:
        return self.load_said or self.based or self.assist is not None

    def add(self, entries: list[Entry], fact: Fact) -> None:
        if self.rows:
            self.group += 1
        if self.late:
            if self.late & {"upper_half", "lower_half", "half", "full", "eccentric"}:
                self.apply(self.rows[self.frozen :], self.flags, "pause_pause" in self.flags)
                self.frozen = len(self.rows)
                self.flags -= {"upper_half", "lower_half", "half", "full"}
            self.flags = (self.flags - ({"eccentric"} if "full" in self.late else set())) | self.late
            self.late = set()
        own = fact.note.get("own_load")
        start = len(self.rows)
        self.one_of_some = not self.rows and (self.scope == "last" or (isinstance(self.scope, int) and self.scope > 1))
        for entry in entries:
            row = Row(entry.reps, entry.hold_s, group=self.group)
            if self.block.hold and row.hold_s is None and row.reps is not None and not fact.note.get("reps"):
                row.hold_s, row.reps = float(row.reps), None
            row.side = entry.side or (self.side if self.side in ("left", "right") else None) or self.side_before
            if own is not None or entry.load_kg is not None:
                row.load_kg = own if own is not None else entry.load_kg
            elif self.attempt_load is not None and not self.load_said and len(entries) == 1 and entry.reps:
                row.load_kg, self.attempt_load = self.attempt_load, None  # "hit 42.5 for a single"
            elif self.load_said:
                row.load_kg = self.load
            if self.one_more and self.rows:
                self.more_of.append((row, self.rows[start - 1]))
            if self.rpe is not None:
                row.rpe = self.rpe
            if isinstance(self.scope, str) and self.scope in ("top", "back"):
                row.label = self.scope
            if entry.ask:
                self.ask(entry.ask, fact)
            self.rows.append(row)
        if self.miss_next:
            for row in self.rows[start:]:
                row.failed = True
                if row.reps != 1:
                    self.ask("reps", fact)  # of a triple that was missed, one or two may have gone up
                row.reps = 0 if row.reps == 1 else None
        self.rpe, self.one_more, self.miss_next, self.side_before = None, False, False, None
        self.groups[self.group] = own is not None
        short_rest = self.link in ("rest_pause", "cluster") and len(entries) == 1 and self._rested(fact)
        short_rest = short_rest or (self.link == "rest_pause" and fact.kind == "bare")
        if (self.link in ("straight", "drop") or short_rest) and start:
            for row in self.rows[start:]:
                row.linked = True
            self.drop_head = self.drop_head or (start if self.link == "drop" else 0)
        if self.link == "straight":
            self.link = None
        if self.side in ("left", "right"):
            self.last_side = self.side
            if len(entries) >= 1:
                self.side = None
        if self.side == "each":
            self.each()
            self.side = None
        if self.asked_load is not None:
            for row in self.rows[start:]:
                row.load_open = True
        if self.scope not in ("all",):
            self.scope = None

    def _rested(self, fact: Fact) -> bool:
        """Whether a time of rest stands before this set: "10, 15 s breather, 4"."""
        before = self.block.facts[max(0, self.place(fact) - 2) : self.place(fact)]
        return [one.kind for one in before] == ["word", "sep"] and bool(before[0].note.get("noise"))

    def each(self) -> None:
        group = self.last_group()
        if not group or any(row.side for row in group):
            return
        if self.block.one_sided and self._listed_in_one():
            group = self.rows  # "15 kg x 3, 12.5 x 2, 10 x 1 each arm"
        start = self.rows.index(group[0])
        pairs: list[Row] = []
        for row in group:
            pairs += [replace(row, side="left"), replace(row, side="right")]
        self.rows[start : start + len(group)] = pairs

    def _listed_in_one(self) -> bool:
        """Whether single sets, one after the other, are all that was told, none of a side."""
        parted = any(is_strong(fact) for fact in self.block.facts)
        groups = {row.group for row in self.rows}
        return not parted and len(groups) == len(self.rows) > 1 and not any(row.side for row in self.rows)

    def override(self, rows: list[Row], entry: Entry) -> None:
        for row in rows:
            if entry.hold_s is not None or (row.hold_s is not None and row.reps is None):
                row.hold_s = entry.hold_s if entry.hold_s is not None else float(entry.reps or 0)
            else:
                row.reps = entry.reps
            row.load_kg = row.load_kg if entry.load_kg is None else entry.load_kg
        self.scope = None
        self.side = None

    def keep(self, n: int) -> None:
        """Only the first n sets of the plan were done (n pairs for one-sided work)."""
        sides = {row.side for row in self.rows}
        step = 2 if {"left", "right"} <= sides else 1
        self.rows = self.rows[: n * step]

    def apply(self, rows: list[Row], flags: set[str], paused: bool) -> None:
        both = self.flags | self.late
        if "half" in flags and not paused and both & {"pause_top", "pause_bottom"}:
            flags = (flags - {"half"}) | ({"upper_half"} if "pause_top" in both else {"lower_half"})  # "half, the top"
            both = both | flags
        for row in rows:
            if "eccentric" in flags:
                row.eccentric = True
            if "full" in flags:
                row.rom = "full"
                row.eccentric = "eccentric" in flags
            elif "upper_half" in flags:
                row.rom = "upper_half"
            elif "lower_half" in flags:
                row.rom = "lower_half"
            elif "half" in flags and not both & {"upper_half", "lower_half"}:
                row.rom = None
            if paused and not self.block.hold:  # a hold is all pause
                said = tuple(p for p in PAUSES if "pause_" + p in flags)
                row.pauses = tuple(p for p in PAUSES if p in row.pauses or p in said)
        if "half" in flags and rows and not both & {"upper_half", "lower_half"}:
            fact = self.half
            if fact is not None:
                self.ask("rom", fact)
                self.half = None

    def bares_open(self) -> bool:
        return any(row.load_open for _, row in self.bares)

    def more_sets_follow(self, fact: Fact) -> bool:
        at = self.place(fact)
        return any(f.kind in ("rows", "bare") for f in self.block.facts[at + 1 :])

    def same_list(self, row: Row) -> bool:
        return any(r is row for _, r in self.bares)

    def more_follows(self, fact: Fact) -> bool:
        at = self.place(fact)
        return any(f.kind in ("rows", "bare", "count", "fail", "scheme") for f in self.block.facts[at + 1 :])
