"""Holds told against planned holds: "every hold 17s", "two full holds, then 18 and 8", "two seconds short in each"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import within_sentence
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, plan_names

SMALL_PART = 0.5  # of the planned hold: less is what it lacked, where words say that it lacked something


def planned_holds(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> Sequence[Fact]:
    """The facts as they are meant of holds; unchanged where the sets spoken of are none."""
    own = _held(facts, rows)
    if not own:
        return facts
    out = [fact for fact in facts if not _is_held(message, fact)]
    out = _counted(_changed(message, out, own), len(own))
    out = _every(_repeated(out))
    return out if len(out) != len(facts) or any(a is not b for a, b in zip(out, facts, strict=True)) else facts


def _held(facts: Sequence[Fact], rows: Sequence[Row]) -> list[Row]:
    """The planned sets spoken of, where they are holds of no side."""
    moves = [fact.value for fact in facts if fact.kind == "move" and fact.value.movement != "!"]
    named = [row for row in rows if moves and row.movement in members(moves[0]) and row.part != "warm_up"]
    own = named if moves else [rows[at] for at in main_rows(rows)]
    plain = len(moves) < 2 and all(row.hold_s is not None and row.side is None for row in own)
    return own if plain else []


def _is_held(message: Message, fact: Fact) -> bool:
    """The "held" that elsewhere is a pause in a repetition."""
    words = {message.tokens[at].text for at in range(fact.start, fact.end)}
    return (
        fact.kind == "flag" and str(fact.value).startswith("pause") and bool(words & little("hold_word", "held_word"))
    )


def _changed(message: Message, facts: Sequence[Fact], own: Sequence[Row]) -> list[Fact]:
    """With seconds more or less where the words tell so: "5 extra seconds", "2 seconds early"."""
    out: list[Fact] = []
    least = min(row.hold_s or 0.0 for row in own)
    for fact in facts:
        behind = {token.text for token in message.tokens[fact.end : fact.end + 2]}
        if fact.kind == "delta" and fact.value[1] == "load" and behind & little("seconds_word"):
            fact = Fact("delta", fact.start, fact.end, (fact.value[0], "hold", fact.value[2]), fact.note)
        held = fact.value[0].hold_s if fact.kind == "rows" and len(fact.value) == 1 else None
        if held and held <= SMALL_PART * least and behind & little("short_of_it", "too_short"):
            fact = Fact("delta", fact.start, fact.end, (held, "hold", -1), {"open": False})
        out.append(fact)
    return out


def _repeated(facts: Sequence[Fact]) -> list[Fact]:
    """With "20s twice" as two holds."""
    out: list[Fact] = []
    for fact in facts:
        last = out[-1] if out else None
        one = last is not None and last.kind == "rows" and len(last.value) == 1 and last.value[0].hold_s
        if one and last is not None and fact.kind == "repeat" and isinstance(fact.value, int):
            entries = [replace(last.value[0]) for _ in range(fact.value)]
            out[-1] = Fact("rows", last.start, fact.end, entries, {**last.note, "one": False})
            continue
        out.append(fact)
    return out


def _counted(facts: Sequence[Fact], total: int) -> list[Fact]:
    """With "two full holds" as the first two, and "one hold fewer" as a set less."""
    out: list[Fact] = []
    for fact in facts:
        last = [one for one in out[-2:] if one.kind != "word"]
        led = last[-1] if last else None
        counts = led is not None and led.kind == "bare" and led.value in range(1, total)
        full = counts and any(one.value in little("full_way") for one in out[-1:] if one.kind == "word")
        if counts and led is not None and "holds" in plan_names(fact) and full:
            del out[out.index(led) :]
            out.append(Fact("scope", led.start, fact.end, ("first", int(led.value)), {"text": ""}))
            out.append(Fact("plan", fact.end, fact.end, "planned", {"names": ["planned"]}))
            continue
        if counts and led is not None and "less" in plan_names(fact) and out[-1] is led:
            out[-1] = Fact("count", led.start, led.end, int(led.value), {})
        out.append(fact)
    return out


def _every(facts: Sequence[Fact]) -> list[Fact]:
    """With "every hold" as all of them, and holds told one by one as one list."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        behind = facts[at + 1] if at + 1 < len(facts) else None
        whole = (fact.kind == "scheme" and fact.value == "every") or "holds" in plan_names(fact)
        if whole and behind is not None and behind.kind in ("rows", "delta"):
            fact = Fact("scope", fact.start, fact.end, "all", {"text": ""})
        if fact.kind == "side" and fact.value == "each" and any(one.kind == "scope" for one in facts[at : at + 3]):
            continue  # "each of the four holds"
        out.append(fact)
    return _listed(out)


def _listed(facts: Sequence[Fact]) -> list[Fact]:
    """With holds one behind the other, parted by no more than "then", as one list."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        told = [n for n in range(len(out)) if out[n].kind == "rows"]
        first = told[-1] if told else None
        between = out[first + 1 :] if first is not None else []
        joins = first is not None and bool(between) and all(within_sentence(one) for one in between)
        alone = all(one.kind in ("sep", "word", "claim") for one in facts[at + 1 : at + 2])
        if fact.kind == "rows" and joins and alone and first is not None and _holds(fact) and _holds(out[first]):
            before = out[first]
            note = {"list": True, "mark": ","}
            out[first:] = [Fact("rows", before.start, fact.end, [*before.value, *fact.value], note)]
            continue
        out.append(fact)
    return out


def _holds(fact: Fact) -> bool:
    return all(entry.hold_s is not None and entry.load_kg is None for entry in fact.value)
