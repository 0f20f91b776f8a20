"""Find the movements a message names: features said near each other, combined by words/combine.toml."""

from __future__ import annotations

import tomllib
from collections.abc import Collection
from dataclasses import dataclass, field
from functools import lru_cache
from itertools import pairwise

from bot.reading.lexicon import WORDS, Hit
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.not_had import not_had
from bot.reading.on_rings import of_the_rings, ring_headed, ringed
from bot.reading.text import fold

FAMILIES = ("front_lever", "planche")  # what "tuck" or "straddle" alone leans on
HELP = frozenset({"band", "assisted", "band_assisted"})
GEAR = frozenset({"pulley", "ring", "band", "bar"})
RINGS, BAR = frozenset({"ring"}), frozenset({"bar"})
MOST_SET_TOKENS = 4  # tokens of "3x8" before the name of another movement
PARTS = frozenset({",", ";", "."})
BARE_AGAIN = frozenset({"no_band"})
MARKS = frozenset({",", "/", "-"})  # between the numbers of a list
MOST_TIMES = 2  # tokens of "5x" before the reps
TRADED = 6  # tokens from "swapped" to "for"
GLUE = 3  # words that may stand between a movement's name and what makes it another ("pull-ups on the rings")


@dataclass(frozen=True)
class Combine:
    rules: tuple[tuple[str, frozenset[str], frozenset[str]], ...]  # movement, all, all + may
    far: frozenset[str]
    never_alone: frozenset[str]
    leaning: frozenset[str]
    grips: frozenset[str]
    families: dict[str, tuple[str, ...]]

    def resolve(self, features: Collection[str]) -> str | None:
        """The movement (or "?family") that exactly these features are; None: none."""
        have = frozenset(features)
        for movement, needed, allowed in self.rules:
            if needed <= have <= allowed:
                return movement
        return None

    def needed(self, movement: str) -> frozenset[str]:
        """The features that name a movement."""
        return next(needed for name, needed, _ in self.rules if name == movement)

    def begins(self, features: Collection[str]) -> bool:
        """Whether some movement has all these features."""
        have = frozenset(features)
        return any(have <= allowed for _, _, allowed in self.rules)


@lru_cache(maxsize=1)
def combine() -> Combine:
    """The rules of words/combine.toml."""
    with (WORDS / "combine.toml").open("rb") as file:
        data = tomllib.load(file)
    return Combine(
        rules=tuple(
            (rule["is"], frozenset(rule["all"]), frozenset(rule["all"]) | frozenset(rule.get("may", ())))
            for rule in data["rule"]
        ),
        far=frozenset(data["far"]),
        never_alone=frozenset(data["never_alone"]),
        leaning=frozenset(data["leaning"]),
        grips=frozenset(data["grips"]),
        families={name: tuple(members) for name, members in data["family"].items()},
    )


@dataclass
class Mention:
    """One movement named. `movement` is an id, "?family", or "!" for training without a field.

    spans: the token ranges that name it; the first one is where it stands.
    """

    movement: str
    spans: list[tuple[int, int]]
    features: set[str] = field(default_factory=set)
    of_sets_before: bool = False  # "…, then 2x8 with the band": of the sets right before it
    doubt: tuple[int, int] | None = None  # words that make some of its sets another movement

    @property
    def start(self) -> int:
        return self.spans[0][0]

    @property
    def end(self) -> int:
        return self.spans[0][1]


def _breaks(message: Message, start: int, end: int, hard: bool) -> bool:
    """Whether a sentence ends between the tokens; for near features (not `hard`) any number or comma parts too."""
    for token in message.tokens[start:end]:
        if token.kind == "nl" or token.text in (";", "!", "?"):
            return True
        if token.text == "." and not hard:
            return True
        if token.text == "." and hard:
            return True
        if not hard and (token.kind != "word" or token.value is not None):
            return token.text not in ("(", "-", ":")
    return False


