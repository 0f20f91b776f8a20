"""What stands between and behind the names of movements: the end of a sentence, a side, sets, a distance."""

from __future__ import annotations

from bot.reading.little import little
from bot.reading.message import Message

MOST_SET_TOKENS = 4  # tokens of "3x8" before the name of another movement
MARKS = frozenset({",", "/", "-"})  # between the numbers of a list
MOST_TIMES = 2  # tokens of "5x" before the reps
GLUE = 3  # words that may stand between a movement's name and what makes it another ("pull-ups on the rings")


def breaks(message: Message, start: int, end: int, hard: bool) -> bool:
    """Whether a sentence ends between the tokens; for near features (not `hard`) any number or comma parts too."""
    for token in message.tokens[start:end]:
        if token.kind == "nl" or token.text in (";", "!", "?"):
            return True
        if token.text == "." and not hard:
            return True
        if token.text == "." and hard:
            return True
        if not hard and (token.kind != "word" or token.value is not None):
            return token.text not in ("(", "-", ":")
    return False


def sided(message: Message, start: int, end: int) -> bool:
    """Whether a side is told between the tokens: "archers each side on the bar"."""
    grammar = message.beginning("grammar")
    return any(hit.table == "side" for at in range(start, end) for hit in grammar[at])


def measured(message: Message, at: int) -> bool:
    """Whether a distance stands right before a token."""
    tokens = message.tokens
    hits = message.beginning("grammar")[at - 1] if at > 1 and tokens[at - 2].kind == "num" else []
    return any(hit.table == "unit" and hit.name == "other" and hit.end == at for hit in hits)


def numbered(message: Message, at: int) -> bool:
    """Whether a number follows at once."""
    follow = message.tokens[at : at + 2]
    return bool(follow) and (
        follow[0].value is not None
        or (len(follow) > 1 and follow[0].text in (":", "-") and follow[1].value is not None)
    )


def measured_work(message: Message, at: int) -> bool:
    """Whether "5x3" or "2x60s" stands right before a token."""
    tokens = message.tokens
    timed = at > 0 and tokens[at - 1].kind == "word" and tokens[at - 1].value is None
    end = at - timed
    return end > MOST_TIMES and tokens[end - 1].value is not None and tokens[end - 2].text in little("times")


def work_between(message: Message, start: int, end: int) -> bool:
    """Whether "5x3" or the like stands between, or a list: "8 8 7", "8, 8, 7"."""
    tokens = message.tokens[start:end]
    for left, middle, right in zip(tokens, tokens[1:], tokens[2:], strict=False):
        told = left.value is not None and right.value is not None
        if told and (middle.value is not None or middle.text in MARKS or middle.text in little("times")):
            return True
    return False


def number_soon(message: Message, at: int) -> bool:
    """Whether a number follows in the clause."""
    for token in message.tokens[at : at + GLUE + 1]:
        if token.kind in ("sym", "nl") and token.text != ":":
            return False
        if token.value is not None:
            return True
    return False


def work_after(message: Message, start: int) -> bool:
    """Whether "5x3" or the like follows at once."""
    return work_between(message, start, min(start + 4, len(message.tokens)))
