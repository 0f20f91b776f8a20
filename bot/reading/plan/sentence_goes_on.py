"""What a sentence goes on to say of the set that it has named, and of those before it.

"Last set only 3 and down to 15, rest as planned"; "the last one 8, before that all as planned".
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import SENTENCE, clause_end, sentence_end
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import GLOBAL, plan_names

VALUES = frozenset({"rows", "bare", "load", "instead"})
ASIDE = frozenset({"word", "scheme", "claim"})
ENDED = frozenset({"stopped", "quit"})  # "and stopped after 3 reps"
BESIDE = frozenset({"only", "the", "took", "turned_to", "less", "more", "done"})
AS_PLANNED = GLOBAL - {"rest"}
UNSURE = ("all", "over", "rest", "top", "back")


def before_as_planned(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """The facts, with "the rest" for "before that" in a clause that tells no more than that it went as planned."""
    named = any(fact.kind == "scope" and fact.value not in UNSURE for fact in facts)
    if not named:
        return list(facts)
    out: list[Fact] = []
    start = 0
    while start < len(facts):
        end = clause_end(facts, start)
        piece = facts[start:end]
        before = next((fact for fact in piece if _before(message, fact)), None)
        told = piece.index(before) if before is not None else 0
        if before is not None and told and any(fact.kind in VALUES for fact in piece[:told]):
            out += [*piece[:told], Fact("sep", before.start, before.start, 1, {"mark": ","})]
            piece = piece[told:]  # "trotzdem 7 Wdh. davor wie geplant": the stop closes the short word
        if before is not None and _only_as_planned(piece):
            rest = Fact("plan", before.start, before.end, "rest", {"names": ["rest"]})
            piece = [rest if fact is before else fact for fact in piece if fact.kind != "scope"]
        out += [*piece, *facts[end : end + 1]]
        start = end + 1
    return out


def _before(message: Message, fact: Fact) -> bool:
    """Whether a word means the sets before."""
    words = [token.text for token in message.tokens[fact.start : fact.end]]
    return fact.kind == "word" and bool(words) and words[0] in little("those_before")


def _only_as_planned(piece: Sequence[Fact]) -> bool:
    """Whether a clause says that something went as planned, and names no set, number or lift."""
    names = {name for fact in piece for name in plan_names(fact)}
    aside = all(fact.kind in ASIDE or fact.kind == "plan" or fact.value == "all" for fact in piece)
    return aside and bool(names & AS_PLANNED) and not names & {"except", "skipped", "not", "instead", "rest"}


def set_goes_on(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """The facts without the signs between values of one set: its reps, and its load.

    Only where the others are told to be as planned, or the second is led by "and" and a word for a change.
    """
    told = _others_told(facts)
    out: list[Fact] = []
    start = 0
    while start < len(facts):
        end = sentence_end(facts, start)
        out += _joined(facts, start, end, told)
        out += facts[end : end + 1]
        start = end + 1
    return out


def _joined(facts: Sequence[Fact], start: int, end: int, told: bool) -> list[Fact]:
    out: list[Fact] = []
    clause: list[Fact] = []
    at = start
    while at < end:
        stop = min(clause_end(facts, at), end)
        piece = list(facts[at:stop])
        parted = facts[at - 1] if at > start else None
        if parted is not None and parted.value != SENTENCE and _of_one_set(clause) and _goes_on(clause, piece):
            turned = any(plan_names(fact) & {"turned_to"} for fact in piece) and parted.note.get("mark") == "and"
            if told or turned:
                while out and out[-1].kind == "sep":
                    out.pop()
                piece = [_hung(fact) for fact in piece]
                clause += piece
                out += piece
                at = stop + 1
                if stop < end:
                    out.append(facts[stop])
                continue
        if piece:
            clause = piece
        out += piece
        if stop < end:
            out.append(facts[stop])
        at = stop + 1
    return out


def _hung(fact: Fact) -> Fact:
    """A load in a clause of its own is what hung there, and not by how much it was "lighter"."""
    if fact.kind != "load" or fact.note.get("how") or fact.note.get("none"):
        return fact
    return replace(fact, note={**fact.note, "how": "at"})


def _others_told(facts: Sequence[Fact]) -> bool:
    """Whether a clause says that the other sets, or some of them, were as planned."""
    start = 0
    while start < len(facts):
        end = clause_end(facts, start)
        piece = facts[start:end]
        names = {name for fact in piece for name in plan_names(fact)}
        plain = not any(fact.kind in VALUES for fact in piece) and not any(fact.kind == "move" for fact in piece)
        if plain and names & {"done", "planned", "same"} and not names & {"skipped", "not", "only"}:
            return True  # "all done", "the rest as planned"
        whole = any(fact.kind in ("scope", "count") for fact in piece)
        if plain and ((names & AS_PLANNED and ("rest" in names or whole)) or "except" in names):
            return True
        start = end + 1
    return False


def _of_one_set(piece: Sequence[Fact]) -> bool:
    """Whether a clause names one set, and at most one value of it."""
    names = {name for fact in piece for name in plan_names(fact)}
    scopes = [fact for fact in piece if fact.kind == "scope" and not (fact.value == "all" and "except" in names)]
    values = [fact for fact in piece if fact.kind in VALUES]
    if not scopes or len({str(fact.value) for fact in scopes}) > 1 or scopes[0].value in UNSURE:
        return False
    if isinstance(scopes[0].value, tuple) and values:
        return False
    known = ASIDE | VALUES | {"scope", "plan", "move"}
    silent = not names - BESIDE - {"except", "all_lifts"}
    return len(values) < 2 and silent and all(fact.kind in known for fact in piece)


def _goes_on(before: Sequence[Fact], piece: Sequence[Fact]) -> bool:
    """Whether a clause tells a value that the one before has not told, and names no set of its own."""
    values = [fact for fact in piece if fact.kind in VALUES]
    names = {name for fact in piece for name in plan_names(fact)}
    if not values and names and not names - BESIDE and all(fact.kind in ASIDE | {"plan"} for fact in piece):
        return True  # "on the last one I went lighter and shorter, 17.5 and four reps"
    known = ASIDE | VALUES | {"plan"}
    if not any(fact.kind in VALUES or fact.kind == "side" for fact in before):
        known |= {"side"}  # "distracted on the last set of archers, so only one on the right"
    ended = ENDED if values and values[0].kind == "rows" and values[0].note.get("reps") else frozenset()
    two = sorted(_sort(fact) for fact in values) == ["load", "work"]
    two = two and not any(fact.kind in VALUES for fact in before)  # "a fifth set on top: 3 reps +12.5"
    if not (len(values) == 1 or two) or names - BESIDE - ended or any(fact.kind not in known for fact in piece):
        return False
    told = {_sort(fact) for fact in before if fact.kind in VALUES}
    single = all(len(fact.value) == 1 for fact in values if fact.kind == "rows")
    return single and told.isdisjoint(_sort(fact) for fact in values)


def _sort(fact: Fact) -> str:
    """What a value is of: the load, or the work."""
    if fact.kind == "instead":
        return "load" if fact.value[2] in ("kg", "lb") else "work"
    return "load" if fact.kind == "load" else "work"