def _sided(message: Message, start: int, end: int) -> bool:
    """Whether a side is told between the tokens: "archers each side on the bar"."""
    grammar = message.beginning("grammar")
    return any(hit.table == "side" for at in range(start, end) for hit in grammar[at])


@lru_cache(maxsize=1024)
def _nickname_tokens(phrase: str) -> tuple[str, ...]:
    from bot.reading.tokens import tokenize

    return tuple(token.text for token in tokenize(fold(phrase).text))


def _measured(message: Message, at: int) -> bool:
    """Whether a distance stands right before a token."""
    tokens = message.tokens
    hits = message.beginning("grammar")[at - 1] if at > 1 and tokens[at - 2].kind == "num" else []
    return any(hit.table == "unit" and hit.name == "other" and hit.end == at for hit in hits)


def _nicknames(message: Message) -> list[Mention]:
    """A coach's own words come first."""
    found: list[Mention] = []
    words = [token.word for token in message.tokens]
    for phrase, movement in message.context.nicknames:
        wanted = list(_nickname_tokens(phrase))
        if not wanted:
            continue
        for at in range(len(words) - len(wanted) + 1):
            if words[at : at + len(wanted)] == wanted:
                found.append(Mention(movement, [(at, at + len(wanted))]))
    return sorted(found, key=lambda mention: mention.start)


def find_movements(message: Message, taken: Collection[int] = ()) -> list[Mention]:
    """Every movement named, in order. `taken`: tokens that mean something else (a painful elbow, a day)."""
    key = ("movements", frozenset(taken))
    found: list[Mention] | None = message.notes.get(key)
    if found is None:
        found = message.notes[key] = _found(message, taken)
    return found


