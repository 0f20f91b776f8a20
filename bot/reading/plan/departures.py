"""How a day departed from the plan, in words that name no new value: "took 5 off", "a 4th rep on the last"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import takewhile

from bot.reading.bounds import clause_end, clause_start, within_sentence
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.ground import members, plan_names

VALUED = frozenset({"bare", "load"})
WHOLE = frozenset({"done", "planned", "all_lifts"})
ENDED = frozenset({"quit", "stopped", "skipped"})


def but_for(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Only change was the chins, took 35": all else was as planned."""
    out: list[Fact] = []
    for fact in facts:
        out.append(fact)
        words = message.span(fact.start, fact.end).lower()
        if fact.kind == "plan" and words in little("only_change"):
            out[-1:] = [
                Fact("plan", fact.start, fact.end, "planned", {"names": ["planned", "all_lifts"]}),
                Fact("sep", fact.end, fact.end, 1, {"mark": ","}),
            ]
    return out


def but_only(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "All done but only 4 on the last set of dips": what falls short stands in a clause of its own."""
    out: list[Fact] = []
    for fact in facts:
        led = message.tokens[fact.start].text if fact.kind == "scheme" and fact.value == "got" else ""
        if led in little("but") and fact.end > fact.start + 1:
            out.append(Fact("sep", fact.start, fact.start + 1, 1, {"mark": "but"}))
            out.append(Fact("plan", fact.start + 1, fact.end, "only", {"names": ["only"]}))
            continue
        out.append(fact)
    return out


def all_but_lift(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "All done but the hangs, grip was gone": what stands alone behind "but" was left out."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        end = clause_end(facts, at + 1)
        led = bool(out) and bool(plan_names(out[-1]) & {"done", "planned", "all_lifts"})
        led = led and not any("skipped" in plan_names(one) for one in out)  # "skipped all of it but the dips"
        named = [one for one in facts[at + 1 : end] if plan_names(one) != {"the"}]
        alone = len(named) == 1 and named[0].kind == "move" and end > at + 2
        if fact.kind == "sep" and fact.note.get("mark") == "but" and led and alone:
            fact = Fact("plan", fact.start, fact.end, "except", {"names": ["except"]})
        out.append(fact)
    return out


def but_then(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Did everything but stopped the dips at 8": all was done, and what follows is told of some of it."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        ends_but = "except" in plan_names(fact) and message.tokens[fact.end - 1].text in little("but")
        whole = fact.end > fact.start + 1 or bool(out and plan_names(out[-1]) & WHOLE)
        if ends_but and whole and at + 1 < len(facts) and _what_was_done(message, facts[at + 1]):
            if fact.end > fact.start + 1:
                out.append(Fact("plan", fact.start, fact.end - 1, "done", {"names": ["done"]}))
            out.append(Fact("sep", fact.end - 1, fact.end, 1, {"mark": "but"}))
            continue
        out.append(fact)
    return out


def _what_was_done(message: Message, fact: Fact) -> bool:
    if fact.kind == "word" and fact.end == fact.start + 1 and message.tokens[fact.start].text in little("i_did"):
        return True  # "everything but I dropped the top set to 27.5"
    return fact.kind == "plan" and bool(plan_names(fact) & {"quit", "took", "swap", "by", "turned_to", "stopped"})


def stopped_at_reps(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Stopped the dips at 8 each set": fewer reps than planned, where the plan names no effort that it could be."""
    out = list(facts)
    for at, fact in enumerate(facts):
        if fact.kind != "at" or not at:
            continue
        led = list(takewhile(lambda one: one.kind != "sep", reversed(facts[:at])))
        moves = [one for one in led if one.kind == "move"]
        if not moves and _cut_off(message, led, fact):
            out[at] = replace(fact, kind="bare", value=fact.value[0], note={"kg": fact.value[1], "reps": True})
            out = [_plain(one) if one in led and plan_names(one) == {"skipped"} else one for one in out]
            continue
        if len(moves) != 1 or not any(plan_names(one) & {"quit"} for one in led):
            continue
        own = [one for one in message.context.today or () if one.movement in members(moves[0].value)]
        number = fact.value[0]
        if own and number == int(number) and all(one.rpe is None and (one.reps or 0) > number for one in own):
            note = {"kg": fact.value[1], "reps": True}
            out[at] = Fact("bare", fact.start, fact.end, float(number), note)
    return out


def _cut_off(message: Message, led: Sequence[Fact], at: Fact) -> bool:
    """Whether a set was cut off there: "cut the last set off at 6" of planned eights."""
    words = (message.tokens[n].text for fact in led for n in range(fact.start, fact.end))
    one = any(fact.kind == "scope" and _one_set(fact.value) for fact in led)
    most = max((planned.reps or 0 for planned in message.context.today or ()), default=0)
    number = at.value[0]
    cut = any(word in little("cut_at") for word in words)
    return cut and one and number == int(number) and number < most and not at.note.get("range")


def _plain(fact: Fact) -> Fact:
    return Fact("word", fact.start, fact.end, None, {"noise": True})


def last_of_lift(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Last dip set 5": five of it; no set has two places."""
    out: list[Fact] = []
    for fact in facts:
        last = out[-2:]
        named = [one.kind for one in last] == ["scope", "move"] and _one_set(last[0].value)
        if named and fact.kind == "scope" and fact.note.get("numbered"):
            fact = Fact("bare", fact.start, fact.end, float(fact.value), {"kg": float(fact.value), "set": True})
        led = [one.kind for one in last] == ["bare", "plan"] and last[0].note.get("set")
        if led and fact.kind == "bare" and "instead" in plan_names(last[1]):
            out[-2:] = [Fact("instead", last[0].start, fact.end, (last[0].value, fact.value, "reps"))]
            continue  # "last dip set 6 not 8"
        out.append(fact)
    return out


def _one_set(scope: object) -> bool:
    return scope in ("last", "first") or isinstance(scope, int)


def nth_go(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Only 1 on the second go": the second set."""
    return [
        fact
        for at, fact in enumerate(facts)
        if not (
            fact.value == "attempt" and at and facts[at - 1].kind == "scope" and isinstance(facts[at - 1].value, int)
        )
    ]


def taken_off(_message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "Took 5 off for the last two": less by so much, where it can be no load by itself."""
    if any(row.assist_kg for row in rows):
        return list(facts)  # help that was taken off the body
    out: list[Fact] = []
    for fact in facts:
        number = out[-1] if out else None
        if number is not None and "off" in plan_names(fact) and number.kind in VALUED and number.value:
            kg = number.note.get("kg", number.value)
            if any(row.load_kg and row.load_kg > kg for row in rows):
                out[-1] = Fact("delta", number.start, fact.end, (kg, "load", -1), {"open": False})
                continue
        out.append(fact)
    return out


def less_by_sign(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """ "As planned but -2.5 kg": less than the planned load, where the plan has one and no help to take it off."""
    loaded = any(row.load_kg for row in rows) and not any(row.assist_kg for row in rows)
    out: list[Fact] = []
    for fact in facts:
        signed = fact.kind == "assist" and bool(fact.value) and message.tokens[fact.start].text in ("-", "–", "−")
        if loaded and signed and any((row.load_kg or 0) > fact.value for row in rows):
            fact = Fact("delta", fact.start, fact.end, (float(fact.value), "load", -1), {"open": False})
        out.append(fact)
    return out


def left_at(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Dejé las flexiones en dos series": so many sets of them, and not left out."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        behind = [one for one in facts[at + 1 : at + 5] if plan_names(one) != {"the"}][:3]
        kinds = [one.kind for one in behind]
        led = fact.kind == "plan" and "skipped" in plan_names(fact) and _text(message, fact) in little("left_at")
        if led and kinds == ["move", "word", "count"] and _text(message, behind[1]) in little("fails_on"):
            continue
        if out and out[-1].kind == "word" and fact.kind == "count" and _left_before(message, facts, at):
            fact = Fact("count", fact.start, fact.end, fact.value, {**fact.note, "only": True})
        out.append(fact)
    return out


def _left_before(message: Message, facts: Sequence[Fact], at: int) -> bool:
    low = max(0, at - 4)
    return any(one.kind == "plan" and _text(message, one) in little("left_at") for one in facts[low:at])


def stopped_before(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "My boss rang before the fourth set and I left it there": one set fewer than that."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        led = out[-1] if out else None
        before = led is not None and led.kind in ("word", "plan") and _text(message, led) in little("before_the_set")
        nth = fact.value if fact.kind == "scope" and isinstance(fact.value, int) and fact.value > 1 else 0
        behind = facts[at + 1 : at + 7]
        quits = next((n for n, one in enumerate(behind) if "quit" in plan_names(one)), None)
        silent = quits is not None and all(
            within_sentence(one) or one.kind in ("word", "move") for one in behind[:quits]
        )
        if nth and before and silent:
            out[-1] = Fact("count", fact.start, fact.end, nth - 1, {"only": True, "stopped": True})
            continue
        out.append(fact)
    return out


def stopped_after(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Stopped the pull-ups after set 2", "dips binned after one set": so many of its sets.

    Not "skipped the dips after set 4 of pull-ups", whose set is of what is named behind it.
    """
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        last = [one for one in out[-5:] if one.value != "the"][-3:]
        closes = last and last[-1].note.get("stopped") and "skipped" in plan_names(fact)
        after = next((one.kind for one in facts[at + 1 : at + 3] if one.value != "the"), "")
        if closes and after != "move":
            continue  # "Dips nach zwei Sätzen weggelassen"
        if len(last) > 2 and "less" in plan_names(last[-2]):  # "cut short after 2 sets"
            last = [one for one in out[-6:] if one.value != "the" and one is not last[-2]][-3:]
        ended = next((one for one in last[:-1] if plan_names(one) & ENDED), None)
        named = any(one.kind == "move" for one in last[:-1])
        led = ended is not None and named and last[-1].kind == "word" and fact.start - last[-1].end <= 1  # an article
        led = led and message.tokens[last[-1].start].text in little("after_set")
        many = _sets_in(fact) if led else 0
        behind = list(takewhile(lambda one: one.kind != "sep", facts[at + 1 : at + 4]))
        if many and not any(one.kind == "move" for one in behind):
            out[-1] = Fact("count", fact.start, fact.end, many, {"only": True, "stopped": True})
            short = out[-2] if len(out) > 1 and plan_names(out[-2]) == {"less"} else None
            out = [one for one in out if one is not ended and one is not short]
            continue
        out.append(fact)
    return out


def ended_behind(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "After set 2 I felt dizzy so I packed it in": so many sets, where the end is told behind them."""
    out: list[Fact] = []
    for at, fact in enumerate(facts):
        led = next((n for n in range(len(out) - 1, -1, -1) if not _article(message, out[n])), None)
        many = _sets_in(fact) if led is not None and _after(message, out[led]) else 0
        behind = list(takewhile(_says_why, facts[at + 1 :]))
        end = facts[at + 1 + len(behind)] if at + 1 + len(behind) < len(facts) else None
        if many and end is not None and "quit" in plan_names(end) and not _told_in(facts, at):
            out[led:] = [Fact("count", fact.start, fact.end, many, {"only": True, "stopped": True})]
            continue
        out.append(fact)
    return out


def _article(message: Message, fact: Fact) -> bool:
    return plan_names(fact) == {"the"} or (fact.kind == "word" and _text(message, fact) in little("article"))


def _text(message: Message, fact: Fact) -> str:
    return " ".join(token.text for token in message.tokens[fact.start : fact.end])


def _says_why(fact: Fact) -> bool:
    """Whether a fact may stand between the sets and the end: "the rain came, so I", "hatte ich genug und"."""
    joins = within_sentence(fact)
    return joins or fact.kind in ("word", "claim") or fact.value == "got" or plan_names(fact) == {"the"}


def _after(message: Message, fact: Fact) -> bool:
    return fact.kind in ("word", "plan") and _text(message, fact) in little("after_set")


def _told_in(facts: Sequence[Fact], at: int) -> bool:
    """Whether the clause of a fact tells work, or names a lift."""
    low = clause_start(facts, at)
    clause = takewhile(lambda one: one.kind != "sep", facts[low:])
    return any(
        one.kind in ("move", "rows", "bare", "load", "loads", "count") and one is not facts[at] for one in clause
    )


def _sets_in(fact: Fact) -> int:
    """How many sets there are up to the one that a fact names or counts; 0: it does neither."""
    if fact.kind == "scope":
        return fact.value if isinstance(fact.value, int) else int(fact.value == "first")
    return int(fact.value) if fact.kind == "count" and not fact.note.get("more") else 0


def missed_once(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Missed the last rep of the last set, got stuck halfway": one miss, told twice."""
    out: list[Fact] = []
    told = False
    for at, fact in enumerate(facts):
        if fact.kind == "fail" and told and fact.value is None and facts[at - 1].kind == "sep":
            continue
        told = (told or (fact.kind == "fail" and bool(fact.note.get("rep")))) and fact.value != 3
        out.append(fact)
    return out
