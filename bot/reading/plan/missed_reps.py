"""Which rep of which set was missed: "on the third I missed the fifth", "en la última la cuarta no subió"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bot.reading.bounds import is_comma
from bot.reading.facts import Fact
from bot.reading.fold.rows import Row
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.clauses import clause_around
from bot.reading.plan.ground import plan_names
from bot.reading.tokens import Token

TWO = 2  # scopes: the set, and the repetition
ON_LIFT = 3  # facts of "on the dips"
REACH = 5  # facts from "except" to the set that the rep is of


def rep_tried(_message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Beim vierten hab ich die fünfte versucht, kam aber nicht mehr über die Stange": the try was a miss."""
    for at, fact in enumerate(facts):
        if fact.kind != "scheme" or fact.value != "attempt":
            continue
        led = [one for one in clause_around(facts, at) if one.kind == "scope" and one.start < fact.start]
        end = next((n for n in range(at + 1, len(facts)) if not _between(facts[n])), len(facts))
        missed = facts[end] if end < len(facts) else None
        strong = missed is not None and missed.kind == "fail" and missed.value is None and not missed.note.get("weak")
        if len(led) == TWO and strong and missed is not None:
            return [
                *facts[:at],
                replace(missed, start=fact.start, end=fact.end),
                *facts[at + 1 : end],
                *facts[end + 1 :],
            ]
    return facts


