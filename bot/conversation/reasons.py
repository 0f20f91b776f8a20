"""Decisions in words: each reason is one sentence of the catalogue, its numbers shown in the reader's unit."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from bot.wording import Wording
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


def rung_name(rung: str, say: Wording) -> str:
    return named(f"rung-{rung}", rung, say)


def named(key: str, plain: str, say: Wording) -> str:
    return say.say(key) if say.has(key) else plain.replace("_", " ")
