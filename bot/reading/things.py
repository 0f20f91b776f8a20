"""Numbers that count or tell something of everyday life: "3 kids", "Age 67", "(52)", "the bus leaves at 9", "in 2015".

They are taken out of the facts before sets are made. A number is everyday where a word of `things.toml` says so, or
where whole sets are told elsewhere and a word that no book knows is what it counts.
"""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import clause_start, ends_sentence
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.phrases import SENTENCE_ENDS
from bot.reading.prose import lone
from bot.reading.tokens import Token

YEARS = range(1900, 2101)
LEAST_AGE, MOST_AGE = 12, 99
LEAST_OLD = 40  # years that a load may be as well
AFTER = 2  # so many words may stand between a number and what it counts: "3 very small kids"


def drop_things(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The facts without numbers of everyday things."""
    told = any(fact.kind == "rows" and not lone(fact) and not fact.note.get("the") for fact in facts)
    words = _Words(message)
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        if _may_be_an_age(facts, at) and words.led_as_age(fact):
            out.append(Fact("ask", fact.start, fact.end, "load_kg", {"some": True}))
            continue
        if _may_be_anything(fact) and words.everyday(facts, at, told):
            if _of_the_sets(facts, at) and not words.surely(fact):
                # "4x5 with 20 smooth" is their load; "4x5 with 20 blokes watching" is asked
                closes = _closes(facts, at + 1) or self_evident(message, fact.end)
                if closes or not words.spelled(fact):  # "with ten breaths between"
                    out.append(fact if closes else Fact("ask", fact.start, fact.end, "load_kg"))
            continue
        out.append(fact)
    return out


def _may_be_an_age(facts: Sequence[Fact], at: int) -> bool:
    """ "Mit 61 schaffe ich 7 Klimmzüge": years as well as kilograms, at the head of a sentence, its verb behind."""
    fact = facts[at]
    opens = not at or ends_sentence(facts[at - 1])
    plain = fact.kind == "load" and fact.note.get("how") == "at" and not fact.note.get("unit")
    if not opens or not plain or not LEAST_OLD <= (fact.value or 0) <= MOST_AGE:
        return False
    loads = [one for one in facts if one.kind in ("load", "loads", "at") and one is not fact]
    behind = next((one for one in facts[at + 1 :] if one.kind not in ("word", "scheme", "plan")), None)
    verb = at + 1 < len(facts) and facts[at + 1].kind in ("word", "scheme")
    return verb and not loads and behind is not None and behind.kind == "bare"


def _of_the_sets(facts: Sequence[Fact], at: int) -> bool:
    """A number led by "with", "at" or "@" right behind whole sets: theirs, whatever word comes after it."""
    before = facts[at - 1] if at else None
    led = facts[at].kind == "at" or (facts[at].kind == "load" and facts[at].note.get("how") in ("at", "plus"))
    return led and before is not None and before.kind == "rows" and before.end == facts[at].start


def self_evident(message: Message, at: int) -> bool:
    """Whether the word at a token says how the sets went: "4x5 with 20 pretty easy"."""
    return at < len(message.tokens) and message.tokens[at].text in little("how_it_went")


def _closes(facts: Sequence[Fact], at: int) -> bool:
    """Whether one word stands here, and the clause ends."""
    if at >= len(facts) or facts[at].kind != "word" or facts[at].end - facts[at].start > 1:
        return False
    return at + 1 >= len(facts) or facts[at + 1].kind == "sep"


def _may_be_anything(fact: Fact) -> bool:
    if fact.kind == "rows":
        return lone(fact) or bool(fact.note.get("the"))
    if fact.kind == "ask":
        return bool(fact.value == "load_kg" and not fact.note.keys() & {"wished", "some"})
    return fact.kind in ("at", "percent") or lone(fact) or (fact.kind == "count" and not fact.note.get("of_plan"))


class _Words:
    """What the lists of a language and the words of one message say of its numbers."""

    def __init__(self, message: Message) -> None:
        self.message = message
        self.tokens = message.tokens
        book = message.book("things")
        self._book = book

    def everyday(self, facts: Sequence[Fact], at: int, told: bool) -> bool:
        fact = facts[at]
        first, end = self._number(fact)
        if first is None or self._so_much(first, end):
            return False
        if self._named(first, end) or self._year(first) or self._age(first, end):
            return True
        if not told:
            return False
        return (
            self._aside(facts, at)
            or self._counted(facts, at, end)
            or self._o_clock(facts, at)
            or self._zero(facts, at)
            or self._the_others(facts, at)
            or self._of_then(facts, at)
        )

    def _so_much(self, first: int, end: int) -> bool:
        """Whether a number is a change of the load: "Gewicht um 5 reduziert"."""
        led = first > 0 and self.tokens[first - 1].text in little("by_so_much")
        return led and end < len(self.tokens) and self.tokens[end].text in little("step_up", "step_down")

    def surely(self, fact: Fact) -> bool:
        """Whether a listed word, or the form of a year, says that the number is everyday."""
        first, end = self._number(fact)
        return first is not None and (self._named(first, end) or self._year(first) or self._age(first, end))

    def spelled(self, fact: Fact) -> bool:
        """Whether the number is said in words."""
        first, _ = self._number(fact)
        return first is not None and self.tokens[first].spelled

    def _number(self, fact: Fact) -> tuple[int | None, int]:
        """The token of the number itself, and the place after it."""
        for place in range(fact.start, fact.end):
            if self.tokens[place].value is not None:
                return place, place + 1
        return None, fact.end

    def _listed(self, place: int, name: str) -> int | None:
        """The end of a phrase of the list at a token; None where there is none."""
        if not 0 <= place < len(self.tokens):
            return None
        return next((hit.end for hit in self._book.at(self.tokens, place) if hit.name == name), None)

    def _named(self, first: int, end: int) -> bool:
        """A listed noun after it, perhaps behind a word or two that no book knows, or a listed word before it."""
        for place in range(end, min(end + AFTER, len(self.tokens))):
            if self._listed(place, "noun") is not None:
                return True
            if not self._strange(self.tokens[place]):
                break
        return any(self._listed(start, "before") == first for start in range(max(0, first - 3), first))

    def _year(self, first: int) -> bool:
        token = self.tokens[first]
        before = self.tokens[first - 1] if first else None
        if before is None or token.spelled or token.value is None:
            return False
        if before.text == "'" and before.end == token.start and len(token.text) == 2:
            return True
        return token.value in YEARS and len(token.text) == 4

    def _age(self, first: int, end: int) -> bool:
        """ "At 61 I am pleased to report", "a mis 61": an age at the head of a sentence."""
        years = self.tokens[first].value or 0
        if not LEAST_AGE <= years <= MOST_AGE or self._listed(first - 1, "age_after") is None:
            return self._listed(first - 2, "age_led") == first and LEAST_AGE <= years <= MOST_AGE
        opens = first < 2 or self.tokens[first - 2].text in SENTENCE_ENDS  # not "4x6 at 20 i'm done"
        # English "im" is German for "in the"
        own = opens and end < len(self.tokens) and self.message.book("things", mixed=False).at(self.tokens, end)
        return any(hit.name == "age_goes_on" for hit in own or ())

    def led_as_age(self, fact: Fact) -> bool:
        """Whether a number stands behind a word that an age stands behind."""
        first, _ = self._number(fact)
        return first is not None and self._listed(first - 1, "age_after") is not None

    def _strange(self, token: Token) -> bool:
        """A word that no book of the language knows, and no typing error of one that it does."""
        if token.kind != "word" or token.value is not None or token.word != token.text or len(token.text) < 3:
            return False
        return not any(token.text in self.message.book(name).words for name in ("prose", "grammar", "movements"))

    def _aside(self, facts: Sequence[Fact], at: int) -> bool:
        """ "Kid (4) wanted a ride", "my son, 7, did": a lone number between brackets or commas after a strange word."""
        if at < 2 or at + 1 >= len(facts):
            return False
        opens, closes, before = facts[at - 1], facts[at + 1], facts[at - 2]
        if opens.kind != "sep" or closes.kind != "sep" or before.kind != "word" or before.note.get("noise"):
            return False
        if at > 2 and facts[at - 3].kind == "scope":
            return False  # "the last one incomplete (3)"
        marks = (opens.note.get("mark"), closes.note.get("mark"))
        if marks not in (("(", ")"), (",", ",")):
            return False
        return self._strange(self.tokens[before.end - 1]) or any(
            self._listed(before.end - 1, name) is not None for name in ("noun", "before")
        )

    def _zero(self, facts: Sequence[Fact], at: int) -> bool:
        """ "patients 1, me 0": nothing, after a plain word."""
        fact = facts[at]
        return fact.kind == "bare" and fact.value == 0 and at > 0 and facts[at - 1].kind == "word"

    def _the_others(self, facts: Sequence[Fact], at: int) -> bool:
        """ "the 5s were all in use": sets of five that nobody told before are plates."""
        fact = facts[at]
        if fact.kind != "rows" or not fact.note.get("the") or self.message.context.today:
            return False
        told = {entry.reps for one in facts if one.kind == "rows" and one is not fact for entry in one.value}
        return fact.value[0].reps not in told

    def _of_then(self, facts: Sequence[Fact], at: int) -> bool:
        """ "the 20 from last week were no problem": a number of another day, spoken of."""
        if facts[at].kind not in ("bare", "rows") or at + 2 >= len(facts):
            return False
        of, then = facts[at + 1 : at + 3]
        if of.kind != "word" or self.tokens[of.end - 1].text not in little("from_then"):
            return False
        day = then.kind == "claim" and then.value is not None and then.value.kind in ("day", "noise")
        return day or (then.kind == "scope" and then.value == "last")

    def _counted(self, facts: Sequence[Fact], at: int, end: int) -> bool:
        """ "2 witnesses": a strange word right after it, nothing of training in front of it or soon after."""
        fact = facts[at]
        if end >= len(self.tokens) or fact.end != end or not self._strange(self.tokens[end]):
            return False
        if at and facts[at - 1].kind in ("move", "side", "scope", "load", "mend", "scheme", "count"):
            return False
        ahead = facts[at + 1 : at + 4]
        if ahead and ahead[0].start == end and ahead[0].kind == "fail":
            return False  # "45 wouldn't budge"
        for one in ahead:
            if one.kind in ("move", "rows", "side"):
                return False
            if one.kind == "sep":
                break
        before = [one for one in facts[:at] if one.kind != "sep"]
        parted = not at or facts[at - 1].kind == "sep"
        if parted and before and lone(before[-1]) and before[-1].kind == "bare":
            return False  # "8 smooth, 7 grindy" is a list
        return not (parted and at and facts[at - 1].note.get("mark") == ":")

    def _o_clock(self, facts: Sequence[Fact], at: int) -> bool:
        """ "because the bus leaves at 9": a time of day after a strange word."""
        fact = facts[at]
        leads = self._listed(fact.start, "clock") is not None or self._listed(fact.start - 1, "clock") is not None
        before = facts[at - 1] if at else None
        if not leads or before is None or before.kind != "word" or before.note.get("noise"):
            return False
        opens = all(one.kind in ("word", "at", "sep", "plan", "scheme", "claim") for one in facts[:at])
        closes = at + 1 == len(facts) or facts[at + 1].kind in ("sep", "word")
        place = self._listed(before.end - 1, "place") is not None
        clause = facts[clause_start(facts, at) : at]
        meets = all(one.kind in ("word", "claim") for one in clause) and any(  # "dips 3x8, see you at 6"
            self.tokens[one.start].text in little("meets") for one in clause
        )
        return (meets and closes) or place or self._strange(self.tokens[before.end - 1]) or (opens and closes)
