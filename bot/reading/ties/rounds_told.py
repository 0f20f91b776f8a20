"""Work whose number of rounds is told apart from it: "two sets, 3 left 4 right", "chins 8 and dips 12, 4 rounds"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.rules import Rule

MOST_SETS = 12
MOST_BY_SIDE = 8
LEAST_PAUSE = 30.0  # seconds from one set to the next
ALL_OF = 7  # facts: two numbers, their sides and what parts them
MOST_REPS = 30  # of one exercise of a circuit; more may be seconds or kilograms


def _times_a_lift(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "4x Klimmzüge à 5": so many sets, their movement, and the reps of each."""
    out: list[Fact] = []
    for fact in facts:
        out.append(fact)
        four = out[-4:]
        if [one.kind for one in four] == ["repeat", "move", "load", "side"] and _by_side(four):
            rows = [Entry(int(four[2].value)) for _ in range(int(four[0].value))]
            out[-4:] = [four[1], Fact("rows", four[0].start, four[2].end, rows, {"plain": True}), fact]
            continue
        five = out[-5:]
        if [one.kind for one in five] != ["bare", "word", "move", "word", "bare"]:
            continue
        sets, times, move, each, reps = five
        whole = sets.value in range(2, MOST_SETS) and reps.value == int(reps.value) <= MOST_REPS
        if whole and times.value in little("by_sign") and each.value in little("reps_each"):
            rows = [Entry(int(reps.value)) for _ in range(int(sets.value))]
            out[-5:] = [move, Fact("rows", sets.start, reps.end, rows, {"plain": True})]
    return out


def _by_side(four: Sequence[Fact]) -> bool:
    """ "Drei mal Archer mit zwei pro Seite": reps, and no load."""
    times, _, many, side = four
    told = bool(times.note.get("counted")) and side.value == "each" and many.note.get("how") == "at"
    return told and not many.note.get("unit") and many.value == int(many.value) <= MOST_BY_SIDE


