"""Help told by what it takes away: "one arm on the pulley, 12.5 off", "Gegengewicht, 10 kg weg"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

MOST_CHANGED = 0.3  # of the planned help: more is what the help was, and not a change of it
BAND = "band_pull_up"
HELPED = frozenset({"one_arm_counterweight", "band_pull_up"})
BY_ONE_ARM = frozenset({"one_arm_pull_up", "one_arm_chin_up"})


def helped_by(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Assisted dip machine 15 kg off": kilograms of help, where the message says that there was help."""
    if not any(token.text in little("assisted") for token in message.tokens):
        return facts
    out = list(facts)
    for at, (load, off) in enumerate(pairwise(facts)):
        taken = off.kind == "plan" and "off" in off.note.get("names", ()) and off.start == load.end
        if load.kind == "load" and load.value and taken:
            out[at] = replace(load, kind="assist")
            out[at + 1] = Fact("word", off.start, off.end, None, {"noise": True})
    return out


def weighed_band(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "3x5 Klimmzüge, 15er Band": the figure that names a band is the kilograms it takes."""
    out = list(facts)
    for at, (figure, ending) in enumerate(pairwise(facts)):
        if (
            figure.kind not in ("bare", "load")
            or ending.kind != "word"
            or ending.start != figure.end
            or ending.end != ending.start + 1
        ):
            continue
        glued = not message.tokens[ending.start].space and message.tokens[ending.start].text in little("plate_ending")
        if glued and _names_band(message, ending):
            kg = figure.note.get("kg", figure.value)
            out[at] = Fact("load", figure.start, ending.end, kg, {"how": "at", "unit": message.context.unit})
            out[at + 1] = Fact("word", ending.end, ending.end, None, {"noise": True})
    return out


def of_the_band(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "All done, with the 10 kg band": of a plan with a band among others, the sets that are done with it."""
    helped = {one.movement == BAND for one in message.context.today or ()}
    if len(helped) < 2:
        return facts
    out: list[Fact] = []
    for fact in facts:
        if fact.kind in ("load", "bare", "instead") and _names_band(message, fact):
            if out and out[-1].kind == "plan":  # "all done with the 10 kg band": all, and those with it
                out.append(Fact("sep", fact.start, fact.start, 1, {"mark": ","}))
            fact = replace(fact, note={**fact.note, "names": ["band"]})
        out.append(fact)
    return out


def _names_band(message: Message, fact: Fact) -> bool:
    """Whether a band is named within a fact, or right behind it."""
    names = message.beginning("movements")
    return any(hit.name == "band" for at in range(fact.start, min(fact.end + 1, len(names))) for hit in names[at])


def off_the_body(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "One-arm pull-ups with 15 kg off", "15 kg abgenommen", "quitando 15 kg": help, as nothing else is taken off."""
    out = list(facts)
    for at, (first, second) in enumerate(pairwise(facts)):
        load, word = (first, second) if first.kind in ("load", "bare") else (second, first)
        if load.kind not in ("load", "bare") or not load.value or first.end != second.start:
            continue
        led = word.kind == "plan" and "except" in word.note.get("names", ()) and word is first
        led = led and bool(load.note.get("unit"))
        off = word is second and word.end > word.start and message.tokens[word.start].text in little("off_the_body")
        if (led or off) and word.end == word.start + 1 and _moved(facts, at) in BY_ONE_ARM:
            kg = float(load.note.get("kg", load.value))
            out[at] = Fact("assist", first.start, second.end, kg)
            out[at + 1] = Fact("word", second.end, second.end, None, {"noise": True})
    return out


def taken_off(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts with a number and the "off" behind it as the help that it is, where the movement has help."""
    if not any(fact.kind == "move" and fact.value.movement in HELPED for fact in facts):
        return facts
    planned = max((one.assist_kg or 0.0 for one in message.context.today or ()), default=0.0)
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        before = out[-1] if out else None
        off = before is not None and fact.end == fact.start + 1 and fact.start == before.end
        off = off and message.tokens[fact.start].text in little("taken_off")
        if off and before is not None and before.kind in ("bare", "load") and _of_help(facts, at):
            kg = before.note.get("kg", before.value)
            if kg <= MOST_CHANGED * planned:  # "took 2.5 kg off the counterweight" of planned 20
                out[-1] = Fact("delta", before.start, fact.end, (kg, "load", -1), {"open": False})
                continue
            out[-1] = replace(before, kind="assist", end=fact.end, value=kg, note={})
            continue
        first = not any(one.kind in ("load", "assist") for one in out)
        changed = fact.kind == "delta" and fact.value[0] <= MOST_CHANGED * planned
        if fact.kind == "delta" and fact.value[1:] == ("load", -1) and first and not changed and _of_help(facts, at):
            fact = replace(fact, kind="assist", value=fact.value[0], note={})  # "con contrapeso, 10 kg menos"
        out.append(fact)
    if not any(fact.kind == "assist" and fact.value for fact in out):
        return out
    # "15 lb counterweight 3x2, then 10 lb off, 1": what was hung on the pulley before is help as well
    return [
        replace(fact, kind="assist", note={})
        if fact.kind == "load" and fact.value and fact.note.get("how") != "plus" and _of_help(out, at)
        else fact
        for at, fact in enumerate(out)
    ]


def _of_help(facts: Sequence[Fact], at: int) -> bool:
    """Whether the movement that the fact at a place is told of has help."""
    return _moved(facts, at) in HELPED


def _moved(facts: Sequence[Fact], at: int) -> str | None:
    """The movement that the fact at a place is told of, if one is named."""
    moves = [fact for fact in facts if fact.kind == "move"]
    before = [move for move in moves if move.start < facts[at].start]
    moved: str | None = (before[-1] if before else moves[0]).value.movement if moves else None
    return moved
