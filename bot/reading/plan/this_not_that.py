"""One lift in place of another, told in two clauses: "all the same but dips, not chins"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import SENTENCE, clause_end, clause_start
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import members, plan_names

BESIDE = ("word", "claim")


def this_not_that(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts, with "instead of" between the two."""
    known = {row.movement for row in rows}
    for at, fact in enumerate(facts):
        if fact.kind != "plan" or _text(message, fact) not in little("was_not"):
            continue
        end = clause_end(facts, at)
        behind = [one for one in facts[at + 1 : end] if one.kind not in BESIDE]
        apart = facts[at - 1] if at else None
        low = clause_start(facts, at - 1) if at > 1 else 0
        before = [one for one in facts[low : max(0, at - 1)] if one.kind not in BESIDE]
        alone = len(behind) == len(before) == 1 and behind[0].kind == before[0].kind == "move"
        if apart is None or apart.kind != "sep" or apart.value == SENTENCE or not alone:
            continue
        if not set(members(behind[0].value)) & known or set(members(before[0].value)) & known:
            continue
        instead = Fact("plan", fact.start, fact.end, "instead", {"names": ["instead"]})
        return [*facts[: at - 1], instead, *facts[at + 1 :]]
    return facts


def that_instead(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Me apetecía fondos, así que eso en vez de dominadas": the lift that the clause before has named."""
    known = {row.movement for row in rows}
    for at, fact in enumerate(facts[:-1]):
        if fact.kind != "word" or _text(message, fact) not in little("that_one"):
            continue
        if not plan_names(facts[at + 1]) & {"instead"}:
            continue
        before = next((one for one in reversed(facts[:at]) if one.kind == "move"), None)
        told = any(one.kind in ("rows", "bare", "load", "count") for one in facts[:at])
        if before is not None and not told and not set(members(before.value)) & known:
            moved = Fact("move", fact.start, fact.end, before.value)
            return [*(one for one in facts[:at] if one is not before), moved, *facts[at + 1 :]]
    return facts


def neither(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Ni en dominadas ni en fondos hice la última serie": the last set of each."""
    nots = [at for at, fact in enumerate(facts) if fact.kind == "plan" and _text(message, fact) in little("nor")]
    if len(nots) != 2 or clause_end(facts, nots[0]) != clause_end(facts, nots[1]):
        return facts
    first, second = nots
    end = clause_end(facts, first)
    moves = [[one for one in facts[a:b] if one.kind == "move"] for a, b in ((first, second), (second, end))]
    scopes = [one for one in facts[second:end] if one.kind == "scope" and one.value not in ("all", "over", "rest")]
    if [len(named) for named in moves] != [1, 1] or len(scopes) != 1:
        return facts
    out: list[Fact] = []
    for number, (named,) in enumerate(moves):
        comma = Fact("sep", named.start, named.start, 1, {"mark": ","})
        skipped = Fact("plan", named.start, named.start, "skipped", {"names": ["skipped"]})
        which = Fact("scope", named.start, named.start, scopes[0].value, {"text": ""})
        out += [*([comma] if number else []), skipped, which, named]
    behind = [_done_after_rest(one, facts[at - 1] if at else None) for at, one in enumerate(facts)][end:]
    return [*facts[:first], *out, *behind]


def _done_after_rest(fact: Fact, before: Fact | None) -> Fact:
    """ "Las otras sí": done."""
    rest = before is not None and (before.value == "rest" or "rest" in plan_names(before))
    if rest and fact.kind == "fail" and fact.note.get("name") == "yes":
        return Fact("plan", fact.start, fact.end, "done", {"names": ["done"]})
    return fact


def _text(message: Message, fact: Fact) -> str:
    return " ".join(token.text for token in message.tokens[fact.start : fact.end])
