"""Sides, scopes, ranges and pauses, links: what is said about sets."""

from __future__ import annotations

from dataclasses import replace

from bot.reading import text
from bot.reading.bounds import ends_sentence, is_strong
from bot.reading.facts import NO_PAUSE, Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.fold.state import FoldState
from bot.reading.little import little

# "Each" is said of sets here, never of sides.
BOTH_ARMS = frozenset(
    "pull_up chin_up neutral_grip_pull_up ring_pull_up dip ring_dip push_up muscle_up ring_row".split()
)
DUMBBELLS = frozenset({"biceps_curl", "hammer_curl"})  # done with one in each hand
NEAR_A_SIDE = frozenset({"rows", "bare", "load", "fail", "flag", "effort", "at", "move"})
PARTS = frozenset({"upper_half", "lower_half", "full"})  # of the range of motion
MOST_FIRST = 20
LEAST_RUNGS = 3  # fewer sets are no ladder
WORK_OR_SCOPE = frozenset({"rows", "bare", "count", "loads", "load", "scope", "rounds"})


def for_so_many(fold: FoldState, fact: Fact) -> bool:
    """ "… then 4 reps at 20 kg for 2 sets": the sets right before, so many of them."""
    before = fold.block.facts[fold.place(fact) - 1] if fold.place(fact) else None
    led = before is not None and text.fold(fold.span(before.start, before.end)).text in little("load_for")
    return led and fold.prev is not None and fold.prev.kind in ("load", "rows", "effort", "at")


def _only_last_told(fold: FoldState, fact: Fact) -> bool:
    """ "4 sets of pull-ups, the last only 3": how many the others had is not said."""
    if fold.rows or fold.based or fold.count is None or fold.count < 2:
        return False
    if fact.value not in ("last", ("last", 1), fold.count):
        return False
    told = [one for one in fold.block.facts if one.kind in ("rows", "bare", "loads", "efforts")]
    others = [one for one in fold.block.facts if "rest" in (one.value, *one.note.get("names", ()))]
    if len(told) == 2 and others and told[0].end <= others[0].start:
        told = told[:1]  # "the last 6, the others 8"
    value = told[0].value[0] if len(told) == 1 and told[0].kind == "rows" else None
    single = len(told) == 1 and (value is None or (len(told[0].value) == 1 and value.hold_s is None))
    return single and told[0].kind in ("rows", "bare") and told[0].start >= fact.end


def on_scope(fold: FoldState, fact: Fact) -> None:
    if fact.note.get("spent"):
        return
    group = fold.last_group()
    first = isinstance(fact.value, tuple) and fact.value[0] == "first" and len(group) == 1 and not fold.based
    if first and len(fold.rows) == 1 and for_so_many(fold, fact):
        fold.rows = [replace(group[0]) for _ in range(min(fact.value[1], MOST_FIRST))]
        return  # "5 reps at 15 kg for the first 3 sets"
    fold.scope, fold.scope_fact = fact.value, fact
    if _only_last_told(fold, fact):
        counted = next(one for one in fold.block.facts if one.kind == "count")
        fold.ask("reps", counted)
        fold.counted_ask = fold.asks[-1]
        fold.rows, fold.count = [Row(None) for _ in range(min(fold.count or 0, MOST_FIRST))], None
    if fact.value == "over":
        fold.over = fact
        return
    if (
        fact.value == "all"
        and fold.prev is not None
        and fold.prev.kind in ("effort", "at")
        and fold.last_effort is not None
    ):
        for row in fold.rows:
            row.rpe = fold.last_effort
        fold.efforts_open.clear()
        fold.effort_inside = True
        return
    # "rpe 8 on the last", "@7 first": the effort came before its scope
    if fold.prev is not None and fold.prev.kind == "effort" and fact.value != "all":
        rows = fold.scoped()
        value = fold.prev.value
        if rows and fold.effort_rows and fact.note.get("text", "").startswith(tuple(little("before_scope"))):
            for row in fold.effort_rows:
                row.rpe = None
            for row in rows:
                row.rpe = value
            fold.efforts_open.clear()
            fold.effort_inside = True
            fold.scope = None


