"""What the clauses of a message keep, leave out, change and add to the plan."""

from __future__ import annotations

from bot.reading.plan.adding import of_added, sets_more_or_fewer
from bot.reading.plan.altered import alter
from bot.reading.plan.back_offs_counted import back_offs_counted
from bot.reading.plan.banded import banded
from bot.reading.plan.besides import beside_plan
from bot.reading.plan.choosing import main_rows, of_pair, per_side, pick
from bot.reading.plan.clauses import Clause
from bot.reading.plan.each_lift import each_lift
from bot.reading.plan.fewer import so_many_each
from bot.reading.plan.ground import plan_names
from bot.reading.plan.in_mind import (
    keep_one_set,
    missed_there,
    of_another,
    of_excepted,
    of_the_same_set,
    other_side_of_set,
    point,
    set_in_mind,
    stopped_there,
    there_too,
    those_after,
)
from bot.reading.plan.kept import kept_before, kept_whole, only_named, only_unplanned
from bot.reading.plan.leaving import (
    against_the_rest,
    all_of_side,
    first_only,
    left_out,
    load_left,
    no_time_for_it,
    one_side_only,
    put_off,
)
from bot.reading.plan.meant import meant
from bot.reading.plan.other_loads import lighter, other_loads, other_weight, told_next
from bot.reading.plan.paused import paused
from bot.reading.plan.ranged import ranged
from bot.reading.plan.state import Said, Told
from bot.reading.plan.swapping import other_thing, other_work
from bot.reading.plan.unclear import unclear
from bot.reading.plan.up_to import kept_up_to, told_behind
from bot.reading.plan.up_to_lift import kept_up_to_lift
from bot.reading.reading import Ask


def _ends_all(told: Told, said: Said) -> bool:
    """Whether "that was it" stands by or behind words that tell of the whole plan, or of the rest of it."""
    if said.names & {"rest", "planned"} or (said.names & {"done"} and not said.named):
        return True
    alone = not said.named and not said.values and not said.scoped
    return alone and (told.everything or told.rest)


def _of_each(said: Said) -> bool:
    """Whether a set of every lift is spoken of: "in the last set of both"."""
    facts = said.clause.facts
    return any(
        scope.kind == "scope"
        and scope.value != "all"
        and of.kind == "word"
        and ("all_lifts" in plan_names(whole) or (whole.kind == "side" and bool(whole.note.get("plain"))))
        for scope, of, whole in zip(facts, facts[1:], facts[2:], strict=False)
    )


def _skips(told: Told, clause: Clause) -> bool:
    """ "Skipped the rest": whether a word for leaving out stands there."""
    hits = (hit for fact in clause.facts for hit in told.message.beginning("grammar")[fact.start])
    return any((hit.table, hit.name) == ("plan", "skipped") for hit in hits)


