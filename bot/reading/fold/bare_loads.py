"""Bare numbers that are a load, help, or an effort: tries at a maximum, "row 22.5 3x10", "did 50: 3x8"."""

from __future__ import annotations

from bot.reading.facts import FREE_WEIGHTS, Entry, Fact
from bot.reading.fold.efforts import on_effort
from bot.reading.fold.loads import on_load
from bot.reading.fold.rows import Row
from bot.reading.fold.state import FoldState
from bot.reading.missed import miss_behind

LEAST_OF_WORD = 12  # "a single 40" tells a load; a smaller number may be anything
LEAST_TRIED = 15  # a maximum tried; a lower number is of reps
MOST_REPS_OF_SCHEME = 12  # a higher number before a scheme is its load
MOST_MENDED = 12  # a higher number that mends loaded sets is a load
SHARE_OF_TRY = 0.7  # who missed a load tries no less than so much of it
MOST_EFFORT = 10
LEAST_SHARE = 0.5  # of the load before, that a lower one has
FEW = 5  # so many kilograms are no load that anyone mentions
HELD = FREE_WEIGHTS | {"external_rotation", "wrist_curl"}  # in one hand
LEAST_RATED = 6  # an effort said as a bare number


def _kg(fact: Fact) -> float:
    return float(fact.note.get("kg", fact.value))


def follows(fold: FoldState, fact: Fact, *kinds: str) -> bool:
    """Whether one of these comes right after the number."""
    return fold.next is not None and fold.next.kind in kinds and fold.next.start == fact.end


def after_scheme(fold: FoldState, *names: str) -> bool:
    return fold.prev is not None and fold.prev.kind == "scheme" and fold.prev.value in names


def mended_effort(fold: FoldState, fact: Fact) -> bool:
    if not fold.mend or fold.prev is None or fold.last_effort is None or not 5 <= fact.value <= 10:
        return False
    fold.mend = False
    on_effort(fold, Fact("effort", fact.start, fact.end, fact.value))
    return True


def _missed(fold: FoldState, fact: Fact) -> Fact | None:
    """The miss that follows a number."""
    return fold.next if fold.next_is("fail") else miss_behind(fold.block.facts, fold.place(fact) + 1)


def load_tried(fold: FoldState, fact: Fact) -> bool:
    """A maximum tried: 45 went up, 50 did not."""
    after = fold.next.note.get("names", ()) if fold.next is not None else ()
    missed = _missed(fold, fact)
    verdict = missed is not None or (fold.next_is("plan", "scheme") and "fine" in after)
    if not verdict or fact.value < LEAST_TRIED or fold.block.hold:
        return False
    judged = {"amrap", "attempt"} & fold.all_schemes or _judged_in_turn(fold, fact)
    if not judged and not _above_a_single(fold, fact):
        return False
    fold.add([Entry(1)], fact)
    fold.rows[-1].load_kg = _kg(fact)
    fold.tried = fold.rows[-1]
    if missed is not None and missed is not fold.next:
        fold.tried.reps, fold.tried.failed, missed.note["spent"] = 0, True, True
    if len(fold.rows) == 2 and fold.rows[0].label == "top" and fold.rows[0].load_kg is None:
        fold.rows.pop(0)
    return True


def _above_a_single(fold: FoldState, fact: Fact) -> bool:
    """ "One with 47.5. 50 did not go up": a little more than the single before it."""
    last = fold.rows[-1] if fold.rows else None
    single = last is not None and last.reps == 1 and not last.failed and not fold.based
    kg = last.load_kg if last is not None and single else None
    return bool(kg and kg < _kg(fact) <= kg / SHARE_OF_TRY)


def next_try(fold: FoldState, fact: Fact) -> bool:
    """ "A single at 45, missed. 42.5 also missed. 40 went up": loads tried after one that did not go up."""
    last = fold.rows[-1] if fold.rows else None
    if last is None or not last.failed or not last.load_kg or fold.based or fold.block.hold:
        return False
    kg = _kg(fact)
    apart = fold.prev is not None and fold.prev.kind == "sep"
    if not apart or not SHARE_OF_TRY * last.load_kg <= kg < last.load_kg or fact.value < LEAST_TRIED:
        return False
    at = fold.place(fact)
    said = [one for one in fold.block.facts[at + 1 : at + 4] if one.kind not in ("word", "sep")]
    missed = bool(said) and said[0].kind == "fail" and not said[0].note.get("weak")
    fold.rows.append(Row(0 if missed else 1, load_kg=kg, failed=missed, group=fold.group + 1))
    fold.group += 1
    if missed:
        said[0].note["spent"] = True
    return True


def _judged_in_turn(fold: FoldState, fact: Fact) -> bool:
    """ "45 yes, 47.5 yes, 50 no": loads tried one after the other, each with its verdict."""
    judged = [one for one in fold.block.facts if one.kind == "fail" and one.note.get("weak")]
    return len(judged) > 1 and follows(fold, fact, "fail")


