"""Judge a reading against its corpus line, and sum the verdicts up.

A line is {"id", "in", "gold" (or "expect"), "tags", "also", "either"}; a reading is the contract's object. What counts:

- A set is right when movement, side, reps, hold, load, assistance, effort, range, lowering, pauses, failure and day
  agree; order is free. A message is exact when every field is right, `linked` too.
- Where gold asks or mends, a gold set that lacks a value may be left out or given with less,
  not with a value in the gap.
- Silent misread: something is asserted that neither gold nor an alternative holds, and nothing is asked.
- Silent loss: gold holds something, the reading does not, asks nothing and lists nothing as unread.
"""

from __future__ import annotations

import itertools
import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from typing import Any

Data = dict[str, Any]

SET_FIELDS = "movement side reps hold_s load_kg assist_kg rpe rom eccentric pauses failed".split()
PAIN_FIELDS = "site side score when".split()
SCALARS = "bodyweight_kg session_rpe duration_min sleep_h".split()
LISTS = "intents sets pain red_flags ask unread".split()
FIELDS = [*LISTS, *SCALARS, "performed_on", "dates", "correction"]
TOLERANCE = {"load_kg": 0.06, "assist_kg": 0.06, "bodyweight_kg": 0.06, "sleep_h": 0.02} | dict.fromkeys(
    ("rpe", "hold_s", "score", "session_rpe", "duration_min"), 0.01
)
# A set of which neither reps nor hold is known has not yet said these either.
UNSAID = {"load_kg": 0, "assist_kg": 0, "rom": "full", "eccentric": False, "failed": False}


@dataclass
class Verdict:
    """All that is known of one reading against its line."""

    id: str
    gold: Data
    read: Data
    wrong: list[str]
    faults: list[str]
    misread: list[str]
    lost: list[str]
    asked: bool
    may_ask: bool
    must_ask: bool
    sets: tuple[int, int, int] = (0, 0, 0)  # right, extra, missing
    pain: tuple[int, int, int] = (0, 0, 0)
    tags: list[str] = field(default_factory=list)

    @property
    def exact(self) -> bool:
        return not self.wrong and not self.faults

    @property
    def silent_misread(self) -> bool:
        return bool(self.misread) and not self.asked

    @property
    def silent_loss(self) -> bool:
        return bool(self.lost) and not self.asked and not self.read["unread"]

    @property
    def needless_ask(self) -> bool:
        return self.asked and not self.may_ask

    @property
    def missed_ask(self) -> bool:
        return self.must_ask and not self.asked


def judge(line: Data, reading: Data) -> Verdict:
    """The verdict on one reading, against the alternative that it comes nearest to."""
    read = _with_days({f: reading.get(f, [] if f in LISTS else None) for f in FIELDS})
    golds = [_with_days(g) for g in alternatives(line)]
    wrongs = [[f for f in FIELDS if f in g and not _right(f, read, g)] for g in golds]
    # The fewest wrong fields; where that ties, the most right sets.
    best = min(range(len(golds)), key=lambda k: (len(wrongs[k]), -_count_sets(read["sets"], golds[k])[0]))
    gold = golds[best]
    misread = _asserted_wrong(read, golds)
    return Verdict(
        id=line["id"],
        gold=gold,
        read=read,
        wrong=wrongs[best],
        faults=faults(reading, line["in"]["text"]),
        misread=misread,
        lost=[f for f in _lost(read, golds) if f not in misread],
        asked=bool(read["ask"]),
        may_ask=any(g.get("ask", True) for g in golds),
        must_ask=all(g.get("ask") for g in golds),
        sets=_count_sets(read["sets"], gold) if "sets" in gold else (0, 0, 0),
        pain=_count(_pair(read["pain"], gold.get("pain", read["pain"]), _same_pain)),
        tags=line.get("tags", []),
    )


def alternatives(line: Data) -> list[Data]:
    """Gold and all that is as good, gold first."""
    gold, either = line.get("gold") or line["expect"], line.get("either", {})
    found = []
    for change in [{}, *line.get("also", [])]:
        whole = gold | change
        choices = [([whole[f]] if f in whole else []) + values for f, values in either.items()]
        found += [whole | dict(zip(either, chosen, strict=True)) for chosen in itertools.product(*choices)]
    return found


