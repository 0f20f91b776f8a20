"""Warning signs: which are named in a message, and which are only talked about.

A sign that is denied, feared, supposed, an idiom or somebody else's is none; one of long ago is a `past_flag`, for the
coach to know. In doubt a sign counts: a needless halt costs a day, a missed one a tendon.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bot.reading.lexicon import Hit
from bot.reading.message import Claim, Message
from bot.reading.phrases import longest, sentence_bounds
from bot.reading.tokens import Token

SIGNS = ("sign", "sited", "felt", "not_sign")
CUES = ("deny", "allow", "gone", "break", "own", "past", "now", "feared", "if", "ask_about", "others", "witness")
MORE_CUES = ("contrast", "filler", "is", "felt_by", "real")
FAR = 8  # tokens that a "no" or "afraid" may stand before its sign
NEAR = 5
STOPS = frozenset((",", "and", "und", "y", "e"))
FEVER_C = (37.0, 42.5)


@dataclass(frozen=True)
class Sign:
    """A sign named at tokens [start, end) of the sentence `bounds`. `past`: told as history."""

    start: int
    end: int
    name: str
    bounds: tuple[int, int]
    past: bool = False


class Cues:
    """Where the words stand that turn a sign into something else."""

    def __init__(self, message: Message) -> None:
        self.tokens = message.tokens
        self.hits: dict[str, list[Hit]] = {}
        # Of "if" only the plain cues count; the wordings in which it asks or tells are listed beside them.
        for hit in message.hits("flags", *CUES, *MORE_CUES):
            self.hits.setdefault(f"not_{hit.table}" if hit.name == "not" else hit.table, []).append(hit)

    def within(self, table: str, start: int, end: int) -> list[Hit]:
        """The hits of a table that lie in [start, end)."""
        return [hit for hit in self.hits.get(table, ()) if start <= hit.start and hit.end <= end]

    def covers(self, table: str, at: int) -> bool:
        return any(hit.start <= at < hit.end for hit in self.hits.get(table, ()))

    def of_others(self, start: int, bounds: tuple[int, int]) -> bool:
        """Whether what stands at `start` is somebody else's."""
        for other in reversed(self.within("others", bounds[0], start)):
            between = (other.end, start)
            if not any(self.within(table, *between) for table in ("own", "witness", "contrast")):
                return True
        return False


def _denied(cues: Cues, sign: Hit, signs: Sequence[Hit], bounds: tuple[int, int]) -> bool:
    only_list = False  # past a comma, only a list goes on being denied
    other = False  # words that are no list stand between
    for at in range(sign.start - 1, max(bounds[0], sign.start - 2 * FAR) - 1, -1):
        token = cues.tokens[at]
        inside = any(other.start <= at < other.end for other in signs)
        if cues.covers("deny", at) and not cues.covers("allow", at):
            return True
        if inside:
            continue
        if token.text in STOPS:
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


def _gone(cues: Cues, sign: Hit, bounds: tuple[int, int]) -> bool:
    for hit in cues.within("gone", sign.end, bounds[1]):
        between = cues.tokens[sign.end - 1 : hit.start]  # a sign's last token may be a comma
        if len(between) <= 5 and not any(t.text in STOPS or t.value is not None for t in between):
            blocked = cues.within("deny", sign.end, hit.start) or cues.within("allow", sign.end, hit.end)
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
    if cues.within("now", start, end):
        return False
    for hit in cues.within("past", *bounds):
        low, high = min(hit.end, sign.end), max(hit.start, sign.start)
        if not cues.within("contrast", low, high):
            return True
    return False


def _feared(cues: Cues, sign: Hit, bounds: tuple[int, int]) -> bool:
    for hit in cues.within("feared", max(bounds[0], sign.start - FAR), sign.start):
        between = (hit.end, sign.start)
        real = cues.covers("real", sign.start - 1) or cues.within("is", *between)
        if not real and not cues.within("contrast", *between):
            return True
    return False


def _supposed(cues: Cues, sign: Hit, bounds: tuple[int, int]) -> bool:
    for hit in cues.within("if", max(bounds[0], sign.start - FAR), sign.start):
        if any(other.start <= hit.start < other.end for other in cues.hits.get("not_if", ())):
            continue
        if not any(token.text == "," for token in cues.tokens[hit.end : sign.start]):
            return True
    return any(not cues.within("own", hit.end, sign.start) for hit in cues.within("ask_about", bounds[0], sign.start))


def _stands(hit: Hit, message: Message, sites: Sequence[Hit], cues: Cues, bounds: tuple[int, int]) -> bool:
    """Whether a wording that needs a place or a "felt" beside it has one."""
    if hit.table == "sign":
        return True
    near = any(
        bounds[0] <= site.start < bounds[1] and hit.start - NEAR <= site.start and site.start <= hit.end + NEAR - 1
        for site in sites
    )
    if hit.table == "sited":
        return near
    return near or bool(cues.within("felt_by", max(bounds[0], hit.start - NEAR), hit.start))


def signs_in(message: Message) -> list[Sign]:
    """The signs of a message, in order, with those told as history."""
    tokens = message.tokens
    # where words are listed both ways, the idiom wins
    found = longest(sorted(message.hits("flags", *SIGNS), key=lambda hit: hit.table != "not_sign"))
    signs = [hit for hit in found if hit.table != "not_sign"]
    if not signs:
        return []
    cues = Cues(message)
    sites = [
        hit
        for hit in longest(hit for hit in message.hits("body") if hit.table in ("site", "not_site"))
        if hit.table == "site"
    ]
    out: list[Sign] = []
    for bounds in sentence_bounds(tokens):
        for hit in signs:
            if not (bounds[0] <= hit.start < bounds[1]) or not _stands(hit, message, sites, cues, bounds):
                continue
            if cues.of_others(hit.start, bounds) or _denied(cues, hit, signs, bounds) or _gone(cues, hit, bounds):
                continue
            if _feared(cues, hit, bounds) or _supposed(cues, hit, bounds):
                continue
            out.append(Sign(hit.start, hit.end, hit.name, bounds, _past(cues, hit, bounds)))
    return out


def _temperature(tokens: Sequence[Token], start: int, end: int) -> tuple[int, int]:
    """A fever's words with the degrees beside them."""
    for at in range(end, min(end + 3, len(tokens))):
        value = tokens[at].value
        if value is not None and FEVER_C[0] <= value <= FEVER_C[1]:
            return start, at + 1
    for at in range(start - 1, max(start - 4, -1), -1):
        value = tokens[at].value
        if value is not None and FEVER_C[0] <= value <= FEVER_C[1]:
            return at, end
    return start, end


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
    # Degrees of a fever that is somebody else's are no training data either.
    taken = {at for claim in claims for at in range(claim.start, claim.end)}
    for hit in longest(message.hits("flags", *SIGNS)):
        if hit.table == "sign" and hit.name == "fever" and hit.start not in taken:
            start, end = _temperature(message.tokens, hit.start, hit.end)
            if end - start > hit.end - hit.start and not taken & set(range(start, end)):
                claims.append(Claim(start, end, "noise", None))
    return claims
