"""Bodyweight, told with a cue, bare, or before its cue."""

from __future__ import annotations

from collections.abc import Iterable

from bot.reading.body.cues import ARROW, BETWEEN, SIGNS_BETWEEN, BodyCues, number_after
from bot.reading.body.sleep import hours_at
from bot.reading.little import little
from bot.reading.message import Claim
from bot.reading.reading import Ask
from bot.reading.red_flags import Cues
from planner.units import KG_PER_LB

PLAUSIBLE_KG = (30.0, 250.0)


GRAMS = 1000
STONES_TO_KILOS = 5  # tokens from stones to the kilograms they are


PARTS = frozenset({"/", "|", ",", ";", "\n"})
LEAST_LINE = 3  # tokens
SHORT = 8  # tokens
NEAR = 0.04  # an unnamed figure this near the last known bodyweight is one (common practice, no source)
MOST_BY = 10  # a weight that changed by so much is one on the belt
NEAR_PLANNED = 0.3  # of a planned load: a figure called "weight" may be in its place (common practice, no source)
CHANGE = 0.15  # a bodyweight further than this from the last known one is asked about (common practice)


PARTING = frozenset(",.;/|\n")


OF_THE_BODY = frozenset({"sleep", "site", "pain"})
SMALLEST_PLATES = 4  # to a kilogram


def _against_plan(body: BodyCues, at: int) -> bool:
    """Whether a number is set against another one: "35 kg instead of 27.5"."""
    tokens = body.tokens
    end = at + 1
    for name in ("kg", "lb"):
        end = body.starts("unit", name).get(end, end)
    hits = body.message.beginning("grammar")[end] if end < len(tokens) else ()
    return any(
        (hit.table, hit.name) == ("plan", "instead") and hit.end < len(tokens) and tokens[hit.end].value is not None
        for hit in hits
    )