def load_of_rows(fold: FoldState, fact: Fact) -> bool:
    """ "row 22.5 3x10", "did 50: 3x8"."""
    heavy = fact.value != int(fact.value) or fact.value > MOST_REPS_OF_SCHEME
    follow = fold.next if follows(fold, fact, "rows") else None
    plain = follow is not None and bool(follow.note.get("plain"))
    heavy = heavy or (plain and fold.block.movement in FREE_WEIGHTS and not fact.note.get("spelled"))
    if not heavy or fold.rows or not (follows(fold, fact, "rows") or _before_scheme(fold, fact)):
        return False
    fold.load, fold.load_said = _kg(fact), True
    return True


def _before_scheme(fold: FoldState, fact: Fact) -> bool:
    """Whether a colon and a whole scheme follow."""
    at = fold.place(fact)
    after = [one for one in fold.block.facts[at + 1 : at + 4] if one.kind != "move"][:2]
    colon = len(after) == 2 and after[0].kind == "sep" and after[0].note.get("mark") == ":"
    return colon and after[1].kind == "rows" and bool(after[1].note.get("plain"))


def load_of_word(fold: FoldState, fact: Fact) -> bool:
    """ "A heavy single 40": the load of the set that a word told."""
    last = fold.rows[-1] if fold.rows else None
    told = last is not None and fold.word_row is last and last.load_kg is None
    adjacent = fold.prev is not None and fold.prev.kind == "rows" and fold.prev.end == fact.start
    if last is None or not (told and adjacent) or fact.value < LEAST_OF_WORD or fold.based or fold.block.hold:
        return False
    last.load_kg = _kg(fact)
    return True


def load_of_words(fold: FoldState, fact: Fact) -> bool:
    """ "3 hard doubles 35": the load of sets that are counted by their word."""
    before, group = fold.prev, fold.last_group()
    worded = before is not None and before.kind == "rows" and not before.note and len(before.value) == len(group)
    adjacent = before is not None and before.end == fact.start and fact.value >= LEAST_OF_WORD
    if not (worded and adjacent) or fold.based or fold.block.hold or any(row.load_kg for row in group):
        return False
    for row in group:
        row.load_kg = _kg(fact)
    return True


def load_of_rest(fold: FoldState, fact: Fact) -> bool:
    """ "First set 20 kg, rest 17.5", "3x4 with 22.5, on the last only 17.5": beside loads, no reps."""
    named = fold.scope not in (None, "all", "over") and fact.value > MOST_REPS_OF_SCHEME and bool(fold.scoped())
    loads = [row.load_kg for row in fold.rows if (row.touched or named) and row.load_kg]
    most = max((row.reps or 0 for row in fold.rows), default=0)
    if not (named or fold.scope == "rest") or not loads or fact.value <= most + FEW or fold.block.hold:
        return False
    if _kg(fact) < LEAST_SHARE * min(loads):
        return False  # "dips 4x5 with 45 lb, last set 14": reps
    on_load(fold, Fact("load", fact.start, fact.end, _kg(fact), {"how": "at"}))
    return True


def of_help(fold: FoldState, fact: Fact) -> bool:
    """ "counterweight 7.5", "band 15: 3x8"."""
    if fold.block.movement not in ("one_arm_counterweight", "band_pull_up") or fold.assist is not None:
        return False
    moved = fold.prev is not None and fold.prev.kind == "move"
    colon = fold.next_is("sep") and fold.next is not None and fold.next.note.get("mark") == ":"
    if not moved or (fact.value == int(fact.value) and not colon):
        return False
    fold.assist = _kg(fact)
    return True


def attempted_load(fold: FoldState, fact: Fact) -> bool:
    """ "tried 50"."""
    if not after_scheme(fold, "attempt") or fact.value < LEAST_TRIED or fold.block.hold:
        return False
    fold.attempt_load, fold.attempt = _kg(fact), fact
    return True


def mended_load(fold: FoldState, fact: Fact) -> bool:
    """ "5x3 +20 - sorry, 22.5"."""
    loaded = {row.load_kg for row in fold.rows} - {None, 0.0}
    if not fold.mend or not loaded or (fact.value == int(fact.value) and fact.value <= MOST_MENDED):
        return False
    on_load(fold, Fact("load", fact.start, fact.end, _kg(fact), {"how": "at"}))
    return True


def broken_number(fold: FoldState, fact: Fact) -> bool:
    """No number of reps: 22.5 is a load that was tried, or is asked about."""
    if fact.value == int(fact.value) and not fact.note.get("comma"):
        return False
    if after_scheme(fold, "got", "attempt") or _missed(fold, fact) is not None:
        fold.attempt_load = _kg(fact)
        fold.attempt = fact if after_scheme(fold, "attempt") else None
        return True
    if fact.note.get("spelled") and fold.bares and fact.value < max(row.reps or 0 for row in fold.rows):
        fold.add([Entry(ask="reps")], fact)  # "ten, then eight, then six and a half"
        return True
    apart = fold.prev is not None and fold.prev.kind == "sep" and fold.next_is("sep")
    if apart and not fold.rows and fact.value > MOST_EFFORT and not fold.block.hold and not fact.note.get("comma"):
        fold.load, fold.load_said = _kg(fact), True  # "4 sets of pull-ups. 17.5. 4, 4, 4, 3."
        return True
    fold.ask("load_kg" if fold.rows else "reps", fact)
    if not fold.rows:
        fold.rows.append(Row(None, load_open=True, group=fold.group))
    return True


