"""Sets told once more, and the numbers left over: "five times", "twice", "got 1:48"."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.fold.bare_loads import LEAST_RATED
from bot.reading.fold.bares import BareFacts


class RepeatFacts(BareFacts):
    """How often what was told was done, and a clock time or a number of ten that nothing else took."""

    def on_repeat(self, fact: Fact) -> None:
        if self.attempt_load is not None:
            self.tries = fact.value  # "tried 45 twice and failed both"
            return
        group = self.last_group()
        if group and group[-1].failed and self.prev is not None and self.prev.kind == "fail":
            group = group[-1:]  # "got 2, then failed 3 times"
        if not group and fact.note.get("counted") and self._listed_as_often(fact):
            return
        if not group and fact.note.get("counted") and self.side is None:
            note = {"spelled": False, "comma": False, "kg": float(fact.value)}
            self.on_bare(Fact("bare", fact.start, fact.end, float(fact.value), note))  # "pull-ups, five times"
            return
        if not group and self.side is None:
            return
        if not group or self.side in ("left", "right"):
            self.add([Entry(fact.value)], fact)
            return
        then = self.prev is not None and self.prev.kind == "sep" and self.prev.value == 2
        if then and fact.note.get("counted") and len(group) == 1 and group[0].reps and not self.based:
            # "five times with 20 kg, then four times"
            self.rows.append(replace(group[0], reps=fact.value, rpe=None, group=self.group + 1))
            self.group += 1
            return
        sides = [row.side for row in self.rows[-2:]]
        since = [one.kind for one in self.block.facts[: self.place(fact)]]
        apart = "sep" in since[max((n for n, kind in enumerate(since) if kind in ("bare", "rows")), default=0) :]
        if len(self.rows) == 2 and set(sides) == {"left", "right"} and apart:
            group = self.rows[-2:]  # "left 20 s, right 25 s, twice"
        self.rows += [replace(row) for _ in range(fact.value - 1) for row in group]

    def _listed_as_often(self, fact: Fact) -> bool:
        """ "L-sit four times: 12, 15, 14 and 10 seconds": the number of the sets that are listed behind."""
        work = next((one for one in self.block.facts[self.place(fact) + 1 :] if one.kind in ("rows", "bare")), None)
        listed = work is not None and work.kind == "rows" and bool(work.note.get("list"))
        return listed and work is not None and len(work.value) == fact.value

    def on_left(self, fact: Fact) -> None:
        closes = self.next is None or (self.next_is("sep") and self.next is not None and self.next.value == 3)
        rated = fact.note.get("of_ten") and fact.value is not None and LEAST_RATED <= fact.value <= 10
        if rated and closes and self.rows and self.prev is not None and self.prev.kind == "sep":
            self.on_effort(Fact("effort", fact.start, fact.end, float(fact.value)))  # "5x3 with 20, 8/10"
            return
        tried = "attempt" in self.schemes | self.all_schemes and self._after_scheme("got") and len(self.rows) == 1
        if fact.note.get("clock") and tried and self.rows[0].hold_s and (fact.value or 0) < self.rows[0].hold_s:
            self.rows[0].hold_s = fact.value  # "two-minute hang attempt: got 1:48"
            return
        if fact.note.get("clock") and self.block.hold and fact.value and fact.value < 3600:
            self.add([Entry(hold_s=fact.value)], fact)
