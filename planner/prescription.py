"""The sets of one day, in order: warm-up, skill, main lift, accessories; each load with its reasons."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import date, timedelta
from typing import Literal

from planner import blocks, loading
from planner.blocks import Work
from planner.calendar import week_length
from planner.facts import Order, PlannedSet, Rom, Side
from planner.history import GRIPS, SIDES, History
from planner.ladders import Rung, Step
from planner.loading import Basis
from planner.movements import closest_possible, movement
from planner.pain import Pain
from planner.plan import Decision, Reason, Value
from planner.progress import Climb, best_hold, third_set, value_of, weaker_first
from planner.repetitions import MAX_REPS_AS_EVIDENCE, expected_reps_to_failure, load_ratio
from planner.strength import best_sets
from planner.timeline import AS_IF_TEST, Exposure, Slot, Timeline, ceiling_of
from planner.units import round_down_to_plates, round_up_to_plates

DAY = timedelta(days=1)
OTHER_GRIP_SHARE = 0.97  # of another grip's strength, until the grip has a trend of its own; common practice
SHOWN_DAYS = 42  # a set done within the ceiling proves so long that it can be done again; common practice
VOLUME_RPE = 8.0  # ceiling of the work of the first rungs; common practice
# What hits skill work hardest comes last: stepping down takes it out, stepping back makes it lighter.
SKILL_ORDER = ("fine", "hold", "step_back", "step_down", "stop")
DecisionKind = Literal["load", "dose", "rung", "deload", "stop", "start", "absence", "pain", "order", "grip"]


@dataclass
class Draft:
    """A day's plan while it is made."""

    day: date
    slot: Slot
    warm_up: list[PlannedSet] = field(default_factory=list)
    skill: list[PlannedSet] = field(default_factory=list)
    main: list[PlannedSet] = field(default_factory=list)
    accessories: list[PlannedSet] = field(default_factory=list)
    holds: list[str] = field(default_factory=list)
    decisions: list[Decision] = field(default_factory=list)

    def decide(self, kind: DecisionKind, about: str, code: str, values: Mapping[str, Value] | None = None) -> None:
        self.decisions.append(Decision(self.day, kind, about, (Reason(code, values or {}),)))

    def hold(self, *parts: object) -> None:
        name = ":".join(str(part) for part in parts if part is not None)
        if name not in self.holds:
            self.holds.append(name)

    @property
    def sets(self) -> tuple[PlannedSet, ...]:
        return (*self.warm_up, *self.skill, *self.main, *self.accessories)


@dataclass(frozen=True)
class Today:
    """What acts on one day, gathered once."""

    history: History
    timeline: Timeline
    climbs: tuple[Climb, ...]
    slot: Slot
    day: date
    pains: tuple[Pain, ...]
    planned_ahead: Mapping[date, Mapping[Side, int]]

    @property
    def equipment(self) -> frozenset[str]:
        return self.history.equipment(self.day)

    @property
    def excluded(self) -> frozenset[str]:
        return self.history.orders.excluded(self.day)

    def pain_of(self, name: str) -> Pain | None:
        """The worst pain that a movement loads."""
        found = movement(name)
        return next((one for one in self.pains if one.level != "fine" and found.loads_site(one.site)), None)

    def stopped(self, name: str) -> bool:
        pain = self.pain_of(name)
        return pain is not None and pain.level == "stop"

    def done_as(self, name: str) -> str | None:
        """The movement itself, what the coach swapped it for, or the closest that equipment and orders allow."""
        swap = self.history.orders.swapped(name, self.day)
        wanted = str(swap.value) if swap is not None and swap.value else name
        return closest_possible(wanted, self.equipment, self.excluded)


def fill(today: Today) -> Draft:
    """The draft of a training day."""
    slot, draft = today.slot, Draft(today.day, today.slot)
    if slot.why is not None:
        draft.hold(slot.why.code, slot.planned_for)
        draft.decisions.append(Decision(today.day, "absence", "session", (slot.why,)))
    if slot.comeback is not None:
        draft.hold("comeback", slot.comeback.on)
        values = {
            "days": slot.comeback.days,
            "percent": round(100 * slot.comeback.cut),
            "rpe": slot.comeback.rpe_ceiling,
        }
        draft.decide("absence", "session", "comeback", values)
    _tell_pain(today, draft)
    _tell_deload(today, draft)
    _tell_grip(today, draft)
    for order in today.history.record.orders:
        if order.kind == "set_rung" and order.on == today.day:
            draft.hold("set_rung", order.ladder, order.rung)
    if slot.pulling:
        _pull(today, draft)
    for climb in today.climbs:
        if climb.position.ladder.main_rung is None and _is_day_of(today, climb):
            _skill_of(today, draft, climb)
    _share_joints(today, draft)
    if draft.skill and not draft.warm_up:
        easy = (
            "push_up" if movement(draft.skill[0].movement).pattern.endswith(("push", "planche")) else "scapular_pull_up"
        )
        if movement(easy).possible_with(today.equipment) and not today.stopped(easy):
            draft.warm_up.append(PlannedSet(easy, "warm_up", 5))
    _orders(today, draft)
    _accessories(today, draft)
    return draft


