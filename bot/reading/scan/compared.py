"""So much more or less than another time: "10 more push-ups than last week, so 3x30", "12, two more than on Monday".

Such a number tells of no set. Where no other number is told, how many there were is not said.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.items import END, Item
from bot.reading.little import little

WEIGHTS = ("kg", "lb")
TO_TIME = 3  # items from "than" to the other time
TO_THAN = 4  # items from the number to "than"
UNSAID = ("sets", "unsaid")  # a set of which the reps are asked


def uncompared(items: Sequence[Item]) -> Sequence[Item]:
    """The items without the numbers that only compare with another time."""
    than = [at for at, item in enumerate(items) if item.text in little("compared_with") and _a_time(items, at + 1)]
    out = list(items)
    for at in reversed(than):
        found = _compared(items, at)
        if found is None:
            continue
        first, end = found
        broken = (items[first].value or 0) % 1 > 0
        weighed = broken or any(items[n].has("unit", *WEIGHTS) for n in range(first, end))
        others = [n for n, item in enumerate(items) if item.value is not None and not first <= n < at]
        loads = [n for n in others if _weighed(items, n)]
        if weighed and not loads:
            continue  # "dips 3x8, 5 kg more than on Monday": with how much is asked
        kept = [item for item in items[first:end] if item.kind == "move"]
        sided = first > 0 and items[first - 1].has("side")  # "right 1 more than last week"
        if not others or sided:
            kept = [replace(items[first], kind="known", end=items[end - 1].end, value=None, labels=(UNSAID,)), *kept]
        parted = bool(kept) or first == 0
        mark = [] if parted else [Item("sym", items[first].start, items[first].end, ",", space=True)]
        out[first:end] = [*mark, *kept]
    return out


def _compared(items: Sequence[Item], than: int) -> tuple[int, int] | None:
    """Where the number stands that a "than" ends, and where its words end."""
    more = False
    for n in range(than - 1, max(-1, than - 1 - TO_THAN), -1):
        item = items[n]
        if item.value is not None:
            return (n, than) if more else None
        more = more or item.has("plan", "more", "less", "more_reps", "less_reps")
        if item.kind in ("sym", "nl", "claim", "clock"):
            return None
    return None


def _a_time(items: Sequence[Item], at: int) -> bool:
    """Whether another time is named: a day, "last time"."""
    for item in items[at : at + TO_TIME]:
        if item.kind == "claim" or item.has("plan", "last_time") or item.has("unreal"):
            return True
        if item.text in little("other_time"):
            return True  # "que la última vez"
        if item.value is not None or item.kind not in ("word", "known"):
            return False
    return False


def _weighed(items: Sequence[Item], at: int) -> bool:
    """Whether a number is told as a load."""
    before, after = (items[at - 1] if at else END), (items[at + 1] if at + 1 < len(items) else END)
    return after.has("unit", *WEIGHTS) or before.has("load")
