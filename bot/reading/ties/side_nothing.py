"""One side told with its reps, of the other that nothing went: "right 2, links hat nix geklappt", "left nothing"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.unreal import is_day

SIDES = ("left", "right")
NUMBERS = frozenset({"rows", "bare", "load", "count", "left", "fail", "effort", "claim", "flag", "move", "at"})


def side_nothing(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, a miss where words say that it was tried; asked where they only say "nothing".

    Beside a plan it is that side of the plan that was not done.
    """
    planned = bool(message.context.today)
    clauses = _clauses(facts)
    sided = {told for n in range(len(clauses)) if (told := _told(facts, clauses, n)) is not None}
    out = list(facts)
    for n in range(len(clauses) - 1, -1, -1):
        start, end = clauses[n]
        clause = facts[start:end]
        side = _one_side(clause)
        if side is None or side.value in sided or not (planned or SIDES[side.value == "left"] in sided):
            continue
        if any(one.kind in NUMBERS and not is_day(one) for one in clause):
            continue
        words = {token.text for token in message.tokens[clause[0].start : clause[-1].end]}
        words -= {token.text for token in message.tokens[side.start : side.end]}
        nothing, went = words & little("nothing_went", "did_not"), words & little("it_went", "went_up", "to_work")
        if not nothing or words - little("nothing_went", "did_not", "it_went", "went_up", "to_work", "beside_nothing"):
            continue
        if planned:
            out[start:end] = [side, Fact("plan", side.end, clause[-1].end, "not", {"names": ["not"]})]
        elif went:
            out[start:end] = [side, Fact("fail", clause[0].start, clause[-1].end)]
        elif words & little("nothing_went") and not _missed_behind(facts, end):
            out[start:end] = [Fact("ask", clause[0].start, clause[-1].end, "sets", {"some": True})]
    return out


def _clauses(facts: Sequence[Fact]) -> list[tuple[int, int]]:
    """Where each clause begins and ends."""
    ends = [at for at, fact in enumerate(facts) if fact.kind == "sep"]
    return list(zip([0, *(at + 1 for at in ends)], [*ends, len(facts)], strict=True))


def _one_side(clause: Sequence[Fact]) -> Fact | None:
    """The side of a clause that names no other."""
    sides = [fact for fact in clause if fact.kind == "side"]
    return sides[0] if len(sides) == 1 and sides[0].value in SIDES else None


def _told(facts: Sequence[Fact], clauses: Sequence[tuple[int, int]], n: int) -> str | None:
    """The side that a clause tells work of, in front of a colon or behind it too: "archers right: 3x2"."""
    start, end = clauses[n]
    side = _one_side(facts[start:end])
    if side is None:
        return None
    titled = end < len(facts) and facts[end].note.get("mark") == ":"
    high = clauses[n + 1][1] if titled else end
    low = start - 2 if start > 1 and facts[start - 1].note.get("mark") == ":" else start
    own = facts[low:high]
    alone = sum(one.kind == "side" for one in own) == 1
    return str(side.value) if alone and any(one.kind in ("rows", "bare") for one in own) else None


def _missed_behind(facts: Sequence[Fact], at: int) -> bool:
    """ "Right nothing, got stuck at 90 degrees": whether the next clause tells of the miss."""
    end = clause_end(facts, at + 1)
    return any(one.kind == "fail" for one in facts[at:end])
