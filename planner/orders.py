"""The coach's orders: locks and holds stand above the rules, and show wherever they act."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date

from planner.facts import Order, OrderKind, Record
from planner.layout import GRIPS
from planner.rules import Rules, RuleValue, default_rules, rules_of


class Orders:
    """The orders of one record, asked by day."""

    def __init__(self, orders: Sequence[Order]) -> None:
        self._orders = orders
        self._unlocks = [(at, order) for at, order in enumerate(orders) if order.kind == "unlock"]

    def _acting(self, kind: str, day: date) -> Iterable[Order]:
        for at, order in enumerate(self._orders):
            if order.kind != kind or order.on > day or (order.until is not None and order.until < day):
                continue
            if not any(at < later and lifts(unlock, order, day) for later, unlock in self._unlocks):
                yield order

    def acting(self, kinds: Iterable[OrderKind], day: date) -> list[Order]:
        """The orders of these kinds that stand on `day`, as they were given."""
        found = {id(order) for kind in kinds for order in self._acting(kind, day)}
        return [order for order in self._orders if id(order) in found]

    def last(self, kind: str, day: date) -> Order | None:
        found = None
        for found in self._acting(kind, day):  # noqa: B007 - the newest one is wanted
            pass
        return found

    def rung_held(self, ladder: str, day: date) -> Order | None:
        """The hold that keeps `ladder` where it is on `day`."""
        holds = [order for order in self._acting("hold_rung", day) if order.ladder in (None, ladder)]
        return holds[-1] if holds else None

    def load_locked(self, movements: frozenset[str], main: bool, day: date) -> Order | None:
        """The lock on the load of one of `movements` (or, unnamed, of the main lift)."""
        locks = [
            order
            for order in self._acting("lock_load", day)
            if order.movement in movements or (main and order.movement is None)
        ]
        return locks[-1] if locks else None

    def sets_for(self, day: date) -> tuple[Order, ...]:
        """The sets that the coach wrote for this very day, the newest for each movement; the main lift is one, in
        whatever grip."""
        found = {
            None if order.movement in GRIPS else order.movement: order
            for order in self._orders
            if order.kind == "set_sets" and order.for_date == day and order.on <= day
        }
        return tuple(found.values())

    def steps_for(self, day: date) -> tuple[Order, ...]:
        """The steps on the plan of this very day, the newest of sets, of reps and of the load."""
        found = {
            (order.sets is None, order.reps is None): order
            for order in self._acting("step_sets", day)
            if order.for_date == day
        }
        return tuple(found.values())

    def excluded(self, day: date) -> frozenset[str]:
        return frozenset(order.movement for order in self._acting("exclude", day) if order.movement)

    def swapped(self, movement: str, day: date) -> Order | None:
        swaps = [order for order in self._acting("swap", day) if order.movement == movement]
        return swaps[-1] if swaps else None

    def restarted_since(self, day: date, by: date) -> bool:
        return any(order.kind == "restart" and day <= order.on <= by for order in self._orders)

    def deload_in(self, block_start: date, day: date) -> Order | None:
        """The deload that is due on `day` in a block begun on `block_start`; once its block is over, it is done."""
        for one in self._orders:
            if one.kind == "deload" and one.on <= day and block_start <= _from(one) <= day:
                return one
        return None

    def started_on(self, by: date) -> date | None:
        starts = [order.on for order in self._orders if order.kind == "start" and order.on <= by]
        return min(starts, default=None)


def lifts(unlock: Order, order: Order, day: date) -> bool:
    """Whether an unlock ends an order by `day`: all that stood before it, or what it names."""
    named = unlock.value in (None, order.kind) and unlock.movement in (None, order.movement)
    return unlock.on <= day and named


def _from(order: Order) -> date:
    return order.for_date or order.on


def rules_on(record: Record, day: date) -> Rules:
    """The rules of the athlete with the coach's `set_rule` orders up to `day` above them."""
    values: dict[str, RuleValue] = {
        order.rule: order.value
        for order in record.orders
        if order.kind == "set_rule" and order.on <= day and order.rule is not None and order.value is not None
    }
    if not values:
        return rules_of(record.athlete) if record.athlete.rules else default_rules()
    return Rules({**record.athlete.rules, **values})