def _each_side(fact: Fact) -> bool:
    return fact.kind == "side" and fact.value == "each"


def load_of_scheme(fold: FoldState, fact: Fact) -> bool:
    """ "4x3 27.5", "curls 3x10 12": kilograms, right behind a whole scheme."""
    at, group = fold.place(fact), fold.last_group()
    before = fold.block.facts[max(0, at - 3) : at]
    sided = False
    while before and (before[-1].kind in ("move", "weighted") or _each_side(before[-1])):
        sided = _each_side(before.pop()) or sided  # "4x4 pull-ups 17.5", "rows 3x8 each arm 24"
    scheme = before[-1] if before else None
    whole = scheme is not None and scheme.kind == "rows" and scheme.note.get("plain") and len(group) > 1
    if not whole or fold.based or fold.block.hold or fold.mend:
        return False
    if any(row.load_kg is not None for row in group) or fact.note.get("comma") or fact.note.get("spelled"):
        return False
    follow = fold.next
    closes = follow is None or fold.next_is("sep", "move", "effort", "at", "claim", "word") or _each_side(follow)
    free = fold.block.movement in HELD if sided else fold.block.movement in FREE_WEIGHTS and fact.value > FEW
    broken = fact.value != int(fact.value) and fact.value > MOST_EFFORT
    heavy = fold.weighted and fact.value >= LEAST_TRIED
    if not closes or not (free or broken or heavy):
        return False
    for row in group:
        row.load_kg = _kg(fact)
    return True


def added_load(fold: FoldState, fact: Fact) -> bool:
    """ "4x5, added 10": kilograms, behind a word for adding."""
    added = fold.prev is not None and fold.prev.kind == "plan" and "sure" in fold.prev.note.get("names", ())
    group = fold.last_group()
    if not added or fold.based or fold.block.hold or any(row.load_kg is not None for row in group):
        return False
    if not group:
        fold.load, fold.load_said = _kg(fact), True  # "pull-ups: added 25. 5x3"
    for row in group:
        row.load_kg = _kg(fact)
    return True


def loose_number(fold: FoldState, fact: Fact) -> bool:
    """ "3x8, a 7 maybe", "squats 3x5 80": a number after a whole scheme with nothing to say what it is.

    Beside a free weight it is the load (those lifts always have one); else it is asked about, never made a set.
    "4x6, 3" and "4x5, then 3" do tell one more set: no more reps than before, with nothing said of it.
    """
    group = fold.last_group()
    at = fold.place(fact)
    before = fold.block.facts[:at]
    aside = ("word", "sep", "load", "effort", "claim", "plan")
    scheme = next((one for one in reversed(before) if one.kind not in aside and not _each_side(one)), None)
    if scheme is None or scheme.kind != "rows" or not scheme.note.get("plain") or len(group) < 2 or fold.based:
        return False
    if fold.next_is("side", "load", "scope", "link", "fail", "rows", "bare", "flag", "count") or fold.side not in (
        None,
        "each",
    ):
        return False
    if fold.scope is not None or fold.count is not None or fold.mend or fact.note.get("before_move"):
        return False
    most = max(row.reps or 0 for row in group)
    parted = fold.prev is not None and fold.prev.kind == "sep" and fold.prev is before[-1]
    closes = fold.next is None or fold.next_is("sep", "move", "effort", "at", "claim")
    if parted and closes and fact.value <= most and not fold.after_sentence:
        return False
    unloaded = all(row.load_kg is None for row in group)
    adjacent = fold.prev is scheme and before[-1] is scheme
    adjacent = adjacent or (_each_side(before[-1]) and before[-1].start == scheme.end)
    if adjacent and fact.value > FEW and unloaded:
        fold.ask("load_kg", fact)
        for row in group:
            row.load_open = True
        return True
    fold.ask("rpe" if LEAST_RATED <= fact.value <= 10 else "sets", fact)
    return True


def told_before(fold: FoldState, fact: Fact) -> bool:
    """ "the 6 was all I had", "40 was a record": a number of sets told before, spoken of once more."""
    parted = fold.prev is not None and fold.prev.kind == "sep" and (fold.next is None or fold.next_is("sep"))
    if not fold.rows and fold.load_said and fold.load and parted and abs(fold.load - _kg(fact)) < 0.05:
        return True  # "two plates of 7.5, so 15"
    if not fold.rows or fold.mend or fold.scope is not None or fold.side or fold.next_is("side"):
        return False
    if not (fold.after_sentence or fact.note.get("the") or fold.next_is("word")):
        return False
    if fact.note.get("the") and any(row.reps == fact.value for row in fold.rows):
        return True
    kg = fact.note.get("kg", fact.value)
    return kg >= 15 and any(row.load_kg is not None and abs(row.load_kg - kg) < 0.05 for row in fold.rows)
