"""Corrections of an earlier report: which value, what it was, what it is now.

"that was 22.5, not 20", "I wrote 7, it was 8", "waren 5 statt 6", "eran supinas, no dominadas". A wording that only
departs from the day's plan ("2 instead of 3 on the last") is no correction.
"""

from __future__ import annotations

import itertools
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import cast

from bot.reading.days import named_days
from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Claim, Message
from bot.reading.movements import Mention, find_movements
from bot.reading.phrases import longest, sentence_bounds
from bot.reading.reading import Ask, Correction
from bot.reading.tokens import Token
from planner.facts import Side
from planner.units import KG_PER_LB

SMALL = 12  # whole numbers up to here may be reps
NEAR = 4
CHANGE = 0.15
REPS = 30  # "3x8": repetitions up to here


@dataclass(frozen=True)
class _Value:
    start: int
    end: int
    value: float
    text: str = ""  # "5x3"
    mark: str = ""  # + or @


OF_TEN = "/10"  # the mark of a score
MOST_SCORE = 10


class _Mend:
    def __init__(self, message: Message) -> None:
        self.message = message
        self.tokens = message.tokens
        self.hits: dict[str, list[Hit]] = {}
        for hit in message.hits("mends"):
            self.hits.setdefault(hit.table, []).append(hit)

    def between(self, table: str, start: int, end: int, name: str | None = None) -> list[Hit]:
        return [h for h in self.hits.get(table, ()) if start <= h.start and h.end <= end and name in (None, h.name)]

    def values(self) -> list[_Value]:
        """The numbers of the message; "5x3" is one."""
        out: list[_Value] = []
        which = {at for hit in longest(self.hits.get("which", ())) for at in range(hit.start, hit.end)}
        at = 0
        while at < len(self.tokens):
            token = self.tokens[at]
            if token.value is None or token.kind == "clock" or at in which:
                at += 1
                continue
            if self._of_ten(at):
                out.append(_Value(at, at + 3, token.value, "", OF_TEN))
                at += 3
                continue
            before = self.tokens[at - 1].text if at else ""
            mark = before if before in ("+", "@") else ""
            if at + 2 < len(self.tokens) and self.tokens[at + 1].text == "x" and self.tokens[at + 2].value is not None:
                text = f"{token.value:g}x{self.tokens[at + 2].value:g}"
                out.append(_Value(at, at + 3, token.value, text, mark))
                at += 3
                continue
            out.append(_Value(at, at + 1, token.value, "", mark))
            at += 1
        return out

    def _of_ten(self, at: int) -> bool:
        """Whether a score out of ten stands at a token."""
        scale = self.tokens[at + 1 : at + 3]
        return len(scale) == 2 and scale[0].text == "/" and scale[1].value == 10


def find_corrections(message: Message) -> list[Claim]:
    """At most one claim `correction`; `noise` for the words that go with it."""
    mend = _Mend(message)
    named = {at for one in _mentions(message, set()) for at in range(one.start, one.end)}
    strong = [
        hit
        for hit in mend.between("cue", 0, len(message.tokens), "strong")
        if hit.start not in named  # Chin-ups
        and not any(other.start <= hit.start < other.end for other in mend.hits.get("loading", ()))
    ]
    soft = mend.between("cue", 0, len(message.tokens), "soft")
    unloaded = _of_no_load(mend)
    if unloaded:
        return unloaded
    bare = _of_bare_value(mend)
    if bare:
        return bare
    if not strong and not soft and not message.context.today and mend.hits.get("which"):
        opposed = _pair(mend)  # "on set 3 I did 4 not 5"
        if opposed is not None and mend.between("not", opposed[0].end, opposed[1].start):
            return _of_values(mend, *opposed)
    if not strong and not soft:
        return (_of_movements(mend) if _nothing_else(mend) else []) or _of_minutes(mend)
    pair = _pair(mend)
    if message.context.today and not strong and not (pair is not None and _looks_back(mend, pair[0])):
        return []
    if pair is not None:
        now, was, start, end = pair
        if _departs(mend, start):
            return []
        if not strong and not any(hit.start < max(now.start, was.start) for hit in soft):
            return []
        return _of_values(mend, now, was, start, end)
    return _of_sides(mend) or _of_movements(mend) or _of_days(mend) or _of_one_value(mend)


def _looks_back(mend: _Mend, now: _Value) -> bool:
    """Whether "that was" leads the new value: said of what was told before, plan or not."""
    return any(_only_little(mend.tokens, hit.end, now.start) for hit in mend.between("back", 0, now.start))


