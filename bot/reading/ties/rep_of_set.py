"""Which repetition of which set did not go up: "im letzten Satz die zweite verkackt", "missed the third in set 2".

So too the one that somebody went for: "on the last I went for a fourth and fell".
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import is_comma, within_sentence
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

BESIDE = frozenset({"word", "plan", "scheme"})  # what may stand between the set, the repetition and the miss

NEAR = 5  # tokens from the words of a try to the repetition
AHEAD = 3  # facts before a miss: the work, the reps missed, their set
REACH = 6  # facts from the repetition to what became of it


def rep_gone_for(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with a miss in place of the repetition that was tried and of what became of it."""
    for at, fact in enumerate(facts):
        figured = _figured(message, facts, at)
        if not figured and (fact.kind != "scope" or not isinstance(fact.value, int) or _names_set(message, fact)):
            continue
        if not _led(message, fact):
            continue
        nth = fact.value if fact.value is not None else message.tokens[fact.start].value or 0
        fact = replace(fact, kind="scope", value=int(nth))
        for n in range(at + 1, min(at + 1 + REACH, len(facts))):
            one = facts[n]
            missed = one.kind == "fail" and not one.note.get("weak") and one.value is None
            if missed or (one.kind == "word" and message.tokens[one.start].text in little("fell")):
                rep = Fact("fail", fact.start, fact.end, fact.value, {"rep": True})
                between = facts[at + 1 : n]
                own = [other for other in between if other.kind == "scope"]  # "a fourth on the last one, but missed"
                rest = [other for other in between if other.kind != "scope"]
                return [*_without(facts[:at], fact.value - 1), *own, rep, *rest, *facts[n + 1 :]]
            if one.kind not in BESIDE and not is_comma(one) and one.value != "last":
                break
    return facts


