"""The places of the body that a sentence names, and the side of each."""

from __future__ import annotations

from dataclasses import dataclass, field

from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.pain.scores import Score
from bot.reading.pain.words import BodyWords
from bot.reading.red_flags import Sign

FREE_REACH = 3  # words between "no pain" and its place, a place and its score


@dataclass
class Place:
    """Places named together ("hip and ankle"), with all that is said of them."""

    start: int
    end: int
    sites: list[Hit]
    sides: list[str | None] = field(default_factory=list)
    scores: list[tuple[Score, str | None, str | None]] = field(default_factory=list)  # score, its own side, moment
    hurts: bool = False
    free: bool = False
    signs: list[Sign] = field(default_factory=list)
    moment: str | None = None
    leading: str | None = None  # the moment that the sentence begins with
    others: bool = False  # somebody else's

    @property
    def told(self) -> bool:
        # "no chest pain" answers a question about a sign; it is no score
        return not self.others and bool(
            self.scores or self.hurts or self.signs or (self.free and self.sites[0].name != "chest")
        )


def places_in(words: BodyWords, bounds: tuple[int, int]) -> list[Place]:
    """The places of a sentence; those joined by "and" without anything else between are one."""
    tokens = words.tokens
    places: list[Place] = []
    for site in words.sites:
        if not bounds[0] <= site.start < bounds[1]:
            continue
        if places:
            between = range(places[-1].end, site.start)
            joins = [a for a in between if a not in words.sides]
            if _free_before(words, places[-1], site, bounds[1]):
                places.append(Place(site.start, site.end, [site]))
                continue
            if (between and all(tokens[a].text in little("between_places") for a in joins) and joins) and not any(
                hit.start in between for hit in (*words.hurts, *words.none)
            ):
                places[-1].sites.append(site)
                places[-1].end = site.end
                continue
            if not between and site.name in ("hand", "other"):
                continue
        places.append(Place(site.start, site.end, [site]))
    return places


def _free_before(words: BodyWords, place: Place, site: Hit, high: int) -> bool:
    """ "No pain in the elbow, shoulder a 1": the score behind the comma is not that of what is free of pain."""
    tokens = words.tokens
    free = any(hit.end <= place.start <= hit.end + FREE_REACH for hit in words.none)
    scored = any(token.value is not None for token in tokens[site.end : min(site.end + FREE_REACH, high)])
    return free and scored and any(token.text == "," for token in tokens[place.end : site.start])


def side_of(words: BodyWords, place: Place, index: int, low: int, high: int) -> tuple[str | None, int, int]:
    """The side of one site of a place, and the tokens that it and its side take."""
    site = place.sites[index]
    start, end = site.start, site.end
    for at in range(site.start, site.end):
        if at in words.sides:
            return words.sides[at], start, end
    for at in range(site.start - 1, max(low, site.start - 5) - 1, -1):
        if at in words.sides:
            skipped = words.tokens[at + 1 : site.start]
            if all(t.kind == "word" for t in skipped) and len(skipped) <= 3:
                return words.sides[at], at, end
        if words.tokens[at].kind != "word":
            break
    for at in range(site.end, high):
        if at in words.sides:
            return words.sides[at], start, end
    return None, start, end
