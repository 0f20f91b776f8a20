"""What a new order does to those that stand already: it takes their place, goes before them, or stands beside them."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, timedelta

from bot.conversation.desk import Desk
from bot.conversation.reasons import orders_in_words
from planner.facts import Order
from planner.history import GRIPS
from planner.orders import Orders

DELOAD = timedelta(days=7)
SAME_KG = 0.01


def lines(desk: Desk, *new: Order) -> list[str]:
    """To be asked before new orders, alike but for their days, are added; nothing where they meet none, or say the same
    again."""
    known = Orders(desk.record.orders)
    if new[0].kind == "set_sets":
        return [
            *_told(desk, "order-replaced", _each_once(_sets_replaced(known, one) for one in new)),
            *_told(desk, "order-aside", _each_once(_aside(known, one) for one in new)),
        ]
    if new[0].kind == "step_sets":
        return [
            *_told(desk, "order-replaced", _each_once(_steps_replaced(known, one) for one in new)),
            *_told(desk, "order-before-step", _each_once(_before_a_step(known, one) for one in new)),
        ]
    return _of_one(desk, known, new[0])


def _each_once(found: Iterable[Iterable[Order]]) -> Iterable[Order]:
    return dict.fromkeys(order for orders in found for order in orders)


def _steps_replaced(known: Orders, new: Order) -> list[Order]:
    assert new.for_date is not None
    what = (new.sets is None, new.reps is None)
    return [one for one in known.steps_for(new.for_date) if (one.sets is None, one.reps is None) == what]


def _before_a_step(known: Orders, new: Order) -> list[Order]:
    """What stands above a step: sets in numbers for its day, or a lock."""
    assert new.for_date is not None
    lock = known.load_locked(frozenset(), True, new.for_date)
    found = [one for one in known.sets_for(new.for_date) if _lift(one) is None]
    return [*found, lock] if lock is not None else found


def _of_one(desk: Desk, known: Orders, new: Order) -> list[str]:
    if new.kind in ("lock_load", "hold_rung"):
        alike = [
            one for one in known.acting((new.kind,), new.on) if (one.movement, one.ladder) == (new.movement, new.ladder)
        ]
        found = _told(desk, "order-replaced", [one for one in alike[-1:] if not _says_the_same(one, new)])
        found += _told(desk, "order-stands", _sets_ahead(desk, new))
    elif new.kind == "set_rung":
        held = known.rung_held(new.ladder or "", new.on)
        found = _told(desk, "order-stands", [held] if held is not None else [])
    else:
        found = _told(desk, "order-stands", _sets_ahead(desk, new))
    return found


def _told(desk: Desk, key: str, orders: Iterable[Order]) -> list[str]:
    """A line for the orders of each day."""
    say, of_day = desk.say_coach, dict[date, list[Order]]()
    for one in orders:
        of_day.setdefault(one.on, []).append(one)
    return [say.say(key, day=say.day(on), what=orders_in_words(what, say)) for on, what in of_day.items()]


def _lift(order: Order) -> str | None:
    """What sets are of; the main lift is one, in whatever grip."""
    return None if order.movement in GRIPS else order.movement


def _differ(one: Order, other: Order) -> bool:
    return abs((one.load_kg or 0.0) - (other.load_kg or 0.0)) >= SAME_KG


def _says_the_same(one: Order, other: Order) -> bool:
    return not _differ(one, other) and (one.sets, one.reps, one.until, one.movement) == (
        other.sets,
        other.reps,
        other.until,
        other.movement,
    )


def _sets_replaced(known: Orders, new: Order) -> list[Order]:
    assert new.for_date is not None
    alike = [one for one in known.sets_for(new.for_date) if _lift(one) == _lift(new)]
    return [one for one in alike if not _says_the_same(one, new)]


def _aside(known: Orders, new: Order) -> list[Order]:
    """A lock at another load, or that the movement is left out."""
    assert new.for_date is not None
    found = [one for one in known.acting(("exclude",), new.for_date) if one.movement == new.movement]
    lock = known.load_locked(frozenset({new.movement or ""}), _lift(new) is None, new.for_date)
    return [*found, lock] if lock is not None and new.load_kg is not None and _differ(lock, new) else found


def _sets_ahead(desk: Desk, new: Order) -> list[Order]:
    """Sets ordered for the days ahead that a movement left out, or a deload, does not take away."""
    dated = {one.for_date for one in desk.record.orders if one.kind == "set_sets" and one.for_date is not None}
    known = Orders(desk.record.orders)
    ahead = [one for day in sorted(dated) if day >= desk.today for one in known.sets_for(day)]
    if new.kind == "exclude":
        last = new.until
        return [
            one for one in ahead if one.movement == new.movement and (last is None or (one.for_date or last) <= last)
        ]
    if new.kind == "lock_load":
        return [one for one in ahead if _lift(one) is None and one.load_kg is not None and _differ(one, new)]
    if new.kind == "deload" and new.for_date is not None:
        return [one for one in ahead if one.for_date and new.for_date <= one.for_date < new.for_date + DELOAD]
    return []