def _tell_pain(today: Today, draft: Draft) -> None:
    for pain in today.pains:
        if pain.level != "fine":
            draft.hold("pain", pain.level, pain.site, pain.side, pain.since)
            draft.decide("pain", pain.site, pain.why, {"site": pain.site, "side": pain.side, "score": pain.acted_on})


def _tell_deload(today: Today, draft: Draft) -> None:
    if not today.slot.early:
        return
    for early in today.timeline.early:
        if today.slot.week_start == early.on:
            draft.hold("early_deload", early.on)
            draft.decisions.append(Decision(today.day, "deload", "block", (early.reason,)))


def _tell_grip(today: Today, draft: Draft) -> None:
    """On the first day of a block in another grip."""
    before = [slot for slot in today.timeline.slots if slot.block == today.slot.block - 1]
    if before and today.day == today.slot.block_start and before[-1].main != today.slot.main:
        draft.decide("grip", today.slot.main, "grip_of_block", {"movement": today.slot.main, "before": before[-1].main})


def _is_day_of(today: Today, climb: Climb) -> bool:
    """Levers go with pulling; pushing goes on the other training days, where there are any."""
    if climb.position.ladder.pattern in ("pull", "lever"):
        return today.slot.pulling
    has_others = any(not slot.pulling for slot in today.timeline.slots if slot.week_start == today.slot.week_start)
    return not today.slot.pulling if has_others else today.slot.pulling


# ---- Pulling --------------------------------------------------------------------------------------------------------


def _pull(today: Today, draft: Draft) -> None:
    climb = next((one for one in today.climbs if one.position.ladder.main_rung is not None), None)
    if climb is None:
        return
    rung = climb.position.rung
    if rung.work != "skill" and any(one.level == "step_back" for one in _pains_on(today, rung.movement)):
        before = climb.position.ladder.before(rung.id)
        rung = before if before is not None else rung
    if today.stopped(today.slot.main):
        return
    if rung.work == "volume":
        _volume(today, draft, climb, rung)
    else:
        _main(today, draft)
    if today.slot.kind == "test":
        _rung_test(today, draft, climb)
    elif rung.work == "skill":
        _skill_of(today, draft, climb)
    if draft.main:
        _warm_up(today, draft)


def _pains_on(today: Today, name: str) -> list[Pain]:
    found = movement(name)
    return [one for one in today.pains if found.loads_site(one.site)]


def main_work(today: Today) -> Work:
    """Sets, reps and ceiling of the main lift by the block; a first week back has a lower ceiling."""
    slot, table = today.slot, blocks.shipped()
    pain = today.pain_of(slot.main)
    if slot.kind == "test" and pain is not None and pain.level != "hold":
        return table.deload  # a sore joint is not tested
    if slot.kind in AS_IF_TEST:
        work = table.test
        if slot.kind == "retest":
            # After a long time away a top set at 8 measures enough.
            work = replace(work, rpe=work.rpe - 1.0)
    elif slot.kind == "deload":
        work = table.deload
    else:
        work = table.work(slot.kind, slot.week, slot.loading_weeks)
    if slot.comeback is not None and slot.kind not in AS_IF_TEST:
        work = replace(work, rpe=min(work.rpe, slot.comeback.rpe_ceiling))
    return work


def _main(today: Today, draft: Draft) -> None:
    work, slot = main_work(today), today.slot
    name = _main_movement(today, draft)
    if name is None:
        draft.hold("no_equipment")
        draft.decide("load", slot.main, "nothing_to_pull_on", {"movement": slot.main})
        return
    basis = basis_of(today.history, name, today.day)
    if basis is None:
        draft.decide("load", name, "load_unknown", {"movement": name, "rpe": work.rpe})
        draft.main += [PlannedSet(name, "main", None, rpe=work.rpe, rung=None)] * min(work.sets, 3)
        return
    if name not in GRIPS and name != "lat_pulldown":
        draft.main += [PlannedSet(name, "main", 8, rpe=min(work.rpe, 8.0))] * work.sets
        return
    if name in GRIPS and not today.history.can_load(today.day):
        _bodyweight_main(today, draft, name, work, basis)
        return
    _loaded_main(today, draft, name, work, basis)


def _main_movement(today: Today, draft: Draft) -> str | None:
    """The main lift as it can be done today: the block's grip, another where that hurts less, or a substitute."""
    name = today.done_as(today.slot.main)
    pain = today.pain_of(today.slot.main)
    if pain is not None and pain.level == "step_down":
        other = _painless_grip(today)
        if other is not None:
            draft.decide("grip", today.slot.main, "grip_for_pain", {"movement": other, "before": today.slot.main})
            return other
    if name is not None and name != today.slot.main:
        draft.hold("instead_of", today.slot.main, name)
        code = (
            "movement_swapped" if today.history.orders.swapped(today.slot.main, today.day) else "movement_substituted"
        )
        draft.decide("load", name, code, {"movement": name, "before": today.slot.main})
    return name


