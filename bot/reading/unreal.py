"""What was wished, planned, long past or done by others is no report: its numbers are taken out of the facts."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Collection, Sequence
from dataclasses import replace
from itertools import chain, pairwise

from bot.reading.back_then import back_then
from bot.reading.bounds import is_strong
from bot.reading.facts import Fact
from bot.reading.lexicon import Hit
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.tokens import Token

NUMBERS = frozenset(
    {"rows", "bare", "loads", "count", "load", "at", "left", "percent", "effort", "side", "instead", "ask", "scope"}
)
WATCHED = 3  # words from a person to what that one did beside
UNREAL = ("wanted", "others", "past", "when", "till_then", "ahead", "feared")
NEED_AN_END = ("when", "ahead")  # tales only where the athlete says elsewhere what they did
WISHES = ("wanted", "ahead")
OWN_SUBJECT = {"when": 2}  # "letzte Woche hab ich 5x3 geschafft, heute …": the tale's own "I" does not end it
WORDS_TO_NUMBER = 2  # "last time at 17.5", "letztes Mal waren es 5"
OWN_NEAR = 6  # tokens from "mine" to its number
FIRST_YEAR = 1950
SENTENCE_ENDS = frozenset({".", "!", "?", ";", "\n"})


def drop_unreal(
    message: Message, facts: list[Fact], taken: Collection[int] = (), some_day: Collection[int] = ()
) -> list[Fact]:
    """The facts without the numbers of wishes and tales.

    Such a tale runs to what the athlete did do, or to the end of its clause. `taken`: tokens that mean something else;
    `some_day`: tokens of a day gone by that is not certain, where "some time" is no wish.
    """
    named: dict[str, list[Hit]] = {}
    whole = {fact.start for fact in facts if fact.kind == "rows" and fact.note.get("plain")}
    for hit in chain.from_iterable(message.beginning("grammar")):
        if hit.table == "unreal":
            named.setdefault(hit.name, []).append(hit)
        elif (hit.table, hit.name) == ("effort", "could") and hit.end in whole and _conditional(message, hit):
            named.setdefault("wanted", []).append(hit)  # "could have done 5x5, did 4x5"
    years = _years(message, taken)
    whens = {at for hit in named.get("when", ()) for at in range(hit.start, hit.end)}
    now = {at for hit in named.get("now", ()) for at in range(hit.start, hit.end)}
    once = back_then(message, {*taken, *some_day}, whens, now)
    if not named and not years and not once:
        return facts
    places = _Places(message, named)
    for hit in named.pop("perhaps_others", ()):
        if places.mine_after(hit.end):  # "mate did triples at 40. Mine: 4x3", and not "mate did 5x3 today"
            named.setdefault("others", []).append(hit)
    told_done = [
        (hit.start, hit.end)
        for hit in chain.from_iterable(message.beginning("grammar"))
        if hit.table == "plan" and hit.name in ("done", "planned", "same", "less", "more")
    ]
    dead = [(places.sentence_start(hit.start), hit.end) for hit in named.get("mocked", ())]
    dead_of: list[tuple[str, tuple[int, int]]] = []
    for name in UNREAL:
        for hit in named.get(name, ()):
            if any(fact.kind in ("scope", "mend") and fact.start <= hit.start < fact.end for fact in facts):
                continue  # "4 mal 6, beim letzten Mal 7": the last set; "quiero decir 25"
            if name == "wanted" and _some_time(message, facts, hit):
                continue  # "irgendwann letzte Woche Dips 3x8"
            against = name == "when" and places.set_against(hit)
            compared = against or (name == "when" and places.told_now_before(hit.start))  # "today 8, last week 6"
            if name == "till_then" and not _outdone(message, facts, hit, places.end_of(name, hit.end), named):
                continue  # "pull-ups 3x5, before that 10 dips"
            if name in NEED_AN_END and not compared and not places.work_after(name, hit.end):
                continue  # "last week I did 3x8" is a report
            if name in ("others", "wanted") and any(start < hit.start and hit.end <= end for start, end in told_done):
                continue  # "did everything you wrote except …", "como ponía menos la última"
            if name in WISHES and hit.start in some_day:
                continue  # "some time last week, dips 3x8"
            if hit.start in taken or (name == "ahead" and not _number_next(message, hit.end)):
                continue
            if name == "others" and any(token.text in little("and") for token in message.tokens[hit.start : hit.end]):
                continue  # "cracked my back and did pull-ups 5x3"
            if name == "others" and any(token.text in SENTENCE_ENDS for token in message.tokens[hit.start : hit.end]):
                continue  # "that was my evening. I did dips 3x10"
            watched = any(hit.start < one.start <= hit.end + WATCHED for one in named.get("watched", ()))
            if name == "others" and (watched or _beside_me(message, hit.start) or _belonging(message, hit.end)):
                continue  # "my mate counted: 12", "with my brother: 5x3", "no plates at my mom's place so dips 3x5"
            end = places.end_of(name, hit.end)
            if name == "others" and message.context.today:
                end = _back_to_sets(message, facts, hit.end, end)
                if not message.numbers_within(hit.end, end) and end < len(message.tokens):
                    continue  # "my boss rang just in the last set and I stopped at 3": of the others no number is told
            dead_of.append(
                (
                    "past" if against else name,
                    (hit.start if against else hit.end, places.reply_end(end) if name == "feared" else end),
                )
            )
    dead += [span for _, span in dead_of]
    dead += [(hit.start - 1, hit.end) for hit in named.get("when", ()) if _told_behind(message, hit)]
    dead += [(places.clause_start(hit.start), hit.end) for hit in named.get("planned", ()) if places.fell_short(hit)]
    dead += [(places.clause_start(at), places.end_of("past", at)) for at in years]  # "5x5 at 30 in 2019"
    dead += once
    dead_of += [("past", span) for span in once]
    if not dead:
        return facts
    gone = _covered(dead, len(message.tokens))
    wanted = _covered([span for name, span in dead_of if name in WISHES], len(message.tokens))
    told_of = _covered([span for name, span in dead_of if name in ("past", "others")], len(message.tokens))
    feared = _covered([span for name, span in dead_of if name == "feared"], len(message.tokens))
    # "meant to do 5x3, stopped after three sets": three sets of it were done
    kept = [fact for fact in facts if fact.note.get("cut") or not (fact.kind in NUMBERS and gone[fact.start])]
    of_others = _covered([span for name, span in dead_of if name == "others"], len(message.tokens))
    kept = _without_their_lifts(kept, facts, of_others)
    kept = _same_as(kept, [fact for fact in facts if fact.kind == "load" and fact.value and gone[fact.start]])
    # "up from 4x5 on Monday", "my buddy tore his biceps Saturday"
    kept = [fact for fact in kept if not (is_day(fact) and told_of[fact.start])]
    kept = [fact for fact in kept if not (fact.kind == "fail" and feared[fact.start])]  # "thought I'd miss the last"
    loads = [fact for fact in facts if fact.kind == "load" and fact.value and wanted[fact.start]]
    if len(loads) == 1 and not message.context.today:
        sets = max((len(f.value) for f in facts if f.kind == "rows" and wanted[f.start]), default=0)
        if not _of_later(message, kept, loads[0]):
            kept = _with_wished_load(kept, loads[0], sets)
    return kept


def _without_their_lifts(kept: list[Fact], facts: Sequence[Fact], gone: Sequence[bool]) -> list[Fact]:
    """ "While my wife did 3x10 push-ups I did 4x8 pull-ups": an exercise of hers, where another one is told of mine."""
    theirs = {
        id(move)
        for sets, move in pairwise(facts)
        if sets.kind in ("rows", "bare") and move.kind == "move" and sets.end == move.start and gone[move.start]
    }
    mine = (at for at in range(len(kept) - 1, -1, -1) if kept[at].kind == "move" and id(kept[at]) not in theirs)
    last = next(mine, -1)
    numbers = (at for at in range(len(kept) - 1, -1, -1) if kept[at].kind in ("rows", "bare", "count", "load"))
    goes_on = next(numbers, -1)  # "… and I did 12" may be of it too
    alone = goes_on < 0 and not any(fact.kind == "plan" for fact in kept)
    return [fact for at, fact in enumerate(kept) if id(fact) not in theirs or (at > last and (at < goes_on or alone))]


def _outdone(message: Message, facts: Sequence[Fact], hit: Hit, end: int, named: dict[str, list[Hit]]) -> bool:
    """ "12 pull-ups, new record, before that 10": one number behind the words, no other lift, and a new best.

    Where the words themselves compare ("vorher waren es 10") no best need be named.
    """
    behind = [fact for fact in facts if hit.end <= fact.start < end]
    told = any(token.value is not None for token in message.tokens[: hit.start])
    numbers = sum(token.value is not None for token in message.tokens[hit.end : end])
    compares = hit.end - hit.start > 1
    bested = compares or ("record" in named and numbers == 1)
    return told and bested and numbers > 0 and not any(fact.kind == "move" for fact in behind)


def _of_later(message: Message, kept: Sequence[Fact], load: Fact) -> bool:
    """ "Dips 3x10. Next month I want to hang 20 kg": a load of a time to come, in a sentence behind all the sets."""
    start, end = next(((low, high) for low, high in message.sentences if low <= load.start < high), (0, 0))
    later = any(token.text in little("in_future") for token in message.tokens[start:end])
    return later and all(fact.end <= start for fact in kept if fact.kind in ("rows", "bare"))


def _with_wished_load(kept: list[Fact], load: Fact, sets: int) -> list[Fact]:
    """ "Aimed for 3 at 30, got 2", "wanted 4x4 at 25, managed 4,4,3,2": what it came to is of that load.

    Sets of another sentence are with it or with another: asked.
    """
    behind = [fact for fact in kept if fact.start >= load.end]
    ends = next((n for n, fact in enumerate(behind) if is_strong(fact)), len(behind))
    here = any(fact.kind in ("bare", "rows") for fact in behind[:ends])
    came_to = behind[:ends] if here else kept
    if any(fact.kind in ("load", "loads", "at", "percent", "ask") for fact in came_to):
        return kept
    if not here and any(fact.kind == "rows" for fact in came_to):
        return sorted(
            [*kept, Fact("ask", load.start, load.end, "load_kg", {"wished": True})], key=lambda one: one.start
        )
    told = [fact for fact in came_to if fact.kind == "rows"] or [fact for fact in came_to if fact.kind == "bare"]
    if len(told) != 1:
        return kept
    if sets > 1 and told[0].kind == "bare":  # "meant to do 5 sets of 5 at 50, only did 3": sets, or reps
        asked = Fact("ask", told[0].start, told[0].end, "sets")
        return [asked if fact is told[0] else fact for fact in kept]
    at = next(n for n, fact in enumerate(kept) if fact is told[0]) + 1
    return [*kept[:at], replace(load, start=told[0].end, end=told[0].end), *kept[at:]]


def _beside_me(message: Message, at: int) -> bool:
    """Whether a person is only the one that the athlete trained with."""
    return any(token.text in little("with") for token in message.tokens[max(0, at - 2) : at])


def _belonging(message: Message, at: int) -> bool:
    """Whether a person is only the one whose place or gear it was."""
    return at < len(message.tokens) and message.tokens[at].text in little("belonging")


def _told_behind(message: Message, hit: Hit) -> bool:
    """ "17 (15 last time)": a number, and when that was, are all that stands between two signs."""
    tokens = message.tokens
    alone = hit.start > 2 and tokens[hit.start - 1].value is not None and tokens[hit.start - 2].text in ("(", ",")
    closes = hit.end >= len(tokens) or tokens[hit.end].text in (")", ",", ".", "!", ";")
    return alone and closes and message.numbers_within(0, hit.start - 1) > 0


def _conditional(message: Message, hit: Hit) -> bool:
    """Whether a word for what could have been, and no "still" or "had", leads the sets."""
    return any(token.text in little("would_have") for token in message.tokens[hit.start : hit.end])


def _same_as(kept: list[Fact], told: list[Fact]) -> list[Fact]:
    """ "Last week 4x4 with 20, today 4x5 with the same weight": the one weight of the tale."""
    if len({fact.value for fact in told}) != 1 or any(fact.kind == "load" and fact.value for fact in kept):
        return kept
    return [
        replace(fact, value=told[0].value, note={"how": "at"})
        if fact.kind == "load" and fact.note.get("same") and fact.start > told[0].start
        else fact
        for fact in kept
    ]


def _back_to_sets(message: Message, facts: Sequence[Fact], at: int, end: int) -> int:
    """ "My daughter made me laugh and the last hold was 8 seconds": where a tale goes over to a set of the plan."""
    for fact in facts:
        joins = at < fact.start < end and fact.kind == "scope" and fact.value not in ("all", "over")
        if joins and message.tokens[fact.start - 1].text in little("and", "but", "so_then"):
            return end if message.numbers_within(at, fact.start) else fact.start - 1
    return end


def _some_time(message: Message, facts: Sequence[Fact], hit: Hit) -> bool:
    """Whether a word for some time or other is of a day told with it, and wishes nothing."""
    if hit.end - hit.start > 1 or message.tokens[hit.start].text not in little("some_time"):
        return False
    return any(is_day(fact) and hit.start <= fact.start <= hit.end + 1 for fact in facts)


def is_day(fact: Fact) -> bool:
    """Whether a fact is a day that was named."""
    return fact.kind == "claim" and fact.value is not None and fact.value.kind == "day"


class _Places:
    """Where sentences, clauses and tales end, by token; each list in order."""

    def __init__(self, message: Message, named: dict[str, list[Hit]]) -> None:
        tokens = message.tokens
        self._sentences = [
            at
            for at, token in enumerate(tokens)
            if token.text in SENTENCE_ENDS or not token.text[0].isascii()
            if token.kind in ("sym", "nl") and not (at + 1 < len(tokens) and tokens[at + 1].text == ")")
        ]
        self._numbers = [at for at, token in enumerate(tokens) if token.value is not None]
        self._turns = [at for at, token in enumerate(tokens) if token.text in little("but")]
        self._commas = [at for at, token in enumerate(tokens) if token.text == ","]
        self._me = [hit.start for hit in named.get("me", ())]  # "my wife did 5, I did 8"
        self._me += [at for at in range(1, len(tokens) - 1) if _me_alone(tokens, at) or _so_for_me(tokens, at)]
        self._me.sort()
        self._now = [hit.start for hit in named.get("now", ())]
        closing = {hit.start for name in ("own", "now", "me") for hit in named.get(name, ())}
        self.closing = sorted(closing | {at for at in range(len(tokens)) if _so_for_me(tokens, at)})
        self._last = len(tokens)
        self._tokens = tokens
        self._lifts = message.beginning("movements")
        self._buts = {hit.start for hit in named.get("own", ())}

    def _next(self, places: Sequence[int], at: int) -> int:
        found = bisect_left(places, at)
        return places[found] if found < len(places) else self._last

    def mine_after(self, at: int) -> bool:
        """Whether what the athlete did is set against what another did, told at `at`, with a number behind."""
        return any(
            told > at and self._next(self._numbers, told) <= min(told + OWN_NEAR, self._next(self._commas, told))
            for told in self._me
        )

    def work_after(self, name: str, at: int) -> bool:
        """Whether a number follows what the athlete did do, told later than right at `at`."""
        told = self._next(self.closing, at + 1 + OWN_SUBJECT.get(name, 0))
        return bool(self._numbers) and told < self._numbers[-1]

    def told_now_before(self, at: int) -> bool:
        """Whether the sentence has told a number of now before: what follows is compared with it."""
        start = self.sentence_start(at)
        now = next((place for place in self._now if start <= place < at), None)
        return now is not None and any(now < place < at for place in self._numbers)

    def set_against(self, hit: Hit) -> bool:
        """ "Dips 3x8, last time 3x7": numbers before a comma or bracket, and numbers right behind an earlier time."""
        at = bisect_left(self._numbers, hit.start)
        before = self._tokens[hit.start - 1].text if hit.start else ""
        if before not in (",", "(", "-", ";", ".", "\n") or not at:
            return False
        told = hit.start - 2 if before in SENTENCE_ENDS else hit.start  # "pull-ups 17. Last time I got 15"
        if self._numbers[at - 1] < self.sentence_start(told):
            return False
        if told < hit.start and any(self._lifts[hit.end : self._next(self._numbers, hit.end)]):
            return False  # "pull-ups 3x5. Last session dips 3x8"
        return self._next(self._numbers, hit.end) <= hit.end + WORDS_TO_NUMBER

    def fell_short(self, hit: Hit) -> bool:
        """ "5x3 planned, 5x2 done": numbers stand before the word in its clause, and after it in its sentence."""
        low, end = self.clause_start(hit.start), self._next(self._sentences, hit.end)
        before = bisect_left(self._numbers, hit.start) - bisect_left(self._numbers, low)
        after = bisect_left(self._numbers, end) - bisect_left(self._numbers, hit.end)
        parted = self._next(self._commas, hit.end) == hit.end or hit.end in self._buts
        return bool(before and after) and parted and self._tokens[hit.start - 1].value is not None

    def sentence_start(self, at: int) -> int:
        found = bisect_right(self._sentences, at)
        return self._sentences[found - 1] + 1 if found else 0

    def clause_start(self, at: int) -> int:
        comma = bisect_left(self._commas, at)
        return max(self.sentence_start(at), self._commas[comma - 1] + 1 if comma else 0)

    def end_of(self, name: str, at: int) -> int:
        """Where a tale of this kind that begins at `at` ends."""
        sentence = self._next(self._sentences, at)
        if name == "others" and _so_for_me(self._tokens, at):
            return at
        ends = {"past": self._now, "others": self._me}.get(name, self.closing)
        told = self._next(ends, at + 1 + OWN_SUBJECT.get(name, 0))
        if name == "others" and told < sentence:
            return told  # "my dad, 63, did 8, I did 12"
        return min(sentence, told, self._next(self._commas, at), self._turn(name, at))

    def reply_end(self, at: int) -> int:
        """ "Was scared it would go on the single but nope": a "no" to what was feared is of the fear."""
        end = at
        while end < self._last and (self._tokens[end].text == "," or self._tokens[end].text in little("but")):
            end += 1
        return end + 1 if end < self._last and self._tokens[end].text in little("did_not") else at

    def _turn(self, name: str, at: int) -> int:
        """ "The plan said 20 but from the third on 22.5": a wish with its number ends at the "but" of another one."""
        turn = self._next(self._turns, at) if name in (*WISHES, "feared") else self._last
        if name == "feared":
            return turn
        wished, done = self._next(self._numbers, at), self._next(self._numbers, turn)
        return turn if wished < turn and done < self._next(self._sentences, turn) else self._last


def _me_alone(tokens: Sequence[Token], at: int) -> bool:
    """ "Mate did 5 with 40, me 3x5": the word alone before a number."""
    if tokens[at].text in little("mine") and tokens[at - 1].text in little("versus"):
        return tokens[at + 1].value is not None  # "14 pull-ups vs my 12"
    parted = tokens[at - 1].kind in ("sym", "nl") or tokens[at - 1].text in little("and", "but")
    return parted and tokens[at].text in little("me_alone") and tokens[at + 1].value is not None


def _so_for_me(tokens: Sequence[Token], at: int) -> bool:
    """ "Dog wanted out so the third set ended at 3": what followed from it for the one who tells it."""
    follows = at + 1 < len(tokens) and tokens[at].text in little("so_then")
    return follows and tokens[at + 1].text in little("so_for_me")


def _years(message: Message, taken: Collection[int]) -> list[int]:
    """The tokens that are years gone by."""
    tokens = message.tokens
    return [
        at
        for at, token in enumerate(tokens)
        if token.kind == "num"
        and len(token.text) == 4
        and FIRST_YEAR <= (token.value or 0) < message.local.year
        and at not in taken
        and (not at or tokens[at - 1].kind != "sym" or tokens[at - 1].text in ",(")
        and (at + 1 == len(tokens) or tokens[at + 1].space or not tokens[at + 1].text[0].isalpha())
    ]


def _number_next(message: Message, at: int) -> bool:
    """Whether a number follows, perhaps after a colon: not in "as planned but 2 on the last"."""
    while at < len(message.tokens) and message.tokens[at].text == ":":
        at += 1
    return at < len(message.tokens) and message.tokens[at].value is not None


def _covered(spans: Sequence[tuple[int, int]], length: int) -> list[bool]:
    """For each token whether it stands in one of the spans; one more at the end, for facts past the last token."""
    steps = [0] * (length + 2)
    for start, end in spans:
        if start < end:
            steps[start] += 1
            steps[end] -= 1
    depth, gone = 0, []
    for step in steps[:-1]:
        depth += step
        gone.append(depth > 0)
    return gone
