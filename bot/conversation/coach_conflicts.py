"""What a new order does to those that stand already: it takes their place, goes before them, or stands beside them."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, timedelta

from bot.conversation.desk import Desk
from bot.conversation.reasons import order_in_words
from planner.facts import Order
from planner.history import GRIPS
from planner.orders import Orders

DELOAD = timedelta(days=7)
SAME_KG = 0.01


def lines(desk: Desk, new: Order) -> list[str]:
    """To be asked before the new order is added; nothing where it meets none, or says the same again."""
    known = Orders(desk.record.orders)
    if new.kind == "set_sets":
        found = [
            *_told(desk, "order-replaced", _sets_replaced(known, new)),
            *_told(desk, "order-aside", _aside(known, new)),
        ]
    elif new.kind in ("lock_load", "hold_rung"):
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
    say, of_day = desk.say_coach, dict[date, list[str]]()
    for one in orders:
        of_day.setdefault(one.on, []).append(order_in_words(one, say))
    return [say.say(key, day=say.day(on), what="; ".join(what)) for on, what in of_day.items()]


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
