"""Exercises told in one breath, "dips 3x8 with 10 chins 4x5", "3x8 dips 4x5 chins": the sign that was left out.

It is put where one exercise has its sets and the next has others of its own; then what is said of the sets of one is
not taken for the other's. Where the sets between two names may be of either, nothing is put.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from bot.reading.bounds import SENTENCE
from bot.reading.facts import Fact

WORK = frozenset({"rows", "bare", "loads", "count"})
SHARED = frozenset({"rounds", "repeat"})  # what is told once for several
PACES = frozenset({"superset", "emom", "every", "total"})
CLOCKS = frozenset({"emom", "every"})
LEADS = frozenset({"load", "at", "flag", "word", "side", "plan", "weighted", "assist", "claim"})  # before a name, of it
RATES = frozenset({"effort", "efforts", "effort_range", "fail", "mend"})  # what closes the sets of an exercise


def run_on(facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with a sign between exercises that none parts."""
    moves = [at for at, fact in enumerate(facts) if fact.kind == "move"]
    cuts: set[int] = set()
    start, named_first = 0, False
    for n, (first, then) in enumerate(pairwise(moves)):
        follow = moves[n + 2] if n + 2 < len(moves) else len(facts)
        end = next((at for at in range(then, follow) if facts[at].kind == "sep"), follow)
        after = facts[then + 1 : end]
        behind = (at + 1 for at in range(first - 1, start - 1, -1) if facts[at].kind in ("sep", "move"))
        place = next(behind, start)
        named_first = place > start and facts[place - 1].kind == "move" and named_first
        start = place
        head, between = facts[start:first] if not named_first else (), facts[first + 1 : then]
        named_first = not _works(head)
        bare_next = end == follow < len(facts) and not _works(facts[follow + 1 : _clause_end(facts, follow)])
        if bare_next and (_works(head) or sum(fact.kind in WORK for fact in between) > 1):
            after = ()  # "dips 3x8 4x5 chins 3x3 rows": the sets stand before their names
        cut = _cut(head, between, after)
        if cut is not None:
            start = first + 1 + cut
            cuts.add(start)
    if not cuts:
        return facts
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        if at in cuts:
            out.append(Fact("sep", fact.start, fact.start, SENTENCE, {"mark": ";"}))
        out.append(fact)
    return out


def _clause_end(facts: Sequence[Fact], at: int) -> int:
    return next((n for n in range(at + 1, len(facts)) if facts[n].kind in ("sep", "move")), len(facts))


def _cut(head: Sequence[Fact], between: Sequence[Fact], after: Sequence[Fact]) -> int | None:
    """Where among the facts between two names the second exercise begins; None where a sign stands or nobody knows."""
    if any(map(_shared, head)):
        return None
    paced = next((at for at, fact in enumerate(between) if _shared(fact)), None)
    if paced is not None:
        told = between[paced].value in CLOCKS and (_works(head) or _works(between[: max(0, paced - 1)]))
        return _before_pace(between, paced) if told else None
    part = 1 + max((at for at, fact in enumerate(between) if fact.kind == "sep"), default=-1)
    if any(fact.kind == "sep" and fact.value == SENTENCE for fact in between):
        return None
    tail = between[part:]
    work = [at for at, fact in enumerate(tail) if fact.kind in WORK]
    led = _led(tail)
    told = _works(head) or _works(between[:part]) or len(work) > 1
    if work and told and _counts(tail, work[-1], after):
        return part + work[-1] if work[-1] or not part else None  # "dips 3x8 4 holds of 20 seconds"
    if _works(after):
        own = bool(work) if not part else bool(work) or _closes(tail)
        return part + led if own and led and (part or not _works(head)) and not _open(tail[:led], part, after) else None
    if part or not work:
        return None
    last = work[-1]
    before = any(map(_whole, head)) if _works(head) else len(work) > 1 and _whole(tail[work[-2]])
    leads = all(fact.kind in LEADS for fact in tail[last + 1 :])
    begins = last
    while begins and tail[begins - 1].kind in ("link", "word"):
        begins -= 1
    several = _whole(tail[last]) and not tail[last].note.get("one")  # "4x6 with 30s of hollow between"
    return begins if leads and before and several else None


def _before_pace(between: Sequence[Fact], at: int) -> int:
    """Where "8 min emom" begins."""
    minutes = at > 0 and between[at - 1].kind == "rows" and between[at - 1].note.get("unit") == "min"
    return at - 1 if minutes else at


def _closes(tail: Sequence[Fact]) -> bool:
    """Whether a clause without sets says something of those before it: ", 2 in reserve on the last"."""
    rates = any(fact.kind in RATES for fact in tail)
    return rates and any(fact.kind in ("scope", "fail", "mend") for fact in tail)


def _open(tail: Sequence[Fact], part: int, after: Sequence[Fact]) -> bool:
    """Whether the last value before a name may be of it: "20 kg chins 4x5", ", 3 dips of 10"."""
    end = next((at for at in range(len(tail) - 1, -1, -1) if tail[at].kind != "word"), 0)
    if tail[end].kind == "mend":
        return True  # "4x5, sorry, chins 4x5"
    if tail[end].kind in ("load", "at"):
        return not end or tail[end - 1].kind not in WORK
    several = any(fact.kind == "rows" and len(fact.value) > 1 for fact in after)
    alone = tail[end].kind in ("bare", "count") and sum(fact.kind in WORK for fact in tail) == 1
    return alone and not (part and several)


def _led(tail: Sequence[Fact]) -> int:
    """Where the words begin that stand before a name and are of it: "drop set of chins", "negative chins"."""
    at = len(tail)
    while at and (
        tail[at - 1].kind in ("word", "link")
        or (tail[at - 1].kind, tail[at - 1].value) == ("flag", "eccentric")
        or (tail[at - 1].kind == "plan" and "the" in tail[at - 1].note.get("names", ()))
    ):
        at -= 1
    return at if any(fact.kind in ("link", "flag") for fact in tail[at:]) else len(tail)


def _counts(tail: Sequence[Fact], at: int, after: Sequence[Fact]) -> bool:
    """Whether a number before a name counts its sets, or its lowerings: "2 holds of 20 s", "6 negatives of 8 s"."""
    if tail[at].kind not in ("bare", "count") or any(fact.kind not in LEADS for fact in tail[at + 1 :]):
        return False
    lowered = any((fact.kind, fact.value) == ("flag", "eccentric") for fact in [*tail[at + 1 :], *after])
    work = [fact for fact in after if fact.kind in WORK]
    timed = (
        len(work) == 1 and work[0].kind == "rows" and len(work[0].value) == 1 and work[0].value[0].hold_s is not None
    )
    return timed or (tail[at].kind == "bare" and lowered and not work) or (tail[at].kind == "count" and bool(work))


def _works(facts: Sequence[Fact]) -> bool:
    return any(fact.kind in WORK for fact in facts)


def _shared(fact: Fact) -> bool:
    return fact.kind in SHARED or (fact.kind == "scheme" and fact.value in PACES)


def _whole(fact: Fact) -> bool:
    """Whether sets are told in full: so many of so many, or held."""
    return fact.kind == "rows" and (len(fact.value) > 1 or fact.value[0].hold_s is not None or not fact.note.get("one"))
