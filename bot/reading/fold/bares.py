"""Bare numbers: reps, a load, an effort, a number told before, or a question."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from bot.reading.facts import LOADED, Entry, Fact
from bot.reading.fold.bare_loads import FEW, LEAST_RATED, BareLoads
from bot.reading.fold.loads import MOST_EITHER
from bot.reading.fold.rows import Row
from bot.reading.little import little

MOST_MISSED = 6  # sets told as missed by their number
LEAST_LOOSE = 10  # nobody hangs less on a belt and calls it by its number alone
LEAST_OF_WORD = 12  # "a single 40" tells a load; a smaller number may be anything
MOST_OF_A_TRY = 5  # reps that a load which is tried goes up
MOST_OF_A_SET = 2  # a set, or the pair of a one-sided one
MOST_OF_A_WORD = 20  # singles, doubles
MOST_REPS = 200
LEAST_SECONDS = 25  # nobody hangs or holds so often in one set: a number so high beside a hold is its seconds
DOUBTFUL_TRY = 20  # "got 25" may be reps or a load
WHOLE_FEATS = frozenset({"muscle_up", "ring_muscle_up", "one_arm_pull_up", "one_arm_chin_up"})


class BareFacts(BareLoads):
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

    def _short_of_scope(self, fact: Fact) -> bool:
        """ "5x3 with 20, last set to failure, got 2": what came of the set that is named before its effort."""
        beside = [one for one in (self.prev, self.next) if one is not None and one.kind == "scheme"]
        if not any(one.value == "got" for one in beside) or self.based or self.scope:
            return False
        silent = ("word", "sep", "scheme")
        before = [one for one in self.block.facts[: self.place(fact)] if one.kind not in silent][-2:]
        if [one.kind for one in before] != ["scope", "effort"] or fact.value != int(fact.value):
            return False
        self.scope = before[0].value
        rows = self.scoped()
        if len(rows) > MOST_OF_A_SET or not rows:
            self.scope = None
            return False
        self.override(rows, Entry(int(fact.value)))
        return True

    def _by_place(self, fact: Fact) -> bool:
        """ "first two sets 5, third 4, last 3": sets told one by one."""
        whole = fact.value == int(fact.value) and not fact.note.get("comma")
        first = self.scope[1] if isinstance(self.scope, tuple) and self.scope[0] == "first" else 1
        counted = self.count is not None and (self.scope in (1, "first") or 1 < first < self.count)
        if not self.rows and whole and (self.count is None or counted):
            self.count, self.expected = None, self.count or self.expected  # "vier Sätze: im ersten acht, im zweiten …"
            self.by_ordinals = self.by_ordinals or first > 1 or self.scope in (1, "first")
            if first > 1:
                self.add([Entry(int(fact.value)) for _ in range(first)], fact)
                return True
        nth = 1 if self.scope == "first" else self.scope
        if self.by_ordinals and nth == len(self.rows) + 1 and whole and fact.note.get("spelled") and not self.side:
            self.add([Entry(int(fact.value))], fact)  # "im ersten satz acht im zweiten sieben"
            return True
        last = self.scope == "last" or (isinstance(self.scope, tuple) and self.scope[0] == "last")
        if last and self.by_ordinals and whole and not self.based:
            many = self.scope[1] if isinstance(self.scope, tuple) else 1
            self.add([Entry(int(fact.value)) for _ in range(many)], fact)
            return True
        return False

    def _one_of_ten(self, fact: Fact) -> bool:
        """ "fue un nueve de diez", "eine 8 geschafft": an article, no number."""
        return bool(fact.note.get("spelled") and fact.value == 1 and self._follows(fact, "effort", "bare"))

    def _rates_last(self, fact: Fact) -> bool:
        """ "5x2 at 30, 9 on the last": a number far above the reps of the set that is named behind it is its effort."""
        last, follow = self.rows[-1:], self.next
        behind = follow is not None and follow.kind == "scope" and follow.value == "last" and self.scope is None
        if not behind or not last or last[0].reps is None or self.based or not LEAST_RATED <= fact.value <= 10:
            return False
        if fact.value <= last[0].reps + 1 or fact.note.get("comma"):
            return False
        if self._after_scheme("got") or (self.prev is not None and self.prev.kind == "plan"):
            last[0].reps, last[0].rpe = int(fact.value), None  # "3x5+, got 8 on the last"
            if follow is not None:
                follow.note["spent"] = True
            return True
        self.on_effort(Fact("effort", fact.start, fact.end, float(fact.value)))
        return True

    def _of_scope(self, fact: Fact) -> bool:
        """The reps of a set that was pointed at."""
        if not self.rows or self.scope in (None, "all") or fact.note.get("comma") or fact.value != int(fact.value):
            return False
        rows = self.scoped()
        if not rows:
            return False
        other = self.total is not None and len(self.rows) == 2 and self.each_of and fact.value != rows[0].reps
        if other and self.scope in ("last", ("last", 1)):
            self.add([Entry(int(fact.value))], fact)  # "100 dips, sets of 15 till the last one which was 10"
            return True
        if self.scope == "last" and self._ends_a_list(fact):
            self.add([Entry(int(fact.value))], fact)  # "3,3,3,3 and on the last 1"
            return True
        more = all(fact.value > (row.reps or 0) + 1 for row in rows)
        if self.last_effort is not None and more and LEAST_RATED <= fact.value <= 10 and not self.block.hold:
            self.on_effort(Fact("effort", fact.start, fact.end, float(fact.value)))  # "all rpe 7, the last was 8"
            return True
        if more and self._either(fact, rows):
            return True
        if self.side in ("left", "right"):
            rows = [row for row in rows if row.side == self.side] or rows
        self.override(rows, Entry(int(fact.value)))
        return True

    def _either(self, fact: Fact, rows: list[Row]) -> bool:
        """ "5x3, last set 9": more reps than the scheme's, or its effort; where a word judges it, its effort."""
        one = len(rows) <= MOST_OF_A_SET and len(self.rows) > len(rows) and not self.block.hold
        if not one or self.by_ordinals or not LEAST_RATED <= fact.value <= 10:
            return False
        if self._after_scheme("got") or "amrap" in self.all_schemes or any(row.reps is None for row in rows):
            return False
        if self._judged(fact):
            self.on_effort(Fact("effort", fact.start, fact.end, float(fact.value)))
            return True
        self.ask("reps", fact)
        for row in rows:
            row.reps = None
        self.scope = None
        return True

    def _judged(self, fact: Fact) -> bool:
        """Whether a word right beside a number says how it went: "a solid 9", "9 knapp"."""
        facts, at = self.block.facts, self.place(fact)
        beside = [one for one in facts[max(0, at - 1) : at + 2] if one.kind == "word"]
        return any(self.span(one.start, one.end).lower() in little("judging") for one in beside)

    def _ends_a_list(self, fact: Fact) -> bool:
        """Whether "and the last 1" goes on with a list told set by set, and does not only repeat its end."""
        facts = (self.block.facts[at] for at in range(self.place(fact) - 1, -1, -1))
        told = (f for f in facts if f.kind not in ("word", "scope", "move", "load") and f.value != "only")
        mark, rows = next(told, None), next(told, None)
        joined = mark is not None and mark.kind == "sep" and mark.note.get("mark") == "and"
        listed = joined and rows is not None and rows.kind == "rows" and rows.note.get("list") and not self.based
        return bool(listed) and self.rows[-1].reps != fact.value and not self.rows[-1].side

    def _counts_a_word(self, fact: Fact) -> bool:
        """ "one thing": a number in words that counts what is no training; "right: one clean rep" counts reps."""
        sided = self.side in ("left", "right") and self.prev is not None and self.prev.kind in ("side", "sep")
        return (
            not sided
            and not self._before_sided(fact)
            and bool(fact.note.get("spelled") and self._follows(fact, "word"))
        )

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

    def _counts_what_follows(self, fact: Fact) -> bool:
        """ "Did six: 6x2": the number of the sets that follow."""
        at = self.place(fact)
        colon, work = (*self.block.facts[at + 1 : at + 3], None, None)[:2]
        if colon is not None and work is not None and colon.value == "attempt" and work.kind == "rows":
            return len(work.value) == fact.value and bool(work.note.get("list"))  # "3 tries 4s 3s 3s"
        if colon is None or work is None or colon.note.get("mark") != ":" or work.kind != "rows":
            return False
        return len(work.value) == fact.value and bool(work.note.get("plain"))

    def _holds_counted(self, fact: Fact) -> bool:
        """ "3 one-arm hangs, 10 s": so many holds of the seconds that follow."""
        timed = any(one.kind == "rows" and one.note.get("unit") for one in self.block.facts)
        if not self.block.hold or not timed or not fact.note.get("before_move") or self.rows or self.count is not None:
            return False
        self.count = int(fact.value)
        return True

    def _many_of_a_word(self, fact: Fact) -> bool:
        """ "Singles: 5 at 40 kg", "singles, 5 each side": so many of them."""
        alone = len(self.rows) == 1 and self.word_row is self.rows[0] and self.rows[0].load_kg is None
        colon = self.prev is not None and self.prev.kind == "sep" and self.prev.note.get("mark") == ":"
        colon = colon or (self.next is not None and self.next.kind == "side" and self.next.value == "each")
        many = int(fact.value) if fact.value in range(2, MOST_OF_A_WORD + 1) else 0
        if not (alone and colon and many) or self.based or fact.note.get("comma"):
            return False
        self.rows += [replace(self.rows[0]) for _ in range(many - 1)]
        self.word_row = None
        return True

    def _missed(self, fact: Fact) -> bool:
        """ "MU 5x1, then 2 missed"; "3, 2, 2 and one fail"."""
        parted = self.prev is not None and self.prev.kind == "sep" and (self.prev.value == 2 or self._counts_misses())
        if not self.rows or not parted or not self._follows(fact, "fail") or self.next is None:
            return False
        if self.next.note.get("weak") or self.next.value is not None or fact.value not in range(1, MOST_MISSED + 1):
            return False
        self.add([Entry(0) for _ in range(int(fact.value))], fact)
        for row in self.last_group():
            row.failed = True
        return True

    def _counts_misses(self) -> bool:
        """Whether the word that follows is a miss that can be counted: "one fail", "2 misses"."""
        return self.next is not None and self.span(self.next.start, self.next.end).lower() in little("a_miss")

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

    def _of_count(self, fact: Fact) -> bool:
        """ "4 sets, 6"; "2 sets of pull-ups, 8 and 7" tells them one by one."""
        whole = fact.value == int(fact.value) and not fact.note.get("comma")
        article = fact.note.get("spelled") and not fact.note.get("before_move")
        if (
            article
            and fact.value > 1
            and self.scope in (None, "all")
            and (self.next is None or self.next_is("sep", "load", "effort", "scope", "side"))
        ):
            article = False  # "vier Sätze Klimmzüge zu je vier mit zehn Kilo", "tres series de arqueras, dos por lado"
        if self.count is None or not whole or article:
            return False
        if self._as_many_follow(fact):
            self.expected, self.count = self.count, None  # "4 sets: 5@15 5@15 4@17.5 4@17.5"
            return False
        others = self._listed_after(fact)
        if others and self.count > 1:
            for other in others:
                other.note["spent"] = True
            if len(others) + 1 != self.count:
                self.ask("sets", Fact("bare", fact.start, others[-1].end))
            self.count = None
            entries = [Entry(int(one.value)) for one in (fact, *others)]
            self.on_rows(Fact("rows", fact.start, fact.end, entries, {"list": True}))
            return True
        if self.rows and not self.based:
            self.add([Entry(int(fact.value))], fact)  # "4 sets: 5, 5, 4 and the other 3"
            self.count = None if len(self.rows) == self.count else self.count
            return True
        doubtful = self._loose_behind_count(fact)
        self.on_rows(Fact("rows", fact.start, fact.end, [Entry(int(fact.value))]))
        if doubtful:
            self.ask("reps", fact)
            for row in self.last_group():
                row.reps, row.load_open = None, True
        return True

    def _loose_behind_count(self, fact: Fact) -> bool:
        """ "3 sets of pull-ups, 20": behind a comma, with nothing else told, the reps of each or the load; asked."""
        comma = self.prev is not None and self.prev.kind == "sep" and self.prev.note.get("mark") == ","
        alone = self.next is None or self.next_is("sep", "word")
        high = not fact.note.get("spelled") and fact.value >= LEAST_LOOSE
        loaded = self.loaded() or self.block.hold or self.side is not None or self.scope is not None
        return comma and alone and high and not loaded and self.block.movement in LOADED and not self.based

    def _as_many_follow(self, fact: Fact) -> bool:
        """Whether as many numbers, each with its load, are told as sets were counted."""
        count = self.count or 0
        if count < 2:
            return False
        told = [one for one in self.block.facts[self.place(fact) :] if one.kind not in ("sep", "word")]
        pairs = ["load" if one.kind == "at" else one.kind for one in told[: 2 * count]]
        return pairs == ["bare", "load"] * count

    def _list_of_side(self, fact: Fact) -> bool:
        """ "Left 3 and 2, right 3 and 3": sets of that side."""
        sided = self.prev is not None and self.prev.kind == "side" and self.side in ("left", "right")
        whole = fact.value == int(fact.value) and not fact.note.get("comma")
        others = self._listed_after(fact) if sided and whole and not self.based else []
        for other in others:
            other.note["spent"] = True
        if others:
            side, self.side = self.side, None
            self.add([Entry(int(one.value), side=side) for one in (fact, *others)], fact)
            self.last_side = side
        return bool(others)

    def _listed_after(self, fact: Fact) -> list[Fact]:
        """The plain numbers of a list that goes on after this one: "8 and 7", "8 then 7", "8, dann noch 7"."""
        found: list[Fact] = []
        facts = self.block.facts
        at = self.place(fact) + 1
        while True:
            start = at
            while at < len(facts) and (facts[at].kind == "link" or (facts[at].kind == "sep" and facts[at].value < 3)):
                at += 1
            parted = at > start
            at += at < len(facts) and parted and self.span(facts[at].start, facts[at].end).lower() in little("too")
            if not parted or at >= len(facts) or facts[at].kind != "bare":
                return found
            number = facts[at]
            follows = facts[at + 1] if at + 1 < len(facts) else None
            ends = follows is None or follows.kind == "sep" or (follows.kind == "scheme" and follows.value == "got")
            whole = (
                number.value == int(number.value) and not number.note.get("comma") and not number.note.get("spelled")
            )
            if not whole or not ends:
                return found
            found.append(number)
            at += 1

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
