"""Sets told once that were done several times: "ladder 1,2,3,4,5 x3", "(5,4,3) x2", "3 pull-ups of 5"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import is_comma
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.rules import Rule

MOST_BEFORE = 3  # facts: "first set of"
MOST_TIMES = 6
MOST_SETS = 10
MOST_REPS = 30


def _list_times(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "1,2,3,4,5 x3": the sign stands apart from the list, and at the number of times."""
    for at in range(len(facts) - 2):
        if facts[at].kind != "rows" or not facts[at].note.get("list"):
            continue
        told, mark, last = facts[at : at + 3]
        if any(entry.hold_s for entry in told.value):
            continue
        glued = last.kind == "rows" and last.note.get("plain") and mark.note.get("mark") == told.note.get("mark")
        if glued and _apart(message, last) and 1 < (last.value[0].reps or 0) <= MOST_TIMES:
            whole = [*told.value, Entry(len(last.value))]
            rows = replace(
                told, end=last.end, value=whole * int(last.value[0].reps or 1), note={"list": True, "mark": ","}
            )
            return [*facts[:at], rows, *facts[at + 3 :]]
        times = facts[at + 3] if at + 3 < len(facts) else None
        signed = last.kind == "word" and last.value in little("by_sign") and mark.note.get("mark") == ")"
        if signed and times is not None and times.kind == "bare" and 1 < times.value <= MOST_TIMES:
            rows = replace(told, value=list(told.value) * int(times.value), note={"list": True, "mark": ","})
            return [*facts[:at], rows, mark, *facts[at + 4 :]]
    return facts


def _apart(message: Message, rows: Fact) -> bool:
    """Whether a space stands before the sign of "5 x3", and none behind it."""
    signs = [at for at in range(rows.start, rows.end) if message.tokens[at].text in little("by_sign")]
    if len(signs) != 1 or signs[0] + 1 >= rows.end:
        return False
    return message.tokens[signs[0]].space and not message.tokens[signs[0] + 1].space