def _painless_grip(today: Today) -> str | None:
    """Another grip that was trained within a year on days without pain in the place; None where none is known."""
    sore = {answer.on for answer in today.history.record.pain if (answer.score or 0) >= 3}
    for name in GRIPS:
        if name == today.slot.main or not movement(name).possible_with(today.equipment) or name in today.excluded:
            continue
        followed = today.history.strength.get((name, None))
        if followed is None or (today.day - followed.trend.on).days > 365 or followed.trend.on in sore:
            continue
        return name
    return None


def basis_of(history: History, name: str, day: date) -> Basis | None:
    """What loads of a main lift are made from: its own trend, else the strongest related one, a little less."""
    followed = history.strength.get((name, None))
    if followed is not None:
        return followed.basis(day, history.rules)
    others = [history.strength[key] for grip in (*GRIPS, "lat_pulldown") if (key := (grip, None)) in history.strength]
    if not others:
        return None
    found = max((one.basis(day, history.rules) for one in others), key=lambda basis: basis.e1rm_kg)
    return replace(found, e1rm_kg=found.e1rm_kg * OTHER_GRIP_SHARE)


def _bodyweight_main(today: Today, draft: Draft, name: str, work: Work, basis: Basis) -> None:
    """Without a way to hang weight on: the reps that bodyweight allows at the ceiling."""
    body_kg = today.history.bodyweight.on(today.day)
    share = 1.0 - _cut(today, name)
    left = expected_reps_to_failure(basis.e1rm_kg * share, body_kg, basis.steepness) - (10.0 - work.rpe)
    reps = max(1, min(12, int(left)))
    if today.slot.kind == "deload":
        reps = min(reps, max(1, _least_reps(today) - 1))
    if left < 1:
        _assisted(today, draft, name, work, basis)
        return
    draft.hold("no_load")
    draft.decide("load", name, "bodyweight_only", {"movement": name, "reps": reps, "rpe": work.rpe})
    draft.main += [PlannedSet(name, "main", reps, rpe=work.rpe)] * work.sets


def _least_reps(today: Today) -> int:
    return min((one.reps for one in _late(today, 14)), default=4)


def _late(today: Today, days: int) -> list[Exposure]:
    since = today.day - days * DAY
    return [one for one in today.timeline.exposures if since <= one.on < today.day]


def _cut(today: Today, name: str) -> float:
    """Share taken off the system load by absence and pain; the larger of the two."""
    pain = today.pain_of(name)
    for_pain = today.history.rules.number("pain.cut") if pain is not None and pain.level == "step_down" else 0.0
    for_absence = today.slot.comeback.cut if today.slot.comeback is not None else 0.0
    return max(for_pain, for_absence)


def _loaded_main(today: Today, draft: Draft, name: str, work: Work, basis: Basis) -> None:
    history, slot, rules = today.history, today.slot, today.history.rules
    share = movement(name).bodyweight_share
    body_kg = history.bodyweight.on(today.day) * share
    last = _last_of_kind(today, name)
    ceilings = _ceilings(today, name, body_kg, last, draft)
    code, limit = min(ceilings, key=lambda item: item[1], default=("", None))
    best = best_sets(history.record, name, None, today.day, rules) if name in GRIPS or name == "lat_pulldown" else ()
    if not best and last is not None and name == last.movement and slot.kind not in AS_IF_TEST:
        # Nothing comparable of late: never above what was last done.
        ceilings.append(("load_after_gap", body_kg + last.added_kg))
        code, limit = min(ceilings, key=lambda item: item[1])
    made = loading.prescribe(
        basis,
        work.reps,
        work.rpe,
        body_kg,
        history.plates,
        best=best,
        max_rise=rules.number("strength.max_rise"),
        ceiling_kg=limit,
        scale=1.0 - _cut(today, name),
    )
    if made.limited_by == "assistance" or (made.limited_by == "bodyweight" and made.reps < 2):
        _assisted(today, draft, name, work, basis)
        return
    shown_kg = _shown_kg(today, name, work, last)
    if made.limited_by in ("strength", "bodyweight") and shown_kg is not None and shown_kg - body_kg >= made.load_kg:
        # Shown weeks ago, or with fewer reps, is no way around the cap on a rise.
        cap = loading.cap_kg(best, work.reps, work.rpe, rules.number("strength.max_rise"))
        allowed = min(kg for kg in (shown_kg, limit, cap) if kg is not None)
        load = round_down_to_plates(allowed - body_kg, history.plates.step, history.plates.unit)
        if load >= made.load_kg and allowed >= body_kg:
            made = replace(made, load_kg=load, reps=work.reps, limited_by="strength")
    reps = made.reps
    if limit is not None and made.load_kg == 0.0 and limit < body_kg and slot.is_deload:
        reps = max(1, min(reps, work.reps - 1))
    draft.main += [PlannedSet(name, "main", reps, load_kg=made.load_kg, rpe=work.rpe)] * work.sets
    values: dict[str, Value] = {"movement": name, "load_kg": made.load_kg, "reps": reps, "rpe": work.rpe}
    if last is not None:
        values["before_kg"] = last.added_kg
        values["before_reps"] = last.reps
    if made.limited_by == "ceiling":
        draft.decide("load", name, code, values)
    elif made.limited_by == "best_set":
        draft.decide("load", name, "load_capped", {**values, "percent": round(100 * rules.number("strength.max_rise"))})
    elif made.limited_by == "bodyweight":
        draft.decide("load", name, "load_fewer_reps", {**values, "wanted_reps": work.reps})
    elif _cut(today, name) > 0:
        why = "load_absence" if slot.comeback is not None else "load_pain_cut"
        draft.decide("load", name, why, {**values, "percent": round(100 * _cut(today, name))})
    else:
        draft.decide(
            "load", name, _by_trend(slot, last, made.load_kg, reps), {**values, "e1rm_kg": round(basis.e1rm_kg, 1)}
        )
    _tell_bodyweight(today, draft, name, last)


