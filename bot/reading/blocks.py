"""Which facts belong to which movement: the row of facts cut into blocks, one movement each."""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.bounds import SENTENCE, clause_end, ends_sentence, is_strong, is_then
from bot.reading.facts import Fact
from bot.reading.message import Message

WORK = frozenset({"rows", "bare", "loads", "count", "rounds"})
MEASURES = frozenset({"left", "bare"})  # how far, how long
LEAST_OF_A_TITLE = 2  # marks: one before it, and its colon
LOADED = frozenset({"load", "at", "assist"})


def drop_list_marks(message: Message, facts: list[Fact]) -> list[Fact]:
    """Take out "1)", "2.", "A1" and "-" at the beginning of a line: they number the lines, not the sets."""
    kept: list[Fact] = []
    fresh = True
    open_brackets = 0
    for i, fact in enumerate(facts):
        after = facts[i + 1] if i + 1 < len(facts) else None
        mark = fact.note.get("mark") if fact.kind == "sep" else None
        open_brackets = max(0, open_brackets + (mark == "(") - (mark == ")"))
        closes = after is not None and after.kind == "sep" and after.note.get("mark") == ")"
        bracketed = open_brackets == 1 and fresh and after is not None and _leads_a_lift(facts, i)
        if fact.kind == "bare" and closes and (bracketed or not open_brackets) and fact.value in range(1, 21):
            continue  # "1) pull-ups 5x3 2) dips 3x8", "(1) pull-ups 5x3"
        if (
            (
                fresh
                and fact.kind == "bare"
                and after is not None
                and after.kind == "sep"
                and after.note.get("mark") in (")", ".")
            )
            and fact.value == int(fact.value)
            and fact.value <= 20
            and not fact.note.get("spelled")
        ):
            follow = facts[i + 2] if i + 2 < len(facts) else None
            if follow is not None and follow.kind not in ("sep", "effort"):
                continue
        if (
            fact.kind == "word"
            and fact.end - fact.start == 1
            and len(message.tokens[fact.start].text) == 1
            and fresh
            and after is not None
            and after.kind == "bare"
            and after.start == fact.end
            and fact.value != "a"
        ):
            continue
        if (
            fact.kind == "bare"
            and i
            and facts[i - 1].kind == "word"
            and fact.start
            and message.tokens[fact.start - 1].kind == "word"
        ):
            word = message.tokens[fact.start - 1]
            if (
                len(word.text) == 1
                and word.end == message.tokens[fact.start].start
                and word.text in "abcdef"
                and fact.value <= 9
            ):
                continue
        marks = ("(", ")") if open_brackets < 2 else (")",)
        fresh = (fact.kind == "sep" and (fact.value == SENTENCE or (fact.note.get("mark") in marks and fresh))) or (
            fresh and fact.kind == "word" and not fact.note.get("noise") and len(str(fact.value)) <= 2
        )
        kept.append(fact)
    return kept


def _leads_a_lift(facts: Sequence[Fact], at: int) -> bool:
    """Whether a number in brackets stands right before an exercise."""
    opened = facts[at - 1] if at else None
    follow = facts[at + 2] if at + 2 < len(facts) else None
    return opened is not None and opened.note.get("mark") == "(" and follow is not None and follow.kind == "move"


def split(facts: Sequence[Fact]) -> tuple[list[Fact], list[tuple[Fact, list[Fact]]]]:
    """(facts before everything when no movement takes them, [(movement fact, its facts in order)])."""
    moves = [i for i, fact in enumerate(facts) if fact.kind == "move"]
    if not moves:
        return list(facts), []
    blocks: list[tuple[Fact, list[Fact]]] = []
    head = list(facts[: moves[0]])
    taken = head
    for n, at in enumerate(moves):
        follow = moves[n + 1] if n + 1 < len(moves) else len(facts)
        between = list(facts[at + 1 : follow])
        cut = len(between)
        last = n + 1 == len(moves)
        if not last:
            after = moves[n + 2] if n + 2 < len(moves) else len(facts)
            cut = _cut(taken, between, list(facts[follow + 1 : after]))
            if cut == len(between) and _counts_next(between, facts[follow], list(facts[follow + 1 : after + 1])):
                cut -= 1
            opens = _titled(taken, facts[at], between)
            if opens is None:
                opens = _of_the_sentence(taken, facts[at], between, list(facts[follow + 1 :]))
            if opens is not None:
                cut = opens
            if facts[follow].value.of_sets_before:
                cut = 1 + max((i for i, fact in enumerate(between) if fact.kind == "sep"), default=-1)
            if facts[at].value.movement == "!" and any(
                fact.kind in MEASURES or fact.note.get("noise") for fact in _last_clause(taken)
            ):
                cut = min(
                    cut, next((i for i, fact in enumerate(between) if fact.kind == "rows"), cut)
                )  # "8 km run 3x10"
            if facts[follow].value.movement == "!" and not _numbered(facts, follow):
                cut = len(between)  # "second set rpe 9 because the dog walked by"
        own = [*taken, facts[at], *between[:cut]]
        if blocks and _named_again(blocks[-1][0], facts[at], own):
            blocks[-1][1].extend(fact for fact in own if fact is not facts[at])  # "…, last lean rpe 8"
        else:
            blocks.append((facts[at], own))
        taken = between[cut:]
    return [], blocks