def on_side(fold: FoldState, fact: Fact) -> None:
    name = fact.value
    timed = fold.next is not None and fold.next.kind == "rows" and bool(fold.next.note.get("unit"))
    follows = fold.next is not None and (
        fold.next.kind == "bare" or (fold.next.kind == "rows" and len(fold.next.value) == 1)
    )
    if name == "each" and fact.note.get("plain") and follows and _times_told(fold):
        # "4x Klimmzüge mit 15 kg, jeweils 5"
        if fold.rows[0].load_kg is not None:
            fold.load, fold.load_said = fold.rows[0].load_kg, True
        fold.count, fold.rows, fold.bares = fold.rows[0].reps, [], []
        return
    if name == "each" and fact.note.get("plain") and timed and not fold.block.hold:
        return  # "5 negatives, 8 seconds each"
    if name == "each":
        told = fold.prev is not None and fold.prev.kind == "load" and fold.prev.end == fact.start
        if told and fold.block.movement in DUMBBELLS and fold.rows:
            return  # "curls 3x12 with 10 kg each arm": what each hand holds
        both = fold.block.movement in BOTH_ARMS or bool(fold.block.rounds)  # "2 rounds: … in each"
        if fact.note.get("plain") and not fold.block.one_sided and (len(fold.rows) != 1 or fold.count or both):
            # "three sets, 5 each", "2 in the tank each": each set
            if fold.next_is("effort"):
                fold.scope = "all"
            elif fold.prev is not None and fold.prev.kind == "effort" and fold.last_effort is not None:
                for row in fold.rows:
                    row.rpe = fold.last_effort
                fold.effort_inside = True
            return
        if (
            fold.last_group()
            and not any(row.side for row in fold.last_group())
            and not (fold.prev and is_strong(fold.prev) and fold.next_is("rows"))
        ):
            fold.each()
        elif not fold.rows:
            fold.side = "each"
        return
    if name == "unclear":
        if {"left", "right"} <= {row.side for row in fold.rows} and not _work_behind(fold, fact):
            return  # "3x1 left, 3x2 right. Left is just the weak side"
        fold.ask("side", fact)
        fold.side = None
        return
    if name == "other":
        opposite = {"left": "right", "right": "left"}.get(fold.last_side or "")
        if opposite is None:
            return
        both = {"left", "right"} <= {row.side for row in fold.rows}
        # "left 2, right one and the other missed": the other set of that side
        name = fold.last_side if both and fold.next_is("fail") and fold.last_side else opposite
    open_rows = [row for row in fold.last_group() if row.side is None]
    near = fold.prev is not None and fold.prev.kind in NEAR_A_SIDE
    if open_rows and near and fold.side not in ("left", "right"):
        group = fold.last_group()
        if not fold.based:
            for row in group:
                if row.side is None:
                    row.side = name
                    row.load_open = False
            fold.last_side = name
            return
    if _closes_sets(fold, open_rows):
        for row in fold.rows:
            row.side = name
        fold.last_side = name
        return
    fold.side = name
    fold.last_side = name


def _closes_sets(fold: FoldState, open_rows: list[Row]) -> bool:
    """ "A double and three singles of one-arm pull-ups, right arm.": the side of all of them."""
    ends = fold.next is None or ends_sentence(fold.next)
    told = fold.block.one_sided and not fold.based and fold.side is None and not fold.after_sentence
    return bool(told and ends and open_rows and all(row.side is None for row in fold.rows))


def _times_told(fold: FoldState) -> bool:
    """Whether the only number so far is "4x", said before the movement's name."""
    if len(fold.rows) != 1 or len(fold.bares) != 1 or not fold.bares[0][0].note.get("before_move"):
        return False
    end = fold.bares[0][0].end
    return any(
        one.kind == "word" and one.start == end and fold.span(one.start, one.end).lower() in little("times")
        for one in fold.block.facts
    )


def on_plan(fold: FoldState, fact: Fact) -> None:
    """ "left 2, right the same"; "and one more set of 2"."""
    if "part_main" in fact.note.get("names", ()) and not fold.based:
        fold.work_from = len(fold.rows)
    if "extra_set" in fact.note.get("names", ()) or fact.value == "extra_set":
        fold.one_more = bool(fold.rows) and not fold.based
    if (
        "rest" in fact.note.get("names", ())
        and not fold.based
        and (fold.unsaid() or any(row.touched for row in fold.rows))
    ):
        fold.scope = "rest" if fold.next_is("load", "bare") else fold.scope  # "first set 20 kg, rest 17.5"
    if _same_with_another_load(fold, fact):
        return
    same = "same" in fact.note.get("names", ()) and fold.side in ("left", "right") and not fold.based
    if not same or not fold.rows or fold.next_is("rows", "bare", "load"):
        return
    other = [row for row in fold.rows if row.side not in (None, fold.side)]
    fold.rows += [replace(row, side=fold.side) for row in other]
    fold.side = None


def _same_with_another_load(fold: FoldState, fact: Fact) -> bool:
    """ "3x5 (20 kg), then same with 15 kg": the sets before once more, with the load that follows."""
    parted = fold.prev is not None and fold.prev.kind == "sep"
    load, group = fold.next, fold.last_group()
    told = load is not None and load.kind == "load" and load.value and load.note.get("how") != "plus"
    if not (parted and told and group) or load is None or fold.based or fold.scope or fold.side:
        return False
    again = "same" in fact.note.get("names", ()) and all(row.load_kg not in (None, load.value) for row in group)
    if not again or fold.more_sets_follow(load):
        return False
    fold.group += 1
    fold.rows += [replace(row, load_kg=load.value, rpe=None, group=fold.group) for row in group]
    load.note["spent"] = True
    return True