def find_bodyweight(body: BodyCues, taken: set[int]) -> Iterable[Claim]:
    if "bodyweight" not in body.tables:
        yield from _opens_a_line(body, taken) or _off_the_plates(body, taken) or _of_the_body(body, taken)
        return
    message, tokens = body.message, body.tokens
    known = message.context.bodyweight_kg
    changed = _changed(body, taken)
    if changed:
        yield from changed
        return
    strong, weak = body.starts("bodyweight", "cue"), body.starts("bodyweight", "weak")
    lone = body.starts("bodyweight", "lone")
    moved = any(message.beginning("movements"))
    weak = {**weak, **lone}
    others = _of_others(body)  # "my sister weighs 62, me: 77.8"
    yield from (Claim(start, end, "noise", None) for start, end in others.items())
    cues = sorted({**weak, **strong}.items())
    sentences = message.sentences
    for start, end in cues:
        if any(a in taken for a in range(start, end)):
            continue
        high = next((b for a, b in sentences if a <= start < b), len(tokens))
        at = number_after(body, end, high, ("bodyweight", "at"), signs=SIGNS_BETWEEN)
        if at is None or at in taken or tokens[at].kind == "clock":
            continue
        if tokens[at - 1].text in little("by_so_much") and (tokens[at].value or 0) <= MOST_BY:
            continue  # "subí el peso en 2,5"
        if message.context.today and _against_plan(body, at):
            continue  # "peso 35 en lugar de 27,5"
        metric = _with_grams(body, at)
        value, stop = metric or _with_tenths(body, at)
        unit: str = "kg" if metric else message.context.unit
        said = "kg" if metric else None
        for name in ("kg", "lb"):
            after = body.starts("unit", name).get(stop)
            if after is not None:
                unit, said, stop = name, name, after
                break
        if said is None and stop in body.starts("unit", "rep_like") and tokens[stop].text not in little("after_weight"):
            continue
        slashed = stop < len(tokens) and tokens[stop].text == "/"
        if slashed and stop + 1 < len(tokens) and tokens[stop].space and tokens[stop + 1].kind == "word":
            slashed = False  # "weight: 72.4 / sleep: 7 h"
        if (
            slashed
            or (stop < len(tokens) and tokens[stop].text in ("x", "@"))
            or (
                stop < len(tokens)
                and tokens[stop].text == ","
                and not tokens[stop].space
                and stop + 1 < len(tokens)
                and tokens[stop + 1].value is not None
                and not tokens[stop + 1].space
            )
        ):
            continue
        if tokens[at - 1].text in ("x", "@", "+"):
            continue
        if (
            stop < high
            and tokens[stop].text in little("on_lift")
            and any(message.beginning("movements")[stop + 1 : stop + 3])
        ):
            continue  # "das Gewicht war 82,5 bei Kniebeugen"
        later = _later(body, stop, known, unit)
        if later is not None:
            yield Claim(start, later[1], "bodyweight", later[0])
            return
        kg = value * KG_PER_LB if unit == "lb" else value
        if start in lone and start not in strong and (said is None or moved) and not (others and known):
            continue  # "now at 77.5 kg" beside a movement is its load
        other = stop + 1
        either = other < len(tokens) and tokens[stop].text in little("or") and tokens[other].value is not None
        if either and kg >= PLAUSIBLE_KG[0]:
            yield Claim(start, other + 1, "bodyweight", None, Ask("bodyweight_kg", message.span(at, other + 1)))
            return
        near = known is not None and abs(kg - known) <= CHANGE * known
        plausible = PLAUSIBLE_KG[0] <= kg <= PLAUSIBLE_KG[1]
        if (near or known is None) and plausible:
            if start in weak and start not in strong and known is None and not 40 <= kg <= 160:
                continue
            yield Claim(start, stop, "bodyweight", kg)
            return
        if start in weak and start not in lone and plausible and _compared(body, stop, high):
            yield Claim(start, stop, "bodyweight", None, Ask("bodyweight_kg", message.span(at, at + 1)))
            return
        if start not in strong and (moved or start in lone):
            continue  # "with the weight 7.5 kg", "statt 20 hab ich 22,5 Kilo drangehängt"
        on_the_belt = kg < PLAUSIBLE_KG[0] and tokens[start].text in little("weight")
        if on_the_belt and (end == start + 1 if moved else _near_planned(body, kg)):
            continue  # "Klimmzüge 3x5, Gewicht 7,5 kg", "weight was 17.5" of planned 20
        alone = sum(1 for token in tokens if token.value is not None) == 1
        slip = value != int(value) and (alone or said is not None)  # "bodyweight 7.15": no count of repetitions
        if ((start in strong and value >= 25) or (slip and value < PLAUSIBLE_KG[0])) and not _is_load(body, start):
            yield Claim(start, stop, "bodyweight", None, Ask("bodyweight_kg", message.span(at, at + 1)))
            return
    told = _told_bare(body, taken) or [*_weighed(body, taken, sentences)]
    told = told or [*_heads(body, taken, sentences)] or _opens_a_line(body, taken)
    yield from told or _off_the_plates(body, taken) or _alone(body, taken) or _of_the_body(body, taken)


def _compared(body: BodyCues, at: int, end: int) -> bool:
    """ "Weight's 83 now, it was 86 in January": with what it was before, a weight of the body too."""
    tokens = body.tokens
    was = next((n for n in range(at, end) if tokens[n].text in little("was_once")), end)
    value = tokens[was + 1].value if was + 1 < end else None
    return value is not None and PLAUSIBLE_KG[0] <= value and was + 2 not in body.starts("unit", "rep_like")


def _near_planned(body: BodyCues, kg: float) -> bool:
    """Whether a figure is like a load of the day's plan."""
    loads = [one.load_kg for one in body.message.context.today or () if one.load_kg]
    return any(abs(kg - load) <= NEAR_PLANNED * load for load in loads)


