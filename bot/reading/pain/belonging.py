"""What belongs to which place: sides, scores, words of pain and warning signs of one sentence."""

from __future__ import annotations

import itertools
from collections.abc import Sequence
from dataclasses import replace

from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.pain.compared import give_compared
from bot.reading.pain.places import Place, side_of
from bot.reading.pain.scores import Score, by_pain_word, headed, near_moment
from bot.reading.pain.words import BodyWords, in_moment, moment_in
from bot.reading.red_flags import Cues, Sign

JOINTS = frozenset(
    "elbow elbow_inner elbow_outer wrist shoulder knee hip ankle neck lower_back upper_back biceps".split()
)


REACH = 9  # tokens between a place and its bare score


SIDE_REACH = 4  # tokens from a side to its score


SOFT_REACH = 4  # tokens between a place and a word like "stiff"


def attach(
    words: BodyWords,
    places: list[Place],
    scores: list[Score],
    bounds: tuple[int, int],
    signs: Sequence[Sign],
    cues: Cues | None,
) -> list[Score]:
    """Give every score, word of pain and sign of a sentence to a place; the scores that found none."""
    words = _both_of_two(words, places, bounds)
    for place in places:
        place.others = cues is not None and (cues.of_others(place.start, bounds) or _of_another(words, place, cues))
    for at, end in words.mine.items():
        if cues is not None and cues.covers("others", at):
            continue  # "meiner Frau"
        other = next((place for place in reversed(places) if place.end <= at), None)
        if bounds[0] <= at < bounds[1] and other is not None and other.others:
            # "my wife's elbow is a 4, mine is 0"
            places.insert(places.index(other) + 1, Place(at, end, [*other.sites]))
    _part_the_other_side(words, places, scores, bounds)
    _give_sides(words, places, scores, bounds)
    for at, (side, _) in words.of_all.items():
        if bounds[0] <= at < bounds[1]:
            for place in places:
                place.sides = [side if own is None else own for own in place.sides]
    give_parts(words, places, bounds)
    signed = frozenset(at for sign in signs for at in range(sign.start, sign.end))
    left = [] if give_compared(words, places, scores, bounds) else _give_scores(words, places, scores, bounds, signed)
    for place in places:
        place.others = place.others or (cues is not None and _long_past(words, place, cues, bounds))
    _give_words(words, places, bounds, cues)
    _give_signs(words, places, bounds, signs)
    _hand_on_sides(words, places)
    return left


def _part_the_other_side(words: BodyWords, places: list[Place], scores: list[Score], bounds: tuple[int, int]) -> None:
    """ "No pain in the left elbow, the right one's a 2": what is free of pain on one side is scored on the other."""
    for place in list(places):
        follow = places.index(place) + 1
        high = places[follow].start if follow < len(places) else bounds[1]
        own = side_of(words, place, 0, max(bounds[0], place.start - SIDE_REACH), high)
        opposite = {"left": "right", "right": "left"}.get(own[0] or "")
        at = next((n for n in range(place.end, high) if words.sides.get(n) == opposite), None)
        if opposite is None or at is None or not _parts(words, place.end, at) or len(place.sites) > 1:
            continue
        free = any(bounds[0] <= hit.start < at and hit.end <= at for hit in words.none)
        ahead = next((one for one in scores if place.end <= one.start < at), None)
        if ahead is not None and _other_side(words, ahead, bounds) == opposite:
            start = end = ahead.start  # "2 on the right"
            near = _parts(words, place.end, start)
        else:
            start, end = at, at + 1
            near = any(at < score.start <= min(at + SIDE_REACH, high) for score in scores)
        if free and near and all(token.value is None for token in words.tokens[place.end : start]):
            places.insert(follow, Place(start, end, [*place.sites]))


def _parts(words: BodyWords, start: int, end: int) -> bool:
    """Whether a comma, an "and" or a "but" stands between."""
    return any(
        token.text in (",", ";") or token.text in little("and") or token.text in little("but")
        for token in words.tokens[start:end]
    )