def take(told: Told, clause: Clause) -> None:
    """One more clause."""
    said = Said.of(clause)
    if "no_rest" in said.names and not _skips(told, clause) and _ends_all(told, said):
        said.names.discard("no_rest")  # "did the plan, last two sets were doubles, and that was it"
        if not said.names:
            return
    if "no_rest" in said.names:
        told.exclusive, told.rest, told.everything = True, False, False
        if not said.named and not said.values and not said.scoped:
            return
    if said.named and not said.values and not said.scoped and put_off(told.message, clause):
        for at in clause.targets:
            told.keep[at] = False  # "did the main work. Accessories tomorrow"
        return
    if kept_up_to_lift(told, said):
        return
    if only_unplanned(told, said) or back_offs_counted(told, said) or beside_plan(told, said) or unclear(told, said):
        return
    if so_many_each(told, said) or (said.values and not said.named and told.unclear_in == clause.sentence):
        return
    if not said.values and not said.sided and other_weight(told, said):
        told.everything = told.everything or "except" in said.names  # "everything, but more weight on the dips"
        lighter(told, clause)
        return
    if banded(told, said) or load_left(told, said):
        return
    if (
        missed_there(told, said)
        or stopped_there(told, said)
        or no_time_for_it(told, said)
        or against_the_rest(told, said)
    ):
        return
    if paused(told, said) or ranged(told, said):
        kept_whole(told, said)
        return
    point(told, said)
    if kept_up_to(told, said):
        return
    there_too(told, said)
    of_the_same_set(told, said)
    other_side_of_set(told, said)
    keep_one_set(told, said)
    if all_of_side(told, said):
        return
    if of_added(told, said) or sets_more_or_fewer(told, said) or left_out(told, said) or first_only(told, said):
        return
    told.leaving = said.named and told.leaving and not said.values
    if said.scoped and not said.values and said.scoped[-1].value != "all":
        told.scope_at = said.scoped[-1], clause.sentence
    kept_whole(told, said)
    if other_thing(told, said) or other_work(told, said):
        return
    if not said.values:
        if said.sided and one_side_only(told, said):
            return
        heavier = said.names & {"less", "more"} and all(fact.kind in ("plan", "move", "word") for fact in clause.facts)
        if heavier and told_next(told, clause):
            return
        if (
            said.names & {"less", "more"}
            and all(fact.kind in ("plan", "move") for fact in clause.facts)
            and not clause.outside
        ):
            # "same but heavier": by how much is not said
            told.ask("load_kg", clause)
            return
        if other_loads(told, said):
            lighter(told, clause)  # "did everything a bit lighter", "done but went lighter"
            return
        only_named(told, said)
        return
    if all(fact.kind == "assist" and fact.value is None for fact in said.values) and told_next(told, clause):
        return  # "needed more help today, 20 kg on the pulley"
    if all(fact.kind == "assist" and fact.value is None for fact in said.values):
        told.ask("assist_kg", clause)  # "the last one with help": of how many kilograms is not said
        return
    set_in_mind(told, said)
    efforts_only = all(fact.kind in ("effort", "effort_range", "at") for fact in said.values)
    rest = "rest" in said.names or any(fact.kind == "scope" and fact.value == "rest" for fact in clause.facts)
    pointed = told.pointed is not None and told.pointed[0] == clause.sentence and not rest
    if efforts_only and not said.scoped and not said.named and told.pointed and pointed:
        for fact in said.values:
            for at in told.pointed[2] if fact.kind == "effort" and not fact.note.get("session") else ():
                told.rows[at].rpe = fact.value  # "last set only 2, rpe 9"
        return
    in_mind = bool(told.sticky) and told.sticky_at == clause.sentence
    if efforts_only and not said.scoped and not said.named and told.several and not in_mind and not rest:
        for fact in said.values:
            if fact.kind == "effort":
                told.work.session_rpe = fact.value
        return
    targets = clause.targets or of_excepted(told, said) or those_after(told, said)
    targets = targets or of_another(told, said)
    of_all = "all_lifts" in said.names and any(fact.kind == "delta" for fact in said.values)
    targets = targets or ([] if of_all else told.sticky)  # "…, 2.5 kg less on each"
    if not clause.targets and rest:
        # "pull-ups with 25 the first, the rest with 22.5"
        targets = [at for at in targets if not told.rows[at].touched] or targets
    if said.named:
        told.sticky, told.sticky_at = clause.targets, clause.sentence
    if not targets and (said.sided or of_pair(told.rows, said.values) or per_side(told.rows, clause.facts)):
        targets = _by_side(told, said)
    targets = targets or meant(told, said, efforts_only)
    if rest and not said.named:
        those = _spoken_of(told, said, targets)
        targets = [at for at in targets if at not in those] or targets
        if those and efforts_only and len(said.values) == 1 and said.values[0].kind == "effort":
            for at in targets:  # "first two rpe 7, rest rpe 8"
                told.keep.setdefault(at, True)
                told.rows[at].rpe = said.values[0].value
            return
    if targets and not said.named and not set(targets) & set(main_rows(told.rows)) and not told.sticky:
        told.sticky, told.sticky_at = targets, clause.sentence  # "the first single was clean, the second not"
    unloaded = [fact for one in told.clauses for fact in one.facts if fact.kind == "load" and fact.note.get("none")]
    if not targets and len(unloaded) > 1 and all(fact in unloaded for fact in said.values):
        return  # "all without weight, no belt"
    if not targets:  # "without weight", of a plan that has none
        told.asks.append(Ask("sets", told.message.span(clause.facts[0].start, clause.facts[-1].end)))
        return
    if said.sided and _none_by_side(told, targets):
        told.ask("movement", clause)  # "missed the single on the left", where only other work has sides
        return
    if said.scoped and said.scoped[-1].value != "all":
        told.pointed = (clause.sentence, targets, pick(told.rows, targets, said.scoped[-1].value))
    elif rest and not said.named:
        told.pointed = (said.clause.sentence, targets, targets)
    missed = next((f.value for f in said.values if f.kind == "fail" and isinstance(f.value, int)), None)
    if missed is not None and not said.scoped and not any(f.note.get("rep") for f in said.values):
        told.pointed = (clause.sentence, targets, pick(told.rows, targets, missed))
    again = any(fact.kind == "link" and fact.value == "drop" for fact in clause.facts) or "turned_to" in said.names
    if again and len(targets) == told.step(targets[0]) and told.told_of.issuperset(targets) and not said.named:
        told.ask("sets", clause)  # "1 at 37.5, dropped to 32.5 and got 3": one more set, or that one
        told.unclear_in = clause.sentence
        return
    told.told_of.update(targets if any(fact.kind in ("rows", "bare", "load") for fact in said.values) else ())
    kept_before(told, said, targets)
    told_behind(told, said, targets)
    lifts = each_lift(told, said) if _of_each(said) else []
    for own in lifts:  # "missed one rep in the last set of both"
        for at in own:
            told.keep.setdefault(at, True)
        alter(told, clause, own)
    if lifts:
        return
    for at in targets:
        told.keep.setdefault(at, True)
    if said.named and any(f.kind == "count" and f.note.get("stopped") for f in said.values):
        for at in range(min(targets)):
            told.keep.setdefault(at, True)  # "out after the third set of pull-ups": what comes before them was done
    alter(told, clause, targets)


