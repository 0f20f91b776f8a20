"""One value told against planned sets: "15 for the last two", "22.5 instead of 20", "2.5 less", "without weight".

A bare number is reps or a load: the one that is near what the plan has. Where both are, a plain number is reps ("2 on
the last"), and what somebody "dropped to" or "took" is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import LOADED, Fact
from bot.reading.fold.block import to_kg
from bot.reading.fold.rows import Row, shift
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.clauses import Clause
from bot.reading.reading import Ask

PLATE_WORDS = 2  # more words than "with 5"
MORE_REPS = 3  # so many over the plan are believed of a bare number (from rehearsal, no source)
LEAST_LOAD, MOST_LOAD = 0.5, 1.6  # of the planned load: what a bare number can be a load in place of
SMALLEST_PLATES = 1.25  # kg
MOST_SURE = 2  # of the planned load, where words say which set it is of
HALVES = (6.5, 7.5, 8.5, 9.5)  # efforts, told bare of a set
EFFORTS = (7, 8, 9, 10)  # those that are as often told bare as a load is ("the last one was 9")
CLOSE = 0.2  # of a load: as near, a half may be that load
SAME_KG = 0.3
SMALL_PART = 0.3  # a load under this part of the planned one may be the change of it


def apply(
    message: Message, fact: Fact, where: Sequence[Row], clause: Clause, asks: list[Ask], *, verb: bool, sure: bool
) -> bool:
    """Change the rows by one fact; False where it is none that this knows. `verb`: "dropped to"; `sure`: the words
    say which sets are meant."""
    span = message.span(fact.start, fact.end)
    if fact.kind == "instead":
        return _instead(message, fact, where, asks)
    if fact.kind == "delta":
        amount, kind, sign = fact.value
        planned = max((row.load_kg or 0.0 for row in where), default=0.0)
        if kind == "load" and _says_extra(span) and planned and amount >= LEAST_LOAD * planned:
            return _load(replace(fact, kind="load", value=amount), where, asks, span, False, False)
        kind = _changed(fact, where)
        if kind is None:
            asks.append(Ask("reps", span))
            return True
        for row in where:
            shift(row, amount, kind, sign)
        return True
    if fact.kind == "load":
        told = range(clause.facts[0].start, clause.facts[-1].end)
        cut = any(message.tokens[at].text in little("cut_at") for at in told)  # "cut the fourth set off at 3"
        return _load(fact, where, asks, span, verb, cut)
    carried = fact.start > 0 and message.tokens[fact.start - 1].text in little("with")
    if fact.kind == "rows":
        return _work(fact, where, sure or carried)
    done = "only" in clause.names or any(f.kind == "scheme" and f.value == "got" for f in clause.facts)
    most = max((row.reps or 0 for row in where), default=0)
    if sure and fact.value in EFFORTS and fact.value > most > 0 and not done and not verb and where[0].hold_s is None:
        asks.append(Ask("reps", span))  # "last set 9" of planned sixes: reps or an effort
        return True
    return _bare(fact, where, asks, span, verb, sure, carried or "took" in clause.names)


def _changed(fact: Fact, where: Sequence[Row]) -> str | None:
    """What changes by so much: "load", "reps" or "hold"; None where the figure may be of either."""
    amount, kind, _ = fact.value
    either, loaded = fact.note.get("or_load"), any(row.load_kg or row.assist_kg for row in where)
    if either and (any(map(_changes_by_little, where)) or (loaded and either == "all")):
        return None  # "2 less on the last" of curls with 12, "2 less on all sets" of pull-ups with 20
    if either and any(row.hold_s for row in where):
        return "hold"
    if kind == "load" and fact.note.get("no_unit") and not loaded:
        return "reps" if amount == int(amount) else None  # "5 less on the last" of sets without weight
    return str(kind)


def _changes_by_little(row: Row) -> bool:
    """Whether a kilogram or two is a step of its load: that of dumbbells and counterweights, not of plates hung on."""
    return bool(row.assist_kg) or (bool(row.load_kg) and row.movement not in LOADED)


def _instead(message: Message, fact: Fact, where: Sequence[Row], asks: list[Ask]) -> bool:
    """Whichever value of the sets is the old one becomes the new one."""
    new, old, unit = fact.value
    if unit == "sec" and not any(row.hold_s is not None for row in where):
        unit = None  # "8s instead of 10s": the dumbbells
    kg = to_kg(new, unit if unit in ("kg", "lb") else message.context.unit)
    was = to_kg(old, unit if unit in ("kg", "lb") else message.context.unit)
    loads = [row for row in where if row.load_kg and abs(row.load_kg - was) < SAME_KG]
    assists = [row for row in where if row.assist_kg and abs(row.assist_kg - was) < SAME_KG]
    reps = [row for row in where if row.reps == old and unit in (None, "reps")]
    holds = [row for row in where if row.hold_s == old and unit in (None, "sec")]
    if unit is None and reps and not loads and new > 2 * old + MORE_REPS:
        asks.append(Ask("reps", message.span(fact.start, fact.end)))  # "4 at 30 instead of 3"
        return True
    if unit == "reps" or (reps and not loads):
        for row in reps or where:
            row.reps = int(new)
    elif holds or unit == "sec":
        for row in holds or where:
            row.hold_s = float(new)
    elif loads:
        for row in loads:
            row.load_kg = kg
    elif assists:
        for row in assists:
            row.assist_kg = kg
    elif unit in ("kg", "lb") and len({row.movement for row in where}) == 1:
        _set_load(where, kg)
    else:
        asks.append(Ask("load_kg", message.span(fact.start, fact.end)))
    return True


def _set_load(where: Sequence[Row], kg: float) -> None:
    """A load said of sets with a counterweight is the counterweight."""
    for row in where:
        if row.assist_kg and not row.load_kg:
            row.assist_kg = kg
        else:
            row.load_kg = kg


def _load(fact: Fact, where: Sequence[Row], asks: list[Ask], span: str, verb: bool, cut: bool) -> bool:
    if fact.value is None or fact.note.get("same"):
        return False
    if fact.note.get("none"):
        for row in where:
            row.load_kg = 0.0
        return True
    planned = max((row.load_kg or 0.0 for row in where), default=0.0)
    extra = fact.note.get("how") == "plus" or _says_extra(span)
    if extra and fact.value < SMALL_PART * planned:
        asks.append(Ask("load_kg", span))  # "+2.5", "2.5 kg extra" of planned 20: more by so much, or all there was
        for row in where:
            row.load_kg, row.load_open = None, True
        return True
    words = span.lower().split()
    plate = len(words) > PLATE_WORDS and words[1] in little("article", "article_or_of", "the")  # "con el de 5"
    said = fact.note.get("how") == "plus" or fact.note.get("unit") or plate
    small = planned and fact.value < LEAST_LOAD * planned and any(row.reps == fact.value for row in where)
    small = bool(small or (planned and fact.value < SMALL_PART * planned)) and fact.value == int(fact.value) and not cut
    if small and not said and span.split(" ")[0].lower() in little("with_reps") and near_reps(fact.value, where):
        for row in where:
            row.reps = int(fact.value)  # "the last one with 3" of planned fives at 20
        return True
    few = not said and fact.value == int(fact.value) and fact.value < max((row.reps or 0 for row in where), default=0)
    few = few and all(row.movement in LOADED for row in where)  # "rotations only with 3": the dumbbells
    if few and not verb and not cut and planned and fact.value != planned and near_load(fact.value, where):
        _open(where, asks, span)  # "the last set with 6" of planned eights with 10
        return True
    at_rep = not said and planned and fact.value < LEAST_LOAD * planned and near_reps(fact.value, where)
    if at_rep and not cut and span.split(" ")[0].lower() in little("at_rep"):
        _open(where, asks, span)  # "dropped off the bar at 3": a rep, hardly the load
        return True
    verb = verb or (cut and not near_load(fact.value, where))  # "last set of dips cut at 4"
    if verb and not said and fact.value == int(fact.value) and near_reps(fact.value, where):
        if near_load(fact.value, where):
            _open(where, asks, span)
        else:
            for row in where:
                row.reps = int(fact.value)
        return True
    _set_load(where, fact.value)
    return True


def _says_extra(span: str) -> bool:
    """ "27.5 kg extra": of planned 25 it is all there was, of planned 100 more by so much."""
    return span.lower().split(" ")[-1] in little("extra_weight")


def _work(fact: Fact, where: Sequence[Row], sure: bool) -> bool:
    """Reps or seconds told with their word."""
    entry = fact.value[0]
    holds = [row for row in where if row.hold_s is not None]
    if entry.hold_s is not None:
        for row in holds:
            row.hold_s = entry.hold_s
        return bool(holds)
    if not sure and len(where) > 1:
        return False
    if entry.reps is None or holds or entry.load_kg is not None or fact.note.get("own_load") is not None:
        return False
    for row in where:
        row.reps = entry.reps
        row.failed = entry.reps == 0
    return True


def _bare(fact: Fact, where: Sequence[Row], asks: list[Ask], span: str, verb: bool, sure: bool, took: bool) -> bool:
    value, kg = fact.value, fact.note.get("kg", fact.value)
    if where[0].hold_s is not None:
        if sure or len(where) == 1:
            for row in where:
                row.hold_s = float(value)
            return True
        return False
    if not verb and not took and value in HALVES:
        plates = kg % SMALLEST_PLATES == 0 and near_load(kg, where)  # "7.5 on the dips" of planned tens
        if plates or any(abs((row.load_kg or 0.0) - kg) <= CLOSE * kg for row in where):
            asks.append(Ask("load_kg", span))  # "the last one 9.5" of planned 10: a load or an effort
            return True
        for row in where if sure else where[-1:]:
            row.rpe = value
        return True
    reps = near_reps(value, where) and not fact.note.get("comma")
    load = near_load(kg, where)
    loaded = any(row.load_kg or row.assist_kg for row in where)
    if load and not reps and not (verb or took) and value in EFFORTS:
        asks.append(Ask("load_kg", span))
        return True
    more = took and value > max(row.reps or 0 for row in where)  # "took 8" of planned sixes with 10
    if (load and (not reps or more)) or ((took or verb) and loaded and not reps):
        _set_load(where, kg)
        return True
    heaviest = max((row.load_kg or 0.0 for row in where), default=0.0)
    if sure and not reps and heaviest and LEAST_LOAD * heaviest <= kg <= MOST_SURE * heaviest:
        _set_load(where, kg)  # "20 on the middle two and 37.5 on the last"
        return True
    if reps and load and (verb or took):
        _open(where, asks, span)
        return True
    if reps and (sure or len(where) == 1):
        for row in where:
            row.reps = int(value)
            row.failed = value == 0
        return True
    if reps or value == int(value):
        asks.append(Ask("reps", span))
        return True
    asks.append(Ask("load_kg", span))
    return True


def near_reps(value: float, where: Sequence[Row]) -> bool:
    most = max((row.reps or 0 for row in where), default=0)
    return value == int(value) and 0 <= value <= most + MORE_REPS


def weighed(fact: Fact, base: Sequence[Row]) -> Fact:
    """ "3 sets and 22.5" of planned fives at 25: a figure that can only be the load."""
    if fact.kind != "bare" or not base or near_reps(fact.value, base) or fact.value in HALVES + EFFORTS:
        return fact
    kg = fact.note.get("kg", fact.value)
    return Fact("load", fact.start, fact.end, kg, {"how": "at"}) if near_load(kg, base) else fact


def near_load(kg: float, where: Sequence[Row]) -> bool:
    """Whether a figure can be a load in place of the planned one."""
    loads = [row.load_kg or row.assist_kg or 0.0 for row in where]
    return any(load and LEAST_LOAD * load <= kg <= MOST_LOAD * load for load in loads)


def _open(where: Sequence[Row], asks: list[Ask], span: str) -> None:
    """Reps or a load: neither is known."""
    asks.append(Ask("reps", span))
    for row in where:
        row.reps, row.load_kg, row.load_open = None, None, True
