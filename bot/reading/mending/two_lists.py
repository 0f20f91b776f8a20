"""Two rows of numbers opposed, set by set: "the chins were 6, 6, 5, not 6, 6, 6"."""

from __future__ import annotations

from itertools import pairwise

from bot.reading.mending.claims import noise
from bot.reading.mending.mend import Mend, Value, mentions_in, only_little
from bot.reading.message import Claim
from bot.reading.reading import Correction

BETWEEN = frozenset({",", "/", "-"})
LEAST = 2  # numbers that are a row


def of_lists(mend: Mend) -> list[Claim]:
    """The correction, where one row takes the place of another of as many sets; the new row stays as its sets."""
    rows = _rows(mend)
    for one, two in pairwise(rows):
        if len(one) != len(two):
            continue
        # What stands between a row and "not" may be its load: "6, 6, 5 at 15, not 6, 6, 6".
        hit = next((hit for hit in mend.between("not", one[-1].end, two[0].start)), None)
        if hit is None or not only_little(mend.tokens, hit.end, two[0].start):
            continue
        differs = [at for at, (new, old) in enumerate(zip(one, two, strict=True)) if new.value != old.value]
        if not differs:
            continue
        own = mentions_in(mend.message, {at for value in two for at in range(value.start, value.end)})
        named = len(own) == 1 and not own[0].movement.startswith(("?", "!"))
        movement = own[0].movement if named else None
        if len(differs) == 1:
            at = differs[0]
            which: int | str = "last" if at == len(one) - 1 else at + 1
            made = Correction("reps", two[at].value, one[at].value, movement, None, which)
        else:
            made = Correction("sets", _text(two), _text(one), movement, None, "all")
        claims = [Claim(hit.start, two[-1].end, "correction", made)]
        return claims + noise(mend, claims)
    return []


def _rows(mend: Mend) -> list[list[Value]]:
    """The rows of plain numbers with no more than one sign between them."""
    rows: list[list[Value]] = []
    last: Value | None = None
    for value in mend.values():
        if value.text or value.mark:
            last = None
            continue
        gap = value.start - last.end if last is not None else None
        if last is not None and (gap == 0 or (gap == 1 and mend.tokens[last.end].text in BETWEEN)):
            rows[-1].append(value)
        else:
            rows.append([value])
        last = value
    return [row for row in rows if len(row) >= LEAST]


def _text(row: list[Value]) -> str:
    return ",".join(f"{value.value:g}" for value in row)
