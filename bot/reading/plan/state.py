"""The plan's sets, and what the clauses so far have said of them."""

from __future__ import annotations

from dataclasses import dataclass

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.fold.sets import Work
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.clauses import Clause
from bot.reading.plan.ground import PARTS, plan_names
from bot.reading.reading import Ask

VALUES = frozenset("rows bare loads load at count effort effort_range efforts instead delta fail assist".split())


@dataclass(frozen=True)
class Said:
    """A clause, looked at once."""

    clause: Clause
    values: list[Fact]
    scoped: list[Fact]

    @classmethod
    def of(cls, clause: Clause) -> Said:
        """The values of a clause and the scopes that name sets."""
        return cls(
            clause,
            [fact for fact in clause.facts if fact.kind in VALUES],
            [
                fact
                for at, fact in enumerate(clause.facts)
                if fact.kind == "scope" and fact.value not in ("over", "rest") and not _place_of(clause, at)
            ],
        )

    @property
    def names(self) -> set[str]:
        return self.clause.names

    @property
    def named(self) -> bool:
        return bool(self.clause.targets)

    @property
    def values_of_work(self) -> bool:
        """Whether reps or holds are told."""
        return any(fact.kind in ("rows", "bare", "count") for fact in self.values)

    @property
    def sided(self) -> bool:
        return any(f.kind == "side" and f.value in ("left", "right") for f in self.clause.facts)


def _place_of(clause: Clause, at: int) -> bool:
    """ "The accessories at the end": where in the session what is named right before stands, and no set of it."""
    before = clause.facts[at - 1] if at else None
    last = clause.facts[at].note.get("text") in little("at_the_end")
    return last and before is not None and (before.kind == "move" or bool(plan_names(before) & set(PARTS)))


class Told:
    """The plan's sets, and what the clauses so far have said of them."""

    def __init__(self, message: Message, rows: list[Row], clauses: list[Clause], work: Work) -> None:
        self.message = message
        self.rows = rows
        self.clauses = clauses
        self.work = work
        self.asks: list[Ask] = []
        self.keep: dict[int, bool] = {}
        self.anew: dict[int, list[Row]] = {}  # rows restated, by the first row they stand for
        self.listed: set[int] = set()  # first rows of those told by a list
        self.loads: dict[int, float] = {}  # the one load that rows were restated with, by the first row
        self.everything = False
        self.rest = False
        self.extra: list[Row] = []
        self.added: dict[int, list[Row]] = {}  # more sets after a planned one
        self.added_in: tuple[int, int] | None = None  # the row and the sentence of the one added last
        self.sticky: list[int] = []
        self.sticky_at = -1  # the sentence that named it
        self.several = len({row.movement for row in rows if row.part != "warm_up"}) > 1
        self.scope_at: tuple[Fact, int] | None = None  # the set that a sentence named last: "last one was hard, rpe 9"
        self.one_set: tuple[Fact, int, set[str]] | None = None  # named, its sentence, what was told of it but reps
        self.sided_set: tuple[Fact, int, str] | None = None  # a set whose one side was told, its sentence and that side
        self.pointed: tuple[int, list[int], list[int]] | None = None  # sentence, sets meant, those of them pointed at
        self.unclear_in = -1  # the sentence that goes on with sets that are asked
        self.told_of: set[int] = set()  # rows whose work or load a clause has told
        self.stop_after: int | None = None
        self.exclusive = False  # "only the pull-ups, as planned": "as planned" is said of them alone
        self.named_some = False  # some clause before named what was done
        self.left_lift: tuple[int, list[int]] | None = None  # sentence that leaves one whole lift out, and its rows
        self.excepted: tuple[int, list[int], bool] | None = None  # sentence that leaves sets out, these, told by scope
        self.behind: dict[int, Fact] = {}  # rows behind "up to set 4", by the fact that ends there, not told of so far
        self.up_to: set[int] = set()  # rows kept by that
        self.left: tuple[int, list[int]] = (-1, [])  # the sentence that left sets out last, and which
        self.leaving = False  # "without the archers, the dips": the next one named is left out too

    @property
    def nothing(self) -> bool:
        """Whether no set was told of."""
        return not (self.everything or self.rest or any(self.keep.values()) or self.anew or self.extra)

    def warmed_up(self, targets: list[int]) -> None:
        """Who did some of the main sets had warmed up."""
        for at, row in enumerate(self.rows):
            if at < min(targets) and row.part == "warm_up":
                self.keep.setdefault(at, True)

    def chosen(self) -> list[Row]:
        """The sets done, in the plan's order, then those outside it."""
        include_rest = self.everything or self.rest
        out: list[Row] = []
        for at, row in enumerate(self.rows):
            stopped = self.stop_after is not None and at > self.stop_after and not self.rest
            if stopped and at not in self.anew and self.keep.get(at) is None:
                continue
            if not self.keep.get(at, include_rest):
                continue
            out += self.anew.get(at, [row])
            out += self.added.get(at, [])
        return out + self.extra

    def ask(self, about: str, clause: Clause) -> None:
        """Ask what a clause cannot mean for sure."""
        self.asks.append(Ask(about, self.message.span(clause.facts[0].start, clause.facts[-1].end)))

    def step(self, at: int) -> int:
        """How many rows make one set: two where it is told by side."""
        return 2 if self.rows[at].side is not None else 1
