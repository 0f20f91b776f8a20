"""Halves of the planned sets: "from halfway down to 15 kg", "the second half was hard", "kept to it up to halfway"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import plan_names

FIRST, SECOND = ("first", 1), 2
LED = 3  # facts from the word that leads a half to it


def halves(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, with the sets that a half is of, where one lift is planned and its sets are even in number."""
    main = main_rows(rows)
    if len({row.movement for row in rows if row.part != "warm_up"}) != 1 or any(rows[at].side for at in main):
        return list(facts)
    if len(main) % 2 or not main:
        return list(facts)
    many = len(main) // 2
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        if "most" not in plan_names(fact) or not _half(message, fact):
            out.append(fact)
            continue
        lead = next((n for n in range(len(out) - 1, max(-1, len(out) - 1 - LED), -1) if _leads(message, out[n])), None)
        if lead is None:
            if _sets_only(message, fact, facts, at):
                out.append(Fact("count", fact.start, fact.end, many, {"only": True}))
                continue
            out.append(fact)
            continue
        which = _which(message, out[lead], many)
        start = out[lead].start
        del out[lead:]
        out.append(Fact("scope", start, fact.end, which, {"text": ""}))
        if which == ("first", many):
            out.append(Fact("plan", fact.end, fact.end, "planned", {"names": ["planned"]}))
    return out


def _half(message: Message, fact: Fact) -> bool:
    words = {token.text for token in message.tokens[fact.start : fact.end]}
    return not words.isdisjoint(little("half_of_it"))


def _leads(message: Message, fact: Fact) -> bool:
    if fact.kind == "scope":
        return fact.value in ("first", "last", SECOND)
    text = message.tokens[fact.start].text if fact.end > fact.start else ""
    return text in little("after_set", "from_set", "up_to")


def _which(message: Message, lead: Fact, many: int) -> tuple[str, int]:
    """The sets that a half is of, by the word that leads it."""
    text = message.tokens[lead.start].text if lead.end > lead.start else ""
    if lead.value == "first" or (lead.kind != "scope" and text in little("up_to")):
        return ("first", many)
    return ("last", many)


def _sets_only(message: Message, fact: Fact, facts: Sequence[Fact], at: int) -> bool:
    """ "Only half of the sets": so many, and nothing else."""
    led = any("only" in plan_names(one) for one in facts[max(0, at - LED) : at])
    words = {token.text for token in message.tokens[fact.start : fact.end]}
    led = led or not words.isdisjoint(little("only_word"))
    counted = not words.isdisjoint(little("set_words"))
    return led and counted and not any(one.kind in ("rows", "bare", "count") for one in facts)
