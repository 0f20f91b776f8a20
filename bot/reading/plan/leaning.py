"""Whether a message leans on the plan."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.choosing import exact_rows, main_rows
from bot.reading.plan.cues import clauses, leans_by_form
from bot.reading.plan.ground import PARTS, STRONG, members, plan_names, planned
from bot.reading.plan.ticks import ticked
from bot.reading.plan.value import near_load

SILENT = frozenset({"word", "sep", "claim"})
UNSURE = ("over", "top", "back")
FEW_WORDS = 3  # so many plain words may stand beside a value and its set
NEAR = 3  # facts between a value and the words for its set


def leans(message: Message, facts: list[Fact]) -> bool:
    """Whether the message is told against the plan, and there is one. The facts are in its terms."""
    if not message.context.today:
        return False
    names = set().union(*(plan_names(fact) for fact in facts)) if facts else set()
    if "no_plan" in names:
        return False
    scoped = any(f.kind == "scope" and isinstance(f.value, tuple) for f in facts)
    if names & {"only"} and names & set(PARTS) and scoped:
        return True  # "only warm-up and the first two sets of pull-ups"
    if ticked(message):
        return True
    if not names and all(fact.kind in SILENT for fact in facts):
        return False
    moves = [fact for fact in facts if fact.kind == "move" and fact.value.movement != "!"]
    told = any(fact.kind in ("rows", "bare", "loads") for fact in facts)
    if "most" in names and not told:
        return True
    one_set = any(f.kind == "scope" and f.value not in UNSURE and f.value != "all" for f in facts)
    one_side = (
        "only" in names
        and facts[0].end > facts[0].start + 1
        and any(f.kind == "side" and f.value in ("left", "right") for f in facts)
    )
    missed_one = any(f.kind == "fail" and f.value is not None for f in facts)
    if (
        "fine" in names
        and (one_set or one_side or missed_one)
        and not any(f.kind == "rows" for f in facts)
        and alone(facts, 0)
    ):
        return True  # "all good today, last set of pull-ups only 3"
    if leans_by_form(facts, planned(message)):
        return True
    if "only" in names and not told and any(f.kind == "scope" and f.value in ("top", "back") for f in facts):
        return True  # "did the back-offs only"
    if "rest" in names and not moves and any(_rest_fine(clause) for clause in clauses(facts)):
        return True  # "top set only 2, rest fine"
    if names & STRONG or any(fact.kind in ("instead", "delta") or fact.note.get("shift") for fact in facts):
        return True
    if "other_load" in names and told and not any(f.kind in ("load", "loads", "at") for f in facts):
        return True  # "4x5, forgot the weight"
    if any(
        f.kind == "count" and (f.note.keys() & {"of_plan", "only", "back_offs"} or f.note.get("more")) for f in facts
    ):
        return True
    loaded = any(f.kind in ("load", "bare") for f in facts) and not moves and not any(f.kind == "rows" for f in facts)
    loads = [f for f in facts if f.kind == "load" or (f.kind == "bare" and near_load(f.value, planned(message)))]
    numbers = sum(f.kind in ("rows", "bare", "loads") for f in facts)
    if "turned_to" in names and loads and numbers == sum(f.kind == "bare" for f in loads):
        return True  # "took the pull-ups down to 20 from set 3 on"
    if loaded and (names & {"took", "turned_to"} or any(f.kind == "scope" and f.value == "all" for f in facts)):
        return True
    if "all_lifts" in names and not moves and any(f.kind in ("bare", "load") for f in facts):
        return True
    if names & {"only"} and any(f.kind == "scope" and isinstance(f.value, tuple) for f in facts):
        return True
    if not moves and alone(facts, 0) and "fine" in plan_names(facts[0]) and any(f.kind == "effort" for f in facts):
        return True
    if any(alone(facts, i) for i, fact in enumerate(facts) if "all_lifts" in plan_names(fact)):
        return True
    known = {row.movement for row in planned(message)}
    in_plan = all(set(members(fact.value)) & known for fact in moves)
    if moves and in_plan and any(alone(facts, i) for i, fact in enumerate(facts) if "rest" in plan_names(fact)):
        return True  # "archers right only one, otherwise everything"
    if moves and in_plan and "rest" in names and any(_rest_fine(clause, 1) for clause in clauses(facts)):
        return True  # "dips 8 8 7, rest was fine", and not "rest between sets was fine"
    if not moves and _planned_but(facts, planned(message)):
        return True  # "4x5, dropped to 25 for the last two"
    if (in_plan and _one_by_one(facts, planned(message))) or (not moves and _only_load(message, facts)):
        return True  # "pull-ups only 3 on the last set"
    if (
        not moves
        and (missed_one or any(f.kind == "scope" and f.value not in ("over", "all") for f in facts))
        and any(f.kind in ("load", "at", "fail") for f in facts)
    ):
        return True
    if (
        any(f.kind == "fail" and f.note.get("weak") for f in facts)
        and moves
        and not any(f.kind == "rows" for f in facts)
    ):
        return True
    sides = {f.value for f in facts if f.kind == "side"}
    each = any(f.kind == "scope" and f.value == "all" for f in facts)
    told_whole = any(f.kind in ("rows", "count", "load") for f in facts)
    if {"left", "right"} <= sides and each and (not moves or (in_plan and not told_whole)):
        return any(row.side for row in planned(message))
    if in_plan and (_rep_missed(facts) or (moves and _set_missed(facts))):
        return True
    if _only_rated(facts, known) or _only_unloaded(facts, known):
        return True
    if _of_each_set(message, facts):
        return True
    if moves:
        worked = any(fact.kind in ("rows", "bare", "loads") for fact in facts)
        named = any(set(members(fact.value)) & known for fact in moves)
        if "instead" in names and named and not all(set(members(fact.value)) & known for fact in moves):
            return True
        if not worked and named and names & {"only", "fine", "rest", "no_rest"}:
            return True
        if any(_fine(clause, known) for clause in clauses(facts)):
            return True
        return bool(names & {"only"} and named and any(fact.kind == "scope" for fact in facts) and not worked)
    if names & {"only"} and any(fact.kind == "count" for fact in facts):
        return True
    one = [fact for fact in facts if fact.kind == "rows" and len(fact.value) == 1]
    one = [fact for fact in one if fact.note.get("reps") or fact.value[0].hold_s is not None or _sets_of(message, fact)]
    if len(one) == 1 and any(fact.kind == "scope" and fact.value == "all" for fact in facts):
        return True  # "3 reps all of them, 20 kg"
    denied = any(f.kind == "fail" and f.note.get("name") == "no" for f in facts)
    if len(names & set(PARTS)) > 1 or (names & set(PARTS) and denied):
        return True
    rows = planned(message)
    held = [rows[at] for at in main_rows(rows)]  # "couldn't hold the last one, dropped at 7s"
    scoped = any(f.kind == "scope" and f.value not in ("over", "all", "top", "back") for f in facts)
    times = [f for f in facts if f.kind == "rows"]
    if scoped and held and all(row.hold_s is not None for row in held) and len(times) == 1 and times[0].note.get("one"):
        return True
    return bool(names & set(PARTS) and names & {"fine", "only", "no_rest"})


def _sets_of(message: Message, fact: Fact) -> bool:
    """ "Sets of 5"."""
    return any(hit.table == "sets" for hit in message.beginning("grammar")[fact.start])


def _of_each_set(message: Message, facts: Sequence[Fact]) -> bool:
    """ "22.5 22.5 20 20 20", "rpe 7, 7, 8, 8, 9": nothing but a load or an effort for each set of one planned lift."""
    told = [fact for fact in facts if fact.kind not in ("word", "sep", "claim", "move", "scheme")]
    of_all = {id(fact) for fact in told if (fact.kind, fact.value) == ("scope", "all")}
    told = [
        f for f in told if id(f) not in of_all and (f.kind != "plan" or plan_names(f) - {"the", "fine", "all_lifts"})
    ]
    moves = [fact.value for fact in facts if fact.kind == "move"]
    rows = planned(message)
    own = [row for row in rows if row.movement in members(moves[0])] if moves else [rows[at] for at in main_rows(rows)]
    one = len(told) == 1 and told[0].kind in ("loads", "efforts") and len(moves) < 2
    return one and len(told[0].value) == len(own) > 1


def _one_by_one(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """Whether all that is told is told of planned sets: "last set only 4", "first set 6, rest 5", "all @8"."""
    told = [fact for fact in facts if fact.kind in ("rows", "bare", "effort", "at", "load")]
    counted = [fact for fact in facts if fact.kind == "count"]
    if counted and not _as_many_planned(counted, facts, rows):
        return False
    if not told or any(fact.kind == "rows" and len(fact.value) > 1 for fact in facts):
        return False
    kinds = {fact.kind for fact in told}
    spoken = [clause for clause in clauses(facts) if any(fact.kind in kinds for fact in clause)]
    for at, whole_clause in enumerate(spoken):
        strange = sum(fact.kind == "word" and not fact.note.get("noise") for fact in whole_clause)
        clause = [fact for fact in whole_clause if not (fact.kind in ("word", "scheme") or plan_names(fact) & {"the"})]
        scopes = [place for place, fact in enumerate(clause) if fact.kind == "scope" and fact.value not in UNSURE]
        values = [place for place, fact in enumerate(clause) if fact.kind in kinds]
        if at:
            scopes += [place for place, fact in enumerate(clause) if plan_names(fact) & {"rest"}]  # "rest 20"
        rated = at and all(clause[place].kind == "effort" for place in values)
        if rated and not scopes and not strange:
            continue  # "last set only 2, rpe 9"
        if not scopes or strange > FEW_WORDS or min(abs(place - scopes[0]) for place in values) > NEAR:
            return False
        whole = clause[scopes[0]].value == "all" and clause[scopes[0]].kind == "scope"
        if whole and any(clause[place].kind not in ("effort", "at") for place in values):
            return False
    return True


def _planned_but(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """The plan's own scheme told again without a load, and then a load for some of its sets."""
    stated = [fact for fact in facts if fact.kind == "rows"]
    if len(stated) != 1 or not stated[0].note.get("plain") or not exact_rows(rows, stated[0]):
        return False
    first, *more = [clause for clause in clauses(facts) if any(fact.kind != "word" for fact in clause)]
    if stated[0] not in first or any(fact.kind in ("load", "bare", "scope") for fact in first):
        return False
    told = [[fact for fact in clause if fact.kind in ("bare", "load", "scope", "at")] for clause in more]
    told = [clause for clause in told if clause]
    return bool(told) and all(_load_of_some(clause, rows) for clause in told)


