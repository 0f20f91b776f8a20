"""Misses: sets and reps that did not go up, and tries at a load."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.fold.loads import LoadFacts
from bot.reading.fold.rows import Row

LEAST_TRIED = 15  # a bare number after "missed" that is a load


class MissFacts(LoadFacts):
    """What failed, and of which set or rep."""

    def on_fail(self, fact: Fact) -> None:
        if fact.note.get("spent"):
            return
        ordinal = fact.value
        if fact.note.get("of_set") and self.rows:
            self.rows[-1].failed = True  # "3, 3, 3, 2(f)"
            return
        if self._missed_with_more(fact):
            return
        if self._rep_of_last(fact) or self._missed_after(fact) or self._missed_so_many(fact) or self._the_try(fact):
            return
        follow = self.next
        if follow is not None and follow.start == fact.end and follow.value and not self.block.hold:
            told = self.attempt_load is not None or self.loads_told()
            at_load = follow.kind == "load" and follow.note.get("how") == "at" and told
            heavy = at_load or (follow.kind == "bare" and follow.value >= LEAST_TRIED and told)
            if heavy and ordinal is None and not fact.note.get("weak"):
                self.missed_at(follow)  # "hit 42.5 for a single, missed 45 twice"
                return
        if ordinal is None and self.last_rep:
            ordinal, fact.note["rep"] = "last", True
        if fact.note.get("name") == "yes" and self.tried is not None:
            return
        if self.tried is not None and self.rows and self.rows[-1] is self.tried:
            self.tried.reps, self.tried.failed = 0, True
            return
        if fact.note.get("weak"):
            if not (self.prev is None or self.prev.kind == "sep" or self.prev.kind == "fail") or not (
                self.next is None or self.next_is("sep")
            ):
                return
            if fact.note.get("name") == "yes":
                if "attempt" in self.schemes:
                    self.rows.append(Row(1, load_kg=self.load if self.load_said else None, group=self.group + 1))
                return
            if "attempt" in self.schemes:
                times = next((one.value for one in self.block.facts if one.kind == "repeat"), 1) if not self.rows else 1
                missed = Row(0, failed=True, load_kg=self.load if self.load_said else None, group=self.group + 1)
                self.rows += [replace(missed) for _ in range(times)]  # "tried +50 twice. no."
            return
        newest = self.rows[-1] if self.rows else None
        if newest is not None and newest.failed and self._told_twice(fact):
            return
        if newest is not None and newest.failed and "attempt" in self.schemes and self.scope == (newest.reps or 0) + 1:
            self.scope = None
            return  # "tried a triple, got 2, third one stuck"
        led = self.prev if self.prev is not None and self.prev.kind == "load" and self.prev.value else None
        if led is not None and self.rows and self.rows[-1].load_kg not in (None, led.value) and ordinal is None:
            self.rows.append(Row(0, failed=True, load_kg=led.value, group=self.group + 1))  # "with 45 failed"
            self.group, self.second_load, self.load_said = self.group + 1, None, False
            return
        if self.scope is not None and newest is not None:
            if self._rep_of_side(fact, newest):
                return
            rows = self.scoped()
            if self.side in ("left", "right"):
                own = [row for row in self.rows if row.side == self.side]
                many = self.scope[1] if isinstance(self.scope, tuple) and self.scope[0] == "last" else 0
                rows = own[-many:] if many else [row for row in rows if row.side == self.side] or rows
                self.side = None if many else self.side  # "last two on the left failed"
            if rows:
                singles = all(one.reps == 1 for one in self.rows)
                for row in rows:
                    row.failed = True
                    if isinstance(ordinal, int):
                        row.reps = ordinal - 1
                    elif row.reps == 1 and (singles or self.based):
                        row.reps = 0  # "5 singles at 40, single 4 failed"
                    elif row.reps and (self._of_last_rep() or (ordinal == "last" and fact.note.get("rep"))):
                        row.reps -= 1
                    elif row.reps is not None and self.based:
                        row.reps = None
                self.scope = None
                return
            if self.scope == (newest.reps or 0) + 1 and self.scope > len(self.rows) + 1:
                newest.failed, self.scope = True, None  # "5, 5, 4 and the fifth wouldn't go": the fifth rep
                return
            if self._rep_of_next_set(fact, newest):
                return
        if isinstance(ordinal, int) and self.rows and self.scope == len(self.rows) + 1 and not self.based:
            self.add([Entry(ordinal - 1)], fact)  # "8, 7, and on the third I failed the 7th"
            self.rows[-1].failed = True
            return
        if self.side in ("left", "right"):
            self.add([Entry(0)], fact)
            self.rows[-1].failed = True
            return
        if not (isinstance(ordinal, int) and fact.note.get("rep")) and (
            self.attempt_load is not None or (self.load_said and not self.rows)
        ):
            self.add([Entry(0) for _ in range(self.tries)], fact)
            for row in self.last_group():
                row.failed = True
                row.load_kg = self.attempt_load if self.attempt_load is not None else row.load_kg
            self.attempt_load, self.tries = None, 1
            self.load_said = False
            return
        if not self.rows:
            if self._tried_next(fact):
                self.miss_next = True  # "missed a single at 47.5"
                return
            if isinstance(ordinal, int) and (fact.note.get("rep") or self._told_as_done(ordinal - 1, fact)):
                self.add([Entry(ordinal - 1)], fact)
            elif self.count is not None:
                self.add([Entry(0) for _ in range(self.count)], fact)
                self.count = None
            else:
                self.add([Entry(0)], fact)
            for row in self.last_group():
                row.failed = True
            return
        last = self.rows[-1]
        if last.reps == 0:
            last.failed = True
            if self._missed_again(fact):
                self.rows.append(replace(last))
            return
        group = self.last_group()
        if ordinal == "last" and fact.note.get("rep") and last.reps:
            last.failed, last.reps = True, last.reps - 1
            return
        if isinstance(ordinal, int):
            if fact.note.get("rep") or (
                len(group) == 1 and last.reps is not None and ordinal == last.reps + 1 and last.reps != 1
            ):
                last.failed = True
                last.reps = ordinal - 1
                return
            if last.reps is not None and ordinal == last.reps + 1 > len(self.rows):
                last.failed = True  # "5, 5, 4, missed the fifth": there are three sets, it is a rep
                return
            if len(self.rows) + 1 < ordinal <= (last.reps or 0) and len(group) > 1 and not self.based:
                if ordinal == last.reps:
                    last.reps, last.failed = None, True
                    self.ask("reps", fact)  # "3x5, missed the fifth": of which set
                    return
                self.rows.append(replace(last, reps=ordinal - 1, failed=True, rpe=None, linked=False))
                return  # "5, 5, stuck on the fourth"
            if ordinal <= len(self.rows) and not all(row.reps == 1 for row in self.rows):
                self.rows[ordinal - 1].failed = True
                return
            if ordinal <= len(self.rows):
                self.rows[ordinal - 1].failed, self.rows[ordinal - 1].reps = True, 0
                return
        if (
            self.prev is not None
            and self.prev.kind == "sep"
            and self.word_row is last
            and len(self.rows) == 1
            and last.reps == 1
            and ("attempt" in self.schemes or not self.more_sets_follow(fact))
        ):
            last.reps, last.failed = 0, True  # "+45 single, failed"; "tried a single at 45, missed it, then hit 42.5"
            return
        adjacent = self.prev is not None and self.prev.kind in ("load", "rows") and self.prev.end == fact.start
        if self.word_row is last and len(self.rows) == 1 and last.reps == 1 and adjacent:
            last.reps, last.failed = 0, True  # "a single at 45 failed, then 3x3 with 35"
            return
        one_more = len(self.rows) > 1 and len(group) == 1 and last.reps == 1 and ordinal is None
        bracket = self.prev is not None and self.prev.kind == "sep" and self.prev.note.get("mark") == "("
        both = self.prev is not None and self.prev.kind == "sep" and self.prev.note.get("mark") == "and"
        if both and self.word_row is last and len(self.rows) == 1 and last.reps == 1 and ordinal is None:
            last.reps, last.failed = 0, True  # "a 45 kg single and missed"
            return
        tried = "attempt" in self.schemes and self.prev is not None and self.prev.note.get("mark") == "and"
        if one_more and tried:
            last.reps, last.failed = 0, True  # "tried a single and missed it"
            return
        if one_more and bracket and self.prev is not None and self.prev.end == fact.start:
            last.reps, last.failed = 0, True  # "+25 x 1 (fail)"
            return
        if one_more and adjacent:
            last.reps, last.failed = 0, True  # "then a single at fifty five, missed it"
            return
        new = replace(last, reps=0, failed=True, rpe=None, linked=False)
        if self.count is not None or (
            self.prev is not None and self.prev.kind == "bare" and self.prev.note.get("spelled")
        ):
            self.group += 1
            new = replace(new, group=self.group, load_kg=None)
            self.count = None
        self.rows.append(new)

    def _rep_of_side(self, fact: Fact, newest: Row) -> bool:
        """ "Left 2, right 1 and stuck on the second", "left 1, right failed at the second": which rep of that side."""
        nth = self.scope
        if self.based or not isinstance(nth, int) or nth < 2 or fact.value is not None or newest.side is None:
            return False
        own = [row for row in self.rows if row.side == (self.side or newest.side)]
        if self.side is None and len(own) == 1 and nth == (newest.reps or 0) + 1:
            newest.failed, self.scope = True, None
            return True
        if self.side not in ("left", "right") or newest.side == self.side:
            return False
        if own:
            self.ask("reps", fact)  # its second rep, or a second try
        self.rows.append(replace(newest, side=self.side, reps=None if own else nth - 1, failed=True, rpe=None))
        self.scope, self.side = None, None
        return True

    def _rep_of_next_set(self, fact: Fact, newest: Row) -> bool:
        """ "5, 5, stuck on the fourth": of a set more, as no fourth set can follow the second."""
        nth = self.scope
        if self.based or self.side or not isinstance(nth, int) or fact.value is not None:
            return False
        if not len(self.rows) + 1 < nth <= (newest.reps or 0) or self.load_said:
            return False
        self.rows.append(replace(newest, reps=nth - 1, failed=True, rpe=None, linked=False))
        self.scope = None
        return True

    def _missed_with_more(self, fact: Fact) -> bool:
        """ "5 at 15, 5 at 17.5, failed on rep 4 at 20": a further set with its own load."""
        load, last = self.next, self.rows[-1] if self.rows else None
        behind = load is not None and load.kind == "load" and load.start == fact.end and bool(load.value)
        if not behind or load is None or last is None or self.based or not isinstance(fact.value, int):
            return False
        if self.scope is not None or last.load_kg in (None, load.value) or fact.value < 2:
            return False
        load.note["spent"] = True
        self.group += 1
        self.rows.append(Row(fact.value - 1, load_kg=load.value, failed=True, side=last.side, group=self.group))
        return True

    def _missed_after(self, fact: Fact) -> bool:
        """ "4x3, tried a fifth but failed at 2": so many reps of one more set."""
        at, last = self.next, self.rows[-1] if self.rows else None
        small = at is not None and at.kind == "load" and at.note.get("how") == "at" and not at.note.get("unit")
        if not small or at is None or last is None or not last.reps or self.based or fact.value is not None:
            return False
        facts, place = self.block.facts, self.place(at)
        behind = facts[place + 1] if place + 1 < len(facts) else None
        if behind is not None and behind.kind == "scope" and self.scope is None:
            self.scope = behind.value  # "failed at 4 on the last"
            behind.note["spent"] = True
        further = self.scope == len(self.rows) + 1  # "two sets of five, third set failed at four"
        named = self.scoped() if isinstance(self.scope, int) or self.scope in ("last", "first") else []
        if not 0 < at.value < last.reps or at.value != int(at.value):
            return False
        if len(named) == 1 and len(self.rows) > 1:
            named[0].reps, named[0].failed, self.scope = int(at.value), True, None  # "4x5, the last failed at 3"
            at.note["spent"] = True
            return True
        if "attempt" not in self.schemes and not further:
            return False
        at.note["spent"] = True
        self.rows.append(replace(last, reps=int(at.value), failed=True, rpe=None, linked=False, group=self.group + 1))
        self.group, self.scope = self.group + 1, None
        return True

    def _rep_of_last(self, fact: Fact) -> bool:
        """ "Failed the fourth of the last set", "im letzten Satz die vierte nicht geschafft": which rep of it."""
        facts, at = self.block.facts, self.place(fact)
        scopes = [one for one in facts[:at] if one.kind not in ("word", "plan")][-2:]
        told = [one.value for one in scopes if one.kind == "scope"]
        after = next((one for one in facts[at + 1 : at + 3] if one.kind != "word"), None)
        if isinstance(fact.value, int) and after is not None and after.kind == "scope":
            told = [fact.value, after.value]
        nth = next((value for value in told if isinstance(value, int)), 0)
        last = self.rows[-1] if self.rows else None
        if "last" not in told or not nth or last is None or self.based or not last.reps or nth > last.reps:
            return False
        last.failed, last.reps, self.scope = True, nth - 1, None
        if after is not None and after.kind == "scope":
            after.note["spent"] = True
        return True

    def _the_try(self, fact: Fact) -> bool:
        """ "Tried a single with 45 but it didn't go up": the set that was tried is the one missed."""
        told = [one for one in self.block.facts[: self.place(fact)] if one.kind not in ("word", "sep", "plan")]
        work = [one.kind for one in told[-3:] if one.kind != "load"]
        tried = len(work) == len(told[-3:]) - 1 and work in (["scheme", "rows"], ["scheme", "bare"])
        group = self.last_group()
        if not tried or told[-3].value != "attempt" or fact.value is not None or fact.note.get("weak"):
            return False
        if len(group) != 1 or not group[0].reps or group[0].failed or self.based or self.side or self.scope is not None:
            return False
        if group[0].reps != 1:
            self.ask("reps", fact)  # of a triple that was tried, one or two may have gone up
        group[0].reps, group[0].failed = 0 if group[0].reps == 1 else None, True
        self.load_said = False
        return True

    def _missed_so_many(self, fact: Fact) -> bool:
        """ "5x5, missed 2 of them": sets or reps, and which, is not said; asked."""
        at, last = self.next, self.rows[-1] if self.rows else None
        behind = at is not None and at.kind == "bare" and at.start == fact.end and at.value == int(at.value)
        if not behind or at is None or last is None or not last.reps or self.based or fact.value is not None:
            return False
        if self.scope is not None or self.side or fact.note.get("weak") or not 0 < at.value < LEAST_TRIED:
            return False
        self.ask("sets", Fact("fail", fact.start, at.end))
        for one in self._rest_of_clause(at):
            one.note["spent"] = True
        return True

    def _rest_of_clause(self, fact: Fact) -> list[Fact]:
        facts = self.block.facts[self.place(fact) :]
        end = next((at for at, one in enumerate(facts) if one.kind == "sep"), len(facts))
        return [one for one in facts[:end] if one.kind in ("bare", "scope")]

    def _of_last_rep(self) -> bool:
        """ "The last rep of the last set failed"."""
        return bool(self.scope_fact and self.scope_fact.note.get("rep") and not self.based)

    def _told_twice(self, fact: Fact) -> bool:
        """ "The fourth got stuck half way, missed": two words for one miss, nothing of sets between them."""
        facts = self.block.facts
        at = self.place(fact)
        words: Fact | None = None
        for one in reversed(facts[:at]):
            if one.kind == "fail":
                words = one
                break
            if one.kind not in ("word", "flag", "scheme", "claim") and not (one.kind == "sep" and one.value == 1):
                break
        return words is not None and self.span(words.start, words.end) != self.span(fact.start, fact.end)

    def _missed_again(self, fact: Fact) -> bool:
        """ "Left: miss, miss." """
        before = self.block.facts[max(0, self.place(fact) - 2) : self.place(fact)]
        if [one.kind for one in before] != ["fail", "sep"] or before[1].note.get("mark") != ",":
            return False
        return self.span(before[0].start, before[0].end).lower() == self.span(fact.start, fact.end).lower()

    def _tried_next(self, fact: Fact) -> bool:
        """Whether the set missed is told right after the word for it: "a single", "the double"."""
        follow = self.next
        tried = follow is not None and follow.kind == "rows" and len(follow.value) == 1 and bool(follow.value[0].reps)
        return tried and fact.value is None and not fact.note.get("weak")

    def _told_as_done(self, reps: int, fact: Fact) -> bool:
        """ "Failed the 7th dip, so 6": the number that follows is the reps done, told once more."""
        at = self.place(fact)
        again = next((one for one in self.block.facts[at + 1 :] if one.kind in ("bare", "rows")), None)
        if again is None or again.kind != "bare" or again.value != reps or reps < 1:
            return False
        again.note["spent"] = True
        return True

    def loads_told(self) -> bool:
        return any(row.load_kg for row in self.rows)

    def missed_at(self, tried: Fact) -> None:
        """A load that did not go up, told bare after the word for it; "twice" after it counts the tries."""
        tried.note["spent"] = True
        kg = tried.value if tried.kind == "load" else tried.note.get("kg", tried.value)
        self.rows.append(Row(0, failed=True, load_kg=kg, group=self.group + 1))
        self.group += 1
