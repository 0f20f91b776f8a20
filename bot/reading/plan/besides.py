"""Work beside the plan: "all as planned, then 2x1 at 40", "all done plus two singles at 40"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import SENTENCE, clause_end, is_then
from bot.reading.facts import Entry, Fact
from bot.reading.fold.block import fold_block
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import plan_names
from bot.reading.plan.state import Said, Told
from bot.reading.ties.values import reps_of, whole_number

DONE = frozenset({"done", "planned", "all_lifts"})
OTHER = frozenset({"move", "scope", "side", "count", "instead", "delta", "fail"})
MOST_EXTRA = 12
STRAIGHT = frozenset({"drop", "straight"})


def told_besides(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts, with a mark before work that comes on top of a plan that was done."""
    if not any(plan_names(fact) & DONE for fact in facts):
        return facts
    out: list[Fact] = []
    skip = 0
    for at, fact in enumerate(facts):
        if at < skip:
            continue
        dropped = _dropped(message, facts, at) if _whole_plan(out) else None
        if dropped is not None:
            out += [Fact("sep", fact.start, fact.start, 1, {"mark": ","}), _mark(fact), *dropped]
            skip = at + 1 + len(_clause(facts, at + 1))
            continue
        leads = is_then(fact) and _whole_plan(out)
        plus = message.tokens[fact.start].text in little("plus") if fact.start < len(message.tokens) else False
        leads = leads or (plus and _whole_plan(out) and fact.kind in ("plan", "sep"))
        leads = leads or (_another(message, facts, at) and _whole_plan(_without_end(out)))
        clause = _clause(facts, at + 1)
        leads = leads or (fact.kind == "sep" and _is_drop(clause) and _whole_plan(out))
        if leads and _own_work(clause):
            out = list(_without_end(out))
            out += [Fact("sep", fact.start, fact.start, 1, {"mark": ","}), _mark(fact)]
            continue
        out.append(fact)
    return out


def _dropped(message: Message, facts: Sequence[Fact], at: int) -> list[Fact] | None:
    """The set that a clause tells straight after the last one: "plus a drop set of 6 with 15"."""
    opens = facts[at].kind == "sep" or message.tokens[facts[at].start].text in little("plus")
    clause = list(_clause(facts, at + 1))
    links = [fact for fact in clause if fact.kind == "link" and fact.value in STRAIGHT]
    after = [
        n
        for n, fact in enumerate(clause)
        if (fact.kind, fact.value) == ("scope", "last")
        and any(one.text in little("after_the_set") for one in message.tokens[max(0, fact.start - 2) : fact.start + 1])
    ]
    if not opens or not (links or after) or facts[at].value == SENTENCE:
        return None
    left = [fact for n, fact in enumerate(clause) if fact not in links and n not in after and not _small(message, fact)]
    reps = [fact for fact in left if fact.kind in ("rows", "bare", "delta")]
    loads = [fact for fact in left if fact.kind == "load" and fact.value]
    moves = [fact for fact in left if fact.kind == "move"]
    if len(reps) != 1 or len(loads) != 1 or len(moves) > 1 or len(left) != 2 + len(moves):
        return None
    many = _reps(reps[0])
    if not many:
        return None
    link = Fact("link", reps[0].start, reps[0].start, "drop")
    row = Fact("rows", reps[0].start, reps[0].end, [Entry(many)], {"reps": True, "one": True})
    return [link, *moves, row, *loads]


def _small(message: Message, fact: Fact) -> bool:
    """ "Then", "the", "after"."""
    lead = fact.end == fact.start + 1 and message.tokens[fact.start].text in little("after_the_set")
    return fact.kind == "word" or lead or (fact.kind == "plan" and plan_names(fact) <= {"the", "by", "more"})


def _reps(fact: Fact) -> int | None:
    if fact.kind == "delta":
        return int(fact.value[0]) if fact.value[1:] == ("reps", 1) else None
    return reps_of(fact)


