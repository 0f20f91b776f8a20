"""Bare numbers: reps, a load, an effort, a number told before, or a question."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import FREE_WEIGHTS, Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.fold.work import WorkFacts

MOST_MISSED = 6
MOST_MENDED = 12  # a higher number that mends loaded sets is a load
FEW = 5  # so many kilograms are no load that anyone mentions
LEAST_RATED = 6  # an effort said as a bare number
WHOLE_FEATS = frozenset({"muscle_up", "ring_muscle_up", "one_arm_pull_up", "one_arm_chin_up"})


class BareFacts(WorkFacts):
    """Numbers with nothing to say what they are."""

    def on_bare(self, fact: Fact) -> None:
        if fact.note.get("spent"):
            return
        value: float = fact.value
        comma = fact.note.get("comma")
        spelled = fact.note.get("spelled")
        first = self.scope[1] if isinstance(self.scope, tuple) and self.scope[0] == "first" else 1
        if not self.rows and first > 1 and value == int(value) and not comma and self.count is None:
            self.by_ordinals = True
            self.add([Entry(int(value)) for _ in range(first)], fact)  # "first two sets 5, third 4"
            return
        self.by_ordinals = self.by_ordinals or (not self.rows and self.scope in (1, "first") and self.count is None)
        if self.scope == "last" and self.by_ordinals and not comma and value == int(value) and not self.based:
            self.add([Entry(int(value))], fact)
            return
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
        after = self.next.note.get("names", ()) if self.next is not None else ()
        missed = self.next_is("fail") and self.next is not None and self.next.start == fact.end and self.rows
        if missed and self.next is not None and not self.next.note.get("weak") and value in range(1, MOST_MISSED + 1):
            parted = self.prev is not None and self.prev.kind == "sep" and self.prev.value == 2
            if parted and self.next.value is None:
                self.add([Entry(0) for _ in range(int(value))], fact)  # "MU 5x1, then 2 missed"
                for row in self.last_group():
                    row.failed = True
                return
        verdict = self.next_is("fail") or (self.next_is("plan", "scheme") and "fine" in after)
        if verdict and value >= 15 and {"amrap", "attempt"} & self.all_schemes and not self.block.hold:
            # a maximum tried: 45 went up, 50 did not
            self.add([Entry(1)], fact)
            self.rows[-1].load_kg = fact.note.get("kg", value)
            self.tried = self.rows[-1]
            if len(self.rows) == 2 and self.rows[0].label == "top" and self.rows[0].load_kg is None:
                self.rows.pop(0)
            return
        if self.rows and not self.mend and self.scope is None and self.told_before(fact):
            return
        heavy = value != int(value) or value > 12
        if heavy and not self.rows and self._before_scheme(fact):
            self.load, self.load_said = fact.note.get("kg", value), True  # "did 50: 3x8"
            return
        if self.next_is("rows") and self.next is not None and self.next.start == fact.end and not self.rows and heavy:
            self.load, self.load_said = fact.note.get("kg", value), True  # "row 22.5 3x10"
            return
        loaded = self.next_is("load") and self.next is not None and self.next.start == fact.end and self.next.value
        if spelled and value == 1 and loaded and (not self.rows or self.loads_told()):
            self.add([Entry(1)], fact)  # "one with 40, one with 42.5"
            return
        if spelled and value == 1 and not (self.side or self.next_is("side")):
            return
        told = self.prev is not None and self.prev.kind == "sep" and self.prev.note.get("mark") == ":"
        if comma and (self.side in ("left", "right") or (self.loaded() and (self.rows == [] or told))):
            a, b = self.span(fact.start, fact.end).split(",") if "," in self.span(fact.start, fact.end) else ("", "")
            if a.strip().isdigit() and b.strip().isdigit():
                self.add([Entry(int(a)), Entry(int(b))], fact)
                return
        moved = self.prev is not None and self.prev.kind == "move"
        if (
            self.block.movement in ("one_arm_counterweight", "band_pull_up")
            and moved
            and self.assist is None
            and (
                value != int(value)
                or (self.next_is("sep") and self.next is not None and self.next.note.get("mark") == ":")
            )
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
        loads = {row.load_kg for row in self.rows}
        if self.mend and self.rows and loads - {None, 0.0} and (value != int(value) or value > MOST_MENDED):
            self.on_load(Fact("load", fact.start, fact.end, fact.note.get("kg", value), {"how": "at"}))
            return
        if self.mend and self.rows and self.side in ("left", "right"):
            mended = [row for row in self.rows if row.side == self.side]
            if mended and value == int(value):
                self.override(mended[-1:], Entry(int(value)))
                self.mend = False
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
            or (moved and value <= FEW and self.block.movement in WHOLE_FEATS)
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
        if self.loose(fact):
            return
        hold_unsure = self.block.hold and not (self.rows and self.rows[-1].hold_s is not None)
        if sure and not hold_unsure:
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

    def _before_scheme(self, fact: Fact) -> bool:
        """Whether a colon and a whole scheme follow: what stands before them is their load."""
        at = next((i for i, one in enumerate(self.block.facts) if one is fact), 0)
        after = self.block.facts[at + 1 : at + 3]
        colon = len(after) == 2 and after[0].kind == "sep" and after[0].note.get("mark") == ":"
        return colon and after[1].kind == "rows" and bool(after[1].note.get("plain"))

    def loose(self, fact: Fact) -> bool:
        """ "3x8, a 7 maybe", "squats 3x5 80": a number after a whole scheme with nothing to say what it is.

        Beside a free weight it is the load (those lifts always have one); else it is asked about, never made a set.
        "4x6, 3" and "4x5, then 3" do tell one more set: no more reps than before, with nothing said of it.
        """
        group = self.last_group()
        at = next((i for i, one in enumerate(self.block.facts) if one is fact), 0)
        before = self.block.facts[:at]
        told = [one for one in before if one.kind not in ("word", "sep", "load", "effort", "claim")]
        scheme = told[-1] if told else None
        if scheme is None or scheme.kind != "rows" or not scheme.note.get("plain") or len(group) < 2 or self.based:
            return False
        if self.next_is("side", "load", "scope", "link", "fail", "rows", "bare", "flag", "count") or self.side:
            return False
        if self.scope is not None or self.count is not None or self.mend or fact.note.get("before_move"):
            return False
        most = max(row.reps or 0 for row in group)
        parted = self.prev is not None and self.prev.kind == "sep" and self.prev is before[-1]
        closes = self.next is None or self.next_is("sep", "move", "effort", "at", "claim")
        if parted and closes and fact.value <= most and not self.after_sentence:
            return False
        unloaded = all(row.load_kg is None for row in group)
        if self.prev is scheme and before[-1] is scheme and fact.value > FEW and unloaded:
            if self.block.movement in FREE_WEIGHTS:
                for row in group:
                    row.load_kg = fact.note.get("kg", fact.value)
                return True
            self.ask("load_kg", fact)
            for row in group:
                row.load_open = True
            return True
        self.ask("rpe" if LEAST_RATED <= fact.value <= 10 else "sets", fact)
        return True

    def told_before(self, fact: Fact) -> bool:
        """ "the 6 was all I had", "40 was a record": a number of sets told before, spoken of once more."""
        if self.side or self.next_is("side"):
            return False
        if not (self.after_sentence or fact.note.get("the") or self.next_is("word")):
            return False
        if fact.note.get("the") and any(row.reps == fact.value for row in self.rows):
            return True
        kg = fact.note.get("kg", fact.value)
        return kg >= 15 and any(row.load_kg is not None and abs(row.load_kg - kg) < 0.05 for row in self.rows)

    def on_repeat(self, fact: Fact) -> None:
        group = self.last_group()
        if not group and fact.note.get("counted") and self.side is None:
            note = {"spelled": False, "comma": False, "kg": float(fact.value)}
            self.on_bare(Fact("bare", fact.start, fact.end, float(fact.value), note))  # "pull-ups, five times"
            return
        if not group and self.side is None:
            return
        if not group or self.side in ("left", "right"):
            self.add([Entry(fact.value)], fact)
            return
        sides = [row.side for row in self.rows[-2:]]
        apart = self.prev is not None and self.prev.kind == "sep"
        if len(self.rows) == 2 and set(sides) == {"left", "right"} and apart:
            group = self.rows[-2:]  # "left 20 s, right 25 s, twice"
        self.rows += [replace(row) for _ in range(fact.value - 1) for row in group]

    def on_left(self, fact: Fact) -> None:
        if fact.note.get("clock") and self.block.hold and fact.value and fact.value < 3600:
            self.add([Entry(hold_s=fact.value)], fact)
