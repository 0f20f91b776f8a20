"""Forms of words that lean on the plan without a word for it: "did the first three, then stopped", "no rotations"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.plan.ground import PARTS, members, plan_names

WORK = frozenset("rows bare loads count".split())
SILENT = frozenset("word plan scheme move".split())


def clauses(facts: Sequence[Fact]) -> list[list[Fact]]:
    """The facts cut at the separators."""
    out: list[list[Fact]] = [[]]
    for fact in facts:
        if fact.kind == "sep" and fact.note.get("mark") not in ("(", ")"):
            out.append([])
        else:
            out[-1].append(fact)
    return out


def leans_by_form(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """Whether one of the forms below is there."""
    return (
        _first_ones(facts)
        or _beside_parts(facts, rows)
        or _fewer(facts)
        or _unfinished(facts)
        or _of_one_side(facts, rows)
    )


def _did(facts: Sequence[Fact]) -> bool:
    """Whether a word says that something was done, or broken off."""
    return any((f.kind == "scheme" and f.value == "got") or plan_names(f) & {"only", "quit"} for f in facts)


def _first_ones(facts: Sequence[Fact]) -> bool:
    """ "Did the first three sets, then stopped": some of the planned sets, and nothing of their reps."""
    if any(fact.kind in WORK for fact in facts) or not _did(facts):
        return False
    return any(f.kind == "scope" and isinstance(f.value, tuple) and f.value[0] == "first" for f in facts)


def _beside_parts(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Warm-up and 3 work sets", "warm-up, then 5x3 at 22.5, no rotations": a part told by its name alone.

    Work without a movement stands beside it, and would else go to whatever is named next.
    """
    known = {row.movement for row in rows}
    own = clauses(facts)
    parts = any(set(PARTS) & names for clause in own if (names := _told_by_name(clause)))
    denied = any(_denied(clause, known) for clause in own)
    if not parts and not denied:
        return False
    unnamed = [c for c in own if any(f.kind in WORK for f in c) and not any(f.kind == "move" for f in c)]
    return bool(unnamed)


def _told_by_name(clause: Sequence[Fact]) -> set[str]:
    """The plan words of a clause that tells no value."""
    if any(fact.kind not in SILENT for fact in clause):
        return set()
    return set().union(*(plan_names(fact) for fact in clause)) if clause else set()


def _denied(clause: Sequence[Fact], known: set[str | None]) -> bool:
    """ "No rotations": a movement of the plan, denied."""
    no = any(fact.kind == "fail" and fact.note.get("name") == "no" for fact in clause)
    return no and any(fact.kind == "move" and set(members(fact.value)) & known for fact in clause)


def _fewer(facts: Sequence[Fact]) -> bool:
    """ "One set less, otherwise all good"."""
    for clause in clauses(facts):
        names = set().union(*(plan_names(fact) for fact in clause)) if clause else set()
        counted = [fact for fact in clause if fact.kind in WORK]
        if names & {"less"} and len(counted) == 1 and counted[0].kind == "count" and counted[0].value <= 2:
            return True
    return False


def _unfinished(facts: Sequence[Fact]) -> bool:
    """ "Couldn't finish the last set, got 2": one set missed, and what it came to."""
    if any(fact.kind in ("move", "rows", "loads") for fact in facts):
        return False
    missed = any(f.kind == "fail" and (f.value == "last" or isinstance(f.value, int)) for f in facts)
    return missed and sum(fact.kind == "bare" for fact in facts) == 1


def _of_one_side(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "3x4, last one only 3 on the left" of planned pairs: what one side of one set came to."""
    if any(fact.kind == "move" for fact in facts) or not any(row.side for row in rows):
        return False
    own = clauses(facts)
    sets = next((n for n, clause in enumerate(own) if any(f.kind == "rows" for f in clause)), None)
    if sets is None:
        return False
    for clause in own[sets + 1 :]:
        kinds = {fact.kind for fact in clause}
        scoped = any(f.kind == "scope" and f.value not in ("all", "over") for f in clause)
        if scoped and {"side", "bare"} <= kinds and "rows" not in kinds:
            return True
    return False
