"""Work joined on with a word that elsewhere adds a load, or told against what was meant: "plus two dead hangs"."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

from bot.reading.bounds import clause_end, clause_start, ends_sentence
from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import plan_names
from bot.reading.ties.values import whole_number

WORK = frozenset({"rows", "bare", "count", "rounds"})
MOST_SETS = 12
REACH = 8  # facts from a try to what it came to


def joined_on(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """The facts, with "plus" as an "and" where work with a name of its own follows."""
    out: list[Fact] = []
    plus = little("plus")
    worked = False
    paired = any(one.kind == "rounds" or (one.kind == "scheme" and one.value == "superset") for one in facts)
    for at, fact in enumerate(facts):
        if not worked:
            worked = fact.kind in WORK
            out.append(fact)
            continue
        spelled = message.tokens[fact.start].text in plus if fact.start < len(message.tokens) else False
        named = any(one.kind == "move" for one in facts[at + 1 : at + 3])
        if spelled and named and "by" in plan_names(fact):
            out.append(Fact("sep", fact.start, fact.end, 1, {"mark": "and"}))
            continue
        many = whole_number(message, fact) if fact.kind == "load" and not fact.note.get("unit") else None
        counts = many is not None and many <= MOST_SETS
        if spelled and counts and facts[at + 1 : at + 2] and facts[at + 1].kind == "move":
            out += _and_so_many(fact, many or 0)
            continue
        if spelled and many and not counts and (_total_behind(facts, at + 1, many) or _so_many_of(facts, at)):
            out += _and_so_many(fact, many)  # "100 squats, 5x20, plus 50 dips, 5x10", "chins 5x5 plus 20 dips"
            continue
        beside = counts and fact.note.get("how") == "at" and facts[at + 1 : at + 2] and facts[at + 1].kind == "move"
        if paired and beside and facts[at + 1].start == fact.end:
            # of pairs the second may be led by "with": "superset x3: 5 chin-ups +10 with 10 push-ups"
            out += _and_so_many(fact, many or 0)
            continue
        out.append(fact)
    return out


def _so_many_of(facts: Sequence[Fact], at: int) -> bool:
    """Whether the movement right behind a number has no other sets in its clause."""
    if at + 1 >= len(facts) or facts[at + 1].kind != "move" or facts[at + 1].start != facts[at].end:
        return False
    end = clause_end(facts, at + 2)
    return not any(one.kind in WORK or one.kind == "load" for one in facts[at + 2 : end])


def _total_behind(facts: Sequence[Fact], at: int, many: int) -> bool:
    """Whether a movement and sets that come to `many` reps stand here."""
    after = [one for one in facts[at : at + 4] if one.kind not in ("sep", "word")]
    if [one.kind for one in after[:2]] != ["move", "rows"]:
        return False
    return sum(entry.reps or 0 for entry in after[1].value) == many


def _and_so_many(fact: Fact, many: int) -> list[Fact]:
    """The "and", and the number behind it."""
    number = Fact("bare", fact.start + 1, fact.end, float(many), {"kg": float(many)})
    return [Fact("sep", fact.start, fact.start + 1, 1, {"mark": "and"}), number]


def instead_of(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5 5 4 instead of sixes" of no known plan: what was meant is not done."""
    if message.context.today:
        return facts
    out: list[Fact] = []
    told = False
    for fact in facts:
        single = fact.kind == "bare" or (fact.kind == "rows" and len(fact.value) == 1)
        if told and single and "instead" in plan_names(out[-1]):
            fact = Fact("word", fact.start, fact.end, None, {"noise": True})
        out.append(fact)
        told = told or fact.kind == "rows"
    return out


