"""What a rule may be, in the coach's words: its kind, range or choices as the rule's own data have them."""

from __future__ import annotations

from bot.wording import Wording
from planner.rules import Rule


def allowed(rule: Rule, say: Wording) -> str:
    """The sentence for a value that the rule may not take."""
    if isinstance(rule.value, bool):
        return say.say("rule-wants-switch", rule=rule.name)
    if isinstance(rule.value, str):
        return say.say("rule-wants-choice", rule=rule.name, choices=say.listed(list(rule.choices)))
    if rule.low is None or rule.high is None:
        return say.say("rule-wants-number", rule=rule.name)
    values = {"rule": rule.name, "low": float(rule.low), "high": float(rule.high), "unit": rule.unit}
    return say.say("rule-wants-whole" if isinstance(rule.value, int) else "rule-wants-range", **values)
