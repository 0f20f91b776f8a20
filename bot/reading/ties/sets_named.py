"""Sets that are named beside what is said of them: "first three at 25, next three at 27.5", "last two sets without"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from bot.reading.facts import Entry, Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import planned
from bot.reading.rules import Rule

LEAST_COUNTED = 2  # counts of sets with a load each
MOST_REPS = 30
VALUES = frozenset({"effort", "efforts", "at", "load", "bare", "rows", "fail"})


def _set_of(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "10, 9, 7. En la de 7 no quedó nada": the set of so many, told before."""
    told = [entry.reps for fact in facts if fact.kind == "rows" for entry in fact.value]
    out = list(facts)
    for at in range(1, len(facts) - 1):
        of, number, after = facts[at - 1 : at + 2]
        named = of.kind == "word" and message.tokens[of.end - 1].text in little("of") and of.start > 0
        article = named and message.tokens[of.end - 2].text in little("the_set")
        if article and number.kind == "bare" and number.value in told and after.kind in ("effort", "fail", "scheme"):
            out[at] = Fact("scope", number.start, number.end, ("of_reps", (int(number.value), 1)), {"text": ""})
    return out


def _named_again(facts: Sequence[Fact], at: int) -> Fact | None:
    before, word = facts[at - 1 : at + 1]
    if before.kind != "sep" or len(word.value) != 1:
        return None
    told = [entry.reps for fact in facts[: at - 1] if fact.kind == "rows" for entry in fact.value]
    after = facts[at + 1] if at + 1 < len(facts) else None
    if told.count(word.value[0].reps) != 1 or after is None or after.kind in ("load", "at", "bare", "rows"):
        return None
    return Fact("scope", word.start, word.end, ("of_reps", (word.value[0].reps, 1)), {"text": ""})


