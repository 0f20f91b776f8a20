"""Bare numbers of a set that is pointed at: "first two sets 5, third 4, last 3", "5x3, last set 9"."""

from __future__ import annotations

from bot.reading.facts import Entry, Fact
from bot.reading.fold.bare_loads import LEAST_RATED, BareLoads
from bot.reading.fold.rows import Row
from bot.reading.little import little

MOST_OF_A_SET = 2  # a set, or the pair of a one-sided one


class BarePlaces(BareLoads):
    """Each rule takes a number that tells the reps of a named set, or its effort."""

    def _short_of_scope(self, fact: Fact) -> bool:
        """ "5x3 with 20, last set to failure, got 2": what came of the set that is named before its effort."""
        beside = [one for one in (self.prev, self.next) if one is not None and one.kind == "scheme"]
        if not any(one.value == "got" for one in beside) or self.based or self.scope:
            return False
        silent = ("word", "sep", "scheme")
        before = [one for one in self.block.facts[: self.place(fact)] if one.kind not in silent][-2:]
        if [one.kind for one in before] != ["scope", "effort"] or fact.value != int(fact.value):
            return False
        self.scope = before[0].value
        rows = self.scoped()
        if len(rows) > MOST_OF_A_SET or not rows:
            self.scope = None
            return False
        self.override(rows, Entry(int(fact.value)))
        return True

    def _by_place(self, fact: Fact) -> bool:
        """ "first two sets 5, third 4, last 3": sets told one by one."""
        whole = fact.value == int(fact.value) and not fact.note.get("comma")
        first = self.scope[1] if isinstance(self.scope, tuple) and self.scope[0] == "first" else 1
        counted = self.count is not None and (self.scope in (1, "first") or 1 < first < self.count)
        if not self.rows and whole and (self.count is None or counted):
            self.count, self.expected = None, self.count or self.expected  # "vier Sätze: im ersten acht, im zweiten …"
            self.by_ordinals = self.by_ordinals or first > 1 or self.scope in (1, "first")
            if first > 1:
                self.add([Entry(int(fact.value)) for _ in range(first)], fact)
                return True
        nth = 1 if self.scope == "first" else self.scope
        if self.by_ordinals and nth == len(self.rows) + 1 and whole and fact.note.get("spelled") and not self.side:
            self.add([Entry(int(fact.value))], fact)  # "im ersten satz acht im zweiten sieben"
            return True
        last = self.scope == "last" or (isinstance(self.scope, tuple) and self.scope[0] == "last")
        if last and self.by_ordinals and whole and not self.based:
            many = self.scope[1] if isinstance(self.scope, tuple) else 1
            self.add([Entry(int(fact.value)) for _ in range(many)], fact)
            return True
        return False

    def _rates_last(self, fact: Fact) -> bool:
        """ "5x2 at 30, 9 on the last": a number far above the reps of the set that is named behind it is its effort."""
        last, follow = self.rows[-1:], self.next
        behind = follow is not None and follow.kind == "scope" and follow.value == "last" and self.scope is None
        if not behind or not last or last[0].reps is None or self.based or not LEAST_RATED <= fact.value <= 10:
            return False
        if fact.value <= last[0].reps + 1 or fact.note.get("comma"):
            return False
        if self._after_scheme("got") or (self.prev is not None and self.prev.kind == "plan"):
            last[0].reps, last[0].rpe = int(fact.value), None  # "3x5+, got 8 on the last"
            if follow is not None:
                follow.note["spent"] = True
            return True
        self.on_effort(Fact("effort", fact.start, fact.end, float(fact.value)))
        return True

    def _of_scope(self, fact: Fact) -> bool:
        """The reps of a set that was pointed at."""
        if not self.rows or self.scope in (None, "all") or fact.note.get("comma") or fact.value != int(fact.value):
            return False
        rows = self.scoped()
        if not rows:
            return False
        other = self.total is not None and len(self.rows) == 2 and self.each_of and fact.value != rows[0].reps
        if other and self.scope in ("last", ("last", 1)):
            self.add([Entry(int(fact.value))], fact)  # "100 dips, sets of 15 till the last one which was 10"
            return True
        if self.scope == "last" and self._ends_a_list(fact):
            self.add([Entry(int(fact.value))], fact)  # "3,3,3,3 and on the last 1"
            return True
        more = all(fact.value > (row.reps or 0) + 1 for row in rows)
        if self.last_effort is not None and more and LEAST_RATED <= fact.value <= 10 and not self.block.hold:
            self.on_effort(Fact("effort", fact.start, fact.end, float(fact.value)))  # "all rpe 7, the last was 8"
            return True
        if more and self._either(fact, rows):
            return True
        if self.side in ("left", "right"):
            rows = [row for row in rows if row.side == self.side] or rows
        self.override(rows, Entry(int(fact.value)))
        return True

    def _either(self, fact: Fact, rows: list[Row]) -> bool:
        """ "5x3, last set 9": more reps than the scheme's, or its effort; where a word judges it, its effort."""
        one = len(rows) <= MOST_OF_A_SET and len(self.rows) > len(rows) and not self.block.hold
        if not one or self.by_ordinals or not LEAST_RATED <= fact.value <= 10:
            return False
        if self._after_scheme("got") or "amrap" in self.all_schemes or any(row.reps is None for row in rows):
            return False
        if self._judged(fact):
            self.on_effort(Fact("effort", fact.start, fact.end, float(fact.value)))
            return True
        self.ask("reps", fact)
        for row in rows:
            row.reps = None
        self.scope = None
        return True

    def _judged(self, fact: Fact) -> bool:
        """Whether a word right beside a number says how it went: "a solid 9", "9 knapp"."""
        facts, at = self.block.facts, self.place(fact)
        beside = [one for one in facts[max(0, at - 1) : at + 2] if one.kind == "word"]
        return any(self.span(one.start, one.end).lower() in little("judging") for one in beside)

    def _ends_a_list(self, fact: Fact) -> bool:
        """Whether "and the last 1" goes on with a list told set by set, and does not only repeat its end."""
        facts = (self.block.facts[at] for at in range(self.place(fact) - 1, -1, -1))
        told = (f for f in facts if f.kind not in ("word", "scope", "move", "load") and f.value != "only")
        mark, rows = next(told, None), next(told, None)
        joined = mark is not None and mark.kind == "sep" and mark.note.get("mark") == "and"
        listed = joined and rows is not None and rows.kind == "rows" and rows.note.get("list") and not self.based
        return bool(listed) and self.rows[-1].reps != fact.value and not self.rows[-1].side
