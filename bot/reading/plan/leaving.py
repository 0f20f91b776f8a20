"""Planned sets that were left out, put off, or the only ones done."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.adding import change_added
from bot.reading.plan.choosing import main_rows, pick, the_rows
from bot.reading.plan.clauses import Clause
from bot.reading.plan.each_lift import each_lift, lifts_pointed_at
from bot.reading.plan.ground import GLOBAL, plan_names
from bot.reading.plan.state import Said, Told
from bot.reading.reading import Ask

PLUS = frozenset({"by", "more"})  # "all done plus a 6th set"
LEAST_SAID = 2  # words of the plan before an exception


def left_out(told: Told, said: Said) -> bool:
    """Sets skipped: "all but the archers", "skipped the last two"; whether that is all that the clause says."""
    names, values, scoped, named, rows = said.names, said.values, said.scoped, said.named, told.rows
    if told.leaving and _and_the_rest(told.message, said.clause):
        told.ask("sets", said.clause)  # "skipped the pull-ups and the rest": what was before them?
        return True
    bare = all(fact.kind in ("move", "plan", "scope") or _of(told.message, fact) for fact in said.clause.facts)
    goes_on = told.leaving and named and bare and not names & GLOBAL and "only" not in names  # "no pull-ups, only dips"
    if not (names & {"skipped", "except"} or goes_on):
        return False
    if _nothing_done(said):
        return True
    if "skipped" in names and _but_some(said.clause):
        told.ask("sets", said.clause)  # "skipped all of it but the dips"
        return True
    if any("except" in plan_names(fact) for fact in said.clause.facts):
        told.everything = True
    whole = names & (GLOBAL - {"rest"}) or "all_lifts" in names or any(f.value == "all" for f in scoped)
    scoped = [f for f in scoped if f.value != "all"]
    if whole and ("except" not in names or "all_lifts" in names):
        told.everything = True
    targets = said.clause.targets
    if scoped and not targets and told.sticky_at == said.clause.sentence:
        targets = told.sticky  # "dips: dropped the last set"
    if said.sided and not targets:
        targets = [at for at, row in enumerate(rows) if row.side is not None]
    so_many = the_rows(rows, values) if "skipped" in names and not named and len(values) == 1 else []
    if so_many:
        targets, values = so_many, []  # "no time for the fives"
    only_so_many = "only" in names and any(f.kind == "count" for f in values)
    told_anew = only_so_many or any(f.kind in ("bare", "rows", "load", "instead", "delta") for f in values)
    if named and told_anew and "skipped" not in names:
        return False  # "done except rotations only 10 on the left"
    if scoped and told_anew:
        targets = []
    elif scoped:
        each = each_lift(told, said) or [targets or main_rows(rows)]
        whole_lifts = lifts_pointed_at(told, said)  # "everything but the last exercise"
        if "skipped" in names and "except" not in names and whole_lifts is None:
            for at in targets:
                told.keep.setdefault(at, True)  # "skipped the third set of dips": their others were done
        targets = [at for own in each for at in pick(rows, own, scoped[-1].value)]
        targets = whole_lifts if whole_lifts is not None else targets
        told.everything = told.everything or whole_lifts is not None
        if not named and not told.several:
            told.everything = True  # "skipped the last two": the others were done
    if said.sided and targets:
        side = next(f.value for f in said.clause.facts if f.kind == "side" and f.value in ("left", "right"))
        targets = [at for at in targets if rows[at].side == side]
    fewer = next((f.value for f in values if f.kind == "count" and not f.note.get("of_plan")), None)
    each = each_lift(told, said) if fewer and not scoped else []
    if fewer and each:
        targets = [at for own in each for at in own[-fewer * told.step(own[-1]) :]]  # "all but one set of each"
    elif fewer and targets and "skipped" in names and not scoped:
        # "dropped one set of dips": the last, and their others were done
        for at in targets:
            told.keep.setdefault(at, True)
        targets = targets[-fewer * told.step(targets[-1]) :]
    unknown = "except" in names or ("skipped" in names and any("rest" in one.names for one in told.clauses))
    if unknown and not targets and not values and said.clause.facts[-1].kind == "word":
        # something is left out that no book knows: "didn't do the thingies, the rest done"
        facts = said.clause.facts
        told.asks.append(Ask("sets", told.message.span(facts[0].start, facts[-1].end)))
        return True
    if not targets or (names & {"planned"} and not names & {"except", "skipped"}):
        return False
    for at in targets:
        if told.keep.get(at) and rows[at].part == "warm_up" and not said.clause.part:
            continue  # "warm-up done … no pull-ups", of a day that warms up with them
        told.keep[at] = False
    told.leaving = True
    if (named or scoped) and "except" in names and not values:
        told.excepted = (said.clause.sentence, targets, bool(scoped))
    return not ("rest" in names and not named)


def _nothing_done(said: Said) -> bool:
    """ "Skipped it all", "alles ausgelassen": all that was planned, and nothing else is told of it."""
    names = said.names - {"the", "every"}
    whole = names & {"done", "all_lifts"} or any(f.value == "all" for f in said.scoped)
    alone = not said.named and not said.values and all(f.value == "all" for f in said.scoped)
    return alone and bool(whole) and names <= {"skipped", "done", "all_lifts"} and "skipped" in names


def _but_some(clause: Clause) -> bool:
    """Whether an exception is made to what was left out: "skipped all of it but …"."""
    order = [plan_names(fact) & {"skipped", "done", "except"} for fact in clause.facts if plan_names(fact)]
    told = [names for names in order if names]
    return len(told) > LEAST_SAID and "skipped" in told[0] and "done" in told[1] and "except" in told[2]


def _and_the_rest(message: Message, clause: Clause) -> bool:
    """Whether a clause is no more than "… and the rest"."""
    tokens, first, last = message.tokens, clause.facts[0].start, clause.facts[-1].end
    if clause.names - {"the"} != {"rest"} or not first or tokens[first - 1].text not in little("and"):
        return False
    words = {token.text for token in tokens[first:last]}
    closed = last == len(tokens) or tokens[last].kind in ("sym", "nl")
    return closed and words.isdisjoint(little("all_of_it")) and all(plan_names(fact) for fact in clause.facts)


def _of(message: Message, fact: Fact) -> bool:
    """The "of" in "all but the dips and the last set of pull-ups"."""
    words = {token.text for token in message.tokens[fact.start : fact.end]}
    return fact.kind == "word" and words <= little("of_another", "article")


def first_only(told: Told, said: Said) -> bool:
    """ "The first two as planned", "only the first three sets": those, and not all."""
    did = any(fact.kind == "scheme" and fact.value == "got" for fact in said.clause.facts)
    values = [fact for fact in said.values if not (fact.kind == "load" and fact.note.get("same"))]
    if not said.scoped:
        return False
    if not said.names & {"skipped", "except", "not"} and _beyond(told, said):
        return True
    if values:
        return False
    closed = any("no_rest" in clause.names for clause in told.clauses)  # "warm-up and top set, nothing more"
    closed = closed or told.exclusive  # "only the warm-up and the first two sets of pull-ups"
    if not did and not closed and not said.names & {"only", "planned", "done", "same", "quit"}:
        return False
    scope = said.scoped[-1].value
    if scope == "all" or (scope == "last" and not said.names & {"only"}):
        return False
    whole = lifts_pointed_at(told, said)
    each = [at for own in each_lift(told, said) for at in pick(told.rows, own, scope)]
    targets = whole if whole is not None else each
    targets = targets or pick(told.rows, said.clause.targets or main_rows(told.rows), scope)
    if not targets:
        told.asks.append(Ask("sets", told.message.span(said.scoped[-1].start, said.scoped[-1].end)))
        return True
    for at in targets:
        told.keep.setdefault(at, True)
    told.exclusive = told.exclusive or not told.everything
    told.warmed_up(targets)
    return True


def one_side_only(told: Told, said: Said) -> bool:
    """ "Rotations only right side": the other side was not done."""
    sides = {f.value for f in said.clause.facts if f.kind == "side"}
    own = [at for at, row in enumerate(told.rows) if row.side is not None]
    targets = said.clause.targets or told.sticky or own
    if len(sides) != 1 or "only" not in said.names or {told.rows[at].side for at in targets} != {"left", "right"}:
        return False
    for at in targets:
        told.keep[at] = told.rows[at].side in sides
    return True


def _beyond(told: Told, said: Said) -> bool:
    """ "Did a sixth set" of five planned: one more like the last."""
    targets = said.clause.targets or main_rows(told.rows)
    step = told.step(targets[-1])
    if said.scoped[-1].value != len(targets) // step + 1:
        return False
    before = [fact for fact in said.clause.facts if fact.end <= said.scoped[-1].start]
    words = {told.message.tokens[at].text for fact in before for at in range(fact.start, fact.end)}
    plus = any(plan_names(fact) & PLUS for fact in before) or bool(words & little("on_top"))
    if said.values and not plus and not words & little("an"):
        return False  # "only 2 reps on set six"
    told.added[targets[-1]] = [replace(told.rows[at]) for at in targets[-step:]]
    told.added_in = (targets[-1], said.clause.sentence)
    facts = said.clause.facts
    led = next((at for at, fact in enumerate(facts) if fact.kind in ("move", "scope")), 0)
    whole = any(plan_names(fact) & {"done", "planned"} for fact in facts[:led])
    told.everything = told.everything or (whole and plus)
    if said.values:  # "a sixth set of pull-ups with 3 reps"
        aside = ("scope", "move", "plan", "scheme")
        own = [fact for fact in facts if fact.kind not in aside]
        change_added(told, Clause(own, sentence=said.clause.sentence))
    for at in targets:
        told.keep.setdefault(at, True)
    return True


def late_rest(message: Message, clause: Clause) -> bool:
    """ "rest tomorrow", "no time for the rest": the rest was not done."""
    words = {token.word for fact in clause.facts for token in message.tokens[fact.start : fact.end]}
    return not words.isdisjoint(little("not_now"))


def put_off(message: Message, clause: Clause) -> bool:
    """ "Accessories tomorrow", "dips later": what the clause names is yet to be done."""
    words = {token.word for token in message.tokens[clause.facts[0].start : clause.facts[-1].end + 1]}
    return not words.isdisjoint(little("put_off")) and not clause.names & {"done", "planned", "rest"}
