"""Sets told whole and then ended early: "5x3 at 20, stopped after three sets", "5x3, skipped the last one"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import clause_start
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

SILENT = frozenset({"word", "move", "load", "at", "effort", "side", "claim", "scheme", "flag"})
TOLD = frozenset({"rows", "bare", "count", "load", "flag", "effort"})  # of a set that was done
OWN = frozenset({"load", "at", "side", "effort"})  # told with the sets
NEAR = 3  # tokens from "only" to the number
REACH = 14  # facts from the sets to the words that end them


def cut_short(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with no more sets than were done. Against a plan it is the plan that is cut."""
    if message.context.today:
        return facts
    out = list(facts)
    for at, fact in enumerate(facts):
        if fact.kind != "rows" or not fact.note.get("plain") or len(fact.value) < 2:
            continue
        if any(len(one.note.get("meant", ())) > len(fact.value) for one in facts[at + 1 : at + 3]):
            continue  # "3x8 instead of 4x8, skipped the last set"
        unclear = _stopped_at_a_number(facts, at)
        if unclear is not None:
            out[unclear] = replace(facts[unclear], kind="ask", value="sets", note={})
            return out
        done, first, last = _ended(message, facts, at)
        if done is None or not 0 < done < len(fact.value):
            continue
        for n in range(_clause_start(facts, at), first):
            if out[n].kind in OWN or n == at:
                out[n] = replace(out[n], note={**out[n].note, "cut": True})
        out[at] = replace(out[at], value=fact.value[:done])
        return [
            one for n, one in enumerate(out) if not first <= n <= last or one.kind not in ("count", "scope", "plan")
        ]
    return facts


def _stopped_at_a_number(facts: Sequence[Fact], at: int) -> int | None:
    """ "5x3, stopped after 4": after so many sets, or at the fourth rep of one; where that stands."""
    behind = next((n for n in range(at + 1, len(facts)) if facts[n].kind in TOLD), None)
    count = facts[behind] if behind is not None else None
    bare = count is not None and count.kind == "count" and count.note.get("stopped") and count.note.get("bare")
    return behind if bare and count is not None and 0 < count.value < len(facts[at].value) else None


def _ended(message: Message, facts: Sequence[Fact], at: int) -> tuple[int | None, int, int]:
    """How many of the sets told at `at` were done, and between which facts that is said."""
    sets = len(facts[at].value)
    for n in range(at + 1, min(at + REACH, len(facts))):
        fact = facts[n]
        if fact.kind == "count":
            stopped = fact.note.get("stopped") and not fact.note.get("bare")
            clause = _clause(facts, n)
            says = message.tokens[fact.start].text not in little("after_set")  # "stopped after", not "after"
            ended = stopped and (says or any("quit" in one.note.get("names", ()) for one in clause))
            if (ended or _only(message, fact)) and not _goes_on(facts, n):
                return int(fact.value), n, _clause_end(facts, n)
            return None, 0, 0
        if fact.kind == "scope":
            skipped = any(_skipped(message, one) for one in _clause(facts, n))
            alone = not any(one.kind in TOLD for one in _clause(facts, n))
            off = 1 if fact.value == "last" else fact.value[1] if _last_ones(fact) else 0
            return (sets - off, n, _clause_end(facts, n)) if off and skipped and alone else (None, 0, 0)
        skips = fact.kind == "plan" and "skipped" in fact.note.get("names", ()) and fact is not facts[-1]
        if fact.kind == "sep" or fact.kind in SILENT or skips or (fact.kind == "plan" and _little(fact)):
            continue
        return None, 0, 0
    return None, 0, 0


def _skipped(message: Message, fact: Fact) -> bool:
    """Whether sets were left out; "the last one without a pause" was done."""
    return "skipped" in fact.note.get("names", ()) and message.tokens[fact.start].text not in little("without")


def _last_ones(fact: Fact) -> bool:
    """Whether a scope is "the last two"."""
    return isinstance(fact.value, tuple) and len(fact.value) == 2 and fact.value[0] == "last"


def _little(fact: Fact) -> bool:
    return not set(fact.note.get("names", ())) - {"only", "the", "quit", "but"}


def _only(message: Message, count: Fact) -> bool:
    """Whether "only" or "but only" stands before a number of sets."""
    if count.note.get("only") and not count.note.get("stopped"):
        return True
    before = message.beginning("grammar")
    near = [hit for at in range(max(0, count.start - NEAR), count.start) for hit in before[at]]
    if any((hit.table, hit.name) == ("plan", "only") and hit.end <= count.start for hit in near):
        return True
    return any(hit.table == "unreal" and hit.name == "own" and hit.end == count.start > hit.start + 1 for hit in near)


def _goes_on(facts: Sequence[Fact], at: int) -> bool:
    """Whether the sets counted have reps or a lift of their own: "only three sets of dips"."""
    end = _clause_end(facts, at)
    return any(fact.kind in ("rows", "bare", "move", "loads") for fact in facts[at + 1 : end + 1])


def _clause(facts: Sequence[Fact], at: int) -> Sequence[Fact]:
    return facts[_clause_start(facts, at) : _clause_end(facts, at) + 1]


def _clause_start(facts: Sequence[Fact], at: int) -> int:
    return clause_start(facts, at)


def _clause_end(facts: Sequence[Fact], at: int) -> int:
    return next((n - 1 for n in range(at + 1, len(facts)) if facts[n].kind == "sep"), len(facts) - 1)
