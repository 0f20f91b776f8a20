"""So many times what was told beside: "chin-ups x10 x8", "30 squats x3", "L6 R6 x2", "de 5 en 5 hasta 25"."""

from __future__ import annotations

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.tries import MOST_TRIES

TIMES = range(2, 11)
TOLD_WITHIN = 8  # items of "3 each side, lower half, x2"


def so_often(s: Scanner, i: int) -> bool:
    """ "20s per side, 3x": so many times what was told, at the end of its clause."""
    item, times, after = s.at(i), s.at(i + 1), s.at(i + 2)
    glued = times.text in little("by_sign") and not times.space and item.value in TIMES and item.kind == "num"
    closes = after.kind == "nl" or after.text in (".", ";", ",", ")", "!")
    led = s.at(i - 2)
    told = s.at(i - 1).text in (",", "-", "(") and (led.has("unit") or led.has("side") or led.has("pause"))
    return glued and closes and told


def times_each(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "chin-ups x10 x8 x7": a set each; "30 squats x3": so many sets of what was told."""
    if not s.at(i).has("times", "x") or not s.at(i).text.startswith(tuple(little("by_sign"))):
        return None
    led = s.at(i - 1)
    leads = led.kind in ("move", "nl") or led.text in (":", ",")  # elsewhere only one is read, however many there are
    rows: list[Entry] = []
    j = i
    while s.at(j).has("times", "x") and s.at(j + 1).kind == "num" and s.whole(s.at(j + 1).value or 0.5):
        if s.unit_at(j + 2) is not None or s.at(j + 2).has("sets"):
            break
        rows.append(Entry(int(s.at(j + 1).value or 0)))
        j += 2
        if len(rows) > 1 and not leads:
            return None
        while s.at(j).text == "," and s.at(j + 1).has("times", "x"):
            j += 1
    if len(rows) == 1 and led.has("noise", "rest") and _closes_clause(s, j):
        return [Fact("rounds", s.at(i).start, s.at(j - 1).end, rows[0].reps, {"after": True})], j  # "45s rest x5"
    if len(rows) == 1 and led.text in little("taken_off"):
        return [Fact("rows", s.at(i).start, s.at(j - 1).end, rows, {"one": True, "reps": True})], j  # "15 kg off x 3"
    if len(rows) == 1 and led.has("side", "left", "right") and _amount(s, i - 2) and not s.at(i - 3).has("times", "x"):
        # "20s left 25 right x 3"
        return [Fact("rounds", s.at(i).start, s.at(j - 1).end, rows[0].reps, {"after": True, "pair": True})], j
    if len(rows) == 1 and led.text == "," and _closes_clause(s, j) and _told_before(s, i - 2):
        return [Fact("rounds", s.at(i).start, s.at(j - 1).end, rows[0].reps, {"after": True})], j  # "3 each side, x2"
    if not rows or not leads:
        return None
    if led.text == "," and s.at(i - 2).has("side"):
        if len(rows) == 1 and s.at(i - 2).has("side", "left", "right"):  # "2 left 2 right, x3"
            return [Fact("rounds", s.at(i).start, s.at(j - 1).end, rows[0].reps, {"after": True, "pair": True})], j
        return None
    before = s.at(i - 2)
    held = s.unit_at(i - 2) == "sec"  # "30 s hollow hold x3"
    if len(rows) == 1 and s.at(i - 1).kind == "move" and (before.value is not None or before.has("reps") or held):
        return [Fact("rounds", s.at(i).start, s.at(j - 1).end, rows[0].reps, {"after": True})], j
    note = {"list": True, "mark": ","} if len(rows) > 1 else {"one": True, "reps": True}
    return [Fact("rows", s.at(i).start, s.at(j - 1).end, rows, note)], j


def sets_of_named(s: Scanner, i: int) -> bool:
    """ "3x pull-ups 8": so many sets of the reps behind the name."""
    reps = s.at(i + 3)
    named = s.at(i + 1).has("times", "x") and s.at(i + 2).kind == "move" and reps.kind == "num"
    after = s.at(i + 4)
    whole = s.whole(s.at(i).value or 0.5) and s.whole(reps.value or 0.5)
    return named and whole and s.unit_at(i + 4) is None and not after.has("times", "x") and not after.has("sets")


def _closes_clause(s: Scanner, i: int) -> bool:
    return s.at(i).kind == "nl" or s.at(i).text in (",", ".", ";", ")")


def _told_before(s: Scanner, i: int) -> bool:
    """Whether a number stands before this place, behind the movement's name."""
    for at in range(i, max(-1, i - TOLD_WITHIN), -1):
        if s.at(at).kind in ("move", "nl") or s.at(at).text in (".", ";"):
            return False
        if s.at(at).kind == "num":
            return True
    return False


def _amount(s: Scanner, i: int) -> bool:
    """Whether reps or a time stand here."""
    return s.at(i).kind == "num" or s.at(i).has("reps") or s.unit_at(i) == "sec"


def pair_times(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "L6 R6 x2": the times count the pair."""
    sides = [s.at(at).name("side") for at in (i - 3, i - 1)]
    if set(sides) != {"left", "right"} or s.at(i - 2).kind != "num" or s.at(i).kind != "num":
        return None
    times, many = s.at(i + 1), s.at(i + 2)
    if not times.has("times", "x") or many.kind != "num" or not many.value:
        return None
    value = float(s.at(i).value or 0)
    note = {"spelled": False, "comma": s.at(i).comma, "the": False, "kg": s.kg(value)}
    pair = Fact("rounds", times.start, many.end, int(many.value), {"pair": True})
    return [Fact("bare", s.at(i).start, s.at(i).end, value, note), pair], i + 3


def by_so_many(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "De 5 en 5 hasta 25": five sets of five."""
    many, total = s.at(i).value, s.at(i + 4).value
    same = s.at(i + 1).has("times", "within") and s.at(i + 2).value == many
    if not many or not total or not same or s.at(i + 3).text not in little("up_to_a_total"):
        return None
    if many != int(many) or total % many or not 1 < total / many <= MOST_TRIES:
        return None
    rows = [Entry(int(many)) for _ in range(int(total / many))]
    return [Fact("rows", s.at(i).start, s.at(i + 4).end, rows, {"plain": True})], i + 5
