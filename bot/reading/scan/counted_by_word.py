"""Sets that a word counts: "a top single", "doubles", "the 3s", "with the 22s"."""

from __future__ import annotations

from bot.reading.facts import Entry, Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.lone import of_free_weight
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.so_often import TIMES

LEAST_DUMBBELL = 9  # below it "the 3s" are sets of three


def _names_one(s: Scanner, i: int) -> bool:
    """ "5 singles at 40 … single 4 was a grind": which of the sets that were counted by their word."""
    number, name = s.at(i + 1), s.at(i).name("count")
    small = number.kind == "num" and number.value in TIMES and s.unit_at(i + 2) is None
    if not small or s.at(i - 1).value is not None or s.at(i).text.endswith(tuple(little("plural"))):
        return False
    counted = [s.at(j - 1).value for j in range(1, i) if s.at(j).name("count") == name]
    return any(many is not None and (number.value or 0) <= many for many in counted)


def _counts_drops(s: Scanner, i: int) -> bool:
    """Whether a number says how many drop sets there were: it is small, and begins what is told."""
    before = s.at(i - 1)
    begins = before.start < 0 or before.has("sep") or before.text in {",", ":"} | little("on_top", "and")
    return begins and s.at(i).value in (1, 2, 3) and not s.at(i + 1).text.endswith(tuple(little("changed_to")))


def counted_by_word(s: Scanner, i: int, item: Item) -> tuple[list[Fact], int] | None:
    """ "a top single", "doubles", "a triple", "the 3s", "with the 22s"."""
    if item.has("topcount"):
        top = int(item.name("topcount") or 1)
        return [
            Fact("scope", item.start, item.end, "top"),
            Fact("rows", item.start, item.end, [Entry(top)], {"top": True}),
        ], i + 1
    if item.value is not None and s.at(i + 1).has("link", "cluster", "rest_pause") and item.value <= 20:
        mark = s.at(i + 1)
        return [
            Fact("count", item.start, mark.end, int(item.value)),
            Fact("link", mark.start, mark.end, mark.name("link") or "cluster"),
        ], i + 2
    if item.value is not None and s.at(i + 1).has("link", "drop") and _counts_drops(s, i):
        mark = s.at(i + 1)
        link = Fact("link", mark.start, mark.end, "drop")
        # "1 drop set at 45 for 10" is the one that is told
        return ([Fact("count", item.start, mark.end, int(item.value))] if item.value > 1 else []) + [link], i + 2
    ladder = i + 1 + s.at(i + 1).has("times", "x")  # "2x ladder 1-2-3"
    if item.value is not None and s.at(ladder).has("scheme", "ladder") and 1 < item.value <= 20:
        mark = s.at(ladder)
        return [
            Fact("scheme", mark.start, mark.end, "ladder", {"names": []}),
            Fact("rounds", item.start, mark.end, int(item.value)),
        ], ladder + 1
    if item.has("count") and _names_one(s, i):
        which = (int(item.name("count") or 1), int(s.at(i + 1).value or 0))
        return [Fact("scope", item.start, s.at(i + 1).end, ("of_reps", which), {"text": item.text})], i + 2
    if item.has("count") and not item.has("times") and not (item.value is not None and s.at(i + 1).has("unit")):
        reps = int(item.name("count") or 1)
        end = i + 1 + (s.at(i + 1).name("count") == item.name("count"))  # "singles one at a time"
        note = {"each_of": True, "word": True, "the": s.at(i - 1).text in little("that")}
        return [Fact("rows", item.start, s.at(end - 1).end, [Entry(reps)], {k: v for k, v in note.items() if v})], end
    plural = s.at(i + 1).text.endswith(tuple(little("plural")))  # "a dobles" are no single one
    if item.text in little("a") and s.at(i + 1).has("count") and not plural:
        return [Fact("rows", item.start, s.at(i + 1).end, [Entry(int(s.at(i + 1).name("count") or 1))], {})], i + 2
    if item.has("plan", "the") and s.at(i + 1).has("count"):
        reps = int(s.at(i + 1).name("count") or 1)
        return [Fact("rows", item.start, s.at(i + 1).end, [Entry(reps)], {"the": True})], i + 2
    if (
        item.has("load", "at")
        and s.at(i + 1).has("plan", "the")
        and s.at(i + 2).kind == "num"
        and s.at(i + 3).has("these")
        and (s.at(i + 2).value or 0) >= LEAST_DUMBBELL
    ):
        # "with the 22s": a pair of dumbbells by its figure
        return [Fact("load", item.start, s.at(i + 3).end, s.kg(s.at(i + 2).value or 0), {"how": "at"})], i + 4
    if (
        item.has("plan", "the")
        and s.at(i + 1).kind == "num"
        and s.at(i + 2).has("load", "at")
        and not s.at(i + 1).comma
    ):
        return [Fact("count", item.start, s.at(i + 1).end, int(s.at(i + 1).value or 0), {"only": True})], i + 2
    these = item.has("plan", "the") or item.text in little("mine")
    if these and s.at(i + 1).kind == "num" and s.at(i + 2).text in little("ending_of_these"):
        if s.at(i - 1).has("load", "at") and of_free_weight(s, i):
            kg = s.kg(s.at(i + 1).value or 0)  # "curls 3x12 with the 8s"
            return [Fact("load", item.start, s.at(i + 2).end, kg, {"how": "at"})], i + 3
        if s.at(i + 3).has("load", "plate") or s.at(i + 3).text in little("one_plate"):
            kg = s.kg(s.at(i + 1).value or 0)  # "die 15er Scheibe bei den Dips"
            return [Fact("load", item.start, s.at(i + 3).end, kg, {"how": "at"})], i + 4
        return [Fact("rows", item.start, s.at(i + 2).end, [Entry(int(s.at(i + 1).value or 0))], {"the": True})], i + 3
    return None
