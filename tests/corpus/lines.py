"""Corpus lines: one message with its gold, filled up from what the theme files write down."""

from __future__ import annotations

import itertools
from datetime import datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from tests.corpus import notation

# Where a message does not say when it was sent, it gets one of these, in turn.
USUAL = {
    "en": [
        ("2027-02-17 18:42", "Europe/London"),
        ("2027-03-04 07:15", "Europe/Dublin"),
        ("2027-04-13 12:20", "America/Toronto"),
        ("2027-05-21 20:05", "Australia/Sydney"),
        ("2027-06-08 21:31", "America/Los_Angeles"),
        ("2027-09-30 17:58", "Africa/Johannesburg"),
    ],
    "de": [
        ("2027-02-18 18:40", "Europe/Berlin"),
        ("2027-05-05 07:22", "Europe/Vienna"),
        ("2027-10-12 20:55", "Europe/Zurich"),
    ],
    "es": [
        ("2027-02-23 19:10", "Europe/Madrid"),
        ("2027-05-13 08:05", "America/Mexico_City"),
        ("2027-11-03 21:45", "America/Argentina/Buenos_Aires"),
        ("2027-07-20 17:30", "America/Bogota"),
    ],
}


class Theme:
    """A file's worth of lines in one language about one subject."""

    def __init__(self, name: str, language: str) -> None:
        self.name, self.language = name, language
        self.lines: list[dict[str, Any]] = []

    def say(self, text: str, sets: str = "", does: str = "", **more: Any) -> None:
        """Add a message. `does` names intents beyond those that follow from the rest; see `line` for `more`."""
        number = len(self.lines) + 1
        at, zone = USUAL[self.language][number % len(USUAL[self.language])]
        place = {"at": at, "tz": zone, "lang": self.language} | more
        self.lines.append(line(f"{self.name}-{self.language}-{number:03}", text, sets, does, theme=self.name, **place))


def line(
    id: str,
    text: str,
    sets: str = "",
    does: str = "",
    *,
    theme: str,
    at: str,
    tz: str,
    fold: int = 0,
    unit: str = "kg",
    lang: str | None = "en",
    body: float | None = 71.5,
    today: str | None = None,
    on: str | None = "",
    pain: str = "",
    flags: str = "",
    bw: float | None = None,
    srpe: float | None = None,
    mins: float | None = None,
    sleep: float | None = None,
    dates: str = "",
    fix: tuple[Any, ...] | None = None,
    ask: str = "",
    unread: tuple[str, ...] = (),
    maybe_unread: tuple[str, ...] = (),
    maybe: str = "",
    does_or: tuple[str, ...] = (),
    pain_or: tuple[str, ...] = (),
    sets_or: tuple[str, ...] = (),
    dates_or: tuple[str, ...] = (),
    on_or: tuple[str | None, ...] = (),
    flags_or: tuple[str, ...] = (),
    ask_or: str = "",
    also: tuple[dict[str, Any], ...] = (),
    why: str = "",
) -> dict[str, Any]:
    """One corpus line.

    `sets`, `pain`, `today`: see `notation`. `does`, `flags`: words. `maybe`: intents that may be there or not.
    `dates`: "FROM..TO", an end left out is null; "FROM" alone is both. `fix`: (field, was, now, movement, side, which).
    `ask`: "about: span|about: span". `…_or`: values that are as good. `ask_or`: asking this back is as good.
    `maybe_unread`: pieces that may be listed or not. `on`: the day trained; "" works it out, None is null.
    """
    sent = datetime.fromisoformat(at).replace(tzinfo=ZoneInfo(tz), fold=fold)
    gold: dict[str, Any] = {
        "intents": [],
        "performed_on": None,
        "sets": notation.sets(sets),
        "pain": notation.pain(pain),
        "red_flags": flags.split(),
        "bodyweight_kg": bw,
        "session_rpe": srpe,
        "duration_min": mins,
        "sleep_h": sleep,
        "dates": span(dates),
        "correction": correction(fix),
        "ask": asks(ask),
        "unread": list(unread),
    }
    gold["intents"] = intents(gold, does)
    gold["performed_on"] = day_trained(gold, sent) if on == "" else on
    result: dict[str, Any] = {
        "id": id,
        "in": {
            "text": text,
            "sent_at": sent.isoformat(),
            "timezone": tz,
            "unit": unit,
            "language": lang,
            "bodyweight_kg": body,
            "today": notation.prescribed(today) if today else None,
        },
        "gold": gold,
        "tags": tags(gold, theme, today, unit),
    }
    either = {
        "intents": [list(dict.fromkeys(intents(gold, d))) for d in does_or],
        "pain": [notation.pain(p) for p in pain_or],
        "sets": [notation.sets(s) for s in sets_or],
        "dates": [span(d) for d in dates_or],
        "performed_on": list(on_or),
        "red_flags": [f.split() for f in flags_or],
        "unread": [list(c) for n in range(1, len(maybe_unread) + 1) for c in itertools.combinations(maybe_unread, n)],
    }
    either["intents"] += [[*gold["intents"], m] for m in maybe.split()]
    reports = {"report" in words for words in [gold["intents"], *either["intents"]]}
    if len(reports) == 2 and on == "":
        # With and without a report the day is there or not.
        both = {None, evening(sent)}
        either["performed_on"] += sorted(both - {gold["performed_on"], *either["performed_on"]}, key=str)
    if either["unread"] and unread:
        either["unread"] = [[*unread, *more] for more in either["unread"]]
    if ask_or:
        also = (*also, {"ask": asks(ask_or)})
    result |= {"also": list(also)} if also else {}
    result |= {"either": {f: v for f, v in either.items() if v}} if any(either.values()) else {}
    return result | ({"why": why} if why else {})