def on_flag(fold: FoldState, fact: Fact) -> None:
    other = {"upper_half": "lower_half", "lower_half": "upper_half"}.get(fact.value)
    if other in fold.flags and fold.rows and fold.after_sentence and not fold.more_sets_follow(fact):
        return  # "Top half only, 3x4. The lower half I leave to others."
    if fold.side in ("left", "right") and fold.prev is not None and "only" in fold.prev.note.get("names", ()):
        fold.side_flags.setdefault(fold.side, set()).add(fact.value)  # "left only negatives, 2x1, right 2x1"
        return
    if fold.rows and not fold.based and fold.scope not in (None, "all") and (rows := fold.scoped()):
        fold.scope_flags.setdefault(str(fold.scope), (rows, set()))[1].add(fact.value)  # "the last one with a pause"
        return
    if fact.value == NO_PAUSE and fold.rows:
        fold.scope_flags.setdefault(NO_PAUSE, (fold.last_group(), set()))[1].add(NO_PAUSE)  # "then 2x8, no pauses"
        return
    closes = fold.prev is not None and fold.prev.kind in ("rows", "bare", "side", "load") and _flag_closes(fold, fact)
    named = fold.prev is not None and fold.prev.kind == "move" and len(fold.rows) == len(fold.bares) == 1
    if (named and fold.bares[0][0].note.get("before_move")) or _of_the_movement(fold, fact):
        fold.flags.add(fact.value)  # "3 one-arm negatives left", "5x2 one-arm negatives right, left 3x2"
    elif fold.rows and not fold.based and closes and _others_follow(fold, fact):
        # "3x1 lower half, 2x1 top half", "3x1 negatives, 2x1"
        fold.apply(fold.last_group(), {fact.value}, paused=False)
    elif fold.rows and not fold.based and not _behind_all(fold):
        fold.late.add(fact.value)
    else:
        fold.flags.add(fact.value)
    if fact.value == "half":
        fold.half = fact


def _of_the_movement(fold: FoldState, fact: Fact) -> bool:
    """Whether a mark stands right behind a movement whose sets are told before it."""
    led = fold.prev is not None and fold.prev.kind == "move" and fold.prev.end == fact.start
    follow = fold.next
    return led and len(fold.rows) > 1 and follow is not None and follow.kind == "side"


def _flag_closes(fold: FoldState, fact: Fact) -> bool:
    """Whether nothing but a side stands between a mark and the end of its clause."""
    behind = fold.block.facts[fold.place(fact) + 1 :][:2]
    return [one.kind for one in behind][:1] == ["sep"] or [one.kind for one in behind] == ["side", "sep"]


def _others_follow(fold: FoldState, fact: Fact) -> bool:
    """Whether further sets are told behind a mark that closes its own, or another part of the way."""
    further = fold.block.facts[fold.place(fact) + 1 :]
    if fact.value in PARTS and any(one.kind == "flag" and one.value in PARTS - {fact.value} for one in further):
        return True
    told = next((one for one in further if one.kind in ("rows", "flag", "scope", "plan", "mend")), None)
    return fact.value in PARTS | {"eccentric"} and told is not None and told.kind == "rows"


def _behind_all(fold: FoldState) -> bool:
    """ "L 3 R 3 / L 2 R 3 hand on biceps, top half": behind the movement, of all the sets told one by one."""
    one_by_one = len(fold.rows) > 1 and len({row.group for row in fold.rows}) == len(fold.rows)
    return fold.prev is not None and fold.prev.kind == "move" and one_by_one


def on_last_rep(fold: FoldState, _fact: Fact) -> None:
    fold.last_rep = True


def on_link(fold: FoldState, fact: Fact) -> None:
    if fold.link == "drop" and fact.value == "straight":
        return  # "drop set without a rest: 60 x 8, 45 x 8"
    fold.link = fact.value
    if fact.note.get("further"):
        fold.scope = None  # "last set straight into a drop: 6 at +10": a further set, the last stays as told
    if fact.value == "straight" and len(fold.rows) < 2 and not fold.more_sets_follow(fact):
        return
    if fact.value == "straight" and fold.rows and not fold.more_sets_follow(fact):
        fold.rows[-1].linked = True
        fold.link = None


