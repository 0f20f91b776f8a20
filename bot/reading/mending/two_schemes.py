"""Two schemes opposed: "4x4 +25, not 4x4 +20", "five sets of four with 15, not five sets of four with ten"."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from bot.reading.little import little
from bot.reading.mending.claims import noise
from bot.reading.mending.mend import Mend, mentions_in, only_little
from bot.reading.message import Claim
from bot.reading.reading import Correction
from planner.units import KG_PER_LB

MOST_SETS = 20
MOST_REPS = 30
MOST_BETWEEN = 5  # words from one scheme to the other: ", I logged", "and not"


@dataclass(frozen=True)
class Scheme:
    start: int
    end: int
    sets: float
    reps: float
    load_kg: float | None  # None: not said


def of_schemes(mend: Mend) -> list[Claim]:
    """The correction, where one scheme takes the place of another; the new one stays as its sets."""
    for one, two in pairwise(_schemes(mend)):
        old = _old(mend, one, two)
        if old is None:
            continue
        new = one if old is two else two
        differs = [
            (field, was, now)
            for field, was, now in (
                ("sets", old.sets, new.sets),
                ("reps", old.reps, new.reps),
                ("load_kg", old.load_kg, new.load_kg),
            )
            if was != now and not (field == "load_kg" and None in (was, now))
        ]
        if not differs:
            continue
        start, end = (_words_from(mend, one, two), two.end) if old is two else (old.start, old.end)
        own = mentions_in(mend.message, set(range(start, end)))
        named = len(own) == 1 and not own[0].movement.startswith(("?", "!"))
        movement = own[0].movement if named else None
        field, was, now = differs[0] if len(differs) == 1 else ("sets", _text(old), _text(new))
        claims = [Claim(start, end, "correction", Correction(field, was, now, movement))]
        return claims + noise(mend, claims)
    return []


def _old(mend: Mend, one: Scheme, two: Scheme) -> Scheme | None:
    """Which of two schemes was wrong."""
    if two.start - one.end > MOST_BETWEEN or any(t.text == "\n" for t in mend.tokens[one.end : two.start]):
        return None
    led = [*mend.between("not", one.end, two.start), *mend.between("wrote", one.end, two.start)]
    led += mend.between("was", one.end, two.start, "told")
    if any(hit.start > one.end and only_little(mend.tokens, hit.end, two.start) for hit in led):
        return two
    if any(hit.start == one.end and only_little(mend.tokens, hit.end, two.start) for hit in led if hit.table == "not"):
        return two
    if mend.between("wrote", two.end, two.end + MOST_BETWEEN):
        return two
    led = [*mend.between("wrote", 0, one.start), *mend.between("not", max(0, one.start - 1), one.start)]
    turned = mend.between("now", one.end, two.start) or mend.between("cue", one.end, two.start)
    return one if led and turned else None


def _words_from(mend: Mend, one: Scheme, two: Scheme) -> int:
    """Where the words begin that set the old scheme against the new one; a lift may be named before them."""
    led = [*mend.between("not", one.end, two.start), *mend.between("wrote", one.end, two.start)]
    return min((hit.start for hit in led), default=two.start)


def _schemes(mend: Mend) -> list[Scheme]:
    out: list[Scheme] = []
    at = 0
    while at < len(mend.tokens):
        made = _scheme(mend, at)
        if made is not None:
            out.append(made)
        at = made.end if made is not None else at + 1
    return out


def _scheme(mend: Mend, at: int) -> Scheme | None:
    """ "4x4 +25", "five sets of four with fifteen"."""
    tokens, sets = mend.tokens, mend.tokens[at].value
    if sets is None or sets not in range(1, MOST_SETS + 1) or at + 2 >= len(tokens):
        return None
    end = at + 1
    if tokens[end].text == "x" or _of(mend, end, "times", "x"):
        end += 1
    elif _of(mend, end, "sets", "sets"):
        end += 1
        end += end < len(tokens) and tokens[end].value is None and _of(mend, end, "times", "of")
    else:
        return None
    reps = tokens[end].value if end < len(tokens) else None
    if reps is None or reps not in range(1, MOST_REPS + 1):
        return None
    end += 1
    load_end, load = _load(mend, end)
    return Scheme(at, load_end, sets, reps, load)


def _load(mend: Mend, at: int) -> tuple[int, float | None]:
    """Where the load ends that stands behind a scheme, in kilograms."""
    tokens, end = mend.tokens, at
    led = end < len(tokens) and any(_of(mend, end, "load", name) for name in ("at", "sign", "plus"))
    end += led
    value = tokens[end].value if end < len(tokens) and tokens[end].kind != "clock" else None
    if value is None:
        return at, None
    word = tokens[end + 1].text if end + 1 < len(tokens) else ""
    unit = "kg" if word in little("kilos") else "lb" if word in little("pounds") else None
    if not led and unit is None:
        return at, None
    factor = KG_PER_LB if (unit or mend.message.context.unit) == "lb" else 1.0
    return end + 1 + (unit is not None), round(value * factor, 6)


def _of(mend: Mend, at: int, table: str, name: str) -> bool:
    """Whether a word of the set grammar stands at a token, and no longer one."""
    found = mend.message.beginning("grammar")[at]
    return any((hit.table, hit.name, hit.end) == (table, name, at + 1) for hit in found)


def _text(scheme: Scheme) -> str:
    load = f" +{scheme.load_kg:g}" if scheme.load_kg is not None else ""
    return f"{scheme.sets:g}x{scheme.reps:g}{load}"
