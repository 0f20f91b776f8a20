"""The second half of the set grammar: the facts of one exercise to its sets.

Loads, efforts and sides find their sets by where they stand: a load before the first set is for all that follow, one
after a set is for that set; an effort after several sets is the last one's; a side beside a number is that number's.
What fits nowhere is asked, never guessed.
"""

from __future__ import annotations

from collections.abc import Callable

from bot.reading.facts import Fact
from bot.reading.fold.altered import on_delta, on_instead
from bot.reading.fold.assist import on_assist
from bot.reading.fold.bares import on_bare
from bot.reading.fold.counts import on_count, on_rounds
from bot.reading.fold.efforts import on_effort, on_effort_range, on_efforts
from bot.reading.fold.finish import finish
from bot.reading.fold.loads import on_at, on_load, on_loads
from bot.reading.fold.marks import (
    on_ask,
    on_flag,
    on_last_rep,
    on_link,
    on_mend,
    on_move,
    on_plan,
    on_scheme,
    on_scope,
    on_sep,
    on_side,
    on_weighted,
)
from bot.reading.fold.misses import on_fail
from bot.reading.fold.repeats import on_left, on_repeat
from bot.reading.fold.rows import Folded
from bot.reading.fold.state import FoldState
from bot.reading.fold.work import on_rows

MOST_ROWS = 300  # of one exercise in one message; more is no training

HANDLERS: dict[str, Callable[[FoldState, Fact], None]] = {
    "ask": on_ask,
    "assist": on_assist,
    "at": on_at,
    "bare": on_bare,
    "count": on_count,
    "delta": on_delta,
    "effort": on_effort,
    "effort_range": on_effort_range,
    "efforts": on_efforts,
    "fail": on_fail,
    "flag": on_flag,
    "instead": on_instead,
    "last_rep": on_last_rep,
    "left": on_left,
    "link": on_link,
    "load": on_load,
    "loads": on_loads,
    "mend": on_mend,
    "move": on_move,
    "plan": on_plan,
    "repeat": on_repeat,
    "rounds": on_rounds,
    "rows": on_rows,
    "scheme": on_scheme,
    "scope": on_scope,
    "sep": on_sep,
    "side": on_side,
    "weighted": on_weighted,
}


def fold_facts(fold: FoldState) -> Folded:
    """Walk the facts of one block; each kind of fact has its handler."""
    facts = fold.block.facts
    for at, fact in enumerate(facts):
        if len(fold.rows) > MOST_ROWS:
            fold.ask("sets", fact)
            fold.rows = []
            break
        fold.next = facts[at + 1] if at + 1 < len(facts) else None
        handler = HANDLERS.get(fact.kind)
        if handler is not None:
            handler(fold, fact)
        if fact.kind not in ("word", "claim", "thing"):
            fold.prev = fact
    return finish(fold)