def _with_tenths(body: BodyCues, at: int) -> tuple[float, int]:
    """The number at a token and the place after it; "setenta y cuatro con dos" are 74.2."""
    tokens, value = body.tokens, body.tokens[at].value or 0.0
    if at + 2 < len(tokens) and tokens[at + 1].text in little("and_tenths") and value == int(value):
        tenths = tokens[at + 2].value
        if tenths is not None and 0 < tenths < 10 and tenths == int(tenths) and at + 3 not in body.starts("unit", "kg"):
            return value + tenths / 10, at + 3
    return value, at + 1


def _with_grams(body: BodyCues, at: int) -> tuple[float, int] | None:
    """ "Setenta y ocho kilos con doscientos gramos": 78.2, and the place after the grams."""
    tokens = body.tokens
    kilos, stop = tokens[at].value or 0.0, body.starts("unit", "kg").get(at + 1)
    if stop is None or stop + 2 >= len(tokens) or kilos != int(kilos):
        return None
    joined = tokens[stop].text in little("and_tenths", "and")
    grams = tokens[stop + 1].value
    if not joined or grams is None or not 0 < grams < GRAMS or tokens[stop + 2].text not in little("grams"):
        return None
    return kilos + grams / GRAMS, stop + 3


def _later(body: BodyCues, at: int, known: float | None, unit: str) -> tuple[float, int] | None:
    """The weight behind an arrow, "72.4 → 71.9", and where it ends."""
    tokens = body.tokens
    end = at
    while end < len(tokens) and tokens[end].text in ARROW:
        end += 1
    if end == at or end >= len(tokens) or known is None or all(t.text in "-=" for t in tokens[at:end]):
        return None
    value = tokens[end].value
    if value is None:
        return None
    stop = end + 1
    for name in ("kg", "lb"):
        if body.starts("unit", name).get(stop) is not None:
            unit, stop = name, body.starts("unit", name)[stop]
            break
    kg = value * KG_PER_LB if unit == "lb" else value
    return (kg, stop) if abs(kg - known) <= CHANGE * known else None


def _changed(body: BodyCues, taken: set[int]) -> list[Claim]:
    """ "71.9 kg, down from 72.4": two weights near the last known one, the first is of now."""
    tokens, known = body.tokens, body.message.context.bodyweight_kg
    units = {name: body.starts("unit", name) for name in ("kg", "lb")}
    for start, end in sorted(body.starts("bodyweight", "from").items()):
        low = start - 1
        unit: str = body.message.context.unit
        while low >= 0 and tokens[low].value is None and (tokens[low].text in ",(" or low in units["kg"] | units["lb"]):
            unit = next((name for name, places in units.items() if low in places), unit)
            low -= 1
        was = tokens[end].value if end < len(tokens) else None
        now = tokens[low].value if low >= 0 else None
        if known is None or was is None or now is None or {low, end} & taken:
            continue
        stop = next((places[end + 1] for places in units.values() if end + 1 in places), end + 1)
        factor = KG_PER_LB if unit == "lb" else 1.0
        if _of_a_lift(body, low):
            continue  # "squats with 75 instead of 80"
        if all(abs(value * factor - known) <= CHANGE * known for value in (now, was)):
            return [Claim(low, stop, "bodyweight", now * factor)]
    return []


def _of_a_lift(body: BodyCues, at: int) -> bool:
    """Whether a sign or word of a load leads a number, or a movement is named before it in its part of the sentence."""
    tokens, moves = body.tokens, body.message.beginning("movements")
    if at and (tokens[at - 1].text in ("x", "@", "+") or tokens[at - 1].text in little("carrying")):
        return True
    for before in range(at - 1, -1, -1):
        if tokens[before].text in PARTING:
            return False
        if moves[before]:
            return True
    return False


