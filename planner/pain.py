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
from typing import Literal

from planner.facts import PainAnswer, Record, Side
from planner.plan import SitePain
from planner.rules import Rules

Level = Literal["fine", "hold", "step_down", "stop", "step_back"]
DAY = timedelta(days=1)
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


Place = tuple[str, Side | None]


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
            found[(last.site or "other", last.side)].append(answer)
        else:
            found.setdefault(("other", None), []).append(answer)
    return found


def _covers(other: Pain, one: Pain) -> bool:
    """Whether a word without a side is the same place as one with a side, at least as severe: it is told once."""
    same = other.site == one.site and one.side is None and other.side is not None
    return same and SEVERITY[other.level] >= SEVERITY[one.level]


class PainHistory:
    """The pain of one record; `at(day)` folds what was known before or on that day."""

    def __init__(self, record: Record, rules: Rules) -> None:
        self._places = by_place(record.pain)
        self._restarts = [order.on for order in record.orders if order.kind == "restart"]
        self._trained_on = frozenset([one.on for one in record.sessions if one.sets and not one.is_test])
        self._trained = sorted(self._trained_on)
        self._rules = rules
        hold_from = rules.number("pain.hold_from")
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
        for (site, side), answers in self._places.items():
            known = [answer for answer in answers if answer.on <= day]
            if known:
                pain = self._place(site, side, known, day)
                if pain is not None:
                    found.append(pain)
        found = [one for one in found if not any(_covers(other, one) for other in found)]
        return tuple(sorted(found, key=lambda pain: (-SEVERITY[pain.level], -(pain.score or 0), pain.site)))

    def _place(self, site: str, side: Side | None, known: Sequence[PainAnswer], day: date) -> Pain | None:
        rules, newest = self._rules, known[-1]
        scored = [(one, one.score) for one in known if one.score is not None]
        score = scored[-1][1] if scored else None
        on = scored[-1][0].on if scored else newest.on

        def pain(level: Level, since: date, why: str) -> Pain:
            acted_on = max((value for one, value in scored if one.on == since), default=score)
            return Pain(site, side, score, on, level, since, why, acted_on)

        stopped = self._stop(scored, day)
        if stopped is not None:
            return pain("stop", *stopped)
        stepped_back = self._step_back(scored, day)
        if stepped_back is not None:
            return pain("step_back", stepped_back, "pain_three_sessions")
        since = day - REMEMBERED_WEEKS * WEEK_DAYS * DAY
        late = [(one, value) for one, value in scored if one.on >= since]
        stepped_down = self._step_down(late, day)
        if stepped_down is not None:
            return pain("step_down", *stepped_down)
        if (day - newest.on).days > rules.whole("pain.word_days"):
            return None
        if newest.score is None:
            return pain("hold", newest.on, "pain_no_score")
        trained = [(one.on, value) for one, value in scored if one.when != "morning"]
        # The worst of the day: 4 in the session and 1 at its end is a 4.
        if trained and max(value for on, value in trained if on == trained[-1][0]) >= rules.number("pain.hold_from"):
            return pain("hold", trained[-1][0], "pain_hold")
        return pain("fine", newest.on, "pain_fine")

    def _stop(self, scored: Sequence[tuple[PainAnswer, float]], day: date) -> tuple[date, str] | None:
        """Since when the place is stopped; only the coach lifts it."""
        over = self._rules.number("pain.stop_over")
        for one, score in scored:
            acts = score > 0 and (score > over or one.when == "rest")
            if acts and not any(one.on <= restart <= day for restart in self._restarts):
                return one.on, "pain_at_rest" if one.when == "rest" else "pain_over"
        return None

    def _step_back(self, scored: Sequence[tuple[PainAnswer, float]], day: date) -> date | None:
        """The newest day on which the sessions in a row were full; None where there was quiet since."""
        rules = self._rules
        hold_from, quiet = rules.number("pain.hold_from"), rules.whole("pain.quiet_days")
        sore_days = [one.on for one, score in scored if score >= hold_from]
        if len(sore_days) < rules.whole("pain.sessions_in_row") or (day - sore_days[-1]).days >= quiet:
            return None
        worst: dict[date, float] = {}
        for one, score in scored:
            if one.when != "morning" and (one.on in self._trained_on or (one.on - DAY) in self._trained_on):
                session = one.on if one.on in self._trained_on else one.on - DAY
                worst[session] = max(worst.get(session, 0.0), score)
        row, full, in_row, in_order = 0, None, rules.whole("pain.sessions_in_row"), sorted(sore_days)
        for session in self._trained[: bisect_right(self._trained, day)]:
            # A session without a word of pain was without: it is asked after each.
            row = row + 1 if worst.get(session, 0.0) >= hold_from else 0
            if row >= in_row:
                full = full or session
            elif row == 0 and full:
                sore = bisect_right(in_order, session)
                if not sore or in_order[sore - 1] <= session - quiet * DAY:
                    full = None
        return full

    def _step_down(self, scored: Sequence[tuple[PainAnswer, float]], day: date) -> tuple[date, str] | None:
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
                    for before, value in scored[:index]
                    if before.when != "morning" and before.on in (one.on - DAY, one.on)
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
    def _rising(scored: Sequence[tuple[PainAnswer, float]]) -> bool:
        """Whether the worst of each week rose twice running, up to the newest answer."""
        last = scored[-1][0].on
        worst: list[float | None] = [None, None, None]
        for one, score in scored:
            week = (last - one.on).days // WEEK_DAYS
            if week < 3:
                worst[week] = max(worst[week] or 0.0, score)
        newest, before, first = worst
        return newest is not None and before is not None and first is not None and newest > before > first
