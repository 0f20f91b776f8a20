"""Mentions in the making: features said near each other become one movement, hit by hit."""

from __future__ import annotations

from collections.abc import Sequence
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
from bot.reading.movements.combine import Combine
from bot.reading.movements.helped import HELP, after_own_work, of_some_sets, of_the_next, own_sets_helped
from bot.reading.movements.joins import is_traded, joins
from bot.reading.movements.mention import Mention
from bot.reading.movements.not_had import not_had
from bot.reading.movements.on_rings import of_the_rings

FAMILIES = ("front_lever", "planche")  # what "tuck" or "straddle" alone leans on
GEAR = frozenset({"pulley", "ring", "band", "bar"})
RINGS, BAR = frozenset({"ring"}), frozenset({"bar"})
ONE_ARM = {"one_arm"}
HANG = {"hang"}
BARE_AGAIN = frozenset({"no_band"})


class Gathering:
    """`mentions`: found, in order; `loose`: features that wait for a movement; `topic`: the family spoken of."""

    def __init__(self, message: Message, rules: Combine, hits: list[Hit]) -> None:
        self.message, self.rules, self.hits = message, rules, hits
        self.mentions: list[Mention] = []
        self.loose: list[Hit] = []
        self.topic: set[str] = set()
        for at in range(len(hits)):
            self._take(at)

    def _take(self, at: int) -> None:
        hit = self.hits[at]
        if hit.table == "none":
            words = {token.word for token in self.message.tokens[hit.start : hit.end]}
            self.topic |= {family for family in FAMILIES if family in hit.name.split("+")} | {"planche"} & words
        elif hit.table == "planned":
            if _planned_here(self.message, hit):
                self.mentions.append(Mention(hit.name, [(hit.start, hit.end)], {hit.name}))
        elif hit.table == "other":
            self._other(hit)
        else:
            self._features(at, hit, set(hit.name.split("+")))

    def _other(self, hit: Hit) -> None:
        """What is trained beside, and is none of ours: "one arm overhead press"."""
        start, last = hit.start, self.mentions[-1] if self.mentions else None
        if last is not None and last.movement == "?one_arm" and last.spans == [(last.start, start)]:
            start = self.mentions.pop().start
        self.mentions.append(Mention("!", [(start, hit.end)]))

    def _features(self, at: int, hit: Hit, features: set[str]) -> None:
        message, rules = self.message, self.rules
        if features <= GEAR and not_had(message, hit.start, hit.end):
            return
        if features == HANG and self.mentions and _hung_on(message, hit):
            return
        of_rings = of_the_rings(message, self.hits, at) if features == RINGS and message.context.today else None
        if of_rings is not None:
            self.mentions.append(Mention(of_rings, [(hit.start, hit.end)], set(rules.needed(of_rings))))
            return
        last = self.mentions[-1] if self.mentions and self.mentions[-1].movement != "!" else None
        if last is not None and features == ONE_ARM <= last.features and _one_of_two(message, hit):
            return  # "one arm hang: 12 s on one hand, 9 s on the other": a side, not which
        helped = False
        if last is not None and features <= HELP:
            if of_the_next(message, rules, last, self.hits[at : at + 2]):
                self.loose.append(hit)
                return
            helped = after_own_work(message, rules, last, hit, features) or own_sets_helped(
                message, rules, last, hit, self.hits[at + 1 :]
            )
            if not helped and of_some_sets(message, rules, last, hit, features):
                self._help_of_some(last, hit, features)
                return
        if last is not None and not helped and joins(message, rules, last, hit, features):
            self._join(last, hit, features)
            return
        if last is not None and features == BARE_AGAIN and last.features & HELP:
            features |= last.features - HELP  # "chin-ups with the band 3x6, then 3 without"
        if last is not None and helped:
            features |= last.features
        mention = Mention("", [(hit.start, hit.end)], set(features), helped)
        self._gather_loose(mention)
        self._close(at, hit, features, last, mention)

    def _help_of_some(self, last: Mention, hit: Hit, features: set[str]) -> None:
        """ "The last two with a band", "3x8, danach mit Band noch 2x10"."""
        if not number_soon(self.message, hit.end):
            last.doubt = (hit.start, hit.end)
            return
        whole = last.features | features
        self.mentions.append(Mention(self.rules.resolve(whole) or last.movement, [(hit.start, hit.end)], whole))

    def _join(self, last: Mention, hit: Hit, features: set[str]) -> None:
        """One more word of the same movement: "pull-ups … wide"."""
        end = last.spans[0][1]
        last.features |= features
        last.spans.append((hit.start, hit.end))
        near = hit.start <= end + GLUE and not sided(self.message, end, hit.start)
        near = near and all(token.value is None for token in self.message.tokens[end : hit.start])  # "15 kg" between
        if near and not breaks(self.message, end, hit.start, False):
            last.spans[0] = (last.spans[0][0], hit.end)
        last.movement = self.rules.resolve(last.features) or last.movement
        self._speak_of(last)

    def _speak_of(self, mention: Mention) -> None:
        self.topic = {family for family in FAMILIES if family in mention.features} or self.topic

    def _gather_loose(self, mention: Mention) -> None:
        """The features that waited for this movement: "tuck … front lever"."""
        message, rules = self.message, self.rules
        for waiting in reversed(self.loose):
            parts = set(waiting.name.split("+"))
            near = not breaks(message, waiting.end, mention.start, False) and mention.start - waiting.end <= GLUE
            far = bool(parts & rules.far) and not breaks(message, waiting.end, mention.start, True)
            traded = is_traded(message, waiting.end, mention.start)
            if not (near or far) or traded or not rules.begins(mention.features | parts):
                continue
            mention.features |= parts
            if near:
                mention.spans[0] = (waiting.start, mention.spans[0][1])
            else:
                mention.spans.append((waiting.start, waiting.end))

    def _close(self, at: int, hit: Hit, features: set[str], last: Mention | None, mention: Mention) -> None:
        """Name the movement of all its features; what names none waits."""
        rules = self.rules
        movement = rules.resolve(mention.features)
        if movement == "row" and measured(self.message, mention.start):
            self.mentions.append(Mention("!", mention.spans))  # "5k row", "2000 m row"
            return
        if last is not None and self._turned(at, hit, features, last, mention):
            self.mentions.append(mention)
            return
        if features <= rules.leaning and self.topic and not self._family_follows(self.hits[at:]):
            leaned = rules.resolve(mention.features | self.topic)
            if leaned is not None:
                mention.features |= self.topic
                movement = leaned
        if movement is None or mention.features <= rules.never_alone:
            self.loose.append(hit)
            return
        self.loose.clear()
        mention.movement = movement
        self.mentions.append(mention)
        self._speak_of(mention)

    def _turned(self, at: int, hit: Hit, features: set[str], last: Mention, mention: Mention) -> bool:
        """The movement of before in another grip or on rings: "pull-ups 5x5, then neutral 3x5"."""
        rules = self.rules
        lifts, apart = last.features - rules.grips, "one_arm" not in last.features and not self.loose
        regripped = features <= rules.grips and bool({"pull_up", "chin_up"} & last.features) and apart
        turned = rules.resolve(lifts | features) if regripped and numbered(self.message, hit.end) else None
        on_bars = all(waiting.name == "bar" for waiting in self.loose)  # "pull-ups 5x5 on the bar, then on rings 3x4"
        if turned is None and features == RINGS and on_bars and self._on_others(last, hit, self.hits[at + 1 :]):
            lifts = lifts - BAR
            turned = rules.resolve(lifts | features)
            turned = None if turned == last.movement else turned
        if turned is None:
            return False
        mention.features, mention.movement = lifts | features, turned
        return True

    def _family_follows(self, hits: Sequence[Hit]) -> bool:
        """Whether the family is named beside a feature that leans on one: the "FL" of "adv tuck FL"."""
        for one, follow in pairwise(hits):
            if follow.start > one.end + 1 or breaks(self.message, one.end, follow.start, False):
                return False
            parts = set(follow.name.split("+"))
            if parts & {*FAMILIES, "plank"}:
                return True
            if not parts <= self.rules.leaning:
                return False
        return False

    def _on_others(self, last: Mention, hit: Hit, behind: Sequence[Hit]) -> bool:
        """ "Muscle-ups on the bar 5x1, on rings 2 singles": the same on rings, where both have their own sets."""
        if not work_between(self.message, last.spans[0][1], hit.start) or not numbered(self.message, hit.end):
            return False
        named = behind and behind[0].start - hit.end <= MOST_SET_TOKENS
        return not (named and not breaks(self.message, hit.end, behind[0].start, False))  # "rings 3x8 dips"


