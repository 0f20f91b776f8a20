"""Messages that lean on a day's plan, their golds right by construction: plans, changes, wordings of three languages.

    python -m tests.corpus.against_plan --count 300 --seed 7 --language de > lines.jsonl

A change is drawn with the plans that it makes sense for; it changes the plan's sets and fills the slots of a wording.
"""

from __future__ import annotations

import argparse
import copy
import json
from collections.abc import Callable, Sequence
from random import Random
from typing import Any

from tests.corpus import notation
from tests.corpus.generate import blank
from tests.corpus.plan_words import BY_CODE, PlanWords

Sets = list[dict[str, Any]]
Slots = dict[str, Any]
SENT_AT, ZONE, DAY = "2027-03-10T18:42:00+00:00", "Europe/London", "2027-03-10"

HEAVY = "m/weighted_pull_up pull_up 5x3 +20 @8"
CHINS = "m/weighted_pull_up chin_up 4x4 +20 @8"
DIPS = "m dip 4x8 +17.5 @8"
SINGLE = (HEAVY, CHINS, DIPS)
WARM = "w scapular_pull_up 2x8; m/weighted_pull_up pull_up 5x3 +25 @8"
TWO = "m/weighted_pull_up pull_up 4x6 +12.5 @7; a dip 3x10 +5"
THREE = "m/weighted_pull_up pull_up 4x6 +12.5 @7; a dip 3x10 +5; a face_pull 2x15 +15"
FULL = (
    "w scapular_pull_up 2x8; s/archer_elbow_full archer_ring_elbow 2x2 LR @7; m/weighted_pull_up pull_up 4x4 +17.5 @7; "
    "a dip 3x6 +15 @8"
)
ARM = "m/counterweight one_arm_counterweight 3x2 LR -10 @8"
ARMS = "m/counterweight one_arm_counterweight 3x3 LR -12.5 @8"
LEVER = "s/advanced_tuck_front_lever advanced_tuck_front_lever 4x10s @8"
PLANCHE = "s/tuck_planche tuck_planche 5x12s @8"
MIXED = "s/advanced_tuck_front_lever advanced_tuck_front_lever 4x10s @8; m/weighted_pull_up pull_up 4x4 +17.5 @8"
MANY = "m push_up 5x20"
EITHER = "m dip 5x18 +17.5"
MORE = (TWO, THREE, FULL)
LEFT_OUT = "movement side reps hold_s load_kg assist_kg rom eccentric pauses failed".split()


class Day:
    """One drawn plan with the sets done, and the slots of a wording."""

    def __init__(self, random: Random, words: PlanWords, plan: str) -> None:
        self.random, self.words = random, words
        self.today = notation.prescribed(plan)
        self.sets: Sets = [notation.one_set(**{k: s[k] for k in LEFT_OUT}) for s in self.today]
        self.parts = [s["part"] for s in self.today]
        self.slots: Slots = {}
        self.ask = False
        self.or_sets: list[Sets] = []  # as good beside a question
        self.or_told = False  # the sets told without a question are as good

    def of(self, movement: str) -> list[int]:
        return [k for k, s in enumerate(self.sets) if s["movement"] == movement]

    def main(self) -> list[int]:
        """The sets of the first movement that is no warm-up."""
        return self.of(next(s["movement"] for s, p in zip(self.sets, self.parts, strict=True) if p != "warm_up"))

    def moves(self) -> list[str]:
        found = dict.fromkeys(s["movement"] for s, p in zip(self.sets, self.parts, strict=True) if p != "warm_up")
        return list(found)

    def name(self, movement: str, tail: str = "") -> None:
        mv, the, dat = self.random.choice(self.words.names[movement])
        self.slots |= {f"mv{tail}": mv, f"the{tail}": the, f"dat{tail}": dat}

    def keep(self, where: Sequence[int]) -> None:
        self.sets = [self.sets[k] for k in sorted(where)]

    def drop(self, where: Sequence[int]) -> None:
        self.keep([k for k in range(len(self.sets)) if k not in where])

    def fewer(self, at: int) -> int:
        """Fewer reps than planned, not none."""
        planned = self.sets[at]["reps"]
        self.slots["old_n"] = planned
        return self.random.randint(max(1, planned - 3), planned - 1)

    def number(self, value: float) -> str:
        text = f"{value:g}"
        return text.replace(".", ",") if self.words is not BY_CODE["en"] else text

    def word(self, n: int) -> str:
        if n == 2 and self.words is BY_CODE["de"] and self.random.random() < 0.4:
            return "beiden"
        return self.words.numbers[n]


