"""The second half of the set grammar: the facts of one exercise to its sets.

Loads, efforts and sides find their sets by where they stand: a load before the first set is for all that follow, one
after a set is for that set; an effort after several sets is the last one's; a side beside a number is that number's.
What fits nowhere is asked, never guessed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from bot.reading.facts import Entry, Fact
from bot.reading.reading import Ask

PAUSES = ("top", "middle", "bottom")


@dataclass
class Row:
    """One set in the making. load_kg None: not said (0 in the end)."""

    reps: int | None = None
    hold_s: float | None = None
    load_kg: float | None = None
    assist_kg: float | None = None
    rpe: float | None = None
    side: str | None = None
    rom: str | None = "full"
    eccentric: bool = False
    pauses: tuple[str, ...] = ()
    failed: bool = False
    linked: bool = False
    label: str | None = None
    movement: str | None = None
    part: str | None = None
    load_open: bool = False  # asked: stays None
    touched: bool = False  # changed by a clause that named it
    group: int = 0


@dataclass
class Block:
    """One movement with the facts told of it."""

    movement: str | None
    facts: list[Fact]
    one_sided: bool = False
    hold: bool = False
    loadable: bool = True  # False: only bodyweight makes sense beside "@"
    base: list[Row] | None = None  # the plan's sets, when the message speaks of them
    planned: Sequence[Row] = ()  # the plan's sets of this movement, for what is left out
    move_at: int = 0
    rounds: int | None = None


@dataclass
class Folded:
    rows: list[Row]
    asks: list[Ask]
    efforts_open: list[tuple[float, int]] = field(default_factory=list)  # after the last set, in its own sentence
    early_effort: float | None = None
    effort_inside: bool = False


class Folder:
    """Folds one block. `span` gives the words of a token range."""

    def __init__(self, block: Block, span: Any, to_kg: Any) -> None:
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
        self.mend = False
        self.link: str | None = None
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
        self.after_sentence = False
        self.ats = [f.value[0] for f in block.facts if f.kind == "at" and not f.note.get("range")]
        self.all_schemes = {f.value for f in block.facts if f.kind == "scheme"}
        self.big_loads = [f for f in block.facts if f.kind == "load" and (f.value or 0) > 10]
        self.asked_load: Fact | None = None
        self.prev: Fact | None = None
        self.said_sets = False
        self.word_row: Row | None = None
        self.last_effort: float | None = None
        self.frozen = 0
        self.last_rep = False
        self.waiting: list[float] = []
        self.waiting_fact: Fact | None = None
        self.each_of = False
        self.tried: Row | None = None
        self.moved = False  # the movement has been named
        self.failure: float | None = None

    # ---- helpers

    def ask(self, about: str, fact: Fact) -> None:
        self.asks.append(Ask(about, self.span(fact.start, fact.end)))

    def last_group(self) -> list[Row]:
        return [row for row in self.rows if row.group == self.group] if self.rows else []

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
            if name == "these":
                return [rows[at - 1] for at in n if 0 < at <= len(rows)]
            return rows[:n] if name == "first" else rows[-n:]
        if scope == "last":
            return self.tail(rows)
        if scope == "first":
            return self.head(rows)
        if scope in ("top", "back"):
            labelled = [row for row in rows if row.label == scope]
            if not labelled and scope == "back" and any(row.label == "top" for row in rows):
                labelled = [row for row in rows if row.label != "top"]
            if not labelled and scope == "top":
                heavy = max((row.load_kg or 0) for row in rows)
                labelled = [row for row in rows if (row.load_kg or 0) == heavy]
                labelled = labelled if len(labelled) == 1 else rows[:1]
            return labelled
        if isinstance(scope, int):
            sides = {row.side for row in rows}
            if {"left", "right"} <= sides:
                pairs = [rows[i : i + 2] for i in range(0, len(rows), 2)]
                return pairs[scope - 1] if 0 < scope <= len(pairs) else []
            return [rows[scope - 1]] if 0 < scope <= len(rows) else []
        return []

    def tail(self, rows: list[Row]) -> list[Row]:
        if len(rows) >= 2 and {rows[-1].side, rows[-2].side} == {"left", "right"}:
            return rows[-2:]
        return rows[-1:]

    def head(self, rows: list[Row]) -> list[Row]:
        if len(rows) >= 2 and {rows[0].side, rows[1].side} == {"left", "right"}:
            return rows[:2]
        return rows[:1]

    # ---- the walk

    def fold(self) -> Folded:
        facts = self.block.facts
        for at, fact in enumerate(facts):
            self.next = facts[at + 1] if at + 1 < len(facts) else None
            handler = getattr(self, "on_" + fact.kind, None)
            if handler is not None:
                handler(fact)
            if fact.kind not in ("word", "claim", "thing"):
                self.prev = fact
        return self.finish()

    def on_sep(self, fact: Fact) -> None:
        if fact.value == 3:
            self.after_sentence = True
            self.side = None
            if self.scope is not None and not (self.scope_fact and self.scope_fact.note.get("numbered")):
                self.scope = None
        if fact.value >= 2:
            self.scope = None if self.scope not in ("all",) else self.scope
            self.side = self.side if fact.note.get("nl") is None else None

    def on_move(self, fact: Fact) -> None:
        self.moved = True

    def on_mend(self, fact: Fact) -> None:
        if fact.value == "swap":
            for row in self.rows:
                row.side = {"left": "right", "right": "left"}.get(row.side or "", row.side)
            return
        self.mend = True

    def on_scheme(self, fact: Fact) -> None:
        self.schemes.add(fact.value)
        if fact.value == "total" and self.bares:
            self.total = (float(self.bares[-1][1].reps or 0), self.bares[-1][0])

    def on_scope(self, fact: Fact) -> None:
        self.scope, self.scope_fact = fact.value, fact
        if fact.value == "over":
            self.over = fact
            return
        if (
            fact.value == "all"
            and self.prev is not None
            and self.prev.kind in ("effort", "at")
            and self.last_effort is not None
        ):
            for row in self.rows:
                row.rpe = self.last_effort
            self.efforts_open.clear()
            self.effort_inside = True
            return
        # "rpe 8 on the last", "@7 first": the effort came before its scope
        if self.prev is not None and self.prev.kind == "effort" and fact.value != "all":
            rows = self.scoped()
            value = self.prev.value
            if (
                rows
                and getattr(self, "effort_rows", None) is not None
                and fact.note.get("text", "").startswith(("on", "at", "in", "for"))
            ):
                for row in self.effort_rows:
                    row.rpe = None
                for row in rows:
                    row.rpe = value
                self.efforts_open.clear()
                self.effort_inside = True
                self.scope = None

    def on_link(self, fact: Fact) -> None:
        self.link = fact.value
        if fact.value == "straight" and len(self.rows) < 2 and not self.more_sets_follow(fact):
            return
        if fact.value == "straight" and self.rows and not self.more_sets_follow(fact):
            self.rows[-1].linked = True
            self.link = None

    def more_sets_follow(self, fact: Fact) -> bool:
        at = self.block.facts.index(fact)
        return any(f.kind in ("rows", "bare") for f in self.block.facts[at + 1 :])

    # ---- work

    def on_rows(self, fact: Fact) -> None:
        entries: list[Entry] = list(fact.value)
        note = fact.note
        if len(self.rows) == 1 and self.word_row is self.rows[0] and not note.get("word") and not self.based:
            self.rows.clear()  # "doubles: 5x2"
        weighted = any(f.kind == "weighted" for f in self.block.facts)
        if note.get("plain") and weighted and len(entries) <= 5 and (entries[0].reps or 0) >= 20 and not self.loaded():
            # "1x35" of weighted chins: reps by load
            note = {**note, "own_load": self.to_kg(float(entries[0].reps or 0))}
            entries = [Entry(len(entries))]
            fact = Fact("rows", fact.start, fact.end, entries, note)
        if self.rows and all(row.reps is None and row.hold_s is None for row in self.rows) and note.get("list"):
            if len(entries) == len(self.rows):
                self.asks = [ask for ask in self.asks if ask.about != "reps"]
                for row, entry in zip(self.rows, entries, strict=True):
                    row.reps = entry.reps
                return None
        self.said_sets = True
        if (
            note.get("unit") == "min"
            and note.get("one")
            and not self.block.hold
            and not {"emom", "every"} & self.all_schemes
        ):
            return None  # minutes of something else; holds of minutes are hangs and handstands
        if (
            note.get("one")
            and note.get("unit") == "sec"
            and not self.block.hold
            and self.rows
            and self.rows[-1].reps is not None
        ):
            return None  # seconds of lowering or of a stop
        if note.get("one") and note.get("unit") == "min" and {"emom", "every"} & self.all_schemes:
            self.minutes.append(entries[0].hold_s or 0)
            return None
        if (
            self.scope is not None
            and self.rows
            and self.scope not in ("all",)
            and len(entries) == 1
            and not note.get("each_of")
        ):
            rows = self.scoped()
            if self.side in ("left", "right"):
                rows = [row for row in rows if row.side == self.side] or rows
            if rows:
                self.override(rows, entries[0])
                return None
        if (
            note.get("list")
            and self.rows
            and len(self.rows) == len(entries)
            and note.get("values")
            and self.prev is not None
        ):
            if (
                self.prev.kind == "sep"
                and self.prev.note.get("mark") == ":"
                and min(note["values"]) >= 10 > max(row.reps or 0 for row in self.rows)
            ):
                return self.on_loads(Fact("loads", fact.start, fact.end, [float(v) for v in note["values"]]))
        if (
            note.get("list")
            and note.get("values")
            and self.rows
            and not self.based
            and self.prev is not None
            and self.prev.kind in ("sep", "rows")
            and len(self.rows) != len(entries)
            and min(note["values"]) >= 10
            and all(row.load_kg is None for row in self.rows)
            and not self.block.hold
            and max(row.reps or 0 for row in self.rows) < 10
        ):
            self.ask("load_kg", fact)
            for row in self.rows:
                row.load_open = True
            return None
        if (
            note.get("list")
            and note.get("values")
            and min(note["values"]) >= 40
            and not self.loaded()
            and self.block.movement not in ("push_up", "squat", "dip", None)
            and not self.block.hold
        ):
            self.ask("reps", fact)
            return None
        count = self.count
        if count is not None and len(entries) == 1 and not note.get("the"):
            entries = [replace(entries[0]) for _ in range(min(count, 40))]
            self.count = None
        elif count is not None and note.get("mark") == "+":
            entries = entries
        elif count is not None and len(entries) == count:
            self.count = None
        if note.get("mark") == "/" and len(entries) == 2 and self.block.one_sided:
            entries[0].side, entries[1].side = "left", "right"
        if self.mend and self.rows and not self.based:
            self.replace_last(entries, note)
            return None
        if self.waiting and len(entries) in (1, len(self.waiting)):
            entries = entries if len(entries) > 1 else [replace(entries[0]) for _ in self.waiting]
            self.add(entries, fact)
            for row, kg in zip(self.rows[-len(entries) :], self.waiting, strict=True):
                row.load_kg = kg
            self.waiting = []
            return None
        heavy = [
            f
            for f in self.block.facts
            if f.kind == "rows" and ("own_load" in f.note or (f.note.get("plain") and len(f.value) >= 15))
        ]
        if note.get("plain") and len(entries) >= 15 and len(heavy) > 1 and not self.block.hold:
            # "20x5, 22.5x4, 25x3": load by reps
            note = {**note, "own_load": self.to_kg(float(len(entries)))}
            entries, fact = entries[:1], Fact("rows", fact.start, fact.end, entries[:1], note)
        self.add(entries, fact)
        self.each_of = bool(note.get("each_of")) and len(entries) == 1
        if note.get("word") and len(entries) == 1:
            self.word_row = self.rows[-1]
        if note.get("mark") == "+" and not self.block.hold:
            self.cluster(entries)

    def cluster(self, entries: list[Entry]) -> None:
        group = self.last_group()
        for row in group[1:]:
            row.linked = True
        if self.count and self.count > 1:
            copies = [replace(row) for _ in range(self.count - 1) for row in group]
            self.rows.extend(copies)
            self.count = None
        self.link = None

    def add(self, entries: list[Entry], fact: Fact) -> None:
        if self.rows:
            self.group += 1
        if self.late:
            if self.late & {"upper_half", "lower_half", "half", "eccentric"}:
                self.apply(self.rows[self.frozen :], self.flags, "pause_pause" in self.flags)
                self.frozen = len(self.rows)
                self.flags -= {"upper_half", "lower_half", "half"}
            self.flags |= self.late
            self.late = set()
        own = fact.note.get("own_load")
        start = len(self.rows)
        for entry in entries:
            row = Row(entry.reps, entry.hold_s, group=self.group)
            if self.block.hold and row.hold_s is None and row.reps is not None and not fact.note.get("reps"):
                row.hold_s, row.reps = float(row.reps), None
            row.side = entry.side or (self.side if self.side in ("left", "right") else None)
            if own is not None:
                row.load_kg = own
            elif self.load_said:
                row.load_kg = self.load
            if self.rpe is not None:
                row.rpe = self.rpe
            if isinstance(self.scope, str) and self.scope in ("top", "back"):
                row.label = self.scope
            if entry.ask:
                self.ask(entry.ask, fact)
            self.rows.append(row)
        self.rpe = None
        self.groups[self.group] = own is not None
        if self.link in ("straight", "drop") and start:
            for row in self.rows[start:]:
                row.linked = True
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

    def override(self, rows: list[Row], entry: Entry) -> None:
        for row in rows:
            if entry.hold_s is not None or (row.hold_s is not None and row.reps is None):
                row.hold_s = entry.hold_s if entry.hold_s is not None else float(entry.reps or 0)
            else:
                row.reps = entry.reps
        self.scope = None
        self.side = None

    def replace_last(self, entries: list[Entry], note: dict[str, Any]) -> None:
        old = self.last_group()
        self.rows = [row for row in self.rows if row.group != self.group]
        model = old[0] if old else Row()
        for entry in entries:
            row = replace(model, reps=entry.reps, hold_s=entry.hold_s, group=self.group)
            if "own_load" in note:
                row.load_kg = note["own_load"]
            if self.load_said and self.load is not None and model.load_kg is None:
                row.load_kg = self.load
            self.rows.append(row)
        self.mend = False

    def each(self) -> None:
        group = self.last_group()
        if not group or any(row.side for row in group):
            return
        start = self.rows.index(group[0])
        pairs: list[Row] = []
        for row in group:
            pairs += [replace(row, side="left"), replace(row, side="right")]
        self.rows[start : start + len(group)] = pairs

    def on_count(self, fact: Fact) -> None:
        value = fact.value
        if self.based:
            self.keep(value)
            return
        if value < 0 or value > 40:
            self.ask("sets", fact)
            return
        group = self.last_group()
        if self.mend and self.count is not None:
            self.count, self.mend = value, False
            return
        pairs = group and len(group) == 2 and {row.side for row in group} == {"left", "right"}
        if group and (len(group) == 1 or pairs) and (self.prev is None or True) and not fact.note.get("only"):
            follow = self.next is not None and self.next.kind == "rows"
            if len(self.rows) == len(group) and not follow:
                self.rows = [replace(row) for _ in range(value) for row in group]
                return
        self.count = value

    def keep(self, n: int) -> None:
        """Only the first n sets of the plan were done (n pairs for one-sided work)."""
        sides = {row.side for row in self.rows}
        step = 2 if {"left", "right"} <= sides else 1
        self.rows = self.rows[: n * step]

    def on_rounds(self, fact: Fact) -> None:
        if self.rows:
            self.rows = [replace(row, group=self.group + i) for i in range(fact.value) for row in self.rows]
        else:
            self.block.rounds = fact.value

    def on_repeat(self, fact: Fact) -> None:
        group = self.last_group()
        if not group and self.side is None:
            return
        if not group or self.side in ("left", "right"):
            self.add([Entry(fact.value)], fact)
            return
        self.rows += [replace(row) for _ in range(fact.value - 1) for row in group]

    def on_bare(self, fact: Fact) -> None:
        value: float = fact.value
        comma = fact.note.get("comma")
        spelled = fact.note.get("spelled")
        if self.scope is not None and self.rows and self.scope not in ("all",):
            rows = self.scoped()
            if rows and not comma and value == int(value):
                if self.side in ("left", "right"):
                    rows = [row for row in rows if row.side == self.side] or rows
                self.override(rows, Entry(int(value)))
                return
        if spelled and self.next_is("word") and self.next is not None and self.next.start == fact.end:
            return
        if self.rows and self.rows[-1].failed and self.rows[-1].reps == value and "got" in self.schemes:
            return
        if self.mend and self.prev is not None and self.last_effort is not None and 5 <= value <= 10:
            self.mend = False
            self.on_effort(Fact("effort", fact.start, fact.end, value))
            return
        verdict = self.next_is("fail") or (
            self.next_is("plan", "scheme") and "fine" in (self.next.note.get("names") or ())
        )
        if verdict and value >= 15 and {"amrap", "attempt"} & self.all_schemes and not self.block.hold:
            # "max single: 45 ok, 50 miss"
            self.add([Entry(1)], fact)
            self.rows[-1].load_kg = fact.note.get("kg", value)
            self.tried = self.rows[-1]
            if len(self.rows) == 2 and self.rows[0].label == "top" and self.rows[0].load_kg is None:
                self.rows.pop(0)
            return
        heavy = value != int(value) or value > 12
        if self.next_is("rows") and self.next is not None and self.next.start == fact.end and not self.rows and heavy:
            self.load, self.load_said = fact.note.get("kg", value), True  # "row 22.5 3x10"
            return
        if spelled and value == 1 and not (self.side or self.next_is("side")):
            return
        if comma and (self.side in ("left", "right") or (self.loaded() and self.rows == [])):
            a, b = self.span(fact.start, fact.end).split(",") if "," in self.span(fact.start, fact.end) else ("", "")
            if a.strip().isdigit() and b.strip().isdigit():
                self.add([Entry(int(a)), Entry(int(b))], fact)
                return
        moved = self.prev is not None and self.prev.kind == "move"
        if self.block.movement in ("one_arm_counterweight", "band_pull_up") and moved and self.assist is None:
            if value != int(value) or (
                self.next_is("sep") and self.next is not None and self.next.note.get("mark") == ":"
            ):
                self.assist = fact.note.get("kg", value)
                return
        attempt = self.prev is not None and self.prev.kind == "scheme" and self.prev.value == "attempt"
        if attempt and value >= 15 and not self.block.hold:
            self.attempt_load = fact.note.get("kg", value)
            return
        if self.based and value == int(value) and not self.mend:
            if self.scope == "all":
                self.override(self.rows, Entry(int(value)))
            elif self.side in ("left", "right") or self.next_is("side"):
                pass
            elif not fact.note.get("spelled"):
                self.ask("reps", fact)
            return
        if self.mend and self.rows and value == int(value):
            self.override(self.rows[-1:], Entry(int(value)))
            self.mend = False
            return
        whole = value == int(value) and not comma
        if self.count is not None and whole and not spelled:
            self.on_rows(Fact("rows", fact.start, fact.end, [Entry(int(value))]))
            return
        if not whole:
            if (
                self.prev is not None and self.prev.kind == "scheme" and self.prev.value in ("got", "attempt")
            ) or self.next_is("fail"):
                self.attempt_load = fact.note.get("kg", value)
                return
            self.ask("load_kg" if self.rows else "reps", fact)
            if not self.rows:
                self.rows.append(Row(None, load_open=True, group=self.group))
            return
        sure = (
            self.side in ("left", "right", "each")
            or self.next_is("side")
            or self.loaded()
            or self.next_is("load", "at")
            or fact.note.get("before_move")
            or bool(self.schemes & {"amrap", "ladder", "got", "total"})
            or (bool(self.rows) and not self.bares_open())
            or self.next_is("effort")
            or self.next_is("link")
            or (self.next_is("sep") and spelled)
        )
        if (
            self.prev is not None
            and self.prev.kind == "scheme"
            and self.prev.value in ("got", "attempt")
            and self.attempt_load is None
            and not self.loaded()
            and value > 20
        ):
            sure = False
        if value > 200 and not self.block.hold:
            self.ask("reps", fact)
            self.rows.append(Row(None, group=self.group))
            return
        hold_unsure = self.block.hold
        if (sure and not hold_unsure) or (hold_unsure and self.prev_is_list()):
            self.add([Entry(int(value))], fact)
            self.bares.append((fact, self.rows[-1]))
            return
        if self.rows and self.bares_open() and not hold_unsure:
            # several bare numbers: each is a set
            for _, row in self.bares:
                row.load_open = False
            self.add([Entry(int(value))], fact)
            self.bares.append((fact, self.rows[-1]))
            return
        self.add([Entry(int(value))], fact)
        row = self.rows[-1]
        row.load_open = True
        self.bares.append((fact, row))

    def bares_open(self) -> bool:
        return any(row.load_open for _, row in self.bares)

    def prev_is_list(self) -> bool:
        return False

    def next_is(self, *kinds: str) -> bool:
        return self.next is not None and self.next.kind in kinds

    def loaded(self) -> bool:
        return self.load_said or self.based or self.assist is not None

    # ---- loads

    def on_load(self, fact: Fact) -> None:
        value = fact.value
        adds = (
            self.prev is not None
            and self.prev.kind == "load"
            and fact.note.get("how") == "plus"
            and fact.note.get("unit")
        )
        if adds and self.prev is not None and self.prev.note.get("unit") and self.prev.value:
            total = self.prev.value + value
            for row in self.rows:
                if row.load_kg == self.prev.value:
                    row.load_kg = total
            self.load = total if self.load_said else self.load
            return
        if fact.note.get("same"):
            known = [row.load_kg for row in self.rows if row.load_kg is not None]
            if not known:
                return
            value = known[-1]
            for row in self.last_group():
                if row.load_kg is None:
                    row.load_kg = value
            self.load, self.load_said = value, True
            return
        if (
            fact.note.get("none")
            and self.scope is None
            and self.rows
            and all(r.load_kg is not None for r in self.rows)
            and not self.next_is("rows", "bare")
        ):
            return
        if self.mend:
            self.mend = False
            for row in self.rows:
                row.load_kg = value
            self.load, self.load_said = value, True
            return
        if self.scope is not None and self.rows:
            if self.scope == "rest":
                for row in self.rows:
                    if not row.touched:
                        row.load_kg = value
                self.scope = None
                return
            rows = self.scoped()
            if rows:
                for row in rows:
                    row.load_kg = value
                    row.touched = True
                self.scope = None
                return
        if self.based:
            if self.next_is("rows") and not fact.note.get("none"):
                self.load, self.load_said = value, True
            for row in self.rows:
                row.load_kg = value
            self.load, self.load_said = value, True
            return
        group = self.last_group()
        if group and all(row.load_kg is None for row in group) and not self.groups.get(self.group):
            follows = self.next is not None and self.next.kind == "load" and not self.next.note.get("none")
            if follows or getattr(self, "load_list", None):
                self.load_list = [*getattr(self, "load_list", []), value]
                return
            open_rows = [
                row
                for row in self.rows
                if row.load_kg is None and (row.group == self.group or row.load_open or self.same_list(row))
            ]
            for row in open_rows:
                row.load_kg = value
                row.load_open = False
            return
        if getattr(self, "load_list", None):
            self.load_list.append(value)
            return
        self.load, self.load_said = value, True
        if group and not self.more_follows(fact) and value not in (row.load_kg for row in group):
            # a second load and no sets for it
            if not fact.note.get("none"):
                self.second_load = fact

    def same_list(self, row: Row) -> bool:
        return any(r is row for _, r in self.bares)

    def more_follows(self, fact: Fact) -> bool:
        at = next(i for i, f in enumerate(self.block.facts) if f is fact)
        return any(f.kind in ("rows", "bare", "count", "fail", "scheme") for f in self.block.facts[at + 1 :])

    def on_loads(self, fact: Fact) -> None:
        loads = fact.value
        if self.rows and len(loads) == len(self.rows):
            for row, kg in zip(self.rows, loads, strict=True):
                row.load_kg = kg
            return
        if self.rows:
            self.ask("load_kg", fact)
            for row in self.rows:
                row.load_open = True
            return
        self.waiting, self.waiting_fact = list(loads), fact  # "20, 22.5 and 25 kg for a triple each"

    def on_at(self, fact: Fact) -> None:
        number, kg = fact.value
        group = self.last_group()
        has_load = (bool(group) and group[-1].load_kg is not None) or (self.load_said and not group) or self.based
        hold = bool(group) and group[-1].hold_s is not None
        free = not self.block.loadable
        if has_load or hold or free or fact.note.get("range"):
            self.on_effort(Fact("effort", fact.start, fact.end, number))
            return
        ramp = any(v > 10 for v in self.ats) or self.big_loads
        if ramp and kg is not None:
            self.on_load(Fact("load", fact.start, fact.end, kg))
            return
        if not group:
            self.load_at_wait = fact
        self.ask("load_kg", fact)
        for row in group:
            row.load_open = True
        if not group:
            self.asked_load = fact

    def on_assist(self, fact: Fact) -> None:
        if fact.value is None:
            if fact.note.get("suffix") and self.prev is not None and self.prev.kind == "load":
                self.assist = self.prev.value
                for row in self.rows:
                    row.load_kg = None
                self.load, self.load_said = None, False
            return
        if self.rows and not self.based:
            for row in self.rows:
                if row.assist_kg is None:
                    row.assist_kg = fact.value
            return
        self.assist = fact.value

    # ---- efforts

    def on_effort(self, fact: Fact) -> None:
        value = fact.value
        self.last_effort = value
        if self.mend:
            self.mend = False
        if not self.rows and self.moved and value == 10 and self.count is None and self.scope is None and not self.side:
            self.failure = value
            return
        if not self.rows:
            if self.count is not None or self.scope == "all" or self.load_said or self.side:
                self.all_rpe = value if self.scope == "all" or self.count is not None else None
                if self.side in ("left", "right") and self.flags is not None:
                    self.side_efforts = {**getattr(self, "side_efforts", {}), self.side: value}
                    self.side = None
                elif self.all_rpe is None:
                    self.early_effort = value
            else:
                self.early_effort = value
            return
        if self.side in ("left", "right"):
            rows = [row for row in self.rows if row.side == self.side]
            if rows:
                rows[-1].rpe = value
                self.effort_inside, self.side = True, None
                return
            if all(row.side is None for row in self.rows) and len(self.last_group()) == 1 and self.block.one_sided:
                self.rows[-1].side, self.rows[-1].rpe = self.side, value
                self.template = replace(self.rows[-1], side=None, rpe=None)
                self.side, self.effort_inside = None, True
                return
            if getattr(self, "template", None) is not None:
                self.rows.append(replace(self.template, side=self.side, rpe=value))
                self.side = None
                return
        if self.scope == "all":
            for row in self.rows:
                row.rpe = value
            self.effort_inside = True
            return
        if self.scope == "over":
            self.ask("rpe", fact)
            return
        if self.scope is not None:
            rows = self.scoped()
            if rows:
                for row in rows:
                    row.rpe = value
                self.scope = None
                self.effort_inside = True
                return
        # "left 3 rpe 8, right 3 rpe 7": the last pair's, but never over a side that has its own already.
        tail = self.tail(self.rows)
        self.effort_rows = [row for row in tail if row.rpe is None] or tail
        for row in self.effort_rows:
            row.rpe = value
        own_sentence = self.after_sentence and not self.said_since_sentence(fact)
        comma = self.prev is not None and self.prev.kind == "sep"
        if own_sentence or comma:
            self.efforts_open.append((value, 2 if own_sentence else 1))
        else:
            self.effort_inside = True

    def said_since_sentence(self, fact: Fact) -> bool:
        at = next((i for i, f in enumerate(self.block.facts) if f.start == fact.start), 0)
        for before in reversed(self.block.facts[:at]):
            if before.kind == "sep" and before.value == 3:
                return False
            if before.kind in ("rows", "load", "bare", "side"):
                return True
        return True

    def on_efforts(self, fact: Fact) -> None:
        rows = self.rows
        if len(rows) == len(fact.value):
            for row, value in zip(rows, fact.value, strict=True):
                row.rpe = value
            self.effort_inside = True
            return
        if len(rows) == 2 * len(fact.value):
            for i, row in enumerate(rows):
                row.rpe = fact.value[i // 2]
            return
        self.ask("rpe", fact)

    def on_effort_range(self, fact: Fact) -> None:
        low, high = fact.value
        whole = (
            getattr(self, "over", None) is not None
            or self.scope in ("over", "all")
            or (self.next_is("scope") and self.next is not None and self.next.value in ("over", "all"))
        )
        if whole or fact.note.get("between"):
            self.ask("rpe", fact)
            return
        self.on_effort(Fact("effort", fact.start, fact.end, (low + high) / 2))

    # ---- sides, flags, failures

    def on_side(self, fact: Fact) -> None:
        name = fact.value
        if name == "each":
            if fact.note.get("plain") and not self.block.one_sided and (len(self.rows) != 1 or self.count):
                # "three sets, 5 each", "2 in the tank each": each set
                if self.next_is("effort"):
                    self.scope = "all"
                elif self.prev is not None and self.prev.kind == "effort" and self.last_effort is not None:
                    for row in self.rows:
                        row.rpe = self.last_effort
                    self.effort_inside = True
                return
            if (
                self.last_group()
                and not any(row.side for row in self.last_group())
                and not (self.prev and self.prev.kind == "sep" and self.prev.value >= 2 and self.next_is("rows"))
            ):
                self.each()
            elif not self.rows:
                self.side = "each"
            return
        if name == "unclear":
            self.ask("side", fact)
            self.side = None
            return
        if name == "other":
            opposite = {"left": "right", "right": "left"}.get(self.last_side or "")
            if opposite is None:
                return
            name = opposite
        open_rows = [row for row in self.last_group() if row.side is None]
        near = self.prev is not None and self.prev.kind in ("rows", "bare", "load", "fail", "flag", "effort", "at")
        if (
            open_rows
            and near
            and (self.block.one_sided or self.last_side or True)
            and self.side not in ("left", "right")
        ):
            group = self.last_group()
            if not self.based:
                for row in group:
                    if row.side is None:
                        row.side = name
                        row.load_open = False
                self.last_side = name
                return
        self.side = name
        self.last_side = name

    def on_flag(self, fact: Fact) -> None:
        if self.rows and not self.based:
            self.late.add(fact.value)
        else:
            self.flags.add(fact.value)
        if fact.value == "half":
            self.half = fact

    def on_last_rep(self, fact: Fact) -> None:
        self.last_rep = True

    def on_fail(self, fact: Fact) -> None:
        ordinal = fact.value
        if ordinal is None and self.last_rep:
            ordinal, fact.note["rep"] = "last", True
        if self.tried is not None and self.rows and self.rows[-1] is self.tried:
            self.tried.reps, self.tried.failed = 0, True
            return
        if fact.note.get("weak"):
            if not (self.prev is None or self.prev.kind == "sep" or self.prev.kind == "fail") or not (
                self.next is None or self.next_is("sep")
            ):
                return
            if fact.note.get("name") == "yes":
                if "attempt" in self.schemes:
                    self.rows.append(Row(1, load_kg=self.load if self.load_said else None, group=self.group + 1))
                return
            if "attempt" in self.schemes:
                self.rows.append(
                    Row(0, failed=True, load_kg=self.load if self.load_said else None, group=self.group + 1)
                )
            return
        if self.scope is not None and self.rows:
            rows = self.scoped()
            if rows:
                for row in rows:
                    row.failed = True
                    if isinstance(ordinal, int):
                        row.reps = ordinal - 1
                    elif ordinal == "last" and fact.note.get("rep") and row.reps:
                        row.reps -= 1
                    elif row.reps is not None and self.based:
                        row.reps = None
                self.scope = None
                return
        if self.side in ("left", "right"):
            self.add([Entry(0)], fact)
            self.rows[-1].failed = True
            return
        if not (isinstance(ordinal, int) and fact.note.get("rep")) and (
            self.attempt_load is not None or (self.load_said and not self.rows)
        ):
            self.add([Entry(0)], fact)
            self.rows[-1].failed = True
            if self.attempt_load is not None:
                self.rows[-1].load_kg = self.attempt_load
                self.attempt_load = None
            self.load_said = False
            return
        if not self.rows:
            if isinstance(ordinal, int) and fact.note.get("rep"):
                self.add([Entry(ordinal - 1)], fact)
            elif self.count is not None:
                self.add([Entry(0) for _ in range(self.count)], fact)
                self.count = None
            else:
                self.add([Entry(0)], fact)
            for row in self.last_group():
                row.failed = True
            return
        last = self.rows[-1]
        if last.reps == 0:
            last.failed = True
            return
        group = self.last_group()
        if ordinal == "last" and fact.note.get("rep") and last.reps:
            last.failed, last.reps = True, last.reps - 1
            return
        if isinstance(ordinal, int):
            if fact.note.get("rep") or (
                len(group) == 1 and last.reps is not None and ordinal == last.reps + 1 and last.reps != 1
            ):
                if self.based and fact.note.get("rep"):
                    self.fail_rep = ordinal
                    return
                last.failed = True
                last.reps = ordinal - 1
                return
            if ordinal <= len(self.rows) and not all(row.reps == 1 for row in self.rows):
                self.rows[ordinal - 1].failed = True
                return
            if ordinal <= len(self.rows):
                self.rows[ordinal - 1].failed, self.rows[ordinal - 1].reps = True, 0
                return
        new = replace(last, reps=0, failed=True, rpe=None, linked=False)
        if self.count is not None or (
            self.prev is not None and self.prev.kind == "bare" and self.prev.note.get("spelled")
        ):
            self.group += 1
            new = replace(new, group=self.group, load_kg=None)
            self.count = None
        self.rows.append(new)

    def on_instead(self, fact: Fact) -> None:
        new, old, unit = fact.value
        if not self.rows:
            if unit in ("kg", "lb") or (unit is None and (new != int(new) or max(new, old) > 12)):
                self.load, self.load_said = self.to_kg(new, unit), True
            return
        rows = self.scoped() if self.scope is not None else self.rows
        change(rows or self.rows, new, old, unit, self.to_kg, self)
        self.scope = None

    def on_delta(self, fact: Fact) -> None:
        amount, kind, sign = fact.value
        rows = (self.scoped() if self.scope is not None else self.rows) or self.rows
        for row in rows:
            shift(row, amount, kind, sign)

    def on_ask(self, fact: Fact) -> None:
        self.ask(fact.value, fact)
        if fact.value == "load_kg":
            if self.rows:
                for row in self.last_group():
                    row.load_open = True
            else:
                self.asked_load = fact

    def on_left(self, fact: Fact) -> None:
        if fact.note.get("clock") and self.block.hold and fact.value and fact.value < 3600:
            self.add([Entry(hold_s=fact.value)], fact)

    # ---- the end

    def finish(self) -> Folded:
        if self.minutes:
            n = 0
            if "emom" in self.all_schemes:
                n = int(self.minutes[-1] // 60)
            elif len(self.minutes) == 2 and self.minutes[0]:
                n = int(self.minutes[1] // self.minutes[0])
            if n and len(self.rows) == 1 and n <= 60:
                self.rows = [replace(self.rows[0]) for _ in range(n)]
        loads = getattr(self, "load_list", None)
        if loads:
            group = self.last_group()
            if len(loads) == len(group):
                for row, kg in zip(group, loads, strict=True):
                    row.load_kg = kg
            elif len(loads) >= 1 and group:
                fact = next(f for f in reversed(self.block.facts) if f.kind == "load")
                self.ask("load_kg", fact)
                for row in group:
                    row.load_open = True
        if self.attempt_load is not None:
            self.rows.append(Row(1, load_kg=self.attempt_load, group=self.group + 1))
        if getattr(self, "second_load", None) is not None and not self.based:
            fact = self.second_load
            kgs = {row.load_kg for row in self.rows}
            if not any(k is not None and fact.value is not None and abs(k - fact.value) < 0.1 for k in kgs):
                near = [k for k in kgs if k and fact.value and abs(k - fact.value) / k < 0.02]
                if not near:
                    self.ask("load_kg", fact)
                    for row in self.rows:
                        row.load_kg, row.load_open = None, True
        if self.waiting and self.waiting_fact is not None:
            self.ask("sets", self.waiting_fact)
        facts = self.block.facts
        at = next((i for i, fact in enumerate(facts) if fact.kind == "move"), None)
        if not self.rows and not self.asks and at and facts[at - 1].kind == "scope" and facts[at - 1].value == "first":
            if any(fact.kind == "sep" and fact.note.get("mark") == "!" for fact in facts[at:]):
                self.rows.append(Row(1))  # "my first muscle-up!"
        things = [fact for fact in self.block.facts if fact.kind == "thing"]
        if things and self.rows and not self.based and all(row.load_kg is None for row in self.rows):
            self.ask("load_kg", things[0])
            for row in self.rows:
                row.load_open = True
        vague = next((fact for fact in self.block.facts if fact.kind == "vague"), None)
        if vague is not None and not self.rows:
            self.ask("sets", vague)
        loaded = [f for f in self.block.facts if f.kind == "load" and not f.note.get("none") and f.value]
        if (
            not self.rows
            and not self.asks
            and loaded
            and self.block.movement
            and not self.based
            and self.block.move_at >= 0
        ):
            self.ask("reps", loaded[0])
            self.rows.append(Row(None, load_kg=self.load))
        spent = self.failure is not None or any(f.kind == "effort" and f.value == 10 for f in self.block.facts)
        if spent:
            for _, row in self.bares:
                row.load_open = False
        if self.failure is not None:
            for row in self.rows:
                row.rpe = row.rpe if row.rpe is not None else self.failure
        if (
            len(self.rows) == 2
            and self.total is None
            and len(self.bares) == 1
            and self.bares[0][0].note.get("before_move")
        ):
            many, few = self.rows[0].reps or 0, self.rows[1].reps or 0
            if self.bares[0][1] is self.rows[0] and few and many % few == 0 and many // few <= 40 and self.each_of:
                self.rows = [replace(self.rows[1]) for _ in range(many // few)]  # "50 dips in sets of ten"
        all_rpe = getattr(self, "all_rpe", None)
        if all_rpe is not None:
            for row in self.rows:
                row.rpe = row.rpe if row.rpe is not None else all_rpe
        for side, value in getattr(self, "side_efforts", {}).items():
            for row in self.rows:
                if row.side == side:
                    row.rpe = value
        if self.count is not None and not self.rows and not self.based:
            if "fail" not in self.schemes and self.block.facts:
                fact = next(f for f in self.block.facts if f.kind == "count")
                self.ask("reps", fact)
                self.rows = [
                    Row(None, load_kg=self.load if self.load_said else None) for _ in range(min(self.count, 40))
                ]
        if self.total is not None:
            amount, fact = self.total
            sized = [row for row in self.rows if row.reps and row is not self.total_row(fact)]
            self.rows = [row for row in self.rows if row is not self.total_row(fact)]
            if len(sized) == 1 and sized[0].reps and amount % sized[0].reps == 0 and amount / sized[0].reps <= 60:
                self.rows = [replace(sized[0], load_open=False) for _ in range(int(amount // sized[0].reps))]
            elif not sized:
                self.ask("sets", fact)
                self.rows = [Row(None)]
        for fact, row in self.bares:
            if row.load_open and row in self.rows and row.load_kg is None and len(self.bares) == 1 and row.side is None:
                self.ask("reps", fact)
                row.reps = None
                row.hold_s = None
            elif len(self.bares) > 1:
                row.load_open = False
        if self.block.rounds and len(self.rows) == 1:
            self.rows = [replace(self.rows[0]) for _ in range(self.block.rounds)]
        self.finish_flags()
        if self.side == "each" and self.rows:
            self.each()
        for row in self.rows:
            if row.reps == 0 and not row.failed:
                row.failed = True
            if self.assist is not None and row.assist_kg is None:
                row.assist_kg = self.assist
        return Folded(self.rows, self.asks, self.efforts_open, self.early_effort, self.effort_inside)

    def total_row(self, fact: Fact) -> Row | None:
        return next((row for f, row in self.bares if f is fact), None)

    def finish_flags(self) -> None:
        paused = "pause_pause" in self.flags | self.late
        for group, flags in ((None, self.flags), (self.group, self.late)):
            rows = self.rows[self.frozen :] if group is None else self.last_group()
            self.apply(rows, flags, paused)

    def apply(self, rows: list[Row], flags: set[str], paused: bool) -> None:
        both = self.flags | self.late
        for row in rows:
            if "eccentric" in flags:
                row.eccentric = True
            if "upper_half" in flags:
                row.rom = "upper_half"
            elif "lower_half" in flags:
                row.rom = "lower_half"
            elif "half" in flags and not both & {"upper_half", "lower_half"}:
                row.rom = None
            if paused:
                said = tuple(p for p in PAUSES if "pause_" + p in flags)
                row.pauses = tuple(p for p in PAUSES if p in row.pauses or p in said)
        if "half" in flags and rows and not both & {"upper_half", "lower_half"}:
            fact = getattr(self, "half", None)
            if fact is not None:
                self.ask("rom", fact)
                self.half = None


def change(rows: Sequence[Row], new: float, old: float, unit: str | None, to_kg: Any, folder: Any = None) -> None:
    """ "50 instead of 45": whichever value of the sets is the old one becomes the new one."""
    for row in rows:
        if unit == "reps" or (
            unit is None and row.reps == old and not (row.load_kg and abs(row.load_kg - to_kg(old)) < 0.3)
        ):
            row.reps = int(new)
        elif unit == "sec" or (unit is None and row.hold_s == old):
            row.hold_s = float(new)
        elif unit in ("kg", "lb") or (row.load_kg is not None and abs(row.load_kg - to_kg(old)) < 0.3):
            row.load_kg = to_kg(new, unit if unit in ("kg", "lb") else None)


def shift(row: Row, amount: float, kind: str, sign: int) -> None:
    """ "2.5 less", "one more rep"."""
    if kind == "load":
        if row.assist_kg:
            row.assist_kg = max(0.0, row.assist_kg + sign * amount)
        elif row.load_kg:
            row.load_kg = max(0.0, row.load_kg + sign * amount)
    elif kind == "reps" and row.reps is not None:
        row.reps = max(0, row.reps + sign * int(amount))
    elif kind == "hold" and row.hold_s is not None:
        row.hold_s = max(0.0, row.hold_s + sign * amount)
