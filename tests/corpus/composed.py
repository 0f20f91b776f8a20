"""Reports put together of phrases, each with the sets that it tells by construction: `tests/data/composed/*.toml`.

A report is one or two exercises told in one of a dozen ways, free or against a day's plan. What nobody wrote by hand
turns up here: two notations beside one another, a number behind every word that may have one.
"""

from __future__ import annotations

import random
from collections.abc import Collection
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

import tomli

from planner.facts import PlannedSet

PACKS = Path(__file__).parents[1] / "data" / "composed"
DECIMAL_COMMA = {"de": 0.75, "es": 0.75}  # how many of a language write one
LOADS = (12.5, 15, 17.5, 20, 22.5, 25, 27.5, 30)  # none that could be an effort


@dataclass(frozen=True)
class Done:
    """One set as told; loads in kg."""

    movement: str
    reps: int
    load_kg: float = 0.0
    rpe: float | None = None
    side: str | None = None


@dataclass(frozen=True)
class Planned:
    movement: str
    part: str
    sets: int
    reps: int
    load_kg: float
    sided: bool = False

    def rows(self) -> list[PlannedSet]:
        """As the day's plan has them."""
        rpe = 8.0 if self.part == "main" else None
        return [
            PlannedSet(self.movement, self.part, self.reps, side=side, load_kg=self.load_kg, rpe=rpe)
            for side in self._sides()
        ]

    def done(self) -> list[Done]:
        return [Done(self.movement, self.reps, self.load_kg, side=side) for side in self._sides()]

    def _sides(self) -> list[str | None]:
        return ["left", "right"] * self.sets if self.sided else [None] * self.sets


