"""One side told with its reps, of the other that nothing went: "right 2, links hat nix geklappt", "left nothing"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

SIDES = ("left", "right")
NUMBERS = frozenset({"rows", "bare", "load", "count", "left", "fail", "effort", "claim", "flag", "move", "at"})


def side_nothing(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, a miss where words say that it was tried; asked where they only say "nothing"."""
    if message.context.today:
        return facts
    sided = {fact.value for at, fact in enumerate(facts) if _told(facts, at)}
    out = list(facts)
    for at in range(len(facts) - 1, -1, -1):
        side = facts[at]
        if side.kind != "side" or side.value not in SIDES or SIDES[side.value == "left"] not in sided:
            continue
        start, end = _clause(facts, at)
        clause = facts[start:end]
        if side.value in sided or any(one.kind in NUMBERS for one in clause):
            continue
        if sum(one.kind == "side" for one in clause) > 1:
            continue
        words = {token.text for token in message.tokens[clause[0].start : clause[-1].end]}
        words -= {token.text for token in message.tokens[side.start : side.end]}
        nothing, went = words & little("nothing_went", "did_not"), words & little("it_went", "went_up", "to_work")
        if not nothing or words - little("nothing_went", "did_not", "it_went", "went_up", "to_work", "beside_nothing"):
            continue
        if went:
            out[start:end] = [side, Fact("fail", clause[0].start, clause[-1].end)]
        elif words & little("nothing_went") and not _missed_behind(facts, end):
            out[start:end] = [Fact("ask", clause[0].start, clause[-1].end, "sets", {"some": True})]
    return out


def _told(facts: Sequence[Fact], at: int) -> bool:
    """Whether a side stands here with a number right beside it."""
    if facts[at].kind != "side" or facts[at].value not in SIDES:
        return False
    beside = [facts[n] for n in (at - 1, at + 1) if 0 <= n < len(facts)]
    after = facts[at + 2] if at + 2 < len(facts) and facts[at + 1].note.get("mark") == ":" else None
    return any(one is not None and one.kind in ("rows", "bare") for one in (*beside, after))


def _missed_behind(facts: Sequence[Fact], at: int) -> bool:
    """ "Right nothing, got stuck at 90 degrees": whether the next clause tells of the miss."""
    end = clause_end(facts, at + 1)
    return any(one.kind == "fail" for one in facts[at:end])


def _clause(facts: Sequence[Fact], at: int) -> tuple[int, int]:
    start = clause_start(facts, at)
    end = clause_end(facts, at + 1)
    return start, end
