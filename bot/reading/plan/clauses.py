"""The clauses of a message, each with the sets of the plan that it speaks of."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.plan.ground import PARTS, members, plan_names


@dataclass
class Clause:
    """A piece of the message between two separators."""

    facts: list[Fact]
    targets: list[int] = field(default_factory=list)  # rows of the plan it speaks of; empty: none named
    names: set[str] = field(default_factory=set)  # plan words in it
    outside: list[Fact] = field(default_factory=list)  # movements named that the plan has not
    sentence: int = 0


def clauses_of(rows: Sequence[Row], facts: list[Fact]) -> list[Clause]:
    """Cut at every separator; a clause without a movement keeps the one before it in mind."""
    clauses: list[Clause] = []
    current: list[Fact] = []
    sentence = 0

    def close() -> None:
        if current:
            clauses.append(Clause(list(current), sentence=sentence))
            current.clear()

    for at, fact in enumerate(facts):
        if fact.kind == "sep" and fact.note.get("mark") not in ("(", ")"):
            close()
            sentence += fact.value == 3
            continue
        leaves = plan_names(fact) & {"except", "skipped"} if fact.kind == "plan" else set()
        if (
            leaves
            and any(f.kind in ("move", "plan") for f in current)
            and ("except" in leaves or _names_more(facts, at + 1))
        ):
            close()
        current.append(fact)
    close()
    clauses = _join_sides(clauses)
    for clause in clauses:
        for fact in clause.facts:
            clause.names |= plan_names(fact)
            if fact.kind == "move":
                wanted = set(members(fact.value))
                hits = [i for i, row in enumerate(rows) if row.movement in wanted]
                if hits:
                    clause.targets += [i for i in hits if i not in clause.targets]
                elif fact.value.movement != "!":
                    clause.outside.append(fact)
        for fact, after in zip(clause.facts, clause.facts[1:], strict=False):
            if fact.kind == "fail" and fact.note.get("name") == "no" and after.kind == "move":
                clause.names.add("skipped")
            if after.kind == "fail" and after.note.get("weak") and fact.kind == "move":
                clause.names.add("skipped" if after.note.get("name") == "no" else "done")
        clause.facts = [f for f in clause.facts if not (f.kind == "fail" and f.note.get("weak"))]
        if len(clause.facts) == 1 and "all_lifts" in clause.names:
            clause.names.add("done")
        for name, part in PARTS.items():
            if name in clause.names:
                clause.targets += [i for i, row in enumerate(rows) if row.part == part and i not in clause.targets]
        if "holds" in clause.names and not clause.targets:
            clause.targets = [i for i, row in enumerate(rows) if row.hold_s is not None]
    return clauses


def _join_sides(clauses: list[Clause]) -> list[Clause]:
    """ "left 2, right 2, left 2, right 1" is one list, set by set."""

    def sided(clause: Clause) -> bool:
        kinds = {fact.kind for fact in clause.facts}
        return {"side", "bare"} <= kinds and kinds <= {"side", "bare", "word", "move"}

    out: list[Clause] = []
    run: list[Clause] = []
    for clause in [*clauses, Clause([])]:
        if sided(clause) and (not run or clause.sentence == run[-1].sentence):
            run.append(clause)
            continue
        if len(run) > 2:
            out.append(Clause([fact for one in run for fact in one.facts], sentence=run[0].sentence))
        else:
            out += run
        run = []
        if clause.facts:
            if sided(clause):
                run = [clause]
            else:
                out.append(clause)
    return out


def _names_more(facts: Sequence[Fact], at: int) -> bool:
    """Whether a movement or part of the plan is named before the clause ends."""
    for fact in facts[at:]:
        if fact.kind == "sep":
            return False
        if fact.kind == "move" or plan_names(fact) & set(PARTS):
            return True
    return False