def done(day: Day) -> None:
    pass


def all_but(day: Day) -> None:
    movement = day.random.choice(day.moves())
    day.name(movement)
    day.drop(day.of(movement))


def only(day: Day) -> None:
    movement = day.random.choice(day.moves())
    day.name(movement)
    day.keep(day.of(movement))


def last(day: Day) -> None:
    """Fewer reps than 6, which "was a 7" could tell as an effort."""
    at = day.main()[-1]
    day.slots["n"] = day.sets[at]["reps"] = min(5, day.fewer(at))


def nth(day: Day) -> None:
    where = day.main()
    i = day.random.randint(2, len(where) - 1)
    day.slots |= {"i": i, "nth": day.words.nth[i]}
    day.slots["n"] = day.sets[where[i - 1]]["reps"] = day.fewer(where[i - 1])


def these(day: Day) -> None:
    where = day.main()
    i, j = sorted(day.random.sample(range(2, len(where) + 1), 2))
    n = day.fewer(where[0])
    day.slots |= {"i": i, "j": j, "nth": day.words.nth[i], "nth2": day.words.nth[j], "n": n}
    for k in (i, j):
        day.sets[where[k - 1]]["reps"] = n


def last_k(day: Day) -> None:
    where, k = day.main(), day.random.choice((2, 2, 3))
    n = day.fewer(where[0])
    day.name(day.sets[where[0]]["movement"])
    day.slots |= {"n": n, "k": k, "kw": day.word(k)}
    for at in where[-k:]:
        day.sets[at]["reps"] = n


def _last_k(day: Day, field: str, value: float) -> None:
    where = day.main()
    k = day.random.choice((2, len(where) - 2))
    day.slots |= {"fw": day.words.numbers[len(where) - k], "kw": day.word(k), "load": day.number(value)}
    for at in where[-k:]:
        day.sets[at][field] = value


def last_k_load(day: Day) -> None:
    _last_k(day, "load_kg", day.sets[day.main()[0]]["load_kg"] - day.random.choice((2.5, 5)))


def drop_reps(day: Day) -> None:
    _last_k(day, "reps", day.random.choice((15, 16, 12)))


def drop_both(day: Day) -> None:
    told = copy.deepcopy(day.sets)
    _last_k(day, "reps", 15)
    open_load = [s if s["reps"] == t["reps"] else t | {"load_kg": None} for s, t in zip(day.sets, told, strict=True)]
    for s, t in zip(day.sets, told, strict=True):
        s["reps"] = s["reps"] if s["reps"] == t["reps"] else None
    both = [s | ({"load_kg": None} if s["reps"] is None else {}) for s in day.sets]
    day.ask, day.or_sets = True, [open_load, both, []]


def _loaded(day: Day, where: Sequence[int], kg: float) -> None:
    day.slots |= {"old": day.number(day.sets[where[0]]["load_kg"]), "load": day.number(kg)}
    for at in where:
        day.sets[at]["load_kg"] = kg


def instead(day: Day) -> None:
    where = day.main()
    day.name(day.sets[where[0]]["movement"])
    _loaded(day, where, day.sets[where[0]]["load_kg"] + day.random.choice((-5, -2.5, 2.5, 5)))


def _shift(day: Day, sign: int) -> None:
    d = day.random.choice((2.5, 1.25, 5))
    day.slots["d"] = day.number(d)
    for s in day.sets:
        s["load_kg"] = s["load_kg"] + sign * d if s["load_kg"] else 0


def more(day: Day) -> None:
    _shift(day, 1)


def less(day: Day) -> None:
    _shift(day, -1)


def with_load(day: Day) -> None:
    movement = day.random.choice(("pull_up", "dip"))
    day.name(movement)
    where = day.of(movement)
    _loaded(day, where, day.sets[where[0]]["load_kg"] + day.random.choice((7.5, 10)))


def no_load(day: Day) -> None:
    movement = day.random.choice(("pull_up", "dip"))
    day.name(movement)
    for at in day.of(movement):
        day.sets[at]["load_kg"] = 0


