"""Tries at a weight or a skill, of which some went up: "5 attempts, 3 good", "2/6 attempts"."""

from __future__ import annotations

from bot.reading.facts import Entry, Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.scanner import Scanner

MOST_TRIES = 20  # of one kind, as of sets told at once
MOST_BETWEEN = 3  # items between the tries and how many of them went up
OF_WHAT = 6  # items of "attempts at the muscle-up"
TRIES_TOLD = 6  # so far behind the tries stands how many went up


def of_attempts(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "2/6 attempts": two singles, four misses."""
    item, whole = s.at(i), s.at(i + 2)
    if s.at(i + 1).text != "/" or whole.kind != "num" or not s.at(i + 3).has("scheme", "attempt"):
        return None
    made, tried = int(item.value or 0), int(whole.value or 0)
    if not made <= tried <= MOST_TRIES:
        return None
    rows = [Entry(1 if at < made else 0) for at in range(tried)]
    return [Fact("rows", item.start, s.at(i + 3).end, rows, {"list": True, "mark": "/"})], i + 4


def _went_up(item: Item) -> bool:
    return not little("went_up").isdisjoint(item.text.split())


def tries(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "5 attempts, 3 good": three singles, two misses."""
    tried = s.at(i).value
    if tried is None or tried not in range(2, MOST_TRIES + 1) or not s.at(i + 1).has("scheme", "attempt"):
        return None
    timed = s.unit_at(i + 4)
    if s.at(i + 2).has("times", "of") and s.at(i + 3).kind == "num" and timed in ("sec", "min"):
        hold_s = (s.at(i + 3).value or 0) * (60 if timed == "min" else 1)
        holds = [Entry(hold_s=hold_s) for _ in range(int(tried))]
        return [Fact("rows", s.at(i).start, s.at(i + 4).end, holds, {"list": True})], i + 5  # "3 attempts of 20 s"
    for j in range(i + 2, i + 2 + TRIES_TOLD):
        made = s.at(j)
        if made.kind == "nl" or made.text in (".", ";"):
            return None
        if made.value is not None and made.value != int(made.value):
            return None
        if made.value is not None:
            good = any(_went_up(s.at(at)) for at in (j - 1, j + 1, j + 2))
            if not good or made.value > tried:
                return None
            side = next(
                (s.at(at).name("side") for at in range(i + 2, j) if s.at(at).has("side", "left", "right")), None
            )
            rows = [Entry(1 if at < made.value else 0, side=side) for at in range(int(tried))]
            moves = [
                Fact("move", s.at(at).start, s.at(at).end, s.at(at).mention)
                for at in range(i + 2, j)
                if s.at(at).kind == "move"
            ]
            end = j + 1
            while end < j + 3 and _went_up(s.at(end)):
                end += 1
            return [*moves, Fact("rows", s.at(i).start, s.at(end - 1).end, rows, {"list": True, "mark": "/"})], end
    return None


def judged_tries(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "4 Anläufe, davon 1 daneben", "attempts: 4, one made it": singles, so many of them missed or made."""
    item, j = s.at(i), i + 2
    if item.has("scheme", "attempt"):  # "attempts: 4, one made it"
        many = i + 1
        while many < i + OF_WHAT and s.at(many).kind in ("word", "move", "known") and s.at(many).value is None:
            many += 1  # "attempts at the muscle-up: 4"
        many += 1
        if s.at(many - 1).text not in (":", "-", "=") or s.at(many).kind != "num":
            return None
        item, j = s.at(many), many + 1
        if s.at(j).text not in (",", "(", ";", "-"):
            return None
    elif not s.at(i + 1).has("scheme", "attempt"):
        return None
    else:
        at_what = next((at for at in range(j, j + MOST_BETWEEN) if s.at(at).kind not in ("word", "known")), j)
        if s.at(at_what).kind == "move" and s.at(at_what + 1).text in (",", "(", ";", "-", ":"):
            j = at_what + 1  # "3 attempts at the muscle-up, 1 went"
    if item.value not in range(1, MOST_TRIES + 1):
        return None
    first = j
    while j < first + MOST_BETWEEN and (
        s.at(j).text in (",", ":", "-", "(") or s.at(j).has("sep", "and") or s.at(j).text in little("of_those")
    ):
        j += 1
    said = s.at(j) if s.at(j + 1).kind == "num" and _verdict(s.at(j)) else None  # "got 2"
    j += said is not None
    part, move = s.at(j), s.at(j + 1) if s.at(j + 1).kind == "move" else None
    named = [s.at(at) for at in range(i, j) if s.at(at).kind == "move"]
    move = named[0] if named else move
    verdict = said or s.at(j + 1 + (move is not None and not named))
    if part.value is None or part.value != int(part.value) or part.value > (item.value or 0):
        return None
    missed = verdict.has("fail", "fail") or verdict.text in little("a_miss")
    if not missed and not _verdict(verdict):
        return None
    tried = int(item.value or 0)
    made = tried - int(part.value) if missed else int(part.value)
    rows = [Entry(1 if at < made else 0) for at in range(tried)]
    moves = [Fact("move", move.start, move.end, move.mention)] if move is not None else []
    end = part.end if said is not None else verdict.end
    after = j + 1 if said is not None else j + 2 + (move is not None and not named)
    return [*moves, Fact("rows", item.start, end, rows, {"list": True, "mark": ","})], after


def _verdict(item: Item) -> bool:
    """Whether a word says of a try that it went up, or that it did not."""
    told = item.has("scheme", "got") or item.has("fail", "fail", "yes") or item.text in little("a_miss")
    return told or _went_up(item)
