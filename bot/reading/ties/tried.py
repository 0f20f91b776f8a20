"""A single that was tried and missed, told at length: "went for an 85 lb single. Got as far as my eyebrows, a miss"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import SENTENCE, clause_end, clause_start, ends_sentence
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names

OF_A_TRY = frozenset({"move", "load", "word", "sep", "scheme", "plan", "thing", "claim", "side"})
OF_A_REP = frozenset({"last_rep", "scope", "word", "side"})
TRY_SILENT = frozenset({"word", "side", "load", "move"})
NUMBERED = frozenset({"rows", "bare", "count", "load"})
MOST_TRIES = 9
LEAST_LOAD = 10
LONGEST_LEAD = 3  # words: "fui a por"


def tried(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """The facts, with the single and what became of it as one set without a rep."""
    lead = next((at for at, fact in enumerate(facts) if _leads(message, fact)), None)
    if lead is None:
        return facts
    start = clause_start(facts, lead + 1)
    verdict = next((at for at in range(start, len(facts)) if _verdict(facts, at)), None)
    if verdict is None or verdict < lead or any(fact.kind == "fail" for fact in facts[verdict + 1 :]):
        return facts
    window = list(facts[start:verdict])
    single = [fact for fact in window if _single(fact)]
    loads = [fact for fact in window if fact.kind == "load" and fact.value]
    loads = loads or [fact for fact in window if _heavy(fact)]  # "tried 55 on dips for a single. Nope"
    if len(single) != 1 or len(loads) > 1 or any(_other(fact, single[0]) for fact in window if fact not in loads):
        return facts
    own = [float(fact.note.get("kg", fact.value)) for fact in loads] or _of_singles_before(facts[:start])
    note = {"reps": True, **({"own_load": own[0]} if own else {})}
    set_tried = Fact("rows", single[0].start, single[0].end, [Entry(0)], note)
    gone = {id(fact) for fact in (*loads, facts[lead])}
    kept = [set_tried if fact is single[0] else fact for fact in window if id(fact) not in gone]
    return [*facts[:start], *kept, *facts[verdict + 1 :]]


def _of_singles_before(facts: Sequence[Fact]) -> list[float]:
    """ "3x1 con 20 y un intento fallido": the load of the singles that it follows, if any."""
    told = [fact for fact in facts if fact.kind not in ("word", "sep")][-2:]
    if [fact.kind for fact in told] != ["rows", "load"] or facts[-1].value == SENTENCE or not told[1].value:
        return []
    return [float(told[1].value)] if all(entry.reps == 1 for entry in told[0].value) else []


def next_missed(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "7, 7, 7 and 6, the next one failed": the rep after those of the last set."""
    for at, fact in enumerate(facts):
        if fact.kind != "fail" or fact.value is not None or fact.note.get("weak"):
            continue
        start = next((n + 1 for n in range(at - 1, -1, -1) if facts[n].kind in ("rows", "bare")), 0)
        led = facts[start:at]
        words = {message.tokens[n].text for one in led for n in range(one.start, one.end)}
        silent = all(one.kind in ("word", "scheme") or (one.kind == "sep" and one.value < SENTENCE) for one in led)
        rows = facts[start - 1] if start else fact
        last = rows.value[-1].reps if rows.kind == "rows" and len(rows.value) > 1 else 0
        if rows.kind == "bare" and start > 1 and (facts[start - 2].kind, facts[start - 2].value) == ("scope", "last"):
            last = int(rows.value)
        if silent and words & little("rep_after") and (last or 0) > 1:
            nth = int(last or 0) + 1
            return [*facts[:start], Fact("fail", led[0].start, fact.end, nth, {"rep": True}), *facts[at + 1 :]]
    return facts