def faults(reading: Data, text: str) -> list[str]:
    """Where the reading breaks the contract in ways that types do not rule out."""
    found = [f"lacks {f}" for f in FIELDS if f not in reading]
    kinds = reading.get("intents") or []
    if not kinds:
        found.append("no intent")
    if len(kinds) > 1 and {"smalltalk", "unknown"} & set(kinds):
        found.append("smalltalk and unknown stand alone")
    for name in ("intents", "red_flags"):
        if len(set(reading.get(name, []))) != len(reading.get(name, [])):
            found.append(f"{name} twice")
    loose = bool(reading.get("ask")) or "correction" in kinds
    for s in reading.get("sets", []):
        found += [f"set lacks {f}" for f in (*SET_FIELDS, "linked", "on") if f not in s]
        found += [
            f"set {f} is null" for f in ("movement", "load_kg", "assist_kg", "rom") if s.get(f) is None and not loose
        ]
    found += [f"span not in the text: {a['span']}" for a in reading.get("ask", []) if a["span"] not in text]
    return found + [f"unread not in the text: {piece}" for piece in reading.get("unread", []) if piece not in text]


# Values


def _same(name: str, a: Any, b: Any) -> bool:
    if name in TOLERANCE and a is not None and b is not None:
        return abs(a - b) <= TOLERANCE[name] + 1e-9
    if name == "pauses":
        return sorted(a) == sorted(b)
    return bool(a == b)


def _agree(name: str, a: Data, b: Data) -> bool:
    return name not in b or _same(name, a.get(name), b[name])


def _with_days(reading: Data) -> Data:
    if "sets" not in reading:
        return reading
    return reading | {"sets": [s | {"day": s.get("on") or reading.get("performed_on")} for s in reading["sets"]]}


def _same_day(a: Data, b: Data) -> bool:
    return "on" not in b or a.get("on") == b["on"] or (a["day"] is not None and a["day"] == b["day"])


def _same_set(a: Data, b: Data) -> bool:
    return all(_agree(f, a, b) for f in SET_FIELDS) and _same_day(a, b)


def _same_set_and_link(a: Data, b: Data) -> bool:
    return _same_set(a, b) and ("linked" not in b or bool(a.get("linked")) == b["linked"])


def _same_pain(a: Data, b: Data) -> bool:
    return all(_agree(f, a, b) for f in PAIN_FIELDS)


def _open(gold: Data) -> bool:
    return bool(gold.get("ask")) or "correction" in gold.get("intents", [])


def _partial(s: Data) -> bool:
    gap = any(f in s and s[f] is None for f in ("movement", "load_kg", "assist_kg", "rom"))
    return gap or (s.get("reps") is None and s.get("hold_s") is None)


def _fits(a: Data, partial: Data) -> bool:
    """Whether `a` says no more than the partial gold set does."""
    hollow = a.get("reps") is None and a.get("hold_s") is None

    def silent(f: str) -> bool:
        v = a.get(f)
        return v is None or v == [] or (hollow and f in UNSAID and v == UNSAID[f])

    return all(_agree(f, a, partial) or silent(f) for f in SET_FIELDS) and _same_day(a, partial)


def _without_effort(a: Data, gold: Data) -> bool:
    return all(_agree(f, a, gold) or (f == "rpe" and a.get(f) is None) for f in SET_FIELDS) and _same_day(a, gold)


# Lists

Paired = tuple[list[tuple[Data, Data]], list[Data], list[Data]]


def _pair(read: Iterable[Data], gold: Iterable[Data], match: Callable[[Data, Data], bool]) -> Paired:
    """Pairs that match, what is left over of each list."""
    pairs, extra, rest = [], [], list(gold)
    for item in read:
        k = next((k for k, g in enumerate(rest) if match(item, g)), None)
        if k is None:
            extra.append(item)
        else:
            pairs.append((item, rest.pop(k)))
    return pairs, extra, rest


def _count(paired: Paired) -> tuple[int, int, int]:
    return len(paired[0]), len(paired[1]), len(paired[2])


