"""The rings told once for all that follows: "rings: dips 4x5, pull-ups 4x5", "on the rings 3x5 pull-ups"."""

from __future__ import annotations

from collections.abc import Callable, Collection, Sequence

from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message

RINGS, BAR = "ring", "bar"
ENDS = frozenset({"\n", ".", ";", "!", "?"})


def ring_headed(message: Message, hits: Sequence[Hit]) -> list[tuple[int, int]]:
    """The tokens [start, end) that a heading of rings is said of: to the end of its sentence, or to a bar."""
    found: list[tuple[int, int]] = []
    for hit in hits:
        if hit.name != RINGS or not _heads(message, hit):
            continue
        end = next((at for at in range(hit.end, len(message.tokens)) if message.tokens[at].text in ENDS), None)
        bars = [one.start for one in hits if one.start > hit.start and BAR in one.name.split("+")]
        stops = [at for at in (end, *bars) if at is not None]
        found.append((hit.end, min(stops, default=len(message.tokens))))
    return found


def _heads(message: Message, hit: Hit) -> bool:
    """ "Rings:" or "on the rings" where a sentence begins."""
    tokens = message.tokens
    at = hit.start - 1
    led = False
    while at >= 0 and (tokens[at].text in little("on_lift") or tokens[at].text in little("the")):
        led, at = True, at - 1
    if at >= 0 and tokens[at].text not in ENDS:
        return False
    after = tokens[hit.end] if hit.end < len(tokens) else None
    return after is not None and (led or after.text == ":" or after.value is not None)  # "rings 3x8 dips"


def ringed(
    headed: Collection[tuple[int, int]], start: int, features: set[str], resolve: Callable[[set[str]], str | None]
) -> str | None:
    """The movement on rings that one named at a token under such a heading is; None where it is none."""
    if not any(low <= start < high for low, high in headed) or {RINGS, BAR} & features:
        return None
    return resolve(features | {RINGS})
