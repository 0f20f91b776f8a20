"""The message catalogues: Fluent files by language, English where a language lacks a sentence."""

from __future__ import annotations

from contextlib import suppress
from datetime import date, time
from functools import lru_cache
from pathlib import Path
from typing import Any

from babel import Locale, UnknownLocaleError
from babel.dates import format_date, format_time
from babel.numbers import format_decimal
from fluent.runtime import FluentBundle, FluentResource

from planner.units import lb_from_kg

CATALOGUES = Path(__file__).parent
FALLBACK = "en"


class NoSuchSentence(KeyError):
    """No catalogue has this sentence: a fault of the program, never of a person."""


class Wording:
    """Sentences of one language, loads in one unit; numbers and days by `locale`, a BCP 47 tag ("17.5" in es-MX)."""

    def __init__(self, language: str, unit: str = "kg", locale: str | None = None) -> None:
        self.language, self.unit = language, unit
        self._locale = _locale(locale or language)
        self._bundles = [_bundle(name) for name in dict.fromkeys((language, FALLBACK))]

    def has(self, key: str) -> bool:
        return any(bundle.has_message(key) for bundle in self._bundles)

    def say(self, key: str, **values: Any) -> str:
        """The sentence, its slots filled.

        Raises:
            NoSuchSentence: No catalogue has it.
        """
        # What people wrote, and whatever else is long, is said once and not kept.
        if any(isinstance(value, str) and len(value) > SHORT for value in values.values()):
            return self._made(key, values)
        return _said(self, key, tuple((name, type(value), value) for name, value in values.items()))

    def _made(self, key: str, values: dict[str, Any]) -> str:
        for bundle in self._bundles:
            if bundle.has_message(key):
                pattern = bundle.get_message(key).value
                assert pattern is not None
                shown = {name: self._value(value) for name, value in values.items()}
                # The formatter gives up on texts that are too long for it; they are put in once it is done.
                long = {f"\ue000{name}\ue001": value for name, value in shown.items() if _is_long(value)}
                shown |= {mark[1:-1]: mark for mark in long}
                said = str(bundle.format_pattern(pattern, shown)[0])
                for mark, value in long.items():
                    said = said.replace(mark, value)
                return said
        raise NoSuchSentence(key)

    def _value(self, value: Any) -> Any:
        if isinstance(value, bool):
            return "yes" if value else "no"
        if isinstance(value, date):
            return self.day(value)
        if isinstance(value, float):
            return self.number(value)
        return value

    def number(self, value: float, places: int = 2) -> str:
        """17.5 or 17,5: as many decimals as needed, `places` at most."""
        return _number(round(value, places), self._locale)

    def load(self, kg: float) -> str:
        """A load in the person's unit, with the unit."""
        value = lb_from_kg(kg) if self.unit == "lb" else kg
        return f"{self.number(value, 1 if self.unit == 'lb' else 2)} {self.unit}"

    def about(self, kg: float) -> str:
        """An estimate, without a precision that it has not."""
        value = lb_from_kg(kg) if self.unit == "lb" else kg
        return f"{self.number(round(value), 0)} {self.unit}"

    def day(self, day: date) -> str:
        """ "Mon 4 Jan", as the language writes it."""
        return _day(day, self.say("day-pattern"), self._locale)

    def long_day(self, day: date) -> str:
        return _day(day, self.say("long-day-pattern"), self._locale)

    def hour(self, at: time) -> str:
        return str(format_time(at, "HH:mm", locale=self._locale))

    def movement(self, movement_id: str) -> str:
        key = f"movement-{movement_id}"
        return self.say(key) if self.has(key) else movement_id.replace("_", " ")

    def quoted(self, text: str) -> str:
        return self.say("quoted", text=text)

    def listed(self, parts: list[str]) -> str:
        return ", ".join(parts)


LONG = 2000


def _is_long(value: Any) -> bool:
    return isinstance(value, str) and len(value) > LONG


# Of a morning's plans most words and numbers come in many of them, and making one takes longer than finding it.
OFTEN = 4096
SHORT = 40


@lru_cache(maxsize=OFTEN)
def _said(say: Wording, key: str, values: tuple[tuple[str, type, Any], ...]) -> str:
    """`values` with their types: 1, 1.0 and True are equal, and not said alike."""
    return say._made(key, {name: value for name, _, value in values})


@lru_cache(maxsize=OFTEN)
def _number(value: float, locale: Locale) -> str:
    return str(format_decimal(value, format="#,##0.###", locale=locale))


@lru_cache(maxsize=OFTEN)
def _day(day: date, form: str, locale: Locale) -> str:
    return str(format_date(day, form, locale=locale))


@lru_cache(maxsize=64)
def wording_for(language: str, unit: str = "kg") -> Wording:
    """The wording for a BCP 47 tag: the language itself, its base ("de" for "de-AT"), else English (RFC 4647)."""
    known = languages()
    parts = language.split("-")
    while parts:
        if "-".join(parts) in known:
            return Wording("-".join(parts), unit, language)
        parts.pop()
    return Wording(FALLBACK, unit)


def _locale(tag: str) -> Locale:
    """The locale of a tag: itself, or the nearest above it that is known ("de" for "de-XX"), else English."""
    parts = tag.split("-")
    while parts:
        with suppress(UnknownLocaleError, ValueError):
            return Locale.parse("-".join(parts), sep="-")
        parts.pop()
    return Locale.parse(FALLBACK)


@lru_cache(maxsize=1)
def languages() -> frozenset[str]:
    return frozenset(path.name for path in CATALOGUES.iterdir() if path.is_dir() and any(path.glob("*.ftl")))


@lru_cache(maxsize=16)
def _bundle(language: str) -> FluentBundle:
    # No isolation marks round slots: they would stand in copied text and in the terminal.
    bundle = FluentBundle([language], use_isolating=False)
    for path in sorted((CATALOGUES / language).glob("*.ftl")):
        bundle.add_resource(FluentResource(path.read_text(encoding="utf-8")))
    return bundle
