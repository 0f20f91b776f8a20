"""Bare numbers that are a load, help, or an effort: tries at a maximum, "row 22.5 3x10", "did 50: 3x8"."""

from __future__ import annotations

from bot.reading.facts import FREE_WEIGHTS, Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.fold.work import WorkFacts

LEAST_OF_WORD = 12  # "a single 40" tells a load; a smaller number may be anything
LEAST_TRIED = 15  # a maximum tried; a lower number is of reps
MOST_REPS_OF_SCHEME = 12  # a higher number before a scheme is its load
MOST_MENDED = 12  # a higher number that mends loaded sets is a load
SHARE_OF_TRY = 0.7  # who missed a load tries no less than so much of it
MOST_EFFORT = 10
FEW = 5  # so many kilograms are no load that anyone mentions
LEAST_RATED = 6  # an effort said as a bare number


class BareLoads(WorkFacts):
    """Each rule takes a bare number, or leaves it to the next: True where it was taken."""

    def _kg(self, fact: Fact) -> float:
        return float(fact.note.get("kg", fact.value))

    def _follows(self, fact: Fact, *kinds: str) -> bool:
        """Whether one of these comes right after the number."""
        return self.next is not None and self.next.kind in kinds and self.next.start == fact.end

    def _after_scheme(self, *names: str) -> bool:
        return self.prev is not None and self.prev.kind == "scheme" and self.prev.value in names

    def _mended_effort(self, fact: Fact) -> bool:
        if not self.mend or self.prev is None or self.last_effort is None or not 5 <= fact.value <= 10:
            return False
        self.mend = False
        self.on_effort(Fact("effort", fact.start, fact.end, fact.value))
        return True

    def _tried(self, fact: Fact) -> bool:
        """A maximum tried: 45 went up, 50 did not."""
        after = self.next.note.get("names", ()) if self.next is not None else ()
        verdict = self.next_is("fail") or (self.next_is("plan", "scheme") and "fine" in after)
        if not verdict or fact.value < LEAST_TRIED or self.block.hold:
            return False
        judged = {"amrap", "attempt"} & self.all_schemes or self._judged_in_turn(fact)
        if not judged and not self._above_a_single(fact):
            return False
        self.add([Entry(1)], fact)
        self.rows[-1].load_kg = self._kg(fact)
        self.tried = self.rows[-1]
        if len(self.rows) == 2 and self.rows[0].label == "top" and self.rows[0].load_kg is None:
            self.rows.pop(0)
        return True

    def _above_a_single(self, fact: Fact) -> bool:
        """ "One with 47.5. 50 did not go up": a little more than the single before it."""
        last = self.rows[-1] if self.rows else None
        single = last is not None and last.reps == 1 and not last.failed and not self.based
        kg = last.load_kg if last is not None and single else None
        return bool(kg and kg < self._kg(fact) <= kg / SHARE_OF_TRY)

    def _next_try(self, fact: Fact) -> bool:
        """ "A single at 45, missed. 42.5 also missed. 40 went up": loads tried after one that did not go up."""
        last = self.rows[-1] if self.rows else None
        if last is None or not last.failed or not last.load_kg or self.based or self.block.hold:
            return False
        kg = self._kg(fact)
        apart = self.prev is not None and self.prev.kind == "sep"
        if not apart or not SHARE_OF_TRY * last.load_kg <= kg < last.load_kg or fact.value < LEAST_TRIED:
            return False
        at = self.place(fact)
        said = [one for one in self.block.facts[at + 1 : at + 4] if one.kind not in ("word", "sep")]
        missed = bool(said) and said[0].kind == "fail" and not said[0].note.get("weak")
        self.rows.append(Row(0 if missed else 1, load_kg=kg, failed=missed, group=self.group + 1))
        self.group += 1
        if missed:
            said[0].note["spent"] = True
        return True

    def _judged_in_turn(self, fact: Fact) -> bool:
        """ "45 yes, 47.5 yes, 50 no": loads tried one after the other, each with its verdict."""
        judged = [one for one in self.block.facts if one.kind == "fail" and one.note.get("weak")]
        return len(judged) > 1 and self._follows(fact, "fail")

    def _load_of_rows(self, fact: Fact) -> bool:
        """ "row 22.5 3x10", "did 50: 3x8"."""
        heavy = fact.value != int(fact.value) or fact.value > MOST_REPS_OF_SCHEME
        follow = self.next if self._follows(fact, "rows") else None
        plain = follow is not None and bool(follow.note.get("plain"))
        heavy = heavy or (plain and self.block.movement in FREE_WEIGHTS and not fact.note.get("spelled"))
        if not heavy or self.rows or not (self._follows(fact, "rows") or self._before_scheme(fact)):
            return False
        self.load, self.load_said = self._kg(fact), True
        return True

    def _before_scheme(self, fact: Fact) -> bool:
        """Whether a colon and a whole scheme follow."""
        at = self.place(fact)
        after = [one for one in self.block.facts[at + 1 : at + 4] if one.kind != "move"][:2]
        colon = len(after) == 2 and after[0].kind == "sep" and after[0].note.get("mark") == ":"
        return colon and after[1].kind == "rows" and bool(after[1].note.get("plain"))

    def _load_of_word(self, fact: Fact) -> bool:
        """ "A heavy single 40": the load of the set that a word told."""
        last = self.rows[-1] if self.rows else None
        told = last is not None and self.word_row is last and last.load_kg is None
        adjacent = self.prev is not None and self.prev.kind == "rows" and self.prev.end == fact.start
        if last is None or not (told and adjacent) or fact.value < LEAST_OF_WORD or self.based or self.block.hold:
            return False
        last.load_kg = self._kg(fact)
        return True

    def _load_of_words(self, fact: Fact) -> bool:
        """ "3 hard doubles 35": the load of sets that are counted by their word."""
        before, group = self.prev, self.last_group()
        worded = before is not None and before.kind == "rows" and not before.note and len(before.value) == len(group)
        adjacent = before is not None and before.end == fact.start and fact.value >= LEAST_OF_WORD
        if not (worded and adjacent) or self.based or self.block.hold or any(row.load_kg for row in group):
            return False
        for row in group:
            row.load_kg = self._kg(fact)
        return True

    def _load_of_rest(self, fact: Fact) -> bool:
        """ "First set 20 kg, rest 17.5", "3x4 with 22.5, on the last only 17.5": beside loads, no reps."""
        named = self.scope not in (None, "all", "over") and fact.value > MOST_REPS_OF_SCHEME and bool(self.scoped())
        loads = [row.load_kg for row in self.rows if (row.touched or named) and row.load_kg]
        most = max((row.reps or 0 for row in self.rows), default=0)
        if not (named or self.scope == "rest") or not loads or fact.value <= most + FEW or self.block.hold:
            return False
        self.on_load(Fact("load", fact.start, fact.end, self._kg(fact), {"how": "at"}))
        return True

    def _help(self, fact: Fact) -> bool:
        """ "counterweight 7.5", "band 15: 3x8"."""
        if self.block.movement not in ("one_arm_counterweight", "band_pull_up") or self.assist is not None:
            return False
        moved = self.prev is not None and self.prev.kind == "move"
        colon = self.next_is("sep") and self.next is not None and self.next.note.get("mark") == ":"
        if not moved or (fact.value == int(fact.value) and not colon):
            return False
        self.assist = self._kg(fact)
        return True

    def _attempted(self, fact: Fact) -> bool:
        """ "tried 50"."""
        if not self._after_scheme("attempt") or fact.value < LEAST_TRIED or self.block.hold:
            return False
        self.attempt_load = self._kg(fact)
        return True

    def _mended_load(self, fact: Fact) -> bool:
        """ "5x3 +20 - sorry, 22.5"."""
        loaded = {row.load_kg for row in self.rows} - {None, 0.0}
        if not self.mend or not loaded or (fact.value == int(fact.value) and fact.value <= MOST_MENDED):
            return False
        self.on_load(Fact("load", fact.start, fact.end, self._kg(fact), {"how": "at"}))
        return True

    def _broken(self, fact: Fact) -> bool:
        """No number of reps: 22.5 is a load that was tried, or is asked about."""
        if fact.value == int(fact.value) and not fact.note.get("comma"):
            return False
        if self._after_scheme("got", "attempt") or self.next_is("fail"):
            self.attempt_load = self._kg(fact)
            return True
        apart = self.prev is not None and self.prev.kind == "sep" and self.next_is("sep")
        if apart and not self.rows and fact.value > MOST_EFFORT and not self.block.hold and not fact.note.get("comma"):
            self.load, self.load_said = self._kg(fact), True  # "4 sets of pull-ups. 17.5. 4, 4, 4, 3."
            return True
        self.ask("load_kg" if self.rows else "reps", fact)
        if not self.rows:
            self.rows.append(Row(None, load_open=True, group=self.group))
        return True

    def _load_of_scheme(self, fact: Fact) -> bool:
        """ "4x3 27.5", "curls 3x10 12": kilograms, right behind a whole scheme."""
        at, group = self.place(fact), self.last_group()
        before = self.block.facts[max(0, at - 3) : at]
        while before and before[-1].kind in ("move", "weighted"):
            before.pop()  # "4x4 pull-ups 17.5"
        scheme = before[-1] if before else None
        whole = scheme is not None and scheme.kind == "rows" and scheme.note.get("plain") and len(group) > 1
        if not whole or self.based or self.block.hold or self.mend:
            return False
        if any(row.load_kg is not None for row in group) or fact.note.get("comma") or fact.note.get("spelled"):
            return False
        closes = self.next is None or self.next_is("sep", "move", "effort", "at", "claim", "word")
        free = self.block.movement in FREE_WEIGHTS and fact.value > FEW
        broken = fact.value != int(fact.value) and fact.value > MOST_EFFORT
        heavy = self.weighted and fact.value >= LEAST_TRIED
        if not closes or not (free or broken or heavy):
            return False
        for row in group:
            row.load_kg = self._kg(fact)
        return True

    def _added(self, fact: Fact) -> bool:
        """ "4x5, added 10": kilograms, behind a word for adding."""
        added = self.prev is not None and self.prev.kind == "plan" and "sure" in self.prev.note.get("names", ())
        group = self.last_group()
        if not added or self.based or self.block.hold or any(row.load_kg is not None for row in group):
            return False
        if not group:
            self.load, self.load_said = self._kg(fact), True  # "pull-ups: added 25. 5x3"
        for row in group:
            row.load_kg = self._kg(fact)
        return True

    def _loose(self, fact: Fact) -> bool:
        """ "3x8, a 7 maybe", "squats 3x5 80": a number after a whole scheme with nothing to say what it is.

        Beside a free weight it is the load (those lifts always have one); else it is asked about, never made a set.
        "4x6, 3" and "4x5, then 3" do tell one more set: no more reps than before, with nothing said of it.
        """
        group = self.last_group()
        at = self.place(fact)
        before = self.block.facts[:at]
        aside = ("word", "sep", "load", "effort", "claim", "plan")
        scheme = next((one for one in reversed(before) if one.kind not in aside), None)
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
            self.ask("load_kg", fact)
            for row in group:
                row.load_open = True
            return True
        self.ask("rpe" if LEAST_RATED <= fact.value <= 10 else "sets", fact)
        return True

    def _told_before(self, fact: Fact) -> bool:
        """ "the 6 was all I had", "40 was a record": a number of sets told before, spoken of once more."""
        parted = self.prev is not None and self.prev.kind == "sep" and (self.next is None or self.next_is("sep"))
        if not self.rows and self.load_said and self.load and parted and abs(self.load - self._kg(fact)) < 0.05:
            return True  # "two plates of 7.5, so 15"
        if not self.rows or self.mend or self.scope is not None or self.side or self.next_is("side"):
            return False
        if not (self.after_sentence or fact.note.get("the") or self.next_is("word")):
            return False
        if fact.note.get("the") and any(row.reps == fact.value for row in self.rows):
            return True
        kg = fact.note.get("kg", fact.value)
        return kg >= 15 and any(row.load_kg is not None and abs(row.load_kg - kg) < 0.05 for row in self.rows)