def _of_another(words: BodyWords, place: Place, cues: Cues) -> bool:
    """ "el codo de mi mujer", "the elbow of a friend": somebody else's, told behind the place."""
    at = place.end
    while at in words.sides:
        at += 1
    if at >= len(words.tokens) or words.tokens[at].text not in little("of_another"):
        return False
    return cues.covers("others", at) or cues.covers("others", at + 1)


def _both_of_two(words: BodyWords, places: list[Place], bounds: tuple[int, int]) -> BodyWords:
    """ "elbow, knee, both a 1": behind two places of different names "both" means these, no sides."""
    sites = [site for place in places for site in place.sites]
    for at, side in words.sides.items():
        text = words.tokens[at].text
        pair = " ".join(token.text for token in words.tokens[at : at + 2]) in little("both")  # "las dos"
        if side != "both" or not bounds[0] <= at < bounds[1] or not (pair or text in little("both")):
            continue
        named = [site for site in sites if site.end <= at][-2:]
        ahead = any(at < site.start <= at + 2 for site in sites)
        if len(named) == 2 and named[0].name != named[1].name and not ahead:
            between = words.tokens[named[0].end : at]
            apart = any(hit.start == at + 1 + pair for hit in words.moments)  # "neck 2, elbow 2, both after dips"
            if apart or not any(token.value is not None for token in between):
                sides = {a: s for a, s in words.sides.items() if a != at}
                words = replace(words, sides=sides, filler=words.filler | {at})
    return words


def _give_sides(words: BodyWords, places: list[Place], scores: list[Score], bounds: tuple[int, int]) -> None:
    """To every place its sides, and the moment said behind it or at the head of the sentence."""
    tokens = words.tokens
    edges = [bounds[0], *(place.start for place in places[1:]), bounds[1]]
    leading = _leading(words, bounds[0], places[0].start)
    for number, place in enumerate(places):
        low = places[number - 1].end if number else bounds[0]
        high = edges[number + 1]
        if number + 1 < len(places):
            # the side just before the next place is that one's
            at = high - 1
            while (
                at >= place.end
                and tokens[at].kind == "word"
                and (at in words.sides or tokens[at].text in little("before_place"))
            ):
                at -= 1
            high = at + 1
        if place.sites[-1].end <= place.start:  # "mine", of a place named before
            side = next((words.sides[at] for at in range(place.start, high) if at in words.sides), None)
            place.sides = [side] * len(place.sites)
            place.moment, place.leading = moment_in(words, place.end, high) or leading, leading
            continue
        place.sides = []
        for index in range(len(place.sites)):
            until = high if index + 1 == len(place.sites) else place.sites[index + 1].start
            if index + 1 < len(place.sites):
                while until > place.sites[index].end and until - 1 in words.sides:
                    until -= 1  # "chest and left arm": the arm's
            side, start, _ = side_of(words, place, index, low, min(until, _score_end(scores, place, until)))
            place.sides.append(side)
            place.start = min(place.start, start)
        place.moment, place.leading = moment_in(words, place.end, high) or leading, leading
    shared = next((hit.name for hit in words.moments if _of_all_places(words, hit, bounds)), None)
    for place in places:
        place.moment = place.moment or shared


def _of_all_places(words: BodyWords, moment: Hit, bounds: tuple[int, int]) -> bool:
    """ "right forearm 2, left forearm 3, both during the hangs"."""
    before = moment.start - 1
    pair = " ".join(token.text for token in words.tokens[max(0, before - 1) : before + 1])  # "las dos"
    return bounds[0] <= before < bounds[1] and not little("both").isdisjoint((words.tokens[before].text, pair))


def give_parts(words: BodyWords, places: list[Place], bounds: tuple[int, int]) -> None:
    """ "elbow, inner side": the part said behind the place."""
    for place, after in zip(places, [*places[1:], None], strict=True):
        until = after.start if after is not None else bounds[1]
        part = next((name for at, name in words.parts.items() if place.end <= at < until), None)
        if part is not None and place.sites[0].name == "elbow":
            place.sites = [
                site._replace(name=f"elbow_{part}") if site.name == "elbow" else site for site in place.sites
            ]


