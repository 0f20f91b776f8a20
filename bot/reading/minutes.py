"""Minutes and seconds told one after the other are one time: "1 min 20", "a minute and ten seconds", "1'20", "1m20"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.everyday import everyday
from bot.reading.items import END, Item
from bot.reading.little import little
from bot.reading.message import Message

MOST_MINUTES = 10  # of a hold
LEAST_CLOSING = 10  # of "1 minute 20"; fewer may be reps
MINUTE = 60
SHORT = frozenset({"m", "'"})  # read so only where the seconds are written on to them
COUNTED = frozenset({"unit", "sets", "reps", "count", "times", "ofsets"})  # words that say what a number is of
SECONDS = (("unit", "sec"),)


def join_minutes(message: Message, items: Sequence[Item]) -> Sequence[Item]:
    """The items, each time of minutes and seconds one number of seconds."""
    if not any(item.text in SHORT or item.has("unit", "min") for item in items):
        return items
    out: list[Item] = []
    at = 0
    while at < len(items):
        made, after = _time(message, items, at)
        out += made or [items[at]]
        at = after if made else at + 1
    return out


def _time(message: Message, items: Sequence[Item], at: int) -> tuple[list[Item], int]:
    """The time that begins here as its seconds and their unit, and the place after it; none: no items."""

    def item(place: int) -> Item:
        return items[place] if place < len(items) else END

    minutes, unit = items[at], item(at + 1)
    many = 1.0 if minutes.value is None and minutes.text in little("a") else minutes.value
    if many is None or many not in range(1, MOST_MINUTES + 1):
        return [], at
    short = unit.text in SHORT and not unit.space
    if not short and not unit.has("unit", "min"):
        return [], at
    place = at + 3 if item(at + 2).has("sep", "and") else at + 2
    seconds = item(place)
    if seconds.kind != "num" or seconds.value is None or seconds.value not in range(MINUTE):
        return [], at
    tight = not seconds.space and len(seconds.text) > 1
    end = place + 1
    if item(end).has("unit", "sec"):
        end += 1
    elif short:
        if not tight:
            return [], at
    elif not tight and not _closes(message, items, place, in_words=minutes.spelled or minutes.value is None):
        return [], at
    whole = many * MINUTE + seconds.value
    number = replace(minutes, kind="num", value=whole, text=f"{whole:g}", spelled=False, labels=())
    last = items[end - 1]
    return [number, Item("known", unit.start, last.end, "sec", space=True, labels=SECONDS)], end


def _closes(message: Message, items: Sequence[Item], place: int, *, in_words: bool) -> bool:
    """ "1 Minute 20", "1 min 20 after that": seconds with no word, where what follows is not counted by them."""
    seconds = items[place]
    if (seconds.spelled and not in_words) or (not seconds.spelled and (seconds.value or 0) < LEAST_CLOSING):
        return False
    after = items[place + 1] if place + 1 < len(items) else END
    if after.has("times", "x"):  # "1 min 30 x 2"
        beyond = items[place + 3] if place + 3 < len(items) else END
        return beyond.kind != "move" and not beyond.has("reps")
    if after.kind in ("num", "move") or any(after.has(table) for table in COUNTED):
        return False
    return after.kind != "word" or after.text in everyday(message.language)
