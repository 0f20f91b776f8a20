"""Sets themselves: schemes of sets and reps, lists, counts, and bare numbers that may be reps."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from bot.reading.facts import Entry, Fact
from bot.reading.fold_marks import MarkFacts
from bot.reading.rows import Row

FEW = 5  # so many kilograms are no load that anyone mentions
LEAST_RATED = 6  # an effort said as a bare number
FREE_WEIGHTS = frozenset({"squat", "row", "lat_pulldown", "split_squat", "biceps_curl", "hammer_curl"})  # never without
WHOLE_FEATS = frozenset({"muscle_up", "ring_muscle_up", "one_arm_pull_up", "one_arm_chin_up"})


class WorkFacts(MarkFacts):
    """Work done."""

    def on_rows(self, fact: Fact) -> None:
        entries: list[Entry] = list(fact.value)
        note = fact.note
        if len(self.rows) == 1 and self.word_row is self.rows[0] and not note.get("word") and not self.based:
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
        ) and (
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
        if note.get("plain") and len(entries) >= 15 and len(self.heavy) > 1 and not self.block.hold:
            # "20x5, 22.5x4, 25x3": load by reps
            note = {**note, "own_load": self.to_kg(float(len(entries)))}
            entries, fact = entries[:1], Fact("rows", fact.start, fact.end, entries[:1], note)
        self.add(entries, fact)
        self.each_of = bool(note.get("each_of")) and len(entries) == 1
        if note.get("word") and len(entries) == 1:
            self.word_row = self.rows[-1]
        if note.get("mark") == "+" and not self.block.hold:
            self.cluster()
        return None

    def cluster(self) -> None:
        group = self.last_group()
        for row in group[1:]:
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
            if self.load_said and self.load is not None and model.load_kg is None:
                row.load_kg = self.load
            self.rows.append(row)
        self.mend = False

    def on_count(self, fact: Fact) -> None:
        value = fact.value
        if self.based:
            self.keep(value)
            return
        if fact.note.get("within") and len(self.bares) == 1 and len(self.rows) == 1:
            # "20 pull-ups in 5 sets": how many in each is not said
            self.ask("sets", fact)
            self.rows = [Row(None)]
            self.bares = []
            return
        if value < 0 or value > 40:
            self.ask("sets", fact)
            return
        group = self.last_group()
        if self.mend and self.count is not None:
            self.count, self.mend = value, False
            return
        pairs = group and len(group) == 2 and {row.side for row in group} == {"left", "right"}
        if group and (len(group) == 1 or pairs) and not fact.note.get("only"):
            follow = self.next is not None and self.next.kind == "rows"
            if len(self.rows) == len(group) and not follow:
                self.rows = [replace(row) for _ in range(value) for row in group]
                return
        self.count = value

    def on_rounds(self, fact: Fact) -> None:
        if fact.note.get("pair") and self.rows:
            pair = self.tail(self.rows)
            self.rows += [replace(row) for _ in range(fact.value - 1) for row in pair]
        elif self.rows:
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
        after = self.next.note.get("names", ()) if self.next is not None else ()
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

    def prev_is_list(self) -> bool:
        return False

    def on_left(self, fact: Fact) -> None:
        if fact.note.get("clock") and self.block.hold and fact.value and fact.value < 3600:
            self.add([Entry(hold_s=fact.value)], fact)