def _give_scores(
    words: BodyWords, places: list[Place], scores: list[Score], bounds: tuple[int, int], signed: frozenset[int]
) -> list[Score]:
    """To every score its place; the scores that found none."""
    left: list[Score] = []
    for score in scores:
        owner = _owner(words, places, score, signed, bounds)
        if owner is None:
            left.append(score)
            continue
        own = None
        if score.start >= owner.end:
            sided = [
                a
                for a in words.sides
                if owner.end <= a < score.start and not any(s.start < a for s, _, _ in owner.scores if s.start > a)
            ]
            last = max((s.end for s, _, _ in owner.scores), default=None)
            if last is not None:
                said = (words.sides[a] for a in sorted(sided, reverse=True) if a >= last)
                own = _other_side(words, score, bounds) or next(said, None)
            else:
                own = _nothing_there(words, owner, score, bounds)
        if (
            not score.scaled
            and owner.sites[0].start in words.limbs
            and not any(bounds[0] <= hit.start < bounds[1] for hit in (*words.hurts, *words.pain_words))
        ):
            continue  # "left arm 2" are repetitions
        owner.scores.append((score, own, near_moment(words, score, bounds)))
        if _of_both(words, score):
            for place in places:
                if place.end <= owner.start and not place.scores:
                    place.scores.append(owner.scores[-1])
    for place in places:
        behind = [words.sides.get(score.end) for score, _, _ in place.scores]
        if len(behind) > 1 and None not in behind and words.sides.get(place.scores[0][0].start - 1) is None:
            place.scores = [(s, side, when) for (s, _, when), side in zip(place.scores, behind, strict=True)]
    if len(places) == 1 and places[0].scores:
        led = [score for score in left if score.led and score.end <= places[0].start]
        if all(score.start < places[0].scores[0][0].start for score in led):
            # "was a 4 on Monday, is a 1 today, left wrist"
            places[0].scores = [*((score, None, None) for score in led), *places[0].scores]
            left = [score for score in left if score not in led]
    if len(places) == len(left) == 1 and not places[0].scores and by_pain_word(words, left[0], bounds):
        # "Knie rechts blockiert beim Pistol ständig auf halber Höhe, Schmerz 3": however far
        places[0].scores, left = [(left[0], None, near_moment(words, left[0], bounds))], []
    if len(places) == 1 and left and _all_ahead(words, places[0], left, bounds):
        scores = sorted([*left, *(score for score, _, _ in places[0].scores)])
        places[0].scores = [(score, None, near_moment(words, score, bounds)) for score in scores]
        left = []
    return left


def _all_ahead(words: BodyWords, place: Place, left: Sequence[Score], bounds: tuple[int, int]) -> bool:
    """ "0 during, 2 after, elbow left": scores of moments of their own, all told before their place."""
    scores = [*left, *(score for score, _, _ in place.scores)]
    moments = [near_moment(words, score, bounds) for score in scores]
    former = [score.end in words.earlier or headed(words, score, bounds) for score in scores]
    apart = len(set(moments)) == len(moments) > 1
    ahead = not place.scores or all(score.end <= place.start for score in scores)
    return apart and ahead and all(moment or was for moment, was in zip(moments, former, strict=True))


def _nothing_there(words: BodyWords, owner: Place, score: Score, bounds: tuple[int, int]) -> str | None:
    """ "Left shoulder hurts, right nothing", "nothing on the right": of that side; of the first no score is said."""
    if score.value != 0 or words.tokens[score.start].value is not None or owner.sides not in (["left"], ["right"]):
        return None
    side = words.sides.get(score.start - 1) or _other_side(words, score, bounds)
    return side if side in ("left", "right") and owner.sides != [side] else None


