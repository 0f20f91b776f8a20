"""Bare numbers: reps, a load, an effort, a number told before, or a question."""

from __future__ import annotations

from collections.abc import Callable

from bot.reading.facts import LOADED, Entry, Fact
from bot.reading.fold.bare_counts import LEAST_LOOSE, BareCounts
from bot.reading.fold.bare_loads import FEW, LEAST_OF_WORD
from bot.reading.fold.loads import MOST_EITHER
from bot.reading.fold.rows import Row

MOST_OF_A_TRY = 5  # reps that a load which is tried goes up
MOST_REPS = 200
LEAST_SECONDS = 25  # nobody hangs or holds so often in one set: a number so high beside a hold is its seconds
DOUBTFUL_TRY = 20  # "got 25" may be reps or a load
WHOLE_FEATS = frozenset({"muscle_up", "ring_muscle_up", "one_arm_pull_up", "one_arm_chin_up"})


class BareFacts(BareCounts):
    """Numbers with nothing to say what they are: the first rule that takes one decides."""

    def on_bare(self, fact: Fact) -> None:
        rules: tuple[Callable[[Fact], bool], ...] = (
            self._spent,
            self._got_at_load,
            self._got_fewer,
            self._short_of_scope,
            self._by_place,
            self._one_of_ten,
            self._rates_last,
            self._load_of_rest,
            self._of_scope,
            self._counts_a_word,
            self._many_of_a_word,
            self._holds_counted,
            self._counts_what_follows,
            self._load_of_word,
            self._load_of_words,
            self._mended_effort,
            self._missed,
            self._tried,
            self._next_try,
            self._told_before,
            self._load_of_rows,
            self._load_of_scheme,
            self._added,
            self._one,
            self._two_by_comma,
            self._help,
            self._attempted,
            self._against_plan,
            self._mended_load,
            self._mended_reps,
            self._of_count,
            self._list_of_side,
            self._broken,
            self._too_many,
            self._loose,
        )
        if not any(rule(fact) for rule in rules):
            self._reps(fact)

    def _spent(self, fact: Fact) -> bool:
        """Taken by the fact before it, denied, or the reps of a miss told once more."""
        again = self.rows and self.rows[-1].failed and self.rows[-1].reps == fact.value and "got" in self.schemes
        if self.one_way == fact.value:
            self.one_way = None
            return True
        return bool(fact.note.get("spent") or self.denied(fact) or (again and self.scope is None))

    def _got_at_load(self, fact: Fact) -> bool:
        """ "Tried 30 but only got one": the reps of the load tried."""
        if self.attempt_load is None or not self._after_scheme("got") or self.based or fact.note.get("comma"):
            return False
        if fact.value != int(fact.value) or not 0 < fact.value <= MOST_OF_A_TRY:
            return False
        self.group += 1
        self.rows.append(Row(int(fact.value), load_kg=self.attempt_load, group=self.group))
        self.attempt_load = None
        return True

    def _got_fewer(self, fact: Fact) -> bool:
        """ "Tried a triple at 30, got 2"."""
        last = self.last_group()
        if "attempt" not in self.schemes or not self._after_scheme("got") or len(last) != 1 or self.based:
            return False
        if last[0].reps is None or fact.value != int(fact.value) or fact.value >= last[0].reps:
            return False
        last[0].reps, last[0].failed = int(fact.value), True
        return True

    def _one_of_ten(self, fact: Fact) -> bool:
        """ "fue un nueve de diez", "eine 8 geschafft": an article, no number."""
        return bool(fact.note.get("spelled") and fact.value == 1 and self._follows(fact, "effort", "bare"))

    def _counts_a_word(self, fact: Fact) -> bool:
        """ "one thing": a number in words that counts what is no training; "right: one clean rep" counts reps."""
        sided = self.side in ("left", "right") and self.prev is not None and self.prev.kind in ("side", "sep")
        return (
            not sided
            and not self._before_sided(fact)
            and bool(fact.note.get("spelled") and self._follows(fact, "word"))
        )

    def _one(self, fact: Fact) -> bool:
        """ "one with 40, one with 42.5" are singles; another "one" is no number."""
        if not fact.note.get("spelled") or fact.value != 1:
            return False
        loaded = self._follows(fact, "load") and self.next is not None and self.next.value
        if loaded and (not self.rows or self.loads_told()):
            self.add([Entry(1)], fact)
            return True
        if self._before_sided(fact):
            return False
        return not (self.side or self.next_is("side"))

    def _before_sided(self, fact: Fact) -> bool:
        """ "One one-arm pull-up per side!"."""
        sided = self.block.one_sided and any(one.kind == "side" for one in self.block.facts)
        return sided and bool(fact.note.get("before_move"))

    def _two_by_comma(self, fact: Fact) -> bool:
        """ "left 5,4", "+30: 4,4": two sets, where a decimal makes no sense."""
        after_colon = self.prev is not None and self.prev.kind == "sep" and self.prev.note.get("mark") == ":"
        sided = self.side in ("left", "right")
        if not fact.note.get("comma") or not (sided or (self.loaded() and (not self.rows or after_colon))):
            return False
        pieces = [piece.strip() for piece in self.span(fact.start, fact.end).split(",")]
        if len(pieces) != 2 or not all(piece.isdigit() for piece in pieces):
            return False
        if pieces[1] == "5" and int(pieces[0]) >= LEAST_OF_WORD:
            return False  # "17,5" is a load
        self.add([Entry(int(piece)) for piece in pieces], fact)
        return True

    def _against_plan(self, fact: Fact) -> bool:
        """A number beside the plan's sets: of all of them, or asked."""
        if not self.based or fact.value != int(fact.value) or self.mend:
            return False
        if self.scope == "all":
            self.override(self.rows, Entry(int(fact.value)))
        elif not (self.side in ("left", "right") or self.next_is("side") or fact.note.get("spelled")):
            self.ask("reps", fact)
        return True

    def _mended_reps(self, fact: Fact) -> bool:
        """ "3x5, no, 4", "right was 2"."""
        if not self.mend or not self.rows or fact.value != int(fact.value):
            return False
        sided = [row for row in self.rows if row.side == self.side] if self.side in ("left", "right") else []
        self.override((sided or self.rows)[-1:], Entry(int(fact.value)))
        self.mend = False
        return True

    def _too_many(self, fact: Fact) -> bool:
        if fact.value <= MOST_REPS or self.block.hold:
            return False
        self.ask("reps", fact)
        self.rows.append(Row(None, group=self.group))
        return True

    def _reps(self, fact: Fact) -> None:
        """Reps; open to being a load where nothing beside it says so."""
        timed = bool(self.rows and self.rows[-1].hold_s is not None) or fact.value >= LEAST_SECONDS
        hold_unsure = self.block.hold and not timed
        sure = self._sure(fact) and not hold_unsure
        several = bool(self.rows) and self.bares_open() and not hold_unsure
        if several and not sure:
            for _, row in self.bares:
                row.load_open = False
        self.add([Entry(int(fact.value))], fact)
        self.rows[-1].load_open = self.rows[-1].load_open if sure or several else True
        if fact.note.get("the") and fact.note.get("spelled"):
            self.rows[-1].label = "the"
        self.bares.append((fact, self.rows[-1]))

    def _sure(self, fact: Fact) -> bool:
        """Whether something beside the number says that it is reps."""
        if self.block.hold and fact.value >= LEAST_SECONDS:
            return True
        untold = self.attempt_load is None and not self.loaded()
        if self._after_scheme("got", "attempt") and untold and fact.value > DOUBTFUL_TRY:
            return False
        moved = self.prev is not None and self.prev.kind == "move"
        return bool(
            self.side in ("left", "right", "each")
            or self.next_is("side", "load", "at", "effort", "link")
            or (self.next is not None and self.next.kind == "scheme" and self.next.value == "amrap")
            or self.loaded()
            or fact.note.get("before_move")
            or (moved and fact.value <= FEW and self.block.movement in WHOLE_FEATS)
            or self.schemes & {"amrap", "ladder", "total"}
            or ("got" in self.schemes and not self._loose_behind_name(fact))
            or (self.by_ordinals and fact.value <= MOST_EITHER)
            or (self.rows and not self.bares_open())
            or (self.next_is("sep") and fact.note.get("spelled"))
        )

    def _loose_behind_name(self, fact: Fact) -> bool:
        """ "Did my chins, 16": what was done is the movement; the number is told apart."""
        before = self.block.facts[max(0, self.place(fact) - 2) : self.place(fact)]
        apart = [one.kind for one in before] == ["move", "sep"] and before[1].note.get("mark") == ","
        return apart and fact.value >= LEAST_LOOSE and self.block.movement in LOADED