def assist(day: Day) -> None:
    old = day.sets[0]["assist_kg"]
    new = old + day.random.choice((-2.5, 2.5, 5))
    day.slots |= {"old": day.number(old), "load": day.number(new)}
    for s in day.sets:
        s["assist_kg"] = new


def _side(day: Day) -> list[int]:
    side = day.random.choice(("left", "right"))
    other = {"left": "right", "right": "left"}[side]
    day.slots |= {"side": day.words.sides[side], "other": day.words.sides[other]}
    return [k for k, s in enumerate(day.sets) if s["side"] == side]


def side_less(day: Day) -> None:
    for at in _side(day):
        day.sets[at]["reps"] -= 1


def side_all(day: Day) -> None:
    where = _side(day)
    n = day.slots["n"] = day.fewer(where[0])
    for at in where:
        day.sets[at]["reps"] = n


def side_last(day: Day) -> None:
    at = _side(day)[-1]
    day.slots["n"] = day.sets[at]["reps"] = day.fewer(at)


def _listed(day: Day, reps: Sequence[int]) -> str:
    return day.random.choice((", ", " ", "/", "-", ",")).join(map(str, reps))


def side_list(day: Day) -> None:
    where = _side(day)
    reps = [day.sets[k]["reps"] for k in where]
    mark = day.random.choice((" ", " "))
    day.slots["olist"] = mark.join(map(str, reps))
    reps[-1] = max(0, reps[-1] - 1)
    reps[-2] = max(reps[-1], reps[-2] - day.random.randint(0, 1))
    day.slots["list"] = mark.join(map(str, reps))
    for at, n in zip(where, reps, strict=True):
        day.sets[at]["reps"] = n


def stopped(day: Day) -> None:
    where = day.main()
    k = day.random.randint(2, len(where) - 2) if len(where) > 4 else 2
    rest = len(where) - k
    day.slots |= {"k": k, "kw": day.words.numbers[k], "fw": day.words.numbers[k], "all": len(where)}
    day.slots |= {"nth": day.words.nth[k], "rest_sets": day.word(rest)}
    day.drop(where[k:])


def _hold(day: Day, where: Sequence[int]) -> None:
    old = day.sets[where[0]]["hold_s"]
    s = day.random.randint(6, old - 1)
    day.name(day.sets[where[0]]["movement"])
    day.slots |= {"s": s, "old_s": old}
    for at in where:
        day.sets[at]["hold_s"] = s


def hold_nth(day: Day) -> None:
    i = day.random.randint(2, len(day.main()) - 1)
    word = day.words.nth[i]
    day.slots |= {"nth": word, "nth_nom": word.removesuffix("n"), "nth_m": word.removesuffix("a") + "o"}
    _hold(day, day.main()[i - 1 : i])


def hold_last(day: Day) -> None:
    _hold(day, day.main()[-1:])


def hold_all(day: Day) -> None:
    _hold(day, day.main())


def rep_more(day: Day) -> None:
    for s in day.sets:
        s["reps"] += 1


def rep_less(day: Day) -> None:
    for s in day.sets:
        s["reps"] -= 1


def other_work(day: Day) -> None:
    day.sets = notation.sets("push_up 3x15")


def parts(day: Day) -> None:
    day.keep([k for k, p in enumerate(day.parts) if p in ("warm_up", "skill")])


def main_only(day: Day) -> None:
    day.keep([k for k, p in enumerate(day.parts) if p == "main"])


def no_accessory(day: Day) -> None:
    day.drop([k for k, p in enumerate(day.parts) if p == "accessory"])


def _fall(day: Day, where: Sequence[int]) -> None:
    reps = [day.sets[k]["reps"] for k in where]
    day.slots["old_n"] = reps[0]
    for at in range(day.random.choice((1, 2, 3))):
        reps[-1 - at] -= 1
    day.slots["list"] = _listed(day, reps)
    for at, n in zip(where, reps, strict=True):
        day.sets[at]["reps"] = n


def reps_list(day: Day) -> None:
    movement = day.random.choice(("pull_up", "dip"))
    day.name(movement)
    _fall(day, day.of(movement))


def whole_list(day: Day) -> None:
    _fall(day, day.main())


