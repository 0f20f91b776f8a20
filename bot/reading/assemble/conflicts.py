"""Claims that contradict each other or the name of a movement: the surer one stays."""

from __future__ import annotations

from bot.reading.fold.block import one_sided
from bot.reading.message import Claim, Message
from bot.reading.movements import find_movements

PLACES_IN_NAMES = frozenset({"hand_on_biceps", "hand_on_shoulder", "at_elbow", "at_shoulder"})  # no pain there

HANDS = frozenset({"hand_on_biceps", "hand_on_shoulder"})


def settle(message: Message, claims: list[Claim]) -> list[Claim]:
    """Claims that contradict each other or a movement's name: the surer one stays."""
    named: set[int] = set()
    found = [hits[0] for hits in message.beginning("movements") if hits and hits[0].table == "part"]
    whole = any(not set(hit.name.split("+")) <= PLACES_IN_NAMES - HANDS for hit in found)
    for hit in found:
        if whole and set(hit.name.split("+")) & PLACES_IN_NAMES:  # "le doy un 2 al codo" names no movement
            named.update(range(hit.start, hit.end))
    kept = [c for c in claims if not (c.kind == "pain" and named & set(range(c.start, c.end)))]
    kept = [
        c
        for c in kept
        if not (c.kind in ("day", "noise") and _in_scheme(message, c))
        and not ((c.kind == "day" and _counts_sets(message, c)) or (c.kind == "pain" and _counts_sides(message, c)))
    ]
    if any(c.kind == "day" and c.value is not None for c in kept):
        kept = [c for c in kept if not (c.kind == "day" and c.value is None)]  # "last month it was 5, today 8"
    return kept


def _in_scheme(message: Message, claim: Claim) -> bool:
    """The "3 day" of "another 5x3 day" is the end of a scheme."""
    if claim.start < 2 or claim.start >= claim.end:
        return False
    sets, times, reps = message.tokens[claim.start - 2 : claim.start + 1]
    return sets.kind == reps.kind == "num" and times.text == "x"


def _counts_sets(message: Message, claim: Claim) -> bool:
    """ "the 3rd" of "missed the 3rd" and "2nd set" is no day."""
    if claim.end - claim.start > 3 or not any(token.kind == "num" for token in message.tokens[claim.start : claim.end]):
        return False
    hits = message.beginning("grammar")[claim.end] if claim.end < len(message.tokens) else []
    if any(hit.table in ("sets", "reps") for hit in hits):
        return True
    return any(
        hit.table == "fail" and hit.name == "fail" and hit.end >= claim.start - 1
        for at in range(max(0, claim.start - 4), claim.start)
        for hit in message.beginning("grammar")[at]
    )


def _counts_sides(message: Message, claim: Claim) -> bool:
    """ "right arm 1" beside a one-arm movement is a set, no pain in an arm."""
    if (
        claim.value is None
        or claim.value.site not in ("other", None)
        or (claim.value.side is None and claim.value.site is None)
    ):
        return False
    sides = [
        hit
        for at in range(claim.start, claim.end)
        for hit in message.beginning("grammar")[at]
        if hit.table == "side" and hit.end <= claim.end
    ]
    covered = {at for hit in sides for at in range(hit.start, hit.end)}
    rest = [message.tokens[at] for at in range(claim.start, claim.end) if at not in covered]
    if not sides or any(token.kind == "word" and token.value is None for token in rest):
        return False
    return any(one_sided(mention.movement) for mention in find_movements(message))
