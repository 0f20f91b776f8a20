"""What is told of a place in sentences of their own: "my shoulder hurts. It's a 3. Right one."."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.pain.belonging import give_parts
from bot.reading.pain.places import Place
from bot.reading.pain.scores import Score, headed, near_moment
from bot.reading.pain.words import BodyWords, in_moment, moment_in


def scored_later(
    words: BodyWords,
    told: list[Place],
    mentioned: list[Place],
    scores: list[Score],
    bounds: tuple[int, int],
    asked: bool,
) -> bool:
    """ "my shoulder hurts. It's a 3, right one": give a sentence's scores to the one place that still has none."""
    last = told[-1] if told else None
    if last is None and len(mentioned) == 1 and (asked or _of_moments(words, scores, bounds)):
        last = mentioned[-1]  # "it's the noisy elbow again. At 2 in the morning, 1 after"
    if last is None or last.others or last.scores or len(last.sites) > 1:
        return False
    if told and (not (last.hurts or last.signs) or sum(1 for place in told if not place.scores) > 1):
        return False
    if not any(score.led or score.scaled for score in scores) and not only_small(words, bounds):
        return False
    hand_over(words, last, scores, bounds)
    if not told:
        told.append(last)
    describe(words, last, bounds)
    return True


def mine_later(words: BodyWords, mentioned: list[Place], bounds: tuple[int, int]) -> Place | None:
    """One's own place in the sentence after somebody else's: "my brother's biceps popped. Mine is 0/10"."""
    if not mentioned or not mentioned[-1].others:
        return None
    at = next((at for at in words.mine if bounds[0] <= at < bounds[1]), None)
    return None if at is None else Place(at, words.mine[at], [*mentioned[-1].sites])


def other_side_later(
    words: BodyWords, last: Place | None, scores: list[Score], bounds: tuple[int, int]
) -> Place | None:
    """The other side in the sentence right behind: "left elbow hurts, 3/10. Right one is a 2"."""
    if last is None or last.others or not last.told or len(last.sites) != 1 or not scores:
        return None
    opposite = {"left": "right", "right": "left"}.get(last.sides[0] or "") if len(last.sides) == 1 else None
    at = next((n for n in range(*bounds) if words.sides.get(n) == opposite), None)
    if opposite is None or at is None or at >= scores[0].start or not only_small(words, bounds):
        return None
    return Place(at, at + 1, [*last.sites])


def _of_moments(words: BodyWords, scores: list[Score], bounds: tuple[int, int]) -> bool:
    """Whether a sentence is nothing but scores, each with its moment."""
    return only_small(words, bounds) and all(
        near_moment(words, score, bounds) or headed(words, score, bounds) for score in scores
    )


def hand_over(words: BodyWords, place: Place, scores: list[Score], bounds: tuple[int, int] | None = None) -> None:
    """Give a place the scores of another sentence; of several without moments of their own the last."""
    within = bounds or (0, len(words.tokens))
    moments = [near_moment(words, score, within) for score in scores]
    if len(set(moments)) != len(moments):
        scores, moments = scores[-1:], moments[-1:]
    place.scores = [(score, None, moment) for score, moment in zip(scores, moments, strict=True)]


def describe(words: BodyWords, place: Place, bounds: tuple[int, int], asked: bool = False) -> None:
    """Side, part and (where asked for) moment of a place, told behind it: "Left, on the inside."."""
    sides = {side for at, side in words.sides.items() if bounds[0] <= at < bounds[1]}
    if place.sides == [None] and len(sides) == 1:
        place.sides = [*sides]
    give_parts(words, [place], bounds)
    moment = moment_in(words, *bounds)
    if asked and moment is not None and len(place.scores) == 1:
        place.scores = [(place.scores[0][0], place.scores[0][1], moment)]


def only_small(words: BodyWords, bounds: tuple[int, int], places: Sequence[Place] = ()) -> bool:
    """Whether a sentence is nothing but scores, sides, parts, moments, small words, and `places`."""
    led = {at for end, start in words.leads.items() for at in range(start, end)}
    named = {at for place in places for site in place.sites for at in range(site.start, site.end)}
    return all(
        at in words.filler
        or at in led
        or at in named
        or at in words.sides
        or at in words.parts
        or at in words.heads
        or in_moment(words, at)
        or words.tokens[at].value is not None
        or words.tokens[at].kind == "sym"
        for at in range(*bounds)
    )
