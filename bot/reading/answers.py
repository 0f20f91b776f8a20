"""A short answer to a question asked back ("20", "reps", "the first one", "kg") completes the reading it belongs to.

The answer is put into the earlier words where the question stood, and the whole is read again: so an answer can say
everything that a message can, and nothing else is guessed.
"""

from __future__ import annotations

from dataclasses import replace

from bot.reading.assemble import read
from bot.reading.lexicon import book
from bot.reading.little import little
from bot.reading.message import Message, read_message
from bot.reading.movements import find_movements
from bot.reading.reading import Ask, Context, Reading
from planner.units import KG_PER_LB

MOST_WORDS = 12  # a longer answer is a message of its own
NTH = {"first": 0, "second": 1, "third": 2}
OWN_WILL = frozenset(
    {
        "plan_today",
        "plan_week",
        "why",
        "progress",
        "move",
        "missed",
        "away",
        "ill",
        "undo",
        "stop",
        "help",
        "for_coach",
        "pause",
    }
)


def complete(earlier_text: str, earlier: Reading, ask: Ask, answer: str, context: Context) -> Reading | None:
    """The earlier reading with the answer in it, or None where the answer is none (a new message).

    Questions that stay open are in `ask` of what comes back; their spans are words of either text.
    """
    said = read_message(answer, replace(context, language=context.language or earlier.language))
    if not said.tokens or len(said.tokens) > MOST_WORDS:
        return None
    names = _names(said)
    if "unknown" in names:
        return replace(earlier, ask=tuple(one for one in earlier.ask if one != ask))
    alone = read(answer, context)
    if set(alone.intents) & OWN_WILL and ask.about not in ("dates", "performed_on"):
        return None
    if _is_report(said, alone, earlier, ask) or _is_of_the_body(said, alone, ask):
        return None
    text = _rewritten(earlier_text, earlier, ask, said, names)
    if text is None:
        return None
    return _merged(earlier_text, earlier, ask, answer, read(text, context))


def _is_report(said: Message, alone: Reading, earlier: Reading, ask: Ask) -> bool:
    """Whether an answer tells sets of a movement: a report of its own, unless sets of that movement were asked for."""
    told = {one.movement for one in alone.sets if one.reps is not None or one.hold_s is not None}
    if not told or not find_movements(said):
        return False
    if ask.about in ("sets", "reps", "side", "hold_s", "rom"):
        return not told <= {one.movement for one in earlier.sets} | {None}
    return True


def _is_of_the_body(said: Message, alone: Reading, ask: Ask) -> bool:
    """Whether an answer's numbers are all of pain, weight, sleep or time, and none was asked: "left elbow 3"."""
    if alone.red_flags:
        return True
    scored = [one for one in alone.pain if one.site is not None and one.score is not None]
    told = {"bodyweight_kg": alone.bodyweight_kg, "sleep_h": alone.sleep_h, "duration_min": alone.duration_min}
    doubted = {one.about for one in alone.ask}
    measured = [name for name, value in told.items() if value is not None or name in doubted]
    if ask.about in ("score", "pain", *measured) or not (scored or measured):
        return False
    return sum(token.value is not None for token in said.tokens) <= len(scored) + len(measured)


def _names(said: Message) -> set[str]:
    """What the lexicon of answers calls the words of an answer."""
    return {hit.name for hit in book(said.language, "answers").find(said.tokens)}


def _numbers(text: str, context: Context) -> list[str]:
    message = read_message(text, context)
    return [message.span(at, at + 1) for at, token in enumerate(message.tokens) if token.value is not None]


