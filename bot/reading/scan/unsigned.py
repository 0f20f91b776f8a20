"""Commas that hurried people leave out of what they tell of the day's plan, put back where a clause begins.

"all done dips with 15" is two clauses, as "all done, dips with 15" is: the day was done as planned, and one lift
otherwise. "dips as planned straight after 6 with 10", "left as planned right only 2", "dips only 6 rest as planned" and
"dips 3+2+1 with 20 push-ups as planned" are too. Behind a comma they are read by the rules that stand there anyway.
"""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.items import END, Item
from bot.reading.little import little

SIGNS = frozenset(",;.:!?()|/")
VERDICTS = ("done", "planned")
MOST_LED = 3  # words between a verdict and what the next clause names: "done in the last set of dips"
LEAST_REST_S = 30  # nobody rests less between sets: so much is a hold
DEPARTURES = ("fail", "flag", "pause", "link")


def signed(items: Sequence[Item]) -> Sequence[Item]:
    """The same items, with the commas that were left out."""
    if not any(item.has("plan") for item in items):
        return items
    out: list[Item] = []
    for i, item in enumerate(items):
        if out and not _parts(out[-1]) and not _parts(item) and _begins(items, out, i):
            out.append(Item("sym", item.start, item.start, ",", space=True))
        out.append(item)
    return out


def _parts(item: Item) -> bool:
    """Whether an item parts two clauses."""
    return item.kind == "nl" or item.text in SIGNS or (item.text == "-" and item.space) or item.has("sep")


def _begins(items: Sequence[Item], before: Sequence[Item], i: int) -> bool:
    """Whether a clause begins at `i`, behind `before`."""
    start = next((at + 1 for at in range(len(before) - 1, -1, -1) if _parts(before[at])), 0)
    clause = before[start:]
    end = next((at for at in range(i, len(items)) if _parts(items[at])), len(items))
    return (
        _behind_talk(clause, items[i:end])
        or _behind_verdict(clause, items[i:end])
        or _of_the_rest(clause, items[i:end])
        or _lift_with_verdict(clause, items[i:end])
    )


def _verdict(item: Item) -> bool:
    """Whether an item says that something was done, and not of the rest of it."""
    return item.has("plan", *VERDICTS) and not item.has("plan", "rest")


def _behind_verdict(clause: Sequence[Item], then: Sequence[Item]) -> bool:
    """ "All done | dips with 15", "dips as planned | straight after the last set 6", "left as planned | right 2"."""
    if not _verdict(clause[-1]):
        return False
    told = clause[:-1]
    named = any(item.kind == "move" or item.has("side") for item in told)
    whole = clause[-1].has("plan", "planned") or any(_says_all(item) for item in clause[-2:])
    if not named and not (whole and all(_says_all(item) or _talk(item) for item in told)):
        return False
    if any(_counts(clause, n) for n in range(len(told))):
        return False
    led = next((n for n, item in enumerate(then) if _names(item)), MOST_LED + 1)
    if led > MOST_LED or any(item.kind == "num" or item.text in little("with", "planned_for") for item in then[:led]):
        return False
    if named and then[led].kind == "move" and led:
        return False
    return _departs(then[led:])


def _talk(item: Item) -> bool:
    """Whether an item names nothing that sets are told of."""
    return not _names(item) and (not item.has("plan") or item.has("noise"))


def _behind_talk(clause: Sequence[Item], then: Sequence[Item]) -> bool:
    """ "Gym was packed | all done", "rest was 3 min | everything as planned"; "mobility was all done" is of that."""
    whole = then[0].has("plan", *VERDICTS) and (_says_all(then[0]) or then[0].has("plan", "planned"))
    led = whole or (_says_all(then[0]) and len(then) > 1 and then[1].has("plan", *VERDICTS))
    of_rest = clause[-1].has("plan", "rest") or clause[-1].text in little("feels")  # "the rest | as planned" is one
    if not led or of_rest or not all(_talk(item) for item in clause):
        return False
    said = any(item.kind == "claim" or item.has("noise") or item.text in little("feels", "slept") for item in clause)
    return said and not any(_counts([*clause, then[0]], n) for n in range(len(clause)))


def _counts(clause: Sequence[Item], n: int) -> bool:
    """Whether an item is a number of sets: "rest was 3 min | all done" tells none."""
    return clause[n].kind == "num" and not clause[n + 1].has("unit", "min", "hour")


def _says_all(item: Item) -> bool:
    return not little("all_of_it").isdisjoint(item.text.split())


def _names(item: Item) -> bool:
    """Whether an item names of what a clause tells: a lift, some of its sets, a side."""
    return item.kind == "move" or item.has("scope") or item.has("side") or item.has("fail") or item.has("link")


def _departs(then: Sequence[Item]) -> bool:
    """Whether a clause tells of more than what it names; a scheme alone lists what was done."""
    schemed = any(
        one.kind == "num" and by.has("times", "x") and other.kind == "num"
        for one, by, other in zip(then, then[1:], then[2:], strict=False)
    )
    return not schemed and any(_tells(item) for item in then)


def _tells(item: Item) -> bool:
    """Whether an item tells what came of what is named, or how it felt."""
    felt = item.kind == "claim" or item.has("plan", "fine") or item.text in little("feels", "how_it_went")
    return felt or item.kind == "num" or any(item.has(name) for name in DEPARTURES)


def _of_the_rest(clause: Sequence[Item], then: Sequence[Item]) -> bool:
    """ "Dips only 6 | rest as planned", "left 18s | the rest done"; a rest between sets is none."""
    if not then[0].has("plan", "rest"):
        return False
    if not then[0].has("plan", *VERDICTS) and not any(_verdict(item) for item in then[1:3]):
        return False
    last, number = clause[-1], clause[-2] if len(clause) > 1 else END
    if last.has("unit", "min") or last.text in little("for_the"):
        return False
    hold = (number.value or 0) < LEAST_REST_S or any(item.has("side") for item in clause)
    return not (last.has("unit", "sec") and then[0].has("noise", "rest")) or hold


def _lift_with_verdict(clause: Sequence[Item], then: Sequence[Item]) -> bool:
    """ "Dips 3+2+1 with 20 | push-ups as planned": the number is a load, or of the lift before."""
    if then[0].kind != "move" or len(then) < 2 or not then[1].has("plan", *VERDICTS):
        return False
    lift = max((n for n, item in enumerate(clause) if _names(item)), default=None)
    if lift is None or lift == len(clause) - 1 or not any(item.kind == "num" for item in clause[lift:]):
        return False
    if clause[-1].kind != "num":
        return True
    led = clause[-2]
    if led.has("times", "x"):
        return len(clause) - lift == len(clause[-3:]) + 1
    return led.has("load", "at", "plus") and clause[-3].kind in ("num", "move")
