"""Pain: what the scores of a site mean for the work that loads it.

Up to 2 of 10 is fine; 3 to 5 is acceptable when it is back at its baseline the next morning and not rising from week to
week; above 5, or any at rest, stops. Source: the pain-monitoring model (Thomeé 1997, Silbernagel 2007), tested on
Achilles tendons, not on elbows.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from operator import attrgetter
from typing import Literal, NamedTuple

from planner.facts import PainAnswer, Record, Side
from planner.plan import SitePain
from planner.rules import Rules

Level = Literal["fine", "hold", "step_down", "stop", "step_back"]
DAY = timedelta(days=1)
_on = attrgetter("on")
WEEK_DAYS = 7
REMEMBERED_WEEKS = 6  # how far back baselines and rises are looked for; a year-old morning says nothing of today's
SEVERITY: dict[Level, int] = {"fine": 0, "hold": 1, "step_down": 2, "step_back": 3, "stop": 4}


@dataclass(frozen=True, slots=True)
class Pain:
    """A painful place on one day: the newest score and the level that acts, since `since`. `why`: a reason code.

    `score` None: named without a number. `acted_on`: the worst score of the day that brought the level about.
    """

    site: str
    side: Side | None
    score: float | None
    on: date
    level: Level
    since: date
    why: str
    acted_on: float | None

    @property
    def as_site(self) -> SitePain | None:
        return None if self.score is None else SitePain(self.site, self.side, self.score, self.on, self.level)


UNNAMED = "unnamed"  # a score without a place; "other" is a place that was named and that we have no word for
Place = tuple[str, Side | None]
Scored = Sequence[tuple[PainAnswer, float]]


def _day_of(scored: tuple[PainAnswer, float]) -> date:
    return scored[0].on


def place_id(site: str, side: Side | None) -> str:
    """A place as an order names it: "elbow:left"."""
    return f"{site}:{side}" if side else site


def by_place(answers: Iterable[PainAnswer]) -> dict[Place, list[PainAnswer]]:
    """Answers by site and side, in order. A bare number belongs to the place named last before it (within a week); a
    bare 0 to every place named so far."""
    found: dict[Place, list[PainAnswer]] = {}
    last: PainAnswer | None = None
    for answer in answers:
        if answer.site is not None:
            place = (answer.site, answer.side)
            if place in found:
                found[place].append(answer)
            else:
                found[place] = [answer]
            last = answer
        elif answer.score == 0:
            for those in found.values():
                those.append(answer)
        elif last is not None and (answer.on - last.on).days <= WEEK_DAYS:
            found[(last.site or UNNAMED, last.side)].append(answer)
        else:
            found.setdefault((UNNAMED, None), []).append(answer)
    return found


def _between(scored: Scored, since: date, until: date) -> Scored:
    """The scores of the days `since` to `until`, both included."""
    return scored[bisect_left(scored, since, key=_day_of) : bisect_right(scored, until, key=_day_of)]


def _covers(other: Pain, one: Pain) -> bool:
    """Whether a word without a side is the same place as one with a side, at least as severe: it is told once."""
    same = other.site == one.site and one.side is None and other.side is not None
    return same and SEVERITY[other.level] >= SEVERITY[one.level]


class Row(NamedTuple):
    """Sessions in a row with a score above fine, and since when they were full; None where there was quiet since."""

    in_row: int
    full: date | None


_NO_ROW = Row(0, None)


class Told:
    """What was told of one place, in order of day, and what its sessions in a row made of it."""

    def __init__(self, answers: Sequence[PainAnswer], rules: Rules) -> None:
        hold_from, over = rules.number("pain.hold_from"), rules.number("pain.stop_over")
        self.answers = answers
        self.scored = [(one, one.score) for one in answers if one.score is not None]
        self.sore_days = [one.on for one, score in self.scored if score >= hold_from]
        self.stops = [one for one, score in self.scored if score > 0 and (score > over or one.when == "rest")]
        self.rows: list[Row] | None = None  # after each session, where anything asked for them

    def until(self, day: date) -> tuple[Sequence[PainAnswer], Scored]:
        """The answers known on `day`, and those of them with a score."""
        if self.answers[-1].on <= day:
            return self.answers, self.scored
        known = self.answers[: bisect_right(self.answers, day, key=_on)]
        return known, self.scored[: bisect_right(self.scored, day, key=_day_of)]


class PainHistory:
    """The pain of one record; `at(day)` folds what was known before or on that day."""

    def __init__(self, record: Record, rules: Rules) -> None:
        self._places = {place: Told(answers, rules) for place, answers in by_place(record.pain).items()}
        self._lifted = {order.value: order.on for order in record.orders if order.kind == "train_on"}
        # What was told of a place since the coach lifted its step back: the sessions before no longer count for one.
        self._since = {
            place: Told([one for one in told.answers if one.on > self._lifted[place_id(*place)]], rules)
            for place, told in self._places.items()
            if place_id(*place) in self._lifted
        }
        self._restarts = [order.on for order in record.orders if order.kind == "restart"]
        self._trained_on = frozenset([one.on for one in record.sessions if one.sets and not one.is_test])
        self._trained = sorted(self._trained_on)
        self._rules = rules
        self._hold_from = hold_from = rules.number("pain.hold_from")
        self._found: dict[date, tuple[Pain, ...]] = {}
        self._sore_days = sorted([one.on for one in record.pain if (one.score or 0.0) >= hold_from])

    def is_sore(self, day: date) -> bool:
        """Whether any score of the last three weeks is above fine: else nothing can act."""
        if not self._sore_days:
            return False
        at = bisect_left(self._sore_days, day - 3 * WEEK_DAYS * DAY)
        return at < len(self._sore_days) and self._sore_days[at] <= day

    def sore_before(self, day: date) -> Sequence[date]:
        """The days before `day` of scores above fine, each as often as it was told."""
        return self._sore_days[: bisect_left(self._sore_days, day)]

    def at(self, day: date) -> tuple[Pain, ...]:
        """Every place with a word in the last weeks (or a standing stop), worst first."""
        if day not in self._found:
            self._found[day] = self._at(day)
        return self._found[day]

    def _at(self, day: date) -> tuple[Pain, ...]:
        found = []
        for (site, side), told in self._places.items():
            pain = self._place(site, side, told, day)
            if pain is not None:
                found.append(pain)
        found = [one for one in found if not any(_covers(other, one) for other in found)]
        return tuple(sorted(found, key=lambda pain: (-SEVERITY[pain.level], -(pain.score or 0), pain.site)))

    def _place(self, site: str, side: Side | None, told: Told, day: date) -> Pain | None:
        known, scored = told.until(day)
        if not known:
            return None
        rules, newest = self._rules, known[-1]
        score = scored[-1][1] if scored else None
        on = scored[-1][0].on if scored else newest.on

        def pain(level: Level, since: date, why: str) -> Pain:
            acted_on = max((value for _, value in _between(scored, since, since)), default=score)
            return Pain(site, side, score, on, level, since, why, acted_on)

        stopped = self._stop(told, day)
        if stopped is not None:
            return pain("stop", *stopped)
        lifted = self._lifted.get(place_id(site, side))
        counting = told if lifted is None or lifted > day else self._since[(site, side)]
        stepped_back = self._step_back(counting, day)
        if stepped_back is not None:
            return pain("step_back", stepped_back, "pain_three_sessions")
        since = day - REMEMBERED_WEEKS * WEEK_DAYS * DAY
        late = _between(scored, since, day)
        stepped_down = self._step_down(late, day)
        if stepped_down is not None:
            return pain("step_down", *stepped_down)
        if (day - newest.on).days > rules.whole("pain.word_days"):
            return None
        if newest.score is None:
            return pain("hold", newest.on, "pain_no_score")
        trained_on = next((one.on for one, _ in reversed(scored) if one.when != "morning"), None)
        if trained_on is not None:
            # The worst of the day: 4 in the session and 1 at its end is a 4.
            of_day = _between(scored, trained_on, trained_on)
            if max(value for one, value in of_day if one.when != "morning") >= rules.number("pain.hold_from"):
                return pain("hold", trained_on, "pain_hold")
        return pain("fine", newest.on, "pain_fine")

    def _stop(self, told: Told, day: date) -> tuple[date, str] | None:
        """Since when the place is stopped; only the coach lifts it."""
        for one in told.stops:
            if one.on <= day and not any(one.on <= restart <= day for restart in self._restarts):
                return one.on, "pain_at_rest" if one.when == "rest" else "pain_over"
        return None

    def _step_back(self, told: Told, day: date) -> date | None:
        """The newest day on which the sessions in a row were full; None where there was quiet since."""
        rules, sore = self._rules, bisect_right(told.sore_days, day)
        if sore < rules.whole("pain.sessions_in_row"):
            return None
        if (day - told.sore_days[sore - 1]).days >= rules.whole("pain.quiet_days"):
            return None
        rows, done = self._rows(told), bisect_right(self._trained, day)
        if done and self._trained[done - 1] == day:
            # What is said tomorrow of today's session is not known yet.
            before = rows[done - 2] if done > 1 else _NO_ROW
            worst = max((score for one, score in _between(told.scored, day, day) if one.when != "morning"), default=0.0)
            return self._then(before, day, worst, told).full
        return rows[done - 1].full if done else None

    def _rows(self, told: Told) -> Sequence[Row]:
        if told.rows is None:
            worst: dict[date, float] = {}
            for one, score in told.scored:
                if one.when != "morning" and (one.on in self._trained_on or (one.on - DAY) in self._trained_on):
                    session = one.on if one.on in self._trained_on else one.on - DAY
                    worst[session] = max(worst.get(session, 0.0), score)
            rows, row = list[Row](), _NO_ROW
            for session in self._trained:
                # A session without a word of pain was without: it is asked after each.
                row = self._then(row, session, worst.get(session, 0.0), told)
                rows.append(row)
            told.rows = rows
        return told.rows

    def _then(self, row: Row, session: date, worst: float, told: Told) -> Row:
        """The row after a session with `worst` as its worst score."""
        rules = self._rules
        if worst >= self._hold_from:
            in_row = row.in_row + 1
            is_full = in_row >= rules.whole("pain.sessions_in_row")
            return Row(in_row, (row.full or session) if is_full else row.full)
        if row.full is None:
            return _NO_ROW
        quiet_since = session - rules.whole("pain.quiet_days") * DAY
        sore = bisect_right(told.sore_days, session)
        was_quiet = not sore or told.sore_days[sore - 1] <= quiet_since
        return Row(0, None if was_quiet else row.full)

    def _step_down(self, scored: Scored, day: date) -> tuple[date, str] | None:
        """Since when and why a step down acts. An answer no worse makes it last longer and is no new one: it is told
        once."""
        rules = self._rules
        hold_from, lasts = rules.number("pain.hold_from"), rules.whole("pain.step_down_days")
        found: tuple[date, str] | None = None
        newest, worst = day, 0.0
        baseline = 0.0
        for index, (one, score) in enumerate(scored):
            why = None
            if one.when == "morning":
                evening = [
                    value
                    for before, value in _between(scored[:index], one.on - DAY, one.on)
                    if before.when != "morning"
                ]
                was_sore = max(evening, default=0.0) >= hold_from
                if score > baseline and (was_sore or score >= hold_from):
                    why = "pain_next_morning"
                elif score < hold_from:
                    baseline = score
            if score >= hold_from and self._rising(scored[: index + 1]):
                why = "pain_rising"
            if why is None:
                continue
            if found is None or score > worst or (one.on - newest).days >= lasts:
                found, worst = (one.on, why), score
            newest = one.on
        return found if found is not None and (day - newest).days < lasts else None

    @staticmethod
    def _rising(scored: Scored) -> bool:
        """Whether the worst of each week rose twice running, up to the newest answer."""
        last = scored[-1][0].on
        worst: list[float | None] = [None, None, None]
        for one, score in _between(scored, last - (3 * WEEK_DAYS - 1) * DAY, last):
            week = (last - one.on).days // WEEK_DAYS
            worst[week] = max(worst[week] or 0.0, score)
        newest, before, first = worst
        return newest is not None and before is not None and first is not None and newest > before > first
