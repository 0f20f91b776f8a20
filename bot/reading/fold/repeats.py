"""Sets told once more, and the numbers left over: "five times", "twice", "got 1:48"."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.bounds import ends_sentence, is_then
from bot.reading.facts import Entry, Fact
from bot.reading.fold.bare_loads import LEAST_RATED, after_scheme
from bot.reading.fold.bares import on_bare
from bot.reading.fold.efforts import on_effort
from bot.reading.fold.state import FoldState
from bot.reading.little import little

LONGEST_HOLD = 3600  # seconds
FAR_BEYOND = 3  # times the holds told


def on_repeat(fold: FoldState, fact: Fact) -> None:
    if fold.attempt_load is not None:
        fold.tries = fact.value  # "tried 45 twice and failed both"
        return
    group = fold.last_group()
    if group and group[-1].failed and fold.prev is not None and fold.prev.kind == "fail":
        group = group[-1:]  # "got 2, then failed 3 times"
    if not group and fact.note.get("counted") and _listed_as_often(fold, fact):
        return
    if not group and fact.note.get("counted") and fold.side is None:
        note = {"spelled": False, "comma": False, "kg": float(fact.value)}
        on_bare(fold, Fact("bare", fact.start, fact.end, float(fact.value), note))  # "pull-ups, five times"
        return
    if not group and fold.side is None:
        return
    if not group or fold.side in ("left", "right"):
        fold.add([Entry(fact.value)], fact)
        return
    then = fold.prev is not None and is_then(fold.prev)
    if then and fact.note.get("counted") and len(group) == 1 and group[0].reps and not fold.based:
        # "five times with 20 kg, then four times"
        fold.rows.append(replace(group[0], reps=fact.value, rpe=None, group=fold.group + 1))
        fold.group += 1
        return
    sides = [row.side for row in fold.rows[-2:]]
    since = [one.kind for one in fold.block.facts[: fold.place(fact)]]
    apart = "sep" in since[max((n for n, kind in enumerate(since) if kind in ("bare", "rows")), default=0) :]
    if len(fold.rows) == 2 and set(sides) == {"left", "right"} and apart:
        group = fold.rows[-2:]  # "left 20 s, right 25 s, twice"
    fold.rows += [replace(row) for _ in range(fact.value - 1) for row in group]


def _listed_as_often(fold: FoldState, fact: Fact) -> bool:
    """ "L-sit four times: 12, 15, 14 and 10 seconds": the number of the sets that are listed behind."""
    work = next((one for one in fold.block.facts[fold.place(fact) + 1 :] if one.kind in ("rows", "bare")), None)
    listed = work is not None and work.kind == "rows" and bool(work.note.get("list"))
    return listed and work is not None and len(work.value) == fact.value


def _time_of_day(fold: FoldState, fact: Fact) -> bool:
    """ "L-sit 3x10s, finished 7:50": no hold that anyone has, or far beyond those told."""
    told = max((row.hold_s or 0 for row in fold.rows), default=0)
    led = fold.prev is not None and fold.prev.kind == "word" and str(fold.prev.value) in little("before_clock")
    return fact.value >= LONGEST_HOLD or bool(told and (led or fact.value > FAR_BEYOND * told))


def on_left(fold: FoldState, fact: Fact) -> None:
    closes = fold.next is None or ends_sentence(fold.next)
    rated = fact.note.get("of_ten") and fact.value is not None and LEAST_RATED <= fact.value <= 10
    if rated and closes and fold.rows and fold.prev is not None and fold.prev.kind == "sep":
        on_effort(fold, Fact("effort", fact.start, fact.end, float(fact.value)))  # "5x3 with 20, 8/10"
        return
    tried = "attempt" in fold.schemes | fold.all_schemes and after_scheme(fold, "got") and len(fold.rows) == 1
    if fact.note.get("clock") and tried and fold.rows[0].hold_s and (fact.value or 0) < fold.rows[0].hold_s:
        fold.rows[0].hold_s = fact.value  # "two-minute hang attempt: got 1:48"
        return
    if fact.note.get("clock") and fold.block.hold and fact.value and not _time_of_day(fold, fact):
        fold.add([Entry(hold_s=fact.value)], fact)
