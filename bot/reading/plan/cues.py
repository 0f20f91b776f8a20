"""Forms of words that lean on the plan without a word for it: "did the first three, then stopped", "no rotations"."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from bot.reading.bounds import is_then
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.plan.choosing import exact_rows, main_rows, pick
from bot.reading.plan.ground import PARTS, members, plan_names
from bot.reading.plan.value import near_load, near_reps

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
    return any(form(facts, rows) for form in FORMS)


def _did(facts: Sequence[Fact]) -> bool:
    """Whether a word says that something was done, or broken off."""
    return any((f.kind == "scheme" and f.value == "got") or plan_names(f) & {"only", "quit"} for f in facts)


def _first_ones(facts: Sequence[Fact], _rows: Sequence[Row]) -> bool:
    """ "Did the first three sets, then stopped": some of the planned sets, and nothing of their reps."""
    if any(fact.kind in WORK for fact in facts) or not _did(facts):
        return False
    lifts = little("lift")
    if any(
        one.value in ("first", "last") and after.value in lifts
        for one, after in pairwise(facts)
        if after.kind == "word"
    ):
        return True  # "only did the last exercise"
    return any(f.kind == "scope" and isinstance(f.value, tuple) and f.value[0] == "first" for f in facts)


def _of_each_lift(facts: Sequence[Fact], _rows: Sequence[Row]) -> bool:
    """ "Only did the first set of each", "2 sets of everything, then had to run": what `of_each_lift` has read."""
    return any(fact.note.get("each_lift") for fact in facts) and _did(facts)


def _up_to(facts: Sequence[Fact], _rows: Sequence[Row]) -> bool:
    """ "Fine up to set 4, there I got 2": what `up_to` has read."""
    return any(fact.note.get("until") for fact in facts)


def _some(facts: Sequence[Fact], _rows: Sequence[Row]) -> bool:
    """ "Got a few sets in before closing time": some of the planned sets, and nobody knows which."""
    return any(fact.kind == "vague" for fact in facts) and _did(facts) and not any(fact.kind in WORK for fact in facts)


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


def _fewer(facts: Sequence[Fact], _rows: Sequence[Row]) -> bool:
    """ "One set less, otherwise all good"."""
    for clause in clauses(facts):
        names = set().union(*(plan_names(fact) for fact in clause)) if clause else set()
        counted = [fact for fact in clause if fact.kind in WORK]
        if names & {"less"} and len(counted) == 1 and counted[0].kind == "count" and counted[0].value <= 2:
            return True
    return False


def _unfinished(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Couldn't finish the last set, got 2": one set missed, and what it came to."""
    known = {row.movement for row in rows}
    moves = [fact for fact in facts if fact.kind == "move"]
    if any(fact.kind == "loads" for fact in facts) or not all(set(members(one.value)) & known for one in moves):
        return False
    told = [fact for fact in facts if fact.kind in ("bare", "rows")]
    one = len(told) == 1 and (told[0].kind == "bare" or (bool(moves) and bool(told[0].note.get("reps"))))
    for at, fact in enumerate(facts):
        nth = fact.value == "last" or isinstance(fact.value, int)
        if fact.kind == "fail" and not fact.note.get("rep") and at + 1 < len(facts):
            scoped = bool(moves) and facts[at + 1].kind == "scope" and isinstance(facts[at + 1].value, (int, str))
            if one and (nth or scoped):
                return True
    return False


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


