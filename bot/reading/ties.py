"""Facts that say what a fact beside them is: a row of numbers by set that closes in an effort, a small "call it 2"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.reading.circuits import reps_of_circuit
from bot.reading.dropped import dropped_to
from bot.reading.facts import Entry, Fact
from bot.reading.feats import feats_told
from bot.reading.helped import taken_off
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.side_ties import efforts_of_sides, sided
from bot.reading.told_apart import told_apart
from bot.reading.unsure import held_in_total, one_word, plates, rated_row, summed

LEAST_IN_TURN = 2
LEAST_JUDGED = 6
LEAST_TAKEN = 15
LEAST_EACH = 9  # a load told bare in a row of loads
REACH = 5  # so many facts before its number a set that is rated is named
LIST_OF_EFFORTS = 3
LEAST_EFFORT = 4  # nobody rates a set of work lower; what is called less is a number of reps


def tie(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The facts, with what their neighbours make of them."""
    facts = dropped_to(message, _helped_by(message, told_apart(message, facts)))
    facts = _bracketed(message, _taken(_postposed(feats_told(rated_row(sided(held_in_total(summed(facts))))))))
    facts = taken_off(message, plates(_loads_before(reps_of_circuit(facts))))
    rated = _rated(_named_and_rated(efforts_of_sides(_felt_heavier(facts))))
    return _in_turn(_reckoned(message, _counted(message, _listed(_judged(message, rated)))))


