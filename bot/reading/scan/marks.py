"""Words that say something of sets: sides, scopes, failures, links, separators."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.bounds import ends_sentence, is_comma
from bot.reading.facts import Entry, Fact
from bot.reading.items import Item
from bot.reading.little import little
from bot.reading.scan.beginning import begins_with
from bot.reading.scan.scanner import Scanner
from bot.reading.scan.schemes import chain

MOST_REPS_EACH = 30
MOST_NUMBERED = 20  # sets are told by their number up to it
REACH = 6  # so far from a "no" stands what it takes back, and what is right

LEAST_REP_WORDS = 2

MOST_RUNGS = 20  # of a ladder
LEAST_TOP = 3  # the top of a ladder whose first rung is not told

PLACES = {"first": 1, "last": -1}  # of a set among others


def _paired(before: list[Fact]) -> bool:
    """Whether "2 left 2 right" has just been told: what follows, "x3", counts the pairs."""
    kinds = [fact for fact in before[-5:] if not is_comma(fact)][-4:]
    return [fact.kind for fact in kinds] in (["bare", "side"] * 2, ["side", "bare"] * 2) and {
        fact.value for fact in kinds if fact.kind == "side"
    } == {"left", "right"}


def _minutes(s: Scanner, i: int) -> tuple[Fact, int] | None:
    """ "EMOM10:", "EMOM x 10 -", "EMOM 10 3 dips": so many minutes, where sets are told after."""
    j = i + 1 if s.at(i).has("times", "x") else i
    number = s.at(j)
    if number.kind != "num" or number.value not in range(3, 41):
        return None
    if s.at(j + 1).text not in (":", "-", ",", "of") and not _reps_of_each(s, j + 1, number.value or 0):
        return None
    rows = [Entry(hold_s=60.0 * (number.value or 0))]
    return Fact("rows", number.start, number.end, rows, {"one": True, "unit": "min"}), j + 1


def _reps_of_each(s: Scanner, i: int, minutes: float) -> bool:
    """Whether one number of reps follows, before or behind the exercise: "3 dips", "dips 3" of "EMOM 10 3 dips"."""
    named = s.at(i).kind == "move"
    reps, after = s.at(i + named), s.at(i + named + 1)
    if reps.kind != "num" or not 0 < (reps.value or 0) <= minutes:
        return False
    closes = after.kind == "nl" or (after.text in (",", ".", ";") and s.at(i + named + 2).kind != "num")
    return after.has("reps") or (after.kind == "move" and not named) or closes


def _each_side(before: list[Fact]) -> bool:
    """Whether "2 each side" has just been told."""
    if len(before) < 2 or before[-1].kind != "side" or before[-1].value != "each":
        return False
    return before[-2].kind == "bare" or (before[-2].kind == "rows" and len(before[-2].value) == 1)


def _times(s: Scanner, i: int) -> tuple[Fact, int] | None:
    """ "x4:" and "4x:" after "superset": so many rounds of what follows."""
    first, second = s.at(i), s.at(i + 1)
    number = second if first.has("times", "x") else first if second.has("times", "x") else None
    if number is None or number.kind != "num" or s.at(i + 2).kind == "num" or not number.value:
        return None
    return Fact("rounds", first.start, second.end, int(number.value)), i + 2


def _rungs_up_to(s: Scanner, i: int, first: int, named: int | None) -> tuple[list[Fact], int] | None:
    """ "Ladder up to 5": from one on."""
    j = first
    while s.at(j).text in little("rungs_to"):
        j += 1
    led = s.at(j - 1).text in little("rungs_to")
    listed = s.at(j + 1).text in (",", "-", "/") and s.at(j + 2).kind == "num"
    if not led or s.at(j).value not in range(LEAST_TOP, MOST_RUNGS + 1) or listed or s.at(j + 1).has("times", "x"):
        return None
    if s.unit_at(j + 1) is not None:
        return None
    rungs = [Entry(reps) for reps in range(1, int(s.at(j).value or 0) + 1)]
    scheme = Fact("scheme", s.at(i).start, s.at(i).end, "ladder", {"names": []})
    moves = [Fact("move", s.at(named).start, s.at(named).end, s.at(named).mention)] if named is not None else []
    return [scheme, *moves, Fact("rows", s.at(j).start, s.at(j).end, rungs, {"list": True})], j + 1


def _ladder_range(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "Ladder from 1 to 5": a set of each."""
    named = next((j for j in (i + 1, i + 2) if s.at(j).kind == "move"), None)
    after = i if named is None else named
    first = after + 1 + (s.at(after + 1).text in little("from_to") or s.at(after + 1).text in little("from"))
    up_to = _rungs_up_to(s, i, first, named)
    if up_to is not None:
        return up_to
    low, high = s.at(first), s.at(first + 2)
    beyond = s.at(first + 4) if s.at(first + 3).text == "," else s.at(first + 3)
    goes_on = s.at(first + 3).text in ("-", "/") or beyond.kind == "num"  # "1-2-3-4"
    if low.kind != "num" or high.kind != "num" or goes_on or s.at(first + 1).text not in little("range"):
        return None
    one, top = low.value or 0, high.value or 0
    if one != int(one) or top != int(top) or not 1 <= one < top <= MOST_RUNGS:
        return None
    rungs = [Entry(reps) for reps in range(int(one), int(top) + 1)]
    scheme = Fact("scheme", s.at(i).start, s.at(i).end, "ladder", {"names": []})
    moves = [Fact("move", s.at(named).start, s.at(named).end, s.at(named).mention)] if named is not None else []
    return [scheme, *moves, Fact("rows", low.start, high.end, rungs, {"list": True})], first + 3