def _departs(mend: _Mend, start: int) -> bool:
    """ "Pull ups 4x6 but the belt was only 10 not 15": sets told now, which depart from what was meant."""
    told = next((value for value in mend.values() if value.text), None)
    if told is None or told.end > start or any(hit.start < told.start for hit in mend.hits.get("cue", ())):
        return False
    named = any(one.start < told.start for one in _mentions(mend.message, set()))
    return named and any(token.text in little("but") for token in mend.tokens[told.end : start])


def _of_minutes(mend: _Mend) -> list[Claim]:
    """ "session took 60 min, not 90": minutes opposed, and no other number."""
    pair = _pair(mend) if len(mend.values()) == 2 else None
    if pair is None:
        return []
    now, was, start, end = pair
    said = mend.between("field", 0, len(mend.tokens))
    if not any(hit.name == "duration_min" and hit.start == now.end for hit in said):
        return []
    return _of_values(mend, now, was, start, end)


def _nothing_else(mend: _Mend) -> bool:
    """Whether a message is two movements opposed, and nothing more: "chins, not pull-ups"."""
    taken = {at for one in _mentions(mend.message, set()) for at in range(one.start, one.end)}
    taken |= {at for hit in mend.hits.get("not", ()) for at in range(hit.start, hit.end)}
    return all(at in taken or token.kind != "word" for at, token in enumerate(mend.tokens))


def _of_no_load(mend: _Mend) -> list[Claim]:
    """ "+10 not bodyweight", "bodyweight, not +10": one of the two values is no load."""
    for value in mend.values():
        if value.mark != "+" or value.text:
            continue
        for hit in mend.hits.get("none", ()):
            load_first = value.end <= hit.start
            low, high = (value.end, hit.start) if load_first else (hit.end, value.start - 1)
            if not any(
                n.start - low <= NEAR and n.end <= high and _only_little(mend.tokens, n.end, high)
                for n in mend.between("not", low, high)
            ):
                continue
            if any(token.text in ".!?\n" or token.value is not None for token in mend.tokens[low:high]):
                continue
            start, end = min(value.start - 1, hit.start), max(value.end, hit.end)
            load = round(value.value * _factor(mend, value, value), 6)
            mentions = _mentions(mend.message, set(range(start, end)))
            named = mentions[0].movement if len(mentions) == 1 and not mentions[0].movement.startswith("?") else None
            was, now = (0.0, load) if load_first else (load, 0.0)
            made = Correction("load_kg", was, now, named, _side(mend, start, end), _which(mend))
            claims = [Claim(start, end, "correction", made)]
            return claims + _noise(mend, claims)
    return []


def _of_one_value(mend: _Mend) -> list[Claim]:
    """Only the new value: "second set was 4 actually", "change the chins to 17.5 kg"."""
    values = mend.values()
    if len(values) != 1 or values[0].text:
        return []
    (now,) = values
    tokens = mend.tokens
    if any(token.text == "?" for token in tokens) or named_days(mend.message).days:
        return []
    changed = any(
        hit.end <= now.start
        and any(_only_little(tokens, to.end, now.start) for to in mend.between("to", hit.end, now.start))
        for hit in mend.hits.get("change", ())
    )
    of_a_set = bool(mend.hits.get("which")) and bool(mend.hits.get("put_right"))
    mentions = _mentions(mend.message, {now.start})
    unit = bool(mend.between("field", now.end, min(len(tokens), now.end + 1)))
    if (
        not of_a_set
        and not _said_wrong(mend, now, mentions)
        and not (changed and (mentions or unit or mend.hits.get("which")))
    ):
        return []
    (claim, *more) = _of_values(mend, now, now, now.start, now.end)
    made = claim.value
    return [Claim(claim.start, claim.end, "correction", replace(made, was=None), claim.ask), *more]


def _of_bare_value(mend: _Mend) -> list[Claim]:
    """ "Sorry, that was 22.5": an excuse and a value. What it is of is asked, but where its unit tells."""
    values = mend.values()
    if len(values) != 1 or values[0].text or any(token.text == "?" for token in mend.tokens):
        return []
    (now,) = values
    known = {
        at
        for table in ("excuse", "cue", "now", "field")
        for hit in mend.hits.get(table, ())
        for at in range(hit.start, hit.end)
    }
    known |= set(range(now.start, now.end))
    known |= {at for at, token in enumerate(mend.tokens) if token.text in little("in_correction")}
    if not mend.between("excuse", 0, now.start) or any(
        at not in known and token.kind == "word" for at, token in enumerate(mend.tokens)
    ):
        return []
    told = bool(mend.between("field", 0, len(mend.tokens))) or _only_load(mend, now)
    (claim, *more) = _of_values(mend, now, now, now.start, now.end)
    if claim.value.field not in SETS:
        return []  # "sorry, the elbow was 3" tells of the body, and its readers know how
    about = "reps" if claim.value.field == "reps" else "load_kg"
    ask = None if told else Ask(about, mend.message.span(now.start, now.end))
    return [Claim(claim.start, claim.end, "correction", replace(claim.value, was=None), ask), *more]