def _load_of_some(told: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """Whether a clause tells a load like the planned one, and for which sets."""
    loads = [fact for fact in told if fact.kind in ("bare", "load") and fact.value]
    scopes = [fact for fact in told if fact.kind == "scope" and fact.value not in (*UNSURE, "all")]
    return len(loads) == len(scopes) == 1 and len(told) == 2 and near_load(loads[0].value, rows)


def _as_many_planned(counted: Sequence[Fact], facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "4 sets of pull-ups, the last only 3", where the plan has four of them."""
    moves = [fact for fact in facts if fact.kind == "move"]
    if len(counted) != 1 or len(moves) != 1 or not 0 <= facts.index(moves[0]) - facts.index(counted[0]) <= NEAR:
        return False
    own = [row for row in rows if row.movement in members(moves[0].value)]
    return len(own) == int(counted[0].value) * (2 if {row.side for row in own} == {"left", "right"} else 1)


def _rep_missed(facts: Sequence[Fact]) -> bool:
    """ "Failed the last rep of the last set of pull-ups": no more than which rep of which set was missed."""
    told = [
        fact for fact in facts if fact.kind not in ("word", "sep", "claim", "scheme", "move") and fact.value != "the"
    ]
    kinds = {fact.kind for fact in told}
    of_rep = "last_rep" in kinds or any(fact.kind == "fail" and fact.note.get("rep") for fact in told)
    return of_rep and kinds <= {"fail", "scope", "last_rep"} and {"fail", "scope"} <= kinds


def _set_missed(facts: Sequence[Fact]) -> bool:
    """ "Missed the last two dip sets": which sets were missed, and no work but what one of them came to."""
    told = [fact for fact in facts if fact.kind not in ("word", "sep", "claim", "scheme", "plan")]
    one = sorted(fact.kind for fact in told[:3]) == ["fail", "move", "scope"] and not told[0].note.get("weak")
    if not one and [fact.kind for fact in told[:2]] == ["fail", "move"] and told[0].value is not None:
        one, told = not told[0].note.get("rep"), [told[0], *told]  # "missed the last set of dips"
    if one and [fact.kind for fact in told[3:]] in ([], ["bare"]):  # "the last set of pull-ups didn't go, got 4"
        return all(fact.value not in (*UNSURE, "all") and not fact.note.get("weak") for fact in told)
    if any(fact.kind in ("rows", "bare", "loads", "load", "count") for fact in facts):
        return False
    told = [fact for fact in facts if fact.value != "the"]
    for missed, scope, move in zip(told, told[1:], told[2:], strict=False):
        if (missed.kind, scope.kind, move.kind) == ("fail", "scope", "move") and scope.value not in UNSURE:
            return True
    return False


def _only_rated(facts: Sequence[Fact], known: set[str | None]) -> bool:
    """ "Pull-ups were a 7 today": no more than how hard a movement of the plan was."""
    told = [fact for fact in facts if fact.kind not in ("word", "sep", "claim", "scheme") and not plan_names(fact)]
    if [fact.kind for fact in told] != ["move", "effort"] or told[1].note.get("session"):
        return False
    return bool(set(members(told[0].value)) & known)


def _only_unloaded(facts: Sequence[Fact], known: set[str | None]) -> bool:
    """ "Dips without weight today": a movement of the plan, and no more than that its load was left off."""
    told = [fact for fact in facts if fact.kind not in ("word", "sep", "claim", "scheme") and not plan_names(fact)]
    if [fact.kind for fact in told] != ["move", "load"] or not told[1].note.get("none"):
        return False
    return bool(set(members(told[0].value)) & known)


def _only_load(message: Message, facts: Sequence[Fact]) -> bool:
    """ "With 15 today", "only 20 kg because the belt broke": nothing but a load, near what the plan has."""
    only = next((at for at, fact in enumerate(facts) if plan_names(fact) & {"only"}), None)
    silent = ("word", "sep", "claim", "scheme")
    told = [fact for fact in facts if fact.kind not in silent and not plan_names(fact) & {"only", "fine"}]
    if len(told) != 1 or told[0].kind != "load" or not told[0].value or not near_load(told[0].value, planned(message)):
        return False
    if only is not None and only + 1 < len(facts) and facts[only + 1] is told[0]:
        return sum(fact.kind == "word" for fact in facts[:only]) < FEW_WORDS
    return told[0].note.get("how") == "at" and sum(fact.kind == "word" for fact in facts) <= FEW_WORDS


def alone(facts: Sequence[Fact], at: int) -> bool:
    """Whether a fact is a clause by itself: "everything, 70 min"."""
    if at >= len(facts):
        return False
    left = at == 0 or facts[at - 1].kind in ("sep", "claim")
    return left and (at + 1 == len(facts) or facts[at + 1].kind in ("sep", "claim"))


def _rest_fine(clause: Sequence[Fact], most_words: int | None = None) -> bool:
    """Whether a clause is no more than "the rest fine", and so many words."""
    names = [plan_names(fact) for fact in clause if fact.kind != "word"]
    if most_words is not None and len(clause) - len(names) > most_words:
        return False
    return bool(names) and all(names) and {"rest", "fine"} <= set().union(*names)


def _fine(clause: Sequence[Fact], known: set[str | None]) -> bool:
    """Whether a clause says no more than that work of the plan was fine: "Klimmzüge passen", "right all fine"."""
    moves = [fact for fact in clause if fact.kind == "move" and set(members(fact.value)) & known]
    moves += [fact for fact in clause if plan_names(fact) & {"rest"} or fact.value in ("left", "right")]
    fine = any(plan_names(fact) & {"fine"} for fact in clause)
    return bool(moves) and fine and all(fact.kind in ("move", "plan", "scope", "side") for fact in clause)
