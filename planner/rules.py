"""The numbers of the trade, by name: defaults from `rules.toml`, a coach's own values above them.

A rule is a table `[section.name]` with `value`, `unit`, `range` (numbers) or `choices` (words), `source` and `means`.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path

import tomli

from planner.facts import Athlete

RuleValue = float | int | str | bool

DEFAULTS = Path(__file__).with_name("rules.toml")
_KEYS = {"value", "unit", "range", "choices", "source", "means"}


class RuleError(ValueError):
    """A rule that is unknown, or a value that it may not take. The text says what would be right."""


@dataclass(frozen=True, slots=True)
class Rule:
    """One number (or word, or switch): its default, unit, bounds, where it comes from and what it does."""

    name: str
    value: RuleValue
    unit: str
    source: str
    means: str
    low: float | None = None
    high: float | None = None
    choices: tuple[str, ...] = ()

    def check(self, value: object) -> RuleValue:
        """The value as this rule keeps it.

        Raises:
            RuleError: Wrong type, or outside the range or choices.
        """
        if isinstance(self.value, bool):
            if isinstance(value, bool):
                return value
            raise RuleError(f"{self.name}: must be true or false, not {value!r}")
        if isinstance(self.value, str):
            if isinstance(value, str) and value in self.choices:
                return value
            raise RuleError(f"{self.name}: must be one of {', '.join(self.choices)}, not {value!r}")
        if isinstance(value, bool) or not isinstance(value, (int, float)):
            raise RuleError(f"{self.name}: must be a number, not {value!r}")
        if not math.isfinite(value):
            raise RuleError(f"{self.name}: must be a finite number, not {value!r}")
        if isinstance(self.value, int):
            if value != int(value):
                raise RuleError(f"{self.name}: must be a whole number, not {value!r}")
            value = int(value)
        if self.low is not None and self.high is not None and not self.low <= value <= self.high:
            unit = f" {self.unit}" if self.unit else ""
            raise RuleError(f"{self.name}: must be from {self.low:g} to {self.high:g}{unit}, not {value!r}")
        return value


class Rules:
    """Typed access to every rule. Unknown names are a mistake of the code and raise `KeyError`.

    `refused` names overrides that no rule allows (an old value after a range was narrowed); the default acts instead.
    """

    __slots__ = ("_values", "refused")

    def __init__(self, overrides: Mapping[str, RuleValue] | Iterable[tuple[str, RuleValue]] = ()) -> None:
        known = catalogue()
        values: dict[str, RuleValue] = {name: rule.value for name, rule in known.items()}
        refused = []
        for name, value in dict(overrides).items():
            try:
                values[name] = check(name, value)
            except RuleError:
                refused.append(name)
        self._values = values
        self.refused = tuple(refused)

    def number(self, name: str) -> float:
        """A number, in the unit that the rule names."""
        value = self._values[name]
        if isinstance(value, (bool, str)):
            raise TypeError(f"{name} is no number")
        return float(value)

    def whole(self, name: str) -> int:
        """A whole number."""
        value = self._values[name]
        if isinstance(value, bool) or not isinstance(value, int):
            raise TypeError(f"{name} is no whole number")
        return value

    def text(self, name: str) -> str:
        value = self._values[name]
        if not isinstance(value, str):
            raise TypeError(f"{name} is no word")
        return value

    def flag(self, name: str) -> bool:
        value = self._values[name]
        if not isinstance(value, bool):
            raise TypeError(f"{name} is no switch")
        return value

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Rules) and self._values == other._values

    def __hash__(self) -> int:
        return hash(tuple(sorted(self._values.items())))


def rules_of(athlete: Athlete) -> Rules:
    """The rules that act for one athlete."""
    return default_rules() if not athlete.rules else Rules(athlete.rules)


@cache
def default_rules() -> Rules:
    return Rules()


def check(name: str, value: object) -> RuleValue:
    """The value as rule `name` keeps it: for settings, rosters and a coach's message.

    Raises:
        RuleError: No such rule, or a value it may not take.
    """
    rule = catalogue().get(name)
    if rule is None:
        raise RuleError(f"{name}: no such rule")
    return rule.check(value)


@cache
def catalogue() -> Mapping[str, Rule]:
    """Every rule of `rules.toml`, by name."""
    return read(DEFAULTS.read_text(encoding="utf-8"), DEFAULTS.name)


def read(text: str, file: str) -> dict[str, Rule]:
    """Rules from TOML text; `file` is named in errors.

    Raises:
        RuleError: File, line, rule and key of the first thing that is wrong.
    """
    try:
        sections = tomli.loads(text)
    except tomli.TOMLDecodeError as error:
        raise RuleError(f"{file}: {error}") from error
    found = {}
    for section, tables in sections.items():
        for key, table in tables.items() if isinstance(tables, dict) else ((None, tables),):
            name = section if key is None else f"{section}.{key}"
            try:
                found[name] = _rule(name, table)
            except RuleError as error:
                raise RuleError(f"{file}, line {_line_of(text, name)}: {error}") from None
    return found


def _rule(name: str, table: object) -> Rule:
    if not isinstance(table, dict) or "." not in name:
        raise RuleError(f"{name}: a rule is a table [section.name]")
    for key in table.keys() - _KEYS:
        raise RuleError(f"{name}: unknown key {key!r}")
    for key in ("value", "source", "means"):
        if key not in table:
            raise RuleError(f"{name}: {key!r} is missing")
    value = table["value"]
    if not isinstance(value, (bool, int, float, str)):
        raise RuleError(f"{name}: 'value' must be a number, a word or a switch")
    low, high = None, None
    is_number = not isinstance(value, (bool, str))
    if is_number:
        bounds = table.get("range")
        if not (isinstance(bounds, list) and len(bounds) == 2 and bounds[0] <= bounds[1]):
            raise RuleError(f"{name}: 'range' must be [lowest, highest]")
        low, high = (float(bound) for bound in bounds)
    if isinstance(value, str) and not table.get("choices"):
        raise RuleError(f"{name}: 'choices' is missing")
    choices = tuple(table.get("choices", ()))
    unit = str(table.get("unit", ""))
    rule = Rule(name, value, unit, str(table["source"]), str(table["means"]), low, high, choices)
    rule.check(value)
    return rule


def _line_of(text: str, name: str) -> int:
    header = re.compile(rf"^\s*\[\s*{re.escape(name)}\s*\]|^\s*{re.escape(name.rsplit('.', 1)[-1])}\s*=", re.MULTILINE)
    match = header.search(text)
    return text.count("\n", 0, match.start()) + 1 if match else 1