def _found(message: Message, taken: Collection[int]) -> list[Mention]:
    rules = combine()
    own = _nicknames(message)
    skip = set(taken)
    for mention in own:
        skip.update(range(*mention.spans[0]))
    hits: list[Hit] = []
    at = 0
    tokens = message.tokens
    named = message.beginning("movements")
    while at < len(tokens):
        if at in skip or tokens[at].kind in ("sym", "nl"):
            at += 1
            continue
        found = named[at]
        if found and at and len(tokens[at].text) <= 2 and not tokens[at].space and tokens[at - 1].kind == "num":
            at += 1  # "3rd" is no abbreviation of a movement
            continue
        if skip and found:
            found = [hit for hit in found if not any(i in skip for i in range(hit.start, hit.end))]
        if found and found[0].end > at:
            best = found[0]
            # the same words may be listed as no movement ("ring finger"): that wins
            best = next((hit for hit in found if hit.end == best.end and hit.table == "none"), best)
            hits.append(best)
            at = best.end
        else:
            at += 1
    mentions: list[Mention] = []
    loose: list[Hit] = []  # features that wait for a movement
    topic: set[str] = set()
    for at, hit in enumerate(hits):
        if hit.table == "none":
            topic |= {part for part in hit.name.split("+") if part in ("planche", "front_lever")}
            words_here = {token.word for token in tokens[hit.start : hit.end]}
            topic |= {"planche"} & words_here
            continue
        if hit.table == "planned":
            if _planned_here(message, hit):
                mentions.append(Mention(hit.name, [(hit.start, hit.end)], {hit.name}))
            continue
        if hit.table == "other":
            start = hit.start
            if mentions and mentions[-1].movement == "?one_arm" and mentions[-1].spans == [(mentions[-1].start, start)]:
                start = mentions.pop().start  # "one arm overhead press"
            mentions.append(Mention("!", [(start, hit.end)]))
            continue
        features = set(hit.name.split("+"))
        if features <= GEAR and not_had(message, hit.start, hit.end):
            continue
        of_rings = of_the_rings(message, hits, at) if features == RINGS and message.context.today else None
        if of_rings is not None:
            mentions.append(Mention(of_rings, [(hit.start, hit.end)], set(rules.needed(of_rings))))
            continue
        last = mentions[-1] if mentions and mentions[-1].movement != "!" else None
        if last is not None and features <= HELP and _leads(message, rules, last, hits[at : at + 2]):
            loose.append(hit)
            continue
        helped = (
            last is not None
            and features <= HELP
            and (
                _after_own_work(message, rules, last, hit, features)
                or _own_sets_helped(message, rules, last, hit, hits[at + 1 :])
            )
        )
        if last is not None and not helped and features <= HELP and _of_some(message, rules, last, hit, features):
            if not _number_soon(message, hit.end):
                last.doubt = (hit.start, hit.end)
                continue
            whole = last.features | features  # "3x8, danach mit Band noch 2x10"
            mentions.append(Mention(rules.resolve(whole) or last.movement, [(hit.start, hit.end)], whole))
            continue
        if last is not None and not helped and _joins(message, rules, last, hit, features):
            last.features |= features
            last.spans.append((hit.start, hit.end))
            near = hit.start <= last.spans[0][1] + GLUE and not _sided(message, last.spans[0][1], hit.start)
            near = near and all(
                token.value is None for token in tokens[last.spans[0][1] : hit.start]
            )  # "15 kg" between
            if near and not _breaks(message, last.spans[0][1], hit.start, False):
                last.spans[0] = (last.spans[0][0], hit.end)
            last.movement = rules.resolve(last.features) or last.movement
            topic = {family for family in FAMILIES if family in last.features} or topic
            continue
        if features == BARE_AGAIN and last is not None and last.features & HELP:
            features |= last.features - HELP  # "chin-ups with the band 3x6, then 3 without"
        if helped:
            features |= last.features if last is not None else set()
        mention = Mention("", [(hit.start, hit.end)], set(features), helped)
        for waiting in reversed(loose):
            parts = set(waiting.name.split("+"))
            near = not _breaks(message, waiting.end, mention.start, False) and mention.start - waiting.end <= GLUE
            far = bool(parts & rules.far) and not _breaks(message, waiting.end, mention.start, True)
            traded = _traded(message, waiting.end, mention.start)
            if (near or far) and not traded and rules.begins(mention.features | parts):
                mention.features |= parts
                if near:
                    mention.spans[0] = (waiting.start, mention.spans[0][1])
                else:
                    mention.spans.append((waiting.start, waiting.end))
        movement = rules.resolve(mention.features)
        if movement == "row" and _measured(message, mention.start):
            mentions.append(Mention("!", mention.spans))  # "5k row", "2000 m row"
            continue
        if (
            features <= rules.grips
            and last is not None
            and {"pull_up", "chin_up"} & last.features
            and "one_arm" not in last.features
            and not loose
            and _numbered(message, hit.end)
        ):
            turned = rules.resolve((last.features - rules.grips) | features)
            if turned is not None:
                mention.features, movement = (last.features - rules.grips) | features, turned
                mention.movement = turned
                mentions.append(mention)
                continue
        if features == RINGS and last is not None and not loose and _on_others(message, last, hit, hits[at + 1 :]):
            turned = rules.resolve((last.features - rules.grips - BAR) | features)
            if turned is not None and turned != last.movement:
                mention.features, mention.movement = (last.features - rules.grips - BAR) | features, turned
                mentions.append(mention)
                continue
        if features <= rules.leaning and topic and not _family_follows(message, rules, hits[at:]):
            leaned = rules.resolve(mention.features | topic)
            if leaned is not None:
                mention.features |= topic
                movement = leaned
        if movement is None or mention.features <= rules.never_alone:
            loose.append(hit)
            continue
        loose.clear()
        mention.movement = movement
        mentions.append(mention)
        topic = {family for family in FAMILIES if family in mention.features} or topic
    headed = ring_headed(message, hits)
    for mention in mentions if headed else ():
        movement = ringed(headed, mention.start, mention.features, rules.resolve)
        if movement is not None and mention.movement not in ("", "!"):
            mention.movement, mention.features = movement, mention.features | RINGS
    mentions = _whole_arms(message, rules, [mention for mention in mentions if mention.movement])
    return sorted(mentions + own, key=lambda mention: mention.start)