def _other_side(words: BodyWords, score: Score, bounds: tuple[int, int]) -> str | None:
    """ "left inner elbow 2/10, nothing in the right one": the side told right behind a second score."""
    at = score.end
    while at < bounds[1] and at not in words.sides and words.tokens[at].text in little("before_site"):
        at += 1
    return words.sides.get(at) if at > score.end else None


def _of_both(words: BodyWords, score: Score) -> bool:
    """ "both a 1", of two places."""
    return any(
        words.tokens[at].text in little("both") and at not in words.sides
        for at in range(max(0, score.start - 2), score.start)
    )


def _give_words(words: BodyWords, places: list[Place], bounds: tuple[int, int], cues: Cues | None) -> None:
    """To every word of pain, and every "no pain", the place that it speaks of."""
    for hit in (*words.hurts, *words.none):
        if not bounds[0] <= hit.start < bounds[1]:
            continue
        near = _nearest(words, places, hit.start, hit.end)
        if near is None or near.others:
            continue
        if hit.name == "none":
            elsewhere = hit.start > 0 and words.tokens[hit.start - 1].text in little("elsewhere")
            near.free = near.free or not elsewhere  # "finger numb, otherwise no pain"
        elif hit.name == "injured":
            # "tore my biceps in 2019" is history
            near.hurts = near.hurts or (cues is not None and not cues.within("past", *bounds))
        elif hit.name == "hurt":
            if cues is None or not (_denied_pain(cues, hit, bounds) or _once(cues, hit, bounds)):
                near.hurts = True
        elif near.sites[0].name in JOINTS and abs(hit.start - near.end) <= SOFT_REACH:
            beside = hit.start >= near.end or _right_before(words, hit, near)
            near.hurts = near.hurts or (beside and not (cues is not None and _once(cues, hit, bounds)))
    for hit in words.nil:
        ends = (
            hit.end >= bounds[1] or words.tokens[hit.end].kind == "sym" or words.tokens[hit.end].text in little("but")
        )
        if bounds[0] <= hit.start < bounds[1] and ends:
            owner = next((place for place in places if place.end <= hit.start), None)
            owner = next((place for place in reversed(places) if place.end <= hit.start), owner)
            if owner is not None and all(
                at in words.sides or words.tokens[at].text in ":=-," for at in range(owner.end, hit.start)
            ):
                owner.free = True


def _give_signs(words: BodyWords, places: list[Place], bounds: tuple[int, int], signs: Sequence[Sign]) -> None:
    for sign in signs:
        if bounds[0] <= sign.start < bounds[1] and sign.name not in ("fever", "dizziness", "breathless"):
            near = _nearest(words, places, sign.start, sign.end)
            if near is not None and not near.others:
                near.signs.append(sign)
                if near.leading is not None and sign.end <= near.start:
                    near.moment = near.leading  # "mid negative something popped in my elbow, later it was blue"


def _hand_on_sides(words: BodyWords, places: list[Place]) -> None:
    """ "two fingers go numb, right hand": the side comes with the whole hand or arm."""
    for place, after in itertools.pairwise(places):
        joined = any(token.text in little("and") for token in words.tokens[place.end : after.start])
        if (
            place.told
            and not joined
            and not after.told
            and place.sides == [None]
            and after.sites[0].name in ("hand", "other")
        ):
            place.sides = after.sides[:1]


def _leading(words: BodyWords, start: int, end: int) -> str | None:
    """The moment that a sentence begins with; "after 3 sets" is none of the pain's."""
    for hit in words.moments:
        if start <= hit.start < end and hit.start not in words.of_work:
            behind = range(hit.end, min(hit.end + 2, len(words.tokens)))
            placed = any(site.start == hit.end for site in words.sites)  # "afterwards elbow 2"
            counted = not placed and any(words.tokens[at].value is not None for at in behind)
            return None if hit.name == "after" and counted else hit.name
    return None


