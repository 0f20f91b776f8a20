"""The numbers of a sentence that can be scores of pain."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from bot.reading.body.cues import ARROW
from bot.reading.little import little
from bot.reading.pain.words import BodyWords, in_moment
from bot.reading.tokens import Token

MOST = 10
NO_MOMENT = "none"  # of a diary's head that the contract has no moment for: "evening"


class Score(NamedTuple):
    start: int
    end: int
    value: float
    scaled: bool  # "3/10", "3 out of 10"
    led: bool = False  # "I give it a 4"
    doubt: bool = False  # "a 3 or a 5"


def scores_in(words: BodyWords, bounds: tuple[int, int]) -> list[Score]:
    """The numbers of a sentence that can be scores."""
    tokens = words.tokens
    scaled = {hit.start: hit.end for hit in words.scales}
    site_starts = {hit.start for hit in words.sites}
    nil = {hit.start: hit.end for hit in words.nil}
    out: list[Score] = []
    at = bounds[0]
    while at < bounds[1]:
        token = tokens[at]
        if at - 1 in words.sides and at in nil and (nil[at] >= bounds[1] or tokens[nil[at]].kind == "sym"):
            out.append(Score(at, nil[at], 0.0, False))  # "left 3, right nothing"
            at = nil[at]
            continue
        if at in nil and _in_the_other(words, nil[at], bounds):
            out.append(Score(at, nil[at], 0.0, True))  # "nothing in the right one"
            at = nil[at]
            continue
        if (
            token.value is None
            or token.kind == "clock"
            or (at and tokens[at - 1].kind == "word" and not token.space and at not in scaled)  # the "A2" pulley
            or (at - 1 in words.woken and at not in scaled)
            or (at in words.no_scores and at not in scaled)
            or (token.spelled and token.value == 1 and at - 1 in words.sides and at not in scaled)  # "the left one"
            or (token.spelled and token.value == 1 and at not in scaled and not _ends(tokens, at + 1, words))
        ):
            at += 1
            continue
        if at + 1 in site_starts and at not in scaled:
            at += 1  # "two fingers" counts them
            continue
        end, value, is_scaled = at + 1, token.value, False
        if end + 1 < bounds[1] and not tokens[end].space and tokens[end].text in little("score_ending"):
            end += end + 1 in words.inside  # "ein 2er im Ellbogen"
        if at in scaled:
            end, is_scaled = scaled[at], True
        elif at + 2 < bounds[1] and tokens[at + 1].text in "-~" and tokens[at + 2].value is not None:
            upper = at + 2
            value = max(value, tokens[upper].value or 0)
            end = upper + 1
            if upper in scaled:
                end, is_scaled = scaled[upper], True
        elif at + 2 < bounds[1] and tokens[at + 2].value is not None and tokens[at + 1].text in little("range", "or"):
            upper = at + 2
            if upper in scaled or tokens[upper].value == value + 1:
                value = max(value, tokens[upper].value or 0)
                end = upper + 1
                if upper in scaled:
                    end, is_scaled = scaled[upper], True
        elif at > bounds[0] and tokens[at - 1].text in little("between") and _to_next(tokens, at, bounds[1]):
            value, end = tokens[at + 2].value or value, at + 3  # "between 2 and 3"
        either = _either(words, at, bounds[1]) if end == at + 1 else None
        if either is not None:
            end, value = either
        before = tokens[at - 1] if at > bounds[0] else None
        after = tokens[end] if end < len(tokens) else None
        parts = before is not None and before.text == "/" and tokens[at - 2].value is None  # "2 during / 1 after"
        row = (before is not None and before.text in ("/", "x", "@", "+") and not parts) or (
            after is not None and after.text in ("/", "x", "@", "+") and not after.space
        )
        low = max(bounds[0], at - 3)
        low = next((start for start in range(at - 1, low, -1) if start in site_starts), low)
        of_session = any(
            a in words.session and a not in words.heads and not in_moment(words, a) for a in range(low, at)
        )
        of_session = of_session or (is_scaled and end in words.session and not in_moment(words, end))  # "7/10 session"
        if not row and not of_session and (is_scaled or _bare(words, at, end, value)):
            doubt = either is not None and value > (token.value or 0) + 1
            out.append(Score(at, end, value, is_scaled, at in words.leads, doubt))
        at = end
    gone = any(bounds[0] <= hit.start < bounds[1] for hit in words.none)
    return [score for score in _of_now(words, out) if not (gone and _of_earlier(words, score, bounds[0]))]


def _in_the_other(words: BodyWords, at: int, bounds: tuple[int, int]) -> bool:
    """Whether "in the right one" stands at a token, of a place named before."""
    start = at
    while at < bounds[1] and at not in words.sides and words.tokens[at].text in little("before_site"):
        at += 1
    named = any(bounds[0] <= site.end <= start for site in words.sites)
    return (
        named and start < at < bounds[1] and words.sides.get(at) in ("left", "right") and at + 1 not in words.rep_like
    )


def _of_earlier(words: BodyWords, score: Score, low: int) -> bool:
    """ "No pain today, yesterday it was a 4": whether a score is told as an earlier one."""
    at = score.start - 1
    while at >= low and (at in words.filler or at in words.former or at in words.leads.values()):
        if at in words.earlier:
            return True
        at -= 1
    return at >= low and at in words.earlier


def _of_now(words: BodyWords, scores: list[Score]) -> list[Score]:
    """Without those of an earlier time: "2 (was 4)" is 2, "3 > 1" is 1; their tokens go with the score that stays."""
    out: list[Score] = []
    for score in scores:
        last = out[-1] if out else None
        between = words.tokens[last.end : score.start] if last is not None else ()
        if last is not None and between and all(token.text in ARROW for token in between):
            out[-1] = score._replace(start=last.start, scaled=score.scaled or last.scaled)
            continue
        if last is not None and _changed(words, last, score):
            out[-1] = score._replace(start=last.start, scaled=score.scaled or last.scaled)
            continue
        if last is not None and any(at in words.now for at in range(last.end, score.start)) and _falls(words, score):
            out[-1] = score._replace(start=last.start, scaled=score.scaled or last.scaled)
            continue  # "a 5 at the start, now down to a 1"
        if last is not None and between and _led_back(words, last.end, score.start):
            out[-1] = last._replace(end=score.end, scaled=score.scaled or last.scaled)
            continue
        out.append(score)
    return out


def _to_next(tokens: Sequence[Token], at: int, high: int) -> bool:
    """Whether "2 and 3" stands here: neighbours on the scale."""
    if at + 2 >= high or tokens[at + 1].text not in little("and"):
        return False
    return tokens[at + 2].value in ((tokens[at].value or 0) + 1, (tokens[at].value or 0) + 2)


def _changed(words: BodyWords, last: Score, score: Score) -> bool:
    """ "from 4 to 2", "from a 4 to a 2": the later one stands."""
    tokens = words.tokens
    led = last.start - 1 - (last.start > 0 and tokens[last.start - 1].text in little("likely"))
    to = score.start - 1 - (tokens[score.start - 1].text in little("likely"))
    before = tokens[led].text if led >= 0 else ""
    return before in little("from") and to == last.end and tokens[to].text in little("changed_to")


def _falls(words: BodyWords, score: Score) -> bool:
    """Whether "down to" or "up to" leads a score, with or without an article."""
    to = score.start - 1 - (words.tokens[score.start - 1].text in little("likely"))
    return to > 0 and words.tokens[to].text in little("changed_to")


def _led_back(words: BodyWords, low: int, high: int) -> bool:
    """Whether nothing but signs and words of an earlier time ("was", "down from") stand between two scores."""
    tokens = words.tokens
    while low < high and (in_moment(words, low) or low in words.session):
        low += 1  # "3 after training, was a 1 before"
    if low == high:
        return False
    back = words.former if tokens[low].text not in "(,;" else words.former | words.earlier  # "4 yesterday, 2 today"
    return any(at in back for at in range(low, high)) and all(
        at in back or at in words.filler or tokens[at].text in "(,;" for at in range(low, high)
    )


def _either(words: BodyWords, at: int, high: int) -> tuple[int, float] | None:
    """ "a 3 or a 5": where it ends and its upper value."""
    tokens = words.tokens
    if at + 2 >= high or tokens[at + 1].text not in little("or"):
        return None
    upper = at + 3 if tokens[at + 2].text in little("likely") else at + 2
    low, top = tokens[at].value, tokens[upper].value if upper < high else None
    if low is None or top is None or not low < top <= 10 or tokens[upper].kind != "num":
        return None
    if upper == at + 2 and at not in words.leads:
        return None
    return upper + 1, top


def _ends(tokens: Sequence[Token], at: int, words: BodyWords) -> bool:
    if at < len(tokens) and tokens[at].value is not None:
        return False  # "un 3"
    return at >= len(tokens) or tokens[at].kind != "word" or any(hit.start == at for hit in words.moments)


def _bare(words: BodyWords, at: int, end: int, value: float) -> bool:
    """Whether a number without a scale may be a score: no unit behind it, whole or half."""
    tokens = words.tokens
    if tokens[at].comma and value * 2 % 1:
        return False
    if value * 2 % 1 or value > 100:
        return False
    if end < len(tokens):
        after = tokens[end]
        told = end in words.sides or end in words.filler or any(hit.start == end for hit in words.moments)
        if end in words.rep_like and not told:  # "3 left", not "a 3 right now"
            return False
        if after.kind == "word" and not after.space and after.text not in little("score_ending"):
            return False
        if after.kind == "word" and after.value is None and not _may_follow(words, end):
            return value <= MOST and _stands_at(words, at)  # not "4 floors", but "the elbow is at 6 incluso …"
    return True


def _stands_at(words: BodyWords, at: int) -> bool:
    """Whether a number is what a place stands at: "elbow is at 6"."""
    if not at or words.tokens[at - 1].text not in little("at_score"):
        return False
    ends = {site.end for site in words.sites}
    at -= 1
    while at > 0 and at not in ends and (at - 1 in words.filler or at - 1 in words.sides):
        at -= 1
    return at in ends


def _may_follow(words: BodyWords, at: int) -> bool:
    """Whether a word right behind a number leaves it a score: anything but what it could count."""
    return (
        words.tokens[at].text in little("score_ending")
        or at in words.follows
        or at in words.filler
        or at in words.sides
        or in_moment(words, at)
        or at in words.parts
        or any(hit.start == at for hit in (*words.sites, *words.hurts, *words.pain_words, *words.none))
    )


def near_moment(words: BodyWords, score: Score, bounds: tuple[int, int]) -> str | None:
    """The moment said right before or behind a score, up to the next comma or number."""
    tokens = words.tokens
    if headed(words, score, bounds):
        head = words.heads[score.start - 1]
        return None if head == NO_MOMENT else head
    moments = words.moments
    if _stand_behind(words, bounds):
        moments = sorted(moments, key=lambda hit: hit.start < score.end)  # those behind the score first
    for hit in moments:
        if hit.start >= score.end and hit.start < bounds[1]:
            between = tokens[score.end : hit.start]
            if len(between) <= 5 and not any(t.text == "," or t.value is not None for t in between):
                return hit.name
        if hit.end <= score.start and hit.start >= bounds[0]:
            between = tokens[hit.end : score.start]
            parts = little("and", "but") | {",", "/"}  # "3 at rest and 1 in training"
            numbers = (t for t in between if t.value is not None and not (t.spelled and t.value == 1))  # "eine 4"
            if len(between) <= 2 and not any(t.text in parts for t in between) and not any(numbers):
                return hit.name
    return None


def _stand_behind(words: BodyWords, bounds: tuple[int, int]) -> bool:
    """ "1 in the am 3 in the pm": the first moment stands right behind a number, so each does; "during 2 after 3"."""
    first = next((hit.start for hit in words.moments if bounds[0] <= hit.start < bounds[1]), bounds[0])
    return first > bounds[0] and words.tokens[first - 1].value is not None


def headed(words: BodyWords, score: Score, bounds: tuple[int, int]) -> bool:
    """Whether a score stands in a diary: "training 1, evening 0"."""
    head = score.start - 1
    return head in words.heads and (
        head == bounds[0] or words.tokens[head - 1].kind == "sym" or words.tokens[head - 1].text in little("and")
    )


def by_pain_word(words: BodyWords, score: Score, bounds: tuple[int, int]) -> bool:
    """Whether a bare number stands beside a word of pain: "pain 3", "zero pain", "Schmerz bei 2"."""
    for hit in words.pain_words:
        if hit.end <= score.start and all(
            a in words.filler or in_moment(words, a) or words.tokens[a].text in ":=,-"
            for a in range(hit.end, score.start)
        ):
            return True
        if score.end == hit.start:
            return True
    return any(other.end <= score.start and bounds[0] <= other.start for other in words.pain_words) and all(
        a in words.filler or in_moment(words, a) or words.tokens[a].text in ",;:" or words.tokens[a].value is not None
        for a in range(bounds[0], bounds[1])
    )
