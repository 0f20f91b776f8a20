"""Words that are no words: which word a typing error is meant to be, and two words written as one.

The trade's words come first, and several of them that are equally near are asked about. Any other word is mended where
one word of everyday language is clearly the likeliest: by how often people write it and how often they slip so.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache

from rapidfuzz import process
from rapidfuzz.distance import OSA

from bot.reading.everyday import everyday
from bot.reading.lexicon import WORD, WORDS, everyday_words, languages, phrases_in, sources, table, words_in
from bot.reading.text import fold_words

LEAST_STEM = 4  # letters of a singular
LEAST_OF_A_SIGN = 7  # letters of a sign's word that is mended
LEAST_OF_A_PLAIN_WORD = 5  # letters
LEAST_HALF = 4  # letters of each half of a word written together
UMLAUTS = ("ae", "oe", "ue")  # as who has none writes them; folded they are one letter
LETTERS = "abcdefghijklmnopqrstuvwxyz"
# How often people slip so, beside leaving out a letter or changing the places of two: common practice, no source.
DOUBLED, EXTRA, OTHER = 0.5, 0.1, 0.1
KNOWN_HERE = 1e-4  # what a word of the reader's own books counts for, as a share of all that is written
LEAST = 1.5e-5  # below, a word is rather one that no list has
CLEARLY = 2.0  # times as likely as any other
STRETCHED = re.compile(r"(.)\1{2,}")  # a letter held: "upssss"
RARE = 1e-6  # share of a word that may as well be a slip: "singe", "ponds"
HARDLY_EVER = 1e-7  # share of a word that is a slip of the trade's rather: "planed"
RARELY = 200.0  # times as likely the word meant is then


@lru_cache(maxsize=16384)
def spelled(word: str, language: str) -> tuple[str, ...]:
    """The words that `word` may be a typing error of: none, one, or several of the trade's that are equally near."""
    if not 4 <= len(word) <= 20 or word in _spellings(language)[0]:
        return ()
    plain = STRETCHED.sub(r"\1", word)
    if plain != word and len(plain) > 2 and plain in words_of_the_trade(language):
        return (plain,)  # "muscle upssss"
    trade, likely = _of_the_trade(word, language), _likely(word, language)
    if (trade or likely) and any(word in own_words(other) for other in languages()):
        return ()  # a word of another language
    if any(_usual(word, one) for one in trade):
        return trade
    best = max(likely, key=lambda meant: likely[meant], default=None)
    if best is None:
        return trade
    if best in trade:
        return (best,)
    doubtful = any(CLEARLY * value > likely[best] for meant, value in likely.items() if meant != best)
    return () if doubtful else (best,)


def words_of_the_trade(language: str) -> frozenset[str]:
    """The words that name movements."""
    return frozenset[str]().union(*(words_in(source, "movements") for source in sources(language)))


def is_known(word: str, language: str) -> bool:
    """Whether a word stands in a lexicon of the language."""
    return word in _spellings(language)[0]


@lru_cache(maxsize=8)
def own_words(language: str) -> frozenset[str]:
    """The words that a language's own books know."""
    words = set(fold_words(everyday_words(language)).split())
    words |= set(fold_words(" ".join(number_words(language))).split())
    for path in (WORDS / language).glob("*.toml"):
        words |= words_in(language, path.stem)
    return frozenset(words)


def number_words(language: str) -> list[str]:
    """What says a number or joins two."""
    said = table(language, "numbers")
    return [*said.get("value", {}), *said.get("join", []), *said.get("point", []), *said.get("half", [])]


def _usual(word: str, meant: str) -> bool:
    """Whether a letter was left out or two changed places: the slips made most."""
    if len(word) == len(meant):
        return sorted(word) == sorted(meant)
    return len(meant) == len(word) + 1 and OSA.distance(word, meant) == 1


def _of_the_trade(word: str, language: str) -> tuple[str, ...]:
    """Whole words of five letters or more, one slip (two from seven letters on), the first letter as it should be or
    changed places with the second. A word of a warning sign is mended by one slip alone.
    """
    _, wanted, signs = _spellings(language)
    if len(word) == 4:
        # so short a word is only taken when two letters changed places
        swapped = sorted(word)
        alike = (one for one in _begun_alike(word, language) if len(one) == 4 and sorted(one) == swapped)
        near = sorted(one for one in alike if OSA.distance(one, word) == 1)
        return () if near and word in everyday(language) else tuple(near)
    slips = 2 if len(word) >= 7 else 1
    hits = [
        hit
        for hit in process.extract(word, _begun_alike(word, language), scorer=OSA.distance, score_cutoff=slips, limit=8)
        if hit[1] < 2 or (len(hit[0]) >= 6 and hit[0] not in signs)
    ]
    if not hits or everyday(language).share(word) > HARDLY_EVER or _plural_of_everyday(word, language, wanted):
        return ()
    best = min(distance for _, distance, _ in hits)
    found = sorted(candidate for candidate, distance, _ in hits if distance == best)
    # "pullup" and "pullups" are one answer
    return _likeliest(word, tuple(one for one in found if one + "s" not in found), language)


def _begun_alike(word: str, language: str) -> list[str]:
    """The words that one may be corrected to, of those with its first letter, or with its first two changed about."""
    begun = _by_first_letter(language)
    swapped = word[1::-1]
    turned = (one for one in begun.get(swapped[0], ()) if one.startswith(swapped))
    return [*begun.get(word[0], ()), *(turned if swapped[0] != swapped[1] else ())]


