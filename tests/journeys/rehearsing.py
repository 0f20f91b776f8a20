"""Coaching lived through on the virtual clock, for tests and for reading: who says what, and what comes back.

`python -m tests.journeys.rehearsing` prints the twelve weeks of `test_twelve_weeks.py` as a conversation.
"""

from __future__ import annotations

import contextlib
import json
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo

from bot.channels.rehearsal import Rehearsal
from bot.roster import parse_roster
from storage.store import Store


@dataclass
class Talk:
    """A rehearsal under way. `said` holds every line in and out, in order."""

    rehearsal: Rehearsal
    zone: ZoneInfo
    said: list[dict[str, Any]] = field(default_factory=list)

    def line(self, **line: Any) -> list[dict[str, Any]]:
        """One input line; the messages it causes come back. Error lines fail here."""
        self.said.append({"in": line})
        answers = list(self.rehearsal.line(json.dumps(line)))
        assert answers[-1] == {"settled": line["at"]}
        errors = [answer for answer in answers if "error" in answer]
        assert not errors, errors
        self.said += answers[:-1]
        return answers[:-1]

    def at(self, when: str) -> str:
        """ "2027-01-04 18:30" there, with its offset."""
        return datetime.fromisoformat(when).replace(tzinfo=self.zone).isoformat()

    def says(self, when: str, who: str, text: str) -> list[dict[str, Any]]:
        return self.line(at=self.at(when), **{"from": who}, text=text)

    def presses(self, when: str, who: str, label: str, about: str | None = None) -> list[dict[str, Any]]:
        more = {} if about is None else {"about": about}
        return self.line(at=self.at(when), **{"from": who}, press=label, **more)

    def waits(self, until: str) -> list[dict[str, Any]]:
        return self.line(at=self.at(until))

    def messages(self, to: str) -> list[dict[str, Any]]:
        return [line for line in self.said if line.get("to") == to]

    def plans(self, to: str) -> dict[str, dict[str, Any]]:
        """The newest plan of each day, by its date."""
        return {line["plan"]["date"]: line["plan"] for line in self.messages(to) if line["plan"] is not None}


@contextlib.contextmanager
def talk(roster: str, zone: str = "Europe/Zurich") -> Iterator[Talk]:
    """A rehearsal in memory with the roster in this TOML; `zone` is where the times of the script are told."""
    given = parse_roster(roster)
    with contextlib.closing(Store.open("sqlite://")) as store:
        yield Talk(Rehearsal(store, lambda _moment: given), ZoneInfo(zone))


def printed(said: list[dict[str, Any]], zone: ZoneInfo) -> str:
    """The conversation as a coach would read it."""
    parts = []
    for line in said:
        heard = line.get("in")
        entry = heard or line
        at = datetime.fromisoformat(entry["at"]).astimezone(zone).strftime("%a %d %b %H:%M")
        if heard is not None:
            if "from" in heard:
                words = heard.get("text") or f"[{heard.get('press') or heard.get('video')}]"
                parts.append(f"{at}  {heard['from']}: {words}")
            continue
        to = entry["to"] + (f" (about {entry['about']})" if entry["about"] else "")
        text = entry["text"].replace("\n", "\n" + " " * 20)
        buttons = "".join(f" [{label}]" for label in entry["buttons"])
        parts.append(f"{at}      → {to}: {text}" + (f"\n{' ' * 20}{buttons}" if buttons else ""))
    return "\n".join(parts)


if __name__ == "__main__":
    from tests.journeys.twelve_weeks import ROSTER, live

    with talk(ROSTER) as lived:
        live(lived)
        print(printed(lived.said, lived.zone))
