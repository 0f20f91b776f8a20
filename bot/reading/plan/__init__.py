"""What is told against the day's plan."""

from bot.reading.plan.fitting import fill_from_plan
from bot.reading.plan.leaning import leans
from bot.reading.plan.read import read_bare, read_plan

__all__ = ["fill_from_plan", "leans", "read_bare", "read_plan"]
