"""Bare numbers beside a count, and those that are one: "4 sets, 6", "did six: 6x2", "MU 5x1, then 2 missed"."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.bounds import THEN, within_sentence
from bot.reading.facts import LOADED, Entry, Fact
from bot.reading.fold.bare_loads import follows
from bot.reading.fold.state import FoldState
from bot.reading.fold.work import on_rows
from bot.reading.little import little

MOST_MISSED = 6  # sets told as missed by their number
LEAST_LOOSE = 10  # nobody hangs less on a belt and calls it by its number alone
MOST_OF_A_WORD = 20  # singles, doubles


def holds_counted(fold: FoldState, fact: Fact) -> bool:
    """ "3 one-arm hangs, 10 s": so many holds of the seconds that follow."""
    if not fold.block.hold or not fact.note.get("before_move") or fold.rows or fold.count is not None:
        return False
    if not any(one.kind == "rows" and one.note.get("unit") for one in fold.block.facts):
        return False
    fold.count = int(fact.value)
    return True


def counts_what_follows(fold: FoldState, fact: Fact) -> bool:
    """ "Did six: 6x2": the number of the sets that follow."""
    at = fold.place(fact)
    colon, work = (*fold.block.facts[at + 1 : at + 3], None, None)[:2]
    if colon is not None and work is not None and colon.value == "attempt" and work.kind == "rows":
        return len(work.value) == fact.value and bool(work.note.get("list"))  # "3 tries 4s 3s 3s"
    if colon is None or work is None or colon.note.get("mark") != ":" or work.kind != "rows":
        return False
    return len(work.value) == fact.value and bool(work.note.get("plain"))


def many_of_a_word(fold: FoldState, fact: Fact) -> bool:
    """ "Singles: 5 at 40 kg", "singles, 5 each side": so many of them."""
    alone = len(fold.rows) == 1 and fold.word_row is fold.rows[0] and fold.rows[0].load_kg is None
    colon = fold.prev is not None and fold.prev.kind == "sep" and fold.prev.note.get("mark") == ":"
    colon = colon or (fold.next is not None and fold.next.kind == "side" and fold.next.value == "each")
    many = int(fact.value) if fact.value in range(2, MOST_OF_A_WORD + 1) else 0
    if not (alone and colon and many) or fold.based or fact.note.get("comma"):
        return False
    fold.rows += [replace(fold.rows[0]) for _ in range(many - 1)]
    fold.word_row = None
    return True


def missed_of_count(fold: FoldState, fact: Fact) -> bool:
    """ "MU 5x1, then 2 missed"; "3, 2, 2 and one fail"."""
    parted = fold.prev is not None and fold.prev.kind == "sep" and (fold.prev.value == THEN or _counts_misses(fold))
    if not fold.rows or not parted or not follows(fold, fact, "fail") or fold.next is None:
        return False
    if fold.next.note.get("weak") or fold.next.value is not None or fact.value not in range(1, MOST_MISSED + 1):
        return False
    fold.add([Entry(0) for _ in range(int(fact.value))], fact)
    for row in fold.last_group():
        row.failed = True
    return True


def _counts_misses(fold: FoldState) -> bool:
    """Whether the word that follows is a miss that can be counted: "one fail", "2 misses"."""
    return fold.next is not None and fold.span(fold.next.start, fold.next.end).lower() in little("a_miss")


def of_count(fold: FoldState, fact: Fact) -> bool:
    """ "4 sets, 6"; "2 sets of pull-ups, 8 and 7" tells them one by one."""
    whole = fact.value == int(fact.value) and not fact.note.get("comma")
    article = fact.note.get("spelled") and not fact.note.get("before_move")
    if (
        article
        and fact.value > 1
        and fold.scope in (None, "all")
        and (fold.next is None or fold.next_is("sep", "load", "effort", "scope", "side"))
    ):
        article = False  # "vier Sätze Klimmzüge zu je vier mit zehn Kilo", "tres series de arqueras, dos por lado"
    if fold.count is None or not whole or article:
        return False
    if _as_many_follow(fold, fact):
        fold.expected, fold.count = fold.count, None  # "4 sets: 5@15 5@15 4@17.5 4@17.5"
        return False
    others = _listed_after(fold, fact)
    if others and fold.count > 1:
        for other in others:
            other.note["spent"] = True
        if len(others) + 1 != fold.count:
            fold.ask("sets", Fact("bare", fact.start, others[-1].end))
        fold.count = None
        entries = [Entry(int(one.value)) for one in (fact, *others)]
        on_rows(fold, Fact("rows", fact.start, fact.end, entries, {"list": True}))
        return True
    if fold.rows and not fold.based:
        fold.add([Entry(int(fact.value))], fact)  # "4 sets: 5, 5, 4 and the other 3"
        fold.count = None if len(fold.rows) == fold.count else fold.count
        return True
    doubtful = _loose_behind_count(fold, fact)
    on_rows(fold, Fact("rows", fact.start, fact.end, [Entry(int(fact.value))]))
    if doubtful:
        fold.ask("reps", fact)
        for row in fold.last_group():
            row.reps, row.load_open = None, True
    return True


def _loose_behind_count(fold: FoldState, fact: Fact) -> bool:
    """ "3 sets of pull-ups, 20": behind a comma, with nothing else told, the reps of each or the load; asked."""
    comma = fold.prev is not None and fold.prev.kind == "sep" and fold.prev.note.get("mark") == ","
    alone = fold.next is None or fold.next_is("sep", "word")
    high = not fact.note.get("spelled") and fact.value >= LEAST_LOOSE
    loaded = fold.loaded() or fold.block.hold or fold.side is not None or fold.scope is not None
    return comma and alone and high and not loaded and fold.block.movement in LOADED and not fold.based


def _as_many_follow(fold: FoldState, fact: Fact) -> bool:
    """Whether as many numbers, each with its load, are told as sets were counted."""
    count = fold.count or 0
    if count < 2:
        return False
    told = [one for one in fold.block.facts[fold.place(fact) :] if one.kind not in ("sep", "word")]
    pairs = ["load" if one.kind == "at" else one.kind for one in told[: 2 * count]]
    return pairs == ["bare", "load"] * count


def list_of_side(fold: FoldState, fact: Fact) -> bool:
    """ "Left 3 and 2, right 3 and 3": sets of that side."""
    sided = fold.prev is not None and fold.prev.kind == "side" and fold.side in ("left", "right")
    whole = fact.value == int(fact.value) and not fact.note.get("comma")
    others = _listed_after(fold, fact) if sided and whole and not fold.based else []
    for other in others:
        other.note["spent"] = True
    if others:
        side, fold.side = fold.side, None
        fold.add([Entry(int(one.value), side=side) for one in (fact, *others)], fact)
        fold.last_side = side
    return bool(others)


def _listed_after(fold: FoldState, fact: Fact) -> list[Fact]:
    """The plain numbers of a list that goes on after this one: "8 and 7", "8 then 7", "8, dann noch 7"."""
    found: list[Fact] = []
    facts = fold.block.facts
    at = fold.place(fact) + 1
    while True:
        start = at
        while at < len(facts) and (facts[at].kind == "link" or within_sentence(facts[at])):
            at += 1
        parted = at > start
        at += at < len(facts) and parted and fold.span(facts[at].start, facts[at].end).lower() in little("too")
        if not parted or at >= len(facts) or facts[at].kind != "bare":
            return found
        number = facts[at]
        behind = facts[at + 1] if at + 1 < len(facts) else None
        ends = behind is None or behind.kind == "sep" or (behind.kind == "scheme" and behind.value == "got")
        whole = number.value == int(number.value) and not number.note.get("comma") and not number.note.get("spelled")
        if not whole or not ends:
            return found
        found.append(number)
        at += 1
