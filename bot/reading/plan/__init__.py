"""What is told against the day's plan."""

from bot.reading.plan.fitting import fill_from_plan
from bot.reading.plan.leaning import leans
from bot.reading.plan.read import read_bare, read_part, read_plan
from bot.reading.plan.terms import in_terms

__all__ = ["fill_from_plan", "in_terms", "leans", "read_bare", "read_part", "read_plan"]
