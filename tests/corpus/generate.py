"""Messages without end, their golds right by construction: notations, slips and voices in three languages.

    python -m tests.corpus.generate --count 1000 --seed 7 --language de > lines.jsonl

What is drawn decides both the words and the gold; slips (typos, case, spaces, emoji, signs) change the words only.
"""

from __future__ import annotations

import argparse
import json
from collections.abc import Sequence
from datetime import datetime, timedelta
from random import Random
from typing import Any, TypeVar
from zoneinfo import ZoneInfo

from tests.corpus import kinds, slips
from tests.corpus.notation import KG_PER_LB, one_set
from tests.corpus.words import BY_CODE, Words

CODES = tuple(BY_CODE)
ZONES = {
    "en": ("Europe/London", "America/New_York", "Australia/Sydney", "America/Los_Angeles"),
    "de": ("Europe/Berlin", "Europe/Zurich"),
    "es": ("Europe/Madrid", "America/Mexico_City", "America/Argentina/Buenos_Aires"),
}
Sets = list[dict[str, Any]]
T = TypeVar("T")


class Writer:
    """Draws one message."""

    def __init__(self, random: Random, code: str) -> None:
        self.random, self.code = random, code
        self.words: Words = BY_CODE[code]
        self.unit = "lb" if random.random() < 0.1 else "kg"
        self.body = round(random.uniform(55, 95), 1)

    def pick(self, options: Sequence[T]) -> T:
        return self.random.choice(options)

    def chance(self, share: float) -> bool:
        return self.random.random() < share

    # Parts of a set

    def load(self, most: int = 40) -> tuple[str, float]:
        """A load in words after the movement, and its kilograms; always above 10, where @ can be no effort."""
        value = self.pick([v / 2 for v in range(22, 2 * most + 1) if v % 5 == 0 or v % 2 == 0])
        frame = self.pick(self.words.with_load)
        pounds = self.unit == "lb"
        if pounds:
            value, frame = float(round(value)), self.pick((" +{load}", " +{load}lb", " +{load} lbs", " @ {load}lb"))
        number = slips.number(value, comma=self.chance(0.7 if self.code != "en" else 0.1))
        return frame.format(load=number), value * (KG_PER_LB if pounds else 1)

    def effort(self, sets: Sets, pair: int, last: bool) -> str:
        """An effort in words, put into `sets`. `last`: the clause ends a message of several movements."""
        rpe = self.pick([6.5, 7, 7.5, 8, 8.5, 9])
        # "@8" without a load may be a load itself; beside a load or a hold it is an effort.
        clear = bool(sets[0]["load_kg"] or sets[0]["hold_s"])
        said = slips.number(rpe, comma=False)
        form = self.random.random()
        if form < 0.3:
            for s in sets:
                s["rpe"] = rpe
            return self.framed(self.words.all_effort, clear).format(rpe=said)
        for s in sets[-pair:]:
            s["rpe"] = rpe
        # "rpe 8" at the end of several movements would be the session's.
        if form < 0.6 or last:
            return self.framed(self.words.last_effort, clear).format(rpe=said)
        return self.pick((" rpe {}", " RPE {}", ", rpe {}")).format(said)

    def framed(self, frames: Sequence[str], at_sign: bool) -> str:
        return self.pick([f for f in frames if at_sign or "@" not in f])

    # Clauses: words and the sets they report

    def repetitions(self, last: bool) -> tuple[str, Sets]:
        loaded = self.chance(0.7)
        movement, names = self.pick(list((self.words.loaded if loaded else self.words.plain).items()))
        name = self.pick(names)
        load, kg = self.load() if loaded and self.chance(0.8) else ("", 0)
        n, r = self.random.randint(2, 6), self.random.randint(2, 10)
        form = self.random.randrange(7)
        if form == 5 and load:
            return self.each_its_load(movement, name)
        if form == 6 and self.unit == "kg" and load:
            return self.dictated(movement, name)
        reps = [r] * n
        if form in (3, 4):
            n = self.random.randint(3, 5)
            reps = sorted((self.random.randint(max(1, r - 2), r) for _ in range(n)), reverse=True)
        texts = {
            0: f"{name} {n}x{r}{load}",
            1: f"{n}x{r} {name}{load}",
            2: self.pick(self.words.sets_of).format(n=n, r=r, mv=name, load=load),
            3: f"{name}{load}: {self.pick((',', ', ', '/')).join(map(str, reps))}",
            4: f"{name} {'/'.join(map(str, reps))}{load}",
        }
        text = texts.get(form, f"{name} {n} x {r}{load}")
        sets = [one_set(movement, reps=k, load_kg=kg) for k in reps]
        if self.chance(0.4):
            text += self.effort(sets, 1, last)
        return text, sets

    def each_its_load(self, movement: str, name: str) -> tuple[str, Sets]:
        start, step = self.pick((12.5, 15.0, 17.5, 20.0, 25.0)), self.pick((2.5, 5.0))
        pairs = [(self.random.randint(2, 6), start + step * k) for k in range(self.random.randint(2, 4))]
        unit = KG_PER_LB if self.unit == "lb" else 1
        text = " ".join(f"{r}@{slips.number(kg, comma=False)}" for r, kg in pairs)
        return f"{name} {text}", [one_set(movement, reps=r, load_kg=kg * unit) for r, kg in pairs]

    def dictated(self, movement: str, name: str) -> tuple[str, Sets]:
        n, r, kg = self.random.randint(3, 6), self.random.randint(3, 9), self.random.randint(11, 20)
        numbers = self.words.numbers
        load = f"{numbers[kg]} {self.pick(self.words.kilos)}"
        text = self.pick(self.words.spoken).format(n=numbers[n], r=numbers[r], mv=name, load=load)
        return text.lower() if self.chance(0.7) else text, [one_set(movement, reps=r, load_kg=kg)] * n

    def hold(self, last: bool) -> tuple[str, Sets]:
        movement, names = self.pick(list(self.words.holds.items()))
        n, name, unit = self.random.randint(2, 5), self.pick(names), self.pick(self.words.seconds)
        long = movement in ("dead_hang", "hollow_hold", "handstand_hold")
        s = self.random.randint(20, 60) if long else self.random.randint(5, 20)
        seconds = [s] * n
        text = f"{name} {n}x{s}{unit}"
        if self.chance(0.3):
            seconds = [s, max(2, s - 1), max(2, s - 3)]
            text = f"{name} " + ", ".join(f"{k}{unit}" for k in seconds)
        sets = [one_set(movement, hold_s=k) for k in seconds]
        if self.chance(0.3):
            text += self.effort(sets, 1, last)
        return text, sets

    def sided(self, last: bool) -> tuple[str, Sets]:
        movement, names = self.pick(list(self.words.sided.items()))
        name, n = self.pick(names), self.random.randint(1, 4)
        left, right = self.random.randint(1, 4), self.random.randint(1, 4)
        if self.chance(0.5):
            n = max(n, 2)
            text, right = f"{name} {n}x{left} {self.pick(self.words.per_side)}", left
        elif self.chance(0.3):
            text, n = f"{name} {left}/{right}", 1
        else:
            text, n = f"{name} " + self.pick(self.words.left_right).format(left=left, right=right), 1
        both = (("left", left), ("right", right))
        sets = [one_set(movement, reps=k, side=side) for _ in range(n) for side, k in both]
        if n > 1 and self.chance(0.3):
            text += self.effort(sets, 2, last)
        return text, sets

    def work(self, clauses: int) -> tuple[list[str], Sets]:
        """Clauses of different movements."""
        texts: list[str] = []
        sets: Sets = []
        while len(texts) < clauses:
            clause = self.pick((self.repetitions, self.repetitions, self.repetitions, self.hold, self.sided))
            text, found = clause(clauses > 1 and len(texts) == clauses - 1)
            if not {s["movement"] for s in found} & {s["movement"] for s in sets}:
                texts.append(text)
                sets += found
        return texts, sets

    def pain(self) -> tuple[str, dict[str, Any]]:
        if self.chance(0.25):
            return self.pick(self.words.no_pain), {"site": None, "side": None, "score": 0, "when": None}
        site, names = self.pick(list(self.words.places.items()))
        side = self.pick((None, "left", "right"))
        when = self.pick((None, None, "during", "after"))
        score, name = self.random.randint(1, 6), self.pick(names)
        said = self.words.sides.get(side or "", "")
        ending = "a" if name.endswith("a") else "o"
        said = said.replace("_", ending)
        place = f"{said} {name}" if self.code == "en" else f"{name} {said}"
        text = " ".join(w for w in (place.strip(), f"{score}/10", self.words.when.get(when or "", "")) if w)
        return text, {"site": site, "side": side, "score": score, "when": when}


