"""A weight told by habit: "con la mancuerna de siempre", "my usual plate", "mit der üblichen Hantel"."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner


def usual_of_another(s: Scanner, i: int) -> bool:
    """ "The usual" is a weight behind a word that carries and where nothing is named: "3x5 with the usual"."""
    if s.at(i).text.split()[-1] not in little("usual_before"):
        return False
    after = s.at(i + 1)
    ends = after.kind in ("nl", "claim") or after.has("sep") or (after.kind == "sym" and after.text != "(")
    return not (ends and s.at(i - 1).has("load", "at"))


def usual_thing(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """Such a weight is a load whose number nobody told."""
    item = s.at(i)
    if little("implement").isdisjoint(item.text.split()):
        return None
    if little("usual_before").intersection(s.at(i - 1).text.split()[-1:]):
        return [Fact("thing", s.at(i - 1).start, item.end)], i + 1
    j = i + 1
    if s.at(j).text in little("of_another", "like"):
        j += 1
    if s.at(j).text not in little("usual"):
        return None
    return [Fact("thing", item.start, s.at(j).end)], j + 1