def _shown_kg(today: Today, name: str, work: Work, last: Exposure | None) -> float | None:
    """The heaviest system load [kg] lately done for at least this work within this effort; None where not asked for.

    What was done so can be done so again: the cautious edge of the trend and the rounding down must not eat a plate
    each week from an athlete who tells exactly the ceiling. Not where the last exposure was over it, or after a cut.
    """
    if today.slot.kind == "deload" or _cut(today, name) > 0 or (last is not None and (last.over or 0.0) > 0):
        return None
    history, wanted = today.history, work.reps + 10.0 - work.rpe
    body_kg = history.bodyweight.on(today.day) * movement(name).bodyweight_share
    too_hard = [one.on + DAY for one in _late(today, SHOWN_DAYS) if (one.over or 0.0) > 0]
    since = max([today.day - SHOWN_DAYS * DAY, *too_hard])  # a set over its ceiling withdraws what was shown before it
    shown = [
        body_kg + one.load_kg - one.assist_kg
        for session in history.between(since, today.day - DAY)
        for one in session.sets
        if one.movement == name
        and one.rpe is not None
        and one.reps
        and not one.failed
        and not one.linked
        and one.rom == "full"
        and one.reps + 10.0 - one.rpe >= wanted
        and one.rpe <= work.rpe
    ]
    if last is not None and last.over is not None and (today.day - last.on).days <= SHOWN_DAYS:
        # Its hardest set was this easy: the pair of efforts says what today's would be.
        to_failure = last.reps + 10.0 - (last.over + ceiling_of(last.slot))
        if to_failure <= MAX_REPS_AS_EVIDENCE:
            shown.append((body_kg + last.added_kg) * load_ratio(to_failure, wanted))
    return max(shown, default=None)


def _by_trend(slot: Slot, last: Exposure | None, load_kg: float, reps: int) -> str:
    if slot.kind in AS_IF_TEST:
        return "load_test"
    if last is None:
        return "load_first"
    if reps != last.reps:
        return "load_block"
    return "load_up" if load_kg > last.added_kg else "load_down" if load_kg < last.added_kg else "load_same"


def _tell_bodyweight(today: Today, draft: Draft, name: str, last: Exposure | None) -> None:
    """Three kilograms less with the same belt is less work: said where it is a plate or more."""
    if last is None:
        return
    history = today.history
    was, now = history.bodyweight.on(last.on), history.bodyweight.on(today.day)
    if abs(now - was) >= 1.0:
        values: dict[str, Value] = {"was_kg": was, "now_kg": now, "before_kg": last.added_kg, "movement": name}
        draft.decide("load", name, "bodyweight_changed", values)


def _last_of_kind(today: Today, name: str) -> Exposure | None:
    """The newest exposure of the same kind of day (in the same movement, where there was one)."""
    kind = today.slot.kind
    done = [one for one in today.timeline.exposures if one.on < today.day and one.movement == name]
    return next((one for one in reversed(done) if one.slot.kind == kind), None)


def _ceilings(today: Today, name: str, body_kg: float, last: Exposure | None, draft: Draft) -> list[tuple[str, float]]:
    """Caps on the system load [kg], each with its reason's code."""
    rules, slot = today.history.rules, today.slot
    found: list[tuple[str, float]] = []
    if slot.is_deload and slot.kind == "deload":
        week_one = [one for one in today.timeline.exposures if one.slot.block == slot.block and one.slot.week == 1]
        if week_one:
            lightest = min(body_kg + one.added_kg for one in week_one)
            found.append(("load_deload", lightest * rules.number("block.deload_share")))
        step_kg = round_up_to_plates(1e-3, today.history.plates.step, today.history.plates.unit)
        found += [
            ("load_deload", body_kg + one.added_kg - step_kg)
            for one in _late(today, rules.whole("block.deload_days_below"))
        ]
    pain = today.pain_of(name)
    if slot.kind in AS_IF_TEST:
        if pain is not None and (late := [body_kg + one.added_kg for one in _late(today, 28) if one.movement == name]):
            found.append(("load_hold_pain", max(late)))
        return found
    if last is not None and last.over is not None:
        then_kg = body_kg + last.added_kg
        if last.over >= rules.number("effort.cut_over"):
            draft.hold("effort", last.on)
            found.append(("load_cut_effort", then_kg * (1.0 - rules.number("effort.cut"))))
        elif last.over >= rules.number("effort.hold_over"):
            found.append(("load_hold_effort", then_kg))
    if pain is not None and pain.level in ("hold", "step_back"):
        done = last or next((one for one in reversed(_late(today, 28)) if one.movement == name), None)
        if done is not None:
            found.append(("load_hold_pain", body_kg + done.added_kg))
    return found


