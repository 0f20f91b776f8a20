"""Numbers without a movement of ours: other training goes unread, the rest is asked."""

from __future__ import annotations

from bot.reading.assemble.by_days import cut_by_days
from bot.reading.facts import Fact
from bot.reading.fold.block import fold_block
from bot.reading.fold.sets import Work, to_set
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.reading import Ask

LEAST_SAID = 2  # facts: "only did" and the number
MOST_COUNTED = 12


def other_training(message: Message, move: Fact, own: list[Fact], work: Work) -> None:
    """Runs, swings, deadlifts: verbatim to `unread` when a number is told of them."""
    numbers = ("rows", "bare", "load", "loads", "at", "left", "count", "percent", "assist", "ask")
    start, end = move.start, move.end
    at = own.index(move)
    found = any(token.text in little("kilometres") for token in message.tokens[start:end])  # "a 5k"
    for fact in reversed(own[:at]):
        if fact.kind == "sep":
            break
        if fact.kind in numbers or fact.note.get("noise") or _is_noise(fact):
            start, found = fact.start, True
    for fact in own[at + 1 :]:
        if fact.kind == "sep" and (
            (fact.value >= 2 and fact.note.get("mark") != ".") or fact.note.get("mark") in (".", "and", "(")
        ):
            break
        if fact.kind in numbers or fact.note.get("noise") or _is_noise(fact):
            end, found = fact.end, True
    if found:
        work.unread.append(message.span(start, end))
        work.report = True


def _is_noise(fact: Fact) -> bool:
    return fact.kind == "claim" and fact.value is not None and fact.value.kind == "noise"


def _is_all(message: Message, fact: Fact) -> bool:
    """ "All done 👍", where nothing was planned: what was done is asked."""
    return all(
        fact.start <= at < fact.end for at, token in enumerate(message.tokens) if token.kind not in ("sym", "nl")
    )


def _of_no_count(message: Message, fact: Fact) -> bool:
    """ "Hit the triples with 50", "did the 3s": sets of so many, and nobody knows how many sets."""
    plural = message.tokens[fact.end - 1].text.endswith(tuple(little("plural")))
    return len(fact.value) == 1 and plural and bool(fact.note.get("each_of") or fact.note.get("the"))


def _held(fact: Fact, efforts: list[Fact]) -> bool:
    """Whether seconds are a set: "hold 30s rpe 8" has an effort of its own."""
    return bool(efforts) and fact.note.get("unit") == "sec"


def _of_sides(facts: list[Fact]) -> list[Fact]:
    """What was done with either arm, or of lowering: "left 3, right 2", "4 negatives"."""
    marks = [fact for fact in facts if fact.kind == "side" or (fact.kind == "flag" and fact.value == "eccentric")]
    sides = {fact.value for fact in marks if fact.kind == "side"}
    lowered = any(fact.kind == "flag" for fact in marks)
    starts, ends = {mark.start for mark in marks}, {mark.end for mark in marks}
    numbers = [fact for fact in facts if fact.kind in ("bare", "rows") and (fact.end in starts or fact.start in ends)]
    if not numbers or (not ({"left", "right"} <= sides and len(numbers) > 1) and not lowered):
        return []
    return sorted([*marks, *numbers], key=lambda fact: fact.start)


def _was_done(facts: list[Fact], vague: Fact) -> bool:
    """Whether a word for done stands right beside what was done."""
    at = next(n for n, fact in enumerate(facts) if fact is vague)
    beside = [*facts[max(0, at - 1) : at], *facts[at + 1 : at + 2]]
    return any(
        (fact.kind == "scheme" and fact.value == "got") or (fact.kind == "plan" and "done" in _names(fact))
        for fact in beside
    )


def _names(fact: Fact) -> set[str]:
    return {str(fact.value), *fact.note.get("names", ())}


def so_many_only(facts: list[Fact]) -> list[Fact]:
    """ "Only did 3 today", "solo hice tres": sets or reps of what was planned; a bare "only 3" may be a score."""
    told = [fact for fact in facts if fact.kind not in ("claim", "sep")]
    kinds = [fact.kind for fact in told if fact.kind != "word"]
    numbers = [fact for fact in told if fact.kind == "bare"]
    did = any(fact.kind == "scheme" and fact.value == "got" for fact in told) or len(told) == LEAST_SAID
    only = any("only" in fact.note.get("names", ()) or fact.value == "only" for fact in told)
    few = len(numbers) == 1 and numbers[0].value == int(numbers[0].value) <= MOST_COUNTED
    return told if few and did and only and len(kinds) == len(told) <= LEAST_SAID + 1 else []


