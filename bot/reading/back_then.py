"""Numbers of a day gone by, behind one's own: "ring dips 3x7. Nine was last week", "(last month's best was 30)"."""

from __future__ import annotations

from collections.abc import Collection

from bot.reading.days.months import months_gone
from bot.reading.little import little
from bot.reading.message import Message

ENDS = frozenset({".", "!", "?", ";", "\n", ",", "(", ")", "-", "–"})
MOST_BEHIND = 3  # tokens from a day to the word for its best: "last month's best"


def back_then(
    message: Message, days: Collection[int], whens: Collection[int], now: Collection[int]
) -> list[tuple[int, int]]:
    """The clauses, by token, that tell only what was reached on a day gone by; others of the message tell numbers too.

    `days`: tokens of days, `whens`: of "last week" and the like, `now`: of today.
    """
    months = {at for hit in months_gone(message) for at in range(hit.start - 1, hit.end)}
    days, whens = {*days, *whens, *months}, {*whens, *months}
    if not days or "was_once" not in message.little:
        return []
    spans: list[tuple[int, int]] = []
    for start, end in _runs(days):
        low, high = _clause(message, start, end)
        outside = message.numbers_within(0, low) + message.numbers_within(high, len(message.tokens))
        if not outside or any(at in now for at in range(start, end)):
            continue
        told = _number_was(message, low, start, end, high) or _best_was(message, low, start, end, high)
        undated = not whens.isdisjoint(range(start, end))
        named = any(message.beginning("movements")[at] for at in range(low, high))
        told = told or (undated and not named and _was_then(message, low, start, end, high))
        if told or (undated and (now or not named) and _work_was(message, low, start, end, high)):
            spans.append((low, high))
    return spans


def _runs(days: Collection[int]) -> list[tuple[int, int]]:
    runs: list[tuple[int, int]] = []
    for at in sorted(days):
        if runs and runs[-1][1] == at:
            runs[-1] = runs[-1][0], at + 1
        else:
            runs.append((at, at + 1))
    return runs


def _clause(message: Message, start: int, end: int) -> tuple[int, int]:
    tokens = message.tokens
    while start and tokens[start - 1].text not in ENDS:
        start -= 1
    while end < len(tokens) and tokens[end].text not in ENDS:
        end += 1
    return start, end


def _number_was(message: Message, low: int, start: int, end: int, high: int) -> bool:
    """ "Nine was last week", "the nines were on Monday", "neun waren es letzte Woche"."""
    tokens = message.tokens
    at = low + (tokens[low].text in little("the"))
    counted = any(hit.table == "count" for hit in message.beginning("grammar")[at])
    was = next((n for n in range(at + 1, start) if tokens[n].text in little("was_once")), None)
    if was is None or end != high or not (tokens[at].value is not None or counted):
        return False
    alone = not any(message.beginning("movements")[n] for n in range(at, start))
    return alone and all(token.value is None and token.kind == "word" for token in tokens[at + 1 : start])


def _work_was(message: Message, low: int, start: int, end: int, high: int) -> bool:
    """ "Pull-ups 5x3 was last week", beside what was done today."""
    return (
        end == high and message.tokens[start - 1].text in little("was_once") and message.numbers_within(low, start) > 0
    )


def _was_then(message: Message, low: int, start: int, end: int, high: int) -> bool:
    """ "That was 20 in March", "im März waren es 15": a number, and of what time it was."""
    tokens = message.tokens
    head = low + (tokens[low].text in little("that_once"))
    if end == high and head < start and tokens[head].text in little("was_once"):
        return message.numbers_within(head, start) == 1
    led = start == low and end < high and any(token.text in little("was_once") for token in tokens[end : end + 2])
    return led and message.numbers_within(end, high) > 0


def _best_was(message: Message, low: int, start: int, end: int, high: int) -> bool:
    """ "Last month's best was a triple with 30", "Bestleistung letzten Monat war …"."""
    tokens = message.tokens
    was = next((n for n in range(end, high) if tokens[n].text in little("was_once")), None)
    if was is None or was > end + MOST_BEHIND:
        return False
    best = any(token.text in little("best_then") for token in (*tokens[low:start], *tokens[end:was]))
    alone = not any(message.beginning("movements")[at] for at in range(low, high))
    return best and alone and not message.numbers_within(low, start) and message.numbers_within(was, high) > 0