def _assisted(today: Today, draft: Draft, name: str, work: Work, basis: Basis) -> None:
    """Below bodyweight: a pulldown by the stack, a band or pulley by its kilograms, else as many reps as the ceiling
    allows, at least lowered by rows."""
    history = today.history
    body_kg = history.bodyweight.on(today.day)
    wanted_kg = basis.system_load_kg(work.reps, work.rpe) * (1.0 - _cut(today, name))
    has, step, unit = today.equipment, history.plates.step, history.plates.unit
    if "lat_pulldown" in has:
        stack = round_down_to_plates(wanted_kg, step, unit)
        one = PlannedSet("lat_pulldown", "main", work.reps, load_kg=stack, rpe=work.rpe)
        draft.decide("load", name, "load_pulldown", {"movement": "lat_pulldown", "load_kg": stack})
    elif "bands" in has or "pulley" in has:
        assist = round_up_to_plates(max(0.0, body_kg - wanted_kg), step, unit)
        help_by = "band_pull_up" if "bands" in has else name
        one = PlannedSet(help_by, "main", work.reps, assist_kg=assist, rpe=work.rpe)
        draft.decide("load", name, "load_assisted", {"movement": help_by, "assist_kg": assist})
    else:
        one = PlannedSet(name, "main", 1, rpe=work.rpe)
        draft.decide("load", name, "load_fewer_reps", {"movement": name, "reps": 1, "wanted_reps": work.reps})
    draft.main += [one] * work.sets


