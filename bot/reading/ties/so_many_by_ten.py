"""Sets of ten told beside sets of fewer: "dos de 10 y dos de 8" is no effort of two out of ten."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.message import Message

TEN = 10
MOST = 6  # sets told so


def so_many_by_ten(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts with both as sets."""
    for at in range(len(facts) - 4):
        ten, joined, many, of, each = facts[at : at + 5]
        words = message.tokens[ten.start : ten.end]
        led = ten.kind == "effort" and len(words) == 3 and words[0].value in range(1, MOST) and words[2].value == TEN
        if not led or joined.kind != "sep" or many.kind != "bare" or not many.note.get("spelled"):
            continue
        if of.kind != "word" or message.tokens[of.start].text != words[1].text or each.kind != "bare":
            continue
        first = [Entry(TEN) for _ in range(int(words[0].value or 0))]
        second = [Entry(int(each.value)) for _ in range(int(many.value))]
        rows = [
            Fact("rows", ten.start, each.end, [*first, *second], {"list": True, "mark": " "}),
        ]
        return [*facts[:at], *rows, *facts[at + 5 :]]
    return facts