def _sets_of(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "3 rows of 5", "3 dominadas de 5": sets of so many."""
    out = list(facts)
    for at in range(len(facts) - 3):
        sets, move, of, reps = facts[at : at + 4]
        if [one.kind for one in (sets, move, of, reps)] != ["bare", "move", "word", "bare"]:
            continue
        led = at == 0 or facts[at - 1].kind not in ("side", "count", "rounds")
        whole = sets.value in range(2, MOST_SETS + 1) and reps.value in range(1, MOST_REPS + 1)
        if led and whole and of.end == of.start + 1 and message.tokens[of.start].text in little("of"):
            rows = [Entry(int(reps.value))] * int(sets.value)
            out[at : at + 4] = [move, Fact("rows", sets.start, reps.end, rows, {"plain": True})]
            return out
    return facts


def _each_of(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5 x pull-ups, 3 each": so many sets, and the reps of each."""
    for at in range(len(facts) - 4):
        sets, sign, move, *rest = facts[at : at + 6]
        if (sets.kind, sign.kind, move.kind) != ("bare", "word", "move") or sign.value not in little("by_sign"):
            continue
        apart = is_comma(rest[0])
        reps, each = rest[apart : apart + 2] if len(rest) > 1 + apart else (sets, sets)
        whole = sets.value in range(2, MOST_SETS + 1) and reps.kind == "bare" and reps.value in range(1, MOST_REPS + 1)
        if whole and each.kind == "side" and each.value == "each" and not move.value.movement.startswith("one_arm"):
            rows = [Entry(int(reps.value))] * int(sets.value)
            told = Fact("rows", reps.start, each.end, rows, {"plain": True})
            return [*facts[:at], move, told, *facts[at + 5 + apart :]]
    return facts


def _clusters(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "2+2+2 with 25, three clusters": how often, behind the one that is told."""
    for at in range(2, len(facts)):
        many = facts[at]
        if many.kind == "count" and many.note.get("those") and many.value > 1 and facts[at - 1].kind == "sep":
            told = [fact for fact in facts[:at] if fact.kind == "rows"]
            # "2+2+1, 3 of those"
            ends = at + 1 == len(facts) or facts[at + 1].kind in ("sep", "load")
            if ends and len(told) == 1 and told[0].note.get("mark") == "+" and many.value <= MOST_SETS:
                often = Fact("repeat", many.start, many.end, many.value, {"counted": True})
                return [*facts[:at], often, *facts[at + 1 :]]
        if at + 1 == len(facts):
            continue
        word = facts[at + 1]
        closes = at + 2 == len(facts) or facts[at + 2].kind in ("sep", "word")
        if many.kind != "count" or word.kind != "link" or not closes or not 1 < many.value <= MOST_SETS:
            continue
        told = [fact for fact in facts[:at] if fact.kind == "rows"]
        if len(told) == 1 and told[0].note.get("mark") == "+" and facts[at - 1].kind == "sep":
            return [*facts[:at], Fact("repeat", many.start, word.end, many.value, {"counted": True}), *facts[at + 2 :]]
    return facts


def _total_ahead(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Sets of 5, in total 7": as "7 in total"."""
    if not any(fact.kind == "rows" and fact.note.get("each_of") for fact in facts):
        return facts
    out = list(facts)
    for at in range(len(out) - 1):
        total, number = out[at : at + 2]
        before = out[at - 1].kind if at else ""
        if (total.kind, total.value, number.kind) == ("scheme", "total", "bare") and before not in ("bare", "count"):
            out[at : at + 2] = [number, total]
    return out


def _same_again(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "15 s left, 12 s right and the same again": the sets once more; beside a plan "same" is of it."""
    if message.context.today:
        return facts
    for at, fact in enumerate(facts):
        behind = facts[at + 1 : at + 2]
        once_more = bool(behind) and message.span(behind[0].start, behind[0].end).lower() in little("once_more")
        again = once_more and behind[0].kind in ("word", "sep")
        whole = message.span(fact.start, fact.end).lower().endswith(tuple(little("once_more")))
        if fact.kind != "plan" or fact.value != "same" or not (again or whole):
            continue
        end = at + 1 + bool(again)
        if end < len(facts) and facts[end].kind != "sep":
            continue
        told = list(facts[:at])
        while told and told[-1].kind == "sep":
            told.pop()
        low = next((n + 1 for n in range(len(told) - 1, -1, -1) if told[n].kind == "move"), 0)
        own = told[low:]
        if not own or any(one.kind not in ("rows", "bare", "side", "sep", "load", "at", "word") for one in own):
            continue
        if not any(one.kind in ("rows", "bare") for one in own):
            continue
        comma = Fact("sep", fact.start, fact.start, 1, {"mark": ","})
        return [*told, comma, *(replace(one) for one in own), *facts[end:]]
    return facts


def _more_the_same(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "First set six reps, so I did two more just the same": the one set told, so many times more."""
    for at, fact in enumerate(facts):
        if fact.kind != "plan" or fact.value != "same" or at < MOST_BEFORE:
            continue
        if at + 1 < len(facts) and facts[at + 1].kind not in ("sep", "claim"):
            continue
        low = at - 1 - (facts[at - 1].value == "only")
        more, many = facts[low], facts[low - 1]
        if more.value != "more" or many.kind != "bare" or many.value not in range(1, MOST_TIMES):
            continue
        start = next((n for n in range(low - 2, -1, -1) if facts[n].kind == "move"), None)
        own = [n for n in range(start or 0, low - 1) if facts[n].kind in ("rows", "bare")]
        if start is None or len(own) != 1:
            continue
        one = facts[own[0]]
        told = list(one.value) if one.kind == "rows" else [Entry(int(one.value))]
        told += [replace(told[-1]) for _ in range(int(many.value))]
        rows = Fact("rows", one.start, one.end, told, {"plain": True})
        firsts = {
            n
            for n in range(max(0, start - MOST_BEFORE), low)
            if facts[n].kind == "scope" and facts[n].value in ("first", 1)
        }
        kept = [rows if n == own[0] else one for n, one in enumerate(facts[: low - 1]) if n not in firsts]
        return [*kept, *facts[at + 1 :]]
    return facts


RULES: tuple[tuple[Rule, str], ...] = (
    (_more_the_same, "=same bare =more"),
    (_same_again, "=same rows|bare"),
    (_clusters, "rows count"),
    (_total_ahead, "rows scheme bare"),
    (_list_times, "rows"),
    (_sets_of, "'of bare move word"),
    (_each_of, "'by_sign bare word move side"),
)