def _denied_pain(cues: Cues, hit: Hit, bounds: tuple[int, int]) -> bool:
    before = range(max(bounds[0], hit.start - 2), hit.start)
    return any(cues.covers("deny", at) and not cues.covers("allow", at) for at in before)


def _right_before(words: BodyWords, hit: Hit, place: Place) -> bool:
    """ "Sore left wrist", "a stiff neck"."""
    low = place.sites[0].start
    while low and (low - 1 in words.sides or words.tokens[low - 1].text in little("before_site")):
        low -= 1
    return hit.end == low or hit.end == place.sites[0].start


def _once(cues: Cues, hit: Hit, bounds: tuple[int, int]) -> bool:
    """ "I've had elbow pain before, years ago": told as long past, and not "since last year"."""
    low = next((at + 1 for at in range(hit.start - 1, bounds[0] - 1, -1) if cues.tokens[at].text == ","), bounds[0])
    high = next((at for at in range(hit.end, bounds[1]) if cues.tokens[at].text == ","), bounds[1])
    if cues.within("now", low, high) or not any(t.text in little("once_told") for t in cues.tokens[low : hit.end]):
        return False
    return any(
        not cues.covers("not_past", past.start)
        and (past.start == 0 or cues.tokens[past.start - 1].text not in little("ever_since"))
        for past in cues.within("past", low, bounds[1])
    )


def _long_past(words: BodyWords, place: Place, cues: Cues, bounds: tuple[int, int]) -> bool:
    """ "Last year my shoulder was a 6", "had a 4/10 in the elbow back in March": a place and its scores, all of a time
    long gone."""
    if not place.scores or any(score.value == 0 for score, _, _ in place.scores):
        return False  # "the ankle that was so thick last year: 0 of 10"
    low = min(place.start, *(score.start for score, _, _ in place.scores))
    high = max(place.end, *(score.end for score, _, _ in place.scores))
    while low > bounds[0] and cues.tokens[low - 1].text not in ",;":
        low -= 1
    while high < bounds[1] and cues.tokens[high].text not in ",;":
        high += 1
    told = any(token.text in little("once_told") for token in cues.tokens[low:high])
    if not told or cues.within("now", low, bounds[1]) or any(at in words.now for at in range(low, bounds[1])):
        return False
    return any(
        not cues.covers("not_past", hit.start)
        and (hit.start == 0 or cues.tokens[hit.start - 1].text not in little("ever_since"))
        for hit in (*cues.within("past", low, high), *cues.months_gone(low, high))
    )


def _score_end(scores: list[Score], place: Place, until: int) -> int:
    """A side behind a place's second score is of another one."""
    after = [score for score in scores if score.start >= place.end]
    return after[1].start if len(after) > 1 and after[1].start < until else until