def _titled(head: list[Fact], move: Fact, between: list[Fact]) -> int | None:
    """Where a title of the next movement's work begins: "chins 3x5 and EMOM 10 min: 3 pull-ups"."""
    seps = [at for at, fact in enumerate(between) if fact.kind == "sep"]
    if len(seps) < LEAST_OF_A_TITLE or between[seps[-1]].note.get("mark") != ":" or move.value.movement == "!":
        return None
    title = between[seps[-2] + 1 : seps[-1]]
    schemed = any(fact.kind in ("scheme", "rounds", "count", "repeat") for fact in title)
    return seps[-2] + 1 if schemed and has_work([*head, *between[: seps[-2]]]) else None


def _of_the_sentence(head: list[Fact], move: Fact, between: list[Fact], after: list[Fact]) -> int | None:
    """Where a sentence begins whose numbers are of the movement it names: "… 3x8. Added 5 for the last set: dips 3x8".

    None where none does, or where they go on with the movement before.
    """
    start = 1 + max((at for at, fact in enumerate(between) if ends_sentence(fact)), default=-1)
    told = [*head, *between[: max(0, start - 1)]]
    if not start or not has_work(told) or move.value.movement == "!":
        return None
    tail = between[start:]
    then = max((at for at, fact in enumerate(tail) if is_then(fact)), default=None)
    if then is not None and has_work(tail[:then]) and (then == len(tail) - 1 or has_work(tail[then + 1 :])):
        return None  # "5 @ 5kg; 6 @ 10kg, then pull-ups with 10kg. 6, 6, 5"
    clause = after[: clause_end(after)]
    titled = bool(tail) and tail[-1].note.get("mark") == ":"
    counted = any(fact.kind in ("count", "rounds") for fact in tail)
    worked = any(fact.kind in ("rows", "bare", "loads") for fact in tail)
    own = titled or (counted and not worked) or (worked and not has_work(clause))
    return start if own else None


def _last_clause(facts: Sequence[Fact]) -> Sequence[Fact]:
    """What stands behind the last comma."""
    cut = max((at for at, fact in enumerate(facts) if fact.kind == "sep"), default=-1)
    return facts[cut + 1 :]


def _named_again(before: Fact, move: Fact, own: Sequence[Fact]) -> bool:
    """Whether a movement is only named once more, to say something of its sets."""
    same = before.value.movement == move.value.movement and move.value.movement != "!"
    scoped = any(fact.kind == "scope" for fact in own)
    return same and scoped and not has_work(own) and not any(fact.kind in ("load", "assist") for fact in own)


def _numbered(facts: Sequence[Fact], at: int) -> bool:
    """Whether a number that can be of the movement at `at` stands in its clause."""
    for side in (reversed(facts[:at]), facts[at + 1 :]):
        for fact in side:
            if fact.kind == "sep" and fact.note.get("mark") != ":":
                break
            if fact.kind in WORK | LOADED | {"left", "claim"} or fact.note.get("noise"):
                return True
    return False


def has_work(facts: Sequence[Fact]) -> bool:
    return any(fact.kind in WORK for fact in facts)


def _cut(head: list[Fact], between: list[Fact], after: list[Fact]) -> int:
    """Where the facts between two movements part: before it they belong to the first, after it to the second."""
    seps = [i for i, fact in enumerate(between) if fact.kind == "sep"]
    start = (seps[-1] + 1) if seps else 0
    tail = between[start:]
    work = [
        f for f in tail if f.kind in WORK or f.kind in LOADED or f.kind in ("flag", "side", "scheme", "link", "scope")
    ]
    if not seps:
        if has_work(head) and not nxt_is_other_first(between) and has_work(tail):
            own = 0
            while own < len(between) and between[own].kind in LOADED and not any(f.kind in LOADED for f in head):
                own += 1  # "5x3 pull-ups 20 kg 4x8 dips": the load is of the pull-ups
            return own
        flags = [i for i, f in enumerate(between) if f.kind == "flag" and i > 0 and has_work(between[:i])]
        return flags[-1] if flags and flags[-1] == len(between) - 1 else len(between)
    if not work:
        return start
    # "then 3 sets of 8 dips", ", 20 kg pull-ups 4x3"
    strong = [i for i in seps if is_strong(between[i])]
    if strong:
        begin = strong[-1] + 1
        rest = between[begin:]
        if begin < start and _whole(between[begin:start]) and _whole(tail) and between[-1].kind == "rows":
            return start  # "pull-ups 3x6, then 3x4 with 10, 3x8 dips": the dips have their own
        if has_work(rest) and (has_work(between[:begin]) or has_work(head)) and not has_work(_until_sep(after)):
            return begin
    return start


def _whole(facts: Sequence[Fact]) -> bool:
    """Whether sets are told in full: so many of so many, or held."""
    return any(
        len(fact.value) > 1 or (bool(fact.value) and fact.value[0].hold_s is not None)
        for fact in facts
        if fact.kind == "rows"
    )


def _counts_next(between: list[Fact], follows: Fact, after: list[Fact]) -> bool:
    """Whether a number right before a movement is of that, not of the one before: "dead hang 1 min 10 pull ups".

    So it is where the one before has its sets and the next has no others: "l-sit 20 s 10 dips 5 chins".
    """
    number = between[-1] if between else None
    if number is None or number.kind != "bare" or number.end != follows.start or follows.value.movement == "!":
        return False
    if any(fact.kind == "sep" for fact in between) or not any(fact.kind == "rows" for fact in between[:-1]):
        return False
    own = _until_sep(after)
    if len(own) > 1 and own[-1].kind == "move" and own[-2].kind in ("bare", "rows"):
        own = own[:-2]
    return not has_work(own)


def nxt_is_other_first(between: list[Fact]) -> bool:
    return bool(between) and between[0].kind == "sep"


def _until_sep(facts: list[Fact]) -> list[Fact]:
    out: list[Fact] = []
    for fact in facts:
        if is_strong(fact):
            break
        out.append(fact)
    return out
