"""The second half of the set grammar: the facts of one exercise to its sets.

Loads, efforts and sides find their sets by where they stand: a load before the first set is for all that follow, one
after a set is for that set; an effort after several sets is the last one's; a side beside a number is that number's.
What fits nowhere is asked, never guessed.
"""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.loads import MOST_EITHER
from bot.reading.fold.plausible import MOST_REPS
from bot.reading.fold.repeats import RepeatFacts
from bot.reading.fold.rows import Folded, Row

LOADED = frozenset("pull_up chin_up neutral_grip_pull_up ring_pull_up dip ring_dip muscle_up".split())
PULLS = frozenset("pull_up chin_up neutral_grip_pull_up ring_pull_up muscle_up".split())
LEAST_EITHER_SETS, FEW_REPS = 15, 12  # "25 x 3": so many sets of so few reps, or a load
LEAST_LONG, LEAST_LONG_REPS = 3, 20  # "5 x 20": so many sets of so many reps, or a load
LIST_GOES_ON = 3  # sets from which on a first set and what follows are a list
MOST_DROPPED = 3  # reps that fall within a list of one load
MOST_DAILY, MOST_BY_LOAD = 20, 8  # so many sets a day, and reps, that may as well be kilograms by reps
LEAST_EITHER = 15  # so many reps a set of a heavy lift are as likely kilograms
MOST_ASKED = 20  # sets that are asked about by their number
MOST_ROWS = 300  # of one exercise in one message; more is no training


def loads_of(fact: Fact) -> bool:
    return "own_load" in fact.note