def _some_missed(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "3 singles at 42.5, two of them clean and one missed": of those told, the last."""
    good = next((at for at, fact in enumerate(facts) if fact.kind == "count" and fact.note.get("those")), None)
    rows = next((fact for fact in reversed(facts[: good or 0]) if fact.kind == "rows"), None)
    if good is None or rows is None:
        return facts
    for at in range(good + 1, len(facts) - 1):
        many, fail = facts[at : at + 2]
        if many.kind != "bare" or fail.kind != "fail" or fail.value is not None:
            continue
        if facts[good].value + many.value == len(rows.value) and all(entry.reps == 1 for entry in rows.value):
            last = Fact("scope", many.start, many.end, ("last", int(many.value)), {"text": ""})
            return [*facts[:good], *facts[good + 1 : at], last, *facts[at + 1 :]]
    return facts


def _missed_short(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "40 42.5(f)": a letter in brackets for a miss; behind a list that falls, "3, 3, 3, 2(f)", of its last set."""
    out = list(facts)
    for at in range(1, len(out) - 2):
        if out[at].note.get("mark") != "(":
            continue
        _, told, closes = out[at : at + 3]
        short = told.kind == "word" and told.value in little("missed_short")
        if closes.note.get("mark") != ")" or not (short or _missed(told)):
            continue
        of_set = {"of_set": True} if _falls(out[at - 1]) else {}
        if short or of_set:
            out[at] = Fact("fail", told.start, told.end, None, of_set)
            out[at + 1 : at + 3] = [Fact("word", one.start, one.end, None, {"noise": True}) for one in (told, closes)]
    return out


def _missed(fact: Fact) -> bool:
    return fact.kind == "fail" and fact.value is None and not fact.note.get("weak")


def _falls(fact: Fact) -> bool:
    """Whether a fact is a list of reps whose last set has fewer than the one before."""
    reps = [entry.reps or 0 for entry in fact.value] if fact.kind == "rows" and fact.note.get("list") else []
    return len(reps) > 1 and 0 < reps[-1] < reps[-2] <= MOST_REPS


def _missed_number(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "Ten singles, missed number 9", "failed set 4": the set that was missed is named behind the word for it."""
    out = list(facts)
    for at in range(len(out) - 1):
        fail, scope = out[at], out[at + 1]
        named = scope.kind == "scope" and isinstance(scope.value, int) and scope.note.get("numbered")
        closes = at + 2 == len(out) or out[at + 2].kind == "sep"
        if fail.kind == "fail" and fail.value is None and not fail.note.get("weak") and named and closes:
            out[at], out[at + 1] = replace(scope, start=fail.start, end=fail.start), replace(fail, end=scope.end)
    return out


def _without(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "8/7/6/5 with 10 kg, last two sets without": no load, where one was told."""
    out = list(facts)
    for at in range(1, len(out)):
        scope, word = out[at - 1 : at + 1]
        closes = at + 1 == len(out) or out[at + 1].kind == "sep"
        bare = word.end == word.start + 1 and message.tokens[word.start].text in little("without")
        named = scope.kind == "scope" and word.kind in ("plan", "word") and bare and closes
        if named and any(fact.kind == "load" and fact.value for fact in out[:at]):
            out[at] = Fact("load", word.start, word.end, 0.0, {"how": "at"})
    return out


def _next_ones(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "6x2, first three at 25, next three at 27.5": the sets behind those that were named."""
    told = max((len(fact.value) for fact in facts if fact.kind == "rows"), default=0)
    out = list(facts)
    done = 0
    at = 0
    while at < len(out):
        fact = out[at]
        if fact.kind == "scope" and isinstance(fact.value, tuple) and fact.value[0] == "first":
            done = int(fact.value[1])
        elif fact.kind == "scope" and fact.value in ("first", 1):
            done = 1
        elif done and fact.kind == "count" and out[at - 1].kind == "sep" and done + fact.value <= told:
            which = tuple(range(done + 1, done + int(fact.value) + 1))
            out[at] = Fact("scope", fact.start, fact.end, ("these", which), {"text": ""})
            done += int(fact.value)
        at += 1
    return out


def _ones_before(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5x3, last two rpe 9, the two before those 8": the sets in front of those that were named."""
    told = _sets_told(message, facts)
    out = list(facts)
    named = 0  # from the end
    for at, fact in enumerate(facts[:-1]):
        if fact.kind == "scope" and (
            fact.value == "last" or (isinstance(fact.value, tuple) and fact.value[0] == "last")
        ):
            named = 1 if fact.value == "last" else int(fact.value[1])
            continue
        number = fact.kind in ("bare", "count") and fact.value == int(fact.value) and 0 < fact.value < told
        word = _before_those(message, facts[at + 1 : at + 4]) if named and number else None
        if word is None:
            continue
        high = told - named
        low = high - int(fact.value) + 1
        if low >= 1:
            out[at] = Fact("scope", fact.start, word.end, ("these", tuple(range(low, high + 1))), {"text": ""})
            named = told - low + 1
    return out


def _sets_told(message: Message, facts: Sequence[Fact]) -> int:
    """How many sets are told at once before any is named; where none are, those of the plan's main lift."""
    named = next((at for at, fact in enumerate(facts) if fact.kind == "scope"), len(facts))
    ahead = facts[:named] if message.context.today else facts
    told = max((len(fact.value) for fact in ahead if fact.kind == "rows"), default=0)
    if told >= LEAST_COUNTED or not message.context.today:
        return told
    rows = planned(message)
    main = main_rows(rows)
    return 0 if any(rows[at].side for at in main) else len(main)


def _before_those(message: Message, facts: Sequence[Fact]) -> Fact | None:
    """The word of "before", "before that", "de antes" that these facts begin with."""
    at = int(len(facts) > 1 and facts[0].kind == "word" and message.tokens[facts[0].start].text in little("of"))
    word = facts[at] if at < len(facts) else None
    if word is None or word.kind != "word" or message.tokens[word.start].text not in little("sets_before"):
        return None
    after = facts[at + 1] if at + 1 < len(facts) else None
    talk = (
        after is not None and after.kind == "word" and message.tokens[after.start].text not in little("those", "that")
    )
    return None if talk else word


def _other_so_many(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "4x8, first 2 rpe 7, other 2 rpe 9", "die anderen 2": all that were not named, by their number."""
    told = _sets_told(message, facts)
    named = 0
    for at, fact in enumerate(facts[:-1]):
        if fact.kind == "scope" and fact.value in ("first", "last", 1):
            named = 1
        elif fact.kind == "scope" and isinstance(fact.value, tuple) and fact.value[0] in ("first", "last"):
            named = int(fact.value[1])
        other = (fact.kind == "scope" and fact.value == "rest") or (fact.kind == "side" and fact.value == "other")
        if not other or not named:
            continue
        follow = facts[at + 1]
        if follow.kind != "bare" and not _spaced(follow):
            continue
        numbers = [follow.value] if follow.kind == "bare" else [entry.reps for entry in follow.value]
        if named + (numbers[0] or 0) != told:
            continue
        rest = Fact("scope", fact.start, follow.start + 1, "rest", {"text": ""})
        if follow.kind == "bare":
            valued = at + 2 < len(facts) and facts[at + 2].kind in VALUES  # "the rest 4" are reps
            if valued:
                return [*facts[:at], rest, *facts[at + 2 :]]
            continue
        value = float(numbers[1] or 0)
        note = {"spelled": False, "comma": False, "kg": value}
        return [*facts[:at], rest, Fact("bare", follow.end - 1, follow.end, value, note), *facts[at + 2 :]]
    return facts


def _spaced(rows: Fact) -> bool:
    """Two numbers with nothing between: "2 9"."""
    return rows.kind == "rows" and rows.note.get("mark") == " " and len(rows.value) == 2 and rows.end == rows.start + 2


def _loads_of_counts(_message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "2 sets 10kg, 2 sets 15kg, 1 set 20kg, all of 5": the load of each set, and the reps of all of them."""
    counts = [
        at
        for at in range(len(facts) - 1)
        if facts[at].kind == "count" and facts[at + 1].kind == "load" and facts[at + 1].value is not None
    ]
    if len(counts) < LEAST_COUNTED or counts[-1] + 2 >= len(facts):
        return facts
    if any(fact.kind != "sep" for a, b in pairwise(counts) for fact in facts[a + 2 : b]):
        return facts
    rest = facts[counts[-1] + 2 :]
    work = [fact for fact in rest if fact.kind in ("bare", "rows", "count", "load", "loads")]
    if len(work) != 1 or any(fact.kind in ("bare", "rows") for fact in facts[: counts[0]]):
        return facts
    one = work[0]
    reps = one.value if one.kind == "bare" else one.value[0].reps if one.kind == "rows" and len(one.value) == 1 else 0
    if not reps or reps != int(reps) or reps > MOST_REPS:
        return facts
    kgs = [float(facts[at + 1].value) for at in counts for _ in range(int(facts[at].value))]
    loads = Fact("loads", facts[counts[0]].start, facts[counts[-1] + 1].end, kgs)
    rows = Fact("rows", one.start, one.end, [Entry(int(reps))], {"one": True, "reps": True})
    return [*facts[: counts[0]], loads, *(rows if fact is one else fact for fact in rest)]


RULES: tuple[tuple[Rule, str], ...] = (
    (_set_of, "'of 'the_set rows word bare effort|fail|scheme sep|scope|count"),
    (_missed_short, "sep word|fail"),
    (_missed_number, "fail scope"),
    (_some_missed, "count bare fail rows"),
    (_without, "'without scope plan|word load"),
    (_next_ones, "scope count sep rows"),
    (_ones_before, "scope bare|count word 'sets_before"),
    (_other_so_many, "scope bare|rows"),
    (_loads_of_counts, "count load"),
)
