"""Sets that were gone for, of which only some went up: "went for 3 singles, only got the first two"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import THEN, clause_end, clause_start
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

BESIDE = frozenset({"load", "at", "word", "scheme", "move", "claim", "side", "plan"})  # told with the sets
OF_THE_OUTCOME = frozenset({"only", "the", "took", "done", "by", "sure"})  # plan words of "only got the first two"
MOST_STRANGE = 1  # words that say neither
MOST_LEAD = 3  # words of "went for", "fui a por"


def some_of_them(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, the sets that did not go up without a rep; of a double or more its reps are asked."""
    if message.context.today:
        return facts
    for at, fact in enumerate(facts):
        if fact.kind != "rows" or len(fact.value) < 2 or fact.note.get("list") or not _alike(fact.value):
            continue
        start = next((n for n in range(at + 1, len(facts)) if facts[n].kind not in BESIDE), len(facts))
        if start >= len(facts) or facts[start].kind != "sep" or facts[start].value == THEN:
            continue
        while start + 1 < len(facts) and facts[start + 1].kind == "sep":
            start += 1  # ", but"
        end = clause_end(facts, start + 1)
        if fact.value[0].reps != 1 and any(one.kind == "count" for one in facts[start + 1 : end]):
            continue  # "4x5 planned, only 3 sets done": cut_short has it
        went = _went(message, facts[start + 1 : end], facts[_clause_start(facts, at) : start])
        if went is None or not 0 < went < len(fact.value):
            continue
        if went and fact.value[0].reps != 1 and not any(one.kind == "scope" for one in facts[start:end]):
            # "went for 3 triples, only got two": triples or reps
            asked = Fact("ask", fact.start, facts[end - 1].end, "sets")
            return [*facts[:at], asked, *(one for one in facts[at + 1 : end] if one.kind == "move"), *facts[end:]]
        missed = Entry(0) if fact.value[0].reps == 1 else Entry(ask="reps")
        rows = [*fact.value[:went], *([missed] * (len(fact.value) - went))]
        told = replace(fact, value=rows, note={**fact.note, "cut": True})  # done, though it stands in a wish
        head = [
            replace(one, note={**one.note, "cut": True}) if one.kind in ("load", "at") else one for one in facts[:at]
        ]
        beside = [_done(one) for one in facts[at + 1 : start]]
        return [*head, told, *beside, *facts[end:]]
    return facts


def _done(fact: Fact) -> Fact:
    """A load of sets that were done, though it stands in a wish."""
    return replace(fact, note={**fact.note, "cut": True}) if fact.kind in ("load", "at") else fact


def _alike(entries: Sequence[Entry]) -> bool:
    """Whether sets are told as so many of so many reps, nothing of one alone."""
    return bool(entries[0].reps) and all(one == entries[0] for one in entries) and entries[0].side is None


def _clause_start(facts: Sequence[Fact], at: int) -> int:
    return clause_start(facts, at)


def _went(message: Message, outcome: Sequence[Fact], told: Sequence[Fact]) -> int | None:
    """How many sets a clause says to have gone up; None: it says nothing of that, or more than that."""
    numbers = [one for one in outcome if one.kind not in ("word", "plan", "scheme")]
    names = set().union(*(plan_names(one) for one in outcome if one.kind == "plan")) if outcome else set()
    if len(numbers) != 1 or not names <= OF_THE_OUTCOME:
        return None
    if any(one.kind == "scheme" and one.value != "got" for one in outcome):
        return None
    verdicts = little("one_try", "how_it_went", "judging", "it_went")
    strange = [one for one in outcome if one.kind == "word" and one.value not in verdicts]
    if len(strange) > MOST_STRANGE:
        return None
    words = {token.text for one in outcome for token in message.tokens[one.start : one.end]}
    got = any(one.kind == "scheme" for one in outcome) or bool(words & little("went_up", "it_went", "did_it"))
    if not (got or ("only" in names and _tried(message, told))):
        return None
    number = numbers[0]
    if number.kind == "scope" and isinstance(number.value, tuple) and number.value[0] == "first":
        return int(number.value[1])
    if number.kind == "scope" and number.value == "first":
        return 1
    one = number.note.get("spelled") and number.value == 1  # an article as likely
    if (
        number.kind in ("bare", "count")
        and not one
        and not number.note.get("those")
        and number.value == int(number.value)
    ):
        return int(number.value)
    return None


def _tried(message: Message, told: Sequence[Fact]) -> bool:
    """Whether the sets are told as gone for, not as done."""
    if any(one.kind == "scheme" and one.value == "attempt" for one in told):
        return True
    texts = [token.text for token in message.tokens[told[0].start : told[-1].end]]
    return any(
        " ".join(texts[at : at + many]) in little("went_for")
        for at in range(len(texts))
        for many in range(2, MOST_LEAD + 1)
    )