def blank() -> dict[str, Any]:
    """A gold that says nothing."""
    values = ("performed_on", "bodyweight_kg", "session_rpe", "duration_min", "sleep_h", "dates", "correction")
    lists = ("intents", "sets", "pain", "red_flags", "ask", "unread")
    return dict.fromkeys(values) | {name: [] for name in lists}


def message(random: Random, code: str, number: int) -> dict[str, Any]:
    """One corpus line."""
    w = Writer(random, code)
    zone = w.pick(ZONES[code])
    minutes = random.randrange(60 * 24 * 360)
    sent = (datetime(2027, 1, 1, tzinfo=ZoneInfo("UTC")) + timedelta(minutes=minutes)).astimezone(ZoneInfo(zone))
    if w.chance(0.3):
        return odd_one(w, sent, zone, number)
    text, gold, slipped = a_report(w, sent)
    several = len({s["movement"] for s in gold["sets"]}) > 1
    tags = ["generated", *slipped, *(["several"] if several else []), *(["lb"] if w.unit == "lb" else []), "report"]
    return corpus_line(w, number, text, sent, zone, gold, tags)


def odd_one(w: Writer, sent: datetime, zone: str, number: int) -> dict[str, Any]:
    """A message that is no plain report, sent by day: at night "yesterday" is not the day before."""
    w.unit = "kg"
    sent = sent.replace(hour=w.random.randint(6, 22))
    kind = w.pick(kinds.KINDS)
    text, told, plan = kind(w.random, kinds.PHRASES[w.code], sent.date())
    gold = blank() | told
    if not gold["ask"]:
        text, _ = slips.slip(text, w.random, [])
    marks = {"must-ask": gold["ask"], "plan": plan, "report": "report" in gold["intents"]}
    tags = ["generated", kind.__name__, *(t for t, on in marks.items() if on)]
    return corpus_line(w, number, text, sent, zone, gold, tags, kinds.plan_of(plan))


