"""Movements named together, their work told after them: "pull-ups and dips, 3x8 each", "dips, chins: 3x10 and 3x6".

Where the words say that each did it all, or as many schemes follow as movements, or as many numbers as movements of a
superset's rounds, each has its own; else it is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import clause_end, ends_sentence, is_comma, sentence_end
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.reading import Ask

WORK = frozenset({"rows", "bare", "count", "rounds"})
MOST_ROUNDS, MOST_REPS = 15, 60
NUMBERS = WORK | {"load", "loads", "at", "effort", "ask", "side", "scheme", "repeat"}


def part_joined(message: Message, facts: list[Fact]) -> tuple[list[Fact], list[Ask]]:
    """The facts with the work of movements named together given to each of them, and what must be asked."""
    facts = _told_ahead(_paired(facts))
    moves = [at for at, fact in enumerate(facts) if fact.kind == "move"]
    out, asks, done = list(facts), list[Ask](), len(facts)
    for n in range(len(moves) - 1, 0, -1):
        if moves[n] >= done:
            continue
        run = _run(facts, moves, n)
        if len(run) < 2:
            continue
        done = run[0]
        end = next((at for at in range(run[-1] + 1, len(facts)) if _ends(facts[at])), len(facts))
        tail = facts[run[-1] + 1 : end]
        if not (any(fact.kind in WORK for fact in tail) or any(map(_one_more, tail[:1]))) or _elsewhere(
            facts, run, end
        ):
            continue
        led = _rounds_before(facts, run[0])
        shares = _shares(tail, len(run), facts[led] if led is not None else None)
        if shares is None:
            asks.append(Ask("sets", message.span(facts[run[0]].start, tail[-1].end).strip(" ,.;")))
            out[run[-1] + 1 : end] = [fact for fact in tail if fact.kind not in NUMBERS]
            continue
        given: list[Fact] = []
        for at, share in zip(run, shares, strict=True):
            given += [facts[at], *share, Fact("sep", facts[at].end, facts[at].end, 1, {"mark": ","})]
        out[run[0] : end] = given[:-1]
        if led is not None:
            del out[led]
            done = led
    return out, asks


def _paired(facts: list[Fact]) -> list[Fact]:
    """ "Supersetted rows with push-ups", "rows superset push-ups": named together as by "and"."""
    if not any(map(_superset, facts)):
        return facts
    out: list[Fact] = []
    open_ = False  # whether this sentence has spoken of a superset
    for at, fact in enumerate(facts):
        if ends_sentence(fact):
            open_ = False
        elif not open_:
            end = sentence_end(facts, at)
            open_ = any(map(_superset, facts[at:end]))
        if open_ and fact.kind == "move" and len(out) > 1:
            start = next((n + 1 for n in range(len(out) - 1, -1, -1) if out[n].kind == "move"), None)
            between = out[start:] if start is not None else []
            if between and all(map(_pairs, between)):
                out[start:] = [Fact("sep", between[0].start, between[-1].end, 1, {"mark": "and"})]
        out.append(fact)
    return [
        fact
        for at, fact in enumerate(out)
        if not (_superset(fact) and any(one.kind == "move" for one in (*out[at - 1 : at], *out[at + 1 : at + 2])))
    ]


def _told_ahead(facts: list[Fact]) -> list[Fact]:
    """ "3 rounds, 5 each of pull-ups and dips", "3x5 pull-ups and dips each": work told first, and that each did it."""
    moves = [at for at, fact in enumerate(facts) if fact.kind == "move"]
    out = list(facts)
    for n in range(len(moves) - 1, 0, -1):
        run = _run(facts, moves, n, led=False)
        first = next((at + 1 for at in range(run[0] - 1, -1, -1) if _ends(facts[at])), 0) if len(run) > 1 else 0
        end = next((at for at in range(moves[n] + 1, len(facts)) if _ends(facts[at])), len(facts))
        if len(run) < 2 or any(fact.kind in WORK - {"rounds"} for fact in facts[moves[n] + 1 : end]):
            continue
        head, tail = facts[first : run[0]], facts[moves[n] + 1 : end]
        each = [fact for fact in (*head, *tail) if _of_each(fact)]
        told = [fact for fact in head if fact.kind in WORK]
        of_one = told and told[-1].kind == "rounds"  # "3 rounds of pull-ups and dips each" tells no reps
        if len(each) != 1 or not told or of_one or _elsewhere(facts, run, end):
            continue
        aside = [fact for fact in head if fact.kind in ("word", "claim", "plan", "scheme") and fact not in each]
        own = [fact for fact in head if fact not in aside and fact not in each and not _comma(fact)]
        out[first:end] = [
            *aside,
            *facts[run[0] : moves[n] + 1],
            *own,
            each[0],
            *(one for one in tail if one not in each),
        ]
    return out


def _comma(fact: Fact) -> bool:
    return fact.kind == "sep" and fact.value == 1


def _superset(fact: Fact) -> bool:
    return fact.kind == "scheme" and fact.value == "superset"


def _pairs(fact: Fact) -> bool:
    """Whether a fact between two movements says that they were done in turn."""
    return _superset(fact) or (fact.kind == "word" and fact.value in little("with"))


def _rounds_before(facts: Sequence[Fact], at: int) -> int | None:
    """The place of the rounds that lead movements named together: "3 rounds of rows and push-ups"."""
    led = at - 1
    while led >= 0 and (facts[led].kind == "word" or _superset(facts[led])):
        led -= 1
    return led if led >= 0 and facts[led].kind == "rounds" else None


def _ends(fact: Fact) -> bool:
    return fact.kind == "move" or ends_sentence(fact)


def _run(facts: Sequence[Fact], moves: list[int], n: int, *, led: bool = True) -> list[int]:
    """The places of the movements that one list names, the n-th the last of them; "and" or a colon closes the list.

    `led`: nothing that tells of work may lead it.
    """
    run = [moves[n]]
    for at in reversed(moves[:n]):
        between = facts[at + 1 : run[0]]
        marks = [fact.note.get("mark") for fact in between if fact.kind == "sep"]
        if not between or any(fact.kind != "sep" for fact in between) or not set(marks) <= {"and", ","}:
            break
        if len(run) == 1 and "and" not in marks and not _colon(facts, moves[n]):
            break
        run.insert(0, at)
    named = [facts[at].value.movement for at in run]
    first = facts[run[0] - 1] if run[0] else None
    alone = not led or first is None or first.kind in ("sep", "claim", "word", "plan")
    return run if alone and len(set(named)) == len(named) and "!" not in named else []


def _colon(facts: Sequence[Fact], at: int) -> bool:
    return at + 1 < len(facts) and facts[at + 1].note.get("mark") == ":"


def _elsewhere(facts: Sequence[Fact], run: list[int], end: int) -> bool:
    """Whether one of the movements is named again: what is told there is its work."""
    named = {facts[at].value.movement for at in run}
    return any(
        fact.kind == "move" and fact.value.movement in named for at, fact in enumerate(facts) if not run[0] <= at < end
    )


def _of_each(fact: Fact) -> bool:
    """ "je", "each", "both", "mit je": of each movement; "each side" is not."""
    plain = fact.kind == "side" and fact.value == "each" and bool(fact.note.get("plain"))
    plain = plain or (fact.kind == "word" and fact.value in little("each_with"))
    return plain or "all_lifts" in fact.note.get("names", ())


def _rounds_of(tail: Sequence[Fact], many: int, before: Fact | None) -> list[list[Fact]] | None:
    """ "3 rounds, 10 and 12": of each movement so many sets as there were rounds."""
    rounds = [fact for fact in (before, *tail) if fact is not None and fact.kind == "rounds"]
    numbers = [fact for fact in tail if fact.kind == "bare"]
    silent = all(fact.kind in ("word", "sep", "scheme", "bare", "rounds", "claim") for fact in tail)
    if len(rounds) != 1 or len(numbers) != many or not silent or not 1 < rounds[0].value <= MOST_ROUNDS:
        return None
    if any(number.value != int(number.value) or not 0 < number.value <= MOST_REPS for number in numbers):
        return None
    made = [[Entry(int(number.value)) for _ in range(int(rounds[0].value))] for number in numbers]
    return [[Fact("rows", one.start, one.end, rows, {"plain": True})] for one, rows in zip(numbers, made, strict=True)]


def _each_round(tail: Sequence[Fact], many: int, before: Fact | None) -> list[list[Fact]] | None:
    """ "5 each, 3 rounds", "5 each": of each movement a set of so many in every round, or one."""
    rounds = [fact for fact in (before, *tail) if fact is not None and fact.kind == "rounds"]
    numbers = [fact for fact in tail if fact.kind == "bare"]
    silent = all(fact.kind in ("word", "sep", "scheme", "bare", "rounds", "claim") or _of_each(fact) for fact in tail)
    if len(numbers) != 1 or len(rounds) > 1 or not silent or sum(map(_of_each, tail)) != 1:
        return None
    number, times = numbers[0], int(rounds[0].value) if rounds else 1
    if number.value != int(number.value) or not 0 < number.value <= MOST_REPS or not 0 < times <= MOST_ROUNDS:
        return None
    entries = [Entry(int(number.value)) for _ in range(times)]
    note = {"plain": True} if times > 1 else {"reps": True}
    return [[Fact("rows", number.start, number.end, list(entries), dict(note))] for _ in range(many)]


def _one_more(fact: Fact) -> bool:
    """ "An extra set"."""
    return bool(fact.value == "extra_set")


def _so_many_each(tail: Sequence[Fact]) -> int | None:
    """Where the clause ends that counts the sets of each: "one set less each, the rest as planned"; else None."""
    end = clause_end(tail)
    clause = [fact for fact in tail[:end] if fact.kind not in ("word", "plan") or _one_more(fact)]
    counted = len(clause) == 2 and any(fact.kind == "count" or _one_more(fact) for fact in clause)
    counted = counted and any(map(_of_each, clause))
    return end if counted and not any(fact.kind in WORK for fact in tail[end:]) else None


def _shares(tail: list[Fact], many: int, before: Fact | None) -> list[list[Fact]] | None:
    """What each movement did; None where the words do not say."""
    in_rounds = _rounds_of(tail, many, before) or _each_round(tail, many, before)
    if in_rounds is not None:
        return in_rounds
    so_many = _so_many_each(tail)
    if so_many is not None:
        mine = tail[:so_many]
        own = [fact for fact in mine if not _of_each(fact)]
        return [*([replace(fact) for fact in own] for _ in range(many - 1)), [*own, *tail[so_many:]]]
    told = [at for at, fact in enumerate(tail) if fact.kind not in ("word", "sep")]
    marks = [at for at in (told[0], told[-1]) if _of_each(tail[at])]
    rows = [at for at, fact in enumerate(tail) if fact.kind == "rows" and not fact.note.get("one")]
    bare = any(fact.kind in ("bare", "count", "rounds") for fact in tail)
    if marks and len(rows) == 1 and not bare:
        own = [fact for at, fact in enumerate(tail) if at not in marks]
        return [[replace(fact) for fact in own] for _ in range(many)]
    if len(rows) != many or bare or any(fact.kind in ("load", "at", "loads") for fact in tail[: rows[0]]):
        return None
    parts = [tail[first:after] for first, after in zip(rows, [*rows[1:], len(tail)], strict=True)]
    return [[fact for fact in part if not is_comma(fact)] for part in parts]