def without_movement(message: Message, facts: list[Fact], work: Work) -> None:
    """Numbers of training without a movement and without a plan: asked."""
    efforts = [fact for fact in facts if fact.kind == "effort"]
    told = [fact for fact in facts if fact.kind == "rows" and not (fact.note.get("one") and not _held(fact, efforts))]
    loads = [fact for fact in facts if fact.kind in ("load", "at", "loads") and not fact.note.get("none")]
    if told and (len(told) > 1 or loads or not told[0].note.get("list") or len(told[0].value) > 2) and told:
        uncounted = all(_of_no_count(message, fact) for fact in told)
        uncounted = uncounted and not any(fact.kind in ("count", "rounds", "repeat", "scope") for fact in facts)
        for part in [] if uncounted else cut_by_days(facts):
            folded = fold_block(message, None, part, None)
            start = next((fact.start for fact in part if fact.kind == "rows"), told[0].start)
            work.places.append((len(work.sets), start, start))
            work.sets += [to_set(message, None, row, [], None) for row in folded.rows]
            work.asks.extend(folded.asks)
        work.asks.insert(0, Ask("movement", message.span(told[0].start, told[-1].end)))
        work.report = True
        return
    tested = any(fact.kind == "scheme" and fact.value == "one_rm" for fact in facts)  # "tested my 1RM: 47.5"
    reps = tested or any(fact.kind == "rows" and fact.note.get("reps") for fact in facts)
    if loads and (reps or any(fact.kind in ("bare", "count") for fact in facts)):
        work.asks.append(Ask("movement", message.span(loads[0].start, loads[0].end)))
        work.report = True
        return
    unclear = next((fact for fact in facts if fact.kind == "ask" and fact.value == "sets"), None)
    if unclear is not None and not told:
        work.asks.append(Ask("movement", message.span(unclear.start, unclear.end)))  # "only negatives: 5 reps of 10 s"
        work.report = True
        return
    vague = next((fact for fact in facts if fact.kind == "vague"), None)
    if vague is not None and not told and _was_done(facts, vague):
        work.asks.append(Ask("sets", message.span(vague.start, vague.end)))  # "got a few sets in before closing time"
        work.report = True
        return
    so_many = so_many_only(facts)
    if so_many:
        work.asks.append(Ask("sets", message.span(so_many[0].start, so_many[-1].end)))
        work.report = True
        return
    work_of_a_side = _of_sides(facts)
    if work_of_a_side:
        span = message.span(work_of_a_side[0].start, work_of_a_side[-1].end)
        work.asks.append(Ask("movement", span))
        work.report = True
        return
    hurts = any(hit.table == "site" for hit in message.hits("body"))
    for fact in facts:
        names = set(fact.note.get("names", ())) if fact.kind == "plan" else set()
        if (
            ("last_time" in names and not hurts)  # "both elbows 2, as always when it is cold"
            or "planned" in names
            or ("same" in names and _is_all(message, fact))
            or ("done" in names and _is_all(message, fact))
        ):
            work.asks.append(Ask("sets", message.span(fact.start, fact.end)))
            work.report = True
            return
    counts = [fact for fact in facts if fact.kind == "count" and not fact.note.get("of_plan")]
    if counts and not told and not any(fact.kind == "word" and len(str(fact.value)) > 4 for fact in facts):
        work.asks.append(Ask("movement", message.span(counts[0].start, counts[0].end)))
        work.report = True
        return
    rated = [fact for fact in facts if fact.kind in ("effort", "efforts")]
    of_sets = [fact for fact in facts if fact.kind == "scope" and fact.value != "all"] + rated
    several = len(rated) > 1 or any(fact.kind == "efforts" for fact in rated)
    if several and not told and not hurts and (len(of_sets) > len(rated) or len(rated) == 1):
        # "first set felt like a 6, second 7, last 8": of sets that nobody has told
        first, last = min(fact.start for fact in of_sets), max(fact.end for fact in of_sets)
        work.asks.append(Ask("sets", message.span(first, last)))
        work.report = True
        return
    worded = any(fact.note.get("words") or "rpe" in message.span(fact.start, fact.end).lower() for fact in efforts)
    if len(efforts) == 1 and not told and hurts and not worded:
        return  # "the shoulder kept me up, maybe a 5" is no effort
    if len(efforts) == 1 and not told:
        work.session_rpe = efforts[0].value
