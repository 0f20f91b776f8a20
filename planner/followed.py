"""Strength folded session by session, kept with the sessions: only what is new is measured and followed again.

Sessions never change, so what a run of them says of strength never changes either. The fold is kept with the last
session of the run and may be dropped at any time; it holds only for the very same sessions, bodyweights and rules.
"""

from __future__ import annotations

from bisect import bisect_left
from collections import deque
from collections.abc import Mapping, Sequence
from datetime import date

from planner.evidence import Errors, Measurement, measure
from planner.facts import Session
from planner.layout import Key
from planner.state_space import Model
from planner.trend import Follower, Prior, Trend

_KEPT = 4  # newest sessions that keep a fold: what came with the last message may be taken back
_LOOK_BACK = 30  # sessions between an old fold and the newest, beyond which all is folded anew


class Line:
    """One movement and side: its measurements in order of day, and the trend through them."""

    __slots__ = ("_days", "_follower", "_levels", "measurements")

    def __init__(self, model: Model, errors: Errors, prior: Prior | None = None) -> None:
        self.measurements: list[Measurement] = []
        self._days: list[date] = []
        self._follower = Follower(model, errors, prior)
        self._levels: tuple[list[float], Follower] = ([], Follower(model, patient=False))

    def then(self, found: Sequence[Measurement]) -> Line:
        """The line through the measurements that came next; this one stays as it is."""
        made = Line.__new__(Line)
        made.measurements, made._days = [*self.measurements, *found], [*self._days, *[one.on for one in found]]
        made._follower, made._levels = self._follower.copy(), self._levels
        deque(made._follower.through(found), maxlen=0)
        return made

    def count_before(self, day: date) -> int:
        """How many measurements there were before `day`."""
        return bisect_left(self._days, day)

    def level_before(self, day: date) -> float | None:
        """The trend's log level as it was known before `day`."""
        at = bisect_left(self._days, day)
        return self.levels()[at - 1] if at else None

    def followed(self) -> Trend | None:
        return self._follower.trend()

    @property
    def habits(self) -> Prior:
        """What this movement has shown of the athlete's habits, as far as it says something of another movement."""
        state, model = self._follower.state, self._follower.model
        assert state is not None
        return Prior(
            state.steepness,
            state.reserve_bias,
            (state.var_steepness + model.steepness_variance) / 2.0,
            (state.var_bias + model.reserve_bias_variance) / 2.0,
        )

    def levels(self) -> Sequence[float]:
        """The trend's log level after each measurement: what was known then, each taken without doubt of its own."""
        known, before = self._levels
        if len(known) < len(self.measurements):
            follower = before.copy()
            levels = [state[0] for state in follower.through(self.measurements[len(known) :])]
            # Set as one, for other threads may ask the same line.
            self._levels = known, _ = [*known, *levels], follower
        return known


class Fold:
    """What a run of sessions says of strength."""

    __slots__ = ("bodyweights", "earlier", "errors", "lines", "model")

    def __init__(self, errors: Errors, model: Model) -> None:
        self.errors = errors
        self.model = model
        # All but the newest: that one keeps this fold, and the two would hold each other in memory.
        self.earlier: list[Session] = []
        self.bodyweights: list[float] = []
        self.lines: Mapping[Key, Line] = {}

    def fits(
        self, newest: Session, sessions: Sequence[Session], bodyweights: Sequence[float], errors: Errors, model: Model
    ) -> bool:
        """Whether it, kept by `newest`, is of the first of these sessions, at these bodyweights and by these rules."""
        count = len(self.bodyweights)
        return (
            count <= len(sessions)
            and sessions[count - 1] is newest
            and all(kept is now for kept, now in zip(self.earlier, sessions, strict=False))
            and self.bodyweights == bodyweights[:count]
            and self.errors == errors
            and self.model == model
        )

    def then(self, sessions: Sequence[Session], bodyweights: Sequence[float]) -> Fold:
        """The fold of these sessions, the first of which it is of; this one stays as it is."""
        made = Fold(self.errors, self.model)
        made.earlier, made.bodyweights = list(sessions[:-1]), list(bodyweights)
        known = len(self.bodyweights)
        lines, runs = dict(self.lines), dict[Key, list[Measurement]]()
        for session, kg in zip(sessions[known:], bodyweights[known:], strict=True):
            found = _measured(session, kg, self.errors)
            new = [key for key in found if key not in lines]
            if new:  # What the others say of habits until then is where it begins.
                lines, runs = _gone_on(lines, runs), {}
                prior = min([line.habits for line in lines.values()], key=_doubt, default=None)
                lines.update({key: Line(self.model, self.errors, prior) for key in new})
            for key, measurement in found.items():
                runs.setdefault(key, []).append(measurement)
        made.lines = _gone_on(lines, runs)
        return made


def _gone_on(lines: Mapping[Key, Line], runs: Mapping[Key, Sequence[Measurement]]) -> dict[Key, Line]:
    """The lines, each gone on through its run of measurements: in one go, for that is several times faster."""
    return {key: line.then(runs[key]) if key in runs else line for key, line in lines.items()}


def fold(sessions: Sequence[Session], bodyweights: Sequence[float], errors: Errors, model: Model) -> Fold:
    """The fold of sessions in order of day, `bodyweights` [kg] on their days beside them."""
    found = Fold(errors, model)
    if not sessions:
        return found
    for session in sessions[: -_LOOK_BACK - 1 : -1]:
        kept: Fold | None = session.__dict__.get("_fold")
        if kept is not None and kept.fits(session, sessions, bodyweights, errors, model):
            found = kept
            break
    if len(found.bodyweights) < len(sessions):
        found = found.then(sessions, bodyweights)
        sessions[-1].__dict__["_fold"] = found
    for session in sessions[-2 * _KEPT - _LOOK_BACK : -_KEPT]:
        session.__dict__.pop("_fold", None)
    return found


def _doubt(habits: Prior) -> float:
    return habits.var_steepness + habits.var_bias


def _measured(session: Session, bodyweight_kg: float, errors: Errors) -> dict[Key, Measurement]:
    """`measure`, kept with the session: where a fold holds no more, most of its sessions still do."""
    kept: tuple[float, Errors, dict[Key, Measurement]] | None = session.__dict__.get("_measured")
    if kept is not None and kept[0] == bodyweight_kg and (kept[1] is errors or kept[1] == errors):
        return kept[2]
    found = measure(session, bodyweight_kg, errors)
    session.__dict__["_measured"] = (bodyweight_kg, errors, found)
    return found
