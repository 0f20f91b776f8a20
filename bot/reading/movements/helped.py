"""Which sets a band is of: those before it, those behind it, some of them, or sets of their own."""

from __future__ import annotations

from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.movements.between import GLUE, MOST_SET_TOKENS, breaks, work_after, work_between
from bot.reading.movements.combine import Combine
from bot.reading.movements.mention import Mention

HELP = frozenset({"band", "assisted", "band_assisted"})


def of_the_next(message: Message, rules: Combine, last: Mention, hits: list[Hit]) -> bool:
    """Whether help is of the movement right behind it, others told before: "pull-ups 5x1, band pull-ups 3x5"."""
    if len(hits) < 2 or hits[1].table in ("none", "other"):
        return False
    between = message.tokens[hits[0].end : hits[1].start]
    adjacent = all(token.text == "-" for token in between) and len(between) < 2
    whole = rules.resolve(set(hits[0].name.split("+")) | set(hits[1].name.split("+")))
    return adjacent and whole is not None and work_between(message, max(end for _, end in last.spans), hits[0].start)


def of_some_sets(message: Message, rules: Combine, last: Mention, hit: Hit, features: set[str]) -> bool:
    """Whether a band is of some of the sets: "4x6, from the third with a band", "4x6, 2 sets of them with a band"."""
    after = max(end for _, end in last.spans)
    if last.features & HELP or rules.resolve(last.features | features) is None:
        return False
    if breaks(message, after, hit.start, True):
        return False
    first = next((at for at in range(last.spans[0][0] - 4, hit.start) if at >= 0 and message.tokens[at].value), None)
    if first is None:
        return False
    grammar = message.beginning("grammar")
    parting = little("of_those_sets", "from_set")
    return any(
        message.tokens[at].text in parting
        or any(
            (one.table == "sep" and one.name == "then") or (one.table == "scope" and one.name not in ("all", "over"))
            for one in grammar[at]
        )
        for at in range(max(after, first), hit.start)
    )


def after_own_work(message: Message, rules: Combine, last: Mention, hit: Hit, features: set[str]) -> bool:
    """ "Pull-ups 5x3 with 20 and 2x8 with the band": the band is of the sets right before it, others stand before."""
    after = max(end for _, end in last.spans)
    tokens = message.tokens
    works = [at for at in range(after, hit.start - 2) if work_between(message, at, at + 3)]
    if len(works) < 2 or last.features & HELP or rules.resolve(last.features | features) is None:
        return False
    near = tokens[works[-1] + 3 : hit.start]
    plain = len(near) <= GLUE and all(token.kind == "word" and token.value is None for token in near)
    return plain and not breaks(message, after, hit.start, True)


def own_sets_helped(message: Message, rules: Combine, last: Mention, hit: Hit, behind: list[Hit]) -> bool:
    """ "Pull-ups 3x5, with the red band 2x6": sets with help, behind a comma and others without."""
    parted = any(token.text == "," for token in message.tokens[max(0, hit.start - GLUE - 1) : hit.start])
    if not parted or last.features & HELP or rules.resolve(last.features | set(hit.name.split("+"))) is None:
        return False
    named = behind and behind[0].start - hit.end <= MOST_SET_TOKENS + 1
    whole = work_between(message, last.spans[0][1], hit.start) and work_after(message, hit.end)
    return whole and not (named and not breaks(message, hit.end, behind[0].start, False))