def _only_load(mend: _Mend, now: _Value) -> bool:
    """ "22.5" is no effort, no reps, and nobody's bodyweight: added weight."""
    body = mend.message.context.bodyweight_kg
    kilos = now.value * _factor(mend, now, now)
    return now.value != int(now.value) and now.value > MOST_SCORE and body is not None and kilos < body * (1 - CHANGE)


def _said_wrong(mend: _Mend, now: _Value, mentions: list[Mention]) -> bool:
    """ "Oops wrong, dips were with 15": a word for the mistake, then what the movement's value was."""
    if not mentions or mentions[0].start < (
        first := min((h.start for h in mend.between("cue", 0, now.start)), default=0)
    ):
        return False
    mistaken = any(h.start >= first and h.end <= mentions[0].start for h in mend.between("cue", 0, now.start, "strong"))
    said = mend.between("now", mentions[-1].end, now.start)
    return mistaken and any(_only_little(mend.tokens, hit.end, now.start) for hit in said)


def _only_little(tokens: Sequence[Token], start: int, end: int) -> bool:
    return all(token.text in little("in_correction") for token in tokens[start:end])


def _pair(mend: _Mend) -> tuple[_Value, _Value, int, int] | None:
    """(now, was, first token, token after) where the message opposes two values."""
    values = mend.values()
    tokens = mend.tokens
    for one, two in itertools.pairwise(values):
        mixed = (one.mark == OF_TEN) != (two.mark == OF_TEN)
        if mixed and (
            max(one.value, two.value) > MOST_SCORE or any(t.text == "." for t in tokens[one.end : two.start])
        ):
            continue  # "elbow 1/10. 20 instead of 22.5"
        if any(token.text in ".!?\n" for token in tokens[one.end : two.start] if token.text != "."):
            continue
        for hit in mend.between("not", one.end, two.start):
            # "22.5, not 20"; "5 reps not 6"
            between = hit.start - one.end - _of_sets(mend, one.end, hit.start)
            if between <= NEAR and _only_little(tokens, hit.end, two.start):
                first = next((v for v in values if v.text), None) if two.text else None
                now = first if first is not None and first.start < two.start else one
                return now, two, now.start, two.end
        for hit in mend.between("than", one.end, two.start):
            # "more like 9 than 8"
            if (
                hit.start == one.end
                and hit.end == two.start
                and any(h.end == one.start for h in mend.between("like", 0, one.start))
            ):
                return one, two, one.start, two.end
        for hit in mend.between("was", one.end, two.start):
            # "was 8, I wrote 7"
            if hit.end - hit.start > 1 and _only_little(tokens, hit.end, two.start):
                return one, two, one.start, two.end
        for hit in mend.between("was", max(0, one.start - NEAR - 1), one.start):
            # "I typed 30, should be 20"
            if (
                (hit.end - hit.start > 1 or hit.name == "told")
                and _only_little(tokens, hit.end, one.start)
                and (mend.between("now", one.end, two.start) or mend.between("cue", one.end, two.start, "strong"))
            ):
                return two, one, one.start, two.end
        for hit in mend.between("wrote", one.end, two.start):
            # "hab 71 geschrieben, waren 77"
            if hit.start - one.end <= NEAR and mend.between("now", hit.end, two.start):
                return two, one, one.start, two.end
        for hit in mend.between("not", max(0, one.start - NEAR), one.start):
            # "nicht 20 sondern 22,5", "no eran 20 sino 22,5"
            if _only_little(tokens, hit.end, one.start) and any(
                h.end <= two.start for h in mend.between("now", one.end, two.start)
            ):
                return two, one, one.start, two.end
    return None


def _of_sets(mend: _Mend, start: int, end: int) -> int:
    """How many tokens say which set it was: "1 on the second set, not 2"."""
    return sum(hit.end - hit.start for hit in longest(mend.between("which", start, end)))