def intents(gold: dict[str, Any], does: str) -> list[str]:
    """Intents named and those that follow from the fields. "-report" keeps one out that would follow."""
    found = does.split()
    barred = {w[1:] for w in found if w.startswith("-")}
    found = [w for w in found if not w.startswith("-")]
    if gold["correction"]:
        found.append("correction")
    elif gold["sets"] or gold["session_rpe"] is not None or gold["duration_min"] is not None:
        found.insert(0, "report")
    if gold["pain"] or set(gold["red_flags"]) - {"fever"}:
        found.append("pain")
    if gold["bodyweight_kg"] is not None:
        found.append("bodyweight")
    return list(dict.fromkeys(w for w in found if w not in barred))


def day_trained(gold: dict[str, Any], sent: datetime) -> str | None:
    """The day of a report whose words name none."""
    days = [s["on"] for s in gold["sets"] if s["on"]]
    if days:
        return max(days)
    return evening(sent) if "report" in gold["intents"] else None


def evening(sent: datetime) -> str:
    """The day a message is of: before 04:00 still the one before."""
    return (sent - timedelta(days=sent.hour < 4)).date().isoformat()


def span(words: str) -> dict[str, str | None] | None:
    if not words:
        return None
    start, dots, end = words.partition("..")
    return {"from": start or None, "to": (end or None) if dots else start}


def correction(fix: tuple[Any, ...] | None) -> dict[str, Any] | None:
    if fix is None:
        return None
    whole = (*fix, *(None, None, None, None, None, "all")[len(fix) :])
    return dict(zip(("field", "was", "now", "movement", "side", "which"), whole, strict=True))


def asks(words: str) -> list[dict[str, str]]:
    pairs = [a.split(": ", 1) for a in words.split("|") if a]
    return [{"about": about, "span": words} for about, words in pairs]


def tags(gold: dict[str, Any], theme: str, today: str | None, unit: str) -> list[str]:
    told = {
        "must-ask": gold["ask"],
        "plan": today,
        "lb": unit == "lb",
        "red-flag": gold["red_flags"],
        "report": "report" in gold["intents"],
    }
    return [theme, *(t for t, holds in told.items() if holds)]
