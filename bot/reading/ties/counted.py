"""A number of sets in front of the sets themselves: "2 sets: 12 (RPE 7), 12 (RPE 8)"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import THEN, ends_sentence
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.ties.values import reps_of

LEAST, MOST = 2, 12  # sets
ASIDE = frozenset({"word", "plan", "sep", "scheme"})
REACH = 6  # facts from a count to its reps


def told_one_by_one(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without such a number, where as many sets follow, each with what is said of it."""
    for at in range(len(facts) - 1):
        count, mark = facts[at : at + 2]
        if count.kind != "count" or mark.note.get("mark") != ":" or count.value < LEAST:
            continue
        end = next((n for n in range(at + 2, len(facts)) if _closes(facts[n])), len(facts))
        parts = _parts(facts[at + 2 : end])
        if len(parts) == count.value and all(map(_one_set, parts)):
            return [*facts[:at], *facts[at + 2 :]]
    return facts


def counted_each(_: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "4 sets, 8 each with 20, then 2 sets, 4 each with 25": so many sets of so many."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        each = facts[at + 1] if at + 1 < len(facts) else None
        told = fact.kind == "bare" and each is not None and (each.kind, each.value) == ("side", "each")
        comma = bool(out) and out[-1].note.get("mark") == ","
        count = out[-1 - comma] if len(out) > comma else None
        reps = reps_of(fact) if told and count is not None and count.kind == "count" else None
        if reps is not None and count is not None and LEAST <= count.value <= MOST:
            del out[-1 - comma :]
            fact = Fact("rows", count.start, fact.end, [Entry(reps)] * int(count.value), {"plain": True})
        out.append(fact)
    return out


def holds_counted(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "3 de 8s", "3 of 8 seconds": so many holds."""
    for at in range(len(facts) - 2):
        many, of, hold = facts[at : at + 3]
        one = many.kind == "bare" and many.value in range(LEAST, MOST + 1) and hold.kind == "rows"
        held = one and len(hold.value) == 1 and hold.value[0].hold_s is not None and hold.value[0].reps is None
        if held and of.end - of.start == 1 and message.tokens[of.start].text in little("of_seconds"):
            rows = Fact("rows", many.start, hold.end, hold.value * int(many.value), hold.note)
            return [*facts[:at], rows, *facts[at + 3 :]]
    return facts


def counted_words(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "4 Sätze 3er +17,5, 3 Sätze mit 6 Wdh +20": a word for the reps of so many sets, with other sets told beside."""
    works = [at for at, fact in enumerate(facts) if fact.kind == "rows"]
    if len(works) < LEAST:
        return facts
    out = list(facts)
    for at in reversed(works):
        word = out[at]
        first = at - 2 if at > 1 and out[at - 1].kind == "word" else at - 1
        count = out[first] if first >= 0 else None
        plain = word.note.get("word") and word.note.get("each_of") and len(word.value) == 1
        if count is None or count.kind != "count" or not plain or not LEAST <= count.value <= MOST:
            continue
        if any(count.note.values()) or word.start - count.end > 1:
            continue  # "only 4 sets" are the plan's
        rows = Fact("rows", count.start, word.end, word.value * int(count.value), {"plain": True})
        out[first : at + 1] = [rows]
    return out


def counted_with_load(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Then 3 sets at 25 of 4": the load stands between the sets and their reps."""
    for at in range(len(facts) - 2):
        told = [n for n in range(at, min(at + REACH, len(facts))) if facts[n].kind not in ("word", "side")][:3]
        if len(told) < 3 or told[0] != at or facts[at].kind != "count":
            continue
        count, load, work = (facts[n] for n in told)
        reps = reps_of(work) if load.kind == "load" and load.value and load.note.get("how") == "at" else None
        if reps is None or not any(_of(fact) for fact in facts[told[1] + 1 : told[2]]):
            continue
        rows = Fact("rows", count.start, count.end, [Entry(reps)] * int(count.value), {"plain": True})
        return [*facts[:at], rows, load, *facts[told[2] + 1 :]]
    return facts


def counted_singles(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Muscle-ups: 3, all singles": so many of them; "first muscle-up, did 3 more after, all singles" are four."""
    if message.context.today:
        return facts  # "… encima de las seis, todas dobles": the planned ones
    for at in range(2, len(facts)):
        every, word = facts[at - 1 : at + 1]
        single = word.kind == "rows" and len(word.value) == 1 and bool(word.note.get("word"))
        if not single or (every.kind, every.value) != ("scope", "all"):
            continue
        many = next((n for n in range(at - 2, max(-1, at - REACH), -1) if facts[n].kind not in ASIDE), 0)
        if facts[many].kind != "bare" or facts[many].value not in range(LEAST, MOST + 1):
            continue
        before = facts[:many]
        more = any("more" in fact.note.get("names", ()) for fact in facts[many : at - 1])
        one = more and not any(fact.kind in ("rows", "bare", "count") for fact in before)
        one = one and any(fact.kind == "move" for fact in before)
        rows = Fact("rows", facts[many].start, word.end, word.value * (int(facts[many].value) + one), {"plain": True})
        return [*before, rows, *facts[at + 1 :]]
    return facts


def counted_by_name(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Two squat sets of 5", "zwei Klimmzug-Sätze mit 5": the movement stands between the count and its sets."""
    for at in range(len(facts) - 2):
        count, move, sets = facts[at : at + 3]
        plain = count.kind == "bare" and count.value == int(count.value) and LEAST <= count.value <= MOST
        if not plain or move.kind != "move" or sets.kind != "rows" or not sets.note.get("each_of"):
            continue
        if at and facts[at - 1].kind == "scope" and facts[at - 1].value in ("first", "last"):
            led = facts[at - 1]  # "first 3 chin sets with 25": which ones, and no whole sets
            scope = Fact("scope", led.start, count.end, (led.value, int(count.value)), {"text": ""})
            return [*facts[: at - 1], scope, *facts[at + 1 :]]
        if len(sets.value) == 1 and count.end == move.start and move.end == sets.start and not sets.note.get("word"):
            rows = Fact("rows", sets.start, sets.end, sets.value * int(count.value), {"plain": True})
            return [*facts[:at], move, rows, *facts[at + 3 :]]
    return facts


def counted_and_listed(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Two sets of dips eleven and nine": as many sets as numbers behind the movement, one each."""
    for at in range(len(facts) - 3):
        count = facts[at]
        if count.kind != "count" or not LEAST <= count.value <= MOST:
            continue
        move = next((n for n in (at + 1, at + 2) if facts[n].kind == "move"), None)
        if move is None or any(fact.kind != "word" for fact in facts[at + 1 : move]):
            continue
        numbers, end = _numbers(facts, move + 1)
        follows = facts[end] if end < len(facts) else None
        taken = follows is not None and follows.kind in ("move", "bare", "rows", "count", "flag", "fail")
        if len(numbers) != count.value or taken or any(one.value != int(one.value) for one in numbers):
            continue
        values = [one.value for one in numbers]
        note = {"list": True, "mark": ",", "values": values}
        rows = Fact("rows", numbers[0].start, numbers[-1].end, [Entry(int(value)) for value in values], note)
        return counted_and_listed(_, [*facts[:at], facts[move], rows, *facts[end:]])
    return facts


def _numbers(facts: Sequence[Fact], at: int) -> tuple[list[Fact], int]:
    """The bare numbers that commas and "and" join from a place on, and where they end."""
    found: list[Fact] = []
    if facts[at : at + 1] and facts[at].note.get("mark") in (":", ","):
        at += 1
    while at < len(facts) and facts[at].kind == "bare":
        found.append(facts[at])
        at += 1
        joined = at + 1 < len(facts) and facts[at].kind == "sep" and facts[at].note.get("mark") in (",", "and")
        if not joined or facts[at + 1].kind != "bare":
            break
        at += 1
    return found, at


def _of(fact: Fact) -> bool:
    each = fact.kind == "side" and bool(fact.note.get("plain"))
    return each or (fact.kind == "word" and str(fact.value) in little("so_many_each"))


def _closes(fact: Fact) -> bool:
    return fact.kind == "move" or ends_sentence(fact)


def _parts(facts: Sequence[Fact]) -> list[list[Fact]]:
    """The facts between commas, those in brackets with what stands before them."""
    parts: list[list[Fact]] = [[]]
    for fact in facts:
        if fact.kind == "sep" and (fact.value == THEN or fact.note.get("mark") in (",", "and")):
            parts.append([])
        else:
            parts[-1].append(fact)
    return [part for part in parts if part]


def _one_set(part: Sequence[Fact]) -> bool:
    """Whether a part is one number of reps with an effort."""
    kinds = [fact.kind for fact in part if fact.kind not in ("word", "sep")]
    return kinds in (["bare", "effort"], ["bare", "effort", "effort"])