def rep_numbered(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Tried rep 5 on the last set and missed", "la rep 5 de la última no salió": which rep it was."""
    for at, fact in enumerate(facts):
        number = facts[at + 1] if at + 1 < len(facts) else None
        named = fact.kind == "word" and " ".join(t.text for t in message.tokens[fact.start : fact.end]) in little(
            "rep_word"
        )
        if not named or number is None or number.kind != "bare" or number.value != int(number.value):
            continue
        clause = clause_around(facts, at)
        missed = [one for one in clause if one.kind == "fail" and one.value is None and not one.note.get("weak")]
        other = any(one.kind in ("rows", "bare", "load") and one is not number for one in clause)
        if missed and not other and any(one.kind == "scope" for one in clause):
            told = replace(missed[0], value=int(number.value), note={**missed[0].note, "rep": True})
            gone = {id(number), *(id(one) for one in missed[1:])}
            gone |= {id(one) for one in clause if (one.kind, one.value) == ("scheme", "attempt")}
            return [told if one is missed[0] else one for one in facts if id(one) not in gone]
    return facts


def _between(fact: Fact) -> bool:
    return fact.kind == "word" or is_comma(fact) or plan_names(fact) == {"the"}


def rep_of_a_set(message: Message, facts: Sequence[Fact], rows: Sequence[Row]) -> list[Fact]:
    """The facts, where of two ordinals beside a miss one is the set, the other the rep."""
    most = max((row.reps or 0 for row in rows), default=0)
    out: list[Fact] = []
    piece: list[Fact] = []
    for fact in facts:
        piece.append(fact)
        if fact.kind == "sep":
            out += _told(message, piece, most)
            piece = []
    return out + _told(message, piece, most)


def all_but_a_rep(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> list[Fact]:
    """ "Everything except the last rep of the last set": all was done, and one rep missed; no set is left out."""
    out = list(facts)
    for at, fact in enumerate(facts):
        if "except" not in plan_names(fact):
            continue
        behind = facts[at + 1 : at + 1 + REACH]
        told = [one for one in behind if one.kind not in ("word", "sep") and plan_names(one) != {"the"}][:2]
        kinds = ["last_rep" if _one_rep(one) else one.kind for one in told]
        if kinds == ["last_rep"] and _one_rep(told[0]) and not facts[at + 1 + behind.index(told[0]) + 1 :]:
            done = Fact("plan", fact.start, fact.end, "done", {"names": ["done"]})
            doubt = Fact("ask", fact.start, told[0].end, "reps", {"whole": True})  # "all but one rep": of which set?
            return [*facts[:at], done, doubt]
        nth = kinds == ["scope", "scope"] and isinstance(told[0].value, int) and _a_rep(message, told[0])
        if not nth and kinds != ["last_rep", "scope"]:
            continue
        rep, of_set = told
        if rep.kind == "rows" and (of_set.value in ("last", "all") or isinstance(of_set.value, int)):
            done = Fact("plan", fact.start, fact.end, "done", {"names": ["done"]})
            comma = Fact("sep", fact.end, fact.end, 1, {"mark": ","})
            fewer = Fact("delta", rep.start, rep.end, (1.0, "reps", -1), {"open": False})
            after = facts.index(of_set)
            out = [*facts[:at], done, comma, of_set, fewer, *facts[after + 1 :]]  # "todo menos una rep en la última"
            break
        if of_set.value != "last" and not isinstance(of_set.value, int):
            continue
        done = Fact("plan", fact.start, fact.end, "done", {"names": ["done"]})
        comma = Fact("sep", fact.end, fact.end, 1, {"mark": ","})
        missed = Fact("fail", rep.start, rep.end, rep.value if nth else "last", {"rep": True})
        after = facts.index(of_set)
        out = [*facts[:at], done, comma, of_set, missed, *facts[after + 1 :]]
        break
    return out


def every_rep_but(message: Message, facts: Sequence[Fact], _rows: Sequence[Row]) -> Sequence[Fact]:
    """ "Got every rep but the last": all was done, and the last rep missed; "every rep but one" is asked of its set."""
    for at in range(1, len(facts) - 1):
        mark, last = facts[at], next((n for n in range(at + 1, len(facts)) if facts[n].kind != "word"), at)
        spent = message.tokens[mark.start : mark.end]
        less = mark.kind == "delta" and mark.value[1:] == ("reps", -1) and any(map(_says_rep, spent))
        if not (less or "except" in plan_names(mark) or mark.note.get("mark") == "but"):
            continue
        end = last + 1
        behind = facts[end : end + ON_LIFT]
        while behind and (behind[0].kind == "word" or plan_names(behind[0]) == {"the"}):
            behind = behind[1:]
        if behind and behind[0].kind == "move":
            end = facts.index(behind[0]) + 1  # "but the last on dips"
        if last == at or (end < len(facts) and facts[end].kind != "sep"):
            continue
        lead = facts[max(0, at - 2) : at]
        told = [token for fact in lead for token in message.tokens[fact.start : fact.end]]
        whole = any(fact.value == "all" or plan_names(fact) & {"every", "done"} for fact in lead)
        named = message.tokens[facts[last].start : facts[last].end + 1]
        of_set = any(token.text in little("set_words") for token in named)
        rep_named = any(map(_says_rep, told)) and not of_set
        of_reps = facts[last].kind == "last_rep" or (whole and (less or rep_named))
        names_last = facts[last].kind == "last_rep" or facts[last].value in ("last", ("last", 1))
        one = facts[last].kind in ("bare", "count") and facts[last].value == 1
        if not of_reps or not (names_last or one):
            if names_last and mark.note.get("mark") == "but" and whole:  # "all sets but the last"
                return [
                    *facts[:at],
                    Fact("plan", mark.start, mark.end, "except", {"names": ["except"]}),
                    *facts[at + 1 :],
                ]
            continue
        moves = [fact for fact in facts[last + 1 : end] if fact.kind == "move"]
        done = Fact("plan", lead[0].start, mark.end, "done", {"names": ["done"]})
        comma = Fact("sep", mark.end, mark.end, 1, {"mark": ","})
        missed = Fact("fail", mark.end, facts[last].end, "last", {"rep": True})
        if one:
            missed = Fact("ask", mark.start, facts[last].end, "reps", {"whole": True})
        return [*facts[: max(0, at - 2)], done, *([] if one else [comma, *moves]), missed, *facts[end:]]
    return facts


def _says_rep(token: Token) -> bool:
    return token.text in little("rep_word") or token.text in little("reps_word")


def _one_rep(fact: Fact) -> bool:
    """ "All but one rep, last set of pull-ups": a rep, of which the set follows."""
    return fact.kind == "rows" and bool(fact.note.get("reps")) and [one.reps for one in fact.value] == [1]


def _a_rep(message: Message, fact: Fact) -> bool:
    """Whether "rep" stands right behind an ordinal."""
    return any(token.text in little("rep_word") for token in message.tokens[fact.end : fact.end + 1])


def _told(message: Message, piece: list[Fact], most: int) -> list[Fact]:
    fails = [fact for fact in piece if fact.kind == "fail" and not fact.note.get("weak")]
    scopes = [fact for fact in piece if fact.kind == "scope" and (isinstance(fact.value, int) or fact.value == "last")]
    if len(fails) != 1 or any(fact.kind in ("rows", "bare", "count") for fact in piece):
        return piece
    missed = fails[0]
    if len(scopes) == 1 and isinstance(missed.value, int) and 0 < missed.value <= most:
        # the set stands before or behind: "missed the fifth on the last set"
        return [replace(f, note={**f.note, "rep": True}) if f is missed else f for f in piece]
    led = len(scopes) == 2 and missed.value is None and missed.start >= scopes[1].end
    if led and isinstance(scopes[0].value, int) and scopes[0].value <= most:
        behind = message.tokens[scopes[0].end]
        if scopes[1].note.get("numbered") or behind.text in little("rep_word"):
            scopes = scopes[::-1]  # "the sixth rep on dip set three", "the fifth rep of the fourth set"
    nth = scopes[1].value if led else None
    of_set = led and nth == "last" and isinstance(scopes[0].value, int)  # "in the third the last didn't go up"
    if not of_set and (not isinstance(nth, int) or nth > most):
        return piece
    told = replace(missed, value=nth, note={**missed.note, "rep": True})
    return [told if f is missed else f for f in piece if f is not scopes[1]]