def corpus_line(
    w: Writer,
    number: int,
    text: str,
    sent: datetime,
    zone: str,
    gold: dict[str, Any],
    tags: list[str],
    today: list[dict[str, Any]] | None = None,
) -> dict[str, Any]:
    """The line as it stands in a file."""
    return {
        "id": f"made-{w.code}-{number:05}",
        "in": {
            "text": text,
            "sent_at": sent.isoformat(),
            "timezone": zone,
            "unit": w.unit,
            "language": None if w.chance(0.2) else w.code,
            "bodyweight_kg": w.body,
            "today": today,
        },
        "gold": gold,
        "tags": tags,
    }


def a_report(w: Writer, sent: datetime) -> tuple[str, dict[str, Any], list[str]]:
    """Text, gold and slips of a report with what else people add."""
    gold = blank()
    clauses, gold["sets"] = w.work(w.pick((1, 1, 1, 2, 2, 3)))
    gold["intents"] = ["report"]
    evening = (sent - timedelta(days=sent.hour < 4)).date()
    gold["performed_on"] = evening.isoformat()
    if w.chance(0.25):
        # Before 04:00 "today" and "yesterday" are both the evening before, and "two days ago" is open.
        back = w.pick((0, 1, 2)) if sent.hour >= 4 else w.pick((0, 1))
        gold["performed_on"] = (evening - timedelta(days=back if sent.hour >= 4 else 0)).isoformat()
        clauses[0] = f"{w.pick(w.words.days[back])} {clauses[0]}"
    body = slips.join(clauses + extras(w, gold), w.random)
    if w.chance(0.2):
        body = f"{w.pick(w.words.openings)}{'' if body[0].isdigit() else ','} {body}"
    if w.chance(0.2) and not body.endswith("?"):
        body += f". {w.pick(w.words.closings)}"
    text, slipped = slips.slip(body, w.random, [n for names in named(w.words) for n in names])
    return text, gold, slipped


def extras(w: Writer, gold: dict[str, Any]) -> list[str]:
    """Clauses about pain, body, sleep and the session, put into `gold`; a wish comes last."""
    found: list[str] = []
    comma = w.code != "en"
    if w.chance(0.2):
        text, entry = w.pain()
        found.append(text)
        gold["pain"] = [entry]
        gold["intents"].append("pain")
    if w.chance(0.12):
        gold["bodyweight_kg"] = round(w.body + w.random.uniform(-1, 1), 1)
        # A bare figure would be pounds to who counts in pounds.
        frames = [f for f in w.words.weight if w.unit == "kg" or "}kg" in f or "} kg" in f]
        found.append(w.pick(frames).format(kg=slips.number(gold["bodyweight_kg"], comma=comma)))
        gold["intents"].append("bodyweight")
    if w.chance(0.15):
        gold["sleep_h"] = w.pick((5, 6, 6.5, 7, 7.5, 8))
        found.append(w.pick(w.words.sleep).format(h=slips.number(gold["sleep_h"], comma=comma)))
    if w.chance(0.15):
        gold["session_rpe"] = w.random.randint(5, 9)
        found.append(w.pick(w.words.session).format(rpe=gold["session_rpe"]))
    if w.chance(0.15):
        gold["duration_min"] = w.random.randrange(35, 95, 5)
        found.append(w.pick(w.words.minutes).format(min=gold["duration_min"]))
    w.random.shuffle(found)
    if w.chance(0.1):
        wish, words = w.pick(list(w.words.questions.items()))
        found.append(w.pick(words))
        gold["intents"].append(wish)
    return found


def named(words: Words) -> list[tuple[str, ...]]:
    return [names for group in (words.loaded, words.plain, words.holds, words.sided) for names in group.values()]


def messages(count: int, seed: int, code: str) -> list[dict[str, Any]]:
    """`count` lines of a language; the same seed gives the same lines."""
    random = Random(f"{seed} {code}")
    return [message(random, code, number) for number in range(1, count + 1)]


def main() -> None:
    parser = argparse.ArgumentParser(description="Print generated messages with their golds.")
    parser.add_argument("--count", type=int, default=100)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--language", choices=CODES, default="en")
    chosen = parser.parse_args()
    for line in messages(chosen.count, chosen.seed, chosen.language):
        print(json.dumps(line, ensure_ascii=False))


if __name__ == "__main__":
    main()
