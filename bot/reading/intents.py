"""What the sender wants, from their words and from what the other readers found.

`report`, `pain`, `bodyweight` and `correction` follow from the fields and are the assembler's; this reader finds the
wishes: plans, reasons, progress, moves, absences, equipment, words for the coach, pause, stop, help, undo.
"""

from __future__ import annotations

from collections.abc import Sequence

from bot.reading.days import named_days
from bot.reading.lexicon import Hit
from bot.reading.message import Claim, Message
from bot.reading.phrases import longest
from bot.reading.settled import no_training, one_sentence, over, settled, to_come

ABSENCES = ("move", "missed", "away", "ill", "pause")
LAUGHING = ("\U0001f600", "\U0001f64f", "\U0001f923", "\U0001f970", "\u2764")  # faces, and hearts


def wishes(message: Message) -> dict[str, list[Hit]]:
    """The wordings of each wish in a message, those that only look like one left out; the caller's own."""
    found = message.notes.get("wishes")
    if found is None:
        found = message.notes["wishes"] = _wishes(message)
    return dict(found)


def _wishes(message: Message) -> dict[str, list[Hit]]:
    hits = message.hits("intents", "want", "not", "passing")
    barred: dict[str, list[Hit]] = {}
    for hit in hits:
        if hit.table == "not":
            barred.setdefault(hit.name, []).append(hit)
    found: dict[str, list[Hit]] = {}
    everything = sum(1 for token in message.tokens if token.kind not in ("sym", "nl"))
    whole = False
    for hit in message.hits("intents", "whole"):
        worded = sum(1 for token in message.tokens[hit.start : hit.end] if token.kind not in ("sym", "nl"))
        if worded == everything and hit.end - hit.start >= 1:
            found.setdefault(hit.name, []).append(hit)
            whole = True
    for hit in hits:
        if hit.table != "not" and not any(over(no, hit) for no in barred.get(hit.name, ())):
            found.setdefault(hit.name, []).append(hit)
    starts = {start for start, _ in message.sentences}
    wanted = bool(found)
    for hit in message.hits("intents", "opening"):
        if hit.start in starts and not wanted:  # "coach, …" calls, "hi coach, …" and "coach, can't train" address
            found.setdefault(hit.name, []).append(hit)
    if whole and "plan_today" in found:
        found.pop("move", None)  # "can I train tomorrow?" names no day that is moved
    found.pop("correction", None)  # a correction is one only with its values: corrections.py
    told = found.keys() & {*ABSENCES, "plan_week", "plan_today"}
    idle = told == {"missed"} and all(no_training(message, hit) for hit in found["missed"])
    if not told or (idle and not any(hit.name == "was" for hit in message.hits("intents", "past"))):
        found.update(_elsewhere(message))  # "in Pune from 15 to 19 July, no training then"
    return settled(message, found)


def in_passing(message: Message, wish: str) -> bool:
    """Whether a wish beside sets of the day is none: where one trained, or what was not there for them.

    "On the road, hotel gym: pull-ups 4x6"; "forgot the belt, so 4x5 without". What lasts is told as lasting: "the belt
    broke", "no rings until Friday", "the hotel only has a pulldown".
    """
    if wish == "equipment":
        return not message.hits("intents", "lasting")
    hits = wishes(message).get(wish, ())
    return bool(hits) and all(hit.table == "passing" for hit in hits)


def _elsewhere(message: Message) -> dict[str, list[Hit]]:
    """Days to come at a place are an absence: "in Rome 20-24 April", told by a capital, "at my sister's 3-9 June".

    Of whole weeks only where one says to be there: "we're in Cornwall all next week".
    """
    hits = message.hits("intents", "where")
    if not hits:
        return {}
    stays = {hit.end for hit in hits if hit.name == "stay"}
    ahead = [day for day in named_days(message).days if day.ahead and day.ahead[1] > message.today]
    spans = any(
        day.link == "until"
        or (day.link == "from" and stays)  # "ab dem 9. August bin ich in Norwegen"
        or (day.kind == "range" and day.ahead and day.ahead[0] > message.today)
        for day in ahead
    )
    weeks = any(day.kind in ("week", "weekend") for day in ahead)
    # "two weeks in Cancun from the 1st of June"
    begun = any(day.kind == "length" for day in named_days(message).days)
    spans = spans or (begun and any(day.link in ("from", "open") and to_come(message, day) for day in ahead))
    if not spans and not (weeks and stays):
        return {}
    barred = {hit.start for hit in hits if hit.name == "not"}
    for hit in hits:
        if hit.name == "person":
            return {"away": [Hit(hit.start, hit.end, "want", "away")]}
        if hit.start in barred or hit.end >= len(message.tokens) or not (spans or hit.end in stays):
            continue
        if message.tokens[hit.end].kind == "word" and message.span(hit.end, hit.end + 1)[:1].isupper():
            return {"away": [Hit(hit.start, hit.end + 1, "want", "away")]}
    return {}


