"""A number that no scheme or list took: a hold, sets, reps, a range, or bare."""

from __future__ import annotations

from bot.reading.facts import FREE_WEIGHTS, Entry, Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner


def lone_number(s: Scanner, i: int, item: Item, value: float) -> tuple[list[Fact], int] | None:
    """A number that no scheme or list took: a hold, sets, reps, a range, or bare."""
    after = s.at(i + 1)
    unit = s.unit_at(i + 1)
    if unit in ("kg", "lb", "percent") or after.has("load", "word", "plate"):
        return None
    if after.text in little("plate_ending") and not after.space and s.at(i + 2).has("load", "tool"):
        return None  # "24er Kettlebell"
    if unit == "sec" and s.at(i - 1).text in little("bounded"):
        return [Fact("ask", s.at(i - 1).start, after.end, "hold_s")], i + 2  # "all under 15 s"
    if unit in ("sec", "min"):
        return _timed(s, i, item, value, unit)
    if after.has("sets", "sets"):
        if s.at(i + 2).has("plan", "less", "more"):
            return None
        within = s.at(i - 1).has("times", "within")
        note = {"within": within, "more": after.has("sets", "more"), "names": _part(after)}
        made = [Fact("count", item.start, after.end, int(value), note)]
        return [*unloaded(after), *made], i + 2
    if after.has("reps") or (after.text in little("reps_glued") and not after.space and not s.one_sided):
        if s.whole(value):
            return [Fact("rows", item.start, after.end, [Entry(int(value))], {"one": True, "reps": True})], i + 2
        return [Fact("ask", item.start, after.end, "reps")], i + 2
    if after.text == "/" and s.at(i + 2).value == 10:
        return [Fact("left", item.start, s.at(i + 2).end, value, {"of_ten": True})], i + 3
    other = s.or_other(i + 1)
    until = after.text in little("until") and s.at(i + 2).kind == "num" and (s.at(i + 2).value or 0) > value
    if until or (other is not None and s.at(other).value != value and not s.at(other + 1).has("times", "x")):
        end = (other or i + 2) + 1
        if s.unit_at(end) == "sec":
            held = [Entry(ask="hold_s")]
            return [Fact("rows", item.start, s.at(end).end, held, {"one": True, "bare": True})], end + 1
        if s.at(end).has("reps"):
            end += 1
        if s.unit_at(end) in ("kg", "lb"):
            return [Fact("ask", item.start, s.at(end).end, "load_kg")], end + 1
        return [
            Fact("rows", item.start, s.at(end - 1).end, [Entry(None, ask="reps")], {"one": True, "bare": True})
        ], end
    return [
        Fact(
            "bare",
            item.start,
            item.end,
            value,
            {
                "spelled": item.spelled,
                "comma": item.comma,
                "kg": s.kg(value),
                "the": s.at(i - 1).has("plan", "the") or s.at(i - 1).text in little("that", "those"),
            },
        )
    ], i + 1


def of_free_weight(s: Scanner, i: int) -> bool:
    """Whether the clause is of a lift with dumbbells or a bar."""
    for at in range(i - 1, max(-1, i - 9), -1):
        item = s.at(at)
        if item.mention is not None:
            return item.mention.movement in FREE_WEIGHTS
        if item.text in (",", ".", ";") or item.kind == "nl":
            return False
    return False


def _timed(s: Scanner, i: int, item: Item, value: float, unit: str) -> tuple[list[Fact], int]:
    """ "30 s", "a minute": a hold, unless it is a stop at the top or a time since."""
    if unit == "sec" and not s.at(i + 1).space and of_free_weight(s, i):
        return [Fact("load", item.start, s.at(i + 1).end, s.kg(value), {"how": "at"})], i + 2  # "rows with the 55s"
    seconds = value * (60 if unit == "min" else 1)
    end = i + 2
    if unit == "min" and value == 1 and s.at(i - 1).text in little("half_a"):
        seconds = 30  # "half a minute"
    if unit == "min" and s.at(end).has("unit", "half"):
        seconds, end = seconds + 30, end + 1
    every = s.at(i - 1).has("scope", "all") or s.at(i - 1).has("side", "each", "per")  # "oben jeweils 2 Sekunden …"
    stop = s.at(i - 1 - every).has("pause", "top", "middle", "bottom")  # "oben 2 Sekunden gehalten"
    if (
        s.at(end).has("pause")
        and not stop
        and s.at(end).text.startswith(tuple(little("hold")))
        and s.at(end + 1).name("pause") in (None, "pause")
    ):
        end += 1
    of = s.at(end).text in little("of_rest") and s.at(end + 1).has("pause", "pause")
    if (
        of
        or s.at(end).has("pause", "pause")
        or s.at(end).text in little("at")
        or s.at(end).has("pause", "top", "bottom", "middle")
        or (unit == "min" and s.at(end).has("noise", "since"))
    ):
        return [Fact("word", item.start, s.at(i + 1).end, None, {"noise": True})], i + 2
    return [Fact("rows", item.start, s.at(end - 1).end, [Entry(hold_s=seconds)], {"one": True, "unit": unit})], end


def unloaded(item: Item) -> list[Fact]:
    """The load of sets that have none: "two bodyweight sets"."""
    bare = item.has("load", "none")
    return [Fact("load", item.start, item.end, 0.0, {"none": True})] if bare else []


def _part(item: Item) -> list[str]:
    """ "Work sets", "warm-up sets": the part of the plan that a word for sets names."""
    return [name for table, name in item.labels if table == "plan" and name.startswith("part_")]
