"""Words beside a value that would hide it: "lost count and stopped at 3", "nearly all… only the last rep missed"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import SENTENCE, clause_end, clause_start, is_strong
from bot.reading.facts import Entry, Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, plan_names

COUNTED = 2  # facts: a number, and the word for what was miscounted
REPS = frozenset({"rows", "bare"})


def without_asides(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts without such words."""
    out = _last_but_one(message, _nearly_all(facts), rows)
    out = [fact for at, fact in enumerate(out) if not (_lost_count(out, at) or _came_together(message, out, at))]
    out = [fact for at, fact in enumerate(out) if not (_a_few(message, fact) or _gone(message, out, at))]
    out = [fact for at, fact in enumerate(out) if not _in_the_end(message, out, at)]
    out = [fact for at, fact in enumerate(out) if not (_meant_hold(out, at, rows) or _so_left(message, out, at))]
    out = _neither(message, _up_to_set(message, _all_the_others(message, out)))
    out = _each_of_those(out)
    out = _comes_to(message, out)
    return _sets_of(message, _beyond_all(message, out, rows))


def _nearly_all(facts: Sequence[Fact]) -> list[Fact]:
    """ "Nearly all… only the last rep of the fourth missed": all, but for what is told behind."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        if "most" in plan_names(fact):
            rest = [one for one in facts[at + 1 :] if one.kind not in ("sep", "word", "scheme")]
            only = bool(rest) and "only" in plan_names(rest[0])
            told = [one.kind for one in rest[1:]]
            if only and "fail" in told and ("scope" in told or "last_rep" in told):
                fact = Fact("plan", fact.start, fact.end, "done", {"names": ["done"]})
        out.append(fact)
    return out


def _lost_count(facts: Sequence[Fact], at: int) -> bool:
    """ "Lost count on the third and stopped after 3 reps": which set it was, and what it came to, are told."""
    if facts[at].kind != "vague":
        return False
    near = facts[max(0, at - 4) : at]
    named = any(fact.kind == "scope" and fact.value not in ("all", "over") for fact in near)
    return named and any(fact.kind in REPS for fact in facts[at : at + 5])


def _came_together(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """ "Im letzten Satz kamen nur vier Wiederholungen zusammen": no sum."""
    fact = facts[at]
    if fact.kind != "scheme" or fact.value != "total" or not at or facts[at - 1].kind not in REPS:
        return False
    start = clause_start(facts, at)
    words = {message.tokens[n].text for one in facts[start:at] for n in range(one.start, one.end)}
    return bool(words & little("came_together"))


def _a_few(message: Message, fact: Fact) -> bool:
    """ "Fehlten ein paar": no one, and no number."""
    behind = {token.text for token in message.tokens[fact.end : fact.end + 1]}
    return fact.kind == "bare" and bool(fact.note.get("spelled")) and fact.value == 1 and bool(behind & little("a_few"))


def _in_the_end(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """ "Zum Schluss noch einen fünften Satz": when it was done, where the set is named behind it."""
    fact = facts[at]
    led = " ".join(token.text for token in message.tokens[max(0, fact.start - 1) : fact.end])
    if fact.kind == "plan" and plan_names(fact) == {"quit"} and led in little("at_the_end"):
        return True  # "am Schluss noch einer"
    if fact.kind != "scope" or fact.note.get("text") not in little("at_the_end"):
        return False
    behind = facts[at + 1 : clause_end(facts, at + 1)]
    return any(one.kind == "scope" and isinstance(one.value, int) for one in behind)


def _gone(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """ "The ten kilo plate was gone, so …": why, and no load."""
    if facts[at].kind != "load" or facts[at].note.get("how") or not facts[at].value:
        return False
    piece = facts[clause_start(facts, at) : clause_end(facts, at)]
    silent = all(one.kind == "word" or plan_names(one) == {"the"} for one in piece if one is not facts[at])
    return silent and any(_texts(message, one) & little("gone") for one in piece)


def _meant_hold(facts: Sequence[Fact], at: int, rows: Sequence[Row]) -> bool:
    """ "Never quite got to the 20, only 18 seconds each time": the planned seconds, and no load."""
    fact = facts[at]
    if fact.kind != "load" or fact.note.get("unit") or fact.note.get("how") != "at":
        return False
    planned = any(row.hold_s == fact.value and not row.load_kg for row in rows)
    held = any(one.kind == "rows" and one.value[0].hold_s is not None for one in facts[at + 1 :])
    return planned and held


def _so_left(message: Message, facts: Sequence[Fact], at: int) -> bool:
    """ "Beinheben also auch nicht mehr gemacht": "also" parts the lift from what came of it."""
    fact = facts[at]
    if fact.kind != "sep" or fact.end <= fact.start or message.tokens[fact.start].text not in little("so_then"):
        return False
    led = facts[at - 1].kind == "move" and (at == 1 or facts[at - 2].kind == "sep") if at else False
    return led and at + 1 < len(facts) and "skipped" in plan_names(facts[at + 1])


def _last_but_one(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Der vorletzte Satz": by its number, of the lift named before or of the main one."""
    out: list[Fact] = []
    for fact in facts:
        words = {token.text for token in message.tokens[fact.start : fact.end]}
        if fact.kind == "word" and words & little("last_but_one"):
            moves = [one for one in out if one.kind == "move"]
            own = [row for row in rows if moves and row.movement in members(moves[-1].value)]
            own = own or [rows[at] for at in main_rows(rows)]
            if len(own) > 1 and not any(row.side for row in own):
                fact = Fact("scope", fact.start, fact.end, len(own) - 1, {"text": ""})
        out.append(fact)
    return out