def on_scheme(fold: FoldState, fact: Fact) -> None:
    at = fold.place(fact)
    if fact.value == "total" and at and fold.block.facts[at - 1].kind == "claim":
        return  # "65 min in total" is no total of reps
    if fact.value == "total" and fold.next_is("repeat"):
        return  # "5 pull-ups, 8 times in all"
    fold.schemes.add(fact.value)
    if fact.value == "attempt":
        fold.tries = 1
    if fact.value == "down":
        _down_again(fold)
        return
    if (
        fact.value == "got"
        and fold.rows
        and fold.rows[-1].failed
        and fold.load_said
        and fold.load is not None
        and fold.rows[-1].load_kg not in (None, fold.load)
        and not fold.more_follows(fact)
    ):
        # "+45 failed, then +42.5 and got it"
        fold.add([Entry(1)], fact)
        fold.second_load = None
    if fact.value == "total" and fold.prev is not None and fold.prev.kind == "load" and fold.prev.value:
        for row in fold.last_group():
            row.load_kg = fold.prev.value  # "bar plus 60, so 80 kg in all"
    told = fold.prev is not None and fold.prev.kind == "rows" and bool(fold.prev.note.get("one"))
    if fact.value == "total" and told and len(fold.last_group()) == 1 and fold.prev is not None:
        fold.bares.append((fold.prev, fold.rows[-1]))
    if fact.value == "total" and fold.bares:
        fold.total = (float(fold.bares[-1][1].reps or 0), fold.bares[-1][0])


def _down_again(fold: FoldState) -> None:
    """ "1, 2, 3, 4, 5 and back down (to 1)": the ladder the other way, the top once."""
    if fold.next is not None and fold.next.kind == "rows":
        return  # told one by one
    rungs = fold.last_group()
    rising = [row.reps for row in rungs if row.reps]
    if len(rising) < LEAST_RUNGS or len(rising) != len(rungs) or rising != sorted(set(rising)):
        return
    fold.rows += [replace(row) for row in reversed(rungs[:-1])]
    fold.one_way = rising[0]


def on_mend(fold: FoldState, fact: Fact) -> None:
    if fact.value == "swap":
        for row in fold.rows:
            row.side = {"left": "right", "right": "left"}.get(row.side or "", row.side)
        return
    fold.mend = True


def _work_behind(fold: FoldState, fact: Fact) -> bool:
    """Whether a side named after a fact may have sets of its own."""
    return any(one.kind in WORK_OR_SCOPE for one in fold.block.facts[fold.place(fact) + 1 :])


def on_sep(fold: FoldState, fact: Fact) -> None:
    if fact.value == 3:
        fold.after_sentence = True
        if fold.side in ("left", "right") and not fold.rows and fold.moved and fold.block.one_sided:
            fold.side_before = fold.side
        fold.side = None
        if fold.scope is not None and not (fold.scope_fact and fold.scope_fact.note.get("numbered")):
            fold.scope = None
    at = fold.place(fact)
    said = [one.kind for one in fold.block.facts[max(0, at - 2) : at]]
    if fold.scope == "all" and said == ["scope", "word"] and not fold.based:
        fold.scope = None  # "all clean, rpe 8": all were clean
    behind = {one.kind for one in fold.block.facts[at + 1 :]}
    # "pausing at the top and again halfway" goes on with the same sets
    if fact.value == 2 and fold.late and fold.rows and "flag" in behind and behind & WORK_OR_SCOPE:
        # "3x3 with a pause at the top, then 2x3 pausing in the middle"
        flags = fold.flags | fold.late
        fold.apply(fold.rows[fold.frozen :], flags, "pause_pause" in flags)
        fold.frozen, fold.late = len(fold.rows), set()
    if fact.value >= 2:
        _close_failure(fold)  # "to failure: 48, then 30 and 22"
    if fact.value >= 2:
        fold.scope = None if fold.scope not in ("all",) else fold.scope
        fold.side = fold.side if fact.note.get("nl") is None else None


def on_weighted(fold: FoldState, _fact: Fact) -> None:
    if fold.rows and not fold.load:
        fold.load, fold.load_said = None, False  # "bw pull-ups 10, 10, 9; weighted: 5, 5, 4 with 15"
    _close_failure(fold)  # "to failure 12, 10, 8 and weighted 2x5"


def _close_failure(fold: FoldState) -> None:
    """The sets so far were those that went to failure."""
    if fold.failure is None or not fold.rows:
        return
    for row in fold.rows:
        row.rpe = row.rpe if row.rpe is not None else fold.failure
    fold.failure = None


def on_move(fold: FoldState, _fact: Fact) -> None:
    fold.moved = True


def on_ask(fold: FoldState, fact: Fact) -> None:
    fold.ask(fact.value, fact)
    if fact.value == "load_kg":
        if fold.rows:
            for row in fold.last_group():
                row.load_open = True
        else:
            fold.asked_load = fact