def _side_of_every(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Archers: left only 2 per set" of planned pairs: what one side of every set came to."""
    known = {row.movement for row in rows if row.side}
    moves = [fact for fact in facts if fact.kind == "move"]
    if not all(set(members(one.value)) & known for one in moves) or any(f.kind in WORK - {"bare"} for f in facts):
        return False
    sides = [fact for fact in facts if fact.kind == "side"]
    told = [fact for fact in facts if fact.kind == "bare"]
    every = any((f.kind, f.value) == ("scope", "all") or plan_names(f) & {"every"} for f in facts)
    return every and len(sides) == len(told) == 1 and sides[0].value in ("left", "right") and bool(known)


def _figured(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Archers with straight 2s", "dips: 8s": the reps of every set of a planned lift."""
    known = {row.movement for row in rows if row.reps is not None}
    move: Fact | None = None
    for fact in facts:
        if fact.kind == "move":
            move = fact
        elif move is not None and (fact.note.get("figure") or fact.note.get("the")) and fact.kind in ("rows", "bare"):
            return bool(set(members(move.value)) & known)
        elif fact.kind in WORK or (fact.kind == "sep" and fact.note.get("mark") not in (":", ",", "and")):
            move = None
    return False


def _every_set(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Pull-ups 3 reps a set": the reps of all planned sets of a lift."""
    known = {row.movement for row in rows if row.reps is not None}
    for clause in clauses(facts):
        moves = [fact for fact in clause if fact.kind == "move"]
        told = [fact for fact in clause if fact.kind in WORK]
        if (
            len(moves) != 1
            or len(told) != 1
            or not told[0].note.get("reps")
            or not set(members(moves[0].value)) & known
        ):
            continue
        if any((fact.kind, fact.value) == ("scope", "all") and plan_names(fact) & {"every"} for fact in clause):
            return True
    return False


def _rated(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Pull-ups 7/7/8/8/9 rpe": an effort for each of the planned sets, and nothing of their reps."""
    if any(fact.kind in WORK for fact in facts):
        return False
    lists = [len(fact.value) for fact in facts if fact.kind == "efforts"]
    moves = [fact for fact in facts if fact.kind == "move"]
    return len(lists) == 1 and any(
        sum(row.movement in members(move.value) for row in rows) == lists[0] for move in moves
    )


def _each_rated(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Pull-ups rpe 8, dips rpe 7": an effort for each of several planned movements, and nothing else of them."""
    known = {row.movement for row in rows}
    spoken = [clause for clause in clauses(facts) if clause]
    told = [[fact for fact in clause if fact.kind != "word" and fact.value != "the"] for clause in spoken]
    rated = all([fact.kind for fact in clause] == ["move", "effort"] for clause in told)
    return rated and len(told) > 1 and all(set(members(clause[0].value)) & known for clause in told)


def _loads_on(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "First set 25, then 22.5": loads, set after set, each near a planned one."""
    if any(fact.kind in ("move", "rows", "count", "loads") for fact in facts):
        return False
    scoped = any(f.kind == "scope" and (f.value == "first" or isinstance(f.value, tuple)) for f in facts)
    told = [f for f in facts if f.kind in ("bare", "load")]
    then = any(is_then(f) for f in facts)
    near = all(f.value is not None and near_load(f.note.get("kg", f.value), rows) for f in told)
    reps = all(f.kind == "bare" and near_reps(f.value, rows) for f in told)
    return scoped and then and len(told) > 1 and near and not reps


def _each_exact(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "4x4, 3x6 but the dips without weight": the schemes of two planned movements, to the letter."""
    stated = [fact for fact in facts if fact.kind == "rows"]
    own = clauses(facts)
    named = next((n for n, clause in enumerate(own) if any(fact.kind == "move" for fact in clause)), len(own))
    if len(stated) < 2 or any(fact.kind in WORK for clause in own[named:] for fact in clause):
        return False
    meant = [tuple(exact_rows(rows, fact)) for fact in stated]
    return all(meant) and len(set(meant)) == len(meant)


def _side_alone(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Did only the right arm" of planned pairs."""
    own = next((one for one in clauses(facts) if any(plan_names(fact) & {"only"} for fact in one)), [])
    sided = [fact for fact in own if fact.kind == "side" and fact.value in ("left", "right")]
    worked = any(fact.kind in WORK | {"move", "fail", "effort"} for fact in facts)
    return len(sided) == 1 and not worked and any(row.side for row in rows)


def _missed_side(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Missed the second right" of planned pairs."""
    if any(fact.kind in WORK | {"move"} for fact in facts) or not any(row.side for row in rows):
        return False
    for clause in clauses(facts):
        sided = any(fact.kind == "side" and fact.value in ("left", "right") for fact in clause)
        if sided and any(fact.kind == "fail" and fact.value is not None for fact in clause):
            return True
    return False


def _by_outcome(facts: Sequence[Fact], _rows: Sequence[Row]) -> bool:
    """ "Missed the left, got the right": what `outcomes` has read."""
    return any(fact.note.get("outcome") for fact in facts)


def _main_lift_first(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Top set 3 @ 37.5, then one arm 1/1": sets with the main lift's load, and another movement of the plan after."""
    main = [rows[at] for at in main_rows(rows)]
    others = [row for row in rows if main and row.movement != main[0].movement]
    known = {row.movement for row in others}
    own = clauses(facts)
    for clause, after in pairwise(own):
        if any(f.kind == "move" for f in clause) or not any(f.kind in WORK for f in clause):
            continue
        loads = [f.value for f in clause if f.kind == "load" and f.value]
        mains = bool(loads) and all(near_load(kg, main) and not near_load(kg, others) for kg in loads)
        named = [f for f in after if f.kind == "move"]
        if mains and named and all(set(members(f.value)) & known for f in named):
            return True
    return False


def _top_and_back(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Top set 3, back-offs: 4, 4, 3": what the top set and the back-offs of the main lift came to."""
    known = {row.movement for row in rows}
    strange = any(fact.kind == "move" and not set(members(fact.value)) & known for fact in facts)
    if strange or any(fact.kind in ("load", "at", "loads") for fact in facts):
        return False
    targets = main_rows(rows)
    named = [fact.value for fact in facts if fact.kind == "scope"]
    if named == ["back"]:
        lists = [fact for fact in facts if fact.kind in WORK]
        own = len(pick(rows, targets, "back"))
        told = len(lists) == 1 and own > 0 and any(fact.kind == "scope" for fact in facts[: facts.index(lists[0])])
        if told and lists[0].kind == "rows" and len(lists[0].value) > 1:
            return len(lists[0].value) == own  # "back-offs 4 4 3"
        each = any(fact.kind == "side" and fact.note.get("plain") for fact in facts)
        return told and (each or bool(lists[0].note.get("figure")))  # "back-offs only 3 reps each", "back-offs 3s"
    return named == ["top", "back"] and all(pick(rows, targets, name) for name in named)


def _named_and_counted(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Pull-ups and two sets of dips, then home": planned lifts by name alone, and so many sets of another."""
    known = {row.movement for row in rows}
    if any(fact.kind in WORK - {"count"} or fact.kind in ("load", "at", "side", "instead") for fact in facts):
        return False
    own = [[fact for fact in clause if fact.kind in ("move", "count")] for clause in clauses(facts)]
    told = [sorted(fact.kind for fact in clause) for clause in own if clause]
    moves = [fact for clause in own for fact in clause if fact.kind == "move"]
    if not all(set(members(move.value)) & known for move in moves):
        return False
    return (
        ["count", "move"] in told and ["move"] in told and all(kinds in (["count", "move"], ["move"]) for kinds in told)
    )


def _all_reps(facts: Sequence[Fact], _rows: Sequence[Row]) -> bool:
    """ "All reps, curls left out": a clause of no more."""
    own = ([fact for fact in clause if fact.kind != "claim"] for clause in clauses(facts))
    return any(
        [fact.kind for fact in clause] == ["scope", "word"]
        and clause[0].value == "all"
        and clause[1].value in little("all_reps")
        for clause in own
    )


def _named_by_reps(facts: Sequence[Fact], _rows: Sequence[Row]) -> bool:
    """ "Triple at 32.5, fours at 22.5": what `sets_of_so_many` has read, of several, each with its load."""
    told = [fact for fact in facts if fact.kind in WORK]
    loads = [fact for fact in facts if fact.kind in ("load", "at")]
    named = all(fact.kind == "rows" and fact.note.get("the") for fact in told)
    return len(told) > 1 and named and bool(loads) and not any(fact.kind == "move" for fact in facts)


def _lift_denied(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Dips not done, wrists hurt": a planned lift, and no more than that it was not done."""
    known = {row.movement for row in rows}
    for clause in clauses(facts):
        told = [fact for fact in clause if fact.kind not in ("word", "claim") and plan_names(fact) != {"the"}]
        if len(told) == 2 and told[0].kind == "move" and plan_names(told[1]) == {"not"}:
            return bool(set(members(told[0].value)) & known)
    return False


def _side_held(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Right arm only 15s" of hangs planned by side."""
    if any(fact.kind == "move" for fact in facts) or not any(row.side and row.hold_s for row in rows):
        return False
    told = [fact for fact in facts if fact.kind in WORK]
    held = len(told) == 1 and told[0].kind == "rows" and len(told[0].value) == 1 and told[0].value[0].hold_s is not None
    only = any(plan_names(fact) & {"only"} for fact in facts)
    return held and only and any(fact.kind == "side" and fact.value in ("left", "right") for fact in facts)


def _each_held(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "All of them 25 s", "the 4 of 23 s" of planned holds: how long each was."""
    main = [rows[at] for at in main_rows(rows)]
    known = {row.movement for row in rows}
    moves = [fact for fact in facts if fact.kind == "move"]
    if not main or any(row.hold_s is None for row in main) or not all(set(members(f.value)) & known for f in moves):
        return False
    told = [fact for fact in facts if fact.kind in WORK]
    held = len(told) == 1 and told[0].kind == "rows" and all(one.hold_s is not None for one in told[0].value)
    whole = any(f.kind == "side" and f.value == "each" for f in facts) or any("every" in plan_names(f) for f in facts)
    whole = whole or any((f.kind, f.value) == ("scope", "all") for f in facts)
    return held and (whole or len(told[0].value) > 1)


def _fine_and_added(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "All ok, added rows: 2 sets of 10": a clause that finds it fine, and a lift that the plan has not on top."""
    known = {row.movement for row in rows}
    own = clauses(facts)
    fine = [f for f in own[0] if f.kind not in ("word", "claim")] if own else []
    if [plan_names(fact) for fact in fine] != [{"fine"}]:
        return False
    for clause in own[1:]:
        moves = [fact for fact in clause if fact.kind == "move"]
        added = any(plan_names(fact) & {"sure", "more"} for fact in clause)
        if added and len(moves) == 1 and not set(members(moves[0].value)) & known:
            return True
    return False


def _part_and_lists(facts: Sequence[Fact], rows: Sequence[Row]) -> bool:
    """ "Warm-up done, dips 3x5 with 20, rows 2x12": a part that was done, and planned lifts with their sets."""
    known = {row.movement for row in rows}
    moves = [fact for fact in facts if fact.kind == "move"]
    done = [names for clause in clauses(facts) if (names := _told_by_name(clause)) & set(PARTS)]
    told = any(names & {"done", "planned"} for names in done)
    return told and len(moves) > 1 and all(set(members(move.value)) & known for move in moves)


FORMS = (
    _fine_and_added,
    _part_and_lists,
    _each_held,
    _side_held,
    _lift_denied,
    _all_reps,
    _named_by_reps,
    _named_and_counted,
    _top_and_back,
    _main_lift_first,
    _by_outcome,
    _each_exact,
    _side_alone,
    _missed_side,
    _beside_parts,
    _of_one_side,
    _figured,
    _every_set,
    _side_of_every,
    _rated,
    _each_rated,
    _loads_on,
    _first_ones,
    _of_each_lift,
    _up_to,
    _some,
    _fewer,
    _unfinished,
)
