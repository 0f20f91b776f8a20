"""Talk of what is there to train with, of days away and of what will be trained: none of it was trained."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby, pairwise

from bot.reading.bounds import ends_sentence
from bot.reading.facts import Fact
from bot.reading.intents import wishes
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.prose import EVIDENCE, lone
from bot.reading.tokens import Token

BEHIND = ("tomorrow", "behind")  # intentions that may stand behind what is meant
CLAUSE_ENDS = frozenset({",", ".", "!", "?", ";", ":", "\n", "(", ")"})
TALK = ("equipment", "away")
SILENT = frozenset({"sep", "claim", "word"})  # facts that report nothing
TOLD = EVIDENCE - {"move", "fail"}
# The hour from which "this afternoon: 4x5" tells of what was done (common practice, no source); before, it is a plan.
TO_COME_BEFORE = {"to_come_by_afternoon": 13, "to_come_by_evening": 17}
LEANING = frozenset(
    "done planned same took turned_to skipped except swap extra_set stopped last_time instead rest quit".split()
)


def drop_foretold(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The facts without those of intentions, and of sentences that only say what is there, or where one will be."""
    spans = _intentions(message)
    kept = [f for f in facts if f.kind in SILENT or not any(low <= f.start < high for low, high in spans)]
    hits = [(hit.start, hit.end) for name in TALK for hit in wishes(message).get(name, ())]
    if not hits or not message.context.today:
        return kept  # without a plan nothing leans on it
    out: list[Fact] = []
    for _, sentence in groupby(_numbered(kept), key=lambda pair: pair[0]):
        own = [fact for _, fact in sentence]
        spoken = bool(own) and any(own[0].start <= at < own[-1].end for at, _ in hits)
        apart = [fact for fact in own if not any(low <= fact.start < high for low, high in hits)]
        out += [fact for fact in own if fact.kind in SILENT] if spoken and not _worked(apart) else own
    return out


def _numbered(facts: Sequence[Fact]) -> list[tuple[int, Fact]]:
    """Each fact with the number of its sentence."""
    number, out = 0, []
    for fact in facts:
        out.append((number, fact))
        number += ends_sentence(fact)
    return out


def _worked(facts: Sequence[Fact]) -> bool:
    """Whether a sentence tells of work: sets, several numbers, a word for done."""
    if any(fact.kind == "count" and not fact.value for fact in facts):
        return False  # "gym shut, zero sets"
    bares = sum(fact.kind == "bare" for fact in facts)
    # "squats with 75, couldn't find the small plates"
    lifted = any(one.kind == "move" and two.kind == "load" and two.value for one, two in pairwise(facts))
    return (
        bares > 1
        or lifted
        or any(
            (fact.kind in TOLD and not lone(fact))
            or (fact.kind == "rows" and not lone(fact))
            or (fact.kind == "scheme" and fact.value == "got")
            or (fact.kind == "plan" and bool(LEANING & set(fact.note.get("names", [fact.value]))))
            for fact in facts
        )
    )


def _intentions(message: Message) -> list[tuple[int, int]]:
    """The tokens behind words for an intention, to the end of the sentence or to what was done after all."""
    said = [hit for hit in message.hits("intents", "foretold") if _to_come(message, hit.name)]
    if not said:
        return []
    tokens = message.tokens
    ends = [at for at, token in enumerate(tokens) if token.text in (".", "!", "?", ";", "\n")]
    own = [hit for found in message.beginning("grammar") for hit in found if hit.table == "unreal"]
    now = {hit.start for hit in own if hit.name == "now"}
    ends += [hit.start for hit in own if hit.name == "own" and hit.start not in now]
    ends += [at for at in now if at and tokens[at - 1].text in (",", "-")]  # "3x8 dips to do, today 5x3 pull-ups"
    spans: list[tuple[int, int]] = []
    for hit in said:
        end = min((at for at in ends if at >= hit.end), default=len(tokens))
        if hit.name not in BEHIND:
            spans.append((hit.start, end))
            continue
        low = _clause_start(tokens, hit.start)
        closes = hit.end >= len(tokens) or tokens[hit.end].kind in ("sym", "nl")
        told = any(low <= one.start < hit.end for one in own if one.name in ("own", "now"))
        if hit.name == "tomorrow" and hit.start and tokens[hit.start - 1].text in little("no_tomorrow"):
            continue  # "esta mañana", "see you tomorrow"
        if closes and not told and message.numbers_within(low, hit.start):
            spans.append((low, hit.start))  # "3x8 dips tomorrow", "3x8 dips to do"
        elif hit.name == "tomorrow" and low == hit.start and message.numbers_within(hit.end, end):
            comma = next((at for at in range(hit.end, end) if tokens[at].text == ","), end)
            off = any(hit.start <= one.start < comma for one in wishes(message).get("missed", ()))
            spans.append((hit.start, comma if off else end))  # "mañana 3x8 fondos", not "tomorrow is off, dips 3x8"
    return spans


def _clause_start(tokens: Sequence[Token], at: int) -> int:
    """Where the clause begins in which a token stands: behind a sign, or an "and", a "but"."""
    while at and not (tokens[at - 1].kind in ("sym", "nl") and tokens[at - 1].text in CLAUSE_ENDS):
        if tokens[at - 1].text in little("and", "but", "so_then", "then"):
            break
        at -= 1
    return at


def _to_come(message: Message, name: str) -> bool:
    """Whether what a phrase announces still lies ahead when the message is sent."""
    before = TO_COME_BEFORE.get(name)
    return before is None or (not message.at_night and message.local.hour < before)
