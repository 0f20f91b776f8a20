"""Sets more and sets fewer than planned."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.plan.change import change
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.clauses import Clause
from bot.reading.plan.each_lift import each_lift
from bot.reading.plan.ground import plan_names
from bot.reading.plan.state import Said, Told
from bot.reading.reading import Ask

MOST_EXTRA = 5  # more sets beyond the plan are asked


def of_added(told: Told, said: Said) -> bool:
    """ "One more set of dips, 6 reps": the reps are those of that set; whether that is what is said."""
    if _so_many_now(told, said) or _listed_on_top(told, said):
        return True
    if told.added_in is None or told.added_in[1] != said.clause.sentence:
        return False
    of_it = {told.rows[at].movement for at in said.clause.targets} <= {told.rows[told.added_in[0]].movement}
    if not said.values or said.scoped or not of_it or said.names - {"the"}:
        return False
    change_added(told, said.clause)
    return True


def _listed_on_top(told: Told, said: Said) -> bool:
    """ "All done and two more sets of 5": those after the planned ones, with their load."""
    rows = [fact for fact in said.values if fact.kind == "rows"]
    whole = told.everything or bool(said.names & {"done", "planned"})
    if len(rows) != 1 or len(said.values) != 1 or not rows[0].note.get("more") or not whole or said.scoped:
        return False
    targets = said.clause.targets or main_rows(told.rows)
    if said.clause.outside or any(told.rows[at].side for at in targets) or len(rows[0].value) > MOST_EXTRA:
        return False
    like = told.rows[targets[-1]]
    told.added[targets[-1]] = [
        replace(like, reps=one.reps, hold_s=one.hold_s, load_kg=like.load_kg if one.load_kg is None else one.load_kg)
        for one in rows[0].value
    ]
    told.everything = True
    return True


def _so_many_now(told: Told, said: Said) -> bool:
    """ "Added a set, so 5 instead of 4": what the sets come to with those that were added before."""
    if [fact.kind for fact in said.values] != ["instead"] or said.scoped or said.named:
        return False
    new, old, unit = said.values[0].value
    for at, more in told.added.items():
        own = [row for row in told.rows if (row.movement, row.part) == (told.rows[at].movement, told.rows[at].part)]
        if unit is None and old * told.step(at) == len(own) and (new - old) * told.step(at) == len(more):
            return True
    return False


def change_added(told: Told, clause: Clause) -> None:
    assert told.added_in is not None
    at = told.added_in[0]
    if _sums_up(told, clause, at):
        return
    beside = [replace(told.added[at][0])]
    changed = change(told.message, beside, [0], clause, told.asks)
    if changed is None or len(changed) != 1:
        told.ask("sets", clause)
        return
    told.added[at] = [replace(changed[0], movement=told.rows[at].movement, part=told.rows[at].part)]


def _sums_up(told: Told, clause: Clause, at: int) -> bool:
    """ "One more set than planned, so 5x6 with 10": what has been told comes to that."""
    stated = [fact for fact in clause.facts if fact.kind == "rows"]
    loads = {fact.value for fact in clause.facts if fact.kind == "load"}
    own = [row for row in told.rows if row.movement == told.rows[at].movement and row.part == told.rows[at].part]
    own = [*own, *told.added[at]]
    if len(stated) != 1 or len(stated[0].value) != len(own) or any(row.side for row in own):
        return False
    same = all(
        entry.reps == row.reps and entry.load_kg is None for entry, row in zip(stated[0].value, own, strict=True)
    )
    return same and loads <= {row.load_kg for row in own} and len(loads) < 2


def sets_more_or_fewer(told: Told, said: Said) -> bool:
    """ "One set of dips less", "ein Satz Chin-ups mehr": so many of the last; whether that is what is said."""
    names, rows = said.names, told.rows
    counted = next((f for f in said.values if f.kind == "count" and not f.note.get("of_plan")), None)
    if counted is not None and counted.note.get("was"):
        return False  # "all done, but two sets of dips instead of three"
    if counted is not None and "minus" in names:
        names.add("less")  # "a las flexiones le quité una serie"
    if counted is not None and not counted.note.get("stopped") and _missing(told, said):
        names.add("less")  # "all done, two sets of dips still missing"
    elif counted is not None and (counted.note.get("more") or ("only" not in names and _on_top(told, said, counted))):
        return more_sets(told, said, counted)
    if "only" in names and "except" in names:
        return False  # "everything but only 2 sets of push-ups"
    whole = all("all_lifts" in plan_names(fact) for fact in said.scoped)  # "one extra set of everything"
    each = each_lift(told, said) if "extra_set" in names and not said.values and whole else []
    if each:
        for own in each:  # "everything done, one more set of each"
            told.added[own[-1]] = [replace(rows[at]) for at in own[-told.step(own[-1]) :]]
            for at in own:
                told.keep.setdefault(at, True)
        told.everything = True
        return True
    count = counted.value if counted is not None else 1 if _one_extra(told, said) else None
    lifts = each_lift(told, said)
    some = [fact for fact in said.scoped if not (lifts and fact.value == "all")]  # "one set less of every lift"
    if count is None or some or len(said.values) > 1 or not names & {"less", "more", "except"}:
        return False
    if "less" not in names and "more" not in names and not said.named:
        if counted is None:
            return False
        if told.several and not lifts:
            told.everything = True
            told.ask("sets", said.clause)  # "all but one set": of which lift?
            return True
    each = lifts
    targets = [at for own in each for at in own] or said.clause.targets or main_rows(rows)
    if "except" in names and "less" not in names:
        told.everything = True  # "all but one set of dips"
    if names & {"less", "except"}:
        for own in each or [targets]:
            for at in so_many_last(told, said, own, count):
                told.keep[at] = False
    elif count == 1:
        for own in each or [targets]:  # "one more set of each"
            told.added[own[-1]] = [replace(rows[at]) for at in own[-told.step(own[-1]) :]]
    else:
        return False
    for at in targets:
        told.keep.setdefault(at, True)
    return True


def so_many_last(told: Told, said: Said, own: list[int], many: int) -> list[int]:
    """The last so many sets of a lift; of one side, where the clause names one: "one set less on the right"."""
    sides = {fact.value for fact in said.clause.facts if fact.kind == "side" and fact.value in ("left", "right")}
    alone = [at for at in own if told.rows[at].side in sides] if len(sides) == 1 else []
    return alone[-many:] if alone else own[-many * told.step(own[-1]) :]


def _missing(told: Told, said: Said) -> bool:
    """Whether a clause says that the sets it counts were not done."""
    facts = said.clause.facts
    if any(fact.note.get("stopped") for fact in said.values):
        return False  # "cut short after two sets"
    return any(token.text in little("missing") for token in told.message.tokens[facts[0].start : facts[-1].end + 1])


def _on_top(told: Told, said: Said, counted: Fact) -> bool:
    """ "All done and another two sets of dips", "all done + 1 set of dips": on top of a plan told as done before."""
    before = told.message.tokens[max(0, counted.start - 1) : counted.start + 1]
    if said.clause.outside or not any(token.text in little("on_top") for token in before):
        return False
    led = said.clause.facts[0]
    told.everything = told.everything or (led.end <= counted.start and bool(plan_names(led) & {"done", "planned"}))
    return told.everything


def _one_extra(told: Told, said: Said) -> bool:
    """ "All done, an extra hang each side": one more set of a movement, after all that was planned."""
    facts = said.clause.facts
    more = next((at for at, fact in enumerate(facts) if plan_names(fact) & {"more"}), None)
    if more is None or not told.everything or said.values or not said.named:
        return False
    led = {told.message.tokens[at].text for at in range(facts[0].start, facts[more].end)}
    move = facts[more + 1].kind == "move" if more + 1 < len(facts) else False
    return move and bool(led & little("an"))


def more_sets(told: Told, said: Said, counted: Fact) -> bool:
    """ "Done and 2 extra sets": so many more of the same; with other reps or loads they are asked."""
    spoken = told.sticky if told.sticky_at == said.clause.sentence else []
    targets = said.clause.targets or spoken or main_rows(told.rows)
    step = told.step(targets[-1])
    told.added[targets[-1]] = [replace(told.rows[at]) for _ in range(counted.value) for at in targets[-step:]]
    told.everything = told.everything or not (said.named or any(told.keep.values()))
    for at in targets:
        told.keep.setdefault(at, True)
    if len(said.values) > 1 or counted.value > MOST_EXTRA:
        told.ask("sets", said.clause)
    return True


def over_plan(told: Told, said: Said, targets: list[int]) -> None:
    """ "6 sets instead of 5": one more like the last; many more are asked where the plan's number is not told too."""
    fact = next(f for f in said.values if f.kind == "count")
    step = told.step(targets[-1])
    more = fact.value - len(targets) // step
    if more == 1 or (1 < more <= MOST_EXTRA and fact.note.get("was") == len(targets) // step):
        told.added[targets[-1]] = [replace(told.rows[at]) for _ in range(more) for at in targets[-step:]]
    elif fact.value * step > len(targets):
        told.asks.append(Ask("sets", told.message.span(fact.start, fact.end)))


def one_beyond(told: Told, clause: Clause, targets: list[int]) -> None:
    """ "4 of 5 sets, only one rep on the fifth": the set after those counted was done too, as the clause says."""
    counted = told.anew.get(targets[0])
    nth = next((fact.value for fact in clause.facts if fact.kind == "scope"), None)
    step = told.step(targets[0])
    if counted and isinstance(nth, int) and len(counted) == (nth - 1) * step < len(targets):
        told.anew[targets[0]] = [*counted, *(told.rows[at] for at in targets[len(counted) : nth * step])]
