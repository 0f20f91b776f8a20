"""One more set with values of its own, after all that was planned: "as written, and then one set of 4 with 15"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

WHOLE = frozenset({"done", "planned"})
VALUES = frozenset({"rows", "bare", "load", "at"})


def set_on_top(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts, with words for an extra set in place of such a one; its values stand beside or right behind them."""
    planned = {row.movement for row in rows}
    if any(fact.kind == "move" and fact.value.movement not in planned for fact in facts):
        return facts
    for at, fact in enumerate(facts):
        low, high = clause_start(facts, at), clause_end(facts, at)
        clause = facts[low:high]
        if not _one_set(message, fact) or any(one.kind in ("scope", "delta", "instead") for one in clause):
            continue
        span = range(facts[low].start, facts[high - 1].end)
        on_top = _says(message, span, "over_the_plan")
        whole = on_top or _whole_before(facts, low)
        later = on_top or _says(message, span, "at_the_end") or _after_that(facts, low)
        valued = any(one.kind in VALUES for one in clause) or _values_behind(facts, high)
        if not (whole and later and valued):
            continue
        extra = Fact("plan", fact.start, fact.end, "extra_set", {"names": ["extra_set"]})
        own = []
        if fact.kind == "rows":
            reps = float(fact.value[0].reps)
            own.append(Fact("bare", fact.end, fact.end, reps, {"kg": reps}))
        told = [one for one in facts[low:at] if not plan_names(one) & WHOLE]
        done = [Fact("plan", fact.start, fact.start, "planned", {"names": ["planned"]})] if on_top else []
        return [*facts[:low], *done, *told, extra, *own, *facts[at + 1 :]]
    return facts


def _one_set(message: Message, fact: Fact) -> bool:
    """Whether one set is counted here, or told with its reps: "one set", "one set of 4"."""
    if fact.kind == "count":
        return bool(fact.value == 1)
    if fact.kind != "rows" or len(fact.value) != 1 or not fact.value[0].reps:
        return False
    return any(message.tokens[at].text in little("one_set") for at in range(fact.start, fact.end))


def _says(message: Message, span: range, name: str) -> bool:
    """Whether one of a list of phrases stands within a span of tokens."""
    words = f" {' '.join(message.tokens[at].text for at in span)} "
    return any(f" {phrase} " in words for phrase in little(name))


def _whole_before(facts: Sequence[Fact], low: int) -> bool:
    """Whether all was told as done or planned before a clause, and no other value."""
    before = facts[:low]
    whole = any(plan_names(one) & WHOLE for one in before)
    return whole and not any(one.kind in ("rows", "bare", "scope") and one.value != "all" for one in before)


def _after_that(facts: Sequence[Fact], low: int) -> bool:
    """Whether a "then" leads the clause."""
    return low > 0 and facts[low - 1].kind == "sep" and facts[low - 1].value == 2


def _values_behind(facts: Sequence[Fact], end: int) -> bool:
    """Whether the next clause has nothing but values."""
    own = facts[end + 1 : clause_end(facts, end + 1)] if end < len(facts) else ()
    return bool(own) and all(one.kind in VALUES | {"word"} for one in own) and any(one.kind in VALUES for one in own)
