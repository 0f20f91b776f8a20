"""The message as a row of items for the set grammar: numbers, words it knows, movements, what others have claimed."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from bot.reading.lexicon import FALLBACK, Hit
from bot.reading.little import little
from bot.reading.message import Claim, Message
from bot.reading.movements.mention import Mention
from bot.reading.tokens import Token

ItemKind = Literal["num", "clock", "word", "known", "sym", "nl", "move", "claim"]
LEAST_LINE = 4
NEAR_STOP = 5  # tokens from a stop to where it was made
TIED = frozenset({"/", ",", "-", "+", "@", "x", "*"})


@dataclass(slots=True, unsafe_hash=True)  # never changed; frozen, each would take five times as long to make
class Item:
    """Tokens [start, end). `labels`: what the grammar's lexicon knows them as, {table: name}."""

    kind: ItemKind
    start: int
    end: int
    text: str = ""
    value: float | None = None
    comma: bool = False
    spelled: bool = False
    space: bool = False
    labels: tuple[tuple[str, str], ...] = ()
    mention: Mention | None = None
    claim: Claim | None = None

    def name(self, table: str) -> str | None:
        """What a table of the grammar calls it."""
        for label, name in self.labels:
            if label == table:
                return name
        return None

    def has(self, table: str, *names: str) -> bool:
        """Whether it is in a table of the grammar (under one of these names)."""
        for label, name in self.labels:  # noqa: SIM110 - a generator is half the speed, and this is asked most
            if label == table and (not names or name in names):
                return True
        return False


END = Item("nl", -1, -1, "\n")


def _number(token: Token, start: int, labels: tuple[tuple[str, str], ...] = ()) -> Item:
    return Item("num", start, start + 1, token.text, token.value, token.comma, token.spelled, token.space, labels)


def _measured(message: Message, at: int) -> bool:
    """Whether a unit of weight or time stands at `at`."""
    if at >= len(message.tokens):
        return False
    return any(hit.table == "unit" and hit.name in ("kg", "lb", "sec") for hit in message.beginning("grammar")[at])


def _ends_sentence(message: Message, at: int) -> bool:
    """Whether "2." closes a sentence and is no "second": what counts a set has an article or a set beside it."""
    tokens = message.tokens
    if at + 1 >= len(tokens) or tokens[at + 1].text != ".":
        return False
    if not at:
        return False
    led = tokens[at - 1]
    counted = at + 2 < len(tokens) and any(hit.table == "sets" for hit in message.beginning("grammar")[at + 2])
    if led.text == ":" and at > 1 and tokens[at - 2].value is not None and not counted:
        return True  # "Satz 5: 3. Danach …"
    if counted or led.kind not in ("word", "num"):
        return False
    if led.kind == "num":
        return True  # "4 4 3 3. Lief gut"
    if led.text in little("and", "or"):
        return at < 2 or tokens[at - 2].text != "."  # "4 und 4. Dips 3x8", not "der 3. und 4."
    return led.text not in little("before_nth")


def _numbers_line(message: Message, at: int) -> bool:
    """Whether "4." without an article numbers a line: of the sets told by their place it would be far behind."""
    led = message.tokens[at - 1] if at else None
    if message.context.today and at + 1 < len(message.tokens) and message.tokens[at + 1].text != ".":
        return False  # "4th with 15", of the planned ones
    return (message.tokens[at].value or 0) >= LEAST_LINE and (led is None or led.text not in little("before_nth"))


def _stops(message: Message, at: int) -> bool:
    """Whether words for a stop, or a time held, stand right before a place: "with a pause at 90"."""
    grammar = message.beginning("grammar")
    for place in range(at, max(-1, at - NEAR_STOP), -1):
        if message.tokens[place].text in (",", ".", ";"):
            return False
        stop = any(hit.table == "pause" and (place < at or hit.name == "pause") for hit in grammar[place])
        if stop or any(hit.table == "unit" and hit.name == "sec" for hit in grammar[place]):
            return True
    return False


