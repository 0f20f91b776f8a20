"""Loads find their sets: before the first for all that follow, after a set for that set."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.efforts import EffortFacts
from bot.reading.fold.rows import change, shift
from bot.reading.little import little

HELPED = frozenset({"one_arm_counterweight", "band_pull_up"})
MOST_EITHER = 12  # a whole number up to it can be reps as well as a load
LIST_OF_SETS = 3  # so many with one load at the end are a list


class LoadFacts(EffortFacts):
    """Added load, assistance, and what is told against other values."""

    def on_load(self, fact: Fact) -> None:
        if fact.note.get("spent") or self.denied(fact):
            return
        value = fact.value
        adds = (
            self.prev is not None
            and self.prev.kind == "load"
            and fact.note.get("how") == "plus"
            and fact.note.get("unit")
        )
        if adds and self.prev is not None and self.prev.note.get("unit") and self.prev.value:
            total = self.prev.value + value
            for row in self.rows:
                if row.load_kg == self.prev.value:
                    row.load_kg = total
            self.load = total if self.load_said else self.load
            return
        if fact.note.get("same"):
            known = [row.load_kg for row in self.rows if row.load_kg is not None]
            if not known:
                if not self.based and self.block.loadable and self.load is None:
                    self.ask("load_kg", fact)  # "4x5 with the same weight": as what was not told
                    for row in self.rows:
                        row.load_open = True
                    self.asked_load = fact
                return
            value = known[-1]
            for row in self.last_group():
                if row.load_kg is None:
                    row.load_kg = value
            self.load, self.load_said = value, True
            return
        further = self.prev is not None and "more" in self.prev.note.get("names", ()) and len(self.last_group()) == 1
        if fact.note.get("none") and further and self.group and not self.based and self.rows[-1].load_kg:
            self.rows[-1].load_kg = 0.0  # "3x5 with 20, then 6 more bw"
            return
        right_behind = self.prev is not None and self.prev.kind in ("rows", "bare") and self.prev.end == fact.start
        if fact.note.get("none") and right_behind and self.group and self.scope is None and not self.based:
            for row in self.last_group():
                row.load_kg = 0.0  # "with 20 kg 3x8, then one more of ten without weight"
            return
        if (
            fact.note.get("none")
            and self.scope is None
            and self.rows
            and all(r.load_kg is not None for r in self.rows)
            and not self.next_is("rows", "bare")
            and not (self.next is not None and self.next.note.get("mark") == ":")  # "15 kg: 5 5 5, bw: 10 8"
            and not (self.next_is("effort") and self.more_sets_follow(fact))
            and self.link not in ("straight", "drop")
            and not (self._told_after_break(fact) and self.more_sets_follow(fact))
        ):
            return
        helped = self.assist is not None and self.block.movement in HELPED and fact.note.get("unit")
        if helped and self.rows and self.next_is("sep") and self.scope is None:
            for row in self.rows:
                row.assist_kg = self.assist if row.assist_kg is None else row.assist_kg
            self.assist = value  # "10 kg of help: 2x1. 5 kg: 1"
            return
        if self.mend and self._mends_bare(fact):
            self.mend = False
            self.rows.pop()
            self.bares.pop()
            self.group = self.rows[-1].group
        if self.mend:
            self.mend = False
            for row in self.rows:
                row.load_kg = value
            self.load, self.load_said = value, True
            return
        if self.scope is not None and self.rows:
            if self.scope == "rest":
                for row in self.rows:
                    if not row.touched:
                        row.load_kg = value
                self.scope = None
                return
            if self._one_set_more(fact):
                return
            rows = self.scoped()
            if rows:
                for row in rows:
                    row.load_kg = value
                    row.touched = True
                self.scope = None
                return
        if self.based:
            if self.next_is("rows") and not fact.note.get("none"):
                self.load, self.load_said = value, True
            for row in self.rows:
                row.load_kg = value
            self.load, self.load_said = value, True
            return
        group = self.last_group()
        if self.prev is not None and self.prev.kind == "rounds" and all(row.load_kg is None for row in self.rows):
            for row in self.rows:
                row.load_kg = value  # "3 every 90 seconds for 10 rounds at +15"
        if group and all(row.load_kg is None for row in group) and not self.groups.get(self.group):
            follows = self.next is not None and self.next.kind == "load" and not self.next.note.get("none")
            if follows or self.load_list:
                self.load_list = [*self.load_list, value]
                return
            open_rows = [
                row
                for row in self.rows
                if row.load_kg is None and (row.group == self.group or row.load_open or self.same_list(row))
            ]
            if self.plain_at is not None and self._told_after_break(self.plain_at):
                open_rows = group  # "1 on the right, 0 on the left. Then 3x3 +30"
            listed = self.list_before(fact) if len(open_rows) == len(group) else 0
            if self._of_all_before(fact):
                open_rows = [row for row in self.rows if row.load_kg is None]
            if listed >= LIST_OF_SETS or self.by_ordinals:
                open_rows = [row for row in self.rows if row.load_kg is None]
            elif listed == 2 and not fact.note.get("none") and fact.note.get("how") == "at":
                self.ask("load_kg", fact)  # "a double and a single with 40": the single's, or both
                for row in self.rows[-2:]:
                    row.load_open = True
                return
            for row in open_rows:
                row.load_kg = value
                row.load_open = False
            return
        if self.load_list:
            self.load_list.append(value)
            return
        self.load, self.load_said = value, True
        # a second load and no sets for it
        if (
            group
            and not self.more_follows(fact)
            and value not in (row.load_kg for row in group)
            and not fact.note.get("none")
        ):
            self.second_load = fact

    def _one_set_more(self, fact: Fact) -> bool:
        """ "3x5 at 20, felt good so added a fourth set at 22.5": as many reps again; else how many is asked."""
        group = self.last_group()
        if self.based or self.scope != len(self.rows) + 1 or len(group) < 2 or self.more_follows(fact):
            return False
        reps = {row.reps for row in group}
        added = any(one.kind == "plan" and "sure" in one.note.get("names", ()) for one in self.block.facts)
        self.rows.append(replace(group[-1], load_kg=fact.value, rpe=None, group=self.group + 1))
        self.group, self.scope = self.group + 1, None
        if not added or len(reps) > 1:
            self.ask("reps", self.scope_fact or fact)
            self.rows[-1].reps = None
        return True

    def _told_after_break(self, sets: Fact) -> bool:
        """Whether a "then" or a new sentence parts these sets from those before."""
        before = [one for one in self.block.facts[: self.place(sets)] if one.kind != "word"]
        return bool(before) and before[-1].kind == "sep" and before[-1].value >= 2

    def _mends_bare(self, fact: Fact) -> bool:
        """ "The belt had thirty, no, thirty two point five kilos on it": the number before was a load too."""
        before = [one for one in self.block.facts[: self.place(fact)] if one.kind != "sep"][-2:]
        told = bool(self.bares) and len(self.rows) > 1 and self.bares[-1][1] is self.rows[-1]
        return told and len(before) == 2 and before[1].kind == "mend" and before[0] is self.bares[-1][0]

    def _of_all_before(self, load: Fact) -> bool:
        """ "3 sets of 5 and 2 sets of 4, pull-ups with 15", "left 8 8 8 right 8 8 7 with 14 kg": of all that was told.

        The movement, or both sides, stand between the sets and their one load.
        """
        if any(row.load_kg is not None for row in self.rows) or load.note.get("none"):
            return False
        facts = self.block.facts[: self.place(load)]
        work = [at for at, one in enumerate(facts) if one.kind in ("rows", "bare")]
        move = next((at for at, one in enumerate(facts) if one.kind == "move"), None)
        between = facts[move:] if move is not None else []
        if (
            move is not None
            and work
            and work[-1] < move
            and all(one.kind in ("move", "word", "sep") for one in between)
        ):
            return True
        singles = facts[work[0] :] if work else []
        listed = (
            len(work) > 1
            and len(self.rows) >= LIST_OF_SETS
            and all(
                (one.kind == "rows" and bool(one.note.get("one") or one.note.get("list")))
                or (one.kind == "sep" and one.note.get("mark") == ",")
                for one in singles
            )
        )
        if listed:
            return True  # "5 reps, 5 reps, 4 reps +20"
        sides = [one.value for one in facts if one.kind == "side"]
        lists = [one for one in facts if one.kind == "rows" and (one.note.get("list") or one.note.get("plain"))]
        told = [one for one in facts if not (one.kind == "sep" and one.value == 1)]
        return sorted(sides) == ["left", "right"] and len(lists) == 2 and told[-1] is lists[-1]

    def list_before(self, load: Fact) -> int:
        """How many single sets, joined by commas and a last "and", the load closes: "a double, a double and a single
        with 40" has three. 0: none."""
        before = self.block.facts[: next((i for i, f in enumerate(self.block.facts) if f.start >= load.start), 0)]
        marks = [fact.note.get("mark") if fact.kind == "sep" else None for fact in before[-2::-2]]
        singles = 0
        for fact in before[-1::-2]:
            if fact.kind != "rows" or len(fact.value) != 1 or "own_load" in fact.note:
                break
            singles += 1
        told = marks[: singles - 1]
        return singles if singles > 1 and told[0] == "and" and set(told[1:]) <= {","} else 0

    def denied(self, fact: Fact) -> bool:
        """ "With the red band, not the 15 kg stack"; "5 5 5 instead of 4"."""
        at = self.place(fact)
        before = [one for one in self.block.facts[max(0, at - 2) : at] if one.value != "the"]
        last = before[-1] if before else None
        if last is None or last.kind != "plan" or self.based:
            return False
        told = "instead" in last.note.get("names", ()) and bool(self.rows)
        return told or not little("not").isdisjoint(self.span(last.start, last.end).lower().split()[:1])

    def on_loads(self, fact: Fact) -> None:
        loads = fact.value
        if self.rows and len(loads) == len(self.rows):
            for row, kg in zip(self.rows, loads, strict=True):
                row.load_kg = kg
            return
        group = self.last_group()
        if len(loads) == len(group) and all(row.load_kg is None for row in group):
            for row, kg in zip(group, loads, strict=True):
                row.load_kg = kg  # "5 and 3 to warm up, then 3x3 with 20, 22.5, 25"
            return
        if self.rows:
            self.ask("load_kg", fact)
            for row in self.rows:
                row.load_open = True
            return
        self.waiting, self.waiting_fact = list(loads), fact  # "20, 22.5 and 25 kg for a triple each"

    def on_at(self, fact: Fact) -> None:
        number, kg = fact.value
        group = self.last_group()
        has_load = (bool(group) and group[-1].load_kg is not None) or (self.load_said and not group) or self.based
        has_load = has_load or self.assist is not None  # "on the pulley, 12.5 off, 3x2 all @7.5"
        hold = bool(group) and group[-1].hold_s is not None
        free = not self.block.loadable
        if has_load or hold or free or fact.note.get("range"):
            self.on_effort(Fact("effort", fact.start, fact.end, number))
            return
        added = len(self.big_loads) == 1 and self.big_loads[0].note.get("how") == "plus"
        if added and all(v <= 10 for v in self.ats):
            self.on_effort(Fact("effort", fact.start, fact.end, number))  # "5 @7, 5 @8. Chin-ups +20"
            return
        ramp = any(v > 10 for v in self.ats) or self.big_loads
        if ramp and kg is not None:
            self.on_load(Fact("load", fact.start, fact.end, kg))
            return
        self.ask("load_kg", fact)
        for row in group:
            row.load_open = True
        if not group:
            self.asked_load = fact

    def on_assist(self, fact: Fact) -> None:
        if fact.value is None:
            if fact.note.get("suffix") and self.prev is not None and self.prev.kind == "load":
                for row in self.rows:
                    if row.assist_kg is None:
                        row.assist_kg = self.assist  # told before the sets that it was for
                self.assist = self.prev.value
                for row in self.rows:
                    row.load_kg = None
                self.load, self.load_said = None, False
            return
        if self.rows and not self.based and self.scope not in (None, "all") and (rows := self.scoped()):
            for row in rows:
                row.assist_kg, row.touched = fact.value, True  # "12 kg off the first set, 10 off the other two"
            self.scope = None
            return
        heads = self.prev is not None and self.prev.kind == "sep" and self.assist is not None
        if self.rows and heads and self.more_sets_follow(fact) and not self.based:
            for row in self.rows:
                row.assist_kg = self.assist if row.assist_kg is None else row.assist_kg
            self.assist = fact.value  # "15 off x 3, 12.5 off x 2"
            return
        if self.rows and not self.based and self._of_what_follows(fact):
            for row in self.rows:
                row.assist_kg = 0.0 if row.assist_kg is None else row.assist_kg
            self.assist = fact.value
            return
        group = self.last_group()
        if self.assist is not None and len(group) < len(self.rows) and not self.based:
            for row in self.rows:  # "with 15 off 3x2, then a single with 10 off": of the sets right before
                row.assist_kg = row.assist_kg if row.assist_kg is not None else self.assist
            for row in group:
                row.assist_kg = fact.value
            return
        if self.rows and not self.based:
            # "3x8 with the red band, 2x8 with the one that takes 10 kg off"
            own = self.prev is not None and self.prev.kind == "rows" and not any(row.side for row in self.rows)
            for row in self.last_group() if own else self.rows:
                if row.assist_kg is None:
                    row.assist_kg = fact.value
            return
        self.assist = fact.value

    def _of_what_follows(self, fact: Fact) -> bool:
        """ "Red band 4x6 and with the one that takes 18 kg off 2x4": the help of the sets behind it."""
        facts, at = self.block.facts, self.place(fact)
        lead = next((one for one in reversed(facts[:at]) if one.kind != "word"), None)
        joined = lead is not None and lead.kind == "sep" and self.assist is None
        return joined and self.next is not None and self.next.kind == "rows" and self.next.start == fact.end

    def on_instead(self, fact: Fact) -> None:
        new, old, unit = fact.value
        if not self.rows:
            if unit in ("kg", "lb") or (unit is None and (new != int(new) or max(new, old) > MOST_EITHER)):
                self.load, self.load_said = self.to_kg(new, unit), True
            return
        rows = (self.scoped() if self.scope is not None else self.rows) or self.rows
        before = [replace(row) for row in rows]
        change(rows, new, old, unit, self.to_kg)
        if rows == before and not self.based and all(row.load_kg is None and row.hold_s is None for row in rows):
            if unit is None and new == int(new) and max(new, old) <= MOST_EITHER:
                self.ask("reps", fact)
            else:
                for row in rows:
                    row.load_kg = self.to_kg(new, unit)  # "4x4 with 22.5, not 20"
        self.scope = None

    def on_delta(self, fact: Fact) -> None:
        amount, kind, sign = fact.value
        if not self.based and self.scope is None and kind == "load" and any(row.load_kg for row in self.rows):
            return  # "5x4 at 17.5, which is 2.5 more than last week"
        rows = (self.scoped() if self.scope is not None else self.rows) or self.rows
        relative = sign < 0 or not little("more").isdisjoint(self.span(fact.start, fact.end).lower().split())
        if kind == "load" and relative and not self.based and self.block.loadable:
            unknown = [row for row in rows if row.load_kg is None and not row.assist_kg]
            if unknown:
                self.ask("load_kg", fact)  # "4x4, 5 kg less", "mit 5 kg mehr": than what is not said
            for row in unknown:
                row.load_open = True
            rows = [row for row in rows if row not in unknown]
        if (
            kind == "reps"
            and not self.based
            and self.scope is None
            and len({row.group for row in rows}) == 1 < len(rows)
        ):
            self.ask("reps", fact)  # "4x5, one more": of which set, or more than what
            for row in rows:
                row.reps = None
            return
        for row in rows:
            if kind == "load" and sign > 0 and row.load_kg is None and not row.assist_kg and not self.based:
                row.load_kg = amount  # "4x4, added 5 kg"
            else:
                shift(row, amount, kind, sign)