def _owner(
    words: BodyWords, places: list[Place], score: Score, signed: frozenset[int], bounds: tuple[int, int]
) -> Place | None:
    """The place that a score belongs to; the words of a sign (`signed`) may stand between: "elbow swollen, 3"."""
    before = [place for place in places if place.end <= score.start]
    after = [place for place in places if place.start >= score.end]
    if before:
        place = before[-1]
        between = range(place.end, score.start)
        ahead = place.scores and all(s.end <= place.start for s, _, _ in place.scores) and bool(after)
        if ahead and _leads_to(words, score, after[0]):
            return after[0]  # "3/10 elbow, 2/10 wrist"
        if score.scaled and not (place.scores and after and after[0].start - score.end <= 4):
            return place
        earlier = {a for s, _, _ in place.scores for a in range(s.start, s.end)}
        loose = [
            a
            for a in between
            if a not in earlier
            and a not in signed
            and not (
                a in words.filler or a in words.sides or words.tokens[a].text in ".,:()=~-/" or in_moment(words, a)
            )
            and not (words.tokens[a].spelled and words.tokens[a].value == 1 and a - 1 in words.sides)  # "the right one"
            and a not in words.heads
            and a not in words.parts  # "wrist left inside 2"
        ]
        later = any(s.end <= score.start for s, _, _ in place.scores)
        if not loose and (len(between) <= REACH or later):
            return place
        if any(words.tokens[a].start and a in {h.start for h in words.hurts} for a in between) and len(loose) <= 1:
            return place
        counted = any(words.tokens[a].value is not None and a not in earlier for a in loose) or any(
            a in words.rep_like or a in words.session for a in loose
        )
        hurting = any(bounds[0] <= hit.start < score.start for hit in (*words.hurts, *words.none)) or any(
            bounds[0] <= a < score.start for a in signed
        )
        worked = any((a in words.rep_like and a not in words.times) or a in words.session for a in loose)
        if score.led and hurting and not worked:
            return place  # "my knee hurts going down the stairs, I give it a 4"
        led = score.start - 1 - (words.tokens[score.start - 1].text in little("likely", "a"))  # "now a 2"
        now = score.end in words.now or led in words.now
        if later and not counted and (near_moment(words, score, bounds) or score.start - 1 in words.sides or now):
            return place  # "lower back 5 after the squats, 2 this morning"
        if led in words.now and led > place.end and words.tokens[led - 1].text in ",-":
            return place  # "my knee was a 7 two weeks ago, now a 3"
        if score.value == 0 and not counted and len(loose) <= 2 and words.tokens[score.start - 1].text == ",":
            return place  # "the elbow behaves, 0 for the third day"
    if after:
        place = after[0]
        between = range(score.end, place.start)
        link = [
            a
            for a in between
            if a not in words.sides and a not in words.links and words.tokens[a].text not in little("before_site")
        ]
        if (score.led or by_pain_word(words, score, bounds)) and all(
            words.tokens[a].text in ",-(" or a in words.filler or a in words.now for a in link
        ):
            return place  # "it's a 3, left elbow"
        if len(places) == 1 and by_pain_word(words, score, bounds) and _of_pain_alone(words, between):
            return place  # "pain 5 yesterday evening in the shoulder"
        if not link and (
            score.scaled
            or _heads(words, score, place, bounds)
            or any(h.end <= place.start and h.start >= score.start - 2 for h in (*words.pain_words, *words.hurts))
        ):
            return place
    return None


def _of_pain_alone(words: BodyWords, between: range) -> bool:
    """Whether the words between a score and its place tell of no work: "pain 4 over the week, right elbow"."""
    worked = (a for a in between if a in words.rep_like or (a in words.session and not in_moment(words, a)))
    return len(between) <= REACH and not any(worked) and all(words.tokens[a].value is None for a in between)


def _heads(words: BodyWords, score: Score, place: Place, bounds: tuple[int, int]) -> bool:
    """ "2-3 in the right biceps", at the head of a sentence or clause, "a 3 in the elbow", "only 3 in the elbow"
    anywhere: a joint's score without a word of pain."""
    before = words.tokens[score.start - 1].text if score.start > bounds[0] else ","
    return (
        before in little("before_scored_place", "only_word")
        and place.sites[0].name in JOINTS
        and score.end in words.inside
        and words.tokens[score.start].kind == "num"
    )


def _leads_to(words: BodyWords, score: Score, place: Place) -> bool:
    """Whether nothing but little words stand between a score and the place behind it."""
    return all(
        at in words.sides or at in words.links or words.tokens[at].text in little("before_site")
        for at in range(score.end, place.start)
    )


def _nearest(words: BodyWords, places: list[Place], start: int, end: int) -> Place | None:
    """The place that words at [start, end) speak of: the one within, else the one before, else the one after."""
    for place in places:
        if place.start < end and start < place.end:
            return place
    before = [place for place in places if place.end <= start]
    after = [place for place in places if place.start >= end]
    if before and after:
        gap = words.tokens[before[-1].end : start]
        if any(t.text in little("then") for t in gap) and after[0].start - end <= 4:
            return after[0]
        return before[-1]
    return before[-1] if before else (after[0] if after else None)