def marks(s: Scanner, i: int, before: list[Fact]) -> tuple[list[Fact], int] | None:
    item = s.at(i)
    if item.has("side"):
        return _side(s, i, item)
    if item.text == "/" and s.at(i + 1).has("side"):
        return [Fact("side", item.start, s.at(i + 1).end, "each")], i + 2
    if item.has("link", "into_drop"):
        return [Fact("link", item.start, item.end, "drop", {"further": True})], i + 1
    if item.text in little("straight_on") and s.at(i + 1).kind != "num":
        return [Fact("word", item.start, item.end, item.text)], i + 1  # "20 dominadas seguido"
    if item.has("link"):
        return [Fact("link", item.start, item.end, item.name("link"))], i + 1
    if item.has("times", "once", "twice", "thrice"):
        times = {"once": 1, "twice": 2, "thrice": 3}[item.name("times") or "once"]
        return [Fact("repeat", item.start, item.end, times)], i + 1
    if item.has("times", "x") and s.at(i + 1).kind == "num" and (_paired(before) or _each_side(before)):
        return [Fact("rounds", item.start, s.at(i + 1).end, int(s.at(i + 1).value or 1), {"pair": True})], i + 2
    if item.has("load", "weighted"):
        return [Fact("weighted", item.start, item.end)], i + 1
    if item.has("flag"):
        name = item.name("flag")
        near = s.at(i + 1).kind == "move" or s.at(i - 1).kind == "move" or s.at(i + 1).has("reps")
        if name == "half" and not near:
            return [Fact("word", item.start, item.end)], i + 1
        name = "half" if name == "partial" else name
        return [Fact("flag", item.start, item.end, name)], i + 1
    if item.has("fail"):
        return _fail(s, i, item, before)
    if (item.text in little("stuck") or item.has("plan", "the")) and (stuck := _stuck(s, i)) is not None:
        return stuck
    if item.has("scope") and item.text in little("load_noun") and s.at(i + 1).text in little("by_so_much"):
        return [Fact("word", item.start, item.end, item.text, {"noise": True})], i + 1  # "Last um 5 kg reduziert"
    if item.has("scope"):
        return _scope(s, i, item)
    if item.text in little("last_go") and _last_go(s, i, before):
        return [Fact("scope", item.start, item.end, "last", {"text": item.text})], i + 1
    if item.has("pause"):
        where = Fact("flag", item.start, item.end, "pause_" + (item.name("pause") or ""))
        words = item.text.split()
        stops = where.value != "pause_pause" and len(words) > 1 and words[0] in little("stopping")
        return [*([replace(where, value="pause_pause")] if stops else []), where], i + 1  # "parando a 90"
    if item.has("sep", "then") and item.text in little("next") and s.at(i + 1).value in range(2, 7):
        number = s.at(i + 1)
        if number.spelled and not s.at(i + 2).has("unit"):  # "first two sets 5 reps, next two 4"
            end = i + 2 + s.at(i + 2).has("sets")
            count = Fact("count", number.start, s.at(end - 1).end, int(number.value or 0))
            return [Fact("sep", item.start, item.end, 2), count], end
    if item.text in little("number_word"):
        j = i + 1 + (s.at(i + 1).text == ".")
        if s.at(j).kind == "num" and s.at(j).value in range(1, MOST_NUMBERED + 1):
            if s.at(i - 1).kind == "word":
                return [Fact("word", item.start, s.at(j).end, None, {"noise": True})], j + 1  # "meeting number 5"
            return [Fact("scope", item.start, s.at(j).end, int(s.at(j).value or 0), {"numbered": True})], j + 1
    if item.has("sep", "then") and little("subject").intersection(s.at(i - 1).text.split()[-1:]):
        return [Fact("word", item.start, item.end, item.text)], i + 1  # "Klimmzüge hab ich dann ausgelassen"
    if item.has("sep", "then"):
        return [Fact("sep", item.start, item.end, 2)], i + 1
    if item.has("sep", "but") and s.planned and (told := _but_of(s, i, before)) is not None:
        return told
    if item.has("sep", "but"):
        return [Fact("sep", item.start, item.end, 1, {"mark": "but"})], i + 1
    if item.has("sep", "and"):
        return [Fact("sep", item.start, item.end, 1, {"mark": "and"})], i + 1
    if item.has("unreal", "mend", "swap"):
        return [Fact("mend", item.start, item.end, item.name("unreal"))], i + 1
    if item.has("scheme", "superset", "ladder") or item.has("link", "cluster", "rest_pause"):
        rounds = _times(s, i + 1)
        if rounds is not None:
            scheme = item.name("scheme") or "superset"
            return [Fact("scheme", item.start, item.end, scheme, {"names": []}), rounds[0]], rounds[1]
    if item.has("scheme", "ladder"):
        rungs = _ladder_range(s, i)
        if rungs is not None:
            return rungs
    if item.has("scheme", "emom"):
        minutes = _minutes(s, i + 1)
        if minutes is not None:
            return [Fact("scheme", item.start, item.end, "emom", {"names": []}), minutes[0]], minutes[1]
    if item.has("scheme"):
        names = [name for table, name in item.labels if table == "plan"]
        return [Fact("scheme", item.start, item.end, item.name("scheme"), {"names": names})], i + 1
    if item.has("plan", "skipped") and item.text in little("nor") and s.at(i - 1).has("load", "none"):
        return [Fact("word", item.start, item.end, item.text)], i + 1  # "sin cinturón ni discos"
    if item.has("plan"):
        names = [name for table, name in item.labels if table == "plan"]
        if {"only", "no_rest"} <= set(names) and s.at(i + 1).value is not None:
            names.remove("no_rest")  # "ahí nada más 1 rep"
        return [Fact("plan", item.start, item.end, names[0], {"names": names})], i + 1
    if item.has("unreal", "own"):
        return [Fact("scheme", item.start, item.end, "got")], i + 1
    if item.has("unreal"):
        return [Fact("word", item.start, item.end, item.text)], i + 1
    return None