def _spoken_of(told: Told, said: Said, targets: list[int]) -> list[int]:
    """ "First two were hard so I dropped to 20 for the others": the two, done as well, beside whom are the others."""
    those: list[int] = []
    if told.scope_at is not None and told.scope_at[1] == said.clause.sentence and targets:
        those = pick(told.rows, targets, told.scope_at[0].value)
    elif told.pointed is not None and told.pointed[0] == said.clause.sentence:
        those = told.pointed[2]
    for at in those:
        told.keep.setdefault(at, True)
    return those


def _by_side(told: Told, said: Said) -> list[int]:
    """The sets by side that a value is told of: the main lift's if they have sides, and are held or counted alike."""
    sided = [at for at, row in enumerate(told.rows) if row.side is not None]
    main = [at for at in main_rows(told.rows) if told.rows[at].side is not None]
    held = any(fact.kind == "rows" and any(one.hold_s is not None for one in fact.value) for fact in said.values)
    counted = any(fact.kind in ("rows", "bare") for fact in said.values)
    if not counted:
        return sided
    if main and held == (told.rows[main[0]].hold_s is not None):
        return main
    return [at for at in sided if held == (told.rows[at].hold_s is not None)] or sided


def _none_by_side(told: Told, targets: list[int]) -> bool:
    """Whether the sets meant have no sides, while others of the plan do."""
    sided = [at for at, row in enumerate(told.rows) if row.side is not None]
    return bool(sided) and not set(sided) & set(targets)
