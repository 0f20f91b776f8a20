"""Efforts find their sets: beside a side or a scope theirs, else the last set."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from bot.reading.facts import Fact
from bot.reading.fold.state import FoldState


class EffortFacts(FoldState):
    """RPE and reserve."""

    def on_effort(self, fact: Fact) -> None:
        value = fact.value
        if fact.note.get("session"):
            self.early_effort = value
            return
        self.last_effort = value
        if self._of_set_to_come(fact):
            self.rpe = value
            return
        if self.mend:
            self.mend = False
        if (
            not self.rows
            and (self.moved or fact.note.get("words"))
            and value == 10
            and self.count is None
            and self.scope is None
            and not self.side
        ):
            self.failure = value
            return
        if not self.rows and (self.scope == "last" or (self.next is not None and self.next.value == "last")):
            self.last_rpe, self.early_effort = value, None  # "rpe 9 on the last, pull-ups 4x3"
            return
        if not self.rows and self.next is not None and self.next.kind == "scope" and self.next.value == "all":
            self.all_rpe = value  # "two left on every set, dips 4x6"
            return
        if not self.rows:
            if self.count is not None or self.scope == "all" or self.load_said or self.side:
                self.all_rpe = value if self.scope == "all" or self.count is not None else None
                if self.side in ("left", "right") and self.flags is not None:
                    self.side_efforts = {**self.side_efforts, self.side: value}
                    self.side = None
                elif self.all_rpe is None:
                    self.early_effort = value
            else:
                self.early_effort = value
            return
        if self.side in ("left", "right"):
            if self._both_rated():
                self.each()  # "3 sets of 2, left rpe 7.5, right rpe 6.5"
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
            if self.template is not None:
                self.rows.append(replace(self.template, side=self.side, rpe=value))
                self.side = None
                return
        if self.scope == "all":
            for row in self.rows[self.work_from :]:
                row.rpe = value
            self.effort_inside = True
            return
        if self.scope == "over":
            self.ask("rpe", fact)
            return
        if self.scope is not None:
            rows = [row for row in self.rows if row.rpe is None] if self.scope == "rest" else self.scoped()
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

    def _of_set_to_come(self, fact: Fact) -> bool:
        """ "3x5 with 20, then bodyweight to failure: 11": of the set that follows."""
        at = self.place(fact)
        before = [one.kind for one in self.block.facts[max(0, at - 2) : at]]
        new = before == ["sep", "load"] and self.block.facts[at - 2].value == 2
        return bool(self.rows) and new and bool(fact.note.get("words")) and self.next_is("bare", "rows")

    def said_since_sentence(self, fact: Fact) -> bool:
        at = next((i for i, f in enumerate(self.block.facts) if f.start == fact.start), 0)
        for before in reversed(self.block.facts[:at]):
            if before.kind == "sep" and before.value == 3:
                return False
            if before.kind in ("rows", "load", "bare", "side"):
                return True
        return True

    def _both_rated(self) -> bool:
        """Whether sets of one-sided work were told without a side, and each side has its effort."""
        rated = {
            one.value
            for one, after in pairwise(self.block.facts)
            if one.kind == "side" and after.kind in ("effort", "at")
        }
        group = self.last_group()
        whole = len(group) == len(self.rows) > 1 and not any(row.side for row in group)
        return whole and self.block.one_sided and {"left", "right"} <= rated

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
        group = self.last_group()
        if len(group) == len(fact.value) and not any(row.side for row in group):
            for row, value in zip(group, fact.value, strict=True):
                row.rpe = value  # "warm-up 2x5, main 4x4 rpe 7 8 8 9"
            self.effort_inside = True
            return
        self.ask("rpe", fact)

    def on_effort_range(self, fact: Fact) -> None:
        low, high = fact.value
        whole = (
            self.over is not None
            or self.scope in ("over", "all")
            or (self.next_is("scope") and self.next is not None and self.next.value in ("over", "all"))
        )
        if whole or fact.note.get("between"):
            self.ask("rpe", fact)
            return
        self.on_effort(Fact("effort", fact.start, fact.end, (low + high) / 2))
