"""Sets themselves: schemes of sets and reps, lists, counts, rounds."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from bot.reading.facts import Entry, Fact
from bot.reading.fold.marks import MarkFacts
from bot.reading.fold.rows import Row

ARROWS = frozenset({"-", ">", "=", "->", "→", "⇒", "=>"})  # "5x5 -> 5 5 4 4 3"
MOST_FURTHER = 20  # sets more than told before
PAUSED = frozenset({"pause_pause", "pause_top", "pause_middle", "pause_bottom"})
SOON = 4  # facts
LEAST_SPELT_OUT = 3  # sets of a list that tells how a scheme came out
MORE_THAN_ASKED = 3  # so many reps more than the scheme says are still its own sets


class WorkFacts(MarkFacts):
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

    def _list_of_loads(self, fact: Fact, entries: list[Entry]) -> bool:
        """Whether a list is no list of reps: loads, one a set, or numbers too high to be either for sure."""
        note = fact.note
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
            self.on_loads(Fact("loads", fact.start, fact.end, [self.to_kg(float(v)) for v in note["values"]]))
            return True
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
            return True
        if (
            note.get("list")
            and note.get("values")
            and min(note["values"]) >= 40
            and not self.loaded()
            and self.block.movement not in ("push_up", "squat", "dip", None)
            and not self.block.hold
        ):
            self.ask("reps", fact)
            return True
        return False

    def _spelt_out(self, fact: Fact, entries: list[Entry]) -> bool:
        """Whether a list tells the sets of the scheme before it one by one: "5x5: 5, 5, 5, 4, 3"."""
        group = self.last_group()
        whole = self.bares[0][1] if len(self.bares) == 1 and len(self.rows) == 1 else None
        if whole is not None and fact.note.get("list") and whole.reps == sum(one.reps or 0 for one in entries):
            if whole.load_kg is not None:
                self.load, self.load_said = whole.load_kg, True  # "20 pull-ups with 10 kg: 7, 6, 4, 3"
            self.rows, self.bares = [], []  # "60 push-ups: 20, 20, 12, 8"
            return False
        if not fact.note.get("list") or fact.note.get("mark") == "+" or self.plain_at is None or self.based:
            return False
        between = [one for one in self.block.facts if self.plain_at.end <= one.start < fact.start]
        if self._came_out_as(fact, entries, between):
            for row, one in zip(group, entries, strict=True):
                row.reps = one.reps
            return True
        arrows = [one for one in between if self.span(one.start, one.end) in ARROWS]
        tied = ("sep", "move", "load", "effort", "at", "weighted")
        if any(one.kind not in tied for one in between if one not in arrows):
            return False
        seps = [one for one in between if one.kind == "sep" and one not in arrows]
        if any(one.value > 1 for one in seps) or (seps and seps[-1].note.get("mark") not in (":", "(")):
            return False
        most = max(row.reps or 0 for row in group)
        if not seps and not arrows and len(entries) != len(group):
            return False
        if len(entries) != len(group) or any((one.reps or 0) > most + MORE_THAN_ASKED for one in entries):
            self.ask("sets", fact)
            return True
        for row, one in zip(group, entries, strict=True):
            row.reps, row.side = one.reps, one.side or row.side
        return True

    def _came_out_as(self, fact: Fact, entries: list[Entry], between: list[Fact]) -> bool:
        """ "4x6 with 8 kg, 6 6 6 5", "4x6, got 6 6 6 5": as many sets as the scheme has, none with more reps."""
        group = self.last_group()
        got = any(one.kind == "scheme" and one.value == "got" for one in between)
        apart = [one for one in between if one.kind == "sep"]
        if not (apart or got) or len(entries) != len(group) or len(group) < LEAST_SPELT_OUT or self.side is not None:
            return False
        if any(one.kind not in ("sep", "load", "effort", "at", "scheme", "claim") for one in between):
            return False
        if any(one.value == 2 or one.note.get("mark") in (":", "(", "and") for one in apart):
            return False  # "4x6, then 6 6 6 5"
        after = [one for one in self.block.facts[self.place(fact) + 1 :] if one.kind != "word"][:1]
        if any(one.kind in ("load", "loads", "at", "scope") for one in after) or any(
            one.side or one.hold_s for one in entries
        ):
            return False
        reps, most = [one.reps or 0 for one in entries], max(row.reps or 0 for row in group)
        return max(reps) <= most and (got or reps[0] == most)

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
