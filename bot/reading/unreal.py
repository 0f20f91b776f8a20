"""What was wished, planned, long past or done by others is no report: its numbers are taken out of the facts."""

from __future__ import annotations

from collections.abc import Collection

from bot.reading.facts import Fact
from bot.reading.message import Message

NUMBERS = frozenset(
    {"rows", "bare", "loads", "count", "load", "at", "left", "percent", "effort", "side", "instead", "ask"}
)

UNREAL = frozenset({"wanted", "others", "past", "when", "ahead"})


def _number_next(message: Message, at: int) -> bool:
    """Whether a number follows, perhaps after a colon."""
    while at < len(message.tokens) and message.tokens[at].text == ":":
        at += 1
    return at < len(message.tokens) and message.tokens[at].value is not None


def _speaks_later(message: Message, me: Collection[int], at: int) -> bool:
    """Whether the athlete speaks of themselves later in the sentence: "my dad, 63, did 8, I did 12"."""
    while at < len(message.tokens) and message.tokens[at].text not in (".", "!", "?", ";", "\n"):
        if at in me:
            return True
        at += 1
    return False


def _sentence_start(message: Message, at: int) -> int:
    while at and message.tokens[at - 1].kind != "nl" and message.tokens[at - 1].text not in (".", "!", "?", ";"):
        at -= 1
    return at


def drop_unreal(message: Message, facts: list[Fact], taken: Collection[int] = ()) -> list[Fact]:
    """The facts without the numbers of wishes and tales.

    Such a tale runs to what the athlete did do, or to the end of its clause.
    """
    hits = list(message.book("grammar").every(message.tokens))
    opens: dict[int, int] = {}
    closes: set[int] = set()
    past: set[int] = set()
    now: set[int] = set()
    when: set[int] = set()
    others: set[int] = set()
    me: set[int] = set()  # where the athlete speaks of themselves: "my wife did 5, I did 8"
    for hit in hits:
        if hit.table == "unreal" and hit.name == "ahead" and not _number_next(message, hit.end):
            continue  # "as planned but 2 on the last"
        if hit.table == "unreal" and hit.name in UNREAL and hit.start not in taken:
            if hit.name in ("when", "ahead"):
                when.add(hit.start)
            opens[hit.start] = max(opens.get(hit.start, 0), hit.end)
            if hit.name == "past":
                past.add(hit.start)
            elif hit.name == "others":
                others.add(hit.start)
        elif hit.table == "unreal" and hit.name in ("own", "now"):
            closes.add(hit.start)
            if hit.name == "now":
                now.add(hit.start)
        elif hit.table == "unreal" and hit.name == "me":
            me.add(hit.start)
            closes.add(hit.start)
    if not closes:
        opens = {start: end for start, end in opens.items() if start not in when}
    mocked = [hit for hit in hits if hit.table == "unreal" and hit.name == "mocked"]
    if not opens and not mocked:
        return facts
    dead = {at for hit in mocked for at in range(_sentence_start(message, hit.start), hit.end)}
    for start, end in sorted(opens.items()):
        at = end
        while at < len(message.tokens):
            token = message.tokens[at]
            if token.kind == "nl" or token.text in (".", "!", "?", ";"):
                break
            if at in (now if start in past else me if start in others else closes) and at > end:
                break
            if token.text == "," and not (start in others and _speaks_later(message, me, at)):
                break
            dead.add(at)
            at += 1
    return [fact for fact in facts if not (fact.kind in NUMBERS | {"scope"} and fact.start in dead)]
