"""Reports by ways of telling sets: holds, clusters, ladders, sides, misses, mends (`tests/data/composed_sets/`), and
of telling a day against its plan (`tests/data/composed_plans/`).

`ways.toml` says once for all languages what a way tells, in the notation of golds; a language's file has its phrases.
A phrase's slots: `{n}` a number, `{n_}` the same in words, `{with_x}` a load as people write it, `{m}`, `{m2}` lifts.
"""

from __future__ import annotations

import random
import re
import string
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import tomli

from tests.corpus.composed import DECIMAL_COMMA, PACKS
from tests.corpus.notation import prescribed, sets

DATA = Path(__file__).parents[1] / "data"
SETS, PLANS = DATA / "composed_sets", DATA / "composed_plans"
STOPS = re.compile(r"(?<!\d)\.|\.(?!\d)")
HALVES = re.compile(r"(?<![\d,.])(\d+)[,.]5(?!\d|,\d)")  # told in a phrase itself
UNSIGNED = re.compile(r"[:;!?]|(?<!\d),|,(?!\s?\d)")  # what hasty people leave out


@dataclass(frozen=True)
class Told:
    """A report, the ways it tells its sets in, the plan it leans on, and the line to judge it by."""

    text: str
    ways: tuple[str, ...]
    line: dict[str, Any]


