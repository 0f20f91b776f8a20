"""How many sets: "4 sets", "4x4 and 2 extra sets", "20 pull-ups in 5 sets", rounds."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.fold.marks import MarkFacts
from bot.reading.fold.rows import Row

MOST_FURTHER = 20  # sets more than told before


class CountFacts(MarkFacts):
    """Counts of sets and of rounds."""

    def on_count(self, fact: Fact) -> None:
        value = fact.value
        if fact.note.get("bare") and self.scope not in (None, "all") and (rows := self.scoped()):
            self.override(rows, Entry(value))  # "in the fourth I was done after 4"
            return
        if self.based:
            self.keep(value)
            return
        if fact.note.get("more") and self.rows:
            self.one_more = True
            at = self.place(fact)
            told = next((one for one in self.block.facts[at + 1 :] if one.kind not in ("sep", "word")), None)
            if told is None or told.kind not in ("rows", "bare"):
                last = self.tail(self.rows)
                if self._turned():
                    last = [replace(row, load_kg=self.load) for row in last]  # "then dropped to 20 for two more sets"
                self.rows += [replace(row, rpe=None) for _ in range(min(value, MOST_FURTHER)) for row in last]
                return  # "4x4 and 2 extra sets"
        summed = fact.note.get("within") or "total" in self.all_schemes
        if summed and len(self.bares) == 1 and len(self.rows) == 1:
            # "20 pull-ups in 5 sets", "20 in total (5 sets)": how many in each is not said
            self.ask("sets", fact)
            self.rows = [Row(None)]
            self.bares = []
            return
        if value < 0 or value > 40 or (self._turned() and self.rows and not self.more_sets_follow(fact)):
            self.ask("sets", fact)  # "3x5 at 25, then dropped to 20 for two sets": of these, or two more
            return
        group = self.last_group()
        if self.mend and self.count is not None:
            self.count, self.mend = value, False
            return
        if self.mend and group and len({(row.reps, row.hold_s, row.load_kg) for row in group}) == 1 and value:
            # "5 sets of 3. No wait, only 4 sets"
            self.rows = [row for row in self.rows if row.group != self.group]
            self.rows += [replace(group[0]) for _ in range(value)]
            self.mend = False
            return
        pairs = group and len(group) == 2 and {row.side for row in group} == {"left", "right"}
        if group and (len(group) == 1 or pairs) and not fact.note.get("only"):
            follow = self.next is not None and self.next.kind == "rows"
            if self.one_of_some and value > 1:
                self.ask("sets", fact)
                return
            if (len(self.rows) == len(group) or self._for_so_many(fact)) and not follow:
                self.rows = [row for row in self.rows if not any(row is one for one in group)]
                self.rows += [replace(row) for _ in range(value) for row in group]
                return
        self.count = value

    def _turned(self) -> bool:
        """Whether a changed load stands right before: "dropped to 20"."""
        return self.prev is not None and self.prev.kind == "load" and bool(self.prev.note.get("turned"))

    def on_rounds(self, fact: Fact) -> None:
        if self.rows and fact.note.get("after"):
            self.flags, self.late = self.flags | self.late, set()  # "3 each side, lower half, x2"
        if fact.note.get("pair") and self.rows:
            pair = self.tail(self.rows)
            self.rows += [replace(row) for _ in range(fact.value - 1) for row in pair]
        elif self.rows and fact.note.get("after") and len(self.rows) > 1 and self.tail(self.rows) != self.rows:
            self.ask("sets", fact)
        elif self.rows:
            self.rows = [replace(row, group=self.group + i) for i in range(fact.value) for row in self.rows]
        else:
            self.block.rounds = fact.value
