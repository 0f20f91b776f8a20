"""Movements named together, their work told after them: "pull-ups and dips, 3x8 each", "dips, chins: 3x10 and 3x6".

Where the words say that each did it all, or as many schemes follow as movements, each has its own; else it is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.reading import Ask

WORK = frozenset({"rows", "bare", "count", "rounds"})
NUMBERS = WORK | {"load", "loads", "at", "effort", "ask", "side", "scheme", "repeat"}


def part_joined(message: Message, facts: list[Fact]) -> tuple[list[Fact], list[Ask]]:
    """The facts with the work of movements named together given to each of them, and what must be asked."""
    moves = [at for at, fact in enumerate(facts) if fact.kind == "move"]
    out, asks, done = list(facts), list[Ask](), len(facts)
    for n in range(len(moves) - 1, 0, -1):
        if moves[n] >= done:
            continue
        run = _run(facts, moves, n)
        if len(run) < 2:
            continue
        done = run[0]
        end = next((at for at in range(run[-1] + 1, len(facts)) if _ends(facts[at])), len(facts))
        tail = facts[run[-1] + 1 : end]
        if not any(fact.kind in WORK for fact in tail) or _elsewhere(facts, run, end):
            continue
        shares = _shares(tail, len(run))
        if shares is None:
            asks.append(Ask("sets", message.span(facts[run[0]].start, tail[-1].end).strip(" ,.;")))
            out[run[-1] + 1 : end] = [fact for fact in tail if fact.kind not in NUMBERS]
            continue
        given: list[Fact] = []
        for at, share in zip(run, shares, strict=True):
            given += [facts[at], *share, Fact("sep", facts[at].end, facts[at].end, 1, {"mark": ","})]
        out[run[0] : end] = given[:-1]
    return out, asks


def _ends(fact: Fact) -> bool:
    return fact.kind == "move" or (fact.kind == "sep" and fact.value == 3)


def _run(facts: Sequence[Fact], moves: list[int], n: int) -> list[int]:
    """The places of the movements that one list names, the n-th the last of them; "and" or a colon closes the list."""
    run = [moves[n]]
    for at in reversed(moves[:n]):
        between = facts[at + 1 : run[0]]
        marks = [fact.note.get("mark") for fact in between if fact.kind == "sep"]
        if not between or any(fact.kind != "sep" for fact in between) or not set(marks) <= {"and", ","}:
            break
        if len(run) == 1 and "and" not in marks and not _colon(facts, moves[n]):
            break
        run.insert(0, at)
    named = [facts[at].value.movement for at in run]
    first = facts[run[0] - 1] if run[0] else None
    led = first is None or first.kind in ("sep", "claim", "word", "plan")
    return run if led and len(set(named)) == len(named) and "!" not in named else []


def _colon(facts: Sequence[Fact], at: int) -> bool:
    return at + 1 < len(facts) and facts[at + 1].note.get("mark") == ":"


def _elsewhere(facts: Sequence[Fact], run: list[int], end: int) -> bool:
    """Whether one of the movements is named again: what is told there is its work."""
    named = {facts[at].value.movement for at in run}
    return any(
        fact.kind == "move" and fact.value.movement in named for at, fact in enumerate(facts) if not run[0] <= at < end
    )


def _of_each(fact: Fact) -> bool:
    """ "je", "each", "both": of each movement; "each side" is not."""
    plain = fact.kind == "side" and fact.value == "each" and bool(fact.note.get("plain"))
    return plain or "all_lifts" in fact.note.get("names", ())


def _shares(tail: list[Fact], many: int) -> list[list[Fact]] | None:
    """What each movement did; None where the words do not say."""
    told = [at for at, fact in enumerate(tail) if fact.kind not in ("word", "sep")]
    marks = [at for at in (told[0], told[-1]) if _of_each(tail[at])]
    rows = [at for at, fact in enumerate(tail) if fact.kind == "rows" and not fact.note.get("one")]
    bare = any(fact.kind in ("bare", "count", "rounds") for fact in tail)
    if marks and len(rows) == 1 and not bare:
        own = [fact for at, fact in enumerate(tail) if at not in marks]
        return [[replace(fact) for fact in own] for _ in range(many)]
    if len(rows) != many or bare or any(fact.kind in ("load", "at", "loads") for fact in tail[: rows[0]]):
        return None
    parts = [tail[first:after] for first, after in zip(rows, [*rows[1:], len(tail)], strict=True)]
    return [[fact for fact in part if fact.kind != "sep" or fact.value > 1] for part in parts]
