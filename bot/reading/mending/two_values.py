"""Two values opposed: which is the new one, which the old."""

from __future__ import annotations

import itertools

from bot.reading.little import little
from bot.reading.mending.mend import MOST_SCORE, NEAR, OF_TEN, Mend, Value, only_little
from bot.reading.phrases import longest


def pair_of(mend: Mend) -> tuple[Value, Value, int, int] | None:
    """(now, was, first token, token after) where the message opposes two values."""
    values = mend.values()
    tokens = mend.tokens
    for one, two in itertools.pairwise(values):
        mixed = (one.mark == OF_TEN) != (two.mark == OF_TEN)
        if mixed and (
            max(one.value, two.value) > MOST_SCORE or any(t.text == "." for t in tokens[one.end : two.start])
        ):
            continue  # "elbow 1/10. 20 instead of 22.5"
        meant = any(cue.end == one.start for cue in mend.between("cue", 0, one.start, "strong"))
        for hit in mend.between("wrote", one.end, two.end + NEAR) if meant else ():
            # "I meant 40 on the dips. Wrote 45", "ich meinte 40. Hab 45 geschrieben"
            if hit.start == two.end or (hit.end <= two.start and only_little(tokens, hit.end, two.start)):
                return one, two, one.start, one.end
        if any(token.text in ".!?\n" for token in tokens[one.end : two.start] if token.text != "."):
            continue
        for hit in mend.between("cue", 0, len(tokens), "mistaken"):
            # "it was 12.5, I put 15 by mistake", "hab aus Versehen 15 geschrieben, waren 12,5"
            if hit.start <= two.start < hit.end and hit.start >= one.end:
                return one, two, one.start, max(two.end, hit.end)
            if hit.start <= one.start < hit.end:
                return two, one, hit.start, max(two.end, hit.end)  # "typed 15 instead of 12.5 by mistake"
        for hit in mend.between("not", one.end, two.start):
            # "22.5, not 20"; "5 reps not 6"
            between = mend.words_between(one.end, hit.start) - _of_sets(mend, one.end, hit.start)
            if between <= NEAR and only_little(tokens, hit.end, two.start):
                first = next((v for v in values if v.text), None) if two.text else None
                now = first if first is not None and first.start < two.start else one
                return now, two, now.start, two.end
        for hit in mend.between("than", one.end, two.start):
            # "more like 9 than 8"
            if (
                hit.start == one.end
                and hit.end == two.start
                and any(h.end == one.start for h in mend.between("like", 0, one.start))
            ):
                return one, two, one.start, two.end
        for hit in mend.between("was", one.end, two.start):
            # "was 8, I wrote 7"
            if hit.end - hit.start > 1 and only_little(tokens, hit.end, two.start):
                return one, two, one.start, two.end
        for hit in mend.between("was", max(0, one.start - NEAR - 1), one.start):
            # "I typed 30, should be 20"
            if (
                (hit.end - hit.start > 1 or hit.name == "told")
                and only_little(tokens, hit.end, one.start)
                and (mend.between("now", one.end, two.start) or mend.between("cue", one.end, two.start, "strong"))
            ):
                return two, one, one.start, two.end
        alike = bool(one.text) == bool(two.text) and two is values[-1]
        if alike and _begins_with(mend, one) and mend.between("ought", one.end, two.start):
            return two, one, one.start, two.end  # "the 20 kg for the chins should read 17.5"
        for hit in mend.between("wrote", one.end, two.start):
            # "hab 71 geschrieben, waren 77"
            if hit.start - one.end <= NEAR and mend.between("now", hit.end, two.start):
                return two, one, one.start, two.end
        if _by_mistake(mend, two, one.end, two.end + NEAR):
            return one, two, one.start, two.end  # "were with 12.5, wrote 15 by mistake"
        if _by_mistake(mend, one, 0, two.start):
            return two, one, one.start, two.end  # "accidentally put 15, was 12.5"
        for hit in mend.between("not", max(0, one.start - NEAR), one.start):
            # "nicht 20 sondern 22,5", "no eran 20 sino 22,5"
            if only_little(tokens, hit.end, one.start) and any(
                h.end <= two.start for h in mend.between("now", one.end, two.start)
            ):
                return two, one, one.start, two.end
    return None


def _begins_with(mend: Mend, value: Value) -> bool:
    """Whether a sentence, or what stands behind its excuse, begins with "the" and a value."""
    start = max((low for low, _ in mend.message.sentences if low <= value.start), default=0)
    excuses = [hit.end for hit in mend.between("excuse", start, value.start)]
    lead = [token.text for token in mend.tokens[max([start, *excuses]) : value.start] if token.text not in (",", ":")]
    return len(lead) == 1 and lead[0] in little("in_correction")


def _by_mistake(mend: Mend, value: Value, low: int, high: int) -> bool:
    """Whether a value is one that was written by mistake, by the words beside it in [low, high)."""
    low, high = max(low, value.start - 2 * NEAR), min(high, value.end + NEAR)
    slips = mend.between("mistaken", low, high)
    if any(hit.name == "alone" and hit.start == value.end for hit in slips):
        return True  # "the 32.5 was a typo, 23.5"
    return bool(slips) and bool(mend.between("wrote", low, high))


def _of_sets(mend: Mend, start: int, end: int) -> int:
    """How many tokens say which set it was: "1 on the second set, not 2"."""
    return sum(hit.end - hit.start for hit in longest(mend.between("which", start, end)))
