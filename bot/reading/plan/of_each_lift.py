"""Some sets of every lift: "the first two sets of everything", "2 sets of each", "set 1 and 2 of both lifts"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.clauses import clause_around
from bot.reading.plan.ground import plan_names

VALUED = frozenset("rows bare loads load at instead delta fail effort effort_range efforts move".split())
LED = 6  # facts at most from the beginning of a clause to its sets
SOME = frozenset({"first", "last"})


def of_each_lift(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts with what is said of every lift as one fact, where the plan has several and no value is told."""
    if len({row.movement for row in rows if row.part != "warm_up"}) < 2:
        return facts
    out: list[Fact] = []
    skip = 0
    for at, fact in enumerate(facts):
        if skip:
            skip -= 1
            continue
        far = _whole(message, facts, at, rows) if _some(fact) else 0
        ahead = not far and _some(fact) and _ahead(message, facts, at)
        clause = clause_around(facts, at) if far or ahead else ()
        if not (far or ahead) or any(one.kind in VALUED for one in clause):
            out.append(fact)
            continue
        if ahead:
            whole = next(one for one in clause if "all_lifts" in plan_names(one) or _is_whole(message, one))
            out = [one for one in out if one is not whole]
            out.append(Fact("plan", fact.start, fact.start, "all_lifts", {"names": ["all_lifts"], "each_lift": True}))
        if fact.kind == "count":
            fact = replace(fact, kind="scope", value=("first", int(fact.value)) if fact.value > 1 else "first")
        if ahead:
            out.append(fact)
            continue
        told = facts[at + 1 : at + far + 1]
        silent = all(one is fact or one.kind == "word" or plan_names(one) <= {"the"} for one in clause[: -far or None])
        alone = silent and clause[-1] is told[-1] and len(clause) <= far + 2  # nothing but these sets
        names = ["all_lifts", "only"] if alone else ["all_lifts"]
        out += [fact, Fact("plan", told[-1].start, told[-1].end, "all_lifts", {"names": names, "each_lift": True})]
        skip = far
    return out


def _some(fact: Fact) -> bool:
    """Whether a fact means some sets, and not all."""
    if fact.kind == "count":
        return not fact.note.get("more") and not fact.note.get("within")
    return fact.kind == "scope" and (fact.value in SOME or isinstance(fact.value, (int, tuple)))


def _whole(message: Message, facts: Sequence[Fact], at: int, rows: Sequence[Row]) -> int:
    """How many facts after this one are "of everything", "of each exercise"; 0: none."""
    led = facts[at + 1] if at + 1 < len(facts) else None
    if led is not None and led.kind == "side" and led.end > led.start + 1:  # "de cada ejercicio"
        words = {token.text for token in message.tokens[led.start : led.end]}
        lift = at + 2 < len(facts) and _is_lift(message, facts[at + 2])
        return 2 if lift and words <= little("each_lift", "of_each") else 0
    if led is not None and "all_lifts" in plan_names(led) and led.end > led.start + 1:  # "bei beiden Übungen"
        opens = message.tokens[led.start].text in little("of_each")
        return 1 + (at + 2 < len(facts) and _is_lift(message, facts[at + 2])) if opens else 0
    if led is None or led.kind != "word" or message.tokens[led.start].text not in little("of_each"):
        return 0
    far = 2
    if at + far < len(facts) and plan_names(facts[at + far]) == {"the"}:
        far += 1
    whole = facts[at + far] if at + far < len(facts) else None
    if whole is None:
        return 0
    words = {token.text for token in message.tokens[whole.start : whole.end]}
    lift = at + far + 1 < len(facts) and _is_lift(message, facts[at + far + 1])
    if "all_lifts" in plan_names(whole) or _is_whole(message, whole):
        return far + lift
    each = words <= little("each_lift") and (whole.kind == "side" or lift)
    return far + lift if each and (lift or not any(row.side for row in rows)) else 0


def _ahead(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """ "Von allem nur die ersten beiden Sätze": whether a clause begins with all that the sets are of."""
    start = max(0, at - LED)
    ends = [n + 1 for n in range(start, at) if facts[n].kind == "sep"]
    before = facts[ends[-1] if ends else start : at]
    if (not ends and start) or len(before) < 2 or message.tokens[before[0].start].text not in little("of_each"):
        return False
    return _is_whole(message, before[1]) or "all_lifts" in plan_names(before[1])


def _is_whole(message: Message, fact: Fact) -> bool:
    return fact.kind == "word" and message.tokens[fact.start].text in little("whole_plan")


def _is_lift(message: Message, fact: Fact) -> bool:
    return fact.kind == "word" and message.tokens[fact.start].text in little("lift")