def quoted(day: Day) -> None:
    first, second = day.moves()[:2]
    day.name(first)
    day.name(second, "2")
    said = []
    for movement, tail in ((first, ""), (second, "2")):
        own = [day.sets[k] for k in day.of(movement)]
        said.append(f"{day.slots['mv' + tail]} {len(own)}x{own[0]['reps']} +{day.number(own[0]['load_kg'])}")
    day.slots["quote"] = ", ".join(said)
    day.keep(day.of(first))


def six(day: Day) -> None:
    where = day.main()
    beyond = len(where) + day.random.choice((1, 2))
    day.slots |= {"n": day.fewer(where[0]), "beyond": beyond}
    day.slots |= {"beyond_w": day.words.numbers[beyond], "beyond_nth": day.words.nth[beyond]}
    day.ask, day.or_sets = True, [[]]


def most(day: Day) -> None:
    day.ask, day.sets = True, []


def clash(day: Day) -> None:
    model = day.sets[day.main()[0]]
    n, reps, kg = len(day.main()) - 1, model["reps"] + 2, model["load_kg"] + 10
    day.name(model["movement"])
    day.slots |= {"cn": n, "cr": reps, "cl": day.number(kg)}
    day.sets = [model | {"reps": reps, "load_kg": kg} for _ in range(n)]
    day.ask, day.or_told, day.or_sets = True, True, [[]]


def effort_all(day: Day) -> None:
    e = day.random.choice((7, 7.5, 8, 9))
    day.slots["e"] = day.number(e)
    for s in day.sets:
        s["rpe"] = e


def effort_last(day: Day) -> None:
    e = day.random.choice((7, 7.5, 8, 9))
    day.slots["e"] = day.number(e)
    day.sets[-1]["rpe"] = e


def extra(day: Day) -> None:
    day.name(day.moves()[0])
    at = day.main()[-1]
    day.sets.insert(at + 1, dict(day.sets[at]))


def set_less(day: Day) -> None:
    movement = day.random.choice(day.moves())
    day.name(movement)
    day.drop(day.of(movement)[-1:])


def mv_last(day: Day) -> None:
    movement = day.random.choice(("pull_up", "dip"))
    day.name(movement)
    at = day.of(movement)[-1]
    day.slots["n"] = day.sets[at]["reps"] = day.fewer(at)


def mv_last_skipped(day: Day) -> None:
    movement = day.random.choice(("pull_up", "dip"))
    day.name(movement)
    day.drop(day.of(movement)[-1:])


def failed(day: Day) -> None:
    s = day.sets[-1]
    s["reps"], s["failed"] = s["reps"] - 1, True


def two(day: Day) -> None:
    first, second = day.random.sample(["pull_up", "dip"], 2)
    day.name(first)
    day.name(second, "2")
    where = day.of(first)
    _loaded(day, where, day.sets[where[0]]["load_kg"] + day.random.choice((2.5, 7.5, 10)))
    day.drop(day.of(second))


