"""Messages that lean on the day's plan."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.message import Message


def leans(message: Message, facts: list[Fact]) -> bool:
    return False


def read_plan(message: Message, facts: list[Fact], work: object, fold: object, claims: object) -> None:
    return


def read_bare(message: Message, facts: list[Fact], work: object, fold: object) -> None:
    return
