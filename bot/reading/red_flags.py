"""Warning signs: which are named in a message, and which are only talked about.

A sign that is denied, feared, supposed, an idiom or somebody else's is none; one of long ago is a `past_flag`, for the
coach to know. In doubt a sign counts: a needless halt costs a day, a missed one a tendon. So the signs of every
language are looked for, whatever language a message is thought to be in; each is judged by the cues of its own.
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

from bot.reading.composed import composed_signs
from bot.reading.days.months import months_gone
from bot.reading.lexicon import FALLBACK, Hit, languages
from bot.reading.little import little
from bot.reading.message import Claim, Message
from bot.reading.phrases import joined_phrases, longest
from bot.reading.tokens import Token

SIGNS = ("sign", "sited", "felt", "warm", "not_sign")
CUES = ("deny", "allow", "gone", "break", "own", "past", "now", "feared", "if", "ask_about", "others", "witness")
MORE_CUES = ("contrast", "filler", "is", "felt_by", "real", "it")
FAR = 8  # tokens that a "no" or "afraid" may stand before its sign
NEAR = 5
FIRST_YEAR = 1950
FEVER = ((37.0, 42.5), (99.5, 107.5))  # degrees Celsius, and Fahrenheit
DEGREES_NEAR = 6


@dataclass(frozen=True)
class Sign:
    """A sign named at tokens [start, end). `past`: told as history."""

    start: int
    end: int
    name: str
    past: bool = False


class Cues:
    """Where the words stand that turn a sign into something else."""

    def __init__(self, message: Message) -> None:
        self.tokens = message.tokens
        self._months = months_gone(message)
        body = message.hits("body")
        self._sites = sorted({hit.start for hit in body if hit.table == "site"})
        self._moments = _covered(hit for hit in body if hit.table == "when")
        self._places = {at for hit in body if hit.table in ("site", "side") for at in range(hit.start, hit.end)}
        self.hits: dict[str, list[Hit]] = {}
        # Of "if" only the plain cues count; the wordings in which it asks or tells are listed beside them.
        for hit in message.hits("flags", *CUES, *MORE_CUES):
            self.hits.setdefault(f"not_{hit.table}" if hit.name == "not" else hit.table, []).append(hit)
        years = [at for at, token in enumerate(message.tokens) if _gone_by(token, message.local.year)]
        if years:  # "2019 Schulter ausgekugelt"
            past = [*self.hits.get("past", ()), *(Hit(at, at + 1, "past", "word") for at in years)]
            self.hits["past"] = sorted(past)
        self._starts = {table: [hit.start for hit in hits] for table, hits in self.hits.items()}
        self._covered = {table: _covered(hits) for table, hits in self.hits.items()}

    def within(self, table: str, start: int, end: int) -> list[Hit]:
        """The hits of a table that lie in [start, end)."""
        starts = self._starts.get(table)
        if starts is None or start >= end:
            return []
        near = self.hits[table][bisect_left(starts, start) : bisect_left(starts, end)]
        return [hit for hit in near if hit.end <= end]

    def months_gone(self, start: int, end: int) -> list[Hit]:
        """The months in [start, end) that are gone by: "in March"."""
        return [hit for hit in self._months if start <= hit.start < end]

    def covers(self, table: str, at: int) -> bool:
        return at in self._covered.get(table, ())

    def in_moment(self, at: int) -> bool:
        """Whether a word only says when: "cuando bajo" tells of no swelling that "bajó"."""
        return at in self._moments

    def of_others(self, start: int, bounds: tuple[int, int], end: int = 0) -> bool:
        """Whether what stands at [start, end) is somebody else's; "someone sits on my chest" is one's own."""
        if self._own(start, end):
            return False
        for other in reversed(self.within("others", bounds[0], start)):
            between = (other.end, start)
            if self._own(*between) or any(self.within(table, *between) for table in ("witness", "contrast")):
                continue
            if other.name == "possessive" and not self._person_before(other.start):
                continue
            if other.name == "pronoun" and (
                self._of_a_place(other.start) or self._of_one_ahead(other.start, bounds[1])
            ):
                continue
            if self._ends_a_number(other.start) or self.covers("not_others", other.start):
                continue  # "me he levantado con el codo hinchado"
            if any(token.text in little("with") for token in self.tokens[max(0, other.start - 2) : other.start]):
                continue  # "at the park with my brother: …" is one's own
            if not self._begins_anew(*between):
                return True
        return False

    def _own(self, start: int, end: int) -> bool:
        """Whether one speaks of oneself in [start, end), not of whom one is beside: "the baby next to me"."""
        return any(not self.covers("not_own", hit.start) for hit in self.within("own", start, end))

    def _ends_a_number(self, at: int) -> bool:
        """Whether a word is the "er" of "2er"."""
        return at > 0 and not self.tokens[at].space and self.tokens[at - 1].value is not None

    def _of_a_place(self, at: int) -> bool:
        """Whether a pronoun is a place named before: "shoulder 4/10 and she is swollen", as German says it."""
        return not self._person_before(at) and bool(self._sites) and self._sites[0] < at

    def _person_before(self, at: int) -> bool:
        """Whether somebody is named before: "in A&E with my husband, his finger is swollen"."""
        return any(hit.name == "word" for hit in self.within("others", 0, at))

    def _of_one_ahead(self, at: int, end: int) -> bool:
        """Whether a pronoun is a place of one's own named later: "they are numb, my fingers"."""
        first = bisect_left(self._sites, at)
        return any(self.covers("own", site - 1) for site in self._sites[first:] if site < end)

    def _begins_anew(self, low: int, start: int) -> bool:
        """Whether a place stands right behind the last comma: "kid was ill, elbow swollen" is one's own elbow."""
        comma = next((at for at in range(start - 1, low - 1, -1) if self.tokens[at].text == ","), None)
        if comma is None or any(at not in self._places and not self.covers("is", at) for at in range(comma + 1, start)):
            return False
        return any(comma < site <= start + DEGREES_NEAR for site in self._sites) and not self._hurt(low, comma)

    def _hurt(self, low: int, end: int) -> bool:
        """Whether the other person hurt a place of theirs in [low, end): "buddy tore his biceps, arm all blue"."""
        theirs = any(token.text in little("of_themselves") for token in self.tokens[low:end])
        return theirs and any(low <= site < end for site in self._sites)


