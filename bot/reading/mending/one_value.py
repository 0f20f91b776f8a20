"""Only the new value, or one beside no load at all: "second set was 4 actually", "sorry, that was 22.5"."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.days import named_days
from bot.reading.little import little
from bot.reading.mending.claims import noise, of_values
from bot.reading.mending.fields import NEAR_BODY, SETS, factor_of, side_of, which_set
from bot.reading.mending.mend import MOST_SCORE, NEAR, Mend, Value, mentions_in, only_little
from bot.reading.message import Claim
from bot.reading.movements.mention import Mention
from bot.reading.reading import Ask, Correction


def of_no_load(mend: Mend) -> list[Claim]:
    """ "+10 not bodyweight", "bodyweight, not +10": one of the two values is no load."""
    told = any(value.text for value in mend.values())
    for value in mend.values() if "none" in mend.hits and "not" in mend.hits else ():
        weighed = not told and bool(mend.between("field", value.end, value.end + 1, "load_kg"))
        if (value.mark != "+" and not weighed) or value.text:
            continue
        for hit in mend.hits.get("none", ()):
            load_first = value.end <= hit.start
            first = value.start - (value.mark == "+")
            low, high = (value.end + weighed, hit.start) if load_first else (hit.end, first)
            if not any(
                n.start - low <= NEAR and n.end <= high and only_little(mend.tokens, n.end, high)
                for n in mend.between("not", low, high)
            ):
                continue
            if any(token.text in ".!?\n" or token.value is not None for token in mend.tokens[low:high]):
                continue
            start, end = min(first, hit.start), max(value.end + weighed, hit.end)
            load = round(value.value * factor_of(mend, value, value), 6)
            mentions = mentions_in(mend.message, set(range(start, end)))
            named = mentions[0].movement if len(mentions) == 1 and not mentions[0].movement.startswith("?") else None
            was, now = (0.0, load) if load_first else (load, 0.0)
            made = Correction("load_kg", was, now, named, side_of(mend, start, end), which_set(mend))
            claims = [Claim(start, end, "correction", made)]
            return claims + noise(mend, claims)
    return []


def of_one_value(mend: Mend) -> list[Claim]:
    """Only the new value: "second set was 4 actually", "change the chins to 17.5 kg"."""
    values = mend.values()
    if len(values) != 1 or values[0].text:
        return []
    (now,) = values
    tokens = mend.tokens
    of_a_set = bool(mend.hits.get("which")) and bool(mend.hits.get("put_right"))
    if any(token.text == "?" for token in tokens) or not (
        (of_a_set and of_a_day_gone(mend)) or not named_days(mend.message).days
    ):
        return []
    changed = any(
        hit.end <= now.start
        and any(only_little(tokens, to.end, now.start) for to in mend.between("to", hit.end, now.start))
        for hit in mend.hits.get("change", ())
    )
    mentions = mentions_in(mend.message, {now.start})
    unit = bool(mend.between("field", now.end, min(len(tokens), now.end + 1)))
    if (
        not of_a_set
        and not _said_wrong(mend, now, mentions)
        and not (changed and (mentions or unit or mend.hits.get("which")))
    ):
        return []
    (claim, *more) = of_values(mend, now, now, now.start, now.end)
    made = claim.value
    return [Claim(claim.start, claim.end, "correction", replace(made, was=None), claim.ask), *more]


def of_a_day_gone(mend: Mend) -> bool:
    """ "Last set yesterday was actually 3 reps": only days gone by are named, so it is of what was told of them."""
    days, today = named_days(mend.message).days, mend.message.local.date()
    if not days or not all(day.back is not None and day.back[1] < today for day in days):
        return False
    values = mend.values()
    return bool(values) and all(token.text not in ",;.!" for token in mend.tokens[days[-1].end : values[0].start])


def of_bare_value(mend: Mend) -> list[Claim]:
    """ "Sorry, that was 22.5": an excuse and a value. What it is of is asked, but where its unit tells."""
    values = mend.values() if "excuse" in mend.hits else []
    if len(values) != 1 or values[0].text or any(token.text == "?" for token in mend.tokens):
        return []
    (now,) = values
    known = {
        at
        for table in ("excuse", "cue", "now", "field")
        for hit in mend.hits.get(table, ())
        for at in range(hit.start, hit.end)
    }
    known |= set(range(now.start, now.end))
    known |= {at for at, token in enumerate(mend.tokens) if token.text in little("in_correction")}
    if not mend.between("excuse", 0, now.start) or any(
        at not in known and token.kind == "word" for at, token in enumerate(mend.tokens)
    ):
        return []
    told = bool(mend.between("field", 0, len(mend.tokens))) or _only_load(mend, now)
    (claim, *more) = of_values(mend, now, now, now.start, now.end)
    if claim.value.field not in SETS:
        return []  # "sorry, the elbow was 3" tells of the body, and its readers know how
    about = "reps" if claim.value.field == "reps" else "load_kg"
    ask = None if told else Ask(about, mend.message.span(now.start, now.end))
    return [Claim(claim.start, claim.end, "correction", replace(claim.value, was=None), ask), *more]


def _only_load(mend: Mend, now: Value) -> bool:
    """ "22.5" is no effort, no reps, and nobody's bodyweight: added weight."""
    body = mend.message.context.bodyweight_kg
    kilos = now.value * factor_of(mend, now, now)
    return (
        now.value != int(now.value) and now.value > MOST_SCORE and body is not None and kilos < body * (1 - NEAR_BODY)
    )


def _said_wrong(mend: Mend, now: Value, mentions: list[Mention]) -> bool:
    """ "Oops wrong, dips were with 15": a word for the mistake, then what the movement's value was."""
    if not mentions or mentions[0].start < (
        first := min((h.start for h in mend.between("cue", 0, now.start)), default=0)
    ):
        return False
    mistaken = any(h.start >= first and h.end <= mentions[0].start for h in mend.between("cue", 0, now.start, "strong"))
    said = mend.between("now", mentions[-1].end, now.start)
    return mistaken and any(only_little(mend.tokens, hit.end, now.start) for hit in said)