def in_place_of(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Chin-ups instead of pull-ups 4x5" of no known plan: the movement behind was meant, and is not done."""
    if message.context.today:
        return facts
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        if fact.kind == "move" and _led_by_instead(out) and (_named(reversed(out)) or _named(facts[at + 1 :])):
            fact = Fact("word", fact.start, fact.end, None, {"noise": True})
        out.append(fact)
    return out


def _led_by_instead(before: Sequence[Fact]) -> bool:
    """ "Instead of the regular …"."""
    last = next((f for f in reversed(before) if f.kind != "word" and not plan_names(f) & {"the"}), None)
    return last is not None and "instead" in plan_names(last) and "not_this" not in plan_names(last)


def _named(facts: Iterable[Fact]) -> bool:
    """Whether a movement is named before the sentence ends."""
    for fact in facts:
        if fact.kind == "move":
            return True
        if ends_sentence(fact):
            break
    return False


def went_for(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "Went for 3 pull-ups at 30 but only got 2", "3 mit 30 versucht, 2 geschafft": one set, and what it missed."""
    out = list(facts)
    for at in range(len(facts) - 1, -1, -1):
        if not _of_a_try(message, out[at]):
            continue
        aim = at + 1 if at + 1 < len(out) and _whole_set(out[at + 1]) else _begins_clause(out, at)
        if aim is None:
            continue
        told = next((n for n in range(max(aim, at) + 1, min(at + REACH, len(out))) if _whole_set(out[n])), None)
        if (
            told is None
            or not _got(out[max(aim, at) + 1 : told + 2])
            or not _whole_set(out[told]) < _whole_set(out[aim])
        ):
            continue
        reps = _whole_set(out[told])
        done = Fact("rows", out[aim].start, out[aim].end, [Entry(reps)], {"one": True, "reps": True})
        said = [one for one in out[aim + 1 : told] if one.kind in ("move", "load", "side", "scope", "word")]
        after = told + 2 if _got(out[told + 1 : told + 2]) else told + 1
        missed: list[Fact] = []
        if message.context.today and not any(one.kind == "load" for one in said):
            # the planned set that is meant may be named before or behind
            done = replace(done, kind="bare", value=float(reps), note={"kg": float(reps)})
        else:
            missed = [Fact("fail", out[told].start, out[told].end, reps + 1, {"rep": True})]
            after = _told_again(out, after, reps + 1)
        out[min(at, aim) :] = [done, *said, *missed, *out[after:]]
    return out


def _of_a_try(message: Message, fact: Fact) -> bool:
    """Whether a fact tells of a try, and not of a wish: "iba a por 3" is read with those."""
    if fact.kind == "scheme":
        return bool(fact.value == "attempt")
    if message.span(fact.start, fact.end).lower() not in little("went_for"):
        return False
    return all(hit.table != "unreal" for hit in message.beginning("grammar")[fact.start])


def _begins_clause(facts: Sequence[Fact], at: int) -> int | None:
    """Where the one set stands that the words of a try at `at` close: "3 Klimmzüge mit 40 versucht"."""
    low = clause_start(facts, at)
    sets = [n for n in range(low, at) if _whole_set(facts[n])]
    closes = at + 1 < len(facts) and facts[at + 1].kind == "sep"
    own = all(fact.kind in ("move", "load", "word") for n, fact in enumerate(facts[low:at], low) if n not in sets)
    return sets[0] if closes and own and len(sets) == 1 else None


def _whole_set(fact: Fact) -> int:
    """The reps of one set that a fact tells; 0: none."""
    if fact.kind == "rows":
        return (fact.value[0].reps or 0) if len(fact.value) == 1 else 0
    return int(fact.value) if fact.kind == "bare" and fact.value == int(fact.value) else 0


def _told_again(facts: Sequence[Fact], at: int, nth: int) -> int:
    """Where the facts go on behind "… and the third died halfway", the miss that is told already; `at`: nothing."""
    end = clause_end(facts, at + 1)
    clause = facts[at + 1 : end] if facts[at : at + 1] and facts[at].kind == "sep" else []
    named = any(fact.kind in ("scope", "fail") and fact.value == nth for fact in clause)
    missed = any(fact.kind == "fail" and not fact.note.get("weak") for fact in clause)
    more = any(fact.kind in WORK or fact.kind in ("load", "move") for fact in clause)
    return end if named and missed and not more else at


def _got(facts: Sequence[Fact]) -> bool:
    """ "Got", "only", "geschafft"."""
    return any((fact.kind == "scheme" and fact.value == "got") or plan_names(fact) & {"only"} for fact in facts)