def _leads(message: Message, rules: Combine, last: Mention, hits: list[Hit]) -> bool:
    """Whether help is of the movement right behind it, others told before: "pull-ups 5x1, band pull-ups 3x5"."""
    if len(hits) < 2 or hits[1].table in ("none", "other"):
        return False
    between = message.tokens[hits[0].end : hits[1].start]
    adjacent = all(token.text == "-" for token in between) and len(between) < 2
    whole = rules.resolve(set(hits[0].name.split("+")) | set(hits[1].name.split("+")))
    return adjacent and whole is not None and _work_between(message, max(end for _, end in last.spans), hits[0].start)


def _family_follows(message: Message, rules: Combine, hits: list[Hit]) -> bool:
    """Whether the family is named beside a feature that leans on one: the "FL" of "adv tuck FL"."""
    for one, follow in pairwise(hits):
        if follow.start > one.end + 1 or _breaks(message, one.end, follow.start, False):
            return False
        parts = set(follow.name.split("+"))
        if parts & {*FAMILIES, "plank"}:
            return True
        if not parts <= rules.leaning:
            return False
    return False


def _on_others(message: Message, last: Mention, hit: Hit, behind: list[Hit]) -> bool:
    """ "Muscle-ups on the bar 5x1, on rings 2 singles": the same on the rings, where both have sets of their own."""
    if not _work_between(message, last.spans[0][1], hit.start) or not _numbered(message, hit.end):
        return False
    named = behind and behind[0].start - hit.end <= MOST_SET_TOKENS
    return not (named and not _breaks(message, hit.end, behind[0].start, False))  # "rings 3x8 dips"


def _numbered(message: Message, at: int) -> bool:
    """Whether a number follows at once."""
    follow = message.tokens[at : at + 2]
    return bool(follow) and (
        follow[0].value is not None
        or (len(follow) > 1 and follow[0].text in (":", "-") and follow[1].value is not None)
    )


def _whole_arms(message: Message, rules: Combine, mentions: list[Mention]) -> list[Mention]:
    """ "One arm, free: L 2, R 1 (pull-ups)": what is done with one arm may be said elsewhere in the message."""
    if any(one.movement in rules.families["one_arm"] for one in message.context.today or ()):
        return mentions  # the plan says which
    for bare in [mention for mention in mentions if mention.movement == "?one_arm"]:
        for other in sorted(mentions, key=lambda one: _apart(message, bare, one)):
            if (
                other is bare
                or other.movement == "!"
                or (_numbered(message, other.end) and other.start > bare.start + 4)
            ):
                continue
            whole = rules.resolve(bare.features | other.features)
            if whole is None or whole == other.movement:
                continue
            if (
                other.start < bare.start
                and _measured_work(message, other.start)
                and _measured_work(message, bare.start)
            ):
                bare.features, bare.movement = bare.features | other.features, whole
                return mentions  # "2x60s dead hangs, 2x25s one arm"
            keep, drop = (bare, other) if bare.start < other.start else (other, bare)
            keep.features |= drop.features
            keep.movement = whole
            keep.spans += drop.spans
            return [mention for mention in mentions if mention is not drop]
    return mentions


def _apart(message: Message, bare: Mention, other: Mention) -> tuple[bool, int]:
    """How far a movement stands from a word for one arm: another sentence is farther than any of its own."""
    low, high = sorted((bare.start, other.start))
    return _breaks(message, low, high, True), high - low


def _measured_work(message: Message, at: int) -> bool:
    """Whether "5x3" or "2x60s" stands right before a token."""
    tokens = message.tokens
    timed = at > 0 and tokens[at - 1].kind == "word" and tokens[at - 1].value is None
    end = at - timed
    return end > MOST_TIMES and tokens[end - 1].value is not None and tokens[end - 2].text in little("times")


