"""Decisions in words: each reason is one sentence of the catalogue, its numbers shown in the reader's unit."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from typing import Any

from bot.wording import Wording
from planner.facts import Order
from planner.plan import Alert, Decision, Reason

NAMES_OF_MOVEMENTS = {"movement", "main", "grip", "instead_of", "from_movement", "to_movement"}
NAMES_OF_RUNGS = {"rung", "next_rung", "from_rung", "to_rung"}


def reason_in_words(reason: Reason | Alert, say: Wording, prefix: str = "reason") -> str:
    return say.say(f"{prefix}-{reason.code}", **shown(reason.values, say))


def decision_in_words(decision: Decision, say: Wording) -> str:
    return " ".join(reason_in_words(reason, say) for reason in decision.reasons)


def decisions_in_words(decisions: Iterable[Decision], say: Wording) -> list[str]:
    return list(dict.fromkeys(decision_in_words(one, say) for one in decisions if one.reasons))


def shown(values: Any, say: Wording) -> dict[str, Any]:
    """Slots by their names: `…_kg` as loads, movements, rungs and sites by name."""
    found: dict[str, Any] = {}
    for name, value in values.items():
        if name.endswith("_kg") and isinstance(value, (int, float)):
            found[name] = say.load(float(value))
        elif name in NAMES_OF_MOVEMENTS and isinstance(value, str):
            found[name] = say.movement(value)
        elif name in NAMES_OF_RUNGS and isinstance(value, str):
            found[name] = rung_name(value, say)
        elif name == "ladder" and isinstance(value, str):
            found[name] = named(f"ladder-{value}", value, say)
        elif name == "site" and isinstance(value, str):
            found[name] = named(f"site-{value}", value, say)
        elif name == "side" and isinstance(value, str):
            found[name] = named(f"side-{value}", value, say)
        elif name == "sign" and isinstance(value, str):
            found[name] = named(f"sign-{value}", value, say)
        else:
            found[name] = "" if value is None else value
    return found


def until_in_words(day: date | None, say: Wording) -> str:
    return say.say("until-day", day=day) if day is not None else say.say("until-lifted")


def order_in_words(order: Order, say: Wording) -> str:
    """What the coach ordered, in a few words."""
    load = say.say("no-added-load") if not order.load_kg else f"+{say.load(order.load_kg)}"
    value = say.movement(str(order.value)) if order.kind == "swap" else order.value
    return say.say(
        f"order-{order.kind}",
        rung=rung_name(order.rung or "", say),
        movement=say.movement(order.movement) if order.movement else "",
        until=until_in_words(order.until, say),
        for_date=order.for_date or "",
        sets=order.sets or 0,
        reps=order.reps or 0,
        load=load,
        rule=order.rule or "",
        value=value if value is not None else "",
    )


def rung_name(rung: str, say: Wording) -> str:
    return named(f"rung-{rung}", rung, say)


def named(key: str, plain: str, say: Wording) -> str:
    return say.say(key) if say.has(key) else plain.replace("_", " ")
