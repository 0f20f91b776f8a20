"""Corrections of an earlier report: which value, what it was, what it is now.

"that was 22.5, not 20", "I wrote 7, it was 8", "waren 5 statt 6", "eran supinas, no dominadas". A wording that only
departs from the day's plan ("2 instead of 3 on the last") is no correction.
"""

from __future__ import annotations

from bot.reading.days import named_days
from bot.reading.little import little
from bot.reading.mending.claims import of_values
from bot.reading.mending.fields import SETS
from bot.reading.mending.mend import Mend, Value, mentions_in, only_little
from bot.reading.mending.not_numbers import nothing_else, of_days, of_movements, of_sides
from bot.reading.mending.one_value import of_a_day_gone, of_bare_value, of_no_load, of_one_value
from bot.reading.mending.two_lists import of_lists
from bot.reading.mending.two_schemes import of_schemes
from bot.reading.mending.two_values import pair_of
from bot.reading.message import Claim, Message

OPENS = 2  # tokens in which words for the whole plan begin a message


def find_corrections(message: Message) -> list[Claim]:
    """At most one claim `correction`; `noise` for the words that go with it."""
    mend = Mend(message)
    strong = [hit for hit in mend.hits.get("cue", ()) if hit.name in ("strong", "mistaken")]
    named = {at for one in mentions_in(message, set()) for at in range(one.start, one.end)} if strong else set()
    strong = [
        hit
        for hit in strong
        if hit.start not in named  # Chin-ups
        and not any(other.start <= hit.start < other.end for other in mend.hits.get("loading", ()))
    ]
    soft = mend.between("cue", 0, len(message.tokens), "soft")
    unloaded = of_no_load(mend)
    if unloaded:
        return unloaded
    bare = of_bare_value(mend)
    if bare:
        return bare
    if not strong and not soft and not message.context.today and mend.hits.get("which"):
        opposed = pair_of(mend)  # "on set 3 I did 4 not 5"
        if opposed is not None and _of_sets_told(mend, opposed[0], opposed[1]):
            return []
        if opposed is not None and opposed[0].text and opposed[1].text and _left_out(mend):
            return []
        if opposed is not None and mend.between("not", opposed[0].end, opposed[1].start):
            return of_values(mend, *opposed)
    if not strong and not soft:
        swapped = of_movements(mend) if mend.hits.get("not") and nothing_else(mend) else []
        return swapped or _of_minutes(mend) or _of_yesterday(mend)
    cut = not strong and _left_out(mend)
    listed = (not cut and of_schemes(mend)) or of_lists(mend) if strong or not message.context.today else []
    if listed:
        return listed
    pair = pair_of(mend)
    looks_back = pair is not None and _looks_back(mend, pair[0])
    looks_back = looks_back or (of_a_day_gone(mend) and not _of_whole_plan(mend))
    if message.context.today and not strong and not looks_back:
        return []
    if pair is not None and message.context.today and _plan_done(mend, pair[2]):
        return []
    if pair is not None:
        now, was, start, end = pair
        if _departs(mend, start) or (not strong and _of_sets_told(mend, now, was)):
            return []
        if not strong and now.text and was.text and _left_out(mend):
            return []
        excused = mend.hits.get("excuse") and mend.hits.get("which")  # "on the first one I did 4, not 5, sorry"
        if not strong and not excused and not any(hit.start < max(now.start, was.start) for hit in soft):
            return []
        return of_values(mend, now, was, start, end)
    return of_sides(mend) or of_movements(mend) or of_days(mend) or of_one_value(mend)


def _looks_back(mend: Mend, now: Value) -> bool:
    """Whether "that was" leads the new value: said of what was told before, plan or not."""
    return any(only_little(mend.tokens, hit.end, now.start) for hit in mend.between("back", 0, now.start))


def _of_whole_plan(mend: Mend) -> bool:
    """ "Yesterday: chins with 25 instead of 20, rest as planned": a report of all that was planned for that day."""
    found = (hit for hits in mend.message.beginning("grammar") for hit in hits)
    return any(hit.table == "plan" and hit.name in ("rest", "planned") for hit in found)


def _plan_done(mend: Mend, start: int) -> bool:
    """ "All done. Correction: the third set of dips was 7, not 8": a report of today that mends itself."""
    opening = mend.message.beginning("grammar")[:OPENS]
    ends = [hit.end for found in opening for hit in found if hit.table == "plan" and hit.name in ("done", "planned")]
    return any(end <= start for end in ends)


def _of_sets_told(mend: Mend, now: Value, was: Value) -> bool:
    """ "Pull-ups 5x4, the last set 3 instead of 4": the four are those of the sets told now, no report is mended."""
    others = [value for value in mend.values() if value.start not in (now.start, was.start)]
    schemes = [value.text for value in others if value.text]
    again = any(value.value == was.value for value in others if not value.text)
    reps = {text.split("x")[-1] for text in schemes}
    return not now.text and not was.text and bool(schemes) and (again or f"{was.value:g}" in reps)


def _left_out(mend: Mend) -> bool:
    """ "Skipped the last set, so 3x8 instead of 4x8": a plan that was cut, no report that was wrong."""
    grammar = mend.message.beginning("grammar")
    return any((hit.table, hit.name) == ("plan", "skipped") for found in grammar for hit in found)


def _departs(mend: Mend, start: int) -> bool:
    """ "Pull ups 4x6 but the belt was only 10 not 15": sets told now, which depart from what was meant."""
    told = next((value for value in mend.values() if value.text), None)
    if told is None or told.end > start or any(hit.start < told.start for hit in mend.hits.get("cue", ())):
        return False
    named = any(one.start < told.start for one in mentions_in(mend.message, set()))
    return named and any(token.text in little("but") for token in mend.tokens[told.end : start])


def _of_minutes(mend: Mend) -> list[Claim]:
    """ "session took 60 min, not 90": minutes opposed, and no other number."""
    said = mend.hits.get("field", ())
    pair = pair_of(mend) if said and len(mend.values()) == 2 else None
    if pair is None:
        return []
    now, was, start, end = pair
    grammar = mend.message.beginning("grammar")
    paused = any((h.table, h.name) == ("noise", "rest") for at in range(max(0, start - 2), end) for h in grammar[at])
    if paused:
        return []  # "rested 5 min instead of 3"
    if not any(hit.name == "duration_min" and hit.start == now.end for hit in said):
        return []
    return of_values(mend, now, was, start, end)


def _of_yesterday(mend: Mend) -> list[Claim]:
    """ "Dips yesterday 10 kg, not 20": two values opposed and no others, of a day gone by."""
    days, today = named_days(mend.message).days, mend.message.today
    pair = pair_of(mend) if len(mend.values()) == 2 and not any(value.text for value in mend.values()) else None
    if _of_whole_plan(mend):
        return []
    if pair is None or not days or not all(day.back is not None and day.back[1] < today for day in days):
        return []
    made = of_values(mend, *pair) if mend.between("not", pair[0].end, pair[1].start) else []
    # "yesterday 8 pull-ups, not 9 as I hoped" is asked elsewhere; "wrist 2, not the usual 4" is of the body
    return made if made and made[0].ask is None and made[0].value.field in SETS else []
