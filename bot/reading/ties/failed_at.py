"""Reps that a set came to before it failed: "im letzten Satz bei 3 gescheitert", "then one more set, failed after 4".

The miss is told as that of the next repetition, which says both how many went up and that one did not.
"""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import is_then
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message

MOST = 30  # reps; more are kilograms sooner
NEXT_REP = 3  # words of "the next rep"
TO_THE_LAST = 10.0  # the effort that "to failure" is
BETWEEN = frozenset({"word", "plan"})
BESIDE = frozenset({"word", "plan", "move"})  # "last set of dips failed at 3"


def failed_at(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with a miss of the repetition after so many, of the set that is named or of one set more."""
    if any(fact.kind == "rows" and any(entry.hold_s for entry in fact.value) for fact in facts):
        return facts  # "4x10 s, last one failed after 6": seconds
    at = 0
    while at < len(facts):
        if facts[at].kind == "fail" and facts[at].value is None and not facts[at].note.get("weak"):
            facts = _of_next_rep(message, facts, at) or _of_reps(message, facts, at) or facts
        at += 1
    return facts


def to_failure(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Then one set to failure: 4", "last set to failure 4": the reps of that set stand behind the words."""
    for at in range(1, len(facts) - 1):
        effort, sep = facts[at : at + 2]
        if not (effort.kind == "effort" and effort.note.get("words") and effort.value == TO_THE_LAST):
            continue
        led = sep.kind == "word" and message.tokens[sep.start].text in little("failed_after")
        behind = at + 1 + (led or sep.note.get("mark") in (",", ":"))
        reps = facts[behind] if behind < len(facts) else effort
        if _whole(reps) is None or reps.kind != "bare":
            continue
        if behind + 1 < len(facts) and facts[behind + 1].kind not in ("sep", "word"):
            continue  # "to failure, 4 with 10"; "to failure, 4, 3" tells two
        if behind + 2 < len(facts) and facts[behind + 2].kind in ("bare", "rows"):
            continue
        named = facts[at - 1]
        before = facts[at - 2] if at > 1 else None
        one = before is not None and (_one(before) or (before.kind == "count" and before.value == 1))
        a_set = before is not None and _a_set(message, before, named)
        if named.kind == "scope" and named.value == "last" and not one:
            told = Fact("rows", reps.start, reps.end, [Entry(int(reps.value))], {"one": True, "reps": True})
            return [*facts[:at], told, effort, *facts[behind + 1 :]]
        counted = named.kind == "count" and named.value == 1
        if counted or a_set or (named.kind == "scope" and named.value == "last" and one):
            start = at - 1 if counted else at - 2
            rows = _one_set(facts, facts[start].start, reps.end, int(reps.value))
            return [*facts[:start], rows, effort, *facts[behind + 1 :]]
    return facts


def _a_set(message: Message, before: Fact, named: Fact) -> bool:
    """ "Then a set to failure"."""
    words = before.kind == named.kind == "word" and message.tokens[before.start].text in little("a")
    return words and any(hit.table == "sets" for hit in message.beginning("grammar")[named.start])


def _of_next_rep(message: Message, facts: Sequence[Fact], at: int) -> list[Fact] | None:
    """ "A set of 3 where I failed the next rep", "3, die nächste nicht geschafft"."""
    fail = facts[at]
    start, end = fail.start, fail.end
    behind = [token.text for token in message.tokens[end : end + NEXT_REP]]
    behind = behind[1:] if behind and behind[0] in little("the") else behind
    after = any(" ".join(behind[:many]) in little("next_rep") for many in range(1, NEXT_REP))
    if not after and not (start and message.tokens[start - 1].text in little("next_rep")):
        return None
    told = at - 1
    while told > 0 and (facts[told].kind in BETWEEN or facts[told].kind == "sep"):
        told -= 1
    rows = facts[told]
    alone = rows.kind == "rows" and len(rows.value) == 1 and bool(rows.value[0].reps)
    if not alone or not rows.value[0].reps or rows.value[0].reps < 2:
        return None
    last = at + 1
    while (
        last < len(facts)
        and facts[last].start < end + NEXT_REP
        and facts[last].kind in ("word", "plan", "sep", "last_rep")
    ):
        last += 1
    said = Fact("fail", fail.start, facts[last - 1].end, rows.value[0].reps + 1, {"rep": True})
    shared = (
        _one_set(facts[:told], rows.start, rows.end, rows.value[0].reps) if told and _then(facts[told - 1]) else rows
    )
    return [*facts[:told], shared, said, *facts[last:]]


def _of_reps(message: Message, facts: Sequence[Fact], at: int) -> list[Fact] | None:
    fail = facts[at]
    number = _number_behind(message, facts, at) or _number_before(message, facts, at)
    if number is None:
        return _single_more(facts, at)
    first, last, reps = number
    scope = next((n for n in range(first - 1, -1, -1) if facts[n].kind not in BESIDE), -1)
    said = Fact("fail", facts[first].start, facts[last].end, reps + 1, {"rep": True})
    if scope >= 0 and _names_one(facts[scope]) and not (scope and _one(facts[scope - 1])):
        return [*facts[:first], said, *facts[last + 1 :]]
    behind = last + 1 < len(facts) and _names_one(facts[last + 1])
    if behind:
        return [*facts[:first], facts[last + 1], said, *facts[last + 2 :]]
    more = _set_more(message, facts, first)
    if more is None:
        return None
    rows = _one_set(facts[:more], facts[more].start, fail.start, reps)
    return [*facts[:more], rows, said, *facts[last + 1 :]]


def _number_behind(message: Message, facts: Sequence[Fact], at: int) -> tuple[int, int, int] | None:
    """ "Failed at 3", "fallé tras 3": the places of the miss and of the number, and how many."""
    n = at + 1
    if n < len(facts) and facts[n].kind == "load" and facts[n].start == facts[at].end:
        reps = _at_so_many(message, facts[n])
        return (at, n, reps) if reps else None
    led = n + 1 < len(facts) and facts[n].kind in BETWEEN and facts[n].end == facts[n].start + 1
    if (
        not led
        or message.tokens[facts[n].start].text not in little("failed_after")
        or facts[n + 1].start != facts[n].end
    ):
        return None
    reps = _whole(facts[n + 1])
    return (at, n + 1, reps) if reps else None


def _number_before(message: Message, facts: Sequence[Fact], at: int) -> tuple[int, int, int] | None:
    """ "Bei 3 gescheitert", "nach 3 Wdh versagt"."""
    n = at - 1
    if n < 0 or facts[n].end != facts[at].start:
        return None
    if facts[n].kind == "load":
        reps = _at_so_many(message, facts[n])
        return (n, at, reps) if reps else None
    reps = _whole(facts[n])
    led = n > 0 and facts[n - 1].end == facts[n].start and facts[n - 1].end == facts[n - 1].start + 1
    if not reps or not led or message.tokens[facts[n - 1].start].text not in little("failed_after"):
        return None
    return n - 1, at, reps


def _at_so_many(message: Message, load: Fact) -> int | None:
    """How many reps "at 3" is, which was taken for a load."""
    small = load.note.get("how") == "at" and not load.note.get("unit") and bool(load.value)
    if not small or message.tokens[load.start].text not in little("at_score"):
        return None
    return int(load.value) if 0 < load.value == int(load.value) <= MOST else None


def _whole(fact: Fact) -> int | None:
    if fact.kind == "rows":
        return fact.value[0].reps if len(fact.value) == 1 and fact.note.get("one") else None
    small = fact.kind == "bare" and bool(fact.value) and 0 < fact.value == int(fact.value) <= MOST
    return int(fact.value) if small else None


def _names_one(fact: Fact) -> bool:
    return fact.kind == "scope" and (fact.value in ("last", "first") or isinstance(fact.value, int))


def _one(fact: Fact) -> bool:
    """ "One", "ein", "una", as in "one last set"."""
    word = fact.kind == "bare" and fact.value == 1 and fact.note.get("spelled")
    return bool(word or (fact.kind == "rows" and len(fact.value) == 1 and fact.note.get("word") and _single(fact)))


def _single(fact: Fact) -> bool:
    return fact.kind == "rows" and all(entry.reps == 1 for entry in fact.value)


def _then(fact: Fact) -> bool:
    return fact.kind in ("sep", "word")


def _set_more(message: Message, facts: Sequence[Fact], first: int) -> int | None:
    """The place of the words for one more set in front of what became of it: "danach noch einer, "."""
    n = first - 1
    while n >= 0 and (
        facts[n].note.get("mark") == "," or (facts[n].kind == "word" and not _another(message, facts[n]))
    ):
        n -= 1
    if n < 1 or not any(fact.kind == "rows" for fact in facts[:n]):
        return None
    fact = facts[n]
    extra = fact.kind == "plan" and fact.value == "extra_set"
    one_more = fact.kind == "delta" and fact.value[:2] == (1.0, "reps") and bool(fact.note.get("open"))
    if extra or one_more or _another(message, fact) or (_one(fact) and _led(message, facts, n)):
        return n
    return None


def _another(message: Message, fact: Fact) -> bool:
    return fact.kind == "word" and message.tokens[fact.start].text in little("one_more_set")


def _led(message: Message, facts: Sequence[Fact], n: int) -> bool:
    """Whether "another" or "then" leads to it."""
    before = facts[n - 1]
    again = before.kind == "word" and message.tokens[before.start].text in little("another")
    return again or is_then(before)


def _single_more(facts: Sequence[Fact], at: int) -> list[Fact] | None:
    """ "4 singles with 25, then one failed": one more at their load."""
    n = at - 1 if at and _one(facts[at - 1]) else at + 1
    if n >= len(facts) or not _one(facts[n]) or abs(facts[n].start - facts[at].start) > 2:
        return None
    first, last = min(n, at), max(n, at)
    if last + 1 < len(facts) and facts[last + 1].kind not in ("sep", "word", "plan"):
        return None  # "failed one with 45"
    if last + 1 < len(facts) and facts[last + 1].end == facts[last].end + 1 and facts[last + 1].kind == "word":
        return None  # "failed one rep"
    if first < 1 or facts[first - 1].kind != "sep" or facts[first - 1].note.get("mark") == ".":
        return None
    told = next((one for one in reversed(facts[:first]) if one.kind in ("rows", "bare", "count")), None)
    if told is None or not _single(told) or _one(told):
        return None
    rows = _one_set(facts[:first], facts[first].start, facts[last].end, 0)
    return [*facts[:first], rows, *facts[last + 1 :]]


def _one_set(before: Sequence[Fact], start: int, end: int, reps: int) -> Fact:
    """One set more, at the load of those before it."""
    note: dict[str, object] = {"reps": True}
    load = next((fact for fact in reversed(before) if fact.kind in ("load", "loads", "move")), None)
    if load is not None and load.kind == "load" and load.value:
        note["own_load"] = float(load.value)
    return Fact("rows", start, end, [Entry(reps)], note)