def _but_of(s: Scanner, i: int, before: list[Fact]) -> tuple[list[Fact], int] | None:
    """ "Las cuatro series pero de 3": all of them, with other reps than planned."""
    of, number, after = s.at(i + 1), s.at(i + 2), s.at(i + 3)
    if of.text not in little("of") or number.kind != "num" or number.value not in range(1, MOST_REPS_EACH + 1):
        return None
    closes = after.kind in ("end", "nl", "claim") or after.text in (",", ".", ";", "!") or after.has("sep")
    sets = any((fact.kind, fact.value) == ("scope", "all") or fact.kind == "count" for fact in before)
    if not closes or not sets or any(fact.kind in ("rows", "bare", "load") for fact in before):
        return None
    each = Fact("scope", of.start, of.end, "all", {"text": ""})
    reps = Fact("rows", number.start, number.end, [Entry(int(number.value or 0))], {"one": True, "reps": True})
    return [Fact("sep", s.at(i).start, s.at(i).end, 1, {"mark": "but"}), each, reps], i + 3


def _side(s: Scanner, i: int, item: Item) -> tuple[list[Fact], int]:
    """ "each side", "left", "r": a side, where the word is one."""
    name = item.name("side")
    if name == "per" and s.at(i + 1).has("reps"):
        return [Fact("word", item.start, s.at(i + 1).end)], i + 2
    if name == "unclear" and s.at(i + 1).has("scope", "first"):
        return [Fact("word", item.start, s.at(i + 1).end)], i + 2  # "weak side first" tells the order
    if name == "unclear" and s.at(i + 1).text == "(" and s.at(i + 2).has("side", "left", "right"):
        return [Fact("side", item.start, s.at(i + 2).end, s.at(i + 2).name("side"))], i + 4
    opens = i == 0 and (s.at(1).text in (",", ".", "!") or s.at(1).text in little("after_right"))
    if opens and item.text in little("right"):
        return [Fact("word", item.start, item.end)], i + 1  # "Right, dips 3x8"
    if (
        name in ("left", "right")
        and item.text in little("right")
        and s.at(i + 1).kind == "word"
        and s.at(i + 1).text in little("after_right")
    ):
        return [Fact("word", item.start, item.end)], i + 1
    if (
        name == "left"
        and item.text in little("left")
        and (s.at(i - 1).has("noise") or s.at(i + 1).text in little("after_left"))
    ):
        return [Fact("word", item.start, item.end)], i + 1
    if name in ("left", "right") and item.end - item.start == 2:
        reps = next((j for j in (i + 1, i + 2) if s.at(j).has("reps")), None)
        if reps is not None and (reps == i + 1 or s.at(i + 1).kind == "word"):  # "right one clean rep"
            one = Fact("rows", item.end - 1, s.at(reps).end, [Entry(1)], {"one": True, "reps": True})
            return [Fact("side", item.start, item.end - 1, name, {"plain": False}), one], reps + 1
    plain = name == "per"
    return [Fact("side", item.start, item.end, "each" if plain else name, {"plain": plain})], i + 1


