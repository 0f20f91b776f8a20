"""An answer put into the earlier words, where its question stood: for each kind of question in its own way."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cached_property

from bot.reading.assemble import read
from bot.reading.lexicon import book
from bot.reading.little import little
from bot.reading.message import Message, read_message
from bot.reading.movements import find_movements
from bot.reading.reading import Ask, Reading
from planner.units import KG_PER_LB

NTH = {"first": 0, "second": 1, "third": 2}
KINDS = ("reps", "load", "effort", "seconds", "none")  # what an answer can say that a number is
ASKED_AS = {"reps": "reps", "hold_s": "seconds", "rpe": "effort"}  # else a load
SAME_KG = 0.06


@dataclass(frozen=True)
class Answer:
    """An answer to a question of an earlier text; `names`: what the lexicon of answers calls its words."""

    text: str
    earlier: Reading
    ask: Ask
    said: Message
    names: frozenset[str]

    @property
    def words(self) -> str:
        return self.said.text.strip()

    @property
    def unit(self) -> str:
        return self.said.context.unit

    @cached_property
    def asked(self) -> list[str]:
        """The numbers of the words asked about."""
        message = read_message(self.ask.span, self.said.context)
        return [message.span(at, at + 1) for at, token in enumerate(message.tokens) if token.value is not None]

    @cached_property
    def numbers(self) -> list[str]:
        """The numbers of the answer; of "the first one", "the lower", those asked about."""
        said, asked = self.said, self.asked
        worded = {at for hit in book(said.language, "answers").find(said.tokens) for at in range(hit.start, hit.end)}
        numbers = [
            said.span(at, at + 1)
            for at, token in enumerate(said.tokens)
            if token.value is not None and at not in worded
        ]
        for name, nth in NTH.items():
            if name in self.names and not numbers and nth < len(asked):
                numbers = [asked[nth]]
        if asked and not numbers and self.names & {"lower", "higher"}:
            sized = sorted(asked, key=_value)
            numbers = [sized[0] if "lower" in self.names else sized[-1]]
        return numbers

    @property
    def number(self) -> str | None:
        return self.numbers[-1] if self.numbers else self.asked[0] if self.asked else None

    def put(self, words: str) -> str:
        """The earlier text with these words where the question stood."""
        span, text = self.ask.span, self.text
        if span == text.strip():
            return f"{text} {words}"  # the whole message was asked about: the answer goes on with it
        return text.replace(span, words, 1) if span and span in text else f"{text} {words}"


def names_of(said: Message) -> frozenset[str]:
    """What the lexicon of answers calls the words of an answer."""
    return frozenset(hit.name for hit in book(said.language, "answers").find(said.tokens))


def rewritten(text: str, earlier: Reading, ask: Ask, said: Message) -> str | None:
    """The earlier text with the answer where the question stood; None where the answer does not fit the question."""
    answer = Answer(text, earlier, ask, said, names_of(said))
    return BY_ABOUT.get(ask.about, _as_said)(answer)


def _as_said(answer: Answer) -> str | None:
    return answer.put(answer.words)


def _value_of_set(answer: Answer) -> str | None:
    """Of reps, a load, an effort, help or seconds, each of which may turn out to be another: "20" were kilograms."""
    about, numbers, number = answer.ask.about, answer.numbers, answer.number
    kind: str | None = next((name for name in KINDS if name in answer.names), None)
    if kind == "none":
        of_reps = f"{answer.asked[0]} reps" if about == "reps" and answer.asked else ""
        return answer.put(of_reps + " bw")  # "20" asked about is so many reps once no weight is said; "+250" is not
    if number is None or (kind is None and not numbers):
        return None
    if len(numbers) > 1:
        return _sets_anew(answer)
    kind = kind or ASKED_AS.get(about, "load")
    reps_of_reps = about == "reps" and kind == "reps"
    if reps_of_reps and numbers and _was_load(answer):
        return answer.put(f"+{answer.asked[0]} {answer.unit} {number} reps")
    pounds = any(token.text in little("pounds") for token in answer.said.tokens)
    words = {
        "reps": f"{number} reps",
        "load": f"+{number} {'lb' if pounds else answer.unit}",
        "effort": f"rpe {number}",
        "seconds": f"{number} s",
    }[kind]
    if reps_of_reps and _counts(answer.ask.span, answer.said):
        words = f"{answer.ask.span} {words}"
    return answer.put(words)


def _sets_anew(answer: Answer) -> str:
    """Several numbers: sets, told with all that was in doubt."""
    alone = read(answer.words, replace(answer.said.context, today=None))
    whole = read_message(answer.text, answer.said.context)
    moves = find_movements(whole)
    if answer.ask.about == "load_kg" and len(moves) == 1 and any(one.reps and one.load_kg for one in alone.sets):
        return f"{whole.span(*moves[0].spans[0])} {answer.words}"  # "5x3 +250", "5x3 +25": all of it anew
    return answer.put(_with_load(answer, alone))


def _was_load(answer: Answer) -> bool:
    """Whether the figure in question is a load that was read beside it."""
    known = [one.load_kg for one in answer.earlier.sets if one.reps is None and one.load_kg]
    value = _value(answer.asked[0]) if answer.asked else 0.0
    return bool(answer.asked) and any(abs(kg - factor * value) < SAME_KG for kg in known for factor in (1, KG_PER_LB))


def _field(answer: Answer) -> str | None:
    """ "4, not 5": of what is said behind it, where a correction has it."""
    units = {"reps": "reps", "load": answer.unit, "effort": "rpe", "seconds": "s"}
    unit = next((units[name] for name in units if name in answer.names), None)
    if unit is not None:
        return answer.put(f"{answer.ask.span} {unit}")
    return _as_said(answer) if answer.numbers else None


def _movement(answer: Answer) -> str | None:
    if not find_movements(answer.said) and "first" not in answer.names:
        return None
    named = find_movements(read_message(answer.ask.span, answer.said.context))
    return _as_said(answer) if named else f"{answer.words}: {answer.text}"


def _rom(answer: Answer) -> str | None:
    span = _without_half(answer.ask.span, answer.said)
    half = "top half" if "top" in answer.names else "bottom half" if "bottom" in answer.names else None
    if half is not None:
        return answer.put(f"{half} {span}")
    return answer.put(span) if "full" in answer.names else None


def _side(answer: Answer) -> str | None:
    if answer.numbers:
        return _as_said(answer)
    side = "left" if "left" in answer.names else "right" if "right" in answer.names else None
    if side is None or not answer.asked:
        return None
    sides = (side, "right" if side == "left" else "left")
    return answer.put(", ".join(f"{place} {n}" for place, n in zip(sides, answer.asked, strict=False)))


def _bodyweight(answer: Answer) -> str | None:
    return f"bw {answer.number} {answer.unit}" if answer.numbers else None


def _score(answer: Answer) -> str | None:
    return answer.put(f"{answer.number}/10") if answer.numbers else None


def _day(answer: Answer) -> str | None:
    return f"{answer.words}: {answer.text.replace(answer.ask.span, ' ', 1)}"


BY_ABOUT: dict[str, Callable[[Answer], str | None]] = {
    **dict.fromkeys(("reps", "load_kg", "rpe", "assist_kg", "hold_s"), _value_of_set),
    **dict.fromkeys(("score", "pain"), _score),
    "field": _field,
    "movement": _movement,
    "rom": _rom,
    "side": _side,
    "bodyweight_kg": _bodyweight,
    "performed_on": _day,
}


def _counts(span: str, said: Message) -> bool:
    """Whether the words asked about say a number of sets ("4 sets")."""
    asked = read_message(span, said.context)
    return any(hit.table == "sets" for found in asked.beginning("grammar")[1:2] for hit in found)


def _with_load(answer: Answer, alone: Reading) -> str:
    """Sets in answer to a question for reps: the load in "dips with 10" was no part of the doubt, and the "20" of
    "pull-ups 20" is the load where it is none of the reps."""
    span, words = answer.ask.span, answer.words
    told = [one.reps for one in alone.sets if one.reps is not None]
    if answer.ask.about != "reps" or any(one.load_kg for one in alone.sets):
        return words
    if _value(span.strip()) >= 0:  # a number and nothing else: that may turn out to be no load
        return f"+{span.strip()} {answer.unit} {words}" if told and _value(span.strip()) not in told else words
    loaded = any(one.reps is None and one.load_kg for one in answer.earlier.sets)
    return f"{span}, {words}" if loaded else words


def _value(number: str) -> float:
    """A plain number as written; -1 for a word that says one."""
    plain = number.replace(",", ".")
    return float(plain) if plain.replace(".", "", 1).isdecimal() else -1.0


def _without_half(span: str, said: Message) -> str:
    words = span.split()
    grammar = book(said.language, "grammar")
    kept = []
    for word in words:
        tokens = read_message(word, said.context).tokens
        if any(hit.table == "flag" and hit.name in ("half", "partial") for hit in grammar.at(tokens, 0)):
            continue
        kept.append(word)
    return " ".join(kept)