def _count_sets(read: list[Data], gold: Data, match: Callable[[Data, Data], bool] = _same_set) -> tuple[int, int, int]:
    """Right, extra, missing sets; a gap that is fitted or left out counts neither way."""
    pairs, extra, missing = _pair(read, gold.get("sets", []), match)
    if _open(gold):
        extra = _pair(extra, [s for s in missing if _partial(s)], _fits)[1]
        missing = [s for s in missing if not _partial(s)]
    return sum(not _partial(a) for a, _ in pairs), len(extra), len(missing)


def _overlap(a: str, b: str) -> bool:
    x, y = " ".join(a.lower().split()), " ".join(b.lower().split())
    p, q = set(re.findall(r"\w+", x)), set(re.findall(r"\w+", y))
    return x in y or y in x or len(p & q) * 2 >= min(len(p), len(q)) > 0


def _right(name: str, read: Data, gold: Data) -> bool:
    a, b = read[name], gold[name]
    if name in ("intents", "red_flags"):
        return set(a) == set(b)
    if name == "sets":
        return not any(_count_sets(a, gold, _same_set_and_link)[1:])
    if name == "pain":
        return not any(_count(_pair(a, b, _same_pain))[1:])
    if name == "ask":
        return bool(a) == bool(b)
    if name == "unread":
        covered = all(any(_overlap(x, y) for y in b) for x in a) and all(any(_overlap(x, y) for x in a) for y in b)
        return bool(gold.get("ask")) or covered
    if name == "correction":
        return _same_correction(a, b, may_lack=("was",))
    return _same(name, a, b)


def _same_correction(a: Data | None, b: Data | None, may_lack: tuple[str, ...]) -> bool:
    if a is None or b is None:
        return a is b

    def equal(x: Any, y: Any) -> bool:
        numbers = all(isinstance(v, (int, float)) and not isinstance(v, bool) for v in (x, y))
        return abs(x - y) <= 0.06 + 1e-9 if numbers else str(x).lower() == str(y).lower()

    named = ("field", "was", "now", "movement", "side")
    return all(equal(a.get(f), b.get(f)) or (f in may_lack and a.get(f) is None) for f in named) and equal(
        a.get("which") or "all", b.get("which") or "all"
    )


# What is asserted, what is lost


def _says_less(a: Data, b: Data) -> bool:
    return all(a.get(f) is None or _agree(f, a, b) for f in PAIN_FIELDS)


def _asserted_wrong(read: Data, golds: list[Data]) -> list[str]:
    def sets_held(g: Data) -> bool:
        if "sets" not in g:
            return True
        _, extra, rest = _pair(read["sets"], g["sets"], _same_set)
        _, extra, rest = _pair(extra, rest, _without_effort)
        return not (_pair(extra, [s for s in rest if _partial(s)], _fits)[1] if _open(g) else extra)

    def pain_held(g: Data) -> bool:
        if "pain" not in g:
            return True
        _, extra, rest = _pair(read["pain"], g["pain"], _same_pain)
        extra = [p for p in extra if p.get("score") is not None or p.get("site") is not None]
        return not _pair(extra, rest, _says_less)[1]

    def dates_held(g: Data) -> bool:
        said = {k: v for k, v in (read["dates"] or {}).items() if v}
        return not said or "dates" not in g or bool(g["dates"] and said.items() <= g["dates"].items())

    def correction_held(g: Data) -> bool:
        loose = ("was", "movement", "side")
        return (
            read["correction"] is None
            or "correction" not in g
            or _same_correction(read["correction"], g["correction"], loose)
        )

    held = {"sets": sets_held, "pain": pain_held, "dates": dates_held, "correction": correction_held}
    wrong = [f for f, test in held.items() if not any(test(g) for g in golds)]
    plain = [*SCALARS, "performed_on"]
    return wrong + [f for f in plain if read[f] is not None and not any(_agree(f, read, g) for g in golds)]


def _lost(read: Data, golds: list[Data]) -> list[str]:
    gone = []
    if all(_count_sets(read["sets"], g)[2] for g in golds):
        gone.append("sets")
    if all(_pair(read["pain"], g.get("pain", []), _same_pain)[2] for g in golds):
        gone.append("pain")
    if all(set(g.get("red_flags", [])) - set(read["red_flags"]) for g in golds):
        gone.append("red_flags")
    plain = [*SCALARS, "performed_on", "dates", "correction"]
    return gone + [f for f in plain if read[f] is None and all(g.get(f) is not None for g in golds)]
