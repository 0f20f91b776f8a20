"""What facts that stand together make doubtful: totals that contradict the sets, two plates, loads like efforts."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import is_then
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

LONGEST_STOP_S = 5  # in a repetition (common practice, no source)
MANY = 2  # plates
TOP_HOLD = "pull_up_top_hold"
BEHIND = 6  # facts behind such a name within which its own sets stand

LEAST_RATED, MOST_RATED = 5, 10
LEAST_ALIKE = 6  # no effort below it is mistaken for a load


def summed(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5x5, 25 in total" says the same twice, "5x5, 22 in total" contradicts itself; asked."""
    told = [fact for fact in facts if fact.kind == "rows" and len(fact.value) > 1]
    if not told or any(entry.hold_s is not None for fact in told for entry in fact.value):
        return facts
    if not any(fact.kind == "scheme" and fact.value == "total" for fact in facts):
        return facts
    parts = [told, *([one] for one in told)]
    sums = {sum(entry.reps or 0 for one in part for entry in one.value) for part in parts}
    counts = {sum(len(one.value) for one in part) for part in parts}
    times = {one.value for one in facts if one.kind in ("rounds", "repeat")} | {1, 2 if _sided(facts) else 1}
    out = list(facts)
    for at, fact in enumerate(facts):
        if fact.kind != "scheme" or fact.value != "total":
            continue
        number = next((n for n in (at - 1, at + 1) if 0 <= n < len(facts) and _of_reps(facts[n])), None)
        if number is None or facts[number].start < told[0].start:
            continue
        if number and facts[number - 1].kind == "move" and told[-1].end <= facts[number - 1].start:
            continue  # "dips 3x5, pull-ups 30 total in sets of 6"
        amount = facts[number].value if facts[number].kind == "bare" else facts[number].value[0].reps
        same = any(amount == n * one for n in times for one in sums | counts)
        words = Fact("word", fact.start, fact.end, None, {"noise": True})
        low, high = min(fact.start, facts[number].start), max(fact.end, facts[number].end)
        out[at] = words if same else Fact("ask", low, high, "sets")
        out[number] = replace(words, start=facts[number].start, end=facts[number].end)
    return out


