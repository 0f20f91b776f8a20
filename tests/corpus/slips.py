"""What hurried thumbs do to a message without changing what it says."""

from __future__ import annotations

import re
from collections.abc import Sequence
from random import Random

EMOJI = ("💪", "🔥", "😅", "✅", "🙌", "😮‍💨", "🥵", "👌")


def number(value: float, *, comma: bool) -> str:
    """22.5 as written: "22.5" or "22,5"; whole numbers without a fraction."""
    said = f"{value:g}"
    return said.replace(".", ",") if comma else said


def join(clauses: Sequence[str], random: Random) -> str:
    """Clauses in one message, parted as people part them."""
    mark = random.choice((", ", ". ", "\n", " / ", "; ", ".\n"))
    # A slash between numbers would be a list of sets, a comma after a number one more of them.
    if mark in (" / ", ", ") and any(re.search(r"\d$", c) or re.match(r"\d", c) for c in clauses):
        mark = ". "
    return mark.join(clauses)


def slip(text: str, random: Random, names: Sequence[str]) -> tuple[str, list[str]]:
    """The text with up to three slips, and their names."""
    chosen = random.sample(list(SLIPS), random.choice((0, 0, 1, 1, 2, 3)))
    done = []
    for name in chosen:
        changed = SLIPS[name](text, random) if name != "typo" else typo(text, random, names)
        if changed != text:
            done.append(name)
        text = changed
    return text, done


def typo(text: str, random: Random, names: Sequence[str]) -> str:
    """One letter lost, doubled or swapped, inside a word of a movement's name that is long enough to be known still."""
    found = sorted({w for n in names if n in text for w in re.findall(r"[^\W\d_]{6,}", n)})
    if not found:
        return text
    word = random.choice(found)
    k = random.randrange(2, len(word) - 2)
    kind = random.randrange(3)
    wrong = (word[:k] + word[k + 1 :], word[:k] + word[k] + word[k:], word[:k] + word[k + 1] + word[k] + word[k + 2 :])[
        kind
    ]
    return text.replace(word, wrong, 1)


def capitals(text: str, random: Random) -> str:
    return text.upper() if random.random() < 0.3 else text.lower()


def times_sign(text: str, random: Random) -> str:
    sign = random.choice(("X", "×", " x ", " × ", "*"))
    return re.sub(r"(?<=\d)x(?=\d)", sign, text)


def tight(text: str, random: Random) -> str:
    return re.sub(r"(?<=\d) (?=\+\d)", "", text)


def wide(text: str, random: Random) -> str:
    return re.sub(r" (?=[+@])", "  ", text).replace("+", "+ ") if random.random() < 0.5 else text.replace(" ", "  ", 2)


def emoji(text: str, random: Random) -> str:
    marks = random.choice(EMOJI) * random.randint(1, 3)
    return f"{text} {marks}" if random.random() < 0.7 else f"{marks} {text}"


def bare(text: str, random: Random) -> str:
    """Without hyphens and final stops."""
    return re.sub(r"(?<=[a-z])-(?=[a-z])", " ", text).rstrip(".")


def odd_spaces(text: str, random: Random) -> str:
    return text.replace(" ", random.choice(("\u00a0", "\u202f", "\t")), 2)


SLIPS = {
    "capitals": capitals,
    "times_sign": times_sign,
    "tight": tight,
    "wide": wide,
    "emoji": emoji,
    "bare": bare,
    "odd_spaces": odd_spaces,
    "typo": typo,
}
