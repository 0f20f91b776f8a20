"""Marks that are denied: "full range, no negatives", "5x3 without a pause at the top", "negatives left out"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import NO_PAUSE, Fact
from bot.reading.little import little
from bot.reading.message import Message

NEAR = 4  # tokens
BETWEEN = ("the",)  # "skipped the negatives"


def denied_marks(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without the marks that a word denies; against a plan such words leave its sets out."""
    if message.context.today or not any(fact.kind == "flag" for fact in facts):
        return facts
    facts = _unpaused(facts)
    out: list[Fact] = []
    at = 0
    while at < len(facts):
        end = at
        while end < len(facts) and facts[end].kind == "flag":
            end += 1
        if end == at:
            out.append(facts[at])
            at += 1
            continue
        behind = facts[end] if end < len(facts) else None
        led = next((n for n in range(len(out) - 1, -1, -1) if out[n].value not in BETWEEN), None)
        before = out[led] if led is not None else None
        paused = _is_pause(facts[at])
        kept_off = facts[at].value == "eccentric" and _kept_off(message, facts[at])
        no = before is not None and (
            _denies(before) or (paused and before.kind == "link" and before.value == "straight")
        )
        if no and led is not None:
            del out[led:]
        elif kept_off:
            pass
        elif behind is not None and (_left_out(behind) or _put_off(behind)):
            end += 1
        else:
            out += facts[at:end]
            at = end
            continue
        scoped = paused and bool(out) and out[-1].kind == "scope" and out[-1].value != "all"
        scoped = scoped or (paused and _of_own_sets([*out, facts[at], *facts[end:]], len(out)))
        span = facts[at].start, facts[end - 1].end
        out.append(Fact("flag", *span, NO_PAUSE) if scoped else Fact("word", *span, None, {"noise": True}))
        at = end
    return out


def untried(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Right still no chance so didn't try": no miss where the same clause says that it was not tried."""
    out = list(facts)
    for at, fact in enumerate(facts):
        if fact.kind != "fail" or fact.value is not None:
            continue
        behind = next((one for one in facts[at + 1 :] if one.kind != "word"), None)
        words = " ".join(token.text for token in message.tokens[behind.start : behind.end]) if behind else ""
        if words in little("untried"):
            out[at] = Fact("word", fact.start, fact.end, None, {"noise": True})
    return out


def stuck_joint(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Left knee got stuck on the third pistol": the joint, and no rep."""
    out = list(facts)
    for at in range(1, len(facts)):
        before, fact = facts[at - 1 : at + 1]
        words = [token.text for token in message.tokens[fact.start : fact.end]]
        stuck = any(" ".join(words[:many]) in little("joint_stuck") for many in (1, 2, 3))
        joint = before.kind == "claim" and before.value is not None and before.value.kind == "pain"
        if fact.kind == "fail" and joint and before.end == fact.start and stuck:
            out[at] = Fact("word", fact.start, fact.end, None, {"noise": True})
    return out


def _unpaused(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Paused at the top, except the last", "oben gehalten, letzter Satz ohne Pause": those sets have no pause."""
    out = list(facts)
    for at in range(1, len(facts)):
        before, fact = facts[at - 1 : at + 1]
        paused = any(_is_pause(one) for one in facts[: at - 1])
        if not paused:
            continue
        if fact.kind == "scope" and before.kind == "plan" and "except" in before.note.get("names", ()):
            if _is_pause(facts[at - 2]):
                out[at - 1 : at + 1] = [fact, Fact("flag", before.start, before.end, NO_PAUSE)]
        elif fact.kind != "link" or fact.value != "straight":
            continue
        elif before.kind == "scope" or _of_own_sets(facts, at):
            out[at] = Fact("flag", fact.start, fact.end, NO_PAUSE)
    return out


def _of_own_sets(facts: Sequence[Fact], end: int) -> bool:
    """ "3x4 mit Pause oben, danach 2x8 ohne Pause": the sets told since a pause have none, and are no superset."""
    closes = end + 1 >= len(facts) or facts[end + 1].kind == "sep"
    pause = max((n for n in range(end) if _is_pause(facts[n])), default=end)
    since = {fact.kind for fact in facts[pause:end]}
    return closes and "rows" in since and "move" not in since


def _is_pause(fact: Fact) -> bool:
    return fact.kind == "flag" and str(fact.value).startswith("pause_")


def _kept_off(message: Message, fact: Fact) -> bool:
    """ "Not going near negatives": whether a word for not doing them stands shortly before."""
    before = message.tokens[max(0, fact.start - NEAR) : fact.start]
    return any(token.text in little("kept_off") for token in before)


def _denies(fact: Fact) -> bool:
    return (fact.kind == "fail" and fact.value is None and fact.note.get("name") == "no") or _left_out(fact)


def _left_out(fact: Fact) -> bool:
    return fact.kind == "plan" and "skipped" in fact.note.get("names", ())


def _put_off(fact: Fact) -> bool:
    """ "Negatives next time", "negatives tomorrow"."""
    return fact.kind == "word" and str(fact.value) in little("another_time")
