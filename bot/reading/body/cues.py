"""The words of a message that speak of the body and of the session, by table and name."""

from __future__ import annotations

from bot.reading.better import withdrawn
from bot.reading.message import Message

BETWEEN = 8  # tokens between a cue and its number


SIGNS_BETWEEN = ":=-~(,"


ARROW = frozenset({"→", "➡", "➜", ">", "-", "="})  # "72.4 -> 71.9"


class BodyCues:
    def __init__(self, message: Message) -> None:
        self.message = message
        self.tokens = message.tokens
        self.withdrawn = withdrawn(message)
        self.at: dict[tuple[str, str], dict[int, int]] = {}
        for hit in message.hits("body"):
            if hit.name == "lb" and message.tokens[hit.start].value is not None:
                continue  # "#" is pounds, and any number in a phrase
            places = self.at.setdefault((hit.table, hit.name), {})
            places[hit.start] = max(places.get(hit.start, 0), hit.end)
        self.tables = {table for table, _ in self.at}

    def starts(self, table: str, name: str) -> dict[int, int]:
        return self.at.get((table, name), {})

    def covered(self, table: str, *names: str) -> set[int]:
        return {at for name in names for start, end in self.starts(table, name).items() for at in range(start, end)}


def number_after(
    body: BodyCues, end: int, bounds_end: int, *between: tuple[str, str], signs: str = SIGNS_BETWEEN
) -> int | None:
    """The first number behind a cue with nothing but small words between."""
    fill: set[int] = set()
    for table, name in between:
        fill |= body.covered(table, name)
    for at in range(end, min(bounds_end, end + BETWEEN)):
        token = body.tokens[at]
        if at in body.withdrawn:
            continue
        if token.spelled and token.value == 1 and at + 1 < bounds_end and body.tokens[at + 1].value is not None:
            continue  # the "un" of "un 7"
        if token.value is not None:
            return at
        if at not in fill and body.tokens[at].text not in signs:
            return None
    return None


def diary_heads(message: Message) -> dict[int, str]:
    """The heads of a diary of pain, "morning 2, training 1, evening 0": two moments or more, each before its number."""
    hits = [hit for hit in message.hits("body") if hit.table in ("diary", "when")]
    led = {hit.end for hit in hits if hit.end < len(message.tokens) and message.tokens[hit.end].value is not None}
    return {hit.start: hit.name for hit in hits if hit.table == "diary" and hit.end in led} if len(led) > 1 else {}
