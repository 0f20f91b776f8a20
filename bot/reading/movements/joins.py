"""Whether a feature makes the movement before it another, or begins one of its own."""

from __future__ import annotations

from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.movements.between import GLUE, breaks, number_soon, work_after, work_between
from bot.reading.movements.combine import Combine
from bot.reading.movements.mention import Mention

PARTS = frozenset({",", ";", "."})
TRADED = 6  # tokens from "swapped" to "for"


def _planned_apart(message: Message, rules: Combine, features: set[str], union: set[str], start: int, end: int) -> bool:
    """ "Hand on biceps as planned, pull-ups 3x3" of a day that plans both: two movements, behind a comma."""
    planned = {one.movement for one in message.context.today or ()}
    both = {rules.resolve(features), rules.resolve(union)}
    return both <= planned and any(token.text in PARTS for token in message.tokens[start:end])


def is_traded(message: Message, start: int, end: int) -> bool:
    """ "Swapped the neutral grip for pull-ups", "pull-ups instead of neutral grip": one stands for the other."""
    grammar = message.beginning("grammar")
    if any(
        (hit.table, hit.name) == ("plan", "instead") and hit.end <= end
        for at in range(start, end)
        for hit in grammar[at]
    ):
        return True
    if not any(token.text in little("traded_for") for token in message.tokens[start:end]):
        return False
    before = range(max(0, start - TRADED), start)
    return any((hit.table, hit.name) == ("plan", "swap") for at in before for hit in grammar[at])


def _then(message: Message, start: int, end: int) -> bool:
    """Whether a number and, after it, a word like "then" stand between: two exercises, one after the other."""
    numbered = False
    for at in range(start, end):
        numbered = numbered or message.tokens[at].value is not None
        if numbered and any(hit.table == "sep" and hit.name == "then" for hit in message.beginning("grammar")[at]):
            return True
    return False


def _exchanged(message: Message, rules: Combine, last: Mention, hit: Hit, features: set[str]) -> bool:
    """ "Swapped the curls for hammer curls", "statt Curls Hammercurls": two movements, one in place of the other."""
    grips = rules.far | rules.grips
    if not last.movement or features <= grips or last.features <= grips or rules.resolve(features) is None:
        return False
    low, high = max(0, last.start - GLUE - 1), hit.end + GLUE
    said = [at for at in range(low, min(high, len(message.tokens))) if message.tokens[at].text in little("exchanged")]
    return any(not breaks(message, min(at, last.start), max(at, hit.start), True) for at in said)


def joins(message: Message, rules: Combine, last: Mention, hit: Hit, features: set[str]) -> bool:
    """Whether a feature belongs to the movement named before it."""
    if features <= last.features and not features <= rules.far:
        return False
    union = last.features | features
    if not rules.begins(union) or is_traded(message, last.end, hit.start):
        return False
    between = message.tokens[last.end : hit.start]
    joined = len(between) == 1 and between[0].text in little("and")
    both = {rules.resolve(last.features), rules.resolve(features)}
    if joined and None not in both and len(both) > 1:
        return False  # "squats and split squats"
    if last.movement and rules.resolve(features) is not None and rules.resolve(union) is None:
        return False  # two whole movements: "the pull-ups for chins"
    if _exchanged(message, rules, last, hit, features):
        return False
    if last.features <= rules.far and not breaks(message, last.end, hit.start, True):
        if _planned_apart(message, rules, features, union, last.end, hit.start):
            return False
        return rules.resolve(union) is not None and not _then(message, last.end, hit.start)
    after = max(end for _, end in last.spans)
    if last.movement.startswith("?") and features <= rules.leaning and not breaks(message, after, hit.start, True):
        follow = message.tokens[hit.end].kind if hit.end < len(message.tokens) else "nl"
        whole = rules.resolve(union)
        if whole is not None and not whole.startswith("?") and follow != "word":
            return True  # "front lever 4x8s, straddle"
    closes = hit.end < len(message.tokens) and message.tokens[hit.end].text in PARTS  # "3x6 with a red band, 2x8 …"
    own = not closes and work_after(message, hit.end)
    if features & rules.far and work_between(message, after, hit.start) and own:
        return False  # both have sets of their own
    if features <= rules.grips and _then(message, after, hit.start) and number_soon(message, hit.end):
        return False  # "negatives 3 sets of 3, then 2x8 underhand"
    named = rules.resolve(features) is not None and work_between(message, after, hit.start)
    if named and _then(message, after, hit.start):
        return False  # "pull-ups 4x5, then counterweight 7.5 kg: 2 per arm"
    if features & rules.far:
        return not breaks(message, after, hit.start, True) and rules.resolve(union) is not None
    if breaks(message, after, hit.start, False) or hit.start - after > GLUE:
        return False
    return rules.resolve(union) is not None or rules.begins(union)
