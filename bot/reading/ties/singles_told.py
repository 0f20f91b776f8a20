"""Singles of one load and what became of each: "singles at 45: made the first, missed the second"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, within_sentence
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message

MOST = 10  # tries told one by one
LEAST_UNCOUNTED = 3  # outcomes that nothing else is told with
MOST_BARE, MOST_WORDS = 2, 3  # facts and words of an outcome
LED = frozenset({"load", "word", "move"})  # between the singles and their outcomes
SILENT = frozenset({"word", "claim", "scheme", "plan"})


def singles_told(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with a set for each single that is told to have gone up or not."""
    for at, fact in enumerate(facts):
        if fact.kind != "rows" or any(entry != Entry(1) for entry in fact.value):
            continue
        if not (fact.note.get("each_of") or len(fact.value) > 1):
            continue
        start = next((n for n in range(at + 1, len(facts)) if facts[n].kind not in LED), len(facts))
        if start >= len(facts) or not within_sentence(facts[start]):
            continue
        counted = _counted(facts, at)
        tries, end = _tries(message, facts, start, counted or LEAST_UNCOUNTED)
        if len(tries) > 1 and len(set(tries)) > 1 and counted in (0, len(tries)):
            rows = [Entry(1 if went else 0) for went in tries]
            made = Fact("rows", fact.start, fact.end, rows, {"reps": True})
            head = [one for one in facts[:at] if not (one.kind == "bare" and counted and len(fact.value) == 1)]
            return [*head, made, *facts[at + 1 : start], *facts[end:]]
    return facts


def _counted(facts: Sequence[Fact], at: int) -> int:
    """How many singles are told at once, "5 muscle-up singles", "3 singles at 45"; 0: not said."""
    if len(facts[at].value) > 1:
        return len(facts[at].value)
    led = facts[at - 2] if at > 1 and facts[at - 1].kind == "move" else None
    return int(led.value) if led is not None and led.kind == "bare" and led.value in range(2, MOST + 1) else 0


def _tries(message: Message, facts: Sequence[Fact], start: int, least: int) -> tuple[list[bool], int]:
    """Whether each try went up, in their order, and where the clauses end that tell it.

    `least`: so many are told one by one where nothing but their outcomes is said, "made it, made it, missed".
    """
    tries: list[bool] = []
    bare = 0
    end = start
    at = start + 1
    while at < len(facts):
        stop = clause_end(facts, at)
        told = _outcome(message, facts[at:stop], len(tries)) if stop > at else []
        if told is None and stop - at <= MOST_BARE and _only_outcome(facts[at:stop]):
            went = _went(message, facts[at:stop])
            told = None if went is None else [went]
            bare += went is not None
        if told is None or len(tries) + len(told) > MOST:
            break
        tries += told
        end = stop
        if stop < len(facts) and facts[stop].value == 3:
            break
        at = stop + 1
    return ([], start) if bare and len(tries) < least else (tries, end)


def _only_outcome(clause: Sequence[Fact]) -> bool:
    """ "Made it", "missed", "yes": nothing else."""
    told = all(fact.kind in SILENT or (fact.kind == "fail" and fact.value is None) for fact in clause)
    words = sum(fact.end - fact.start for fact in clause)
    return told and 0 < words <= MOST_WORDS


def _outcome(message: Message, clause: Sequence[Fact], before: int) -> list[bool] | None:
    """What a clause tells of the next tries; None where it tells of something else."""
    said = [fact for fact in clause if fact.kind not in SILENT]
    places = [fact.value for fact in said if fact.kind in ("scope", "fail") and fact.value is not None]
    many = [fact.value for fact in said if fact.kind == "bare"]
    others = [fact for fact in said if fact.kind not in ("scope", "fail", "bare")]
    if others or len(places) + len(many) != 1:
        return None
    if places and (1 if places[0] == "first" else places[0]) != before + 1:
        return None
    if many and (many[0] != int(many[0]) or not 0 < many[0] <= MOST):
        return None
    went = _went(message, clause)
    return None if went is None else [went] * int(many[0] if many else 1)


def _went(message: Message, clause: Sequence[Fact]) -> bool | None:
    names = {name for fact in clause for name in fact.note.get("names", ())}
    words = {token.text for token in message.tokens[clause[0].start : clause[-1].end]}
    yes = any(fact.kind == "fail" and fact.note.get("name") == "yes" for fact in clause)
    if (
        (any(fact.kind == "fail" for fact in clause) and not yes)
        or names & {"not_this", "skipped"}
        or words & little("try_did_not")
    ):
        return False
    got = any(fact.kind == "scheme" and fact.value == "got" for fact in clause)
    return True if yes or got or names & {"done", "by", "fine"} or words & little("try_went") else None
