"""The rings told once for all that follows: "rings: dips 4x5, pull-ups 4x5", "on the rings 3x5 pull-ups"."""

from __future__ import annotations

from collections.abc import Callable, Collection, Sequence

from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message

RINGS, BAR = "ring", "bar"
ENDS = frozenset({"\n", ".", ";", "!", "?"})
PLANNED = frozenset({"ring_row", "ring_pull_up", "ring_dip", "ring_muscle_up"})
TOLD = frozenset({"skipped", "except", "done", "fine", "planned", "same", "not_this"})  # what a plan's work was


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


def of_the_rings(message: Message, hits: Sequence[Hit], at: int) -> str | None:
    """ "Rings 8, 8, 7", "all but the rings": the one movement that the day's plan has on rings; None: no such thing.

    "On the rings" says where, and beside another movement the word is part of its name.
    """
    planned = {one.movement for one in message.context.today or ()} & PLANNED
    hit = hits[at]
    if len(planned) != 1 or hit.end - hit.start > 1:
        return None
    low, high = _clause(message, hit)
    if any(one is not hit and one.table != "none" and low <= one.start < high for one in hits):
        return None
    led = {token.text for token in message.tokens[low : hit.start]}
    if led & (little("on_lift", "without")):
        return None
    follow = [token for token in message.tokens[hit.end : hit.end + 2] if token.text not in (":", "-")]
    numbered = bool(follow) and follow[0].value is not None
    beside = [one for n in range(low, high) for one in message.beginning("grammar")[n]]
    told = any(one.table == "fail" or (one.table == "plan" and one.name in TOLD) for one in beside)
    swapped = any(one.name == "instead" and one.end - one.start > 1 for one in beside)  # "instead of", and no "not"
    bare = not led - little("the") - little("and")
    return min(planned) if (numbered and bare) or (told and not swapped) else None


def _clause(message: Message, hit: Hit) -> tuple[int, int]:
    """The tokens around the rings up to the next comma, "and" or end of a sentence."""
    tokens = message.tokens
    parts = ENDS | {",", ":"} | little("and")
    low = next((at + 1 for at in range(hit.start - 1, -1, -1) if tokens[at].text in parts), 0)
    return low, next((at for at in range(hit.end + 1, len(tokens)) if tokens[at].text in parts), len(tokens))
