"""The coach's short commands, as data: who, what, with which numbers and days.

"mira 4x3 at 17.5 on thursday", "mira hold rung 3 weeks", "tell mira: …". The words themselves are in the catalogue
folder (`coach.toml`), by language.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from bot.conversation.coach_days import (
    ISO,
    SUNDAY,
    day_of,
    days_named,
    from_to,
    in_figures,
    months,
    names_a_day,
    spans,
    until_of,
    weekdays,
    without_days,
)
from bot.conversation.coach_every import every_of
from bot.conversation.coach_steps import Step, step_of
from bot.conversation.coach_vocabulary import marks, vocabulary, words_of
from bot.reading.little import little

SCHEME = re.compile(r"(?<!\d)(\d{1,2})\s*[x×*]\s*(\d{1,2})(?!\d)")
UNITS = "|".join(sorted(map(re.escape, little("kilos", "pounds")), key=len, reverse=True))
NUMBER = re.compile(rf"[+@]?\s*(\d{{1,3}}(?:[.,]\d{{1,2}})?)\s*((?:{UNITS})(?!\w))?(?![\w.,]*\d)", re.IGNORECASE)
NO_LOAD = re.compile(
    rf"(?<=\s)(?:-\s*\d+(?:[.,]\d+)?|@\s*(?:10|[6-9](?:[.,]5)?)(?![\d.,]*\s*(?:{UNITS}))(?!\d))(?=\s)", re.IGNORECASE
)
FIGURES = re.compile(r"(?<![\w.,])[+@]?\d(?:[\d.,:]*\d)?")
FIGURED = re.compile(r"[+@]?\d|[@+x×*]$")  # "5", "@12.5", and the signs of "5 x 3 @ 12.5"
WEEK = 7
SIX_DAYS = timedelta(days=WEEK - 1)
DAYLESS = frozenset({"undo", "unlock", "restart", "approve", "decline", "resume", "seen"})  # orders of now
LASTING = frozenset(
    {"lock", "hold", "exclude", "pause", "rung"}
)  # orders from now on: they may have an end, no other day
LOADED = frozenset({"sets", "lock"})
LEFT_OUT = re.compile(r" (?:no|keine|kein|sin) ([^\d\W].*)")


@dataclass(frozen=True)
class Command:
    """`rest`: the words after the verb (or after the colon), verbatim."""

    verb: str
    handle: str | None
    rest: str
    scheme: tuple[int, int] | None = None
    load: float | None = None
    unit: str | None = None
    day: date | None = None
    until: date | None = None
    over: tuple[str, ...] = ()  # words that are neither the verb nor the name, nor small
    movement: str | None = None  # of sets that are not the main lift's
    ladder: str | None = None  # of a hold, where one of several is named
    of_kind: str | None = None  # of an unlock, where it is named what is lifted: the kind of the orders
    odd: tuple[str, ...] = ()  # what an order may not have beside it: words, numbers and days nobody understood
    left: tuple[str, ...] = ()  # of these, the days, and what stands before "no dips"
    only_day: bool = False  # a day is all that is odd: "cancel thursday"
    step: Step | None = None  # of sets: on from what is planned
    every: frozenset[int] = frozenset()  # of sets: the weekdays (Monday 0) of each week
    since: date | None = None  # of these, where the first is not the next one
    days: tuple[date, ...] = ()  # of sets for several days: "monday and thursday"


def parse(text: str, names: Sequence[tuple[str, str]], language: str, today: date) -> Command | None:
    """The command in a coach's message; None where no verb of ours is in it.

    Args:
        names: Handle and name of each of the coach's athletes.
        today: The coach's day, from which "thursday" and "3 weeks" count.
    """
    stripped = _in_schemes(text.replace("→", "->").replace("->", " -> ").strip().lstrip("/").strip(), language)
    head, colon, after = stripped.partition(":")
    where = head if colon else stripped
    folded = f" {' '.join(words_of(where))} "
    handle = _addressed(folded, names, language) or _handle(folded, names)
    folded = _without_name(folded, handle, names)
    told = _told(folded, language) if handle is not None else None
    if told is not None:
        return Command("tell", handle, after.strip() if colon else _after(where, told, handle, names))
    step = None
    if handle is not None and SCHEME.search(where) is None:
        step, rest_of = step_of(where, language)
        beside = _without_name(f" {' '.join(words_of(rest_of))} ", handle, names)
        if step is not None and _verb(_without_weeks(beside, language), language)[0] in (None, "sets"):
            where, folded = rest_of, beside
        else:
            step = None  # "lock +5" is a load
    every, folded = every_of(folded, language)
    folded, figures = in_figures(folded, language), in_figures(where, language)
    week = next((words for words in vocabulary(language, "words")["this_week"] if f" {words} " in folded), None)
    ahead = next((words for words in vocabulary(language, "words")["next_week"] if f" {words} " in folded), None)
    plain = folded.replace(f" {week} ", " ", 1).replace(f" {ahead} ", " ", 1)
    verb, phrase = _verb(plain, language)  # "lock 12.5 this week" is a lock
    scheme = SCHEME.search(where)
    if step is not None or (verb in (None, "card") and scheme is not None and handle is not None):
        # "hand on shoulder 2x1" names a movement and shows no card.
        verb, phrase = "sets", phrase if verb == "sets" else ""
    if verb is None and (week is not None or ahead is not None):
        verb, phrase = _verb(folded, language)
    if verb is None and handle is not None and LEFT_OUT.match(folded):
        verb = "decline"  # "mira keine Archers": what is left out is named below
    if verb is None:
        if handle is not None and after.strip():
            verb = "tell"
        elif handle is not None and not folded.strip():
            verb = "card"
        elif handle is not None and day_of(folded, today, language) and not _over(folded, "", language):
            verb = "week"  # "mira thursday"
        else:
            return None
    rest = after.strip() if colon else _after(where, phrase, handle, names)
    unknown: tuple[str, ...] = ()
    left_out = LEFT_OUT.search(folded) if handle is not None and verb in ("decline", "week") else None
    if left_out is not None and folded.strip() != phrase:
        verb, rest = "exclude", left_out[1]  # "tom no dips this week"
        unknown = _odd(folded[: left_out.start() + 1], "", language, "")
    numbers = SCHEME.sub(" ", figures)
    until, named = until_of(folded, today, language), days_named(folded, today, language)
    day = None if until is not None else day_of(folded, today, language)
    sunday = today + timedelta(days=SUNDAY - today.weekday() or WEEK)  # said on a Sunday, it is the week to come
    since = None
    if step is not None and not every and not named and until is None and (week or ahead):
        # "-10% this week": a step on each session of it.
        monday = today + timedelta(days=WEEK - today.weekday())
        every, since, until = frozenset(range(WEEK)), monday if ahead else None, sunday if week else monday + SIX_DAYS
        folded = folded.replace(f" {ahead} ", " ", 1) if ahead else folded
    if until is None and week is not None and verb not in ("week", "sets"):
        until, day = sunday, None
    elif until is None and verb in LASTING and day == today:
        until, day = today, None  # "no dips today"
    if verb == "move":
        day, until = from_to(folded, today, language)
    if verb == "deload" and ahead is not None:
        folded, day = folded.replace(f" {ahead} ", " ", 1), today + timedelta(days=7 - today.weekday())
    numbers = without_days(spans(language).sub(" ", ISO.sub(" ", numbers)), language)
    load, unit, figures_left = _load(numbers, verb in LOADED)
    odd = _odd(folded, phrase, language, numbers)
    if verb in ("move", "deload"):
        odd = tuple(word for word in odd if word not in marks(language, "from"))
    days = _in_a_row(named, folded, language) if verb == "sets" and not every else ()
    used = days or ((day, until) if every else used_by(verb, day, until))
    used = (*used, today) if until == today + timedelta(weeks=1) else used  # "until Monday", on a Monday
    left = [*unknown, *(said for one, said in named if one not in used)]
    if every and (verb != "sets" or day is not None):
        left.append(where.strip())
    elif verb == "sets" and not every and (until is not None or (week and (day is None or day > sunday))):
        left.append(week or where.strip())  # sets are for one day
    beside = folded.replace(f" {phrase} ", " ", 1)
    lost = until is None and day is None and (names_a_day(beside, language) or spans(language).search(folded))
    dated = verb in DAYLESS and (day is not None or until is not None)
    only_day = dated and until is None and not odd and len(named) == 1 and "?" not in where
    if "?" in where or lost or dated:
        odd = odd or (where.strip(),)
    of_kind = None
    if verb == "unlock":
        of_kind, odd = _of_kind(beside, odd, language)
    schemes = [found[0] for found in SCHEME.finditer(where)][1 if verb == "sets" else 0 :]
    return Command(
        verb,
        handle,
        rest,
        (int(scheme[1]), int(scheme[2])) if scheme else None,
        load,
        unit,
        day,
        until,
        _over(folded, phrase, language),
        odd=tuple(dict.fromkeys((*odd, *schemes, *figures_left, *left))),
        left=tuple(left),
        of_kind=of_kind,
        only_day=only_day,
        step=step,
        every=every,
        since=since,
        days=days,
    )


def _in_a_row(named: Sequence[tuple[date, str]], folded: str, language: str) -> tuple[date, ...]:
    """The days of "monday and thursday", "mon, thu and sat", soonest first; none where no two stand in a row."""
    joined = "|".join(map(re.escape, vocabulary(language, "words")["and"]))
    row = rf"\s+(?:(?:{joined})\s+(?:on\s+)?)?".join(re.escape(said) for _, said in named)
    return tuple(sorted({day for day, _ in named})) if len(named) > 1 and re.search(row, folded) else ()


def _without_weeks(folded: str, language: str) -> str:
    """Without "this week" and "next week", which ask to be shown nothing."""
    for mark in ("this_week", "next_week"):
        for words in vocabulary(language, "words")[mark]:
            folded = folded.replace(f" {words} ", " ", 1)
    return folded


def _without_name(folded: str, handle: str | None, names: Sequence[tuple[str, str]]) -> str:
    for word in {word for own, name in names if own == handle for word in (own, name.casefold())}:
        folded = folded.replace(f" {word} ", " ", 1)
    return folded


def _of_kind(beside: str, odd: tuple[str, ...], language: str) -> tuple[str | None, tuple[str, ...]]:
    """What an unlock names, "rung", "load" or "step", and what is odd without it; both named are all."""
    named = {kind: set(marks(language, kind)) for kind in ("hold_rung", "lock_load", "step_sets")}
    found = [kind for kind, words in named.items() if words & set(beside.split())]
    rest = tuple(word for word in odd if not any(word in words for words in named.values()))
    return found[0] if len(found) == 1 else None, rest


def used_by(verb: str, day: date | None, until: date | None) -> tuple[date | None, ...]:
    """The days that an order takes; what else is named beside it nobody has understood."""
    if verb in LASTING and (verb != "pause" or until is not None):
        return (until,)  # a pause without an end may be of one day, "rest thursday"
    return (day,) if verb in ("sets", "deload", "pause") else (day, until)


def behind_colon(text: str, names: Sequence[tuple[str, str]], language: str, today: date) -> Command | None:
    """ "mira: 4x3 at 10 thursday": what the words after a bare name would be as an order; None where they are words."""
    head, _, after = text.strip().partition(":")
    named = parse(head, names, language, today)
    said = " ".join(words_of(after))
    if (
        named is None
        or named.verb != "card"
        or named.over
        or " ".join(words_of(head)) not in names_of(named.handle, names)
    ):
        return None
    # "mira: yes" is what one says to a person; an order is given by its own word.
    if ":" in after or said in vocabulary(language, "words").get("spoken", ()):
        return None
    return parse(f"{head} {after}", names, language, today)


def whom(text: str, names: Sequence[tuple[str, str]]) -> str | None:
    """The one athlete whom a message names, wherever; None where it names none or several."""
    return _handle(f" {' '.join(words_of(text.replace(':', ' ')))} ", names)


def with_owners(text: str, names: Sequence[tuple[str, str]]) -> str:
    """ "toms elbow", "miras Ellbogen", in a message that names nobody: with the apostrophe that thumbs leave out."""
    called = {word for handle, _ in names for word in names_of(handle, names)}
    own = "|".join(sorted((re.escape(word) for word in called if f"{word}s" not in called), key=len, reverse=True))
    return re.sub(rf"(?i)(?<!\w)({own})s(?!\w)", r"\1's", text) if own else text


def names_of(handle: str | None, names: Sequence[tuple[str, str]]) -> set[str]:
    """What an athlete is called, in small letters."""
    return {word.casefold() for own, name in names if own == handle for word in (own, name)}


def _told(folded: str, language: str) -> str | None:
    """The words of "tell" at the head of a message: what follows is for the athlete, whatever is in it."""
    phrases = [phrase for phrase in vocabulary(language)["tell"] if folded.startswith(f" {phrase} ")]
    if any(folded.startswith(f" {phrase} ") for phrase in vocabulary(language)["tell_all"]):
        return None
    return max(phrases, key=len, default=None)


def _odd(folded: str, phrase: str, language: str, numbers: str) -> tuple[str, ...]:
    """What stands beside an order and is not part of one: "restart when the doctor says so", "at -10", "4x3 @8"."""
    known = {word for mark in ("filler", "until", "today", "tomorrow") for word in marks(language, mark)}
    known |= set(weekdays(language)) | months(language)
    rest = spans(language).sub(" ", folded.replace(f" {phrase} ", " ", 1)).split()
    for span in vocabulary(language, "words")["this_week"]:
        known |= set(span.split()) if f" {span} " in folded else set()
    words = tuple(word for word in rest if word not in known and not FIGURED.match(word))
    odd = (match[0].strip() for match in NO_LOAD.finditer(f" {numbers} "))
    return tuple(dict.fromkeys((*words, *odd)))


def _over(folded: str, phrase: str, language: str) -> tuple[str, ...]:
    """The words that nobody has understood."""
    small = {*vocabulary(language, "words").get("small", ()), *weekdays(language), *months(language)}
    small |= {word for mark in ("today", "tomorrow") for word in marks(language, mark)}
    rest = folded.replace(f" {phrase} ", " ", 1).split()
    return tuple(word for word in rest if word not in small and not word[0].isdigit())


def _handle(folded: str, names: Sequence[tuple[str, str]]) -> str | None:
    """The one athlete named; None where none is, where two are, or where a name is of two."""
    found = [
        (folded.find(f" {word.casefold()} "), len(word), handle)
        for handle, name in names
        for word in {handle, name}
        if f" {word.casefold()} " in folded
    ]
    meant = {
        handle
        for at, length, handle in found
        if not any(start <= at and at + length <= start + long and long > length for start, long, _ in found)
    }
    return meant.pop() if len(meant) == 1 else None


def _addressed(folded: str, names: Sequence[tuple[str, str]], language: str) -> str | None:
    """The one who is told something, "tell mira that tom is away": the name right behind the word."""
    head = _told(folded, language)
    rest = "" if head is None else folded.removeprefix(f" {head}")
    first = max((word for own in names for word in own if rest.startswith(f" {word.casefold()} ")), key=len, default="")
    return _handle(f" {first.casefold()} ", names) if first else None


def _verb(folded: str, language: str) -> tuple[str | None, str]:
    """The verb whose longest phrase is there."""
    best: tuple[str | None, str] = (None, "")
    for verb, phrases in vocabulary(language).items():
        for phrase in phrases:
            if f" {phrase} " in folded and len(phrase) > len(best[1]):
                best = (verb, phrase)
    return best


def _after(where: str, phrase: str, handle: str | None, names: Sequence[tuple[str, str]]) -> str:
    """The words that are neither the verb nor the name."""
    drop = set(phrase.split())
    if handle is not None:
        drop |= {handle} | {word for own, name in names if own == handle for word in name.casefold().split()}
    return " ".join(word for word in where.split() if word.strip(",.;!?").casefold() not in drop)


def _load(text: str, wanted: bool) -> tuple[float | None, str | None, list[str]]:
    """The load and its unit, and the figures that are neither."""
    found = list(NUMBER.finditer(text))
    best = next((match for match in found if match[2]), found[0] if found else None)
    taken = best if wanted else None
    rest = f"{text[: taken.start()]} {text[taken.end() :]}" if taken is not None else text
    left = [match[0].strip() for match in FIGURES.finditer(rest)]
    if best is None:
        return None, None, left
    unit = None if best[2] is None else "lb" if best[2].casefold() in little("pounds") else "kg"
    return float(best[1].replace(",", ".")), unit, left


def _in_schemes(text: str, language: str) -> str:
    """ "3 sets of 4" as "3x4"."""
    named = "|".join(sorted(map(re.escape, vocabulary(language, "words")["sets_of"]), key=len, reverse=True))
    return re.sub(rf"(?i)(?<![\d.,])(\d{{1,2}})\s+(?:{named})\s+(\d{{1,2}})(?![\d.,]*\d)", r"\1x\2", text)
