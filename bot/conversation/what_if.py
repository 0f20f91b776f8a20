""" "What if mira trains three days": both ways rehearsed on a copy of the record, side by side; nothing is decided."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta
from functools import cache
from pathlib import Path
from typing import Any

import tomli

from bot.conversation.coach_words import Command, parse
from bot.conversation.desk import Desk
from bot.conversation.reasons import rung_name
from bot.wording import Wording
from planner import ladders, rules, what_if
from planner.facts import Absence, Order, Record
from planner.rules import rules_of
from planner.units import KG_PER_LB
from planner.what_if import Season

WORDS = Path(__file__).with_name("what_if.toml")
MOST_DAYS = 6
HOLD = timedelta(weeks=3)


@cache
def _words() -> dict[str, Any]:
    return tomli.loads(WORDS.read_text(encoding="utf-8"))


def question(text: str) -> str | None:
    """The words after "what if", as the coach's commands have them; None where it is no such question."""
    words = [_words()["as"].get(word, word) for word in re.sub(r"[?!,]", " ", text.casefold()).split()]
    said = " ".join(word for word in words if word)
    for opening in _words()["openings"]:
        if said.startswith(f"{opening} "):
            return said[len(opening) + 1 :]
    return None


def about(said: str, handles: Sequence[tuple[str, str]], language: str, today: date) -> Command | None:
    """The command that the question plays with; the verb is "days" for "trains three days"."""
    days = _days(said)
    command = parse(said, handles, language, today)
    if days is None:
        return command
    handle = command.handle if command is not None else None
    if handle is None:
        handle = next((own for own, name in handles if {own, name.casefold()} & set(said.split())), None)
    return Command("days", handle, said, load=float(days))


def _days(said: str) -> int | None:
    train, days = "|".join(_words()["train"]), "|".join(_words()["days"])
    # "trains three days", and where the verb comes last: "drei Tage trainiert".
    found = re.search(rf"\b(?:(?:{train})\s+(?:\w+\s+)?(\d+)\s+(?:{days})|(\d+)\s+(?:{days})\s+(?:{train}))\b", said)
    number = int(found[1] or found[2]) if found else 0
    return number if 1 <= number <= MOST_DAYS else None


def meant(said: str, desks: Sequence[Desk]) -> list[Desk]:
    """Without a name: everyone on a rung that the question names."""
    stems = [word.rstrip("s") for word in said.split() if len(word) > 3]
    return [
        desk
        for desk in desks
        if any(part in stems for one in desk.review.ladders for part in one.rung.split("_") if len(part) > 3)
    ]


def answer(desk: Desk, command: Command, said: str) -> str:
    """Five lines, as it goes on and as it would be. What cannot be rehearsed says so."""
    changed = _changed(desk, command, said)
    say = desk.say_coach
    if changed is None:
        return say.say("what-if-how")
    now, then = what_if.rehearse(desk.record, desk.today), what_if.rehearse(changed, desk.today)
    lines = [say.say("what-if-heading", name=desk.person.name, weeks=what_if.WEEKS)]
    for key, before, after in (
        ("what-if-main", _top(now, say), _top(then, say)),
        ("what-if-rung", _rungs(now, say), _rungs(then, say)),
        ("what-if-sessions", str(now.sessions), str(then.sessions)),
        ("what-if-exposures", str(now.exposures), str(then.exposures)),
        ("what-if-dates", _dates(now, say), _dates(then, say)),
    ):
        both = before if before == after else say.say("what-if-both", now=before, then=after)
        lines.append(say.say(key, both=both))
    return "\n".join(lines)


def _changed(desk: Desk, command: Command, said: str) -> Record | None:
    """A copy of the record in which it is so."""
    record, today = desk.record, desk.today
    if command.verb == "days" and command.load is not None:
        return what_if.with_days(record, int(command.load))
    if command.verb == "pause":
        absence = Absence("pause", today, today, command.until)
        return replace(record, absences=(*record.absences, absence))
    if command.verb == "rule":
        return _ruled(record, command)
    order = _order(desk, command, said)
    return None if order is None else replace(record, orders=(*record.orders, order))


def _order(desk: Desk, command: Command, said: str) -> Order | None:
    today = desk.today
    if command.verb == "hold":
        block = timedelta(weeks=rules_of(desk.record.athlete).whole("block.loading_weeks") + 1)
        for_a_block = any(word in said.split() for word in _words()["block"])
        return Order("hold_rung", today, until=command.until or today + (block if for_a_block else HOLD))
    if command.verb == "lock" and command.load is not None:
        pounds = (command.unit or desk.athlete.unit) == "lb"
        return Order("lock_load", today, load_kg=command.load * (KG_PER_LB if pounds else 1.0), until=command.until)
    if command.verb == "rung":
        wanted = command.rest.strip().replace(" ", "_").replace("-", "_")
        for name, _ in desk.record.athlete.ladders:
            if wanted in ladders.get(name).by_id:
                return Order("set_rung", today, ladder=name, rung=wanted)
    return None


def _ruled(record: Record, command: Command) -> Record | None:
    name, _, value = command.rest.rpartition(" ")
    try:
        checked = rules.check(name.strip(), float(value))
    except (rules.RuleError, ValueError):
        return None
    return replace(record, athlete=replace(record.athlete, rules={**record.athlete.rules, name.strip(): checked}))


def _top(season: Season, say: Wording) -> str:
    if season.top is None:
        return say.say("what-if-none")
    return f"{say.movement(season.top.movement)} {say.load(season.top.load_kg)}"


def _rungs(season: Season, say: Wording) -> str:
    return say.listed([rung_name(rung, say) for _, rung in season.rungs]) or say.say("what-if-none")


def _dates(season: Season, say: Wording) -> str:
    none = say.say("what-if-none")
    deload = say.day(season.deload_on) if season.deload_on else none
    return say.say("what-if-days", deload=deload, test=say.day(season.test_on) if season.test_on else none)
