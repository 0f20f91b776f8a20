"""Words about the day's plan, and values told against it."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.schemes import chain


def against_plan(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """Words about the day's plan, and values told against it: "50 instead of 45", "2.5 less", "one more rep"."""
    item = s.at(i)
    if item.value is not None:
        told = _valued(s, i, item.value)
        if told is not None:
            return told
    if item.has("plan", "instead") and s.at(i + 1).value is not None and not item.has("fail"):
        row = chain(s, i + 1)
        if row is not None:
            return [Fact("word", item.start, s.at(row[1] - 1).end, None, {"noise": True})], row[1]
    if item.has("plan", "extra_set"):
        return [Fact("plan", item.start, item.end, "extra_set")], i + 1
    if item.has("plan", "stopped"):
        j = i + 1
        nth = s.at(j).name("scope")
        if nth is not None and nth.isdigit():
            return [Fact("count", item.start, s.at(j).end, int(nth), {"only": True})], j + 1
        if s.at(j).has("sets") and s.at(j + 1).value is not None:
            return [Fact("count", item.start, s.at(j + 1).end, int(s.at(j + 1).value or 0), {"only": True})], j + 2
        if s.at(j).value is not None and s.at(j + 1).has("sets"):
            return [Fact("count", item.start, s.at(j + 1).end, int(s.at(j).value or 0), {"only": True})], j + 2
    return None


def _valued(s: Scanner, i: int, value: float) -> tuple[list[Fact], int] | None:
    """A value told against the plan: "50 instead of 45", "2.5 less", "one more rep", "3 of the 5"."""
    item = s.at(i)
    j = i + 1
    unit = None
    if s.unit_at(j) in ("kg", "lb", "sec"):
        unit, j = s.unit_at(j), j + 1
    elif s.at(j).has("reps"):
        unit, j = "reps", j + 1
    elif s.at(j).has("sets"):
        unit, j = "sets", j + 1
    mark = s.at(j)
    k = j
    if mark.text == "," and s.at(j + 1).has("plan", "instead"):
        k, mark = j + 1, s.at(j + 1)
    elif mark.value is None and mark.kind in ("word", "known", "claim") and not mark.has("plan"):
        # "22.5 on the bar instead of 20"
        for ahead in range(j + 1, j + 4):
            between = s.at(ahead)
            if between.has("plan", "instead") and between.end - between.start > 1:
                k, mark = ahead, between
                break
            if between.value is not None or between.kind not in ("word", "known", "claim"):
                break
    if mark.has("plan", "instead") and s.at(k + 1).value is not None:
        end = k + 2
        if s.unit_at(end) in ("kg", "lb", "sec"):
            unit, end = unit or s.unit_at(end), end + 1
        elif s.at(end).has("reps"):
            unit, end = unit or "reps", end + 1
        return [Fact("instead", item.start, s.at(end - 1).end, (value, s.at(k + 1).value, unit))], end
    if mark.has("plan", "more_reps", "less_reps") and unit in (None, "reps") and value <= 10:
        sign = 1 if mark.has("plan", "more_reps") else -1
        return [Fact("delta", item.start, mark.end, (value, "reps", sign))], j + 1
    if mark.has("plan", "less", "more") and not mark.has("effort", "rir") and s.at(j + 1).kind != "num":
        sign = -1 if mark.has("plan", "less") else 1
        if unit is None and (s.at(j + 1).has("reps") or s.at(j + 1).has("sets")):
            unit, j = ("reps" if s.at(j + 1).has("reps") else "sets"), j + 1
        if unit == "sets":
            return None
        if unit is None and s.unit_at(j + 1) in ("kg", "lb"):
            unit, j = s.unit_at(j + 1), j + 1
        if unit is None and item.spelled and value == 1:
            unit = "reps"
        before = s.at(i - 1)
        tied = (
            before.has("load", "at")
            or s.at(j + 1).has("plan", "all_lifts")
            or s.at(j + 1).text in little("after_change")
        )
        if unit is None and not tied and value == int(value) and mark.text in little("more"):
            return None
        kind = {"sec": "hold", "reps": "reps"}.get(unit or "", "load")
        amount = s.kg(value, unit) if kind == "load" else value
        return [Fact("delta", item.start, s.at(j).end, (amount, kind, sign))], j + 1
    of = s.at(i + 1).has("times", "of")
    if of and s.at(i + 2).has("plan", "the") and s.at(i + 3).value is not None:
        return [
            Fact("count", item.start, s.at(i + 3).end, int(value), {"of_plan": int(s.at(i + 3).value or 0)})
        ], i + 4 + s.at(i + 4).has("sets")
    if (
        s.at(i + 1).has("times", "of")
        and (s.at(i - 1).has("plan", "only") or s.at(i + 3).has("sets"))
        and s.at(i + 2).kind == "num"
        and (s.at(i + 2).value or 0) >= value
        and not s.at(i + 3).has("move")
    ):
        whole = int(s.at(i + 2).value or 0)
        return [Fact("count", item.start, s.at(i + 2).end, int(value), {"of_plan": whole})], i + 3 + s.at(i + 3).has(
            "sets"
        )
    if s.at(i + 1).text in little("out_of") and s.at(i + 2).text in little("those"):
        return [Fact("count", item.start, s.at(i + 2).end, int(value), {"those": True})], i + 3
    return None