def _told_bare(body: BodyCues, taken: set[int]) -> list[Claim]:
    """ "I'm 158 now": a weight if near the last known one, asked if only so in the other unit; stones are asked."""
    message, tokens = body.message, body.tokens
    for start, end in body.starts("bodyweight", "stone").items():
        numbers = [at for at in range(start, end) if tokens[at].value is not None and at not in taken]
        kilos = _in_kilos(body, end)
        if numbers and kilos is not None:
            return [Claim(numbers[0], kilos[1], "bodyweight", kilos[0])]
        if numbers:
            return [Claim(numbers[0], end, "bodyweight", None, Ask("bodyweight_kg", message.span(numbers[0], end)))]
    known = message.context.bodyweight_kg
    for start, end in body.starts("bodyweight", "am").items():
        at = next(at for at in range(start, end) if tokens[at].value is not None)
        value = tokens[at].value or 0.0
        said = next((name for name in ("kg", "lb") if body.starts("unit", name).get(at + 1)), None)
        kg = value * KG_PER_LB if said == "lb" else value
        near = known is not None and abs(kg - known) <= CHANGE * known
        believed = near or (known is None and PLAUSIBLE_KG[0] <= kg <= PLAUSIBLE_KG[1])
        if said is not None and at not in taken and believed and not _lift_beside(body, start, clause=near):
            return [Claim(start, end, "bodyweight", kg)]  # "I'm 64 kg now. Dips 3x8"
        if known is None or at in taken or said is not None:
            continue
        here, there = (value * KG_PER_LB, value) if message.context.unit == "lb" else (value, value * KG_PER_LB)
        if abs(here - known) <= CHANGE * known:
            return [Claim(start, end, "bodyweight", here)]
        if abs(there - known) <= CHANGE * known:
            return [Claim(start, end, "bodyweight", None, Ask("bodyweight_kg", message.span(at, at + 1)))]
    return []


def _lift_beside(body: BodyCues, at: int, *, clause: bool) -> bool:
    """Whether a lift is named in the sentence of a token, or in its clause."""
    low, high = next(((a, b) for a, b in body.message.sentences if a <= at < b), (0, len(body.tokens)))
    if clause:
        low = max((n + 1 for n in range(low, at) if body.tokens[n].text in PARTING), default=low)
        high = next((n for n in range(at, high) if body.tokens[n].text in PARTING), high)
    return any(body.message.beginning("movements")[low:high])


def _in_kilos(body: BodyCues, at: int) -> tuple[float, int] | None:
    """The same weight told in kilograms right behind stones, "12 st 4, so 78 kg", and where it ends."""
    for number in range(at, min(at + STONES_TO_KILOS, len(body.tokens))):
        value, stop = body.tokens[number].value, body.starts("unit", "kg").get(number + 1)
        if value is not None and stop is not None and PLAUSIBLE_KG[0] <= value <= PLAUSIBLE_KG[1]:
            return value, stop
    return None


def _of_others(body: BodyCues) -> dict[int, int]:
    """Where somebody else's weight is told."""
    told = body.starts("bodyweight", "other")
    if not told:
        return {}
    cues = Cues(body.message)
    sentences = body.message.sentences
    bounds = {start: next(((a, b) for a, b in sentences if a <= start < b), (0, 0)) for start in told}
    return {
        start: end
        for start, end in told.items()
        if cues.of_others(start, bounds[start], start + 1)
        and not _of_a_lift(body, start)
        and not _of_some(body, start, end)
    }


def _of_some(body: BodyCues, start: int, end: int) -> bool:
    """ "Two of them at 22.5": nobody's weight."""
    light = any((token.value or PLAUSIBLE_KG[0]) < PLAUSIBLE_KG[0] for token in body.tokens[start:end])
    return light and body.tokens[start].text in little("at")