class Folder(RepeatFacts):
    """Walks the facts of one block; each kind of fact has its method."""

    def fold(self) -> Folded:
        facts = self.block.facts
        for at, fact in enumerate(facts):
            if len(self.rows) > MOST_ROWS:
                self.ask("sets", fact)
                self.rows = []
                break
            self.next = facts[at + 1] if at + 1 < len(facts) else None
            handler = getattr(self, "on_" + fact.kind, None)
            if handler is not None:
                handler(fact)
            if fact.kind not in ("word", "claim", "thing"):
                self.prev = fact
        return self.finish()

    def finish(self) -> Folded:
        self._finish_minutes()
        self._finish_loads()
        self._finish_efforts()
        self._finish_counts()
        self._finish_rows()
        self._doubt_the_rest()
        if any(fact.kind == "ask" and fact.note.get("how_many") for fact in self.block.facts) and not self.based:
            self.rows = []  # "6 or 7 sets of 3": how many is not known, and nothing else is asked
            self.asks = [ask for ask in self.asks if ask.about == "sets"]
        if any(ask.about == "load_kg" for ask in self.asks):
            for row in self.rows:
                row.load_open = row.load_open or row.load_kg is None
        return Folded(self.rows, self.asks, self.efforts_open, self.early_effort, self.effort_inside)

    def _doubt_the_rest(self) -> None:
        """ "5 with 20, then 5 and 4": whether the load went on is not said."""
        first = next((at for at, row in enumerate(self.rows) if row.load_kg), None)
        if first is None or self.based or self.asks:
            return
        rest = [row for row in self.rows[first + 1 :] if row.load_kg is None and not row.load_open]
        placed = self.by_ordinals and all(row.load_kg is not None for row in self.rows[: -len(rest) or None])
        if rest and (placed or not any(row.load_kg is not None for row in self.rows[first + 1 :])):
            told = (fact for fact in self.block.facts if fact.kind in ("load", "loads", "at", "rows", "bare"))
            self.ask("load_kg", next(told, self.block.facts[0]))

    def _finish_minutes(self) -> None:
        if self.minutes:
            n = 0
            if "emom" in self.all_schemes:
                n = int(self.minutes[-1] // 60)
            elif len(self.minutes) == 2 and self.minutes[0]:
                n = int(self.minutes[1] // self.minutes[0])
            if n and len(self.rows) == 1 and n <= 60:
                self.rows = [replace(self.rows[0]) for _ in range(n)]

    def _finish_loads(self) -> None:
        """Loads that found no set, and sets whose load has no number."""
        loads = self.load_list
        if loads:
            group = self.last_group()
            if len(loads) == len(group):
                for row, kg in zip(group, loads, strict=True):
                    row.load_kg = kg
            elif len(loads) >= 1 and group:
                fact = next(f for f in reversed(self.block.facts) if f.kind == "load")
                self.ask("load_kg", fact)
                for row in group:
                    row.load_open = True
        if self.attempt_load is not None:
            self.rows.append(Row(1, load_kg=self.attempt_load, group=self.group + 1))
        if self.second_load is not None and not self.based:
            fact = self.second_load
            kgs = {row.load_kg for row in self.rows}
            if not any(k is not None and fact.value is not None and abs(k - fact.value) < 0.1 for k in kgs):
                near = [k for k in kgs if k and fact.value and abs(k - fact.value) / k < 0.02]
                if not near:
                    self.ask("load_kg", fact)
                    for row in self.rows:
                        row.load_kg, row.load_open = None, True
        if self.waiting and self.waiting_fact is not None:
            self.ask("sets", self.waiting_fact)
        facts = self.block.facts
        at = next((i for i, fact in enumerate(facts) if fact.kind == "move"), None)
        if (
            not self.rows
            and not self.asks
            and at
            and facts[at - 1].kind == "scope"
            and facts[at - 1].value == "first"
            and (
                any(fact.kind == "sep" and fact.note.get("mark") == "!" for fact in facts[at:])
                or any(fact.kind == "scheme" and fact.value == "got" for fact in facts[:at])
            )
        ):
            side = next((fact.value for fact in facts[at:] if fact.kind == "side" and fact.value != "each"), None)
            self.rows.append(Row(1, side=side))  # "my first muscle-up!"
        things = [fact for fact in self.block.facts if fact.kind == "thing"]
        if things and self.rows and not self.based and all(row.load_kg is None for row in self.rows):
            self.ask("load_kg", things[0])
            for row in self.rows:
                row.load_open = True
        vague = next((fact for fact in self.block.facts if fact.kind == "vague"), None)
        if vague is not None and not self.rows:
            self.ask("sets", vague)
        loaded = [f for f in self.block.facts if f.kind == "load" and not f.note.get("none") and f.value]
        if (
            not self.rows
            and not self.asks
            and loaded
            and self.block.movement
            and not self.based
            and self.block.move_at >= 0
        ):
            if "one_rm" in self.all_schemes and len(loaded) == 1:
                self.rows.append(Row(1, load_kg=self.load))  # "1RM test: 52.5 kg"
            else:
                self.ask("reps", loaded[0])
                self.rows += [Row(None, load_kg=self.load) for _ in range(min(self.count or 1, MOST_ASKED))]
                if self.count and self._either_told():
                    for row in self.rows:
                        row.load_kg, row.load_open = None, True

    def _finish_efforts(self) -> None:
        """Efforts said before the sets, or of all of them."""
        spent = self.failure is not None or any(f.kind == "effort" and f.value == 10 for f in self.block.facts)
        if spent:
            for _, row in self.bares:
                row.load_open = False
        if self.last_rpe is not None:
            for row in self.tail(self.rows):
                row.rpe = self.last_rpe
            self.effort_inside = True
        if self.failure is not None:
            for row in self.rows:
                row.rpe = row.rpe if row.rpe is not None else self.failure
        if (
            len(self.rows) == 2
            and self.total is None
            and len(self.bares) == 1
            and self.bares[0][0].note.get("before_move")
        ):
            many, few = self.rows[0].reps or 0, self.rows[1].reps or 0
            if self.bares[0][1] is self.rows[0] and few and many % few == 0 and many // few <= 40 and self.each_of:
                self.rows = [replace(self.rows[1]) for _ in range(many // few)]  # "50 dips in sets of ten"
        all_rpe = self.all_rpe
        if all_rpe is not None:
            for row in self.rows:
                row.rpe = row.rpe if row.rpe is not None else all_rpe
        for side, value in self.side_efforts.items():
            for row in self.rows:
                if row.side == side:
                    row.rpe = value

    def _finish_counts(self) -> None:
        """Counts, totals and bare numbers that stayed open."""
        if (
            self.count is not None
            and not self.rows
            and not self.based
            and "fail" not in self.schemes
            and self.block.facts
        ):
            fact = next(f for f in self.block.facts if f.kind == "count")
            self.ask("reps", fact)
            self.rows = [Row(None, load_kg=self.load if self.load_said else None) for _ in range(min(self.count, 40))]
        elif self.counted_ask is not None and not self.unsaid():
            self.asks.remove(self.counted_ask)  # "4 sets, the last 6, the others 8"
        told = self.count if self.count is not None else self.expected
        counted = next((f for f in self.block.facts if f.kind == "count" and f.value == told), None)
        pending = self.count is not None and len(self.rows) < self.count
        if counted is not None and (counted.note.keys() & {"of_plan", "only"} or self._mended_after(counted)):
            pending = False
        if (
            counted is not None
            and self.rows
            and not self.based
            and not self.asks
            and (pending or self._too_few(counted))
        ):
            self.ask("sets", counted)  # "second set only 3, the others 4. 4 sets in all"
        if self.total is not None:
            amount, fact = self.total
            sized = [row for row in self.rows if row.reps and row is not self.total_row(fact)]
            self.rows = [row for row in self.rows if row is not self.total_row(fact)]
            if len(sized) == 1 and sized[0].reps and amount % sized[0].reps == 0 and amount / sized[0].reps <= 60:
                self.rows = [replace(sized[0], load_open=False) for _ in range(int(amount // sized[0].reps))]
            elif (
                len(sized) == 2
                and self.each_of
                and sized[0].reps
                and (amount - (sized[1].reps or 0)) % sized[0].reps == 0
            ):
                many = int((amount - (sized[1].reps or 0)) // sized[0].reps)  # sets of 15, and a last one of 10
                self.rows = [replace(sized[0], load_open=False) for _ in range(min(many, MOST_ASKED))] + sized[1:]
            elif not sized:
                self.ask("sets", fact)
                self.rows = [Row(None)]
        for fact, row in self.bares:
            if row.load_open and row in self.rows and row.load_kg is None and len(self.bares) == 1 and row.side is None:
                self.ask("reps", fact)
                row.reps = None
                row.hold_s = None
            elif len(self.bares) > 1:
                row.load_open = False

    def _either_told(self) -> bool:
        """ "3 Sätze mit 8": a small number that may be the reps of each set as well as its load."""
        loads = [fact for fact in self.block.facts if fact.kind == "load" and fact.value]
        plain = len(loads) == 1 and loads[0].note.get("how") == "at" and not loads[0].note.get("unit")
        return plain and loads[0].value == int(loads[0].value) <= MOST_EITHER

    def _goes_on(self) -> None:
        """ "5 pull-ups with 15 kg, then 4, 4 and 3": the list goes on with the load of its first set."""
        first = self.rows[0] if len(self.rows) >= LIST_GOES_ON and not self.based else None
        rest = self.rows[1:]
        if first is None or not first.load_kg or not first.reps or any(row.group == first.group for row in rest):
            return
        told = [fact for fact in self.block.facts if fact.kind in ("rows", "bare")]
        listed = len(told) == 2 and bool(told[1].note.get("list")) and not first.side
        near = all(row.reps and 0 <= first.reps - row.reps <= MOST_DROPPED for row in rest)
        if listed and near and all(row.load_kg is None and not row.load_open for row in rest):
            for row in rest:
                row.load_kg = first.load_kg

    def _heavy_by_reps(self) -> None:
        """ "Pull-ups 5x15 4x20 3x25": more kilograms for fewer reps as likely as more reps in fewer sets; asked."""
        if self.block.movement not in LOADED or self.based or self.load_said:
            return
        told = [fact for fact in self.block.facts if fact.kind == "rows"]
        reps = [fact.value[0].reps or 0 for fact in told]
        counts = [len(fact.value) for fact in told]
        plain = len(told) > 1 and all(fact.note.get("plain") and "own_load" not in fact.note for fact in told)
        rising = reps == sorted(set(reps)) and counts == sorted(counts, reverse=True)
        many = len(told) == 1 and bool(told[0].note.get("plain")) and not loads_of(told[0])
        if many and counts[0] >= MOST_DAILY and reps[0] <= MOST_BY_LOAD and len(self.rows) == counts[0]:
            self.ask("sets", told[0])  # "pull-ups 35 x 3": 35 sets, or kilograms
            self.rows = []
            return
        if plain and rising and reps[0] >= LEAST_EITHER and len(self.rows) == sum(counts):
            self.ask("sets", Fact("rows", told[0].start, told[-1].end))
            self.rows = []

    def _a_load_alone(self) -> None:
        """ "Klimmzüge 25 x 3", "5 x 20", "20 5": one of two numbers may as well be a load; asked."""
        told = [fact for fact in self.block.facts if fact.kind in ("rows", "bare", "count", "rounds")]
        loaded = any(fact.kind in ("load", "loads", "at", "assist") for fact in self.block.facts)
        paced = self.all_schemes & {"emom", "every", "total", "ladder"}
        if len(told) != 1 or told[0].kind != "rows" or loaded or self.based or paced or self.asks:
            return
        if any((entry.reps or 0) > MOST_REPS for entry in told[0].value):
            return  # neither reps nor kilograms
        fact, sets = told[0], len(told[0].value)
        reps = [entry.reps or 0 for entry in fact.value]
        digits = not any(char.isalpha() and char.lower() != "x" for char in self.span(fact.start, fact.end))
        many = fact.note.get("plain") and sets >= LEAST_EITHER_SETS and reps[0] <= FEW_REPS
        long = fact.note.get("plain") and sets >= LEAST_LONG and reps[0] >= LEAST_LONG_REPS
        long = long and self.block.movement in PULLS
        pair = fact.note.get("mark") == " " and sets == 2 and reps[0] >= LEAST_EITHER_SETS and reps[1] <= reps[0] / 2
        if digits and self.block.movement in LOADED and (many or long or pair):
            self.ask("sets", fact)
            self.rows = []

    def _weighted_by(self) -> None:
        """ "Weighted pull-ups 4x5": with how much is not said."""
        unsaid = all(row.load_kg is None and not row.load_open for row in self.rows)
        if not self.rows or not self.weighted or not unsaid or self.based or not self.block.loadable or self.asks:
            return
        self.ask("load_kg", next(fact for fact in self.block.facts if fact.kind == "weighted"))
        for row in self.rows:
            row.load_open = True

    def _finish_rows(self) -> None:
        """What holds for every set."""
        self._weighted_by()
        self._goes_on()
        self._heavy_by_reps()
        self._a_load_alone()
        if not self.rows:
            return
        for row, before in self.more_of:
            if row.load_kg is None and not row.load_open:
                row.load_kg = before.load_kg
        listed = len({row.group for row in self.rows}) == 1 and ("ladder" in self.all_schemes or self.rows[-1].linked)
        pair = len(self.rows) == 2 and {row.side for row in self.rows} == {"left", "right"}
        if self.block.rounds and (len(self.rows) == 1 or listed or pair):
            self.rows = [replace(row) for _ in range(self.block.rounds) for row in self.rows]
        self.finish_flags()
        if self.side == "each" and self.rows:
            self.each()
        for row in self.rows:
            if row.eccentric and row.hold_s and row.reps is None and not self.block.hold:
                row.reps, row.hold_s = 1, None  # "negatives, left 8s 7s": the seconds of one lowering each
            if row.reps == 0 and not row.failed:
                row.failed = True
            if self.assist is not None and row.assist_kg is None:
                row.assist_kg = self.assist
        self._help_of_all()

    def _help_of_all(self) -> None:
        """ "2 left (10 off) and 3 right" on the pulley: without help it would be another movement."""
        told = {row.assist_kg if row.assist_kg is not None else row.load_kg for row in self.rows} - {None}
        if self.block.movement != "one_arm_counterweight" or len(told) != 1:
            return
        for row in self.rows:
            if row.load_kg is None and row.assist_kg is None and not row.load_open:
                row.assist_kg = next(iter(told))

    def _mended_after(self, counted: Fact) -> bool:
        """ "Four sets, no wait, three sets of ten": the count was taken back."""
        return any(one.kind == "mend" and one.start >= counted.end for one in self.block.facts)

    def _too_few(self, counted: Fact) -> bool:
        """Whether sets were told one by one, by their place, and fewer than their number says."""
        placed = any(fact.kind == "scope" and isinstance(fact.value, int) for fact in self.block.facts)
        pairs = {"left", "right"} <= {row.side for row in self.rows}
        return placed and len(self.rows) < int(counted.value) * (2 if pairs else 1)

    def total_row(self, fact: Fact) -> Row | None:
        return next((row for f, row in self.bares if f is fact), None)

    def finish_flags(self) -> None:
        paused = "pause_pause" in self.flags | self.late
        for rows, flags in self.scope_flags.values():
            self.apply(rows, flags, "pause_pause" in flags)
        for side, flags in self.side_flags.items():
            self.apply([row for row in self.rows if row.side == side], flags, paused=False)
        for group, flags in ((None, self.flags), (self.group, self.late)):
            rows = self.rows[self.frozen :] if group is None else self.last_group()
            self.apply(rows, flags, paused)
        for rows, flags in self.scope_flags.values():
            for row in rows if "no_pause" in flags else ():
                row.pauses = ()  # "1 s at the top, last set no hold"