def _gone_by(token: Token, year: int) -> bool:
    """Whether a token is a year gone by."""
    return token.kind == "num" and len(token.text) == 4 and FIRST_YEAR <= (token.value or 0) < year


@lru_cache(maxsize=1)
def _stops() -> frozenset[str]:
    return little("and") | {","}


def _covered(hits: Iterable[Hit]) -> frozenset[int]:
    return frozenset(at for hit in hits for at in range(hit.start, hit.end))


def _denied(cues: Cues, sign: Hit, named: frozenset[int], bounds: tuple[int, int]) -> bool:
    only_list = False  # past a comma, only a list goes on being denied
    other = False  # words that are no list stand between
    for at in range(sign.start - 1, max(bounds[0], sign.start - 2 * FAR) - 1, -1):
        token = cues.tokens[at]
        if cues.covers("deny", at) and (not cues.covers("allow", at) or _neither(cues, bounds[0], at)):
            return True
        if at in named:
            continue
        if token.text in _stops():
            # "no pain and my elbow is swollen"
            if other:
                return False
            only_list = True
        if cues.covers("break", at) or cues.covers("allow", at):
            return False
        if not cues.covers("filler", at) and token.text not in ",/":
            if only_list or sign.start - at > FAR:
                return False
            other = True
    return False


def _neither(cues: Cues, low: int, at: int) -> bool:
    """ "Weder geschwollen noch blau": whether a "nor", that elsewhere is a "still", has its "neither" before it."""
    for place in range(at - 1, low - 1, -1):
        text = cues.tokens[place].text
        if text in little("neither"):
            return True
        if text in _stops() or cues.within("contrast", place, place + 1):
            break
    return False


def _gone(cues: Cues, sign: Hit, bounds: tuple[int, int]) -> bool:
    for hit in cues.within("gone", sign.end, bounds[1]):
        if cues.in_moment(hit.start):
            continue
        between = cues.tokens[sign.end - 1 : hit.start]  # a sign's last token may be a comma
        if len(between) <= 5 and not any(t.text in _stops() or t.value is not None for t in between):
            allowed = cues.within("allow", sign.end, hit.end) or cues.covers("allow", hit.start)
            blocked = allowed or cues.within("deny", sign.end, hit.start)  # "stopped after a minute" was there
            return not blocked and not cues.within("contrast", sign.end, hit.start)
    return False


def _past(cues: Cues, sign: Hit, bounds: tuple[int, int]) -> bool:
    tokens = cues.tokens
    start, end = bounds
    for at in range(sign.start, bounds[0] - 1, -1):
        if tokens[at].text == "," or cues.within("contrast", at, at + 1):
            start = at
            break
    for at in range(sign.end, bounds[1]):
        if tokens[at].text == "," or cues.within("contrast", at, at + 1):
            end = at
            break
    if _in_a_year(cues, sign):
        return True
    if cues.within("now", start, end):
        return False
    for hit in cues.within("past", *bounds):
        if sign.start < hit.start < sign.end or cues.covers("not_past", hit.start):
            continue  # "a dent where my biceps used to be", "hätte ich früher sagen sollen"
        low, high = min(hit.end, sign.end), max(hit.start, sign.start)
        if not cues.within("contrast", low, high):
            return True
    return False


