"""Exercises that no book knows: their sets go to `unread`, verbatim, and are never lent to a movement beside them.

"zercher carries 3x20, dips 3x8", "strict press 40kg 5x5, pull ups 5x5": words before sets that no book knows, in a
clause that names no movement, while the movement beside it has sets of its own.
"""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

TIED = frozenset({"load", "effort", "at", "side", "flag", "percent", "loads", "assist", "weighted"})
NAME = 4  # tokens of an exercise's name
WORK = frozenset({"rows", "bare", "loads", "count"})


def _named(fact: Fact) -> bool:
    return fact.kind == "move"


def _told(fact: Fact) -> bool:
    """Whole sets, such as "3x20", "3x30s" or "8/8/7"."""
    held = fact.kind == "rows" and len(fact.value) > 1 and all(one.hold_s is not None for one in fact.value)
    whole = held or fact.note.get("plain") or (fact.note.get("list") and fact.note.get("values")) or _one_hold(fact)
    return fact.kind == "rows" and bool(whole) and not fact.note.get("the")


def _one_hold(fact: Fact) -> bool:
    """ "Crane pose 50s": one hold, in seconds."""
    one = fact.kind == "rows" and bool(fact.note.get("one")) and fact.note.get("unit") == "sec"
    return one and fact.value[0].hold_s is not None


def _strange(message: Message, facts: Sequence[Fact]) -> bool:
    """Whether the words end in one that no book of this language knows."""
    words = [
        token
        for fact in facts
        if fact.kind == "word"
        for token in message.tokens[fact.start : fact.end]
        if token.kind == "word" and token.value is None
    ]
    if not words:
        return False
    last = words[-1]
    if last.text in little("to_begin_with"):
        return False  # "erst 3x5 mit 10, dann …"
    books = (message.book("prose").words, message.book("grammar").words)
    return not any(last.word in words or last.text in words for words in books)


def _phrase(message: Message, facts: Sequence[Fact], at: int) -> tuple[int, int] | None:
    """The clause around the sets at `at`, when plain words open it and nothing but what is tied to sets closes it."""
    start = at
    if start > 1 and facts[start - 1].note.get("unit") in ("kg", "lb") and _worded(facts[start - 2]):
        start -= 1  # "strict press 40kg 5x5"
    while start and _worded(facts[start - 1]):
        start -= 1
    if start == at or (start and facts[start - 1].kind not in ("sep", "rows", *TIED)):
        return None
    end = at + 1
    if end < len(facts) and _measure(message, facts[end]):
        end += 1  # "sled 4x20m with 60kg"
    while end < len(facts) and facts[end].kind in TIED:
        end += 1
    return start, end


def _worded(fact: Fact) -> bool:
    """Whether a fact may be of an exercise's name; "hold" is, behind a word: "arch hold 3x30s"."""
    held = fact.kind == "flag" and fact.value == "pause_pause"
    return fact.kind == "word" or fact.note.get("how") == "word" or held


def _alone(facts: Sequence[Fact], start: int, end: int) -> bool:
    """Whether a phrase is a clause of its own, of no more than a name and its work."""
    before, after = facts[start - 1] if start else None, facts[end] if end < len(facts) else None
    apart = (before is None or before.kind == "sep") and (after is None or after.kind == "sep")
    return apart and sum(fact.end - fact.start for fact in facts[start:end] if fact.kind == "word") <= NAME


def _measure(message: Message, fact: Fact) -> bool:
    """Whether a word is a unit of no set: metres, calories."""
    hits = message.beginning("grammar")[fact.start] if fact.kind == "word" else []
    return any(hit.table == "unit" and hit.name == "other" for hit in hits)


def _own_work(facts: Sequence[Fact], place: int, start: int, end: int, whole: bool = False) -> bool:
    """Whether the movement at `place` has work beside it, the phrase aside; `whole`: several sets."""
    for step in (-1, 1):
        at = place + step
        while 0 <= at < len(facts) and not start <= at < end:
            if _named(facts[at]):
                break
            if facts[at].kind == "sep" and facts[at].note.get("mark") not in (":", "(", ")"):
                break
            if facts[at].kind in WORK and (not whole or _told(facts[at])):
                return True
            at += step
    return False


def drop_practice(message: Message, facts: list[Fact]) -> tuple[list[Fact], list[str]]:
    """The facts without "15 minutes handstand practice", which is no hold of so long, and its words."""
    unread: list[str] = []
    if not any(fact.kind == "rows" and fact.note.get("unit") == "min" for fact in facts):
        return facts, unread
    out: list[Fact] = []
    clause: list[Fact] = []
    for fact in [*facts, Fact("sep", 0, 0, 3)]:
        if fact.kind != "sep":
            clause.append(fact)
            continue
        told = [one for one in clause if one.kind not in ("word", "scheme", "claim")]
        timed = sorted(one.kind for one in told) == ["move", "rows"] and any(
            one.note.get("unit") == "min" for one in told
        )
        if timed and _practised(message, clause):
            unread.append(message.span(told[0].start, told[-1].end))
        else:
            out += clause
        out += [fact] if fact.end else []
        clause = []
    return out, unread


def _practised(message: Message, clause: Sequence[Fact]) -> bool:
    words = [fact for fact in clause if fact.kind in ("word", "scheme")]
    return any(token.text in little("practice") for fact in words for token in message.tokens[fact.start : fact.end])


def drop_strangers(message: Message, facts: list[Fact]) -> tuple[list[Fact], list[str]]:
    """The facts without those of unknown exercises, and the words of these."""
    moves = [i for i, fact in enumerate(facts) if _named(fact)]
    if not moves:
        return facts, []
    gone: set[int] = set()
    unread: list[str] = []
    for at, fact in enumerate(facts):
        if not _told(fact):
            continue
        phrase = _phrase(message, facts, at)
        if phrase is None:
            continue
        start, end = phrase
        if _one_hold(fact) and not _alone(facts, start, end):
            continue
        words = facts[start:at]
        before = [place for place in moves if place < start]
        place = before[-1] if before else moves[0]
        if end < len(facts) and not before and _named(facts[end]) and not _own_work(facts, place, start, end):
            continue
        if not _strange(message, words) or not _own_work(facts, place, start, end, bool(fact.note.get("list"))):
            continue
        gone.update(range(start, end))
        unread.append(message.span(words[0].start, facts[end - 1].end))
    return [fact for i, fact in enumerate(facts) if i not in gone], unread
