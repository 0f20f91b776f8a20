"""A message that is one value and small words: "that was 22.5", "ok 22.5", "sorry, the load was 22.5".

It says neither of which movement nor, often, of what it is. What it can be is told here; what it is of, only the
reports before it can tell.
"""

from __future__ import annotations

from dataclasses import dataclass

from bot.reading.little import little
from bot.reading.message import Message, read_message
from bot.reading.reading import Context
from planner.units import KG_PER_LB

MOST_WORDS = 8
MOST_REPS, MOST_LOAD_KG, MOST_HOLD_S = 30, 150.0, 300.0  # common practice; more is no value of a set
LEAST_EFFORT, MOST_EFFORT = 6.0, 10.0  # as in the contract: what a number alone can be of effort
SMALL = ("excuse", "cue", "now", "field", "back", "put_right", "aside", "change", "to")
WRONG = ("excuse", "cue", "back", "put_right", "change")  # words that put something right, or look back
OF_A_SET = ("reps", "load_kg", "rpe", "hold_s")


@dataclass(frozen=True)
class ValueAlone:
    """`fields`: what the number can be of, as a set has them; loads are `kg`, all else is `value`."""

    value: float
    kg: float
    span: str
    fields: tuple[str, ...]
    puts_right: bool  # words for a mistake or of looking back stand beside it
    named: bool  # its unit or its field is said


def value_alone(text: str, context: Context) -> ValueAlone | None:
    """The value, where there is one and nothing else of weight; None for any other message."""
    message = read_message(text, context)
    tokens = message.tokens
    numbers = [at for at, token in enumerate(tokens) if token.value is not None]
    words = [at for at, token in enumerate(tokens) if token.kind == "word" and token.value is None]
    if len(numbers) != 1 or len(words) > MOST_WORDS or any(token.text in "?/" for token in tokens):
        return None
    (at,) = numbers
    value = tokens[at].value
    if tokens[at].kind != "num" or value is None or (at and tokens[at - 1].text == "-"):
        return None
    hits = [hit for table in SMALL for hit in message.hits("mends", table)]
    small = {place for hit in hits for place in range(hit.start, hit.end)}
    units = little("kilos", "pounds", "in_correction")
    if any(place not in small and tokens[place].text not in units for place in words):
        return None
    excused = {place for hit in hits if hit.table == "excuse" for place in range(hit.start, hit.end)}  # "hold on"
    named = {hit.name for hit in hits if hit.table == "field" and hit.start not in excused}
    if named - set(OF_A_SET):
        return None  # of the body, the night or the whole session
    kg = value * (KG_PER_LB if _unit(message, at) == "lb" else 1.0)
    mark = tokens[at - 1].text if at and tokens[at - 1].text in ("+", "@") else ""
    fields = _fields(value, kg, named, mark)
    wrong = any(hit.table in WRONG for hit in hits)
    return ValueAlone(value, kg, message.span(at, at + 1), fields, wrong, bool(named or mark))


def _unit(message: Message, at: int) -> str:
    after = message.tokens[at + 1].text if at + 1 < len(message.tokens) else ""
    return "kg" if after in little("kilos") else "lb" if after in little("pounds") else message.context.unit


def _fields(value: float, kg: float, named: set[str], mark: str) -> tuple[str, ...]:
    whole = value == int(value)
    can_be = {
        "load_kg": 0 < kg <= MOST_LOAD_KG and mark != "@",
        "reps": whole and 0 < value <= MOST_REPS and mark == "",
        "rpe": LEAST_EFFORT <= value <= MOST_EFFORT and value * 2 == int(value * 2) and mark != "+",
        "hold_s": whole and 0 < value <= MOST_HOLD_S and mark == "",
    }
    return tuple(name for name, possible in can_be.items() if possible and (not named or name in named))
