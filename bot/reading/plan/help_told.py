"""Help that the plan has, told with other kilograms: "2.5 kg less counterweight", "needed 25 kg of help"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message

PULLEY = "one_arm_counterweight"
MOST_CHANGE = 10.0  # kg; more than this is what hung there


def help_told(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, with a change where so many kilograms less or more of help are told, and else the help itself."""
    planned = min((row.assist_kg for row in rows if row.assist_kg), default=0.0)
    if not planned:
        return list(facts)
    out: list[Fact] = []
    start = 0
    while start < len(facts):
        end = clause_end(facts, start)
        out += [*_told(message, facts[start:end], planned), *facts[end : end + 1]]
        start = end + 1
    return out


def _told(message: Message, piece: Sequence[Fact], planned: float) -> list[Fact]:
    helped = [fact for fact in piece if fact.kind == "assist"]
    pulley = any(fact.kind == "move" and fact.value.movement == PULLEY for fact in piece)
    kilos = [fact for fact in piece if fact.kind in ("load", "assist", "delta") and fact.value]
    if not (helped or pulley) or len(kilos) != 1:
        return list(piece)
    told = kilos[0]
    kg = told.value[0] if told.kind == "delta" else told.value
    sign = told.value[2] if told.kind == "delta" else _sign(message, piece)
    if told.kind == "delta" and told.value[1] != "load":
        return list(piece)
    small = kg <= MOST_CHANGE and kg < planned / 2
    if told.kind == "delta" or (sign and small):
        told = Fact("delta", told.start, told.end, (kg, "load", sign), {"open": False})
    elif helped:
        told = Fact("load", told.start, told.end, kg, told.note)
    return [told if fact is kilos[0] else fact for fact in piece if fact is kilos[0] or fact not in helped]


def _sign(message: Message, piece: Sequence[Fact]) -> int:
    """Whether a clause says more or less; 0: neither, or both."""
    span = range(piece[0].start, piece[-1].end)
    words = {message.tokens[at].text for at in span}
    names = {hit.name for at in span for hit in message.beginning("grammar")[at] if hit.table == "plan"}
    more = bool(words & little("step_up")) or "more" in names
    less = bool(words & little("step_down")) or "less" in names
    return more - less
