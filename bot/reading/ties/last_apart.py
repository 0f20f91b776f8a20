"""The last set told apart: "the last to failure 19", "@7 the last", "12, 12, last set 17"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message


def last_apart(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the reps before the effort, as they are told of any other set."""
    out = list(facts)
    for at in range(len(out) - 2):
        scope, effort, reps = out[at : at + 3]
        last = scope.kind == "scope" and scope.value == "last" and effort.kind == "effort" and effort.note.get("words")
        whole = reps.kind == "bare" and not reps.note.get("spelled") and reps.value == int(reps.value)
        closes = at + 3 >= len(out) or out[at + 3].kind in ("sep", "word")
        if last and whole and closes:
            out[at + 1], out[at + 2] = reps, effort
    return _one_more(_named_behind(_loaded_apart(_unloaded(out))))


def _unloaded(facts: Sequence[Fact]) -> list[Fact]:
    """ "4x5 +20, last set bodyweight 14", "last one 14 no weight": the reps of that set, and no weight on it."""
    out = list(facts)
    for at in reversed(range(1, len(out) - 2)):
        scope, two = out[at], sorted(out[at + 1 : at + 3], key=lambda one: one.kind)
        if scope.kind != "scope" or scope.value != "last" or [one.kind for one in two] != ["bare", "load"]:
            continue
        reps, load = two
        whole = reps.value == int(reps.value) and not reps.note.get("comma")
        before = next((fact for fact in reversed(out[:at]) if fact.kind in ("rows", "bare", "count")), None)
        closing = scope.note.get("text") in little("at_the_end")
        if before is None or not before.note.get("plain") or closing:
            continue  # "8 7 7 and the last one 10 without": one more
        if load.note.get("none") and whole and (at + 3 >= len(out) or out[at + 3].kind in ("sep", "effort", "word")):
            entry = Entry(int(reps.value), load_kg=0.0)
            told = Fact("rows", out[at + 1].start, out[at + 2].end, [entry], {"one": True, "reps": True})
            out[at + 1 : at + 3] = [told]
    return out


def _loaded_apart(facts: Sequence[Fact]) -> list[Fact]:
    """ "3x5 with 20, last one 4 reps with 15": a second load behind the last set's reps is that set's alone."""
    out = list(facts)
    for at in reversed(range(1, len(out) - 2)):
        scope, reps, load = out[at : at + 3]
        closes = at + 3 == len(out) or out[at + 3].kind == "sep"
        if scope.kind != "scope" or scope.value != "last" or load.kind != "load" or not load.value or not closes:
            continue
        since = next((n for n in range(at - 1, -1, -1) if out[n].kind == "move"), 0)
        if sum(fact.kind == "load" for fact in out[since:at]) != 1 or out[at - 1].kind != "sep":
            continue
        if reps.kind == "rows" and len(reps.value) == 1 and reps.value[0].reps and "own_load" not in reps.note:
            out[at + 1 : at + 3] = [
                Fact("rows", reps.start, load.end, reps.value, {**reps.note, "own_load": load.value})
            ]
        elif reps.kind == "bare" and reps.value == int(reps.value) and not reps.note.get("comma"):
            told = [Entry(int(reps.value))]
            out[at + 1 : at + 3] = [Fact("rows", reps.start, load.end, told, {"one": True, "own_load": load.value})]
    return out


def _one_more(facts: list[Fact]) -> list[Fact]:
    """ "12, 12, last set AMRAP 17": the list has told the sets before it, each as it was; so the last is one more."""
    for at in range(2, len(facts) - 1):
        rows, mark, scope = facts[at - 2 : at + 1]
        listed = rows.kind == "rows" and rows.note.get("list") and rows.note.get("values") and mark.kind == "sep"
        if not listed or mark.value == 3 or scope.kind != "scope" or scope.value != "last" or scope.note.get("rep"):
            continue
        end = at + 1
        while end < len(facts) - 1 and (facts[end].value in ("amrap", "only") or facts[end].note.get("mark") == ":"):
            end += 1
        if _told_so(facts, end) or _told_otherwise(facts, at, rows):
            return [*facts[:at], *facts[end:]]
    return facts


def _told_so(facts: Sequence[Fact], at: int) -> bool:
    """Whether a whole number stands here, and nothing more of it."""
    closes = at + 1 == len(facts) or facts[at + 1].kind in ("sep", "move")
    return closes and facts[at].kind == "bare" and facts[at].value == int(facts[at].value)


def _told_otherwise(facts: Sequence[Fact], at: int, rows: Fact) -> bool:
    """Whether "last set was 6 reps", "the last one 6 or 7" is of another set than the list's end, and none too many."""
    end = next((n for n in range(at + 1, len(facts)) if facts[n].kind != "word" and facts[n].value != "only"), at)
    told = facts[end]
    if told.kind != "rows" or len(told.value) != 1 or told.value[0].hold_s is not None or told.note.get("own_load"):
        return False
    if end + 1 < len(facts) and facts[end + 1].kind not in ("sep", "move", "word", "vague", "effort"):
        return False
    counted = any(fact.kind == "count" and fact.value == len(rows.value) for fact in facts[:at])
    ends = rows.value[-1]
    return not counted and ends.hold_s is None and ends.reps != told.value[0].reps


def _named_behind(facts: Sequence[Fact]) -> list[Fact]:
    """ "4x4 with 12, @7 the last": the effort in a clause of its own is of the set named behind it."""
    out = list(facts)
    for at in range(1, len(out) - 1):
        mark, effort, scope = out[at - 1 : at + 2]
        named = scope.kind == "scope" and scope.value == "last" and not scope.note.get("rep")
        closes = at + 2 >= len(out) or out[at + 2].kind == "sep"
        if mark.kind == "sep" and effort.kind in ("effort", "at") and named and closes:
            out[at], out[at + 1] = scope, effort
    return out