def _of_values(mend: _Mend, now: _Value, was: _Value, start: int, end: int) -> list[Claim]:
    message = mend.message
    mentions = _mentions(message, {*range(now.start, now.end), *range(was.start, was.end)})
    low, high = next(((a, b) for a, b in sentence_bounds(mend.tokens) if a <= start < b), (0, len(mend.tokens)))
    own = [mention for mention in mentions if low <= mention.start < high]
    apart = len(own) == 1 and len(mentions) > 1 and not any(v.text for v in mend.values() if low <= v.start < high)
    if apart:
        mentions = own  # "the dips were with 15, not 25. Today pull-ups 4x4 with 20"
    field, doubt = _field(mend, now, was, start, end, mentions)
    new: float | str = now.value
    old: float | str = was.value
    if field == "sets" and now.text and was.text:
        new, old = now.text, was.text
        counts, reps = zip(now.text.split("x"), was.text.split("x"), strict=True)
        if counts[0] == counts[1] and all(int(n) <= REPS for n in reps if n.isdigit()):
            field, new, old = "reps", float(reps[0]), float(reps[1])
    elif field in ("load_kg", "assist_kg", "bodyweight_kg"):
        factor = _factor(mend, now, was)
        new, old = round(now.value * factor, 6), round(was.value * factor, 6)
    movement = mentions[0].movement if len(mentions) == 1 and not mentions[0].movement.startswith(("?", "!")) else None
    which = _which(mend)
    side = _side(mend, start, end)
    ask = Ask("field", message.span(now.start, end if now.start < end else now.end)) if doubt else None
    restated = any(v.text for v in mend.values()) and not apart
    made = Correction(
        field,
        old,
        new,
        movement if field in SETS else None,
        side if field in SETS else None,
        which if field in SETS else "all",
    )
    if restated:
        nots = [h for h in mend.hits.get("not", ()) if h.end <= was.start]
        first = nots[-1].start if nots and was.start > now.start else was.start
        claims = [Claim(first, was.end, "correction", made, ask)]
    else:
        claims = [Claim(start, end, "correction", made, ask)]
    if apart:
        taken = {at for claim in claims for at in range(claim.start, claim.end)}
        claims += [Claim(at, at + 1, "noise", None) for at in range(low, high) if at not in taken]
        return claims
    return claims + _noise(mend, claims)


SETS = frozenset("reps load_kg rpe hold_s assist_kg sets movement side".split())


def _noise(mend: _Mend, claims: list[Claim]) -> list[Claim]:
    taken = {at for claim in claims for at in range(claim.start, claim.end)}
    out: list[Claim] = []
    for hit in mend.hits.get("which", ()):
        own = set(range(hit.start, hit.end))
        if not own & taken:
            taken |= own
            out.append(Claim(hit.start, hit.end, "noise", None))
    return out


def _factor(mend: _Mend, now: _Value, was: _Value) -> float:
    unit: str = mend.message.context.unit
    for value in (now, was):
        word = mend.tokens[value.end].text if value.end < len(mend.tokens) else ""
        unit = "kg" if word in little("kilos") else "lb" if word in little("pounds") else unit
    return KG_PER_LB if unit == "lb" else 1.0


def _field(mend: _Mend, now: _Value, was: _Value, start: int, end: int, mentions: list[Mention]) -> tuple[str, bool]:
    """The field that two values are of, and whether that is a guess to be asked about."""
    if now.text and was.text:
        return "sets", False
    low = next((a for a, b in sentence_bounds(mend.tokens) if a <= start < b), 0)
    said = {hit.name for hit in mend.between("field", low, min(len(mend.tokens), end + 6))}
    close = {
        hit.name
        for v in (now, was)
        for hit in mend.between("field", v.end, min(len(mend.tokens), v.end + 2))
        if hit.start == v.end
    }
    whole = now.value == int(now.value) and was.value == int(was.value)
    marks = {now.mark, was.mark}
    known = mend.message.context.bodyweight_kg
    factor = _factor(mend, now, was)
    body = (
        known is not None
        and abs(now.value * factor - known) <= CHANGE * known
        and abs(was.value * factor - known) <= CHANGE * known
    )
    if "session_rpe" in said:
        return "session_rpe", False
    if "rpe" in said or (marks == {"@"} and now.value <= 10 and was.value <= 10):
        return "rpe", False
    if "+" in marks:
        return "load_kg", False
    if "sleep_h" in said:
        return "sleep_h", False
    if ("bodyweight_kg" in said and not mentions) or ("load_kg" in said and body and not mentions):
        return "bodyweight_kg", False
    if ("duration_min" in said and "duration_min" in close) or (
        "duration_min" in said and not mentions and "hold_s" not in close
    ):
        return "duration_min", False
    if "hold_s" in close:
        return "hold_s", False
    if "sets" in close:
        return "sets", False
    if "assist_kg" in said:
        return "assist_kg", False
    if "reps" in close:
        return "reps", False
    if "load_kg" in close:
        return "load_kg", False
    if "score" in said and not mentions and now.value <= 10 and was.value <= 10:
        return "score", False
    if "reps" in said:
        return "reps", False
    before = mend.tokens[now.start - 1].text if now.start else ""
    if not whole or before in little("before_load") or "load_kg" in said:
        return "load_kg", False
    if max(now.value, was.value) > SMALL:
        return "load_kg", max(now.value, was.value) <= 30 and not mentions and min(now.value, was.value) <= SMALL
    if _which(mend) != "all" or _side(mend, start, end) is not None or mend.between("which", 0, len(mend.tokens)):
        return "reps", False
    return "reps", True