def tried_and_missed(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Right tried and missed", "tried the last rep of the last set and couldn't finish": the miss alone."""
    out: list[Fact] = []
    for place, fact in enumerate(facts):
        at = len(out) - 2
        nothing = fact.kind == "plan" and plan_names(fact) == {"not"} and out and out[-1].end == fact.start
        if (fact.kind == "fail" or nothing) and out and out[-1].note.get("mark") in ("and", "but"):
            while at >= 0 and (out[at].kind in OF_A_REP or out[at].value == "the"):
                at -= 1
            tried = at >= 0 and (out[at].kind, out[at].value) == ("scheme", "attempt")
            # "tried a fifth but failed at 2", "links noch einen versucht und verhungert" tell more
            beside = [*out[max(0, at - 1) : max(0, at)], *facts[place + 1 : place + 3]]
            if tried and not any(one.kind in NUMBERED for one in beside):
                del out[-1], out[at]
                fact = Fact("fail", fact.start, fact.end) if nothing else fact  # "lo intenté y nada"
        out.append(fact)
    return out


def _leads(message: Message, fact: Fact) -> bool:
    if fact.kind == "scheme":
        return bool(fact.value == "attempt")
    words = [token.text for token in message.tokens[fact.start : fact.start + LONGEST_LEAD]]
    return any(" ".join(words[:many]) in little("went_for") for many in range(2, LONGEST_LEAD + 1))


def _verdict(facts: Sequence[Fact], at: int) -> bool:
    """Whether a fact says that it did not go up: "missed", "y nada" at the end of a clause."""
    fact = facts[at]
    if fact.kind == "fail":
        return not fact.note.get("weak") and fact.value is None
    closes = at + 1 == len(facts) or ends_sentence(facts[at + 1])
    return closes and fact.kind == "plan" and plan_names(fact) == {"not"}


def _single(fact: Fact) -> bool:
    """ "A single", "einen", "una": one set of one, in words."""
    if fact.kind == "rows":
        return len(fact.value) == 1 and fact.value[0].reps == 1 and fact.value[0].load_kg is None
    return fact.kind == "bare" and bool(fact.note.get("spelled")) and fact.value == 1


def _heavy(fact: Fact) -> bool:
    """A bare number of figures that nobody tries as reps beside a single."""
    return fact.kind == "bare" and not fact.note.get("spelled") and fact.value >= LEAST_LOAD


def _other(fact: Fact, single: Fact) -> bool:
    return fact is not single and fact.kind not in OF_A_TRY


def all_missed(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Left arm two tries, both missed": so many sets without a rep."""
    for at, fact in enumerate(facts):
        if fact.kind != "scheme" or fact.value != "attempt":
            continue
        beside = [n for n in (at - 1, at + 1) if 0 <= n < len(facts) and facts[n].kind in ("bare", "count")]
        many = [n for n in beside if facts[n].value in range(2, MOST_TRIES + 1)]
        if len(many) != 1:
            continue
        told, n = facts[many[0]], int(facts[many[0]].value)
        end = _none_went(message, facts, at, n)
        if end:
            missed = _so_many_missed(told.start, told.end, n)
            kept = [one for one in facts[max(many[0], at) + 1 : end] if one.kind in ("side", "load", "move")]
            return [*facts[: min(many[0], at)], missed, *kept, *facts[end:]]
    return facts


def misses_counted(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Muscle-up: 2 failed attempts" or behind the sets that went up: so many sets without a rep."""
    for at, fact in enumerate(facts[:-1]):
        after = facts[at + 1]
        if fact.kind != "bare" or fact.value not in range(1, MOST_TRIES + 1) or after.kind not in ("fail", "word"):
            continue
        before = next((one for one in reversed(facts[:at]) if one.kind not in ("sep", "word")), None)
        tries = facts[at + 2 : at + 3] if at + 2 < len(facts) and facts[at + 2].value == "attempt" else []
        said = " ".join(token.text for token in message.tokens[after.start : (tries or [after])[-1].end])
        if said in little("a_miss") and fact.value == 1 and before is not None and before.note.get("one"):
            led = next((one for one in reversed(facts[: facts.index(before)]) if one.kind != "sep"), None)
            if led is not None and led.kind == "scope":  # "última serie: 5 buenas y un fallo"
                return [*facts[:at], Fact("fail", fact.start, after.end), *facts[at + 2 :]]
        if said in little("a_miss") and before is not None and before.kind in ("move", "side", "rows", "load"):
            missed = _so_many_missed(fact.start, after.end, int(fact.value))
            if before.kind == "load" and before.value:
                missed.note["own_load"] = float(before.value)  # "3x1 at 40, then 2 failed attempts"
            return [*facts[:at], missed, *facts[at + 2 + len(tries) :]]
    return facts


def last_missed(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Muscle-ups: 2, 2, 1, and one I couldn't get over the bar": the one that a list closes with was missed."""
    for at, fact in enumerate(facts):
        if fact.kind != "rows" or not fact.note.get("list") or len(fact.value) < 2 or fact.end < 2:
            continue
        joined, one = message.tokens[fact.end - 2], message.tokens[fact.end - 1]
        if one.text not in little("one_try") or joined.text not in little("and"):
            continue
        after = range(at + 1, min(len(facts), at + 5))
        missed = next((n for n in after if facts[n].kind != "word" and facts[n].note.get("mark") != ","), None)
        if missed is None or not _missed(facts[missed]) or facts[missed].note.get("rep"):
            continue
        stop = clause_end(facts, missed)
        words = {token.text for token in message.tokens[fact.end : facts[stop - 1].end]}
        if any(one.kind in NUMBERED for one in facts[missed:stop]) or words & little("before_set"):
            continue  # "5, 5 and one missed rep"
        values = [*fact.note.get("values", [])[:-1], 0.0]
        told = replace(fact, value=[*fact.value[:-1], Entry(0)], note={**fact.note, "values": values})
        return [*facts[:at], told, *facts[missed + 1 :]]
    return facts


def single_missed(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "3, 2, 2 and then missed the last single": the single is what was missed, and no set of its own."""
    out: list[Fact] = []
    for fact in facts:
        missed = bool(out) and out[-1].kind == "fail" and out[-1].value is not None and out[-1].end == fact.start
        one = fact.kind == "rows" and len(fact.value) == 1 and fact.note.get("word") and fact.note.get("each_of")
        if not (missed and one and not out[-1].note.get("rep")):
            out.append(fact)
    return out


def nothing_on_last(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Muscle-ups 2, 2, 1 and nothing on the last try": a set more, without a rep."""
    for at, fact in enumerate(facts):
        if fact.kind != "scheme" or fact.value != "attempt":
            continue
        start = clause_start(facts, at)
        end = clause_end(facts, at + 1)
        clause = facts[start:end]
        words = {token.text for token in message.tokens[clause[0].start : clause[-1].end]}
        last = [one for one in clause if one.kind == "scope" and one.value == "last"]
        numbers = any(one.kind in NUMBERED or one.kind in ("fail", "move") for one in clause)
        done = any(one.kind in ("rows", "bare") for one in facts[:start])
        if len(last) == 1 and not numbers and done and words & little("nothing_went"):
            none = Fact("rows", clause[0].start, clause[-1].end, [Entry(0)], {"one": True, "reps": True})
            return [*facts[:start], none, *facts[end:]]
    return facts


def _so_many_missed(start: int, end: int, many: int) -> Fact:
    note = {"values": [0.0] * many, "list": True, "reps": True}
    return Fact("rows", start, end, [Entry(0) for _ in range(many)], note)


def _missed(fact: Fact) -> bool:
    return fact.kind == "fail" and not fact.note.get("weak") and fact.value is None


def _none_went(message: Message, facts: Sequence[Fact], at: int, many: int) -> int:
    """Where the words end that say of the tries told at `at` that none went up; 0: they do not."""
    if at + 1 < len(facts) and _missed(facts[at + 1]):
        return at + 2  # "dos intentos fallidos"
    sep = next((n for n in range(at + 1, len(facts)) if facts[n].kind == "sep"), None)
    if sep is None or any(one.kind not in TRY_SILENT for one in facts[at + 1 : sep]):
        return 0
    stop = clause_end(facts, sep + 1)
    clause = facts[sep + 1 : stop]
    numbers = [one for one in clause if one.kind in NUMBERED]
    all_of_them = len(numbers) == 1 and (numbers[0].kind, numbers[0].value) == ("bare", many)  # "fallé los tres"
    if not clause or (numbers and not all_of_them):
        return 0
    words = {token.text for token in message.tokens[clause[0].start : clause[-1].end]}
    all_told = any(plan_names(one) & {"all_lifts"} or (one.kind, one.value) == ("scope", "all") for one in clause)
    failed = any(_missed(one) for one in clause)
    none = bool(words & little("none_of_them")) and bool(words & (little("it_went", "went_up")))
    return stop if ((all_told or all_of_them) and failed) or none else 0
