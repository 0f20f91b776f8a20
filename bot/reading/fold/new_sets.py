"""Reps or holds to new sets: the count, the mend and the loads that waited for them, clusters."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from bot.reading.facts import Entry, Fact
from bot.reading.fold.counts import CountFacts
from bot.reading.fold.rows import Row


class NewSets(CountFacts):
    """What was told becomes sets of its own."""

    def _place(self, fact: Fact, entries: list[Entry], note: dict[str, Any]) -> None:
        """Reps or holds to new sets, with the count, the mend and the loads that waited for them."""
        if not self.rows and self.count is None and len(entries) == 1 and isinstance(self.scope, tuple):
            self.count = self.scope[1] if self.scope[0] == "first" else None  # "first two sets 5 reps at 20, then …"
        count = self.count
        if count is not None and self._told_singly(fact, count):
            count = self.count = None
        if count is not None and len(entries) == 1 and not note.get("the"):
            entries = [replace(entries[0]) for _ in range(min(count, 40))]
            self.count = None
        elif count is not None and note.get("mark") != "+" and len(entries) == count:
            self.count = None
        if note.get("mark") == "/" and len(entries) == 2 and self.block.one_sided:
            entries[0].side, entries[1].side = "left", "right"
        if self.mend and self.rows and not self.based:
            self.replace_last(entries, note)
            return
        if self.waiting and len(entries) in (1, len(self.waiting)):
            entries = entries if len(entries) > 1 else [replace(entries[0]) for _ in self.waiting]
            self.add(entries, fact)
            for row, kg in zip(self.rows[-len(entries) :], self.waiting, strict=True):
                row.load_kg = kg
            self.waiting = []
            return
        heavy = len(self.heavy) > 1 and "own_load" not in note and any(one is fact for one in self.heavy)
        if note.get("plain") and heavy and not self.block.hold:
            # "20x5, 22.5x4, 25x3": load by reps
            note = {**note, "own_load": self.to_kg(float(len(entries)))}
            entries, fact = entries[:1], Fact("rows", fact.start, fact.end, entries[:1], note)
        self.add(entries, fact)
        self.plain_at = fact if note.get("plain") and len(entries) > 1 and "own_load" not in note else None
        self.each_of = bool(note.get("each_of")) and len(entries) == 1
        if (note.get("word") or note.get("top")) and len(entries) == 1:
            self.word_row = self.rows[-1]
        own = self.prev is not None and self.prev.kind == "load" and len(entries) == 1 and len(self.rows) == 1
        if own and (note.get("word") or note.get("top") or self._another_load(fact)) and self.prev and self.prev.value:
            self.load, self.load_said = None, False  # "+47.5 for a single, then 3x3 at 40"
            self.groups[self.group] = True
        paused = self.link in ("rest_pause", "cluster") and note.get("list") and len(entries) > 1
        singles = not note.get("plain") and len(entries) > 1 and all(entry.reps == 1 for entry in entries)
        paused = paused or (self.link == "cluster" and singles and self.count is None)  # "cluster: 5 singles with 35"
        if (note.get("mark") == "+" or paused) and not self.block.hold:
            at = self.place(fact)
            if any(one.kind == "rows" and one.note.get("mark") == "+" for one in self.block.facts[at + 1 :]):
                self.count = None  # "two clusters: 2+1+1 and 2+1+1": each is told
            self.cluster()

    def _another_load(self, fact: Fact) -> bool:
        """ "Worked up to 35 for a single, then 3x3 at 27.5": whether the sets after it have their own load."""
        after = [one for one in self.block.facts[self.place(fact) + 1 :] if one.kind not in ("word", "sep")]
        kinds = [one.kind for one in after[:2]]
        return bool(fact.note.get("reps")) and kinds == ["rows", "load"] and bool(after[0].note.get("plain"))

    def _told_singly(self, fact: Fact, count: int) -> bool:
        """ "3 sets at +15: 6 reps 3 RIR, 6 reps 2 RIR, 5 reps": as many are told as were counted."""
        plain = fact.note.get("plain") and "own_load" not in fact.note
        if count < 2 or plain or fact.note.get("mark") == "+":
            return False
        told = 0
        for one in self.block.facts[self.place(fact) :]:
            if one.kind in ("count", "rounds", "scope", "link") or ("own_load" in one.note and len(one.value) > 1):
                return False
            if one.kind == "rows":
                told += len(one.value)
        return told == count and len(fact.value) < count

    def cluster(self) -> None:
        group = self.last_group()
        goes_on = self.link == "rest_pause" and len(self.rows) == len(group) + 1  # "myo reps, 12 then 4 4 3"
        for row in group[not goes_on :]:
            row.linked = True
        if self.count and self.count > 1:
            copies = [replace(row) for _ in range(self.count - 1) for row in group]
            self.rows.extend(copies)
            self.count = None
        self.link = None

    def replace_last(self, entries: list[Entry], note: dict[str, Any]) -> None:
        old = self.last_group()
        self.rows = [row for row in self.rows if row.group != self.group]
        model = old[0] if old else Row()
        for entry in entries:
            row = replace(model, reps=entry.reps, hold_s=entry.hold_s, group=self.group)
            if "own_load" in note:
                row.load_kg = note["own_load"]
            elif self.next_is("load"):
                row.load_kg = None  # "4x5 with 20, no, 5x4 with 17.5"
            if self.load_said and self.load is not None and model.load_kg is None:
                row.load_kg = self.load
            self.rows.append(row)
        self.mend, self.groups[self.group] = False, False
