"""Items as the forms of the set grammar look for them, where people put the same words otherwise.

"1 min 20 sec" is one time, as "80 sec" is; "two bodyweight sets of 8" are two sets of 8 with no weight.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.items import END, Item
from bot.reading.little import little
from bot.reading.scan.list_heads import unnumbered

UNLOADED = ("load", "none")
SHORT = ("m", "'")  # minutes, with their seconds written on to them
COUNTED = ("unit", "sets", "reps", "count", "times")
ONE_SET = frozenset({"first", "last", *map(str, range(2, 11))})
MOST_TIMES = 13
MOST_EFFORT = 10
MINUTE, MOST_MINUTES = 60, 10
LEAST_CLOSING_SECONDS = 10  # of "1 minute 20"; fewer may be reps


def tidied(items: Sequence[Item]) -> Sequence[Item]:
    """The same items, with a time in one number, and sets that say of themselves that they have no weight."""
    labels = {label for item in items for label in item.labels}
    if ("unit", "min") in labels or any(item.text in SHORT for item in items):
        items = _times_in_one(items)
    if ("unit", "half") in labels:
        items = _halves_in_one(items)
    if any(item.kind == "word" and item.text in little("counted_off") for item in items):
        items = _counted_off(items)
    if any(item.text in little("sadly", "i_did_it") for item in items) and any(item.has("fail") for item in items):
        items = _missed_plainly(items)
    if any(item.text in little("between_numbers") for item in items):
        items = _either_number(items)
    if UNLOADED in labels and any(item.has("sets", "sets") for item in items):
        items = _unloaded_sets(items)
    if any(item.kind == "word" and item.text in little("times_slip") for item in items):
        items = [_times_slip(items, i) for i in range(len(items))]
    if any(item.has("sets", "sets") for item in items):
        items = _sets_alone(items)
    if any(item.has("scope") and _at(items, i + 1).has("count") for i, item in enumerate(items)):
        items = _named_by_reps(items)
    if ("effort", "after") in labels:
        items = _heads_alone(_ten_alone(items))
    if any(item.text in little("only_one") for item in items):
        items = [item for i, item in enumerate(items) if not _only_one(items, i)]
    if any(item.text in little("in_so_many") for item in items):
        items = [item for i, item in enumerate(items) if not _in_so_many(items, i)]
    if any(item.text in little("again_in_list") for item in items):
        items = _again_in_list(items)
    if any(item.kind == "move" for item in items):
        items = unnumbered(items)
    return items


def _at(items: Sequence[Item], i: int) -> Item:
    return items[i] if 0 <= i < len(items) else END


def _missed_plainly(items: Sequence[Item]) -> list[Item]:
    """ "45 kg hab ich leider nicht geschafft": without what stands between a number and the word for its miss."""
    out: list[Item] = []
    aside = little("sadly", "i_did_it")
    for item in items:
        if item.has("fail"):
            kept = len(out)
            while kept and out[kept - 1].text in aside:
                kept -= 1
            if 0 < kept < len(out) and (out[kept - 1].kind == "num" or out[kept - 1].has("unit")):
                item = replace(item, start=out[kept].start)
                del out[kept:]
        out.append(item)
    return out


def _either_number(items: Sequence[Item]) -> list[Item]:
    """ "Between 12 and 15 push-ups": the one or the other, and which is not known; efforts stay as they are."""
    out = list(items)
    for i, item in enumerate(items):
        low, joined, high, after = (_at(items, i + n) for n in range(1, 5))
        numbers = low.kind == high.kind == "num" and (low.value or 0) < (high.value or 0)
        if item.text not in little("between_numbers") or not numbers or not joined.has("sep", "and"):
            continue
        if (high.value or 0) > MOST_EFFORT or after.kind == "move" or after.has("reps"):
            out[i] = replace(item, kind="word", labels=())
            out[i + 2] = replace(joined, labels=(("sep", "or"),))
    return out


def _times_in_one(items: Sequence[Item]) -> list[Item]:
    """ "1 min 20 sec", "one minute and 15 seconds", "1m20s": the seconds of it all."""
    out: list[Item] = []
    i = 0
    while i < len(items):
        end = _end_of_time(items, i)
        if end is None:
            out.append(items[i])
            i += 1
            continue
        item, last = items[i], items[end - 1]
        seconds = last if last.value is not None else items[end - 2]
        value = _minutes(items, i) * MINUTE + (seconds.value or 0)
        out.append(replace(item, kind="num", end=seconds.end, value=value, comma=False, labels=()))
        unit = last if last is not seconds else replace(items[i + 1], start=seconds.end, end=seconds.end)
        out.append(replace(unit, kind="known", text="s", labels=(("unit", "sec"),)))
        i = end
    return out


def _halves_in_one(items: Sequence[Item]) -> list[Item]:
    """ "Dos kilos y medio", "two kilos and a half": the half with its number."""
    out: list[Item] = []
    for item in items:
        led, unit = _at(out, len(out) - 2), _at(out, len(out) - 1)
        whole = led.kind == "num" and led.value is not None and led.value == int(led.value)
        if item.has("unit", "half") and whole and unit.has("unit", "kg", "lb", "sec"):
            out[-2] = replace(led, value=(led.value or 0) + 0.5)
            out[-1] = replace(unit, end=item.end)
        else:
            out.append(item)
    return out


def _counted_off(items: Sequence[Item]) -> list[Item]:
    """ "A 2 count pause", "a three-count negative": seconds."""
    out: list[Item] = []
    for i, item in enumerate(items):
        after = _at(items, i + 1)
        slow = after.has("pause") or after.has("flag", "eccentric") or after.has("noise", "down")
        if item.kind == "word" and item.text in little("counted_off") and (slow or after.text in little("lowered")):
            if out and out[-1].text == "-" and _at(out, len(out) - 2).value is not None:
                out.pop()
            if out and out[-1].value is not None:
                item = replace(item, kind="known", text="s", labels=(("unit", "sec"),))
        out.append(item)
    return out


def _minutes(items: Sequence[Item], i: int) -> float:
    item = _at(items, i)
    one = item.text in little("a") or item.text in little("one")
    return 1.0 if one and item.value is None else (item.value if item.value is not None else 0.0)


def _end_of_time(items: Sequence[Item], i: int) -> int | None:
    """The place after minutes and their seconds, where both stand at `i`."""
    unit, j = _at(items, i + 1), i + 2
    short = unit.text in SHORT and not unit.space
    minutes = _minutes(items, i)
    if not (unit.has("unit", "min") or short) or not 0 < minutes <= MOST_MINUTES or minutes != int(minutes):
        return None
    joined = _at(items, j).has("sep", "and")
    j += joined
    seconds, after = _at(items, j), _at(items, j + 1)
    if seconds.value is None or not 0 < seconds.value < MINUTE or seconds.value != int(seconds.value):
        return None
    if after.has("unit", "sec") or (unit.text == "'" and after.text == "'"):
        return j + 2
    tight = not seconds.space
    spelled = _at(items, i).kind != "num" or _at(items, i).spelled
    alike = spelled and seconds.spelled
    if short:
        return j + 1 if tight and len(seconds.text) > 1 else None  # "1m20", "1'20"
    closes = tight or joined or alike or _closes(seconds)
    return j + 1 if closes and not _counted(after, _at(items, j + 3)) else None


def _closes(seconds: Item) -> bool:
    """ "1 Minute 20", "2 min 05,": seconds with no word."""
    return not seconds.spelled and (seconds.value or 0) >= LEAST_CLOSING_SECONDS


def _counted(after: Item, beyond: Item) -> bool:
    """Whether what follows is counted: "1 min and 20 push-ups"; not "1 min 20 after that", "1 min 30 x 2"."""
    if after.has("times", "x"):
        return beyond.kind == "move" or beyond.has("reps")
    return after.kind in ("word", "num", "move") or any(after.has(table) for table in COUNTED)


def _ten_alone(items: Sequence[Item]) -> list[Item]:
    """ "La última fue de 10": ten of something, where no number stands before that would be out of ten."""
    out: list[Item] = []
    for i, item in enumerate(items):
        ten = item.has("effort", "after") and item.kind == "known" and item.text.split()[-1] in little("ten")
        if ten and len(item.text.split()) > 1 and _at(items, i - 1).kind != "num" and item.end - item.start > 1:
            led, number = " ".join(item.text.split()[:-1]), item.text.split()[-1]
            out.append(replace(item, end=item.end - 1, kind="word", text=led, labels=()))
            spelled = not number.isdigit()
            out.append(
                replace(item, start=item.end - 1, kind="num", text=number, labels=(), value=10.0, spelled=spelled)
            )
        else:
            out.append(item)
    return out


def _heads_alone(items: Sequence[Item]) -> list[Item]:
    """ "La última fue de rpe 9": the word for the effort, where no number stands before it."""
    out: list[Item] = []
    for i, item in enumerate(items):
        words = item.text.split()
        led = item.has("effort", "after") and len(words) > 1 and words[0] in little("of")
        if led and words[-1] in little("rpe_word") and _at(items, i - 1).kind != "num":
            out.append(replace(item, end=item.end - 1, kind="word", text=words[0], labels=()))
            item = replace(item, start=item.end - 1, text=words[-1], labels=(("effort", "rpe"),))
        out.append(item)
    return out


def _only_one(items: Sequence[Item], i: int) -> bool:
    """ "Una sola repetición", "a single rep": one."""
    return items[i].text in little("only_one") and _at(items, i - 1).value == 1 and _at(items, i + 1).has("reps")


def _in_so_many(items: Sequence[Item], i: int) -> bool:
    """ "Siempre de a ocho": the "a" of "in eights", which leads no load."""
    after = _at(items, i + 1)
    led = items[i].text in little("in_so_many") and _at(items, i - 1).text in little("of")
    return led and after.spelled and not _at(items, i + 2).has("unit")


def _again_in_list(items: Sequence[Item]) -> list[Item]:
    """ "8, otras 8, 7 y 3", "8, 8 again, 7": a number of a list without the words that it is the same again."""
    out: list[Item] = []
    for i, item in enumerate(items):
        first = i - (_at(items, i - 1).text in little("again_in_list"))
        behind = i + 1 + (_at(items, i + 1).text in little("again_in_list"))
        listed = _at(items, first - 1).text == "," and _at(items, first - 2).kind == "num"
        counts = _at(items, behind + 1).text == "," or _at(items, behind + 1).has("sep", "and")
        if item.text in little("again_in_list") and listed and _at(items, behind).kind == "num" and counts:
            continue
        out.append(item)
    return out


def _sets_alone(items: Sequence[Item]) -> list[Item]:
    """ "4 quick sets of 8", "4 series rápidas de 8": without how the sets went."""
    out: list[Item] = []
    for i, item in enumerate(items):
        before, after = _at(items, i - 1), _at(items, i + 1)
        of = _at(items, i + 2).value is not None and after.has("times", "of")
        ahead = after.has("sets", "sets") and before.value is not None and before.kind == "num"
        behind = before.has("sets", "sets") and of and _at(items, i - 2).value is not None
        if (ahead or behind) and item.kind == "word" and item.text in little("kind_of_set", "judging"):
            continue
        out.append(item)
    return out


def _times_slip(items: Sequence[Item], i: int) -> Item:
    """ "3 time 5 the pull up": "times", by those who learned the language late."""
    item, before, after = items[i], _at(items, i - 1), _at(items, i + 1)
    slip = item.kind == "word" and item.text in little("times_slip") and before.kind == after.kind == "num"
    few = slip and before.value in range(2, MOST_TIMES) and not _at(items, i + 2).has("unit", "min")
    return replace(item, kind="known", labels=(("times", "x"),)) if few else item


def _named_by_reps(items: Sequence[Item]) -> list[Item]:
    """ "3x3 at 27.5, the last triple with one left": the last of those triples, so just "the last"."""
    out: list[Item] = []
    told: set[str] = set()  # reps of several sets alike
    for i, item in enumerate(items):
        before, led = _at(items, i - 1), _at(items, i - 2)
        reps = item.name("count")
        if item.value is not None and before.has("times", "x", "of") and item.value == int(item.value):
            told.add(str(int(item.value)))
        elif reps is not None and (before.value or 0) > 1:
            told.add(reps)
        one_more = led.text in little("a", "an") or led.has("sep", "then")
        one = reps in told and before.has("scope") and before.name("scope") in ONE_SET and not _many(item)
        if not one or one_more or _at(items, i + 1).has("sets"):
            out.append(item)
    return out


def _many(item: Item) -> bool:
    return item.text.endswith(tuple(little("plural"))) and item.text[:-1].isalpha()


def _unloaded_sets(items: Sequence[Item]) -> list[Item]:
    """ "One bodyweight set of 11", "two sets without weight of 8": the set says that it has no weight."""
    out: list[Item] = []
    for item in items:
        before, counted = (_at(out, len(out) - 1), _at(out, len(out) - 2).value is not None)
        if counted and before.has("load", "none") and item.has("sets", "sets"):
            out[-1] = replace(item, start=before.start, labels=(*item.labels, UNLOADED))
        elif counted and before.has("sets", "sets") and item.has("load", "none"):
            out[-1] = replace(before, end=item.end, labels=(*before.labels, UNLOADED))
        else:
            out.append(item)
    return out
