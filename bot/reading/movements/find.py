"""Find the movements a message names: features said near each other, combined by words/combine.toml."""

from __future__ import annotations

from collections.abc import Collection
from itertools import pairwise

from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.movements.between import (
    GLUE,
    MOST_SET_TOKENS,
    breaks,
    measured,
    number_soon,
    numbered,
    sided,
    work_between,
)
from bot.reading.movements.combine import Combine, combine
from bot.reading.movements.helped import HELP, after_own_work, of_some_sets, of_the_next, own_sets_helped
from bot.reading.movements.joins import is_traded, joins
from bot.reading.movements.mention import Mention
from bot.reading.movements.nicknames import by_nickname
from bot.reading.movements.not_had import not_had
from bot.reading.movements.on_rings import of_the_rings, ring_headed, ringed
from bot.reading.movements.one_arm import whole_arms

FAMILIES = ("front_lever", "planche")  # what "tuck" or "straddle" alone leans on
GEAR = frozenset({"pulley", "ring", "band", "bar"})
RINGS, BAR = frozenset({"ring"}), frozenset({"bar"})
ONE_ARM = {"one_arm"}
BARE_AGAIN = frozenset({"no_band"})


def find_movements(message: Message, taken: Collection[int] = ()) -> list[Mention]:
    """Every movement named, in order. `taken`: tokens that mean something else (a painful elbow, a day)."""
    key = ("movements", frozenset(taken))
    found: list[Mention] | None = message.notes.get(key)
    if found is None:
        found = message.notes[key] = _found(message, taken)
    return found


def _found(message: Message, taken: Collection[int]) -> list[Mention]:
    named = message.beginning("movements")
    if not message.context.nicknames and not any(named):
        return []
    rules = combine()
    own = by_nickname(message)
    skip = set(taken)
    for mention in own:
        skip.update(range(*mention.spans[0]))
    hits: list[Hit] = []
    at = 0
    tokens = message.tokens
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
        if last is not None and features == ONE_ARM <= last.features and _one_of_two(message, hit):
            continue  # "one arm hang: 12 s on one hand, 9 s on the other": a side, not which
        if last is not None and features <= HELP and of_the_next(message, rules, last, hits[at : at + 2]):
            loose.append(hit)
            continue
        helped = (
            last is not None
            and features <= HELP
            and (
                after_own_work(message, rules, last, hit, features)
                or own_sets_helped(message, rules, last, hit, hits[at + 1 :])
            )
        )
        if last is not None and not helped and features <= HELP and of_some_sets(message, rules, last, hit, features):
            if not number_soon(message, hit.end):
                last.doubt = (hit.start, hit.end)
                continue
            whole = last.features | features  # "3x8, danach mit Band noch 2x10"
            mentions.append(Mention(rules.resolve(whole) or last.movement, [(hit.start, hit.end)], whole))
            continue
        if last is not None and not helped and joins(message, rules, last, hit, features):
            last.features |= features
            last.spans.append((hit.start, hit.end))
            near = hit.start <= last.spans[0][1] + GLUE and not sided(message, last.spans[0][1], hit.start)
            near = near and all(
                token.value is None for token in tokens[last.spans[0][1] : hit.start]
            )  # "15 kg" between
            if near and not breaks(message, last.spans[0][1], hit.start, False):
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
            near = not breaks(message, waiting.end, mention.start, False) and mention.start - waiting.end <= GLUE
            far = bool(parts & rules.far) and not breaks(message, waiting.end, mention.start, True)
            traded = is_traded(message, waiting.end, mention.start)
            if (near or far) and not traded and rules.begins(mention.features | parts):
                mention.features |= parts
                if near:
                    mention.spans[0] = (waiting.start, mention.spans[0][1])
                else:
                    mention.spans.append((waiting.start, waiting.end))
        movement = rules.resolve(mention.features)
        if movement == "row" and measured(message, mention.start):
            mentions.append(Mention("!", mention.spans))  # "5k row", "2000 m row"
            continue
        if (
            features <= rules.grips
            and last is not None
            and {"pull_up", "chin_up"} & last.features
            and "one_arm" not in last.features
            and not loose
            and numbered(message, hit.end)
        ):
            turned = rules.resolve((last.features - rules.grips) | features)
            if turned is not None:
                mention.features, movement = (last.features - rules.grips) | features, turned
                mention.movement = turned
                mentions.append(mention)
                continue
        on_bars = all(waiting.name == "bar" for waiting in loose)  # "pull-ups 5x5 on the bar, then on rings 3x4"
        if features == RINGS and last is not None and on_bars and _on_others(message, last, hit, hits[at + 1 :]):
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
    mentions = whole_arms(message, rules, [mention for mention in mentions if mention.movement])
    return sorted(mentions + own, key=lambda mention: mention.start)


def _family_follows(message: Message, rules: Combine, hits: list[Hit]) -> bool:
    """Whether the family is named beside a feature that leans on one: the "FL" of "adv tuck FL"."""
    for one, follow in pairwise(hits):
        if follow.start > one.end + 1 or breaks(message, one.end, follow.start, False):
            return False
        parts = set(follow.name.split("+"))
        if parts & {*FAMILIES, "plank"}:
            return True
        if not parts <= rules.leaning:
            return False
    return False


def _one_of_two(message: Message, hit: Hit) -> bool:
    """Whether "with one arm" says that a side is not told."""
    return any(
        (one.table, one.name) == ("side", "unclear") and one.end >= hit.end
        for at in range(max(0, hit.start - 2), hit.start + 1)
        for one in message.beginning("grammar")[at]
    )


def _on_others(message: Message, last: Mention, hit: Hit, behind: list[Hit]) -> bool:
    """ "Muscle-ups on the bar 5x1, on rings 2 singles": the same on the rings, where both have sets of their own."""
    if not work_between(message, last.spans[0][1], hit.start) or not numbered(message, hit.end):
        return False
    named = behind and behind[0].start - hit.end <= MOST_SET_TOKENS
    return not (named and not breaks(message, hit.end, behind[0].start, False))  # "rings 3x8 dips"


def _planned_here(message: Message, hit: Hit) -> bool:
    """ "Raises 8 8 9" on a day of leg raises: the short name of what is planned, with no other word before it."""
    before = message.tokens[hit.start - 1] if hit.start else None
    alone = before is None or before.kind != "word" or before.text in little("the", "and")
    return alone and any(one.movement == hit.name for one in message.context.today or ())
