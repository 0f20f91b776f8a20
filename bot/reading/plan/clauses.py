"""The clauses of a message, each with the sets of the plan that it speaks of."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from itertools import pairwise

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.plan.by_weight import of_weight
from bot.reading.plan.choosing import exact_rows
from bot.reading.plan.ground import PARTS, members, plan_names
from bot.reading.plan.of_one_set import goes_on

HELPED = "band_pull_up"
VALUED = frozenset("rows bare load loads at instead delta count assist".split())
TOLD = frozenset("rows bare loads count load at efforts effort instead delta scope".split())
BESIDE_VALUE = frozenset({"only", "the", "took", "by", "turned_to"})
ALL_REPS = tuple(["all", word] for word in sorted(little("all_reps")))
SAYING = frozenset("done planned same fine skipped except only instead not".split())


@dataclass
class Clause:
    """A piece of the message between two separators."""

    facts: list[Fact]
    targets: list[int] = field(default_factory=list)  # rows of the plan it speaks of; empty: none named
    names: set[str] = field(default_factory=set)  # plan words in it
    outside: list[Fact] = field(default_factory=list)  # movements named that the plan has not
    sentence: int = 0
    part: bool = False  # it names a part of the plan ("the warm-up")


def clauses_of(rows: Sequence[Row], facts: list[Fact]) -> list[Clause]:
    """Cut at every separator; a clause without a movement keeps the one before it in mind."""
    clauses: list[Clause] = []
    current: list[Fact] = []
    sentence = 0

    def close() -> None:
        if current:
            clauses.append(Clause(list(current), sentence=sentence))
            current.clear()

    inside = False
    for at, fact in enumerate(facts):
        inside = fact.note.get("mark") == "(" or (inside and fact.note.get("mark") != ")")
        if inside and fact.note.get("mark") == ",":
            continue  # "chins with the same (4x7, 30 kg)"
        if fact.kind == "sep" and fact.note.get("mark") not in ("(", ")"):
            led = _only_names(current) or [one.kind for one in current] == ["side"]
            led = (
                led
                or _set_rated(current)
                or [plan_names(one) for one in current] == [{"more"}]
                or (_names_set(current) and not _of_sides(facts, at + 1))
            )
            if fact.note.get("mark") == ":" and led:
                continue  # "dips: skipped", "dips: 10 10 9"
            if fact.note.get("mark") == "and" and _only_names(current) and _names_on(facts, at + 1):
                continue  # "warm-up and skill as planned"
            close()
            sentence += fact.value == 3
            continue
        leaves = plan_names(fact) & {"except", "skipped"} if fact.kind == "plan" else set()
        if (
            leaves
            and any(_told_of(f) for f in current)
            # "una serie menos de fondos"
            and not any(f.kind == "count" and not f.note.get("stopped") for f in current)
            and _names_more(facts, at + 1)
        ):
            close()
        if (
            fact.kind == "word"
            and fact.value in little("so_then")
            and _left_lift(current)
            and _names_more(facts, at + 1)
        ):
            close()  # "no space for dips so I did the same sets of push-ups"
            continue
        if "turned_to" in plan_names(fact) and _some_sets_so(current) and _value_next(facts, at + 1):
            close()  # "first set felt like a 9 so I went down to 20 for the other two"
        if "rest" in plan_names(fact) and (_says_of_named(current) or (fact.kind == "plan" and _listed(current))):
            close()  # "the warm-up I skipped the rest I did", "leg raises 10 8 7 rest as planned"
        current.append(fact)
    close()
    clauses = _apart(rows, _join_exceptions(_join_sides(clauses)))
    for clause in clauses:
        untold = not any(fact.kind in VALUED for fact in clause.facts)
        for fact in clause.facts:
            got_it = untold and fact.kind == "scheme" and fact.value == "got"
            clause.names |= plan_names(fact) - ({"only"} if got_it else set())  # "a grinder but I got it"
            if fact.kind == "move":
                wanted = set(members(fact.value))
                hits = [i for i, row in enumerate(rows) if row.movement in wanted]
                if any(one.kind in TOLD for one in clause.facts):
                    hits = _work_sets(rows, hits)
                if hits:
                    clause.targets += [i for i in hits if i not in clause.targets]
                elif fact.value.movement != "!":
                    clause.outside.append(fact)
        for fact, after in zip(clause.facts, clause.facts[1:], strict=False):
            behind = next((one for one in clause.facts if one.start >= after.end), None)
            of_side = after.kind == "side" and behind is not None and behind.kind == "move"  # "no right side pistols"
            named = after.kind == "move" or of_side or plan_names(after) & set(PARTS)
            if fact.kind == "fail" and fact.note.get("name") == "no" and named and not _partly(clause, after):
                clause.names.add("skipped")
            so_so = next((str(one.value) for one in clause.facts if one.start == after.end), "") in little("not_so")
            if after.kind == "fail" and after.note.get("weak") and fact.kind == "move" and not so_so:
                clause.names.add("skipped" if after.note.get("name") == "no" else "done")
        _denied(clause)
        _none_done(clause)
        if {"rest", "skipped"} <= clause.names and not clause.targets:
            clause.names = (clause.names - {"rest", "skipped"}) | {"no_rest"}  # "pull-ups ✅ rest ❌"
        clause.facts = [f for f in clause.facts if not (f.kind == "fail" and f.note.get("weak"))]
        if sum(fact.kind != "claim" for fact in clause.facts) == 1 and "all_lifts" in clause.names:
            clause.names.add("done")
        if [fact.value for fact in clause.facts if fact.kind != "claim"] in ALL_REPS:
            clause.names.add("done")
        for name, part in PARTS.items():
            if name in clause.names:
                clause.targets += [i for i, row in enumerate(rows) if row.part == part and i not in clause.targets]
                clause.part = True
        weighed = of_weight(rows, clause.names)
        if weighed:
            others = [at for at in clause.targets if rows[at].movement != rows[weighed[0]].movement]
            told = any(one.kind in TOLD for one in clause.facts)
            clause.targets = weighed if told else [*weighed, *others]  # "back-offs and ring dips done"
            clause.part = True
        if "band" in clause.names and not clause.targets:
            clause.targets = [i for i, row in enumerate(rows) if row.movement == HELPED]
        if "holds" in clause.names and not clause.targets:
            clause.targets = [i for i, row in enumerate(rows) if row.hold_s is not None]
    _work_of_outside(clauses)
    return _with_planned_behind([clause for clause in clauses if clause.facts])


def _work_of_outside(clauses: Sequence[Clause]) -> None:
    """ "Did the pull-ups without the band, 4 4 3": the sets are of the lift named before, which the plan has not."""
    for before, clause in pairwise(clauses):
        beside = {"the", "by", "only", "more", "took", "sure"}
        named = len(before.outside) == 1 and not before.targets and before.names <= beside
        told = [fact for fact in before.facts if fact.kind in TOLD]
        if not named or before.sentence != clause.sentence or any(fact.kind != "load" for fact in told):
            continue
        if clause.targets or clause.outside or not any(fact.kind == "rows" for fact in clause.facts):
            continue
        if before.outside[0].value.movement.startswith("?") or any(fact.kind == "scope" for fact in clause.facts):
            continue
        clause.facts[:0] = [before.outside[0], *told]  # "pull-ups with just bodyweight, 3x8, in place of …"
        clause.outside = list(before.outside)
        before.facts = [fact for fact in before.facts if fact not in (*told, before.outside[0])]
        if all(fact.kind in ("word", "scheme") or plan_names(fact) <= beside for fact in before.facts):
            before.facts, before.names = [], set()  # "Extra: leg raises, 2x10"
        before.outside = []


def _with_planned_behind(clauses: list[Clause]) -> list[Clause]:
    """ "Chin-ups 4x6 with 10, in place of the pulldowns": what was planned is said in a clause of its own."""
    out: list[Clause] = []
    for clause in clauses:
        before = out[-1] if out else None
        told = [fact for fact in clause.facts if plan_names(fact) != {"the"} and fact.kind != "word"]
        only = len(told) == 2 and bool(plan_names(told[0]) & {"instead"}) and told[1].kind == "move"
        if (
            before is not None
            and only
            and clause.targets
            and before.sentence == clause.sentence
            and before.outside
            and not before.targets
            and any(fact.kind == "rows" for fact in before.facts)
        ):
            before.facts += clause.facts
            before.names |= clause.names
            before.targets = clause.targets
            continue
        out.append(clause)
    return out


def _some_sets_so(facts: Sequence[Fact]) -> bool:
    """Whether a clause so far tells how some of the sets went, and what followed from it."""
    scope = next((at for at, fact in enumerate(facts) if fact.kind == "scope" and fact.value != "all"), len(facts))
    words = [str(fact.value).split() for fact in facts[scope:] if fact.kind == "word"]
    so = any(not little("so_then").isdisjoint(said) for said in words)
    return so or any(fact.kind == "effort" for fact in facts[scope:])


def _left_lift(facts: Sequence[Fact]) -> bool:
    """Whether a clause so far says that a lift was left out."""
    denied = any(fact.kind == "fail" or "skipped" in plan_names(fact) for fact in facts)
    return denied and any(fact.kind == "move" for fact in facts)


def _value_next(facts: Sequence[Fact], at: int) -> bool:
    return at < len(facts) and facts[at].kind in ("bare", "load")


def _told_of(fact: Fact) -> bool:
    """Whether what a clause leaves out stands against it; not against the "only" of "only skipped the dips"."""
    if fact.kind == "plan":
        return plan_names(fact) != {"only"}
    return fact.kind == "move" or (fact.kind == "scope" and fact.value == "all")


def _work_sets(rows: Sequence[Row], hits: list[int]) -> list[int]:
    """ "Pull-ups 4 4 4 3" of a day that warms up with pull-ups too: the sets told are those after the warm-up."""
    return [at for at in hits if rows[at].part != "warm_up"] or hits


def _apart(rows: Sequence[Row], clauses: list[Clause]) -> list[Clause]:
    """ "4x4 3x6 done": schemes of two planned movements, one clause each."""
    out: list[Clause] = []
    for clause in clauses:
        places = [at for at, fact in enumerate(clause.facts) if fact.kind == "rows"]
        if len(places) > 1 and all(exact_rows(rows, clause.facts[at]) for at in places):
            bounds = [0, *places[1:], len(clause.facts)]
            parts = [clause.facts[start:end] for start, end in pairwise(bounds)]
            out += [Clause(part, sentence=clause.sentence) for part in parts]
        else:
            out.append(clause)
    return out


def _only_names(facts: Sequence[Fact]) -> bool:
    """Whether a clause so far names what is spoken of, and says nothing of it."""
    named = any(fact.kind == "move" or plan_names(fact) & {*PARTS, "rest"} for fact in facts)
    silent = ("move", "word", "plan", "scope")
    return named and all(fact.kind in silent and not plan_names(fact) & SAYING for fact in facts)


def _set_rated(facts: Sequence[Fact]) -> bool:
    """ "Last set to failure: 8 instead of 6": the set named, and how hard it was."""
    kinds = [fact.kind for fact in facts if fact.kind not in ("word", "scheme") and plan_names(fact) != {"the"}]
    return kinds in (["scope", "effort"], ["scope", "move", "effort"]) and all(fact.value != "all" for fact in facts)


def _names_set(facts: Sequence[Fact]) -> bool:
    """ "Third set: 4 instead of 7": which set is spoken of, and nothing of it."""
    told = [fact for fact in facts if fact.kind != "word" and plan_names(fact) != {"the"}]
    return len(told) == 1 and told[0].kind == "scope" and told[0].value not in ("all", "over")


def _of_sides(facts: Sequence[Fact], at: int) -> bool:
    """Whether the clause that begins here tells of one side."""
    return any(fact.kind == "side" for fact in facts[at : clause_end(facts, at)])


def _says_of_named(facts: Sequence[Fact]) -> bool:
    """Whether a clause so far names what is spoken of, and says what came of it."""
    named = any(fact.kind == "move" or plan_names(fact) & set(PARTS) for fact in facts)
    return named and any(plan_names(fact) & SAYING - {"except", "only"} for fact in facts)


def _listed(facts: Sequence[Fact]) -> bool:
    """Whether a clause so far names a lift and lists its sets."""
    lists = any(len(fact.value) > 1 for fact in facts if fact.kind == "rows")
    return lists and any(fact.kind == "move" for fact in facts)


def _names_on(facts: Sequence[Fact], at: int) -> bool:
    """Whether the clause that begins here names more of the plan and tells no value."""
    own: list[Fact] = []
    for fact in facts[at:]:
        if fact.kind == "sep":
            break
        own.append(fact)
    named = any(fact.kind == "move" or plan_names(fact) & set(PARTS) for fact in own)
    names = {name for fact in own for name in plan_names(fact)}
    rest = "rest" in names and bool(names & {"done", "planned", "skipped"})  # "the dips and the rest left out"
    return (named or rest) and not any(fact.kind in VALUED for fact in own)


def _join_exceptions(clauses: list[Clause]) -> list[Clause]:
    """ "all but the last, that was a 2": the value is of the set excepted."""
    out: list[Clause] = []
    for clause in clauses:
        before = out[-1] if out else None
        same = before is not None and before.sentence == clause.sentence
        open_ = before is not None and same and _open(before)
        if (before is not None and same and (goes_on(before.facts, clause.facts) or _not_done(before, clause))) or (
            before is not None and open_ and (_only_value(clause) or _only_missed(before, clause))
        ):
            before.facts += clause.facts
        else:
            out.append(clause)
    return out


def _open(clause: Clause) -> bool:
    """Whether a clause leaves open what its set came to: "all but the last", "couldn't finish the last set"."""
    scoped = any(f.kind == "scope" and f.value not in ("all", "over") for f in clause.facts)
    missed = any(f.kind == "fail" and (scoped or f.value == "last" or isinstance(f.value, int)) for f in clause.facts)
    return (
        _excepts(clause) or _leaves_lift(clause) or (missed and not any(fact.kind in VALUED for fact in clause.facts))
    )


def _not_done(before: Clause, clause: Clause) -> bool:
    """ "… and the third of rows, which I didn't do": of the set named right before."""
    named = any(fact.kind == "scope" and fact.value not in ("all", "over") for fact in before.facts)
    silent = all(fact.kind in ("scope", "move", "word") or plan_names(fact) == {"the"} for fact in before.facts)
    told = [fact for fact in clause.facts if fact.kind != "word"]
    return named and silent and len(told) == 1 and plan_names(told[0]) == {"skipped"} and len(clause.facts) > 1


def _leaves_lift(clause: Clause) -> bool:
    """ "Done but for the dips, there only 8 6 6": what is left out is told after."""
    told = [fact for fact in clause.facts if fact.kind != "word" and plan_names(fact) != {"the"}]
    left = len(told) > 1 and told[-1].kind == "move" and bool(plan_names(told[-2]) & {"except"})
    return left and not any(fact.kind in VALUED for fact in told)


def _only_missed(before: Clause, clause: Clause) -> bool:
    """ "All but the last, which didn't go: got one": the miss is of the set excepted."""
    missed = [fact for fact in clause.facts if fact.kind != "word"]
    silent = [fact.kind for fact in missed] == ["fail"] and not missed[0].note.get("weak")
    return silent and _excepts(before)


def _excepts(clause: Clause) -> bool:
    scoped = any(fact.kind == "scope" and fact.value not in ("all", "over") for fact in clause.facts)
    left = any(plan_names(fact) & {"except"} for fact in clause.facts)
    return scoped and left and not any(fact.kind in VALUED and not fact.note.get("the") for fact in clause.facts)


def _only_value(clause: Clause) -> bool:
    silent = ("word", "scheme", "bare", "rows", "side", "load", "instead")
    told = any(fact.kind in ("bare", "rows", "load", "instead") for fact in clause.facts)
    return told and all(fact.kind in silent or plan_names(fact) <= BESIDE_VALUE for fact in clause.facts)


def _partly(clause: Clause, named: Fact) -> bool:
    """ "No calenté bien": something was done of what is named, and not well."""
    behind = next((fact for fact in clause.facts if fact.start == named.end), None)
    return behind is not None and ("fine" in plan_names(behind) or str(behind.value) in little("thoroughly"))


def _denied(clause: Clause) -> None:
    """ "nur die Archer nicht", "lo demás no": a denial that closes a clause is of what it names.

    "Dips not so much" tells how they felt.
    """
    last = next((f for f in reversed(clause.facts) if f.kind != "word"), None)
    if last is None:
        return
    if last.kind == "move" and clause.facts[-1].kind == "word" and clause.facts[-1].value in little("was_not"):
        clause.names.add("skipped")  # "pull-ups done, dips weren't"
        return
    denies = (last.kind == "fail" and last.note.get("name") == "no") or bool(plan_names(last) & {"not_this", "not"})
    behind = clause.facts[clause.facts.index(last) + 1 :]
    if denies and behind and str(behind[0].value) in little("not_so"):
        clause.names -= {"instead", "not_this", "not"}
        return
    valued = any(f.kind in VALUED for f in clause.facts)
    if denies and not valued and len(clause.facts) > 1:
        clause.names.add("no_rest" if "rest" in clause.names and not clause.targets else "skipped")
        clause.names -= {"done", "only"}


def _none_done(clause: Clause) -> None:
    """ "Face pulls cero", "accessories 0": none of what is named was done."""
    told = [fact for fact in clause.facts if fact.kind != "word" and plan_names(fact) != {"the"}]
    none = len(told) > 1 and told[-1].kind == "bare" and told[-1].value == 0
    first = len(told) > 1 and told[0].kind == "bare" and told[0].value == 0  # "cero flexiones"
    if first and all(fact.kind == "move" or plan_names(fact) & set(PARTS) for fact in told[1:]):
        clause.facts.remove(told[0])
        clause.names.add("skipped")
        return
    if none and all(fact.kind == "move" or plan_names(fact) & set(PARTS) for fact in told[:-1]):
        clause.facts.remove(told[-1])
        clause.names.add("skipped")


def _join_sides(clauses: list[Clause]) -> list[Clause]:
    """ "left 2, right 2, left 2, right 1" is one list, set by set."""

    def sided(clause: Clause) -> bool:
        kinds = {fact.kind for fact in clause.facts}
        return {"side", "bare"} <= kinds and kinds <= {"side", "bare", "word", "move", "scope"}

    def of_one_set(run: list[Clause]) -> bool:
        """ "Last set of pistols: 2 left, 1 right"."""
        named = [fact for fact in run[0].facts if fact.kind == "scope" and fact.value != "all"]
        sides = {fact.value for clause in run for fact in clause.facts if fact.kind == "side"}
        alone = not any(fact.kind == "scope" for clause in run[1:] for fact in clause.facts)
        return len(run) == len(sides) and len(named) == 1 and alone and len(sides) > 1

    out: list[Clause] = []
    run: list[Clause] = []
    for clause in [*clauses, Clause([])]:
        if sided(clause) and (not run or clause.sentence == run[-1].sentence):
            run.append(clause)
            continue
        if (len(run) > 2 and not any(fact.kind == "scope" for one in run for fact in one.facts)) or (
            run and of_one_set(run)
        ):
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
        if fact.kind in ("move", "scope") or plan_names(fact) & set(PARTS):
            return True
    return False


def clause_around(facts: Sequence[Fact], at: int) -> Sequence[Fact]:
    """The facts between the separators around a place."""
    low = clause_start(facts, at + 1)
    high = clause_end(facts, at)
    return facts[low:high]
