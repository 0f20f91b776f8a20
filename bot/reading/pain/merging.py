"""One place told in two goes: "my right wrist was grumbly … wrist maybe 2 out of 10"."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import replace

from bot.reading.reading import PainRead


def merged(entries: Sequence[PainRead]) -> list[PainRead]:
    """The entries, with those of one place that complete each other made one: a side here, the score there."""
    out: list[PainRead] = []
    sided = Counter(one.site for one in entries if one.side is not None)
    for entry in entries:
        once = sided[entry.site] == 1
        at = next((n for n, one in enumerate(out) if _complete(one, entry)), None) if once else None
        if at is None:
            out.append(entry)
            continue
        first = out[at]
        out[at] = replace(
            first,
            side=first.side or entry.side,
            score=entry.score if first.score is None else first.score,
            when=first.when or entry.when,
        )
    return out


def _complete(one: PainRead, other: PainRead) -> bool:
    same = one.site is not None and one.site == other.site
    half = (one.side is None) != (other.side is None) and (one.score is None or other.score is None)
    return same and half and (one.when is None or other.when is None or one.when == other.when)
