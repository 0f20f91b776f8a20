"""Planned sets up to one: "fine up to set 4, there I got 2, and 2 again on set 5"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows, pick
from bot.reading.plan.clauses import clause_around
from bot.reading.plan.ground import plan_names
from bot.reading.plan.state import Said, Told
from bot.reading.reading import Ask

SURE = frozenset({"fine", "planned", "done", "same"})
ENDED = frozenset({"quit", "no_rest", "stopped", "skipped"})
BETWEEN = 3  # facts between "until" and its set, "until the"


def up_to(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Fine up to set 4": the first four, where the clause says that these were as they should be."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        nth = fact.value if fact.kind in ("scope", "count") and fact.value != "all" else None
        if not isinstance(nth, int) or nth < 1:
            out.append(fact)
            continue
        words = little("up_to")
        led = next(
            (n for n in range(len(out) - 1, max(-1, len(out) - BETWEEN), -1) if _word(message, out[n], words)), 0
        )
        inside = fact.kind == "count" and fact.note.get("stopped") and message.tokens[fact.start].text in words
        if not (led or inside) or not any(plan_names(one) & SURE for one in clause_around(facts, at)):
            out.append(fact)
            continue
        start = fact.start
        if led:
            up = led > 0 and message.tokens[out[led - 1].start].text in little("upward")
            start = out[led - up].start
            del out[led - up :]
        note = {"until": nth, "text": ""}
        out.append(Fact("scope", start, fact.end, ("first", nth), note))
    return out


def _word(message: Message, fact: Fact, words: frozenset[str]) -> bool:
    return fact.kind == "word" and message.tokens[fact.end - 1].text in words


def kept_up_to(told: Told, said: Said) -> bool:
    """The sets up to the one named; those behind it only where the message goes on to tell of them."""
    until = next((fact for fact in said.scoped if fact.note.get("until")), None)
    if until is None or said.values or not said.names & SURE:
        return False
    targets = said.clause.targets or main_rows(told.rows)
    those = pick(told.rows, targets, until.value)
    if not those or len(those) == len(targets):
        return False
    for at in targets:
        if at in those:
            told.keep[at] = True
        else:
            told.keep[at] = False
            told.behind[at] = until
    told.up_to.update(those)
    told.warmed_up(targets)
    told.scope_at = replace(until, value=until.note["until"], note={}), said.clause.sentence
    told.pointed = (said.clause.sentence, targets, those)
    told.exclusive = not told.everything
    return True


def told_behind(told: Told, said: Said, targets: Sequence[int]) -> None:
    """Keep the sets behind "up to" that a clause tells of."""
    if not told.behind:
        return
    scope = said.scoped[-1].value if said.scoped else None
    named = pick(told.rows, list(targets), scope) if scope is not None else targets
    if scope is None and not set(targets) <= told.behind.keys():
        return
    for at in named:
        if told.behind.pop(at, None) is not None:
            told.keep[at] = True


def untold_behind(told: Told) -> Ask | None:
    """The sets behind "up to" of which nothing more is said: whether they were done is asked."""
    ended = any(clause.names & ENDED for clause in told.clauses)
    if not told.behind or ended:
        return None
    until = next(iter(told.behind.values()))
    return Ask("sets", told.message.span(until.start, until.end))