class Teller:
    """Reports of one language, told in the ways of a folder, drawn by a seed."""

    def __init__(self, language: str, seed: int, folder: Path = SETS) -> None:
        self._chance = random.Random(seed)
        self._language = language
        self._around: dict[str, Any] = _toml(PACKS / f"{language}.toml")
        self._words: dict[str, Any] = _toml(SETS / f"{language}.toml")
        self._phrases: dict[str, list[str]] = _toml(folder / f"{language}.toml")["say"]
        self._names = self._around | self._words["names"]
        ways = _toml(folder / "ways.toml")
        self._slots: dict[str, list[float]] = ways.pop("slots")
        self._derived: dict[str, tuple[str, float]] = ways.pop("derived", {})
        self._ways: dict[str, dict[str, Any]] = ways
        self._needed = re.compile("|".join(self._words["needed"]))
        self._comma_share = DECIMAL_COMMA.get(language, 0.0)
        self._comma = False

    @property
    def ways(self) -> list[str]:
        """The names of all ways, in their order."""
        return list(self._ways)

    def one(self, way: str) -> Told:
        """A report of one exercise or day told in this way, nothing around it."""
        self._choose_sign()
        text, gold = self._told(way)
        return self._as_line(text, (way,), gold, self._ways[way])

    def framed(self, way: str) -> Told:
        """The same with talk around it, and often another exercise before or behind it."""
        ways, told = self._with_another(way, 0.6)
        apart = self._ways[way]
        text = self._chance.choice(self._around["join"]).join(text for text, _ in told)
        behind = "" if "rated" in way or "range" in way or "reserve" in way else self._say("behind")
        text = (self._say("before") + text + behind).strip()
        if self._chance.random() < 0.2:
            text = text.lower()
        return self._as_line(text, tuple(ways), [s for _, gold in told for s in gold], apart)

    def hasty(self, way: str) -> Told:
        """A report in small letters, without signs that a reader does not need; those of `needed` stay."""
        self._choose_sign()
        text, gold = self._told(way)
        return self._as_line(self._unsigned(text), (way,), gold, self._ways[way])

    def run_on(self, way: str) -> Told:
        """Two exercises told in haste, one behind the other, with talk around them, and no sign between."""
        ways, told = self._with_another(way, 1.0)
        then = self._chance.choice([" ", " ", "\n", f" {self._words['then']} "])
        text = then.join(text for text, _ in told)
        behind = "" if "rated" in way or "range" in way or "reserve" in way else self._say("behind")
        text = (self._say("before") + text + behind).replace(" :)", "")
        text = self._unsigned(text if "..." in text else STOPS.sub("", text)).strip()
        return self._as_line(text, tuple(ways), [s for _, gold in told for s in gold], self._ways[way])

    def _with_another(self, way: str, share: float) -> tuple[list[str], list[tuple[str, list[dict[str, Any]]]]]:
        """The way, in a share of cases with another before or behind it, and what they tell."""
        self._choose_sign()
        ways = [way]
        if not self._stands_alone(way) and self._chance.random() < share:
            others = [name for name in self._ways if not self._stands_alone(name) and name != way]
            ways.insert(self._chance.randrange(2), self._chance.choice(others))
        told = [self._told(name) for name in ways]
        if len(told) == 2 and {s["movement"] for s in told[0][1]} & {s["movement"] for s in told[1][1]}:
            return self._with_another(
                way, share
            )  # the same exercise twice: whose set is whose would be another question
        return ways, told

    def _unsigned(self, text: str) -> str:
        text = text.lower()
        needed = {at for match in self._needed.finditer(text) for at in range(*match.span())}
        left_out = {match.start() for match in UNSIGNED.finditer(text)} - needed
        return "".join(sign for at, sign in enumerate(text) if at not in left_out)

    def _choose_sign(self) -> None:
        self._comma = self._chance.random() < self._comma_share  # one decimal sign a message

    def _stands_alone(self, way: str) -> bool:
        made = self._ways[way]
        return "plan" in made or made.get("alone", False) or "asks" in made or "unit" in made

    def _say(self, phrase: str) -> str:
        said: str = self._chance.choice(self._around[phrase])
        return said

    def _told(self, way: str) -> tuple[str, list[dict[str, Any]]]:
        made = self._ways[way]
        phrase = HALVES.sub(r"\1,5" if self._comma else r"\1.5", self._chance.choice(self._phrases[way]))
        values = {name: self._chance.choice(among) for name, among in self._slots.items()}
        values |= {name: values[base] + step for name, (base, step) in self._derived.items()}
        said = {name: self._figure(value) for name, value in values.items()}
        lifts = self._lifts(made["lifts"])
        for number, (name, movement) in enumerate(lifts, 1):
            mark = "" if number == 1 else str(number)
            said |= {f"m{mark}": name}
            values |= {f"id{mark}": movement}
        asked = [name for _, name, _, _ in string.Formatter().parse(phrase) if name]
        for slot in asked:
            if slot.startswith("with_"):
                said[slot] = self._chance.choice(self._around["load"]).format(said[slot[5:]])
            elif slot.endswith("_"):
                said[slot] = self._spelled(values[slot[:-1]])
        self._values = {
            name: f"{value:g}" if isinstance(value, (int, float)) else value for name, value in values.items()
        }
        gold = sets(made["sets"].format(**self._values))
        if "last" in made:
            gold[_last_of(gold, lifts[0][1])] = sets(made["last"].format(**self._values))[0]
        return phrase.format(**said), gold

    def _lifts(self, tables: list[str]) -> list[tuple[str, str]]:
        found: list[tuple[str, str]] = []
        for table in tables:
            among = sorted(self._names[table].keys() - {movement for _, movement in found})
            movement = self._chance.choice(among)
            found.append((self._chance.choice(self._names[table][movement]), movement))
        return found

    def _figure(self, value: float) -> str:
        return f"{value:g}".replace(".", ",") if self._comma else f"{value:g}"

    def _spelled(self, value: Any) -> str:
        tens: dict[str, str] = self._words["tens"]
        spelled: list[str] = self._words["spelled"]
        return tens[f"{value}"] if f"{value}" in tens else spelled[value]

    def _as_line(self, text: str, ways: tuple[str, ...], gold: list[dict[str, Any]], made: dict[str, Any]) -> Told:
        asks = [{"about": made["asks"]}] if "asks" in made else []
        said = {
            "text": text,
            "sent_at": "2027-05-20T19:00:00+02:00",
            "timezone": "Europe/Zurich",
            "unit": made.get("unit", "kg"),
            "language": self._language,
            "bodyweight_kg": 75,
            "today": prescribed(made["plan"].format(**self._values)) if "plan" in made else None,
        }
        line: dict[str, Any] = {"id": "-".join(ways), "in": said, "gold": {"sets": gold, "ask": asks}}
        if "either" in made:
            line["either"] = {"sets": [sets(one.format(**self._values)) for one in made["either"]]}
        return Told(text, ways, line)


def _last_of(gold: list[dict[str, Any]], movement: str) -> int:
    return max(at for at, one in enumerate(gold) if one["movement"] == movement)


def _toml(path: Path) -> dict[str, Any]:
    return tomli.loads(path.read_text(encoding="utf-8"))