def _is_drop(clause: Sequence[Fact]) -> bool:
    """Whether "a drop set with 15, 10 reps" begins a clause: a set straight after the last."""
    first = next((fact for fact in clause if fact.kind != "word"), None)
    return first is not None and first.kind == "link" and first.value == "drop"


def _another(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """Whether "another single with 30" begins here: "und noch ein Single mit 30"."""
    fact = facts[at]
    said = fact.kind == "word" and fact.end == fact.start + 1 and message.tokens[fact.start].text in little("another")
    after = facts[at + 1] if at + 1 < len(facts) else None
    single = after is not None and after.kind == "bare" and after.note.get("spelled") and after.value == 1
    follow = facts[at + 2] if single and at + 2 < len(facts) else after
    return said and follow is not None and follow.kind == "rows" and not follow.note.get("the")


def _without_end(before: Sequence[Fact]) -> Sequence[Fact]:
    """What was told before "at the end, another …"."""
    last = before[-1] if before else None
    return before[:-1] if last is not None and last.kind == "scope" and last.value == "last" else before


def beside_plan(told: Told, said: Said) -> bool:
    """Sets on top of the plan's, of its main lift; whether that is what is said."""
    if "besides" not in said.names:
        return False
    targets = said.clause.targets or main_rows(told.rows)
    movement = told.rows[targets[0]].movement if targets else None
    if len(said.clause.outside) == 1:
        other = said.clause.outside[0].value.movement  # "whole plan plus two doubles on muscle-ups"
        movement = None if other.startswith("?") else other
    folded = fold_block(told.message, movement, said.clause.facts, None)
    told.asks += folded.asks
    linked = _is_drop([fact for fact in said.clause.facts if fact.kind != "plan"])
    told.extra += [
        replace(row, movement=movement, linked=row.linked or (linked and at == 0)) for at, row in enumerate(folded.rows)
    ]
    told.everything = told.everything or not any(told.keep.values())
    return True


def _mark(fact: Fact) -> Fact:
    return Fact("plan", fact.end, fact.end, "besides", {"names": ["besides"]})


def so_many_words(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Plus two singles", "two extra singles": so many sets, and no load."""
    out: list[Fact] = []
    for at in range(len(facts)):
        fact = facts[at]
        rows = facts[at + 1] if at + 1 < len(facts) else None
        worded = rows is not None and rows.kind == "rows" and len(rows.value) == 1 and rows.note.get("each_of")
        amount = _amount(message, fact)
        if worded and rows is not None and amount and rows.start == fact.end:
            out.append(_mark(replace(fact, end=fact.start)))
            many = rows.value * amount
            facts = [*facts[: at + 1], replace(rows, value=many, note={"plain": True}), *facts[at + 2 :]]
            continue
        out.append(fact)
    return out


def _amount(message: Message, fact: Fact) -> int | None:
    """The number of "plus two", "two extra"."""
    plus = fact.kind == "load" and message.tokens[fact.start].text in little("plus") and not fact.note.get("unit")
    extra = fact.kind == "delta" and fact.value[1:] == ("load", 1)
    many = whole_number(message, fact) if plus or extra else None
    return many if many and many <= MOST_EXTRA else None


def _whole_plan(before: Sequence[Fact]) -> bool:
    """Whether the plan was told as done, and nothing of its sets."""
    valued = ("rows", "bare", "load", "at", "loads", "count")
    told = any(fact.kind in valued or (fact.kind == "scope" and fact.value != "all") for fact in before)
    return not told and any(plan_names(fact) & DONE for fact in before)


def _clause(facts: Sequence[Fact], start: int) -> Sequence[Fact]:
    end = clause_end(facts, start)
    return facts[start:end]


def _own_work(clause: Sequence[Fact]) -> bool:
    """Whole sets with their load, and nothing else that says which."""
    if any(fact.kind in OTHER or plan_names(fact) - {"the"} for fact in clause):
        return False
    return any(fact.kind == "rows" for fact in clause) and any(fact.kind == "load" for fact in clause)
