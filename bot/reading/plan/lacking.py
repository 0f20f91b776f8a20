"""Reps that a set lacked: "en la tercera me faltó una rep", "beim letzten fehlten 2", "missed one rep on the last"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message

PARTED = 2  # facts before the word: the reps, and the set
MOST_LACKED = 3  # reps; of more it is said what was done
MOST_SECONDS = 10  # so many that a hold lacked


def reps_lacked(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """The facts with so many reps less in place of the number, where a set is named in the same clause."""
    out: list[Fact] = []
    facts = _one_rep(message, facts)
    for at, fact in enumerate(facts):
        if _parted(message, out, fact):
            start, many = out[-2].start, _so_many(out[-2])
            out[-2:] = [out[-1], _lacked(start, fact.end, many, missed=fact.kind == "fail")]
            continue
        if _seconds(fact) and _short_of_goal(message, facts[at + 1 : at + 3]):
            out.append(Fact("delta", fact.start, fact.end, (fact.value[0].hold_s, "hold", -1), {"open": False}))
            continue
        pair = [out[-1], fact] if out and out[-1].end == fact.start else []
        lacked = next((one for one in pair if _seconds(one)), None)
        if lacked is not None and any(_lacks(message, one) for one in pair if one is not lacked):
            amount = float(lacked.value[0].hold_s or 0)  # "me faltaron dos segundos"
            out[-1] = Fact("delta", pair[0].start, fact.end, (amount, "hold", -1), {"open": False})
            continue
        if len(out) >= PARTED and _so_many(fact) and fact.note.get("spelled", True) and _behind_set(message, out):
            out[-2:] = [out[-1], _lacked(out[-2].start, fact.end, _so_many(fact), missed=out[-2].kind == "fail")]
            continue
        led = bool(pair) and _missed(pair[0]) and _told_reps(pair[1])  # "failed one rep on set 4"
        lack = pair[:1] if led else [one for one in pair if _lacks(message, one)][:1]
        number = [one for one in pair if one not in lack and _so_many(one)]
        if lack and number and (_told_reps(number[0]) or _set_named(out, facts[at + 1 :])):
            missed = lack[0].kind == "fail"
            out[-1] = _lacked(pair[0].start, pair[1].end, _so_many(number[0]), missed=missed)
            continue
        out.append(fact)
    return out


def _seconds(fact: Fact) -> bool:
    """Whether a fact is a few seconds."""
    one = fact.kind == "rows" and len(fact.value) == 1 and bool(fact.note.get("one"))
    return one and 0 < (fact.value[0].hold_s or 0) <= MOST_SECONDS


def _short_of_goal(message: Message, after: Sequence[Fact]) -> bool:
    """ "A 2 s del objetivo": whether words behind a time say that it is what was lacking."""
    return " ".join(_text(message, fact) for fact in after) in little("short_of_goal")


def _one_rep(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Lost a rep on the third": one, where it stands beside the word for what was lacking."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        a_rep = bool(out) and fact.kind == out[-1].kind == "word" and _text(message, fact) in little("rep_word")
        if a_rep and _text(message, out[-1]) in little("a"):
            beside = [*out[-PARTED:-1], *facts[at + 1 : at + 2]]
            if any(_lacks(message, one) or _missed(one) for one in beside):
                out[-1] = Fact("rows", out[-1].start, fact.end, [Entry(1)], {"one": True, "reps": True})
                continue
        out.append(fact)
    return out


def _text(message: Message, fact: Fact) -> str:
    return " ".join(token.text for token in message.tokens[fact.start : fact.end])


def _parted(message: Message, before: Sequence[Fact], fact: Fact) -> bool:
    """ "Eine Wdh im letzten Satz verfehlt": the set stands between the reps and the word for what they lacked."""
    if len(before) < PARTED or not (_missed(fact) or _lacks(message, fact)):
        return False
    number, named = before[-PARTED:]
    of_set = named.kind == "scope" and named.value != "all"
    return of_set and _told_reps(number) and bool(_so_many(number))


def _behind_set(message: Message, before: Sequence[Fact]) -> bool:
    """ "Fehlte in jedem Satz eine": the set stands between the word for what was lacking and the reps."""
    lack, named = before[-PARTED:]
    return named.kind == "scope" and (_missed(lack) or _lacks(message, lack))


def _missed(fact: Fact) -> bool:
    return fact.kind == "fail" and fact.value is None and not fact.note.get("weak")


def _lacked(start: int, end: int, many: int, *, missed: bool) -> Fact:
    """So many reps less; one that was missed is the last."""
    if missed and many == 1:
        return Fact("fail", start, end, "last", {"rep": True})
    return Fact("delta", start, end, (float(many), "reps", -1), {"open": False})


def _lacks(message: Message, fact: Fact) -> bool:
    """Whether a fact is a word for what was lacking."""
    words = {token.text for token in message.tokens[fact.start : fact.end]}
    slipped = bool(words & little("slipped")) and fact.start > 0  # "se me fue una"; not "la última fue 3"
    slipped = slipped and message.tokens[fact.start - 1].text in little("slipped_lead")
    return fact.kind in ("plan", "word", "fail") and (slipped or bool(words & little("lacked")))


def _so_many(fact: Fact) -> int:
    """How many reps a fact counts; 0: it counts none."""
    value = fact.value
    if fact.kind == "rows" and len(value) == 1 and fact.note.get("one"):
        value = value[0].reps
    elif fact.kind != "bare":
        return 0
    return int(value) if value in range(1, MOST_LACKED + 1) else 0


def _told_reps(fact: Fact) -> bool:
    return fact.kind == "rows" and bool(fact.note.get("reps"))


def _set_named(before: Sequence[Fact], after: Sequence[Fact]) -> bool:
    """Whether the clause names sets: "in the last one", "in every set"."""
    for facts in (reversed(before), after):
        for fact in facts:
            if fact.kind == "sep":
                break
            if fact.kind == "scope":
                return True
    return False