def _volume(today: Today, draft: Draft, climb: Climb, rung: Rung) -> None:
    """The first rungs: rows, then clean pull-ups below their limit, with help until then."""
    slot, position = today.slot, climb.position
    dose = rung.steps[min(position.step, len(rung.steps) - 1)] if rung.id == position.rung.id else rung.steps[0]
    ceiling = VOLUME_RPE if slot.comeback is None else min(VOLUME_RPE, slot.comeback.rpe_ceiling)
    if slot.kind == "deload":
        ceiling, dose = 6.0, replace(dose, sets=2, reps=max(1, dose.reps // 2))
    if slot.kind in AS_IF_TEST:
        dose, ceiling = replace(dose, sets=1, reps=0), 9.0
    name = today.done_as(rung.movement)
    if name is None:
        draft.hold("no_equipment")
        draft.decide("load", rung.movement, "nothing_to_pull_on", {"movement": rung.movement})
        return
    if name != rung.movement:
        draft.hold("instead_of", rung.movement, name)
        draft.decide("load", name, "movement_substituted", {"movement": name, "before": rung.movement})
    reps: int | None = dose.reps or None
    if name in GRIPS and reps is not None:
        basis = basis_of(today.history, name, today.day)
        if basis is None:
            reps = None
        else:
            body_kg = today.history.bodyweight.on(today.day)
            able = expected_reps_to_failure(basis.e1rm_kg * (1.0 - _cut(today, name)), body_kg) - (10.0 - ceiling)
            if _cut(today, name) == 0:
                able = max(able, _reps_shown(today, name) - (10.0 - ceiling))
            if able < 1:
                _assisted(today, draft, name, Work(dose.sets, max(dose.reps, 4), ceiling), basis)
                _rows(today, draft, ceiling)
                return
            reps = max(1, min(int(able), dose.reps + 2))
    draft.main += [PlannedSet(name, "main", reps, rpe=ceiling, rung=rung.id)] * dose.sets
    draft.decide("dose", rung.id, "dose_volume", {"rung": rung.id, "sets": dose.sets, "reps": reps, "rpe": ceiling})
    if name in GRIPS and slot.kind == "volume":
        _rows(today, draft, ceiling)


def _reps_shown(today: Today, name: str) -> float:
    """The most reps to failure lately shown at bodyweight by a set near its end; 0 where there is none."""
    return max(
        (
            one.reps + 10.0 - one.rpe
            for session in today.history.between(today.day - SHOWN_DAYS * DAY, today.day - DAY)
            for one in session.sets
            if one.movement == name and one.reps and one.rpe is not None and one.rpe >= VOLUME_RPE
            if one.rom == "full" and not one.assist_kg and not one.failed and not one.linked
        ),
        default=0.0,
    )


def _rows(today: Today, draft: Draft, ceiling: float) -> None:
    name = today.done_as("ring_row")
    if name is not None and name not in {one.movement for one in draft.main}:
        draft.main += [PlannedSet(name, "main", 8, rpe=min(ceiling, 7.0))] * 2


# ---- Warm-up --------------------------------------------------------------------------------------------------------


def _warm_up(today: Today, draft: Draft) -> None:
    """A ramp that doesn't tire: easy hangs, then the day's movement up to a part of the working load."""
    first = draft.main[0]
    pulls: list[PlannedSet] = []
    if movement("scapular_pull_up").possible_with(today.equipment) and not today.stopped("scapular_pull_up"):
        pulls.append(PlannedSet("scapular_pull_up", "warm_up", 5))
    history = today.history
    body_kg = history.bodyweight.on(today.day) * movement(first.movement).bodyweight_share
    working_kg = body_kg + first.load_kg - first.assist_kg
    seen: set[float] = set()
    for share, reps in blocks.shipped().warm_up:
        load = round_down_to_plates(working_kg * share - body_kg, history.plates.step, history.plates.unit)
        if load in seen or (load == 0.0 and first.load_kg == 0.0):
            continue
        seen.add(load)
        fewer = reps if first.reps is None else min(reps, first.reps)
        pulls.append(PlannedSet(first.movement, "warm_up", fewer, load_kg=load))
    if len(pulls) < 2 and first.load_kg == 0.0:
        easier = closest_possible("ring_row", today.equipment, today.excluded)
        if easier is not None:
            pulls.append(PlannedSet(easier, "warm_up", 5))
    draft.warm_up += pulls


# ---- Skill ----------------------------------------------------------------------------------------------------------


def _rung_test(today: Today, draft: Draft, climb: Climb) -> None:
    """A new rung is tried fresh, before the main lift, where its gates are met and nothing hurts."""
    rung = climb.may_test(today.day)
    if rung is None:
        return
    if any(one.level != "fine" for one in _pains_on(today, rung.movement)) or today.stopped(rung.movement):
        draft.decide("rung", climb.position.ladder.id, "no_test_pain", {"rung": rung.id})
        return
    ceiling, proof, history = blocks.shipped().test_rung_rpe, rung.proof, today.history
    load = 0.0
    if proof.smallest_plate:
        if not history.can_load(today.day):
            return
        load = round_up_to_plates(1e-3, history.plates.step, history.plates.unit)
    assist = 0.0
    if proof.max_assist_share is not None:
        most = value_of(proof.max_assist_share, history.rules) * history.bodyweight.on(today.day)
        assist = round_down_to_plates(most, history.plates.step, history.plates.unit)
    one = PlannedSet(
        rung.movement, "skill", proof.reps, load_kg=load, assist_kg=assist, rpe=ceiling, rom=rung.rom, rung=rung.id
    )
    sides = weaker_first(history, climb.position.rung, today.day) if rung.one_sided else (None,)
    if rung.one_sided and not _fits(today, dict.fromkeys(SIDES, rung.proof.reps or 1)):
        draft.decide("rung", climb.position.ladder.id, "no_test_exposures", {"rung": rung.id})
        return
    draft.skill += [replace(one, side=side) for side in sides]
    want = proof.reps if proof.reps is not None else 0
    draft.decide("rung", climb.position.ladder.id, "rung_test", {"rung": rung.id, "reps": want})


def _is_test_of_others(today: Today, climb: Climb) -> bool:
    """Ladders that are not trained on pulling days are tested on the deload week's last day of their own."""
    slot = today.slot
    if not slot.is_deload or slot.pulling or climb.position.ladder.pattern in ("pull", "lever"):
        return False
    own = [one.on for one in today.timeline.slots if one.week_start == slot.week_start and not one.pulling and one.on]
    return bool(own) and today.day == max(own)


def _hold_test(today: Today, draft: Draft, rung: Rung) -> None:
    """The best hold is measured at the end of a block: training at a part of it never shows it."""
    if rung.work != "hold" or not movement(rung.movement).possible_with(today.equipment):
        return
    if any(one.level != "fine" for one in _pains_on(today, rung.movement)):
        return
    draft.skill.append(PlannedSet(rung.movement, "skill", None, rpe=blocks.shipped().test_rung_rpe, rung=rung.id))
    draft.decide("rung", rung.id, "hold_test", {"rung": rung.id})


def _skill_of(today: Today, draft: Draft, climb: Climb) -> None:
    """The rung's sets of the day: dose, third set, other half; held or left out by pain and the cap on exposures."""
    position, slot, history = climb.position, today.slot, today.history
    rung, dose = position.rung, position.dose
    pains = _pains_on(today, rung.movement)
    level = max(
        (one.level for one in pains),
        key=lambda one: ("fine", "hold", "step_back", "step_down", "stop").index(one),
        default="fine",
    )
    if level in ("stop", "step_down"):
        draft.decide("pain", rung.id, "skill_out_pain", {"rung": rung.id})
        return
    if level == "step_back":
        before = position.ladder.before(rung.id)
        if before is None or before.work not in ("skill", "hold"):
            draft.decide("pain", rung.id, "skill_out_pain", {"rung": rung.id})
            return
        draft.decide("pain", rung.id, "step_back_pain", {"rung": before.id, "before": rung.id})
        rung, dose = before, before.steps[0]
    if slot.kind == "light" or slot.kind == "retest":
        return
    if slot.kind == "test" or _is_test_of_others(today, climb):
        if position.ladder.main_rung is None:
            _rung_test(today, draft, climb)
            _hold_test(today, draft, rung)
        return
    if not movement(rung.movement).possible_with(today.equipment) or rung.movement in today.excluded:
        draft.hold("no_skill", rung.id)
        draft.decide("rung", rung.id, "skill_not_possible", {"rung": rung.id, "movement": rung.movement})
        return
    ceiling = history.rules.number("skill.rpe")
    if slot.comeback is not None:
        ceiling = min(ceiling, slot.comeback.rpe_ceiling)
    if rung.work == "hold":
        _hold_sets(today, draft, rung, dose, ceiling)
        return
    name, rom = rung.movement, dose.rom
    other = rung.other_day
    other_half = other is not None and slot.kind == "volume" and (dose.rom != "full" or not rung.next)
    if other is not None and other_half and movement(other.movement).possible_with(today.equipment):
        name, rom, dose = other.movement, other.rom, replace(dose, pauses=(), load_kg=0.0)
    sets = dose.sets
    if slot.kind == "deload":
        sets, ceiling = 1, blocks.shipped().deload_skill_rpe
    elif level == "fine" and third_set(history, climb, slot, today.day):
        sets += 1
        draft.decide("dose", rung.id, "third_set", {"rung": rung.id, "sets": sets})
    if not rung.one_sided:
        draft.skill += [PlannedSet(name, "skill", dose.reps, rpe=ceiling, rom=rom, rung=rung.id)] * sets
        return
    _one_sided(today, draft, climb, rung, dose, name, rom, sets, ceiling, hold=level in ("hold", "step_back"))


def _one_sided(
    today: Today,
    draft: Draft,
    climb: Climb,
    rung: Rung,
    dose: Step,
    name: str,
    rom: Rom,
    sets: int,
    ceiling: float,
    *,
    hold: bool,
) -> None:
    history = today.history
    reps, wanted = dose.reps, sets * dose.reps
    while sets and not _fits(today, dict.fromkeys(SIDES, sets * reps), hold=hold):
        if sets > 1 and (sets > 2 or reps == 1):
            sets -= 1
        elif reps > 1:
            reps -= 1
        else:
            sets -= 1
    if sets * reps < wanted:
        draft.decide("dose", rung.id, "exposures_capped", {"rung": rung.id, "reps": sets * reps, "wanted_reps": wanted})
    assist, load = 0.0, 0.0
    if name == "one_arm_counterweight":
        assist = _counterweight(today, climb)
    elif dose.load_kg and history.can_load(today.day):
        load = round_down_to_plates(dose.load_kg, history.plates.step, history.plates.unit)
    sides = weaker_first(history, rung, today.day)
    for _ in range(sets):
        draft.skill += [
            PlannedSet(
                name,
                "skill",
                reps,
                side=side,
                load_kg=load,
                assist_kg=assist,
                rpe=ceiling,
                rom=rom,
                pauses=dose.pauses,
                rung=rung.id if name == rung.movement else None,
            )
            for side in sides
        ]
    draft.decide("dose", rung.id, "dose_of_rung", {"rung": rung.id, "dose": climb.position.dose.label, "sets": sets})


def _counterweight(today: Today, climb: Climb) -> float:
    """Help [kg] of the counterweight: the least that two reps were done with, at most a tenth of bodyweight; a plate
    step less once every dose is held."""
    history = today.history
    most = history.rules.number("gate.counterweight_share_max") * history.bodyweight.on(today.day)
    recent = [
        work.assist_kg
        for one in history.between(today.day - 120 * DAY, today.day)
        for work in one.sets
        if work.movement == "one_arm_counterweight" and (work.reps or 0) >= 2 and 0 < work.assist_kg <= most
    ]
    step, unit = history.plates.step, history.plates.unit
    if not recent:
        return round_down_to_plates(most, step, unit)
    least = min(recent)
    if climb.position.dose.is_variant:
        return round_up_to_plates(max(least - round_up_to_plates(1e-3, step, unit), 0.0), step, unit) or least
    return least


def _hold_sets(today: Today, draft: Draft, rung: Rung, dose: Step, ceiling: float) -> None:
    rules = today.history.rules
    best = best_hold(today.history.between(today.day - rules.whole("gate.days") * DAY, today.day), rung.movement)
    sets = 2 if today.slot.is_deload else dose.sets
    if best is None:
        draft.decide("dose", rung.id, "hold_unknown", {"rung": rung.id})
        draft.skill += [PlannedSet(rung.movement, "skill", None, rpe=ceiling, rung=rung.id)] * sets
        return
    seconds = max(2.0, float(int(best * rules.number("hold.work_share"))))
    draft.skill += [PlannedSet(rung.movement, "skill", None, hold_s=seconds, rpe=ceiling, rung=rung.id)] * sets
    draft.decide("dose", rung.id, "hold_of_best", {"rung": rung.id, "seconds": seconds, "best_s": best, "sets": sets})


def _fits(today: Today, adds: Mapping[Side, int], *, hold: bool = False) -> bool:
    """Whether so many more exposures today keep the week's cap on each side.

    The week is the training week of today; the three before it make the mean, a deload week counting as the
    week before it. With `hold` the week may not be above the last one.
    """
    rules, start = today.history.rules, today.slot.week_start
    share, least = rules.number("skill.rise_share"), rules.whole("skill.rise_reps")
    length = week_length(today.history.athlete.schedule)
    starts = [start - back * length * DAY for back in range(6)]
    deload = [_is_deload_week(today, first, length) for first in starts]
    for side in SIDES:
        weeks = [_exposures(today, side, first, length) for first in starts]
        before = [weeks[back + 1] if deload[back] else weeks[back] for back in (1, 2, 3)]
        mean = sum(before) / 3
        cap = max(mean * (1 + share), mean + least)
        if hold and any(before):
            cap = min(cap, float(max(before)))
        if weeks[0] + adds[side] > cap + 1e-9:
            return False
    return True


def _exposures(today: Today, side: Side, first: date, length: int) -> int:
    """One-arm reps of a side in the week from `first`, before today's; planned ones of days still ahead included."""
    total = 0
    for ahead in range(length):
        day = first + ahead * DAY
        if day != today.day:
            done = today.history.exposures.get(day) or today.planned_ahead.get(day)
            total += done[side] if done else 0
    return total


def _is_deload_week(today: Today, first: date, length: int) -> bool:
    return any(
        (slot := today.timeline.by_day.get(first + ahead * DAY)) is not None and slot.is_deload and slot.pulling
        for ahead in range(length)
    )


def _share_joints(today: Today, draft: Draft) -> None:
    """Several ladders, one pair of elbows: sets over the day's budget are taken from the ladders named last."""
    budget = today.history.rules.whole("skill.joint_sets_a_day")
    used: dict[str, int] = {}
    kept: list[PlannedSet] = []
    left_out: set[str] = set()
    for one in draft.skill:
        joints = movement(one.movement).loads
        if any(used.get(joint, 0) >= budget for joint in joints):
            left_out.add(one.rung or one.movement)
            continue
        for joint in joints:
            used[joint] = used.get(joint, 0) + 1
        kept.append(one)
    for rung in sorted(left_out):
        draft.decide("dose", rung, "joints_shared", {"rung": rung, "sets": budget})
    draft.skill = kept


# ---- Orders and accessories -----------------------------------------------------------------------------------------


def _orders(today: Today, draft: Draft) -> None:
    history = today.history
    lock = history.orders.load_locked(frozenset(one.movement for one in draft.main), True, today.day)
    if lock is not None and lock.load_kg is not None and draft.main:
        draft.main = [
            replace(one, load_kg=lock.load_kg, assist_kg=0.0) if lock.movement in (None, one.movement) else one
            for one in draft.main
        ]
        _without_load_reason(draft)
        draft.hold("lock_load", draft.main[0].movement, lock.load_kg)
        draft.decide("order", draft.main[0].movement, "load_locked", {"load_kg": lock.load_kg, "until": lock.until})
    for order in history.orders.sets_for(today.day):
        _set_sets(today, draft, order)
    if draft.main and not draft.warm_up:
        _warm_up(today, draft)


def _set_sets(today: Today, draft: Draft, order: Order) -> None:
    main = draft.main[0] if draft.main else None
    name = order.movement or (main.movement if main else today.slot.main)
    if today.stopped(name):
        return
    found = movement(name)
    as_main = order.movement is None or main is None or main.movement == name
    models = draft.main if as_main else [one for one in draft.skill if one.movement == name]
    model = models[0] if models else PlannedSet(name, "main" if not found.one_arm else "skill", None, rpe=8.0)
    one = replace(
        model,
        reps=order.reps if order.reps is not None else model.reps,
        load_kg=order.load_kg if order.load_kg is not None else model.load_kg,
        assist_kg=0.0 if order.load_kg is not None else model.assist_kg,
    )
    count = order.sets if order.sets is not None else max(1, len(models))
    sides = (weaker_first_of(today, name) if found.one_sided else (None,)) if model.side is None else SIDES
    sets = [replace(one, side=side) for _ in range(count) for side in sides]
    if found.one_arm:
        draft.skill = [kept for kept in draft.skill if kept.movement != name] + sets
    elif as_main:
        _without_load_reason(draft)
        draft.main = sets
        draft.warm_up = []
    else:
        draft.accessories += [replace(made, part="accessory") for made in sets]
    draft.hold("set_sets", name, f"{count}x{one.reps}@{one.load_kg:g}")
    values: dict[str, Value] = {"movement": name, "sets": count, "reps": one.reps, "load_kg": one.load_kg}
    draft.decide("order", name, "sets_ordered", values)


def _without_load_reason(draft: Draft) -> None:
    """The coach's word takes the place of the planner's reason for the same load."""
    about = {one.movement for one in draft.main}
    draft.decisions = [one for one in draft.decisions if not (one.kind == "load" and one.about in about)]


def weaker_first_of(today: Today, name: str) -> tuple[Side, Side]:
    for climb in today.climbs:
        for rung in climb.position.ladder.rungs:
            if rung.movement == name:
                return weaker_first(today.history, rung, today.day)
    return SIDES


def _accessories(today: Today, draft: Draft) -> None:
    slot = today.slot
    kind = "test" if slot.kind in AS_IF_TEST else slot.kind
    for row in blocks.shipped().accessories[kind]:
        found = movement(row.movement)
        if row.movement in today.excluded or not found.possible_with(today.equipment):
            continue
        pain = today.pain_of(row.movement)
        if pain is not None and pain.level != "hold":
            continue
        one = PlannedSet(
            row.movement,
            "accessory",
            None if found.hold else row.amount,
            hold_s=float(row.amount) if found.hold else None,
            rpe=row.rpe,
        )
        sides = SIDES if found.one_sided else (None,)
        draft.accessories += [replace(one, side=side) for _ in range(row.sets) for side in sides]
