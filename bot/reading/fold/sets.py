"""Rows to sets: the movement resolved, assistance, what is plausible."""

from __future__ import annotations

from dataclasses import dataclass, field

from bot.reading.facts import Fact
from bot.reading.fold.plausible import most_reps, sided_beyond_belief, strong_beyond_belief, too_many_in_all
from bot.reading.fold.rows import Folded, Row
from bot.reading.message import Message
from bot.reading.movements.combine import combine
from bot.reading.reading import Ask, SetRead
from planner.units import KG_PER_LB

MOST_ADDED = 1.6  # added load over this many bodyweights is asked about (common practice)


MOST_ADDED_UNKNOWN_KG = 110.0


MOST_HOLD_S = 300.0  # longer is a time of practice: "handstands 15 min" (common practice)


ASSISTED = frozenset({"one_arm_counterweight", "band_pull_up"})


HELD_AT_TOP = frozenset({"pull_up", "chin_up", "neutral_grip_pull_up"})


FREE_WEIGHT = frozenset({"squat", "row", "lat_pulldown", "split_squat"})


@dataclass
class Work:
    """What the assembler found so far."""

    sets: list[SetRead] = field(default_factory=list)
    asks: list[Ask] = field(default_factory=list)
    unread: list[str] = field(default_factory=list)
    session_rpe: float | None = None
    report: bool = False
    places: list[tuple[int, int, int]] = field(default_factory=list)  # first set of a block, where its words stand


def put(message: Message, movement: str | None, folded: Folded, move: Fact | None, work: Work) -> None:
    """Rows to sets: movement resolved, assistance, plausibility."""
    asks = list(folded.asks)
    known, ask = resolve(message, movement, move)
    if ask is not None:
        asks.append(ask)
    if too_many_in_all(known, folded.rows):
        asks.append(Ask("sets", message.span(move.start, move.end) if move else message.text.strip()[:80]))
        folded.rows = [Row(None)]
    for row in folded.rows:
        work.sets.append(to_set(message, known if row.movement is None else row.movement, row, asks, move))
    seen: set[tuple[str, str]] = set()
    for one in asks:
        if (one.about, one.span) not in seen:
            seen.add((one.about, one.span))
            work.asks.append(one)
    work.report = True


def resolve(message: Message, movement: str | None, move: Fact | None) -> tuple[str | None, Ask | None]:
    """A family is the one in the day's plan, else it is asked."""
    if movement is None or not movement.startswith("?"):
        return movement, None
    members = combine().families.get(movement[1:], ())
    planned = []
    for one in message.context.today or ():
        if one.movement in members and one.movement not in planned:
            planned.append(one.movement)
    if len(planned) == 1:
        return planned[0], None
    span = message.span(move.start, move.end) if move is not None else message.text
    return None, Ask("movement", span)


def to_set(message: Message, movement: str | None, row: Row, asks: list[Ask], move: Fact | None) -> SetRead:
    load: float | None = row.load_kg if row.load_kg is not None else 0.0
    assist: float | None = row.assist_kg if row.assist_kg is not None else 0.0
    if row.load_open and row.load_kg is None:
        load = None
    if movement in ASSISTED and load:
        assist, load = load, 0.0  # kilograms said of help, also in place of those that are planned
    elif movement in ASSISTED and row.load_open:
        assist, load = None, 0.0
    elif movement == "pull_up" and row.assist_kg and not load:
        movement = "band_pull_up"
    elif movement == "dead_hang" and row.side in ("left", "right"):
        movement = "one_arm_hang"  # "left arm hang 25 s"
    elif movement == "one_arm_pull_up" and row.assist_kg and not load:
        movement = "one_arm_counterweight"
    if movement in HELD_AT_TOP and row.hold_s and row.reps is None and row.pauses == ("top",):
        movement, row.pauses = "pull_up_top_hold", ()  # "pull-up hold at the top 3x20 s"
    reps = row.reps
    hold = row.hold_s
    failed = row.failed
    if hold is not None and hold <= 0:
        hold, reps, failed = None, 0, True
    bodyweight = message.context.bodyweight_kg
    if load and movement is not None:
        most = MOST_ADDED * bodyweight if bodyweight else MOST_ADDED_UNKNOWN_KG
        if movement in FREE_WEIGHT:
            most *= 2
        if load > most:
            _mark_load(message, move, load, asks)
            load = None
    if load and strong_beyond_belief(movement, row, bodyweight):
        _mark_load(message, move, load, asks)
        load = None
    if sided_beyond_belief(movement, row):
        asks.append(Ask("movement", message.span(move.start, move.end) if move else message.text.strip()[:80]))
    if assist and assist > (bodyweight or 100):
        _mark_load(message, move, assist, asks, "assist_kg")
        assist = None
    if reps is not None and reps > most_reps(movement):
        asks.append(Ask("reps", _number_span(message, move, reps)))
        reps = None
    if hold is not None and hold > MOST_HOLD_S:
        asks.append(Ask("hold_s", _number_span(message, move, hold)))
        hold = None
    return SetRead(
        movement,
        row.side,  # type: ignore[arg-type]
        reps,
        hold,
        load,
        assist,
        row.rpe,
        row.rom,  # type: ignore[arg-type]
        row.eccentric,
        tuple(row.pauses),  # type: ignore[arg-type]
        failed,
        row.linked,
    )


def _number_span(message: Message, move: Fact | None, value: float) -> str:
    for at, token in enumerate(message.tokens):
        if token.kind == "num" and token.value == value:
            return message.span(at, at + 1)
    return message.span(move.start, move.end) if move is not None else message.text.strip()[:80]


def _mark_load(message: Message, move: Fact | None, kg: float, asks: list[Ask], about: str = "load_kg") -> None:
    """Ask about a load over the plausible, by its own words."""
    span = message.notes.get(("told", kg))  # the sets of a row ask about the same load one after the other
    if span is None:
        span = message.notes["told", kg] = _load_span(message, kg)
    asks.append(Ask(about, span or (message.span(move.start, move.end) if move else message.text.strip()[:80])))


def _load_span(message: Message, kg: float) -> str:
    """Where a load is told; empty where no number tells it."""
    for at, token in enumerate(message.tokens):
        if token.value is not None and (abs(token.value - kg) < 0.01 or abs(token.value * KG_PER_LB - kg) < 0.01):
            start = at - 1 if at and message.tokens[at - 1].text in ("+", "@") else at
            return message.span(start, at + 1)
    return ""
