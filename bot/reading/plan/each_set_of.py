"""Every set of a lift, by its name: "1 in reserve on every pull-up set", "rpe 8 on each set of dips"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

LED = 3  # facts of "every pull-up set"


def each_set_of(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts with all the sets of a lift in place of "every" before its name and "set" behind it."""
    out = list(facts)
    for at in range(len(out) - LED, -1, -1):
        led, move, word = out[at : at + LED]
        every = led.kind in ("scheme", "side", "word", "plan") and message.tokens[led.end - 1].text in little(
            "each_lift"
        )
        if (
            every
            and move.kind == "move"
            and word.kind == "word"
            and message.tokens[word.start].text in little("set_words")
        ):
            scope = Fact("scope", led.start, word.end, "all", {"text": "", "names": ["every"]})
            out[at : at + LED] = [move, scope]
    return out


def _says(message: Message, at: int, name: str) -> bool:
    return message.tokens[at].text in little(name)


def list_behind(_: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Did it today: pull-ups 4x4": a list behind a colon tells what was done, and "did it" no more than that."""
    told = [fact for fact in facts if fact.kind not in ("claim", "word")]
    if len(told) < LED + 1 or plan_names(told[0]) != {"done"} or told[1].note.get("mark") != ":":
        return facts
    if told[2].kind != "move" or told[3].kind != "rows" or any(plan_names(fact) for fact in told[2:]):
        return facts
    return [Fact("scheme", one.start, one.end, "got", {"names": []}) if one is told[0] else one for one in facts]
