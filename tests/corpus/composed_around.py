"""Whole messages by construction: a simple report, and one to three things around it (`tests/data/composed_around/`).

What was told beside the sets must neither become a set nor get lost: pain, signs, sleep, days, wishes, other people's
numbers, talk. The judgement is the corpora's own (`score.judge`).

A phrase's keys are `say` (wordings with slots), what they say, and where they stand: `pain` ("site side score when"),
`sign` ("sign site side"), `weight`, `sleep`, `effort`, `minutes`, `on`, `dates` (an empty list: any), `intents`, `also`
(other intents as good), `perhaps` (intents that may be there); `where`, `glue`, `last` (closes the message), `only`
(free reports only).
"""

from __future__ import annotations

import itertools
import random
import re
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import tomli

from tests.corpus.composed import DECIMAL_COMMA, Composer, Done, Planned

PACKS = Path(__file__).parents[1] / "data" / "composed_around"
SENT_ON = "2027-05-20"  # a Thursday; the days of the packs are counted from it
SLOTS = ("place", "inside", "many", "sign")
FIELDS = {"weight": "bodyweight_kg", "sleep": "sleep_h", "effort": "session_rpe", "minutes": "duration_min"}
PLACES = ("front", "between", "behind")
OPEN = ("rated",)  # "the last set of dips was a 9" of planned tens: asked, whatever stands around it
SHARES = {
    "day": "where",
    "pain": "body",
    "no_pain": "body",
    "flag": "body",
}  # one of each: two would be one more question


@dataclass(frozen=True)
class Whole:
    """A message, the wordings around its report, by kind, the plan that it leans on, and the line to judge it by."""

    text: str
    kinds: tuple[str, ...]
    plan: list[Planned] | None
    line: dict[str, Any]


class Around:
    """Whole messages of one language, drawn by a seed."""

    def __init__(self, language: str, seed: int) -> None:
        self._chance = random.Random(seed)
        self._pack: dict[str, Any] = tomli.loads((PACKS / f"{language}.toml").read_text(encoding="utf-8"))
        self._composer = Composer(language, seed)
        self._comma_share = DECIMAL_COMMA.get(language, 0.0)
        self.kinds = [name for name, value in self._pack.items() if isinstance(value, list)]

    def whole(self, kind: str, planned: bool, most: int = 3) -> Whole:
        """A report with something of this kind, and perhaps others, around it; at most `most` of them."""
        comma = self._chance.random() < self._comma_share
        things = self._things(kind, planned, most, comma)
        while True:
            parts, plan, done = self._report(planned, comma)
            of_today = self._pack["today"] in " ".join(parts).lower()
            # no other day beside "only dips today", and no load told of an exercise that has none
            if not (of_today and any("on" in one for one in things)) and not (
                not done[-1].load_kg and any("{x}" in one["wording"] for one in things)
            ):
                break
        line: dict[str, Any] = {"id": "composed", "in": {"text": ""}, **_gold(done, things)}
        line["in"]["text"] = self._text(parts, things)
        return Whole(line["in"]["text"], tuple(f"{one['kind']}: {one['wording']}" for one in things), plan, line)

    def _report(self, planned: bool, comma: bool) -> tuple[list[str], list[Planned] | None, list[Done]]:
        """The report's parts, its plan and its sets; its numbers are written as those of the things around it."""
        while True:
            if planned:
                told, plan, done = self._composer.planned(OPEN)
                parts: list[str] = [told]
            else:
                parts, done, plan = *self._composer.plainly(), None
            if not re.search(r"\d[,.]\d", " ".join(parts)) or self._composer.comma == comma:
                return parts, plan, done

    def _things(self, kind: str, planned: bool, most: int, comma: bool) -> list[dict[str, Any]]:
        kinds, taken = [kind], {SHARES.get(kind, kind)}
        others = [name for name in self.kinds if name != kind]
        for other in self._chance.sample(others, self._chance.choice(range(most))):
            if SHARES.get(other, other) not in taken:
                kinds.append(other)
                taken.add(SHARES.get(other, other))
        drawn = []
        for name in kinds:
            among = [one for one in self._pack[name] if not (planned and one.get("only") == "free")]
            if among:
                drawn.append(self._filled(name, self._chance.choice(among), comma))
        if sum("dates" in one for one in drawn) > 1 or sum("last" in one for one in drawn) > 1:
            drawn = drawn[:1]  # two spans of days, or two closing questions
        return drawn

    def _filled(self, kind: str, phrase: dict[str, Any], comma: bool) -> dict[str, Any]:
        said: dict[str, str] = {}
        meant: dict[str, str] = {}
        wording = self._chance.choice(phrase["say"])
        for slot in re.findall(r"\{(\w+)\}", wording):
            if slot in SLOTS:
                said[slot], meant[slot] = self._chance.choice(list(self._pack[slot].items()))
            else:
                value = self._chance.choice(self._pack["numbers"][slot])
                meant[slot] = f"{value:g}"
                said[slot] = meant[slot].replace(".", ",") if comma else meant[slot]
        words = wording.format(**said)
        empty = dict.fromkeys((*SLOTS, *self._pack["numbers"]), "")
        says = {
            key: _put(value, {**empty, **meant}) for key, value in phrase.items() if key not in ("say", "where", "glue")
        }
        where = phrase.get("where", ["behind"] if phrase.get("last") else PLACES)
        return {**says, "kind": kind, "words": words, "wording": wording, "where": where, "glue": phrase.get("glue")}

    def _text(self, parts: list[str], things: list[dict[str, Any]]) -> str:
        """The parts of the report with the things in front, between, behind; what closes a message stands last."""
        glue, front, between, behind = self._pack["glue"], "", list(parts[:1]), []
        for one in things:
            where = self._chance.choice([place for place in one["where"] if place != "between" or len(parts) > 1])
            if where == "front":
                end = self._chance.choice(one["glue"] or glue["front"])
                sentence = one["words"] + (" " if one["words"][-1] in "!?" and end[0] in ".," else end)
                front = front + sentence if one["glue"] is None else sentence + front
            elif where == "between":
                between.append(self._chance.choice(glue["behind"]) + one["words"])
            else:
                behind.append(one)
        behind.sort(key=lambda one: bool(one.get("last")))
        for part in parts[1:]:
            between.append(self._chance.choice(glue["sentence"]) + part)
        for one in behind:
            between.append(self._chance.choice(glue["sentence" if one.get("last") else "behind"]) + one["words"])
        text = front + "".join(between)
        return self._as_written(text)

    def _as_written(self, text: str) -> str:
        """With capitals where sentences begin, or without: people do both."""
        if self._chance.random() < 0.5:
            return text
        return re.sub(r"(^|(?<!\d)[.!?] |\n)([a-zäöüáéíóú])", lambda found: found[1] + found[2].upper(), text)


