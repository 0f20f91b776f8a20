"""Numbers that count what has been told, or no sets at all: "those two, as it stood", "two changes: …"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import is_comma
from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, plan_names

MOST_TIMES = 6


def counted_again(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Stopped after the second set; those two as planned", "two changes: …", "the four of them at rpe 7"."""
    out: list[Fact] = []
    lifts = len({row.movement for row in rows if row.part != "warm_up"})
    for at, fact in enumerate(facts):
        before = out[-1] if out else None
        noun = facts[at + 1] if at + 1 < len(facts) else None
        number = int(fact.value) if fact.kind == "bare" and fact.value == int(fact.value) else 0
        if number and noun is not None and noun.kind == "word" and _text(message, noun) in little("no_sets"):
            continue  # "dos cambios: …"
        those = before is not None and before.kind == "word" and _text(message, before) in little("those")
        if number and those and any(one.kind == "count" and one.value == number for one in facts[:at]):
            continue
        if (
            number == 1
            and fact.note.get("spelled")
            and noun is not None
            and noun.kind == "scope"
            and isinstance(noun.value, int)
        ):
            out.append(Fact("word", fact.start, fact.end, _text(message, fact)))  # "una quinta serie"
            continue
        both = fact.kind == "count" and fact.value == lifts > 1 and noun is not None and noun.kind in ("delta", "load")
        if both and not any(message.tokens[n].text in little("set_words") for n in range(fact.start, fact.end)):
            out.append(Fact("plan", fact.start, fact.end, "all_lifts", {"names": ["all_lifts"]}))
            continue  # "dips 4x7 y dominadas 3x8, los dos con 2,5 kg menos"
        the = before is not None and plan_names(before) == {"the"}
        named = noun is not None and noun.kind == "word" and _text(message, noun) in little("lift")
        closes = noun is None or noun.kind == "sep" or named
        if (
            number > 1
            and number == lifts
            and the
            and before is not None
            and (named or _of(message, facts, at))
            and closes
        ):
            out[-1] = Fact("plan", before.start, fact.end, "all_lifts", {"names": ["all_lifts"]})
            continue
        if number > 1 and the and before is not None and number == _sets(facts, at, rows) and _all_told(facts, at):
            out[-1] = Fact("scope", before.start, fact.end, "all", {"text": ""})
            continue
        out.append(fact)
    return out


def said_times(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "15 kg x 5 twice", "10 reps, two times": so many sets of it."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        told = out[-1] if out and out[-1].kind == "rows" else out[-2] if len(out) > 1 and is_comma(out[-1]) else None
        closes = at + 1 == len(facts) or facts[at + 1].kind == "sep"
        one = told is not None and told.kind == "rows" and len(told.value) == 1 and told.value[0].side is None
        if fact.kind == "repeat" and one and told is not None and closes and 1 < fact.value <= MOST_TIMES:
            entries: list[Entry] = [replace(told.value[0]) for _ in range(fact.value)]
            note = {name: value for name, value in told.note.items() if name not in ("one", "reps")}
            where = next(n for n, made in enumerate(out) if made is told)
            out[where:] = [replace(told, end=fact.end, value=entries, note={**note, "plain": True})]
            continue
        out.append(fact)
    return out


def _all_told(facts: Sequence[Fact], at: int) -> bool:
    """ "… and the four at rpe 7", "…, the four of them": what was told of all of them, or of each, before or behind."""
    after = facts[at + 1] if at + 1 < len(facts) else None
    if after is None or after.kind == "sep":
        return any(fact.kind in ("instead", "rows") for fact in facts[:at])
    return after.kind in ("effort", "load") and any(fact.kind == "scope" and fact.value == "all" for fact in facts[:at])


def _sets(facts: Sequence[Fact], at: int, rows: Sequence[Row]) -> int:
    """How many sets the plan has of what has been named, or of its main lift."""
    named = next((fact for fact in reversed(facts[:at]) if fact.kind == "move"), None)
    own = [row for row in rows if named is not None and row.movement in members(named.value)]
    return len(own or main_rows(rows))


def _of(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """ "De los dos": an "of" before the article."""
    led = facts[at - 2] if at > 1 else None
    return led is not None and led.kind == "word" and _text(message, led) in little("of")


def _text(message: Message, fact: Fact) -> str:
    return " ".join(token.text for token in message.tokens[fact.start : fact.end])
