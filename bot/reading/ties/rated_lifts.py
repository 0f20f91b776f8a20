"""Efforts told by movement under one word for them: "RPE: archers 7, dips 8", "pull-ups 8, dips 7 rpe"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import clause_start, is_comma
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

LEAST, MOST = 5, 10
LEAST_LIFTS = 2


def rated_lifts(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, the numbers beside the movements of such a row being efforts."""
    facts = _rated_on(message, _before_its_sets(facts))
    words = [at for at, fact in enumerate(facts) if _names_effort(message, fact)]
    if len(words) != 1:
        return facts
    at = words[0]
    ahead, behind = _row(facts, at + 1), _row_before(facts, at)
    if facts[at].kind == "word" and len(ahead) >= LEAST_LIFTS:
        return [replace(fact, kind="effort") if n in ahead else fact for n, fact in enumerate(facts)]
    if facts[at].kind == "effort" and ahead and _heads_row(facts, at, ahead):
        return [replace(fact, kind="effort") if n in ahead else fact for n, fact in enumerate(facts)]
    if facts[at].kind == "effort" and behind:
        return [replace(fact, kind="effort") if n in behind else fact for n, fact in enumerate(facts)]
    return facts


def _rated_on(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "RPE 9 on the last pull-up set, 7 on dips": a number on another lift, right behind an effort on one.

    It is no set of seven; of which of its sets it is the effort is asked.
    """
    for at in range(1, len(facts) - 3):
        mark, number, on, move = facts[at : at + 4]
        if move.kind != "move" or not is_comma(mark) or number.kind != "bare" or not _may_rate(number):
            continue
        if on.kind != "word" or message.tokens[on.start].text not in little("on_lift"):
            continue
        before = facts[clause_start(facts, at) : at]
        told = sorted(one.kind for one in before if one.kind not in ("word", "scope", "plan", "scheme"))
        if told == ["effort", "move"] and (at + 4 == len(facts) or facts[at + 4].kind == "sep"):
            return [*facts[: at + 1], Fact("ask", number.start, move.end, "rpe"), *facts[at + 4 :]]
    return facts


def led_alike(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "Pull-ups felt like 6, dips like 9": a number led by the word that led an effort before it."""
    out: list[Fact] = []
    for fact in facts:
        if fact.kind == "bare" and _may_rate(fact) and out and out[-1].kind == "word":
            led = message.tokens[out[-1].end - 1].text
            if any(one.kind == "effort" and led == _leads(message, one) for one in out):
                fact = replace(fact, kind="effort")
        out.append(fact)
    return out


def _leads(message: Message, effort: Fact) -> str | None:
    """The word right before the number of an effort."""
    words = message.tokens[effort.start : effort.end]
    at = next((n for n, word in enumerate(words) if word.value is not None and word.text not in little("an")), 0)
    led = [word.text for word in words[:at] if word.text not in little("an")]
    return led[-1] if led else None


def _before_its_sets(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "RPE 7 7 8 9 at 4x4": an effort a set, told before the sets."""
    for at, fact in enumerate(facts[:-1]):
        if fact.kind != "efforts":
            continue
        after = facts[at + 1 :]
        work = next((n for n, one in enumerate(after) if one.kind != "word"), None)
        if work is None or after[work].kind != "rows":
            continue
        if len(after[work].value) == len(fact.value):
            return [*facts[:at], *after[: work + 1], fact, *after[work + 1 :]]
    return facts


def _names_effort(message: Message, fact: Fact) -> bool:
    if fact.kind not in ("word", "effort"):
        return False
    return any(message.tokens[at].text in little("effort_word") for at in range(fact.start, fact.end))


def _heads_row(facts: Sequence[Fact], effort: int, ahead: Sequence[int]) -> bool:
    """ "Archers rpe 8, pull-ups 9 and dips 7": nothing but a movement and its effort, then more of them."""
    led = [fact.kind for fact in facts[:effort] if fact.kind not in ("word", "sep", "plan")]
    behind = [fact.kind for fact in facts[ahead[-1] + 1 :] if fact.kind not in ("word", "sep", "plan")]
    return led == ["move"] and not behind


def _row(facts: Sequence[Fact], start: int) -> list[int]:
    """The places of the numbers in a row of movements with one each, from `start`."""
    found: list[int] = []
    at = start
    while at < len(facts):
        if is_comma(facts[at]) or facts[at].value == "the":
            at += 1
            continue
        if facts[at].kind != "move" or at + 1 >= len(facts) or not _may_rate(facts[at + 1]):
            break
        found.append(at + 1)
        at += 2
    return found


def _row_before(facts: Sequence[Fact], effort: int) -> list[int]:
    """The same, where the last of the row has the word behind its number."""
    start = effort
    while start and (facts[start - 1].kind in ("move", "bare") or facts[start - 1].note.get("mark") in (",", "and")):
        start -= 1
    if facts[effort - 1].kind != "move":
        return []
    row = _row(facts, start)
    return row if row and row[-1] + 3 == effort else []


def _may_rate(fact: Fact) -> bool:
    return fact.kind == "bare" and LEAST <= fact.value <= MOST