def _which(mend: _Mend) -> str | int:
    for hit in longest(mend.hits.get("which", ())):  # "last set 5": the last, no fifth
        return "last" if hit.name == "last" else int(hit.name)
    return "all"


def _side(mend: _Mend, start: int, end: int) -> Side | None:
    sides = {
        h.name
        for h in mend.message.hits("body")
        if h.table == "side" and h.name != "both" and not start <= h.start < end
    }
    return cast(Side, sides.pop()) if len(sides) == 1 else None


def _mentions(message: Message, taken: set[int]) -> list[Mention]:
    return [mention for mention in find_movements(message, taken) if mention.movement != "!"]


def _opposed(mend: _Mend, one_end: int, two_start: int) -> bool:
    return any(
        hit.start - one_end <= NEAR and _only_little(mend.tokens, hit.end, two_start)
        for hit in mend.between("not", one_end, two_start)
    )


def _of_sides(mend: _Mend) -> list[Claim]:
    sides = [h for h in mend.message.hits("body") if h.table == "side" and h.name != "both"]
    for one, two in itertools.pairwise(sides):
        if one.name != two.name and _opposed(mend, one.end, two.start):
            mentions = _mentions(mend.message, set())
            movement = mentions[-1].movement if mentions and not mentions[-1].movement.startswith("?") else None
            made = Correction("side", two.name, one.name, movement, None, _which(mend))
            return [Claim(one.start, two.end, "correction", made)]
    return []


def _of_movements(mend: _Mend) -> list[Claim]:
    mentions = _mentions(mend.message, set())
    values = mend.values()
    if len(mentions) != 2 or values:
        return []
    one, two = mentions
    if _denied_first(mend, one, two):
        one, two = two, one
    elif not _opposed(mend, one.end, two.start):
        return []
    if one.movement == two.movement:
        return []
    if one.movement.startswith("?") or two.movement.startswith("?"):
        return []
    made = Correction("movement", two.movement, one.movement, None, None, _which(mend))
    return [Claim(min(one.start, two.start), max(one.end, two.end), "correction", made)]


def _denied_first(mend: _Mend, one: Mention, two: Mention) -> bool:
    """ "It wasn't pull-ups, it was chin-ups"; "no eran dominadas sino supinas"."""
    nots = mend.between("not", max(0, one.start - NEAR), one.start)
    denied = any(_only_little(mend.tokens, hit.end, one.start) for hit in nots)
    return denied and bool(mend.between("now", one.end, two.start))


def _of_days(mend: _Mend) -> list[Claim]:
    if mend.values():
        return []
    days = [day for day in named_days(mend.message).days if day.back is not None]
    for one, two in itertools.pairwise(days):
        if _really(mend, one.end, two.start) and one.back and two.back and one.back != two.back:
            made = Correction("performed_on", one.back[1].isoformat(), two.back[1].isoformat(), None, None, "all")
            return [Claim(one.start, two.end, "correction", made)]
        plain = [h for h in mend.between("not", one.end, two.start) if h.end - h.start == 1]
        if plain and _opposed(mend, one.end, two.start) and one.back and two.back:
            made = Correction("performed_on", two.back[1].isoformat(), one.back[1].isoformat(), None, None, "all")
            return [Claim(one.start, two.end, "correction", made)]
    return []


def _really(mend: _Mend, start: int, end: int) -> bool:
    """Whether no more than "was actually" stands between two days: "yesterday's session was actually Monday's"."""
    between = mend.between("really", start, end)
    said = {at for hit in between for at in range(hit.start, hit.end)}
    small = little("the") | little("of") | little("article")
    return bool(between) and all(at in said or mend.tokens[at].text in small for at in range(start, end))
