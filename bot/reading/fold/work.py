"""Sets themselves: schemes of sets and reps, and lists, each to the rule that knows what it is."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.fold.lists import ListFacts


class WorkFacts(ListFacts):
    """Work done, told as such."""

    def on_rows(self, fact: Fact) -> None:
        entries: list[Entry] = list(fact.value)
        self.one_more = self.one_more or (bool(fact.note.get("more")) and bool(self.rows))
        note = fact.note
        counted = self.bares[0][1] if len(self.bares) == 1 and len(self.rows) == 1 else None
        parted = self.prev is not None and self.prev.kind == "sep" and self.prev.note.get("mark") in (",", ":", "-")
        parted = parted and not self._own_set(fact)
        if counted is not None and parted and not note.get("list") and counted.reps == len(entries) > 1:
            self.rows, self.bares = [], []  # "six, no, five, five sets of two": the number of the sets
        by_word = len(self.rows) == 1 and self.word_row is self.rows[0] and self.rows[0].load_kg is None
        if by_word and not note.get("word") and not self.based:
            self.rows.clear()  # "doubles: 5x2"
        if (
            note.get("plain")
            and self.weighted
            and len(entries) <= 5
            and (entries[0].reps or 0) >= 20
            and not self.loaded()
        ):
            # "1x35" of weighted chins: reps by load
            note = {**note, "own_load": self.to_kg(float(entries[0].reps or 0))}
            entries = [Entry(len(entries))]
            fact = Fact("rows", fact.start, fact.end, entries, note)
        if (
            self.rows
            and all(row.reps is None and row.hold_s is None for row in self.rows)
            and note.get("list")
            and len(entries) == len(self.rows)
        ):
            self.asks = [ask for ask in self.asks if ask.about != "reps"]
            for row, entry in zip(self.rows, entries, strict=True):
                row.reps = entry.reps
            return
        if note.get("the") and self.rows and self.prev is not None and self.prev.kind == "link":
            return  # "clusters of 1-1-1 with 20 s between the singles"
        if self._placed_behind(fact, entries):
            return
        if self._named_again(fact, entries) or self._each_again(entries):
            return
        self.said_sets = True
        if self._seconds_of_holds(fact, entries):
            return
        if self._time_of_other(entries, note):
            return
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
                return
        if self._list_of_loads(fact, entries) or self._spelt_out(fact, entries):
            return
        whole = self.bares[0][1] if len(self.bares) == 1 and len(self.rows) == 1 and not self.based else None
        between = [one for one in self.block.facts if self.bares and self.bares[0][0].end <= one.start < fact.start]
        tied = all(one.kind in ("word", "move") or (one.kind == "sep" and one.value == 1) for one in between)
        if whole is not None and tied and len(entries) > 1 and whole.reps == sum(one.reps or 0 for one in entries):
            self.rows, self.bares = [], []  # "100 push-ups in 10 sets of 10"
        if (
            note.get("word")
            and note.get("each_of")
            and len(self.bares) == 1
            and self.rows
            and self.rows == self.last_group()
            and self.prev is not None
            and self.prev.kind == "sep"
            and 1 < self.bares[0][0].value <= 20
        ):
            # "4 each arm, singles": so many sets, of so many reps
            many = int(self.bares[0][0].value)
            pair = [replace(row, reps=entries[0].reps, load_open=False) for row in self.rows]
            self.rows = [replace(row) for _ in range(many) for row in pair]
            self.bares = []
            return
        self._place(fact, entries, note)

    def _own_set(self, fact: Fact) -> bool:
        """Whether the number told before these sets is a set by itself: "warm-up 5 bw, work sets 5x2"."""
        told = self.bares[0][0].end if self.bares else fact.start
        between = [one for one in self.block.facts if told <= one.start < fact.start]
        return any(one.kind in ("load", "plan") or one.value == 3 for one in between)
