"""Days named in a message: weekdays, dates, feasts, "yesterday", "until the 3rd", lengths, what links them."""

from bot.reading.days.day import Day
from bot.reading.days.finder import DayFinder, named_days
from bot.reading.days.nearest import day_of_month

__all__ = ["Day", "DayFinder", "day_of_month", "named_days"]