def _postposed(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "left only 12 on the last", "got 1 on the last two": the sets that a bare number is of are told after it."""
    out = list(facts)
    for at in range(1, len(out) - 1):
        one, scope = out[at], out[at + 1]
        if one.kind != "bare" or scope.kind != "scope" or scope.value == "all" or one.end != scope.start:
            continue
        closes = at + 2 == len(out) or out[at + 2].kind == "sep"
        before = out[at - 1]
        led = before.kind == "plan" and "only" in before.note.get("names", ())
        fell = before.kind == "link" and before.value == "drop"  # "5x5, dropped to 3 on the last set"
        several = isinstance(scope.value, tuple) and before.kind == "scheme" and before.value == "got"
        if fell and closes:
            out[at - 1] = Fact("word", before.start, before.end, None, {"noise": True})
        if closes and (led or fell or several) and scope.note.get("text", "").startswith(tuple(little("before_scope"))):
            out[at], out[at + 1] = scope, one
    return out


def _taken(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Hab 22,5 genommen": what is taken is a load, where it cannot be a number of sets or reps."""
    out = list(facts)
    for at, (one, took) in enumerate(pairwise(facts)):
        if one.kind == "bare" and one.value >= LEAST_TAKEN and took.kind == "scheme" and took.value == "attempt":
            out[at : at + 2] = [took, one]  # "30 probiert": as "tried 30"
            continue
        sure = one.kind == "bare" and (one.value != int(one.value) or one.value >= LEAST_TAKEN)
        if sure and took.kind == "plan" and "took" in took.note.get("names", ()):
            out[at] = Fact("load", one.start, one.end, one.note.get("kg", one.value), {"how": "at"})
    return out


def _bracketed(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5 (7), 5 (7.5), 5 (8.5)": efforts in brackets, where the message says that they are."""
    rated = [
        at
        for at, (one, mark, value, end) in enumerate(zip(facts, facts[1:], facts[2:], facts[3:], strict=False))
        if one.kind in ("bare", "rows", "load")
        and (mark.note.get("mark"), end.note.get("mark")) == ("(", ")")
        and value.kind == "bare"
        and LEAST_EFFORT < value.value <= 10
    ]
    if len(rated) < LEAST_IN_TURN or not any(token.text == "rpe" for token in message.tokens):
        return facts
    out = list(facts)
    for at in rated:
        out[at + 2] = replace(out[at + 2], kind="effort")
    return out


def _named_and_rated(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Last triple 8.5": the words name the set, and the number above its reps rates it."""
    out = list(facts)
    for at in range(len(out) - 2):
        scope, named, value = out[at : at + 3]
        word = named.kind == "rows" and len(named.value) == 1 and bool(named.note.get("word"))
        rates = value.kind == "bare" and LEAST_JUDGED <= value.value <= 10 and word
        if scope.kind != "scope" or not rates or value.value <= (named.value[0].reps or 0) + 1:
            continue
        if at + 3 < len(out) and out[at + 3].kind not in ("sep", "word"):
            continue
        out[at + 1] = Fact("word", named.start, named.end, None, {"noise": True})
        out[at + 2] = replace(value, kind="effort", value=float(value.value))
        return out
    return facts


def _helped_by(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Assisted dip machine 15 kg off": kilograms of help, where the message says that there was help."""
    if not any(token.text in little("assisted") for token in message.tokens):
        return facts
    out = list(facts)
    for at, (load, off) in enumerate(pairwise(facts)):
        taken = off.kind == "plan" and "off" in off.note.get("names", ()) and off.start == load.end
        if load.kind == "load" and load.value and taken:
            out[at] = replace(load, kind="assist")
            out[at + 1] = Fact("word", off.start, off.end, None, {"noise": True})
    return out


def _felt_heavier(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "20 felt like 30": what it felt like is no load."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        before = facts[at - 1] if at else None
        led = before is not None and before.kind == "word" and before.value in little("felt_like")
        if led and fact.kind in ("bare", "load") and not (fact.kind == "bare" and fact.value <= 10):
            fact = Fact("word", fact.start, fact.end, None, {"noise": True})
        out.append(fact)
    return out


def _rated(facts: Sequence[Fact]) -> list[Fact]:
    """ "first set 6 last set 8 rpe": the word names every number of the row, each beside the set it rates."""
    out = list(facts)
    for at, fact in enumerate(out):
        if fact.kind != "effort":
            continue
        for place in range(at - 1, 0, -1):
            one = out[place]
            if (one.kind == "sep" and one.value == 1) or one.kind == "scope":
                continue
            sure = one.kind == "bare" and out[place - 1].kind == "scope" and 5 <= one.value <= 10
            if not sure or out[at - 1].kind != "scope":
                break
            out[place] = replace(one, kind="effort")
    for at in range(len(out) - 4):
        five = out[at : at + 5]
        if [fact.kind for fact in five] == ["effort", "scope", "sep", "bare", "scope"] and 5 <= five[3].value <= 10:
            out[at + 3] = replace(five[3], kind="effort")  # "rpe 7 at first and 9 on the last"
    for at in range(1, len(out) - 1):
        one, after = out[at], out[at + 1]
        if one.kind == "effort" and out[at - 1].kind == "scope":
            # "sets 1-4 rpe 7, last one 9"
            rest = [f for f in out[at + 1 : at + 4] if not (f.kind == "sep" and f.value == 1)]
            if after.kind in ("sep", "scope") and len(rest) > 1 and rest[0].kind == "scope" and rest[1].kind == "bare":
                place = next(i for i, f in enumerate(out) if f is rest[1])
                if 5 <= rest[1].value <= 10 and (place + 1 == len(out) or out[place + 1].kind == "sep"):
                    out[place] = replace(rest[1], kind="effort")
    return out


def _judged(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "the last one a 9", "la última un 9": a number with an article rates the set."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        before = facts[at - 1] if at else None
        closes = at + 1 == len(facts) or facts[at + 1].kind == "sep"
        closes = closes or (facts[at + 1].kind == "word" and (at + 2 == len(facts) or facts[at + 2].kind == "sep"))
        closes = closes or _of_effort(message, facts[at + 1 : at + 4])
        sure = fact.kind == "bare" and LEAST_JUDGED <= fact.value <= 10 and closes and before is not None
        if sure and before is not None and before.kind == "scope" and before.value in (("last", 1), ("first", 1)):
            out[-1] = replace(before, value=before.value[0])
            out.append(replace(fact, kind="effort"))
            continue
        led = _rating(message, out, at + 1 == len(facts) or facts[at + 1].kind == "sep") if sure else None
        if led is not None:
            del out[led:]
            out.append(replace(fact, kind="effort"))
            continue
        out.append(fact)
    return out


def _of_effort(message: Message, after: Sequence[Fact]) -> bool:
    """ "eine glatte 7 von der Anstrengung": what the number is of."""
    words = [fact for fact in after if fact.kind == "word"]
    return any(message.tokens[fact.start].text in little("effort_word") for fact in words)


def _rating(message: Message, before: Sequence[Fact], closes: bool) -> int | None:
    """Where the article stands that makes a number rate a set: "the last (was) a (solid) 9"; None where none does."""
    at = len(before) - 1
    if at > 0 and before[at].kind == "word" and not _article(message, before[at]):
        at -= 1  # "a solid"
    if at < 0 or not _article(message, before[at]):
        return None
    led = before[max(0, at - REACH) : at]
    scope = next((i for i, one in enumerate(led) if one.kind == "scope"), None)
    if scope is None and closes and _closes_sets(led):
        return at  # "5x3 with 20, an 8"
    if scope is None or any(
        one.kind not in ("word", "sep", "scheme", "move") or one.value == 3 for one in led[scope + 1 :]
    ):
        return None
    return at


def _closes_sets(led: Sequence[Fact]) -> bool:
    """Whether whole sets, perhaps with their load, and a comma stand right before."""
    if len(led) < 2 or led[-1].kind != "sep" or led[-1].note.get("mark") != ",":
        return False
    before = [fact for fact in led[:-1] if fact.kind not in ("load", "move")]
    return bool(before) and before[-1].kind == "rows" and len(before[-1].value) > 1


def _article(message: Message, fact: Fact) -> bool:
    """Whether a fact is "a"; "eine" is a number too, "ne" also takes words back."""
    if fact.kind == "bare":
        return bool(fact.note.get("spelled")) and fact.value == 1
    if fact.kind not in ("word", "mend") or fact.end != fact.start + 1:
        return False
    token = message.tokens[fact.start]
    return token.text in little("a") or any(
        hit.table == "article" for hit in message.book("grammar").at(message.tokens, fact.start)
    )


def _listed(facts: Sequence[Fact]) -> list[Fact]:
    """ "@7, @7.5, @8.5": three efforts in a row between commas are one a set."""
    out: list[Fact] = []
    at = 0
    while at < len(facts):
        values: list[float] = []
        end = at
        while end < len(facts):
            value = _effort(facts[end])
            if value is None:
                break
            values.append(value)
            step = 2 if end + 1 < len(facts) and facts[end + 1].note.get("mark") == "," else 1
            if end + step >= len(facts) or _effort(facts[end + step]) is None:
                break
            end += step
        if len(values) >= LIST_OF_EFFORTS:
            out.append(Fact("efforts", facts[at].start, facts[end].end, values))
            at = end + 1
            continue
        out.append(facts[at])
        at += 1
    return out


def _effort(fact: Fact) -> float | None:
    """The effort that a fact is or, after an "@", may be."""
    if fact.kind == "effort":
        return float(fact.value)
    if fact.kind == "at" and not fact.note.get("range") and 5 <= fact.value[0] <= 10:
        return float(fact.value[0])
    return None


def _counted(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "2x max": two sets to the utmost, whose reps are told elsewhere."""
    out = list(facts)
    for at in range(len(out) - 2):
        one, times, most = out[at : at + 3]
        if (
            one.kind == "bare"
            and one.value == int(one.value)
            and times.kind == "word"
            and times.end == times.start + 1
            and (most.value == "amrap" if most.kind == "scheme" else bool(most.note.get("words")))
            and any(
                hit.table == "times" and hit.name == "x"
                for hit in message.book("grammar").at(message.tokens, times.start)
            )
        ):
            out[at] = replace(one, kind="count", value=int(one.value))
    return out


def _reckoned(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "so call it 2" after a set mends its reps: it is no effort."""
    out: list[Fact] = []
    for fact in facts:
        called = fact.kind == "effort" and fact.value < LEAST_EFFORT and not fact.note.get("rir")
        if called and any(
            hit.table == "effort" and hit.name == "reckoned"
            for hit in message.book("grammar").at(message.tokens, fact.start)
        ):
            out.append(Fact("mend", fact.start, fact.start + 1, "mend"))
            out.append(replace(fact, kind="bare", start=fact.end - 1))
            continue
        out.append(fact)
    return out


def _loads_before(facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Started with 10, then 15, then 20, 5 pull-ups each": loads in turn, then what was done with each."""
    each = next((at for at, fact in enumerate(facts) if fact.kind == "side" and fact.note.get("plain")), None)
    if each is None or each + 1 >= len(facts) or facts[each + 1].kind != "bare":
        return facts
    reps = facts[each + 1].value
    listed = facts[each - 1] if each else None
    if listed is not None and listed.kind == "loads" and facts[each].start == listed.end:
        # "20 22,5 25 jeweils 3"
        work = Fact("rows", facts[each + 1].start, facts[each + 1].end, [Entry(int(reps))], {"reps": True})
        return [*facts[: each - 1], replace(listed, note={}), work, *facts[each + 2 :]]
    loads: list[int] = []
    for at in range(each - 1, -1, -1):
        fact = facts[at]
        if fact.kind == "bare" and fact.value > max(reps, LEAST_EACH) and not fact.note.get("before_move"):
            loads.insert(0, at)
        elif fact.kind == "load" and fact.value and fact.note.get("how") != "plus":
            loads.insert(0, at)
            break
        elif fact.kind not in ("sep", "word", "scheme", "claim") or (fact.kind == "sep" and fact.value == 3):
            break
    if len(loads) < LEAST_IN_TURN or facts[loads[0]].kind != "load":
        return facts
    kgs = [float(facts[at].note.get("kg", facts[at].value)) for at in loads]
    merged = Fact("loads", facts[loads[0]].start, facts[loads[-1]].end, kgs)
    work = Fact("rows", facts[each + 1].start, facts[each + 1].end, [Entry(int(reps))], {"reps": True})
    return [*facts[: loads[0]], merged, work, *facts[each + 2 :]]


def _in_turn(facts: Sequence[Fact]) -> list[Fact]:
    """ "3x5, first with 10, then 15, then 20": as many loads as sets are one a set."""
    out = list(facts)
    for at, one in enumerate(facts):
        if one.kind != "rows" or not one.note.get("plain") or len(one.value) < LEAST_IN_TURN:
            continue
        loads: list[Fact] = []
        end = at + 1
        for place in range(at + 1, len(facts)):
            fact = facts[place]
            heavy = fact.kind == "bare" and loads and fact.value > max(entry.reps or 0 for entry in one.value)
            if (fact.kind == "load" and fact.value and fact.note.get("how") != "plus") or heavy:
                loads.append(fact)
                end = place + 1
            elif (fact.kind == "bare" and fact.note.get("spelled") and fact.value == 1) or one_word(fact):
                continue  # "una con 10, otra con 15"
            elif fact.kind in ("sep", "word", "move", "scope", "plan") and not (fact.kind == "sep" and fact.value == 3):
                continue
            else:
                break
        parted = all(
            any(fact.kind == "sep" for fact in facts if first.end <= fact.start < second.start)
            for first, second in pairwise(loads)
        )
        if len(loads) == len(one.value) and parted:
            kgs = [float(fact.note["kg"] if fact.kind == "bare" else fact.value) for fact in loads]
            kept = [fact for fact in facts[at + 1 : end] if fact.kind == "move"]
            merged = Fact("loads", loads[0].start, loads[-1].end, kgs)
            return [*out[: at + 1], *kept, merged, *out[end:]]
    return out
