"""Decisions in words: each reason is one sentence of the catalogue, its numbers shown in the reader's unit."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import replace
from datetime import date, timedelta
from typing import Any

from bot.wording import Wording
from planner.facts import Order
from planner.plan import Alert, Decision, Reason

NAMED = {"ladder", "site", "side", "sign"}
DATED = frozenset({"set_sets", "step_sets"})
DOSE = re.compile(r"\d+(?:x\d| holds)")
LOAD_OF_DOSE = re.compile(r"\+([\d.]+) kg")
# What every plan has; a plan shows only what is out of the usual, "why" shows all.
SAME_YEAR = timedelta(days=334)  # eleven months: a day further ahead could be taken for one of this year
USUAL = {
    "load_up", "load_same", "load_block", "load_first", "load_capped", "load_deload", "load_test",
    "dose_of_rung", "dose_volume", "hold_of_best", "pain_fine",
}  # fmt: skip


WEIGHT = ("stop", "order", "absence", "deload", "start", "pain", "rung", "grip", "load", "dose")


def reason_in_words(reason: Reason | Alert, say: Wording, prefix: str = "reason") -> str:
    values = {"since": reason.since, **reason.values} if isinstance(reason, Alert) else reason.values
    return say.say(f"{prefix}-{reason.code}", **shown(values, say))


def decision_in_words(decision: Decision, say: Wording) -> str:
    return " ".join(reason_in_words(reason, say) for reason in decision.reasons)


def decisions_in_words(decisions: Iterable[Decision], say: Wording) -> list[str]:
    return list(dict.fromkeys(decision_in_words(one, say) for one in decisions if one.reasons))


def unusual(decisions: Iterable[Decision]) -> list[Decision]:
    """Those that an athlete should see without asking, what was decided by people first.

    What a rule made of a load that the coach has set is no news.
    """
    told = [one for one in decisions if any(reason.code not in USUAL for reason in one.reasons)]
    ordered = {one.about for one in told if one.kind == "order"}
    told = [one for one in told if one.kind != "load" or one.about not in ordered]
    return sorted(told, key=lambda one: WEIGHT.index(one.kind))


def shown(values: Mapping[str, Any], say: Wording) -> dict[str, Any]:
    """Slots by their names: `…_kg` as loads, movements, rungs, places and days in words."""
    found = {name: _slot(name, value, say) for name, value in values.items()}
    if "site" in values:
        found["place"] = place(values["site"], values.get("side"), say)
    if "was_kg" in values and "now_kg" in values:
        found["change"] = "less" if values["now_kg"] < values["was_kg"] else "more"
    if "before_kg" in values:
        # The last session is often of another kind; plans of old do not say which one was compared with.
        day = values.get("before_on")
        found["before_when"] = say.say("compared-with-last" if day is None else "compared-with", day=day or "")
    if "reps_left" in values:
        found["shown"] = say.say("shown-sides", left=values["reps_left"], right=values["reps_right"])
    elif "on_day" in values:
        unit = "seconds" if "seconds" in values else "reps"
        found["shown"] = say.say(f"shown-{unit}", **{unit: values.get(unit, 0)})
    return found


def _slot(name: str, value: Any, say: Wording) -> Any:
    if name == "until":
        return until_in_words(value, say)
    if value is None:
        return "–"
    if name.endswith("_kg") and isinstance(value, (int, float)):
        if name.startswith("e1rm"):
            return say.about(float(value))
        return say.load(float(value)) if value else say.say("no-added-load")
    if not isinstance(value, str):
        return value
    if name == "movement":
        return say.movement(value)
    if name == "rung":
        return rung_name(value, say)
    if name == "dose" or DOSE.match(value):
        return dose_in_words(value, say)
    if name == "before":
        return rung_name(value, say) if say.has(f"rung-{value}") else say.movement(value)
    if name == "sides":
        return say.listed([named(f"side-{side}", side, say) for side in value.split(", ")])
    return named(f"{name}-{value}", value, say) if name in NAMED else value


def dose_in_words(label: str, say: Wording) -> str:
    """A dose as the planner labels it ("2x1 half pause top +2.5 kg"), in the reader's words, number and unit."""
    told = LOAD_OF_DOSE.sub(lambda found: f"+{say.load(float(found[1]))}", label)
    return re.sub(r"[a-z]{3,}", lambda found: named(f"dose-{found[0]}", found[0], say), told)