def _put(value: Any, meant: dict[str, str]) -> Any:
    if isinstance(value, list):
        return [_put(one, meant) for one in value]
    return value.format(**meant) if isinstance(value, str) else value


def _gold(done: list[Done], things: list[dict[str, Any]]) -> dict[str, Any]:
    """What the message says, by the contract; `either` holds the intents that are as good."""
    gold: dict[str, Any] = dict.fromkeys((*FIELDS.values(), "dates", "correction"))
    gold |= {"ask": [], "performed_on": SENT_ON, "red_flags": [], "pain": [], "sets": [_as_set(one) for one in done]}
    said: list[list[tuple[str, ...]]] = [[("report",)]]
    for one in things:
        gold |= {FIELDS[key]: float(one[key]) for key in FIELDS if key in one}
        gold["performed_on"] = one.get("on", gold["performed_on"])
        if one.get("dates"):
            gold["dates"] = dict(zip(("from", "to"), one["dates"], strict=True))
        gold["pain"] += [entry for told in one.get("pain", []) for entry in _pains(told)]
        if "sign" in one:
            sign, site, side = one["sign"].split()
            gold["red_flags"].append(sign)
            gold["pain"] += _pains(f"{site} {side} - *") if site != "-" else []
        if gold["pain"] or (gold["red_flags"] and gold["red_flags"] != ["fever"]):
            said.append([("pain",)])
        if "weight" in one:
            said.append([("bodyweight",)])
        if "intents" in one or "perhaps" in one:
            said.append([tuple(way) for way in (one.get("intents", []), *one.get("also", []))])
        said += [[(), (intent,)] for intent in one.get("perhaps", [])]
    ways = [sorted({name for part in way for name in part}) for way in itertools.product(*said)]
    gold["intents"] = ways[0]
    either: dict[str, list[Any]] = {"intents": ways[1:]}
    if any("perhaps" in one and one.get("dates") for one in things):
        either["dates"] = [None]  # a question about a day may carry it
    if any(one.get("dates") == [] for one in things):
        del gold["dates"]
    return {"gold": gold, "either": either}


def _pains(told: str) -> list[dict[str, Any]]:
    """The entries of "elbow left,elbow right 3 after"; "*" for when: not said for certain."""
    entries = []
    for one in (parts := told.split(","))[:-1]:
        entries.append(f"{one} {' '.join(parts[-1].split()[2:])}")
    found = []
    for entry in [*entries, parts[-1]]:
        site, side, score, when = (None if word == "-" else word for word in entry.split())
        found.append({"site": site, "side": side, "score": float(score) if score else None, "when": when})
        if when == "*":
            del found[-1]["when"]
    return found


def _as_set(one: Done) -> dict[str, Any]:
    rest = {"hold_s": None, "assist_kg": 0.0, "rom": "full", "eccentric": False, "pauses": [], "failed": False}
    return {**vars(one), **rest, "on": None}
