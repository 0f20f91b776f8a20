"""The forms of words that tell facts, in the order in which they are tried, each with what it can begin with."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

from bot.reading.facts import Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.against_plan import against_plan
from bot.reading.scan.assist import assist
from bot.reading.scan.efforts import effort, effort_after
from bot.reading.scan.load_for import load_by_reps, load_for, load_in_brackets, plates
from bot.reading.scan.loads import load
from bot.reading.scan.marks import marks
from bot.reading.scan.noise import noise_after
from bot.reading.scan.rungs import rungs
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.sets import sets
from bot.reading.scan.turned import turned

Told = tuple[list[Fact], int]  # the facts, and the place after the items that told them
Form = Callable[[Scanner, int, list[Fact]], Told | None]  # an item's place, and the facts before it


@dataclass(frozen=True)
class Beginning:
    """Items that a form can begin with: any of these. Where none is, the form tells nothing and is not tried."""

    tables: frozenset[str] = frozenset()  # of the grammar
    numbers: bool = False
    words: tuple[str, ...] = ()  # lists of little words
    signs: str = ""
    letters: bool = False  # a single one

    def fits(self, text: str, tables: frozenset[str], number: bool) -> bool:
        if (number and self.numbers) or not self.tables.isdisjoint(tables) or (len(text) == 1 and text in self.signs):
            return True
        said = {text, *text.split()}
        return (self.letters and len(text) == 1 and text.isalpha()) or any(said & little(name) for name in self.words)


def _noise(s: Scanner, i: int, _: list[Fact]) -> Told | None:
    after = noise_after(s, i)
    if after is None:
        return None
    end = s.at(min(after, len(s.items)) - 1).end
    return [Fact("word", s.at(i).start, end, None, {"noise": True})], after


def _effort(s: Scanner, i: int, _: list[Fact]) -> Told | None:
    found = effort(s, i) or effort_after(s, i)
    if found is not None and found[0] and found[0][-1].kind == "effort" and s.at(found[1]).has("effort", "session"):
        found[0][-1].note["session"] = True  # "8/10 effort overall"
        return found[0], found[1] + 1
    return found


def _alone(read: Callable[[Scanner, int], Told | None]) -> Form:
    """A form that does not look at the facts before it."""
    return lambda s, i, _: read(s, i)


def _tables(names: str) -> frozenset[str]:
    return frozenset(names.split())


LOADS_FIRST: tuple[tuple[Form, Beginning], ...] = (
    (_alone(turned), Beginning(words=("turned",))),
    (_alone(rungs), Beginning(_tables("scheme load"), numbers=True)),
    (_alone(load_for), Beginning(_tables("load"), numbers=True, words=("from_to",))),
    (_alone(load_in_brackets), Beginning(numbers=True)),
    (_alone(load_by_reps), Beginning(numbers=True)),
    (_alone(plates), Beginning(_tables("load"), numbers=True)),
    (_noise, Beginning(_tables("noise"), numbers=True, words=("week_cell", "numbered", "half_past"), signs="(€$£=@")),
)
THEN: tuple[tuple[Form, Beginning], ...] = (
    (
        _alone(against_plan),
        Beginning(
            _tables("scope plan sets side load fail"),
            numbers=True,
            words=("after_set", "from_set", "in_a_set", "forgot"),
            signs="+-",
        ),
    ),
    (_effort, Beginning(_tables("effort load"), numbers=True, words=("was", "rather", "rather_a"))),
    (
        _alone(sets),
        Beginning(
            _tables("ofsets sets load scheme times topcount count plan reps unit"),
            numbers=True,
            words=("set_letter", "weight", "a", "one", "mine"),
        ),
    ),
    (_alone(load), Beginning(_tables("load"), numbers=True, words=("had_it", "weight"), signs="#", letters=True)),
    (_alone(assist), Beginning(_tables("assist"))),
    (
        marks,
        Beginning(
            _tables("side link times load flag fail plan scope pause sep unreal scheme"),
            words=("stuck", "number_word"),
            signs="/",
        ),
    ),
)


def forms_of(item: Item) -> tuple[tuple[Form, ...], tuple[Form, ...]]:
    """The forms that an item can begin: loads and noise, which are tried first, and all others."""
    return _forms_of(item.text, item.labels, item.value is not None or item.kind in ("num", "clock"))


@lru_cache(maxsize=8192)
def _forms_of(
    text: str, labels: tuple[tuple[str, str], ...], number: bool
) -> tuple[tuple[Form, ...], tuple[Form, ...]]:
    tables = frozenset(table for table, _ in labels)

    def fitting(forms: tuple[tuple[Form, Beginning], ...]) -> tuple[Form, ...]:
        return tuple(form for form, beginning in forms if beginning.fits(text, tables, number))

    return fitting(LOADS_FIRST), fitting(THEN)
