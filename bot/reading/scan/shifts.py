"""More or less than the plan, by so much: "added 2.5 kg to every set", "one more set of 2"."""

from __future__ import annotations

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner

LEAST_PLATE = 2.5  # less than this may be so many reps
MOST_REPS = 3  # more or less, signed
MOST_CHANGE = 10  # more than this is no change of a load but a load


def more_sets(s: Scanner, i: int) -> bool:
    """Whether a number counts further sets."""
    return s.at(i).has("plan", "extra_set") or s.at(i + 1).has("plan", "extra_set") or s.at(i + 1).has("sets", "more")


def one_more(s: Scanner, i: int, end: int) -> tuple[list[Fact], int]:
    """ "One more set of 2": a set like the one before, with the reps that stand beside it."""
    told: list[Fact] = [Fact("plan", s.at(i).start, s.at(end - 1).end, "extra_set")]
    of, number = s.at(end), s.at(end + 1)
    reps = number.value if of.has("times", "of") and not of.has("load", "at") and number.kind == "num" else None
    if reps is None or reps != int(reps) or s.unit_at(end + 2) is not None or s.at(end + 2).has("times", "x"):
        return told, end
    return [*told, Fact("rows", number.start, number.end, [Entry(int(reps))], {"reps": True})], end + 2


def shifted(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "added 2.5 kg to every set", "plus one rep", "took 2.5 kg off every set": more or less than the plan."""
    item, j = s.at(i), i + 2
    value = s.at(i + 1).value or 0
    one = s.at(i + 1).spelled and value == 1
    if one and (s.at(j).has("sets", "sets") or (s.at(j).name("scope") or "").isdigit()):
        return None  # "le quité una serie", "añadí una quinta"
    unit = s.unit_at(j) if s.unit_at(j) in ("kg", "lb", "sec") else "reps" if s.at(j).has("reps") else None
    each = any(s.at(k).has("scope") or s.at(k).has("plan", "every", "all_lifts") for k in (j, j + 1, j + 2))
    if unit is None and s.planned and each and item.has("plan", "sure") and value < LEAST_PLATE:
        # "added 2 to every set": kilograms or reps
        return [Fact("ask", item.start, s.at(i + 1).end, "load_kg", {"shift": True})], j
    told = item.has("plan", "sure") and (each or value != int(value))  # "added 5 to every set", "added 2.5 to them"
    surely = told or item.text in little("went_by")
    if unit is None and s.planned and surely and value <= MOST_CHANGE:
        sign = -1 if item.has("plan", "minus") else 1
        return [Fact("delta", item.start, s.at(i + 1).end, (s.kg(value), "load", sign))], j  # "went up 2.5 on the dips"
    if unit is None:
        return None
    j += 1
    away = s.at(j).has("plan", "off")
    j += away
    near = (*range(i - 3, i), *range(j, j + 3))
    signed = s.planned and unit == "reps" and value <= MOST_REPS and not s.at(i + 1).space
    if signed and any(s.at(k).has("scope") for k in near):  # "fourth set +1 rep", "last set -1 rep"
        return [Fact("delta", item.start, s.at(j - 1).end, (value, "reps", -1 if item.text == "-" else 1))], j
    if item.text == "-":
        return None
    if not item.has("plan", "sure"):
        # "+20 kg" is a load, "as planned plus 2.5 kg on all" more than the plan; "took 15 kg off" is a counterweight
        of_all = any(s.at(k).has("scope", "all") or s.at(k).has("plan", "every", "all_lifts") for k in range(j, j + 3))
        told = away or unit == "reps" or s.at(i - 1).has("plan", "planned", "done", "same")
        if not of_all or not told or value > MOST_CHANGE:
            return None
    sign = -1 if away or item.has("plan", "minus") else 1
    kind = {"sec": "hold", "reps": "reps"}.get(unit, "load")
    if kind == "load" and value > MOST_CHANGE and (sign > 0 or item.has("plan", "turned_to")):
        return None  # "4x4, added 20 kg", "bajé 20 kilos": to, not by
    amount = s.kg(value, unit) if kind == "load" else value
    return [Fact("delta", item.start, s.at(j - 1).end, (amount, kind, sign))], j
