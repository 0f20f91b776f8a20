"""Days on which nothing was trained, as the message says: "today nothing but yesterday 4x5", "wed off".

Nor was there on the day whose plan was done on another: "das für heute hab ich gestern schon gemacht".
"""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.little import little
from bot.reading.message import Claim, Message

REACH = 3  # tokens between a day and the word for what it was
CLAUSE_ENDS = frozenset({",", ";", ".", "!", "?", "\n"})
LONGEST = 3  # words of "a rest day"


def trained_days(message: Message, days: Sequence[Claim], pains: Sequence[Claim] = ()) -> list[Claim]:
    """The days without the idle ones, and without those of which no more is said than that something hurt."""
    idle: list[Claim] = []
    for day in sorted((day for day in days if day.value is not None), key=lambda day: day.start):
        if _idle(message, day) or (idle and _goes_on(message, idle[-1], day)):
            idle.append(day)
    others = [day for day in days if day.value is not None and day.end > day.start and not _of_plan(message, day)]
    idle += [day for day in days if others and _of_plan(message, day)]
    for day in days:
        left = [one for one in others if one is not day and not any(one is known for known in idle)]
        if not left or day.start >= day.end:
            continue
        if _of_reason(message, day) or _before_so(message, day, left) or _of_pain(message, day, pains):
            idle.append(day)
    return [day for day in days if not any(day is one for one in idle)]


def _of_plan(message: Message, day: Claim) -> bool:
    """Whether a day only says whose work it is: "the plan for today", "die heutige Einheit"."""
    tokens = message.tokens
    if day.start >= day.end or day.value is None:
        return False
    behind = tokens[day.end].text if day.end < len(tokens) else ""
    if tokens[day.start].text in little("of_today"):
        return behind in little("plan_of")
    led = tokens[day.start - 1].text if day.start else ""
    whose = tokens[day.start - 2].text if day.start > 1 else ""
    return led in little("planned_for") or (led in little("of_another") and whose in little("plan_of"))


def _clause(message: Message, at: int) -> int:
    """Where the clause around a token begins."""
    return next((n + 1 for n in range(at - 1, -1, -1) if message.tokens[n].kind in ("sym", "nl")), 0)


def _of_reason(message: Message, day: Claim) -> bool:
    """ "Did it yesterday because I'm working tonight": why, and no day of training."""
    low = _clause(message, day.start)
    because = message.book("prose").named("because")
    led = next((n for n in range(day.start - 1, low - 1, -1) if message.tokens[n].text in because), None)
    return led is not None and not _tells(message, led, day.start)


def _before_so(message: Message, day: Claim, others: Sequence[Claim]) -> bool:
    """ "On nights from tonight so I did it yesterday": what led to it, with no training told."""
    tokens = message.tokens
    if _tells(message, _clause(message, day.start), day.end):
        return False
    end = next((n for n in range(day.end, len(tokens)) if tokens[n].text in little("so_then")), None)
    if end is None or any(token.text in ".!?" for token in tokens[day.end : end]) or _tells(message, day.end, end):
        return False
    return any(other.start >= end for other in others)


def _of_pain(message: Message, day: Claim, pains: Sequence[Claim]) -> bool:
    """ "Dips 3x8 yesterday. Elbow 2/10 this morning": whether the clause of a day tells pain, and no training."""
    ends = [at for at, token in enumerate(message.tokens) if token.text in CLAUSE_ENDS]
    low = max((at + 1 for at in ends if at < day.start), default=0)
    high = min((at for at in ends if at >= day.end), default=len(message.tokens))
    own = [pain for pain in pains if low <= pain.start < pain.end <= high]
    told = {at for pain in own for at in range(pain.start, pain.end)}
    rest = [at for at in range(low, high) if at not in told and not day.start <= at < day.end]
    return bool(own) and not any(_tells(message, at, at + 1) for at in rest)


def _tells(message: Message, start: int, end: int) -> bool:
    """Whether a number or a movement stands between two places."""
    movements = message.beginning("movements")
    return bool(message.numbers_within(start, end)) or any(movements[at] for at in range(start, end))


def _goes_on(message: Message, idle: Claim, day: Claim) -> bool:
    """ "rested Monday and Tuesday"."""
    between = message.tokens[idle.end : day.start]
    return len(between) == 1 and between[0].text in little("and")


def _idle(message: Message, day: Claim) -> bool:
    """Whether a word for no training stands right behind the day, or leads it: "nothing on Tuesday"."""
    tokens = message.tokens
    at = day.end
    while at < len(tokens) and at < day.end + REACH and tokens[at].text in little("joins_no_training"):
        at += 1
    if _named(message, at):
        return True
    before = day.start - 1 - (day.start > 0 and tokens[day.start - 1].text in little("before_ordinal"))
    alone = before < 1 or tokens[before - 1].kind in ("sym", "nl")
    return before >= 0 and alone and tokens[before].text in little("no_training")


def _named(message: Message, at: int) -> bool:
    """Whether "off", "a rest day" stands here."""
    words = [token.text for token in message.tokens[at : at + LONGEST]]
    many = next((n for n in range(len(words), 0, -1) if " ".join(words[:n]) in little("no_training")), 0)
    counted = message.tokens[at + many : at + many + 1]  # "yesterday: rest 3 min"
    return many > 0 and not any(token.value is not None for token in counted)