def _weighed(body: BodyCues, taken: set[int], sentences: list[tuple[int, int]]) -> Iterable[Claim]:
    """A weight said before its cue: "71.5 today on the scale", "72.3 kg fasted"."""
    tokens, known = body.tokens, body.message.context.bodyweight_kg
    fill = body.covered("bodyweight", "at")
    for start, end in sorted({**body.starts("bodyweight", "after"), **body.starts("bodyweight", "cue")}.items()):
        low = next((a for a, b in sentences if a <= start < b), 0)
        for at in range(start - 1, max(low, start - BETWEEN) - 1, -1):
            value = tokens[at].value
            if value is None:
                if at in fill or any(body.starts("unit", name).get(at) for name in ("kg", "lb")):
                    continue
                if tokens[at].text == "," and _only_number(body):
                    continue  # "81 kilos, wearing shoes"
                break
            unit: str = body.message.context.unit
            for name in ("kg", "lb"):
                unit = name if body.starts("unit", name).get(at + 1) else unit
            kg = value * KG_PER_LB if unit == "lb" else value
            high = next((b for a, b in sentences if a <= start < b), len(tokens))
            if Cues(body.message).of_others(at, (low, high)):
                break  # "me 171, wife 134 on the scale"
            if at not in taken and known is not None and tokens[at - 1].text not in ("x", "@", "+"):
                if abs(kg - known) <= CHANGE * known:
                    yield Claim(at, end, "bodyweight", kg)
                    return
                if _only_number(body) and PLAUSIBLE_KG[0] <= kg <= PLAUSIBLE_KG[1]:
                    yield Claim(at, end, "bodyweight", None, Ask("bodyweight_kg", body.message.span(at, at + 1)))
                    return
            break


def _only_number(body: BodyCues) -> bool:
    """Whether a message has one number and names no movement."""
    numbers = sum(token.value is not None for token in body.tokens)
    return numbers == 1 and not any(body.message.beginning("movements"))


def _alone(body: BodyCues, taken: set[int]) -> list[Claim]:
    """ "70.4 this morning": nothing but a number close to the last known weight, and when."""
    tokens, known, message = body.tokens, body.message.context.bodyweight_kg, body.message
    if known is None or not tokens or len(tokens) > SHORT or not _only_number(body):
        return []
    at = next(at for at, token in enumerate(tokens) if token.value is not None)
    value = tokens[at].value or 0.0
    fill = body.covered("bodyweight", "at")
    greeted = {a for hit in message.hits("intents", "talk") for a in range(hit.start, hit.end)}
    unsaid = [a for a, token in enumerate(tokens) if a not in fill and a not in greeted and token.kind == "word"]
    kg = value * KG_PER_LB if message.context.unit == "lb" else value
    told = value != int(value) and at not in taken and any(a in fill for a in range(at + 1, len(tokens)))
    alone = told and not unsaid and (not at or tokens[at - 1].text not in ("x", "@", "+"))
    return [Claim(at, at + 1, "bodyweight", kg)] if alone and abs(kg - known) <= NEAR * known else []


def _heads(body: BodyCues, taken: set[int], sentences: list[tuple[int, int]]) -> Iterable[Claim]:
    """ "78.2 kg today, slept 7.5h": a weight near the last known one that is a clause of its own."""
    tokens, known = body.tokens, body.message.context.bodyweight_kg
    for start, end in sorted(body.starts("bodyweight", "headed").items()):
        at = start - 1
        if at < 0 or at in taken or tokens[at].value is None or known is None:
            continue
        opens = any(low == at for low, _ in sentences) or tokens[at - 1].text in ",;("
        closes = end >= len(tokens) or tokens[end].text in ",.;!)\n"
        unit = "lb" if start in body.starts("unit", "lb") else "kg"
        kg = (tokens[at].value or 0.0) * (KG_PER_LB if unit == "lb" else 1.0)
        if opens and closes and abs(kg - known) <= CHANGE * known:
            yield Claim(at, end, "bodyweight", kg)
            return


