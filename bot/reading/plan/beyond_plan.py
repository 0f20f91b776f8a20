"""More sets of a lift than the plan has, counted: "five sets of dips, rest as planned" of three."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.cues import clauses
from bot.reading.plan.ground import members, plan_names
from bot.reading.reading import Ask

OTHER_COUNTS = ("of_plan", "more", "those", "back_offs", "only", "stopped", "within")  # what else a count may say
BESIDE = frozenset({"less", "more", "only", "skipped", "except", "stopped", "instead", "extra_set", "minus", "by"})
WORK = frozenset({"rows", "bare", "loads", "fail", "delta", "instead", "scope", "rounds"})
MOST_EXTRA = 5  # more sets beyond the plan are asked


def lengthened(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> tuple[list[Row], list[Ask]]:
    """The planned sets, with as many more of a lift as a clause counts; asked where they differ, or are many."""
    out, asks = list(rows), []
    headed = [fact for fact in facts if fact.note.get("mark") != ":"]  # "pull-ups: 5 sets"
    for clause in clauses(headed):
        told = [fact for fact in clause if fact.kind in ("count", "move")]
        names = {name for fact in clause for name in plan_names(fact)}
        counted = sorted(fact.kind for fact in told) == ["count", "move"] and not names & BESIDE
        if not counted or any(fact.kind in WORK for fact in clause):
            continue
        count, move = sorted(told, key=lambda fact: fact.kind)
        own = [at for at, row in enumerate(out) if row.movement in members(move.value)]
        own = [at for at in own if out[at].part != "warm_up"] or own
        if not own or any(map(count.note.get, OTHER_COUNTS)):
            continue
        step = 2 if out[own[-1]].side is not None else 1
        missing = int(count.value) * step - len(own)
        if missing <= 0:
            continue
        alike = {(row.side, row.reps, row.hold_s, row.load_kg) for row in (out[at] for at in own)}
        if len(alike) > step or missing > MOST_EXTRA * step:
            asks.append(Ask("sets", message.span(count.start, count.end)))
            continue
        last = own[-1] + 1
        out[last:last] = [replace(out[at]) for _ in range(missing // step) for at in own[-step:]]
    return out, asks
