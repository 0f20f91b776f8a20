"""A plan ticked off: "pull-ups ✅ rest ❌", "✅ warm-up ❌ dips", "5x3 ✅ rotations ✅"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.message import Message
from bot.reading.plan.ground import PARTS, plan_names

TICKS = ("✅", "✔", "☑", "👍", "✓", "🟢", "👌")
CROSSES = ("❌", "✗", "✘", "✖", "👎", "🔴", "🚫")
VALUED = frozenset("rows bare load loads at count delta instead".split())


def ticked(message: Message) -> bool:
    """Whether the message is a tick and other signs, no word: "✅", "💪👍"."""
    if not all(token.kind in ("sym", "nl") for token in message.tokens):
        return False  # a look at the first word
    return any(sign in message.text for sign in TICKS) and not any(sign in message.text for sign in CROSSES)


def sign_of(message: Message, fact: Fact) -> str | None:
    """Whether a fact is a sign for "done" or for "skipped"."""
    weak = fact.kind == "fail" and fact.note.get("weak")
    if fact.note.get("mark") != "emoji" and not weak and fact.kind != "fail":
        return None
    text = message.span(fact.start, fact.end)
    return "done" if text.startswith(TICKS) else "skipped" if text.startswith(CROSSES) else None


def ticked_off(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """The facts with a word for each sign beside something named: "done", "skipped"."""
    facts = [
        fact
        for at, fact in enumerate(facts)
        if not (fact.note.get("mark") == ":" and at + 1 < len(facts) and sign_of(message, facts[at + 1]) is not None)
    ]  # "pull-ups: ✅"
    signs = {at: sign for at, fact in enumerate(facts) if (sign := sign_of(message, fact)) is not None}
    if not signs or not any(_names(fact) for fact in facts):
        return list(facts)
    first = min(signs)
    leads = not any(_names(fact) or fact.kind in VALUED for fact in facts[:first])
    leads = leads and first + 1 < len(facts) and (_names(facts[first + 1]) or facts[first + 1].kind in VALUED)
    out: list[Fact] = []
    own: list[Fact] = []
    waiting: tuple[Fact, str] | None = None
    for at, fact in enumerate(facts):
        if at in signs or fact.kind == "sep":
            if waiting is not None and own:
                out += _marked(own, *waiting)
                waiting, own = None, []
            if at in signs and not leads:
                out += _marked(own, fact, signs[at])
                own = []
            out += own
            own = []
            if at in signs and leads:
                waiting = fact, signs[at]
            out.append(fact if fact.kind == "sep" else Fact("sep", fact.start, fact.end, 1, {"mark": "emoji"}))
            continue
        own.append(fact)
    if waiting is not None and own:
        own = _marked(own, *waiting)
    return out + own


def _names(fact: Fact) -> bool:
    """Whether a fact names something of the plan."""
    return fact.kind in ("move", "side") or bool(plan_names(fact) & {*PARTS, "rest", "holds"})


def _marked(own: list[Fact], sign: Fact, name: str) -> list[Fact]:
    """What a sign stands beside, with a word for it. Work that is crossed out was not done: its values go."""
    named = any(_names(fact) for fact in own)
    valued = any(fact.kind in VALUED for fact in own)
    if not named or (valued and name == "done"):
        return own
    kept = [fact for fact in own if fact.kind not in VALUED] if name == "skipped" else own
    return [*kept, Fact("plan", sign.start, sign.end, name, {"names": [name]})]