def _fail(s: Scanner, i: int, item: Item, before: list[Fact]) -> tuple[list[Fact], int]:
    """ "missed the 4th", "failed on the last": a failure, and of which repetition or set."""
    name = item.name("fail")
    j = i + 1
    while s.at(j).text in little("after_missed"):
        j += 1
    if s.at(j).has("reps") and s.at(j + 1).kind == "num":
        number = int(s.at(j + 1).value or 0)
        return [Fact("fail", item.start, s.at(j + 1).end, number, {"rep": True})], j + 2
    on, rep = s.at(i + 1), s.at(i + 2)
    if on.text in little("fails_on") and rep.kind == "num" and not rep.spelled and s.at(i + 3).text in (")", ",", "."):
        return [Fact("fail", item.start, rep.end, int(rep.value or 0), {"rep": True})], i + 3  # "4 @ 20 (fail on 5)"
    ordinal = s.at(j).name("scope") if s.at(j).has("scope") else None
    figure, ending = s.at(j), s.at(j + 1)
    if figure.kind == "num" and ending.text in little("ordinal_ending") and ending.text.isalpha() and not ending.space:
        end = j + 2 + s.at(j + 2).has("reps")
        nth = int(figure.value or 0)  # "fallé la 5ta", "missed the 5th"
        return [Fact("fail", item.start, s.at(end - 1).end, nth, {"rep": s.at(j + 2).has("reps")})], end
    if (
        name == "no"
        and s.at(i + 1).value is not None
        and before
        and before[-1].kind in ("effort", "rows", "bare", "load")
    ):
        return [Fact("mend", item.start, item.end, "mend")], i + 1
    if name == "no" and s.at(i + 1).text == "," and before and s.at(i + 2).has("side", "left", "right"):
        return [Fact("mend", item.start, item.end, "mend")], i + 2
    if name == "no" and (after := _taken_back(s, i, before)) is not None:
        return [Fact("mend", item.start, s.at(after - 1).end, "mend")], after
    if name in ("no", "yes"):
        return [Fact("fail", item.start, item.end, None, {"weak": True, "name": name})], i + 1
    if ordinal is not None and (ordinal.isdigit() or ordinal in ("last", "first")):
        which = int(ordinal) if ordinal.isdigit() else ordinal
        end = j + 1 + s.at(j + 1).has("reps")
        return [Fact("fail", item.start, s.at(end - 1).end, which, {"rep": s.at(j + 1).has("reps")})], end
    return [Fact("fail", item.start, item.end, None)], i + 1


def _of_rep(item: Item) -> bool:
    """ "The last rep of the last set": the words name a rep, in a set."""
    return item.text.count(" ") > LEAST_REP_WORDS and any(word in item.text for word in little("rep_of"))


