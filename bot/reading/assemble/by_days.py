"""The facts of one movement, cut where another day begins: "Sat 4x4 +10 pull-ups, yesterday 3x5"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from bot.reading.facts import Fact

AGAIN = frozenset({"rows", "load", "side", "flag", "assist"})  # what "the same" repeats


def cut_by_days(own: list[Fact]) -> Iterator[list[Fact]]:
    """The facts day by day, where each of the days has sets."""
    start = 0
    for at, fact in enumerate(own):
        if not _is_day(fact):
            continue
        again = _same_again(own[start:at], own[at:])
        if again:
            yield own[start:at]
            own, start = [*own[:at], *again], at
            continue
        if not (told(own[start:at]) and told(own[at:])):
            continue
        cut = at if _dated(own[start:at]) else _behind(own, at)
        yield own[start:cut]
        start = cut
    yield own[start:]


def told(facts: Sequence[Fact]) -> bool:
    return any(fact.kind == "rows" for fact in facts)


def _is_day(fact: Fact) -> bool:
    return fact.kind == "claim" and fact.value is not None and fact.value.kind == "day" and bool(fact.value.value)


def _dated(facts: Sequence[Fact]) -> bool:
    """Whether a day stands before or among these facts already."""
    return any(_is_day(fact) for fact in facts)


def _behind(own: Sequence[Fact], at: int) -> int:
    """Where what is told of the day ends that its sets stand before: "5x3 yesterday with 20 and today 4x8"."""
    work = next(i for i in range(at, len(own)) if own[i].kind == "rows")
    if not any(_is_day(fact) for fact in own[at + 1 :]):
        return at  # "5x3 with 20, today 5x3 with 22.5"
    seps = [i + 1 for i in range(at, work) if own[i].kind == "sep"]
    return seps[-1] if seps else work


def _same_again(before: list[Fact], after: list[Fact]) -> list[Fact]:
    """ "Yesterday 4x4 +15, today the same with 17.5": the work told before, on the day that `after` begins with."""
    same = next((fact for fact in after if fact.kind == "plan" and "same" in fact.note.get("names", ())), None)
    if same is None or not told(before) or told(after) or any(one.kind == "bare" for one in after):
        return []
    loaded = any(one.kind in ("load", "at") for one in after)
    kept = [one for one in before if one.kind in AGAIN and not (loaded and one.kind == "load")]
    work = [replace(one, start=same.start, end=same.end) for one in kept]
    return [again for one in after for again in (work if one is same else [one])]