def _planned_here(message: Message, hit: Hit) -> bool:
    """ "Raises 8 8 9" on a day of leg raises: the short name of what is planned, with no other word before it."""
    before = message.tokens[hit.start - 1] if hit.start else None
    alone = before is None or before.kind != "word" or before.text in little("the", "and")
    return alone and any(one.movement == hit.name for one in message.context.today or ())


def _one_of_two(message: Message, hit: Hit) -> bool:
    """Whether "with one arm" says that a side is not told."""
    return any(
        (one.table, one.name) == ("side", "unclear") and one.end >= hit.end
        for at in range(max(0, hit.start - 2), hit.start + 1)
        for one in message.beginning("grammar")[at]
    )


def _hung_on(message: Message, hit: Hit) -> bool:
    """ "12 dips with 20 kilos hanging, …": what hangs is the weight, where no time is told of it."""
    tokens = message.tokens
    one = hit.end - hit.start == 1 and tokens[hit.start].text in little("hung_on")
    if not one or hit.start < 2 or tokens[hit.start - 2].value is None:
        return False
    unit = any(h.table == "unit" and h.name in ("kg", "lb") for h in message.beginning("grammar")[hit.start - 1])
    return unit and not any(
        tokens[at].value is not None and any(h.name in ("sec", "min") for h in message.beginning("grammar")[at + 1])
        for at in range(hit.end, min(hit.end + GLUE, len(tokens) - 1))
    )
