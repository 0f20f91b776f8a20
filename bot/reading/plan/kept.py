"""Planned sets that a clause says were done, or lets us know were."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.adding import over_plan
from bot.reading.plan.choosing import the_rows
from bot.reading.plan.ground import GLOBAL, PARTS, plan_names
from bot.reading.plan.leaving import (
    late_rest,
)
from bot.reading.plan.state import Said, Told
from bot.reading.plan.unclear import of_something_else

WENT_UP = {"by", "sure"}  # what "went up" is where it says by how much


def only_unplanned(told: Told, said: Said) -> bool:
    """ "Only did the warm-up" of a day that plans none: nothing of the plan, or what is asked."""
    if "only" not in said.names or not said.names & set(PARTS) or said.named or said.values or said.scoped:
        return False
    if any(clause.targets for clause in told.clauses):
        return False  # "only warm-up and pull-ups"
    told.ask("sets", said.clause)
    told.exclusive, told.rest = True, False
    return True


def kept_whole(told: Told, said: Said) -> None:
    """ "Done", "the rest as planned", "dips fine"."""
    names, named = said.names, said.named
    if told.exclusive and not named and "rest" not in names:
        return
    if said.clause.outside and not named and said.clause.facts[0] is said.clause.outside[0]:
        return  # "barbell rows done", of a plan that has none: those, not all
    if said.names == {"done"} and of_something_else(told, said):
        return  # "mobility done, pull-ups 4 4 4 3"
    if (
        "rest" in names
        and said.values
        and any(row.touched for row in told.rows)
        and not names & {"planned", "done", "same"}
    ):
        return  # "first set 22.5, rest 20"
    if ("rest" in names and names & {"planned", "done", "fine", "same"}) or (
        "rest" in names and not named and not names & {"only"} and not late_rest(told.message, said.clause)
    ):
        told.rest = True
    elif names & (GLOBAL - {"rest"}) or "extra_set" in names:
        if named:
            for at in said.clause.targets:
                told.keep.setdefault(at, True)
            whole = _all_but(said) or _including(told.message, said) or _all_fine_but(told.message, said)
            whole = whole or _whole_plan(told.message, said)
            told.everything = told.everything or whole
        elif told.sticky and told.sticky_at == said.clause.sentence and _its_sets(told.message, said):
            for at in told.sticky:
                told.keep.setdefault(at, True)  # "archers done, both rounds as planned": of them alone
        elif said.sided and not told.sticky and any(row.side is None for row in told.rows):
            sides = {f.value for f in said.clause.facts if f.kind == "side"}
            for at, row in enumerate(told.rows):
                if row.side in sides:
                    told.keep.setdefault(at, True)  # "left done, right not": of the one-armed work alone
        elif not said.sided or not told.sticky:
            surely = names & {"done", "planned", "same", "extra_set"}
            if surely == {"done"} and len(said.values) == 1 and _so_many(said.values[0]):
                surely = set()  # "4 sets done": those
            if surely == {"done"} and any(fact.kind == "rows" and len(fact.value) > 1 for fact in said.values):
                surely = set()  # "5 singles each arm done": those
            if names & {"done"} and the_rows(told.rows, said.values):
                surely = set()  # "did the 3s with 25": those alone
            fine = "fine" in names and (said.values or len(told.clauses) > 1) and not any(told.keep.values())
            told.everything = told.everything or bool(surely or fine)


def _its_sets(message: Message, said: Said) -> bool:
    """Whether a clause speaks of all sets, or rounds, and not of all that was planned."""
    return any(
        hit.table == "sets"
        for fact in said.scoped
        if fact.value == "all"
        for at in range(fact.start, fact.end)
        for hit in message.beginning("grammar")[at]
    )


def _all_but(said: Said) -> bool:
    """ "All as planned, only without weight on the pull-ups", in one clause: all, and a change of what it names."""
    facts = said.clause.facts
    move = next((at for at, fact in enumerate(facts) if fact.kind == "move"), 0)
    whole = next((at for at, fact in enumerate(facts) if plan_names(fact) & {"all_lifts"}), len(facts))
    sure = any(plan_names(fact) & {"planned", "done"} for fact in facts[:move])
    plus = facts[1] if sure and len(facts) > 1 and plan_names(facts[0]) & {"planned", "done"} else None
    if plus is not None and plus.kind == "load" and plus.note.get("how") == "plus":
        return True  # "as planned plus 2.5 kg on the dips"
    if len(facts) > 1 and plan_names(facts[0]) & {"done", "planned"} and facts[1].kind == "load" and move > 1:
        return facts[1].note.get("how") == "at"  # "done w 17.5 on pull-ups"
    return whole < move and sure and any(fact.kind == "load" for fact in facts[whole:move])


def _whole_plan(message: Message, said: Said) -> bool:
    """ "Plan hecho con 4 reps en la cuarta de fondos": the plan is named, and what departs from it."""
    fact = said.clause.facts[0]
    words = {token.text for token in message.tokens[fact.start : fact.end]}
    return bool(plan_names(fact) & {"done"}) and bool(words & little("plan_of")) and bool(said.values)


def _including(message: Message, said: Said) -> bool:
    """ "All done including the leg raises": all, and not these alone."""
    move = next((fact for fact in said.clause.facts if fact.kind == "move"), None)
    if move is None:
        return False
    words = [token.text for token in message.tokens[said.clause.facts[0].start : move.start]]
    return bool(little("all_of_it").intersection(words)) and bool(little("including").intersection(words[-2:]))


def _all_fine_but(message: Message, said: Said) -> bool:
    """ "All fine but only 3 lever holds": all, and fewer of what it names."""
    facts = said.clause.facts
    whole = bool(plan_names(facts[0]) & {"fine"}) and message.tokens[facts[0].start].text in little("all_of_it")
    return whole and len(facts) > 1 and message.tokens[facts[1].start].text in little("but")


def _so_many(fact: Fact) -> bool:
    """Whether a fact only counts the sets that were done."""
    return fact.kind == "count" and not fact.note.get("of_plan") and not fact.note.get("more")


def only_named(told: Told, said: Said) -> None:
    """A movement of the plan with no value beside it: it was done, or what follows is about it."""
    clause = said.clause
    if not said.named:
        return
    if not all(told.rows[at].part == "warm_up" for at in clause.targets):
        told.sticky, told.sticky_at = clause.targets, clause.sentence  # "warm-up, then 5x3": of the main lift
    if "stopped" in said.names:
        for at in range(max(clause.targets) + 1):
            told.keep.setdefault(at, True)
        told.exclusive = not told.everything
        return
    if said.names & {"only"}:
        if told.everything:
            told.ask("sets", clause)
        told.exclusive = not told.everything
        for at in clause.targets:
            told.keep.setdefault(at, True)
    elif not told.everything and len(told.clauses) > 1 and _no_more_than_named(told.message, said):
        for at in clause.targets:
            told.keep.setdefault(at, True)


def _no_more_than_named(message: Message, said: Said) -> bool:
    return not said.names - {*PARTS, "the"} - WENT_UP or _after_it(message, said)


def _after_it(message: Message, said: Said) -> bool:
    """ "Had to pick up my son after the pull-ups, so no dips": what it came after was done."""
    facts = [fact for fact in said.clause.facts if plan_names(fact) != {"the"}]
    last = facts[-1] if facts else None
    led = facts[-2] if len(facts) > 1 else None
    if last is None or led is None or last.kind != "move" or led.kind != "word":
        return False
    return not said.names - {"more", "the"} and message.tokens[led.start].text in little("after_set")


def kept_before(told: Told, said: Said, targets: list[int]) -> None:
    """What a value implies of the other sets: "stopped after 3" keeps the warm-up, "one less" keeps all."""
    values, names = said.values, said.names
    if any(f.kind == "count" for f in values) and not said.scoped and not said.named:
        if "stopped" in names or any(f.note.get("only") for f in values) or "only" in names:
            told.stop_after = max(targets)
        for at in targets:
            told.keep.setdefault(at, True)
        over_plan(told, said, targets)
        if not told.everything and not told.rest:
            told.warmed_up(targets)
    elif any(f.kind == "count" and f.note.get("only") for f in values) and said.named and not said.scoped:
        over_plan(told, said, targets)  # "5 sets of dips rather than 4"
    elif the_rows(told.rows, values):
        return  # "the fours with 2.5 more": of the others nothing is said
    elif any(f.kind in ("delta", "instead", "fail") for f in values) and not said.named and not told.sticky:
        told.everything = told.everything or not any(told.keep.values())
