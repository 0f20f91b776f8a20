"""One movement's facts to rows."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.fold.folder import fold_facts
from bot.reading.fold.rows import Block, Folded, Row
from bot.reading.fold.state import FoldState
from bot.reading.message import Message
from bot.reading.movements.combine import combine
from planner import movements as catalogue
from planner.units import KG_PER_LB

# Beside these "@8" is effort: their only load is the body.
FREE_ONE_ARM = frozenset(
    "one_arm_pull_up one_arm_chin_up one_arm_hang one_arm_hand_on_biceps one_arm_hand_on_shoulder archer_ring_elbow "
    "archer_ring_shoulder".split()
)


def one_sided(movement: str | None) -> bool:
    """Whether the catalogue has it as done one arm or leg at a time."""
    if movement is None:
        return False
    if movement.startswith("?"):
        return movement in ("?archer", "?one_arm")
    known = catalogue.catalogue().get(movement)
    return bool(known and known.one_sided)


def is_hold(movement: str | None) -> bool:
    if movement is None:
        return False
    if movement.startswith("?"):
        return movement in ("?front_lever", "?lever", "?planche", "?plank", "?tuck", "?straddle", "?hold")
    known = catalogue.catalogue().get(movement)
    return bool(known and known.hold)


def fold_block(
    message: Message,
    movement: str | None,
    facts: list[Fact],
    move: Fact | None,
    rounds: int | None = None,
    base: list[Row] | None = None,
) -> Folded:
    """One movement's facts to rows."""
    single = one_sided(movement) or (move is not None and "one_arm" in move.value.features)
    block = Block(movement, facts, single, is_hold(movement), base=base, rounds=rounds)
    family = combine().families.get(movement[1:], ()) if movement and movement.startswith("?") else (movement,)
    implied = any(one.movement in family for one in message.context.today or ())
    block.loadable = movement not in FREE_ONE_ARM and not implied
    block.planned_kg = frozenset(one.load_kg for one in message.context.today or () if one.movement in family)
    if move is not None:
        block.move_at = move.start
        for i, fact in enumerate(facts):
            if fact is move:
                back = i - 1
                while back >= 0 and back > i - 3 and facts[back].kind in ("word", "weighted", "flag"):
                    back -= 1
                if back >= 0 and facts[back].kind == "bare":
                    facts[back].note["before_move"] = True
    unit = message.context.unit
    return fold_facts(FoldState(block, message.span, lambda value, said=None: to_kg(value, said or unit)))


def to_kg(value: float, unit: str) -> float:
    """A load as it was said, in kilograms."""
    return value * KG_PER_LB if unit == "lb" else value
