"""Sets told anew, with what the words leave out and the plan implies."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.fold.rows import Folded, Row
from bot.reading.message import Message
from bot.reading.movements.mention import Mention
from bot.reading.plan.ground import ground, members
from bot.reading.plan.value import SAME_KG, near_load, near_reps

OTHER_WORK = frozenset("rows count loads side at efforts assist fail instead delta percent ask vague left".split())
SURPLUS = 2  # so many reps over the plan are believed of a number without a word


def fit(new: list[Row], base: list[Row], stated: list[Fact]) -> list[Row]:
    """Restated sets with what the plan implies: its load, side, range; "5x3" as reps by sets where the plan does so."""
    if not base or not new:
        return new
    model = base[0]
    pairs = {row.side for row in base} == {"left", "right"}
    fact = stated[0]
    sided = any(row.side for row in new)
    planned_n = len(base) // 2 if pairs else len(base)
    if pairs and any(row.label == "the" and row.reps == planned_n != model.reps for row in new):
        # "left the two, right one": both sets of that side, where the plan has two
        new = [
            replace(row, reps=model.reps)
            for row in new
            for _ in range(planned_n if row.label == "the" and row.reps == planned_n else 1)
        ]
    turns = fact.note.get("plain") and not fact.note.get("as_told")
    if turns and len({row.reps for row in new}) == 1 and not sided:
        n, reps = len(new), new[0].reps
        if reps is not None and model.reps == n and planned_n == reps and n != reps:
            new = [replace(new[0], reps=n) for _ in range(reps)]
    out: list[Row] = []
    for at, row in enumerate(new):
        twin = base[min(at * (2 if pairs and not sided else 1), len(base) - 1)]
        fill(row, twin)
        if pairs and not sided:
            out += [replace(row, side="left"), replace(row, side="right")]
        else:
            out.append(row)
    return out


def fill_from_plan(message: Message, mention: Mention, folded: Folded, facts: Sequence[Fact]) -> None:
    """A movement told in full on a day that plans it: what the words leave out (its load, its sides) is the plan's."""
    rows = [row for row in ground(message) if row.movement in members(mention) and row.part != "warm_up"]
    names = {row.movement for row in rows}
    if len(names) != 1 or not folded.rows or any(fact.note.get("none") for fact in facts if fact.kind == "load"):
        return
    stated = [fact for fact in facts if fact.kind == "rows"] or [fact for fact in facts if fact.kind == "bare"]
    if _load_alone(rows, folded, facts):
        return
    if not stated:
        _so_many(rows, folded, facts)
        return
    if any(row.reps is None and row.hold_s is None for row in folded.rows):
        lone = [fact for fact in facts if fact.kind == "bare"]
        if len(lone) != 1 or len(folded.rows) != 1:
            return
        planned = [row for row in rows if row.reps is not None]
        if planned and lone[0].value > max(row.reps or 0 for row in planned) + SURPLUS and rows[0].load_kg:
            return  # "pull ups 20" on a day of fours with a load: a load as likely as reps
        if lone[0].value != int(lone[0].value):
            return  # "dips 2.5"
        folded.rows[0].reps, folded.rows[0].load_open = int(lone[0].value), False
        folded.asks = [ask for ask in folded.asks if ask.about != "reps"]
    if _of_each_set(rows, folded, facts):
        folded.rows[:] = [replace(folded.rows[0], side=row.side) for row in rows]
    folded.rows[:] = fit(folded.rows, rows, stated)


def _load_alone(rows: Sequence[Row], folded: Folded, facts: Sequence[Fact]) -> bool:
    """ "Rows with 35", "pull-ups all with 30": the planned sets, with that load; whether no more is told."""
    told = [fact for fact in facts if fact.kind in ("load", "bare")]
    others = any(fact.kind in OTHER_WORK or (fact.kind == "scope" and fact.value != "all") for fact in facts)
    if len(told) != 1 or others or not told[0].value or len(folded.rows) != 1:
        return False
    kg = told[0].note.get("kg", told[0].value)
    exact = any(row.load_kg and abs(row.load_kg - kg) < SAME_KG for row in rows)
    if not (near_load(kg, rows) if told[0].kind == "load" else exact and not near_reps(kg, rows)):
        return False
    if told[0].note.get("how") == "plus" and not exact:
        return False  # "+2.5" may be more by so much
    folded.asks = [ask for ask in folded.asks if ask.about not in ("reps", "load_kg")]
    efforts = [fact for fact in facts if fact.kind == "effort"]
    behind = len(efforts) == 1 and efforts[0].start >= told[0].end and not efforts[0].note.get("session")
    effort = folded.early_effort if behind else folded.rows[0].rpe  # "pull-ups at 25, rpe 8.5": of the last of them
    folded.early_effort = None if behind else folded.early_effort
    folded.rows[:] = [replace(row, load_kg=kg) for row in rows]
    for row in folded.rows[-1:] if rows[-1].side is None else folded.rows[-2:]:
        row.rpe = effort
    return True


def _of_each_set(rows: Sequence[Row], folded: Folded, facts: Sequence[Fact]) -> bool:
    """ "L-sits all 20", "L-sits 15 s each": one value, said of every set of a movement without sides."""
    said = any(
        (fact.kind == "scope" and fact.value == "all") or (fact.kind == "side" and fact.value == "each")
        for fact in facts
    )
    work = [fact for fact in facts if fact.kind in ("rows", "bare", "count", "loads")]
    told = {(row.reps, row.hold_s, row.load_kg) for row in folded.rows}
    unsided = not any(row.side for row in rows) and not any(
        f.value in ("left", "right") for f in facts if f.kind == "side"
    )
    return said and len(work) == len(told) == 1 and len(folded.rows) <= 2 and unsided


def fill(row: Row, twin: Row) -> None:
    """What the words leave out is the plan's."""
    row.movement = twin.movement
    row.part = twin.part
    if row.load_kg is None and not row.load_open:
        row.load_kg = twin.load_kg
    elif row.load_kg is None and twin.load_kg is not None:
        row.load_kg, row.load_open = twin.load_kg, False
    if row.assist_kg is None:
        row.assist_kg = twin.assist_kg
    if row.rom == "full":
        row.rom = twin.rom
    row.eccentric = row.eccentric or twin.eccentric
    row.pauses = row.pauses or twin.pauses
    if twin.hold_s is not None and row.hold_s is None and row.reps is not None:
        row.hold_s, row.reps = float(row.reps), None


def _so_many(rows: Sequence[Row], folded: Folded, facts: Sequence[Fact]) -> None:
    """ "Dips 2 sets" of three planned: two of them, as planned."""
    counts = [fact for fact in facts if fact.kind == "count"]
    pairs = {row.side for row in rows} == {"left", "right"}
    planned = len(rows) // 2 if pairs else len(rows)
    alike = len({(row.reps, row.hold_s, row.load_kg) for row in rows}) == 1
    if len(counts) != 1 or counts[0].value > planned or not alike or len(folded.rows) != counts[0].value:
        return
    if any(row.reps is not None or row.hold_s is not None for row in folded.rows):
        return
    folded.asks = [ask for ask in folded.asks if ask.about != "reps"]
    for row in folded.rows:
        row.reps = rows[0].reps
        row.hold_s = rows[0].hold_s
        fill(row, rows[0])
    if pairs:
        folded.rows[:] = [replace(row, side=side) for row in folded.rows for side in ("left", "right")]
