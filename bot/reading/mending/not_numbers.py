"""What is put right and is no number: the side, the movement, the day."""

from __future__ import annotations

import itertools

from bot.reading.days import named_days
from bot.reading.little import little
from bot.reading.mending.fields import which_set
from bot.reading.mending.mend import NEAR, Mend, mentions_in, only_little, opposed
from bot.reading.message import Claim
from bot.reading.movements.mention import Mention
from bot.reading.reading import Correction


def of_sides(mend: Mend) -> list[Claim]:
    sides = [h for h in mend.message.hits("body") if h.table == "side" and h.name != "both"]
    for one, two in itertools.pairwise(sides):
        if one.name != two.name and opposed(mend, one.end, two.start):
            mentions = mentions_in(mend.message, set())
            movement = mentions[-1].movement if mentions and not mentions[-1].movement.startswith("?") else None
            made = Correction("side", two.name, one.name, movement, None, which_set(mend))
            return [Claim(one.start, two.end, "correction", made)]
    return []


def of_movements(mend: Mend) -> list[Claim]:
    mentions = mentions_in(mend.message, set())
    values = mend.values()
    if len(mentions) != 2 or values:
        return []
    one, two = mentions
    if _denied_first(mend, one, two):
        one, two = two, one
    elif not opposed(mend, one.end, two.start):
        return []
    if one.movement == two.movement:
        return []
    if one.movement.startswith("?") or two.movement.startswith("?"):
        return []
    made = Correction("movement", two.movement, one.movement, None, None, which_set(mend))
    return [Claim(min(one.start, two.start), max(one.end, two.end), "correction", made)]


def nothing_else(mend: Mend) -> bool:
    """Whether a message is two movements opposed, and nothing more: "chins, not pull-ups"."""
    taken = {at for one in mentions_in(mend.message, set()) for at in range(one.start, one.end)}
    taken |= {at for hit in mend.hits.get("not", ()) for at in range(hit.start, hit.end)}
    return all(at in taken or token.kind != "word" for at, token in enumerate(mend.tokens))


def _denied_first(mend: Mend, one: Mention, two: Mention) -> bool:
    """ "It wasn't pull-ups, it was chin-ups"; "no eran dominadas sino supinas"."""
    nots = mend.between("not", max(0, one.start - NEAR), one.start)
    denied = any(only_little(mend.tokens, hit.end, one.start) for hit in nots)
    return denied and bool(mend.between("now", one.end, two.start))


def of_days(mend: Mend) -> list[Claim]:
    if mend.values():
        return []
    days = [day for day in named_days(mend.message).days if day.back is not None]
    for one, two in itertools.pairwise(days):
        if _really(mend, one.end, two.start) and one.back and two.back and one.back != two.back:
            made = Correction("performed_on", one.back[1].isoformat(), two.back[1].isoformat(), None, None, "all")
            return [Claim(one.start, two.end, "correction", made)]
        plain = [h for h in mend.between("not", one.end, two.start) if h.end - h.start == 1]
        if plain and opposed(mend, one.end, two.start) and one.back and two.back:
            made = Correction("performed_on", two.back[1].isoformat(), one.back[1].isoformat(), None, None, "all")
            return [Claim(one.start, two.end, "correction", made)]
    return []


def _really(mend: Mend, start: int, end: int) -> bool:
    """Whether no more than "was actually" stands between two days: "yesterday's session was actually Monday's"."""
    between = mend.between("really", start, end)
    said = {at for hit in between for at in range(hit.start, hit.end)}
    turns = any(mend.tokens[at].text in little("but", "that") for at in range(start, end))
    # "can't make it Monday, is Tuesday ok" puts nothing right
    small = little("the", "of", "article", "but", "that", "before_scope") | ({","} if turns else set())
    return bool(between) and all(at in said or mend.tokens[at].text in small for at in range(start, end))