def _in_a_year(cues: Cues, sign: Hit) -> bool:
    """ "The shoulder I dislocated in 2019 was 1/10 today": a year right behind the sign, and no "again" after it."""
    for hit in cues.within("past", sign.end, sign.end + 2):
        if hit.end <= sign.end + 2 and len(cues.tokens[hit.end - 1].text) == 4 and cues.tokens[hit.end - 1].value:
            behind = cues.tokens[hit.end].text if hit.end < len(cues.tokens) else ""
            return behind not in _stops()
    return False


def _feared(cues: Cues, sign: Hit, bounds: tuple[int, int]) -> bool:
    # the words for a fear may have the first of the sign's own: "thought I'd feel a pop"
    for hit in cues.within("feared", max(bounds[0], sign.start - FAR), sign.end):
        if hit.start >= sign.start:
            break
        between = (hit.end, sign.start)
        real = cues.covers("real", sign.start - 1) or cues.within("is", *between)
        if not real and not cues.within("contrast", *between) and not _now_begun(cues, *between):
            return True
    return False


def _now_begun(cues: Cues, low: int, high: int) -> bool:
    """Whether a comma and a "now" stand in [low, high): "was afraid of the test, now my elbow is swollen"."""
    return any(cues.tokens[hit.start - 1].text in ",:-" for hit in cues.within("now", max(low, 1), high))


def _supposed(cues: Cues, sign: Hit, bounds: tuple[int, int]) -> bool:
    for hit in cues.within("if", max(bounds[0], sign.start - FAR), sign.start):
        if cues.covers("not_if", hit.start):
            continue
        if not any(token.text in ",:" for token in cues.tokens[hit.end : sign.start]):
            return True
    return any(not cues.within("own", hit.end, sign.start) for hit in cues.within("ask_about", bounds[0], sign.start))


def _stands(hit: Hit, sites: Sequence[int], cues: Cues, bounds: tuple[int, int]) -> bool:
    """Whether a wording that needs a place, a "felt" or a fever's degrees beside it has one."""
    if hit.table == "sign":
        return True
    if hit.table == "warm":
        return _temperature(cues.tokens, hit.start, hit.end) != (hit.start, hit.end)
    first = bisect_left(sites, max(bounds[0], hit.start - NEAR))
    near = first < len(sites) and sites[first] < min(bounds[1], hit.end + NEAR)
    near = near or (bool(sites) and sites[0] < hit.start and bool(cues.within("it", hit.start - 3, hit.start)))
    # "something snapped in my forearm, now he is thick and blue", as German says it
    spoken_of = {token.text for token in cues.tokens[max(bounds[0], hit.start - NEAR) : hit.start]}
    near = near or (bool(sites) and sites[0] < hit.start and not spoken_of.isdisjoint(little("third_person")))
    if hit.table == "sited":
        return near
    return near or bool(cues.within("felt_by", max(bounds[0], hit.start - NEAR), hit.start))


def signs_in(message: Message) -> list[Sign]:
    """The signs of a message, in order, with those told as history; in the message's language first, then in others."""
    return sorted((sign for _, sign in _signs_by_view(message)), key=lambda sign: sign.start)


def views(message: Message) -> list[Message]:
    """The message, and the message as one of each other language in which it names a sign that counts."""
    found = dict.fromkeys(view.language for view, _ in _signs_by_view(message))
    return [message, *(_as(message, name) for name in found if name != message.language)]


def _as(message: Message, language: str) -> Message:
    return replace(message, language=language)


def _signs_by_view(message: Message) -> list[tuple[Message, Sign]]:
    known = message.notes.get("signs")
    if known is None:
        own, taken = _named(message, message.hits("flags", *SIGNS), frozenset())
        known = [(message, sign) for sign in own]
        for language in languages():
            if language in (message.language, FALLBACK):
                continue  # English words are in every language's book
            found = joined_phrases(language, ("flags", *SIGNS), ("signs", "head")).every(message.tokens)
            hits = found.of_files.get("flags", [])
            if "signs" in found.of_files or any(hit.table != "not_sign" for hit in hits):
                more, named = _named(view := _as(message, language), hits, taken)
                known.extend((view, sign) for sign in more)
                taken |= named
        message.notes["signs"] = known
    return known


