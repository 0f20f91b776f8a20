"""What keeps a load of the main lift down, and what was shown that it may be again."""

from __future__ import annotations

from planner.blocks import Work
from planner.digest import sets_in
from planner.draft import DAY, Draft, Today, cut_of, late_exposures
from planner.movements import movement
from planner.repetitions import MAX_REPS_AS_EVIDENCE, load_ratio
from planner.shown import VOLUME_RPE
from planner.timeline import AS_IF_TEST, Exposure, ceiling_of
from planner.units import round_up_to_plates

SHOWN_DAYS = 42  # a set done within the ceiling proves so long that it can be done again; common practice


def ceilings(today: Today, name: str, body_kg: float, last: Exposure | None, draft: Draft) -> list[tuple[str, float]]:
    """Caps on the system load [kg], each with its reason's code."""
    rules, slot = today.history.rules, today.slot
    found: list[tuple[str, float]] = []
    pain = today.pain_of(name)
    # A test that a sore joint cuts short is a day of the deload like the others.
    cut_short = slot.kind == "test" and pain is not None and pain.level != "hold"
    if slot.is_deload and (slot.kind == "deload" or cut_short):
        of_block = [one for one in today.timeline.exposures if one.slot.block == slot.block and not one.slot.is_deload]
        first = min((one.slot.week for one in of_block), default=1)  # who missed week 1 is compared with the next
        week_one = [one for one in of_block if one.slot.week == first]
        if week_one:
            lightest = min(body_kg + one.added_kg for one in week_one)
            found.append(("load_deload", lightest * rules.number("block.deload_share")))
        step_kg = round_up_to_plates(1e-3, today.history.plates.step, today.history.plates.unit)
        found += [
            ("load_deload", body_kg + one.added_kg - step_kg)
            for one in late_exposures(today, rules.whole("block.deload_days_below"))
        ]
    if slot.kind in AS_IF_TEST:
        if pain is not None and (
            late := [body_kg + one.added_kg for one in late_exposures(today, 28) if one.movement == name]
        ):
            found.append(("load_hold_pain", max(late)))
        return found
    if last is not None and last.over is not None:
        then_kg = body_kg + last.added_kg
        if last.over >= rules.number("effort.cut_over"):
            draft.hold("effort", last.on)
            found.append(("load_cut_effort", then_kg * (1.0 - rules.number("effort.cut"))))
        elif last.over >= rules.number("effort.hold_over"):
            found.append(("load_hold_effort", then_kg))
    if last is not None and last.short:
        # No effort was told, but a rep that is missing tells that there was hardly one left.
        found.append(("load_hold_short", body_kg + last.added_kg))
    if pain is not None and pain.level in ("hold", "step_back"):
        done = last or next((one for one in reversed(late_exposures(today, 28)) if one.movement == name), None)
        if done is not None:
            found.append(("load_hold_pain", body_kg + done.added_kg))
    return found


def shown_kg_of(today: Today, name: str, work: Work, last: Exposure | None) -> float | None:
    """The heaviest system load [kg] lately done for at least this work within this effort; None where not asked for.

    What was done so can be done so again: the cautious edge of the trend and the rounding down must not eat a plate
    each week from an athlete who tells exactly the ceiling. Not where the last exposure was over it or short of its
    reps, or after a cut.
    """
    strained = last is not None and ((last.over or 0.0) > 0 or last.short > 0)
    if today.slot.kind == "deload" or cut_of(today, name) > 0 or strained:
        return None
    history, wanted = today.history, work.reps + 10.0 - work.rpe
    body_kg = history.bodyweight.on(today.day) * movement(name).bodyweight_share
    too_hard = [one.on + DAY for one in late_exposures(today, SHOWN_DAYS) if (one.over or 0.0) > 0 or one.short]
    since = max([today.day - SHOWN_DAYS * DAY, *too_hard])  # a set over its ceiling withdraws what was shown before it
    shown = [
        body_kg + one.load_kg - one.assist_kg
        for session in history.between(since, today.day - DAY)
        for one in sets_in(session, name)
        if one.rpe is not None
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


def reps_shown(today: Today, name: str) -> float:
    """The most reps to failure lately shown at bodyweight by a set near its end; 0 where there is none."""
    return max(
        (
            one.reps + 10.0 - one.rpe
            for session in today.history.between(today.day - SHOWN_DAYS * DAY, today.day - DAY)
            for one in sets_in(session, name)
            if one.reps and one.rpe is not None and one.rpe >= VOLUME_RPE
            if one.rom == "full" and not one.assist_kg and not one.failed and not one.linked
        ),
        default=0.0,
    )