def _every_so_often(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Every 2 min x 6: 3 pull-ups": so many rounds; the minutes are no hold."""
    out = list(facts)
    for at in range(1, len(facts) - 1):
        every, rows = facts[at - 1 : at + 1]
        if every.kind != "scheme" or every.value != "every" or rows.kind != "rows" or len(rows.value) < 2:
            continue
        timed = all((one.hold_s or 0) >= LEAST_PAUSE for one in rows.value)
        if timed and any(fact.kind in ("bare", "rows") for fact in facts[at + 1 :]):
            out[at] = Fact("rounds", rows.start, rows.end, len(rows.value))
    return out


def _done_every(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Pull-ups 3 every 2 minutes, 8 rounds": the number before the pace is reps."""
    out = list(facts)
    if not any(fact.kind == "rounds" for fact in facts):
        return out  # how often is not said
    for at in range(1, len(facts) - 1):
        reps, every, pace = facts[at - 1 : at + 2]
        timed = pace.kind == "rows" and len(pace.value) == 1 and (pace.value[0].hold_s or 0) >= LEAST_PAUSE
        whole = reps.kind == "bare" and reps.value == int(reps.value) <= MOST_REPS
        if whole and timed and every.kind == "scheme" and every.value == "every":
            out[at - 1] = replace(reps, note={**reps.note, "before_move": True})
    return out


def _so_many_a_round(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "4 rounds of dips, 6 a round", "je Runde 6": the reps of each."""
    if message.little.isdisjoint(("a_round",)):
        return facts
    for at, fact in enumerate(facts):
        if fact.kind != "bare" or fact.value != int(fact.value) or not 0 < fact.value <= MOST_REPS:
            continue
        led = _each_round(message, fact.start - 2, fact.start)
        within = fact.end < len(message.tokens) and message.tokens[fact.end].text in little("in_a_set")
        behind = any(_each_round(message, fact.end + n, fact.end + n + 2) for n in {0, int(within)})
        joined = at > 1 and facts[at - 1].kind == "sep" and facts[at - 2].kind == "bare"  # "5 and 10 a round"
        if joined or not (led or behind):
            continue
        reps = Fact("rows", fact.start, fact.end, [Entry(int(fact.value))], {"one": True, "reps": True})
        kept = [one for one in facts if not (one.kind == "side" and led and one.end == fact.start - 1)]
        return [reps if one is fact else one for one in kept]
    return facts


def _each_round(message: Message, start: int, end: int) -> bool:
    """Whether "a round", "each round" are these tokens."""
    if start < 0 or end > len(message.tokens):
        return False
    per, rounds = message.tokens[start:end]
    return per.text in little("per_step") and rounds.text in little("a_round")


def _pairs(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Two sets of archers, 3 left 4 right": the count is of both sides."""
    for at, count in enumerate(facts):
        if count.kind != "count" or count.value < 2:
            continue
        each = facts[at + 1 : at + 2]
        if each and each[0].kind == "side" and each[0].value == "each":  # "4 sets each, 5 left 4 right"
            return _pairs(_message, [*facts[: at + 1], *facts[at + 2 :]]) if _sides_told(facts[at + 2 :]) else facts
        moves = [n for n, fact in enumerate(facts) if n > at and fact.kind == "move"]
        end = moves[0] if moves and any(one.kind in ("bare", "rows") for one in facts[at : moves[0]]) else len(facts)
        after = [(n, facts[n]) for n in range(at + 1, end) if facts[n].kind in ("bare", "side", "rows", "sep")]
        work = [(n, fact) for n, fact in after if fact.kind != "sep"][:5]
        another = next((n for n, fact in enumerate(facts) if n > at and fact.kind == "count"), None)
        if another is not None and len(work) > 3 and work[3][0] < another:
            work = work[:4]  # "3 sets of archers (3 left, 3 right), 3 sets of dips"
        kinds = [fact.kind for _, fact in work]
        sides = [fact.value for _, fact in work[:4] if fact.kind == "side"]
        alone = len(work) == 4 and kinds in (["bare", "side"] * 2, ["side", "bare"] * 2)
        if not alone or sorted(sides) != ["left", "right"]:
            continue
        end = work[-1][0]
        if any(fact.kind in ("scope", "fail", "plan") for fact in facts[at : end + 1]):
            continue
        rounds = Fact("rounds", count.start, count.end, count.value, {"pair": True})
        return [*facts[:at], *facts[at + 1 : end + 1], rounds, *facts[end + 1 :]]
    return facts


def _rounds_in_all(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5 right, 4 left, all three rounds": so many; of "every round" nobody knows how many but the plan."""
    for at, fact in enumerate(facts):
        if fact.kind != "scope" or fact.value != "all" or not _of_rounds(message, fact):
            continue
        before = [one for one in facts[max(0, at - ALL_OF) : at] if one.kind != "sep"][-4:]
        kinds = [one.kind for one in before]
        sides = sorted(one.value for one in before if one.kind == "side")
        if kinds not in (["bare", "side"] * 2, ["side", "bare"] * 2) or sides != ["left", "right"]:
            continue
        if any(one.kind in ("rounds", "count", "rows") for one in facts):
            return facts
        many = message.tokens[fact.end - 1].value
        if many is None:
            asked = Fact("ask", fact.start, fact.end, "sets")
            return facts if message.context.today else [*facts[:at], asked, *facts[at + 1 :]]
        return [*facts[:at], Fact("rounds", fact.start, fact.end, int(many), {"pair": True}), *facts[at + 1 :]]
    return facts


def _of_rounds(message: Message, fact: Fact) -> bool:
    """Whether "all three" is said of rounds or sets."""
    grammar = message.beginning("grammar")
    return any(
        hit.table == "sets" for at in range(fact.start, fact.end + 1) for found in grammar[at : at + 1] for hit in found
    )


def _sides_told(facts: Sequence[Fact]) -> bool:
    told = [fact for fact in facts if fact.kind in ("bare", "side")]
    return sorted(str(fact.value) for fact in told[:4] if fact.kind == "side") == ["left", "right"]


def _circuit_repeated(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5 chin-ups, 5 dips, 5 push-ups, repeat six times": rounds of all of it."""
    for at, fact in enumerate(facts):
        if fact.kind != "repeat" or sum(one.kind == "move" for one in facts[:at]) < 2:
            continue
        led = message.tokens[fact.start - 1].text if fact.start else ""
        if led in little("repeat_all") and not any(one.kind in ("rows", "count", "rounds") for one in facts):
            return [*facts[:at], Fact("rounds", fact.start, fact.end, int(fact.value)), *facts[at + 1 :]]
    return facts


def _of_circuit(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Chins 8 and dips 12, four rounds": a number beside a movement of a circuit is its reps."""
    moves = [at for at, fact in enumerate(facts) if fact.kind == "move"]
    if len(moves) < 2 or not any(fact.kind == "rounds" for fact in facts):
        return facts
    if any(fact.kind in ("rows", "count", "loads") for fact in facts):
        return facts
    out = list(facts)
    for at in moves:
        after = facts[at + 1] if at + 1 < len(facts) else None
        if after is not None and after.kind == "bare" and after.value == int(after.value) <= MOST_REPS:
            out[at + 1] = replace(after, note={**after.note, "before_move": True})
    return out


def _one_a_minute(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "10 sets of 1 with 30, one every minute": the sets told once more, by their pace."""
    out = list(facts)
    for at in range(1, len(facts)):
        pace, one = facts[at - 1], facts[at]
        if pace.kind != "scheme" or pace.value != "emom" or one.kind != "rows" or not one.note.get("word"):
            continue
        told = [fact for fact in facts[: at - 1] if fact.kind == "rows" and len(fact.value) > 1]
        if told and one.value[0].reps == told[-1].value[0].reps:
            out[at] = Fact("word", one.start, one.end, None, {"noise": True})
    return out


RULES: tuple[tuple[Rule, str], ...] = (
    (_times_a_lift, "move repeat|bare side|word"),
    (_every_so_often, "scheme rows"),
    (_done_every, "bare scheme rows rounds"),
    (_so_many_a_round, "rounds bare"),
    (_pairs, "count side bare"),
    (_rounds_in_all, "scope side bare"),
    (_circuit_repeated, "'repeat_all repeat move"),
    (_of_circuit, "rounds move bare"),
    (_one_a_minute, "scheme rows"),
)
