"""Efforts told of a whole message: the session's, every set's, or one before each movement."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.bounds import SENTENCE
from bot.reading.facts import Fact
from bot.reading.fold.sets import Work
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.reading import Ask, SetRead

SILENT = frozenset({"word", "claim", "sep", "scheme", "plan"})  # what may close a message behind its efforts


def all_rated(own: list[Fact], lifts: int) -> float | None:
    """ "Pulls 5x5, squats 5x5 80 kg, all RPE 8": every set's effort, behind lifts or in a sentence of its own."""
    at = next((at for at in range(len(own) - 1, -1, -1) if own[at].kind == "scope"), 0)
    before = [fact for fact in own[:at] if fact.kind not in ("word", "claim")]
    alone = at > 0 and own[at - 1].kind == "sep" and (own[at - 1].value == SENTENCE or lifts > 1)
    effort = own[at + 1] if at + 1 < len(own) else None
    words = str(own[at].note.get("text", "")).split() if own else []
    if words[:1] and words[0] in little("those"):
        return None  # "3x3, those all rpe 7"
    if not before or not alone or own[at].value != "all" or effort is None or effort.kind != "effort":
        return None
    closes = all(fact.kind in SILENT for fact in own[at + 2 :])
    return float(effort.value) if closes else None


def both_rated(own: list[Fact], lifts: int) -> float | None:
    """ "Pull-ups 5x3, dips 3x8, both RPE 8": the effort of the last set of each of two lifts."""
    told = [fact for fact in own if fact.kind not in ("word", "claim", "scheme")]
    while told and told[-1].kind in SILENT:
        told.pop()
    if lifts < 2 or [fact.kind for fact in told[-3:-1]] != ["sep", "plan"]:
        return None
    both, value = told[-2:]
    if "all_lifts" not in both.note.get("names", ()) or value.kind not in ("effort", "at"):
        return None
    return float(value.value if value.kind == "effort" else value.value[0])


def ask_of_heads(
    message: Message,
    blocks: list[tuple[Fact, list[Fact]]],
    efforts: list[tuple[float, int, list[SetRead]]],
    work: Work,
) -> None:
    """ "RPE 8 pull-ups 4x5, RPE 7 dips 4x8": two efforts before their work; of which sets they are is asked."""
    if len({value for value, how, _ in efforts if how == 3}) < 2:
        return
    told = [fact for _, own in blocks for fact in own if fact.kind in ("effort", "efforts", "at")]
    told = told or [move for move, _ in blocks]
    work.asks.append(Ask("rpe", message.span(told[0].start, told[0].end)))
    efforts[:] = [one for one in efforts if one[1] != 3]


def settle_efforts(work: Work, efforts: list[tuple[float, int, list[SetRead]]], worked: int, inside: bool) -> None:
    """An effort closing a message of one movement is its last set's; after several, or before work, the session's."""
    for value, how, made in efforts:
        if how == 3:
            work.session_rpe = value
        elif (worked > 1 and not inside and len(efforts) == 1 and made and made[-1] is work.sets[-1]) or (
            worked > 1 and how == 2 and made and made[-1] is work.sets[-1] and len(efforts) == 1
        ):
            work.session_rpe = value
            for at in range(len(work.sets)):
                if any(work.sets[at] is one for one in made) and work.sets[at].rpe == value:
                    work.sets[at] = replace(work.sets[at], rpe=None)