def _stuck(s: Scanner, i: int) -> tuple[list[Fact], int] | None:
    """ "blieb die zweite auf halber Höhe stecken": which repetition did not go up."""
    item_is_the = s.at(i).has("plan", "the")
    j = i + 1 + (not item_is_the and s.at(i + 1).has("plan", "the"))
    nth = s.at(j).name("scope")
    if nth is None or not nth.isdigit():
        return None
    if item_is_the and s.at(j + 1).text in little("not"):
        end = j + 2 + (s.at(j + 2).has("fail") or s.at(j + 2).has("scheme", "got"))
        return [Fact("fail", s.at(i).start, s.at(end - 1).end, int(nth), {"rep": True})], end  # "die dritte nicht"
    for k in range(j + 1, j + REACH if not item_is_the else j):
        if s.at(k).kind in ("nl", "sym", "num"):
            return None
        if s.at(k).has("fail", "fail") or s.at(k).text in little("stuck_end"):
            return [Fact("fail", s.at(i).start, s.at(k).end, int(nth), {"rep": True})], k + 1
    return None


def _taken_back(s: Scanner, i: int, before: list[Fact]) -> int | None:
    """The place of what is right in "4x5, no, nonsense, 5x4": a whole scheme between whose commas a "no" stands."""
    told = [fact for fact in before[-REACH:] if fact.kind not in ("sep", "move", "claim")]
    if not told or told[-1].kind not in ("rows", "load", "effort") or before[-1].kind != "sep":
        return None
    j = i + 1
    while j < i + REACH and (s.at(j).kind == "word" or s.at(j).text == "," or s.at(j).has("unreal", "mend")):
        j += 1
    if j == i + 1 and s.at(j).kind == "num" and told[-1].kind == "load":
        return j  # "with 20, no 22.5"
    row = chain(s, j)
    return j if row is not None and row[0][0].note.get("plain") else None


def _last_go(s: Scanner, i: int, before: list[Fact]) -> bool:
    """ "4 mal 6, beim letzten Mal 7": one number, of what the sentence has done so many times.

    "4x6, beim letzten Mal 7" tells of the last session.
    """
    j = i + 1
    while s.at(j).has("plan", "only") or s.at(j).text in little("before_number"):
        j += 1
    row = s.at(j + 1).has("times", "x") or s.at(j + 1).has("sets") or s.at(j + 1).text in ("x", "*", ",", "-", "/")
    if s.at(j).kind != "num" or (row and s.at(j + 2).kind == "num"):
        return False
    for fact in reversed(before):
        if ends_sentence(fact):
            return False
        if fact.kind == "side":
            return True
        if fact.kind == "rows" and len(fact.value) > 1:
            items = (s.at(n) for n in range(i) if fact.start <= s.at(n).start < fact.end)
            return any(item.text in little("times_after") for item in items)
    return False


def _scope(s: Scanner, i: int, item: Item) -> tuple[list[Fact], int]:
    """ "the last", "first two": which sets the next fact is about."""
    name = item.name("scope") or ""
    j = i + 1
    if begins_with(s, i):
        return [Fact("word", item.start, item.end)], j
    if name == "last" and s.at(j).has("reps"):
        return [Fact("last_rep", item.start, s.at(j).end)], j + 1
    if name.isdigit() and s.at(j).has("reps") and s.at(j + 1).has("fail", "fail"):
        return [Fact("fail", item.start, s.at(j + 1).end, int(name), {"rep": True})], j + 2  # "second rep failed"
    if name.isdigit() and item.kind == "known" and item.text.endswith(".") and s.at(j).has("sets", "sets"):
        j += 1  # "im 2. Satz 4"
    value: object = int(name) if name.isdigit() else name
    behind = j + 1 + s.at(j + 1).has("sets")
    if s.at(j).has("scope", "back") and (name in PLACES or name.isdigit()) and s.at(behind).has("effort", "rpe"):
        # "last back-off rpe 8"
        return [Fact("scope", item.start, s.at(behind - 1).end, ("back", PLACES.get(name) or int(name)))], behind
    if (
        name in ("first", "last")
        and s.at(j).value is not None
        and s.at(j).value in (1, 2, 3, 4, 5, 6)
        and (s.at(j).spelled or (s.at(j + 1).text in little("were_all") and s.at(j + 2).value is not None))
        and not item.text.startswith(tuple(little("of_one_set")))
        and not item.text.endswith(tuple(little("one_set")))  # "first set five"
        and not s.at(j + 1).has("unit")
    ):
        value = (name, int(s.at(j).value or 1))
        j += 1
        if s.at(j).has("sets"):
            j += 1
    return [
        Fact(
            "scope",
            item.start,
            s.at(j - 1).end,
            value,
            {"text": item.text, "names": [n for t, n in item.labels if t == "plan"], "rep": _of_rep(item)},
        )
    ], j
