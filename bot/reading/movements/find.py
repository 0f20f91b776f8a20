"""Find the movements a message names: features said near each other, combined by words/combine.toml."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from bot.reading.lexicon import Hit
from bot.reading.message import Message
from bot.reading.movements.combine import Combine, combine
from bot.reading.movements.gather import RINGS, Gathering
from bot.reading.movements.mention import Mention
from bot.reading.movements.nicknames import by_nickname
from bot.reading.movements.on_rings import ring_headed, ringed
from bot.reading.movements.one_arm import whole_arms


def find_movements(message: Message, taken: Collection[int] = ()) -> list[Mention]:
    """Every movement named, in order. `taken`: tokens that mean something else (a painful elbow, a day)."""
    key = ("movements", frozenset(taken))
    found: list[Mention] | None = message.notes.get(key)
    if found is None:
        found = message.notes[key] = _found(message, taken)
    return found


def _found(message: Message, taken: Collection[int]) -> list[Mention]:
    named = message.beginning("movements")
    if not message.context.nicknames and not any(named):
        return []
    rules, own = combine(), by_nickname(message)
    skip = {*taken, *(at for mention in own for at in range(*mention.spans[0]))}
    hits = _hits(message, named, skip)
    mentions = Gathering(message, rules, hits).mentions
    _ring(message, rules, hits, mentions)
    mentions = whole_arms(message, rules, [mention for mention in mentions if mention.movement])
    return sorted(mentions + own, key=lambda mention: mention.start)


def _hits(message: Message, named: Sequence[Sequence[Hit]], skip: set[int]) -> list[Hit]:
    """The longest phrase at each place, one after the other."""
    hits: list[Hit] = []
    at, tokens = 0, message.tokens
    while at < len(tokens):
        found = () if at in skip or tokens[at].kind in ("sym", "nl") else named[at]
        if found and at and len(tokens[at].text) <= 2 and not tokens[at].space and tokens[at - 1].kind == "num":
            found = ()  # "3rd" is no abbreviation of a movement
        if skip and found:
            found = [hit for hit in found if not any(i in skip for i in range(hit.start, hit.end))]
        if not found or found[0].end <= at:
            at += 1
            continue
        # the same words may be listed as no movement ("ring finger"): that wins
        best = next((hit for hit in found if hit.end == found[0].end and hit.table == "none"), found[0])
        hits.append(best)
        at = best.end
    return hits


def _ring(message: Message, rules: Combine, hits: list[Hit], mentions: list[Mention]) -> None:
    """ "Rings: pull-ups 3x5, dips 3x8": what a heading says of the movements under it."""
    headed = ring_headed(message, hits)
    for mention in mentions if headed else ():
        movement = ringed(headed, mention.start, mention.features, rules.resolve)
        if movement is not None and mention.movement not in ("", "!"):
            mention.movement, mention.features = movement, mention.features | RINGS
