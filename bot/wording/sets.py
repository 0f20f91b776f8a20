"""Sets in words: what was done, and what is asked, grouped as a coach writes them."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from bot.wording.catalogue import Wording
from planner import movements
from planner.facts import PlannedSet, WorkSet
from planner.plan import DayPlan

PARTS = ("warm_up", "skill", "main", "accessory")
AnySet = WorkSet | PlannedSet


def done_in_words(sets: Sequence[WorkSet], say: Wording) -> str:
    """ "pull-ups 5×3 +20 kg (last RPE 8); dips 3×8"."""
    return "; ".join(_group(list(group), say) for _, group in groupby(sets, _work))


def plan_in_words(plan: DayPlan, say: Wording) -> str:
    """The day's work under its headings, one line a movement."""
    lines: list[str] = []
    for part in PARTS:
        sets = [one for one in plan.sets if one.part == part]
        if sets:
            lines.append(say.say(f"plan-part-{part}"))
            lines += ["  " + _group(list(group), say) for _, group in groupby(sets, _work)]
    return "\n".join(lines)


def short_plan(plan: DayPlan, say: Wording) -> str:
    """The skill and main work in one line, for the week."""
    return in_a_line([one for one in plan.sets if one.part in ("skill", "main")] or list(plan.sets), say)


def in_a_line(sets: Sequence[PlannedSet], say: Wording) -> str:
    return "; ".join(_group(list(group), say) for _, group in groupby(sets, _work))


def set_in_words(one: AnySet, say: Wording) -> str:
    """A set without its reps: "pull-ups +20 kg", "archers, left"."""
    side = f", {say.say(f'side-{one.side}')}" if one.side else ""
    return f"{_name(one, say)}{side}{_load(one.load_kg, one.assist_kg, say)}"


def _work(one: AnySet) -> tuple[object, ...]:
    return (one.movement, one.rom, one.eccentric, one.pauses, one.side is not None)


def _group(sets: list[AnySet], say: Wording) -> str:
    work = _by_side(sets, say) if sets[0].side else _in_a_row(sets, say)
    return f"{_name(sets[0], say)} {work}{_effort(sets, say)}"


def _name(one: AnySet, say: Wording) -> str:
    name = say.movement(one.movement)
    if one.rom != "full":
        name = say.say(f"set-{one.rom}", name=name)
    if one.eccentric:
        name = say.say("set-lowering", name=name)
    if one.pauses:
        name = say.say("set-paused", name=name, where=say.listed([say.say(f"set-at-{p}") for p in one.pauses]))
    return name


def _in_a_row(sets: list[AnySet], say: Wording) -> str:
    if len({(one.load_kg, one.assist_kg) for one in sets}) > 1:
        return _each_its_load(sets, say)
    amounts = [_amount(one, say) for one in sets]
    text = f"{len(sets)}×{amounts[0]}" if len(set(amounts)) == 1 and len(sets) > 1 else ", ".join(amounts)
    return text + _load(sets[0].load_kg, sets[0].assist_kg, say)


def _each_its_load(sets: list[AnySet], say: Wording) -> str:
    """ "3 without load, 2 +2.5 kg, 4×4 +15 kg": never a list that leaves open which of its sets a load is of."""
    none = " " + say.say("set-unaided" if any(one.assist_kg for one in sets) else "set-unloaded")
    pieces = []
    for (amount, load, assist), alike in groupby(sets, lambda one: (_amount(one, say), one.load_kg, one.assist_kg)):
        many = len(list(alike))
        told = _load(load, assist, say) or ("" if load is None else none)
        pieces.append((f"{many}×{amount}" if many > 1 else amount) + told)
    return ", ".join(pieces)


def _by_side(sets: list[AnySet], say: Wording) -> str:
    sides = list(dict.fromkeys(one.side for one in sets if one.side))
    amounts = {
        side: [(_amount(one, say), one.load_kg, one.assist_kg) for one in sets if one.side == side] for side in sides
    }
    if len(sides) == 2 and amounts[sides[0]] == amounts[sides[1]] and len(set(amounts[sides[0]])) == 1:
        amount, load, assist = amounts[sides[0]][0]
        return (
            say.say("set-each-side", sets=len(amounts[sides[0]]), amount=amount)
            + _load(load, assist, say)
            + (say.say("set-first-side", side=say.say(f"side-{sides[0]}")) if isinstance(sets[0], PlannedSet) else "")
        )
    told = []
    for side in sides:
        own = [one for one in sets if one.side == side]
        if len({(one.load_kg, one.assist_kg) for one in own}) == 1:
            reps = ", ".join(amount for amount, _, _ in amounts[side])
            text = reps + _load(own[0].load_kg, own[0].assist_kg, say)
        else:
            text = _each_its_load(own, say)
        told.append(f"{say.say(f'side-{side}')} {text}")
    return say.listed(told)


def _amount(one: AnySet, say: Wording) -> str:
    if one.hold_s is not None:
        return say.say("set-seconds", seconds=say.number(one.hold_s))
    if one.reps is None:
        return say.say("set-as-long" if movements.movement(one.movement).hold else "set-as-many")
    return say.say("set-missed", reps=str(one.reps)) if isinstance(one, WorkSet) and one.failed else str(one.reps)


def _load(load_kg: float | None, assist_kg: float | None, say: Wording) -> str:
    if load_kg:
        return f" +{say.load(load_kg)}"
    if assist_kg:
        return f" −{say.load(assist_kg)}"
    return ""


def _effort(sets: list[AnySet], say: Wording) -> str:
    efforts = [one.rpe for one in sets]
    if isinstance(sets[0], PlannedSet):
        return say.say("set-ceiling", rpe=say.number(efforts[0])) if efforts[0] is not None else ""
    told = [rpe for rpe in efforts if rpe is not None]
    if not told:
        return ""
    if len(told) == len(sets) and len(set(told)) == 1:
        return say.say("set-rpe", rpe=say.number(told[0]))
    if len(told) == 1 and efforts[-1] is not None:
        return say.say("set-last-rpe", rpe=say.number(told[0]))
    return say.say("set-rpes", rpes=", ".join("–" if rpe is None else say.number(rpe) for rpe in efforts))