def _rewritten(text: str, earlier: Reading, ask: Ask, said: Message, names: set[str]) -> str | None:
    """The earlier text with the answer where the question stood; None where the answer does not fit the question."""
    answer = said.text.strip()
    worded = {at for hit in book(said.language, "answers").find(said.tokens) for at in range(hit.start, hit.end)}
    numbers = [
        said.span(at, at + 1) for at, token in enumerate(said.tokens) if token.value is not None and at not in worded
    ]
    asked = _numbers(ask.span, said.context)
    for name, nth in NTH.items():
        if name in names and not numbers and nth < len(asked):
            numbers = [asked[nth]]
    if asked and not numbers and names & {"lower", "higher"}:
        sized = sorted(asked, key=_value)
        numbers = [sized[0] if "lower" in names else sized[-1]]
    unit = said.context.unit

    def put(words: str) -> str:
        if ask.span == text.strip():
            return f"{text} {words}"  # the whole message was asked about: the answer goes on with it
        return text.replace(ask.span, words, 1) if ask.span and ask.span in text else f"{text} {words}"

    about = ask.about
    number = numbers[-1] if numbers else asked[0] if asked else None
    if about in ("reps", "load_kg", "rpe", "assist_kg", "hold_s"):
        kinds = ("reps", "load", "effort", "seconds", "none")
        kind: str | None = next((name for name in kinds if name in names), None)
        if kind == "none":
            return put(_with_reps(asked, about) + " bw")
        if kind is None and not numbers:
            return None
        if len(numbers) > 1:
            alone = read(answer, replace(said.context, today=None))
            whole = read_message(text, said.context)
            moves = find_movements(whole)
            if about == "load_kg" and len(moves) == 1 and any(one.reps and one.load_kg for one in alone.sets):
                return f"{whole.span(*moves[0].spans[0])} {answer}"  # "5x3 +250", "5x3 +25": all of it anew
            return put(_with_load(ask, answer, earlier, alone, unit))
        kind = kind or {"reps": "reps", "hold_s": "seconds", "rpe": "effort"}.get(about, "load")
        if number is None:
            return None
        said_unit = "lb" if any(token.text in little("pounds") for token in said.tokens) else unit
        known = [one.load_kg for one in earlier.sets if one.reps is None and one.load_kg]
        turned = (
            known
            and asked
            and any(abs(kg - factor * _value(asked[0])) < 0.06 for kg in known for factor in (1, KG_PER_LB))
        )
        if about == "reps" and kind == "reps" and turned and numbers:
            # the figure in question turned out to be the load
            return put(f"+{asked[0]} {unit} {number} reps")
        words = {
            "reps": f"{number} reps",
            "load": f"+{number} {said_unit}",
            "effort": f"rpe {number}",
            "seconds": f"{number} s",
        }
        if about == "reps" and kind == "reps" and _counts(ask.span, said):
            return put(f"{ask.span} {words[kind]}")
        return put(words[kind])
    if about == "field":
        # "4, not 5": of what is said behind it, where a correction has it
        unit_of = {"reps": "reps", "load": said.context.unit, "effort": "rpe", "seconds": "s"}
        unit_said = next((unit_of[name] for name in unit_of if name in names), None)
        return put(f"{ask.span} {unit_said}") if unit_said is not None else put(answer) if numbers else None
    if about == "movement":
        if not find_movements(said) and "first" not in names:
            return None
        named = read_message(ask.span, said.context)
        if find_movements(named):
            return put(answer)
        return f"{answer}: {text}"
    if about == "rom":
        half = "top half" if "top" in names else "bottom half" if "bottom" in names else None
        if half is not None:
            return put(f"{half} {_without_half(ask.span, said)}")
        return put(_without_half(ask.span, said)) if "full" in names else None
    if about == "side":
        if numbers:
            return put(answer)
        side = "left" if "left" in names else "right" if "right" in names else None
        if side is None or not asked:
            return None
        other = "right" if side == "left" else "left"
        return put(", ".join(f"{place} {n}" for place, n in zip((side, other), asked, strict=False)))
    if about == "bodyweight_kg":
        return f"bw {number} {unit}" if numbers else None
    if about in ("score", "pain"):
        return put(f"{number}/10") if numbers else None
    if about in ("sets", "dates", "performed_on", "sleep_h", "duration_min", "session_rpe"):
        return f"{answer}: {text.replace(ask.span, ' ', 1)}" if about == "performed_on" else put(answer)
    return put(answer)


def _counts(span: str, said: Message) -> bool:
    """Whether the words asked about say a number of sets ("4 sets")."""
    asked = read_message(span, said.context)
    return any(hit.table == "sets" for found in asked.beginning("grammar")[1:2] for hit in found)


def _with_load(ask: Ask, answer: str, earlier: Reading, alone: Reading, unit: str) -> str:
    """Sets in answer to a question for reps: the load in "dips with 10" was no part of the doubt, and the "20" of
    "pull-ups 20" is the load where it is none of the reps."""
    told = [one.reps for one in alone.sets if one.reps is not None]
    if ask.about != "reps" or any(one.load_kg for one in alone.sets):
        return answer
    if _plain(ask.span):
        return f"+{ask.span.strip()} {unit} {answer}" if told and _value(ask.span.strip()) not in told else answer
    loaded = any(one.reps is None and one.load_kg for one in earlier.sets)
    return f"{ask.span}, {answer}" if loaded else answer


def _plain(span: str) -> bool:
    """Whether the words asked about are a number and nothing else: that may turn out to be no load."""
    return _value(span.strip()) >= 0


def _value(number: str) -> float:
    """A plain number as written; -1 for a word that says one."""
    plain = number.replace(",", ".")
    return float(plain) if plain.replace(".", "", 1).isdecimal() else -1.0


def _with_reps(asked: list[str], about: str) -> str:
    """ "20" asked about is so many reps once no weight is said; "+250" is not."""
    return f"{asked[0]} reps" if about == "reps" and asked else ""


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


def _merged(text: str, earlier: Reading, ask: Ask, answer: str, new: Reading) -> Reading | None:
    """The new reading, unless it is no better than the earlier one."""
    still = {(one.about, one.span) for one in new.ask}
    if (ask.about, ask.span) in still and len(new.ask) >= len(earlier.ask):
        return None
    asks = []
    for one in new.ask:
        if one.span in text or one.span in answer:
            asks.append(one)
        else:
            asks.append(Ask(one.about, ask.span if one.about == ask.about else answer.strip()))
    performed = new.performed_on
    if ask.about != "performed_on" and earlier.performed_on is not None:
        performed = earlier.performed_on
    unread = tuple(piece for piece in new.unread if piece in text or piece in answer)
    return replace(new, ask=tuple(asks), performed_on=performed, unread=unread, language=earlier.language)
