"""Bare numbers beside a count, and those that are one: "4 sets, 6", "did six: 6x2", "MU 5x1, then 2 missed"."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import LOADED, Entry, Fact
from bot.reading.fold.bare_places import BarePlaces
from bot.reading.little import little

MOST_MISSED = 6  # sets told as missed by their number
LEAST_LOOSE = 10  # nobody hangs less on a belt and calls it by its number alone
MOST_OF_A_WORD = 20  # singles, doubles


class BareCounts(BarePlaces):
    """Each rule takes a number that counts sets, or that tells the sets counted before it."""

    def _holds_counted(self, fact: Fact) -> bool:
        """ "3 one-arm hangs, 10 s": so many holds of the seconds that follow."""
        timed = any(one.kind == "rows" and one.note.get("unit") for one in self.block.facts)
        if not self.block.hold or not timed or not fact.note.get("before_move") or self.rows or self.count is not None:
            return False
        self.count = int(fact.value)
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