@lru_cache(maxsize=8)
def _by_first_letter(language: str) -> dict[str, list[str]]:
    begun: dict[str, list[str]] = {}
    for word in _spellings(language)[1]:
        begun.setdefault(word[0], []).append(word)
    return begun


def _likeliest(word: str, found: tuple[str, ...], language: str) -> tuple[str, ...]:
    """Of several equally near words those of a movement, and of these those that only lack a letter here."""
    if len(found) < 2:
        return found
    moves = words_of_the_trade(language)
    found = tuple(one for one in found if one in moves) or found
    if len({one[: len(word) - 3] for one in found}) == 1:
        return found[:1]  # forms of one word: "klimmzug", "klimmzuge"
    return tuple(one for one in found if len(one) > len(word)) or found


def _plural_of_everyday(word: str, language: str, wanted: tuple[str, ...]) -> bool:
    """ "faciles", "gotas": the list has the singular, which is no word of the trade."""
    endings = table(language, "common").get("plural", ())
    stems = (word.removesuffix(ending) for ending in endings if word.endswith(ending))
    return any(len(stem) >= LEAST_STEM and stem in everyday(language) and stem not in wanted for stem in stems)


def _likely(word: str, language: str) -> dict[str, float]:
    """The everyday words that are one slip away, by how likely they are meant: "beacuse", "twetny", "inisde"."""
    if len(word) < LEAST_OF_A_PLAIN_WORD or not word.isascii():
        return {}
    common, known_here = everyday(language), _known_here(language)
    share = common.share(word)
    if share > RARE:
        return {}
    least = max(LEAST, RARELY * share)
    likely: dict[str, float] = {}
    for meant, weight in _slips(word):
        known = common.share(meant) + (KNOWN_HERE if meant in known_here else 0.0)
        if known * weight > least:
            likely[meant] = max(likely.get(meant, 0.0), weight * known)
    return likely


@lru_cache(maxsize=8)
def _known_here(language: str) -> frozenset[str]:
    """The words of the reader's own books."""
    return own_words(language).union(_spellings(language)[1])


def _slips(word: str) -> Iterator[tuple[str, float]]:
    """Every word one slip away, and how usual the slip; the first letter as it is or changed places with the second.

    What differs in the last letter alone is another form of the word: "despierta", "despierte".
    """
    for at in range(len(word)):
        before, letter, after = word[:at], word[at], word[at + 1 :]
        if after:
            yield before + after[0] + letter + after[1:], 1.0
            for other in LETTERS:
                yield before + letter + other + after, 1.0
                if at:
                    yield before + other + after, OTHER
        if at:
            yield before + after, DOUBLED if letter in (word[at - 1], after[:1]) else EXTRA
        if word[at : at + 2] in UMLAUTS:
            yield before + letter + after[1:], 1.0


def _words_of_signs(language: str) -> frozenset[str]:
    """The words of the phrases that name a warning sign."""
    tables = [entries for of, entries in table(language, "flags").items() if of in ("sign", "sited", "felt")]
    phrases = [phrase for entries in tables for rows in entries.values() for phrase in rows]
    return frozenset(WORD.findall(fold_words("\n".join(phrases))))


@lru_cache(maxsize=8)
def _spellings(language: str) -> tuple[frozenset[str], tuple[str, ...], frozenset[str]]:
    """Words that are no typing errors, the words that one may be corrected to, and those of them that name a sign."""
    known: set[str] = set()
    wanted: set[str] = set()
    for source in sources(language):
        for path in (WORDS / source).glob("*.toml"):
            known |= words_in(source, path.stem)
        known |= set(fold_words(everyday_words(source)).split())
        known |= set(fold_words(" ".join(number_words(source))).split())
        for name in ("movements", "grammar", "numbers"):
            wanted |= words_in(source, name)
        wanted |= set(fold_words(table(source, "common").get("mended", "")).split())
        wanted |= {phrase.replace(" ", "") for phrase in phrases_in(source, "movements") if "..." not in phrase}
        known |= wanted
    for word in list(known):
        known.add(word + "s")
    signs = {word for source in sources(language) for word in _words_of_signs(source) if len(word) >= LEAST_OF_A_SIGN}
    return frozenset(known), tuple(sorted(word for word in wanted | signs if len(word) >= 4)), frozenset(signs - wanted)


@lru_cache(maxsize=16384)
def compound(word: str, language: str) -> tuple[str, str] | None:
    """The two words that are written as one ("ringdips", "klimmzugleiter"); None where it is one word, or none."""
    if len(word) < 2 * LEAST_HALF - 1 or is_known(word, language):
        return None
    parts, tails = _parts(language), _tails(language)
    for at in range(LEAST_HALF - 1, len(word) - LEAST_HALF + 2):
        if word[:at] in parts and (word[at:] in parts or word[at:] in tails):
            return word[:at], word[at:]
    return None


@lru_cache(maxsize=8)
def _parts(language: str) -> frozenset[str]:
    """Words of the movements, as halves of longer ones."""
    return frozenset(
        word for source in sources(language) for word in words_in(source, "movements") if len(word) >= LEAST_HALF - 1
    )


@lru_cache(maxsize=8)
def _tails(language: str) -> frozenset[str]:
    """What is written together with a movement before it: "leiter", "test"."""
    return frozenset(fold_words(table(language, "common").get("tails", "")).split())