def _work_between(message: Message, start: int, end: int) -> bool:
    """Whether "5x3" or the like stands between, or a list: "8 8 7", "8, 8, 7"."""
    tokens = message.tokens[start:end]
    for left, middle, right in zip(tokens, tokens[1:], tokens[2:], strict=False):
        told = left.value is not None and right.value is not None
        if told and (middle.value is not None or middle.text in MARKS or middle.text in little("times")):
            return True
    return False


def _of_some(message: Message, rules: Combine, last: Mention, hit: Hit, features: set[str]) -> bool:
    """Whether a band is of some of the sets: "4x6, from the third with a band", "4x6, 2 sets of them with a band"."""
    after = max(end for _, end in last.spans)
    if last.features & HELP or rules.resolve(last.features | features) is None:
        return False
    if _breaks(message, after, hit.start, True):
        return False
    first = next((at for at in range(last.spans[0][0] - 4, hit.start) if at >= 0 and message.tokens[at].value), None)
    if first is None:
        return False
    grammar = message.beginning("grammar")
    parting = little("of_those_sets") | little("from_set")
    return any(
        message.tokens[at].text in parting
        or any(
            (one.table == "sep" and one.name == "then") or (one.table == "scope" and one.name not in ("all", "over"))
            for one in grammar[at]
        )
        for at in range(max(after, first), hit.start)
    )


def _number_soon(message: Message, at: int) -> bool:
    """Whether a number follows in the clause."""
    for token in message.tokens[at : at + GLUE + 1]:
        if token.kind in ("sym", "nl") and token.text != ":":
            return False
        if token.value is not None:
            return True
    return False


def _after_own_work(message: Message, rules: Combine, last: Mention, hit: Hit, features: set[str]) -> bool:
    """ "Pull-ups 5x3 with 20 and 2x8 with the band": the band is of the sets right before it, others stand before."""
    after = max(end for _, end in last.spans)
    tokens = message.tokens
    works = [at for at in range(after, hit.start - 2) if _work_between(message, at, at + 3)]
    if len(works) < 2 or last.features & HELP or rules.resolve(last.features | features) is None:
        return False
    near = tokens[works[-1] + 3 : hit.start]
    plain = len(near) <= GLUE and all(token.kind == "word" and token.value is None for token in near)
    return plain and not _breaks(message, after, hit.start, True)


def _own_sets_helped(message: Message, rules: Combine, last: Mention, hit: Hit, behind: list[Hit]) -> bool:
    """ "Pull-ups 3x5, with the red band 2x6": sets with help, behind a comma and others without."""
    parted = any(token.text == "," for token in message.tokens[max(0, hit.start - GLUE - 1) : hit.start])
    if not parted or last.features & HELP or rules.resolve(last.features | set(hit.name.split("+"))) is None:
        return False
    named = behind and behind[0].start - hit.end <= MOST_SET_TOKENS + 1
    whole = _work_between(message, last.spans[0][1], hit.start) and _work_after(message, hit.end)
    return whole and not (named and not _breaks(message, hit.end, behind[0].start, False))


def _work_after(message: Message, start: int) -> bool:
    """Whether "5x3" or the like follows at once."""
    return _work_between(message, start, min(start + 4, len(message.tokens)))


def _planned_here(message: Message, hit: Hit) -> bool:
    """ "Raises 8 8 9" on a day of leg raises: the short name of what is planned, with no other word before it."""
    before = message.tokens[hit.start - 1] if hit.start else None
    alone = before is None or before.kind != "word" or before.text in little("the") | little("and")
    return alone and any(one.movement == hit.name for one in message.context.today or ())


def _planned_apart(message: Message, rules: Combine, features: set[str], union: set[str], start: int, end: int) -> bool:
    """ "Hand on biceps as planned, pull-ups 3x3" of a day that plans both: two movements, behind a comma."""
    planned = {one.movement for one in message.context.today or ()}
    both = {rules.resolve(features), rules.resolve(union)}
    return both <= planned and any(token.text in PARTS for token in message.tokens[start:end])


