"""A day named, and the words of a message that name days."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message


@dataclass(frozen=True)
class Day:
    """A day or days named at tokens [start, end). `back` and `ahead`: what they are, looking back and ahead."""

    start: int
    end: int
    kind: str  # rel, weekday, date, range, length, week, weekend, month, vague
    back: tuple[date, date] | None
    ahead: tuple[date, date] | None
    link: str | None = None  # until, since, from, back, to, instead
    shift: int | None = None  # days from today, of "yesterday"
    days: int = 0  # of a length


class DayHits:
    """The words of days in one message, by place."""

    def __init__(self, message: Message) -> None:
        self.message = message
        self.tokens = message.tokens
        self.today = message.today
        self.hits = message.hits("dates")
        self.at: dict[int, list[Hit]] = {}
        for hit in self.hits:
            self.at.setdefault(hit.start, []).append(hit)
        self.short_or_named = [hit for hit in self.hits if hit.table in ("short", "weekday")]
        self.starts_of_days = {hit.start for hit in self.short_or_named}
        self.ends_of_days = {hit.end for hit in self.short_or_named}
        gone = [hit.end for hit in message.hits("intents", "want") if hit.name in ("away", "pause")]
        self.gone = set(gone) if not any(message.beginning("movements")) else set[int]()
        self.leading = {hit.end for hit in self.hits if hit.table in ("link", "which") and not self._joins(hit)}

    def has(self, table: str, at: int, end: int | None = None) -> Hit | None:
        return next((h for h in self.at.get(at, ()) if h.table == table and (end is None or h.end <= end)), None)

    def of_an_absence(self, at: int) -> bool:
        """Whether figures here tell when somebody is gone, with no work beside it: "away 28/2 - 3/3"."""
        return bool(self.gone) and (at in self.leading or at in self.gone)

    def no_weekday(self, hit: Hit) -> bool:
        """ "sun out", "in the sun", "so gut": the short word is another one."""
        return any(other.table == "no_weekday" and other.start <= hit.start < other.end for other in self.hits)

    def _joins(self, hit: Hit) -> bool:
        """A comma or "and" may stand before anything, "3x5, sun out"; "to sun", "on sun" lead to a day."""
        return hit.name == "range" and self.tokens[hit.end - 1].text in {",", *little("and")}

    def numbers(self, hit: Hit) -> list[int]:
        return [
            int(t.value) for t in self.tokens[hit.start : hit.end] if t.value is not None and t.value == int(t.value)
        ]

    def both(self, hit: Hit, kind: str, back: date | None, ahead: date | None) -> Day | None:
        if back is None and ahead is None:
            return None
        return Day(hit.start, hit.end, kind, (back, back) if back else None, (ahead, ahead) if ahead else None)
