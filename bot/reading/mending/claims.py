"""A new value, and the old one, as the claim that a correction makes."""

from __future__ import annotations

from bot.reading.mending.fields import SETS, factor_of, field_of, side_of, which_set
from bot.reading.mending.mend import Mend, Value, mentions_in
from bot.reading.message import Claim
from bot.reading.reading import Ask, Correction

REPS = 30  # "3x8": repetitions up to here


def of_values(mend: Mend, now: Value, was: Value, start: int, end: int) -> list[Claim]:
    message = mend.message
    mentions = mentions_in(message, {*range(now.start, now.end), *range(was.start, was.end)})
    low, high = next(((a, b) for a, b in mend.message.sentences if a <= start < b), (0, len(mend.tokens)))
    own = [mention for mention in mentions if low <= mention.start < high]
    apart = len(own) == 1 and len(mentions) > 1 and not any(v.text for v in mend.values() if low <= v.start < high)
    if apart:
        mentions = own  # "the dips were with 15, not 25. Today pull-ups 4x4 with 20"
    field, doubt = field_of(mend, now, was, start, end, mentions)
    new: float | str = now.value
    old: float | str = was.value
    if field == "sets" and now.text and was.text:
        new, old = now.text, was.text
        counts, reps = zip(now.text.split("x"), was.text.split("x"), strict=True)
        if counts[0] == counts[1] and all(int(n) <= REPS for n in reps if n.isdigit()):
            field, new, old = "reps", float(reps[0]), float(reps[1])
    elif field in ("load_kg", "assist_kg", "bodyweight_kg"):
        factor = factor_of(mend, now, was)
        new, old = round(now.value * factor, 6), round(was.value * factor, 6)
    movement = mentions[0].movement if len(mentions) == 1 and not mentions[0].movement.startswith(("?", "!")) else None
    which = which_set(mend)
    side = side_of(mend, start, end)
    ask = Ask("field", message.span(now.start, end if now.start < end else now.end)) if doubt else None
    restated = any(v.text for v in mend.values()) and not apart
    made = Correction(
        field,
        old,
        new,
        movement if field in SETS else None,
        side if field in SETS else None,
        which if field in SETS else "all",
    )
    if restated:
        nots = [h for h in mend.hits.get("not", ()) if h.end <= was.start]
        first = nots[-1].start if nots and was.start > now.start else was.start
        claims = [Claim(first, was.end, "correction", made, ask)]
    else:
        claims = [Claim(start, end, "correction", made, ask)]
        claims += [Claim(v.start, v.end, "noise", None) for v in (now, was) if not start <= v.start < end]
    if apart:
        taken = {at for claim in claims for at in range(claim.start, claim.end)}
        claims += [Claim(at, at + 1, "noise", None) for at in range(low, high) if at not in taken]
        return claims
    return claims + noise(mend, claims)


def noise(mend: Mend, claims: list[Claim]) -> list[Claim]:
    taken = {at for claim in claims for at in range(claim.start, claim.end)}
    out: list[Claim] = []
    for hit in mend.hits.get("which", ()):
        own = set(range(hit.start, hit.end))
        if not own & taken:
            taken |= own
            out.append(Claim(hit.start, hit.end, "noise", None))
    return out