def _figured(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """ "The 4th", "la 4ª", in figures."""
    first = message.tokens[facts[at].start] if facts[at].start < len(message.tokens) else None
    if facts[at].kind == "word" and first is not None and first.kind == "num" and facts[at].end == facts[at].start + 2:
        return message.tokens[facts[at].end - 1].text in little("ordinal_ending")  # "the 6th rep"
    end = message.tokens[facts[at].end] if facts[at].end < len(message.tokens) else None
    if facts[at].kind != "bare" or end is None or end.space or facts[at].value != int(facts[at].value):
        return False
    return end.text in little("ordinal_ending") and end.text.isalpha()


def _without(facts: Sequence[Fact], reps: int) -> list[Fact]:
    """The facts without the reps that name the set again: "on the 3 I went for a fourth"."""
    for at in range(len(facts) - 1, -1, -1):
        told = facts[at].kind in ("bare", "load") and facts[at].value == reps
        if told and at and facts[at - 1].kind != "rows":
            return [*facts[:at], *facts[at + 1 :]]
        if facts[at].kind not in BESIDE and not (facts[at].kind == "bare" and facts[at].note.get("spelled")):
            break
    return list(facts)


def _led(message: Message, fact: Fact) -> bool:
    """Whether words of a try stand before a fact, with nothing but words between."""
    low = max(0, fact.start - NEAR)
    words = [token.text if token.kind == "word" else "," for token in message.tokens[low : fact.start]]
    words = " ".join(words).rpartition(",")[2].split()
    text = f" {' '.join(words)} "
    return any(f" {lead} " in text for lead in little("went_for", "wanted_one"))


def rep_of_set(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the repetition at the miss that it is of, where another word names the set."""
    for at, fact in enumerate(facts):
        if fact.kind != "fail" or fact.note.get("weak"):
            continue
        after = _next_rep(message, facts, at)
        if after is not None:
            missed = replace(fact, value=_reps(facts[after]) + 1, note={**fact.note, "rep": True})
            return [*facts[:after], missed, *facts[at + 1 :]]
        if isinstance(fact.value, int):
            behind = next((n for n in range(at + 1, len(facts)) if facts[n].kind not in BESIDE), None)
            if behind is not None and _is_set(message, facts[behind]):
                missed = replace(fact, note={**fact.note, "rep": True})
                return [*facts[:at], facts[behind], missed, *facts[at + 1 : behind], *facts[behind + 1 :]]
        if fact.value is not None:
            continue
        scopes = _before(facts, at)
        if len(scopes) == 1 and not message.context.today and _last_told(message, facts, scopes[0]):
            missed = replace(fact, value=facts[scopes[0]].value, note={**fact.note, "rep": True})
            return [missed if n == at else one for n, one in enumerate(facts) if n != scopes[0]]
        if len(scopes) != 2:
            continue
        sets = [n for n in scopes if _names_set(message, facts[n])]
        reps = [n for n in scopes if n not in sets and (isinstance(facts[n].value, int) or facts[n].value == "last")]
        if len(sets) == 1 and len(reps) == 1:
            missed = replace(fact, value=facts[reps[0]].value, note={**fact.note, "rep": True})
            if facts[at - 1].kind == "sep":
                if not _a_rep(message, facts[reps[0]]):
                    continue
                kept = [one for n, one in enumerate(facts[: at - 1]) if n != reps[0]]
                return [*kept, missed, *facts[at + 1 :]]
            return [missed if n == at else one for n, one in enumerate(facts) if n != reps[0]]
    return facts


def set_of_rep(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts with the set before the repetition missed in it: "missed the last rep on set 4", "missed a rep on the
    last set". A plan's own rules know which set is meant."""
    if message.context.today:
        return facts
    out: list[Fact] = list(facts)
    for at, fact in enumerate(facts):
        if fact.kind != "fail" or fact.note.get("weak"):
            continue
        nth = _told_ahead(message, facts, at) if fact.value is None else None
        if nth is not None:
            missed = replace(fact, value=nth, note={**fact.note, "rep": True})
            return [*facts[: at - 2], facts[at - 1], missed, *facts[at + 1 :]]
        if fact.value == "last" and not fact.note.get("rep") and _one_rep(message, fact.start + 1, fact.end):
            named = Fact("scope", fact.end, fact.end, "last", {"text": ""})
            out[at : at + 1] = [named, replace(fact, value="last", note={**fact.note, "rep": True})]
            return out
        scope = at + 1
        many: int | None = None
        while scope < len(facts) and (facts[scope].kind == "word" or (many is None and _so_many_reps(facts[scope]))):
            many = many if facts[scope].kind == "word" else facts[scope].value[0].reps
            scope += 1
        of_set = scope < len(facts) and facts[scope].kind == "scope" and _names_set(message, facts[scope])
        if fact.value is None and of_set and _one_rep(message, fact.end, facts[scope].start):
            many = 1
        nth = fact.value if fact.note.get("rep") else _nth(out[:at], many) if fact.value is None else None
        if of_set and nth is not None:
            missed = replace(fact, value=nth, note={**fact.note, "rep": True})
            return [*facts[:at], facts[scope], missed, *facts[scope + 1 :]]
    return facts


def _told_ahead(message: Message, facts: Sequence[Fact], at: int) -> int | str | None:
    """ "4x5, one rep in the last set missed": which repetition, where reps and set stand before the miss."""
    if at < AHEAD or not _so_many_reps(facts[at - 2]) or not _is_set(message, facts[at - 1]):
        return None
    return _nth(facts[: at - 2], facts[at - 2].value[0].reps)


def _so_many_reps(fact: Fact) -> bool:
    return fact.kind == "rows" and bool(fact.note.get("reps")) and len(fact.value) == 1


def _nth(before: Sequence[Fact], many: int | None) -> int | str | None:
    """Which repetition was the first one missed, where so many were."""
    if many is None or many == 1:
        return "last" if many else None
    rows = next((fact for fact in reversed(before) if fact.kind == "rows"), None)
    left = (rows.value[-1].reps or 0) - many if rows is not None else 0
    return left + 1 if left > 0 else None


def _one_rep(message: Message, start: int, end: int) -> bool:
    """ "a rep", "one": one repetition, whichever."""
    first = message.tokens[start] if start < end else None
    return first is not None and (first.text in little("a", "one") or first.value == 1)


def _next_rep(message: Message, facts: Sequence[Fact], at: int) -> int | None:
    """ "Last set only 2, failed the third": where the reps stand of the set that the miss behind a comma is of."""
    reps = next((n for n in range(at - 1, -1, -1) if facts[n].kind in ("bare", "rows")), None)
    if message.context.today or reps is None or reps < 1:
        return None
    between = [fact for fact in facts[reps + 1 : at] if fact.kind not in BESIDE]
    nth = facts[at].value if facts[at].value is not None else between[-1].value if between else None
    named = between[:-1] if facts[at].value is None else between
    joined = len(named) == 1 and within_sentence(named[0])
    scope = next((n for n in range(reps - 1, -1, -1) if facts[n].kind not in BESIDE), None)
    words = {token.text for token in message.tokens[facts[reps].end : facts[at].start]}
    if words & (little("before_scope", "on_lift")):
        return None  # "four in the fourth, in the fifth one missed": a set
    if not joined or scope is None or facts[scope].kind != "scope" or facts[scope].value == "all":
        return None
    return reps if isinstance(nth, int) and nth == _reps(facts[reps]) + 1 else None


def _a_rep(message: Message, fact: Fact) -> bool:
    """Whether a scope says that it is of a repetition: "the third rep"."""
    words = {token.text for token in message.tokens[fact.start : fact.end + 1]}
    return not words.isdisjoint(little("rep_of", "rep_word"))


def _last_told(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """ "Right 1, and the second rep there not made": a repetition, one more than the set told right before has."""
    told = next((facts[n] for n in range(at - 1, -1, -1) if facts[n].kind not in (*BESIDE, "sep")), None)
    reps = _reps(told) if told is not None and told.kind in ("bare", "rows") else 0
    return reps > 0 and facts[at].value == reps + 1 and _a_rep(message, facts[at])


def _reps(fact: Fact) -> int:
    """The reps of the one set that a fact tells; 0: of none."""
    if fact.kind == "bare":
        return int(fact.value)
    return int(fact.value[0].reps or 0) if len(fact.value) == 1 else 0


def _before(facts: Sequence[Fact], at: int) -> list[int]:
    """The scopes of the clause right before a miss."""
    found: list[int] = []
    comma = at and facts[at - 1].kind == "sep" and facts[at - 1].note.get("mark") == ","
    for n in range(at - 1 - bool(comma), -1, -1):  # "in the fourth set the third rep, it didn't go"
        if facts[n].kind == "scope":
            found.append(n)
        elif facts[n].kind not in BESIDE:
            break
    return found


def _is_set(message: Message, fact: Fact) -> bool:
    return fact.kind == "scope" and _names_set(message, fact)


def _names_set(message: Message, fact: Fact) -> bool:
    """Whether a scope says that it is of a set."""
    grammar = message.beginning("grammar")
    return bool(fact.note.get("numbered")) or any(
        hit.table == "sets" and hit.start <= fact.end
        for n in range(fact.start, min(fact.end + 1, len(grammar)))
        for hit in grammar[n]
    )