def place(site: str | None, side: str | None, say: Wording) -> str:
    """ "left inner elbow"; a language whose adjectives agree with the place has names for place and side together."""
    if site and side and say.has(f"site-{site}-{side}"):
        return say.say(f"site-{site}-{side}")
    name = named(f"site-{site}", site, say) if site else say.say("site-unnamed")
    return say.say("site-with-side", side=say.say(f"side-{side}"), site=name) if side else name


def until_in_words(day: date | None, say: Wording, since: date | None = None) -> str:
    """`since`: the day it was said; a day most of a year after it is said with its year."""
    if day is not None and since is not None and day - since > SAME_YEAR:
        return say.say("until-day", day=f"{say.day(day)} {day.year}")
    return say.say("until-day", day=day) if day is not None else say.say("until-lifted")


def order_in_words(order: Order, say: Wording) -> str:
    """What the coach ordered, in a few words."""
    return _order_in_words(order, say, say.day(order.for_date) if order.for_date is not None else "")


def _order_in_words(order: Order, say: Wording, days: str) -> str:
    load = say.say("no-added-load") if not order.load_kg else f"+{say.load(order.load_kg)}"
    if order.load_kg is None:
        load = say.say("load-as-planned")
    value = say.movement(str(order.value)) if order.kind == "swap" else order.value
    if order.kind == "train_on":
        site, _, side = str(order.value).partition(":")
        value = place(site, side or None, say)
    if order.kind == "hold_rung" and order.ladder is not None:
        return say.say(
            "order-hold_rung-of",
            ladder=ladder_name(order.ladder, say),
            until=until_in_words(order.until, say, order.on),
        )
    key = f"order-{order.kind}"
    if order.kind == "set_sets" and order.movement is not None:
        key = "order-set_sets-of"
    elif order.kind == "unlock" and isinstance(order.value, str):
        key = f"order-unlock-{order.value}"
    return say.say(
        key,
        rung=rung_name(order.rung or "", say),
        movement=say.movement(order.movement) if order.movement else "",
        until=until_in_words(order.until, say, order.on),
        for_date=days,
        step=step_in_words(order, say) if order.kind == "step_sets" else "",
        sets=order.sets or 0,
        reps=order.reps or 0,
        load=load,
        rule=order.rule or "",
        value=value if value is not None else "",
    )


def orders_in_words(orders: Iterable[Order], say: Wording) -> str:
    """Several orders; what is the same for several days is said once."""
    days: dict[Order, list[date]] = {}
    for one in orders:
        dated = one.kind in DATED and one.for_date is not None
        alike = replace(one, fact=None, for_date=None, until=None) if dated else replace(one, fact=None)
        of_alike = days.setdefault(alike, [])
        if dated and one.for_date is not None:
            of_alike.append(one.for_date)
    return "; ".join(_order_in_words(one, say, say.listed([say.day(day) for day in on])) for one, on in days.items())


def step_in_words(order: Order, say: Wording) -> str:
    """ "+1.25 kg", "−1 set", "−10 %"."""
    by = order.sets or order.reps or order.load_kg or order.value or 0
    by = float(by) if isinstance(by, (int, float)) else 0.0
    sign, size = "+" if by > 0 else "−", abs(by)
    if order.sets or order.reps:
        return sign + say.say("step-sets" if order.sets else "step-reps", count=int(size))
    return f"{sign}{say.load(size)}" if order.load_kg else f"{sign}{say.number(size)} %"


def ladder_name(ladder: str, say: Wording) -> str:
    return named(f"ladder-{ladder}", ladder, say)


def rung_name(rung: str, say: Wording) -> str:
    return named(f"rung-{rung}", rung, say)


def named(key: str, plain: str, say: Wording) -> str:
    return say.say(key) if say.has(key) else plain.replace("_", " ")
