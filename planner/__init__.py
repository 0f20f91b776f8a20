"""The trade: a plan follows from the facts. Pure functions; `planner/RULES.md` maps the trade's rules to functions."""

from planner import ladders, movements, rules
from planner.review import plan_for, review, week_ahead

__all__ = ["ladders", "movements", "plan_for", "review", "rules", "week_ahead"]
