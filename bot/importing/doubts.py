"""What of an entry was not read, each piece with the number of the line in which it stands."""

from __future__ import annotations

import re
from collections.abc import Iterator

from bot.importing.entries import Entry, Stray
from bot.reading import read
from bot.reading.reading import Context, Reading

Line = tuple[int, str]


def doubts_of(entry: Entry, reading: Reading, context: Context) -> tuple[Stray, ...]:
    """What is asked back, what was not counted, and lines with figures that changed nothing; as the file goes."""
    lines = entry.numbered()
    alone = {at: read(words, context) for at, words in dict(lines).items()} if len(lines) > 1 else {}
    found = [*_asked(entry, reading, lines, alone), *_unread(entry, reading, lines)]
    found += _without_effect(reading, lines, alone, context)
    return tuple(sorted(found, key=lambda one: one.line))


def _asked(entry: Entry, reading: Reading, lines: list[Line], alone: dict[int, Reading]) -> Iterator[Stray]:
    """Of the lines that hold the words of a question, it is the one that raises it when read alone."""
    taken: set[tuple[int, str]] = set()
    for doubt in reading.ask:
        held = [at for at, words in lines if _holds(words, doubt.span) and (at, doubt.span) not in taken]
        raising = [at for at in held if doubt in alone.get(at, reading).ask]
        line = next(iter(raising or held), entry.line)
        taken.add((line, doubt.span))
        yield Stray(line, doubt.span, "doubt", {"doubt": doubt, "reading": reading})


def _unread(entry: Entry, reading: Reading, lines: list[Line]) -> Iterator[Stray]:
    for piece in reading.unread:
        first = piece.strip().split("\n")[0]
        yield Stray(next((at for at, words in lines if first in words), entry.line), piece, "unread")


def _without_effect(
    reading: Reading, lines: list[Line], alone: dict[int, Reading], context: Context
) -> Iterator[Stray]:
    """Lines with figures that say nothing alone, and without which the entry reads the same."""
    if not _says_something(reading) and not (reading.ask or reading.unread):
        yield from (Stray(at, words, "nothing") for at, words in lines if _has_figures(words))
        return
    for number, (at, words) in enumerate(lines):
        if at not in alone or not _has_figures(words) or _says_something(alone[at]):
            continue
        if alone[at].ask or alone[at].unread:
            continue
        others = "\n".join(text for place, (_, text) in enumerate(lines) if place != number)
        if read(others, context) == reading:
            yield Stray(at, words, "nothing")


def _holds(words: str, span: str) -> bool:
    return re.search(rf"(?<![\w.,+]){re.escape(span)}(?![\w])", words) is not None


def _has_figures(words: str) -> bool:
    return any(sign.isdigit() for sign in words)


def _says_something(reading: Reading) -> bool:
    """Whether anything of training, pain or the body was read."""
    parts = (reading.sets, reading.pain, reading.red_flags, reading.past_flags, reading.bodyweight_kg)
    figures = (reading.session_rpe, reading.duration_min, reading.sleep_h)
    return any(parts) or any(one is not None for one in figures)