def _named(message: Message, hits: Sequence[Hit], taken: frozenset[int]) -> tuple[list[Sign], frozenset[int]]:
    """The signs among `hits` that count, and the tokens of all wordings looked at; none over `taken` ones."""
    # where words are listed both ways, the idiom wins
    found = longest(sorted(hits, key=lambda hit: hit.table != "not_sign"))
    seen = _covered(found)
    made = [hit for hit in composed_signs(message) if not _idiom(hit, hits)]
    signs = [hit for hit in found if hit.table != "not_sign"]
    signs = [hit for hit in (*signs, *made) if taken.isdisjoint(range(hit.start, hit.end))]
    if not signs:
        return [], seen
    cues = Cues(message)
    sites = [
        hit.start
        for hit in longest(hit for hit in message.hits("body") if hit.table in ("site", "not_site"))
        if hit.table == "site"
    ]
    named = _covered(signs)
    out: list[Sign] = []
    sentences = message.sentences
    ends = [end for _, end in sentences]
    for hit in signs:
        at = bisect_left(ends, hit.start + 1)
        bounds = sentences[at] if at < len(sentences) else (0, 0)
        if not (bounds[0] <= hit.start < bounds[1]) or not _stands(hit, sites, cues, bounds):
            continue
        if cues.of_others(hit.start, bounds, hit.end) or _denied(cues, hit, named, bounds) or _gone(cues, hit, bounds):
            continue
        if _feared(cues, hit, bounds) or _supposed(cues, hit, bounds):
            continue
        out.append(Sign(hit.start, hit.end, hit.name, _past(cues, hit, bounds)))
    return out, seen


def _idiom(sign: Hit, hits: Sequence[Hit]) -> bool:
    """Whether an idiom has words of a sign said in parts; no idiom of another sign ("cannot fall asleep")."""
    named = (hit for hit in hits if hit.table == "not_sign" and hit.name in ("word", sign.name))
    beside = (hit for hit in named if hit.start < sign.end and sign.start < hit.end)
    return any(hit.start < sign.start or hit.end > sign.end or hit[:2] == sign[:2] for hit in beside)


def _of_fever(degrees: float) -> bool:
    return any(low <= degrees <= high for low, high in FEVER)


def _temperature(tokens: Sequence[Token], start: int, end: int) -> tuple[int, int]:
    """A fever's words with the degrees beside them."""
    for at in range(end, min(end + DEGREES_NEAR, len(tokens))):
        value = tokens[at].value
        if value is not None and _of_fever(value):
            return start, at + 1
    for at in range(start - 1, max(start - DEGREES_NEAR - 1, -1), -1):
        value = tokens[at].value
        if value is not None and _of_fever(value):
            return at, end
    return start, end


def _denials(message: Message) -> list[Claim]:
    """ "No swelling" beside a plan: nothing that was left out of it; "breathless at rest": no rest of it."""
    if not message.context.today:
        return []
    cues, counted = Cues(message), signs_in(message)
    denied = [
        Claim(deny.start, hit.end, "noise", None)
        for hit in longest([*message.hits("flags", *SIGNS), *composed_signs(message)])
        for deny in cues.hits.get("deny", ())
        if deny.end == hit.start and not any(sign.start < hit.end and hit.start < sign.end for sign in counted)
    ]
    moments = [hit for hit in message.hits("body", "when") if any(sign.end == hit.start for sign in counted)]
    return [*denied, *(Claim(hit.start, hit.end, "noise", None) for hit in moments if hit.name == "rest")]


def find_red_flags(message: Message) -> list[Claim]:
    """A claim `red_flag` for each sign, once a name; `past_flag` for those long past."""
    claims: list[Claim] = []
    named: set[tuple[str, str]] = set()
    for sign in signs_in(message):
        kind = "past_flag" if sign.past else "red_flag"
        if (kind, sign.name) in named:
            continue
        named.add((kind, sign.name))
        # A sign takes no words away: the place in "elbow swollen" is the pain reader's. A fever's degrees it does take.
        start, end = _temperature(message.tokens, sign.start, sign.end) if sign.name == "fever" else (0, 0)
        claims.append(Claim(start, end, kind, sign.name))
    claims += _denials(message)
    # Degrees of a fever that is somebody else's are no training data either.
    taken = {at for claim in claims for at in range(claim.start, claim.end)}
    for hit in longest(message.hits("flags", *SIGNS)):
        if hit.table in ("sign", "warm") and hit.name == "fever" and hit.start not in taken:
            start, end = _temperature(message.tokens, hit.start, hit.end)
            if end - start > hit.end - hit.start and not taken & set(range(start, end)):
                claims.append(Claim(start, end, "noise", None))
    return claims