def added(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "With the 20 plate plus a 5", "mit der 20er Scheibe plus 5er": one load of two."""
    out: list[Fact] = []
    for fact in facts:
        first = out[-1] if out else None
        two = first is not None and first.kind == fact.kind == "load" and first.end == fact.start
        told = two and first is not None and first.note.get("unit") and fact.note.get("unit")
        if told and first is not None and fact.note.get("how") == "plus" and first.value and fact.value:
            out[-1] = replace(first, end=fact.end, value=first.value + fact.value)
            continue
        out.append(fact)
    return out


def over_the_bar(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "3x4 with a proper stop, chin over bar", "3x4, oben gehalten": where the stop was; no hold beside the sets."""
    out = list(facts)
    first = next((at for at, fact in enumerate(facts) if fact.kind == "rows"), len(facts))
    for at, fact in enumerate(facts):
        if fact.kind != "move" or fact.value.movement != TOP_HOLD or at < first:
            continue
        before = [n for n in range(max(0, at - 2), at) if facts[n].note.get("mark") != ","]
        stop = facts[before[-1]] if before else fact
        near = facts[at + 1 : at + 1 + BEHIND]
        after = next((one for one in near if one.kind not in ("word", "sep") and not plan_names(one)), None)
        alone = after is None or after.kind not in ("rows", "bare", "count", "scope")
        if stop.kind == "flag" and stop.value == "pause_pause" and alone:
            out[at] = Fact("flag", fact.start, fact.end, "pause_top")
            continue
        rated = after is not None and after.kind == "scope" and near[0].kind == "sep"  # "…, last set rpe 9"
        if (alone or rated) and _stops_at_top(message, fact) and not _held_longer(stop):
            if before and stop.kind == "rows" and stop.value[0].hold_s is not None:
                out[before[-1]] = Fact("word", stop.start, stop.end, None, {"noise": True})
            out[at] = Fact("flag", fact.start, fact.end, "pause_pause")
            out.insert(at + 1, Fact("flag", fact.end, fact.end, "pause_top"))
            break
    return out


def _stops_at_top(message: Message, fact: Fact) -> bool:
    """Whether words that name a hold may be of a stop in each repetition: "oben gehalten"."""
    hits = message.beginning("grammar")[fact.start]
    return any((hit.table, hit.name, hit.end) == ("pause", "top", fact.end) for hit in hits)


def _held_longer(before: Fact) -> bool:
    """Whether what stands before is a hold of its own: longer than anyone stops in a repetition."""
    if before.kind != "rows" or before.value[0].hold_s is None:
        return False
    return len(before.value) > 1 or before.value[0].hold_s > LONGEST_STOP_S


def in_the_hang(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Ring rows 3x12, then twice 30 s im Hang": seconds behind other work are of another movement; asked."""
    out = list(facts)
    for at in range(1, len(facts) - 1):
        then, holds, where = facts[at - 1 : at + 2]
        timed = holds.kind == "rows" and all(entry.hold_s for entry in holds.value)
        apart = is_then(then) and where.kind == "flag" and where.value == "pause_bottom"
        if timed and apart and any(fact.kind == "rows" and fact.value[0].reps for fact in facts[:at]):
            out[at] = Fact("ask", holds.start, where.end, "movement")
    return out


def held_in_total(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "3 min handstand total": in how many holds is not said."""
    out = list(facts)
    for at, fact in enumerate(facts):
        before = [n for n in range(max(0, at - 2), at) if facts[n].kind not in ("move", "word")]
        if fact.kind != "scheme" or fact.value != "total" or not before:
            continue
        held = facts[before[-1]]
        if held.kind == "rows" and held.note.get("one") and held.note.get("unit") in ("sec", "min"):
            out[before[-1]] = replace(held, kind="ask", value="sets")
    return out


def one_of_each(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Pull-ups 5x3 with one 20 and one 5": two plates, or two sets with another load; asked."""
    out = list(facts)
    for at in range(1, len(out) - 4):
        led, one, first, joined, other, second = [*out[at - 1 : at + 5]]
        ones = all(fact.kind == "bare" and fact.note.get("spelled") and fact.value == 1 for fact in (one, other))
        weights = all(fact.kind == "bare" and not fact.note.get("spelled") for fact in (first, second))
        carried = led.kind == "word" and str(led.value) in little("carrying")
        if ones and weights and carried and joined.note.get("mark") == "and":
            return [*out[:at], Fact("ask", first.start, second.end, "load_kg"), *out[at + 5 :]]
    return facts


def plates(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5x3 mit einer 20er und einer 5er Scheibe", "con un disco de 20 y uno de 5": one load of two plates; asked."""
    told = [(at, fact) for at, fact in enumerate(facts) if fact.kind not in ("word", "thing")]
    for n in range(1, len(told) - 2):
        four = told[n - 1 : n + 3]
        rows, load, joined, other = (fact for _, fact in four)
        first = four[1][0]
        whole = rows.kind == "rows" and len(rows.value) > 1 and load.kind == "load" and bool(load.value)
        if not whole or joined.note.get("mark") != "and":
            continue
        last = n + 2
        if other.kind == "load" and other.value and _article_before(message, other):
            pass  # "with a 35 and a 10 on the belt"
        elif one_word(other) and last + 1 < len(told) and told[last + 1][1].kind == "load":
            last += 1
        elif not (other.kind == "rows" and len(other.value) == 1 and other.note.get("plain")):
            continue
        if last + 1 < len(told) and told[last + 1][1].kind != "sep":
            continue
        asked = Fact("ask", load.start, told[last][1].end, "load_kg")
        return [*facts[:first], asked, *facts[told[last][0] + 1 :]]
    return facts


def _article_before(message: Message, fact: Fact) -> bool:
    return any(token.text in little("a") for token in message.tokens[max(0, fact.start - 1) : fact.start + 1])


def rated_row(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5x3 @20kg (8, 8, 8, 8.5, 9)": as many numbers as sets, behind their load, are efforts; else they are asked."""
    out = list(facts)
    for at, fact in enumerate(facts):
        if fact.kind != "loads" or not fact.note.get("unsure") or not at:
            continue
        before = [one for one in facts[:at] if one.kind not in ("sep", "word", "claim", "weighted")]
        loaded = bool(before) and before[-1].kind == "load" and before[-1].value
        rows = next((one for one in reversed(before) if one.kind == "rows"), None)
        if rows is None or len(rows.value) != len(fact.value):
            continue
        low, high = min(fact.value), max(fact.value)
        if loaded and low >= LEAST_RATED and high <= MOST_RATED:
            out[at] = replace(fact, kind="efforts", note={})
        elif low >= LEAST_ALIKE and high <= MOST_RATED:
            out[at] = replace(fact, kind="ask", value="load_kg", note={})
    return out


def cells(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Pull-up | 4 | 5 | 15 kg": sets and their reps, or two sets, of a table without heads."""
    for at in range(len(facts) - 3):
        four = facts[at : at + 4]
        parted = four[1].note.get("mark") == four[3].note.get("mark") == "|"
        more = at + 4 < len(facts) and facts[at + 4].kind == "bare"  # "| 5 | 5 | 4"
        numbers = four[0].kind == four[2].kind == "bare" and all(map(_of_reps, four[::2]))
        if parted and not more and numbers:
            return [*facts[:at], Fact("ask", four[0].start, four[2].end, "sets"), *facts[at + 3 :]]
    return facts


def _sided(facts: Sequence[Fact]) -> bool:
    return any(fact.kind == "side" for fact in facts)


def _of_reps(fact: Fact) -> bool:
    """Whether a fact is a lone number of repetitions, or may be."""
    if fact.kind == "bare":
        return bool(fact.value == int(fact.value))
    return fact.kind == "rows" and len(fact.value) == 1 and bool(fact.value[0].reps) and bool(fact.note.get("reps"))


def one_word(fact: Fact) -> bool:
    """ "einer", which is a set of one as well as one of them."""
    return fact.kind == "rows" and len(fact.value) == 1 and bool(fact.note.get("word")) and fact.value[0].reps == 1
