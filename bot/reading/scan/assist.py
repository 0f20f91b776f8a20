"""Help by a band, a pulley or a hand: "20 kg off", "with 7.5 kg assistance", "-10"."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner


def assist(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    item = s.at(i)
    if item.has("assist", "off") and s.unit_at(i - 1) in ("kg", "lb"):
        return [Fact("assist", item.start, item.end, None, {"suffix": True})], i + 1  # "7.5 kg assistance 2 each side"
    if item.has("assist", "off"):
        j = i + 1
        while s.at(j).text in little("before_assist"):
            j += 1
        if s.at(j).kind == "num" and s.at(j + 1).has("times", "x"):
            return [Fact("word", item.start, item.end)], i + 1  # "with a finger's help 2x2"
        if s.at(j).kind == "num" and s.at(j).value is not None:
            unit = s.unit_at(j + 1)
            end = j + 2 if unit in ("kg", "lb") else j + 1
            return [Fact("assist", item.start, s.at(end - 1).end, s.kg(s.at(j).value or 0, unit))], end
        return [Fact("assist", item.start, item.end, None, {"suffix": True})], i + 1
    if (
        item.has("assist", "minus")
        and s.at(i + 1).kind == "num"
        and not s.at(i + 1).space
        and s.at(i - 1).kind != "num"
    ):
        unit = s.unit_at(i + 2)
        if unit in ("kg", "lb"):
            value = s.at(i + 1).value or 0
            return [Fact("assist", item.start, s.at(i + 2).end, s.kg(value, unit))], i + 3
        if unit == "other":
            return [Fact("word", item.start, s.at(i + 2).end, None, {"noise": True})], i + 3
    return None