ANY = (*SINGLE, WARM, *MORE, ARM, LEVER, MIXED)
SEVERAL = (*MORE, MIXED)
CHANGES: dict[str, tuple[Callable[[Day], None], Sequence[str]]] = {
    "done": (done, ANY),
    "all_but": (all_but, SEVERAL),
    "skipped": (all_but, SEVERAL),
    "only": (only, SEVERAL),
    "last": (last, (*SINGLE, WARM)),
    "nth": (nth, (*SINGLE, WARM)),
    "these": (these, SINGLE),
    "last_k": (last_k, (*SINGLE, WARM)),
    "last_k_load": (last_k_load, (*SINGLE, WARM)),
    "drop_reps": (drop_reps, (MANY,)),
    "drop_both": (drop_both, (EITHER,)),
    "instead": (instead, SINGLE),
    "more": (more, (*SINGLE, TWO)),
    "less": (less, (*SINGLE, TWO)),
    "with_load": (with_load, MORE),
    "no_load": (no_load, MORE),
    "assist": (assist, (ARM, ARMS)),
    "side_less": (side_less, (ARM, ARMS)),
    "side_all": (side_all, (ARM, ARMS)),
    "side_last": (side_last, (ARM, ARMS)),
    "side_list": (side_list, (ARM, ARMS)),
    "stopped": (stopped, SINGLE),
    "hold_nth": (hold_nth, (LEVER, PLANCHE)),
    "hold_last": (hold_last, (LEVER, PLANCHE)),
    "hold_all": (hold_all, (LEVER, PLANCHE)),
    "rep_more": (rep_more, SINGLE),
    "rep_less": (rep_less, SINGLE),
    "other_work": (other_work, (*SINGLE, *MORE)),
    "parts": (parts, (FULL,)),
    "main_only": (main_only, (FULL, WARM, TWO)),
    "no_accessory": (no_accessory, MORE),
    "reps_list": (reps_list, MORE),
    "list": (whole_list, SINGLE),
    "n_list": (whole_list, SINGLE),
    "quoted": (quoted, (TWO,)),
    "six": (six, SINGLE),
    "most": (most, ANY),
    "clash": (clash, SINGLE),
    "effort_all": (effort_all, SINGLE),
    "effort_last": (effort_last, SINGLE),
    "extra": (extra, SINGLE),
    "set_less": (set_less, (TWO, THREE)),
    "mv_last": (mv_last, MORE),
    "mv_last_skipped": (mv_last_skipped, MORE),
    "failed": (failed, SINGLE),
    "two": (two, (TWO, THREE)),
}
NO_GEAR = ("belt", "gürtel", "cinturón")  # forgotten: told of the equipment, or no more than why
QUIET = ("most", "clash", "failed", "quoted")  # nothing is put around these


def message(random: Random, code: str, number: int, change: str = "", frame: str = "") -> dict[str, Any]:
    """One corpus line; `change` and `frame` name what is else drawn."""
    words = BY_CODE[code]
    change = change or random.choice(list(CHANGES))
    make, plans = CHANGES[change]
    day = Day(random, words, random.choice(plans))
    make(day)
    frame = frame or random.choice(words.changes[change])
    text = frame.format(**day.slots)
    if change not in QUIET:
        if random.random() < 0.15 and any(c.isalpha() for c in text):
            text = random.choice(words.openings) + text
        if random.random() < 0.2 and any(c.isalpha() for c in text):
            text += random.choice([c for c in words.closings if not (text[-1].isdigit() and c[0] == ".")])
        text = random.choice((text, text, text, text.lower(), text[:1].upper() + text[1:]))
    gold = blank() | {"intents": ["report"], "performed_on": DAY, "sets": day.sets}
    asks = [{"about": "sets", "span": text}] if day.ask else []
    line: dict[str, Any] = {
        "id": f"plan-{change}-{code}-{number:04}",
        "in": {
            "text": text,
            "sent_at": SENT_AT,
            "timezone": ZONE,
            "unit": "kg",
            "language": code,
            "bodyweight_kg": 71.5,
            "today": day.today,
        },
        "gold": gold | {"ask": asks},
        "tags": ["plan", change, "report", *(["must-ask"] if day.ask and not day.or_told else [])],
    }
    if any(word in text.lower() for word in NO_GEAR):
        line["either"] = {"intents": [["report", "equipment"]]}
    if day.or_told:
        line["also"] = [{"ask": []}]
    if day.or_sets:
        line["also"] = [*line.get("also", []), *({"ask": asks, "sets": one} for one in day.or_sets)]
    return line


def messages(count: int, seed: int, code: str) -> list[dict[str, Any]]:
    """`count` lines of a language; the same seed gives the same lines."""
    random = Random(f"plan {seed} {code}")
    return [message(random, code, number) for number in range(1, count + 1)]


def every_wording(seed: int, code: str) -> list[dict[str, Any]]:
    """Each wording of each change once."""
    random = Random(f"plan {seed} {code}")
    frames = [(change, frame) for change, several in BY_CODE[code].changes.items() for frame in several]
    return [message(random, code, number, change, frame) for number, (change, frame) in enumerate(frames, 1)]


def main() -> None:
    parser = argparse.ArgumentParser(description="Print messages against a plan with their golds.")
    parser.add_argument("--count", type=int, default=0, help="0: every wording once")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--language", choices=tuple(BY_CODE), default="en")
    said = parser.parse_args()
    made = messages(said.count, said.seed, said.language) if said.count else every_wording(said.seed, said.language)
    for line in made:
        print(json.dumps(line, ensure_ascii=False))


if __name__ == "__main__":
    main()
