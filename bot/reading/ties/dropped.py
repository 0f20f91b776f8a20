"""What a drop drops to: "dropped to 20 for the last three", "drop set to 10 x8" are loads, no sets and no reps."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

LEAST_KG = 5  # so many times are rather kilograms, behind "drop set to"
LEAST_ALONE = 10


def dropped_to(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The facts, with the number behind a drop as the load that it is; on a day with a plan it may be its reps."""
    if message.context.today:
        return list(facts)
    facts = _by_falling(_behind_the_last(facts))
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        drop = _drop_before(message, facts, at)
        if drop is None:
            out.append(fact)
        elif fact.kind == "bare" and fact.value >= LEAST_ALONE and _scoped(facts[at + 1 :]):
            out.append(
                Fact("load", fact.start, fact.end, fact.note.get("kg", fact.value), {"how": "at", "dropped": True})
            )
        elif fact.kind == "rows" and fact.note.get("plain") and len(fact.value) >= LEAST_KG:
            out.append(Fact("load", fact.start, fact.start + 1, float(len(fact.value)), {"how": "at"}))
            out.append(replace(fact, start=fact.start + 1, value=fact.value[:1], note={"reps": True, "one": True}))
        else:
            out.append(fact)
    out = [_as_comma(one) if _leads_a_load(out, at) else one for at, one in enumerate(out)]
    return _scope_first(out)


def _behind_the_last(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "4x6 with 15, drop set straight after the last one, no weight, 11": the last set is none of the drop's."""
    for at, drop in enumerate(facts):
        if drop.kind != "link" or drop.value != "drop":
            continue
        place = next((n for n in range(at + 1, len(facts)) if facts[n].kind not in ("word", "link", "plan")), at)
        kinds = {one.kind for one in facts[place + 1 : place + 5]}
        last = facts[place].kind == "scope" and facts[place].value in ("last", ("last", 1))
        if last and "load" in kinds and kinds & {"rows", "bare"}:
            spoken = Fact("word", facts[place].start, facts[place].end, None, {"noise": True})
            between = [one for one in facts[at + 1 : place] if one.kind == "word"]
            return [*facts[: at + 1], *between, spoken, *facts[place + 1 :]]
    return facts


def _by_falling(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Dropset: 30x3, 20x4, 10x5": what falls is the load, what rises the reps."""
    drop = next((at for at, fact in enumerate(facts) if fact.kind == "link" and fact.value == "drop"), None)
    told = [at for at, fact in enumerate(facts) if fact.kind == "rows" and fact.note.get("plain") and at > (drop or 0)]
    kgs = [len(facts[at].value) for at in told]
    reps = [facts[at].value[0].reps or 0 for at in told]
    falls = kgs == sorted(set(kgs), reverse=True) and reps == sorted(reps) and min(kgs, default=0) >= LEAST_KG
    if drop is None or len(told) < 2 or not falls or kgs[0] < LEAST_ALONE or kgs[0] <= reps[-1]:
        return facts
    out = list(facts)
    for at, kg in zip(told, kgs, strict=True):
        note = {"own_load": float(kg), "reps": True, "one": True}
        out[at] = replace(facts[at], value=facts[at].value[:1], note=note)
    return out


def _drop_before(message: Message, facts: Sequence[Fact], at: int) -> Fact | None:
    """The drop that ends in "to" right before a fact."""
    before = [one for one in facts[max(0, at - 2) : at] if one.kind != "word" or _is_to(message, one)]
    drop = next((one for one in before if one.kind == "link" and one.value == "drop"), None)
    led = bool(before) and _is_to(message, before[-1])
    return drop if led and before[-1].end == facts[at].start else None


def _is_to(message: Message, fact: Fact) -> bool:
    return message.tokens[fact.end - 1].text in little("changed_to") - {"-"}


def _scoped(after: Sequence[Fact]) -> bool:
    """Whether it is said for which sets, before anything else."""
    return bool(after) and any(one.kind == "scope" for one in after[:3])


def _leads_a_load(facts: Sequence[Fact], at: int) -> bool:
    """ "Dropped to 20 for the last three" drops the load of sets told before; no set of its own follows."""
    after = facts[at + 1] if at + 1 < len(facts) else None
    drop = facts[at].kind == "link" and facts[at].value == "drop"
    return drop and after is not None and after.kind == "load" and _scoped(facts[at + 2 :])


def _scope_first(facts: list[Fact]) -> list[Fact]:
    """The scope of a load that was dropped to stands before it, as everywhere else."""
    out = list(facts)
    for at, fact in enumerate(facts):
        dropped = fact.kind == "load" and fact.note.get("dropped")
        place = next((n for n in range(at + 1, min(at + 4, len(out))) if out[n].kind == "scope"), None)
        if dropped and place is not None:
            out.insert(at, out.pop(place))
            break
    return out


def _as_comma(fact: Fact) -> Fact:
    return Fact("sep", fact.start, fact.end, 1, {"mark": ","})
