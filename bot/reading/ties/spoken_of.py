"""Words that look like a set or a miss and only speak of what was told: "the doubles moved quick", "but nope"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end
from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.rules import Rule

REMARKS = frozenset({"word", "claim"})


def _talk(fact: Fact) -> Fact:
    return Fact("word", fact.start, fact.end, None, {"noise": True})


def _sets_again(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5x2 at 32.5, doubles moved quick": sets of as many reps, in a clause that tells nothing but how they were."""
    out = list(facts)
    for at in range(1, len(out)):
        fact = out[at]
        named = (
            fact.kind == "rows" and fact.note.keys() & {"the", "word"} and len({one.reps for one in fact.value}) == 1
        )
        if not named or out[at - 1].kind != "sep":
            continue
        if not any(
            one.kind == "rows" and fact.value[0] in one.value and one.note.keys() - {"the", "word", "each_of"}
            for one in out[:at]
        ):
            continue
        end = clause_end(out, at + 1)
        if end > at + 1 and all(one.kind in REMARKS for one in out[at + 1 : end]):
            out[at] = _talk(fact)
    return out


RULES: tuple[tuple[Rule, str], ...] = ((_sets_again, "rows sep"),)
