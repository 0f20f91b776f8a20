"""Reps and times of sets told before, or of none: "only 2 reps on the fifth", "4 reps each", "5x1 hangs, 12 s"."""

from __future__ import annotations

from typing import Any

from bot.reading.facts import Entry, Fact
from bot.reading.fold.new_sets import NewSets

PAUSED = frozenset({"pause_pause", "pause_top", "pause_middle", "pause_bottom"})
SOON = 4  # facts


class ToldSets(NewSets):
    """Each asks whether what looks like new sets says something of those that stand already."""

    def _placed_behind(self, fact: Fact, entries: list[Entry]) -> bool:
        """ "5x3, only 2 reps on the fifth": the reps of a set that is named behind them."""
        after = [one for one in self.block.facts[self.place(fact) + 1 :] if one.kind != "word" and one.value != "the"]
        scope = after[0].value if after and after[0].kind == "scope" else None
        named = scope == "last" or isinstance(scope, int)
        if not named or self.scope is not None or len(entries) != 1 or entries[0].reps is None or self.based:
            return False
        if len(self.rows) < 2 or fact.note.get("word") or self.side in ("left", "right"):
            return False
        self.scope = scope
        rows = self.scoped()
        self.scope = None
        if not rows or any((row.reps or 0) < (entries[0].reps or 0) for row in rows):
            return False
        self.override(rows, entries[0])
        after[0].note["spent"] = True
        return True

    def _named_again(self, fact: Fact, entries: list[Entry]) -> bool:
        """ "RPE 9 on the double", sentences after it was told: the effort is that set's."""
        rows = [row for row in self.rows if row.reps == entries[0].reps]
        rated = len(rows) == 1 and self._effort_soon(fact)  # "5@25 3@45 1@65, the single was a true RPE 10"
        if not fact.note.get("the") or not (self.after_sentence or rated) or not rows or self.based:
            return False
        if rated:
            self.scope = self.rows.index(rows[0]) + 1
            return True
        if self.prev is not None and self.prev.kind == "effort":
            for row in self.effort_rows:
                row.rpe = None
            for row in rows:
                row.rpe = self.last_effort
            self.efforts_open.clear()
            self.effort_inside = True
        return True

    def _effort_soon(self, fact: Fact) -> bool:
        """Whether an effort follows, with hardly a word between."""
        after = [one for one in self.block.facts[self.place(fact) + 1 :][:SOON] if one.kind not in ("word", "scheme")]
        return bool(after) and after[0].kind == "effort"

    def _each_again(self, entries: list[Entry]) -> bool:
        """ "3 sets of 4, 4 reps each": the reps told once more."""
        each = self.next is not None and self.next.kind == "side" and bool(self.next.note.get("plain"))
        group = self.last_group()
        told = len(entries) == 1 and entries[0].reps is not None
        return each and told and len(group) > 1 and all(row.reps == entries[0].reps for row in group)

    def _seconds_of_holds(self, fact: Fact, entries: list[Entry]) -> bool:
        """ "5x1 hangs, 12 s": the seconds of holds whose number is told; of "3x3, 12 s" the number is asked."""
        holds, group = self.plain_at, self.last_group()
        timed = bool(fact.note.get("one") and fact.note.get("unit") == "sec")
        if not self.block.hold or not timed or holds is None or self.based or self.scope is not None:
            return False
        if any(one.hold_s for one in holds.value):
            return False
        for row in group:
            row.hold_s = entries[0].hold_s
        if any(one.reps != 1 for one in holds.value):
            self.ask("sets", holds)
        return True

    def _time_of_other(self, entries: list[Entry], note: dict[str, Any]) -> bool:
        """Whether a time is no hold: minutes of the session, seconds of lowering, a set every minute."""
        if (
            note.get("unit") == "min"
            and note.get("one")
            and not self.block.hold
            and not {"emom", "every"} & self.all_schemes
        ):
            return True  # minutes of something else; holds of minutes are hangs and handstands
        if (
            note.get("one")
            and note.get("unit") == "sec"
            and not self.block.hold
            and self.rows
            and self.rows[-1].reps is not None
        ):
            return True  # seconds of lowering or of a stop
        seconds = note.get("one") and note.get("unit") == "sec" and not self.block.hold and not self.rows
        if seconds and self.scope == "all":
            return True  # "alle 90 Sekunden 3 Klimmzüge"
        if seconds and self.prev is not None and self.prev.kind == "flag" and self.flags & PAUSED:
            return True  # "paused at the top 2 s each: pull-ups 3x4"
        timed = [one.hold_s for one in entries if one.hold_s is not None]
        last = self.last_group()
        lowered = "eccentric" in self.flags | self.late and not self.block.hold and len(timed) == len(entries)
        if lowered and len(last) == 1 and last[0].reps == len(entries) > 1:
            return True  # "3 negatives left (5s, 5s, 4s)"
        if note.get("one") and note.get("unit") == "min" and {"emom", "every"} & self.all_schemes:
            self.minutes.append(entries[0].hold_s or 0)
            return True
        return False
