"""Two scores of one place and the side that is worse: "both elbows sore, right worse than left, say 4 and 2"."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.little import little
from bot.reading.pain.places import Place
from bot.reading.pain.scores import Score, near_moment
from bot.reading.pain.words import BodyWords

REACH = 4  # tokens between a side and "worse"
OTHER = {"left": "right", "right": "left"}


def give_compared(words: BodyWords, places: Sequence[Place], scores: Sequence[Score], bounds: tuple[int, int]) -> bool:
    """Give the worse side the higher of two scores of one place; whether that was told."""
    if len(scores) != 2 or len(places) != 1 or len(places[0].sites) != 1 or scores[0].value == scores[1].value:
        return False
    if any(score.start < places[0].start for score in scores) or all(_beside_side(words, one) for one in scores):
        return False
    (low, high) = scores[0].end, scores[1].start
    if high - low != 1 or low in words.now | words.earlier | words.former:
        return False  # "was 2, now 4"
    worse = _worse_side(words, bounds)
    if worse is None:
        return False
    top = max(scores, key=lambda score: score.value)
    (place,) = places
    place.sides = [None]
    place.scores = [
        (score, worse if score is top else OTHER[worse], near_moment(words, score, bounds)) for score in scores
    ]
    return True


def _beside_side(words: BodyWords, score: Score) -> bool:
    return score.start - 1 in words.sides or score.end in words.sides


def _worse_side(words: BodyWords, bounds: tuple[int, int]) -> str | None:
    for at in range(*bounds):
        text = words.tokens[at].text
        if text not in little("worse_side") and text not in little("better_side"):
            continue
        side = _side_near(words, at, bounds)
        if side is not None:
            return side if text in little("worse_side") else OTHER[side]
    return None


def _side_near(words: BodyWords, at: int, bounds: tuple[int, int]) -> str | None:
    """The side that "worse" is said of: before it, else behind it ("worse on the right"), but not behind "than"."""
    before = range(at - 1, max(bounds[0], at - 1 - REACH) - 1, -1)
    for way in (before, range(at + 1, min(bounds[1], at + 1 + REACH))):
        for near in way:
            side = words.sides.get(near)
            if side in OTHER:
                return side
            token = words.tokens[near]
            if token.kind != "word" or token.text in little("compared_with"):
                break
    return None