def _up_to_set(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "The plan up to set two, then 15 for the rest": those as planned."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        led = out[-1] if out else None
        plan = led is not None and led.kind == "word" and bool(_texts(message, led) & little("plan_of"))
        first = plan and (len(out) == 1 or out[-2].kind == "sep")
        only = first and fact.kind == "count" and bool(fact.note.get("only"))
        if only and any("rest" in plan_names(one) for one in facts[at + 1 :]):
            out.append(Fact("scope", fact.start, fact.end, ("first", int(fact.value)), {"text": ""}))
            out.append(Fact("plan", fact.end, fact.end, "planned", {"names": ["planned"]}))
            continue
        out.append(fact)
    return out


def _texts(message: Message, fact: Fact) -> set[str]:
    return {token.text for token in message.tokens[fact.start : fact.end]}


def _all_the_others(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "Außer Klimmzügen hab ich nichts vom Plan gemacht": only those."""
    out = list(facts)
    for at, fact in enumerate(out):
        if "except" not in plan_names(fact) or fact.kind != "plan":
            continue
        end = clause_end(out, at + 1)
        piece = out[at + 1 : end]
        moves = [one for one in piece if one.kind == "move"]
        texts = [text for one in piece for text in _texts(message, one)]
        nothing = bool(little("nothing").intersection(texts)) and moves and piece[0] is moves[0]
        if nothing and not any(one.kind in (*REPS, "load", "scope", "count") for one in piece):
            only = Fact("plan", fact.start, fact.end, "only", {"names": ["only"]})
            planned = Fact("plan", moves[-1].end, moves[-1].end, "planned", {"names": ["planned"]})
            return [*out[:at], only, *moves, planned, *out[end:]]
    return out


def _neither(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "Weder Aufwärmen noch Beinheben": both were left out."""
    out: list[Fact] = []
    neither = False
    for fact in facts:
        if fact.kind == "sep":
            neither = False
        elif fact.kind == "word" and _texts(message, fact) & little("neither"):
            neither = True
            fact = Fact("plan", fact.start, fact.end, "skipped", {"names": ["skipped"]})
        elif neither and fact.kind == "word" and _texts(message, fact) & little("nor"):
            out.append(Fact("sep", fact.start, fact.end, 1, {"mark": "and"}))
            fact = Fact("plan", fact.start, fact.end, "skipped", {"names": ["skipped"]})
        out.append(fact)
    return out


def _each_of_those(facts: Sequence[Fact]) -> list[Fact]:
    """ "Three sets, four reps each set": so many of so many."""
    out: list[Fact] = []
    start = 0
    while start < len(facts):
        end = clause_end(facts, start)
        piece = facts[start:end]
        told = [fact for fact in piece if fact.kind != "word"]
        every = [fact.kind for fact in told] == ["scope", "rows"] and told[0].value == "all" and _one(told[1])
        before = next((n for n in range(len(out) - 1, -1, -1) if out[n].kind not in ("sep", "word")), None)
        counted = before is not None and out[before].kind == "count" and not out[before].note.get("of_plan")
        parted = before is not None and all(one.kind == "sep" and one.value < SENTENCE for one in out[before + 1 :])
        alone = before is not None and (before == 0 or out[before - 1].kind in ("sep", "word", "move"))
        if every and counted and parted and alone and before is not None and start:
            entries = [replace(told[1].value[0]) for _ in range(int(out[before].value))]
            out[before:] = [Fact("rows", out[before].start, told[1].end, entries, {"plain": True})]
        else:
            out += piece
        out += facts[end : end + 1]
        start = end + 1
    return out


def _one(fact: Fact) -> bool:
    return len(fact.value) == 1 and bool(fact.note.get("reps"))


def _comes_to(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "On the last set one more, so 7": what the set came to, once."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        after = facts[at + 1] if at + 1 < len(facts) else None
        closes = after is None or after.kind == "sep"
        if fact.kind == "bare" and closes and out and is_strong(out[-1]) and out[-1].value < SENTENCE:
            led = {message.tokens[n].text for n in range(max(0, fact.start - 1), fact.start)}
            before = [n for n in range(len(out)) if out[n].kind == "delta" and out[n].value[1] == "reps"]
            scope = bool(before) and any(one.kind == "scope" for one in out[max(0, before[-1] - 3) : before[-1] + 3])
            if led & little("comes_to") and scope and fact.value == int(fact.value):
                old = out[before[-1]]
                told = Fact("rows", old.start, old.end, [Entry(int(fact.value))], {"one": True, "reps": True})
                out[before[-1]] = told
                while out[-1].kind == "sep":
                    out.pop()
                continue
        out.append(fact)
    return out


def _beyond_all(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "After the four planned sets came one more, 4 with 15": a set beyond those planned."""
    planned = len(main_rows(rows))
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        behind = facts[at + 1 : at + 2]
        extra = bool(behind) and behind[0].kind == "word" and bool(_texts(message, behind[0]) & little("extra_weight"))
        if fact.kind == "scope" and fact.value == planned + 1 and extra:
            out.append(Fact("plan", fact.start, fact.end, "extra_set", {"names": ["extra_set"]}))
            continue  # "fünfter Satz zusätzlich: 3 mit 12,5"
        if fact.kind == "scope" and fact.value == ("from", planned + 1):
            done = Fact("plan", fact.start, fact.end, "done", {"names": ["done"]})
            comma = Fact("sep", fact.end, fact.end, 1, {"mark": ","})
            out += [done, comma, Fact("plan", fact.end, fact.end, "extra_set", {"names": ["extra_set"]})]
            continue
        out.append(fact)
    return out


def _sets_of(message: Message, facts: Sequence[Fact]) -> list[Fact]:
    """ "Drei 4er statt vier 6er": so many sets of so many reps, in place of others."""
    out = list(facts)
    for at in range(len(out) - 2, 0, -1):
        many, turn, old = out[at - 1], out[at], out[at + 1]
        if (many.kind, turn.kind, old.kind) != ("bare", "instead", "bare") or turn.value[2] is not None:
            continue
        ends = {message.tokens[n].text for n in range(old.end, min(old.end + 1, len(message.tokens)))}
        if not ends & little("ending_of_these") or many.value not in range(1, 10):
            continue
        entries = [Entry(int(turn.value[0])) for _ in range(int(many.value))]
        out[at - 1 : at + 2] = [Fact("rows", many.start, old.end, entries, {"plain": True})]
    return out