class Composer:
    """Reports of one language, drawn by a seed."""

    def __init__(self, language: str, seed: int) -> None:
        self._chance = random.Random(seed)
        self._pack: dict[str, Any] = tomli.loads((PACKS / f"{language}.toml").read_text(encoding="utf-8"))
        self._comma_share = DECIMAL_COMMA.get(language, 0.0)
        self.comma = False

    def free(self) -> tuple[str, list[Done]]:
        """A report without a plan, and its sets."""
        self.comma = self._chance.random() < self._comma_share
        ways = (self._by_place, self._groups, self._set_by_set, self._top, self._sides, self._plain)
        told = [self._one(ways)() for _ in range(1 + (self._chance.random() < 0.4))]
        if len({one.movement for _, sets in told for one in sets}) < len(told):
            told = told[:1]  # the same exercise twice: whose set is whose would be another question
        text = self._say("before") + self._say("join").join(text for text, _ in told) + self._say("behind")
        return text.strip(), [one for _, sets in told for one in sets]

    def plainly(self) -> tuple[list[str], list[Done]]:
        """One exercise or two, each told in a plain way and with nothing around it, and their sets."""
        self.comma = self._chance.random() < self._comma_share
        told = [self._plain() for _ in range(1 + (self._chance.random() < 0.5))]
        if len({one.movement for _, sets in told for one in sets}) < len(told):
            told = told[:1]
        return [text for text, _ in told], [one for _, sets in told for one in sets]

    def planned(self, but: Collection[str] = ()) -> tuple[str, list[Planned], list[Done]]:
        """A report against a plan, the plan, and its sets; told in none of the ways `but`."""
        self.comma = self._chance.random() < self._comma_share
        while True:
            plan = self._plan()
            way = self._one(sorted(self._pack["told"].keys() - set(but)))
            made = getattr(self, f"_told_{way}", None)
            told = made(plan, self._one(plan)) if made else None
            if told is not None:
                return told[0], plan, told[1]

    # what a report is made of

    def _one(self, among: Any) -> Any:
        return self._chance.choice(among)

    def _say(self, phrase: str, *values: object, **named: object) -> str:
        said: str = self._one(self._pack[phrase]).format(*values, **named)
        return said

    def _figure(self, value: float) -> str:
        return f"{value:g}".replace(".", ",") if self.comma else f"{value:g}"

    def _load(self, kg: float) -> str:
        return self._say("load", self._figure(kg))

    def _lift(self, table: str) -> tuple[str, str]:
        movement = self._one(sorted(self._pack[table]))
        return self._one(self._pack[table][movement]), movement

    def _reps(self, low: int = 3, high: int = 8) -> int:
        return self._chance.randint(low, high)

    def _by_place(self) -> tuple[str, list[Done]]:
        """ "Dips 5x5, first three with 20, last two with 17.5"."""
        name, movement = self._lift("loaded")
        many, others = self._one([(1, 2), (1, 3), (2, 1), (2, 2), (2, 3), (3, 1), (3, 2), (3, 3)])
        kg, other_kg, reps = self._one(LOADS), self._one(LOADS), self._reps()
        fewer = max(2, reps - self._chance.randint(0, 2))
        first, last = self._one(self._pack["first"][str(many)]), self._one(self._pack["last"][str(others)])
        between, head = self._say("between"), self._one([", ", ": ", " - "])
        own, other = (self._pack["reps"][0].format(number) for number in (reps, fewer))
        scheme = self._say("scheme", n=many + others, r=reps)
        done = Done(movement, reps, kg)
        match self._chance.randrange(4):
            case 0:
                text = f"{name} {scheme}{head}{first} {self._load(kg)}{between}{last} {self._load(other_kg)}"
                return text, [done] * many + [replace(done, load_kg=other_kg)] * others
            case 1:
                text = f"{name} {self._load(kg)}{head}{first} {own}{between}{last} {other}"
                return text, [done] * many + [replace(done, reps=fewer)] * others
            case 2:
                loads = self._load(kg), self._load(other_kg)
                text = f"{name}{head}{first} {own} {loads[0]}{between}{last} {other} {loads[1]}"
                return text, [done] * many + [replace(done, reps=fewer, load_kg=other_kg)] * others
        low, high = self._one([6, 6.5, 7, 7.5]), self._one([8, 8.5, 9])
        efforts = [self._say("effort", self._figure(value)) for value in (low, high)]
        text = f"{name} {scheme} {self._load(kg)}{head}{first} {efforts[0]}{between}{last} {efforts[1]}"
        return text, [replace(done, rpe=float(low))] * many + [replace(done, rpe=float(high))] * others

    def _groups(self) -> tuple[str, list[Done]]:
        """ "Dips 3x5 with 20, then 2x6 with 17.5"."""
        name, movement = self._lift("loaded")
        sets = [(self._chance.randint(2, 4), self._reps(), self._one(LOADS)) for _ in range(2)]
        between = self._say("between")
        match self._chance.randrange(3):
            case 0:
                told = [f"{self._say('scheme', n=many, r=reps)} {self._load(kg)}" for many, reps, kg in sets]
            case 1:
                told = [f"{self._say('counted', n=many, r=reps)} {self._load(kg)}" for many, reps, kg in sets]
            case _:
                told = [f"{self._load(kg)} {self._say('scheme', n=many, r=reps)}" for many, reps, kg in sets]
        done = [Done(movement, reps, kg) for many, reps, kg in sets for _ in range(many)]
        return f"{name} {between.join(told)}", done

    def _set_by_set(self) -> tuple[str, list[Done]]:
        """ "Dips with 20. Set 1: 5, set 2: 4", "12.5kg x 5, 15kg x 4"."""
        name, movement = self._lift("loaded")
        many, kg = self._chance.randint(3, 5), self._one(LOADS)
        reps = [self._reps() for _ in range(many)]
        rising = [10 + 2.5 * step for step in range(many)]
        done = [Done(movement, each, kg) for each in reps]
        match self._chance.randrange(6):
            case 0:
                return f"{name} {self._load(kg)}: {self._one([', ', '/', ' ']).join(map(str, reps))}", done
            case 1:
                told = [f"{self._figure(load)}kg x {each}" for each, load in zip(reps, rising, strict=True)]
                done = [Done(movement, each, load) for each, load in zip(reps, rising, strict=True)]
                return f"{name}: {', '.join(told)}", done
            case 2:
                marks = [f"{word}{self._one([': ', ' '])}" for word in self._pack["numbered"]]
                told = [f"{mark}{each}" for mark, each in zip(marks, reps, strict=False)]
                return f"{name} {self._load(kg)}. {self._one([', ', '; ', chr(10)]).join(told)}", done
            case 3:
                told = [f"{word} {each}" for word, each in zip(self._pack["ordinal"], reps, strict=False)]
                return f"{name} {self._load(kg)}, {', '.join(told)}", done
            case 4:
                loads = self._one(["/", " / "]).join(self._figure(load) for load in rising)
                text = f"{name} {self._say('counted', n=many, r=reps[0])}, {self._say('weights', loads)}"
                return text, [Done(movement, reps[0], load) for load in rising]
        return f"{self._one([', ', '/']).join(map(str, reps))} {name} {self._load(kg)}", done

    def _top(self) -> tuple[str, list[Done]]:
        """ "Dips: top single with 35 @9, then 3x5 with 20"."""
        name, movement = self._lift("loaded")
        heavy, lighter = self._one([30, 32.5, 35]), self._one([15, 17.5, 20])
        many, reps = self._chance.randint(2, 4), self._chance.randint(4, 6)
        rpe = self._one([None, None, 8.0, 8.5, 9.0])
        effort = f" {self._say('effort', self._figure(rpe))}" if rpe else ""
        back = self._say("back", n=many, r=reps, l=self._load(lighter), x=self._figure(lighter))
        text = f"{name}: {self._say('top')} {self._load(heavy)}{effort}, {back}"
        return text, [Done(movement, 1, heavy, rpe), *[Done(movement, reps, lighter)] * many]

    def _sides(self) -> tuple[str, list[Done]]:
        """ "Pistols: left 3, 2; right 2, 2", "3 left 2 right"."""
        name, movement = self._lift("one_sided")
        many = self._chance.randint(2, 3)
        left, right = ([self._chance.randint(1, 5) for _ in range(many)] for _ in range(2))
        lefts = [Done(movement, each, side="left") for each in left]
        rights = [Done(movement, each, side="right") for each in right]
        match self._chance.randrange(3):
            case 0:
                mark = self._one([", ", " ", "/"])
                a, b = (mark.join(map(str, side)) for side in (left, right))
                return self._say("sides", m=name, a=a, b=b), lefts + rights
            case 1:
                pairs = [self._pack["pair"].format(*pair) for pair in zip(left, right, strict=True)]
                both = [one for pair in zip(lefts, rights, strict=True) for one in pair]
                return f"{name}: {', '.join(pairs)}", both
        each = [Done(movement, left[0], side=side) for _ in range(many) for side in ("left", "right")]
        return self._say("each", m=name, n=many, r=left[0]), each

    def _plain(self) -> tuple[str, list[Done]]:
        """ "4x5 dips with 20", "push-ups 3x12"."""
        name, movement = self._lift("loaded")
        many, reps, kg = self._chance.randint(2, 5), self._reps(), self._one(LOADS)
        scheme, counted = self._say("scheme", n=many, r=reps), self._say("counted", n=many, r=reps)
        done = [Done(movement, reps, kg)] * many
        match self._chance.randrange(5):
            case 0:
                return f"{scheme} {name} {self._load(kg)}", done
            case 1:
                return f"{name} {self._load(kg)}, {counted}", done
            case 2:
                return f"{name} {self._figure(kg)} kg {scheme}", done
            case 3:
                return f"{counted} {name} {self._load(kg)}", done
        name, movement = self._lift("unloaded")
        return f"{name} {self._say('scheme', n=many, r=reps + 4)}", [Done(movement, reps + 4)] * many

    # against a plan

    def _plan(self) -> list[Planned]:
        plan = [Planned("archer_ring_elbow", "skill", 2, 2, 0.0, True)] if self._chance.random() < 0.3 else []
        main = self._one(["pull_up", "chin_up"])
        sets, reps, kg = self._chance.randint(3, 5), self._chance.randint(3, 6), self._one([10.0, 15.0, 20.0, 25.0])
        plan.append(Planned(main, "main", sets, reps, kg))
        if self._chance.random() < 0.85:
            kg = self._one([0.0, 10.0, 15.0])
            plan.append(Planned("dip", "accessory", 3, self._chance.randint(6, 10), kg))
        if self._chance.random() < 0.6:
            other = self._one(["ring_row", "push_up", "hanging_leg_raise", "face_pull"])
            plan.append(Planned(other, "accessory", 3, self._chance.randint(10, 15), 0.0))
        return plan

    def _tell(self, way: str, plan: list[Planned], changed: Planned, done: list[Done], **values: object) -> Told:
        said = self._one(self._pack["told"][way]).format(m=self._one(self._pack["planned"][changed.movement]), **values)
        return said, [one for planned in plan for one in (done if planned is changed else planned.done())]

    def _told_all(self, plan: list[Planned], one: Planned) -> Told:
        return self._tell("all", plan, one, one.done())

    def _told_but(self, plan: list[Planned], one: Planned) -> Told | None:
        return None if one.part == "main" or len(plan) == 1 else self._tell("but", plan, one, [])

    def _told_only(self, plan: list[Planned], one: Planned) -> Told | None:
        return None if len(plan) == 1 else (self._tell("only", plan, one, [])[0], one.done())

    def _told_short(self, plan: list[Planned], one: Planned) -> Told | None:
        reps = one.reps - self._chance.randint(1, 2)
        done = [*one.done()[:-1], Done(one.movement, reps, one.load_kg)]
        return None if one.sided else self._tell("short", plan, one, done, r=reps)

    def _told_load(self, plan: list[Planned], one: Planned) -> Told | None:
        kg = one.load_kg + self._one([2.5, 5])
        if not one.load_kg or len(plan) == 1:
            return None
        done = [replace(each, load_kg=kg) for each in one.done()]
        return self._tell("load", plan, one, done, x=self._figure(kg), l=self._figure(one.load_kg))

    def _told_listed(self, plan: list[Planned], one: Planned) -> Told | None:
        reps = [one.reps - self._one([0, 0, 1, 2]) for _ in range(one.sets)]
        rest, told = self._one(self._pack["told"]["rest"]), self._one([" ", ", ", "/"]).join(map(str, reps))
        done = [Done(one.movement, each, one.load_kg) for each in reps]
        return None if one.sided or len(plan) == 1 else self._tell("listed", plan, one, done, s=told, o=rest)

    def _told_fewer(self, plan: list[Planned], _: Planned) -> Told | None:
        if len(plan) != 2 or plan[0].part != "main":
            return None
        main, other = plan
        name = self._one(self._pack["planned"][other.movement])
        said, _done = self._tell("fewer", plan, main, main.done(), k=name, n=other.sets - 1)
        return said, main.done() + other.done()[:-1]

    def _told_turned(self, plan: list[Planned], one: Planned) -> Told | None:
        first = one.sets - 2
        if len(plan) > 1 or first < 2:
            return None
        kg = one.load_kg - self._one([2.5, 5])
        done = [*one.done()[:first], *(replace(each, load_kg=kg) for each in one.done()[first:])]
        return self._tell("turned", plan, one, done, a=first, b=2, x=self._figure(kg))

    def _told_more(self, plan: list[Planned], one: Planned) -> Told | None:
        return None if one.sided else self._tell("more", plan, one, [*one.done(), one.done()[-1]])

    def _told_less(self, plan: list[Planned], one: Planned) -> Told | None:
        return None if one.sided or len(plan) == 1 else self._tell("less", plan, one, one.done()[:-1])

    def _told_rated(self, plan: list[Planned], one: Planned) -> Told | None:
        rpe = self._one([7, 8, 9])
        done = [*one.done()[:-1], replace(one.done()[-1], rpe=float(rpe))]
        return None if one.sided else self._tell("rated", plan, one, done, e=rpe)


Told = tuple[str, list[Done]]
