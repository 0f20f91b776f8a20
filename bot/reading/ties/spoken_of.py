"""Words that look like a set or a miss and only speak of what was told: "the doubles moved quick", "but nope"."""

from __future__ import annotations

from collections.abc import Sequence

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
        end = next((n for n in range(at + 1, len(out)) if out[n].kind == "sep"), len(out))
        if end > at + 1 and all(one.kind in REMARKS for one in out[at + 1 : end]):
            out[at] = _talk(fact)
    return out


def _answers(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Was scared something would pop but nope, no pain": an answer to a fear, no missed set."""
    out = list(facts)
    for at in range(1, len(out) - 2):
        before, fact, mark, felt = out[at - 1 : at + 3]
        alone = fact.kind == "fail" and fact.value is None and before.kind == "sep" and mark.kind == "sep"
        if alone and felt.kind == "claim" and getattr(felt.value, "kind", None) in ("pain", "red_flag", "noise"):
            out[at] = _talk(fact)
    return out


def _last_one(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "The last tuck one rpe 9": "one" stands for the set."""
    out = list(facts)
    for at in range(2, len(out)):
        scope, move, one = out[at - 2 : at + 1]
        counted = one.kind == "bare" and one.note.get("spelled") and one.value == 1
        if counted and move.kind == "move" and scope.kind == "scope" and scope.value in ("last", "first"):
            out[at] = _talk(one)
            before = [fact.value.movement for fact in out[: at - 1] if fact.kind == "move"]
            if before[-1:] == [move.value.movement]:
                out[at - 1] = _talk(move)
    return out


RULES: tuple[tuple[Rule, str], ...] = (
    (_sets_again, "rows sep"),
    (_answers, "fail sep claim"),
    (_last_one, "scope move bare"),
)
