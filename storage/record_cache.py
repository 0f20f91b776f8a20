"""Records as they were last read: what spares reading five years again for each message."""

from __future__ import annotations

import threading
from collections import OrderedDict
from dataclasses import dataclass, field
from datetime import date
from typing import Any

from sqlmodel import Session

from planner import facts as f
from planner.plan import Review
from planner.view import View

# About 100 MB of sets.
CACHE_LIMIT_SETS = 300_000
# Of those who wrote last: a fold is for who writes again soon.
MOST_FOLDS = 64

Stamps = tuple[int, int]  # the athlete's and the coach's


@dataclass
class Fold:
    """A record folded as of a day, and the review of it where one was made."""

    record: f.Record
    view: View
    review: Review | None = None


@dataclass
class RecordCache:
    """Records of committed facts, the longest unused dropped first. May be emptied at any time.

    A record is known by the stamps of athlete and coach, which change with every fact and setting: it can be old,
    never wrong. One lives in each Store and is handed on in `Session.info`.
    """

    limit_sets: int = CACHE_LIMIT_SETS
    _kept: OrderedDict[int, tuple[Stamps, f.Record]] = field(default_factory=OrderedDict)
    _folds: OrderedDict[int, Fold] = field(default_factory=OrderedDict)
    _sets: int = 0
    _lock: threading.Lock = field(default_factory=threading.Lock)

    def get(self, athlete_id: int, stamps: Stamps) -> f.Record | None:
        """The record, if nothing changed since."""
        with self._lock:
            kept = self._kept.get(athlete_id)
            if kept is None or kept[0] != stamps:
                return None
            self._kept.move_to_end(athlete_id)
            return kept[1]

    def older(self, athlete_id: int) -> f.Record | None:
        """The record as it once was: its facts still are what they were, if they stand."""
        with self._lock:
            kept = self._kept.get(athlete_id)
            return None if kept is None else kept[1]

    def put(self, athlete_id: int, stamps: Stamps, record: f.Record) -> None:
        with self._lock:
            self._forget(athlete_id)
            self._kept[athlete_id] = (stamps, record)
            self._sets += _weight(record)
            while self._sets > self.limit_sets and len(self._kept) > 1:
                self._forget(next(iter(self._kept)))

    def borrow(self, athlete_id: int, record: f.Record, on: date) -> Fold | None:
        """The fold of this very record, if it is kept. It is the borrower's alone: a view fills up as it is asked."""
        with self._lock:
            fold = self._folds.pop(athlete_id, None)
        return fold if fold is not None and fold.record is record and fold.view.on == on else None

    def give_back(self, athlete_id: int, fold: Fold) -> None:
        """For who borrows next. Of a record that is rolled back it finds nobody: that very record is read no more."""
        with self._lock:
            self._folds[athlete_id] = fold
            while len(self._folds) > MOST_FOLDS:
                self._folds.popitem(last=False)

    def clear(self) -> None:
        with self._lock:
            self._kept.clear()
            self._folds.clear()
            self._sets = 0

    def _forget(self, athlete_id: int) -> None:
        kept = self._kept.pop(athlete_id, None)
        if kept is not None:
            self._sets -= _weight(kept[1])


def _weight(record: f.Record) -> int:
    return sum(len(session.sets) for session in record.sessions) + sum(len(plan.sets) for plan in record.sent)


@dataclass
class Trail:
    """A record read in this transaction, and the facts by kind that it alone added since, up to `stamps`; `otherwise`:
    it changed more than that."""

    stamps: Stamps
    record: f.Record
    added: list[tuple[str, Any]] = field(default_factory=list)
    otherwise: bool = False


def trail(tx: Session, athlete_id: int) -> Trail | None:
    trails: dict[int, Trail] = tx.info.get("trails", {})
    return trails.get(athlete_id)


def seen(tx: Session, athlete_id: int, stamps: Stamps, record: f.Record) -> None:
    """Begin a trail anew: this is the record now."""
    tx.info.setdefault("trails", {})[athlete_id] = Trail(stamps, record)


def lose_trail(tx: Session, athlete_id: int) -> None:
    """It was changed in a way that leaves no word."""
    tx.info.get("trails", {}).pop(athlete_id, None)


def own(tx: Session) -> dict[int, tuple[Stamps, f.Record]]:
    """The records that this transaction read after it had changed something."""
    found: dict[int, tuple[Stamps, f.Record]] = tx.info.get("own", {})
    return found


def changes_facts(tx: Session) -> None:
    """From here on this transaction's records are its own: rolled back, their ids would come again for other facts."""
    tx.info["changed"] = True


def kept(tx: Session, athlete_id: int, stamps: Stamps) -> f.Record | None:
    """A record of this state, of the transaction's own or the store's."""
    mine = own(tx).get(athlete_id)
    if mine is not None and mine[0] == stamps:
        return mine[1]
    cache = tx.info.get("records")
    return cache.get(athlete_id, stamps) if isinstance(cache, RecordCache) else None


def older(tx: Session, athlete_id: int) -> f.Record | None:
    """A committed record of an earlier state."""
    cache = tx.info.get("records")
    return cache.older(athlete_id) if isinstance(cache, RecordCache) else None


def keep(tx: Session, athlete_id: int, stamps: Stamps, record: f.Record) -> None:
    seen(tx, athlete_id, stamps, record)
    cache = tx.info.get("records")
    if tx.info.get("changed"):
        tx.info.setdefault("own", {})[athlete_id] = (stamps, record)
    elif isinstance(cache, RecordCache):
        cache.put(athlete_id, stamps, record)


def folded(tx: Session, athlete_id: int, record: f.Record, on: date) -> Fold:
    """The record folded as of a day: as who asked last left it, or anew."""
    cache = tx.info.get("records")
    found = cache.borrow(athlete_id, record, on) if isinstance(cache, RecordCache) else None
    return found or Fold(record, View(record, on))


def leave(tx: Session, athlete_id: int, fold: Fold) -> None:
    """Leave a fold that is not asked any more to who comes next."""
    cache = tx.info.get("records")
    if isinstance(cache, RecordCache):
        cache.give_back(athlete_id, fold)
