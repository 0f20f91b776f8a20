"""Sides, scopes, ranges and pauses, links: what is said about sets."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.fold.misses import MissFacts
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.text import fold

# "Each" is said of sets here, never of sides.
BOTH_ARMS = frozenset(
    "pull_up chin_up neutral_grip_pull_up ring_pull_up dip ring_dip push_up muscle_up ring_row".split()
)
DUMBBELLS = frozenset({"biceps_curl", "hammer_curl"})  # done with one in each hand
NEAR_A_SIDE = frozenset({"rows", "bare", "load", "fail", "flag", "effort", "at", "move"})
PARTS = frozenset({"upper_half", "lower_half", "full"})  # of the range of motion
MOST_FIRST = 20
LEAST_RUNGS = 3  # fewer sets are no ladder
WORK_OR_SCOPE = frozenset({"rows", "bare", "count", "loads", "load", "scope", "rounds"})


class MarkFacts(MissFacts):
    """Marks on sets."""

    def _for_so_many(self, fact: Fact) -> bool:
        """ "… then 4 reps at 20 kg for 2 sets": the sets right before, so many of them."""
        before = self.block.facts[self.place(fact) - 1] if self.place(fact) else None
        led = before is not None and fold(self.span(before.start, before.end)).text in little("load_for")
        return led and self.prev is not None and self.prev.kind in ("load", "rows", "effort", "at")

    def _only_last_told(self, fact: Fact) -> bool:
        """ "4 sets of pull-ups, the last only 3": how many the others had is not said."""
        if self.rows or self.based or self.count is None or self.count < 2 or fact.value not in ("last", self.count):
            return False
        told = [one for one in self.block.facts if one.kind in ("rows", "bare", "loads", "efforts")]
        others = [one for one in self.block.facts if "rest" in (one.value, *one.note.get("names", ()))]
        if len(told) == 2 and others and told[0].end <= others[0].start:
            told = told[:1]  # "the last 6, the others 8"
        value = told[0].value[0] if len(told) == 1 and told[0].kind == "rows" else None
        single = len(told) == 1 and (value is None or (len(told[0].value) == 1 and value.hold_s is None))
        return single and told[0].kind in ("rows", "bare") and told[0].start >= fact.end

    def on_scope(self, fact: Fact) -> None:
        if fact.note.get("spent"):
            return
        group = self.last_group()
        first = isinstance(fact.value, tuple) and fact.value[0] == "first" and len(group) == 1 and not self.based
        if first and len(self.rows) == 1 and self._for_so_many(fact):
            self.rows = [replace(group[0]) for _ in range(min(fact.value[1], MOST_FIRST))]
            return  # "5 reps at 15 kg for the first 3 sets"
        self.scope, self.scope_fact = fact.value, fact
        if self._only_last_told(fact):
            counted = next(one for one in self.block.facts if one.kind == "count")
            self.ask("reps", counted)
            self.counted_ask = self.asks[-1]
            self.rows, self.count = [Row(None) for _ in range(min(self.count or 0, MOST_FIRST))], None
        if fact.value == "over":
            self.over = fact
            return
        if (
            fact.value == "all"
            and self.prev is not None
            and self.prev.kind in ("effort", "at")
            and self.last_effort is not None
        ):
            for row in self.rows:
                row.rpe = self.last_effort
            self.efforts_open.clear()
            self.effort_inside = True
            return
        # "rpe 8 on the last", "@7 first": the effort came before its scope
        if self.prev is not None and self.prev.kind == "effort" and fact.value != "all":
            rows = self.scoped()
            value = self.prev.value
            if rows and self.effort_rows and fact.note.get("text", "").startswith(tuple(little("before_scope"))):
                for row in self.effort_rows:
                    row.rpe = None
                for row in rows:
                    row.rpe = value
                self.efforts_open.clear()
                self.effort_inside = True
                self.scope = None

    def on_side(self, fact: Fact) -> None:
        name = fact.value
        timed = self.next is not None and self.next.kind == "rows" and bool(self.next.note.get("unit"))
        follows = self.next is not None and (
            self.next.kind == "bare" or (self.next.kind == "rows" and len(self.next.value) == 1)
        )
        if name == "each" and fact.note.get("plain") and follows and self._times_told():
            # "4x Klimmzüge mit 15 kg, jeweils 5"
            if self.rows[0].load_kg is not None:
                self.load, self.load_said = self.rows[0].load_kg, True
            self.count, self.rows, self.bares = self.rows[0].reps, [], []
            return
        if name == "each" and fact.note.get("plain") and timed and not self.block.hold:
            return  # "5 negatives, 8 seconds each"
        if name == "each":
            told = self.prev is not None and self.prev.kind == "load" and self.prev.end == fact.start
            if told and self.block.movement in DUMBBELLS and self.rows:
                return  # "curls 3x12 with 10 kg each arm": what each hand holds
            both = self.block.movement in BOTH_ARMS or bool(self.block.rounds)  # "2 rounds: … in each"
            if fact.note.get("plain") and not self.block.one_sided and (len(self.rows) != 1 or self.count or both):
                # "three sets, 5 each", "2 in the tank each": each set
                if self.next_is("effort"):
                    self.scope = "all"
                elif self.prev is not None and self.prev.kind == "effort" and self.last_effort is not None:
                    for row in self.rows:
                        row.rpe = self.last_effort
                    self.effort_inside = True
                return
            if (
                self.last_group()
                and not any(row.side for row in self.last_group())
                and not (self.prev and self.prev.kind == "sep" and self.prev.value >= 2 and self.next_is("rows"))
            ):
                self.each()
            elif not self.rows:
                self.side = "each"
            return
        if name == "unclear":
            if {"left", "right"} <= {row.side for row in self.rows} and not self._work_behind(fact):
                return  # "3x1 left, 3x2 right. Left is just the weak side"
            self.ask("side", fact)
            self.side = None
            return
        if name == "other":
            opposite = {"left": "right", "right": "left"}.get(self.last_side or "")
            if opposite is None:
                return
            both = {"left", "right"} <= {row.side for row in self.rows}
            # "left 2, right one and the other missed": the other set of that side
            name = self.last_side if both and self.next_is("fail") and self.last_side else opposite
        open_rows = [row for row in self.last_group() if row.side is None]
        near = self.prev is not None and self.prev.kind in NEAR_A_SIDE
        if open_rows and near and self.side not in ("left", "right"):
            group = self.last_group()
            if not self.based:
                for row in group:
                    if row.side is None:
                        row.side = name
                        row.load_open = False
                self.last_side = name
                return
        if self._closes_sets(open_rows):
            for row in self.rows:
                row.side = name
            self.last_side = name
            return
        self.side = name
        self.last_side = name

    def _closes_sets(self, open_rows: list[Row]) -> bool:
        """ "A double and three singles of one-arm pull-ups, right arm.": the side of all of them."""
        ends = self.next is None or (self.next.kind == "sep" and self.next.value == 3)
        told = self.block.one_sided and not self.based and self.side is None and not self.after_sentence
        return bool(told and ends and open_rows and all(row.side is None for row in self.rows))

    def _times_told(self) -> bool:
        """Whether the only number so far is "4x", said before the movement's name."""
        if len(self.rows) != 1 or len(self.bares) != 1 or not self.bares[0][0].note.get("before_move"):
            return False
        end = self.bares[0][0].end
        return any(
            one.kind == "word" and one.start == end and self.span(one.start, one.end).lower() in little("times")
            for one in self.block.facts
        )

    def on_plan(self, fact: Fact) -> None:
        """ "left 2, right the same"; "and one more set of 2"."""
        if "part_main" in fact.note.get("names", ()):
            self.work_from = len(self.rows)
        if "extra_set" in fact.note.get("names", ()) or fact.value == "extra_set":
            self.one_more = bool(self.rows) and not self.based
        if (
            "rest" in fact.note.get("names", ())
            and not self.based
            and (self.unsaid() or any(row.touched for row in self.rows))
        ):
            self.scope = "rest" if self.next_is("load", "bare") else self.scope  # "first set 20 kg, rest 17.5"
        if self._same_with_another_load(fact):
            return
        same = "same" in fact.note.get("names", ()) and self.side in ("left", "right") and not self.based
        if not same or not self.rows or self.next_is("rows", "bare", "load"):
            return
        other = [row for row in self.rows if row.side not in (None, self.side)]
        self.rows += [replace(row, side=self.side) for row in other]
        self.side = None

    def _same_with_another_load(self, fact: Fact) -> bool:
        """ "3x5 (20 kg), then same with 15 kg": the sets before once more, with the load that follows."""
        parted = self.prev is not None and self.prev.kind == "sep"
        load, group = self.next, self.last_group()
        told = load is not None and load.kind == "load" and load.value and load.note.get("how") != "plus"
        if not (parted and told and group) or load is None or self.based or self.scope or self.side:
            return False
        again = "same" in fact.note.get("names", ()) and all(row.load_kg not in (None, load.value) for row in group)
        if not again or self.more_sets_follow(load):
            return False
        self.group += 1
        self.rows += [replace(row, load_kg=load.value, rpe=None, group=self.group) for row in group]
        load.note["spent"] = True
        return True

    def on_flag(self, fact: Fact) -> None:
        other = {"upper_half": "lower_half", "lower_half": "upper_half"}.get(fact.value)
        if other in self.flags and self.rows and self.after_sentence and not self.more_sets_follow(fact):
            return  # "Top half only, 3x4. The lower half I leave to others."
        if self.side in ("left", "right") and self.prev is not None and "only" in self.prev.note.get("names", ()):
            self.side_flags.setdefault(self.side, set()).add(fact.value)  # "left only negatives, 2x1, right 2x1"
            return
        if self.rows and not self.based and self.scope not in (None, "all") and (rows := self.scoped()):
            self.scope_flags.setdefault(str(self.scope), (rows, set()))[1].add(
                fact.value
            )  # "the last one with a pause"
            return
        closes = (
            self.prev is not None and self.prev.kind in ("rows", "bare", "side", "load") and self._flag_closes(fact)
        )
        named = self.prev is not None and self.prev.kind == "move" and len(self.rows) == len(self.bares) == 1
        if (named and self.bares[0][0].note.get("before_move")) or self._of_the_movement(fact):
            self.flags.add(fact.value)  # "3 one-arm negatives left", "5x2 one-arm negatives right, left 3x2"
        elif self.rows and not self.based and closes and self._others_follow(fact):
            # "3x1 lower half, 2x1 top half", "3x1 negatives, 2x1"
            self.apply(self.last_group(), {fact.value}, paused=False)
        elif self.rows and not self.based and not self._behind_all():
            self.late.add(fact.value)
        else:
            self.flags.add(fact.value)
        if fact.value == "half":
            self.half = fact

    def _of_the_movement(self, fact: Fact) -> bool:
        """Whether a mark stands right behind a movement whose sets are told before it."""
        led = self.prev is not None and self.prev.kind == "move" and self.prev.end == fact.start
        follow = self.next
        return led and len(self.rows) > 1 and follow is not None and follow.kind == "side"

    def _flag_closes(self, fact: Fact) -> bool:
        """Whether nothing but a side stands between a mark and the end of its clause."""
        behind = self.block.facts[self.place(fact) + 1 :][:2]
        return [one.kind for one in behind][:1] == ["sep"] or [one.kind for one in behind] == ["side", "sep"]

    def _others_follow(self, fact: Fact) -> bool:
        """Whether further sets are told behind a mark that closes its own, or another part of the way."""
        further = self.block.facts[self.place(fact) + 1 :]
        if fact.value in PARTS and any(one.kind == "flag" and one.value in PARTS - {fact.value} for one in further):
            return True
        told = next((one for one in further if one.kind in ("rows", "flag", "scope", "plan", "mend")), None)
        return fact.value in PARTS | {"eccentric"} and told is not None and told.kind == "rows"

    def _behind_all(self) -> bool:
        """ "L 3 R 3 / L 2 R 3 hand on biceps, top half": behind the movement, of all the sets told one by one."""
        one_by_one = len(self.rows) > 1 and len({row.group for row in self.rows}) == len(self.rows)
        return self.prev is not None and self.prev.kind == "move" and one_by_one

    def on_last_rep(self, _fact: Fact) -> None:
        self.last_rep = True

    def on_link(self, fact: Fact) -> None:
        if self.link == "drop" and fact.value == "straight":
            return  # "drop set without a rest: 60 x 8, 45 x 8"
        self.link = fact.value
        if fact.note.get("further"):
            self.scope = None  # "last set straight into a drop: 6 at +10": a further set, the last stays as told
        if fact.value == "straight" and len(self.rows) < 2 and not self.more_sets_follow(fact):
            return
        if fact.value == "straight" and self.rows and not self.more_sets_follow(fact):
            self.rows[-1].linked = True
            self.link = None

    def on_scheme(self, fact: Fact) -> None:
        at = self.place(fact)
        if fact.value == "total" and at and self.block.facts[at - 1].kind == "claim":
            return  # "65 min in total" is no total of reps
        if fact.value == "total" and self.next_is("repeat"):
            return  # "5 pull-ups, 8 times in all"
        self.schemes.add(fact.value)
        if fact.value == "attempt":
            self.tries = 1
        if fact.value == "down":
            self._down_again()
            return
        if (
            fact.value == "got"
            and self.rows
            and self.rows[-1].failed
            and self.load_said
            and self.load is not None
            and self.rows[-1].load_kg not in (None, self.load)
            and not self.more_follows(fact)
        ):
            # "+45 failed, then +42.5 and got it"
            self.add([Entry(1)], fact)
            self.second_load = None
        if fact.value == "total" and self.prev is not None and self.prev.kind == "load" and self.prev.value:
            for row in self.last_group():
                row.load_kg = self.prev.value  # "bar plus 60, so 80 kg in all"
        told = self.prev is not None and self.prev.kind == "rows" and bool(self.prev.note.get("one"))
        if fact.value == "total" and told and len(self.last_group()) == 1 and self.prev is not None:
            self.bares.append((self.prev, self.rows[-1]))
        if fact.value == "total" and self.bares:
            self.total = (float(self.bares[-1][1].reps or 0), self.bares[-1][0])

    def _down_again(self) -> None:
        """ "1, 2, 3, 4, 5 and back down (to 1)": the ladder the other way, the top once."""
        if self.next is not None and self.next.kind == "rows":
            return  # told one by one
        rungs = self.last_group()
        rising = [row.reps for row in rungs if row.reps]
        if len(rising) < LEAST_RUNGS or len(rising) != len(rungs) or rising != sorted(set(rising)):
            return
        self.rows += [replace(row) for row in reversed(rungs[:-1])]
        self.one_way = rising[0]

    def on_mend(self, fact: Fact) -> None:
        if fact.value == "swap":
            for row in self.rows:
                row.side = {"left": "right", "right": "left"}.get(row.side or "", row.side)
            return
        self.mend = True

    def _work_behind(self, fact: Fact) -> bool:
        """Whether a side named after a fact may have sets of its own."""
        return any(one.kind in WORK_OR_SCOPE for one in self.block.facts[self.place(fact) + 1 :])

    def on_sep(self, fact: Fact) -> None:
        if fact.value == 3:
            self.after_sentence = True
            if self.side in ("left", "right") and not self.rows and self.moved and self.block.one_sided:
                self.side_before = self.side
            self.side = None
            if self.scope is not None and not (self.scope_fact and self.scope_fact.note.get("numbered")):
                self.scope = None
        at = self.place(fact)
        said = [one.kind for one in self.block.facts[max(0, at - 2) : at]]
        if self.scope == "all" and said == ["scope", "word"] and not self.based:
            self.scope = None  # "all clean, rpe 8": all were clean
        behind = {one.kind for one in self.block.facts[at + 1 :]}
        # "pausing at the top and again halfway" goes on with the same sets
        if fact.value == 2 and self.late and self.rows and "flag" in behind and behind & WORK_OR_SCOPE:
            # "3x3 with a pause at the top, then 2x3 pausing in the middle"
            flags = self.flags | self.late
            self.apply(self.rows[self.frozen :], flags, "pause_pause" in flags)
            self.frozen, self.late = len(self.rows), set()
        if fact.value >= 2:
            self._close_failure()  # "to failure: 48, then 30 and 22"
        if fact.value >= 2:
            self.scope = None if self.scope not in ("all",) else self.scope
            self.side = self.side if fact.note.get("nl") is None else None

    def on_weighted(self, _fact: Fact) -> None:
        if self.rows and not self.load:
            self.load, self.load_said = None, False  # "bw pull-ups 10, 10, 9; weighted: 5, 5, 4 with 15"
        self._close_failure()  # "to failure 12, 10, 8 and weighted 2x5"

    def _close_failure(self) -> None:
        """The sets so far were those that went to failure."""
        if self.failure is None or not self.rows:
            return
        for row in self.rows:
            row.rpe = row.rpe if row.rpe is not None else self.failure
        self.failure = None

    def on_move(self, _fact: Fact) -> None:
        self.moved = True

    def on_ask(self, fact: Fact) -> None:
        self.ask(fact.value, fact)
        if fact.value == "load_kg":
            if self.rows:
                for row in self.last_group():
                    row.load_open = True
            else:
                self.asked_load = fact