def _meant(message: Message, at: int, limit: int, before: Item) -> list[Hit]:
    """The grammar's phrases at a token that end before what others have, those left out that mean something else."""
    tokens, grammar = message.tokens, message.beginning("grammar")
    token = tokens[at]
    found = [hit for hit in grammar[at] if hit.end <= limit]
    if token.spelled and message.language != FALLBACK:
        found = [hit for hit in found if hit.name != "once"]  # "once kilos" are eleven
    if before.has("sets", "sets") or before.has("plan", "more") or before.has("load", "plate"):
        found = [hit for hit in found if (hit.table, hit.name) != ("effort", "after")]  # "3 series de diez"
    if found and token.kind == "num":
        sided = at and any(hit.table == "side" and hit.end == at for hit in grammar[at - 1])
        if at and (sided or tokens[at - 1].text in TIED):
            found = [hit for hit in found if hit.table != "scope"]  # "1/3." ends a sentence, it is no third
        if _ends_sentence(message, at) or _numbers_line(message, at):
            found = [hit for hit in found if hit.table != "scope"]  # "waren's nur 2. Klimmzüge +25"
    if found and token.text in little("bar_or_but") and at and tokens[at - 1].text in little("the", "an"):
        found = [hit for hit in found if hit.name not in ("except", "skipped")]  # "the rings instead of the bar"
    if found and found[0].table == "plan" and found[0].name == "except" and found[0].end > at + 1:
        bare = grammar[found[0].end - 1]  # "but no extra weight": the "no" is of the weight
        if any((hit.table, hit.name) == ("load", "none") and hit.end > found[0].end for hit in bare):
            found = [hit for hit in found if hit.end < found[0].end]
    if found and found[0].table == "pause" and tokens[found[0].end - 1].kind == "num" and not _stops(message, at):
        found = [hit for hit in found if hit.table != "pause"]  # "3x3 at 90": a load
    if found and found[0].end > at + 1 and tokens[found[0].end - 1].kind == "num":
        found = [hit for hit in found if not _measured(message, hit.end)]  # "a vest of 10 kg"
    return found


def make_items(message: Message, mentions: Sequence[Mention], claims: Sequence[Claim]) -> list[Item]:
    """All items in order; every token is in exactly one."""
    tokens = message.tokens
    grammar = message.beginning("grammar")
    owner: dict[int, tuple[int, Item]] = {}
    for claim in claims:
        if claim.end > claim.start:
            item = Item("claim", claim.start, claim.end, claim=claim)
            for at in range(claim.start, claim.end):
                owner.setdefault(at, (claim.end, item))
    for mention in mentions:
        for start, end in mention.spans:
            first = (start, end) == mention.spans[0]
            item = Item("move" if first else "claim", start, end, mention=mention if first else None)
            for at in range(start, end):
                owner.setdefault(at, (end, item))
    limits = [len(tokens)] * len(tokens)  # where the next token that is taken stands
    for at in range(len(tokens) - 1, -1, -1) if owner else ():
        limits[at] = at if at in owner else limits[at + 1] if at + 1 < len(tokens) else len(tokens)
    items: list[Item] = []
    at = 0
    while at < len(tokens):
        if at in owner:
            _, item = owner[at]
            if not items or items[-1] is not item:
                items.append(item)
            at += 1
            continue
        token = tokens[at]
        found = _meant(message, at, limits[at], items[-1] if items else END) if grammar[at] else grammar[at]
        end = found[0].end if found else at
        if found and end > at and not (token.kind == "num" and not token.spelled and end == at + 1):
            labels = tuple((hit.table, hit.name) for hit in found if hit.end == end)
            text = " ".join(message.folded.text[token.start : tokens[end - 1].end].split())
            value = token.value if token.spelled and end == at + 1 else None
            items.append(Item("known", at, end, text, value, spelled=token.spelled, space=token.space, labels=labels))
            at = end
            continue
        if token.kind == "num" or (token.value is not None and token.kind == "word"):
            items.append(_number(token, at))
        elif token.kind == "clock":
            items.append(Item("clock", at, at + 1, token.text, token.value, space=token.space))
        elif token.kind == "nl":
            items.append(Item("nl", at, at + 1, "\n"))
        elif token.kind == "sym":
            items.append(Item("sym", at, at + 1, token.text, space=token.space))
        else:
            items.append(Item("word", at, at + 1, token.text, space=token.space))
        at += 1
    return items
