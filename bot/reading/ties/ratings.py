"""Numbers that rate sets: "the last one a 9", "first set 6 last set 8 rpe", "5 (7), 5 (8)", and what is no effort."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import SENTENCE, clause_start, is_comma
from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message

LEAST_IN_TURN = 2
LEAST_JUDGED = 6
REACH = 5  # so many facts before its number a set that is rated is named
LIST_OF_EFFORTS = 3
LEAST_EFFORT = 4  # nobody rates a set of work lower; what is called less is a number of reps


def in_brackets(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5 (7), 5 (7.5), 5 (8.5)": efforts in brackets, where the message says that they are; else asked."""
    rated = [
        at
        for at, (one, mark, value, end) in enumerate(zip(facts, facts[1:], facts[2:], facts[3:], strict=False))
        if one.kind in ("bare", "rows", "load")
        and (mark.note.get("mark"), end.note.get("mark")) == ("(", ")")
        and value.kind == "bare"
        and LEAST_EFFORT < value.value <= 10
    ]
    named = sum(
        one.kind == "effort" and (mark.note.get("mark"), end.note.get("mark")) == ("(", ")")
        for mark, one, end in zip(facts, facts[1:], facts[2:], strict=False)
    )  # "8 (rpe 7), 8 (8)"
    said = named or any(token.text == "rpe" for token in message.tokens)
    if not rated or len(rated) + named < LEAST_IN_TURN:
        return facts
    out = list(facts)
    for at in rated:
        value = out[at + 2]
        asked = replace(value, kind="ask", value="load_kg", note={}) if at == rated[0] else _noise(value)
        out[at + 2] = replace(value, kind="effort") if said else asked
    return out


def _noise(fact: Fact) -> Fact:
    return Fact("word", fact.start, fact.end, None, {"noise": True})


def named_and_rated(_: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
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


def rated(_: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "first set 6 last set 8 rpe": the word names every number of the row, each beside the set it rates."""
    out = list(facts)
    for at, fact in enumerate(out):
        if fact.kind != "effort":
            continue
        for place in range(at - 1, 0, -1):
            one = out[place]
            if is_comma(one) or one.kind == "scope":
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
            rest = [f for f in out[at + 1 : at + 4] if not is_comma(f)]
            if after.kind in ("sep", "scope") and len(rest) > 1 and rest[0].kind == "scope" and rest[1].kind == "bare":
                place = next(i for i, f in enumerate(out) if f is rest[1])
                if 5 <= rest[1].value <= 10 and (place + 1 == len(out) or out[place + 1].kind == "sep"):
                    out[place] = replace(rest[1], kind="effort")
    return out


def judged(message: Message, facts: Sequence[Fact]) -> list[Fact]:
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


def last_hedged(message: Message, facts: Sequence[Fact]) -> Sequence[Fact]:
    """ "5 5 5 4, last one 9ish", "8, 8, 7. Last one was a grinder, 9 maybe": no reps, as those are told."""
    for at, fact in enumerate(facts):
        if fact.kind != "bare" or not LEAST_JUDGED <= fact.value <= 10 or fact.note.get("spelled"):
            continue
        led = facts[max(0, at - REACH) : at]
        place = next((n for n in range(len(led) - 1, -1, -1) if led[n].kind == "scope"), None)
        if place is None or led[place].value not in ("last", ("last", 1)) or led[place].note.get("rep"):
            continue
        between = led[place + 1 :]
        if any(one.kind not in ("word", "sep", "scheme") or one.value == SENTENCE for one in between):
            continue
        scoped_at = at - len(led) + place
        told = (facts[n] for n in range(scoped_at - 1, -1, -1) if facts[n].kind in ("rows", "bare"))
        before = next(told, None)
        if before is None or before.kind != "rows" or len(before.value) < LEAST_IN_TURN:
            continue
        words = {token.text for token in message.tokens[led[place].end : fact.start]}
        behind = message.tokens[fact.end].text if fact.end < len(message.tokens) else ""
        hedges = little("score_ending", "perhaps", "hedge", "reckoned")
        about = behind in hedges or not words.isdisjoint(hedges)
        reps = before.value[-1].reps or 0
        behind_dash = message.tokens[fact.end + 1].text if behind == "-" and fact.end + 1 < len(message.tokens) else ""
        near = {token.text for token in message.tokens[max(0, fact.start - 2) : fact.start]}  # "felt like 9"
        felt = bool(near & little("felt")) or behind_dash in little("score_ending")
        listed = bool(before.note.get("values")) and fact.value != reps
        over = fact.value > reps + 1 and not words.isdisjoint(little("judging"))
        if reps and ((listed and about) or over or (felt and fact.value != reps)):
            scope = replace(led[place], value="last")
            return [*facts[: at - len(between) - 1], scope, *between, replace(fact, kind="effort"), *facts[at + 1 :]]
    return facts


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
    if scope is None and closes and (_closes_sets(led) or _of_movement(before[:at])):
        return at  # "5x3 with 20, an 8", "pull-ups were a 7 today"
    if scope is None or any(
        one.kind not in ("word", "sep", "scheme", "move") or one.value == SENTENCE for one in led[scope + 1 :]
    ):
        return None
    return at


def _closes_sets(led: Sequence[Fact]) -> bool:
    """Whether whole sets, perhaps with their load, and a comma stand right before."""
    if len(led) < 2 or led[-1].kind != "sep" or led[-1].note.get("mark") != ",":
        return False
    before = [fact for fact in led[:-1] if fact.kind not in ("load", "move")]
    return bool(before) and before[-1].kind == "rows" and len(before[-1].value) > 1


def _of_movement(led: Sequence[Fact]) -> bool:
    """Whether a movement and "was" are all that the sentence has so far: its number rates it."""
    sentence = clause_start(led, len(led))
    own = [fact for fact in led[sentence:] if fact.kind not in ("claim", "plan")]
    kinds = [fact.kind for fact in own if fact.kind != "word"]
    return kinds in (["move"], ["move", "scheme"]) and own[0].kind == "move" and own[-1] is not own[0]


def _article(message: Message, fact: Fact) -> bool:
    """Whether a fact is "a"; "eine" is a number too, "ne" also takes words back."""
    if fact.kind == "bare":
        return bool(fact.note.get("spelled")) and fact.value == 1
    if fact.kind not in ("word", "mend") or fact.end != fact.start + 1:
        return False
    token = message.tokens[fact.start]
    return token.text in little("a") or any(hit.table == "article" for hit in message.beginning("grammar")[fact.start])


def listed_efforts(_: Message, facts: Sequence[Fact]) -> list[Fact]:
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
