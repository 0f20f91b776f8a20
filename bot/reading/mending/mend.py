"""The words and values of a message that mends, found once; what the rules of corrections look at."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.movements import find_movements
from bot.reading.movements.mention import Mention
from bot.reading.tokens import Token

NEAR = 4
OF_TEN = "/10"  # the mark of a score
MOST_SCORE = 10


@dataclass(frozen=True)
class Value:
    start: int
    end: int
    value: float
    text: str = ""  # "5x3"
    mark: str = ""  # + or @


class Mend:
    def __init__(self, message: Message) -> None:
        self.message = message
        self.tokens = message.tokens
        self.hits: dict[str, list[Hit]] = {}
        for hit in message.hits("mends"):
            self.hits.setdefault(hit.table, []).append(hit)

    def between(self, table: str, start: int, end: int, name: str | None = None) -> list[Hit]:
        return [h for h in self.hits.get(table, ()) if start <= h.start and h.end <= end and name in (None, h.name)]

    def values(self) -> list[Value]:
        """The numbers of the message; "5x3" is one."""
        return self._values

    def words_between(self, start: int, end: int) -> int:
        """How many words stand in [start, end), those of movements and of cues left out."""
        named = {at for one in self._mentions for low, high in one.spans for at in range(low, high)}
        cues = {at for hit in self.hits.get("cue", ()) for at in range(hit.start, hit.end)}
        return sum(at not in named and at not in cues for at in range(start, end))

    @cached_property
    def _mentions(self) -> list[Mention]:
        return find_movements(self.message)

    @cached_property
    def _values(self) -> list[Value]:
        out: list[Value] = []
        # "on the last one", "ein Fehler"
        named = (*self.hits.get("which", ()), *self.hits.get("mistaken", ()))
        which = {at for hit in named for at in range(hit.start, hit.end)}
        at = 0
        while at < len(self.tokens):
            token = self.tokens[at]
            each = token.spelled and at > 0 and self.tokens[at - 1].text in little("each_word")  # "en cada una"
            if token.value is None or token.kind == "clock" or at in which or each:
                at += 1
                continue
            if self._of_ten(at):
                out.append(Value(at, at + 3, token.value, "", OF_TEN))
                at += 3
                continue
            before = self.tokens[at - 1].text if at else ""
            mark = before if before in ("+", "@") else ""
            if at + 2 < len(self.tokens) and self.tokens[at + 1].text == "x" and self.tokens[at + 2].value is not None:
                text = f"{token.value:g}x{self.tokens[at + 2].value:g}"
                out.append(Value(at, at + 3, token.value, text, mark))
                at += 3
                continue
            out.append(Value(at, at + 1, token.value, "", mark))
            at += 1
        return out

    def _of_ten(self, at: int) -> bool:
        """Whether a score out of ten stands at a token."""
        scale = self.tokens[at + 1 : at + 3]
        return len(scale) == 2 and scale[0].text == "/" and scale[1].value == 10


def only_little(tokens: Sequence[Token], start: int, end: int) -> bool:
    return all(token.text in little("in_correction") for token in tokens[start:end])


def mentions_in(message: Message, taken: set[int]) -> list[Mention]:
    return [mention for mention in find_movements(message, taken) if mention.movement != "!"]


def opposed(mend: Mend, one_end: int, two_start: int) -> bool:
    """Whether "not" stands between two values: "22.5, not 20", "23 kg on the chin-ups, not 32"."""
    return any(
        mend.words_between(one_end, hit.start) <= NEAR and only_little(mend.tokens, hit.end, two_start)
        for hit in mend.between("not", one_end, two_start)
    )
