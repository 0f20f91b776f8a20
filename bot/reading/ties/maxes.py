"""Loads tried one after the other at a maximum: "tested my max: 40 easy, 45 ok, 47.5 grinder, 50 no chance"."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from bot.reading.facts import LOADED, Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.ties.values import kgs_of

TRIED = frozenset({"one_rm", "amrap", "attempt"})
LEAST_TRIED = 15.0  # a lower number is of reps
LEAST_TRIES = 2


@dataclass
class _Try:
    at: int  # the fact that tells it
    kg: float
    up: bool | None = None  # None: not said
    tried: bool = False  # and a word says that it was only tried


def maxes(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with a single for each load of a row of tries, where they rise and one of them is judged."""
    single = any(_single(fact) for fact in facts)
    if not single and not any(fact.value in TRIED for fact in _schemes(facts)):
        return facts
    moves = {fact.value.movement for fact in facts if fact.kind == "move"}
    named = len(moves) == 1 or (not moves and any(fact.value == "one_rm" for fact in _schemes(facts)))
    if not named or not moves <= LOADED:
        return facts
    told = list(_tries(message, facts))
    tries = _run(told)
    again = {one.at for one in told[len(tries) :] if one.kg in {other.kg for other in tries}}  # "so 47.5 it is"
    risen = all(a.kg <= b.kg or a.up is False for a, b in pairwise(tries))
    judged = single or any(one.up is not None for one in tries)
    if len(tries) < LEAST_TRIES or not risen or not judged or min(one.kg for one in tries) < LEAST_TRIED:
        return facts
    if any(fact.kind in ("count", "rounds", "side", "repeat") or _other_work(fact) for fact in facts):
        return facts
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        own = [one for one in tries if one.at == at]
        out += [Fact("rows", fact.start, fact.end, [_entry(one)], {"own_load": one.kg, "reps": True}) for one in own]
        if at in again:
            fact = Fact("word", fact.start, fact.end, None, {"noise": True})
        if not own and fact.kind != "fail" and not _single(fact):
            out.append(fact)
    return out


def _entry(one: _Try) -> Entry:
    """A single that went up, one that did not, or one of which that is asked: "then tried 40"."""
    return Entry(ask="reps") if one.up is None and one.tried else Entry(int(one.up is not False))


def _run(tries: list[_Try]) -> list[_Try]:
    """The tries up to a lower number that nothing judges: "50 miss. So 47.5 it is", "last year my best was 30"."""
    for n in range(1, len(tries)):
        if tries[n].up is None and tries[n].kg < tries[n - 1].kg:
            return tries[:n]
    return tries


def _schemes(facts: Sequence[Fact]) -> Iterator[Fact]:
    return (fact for fact in facts if fact.kind == "scheme")


def _single(fact: Fact) -> bool:
    word = fact.kind == "rows" and fact.note.keys() & {"top", "word"}
    return bool(word) and [entry.reps for entry in fact.value] == [1]


def _other_work(fact: Fact) -> bool:
    return fact.kind == "rows" and not _single(fact) and not fact.note.get("values")


def _tries(message: Message, facts: Sequence[Fact]) -> Iterator[_Try]:
    """The loads in the order told, each with its verdict; of "35, 40, 45 fine" the word is of the last.

    What stands behind a load and parted from it judges it too: "single with 50: missed", "50, no chance".
    """
    start = 0
    last: _Try | None = None
    for stop in range(len(facts) + 1):
        if stop < len(facts) and facts[stop].kind != "sep":
            continue
        clause = range(start, stop)
        told = [_Try(at, kg) for at in clause for kg in kgs_of(message, facts[at])]
        verdict = _verdict(message, [facts[at] for at in clause])
        if told:
            last = told[-1]
            last.tried = any(fact.kind == "scheme" and fact.value == "attempt" for fact in facts[start:stop])
        if last is not None and last.up is None:
            last.up = verdict
        yield from told
        start = stop + 1


def _verdict(message: Message, clause: Sequence[Fact]) -> bool | None:
    """Whether the load of a clause went up; None where nothing says so."""
    fails = [fact for fact in clause if fact.kind == "fail"]
    if fails:
        return all(fact.note.get("name") == "yes" for fact in fails)
    names = {name for fact in clause for name in fact.note.get("names", ())}
    words = {message.tokens[at].text for fact in clause for at in range(fact.start, fact.end)}
    up = names & {"fine", "done"} or words & (little("judging", "went_up"))
    return True if up else None


def to_the_utmost(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "2x max": two sets to the utmost, whose reps are told elsewhere."""
    out = list(facts)
    for at in range(len(out) - 2):
        one, times, most = out[at : at + 3]
        if (
            one.kind == "bare"
            and one.value == int(one.value)
            and times.kind == "word"
            and times.end == times.start + 1
            and (most.value == "amrap" if most.kind == "scheme" else bool(most.note.get("words")))
            and any(hit.table == "times" and hit.name == "x" for hit in message.beginning("grammar")[times.start])
        ):
            out[at] = replace(one, kind="count", value=int(one.value))
    return out