def _opens_a_line(body: BodyCues, taken: set[int]) -> list[Claim]:
    """ "72.1 / 7h / elbow 0": a line of the body, its first figure close to the last known weight."""
    tokens, known = body.tokens, body.message.context.bodyweight_kg
    if len(tokens) < LEAST_LINE or known is None or tokens[0].kind != "num" or 0 in taken:
        return []
    unit = next((name for name in ("kg", "lb") if 1 in body.starts("unit", name)), None)
    end = body.starts("unit", unit)[1] if unit else 1
    kg = (tokens[0].value or 0.0) * (KG_PER_LB if (unit or body.message.context.unit) == "lb" else 1.0)
    parted = end < len(tokens) and tokens[end].text in PARTS and tokens[end + 1 :]
    of_body = not body.tables.isdisjoint(("sleep", "site", "pain"))
    worked = any(body.message.beginning("movements"))
    if not parted or not of_body or worked or abs(kg - known) > NEAR * known:
        return []
    weighed = Claim(0, end, "bodyweight", kg)
    hours, stop = (hours_at(body, end + 1) if end + 1 < len(tokens) else None) or (0.0, end + 1)
    timed = stop - 1 in body.covered("unit", "hour") and end + 1 not in taken
    closes = stop >= len(tokens) or tokens[stop].text in PARTS
    return [weighed, Claim(end + 1, stop, "sleep", hours)] if timed and closes else [weighed]


def _off_the_plates(body: BodyCues, taken: set[int]) -> list[Claim]:
    """ "Slept 7:30, 71.9 kg, chins 4x4": a clause that is a weight near the last one, which no plates make.

    Plates may make it where nothing was lifted, and the clause says no more than that it is of this morning.
    """
    tokens, known = body.tokens, body.message.context.bodyweight_kg
    lifted = any(body.message.beginning("movements")) or bool(body.message.context.today)
    for start, stop in body.starts("unit", "kg").items() if known is not None else ():
        at = start - 1
        if at < 0 or tokens[at].kind != "num" or at in taken or known is None:
            continue
        value = tokens[at].value or 0.0
        low = next((n + 1 for n in range(at - 1, -1, -1) if tokens[n].text in PARTING), 0)
        of_day = " ".join(token.text for token in tokens[low:at]) in little("weighing_day")
        closes = stop >= len(tokens) or tokens[stop].text in PARTING
        off_plates = bool(value * SMALLEST_PLATES % 1) or (of_day and not lifted)
        if (low == at or of_day) and closes and abs(value - known) <= NEAR * known and off_plates:
            return [Claim(at, stop, "bodyweight", value)]
    return []


def _of_the_body(body: BodyCues, taken: set[int]) -> list[Claim]:
    """ "7.5 h slept, 75 kg": kilograms as a clause of their own, where only the body is spoken of; far off, asked."""
    message, tokens = body.message, body.tokens
    known = message.context.bodyweight_kg
    if body.tables.isdisjoint(OF_THE_BODY) or any(message.beginning("movements")):
        return []
    loads_kg = {one.load_kg for one in message.context.today or ()}
    found = []
    for unit in ("kg", "lb"):
        for start, stop in body.starts("unit", unit).items():
            at = start - 1
            alone = at >= 0 and (not at or tokens[at - 1].text in PARTING)
            if not alone or at in taken or tokens[at].kind != "num":
                continue
            kg = (tokens[at].value or 0.0) * (KG_PER_LB if unit == "lb" else 1.0)
            closes = stop >= len(tokens) or tokens[stop].text in PARTING
            if closes and PLAUSIBLE_KG[0] <= kg <= PLAUSIBLE_KG[1] and kg not in loads_kg:
                found.append((at, stop, kg))
    if len(found) != 1:
        return []
    at, stop, kg = found[0]
    if known is None or abs(kg - known) <= CHANGE * known:
        return [Claim(at, stop, "bodyweight", kg)]
    return [Claim(at, stop, "bodyweight", None, Ask("bodyweight_kg", message.span(at, stop)))]


def _is_load(body: BodyCues, start: int) -> bool:
    """ "bw +20", "bodyweight pull-ups 25": the word stands for no added load."""
    before = body.tokens[start - 1] if start else None
    return before is not None and (before.value is not None or before.text in little("carrying"))
