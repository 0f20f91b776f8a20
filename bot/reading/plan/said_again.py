"""What is said of one lift, said of another in few words: "one set less of dips and another of chins"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import SENTENCE, clause_end, clause_start
from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, plan_names
from bot.reading.plan.value import near_reps

MOST_WORDS = 4  # in a clause that only says "of the dips too"


def of_another_too(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Dropped 2.5 kg on the dips and on the chins too", "cut one set of dips and another of chins": of both."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        out.append(fact)
        if fact.kind != "sep" or fact.value == SENTENCE or not at:
            continue
        own = list(facts[at + 1 : clause_end(facts, at + 1)])
        moves = [one for one in own if one.kind == "move"]
        before = facts[clause_start(facts, at) : at]
        led = any(one.kind == "move" for one in before)
        if len(moves) != 1 or not led or len(own) > MOST_WORDS or any(one.kind not in ("word", "move") for one in own):
            continue
        words = {token.text for one in own for token in message.tokens[one.start : one.end]}
        changes = [one for one in before if one.kind in ("delta", "count")]
        too = words & little("too") and len(changes) == 1 and changes[0].kind == "delta"
        another = words & little("another_set") and len(changes) == 1 and changes[0].kind == "count"
        if too or another:
            out += [replace(one, start=fact.end, end=fact.end) for one in before if one in changes or _takes_away(one)]
    return out


def numbers_of_lift(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "De flexiones hice 8 y 8", "extra leg raises 10 and 10": the reps of two sets."""
    out: list[Fact] = []
    move: Fact | None = None
    for fact in facts:
        move = fact if fact.kind == "move" else None if fact.kind == "sep" and fact.value == SENTENCE else move
        pair = out[-2:]
        joined = [one.kind for one in pair] == ["bare", "sep"] and pair[1].note.get("mark") == "and"
        joined = joined and not any(one.kind == "scope" for one in out[clause_start(out, len(out) - 1) :])
        if fact.kind == "bare" and joined and move is not None and _one_list(out[:-2], move):
            own = [row for row in rows if row.movement in members(move.value)]
            two = (pair[0].value, fact.value)
            whole = all(value == int(value) and value > 0 for value in two)
            fits = all(near_reps(value, own) for value in two) if own else True
            if whole and fits and not any(row.side for row in own):
                entries = [Entry(int(value)) for value in two]
                note = {"list": True, "mark": "and", "values": list(two)}
                out[-2:] = [Fact("rows", pair[0].start, fact.end, entries, note)]
                continue
        out.append(fact)
    return out


def planned_scheme_denied(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """ "4x5, not 4x6", "no 4x7 sino 3x3", with the planned scheme denied: the other one was done."""
    told = [at for at, fact in enumerate(facts) if fact.kind == "rows" and fact.note.get("plain")]
    if len(told) != 2:
        return facts
    main = [rows[at] for at in main_rows(rows)]
    planned = [row.reps for row in main]
    denied = [at for at in told if [entry.reps for entry in facts[at].value] == planned]
    if len(denied) != 1:
        return facts
    first, second = told
    between = facts[first + 1 : second]
    words = {token.text for one in between for token in message.tokens[one.start : one.end]}
    mended = any(one.kind == "mend" or plan_names(one) & {"instead", "not_this"} for one in between)
    led = facts[first - 1] if first else None
    no = led is not None and led.kind == "fail" and led.note.get("name") == "no"
    if denied == [second] and mended:
        return [*facts[: first + 1], *facts[second + 1 :]]
    if denied == [first] and no and words & little("but_rather"):
        return [*facts[: first - 1], *facts[second:]]
    return facts


def all_of_lift(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Todo lo de flexiones": the lift."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        behind = facts[at + 1 : at + 4]
        words = [_text(message, one) for one in behind[:2]]
        of_lift = [one.kind for one in behind] == ["word", "word", "move"]
        of_lift = of_lift and words[0] in little("all_that") and words[1] in little("of")
        if of_lift and (fact.kind, fact.value) == ("scope", "all"):
            continue
        out.append(fact)
    return out


def cut_by_sets(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Recorté una serie en fondos": so many less."""
    return [
        Fact("plan", fact.start, fact.end, "less", {"names": ["less"]})
        if fact.kind == "word" and _text(message, fact) in little("cut_by") and after.kind == "count"
        else fact
        for fact, after in zip(facts, [*facts[1:], Fact("sep", 0, 0, 3)], strict=True)
    ]


def more_in_extra_set(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Dropped to 15 and got four more in an extra set": the reps, and the load, of the set on top."""
    for at in range(1, len(facts) - 1):
        number, more = facts[at - 1], facts[at]
        behind = facts[at + 1]
        if number.kind != "bare" or "more" not in plan_names(more) or "extra_set" not in plan_names(behind):
            continue
        low = clause_start(facts, at - 1)
        reps = Fact("rows", number.start, number.end, [Entry(int(number.value))], {"one": True, "reps": True})
        before = list(facts[: at - 1])
        load = before[low - 2] if low > 1 and before[low - 1].note.get("mark") == "and" else None
        if load is not None and load.kind == "load" and "turned_to" in plan_names(before[low - 3]):
            comma = Fact("sep", load.start, load.start, 1, {"mark": ","})
            return [*before[: low - 3], comma, behind, reps, load, *facts[at + 2 :]]
        return [*before, behind, reps, *facts[at + 2 :]]
    return facts


def not_finished(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "No completé dominadas: 8, 8, 7 y 3": what they came to is told, and nothing left out."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        if fact.kind == "plan" and _text(message, fact) in little("not_finished"):
            end = next(
                (n for n in range(at, len(facts)) if facts[n].kind == "sep" and facts[n].value == SENTENCE), None
            )
            own = facts[at:end]
            if any(one.kind == "rows" and len(one.value) > 1 for one in own) and any(one.kind == "move" for one in own):
                fact = Fact("word", fact.start, fact.end, None, {"noise": True})
        out.append(fact)
    return out


def _text(message: Message, fact: Fact) -> str:
    return " ".join(token.text for token in message.tokens[fact.start : fact.end])


def _takes_away(fact: Fact) -> bool:
    return fact.kind == "plan" and bool(plan_names(fact) & {"less", "skipped", "except"})


def _one_list(before: Sequence[Fact], move: Fact) -> bool:
    """Whether nothing but words stands between a lift and the first of its two numbers."""
    place = next((n for n in range(len(before) - 1, -1, -1) if before[n] is move), None)
    if place is None:
        return False
    own = before[place + 1 :]
    return all(one.kind in ("word", "scheme") or plan_names(one) & {"the", "only", "more"} for one in own)
