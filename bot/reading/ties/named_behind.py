"""Sets that are named behind what they were: "left only 12 on the last"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import is_then
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

BETWEEN = frozenset({"sep", "scheme", "load", "at", "effort", "word", "move", "flag"})  # of a scheme and its last set
LEAST_EFFORT = 6  # more than the sets had, it may be how hard the last one was


def named_behind(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "left only 12 on the last", "got 1 on the last two": the sets that a bare number is of are told after it.

    So too where the sets after them follow: "12 on the first three, then 9 and 8".
    """
    out = _of_those_before(message, facts)
    for at in range(1, len(out) - 1):
        if at + 1 >= len(out):
            break
        one, scope = out[at], out[at + 1]
        if one.kind == "bare" and scope.kind == "word" and out[at + 2 : at + 3] and _joins(message, scope):
            behind = out[at + 2]  # "managed 6 in the last one"
            if behind.kind == "scope" and behind.value in ("last", ("last", 1)) and scope.end == behind.start:
                scope = replace(behind, start=scope.start, value="last", note={**behind.note, "text": "in the last"})
                out[at + 1 : at + 3] = [scope]
        if one.kind != "bare" or scope.kind != "scope" or scope.value == "all" or one.end != scope.start:
            continue
        closes = at + 2 == len(out) or out[at + 2].kind == "sep"
        before = out[at - 1]
        led = before.kind == "plan" and "only" in before.note.get("names", ())
        fell = before.kind == "link" and before.value == "drop"  # "5x5, dropped to 3 on the last set"
        several = isinstance(scope.value, tuple) and before.kind == "scheme" and before.value == "got"
        if fell and closes:
            out[at - 1] = Fact("word", before.start, before.end, None, {"noise": True})
        last = scope.value == "last" and _of_scheme(out, at)
        closes = closes or (last and out[at + 2].kind == "word")  # "4 on the last cuz why not"
        if (
            closes
            and (led or fell or several or last)
            and scope.note.get("text", "").startswith(tuple(little("before_scope")))
        ):
            out[at], out[at + 1] = scope, one
    return out


def _of_scheme(facts: Sequence[Fact], at: int) -> bool:
    """ "4x8, 6 on the last one", "5x3 @ 40 but only 2 on the last": of the sets told by their number right before."""
    bare = facts[at]
    if bare.note.get("comma") or bare.value != int(bare.value):
        return False
    parted = False
    for fact in reversed(facts[:at]):
        if fact.kind == "rows":
            held = "list" not in fact.note and fact.value[0].hold_s is not None
            effort = bare.value >= LEAST_EFFORT and bare.value > (fact.value[0].reps or 0) and not held
            return parted and (held or bool(fact.note.get("plain"))) and len(fact.value) > 1 and not effort
        parted = parted or fact.kind == "sep" or (fact.kind == "scheme" and fact.value == "got")
        if fact.kind not in BETWEEN or is_then(fact):
            return False
    return False


def _of_those_before(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The facts with "12 on the first three" before a "then" turned about: which sets, and then what they were."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        out.append(fact)
        if fact.kind != "scope" or not isinstance(fact.value, tuple) or fact.value[0] != "first":
            continue
        follow = [one for one in facts[at + 1 : at + 4] if one.note.get("mark") != ","]
        if len(follow) < 2 or not is_then(follow[0]) or follow[1].kind != "bare":
            continue
        led = next((n for n in range(len(out) - 2, -1, -1) if not _joins(message, out[n])), 0)
        if out[led].kind == "bare":
            out = [*out[:led], *out[led + 1 :], out[led]]
    return out


def _joins(message: Message, fact: Fact) -> bool:
    """Whether a fact is a little word before a set: "on the", "en las"."""
    words = {token.text for token in message.tokens[fact.start : fact.end]}
    small = little("before_scope", "the", "on_lift")
    return fact.kind in ("word", "plan") and bool(words) and words <= small
