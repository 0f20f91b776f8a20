"""Messages that lean on the day's plan: "done", "all but the archers", "same but 2 on the last", "5, 5, 4".

The plan's sets are the ground; each clause of the message then keeps, leaves out or changes those it speaks of.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.assemble.movementless import other_training
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.fold.sets import Work, to_set
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.beyond_plan import lengthened
from bot.reading.plan.by_weight import parts_by_weight
from bot.reading.plan.change import change
from bot.reading.plan.choosing import best_rows, exact_rows, the_rows
from bot.reading.plan.clauses import Clause, clauses_of
from bot.reading.plan.ground import STRONG, ground, plan_names
from bot.reading.plan.leaning import leans
from bot.reading.plan.state import Told
from bot.reading.plan.ticks import ticked
from bot.reading.plan.told import take
from bot.reading.plan.up_to import untold_behind
from bot.reading.reading import Ask

FAR = 2  # times the planned reps, with the planned load, are not believed without a word


def read_plan(message: Message, facts: list[Fact], work: Work) -> None:
    """Fill `work` from the plan and what the message says against it, in its terms."""
    rows = ground(message)
    if ticked(message):
        finish(message, rows, [], work)
        return
    for fact in facts:
        if fact.kind == "move" and fact.value.movement == "!":
            other_training(message, fact, facts, work)  # "plan done, then a 5k run"
    facts = parts_by_weight(facts, rows)
    rows, more = lengthened(message, facts, rows)
    clauses = clauses_of(rows, facts)
    asked = _asked(message, facts, clauses)
    if asked is not None:
        work.asks.append(asked)
        work.report = True
        return
    told = Told(message, rows, clauses, work)
    told.asks += more
    for clause in clauses:
        take(told, clause)
    if not told.nothing:
        behind = untold_behind(told)
        finish(message, told.chosen(), [*told.asks, behind] if behind else told.asks, work)
    elif any(value is False for value in told.keep.values()):
        left = [f for c in clauses for f in c.facts if plan_names(f) & {"skipped", "except"}]
        fact = (left or facts)[0]
        work.asks.append(Ask("sets", message.span(fact.start, fact.end)))
        work.report = True
    elif told.asks:
        work.asks.extend(told.asks)
        work.report = True


def read_part(message: Message, facts: list[Fact], movement: str, work: Work) -> bool:
    """One planned movement of a list that tells others in full, where it is told against the plan: "dips: last set 6".

    Whether it is; the facts are in the plan's terms.
    """
    if _only_rates(facts) and any(one.movement == movement for one in work.sets):
        _rate_again(facts, movement, work)  # "…, rpe 8 on the last dips", of dips told before
        return True
    if work.sets and _only_named(message, facts):
        finish(message, _rows_of(message, movement), [], work)
        return True
    listed = any(fact.kind == "rows" and len(fact.value) > 1 and not fact.note.get("outcome") for fact in facts)
    if listed or not leans(message, facts):
        return False
    rows = _rows_of(message, movement)
    clauses = clauses_of(rows, parts_by_weight(facts, rows))
    told = Told(message, rows, clauses, work)
    for clause in clauses:
        take(told, clause)
    if told.nothing:
        return False
    finish(message, told.chosen(), told.asks, work)
    return True


def _only_rates(facts: Sequence[Fact]) -> bool:
    """Whether a part says no more than how hard the last set was."""
    told = [fact for fact in facts if fact.kind not in ("word", "sep", "move") and plan_names(fact) != {"the"}]
    kinds = sorted(fact.kind for fact in told)
    return kinds == ["effort", "scope"] and all(fact.value == "last" for fact in told if fact.kind == "scope")


def _rate_again(facts: Sequence[Fact], movement: str, work: Work) -> None:
    effort = next(fact.value for fact in facts if fact.kind == "effort")
    last = max(at for at, one in enumerate(work.sets) if one.movement == movement)
    work.sets[last] = replace(work.sets[last], rpe=effort)


def _rows_of(message: Message, movement: str) -> list[Row]:
    """The planned sets of one movement, to change."""
    return [row for row in ground(message) if row.movement == movement]


def _only_named(message: Message, facts: Sequence[Fact]) -> bool:
    """ "…, then the dips", "dips were hard": no more than that they were done, and how they felt."""
    words = [fact for fact in facts if fact.kind not in ("move", "sep") and plan_names(fact) not in ({"the"}, {"fine"})]
    texts = {message.tokens[at].text for fact in words for at in range(fact.start, fact.end)}
    if any(fact.kind != "word" and (fact.kind, fact.value) != ("scope", "all") for fact in words):
        return False
    if not texts <= little("felt_so", "feels", "all_of_it"):
        return False
    return not any(token.text == "?" for token in message.tokens)


def _asked(message: Message, facts: list[Fact], clauses: list[Clause]) -> Ask | None:
    """What must be asked before anything is taken from the plan: "as last time", a load mended."""
    almost = _all_but_told(message, clauses)  # "almost all of it!! the last one was 4 and not 7"
    for name in ("last_time", "most"):
        only = [clause for clause in clauses if "only" in clause.names and clause.targets]
        if name == "most" and any("most" not in clause.names for clause in only):
            continue  # "half of it: pull-ups only"
        if name == "most" and _then_told(clauses):
            continue  # "half of it so far: pull-ups complete, dips will follow"
        fact = next((f for clause in clauses for f in clause.facts if name in plan_names(f)), None)
        if fact is not None and not (almost and name == "most"):
            return Ask("sets", message.span(fact.start, fact.end))
    whole = next((f for f in facts if f.kind == "ask" and f.note.get("whole")), None)
    if whole is not None:
        return Ask(whole.value, message.span(whole.start, whole.end))
    again = next((f for f in facts if f.kind == "repeat" and f.value > 1), None)
    if again is not None and not any(f.kind in ("move", "rows", "bare", "load", "scope", "side") for f in facts):
        return Ask("sets", message.span(again.start, again.end))  # "did the plan twice"
    vague = _vague(facts, clauses)
    if vague is not None:
        return Ask("sets", message.span(vague.start, vague.end))
    mending = None if almost else mended(message, facts)
    return Ask("load_kg", message.span(mending.start, mending.end)) if mending is not None else None


def _all_but_told(message: Message, clauses: Sequence[Clause]) -> bool:
    """Whether words for almost all are followed by what it was that fell short: then all else was done."""
    said = next((clause for clause in clauses if "most" in clause.names), None)
    fact = next((f for f in said.facts if "most" in plan_names(f)), None) if said is not None else None
    if said is None or fact is None or message.tokens[fact.start].text not in little("nearly"):
        return False
    behind = clauses[[clause is said for clause in clauses].index(True) + 1 :]
    told = any(
        any(f.kind == "scope" and f.value != "all" for f in clause.facts)
        and any(f.kind in ("rows", "bare", "instead", "delta", "load") for f in clause.facts)
        for clause in behind
    )
    if told:
        said.names.discard("most")
        said.names.add("done")
    return told


def _then_told(clauses: Sequence[Clause]) -> bool:
    """Whether what comes behind "half of it" says of each lift that it names whether it was done."""
    behind = [clause for clause in clauses if "most" not in clause.names]
    told = [clause for clause in behind if clause.targets]
    done = any(clause.names & {"done", "planned"} and not clause.names & {"except", "skipped"} for clause in told)
    return done and told == behind and "most" in clauses[0].names


def _vague(facts: Sequence[Fact], clauses: Sequence[Clause]) -> Fact | None:
    """ "A few sets done, then the storm came": of the plan, and nobody knows which."""
    vague = next((fact for fact in facts if fact.kind == "vague"), None)
    if vague is None or any(fact.kind in ("rows", "bare", "load", "count", "scope") for fact in facts):
        return None
    others = [clause for clause in clauses if vague not in clause.facts]
    named = any(fact.kind == "move" for clause in others for fact in clause.facts)
    return None if named or any(clause.names & STRONG for clause in others) else vague


def mended(message: Message, facts: Sequence[Fact]) -> Fact | None:
    """What is asked of "that was 17.5 not 15" beside a plan: a report mended, or the load of the day; else None."""
    if any(fact.kind == "move" or plan_names(fact) & STRONG or fact.note.get("until") for fact in facts):
        return None
    told = [fact for fact in facts if fact.kind == "instead"]
    if any(token.text in little("each_word") for fact in told for token in message.tokens[fact.start : fact.end]):
        return None  # "hice 6 en cada una en lugar de 5": no value of an earlier report
    cues = {hit.end for hit in message.hits("mends") if hit.table == "cue"}
    return next((fact for fact in told if fact.start in cues), None)


def read_bare(message: Message, facts: list[Fact], work: Work) -> None:
    """Numbers without a movement, in the plan's terms, on a day with a plan: they are the plan's."""
    stated = [f for f in facts if f.kind == "rows" and not (f.note.get("one") and not f.note.get("reps"))]
    loads = [f for f in facts if f.kind in ("load", "at", "loads") or (f.kind == "ask" and f.value == "load_kg")]
    if not stated and not (loads and any(f.kind in ("count", "bare") for f in facts)):
        return
    if stated and all(len(f.value) == 1 and not f.note.get("the") for f in stated) and not loads:
        return
    rows = ground(message)
    targets = the_rows(rows, facts) or (exact_rows(rows, stated[0]) if stated else []) or best_rows(rows, stated)
    lists = [f for f in stated if f.note.get("list")]
    schemes = [f for f in stated if f.note.get("plain") and len(f.value) > 1]
    lists = lists if len(lists) > 1 else schemes
    if len(lists) > 1 and sum(len(f.value) for f in lists) > len(targets):
        # "4 4 4 4 and 8 8 8": of two movements, and which is not said
        work.asks.append(Ask("movement", message.span(lists[0].start, lists[-1].end)))
        work.report = True
        return
    if not loads and _out_of_reach([rows[at] for at in targets], stated):
        work.asks.append(Ask("movement", message.span(stated[0].start, stated[-1].end)))
        work.report = True
        return
    clause = Clause(list(facts), targets)
    asks: list[Ask] = []
    changed = change(message, rows, targets, clause, asks)
    if changed:
        finish(message, changed, asks, work)
    elif asks:
        work.asks += asks
        work.report = True


def _out_of_reach(planned: Sequence[Row], stated: Sequence[Fact]) -> bool:
    """Whether every set told has far more reps than any planned with its load: "8-7-7" of loaded triples."""
    most = max((row.reps or 0 for row in planned), default=0)
    told = [entry.reps or 0 for fact in stated for entry in fact.value]
    heavy = any(row.load_kg for row in planned) and most > 0
    return heavy and len(told) > 1 and min(told) > FAR * most


def finish(message: Message, rows: list[Row], asks: list[Ask], work: Work) -> None:
    """Rows of the plan to sets."""
    for row in rows:
        work.sets.append(to_set(message, row.movement, row, asks, None))
    work.asks.extend(asks)
    work.report = True
