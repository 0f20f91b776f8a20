"""What another did beside the athlete: "sie 3x5, ich 3x8", "she did 3x5, I did 3x8", "él metió 8 y yo 5, 5 y 4"."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from bot.reading.facts import Fact
from bot.reading.first_names import first_names
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.text import fold_words

REACH = 2  # tokens from the person to the sets
NEAR = 4  # facts from a name to the first number
BETWEEN = frozenset({"word", "scheme", "plan", "sep"})
NUMBERS = frozenset({"rows", "bare", "load", "loads", "count", "effort", "efforts", "side", "at", "fail"})
OF_SETS = frozenset({"rows", "load", "effort", "side"})


def done_by_others(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts without the sets of "she", where the athlete's own stand behind an "I"."""
    facts = _named_by_name(message, facts)
    rows = [at for at, fact in enumerate(facts) if fact.kind in ("rows", "bare")]
    theirs = [at for at in rows if _person(message, facts[at], "third_person")]
    if not theirs or not any(_person(message, facts[at], "first_person") for at in rows):
        return facts
    gone: set[int] = set()
    for at in theirs:
        end = next((n for n in range(at + 1, len(facts)) if facts[n].kind not in OF_SETS), len(facts))
        gone.update(range(at, end))
    return [fact for at, fact in enumerate(facts) if at not in gone]


def _named_by_name(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Joe hit 40 kg for 5. I got 3 pull-ups": a clause led by a name, where another is led by an "I".

    Where no verb stands behind the name, "Dave: 5x5, me: 4x5", none may stand behind the "I" either.
    """
    bounds = [-1, *(at for at, fact in enumerate(facts) if fact.kind == "sep" and fact.note.get("mark") != ":")]
    clauses = [facts[low + 1 : high] for low, high in pairwise([*bounds, len(facts)])]
    mine = [n for n, clause in enumerate(clauses) if any(_mine(message, fact, REACH) for fact in clause)]
    mine = sorted({*mine, *(n for n, clause in enumerate(clauses) if _led_by_me(message, clause))})
    opened = [clauses[n] for n in mine if message.tokens[clauses[n][0].start].text in little("first_person")]
    bare = any(_mine(message, fact, 1) for clause in opened for fact in clause)
    theirs = [n for n, clause in enumerate(clauses) if n not in mine and _led_by_name(message, clause, bare)]
    if not mine:
        theirs = [n for n in theirs if _told_apart(clauses, n) and _first_name(message, clauses[n])]
    if not theirs:
        return facts
    moved = any(fact.kind == "move" for n in mine for fact in clauses[n])
    gone = {id(fact) for n in theirs for fact in clauses[n] if fact.kind in NUMBERS or (moved and fact.kind == "move")}
    return [fact for fact in facts if id(fact) not in gone]


def _led_by_me(message: Message, clause: Sequence[Fact]) -> bool:
    """ "I did pull-ups 4x5": whether an "I" begins a clause that tells numbers."""
    told = any(fact.kind in ("rows", "bare", "count") for fact in clause)
    return told and message.tokens[clause[0].start].text in little("first_person")


def _first_name(message: Message, clause: Sequence[Fact]) -> bool:
    """Whether the name that a clause begins with is a first name; "Suddenly got 3" has none."""
    named = next(fact for fact in clause if fact.kind != "claim")
    return message.tokens[named.start].text in first_names()


def _told_apart(clauses: Sequence[Sequence[Fact]], n: int) -> bool:
    """ "Pull-ups 4x5 +20. Tom managed 3 with 30": whether the sets told before have their exercise, and these none."""
    before = [fact for clause in clauses[max(0, n - NEAR) : n] for fact in clause]
    kinds = {fact.kind for fact in before}
    return "move" in kinds and "rows" in kinds and all(fact.kind != "move" for fact in clauses[n])


def _mine(message: Message, fact: Fact, reach: int) -> bool:
    """Whether an "I" stands before a number, only "only" or a sign between."""
    if fact.kind not in ("rows", "bare", "load"):
        return False
    start = fact.start
    while start and message.tokens[start - 1].text in little("before_number", "only_word", "did_it"):
        start -= 1
    return any(token.text in little("first_person") for token in message.tokens[max(0, start - reach) : start])


def _led_by_name(message: Message, clause: Sequence[Fact], bare: bool) -> bool:
    """Whether a clause begins with a name, its verb or its numbers right behind."""
    words = [fact for fact in clause if fact.kind != "claim"]
    if len(words) < 2 or not _name(message, words[0]):
        return False
    number = next((n for n, fact in enumerate(words) if fact.kind in NUMBERS), None)
    if number is None or number > NEAR or any(one.kind not in BETWEEN for one in words[1:number]):
        return False
    verb = words[1].kind == "scheme" and words[1].value == "got"
    verb = verb or message.tokens[words[1].start].text in little("has_done")
    return verb or (bare and all(one.kind == "sep" for one in words[1:number]))


def _name(message: Message, fact: Fact) -> bool:
    """A word with a capital that no book knows."""
    if fact.kind != "word" or fact.note.get("noise") or fact.end != fact.start + 1:
        return False
    verbatim = message.span(fact.start, fact.end)
    if not (verbatim[:1].isupper() and verbatim.isalpha() and len(verbatim) > 2):
        return False
    text = fold_words(verbatim)  # as written: no slip of a word of the trade
    known = any(text in message.book(name).words for name in ("grammar", "prose", "movements"))
    told = any(hit.start <= fact.start < hit.end for name in ("dates", "body") for hit in message.hits(name))
    return not (known or told or text in little("how_it_went", "judging", "at_first"))


def _person(message: Message, fact: Fact, who: str) -> bool:
    """Whether a word for a person stands right before a fact."""
    before = message.tokens[max(0, fact.start - REACH) : fact.start]
    return any(token.text in little(who) for token in before)