def _traded(message: Message, start: int, end: int) -> bool:
    """ "Swapped the neutral grip for pull-ups", "pull-ups instead of neutral grip": one stands for the other."""
    grammar = message.beginning("grammar")
    if any(
        (hit.table, hit.name) == ("plan", "instead") and hit.end <= end
        for at in range(start, end)
        for hit in grammar[at]
    ):
        return True
    if not any(token.text in little("traded_for") for token in message.tokens[start:end]):
        return False
    before = range(max(0, start - TRADED), start)
    return any((hit.table, hit.name) == ("plan", "swap") for at in before for hit in grammar[at])


def _then(message: Message, start: int, end: int) -> bool:
    """Whether a number and, after it, a word like "then" stand between: two exercises, one after the other."""
    numbered = False
    for at in range(start, end):
        numbered = numbered or message.tokens[at].value is not None
        if numbered and any(hit.table == "sep" and hit.name == "then" for hit in message.beginning("grammar")[at]):
            return True
    return False


def _exchanged(message: Message, rules: Combine, last: Mention, hit: Hit, features: set[str]) -> bool:
    """ "Swapped the curls for hammer curls", "statt Curls Hammercurls": two movements, one in place of the other."""
    grips = rules.far | rules.grips
    if not last.movement or features <= grips or last.features <= grips or rules.resolve(features) is None:
        return False
    low, high = max(0, last.start - GLUE - 1), hit.end + GLUE
    said = [at for at in range(low, min(high, len(message.tokens))) if message.tokens[at].text in little("exchanged")]
    return any(not _breaks(message, min(at, last.start), max(at, hit.start), True) for at in said)


def _joins(message: Message, rules: Combine, last: Mention, hit: Hit, features: set[str]) -> bool:
    """Whether a feature belongs to the movement named before it."""
    if features <= last.features and not features <= rules.far:
        return False
    union = last.features | features
    if not rules.begins(union) or _traded(message, last.end, hit.start):
        return False
    between = message.tokens[last.end : hit.start]
    joined = len(between) == 1 and between[0].text in little("and")
    both = {rules.resolve(last.features), rules.resolve(features)}
    if joined and None not in both and len(both) > 1:
        return False  # "squats and split squats"
    if last.movement and rules.resolve(features) is not None and rules.resolve(union) is None:
        return False  # two whole movements: "the pull-ups for chins"
    if _exchanged(message, rules, last, hit, features):
        return False
    if last.features <= rules.far and not _breaks(message, last.end, hit.start, True):
        if _planned_apart(message, rules, features, union, last.end, hit.start):
            return False
        return rules.resolve(union) is not None and not _then(message, last.end, hit.start)
    after = max(end for _, end in last.spans)
    if last.movement.startswith("?") and features <= rules.leaning and not _breaks(message, after, hit.start, True):
        follow = message.tokens[hit.end].kind if hit.end < len(message.tokens) else "nl"
        whole = rules.resolve(union)
        if whole is not None and not whole.startswith("?") and follow != "word":
            return True  # "front lever 4x8s, straddle"
    closes = hit.end < len(message.tokens) and message.tokens[hit.end].text in PARTS  # "3x6 with a red band, 2x8 …"
    own = not closes and _work_after(message, hit.end)
    if features & rules.far and _work_between(message, after, hit.start) and own:
        return False  # both have sets of their own
    if features <= rules.grips and _then(message, after, hit.start) and _number_soon(message, hit.end):
        return False  # "negatives 3 sets of 3, then 2x8 underhand"
    named = rules.resolve(features) is not None and _work_between(message, after, hit.start)
    if named and _then(message, after, hit.start):
        return False  # "pull-ups 4x5, then counterweight 7.5 kg: 2 per arm"
    if features & rules.far:
        return not _breaks(message, after, hit.start, True) and rules.resolve(union) is not None
    if _breaks(message, after, hit.start, False) or hit.start - after > GLUE:
        return False
    return rules.resolve(union) is not None or rules.begins(union)
