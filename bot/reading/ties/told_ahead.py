"""What is told before the sets that it is of: "failed the last rep of the last set on dips, 4x6 @ 80"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import clause_end, clause_start
from bot.reading.facts import LOADED, Fact
from bot.reading.little import little
from bot.reading.message import Message

OF_A_MISS = frozenset({"fail", "scope", "word", "last_rep"})
OF_SETS_APART = frozenset({"scope", "word", "bare", "move", "scheme"})
LEAST_LOAD, CHANGE = 13, 3  # the facts of "upped dips to"
TIED = frozenset({"load", "at", "effort", "effort_range", "flag"})


def misses_ahead(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts with the miss of one of several sets behind the scheme that it is of."""
    if message.context.today:
        return facts
    end = clause_end(facts)
    ahead, behind = facts[:end], facts[end + 1 :]
    moves = [fact for fact in ahead if fact.kind == "move"]
    missed = [fact for fact in ahead if fact.kind == "fail" and not fact.note.get("weak")]
    silent = all(fact.kind in OF_A_MISS or fact.kind == "move" or fact.value == "the" for fact in ahead)
    if len(missed) != 1 or not silent or len(moves) > 1 or not _of_one_set(ahead, missed[0]):
        return facts
    first = 1 if behind and behind[0].kind == "move" else 0
    named = [fact for fact in behind[1:2] if fact.kind == "move"]  # "missed my last rep on set 4, 5x5 pull-ups"
    if bool(moves) + bool(first) + bool(named) != 1 or len(behind) <= first:
        return facts  # of another lift, or of none that is named
    scheme = behind[first]
    if scheme.kind != "rows" or not scheme.note.get("plain") or len(scheme.value) < 2:
        return facts
    stop = first + 1 + len(named)
    while stop < len(behind) and behind[stop].kind in TIED:
        stop += 1
    told = [fact for fact in ahead if fact.kind != "move"]
    mark = Fact("sep", facts[end].start, facts[end].end, 1, {"mark": ","})
    after = behind[stop:]
    closing = [mark] if after and after[0].kind != "sep" else []
    return [*moves, *behind[:stop], mark, *told, *closing, *after]


def miss_of_lift(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Missed the last rep of dips 3x8": the facts with the miss behind the sets that it is of."""
    if message.context.today:
        return facts
    for at in range(2, len(facts)):
        move, scheme = facts[at - 1 : at + 1]
        if move.kind != "move" or scheme.kind != "rows" or not scheme.note.get("plain") or len(scheme.value) < 2:
            continue
        low = clause_start(facts, at - 1)
        ahead = facts[low : at - 1]
        missed = [fact for fact in ahead if fact.kind == "fail" and not fact.note.get("weak")]
        silent = all(fact.kind in OF_A_MISS or fact.value == "the" for fact in ahead)
        if len(missed) != 1 or not silent or not _of_one_set(ahead, missed[0]):
            continue
        stop = at + 1
        while stop < len(facts) and facts[stop].kind in TIED:
            stop += 1
        mark = Fact("sep", scheme.end, scheme.end, 1, {"mark": ","})
        return [*facts[:low], *facts[at - 1 : stop], mark, *ahead, *facts[stop:]]
    return facts


def sets_ahead(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Last two sets I only got 5, 4x6": the facts with the sets told apart behind the scheme that they are of."""
    headed = len(facts) > 1 and facts[0].kind == "move" and facts[1].note.get("mark") == ":"
    start = 2 if headed else 0  # "pull-ups: last two sets only 5, 4x6"
    end = next((n for n, fact in enumerate(facts) if fact.kind == "sep" and n >= start), len(facts))
    ahead, behind = [*facts[: start // 2], *facts[start:end]], facts[end + 1 :]
    scopes = [fact.value for fact in ahead if fact.kind == "scope"]
    reps = [fact.value for fact in ahead if fact.kind == "bare" and not fact.note.get("comma")]
    silent = all(fact.kind in OF_SETS_APART or fact.value in ("the", "only") for fact in ahead)
    moves = [fact for fact in (*ahead, *behind[:2]) if fact.kind == "move"]
    if len(scopes) != 1 or len(reps) != 1 or not silent or len(moves) > 1:
        return facts
    at = next((n for n, fact in enumerate(behind[:2]) if fact.kind == "rows"), None)
    if at is None or any(fact.kind != "move" for fact in behind[:at]):
        return facts
    scheme, own = behind[at], scopes[0]
    many = 1 if own == "last" else own[1] if isinstance(own, tuple) and own[0] == "last" else len(scheme.value)
    if not scheme.note.get("plain") or len(scheme.value) <= many or reps[0] > (scheme.value[0].reps or 0):
        return facts
    stop = at + 1
    while stop < len(behind) and behind[stop].kind in TIED | {"move"}:
        stop += 1
    mark = Fact("sep", facts[end].start, facts[end].end, 1, {"mark": ","})
    led = [fact for fact in ahead if fact.kind == "move"]
    told = [fact for fact in ahead if fact.kind != "move"]
    return [*led, *behind[:stop], mark, *told, *behind[stop:]]


def _of_one_set(ahead: Sequence[Fact], missed: Fact) -> bool:
    """Whether the words say of which set, or of which repetition of the last one, the miss was."""
    return missed.value is not None or any(fact.kind in ("scope", "last_rep") for fact in ahead)


def total_of_sides(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "20 pistols total, 10 each leg": the total is twice what each side did, and no set of its own."""
    for at, side in enumerate(facts[1:], 1):
        each = facts[at - 1]
        if side.kind != "side" or side.value != "each" or each.kind != "bare":
            continue
        before = [n for n in range(at - 1) if facts[n].kind not in ("word", "sep", "move", "scheme")]
        if len(before) == 1 and facts[before[0]].kind == "bare" and facts[before[0]].value == 2 * each.value:
            return [fact for n, fact in enumerate(facts) if n != before[0]]
    return facts


def load_kept(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Stayed at 45 for dips, 4x6", "upped dips to 75, got 4 sets of 4": the load of the sets behind."""
    if message.context.today:
        return facts
    for at in range(1, len(facts) - 1):
        fact = facts[at]
        if fact.kind != "bare" or fact.value < LEAST_LOAD or fact.note.get("spelled") or fact.note.get("comma"):
            continue
        end = clause_end(facts, at)
        start = clause_start(facts, at + 1)
        lifts = [one for one in facts[start:end] if one.kind == "move" and one.value.movement in LOADED]
        named = {name for one in facts[at - 1 : at] for name in one.note.get("names", ())}
        turned = at > 1 and _turned_to(message, facts[max(start, at - CHANGE) : at])
        rows = next((one for one in facts[end:] if one.kind in ("rows", "bare", "load", "move")), None)
        if len(lifts) == 1 and ("took" in named or turned) and rows is not None and rows.kind == "rows":
            load = replace(fact, kind="load", value=float(fact.note.get("kg", fact.value)), note={"how": "at"})
            return [*facts[:at], load, *facts[at + 1 :]]
    return facts


def _turned_to(message: Message, led: Sequence[Fact]) -> bool:
    """ "Upped dips to": a word for a change, the lift, and "to" right before the number."""
    if len(led) != CHANGE or led[1].kind != "move" or led[0].kind != "word" or led[2].kind != "word":
        return False
    change, to = message.tokens[led[0].end - 1].text, message.tokens[led[2].end - 1].text
    return change in little("turned") and to in little("turned_to_word")