def find_asides(message: Message) -> list[Claim]:
    """Claims `noise`: numbers and sports inside a wish ("only a 16 kg kettlebell", "gone climbing", "double shift")."""
    gear = [
        hit
        for hit in wishes(message).get("equipment", ())
        if any(message.tokens[at].value is not None for at in range(hit.start, hit.end))
    ]
    asides = longest([*gear, *message.hits("intents", "aside")])
    return [Claim(hit.start, hit.end, "noise", None) for hit in asides if not _tells(message, hit)]


def _tells(message: Message, hit: Hit) -> bool:
    """Whether "so much more than last week" is all that is told of a side or of the load, and is asked."""
    if message.context.today or message.tokens[hit.start].value is None:
        return False
    grammar = message.beginning("grammar")
    before = [one for at in range(max(0, hit.start - 2), hit.start) for one in grammar[at]]
    if any(one.table == "side" and one.end == hit.start for one in before):
        return True
    weights = [at for at, found in enumerate(grammar) if any(_weight(one) for one in found)]
    loads = [at for at, found in enumerate(grammar) if any(one.table == "load" for one in found)]
    inside = range(hit.start, hit.end)
    return any(at in inside for at in weights) and all(at in inside for at in (*weights, *loads))


def _weight(hit: Hit) -> bool:
    return hit.table == "unit" and hit.name in ("kg", "lb")


def find_intents(message: Message, claims: Sequence[Claim] = ()) -> list[Claim]:
    """Claims `intent`, in the contract's words. `smalltalk` where the words are of that kind and nothing is wanted."""
    found = wishes(message)
    said = {claim.kind for claim in claims}
    flags = {claim.value for claim in claims if claim.kind == "red_flag"}
    if "fever" in flags and "ill" not in found:
        found["ill"] = [Hit(0, 0, "want", "ill")]
    if flags and "resume" in found:
        # "got lightheaded, sat down, fine now": over, and nobody comes back
        well = [hit for hit in message.hits("intents", "past") if hit.name == "back_to_health"]
        if all(any(over(hit, one) for one in well) for hit in found["resume"]):
            del found["resume"]
    if "correction" in said:
        for other in ("undo", "missed", "move", "why"):
            found.pop(other, None)
    if "undo" in said and "undo" not in found:
        found["undo"] = [Hit(0, 0, "want", "undo")]
    if "missed" in found and _same_absence(message, found):
        del found["missed"]
    for reason in _reasons_of_move(message, found, claims):
        del found[reason]
    out = [Claim(0, 0, "intent", name) for name in found]
    facts = {"pain", "red_flag", "bodyweight", "correction", "sleep", "duration", "session_rpe"}
    if not out and not said & facts and _talk(message):
        out.append(Claim(0, 0, "intent", "smalltalk"))
    return out


def _same_absence(message: Message, found: dict[str, list[Hit]]) -> bool:
    """ "fever, no training today", "on holiday till July, won't train": what is missed is missed for the reason told.

    A day missed before one goes away is told besides: "missed Tuesday. Away from Friday".
    """
    if "ill" in found:
        return True
    if "away" not in found:
        return False
    return not any(
        day.back is not None and day.back[0] < message.today and (day.shift is None or day.shift < 0)
        for day in named_days(message).days
        if any(one_sentence(message.tokens, *sorted((day.start, hit.start))) for hit in found["missed"])
        and not any(one_sentence(message.tokens, *sorted((day.start, hit.start))) for hit in found["away"])
    )


def _reasons_of_move(message: Message, found: dict[str, list[Hit]], claims: Sequence[Claim]) -> list[str]:
    """ "can't train tomorrow, ok on Saturday instead?", "away tomorrow, can I do Friday?": why a day is moved."""
    span = next((claim.value for claim in claims if claim.kind == "span" and claim.value is not None), None)
    if "move" not in found or span is None or span.end is None or span.start < message.today:
        return []
    ahead = any(hit.name == "missed_future" for hit in message.hits("intents", "past"))

    def of_the_move(hits: list[Hit]) -> bool:
        days = [
            day
            for day in named_days(message).days
            if any(one_sentence(message.tokens, *sorted((day.start, hit.start))) for hit in hits)
        ]
        return all(
            day.ahead is not None and day.ahead[0] in (span.start, span.end) and day.kind != "range" for day in days
        )

    return [name for name in ("missed", "away") if name in found and ahead and of_the_move(found[name])]


def _laughs(char: str) -> bool:
    return LAUGHING[0] <= char <= LAUGHING[1] or char in LAUGHING[2:]


def _talk(message: Message) -> bool:
    """Whether the words are those of people being friendly."""
    words = [token for token in message.tokens if token.kind == "word"]
    if not words:
        return any(ord(char) > 0x2190 for char in message.text)
    hits = message.hits("intents", "talk")
    laughs = not message.text.isascii() and any(map(_laughs, message.text))
    if not laughs and all(hit.name == "glue" for hit in hits):
        return False  # "scrap the dips": little words alone are no talk
    talk = longest(hits)
    covered = sum(hit.end - hit.start for hit in talk)
    return covered > 0 and covered * 9 >= len(words)
