"""What one exercise's facts left open, settled when all of them are folded; what is of no set for sure is asked."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import NO_PAUSE, Fact
from bot.reading.fold.altered import MOST_EITHER
from bot.reading.fold.plausible import MOST_REPS
from bot.reading.fold.rows import Folded, Row
from bot.reading.fold.state import FoldState
from bot.reading.little import little

BODY_ALONE = frozenset("ring_row push_up pike_push_up hanging_leg_raise scapular_pull_up nordic_curl".split())
MOST_ALONE = 30  # so many push-ups a set are believed without a unit
LOADED = frozenset("pull_up chin_up neutral_grip_pull_up ring_pull_up dip ring_dip muscle_up".split())
PULLS = frozenset("pull_up chin_up neutral_grip_pull_up ring_pull_up muscle_up".split())
LEAST_EITHER_SETS, FEW_REPS = 15, 12  # "25 x 3": so many sets of so few reps, or a load
LEAST_LONG, LEAST_LONG_REPS = 3, 20  # "5 x 20": so many sets of so many reps, or a load
FEW_SETS, MOST_TOTAL_SETS = 10, 15  # a total that may be sets, and one that is where it makes no whole sets
LIST_GOES_ON = 3  # sets from which on a first set and what follows are a list
MOST_DROPPED = 3  # reps that fall within a list of one load
MOST_DAILY, MOST_BY_LOAD = 20, 8  # so many sets a day, and reps, that may as well be kilograms by reps
LEAST_EITHER = 15  # so many reps a set of a heavy lift are as likely kilograms
MOST_ASKED = 20  # sets that are asked about by their number


def finish(fold: FoldState) -> Folded:
    _finish_minutes(fold)
    _finish_loads(fold)
    _finish_efforts(fold)
    _finish_counts(fold)
    _finish_rows(fold)
    _doubt_the_rest(fold)
    if any(fact.kind == "ask" and fact.note.get("how_many") for fact in fold.block.facts) and not fold.based:
        fold.rows = []  # "6 or 7 sets of 3": how many is not known, and nothing else is asked
        fold.asks = [ask for ask in fold.asks if ask.about == "sets"]
    if any(ask.about == "load_kg" for ask in fold.asks):
        for row in fold.rows:
            row.load_open = row.load_open or row.load_kg is None
    return Folded(fold.rows, fold.asks, fold.efforts_open, fold.early_effort, fold.effort_inside)


def _doubt_the_rest(fold: FoldState) -> None:
    """ "5 with 20, then 5 and 4": whether the load went on is not said."""
    first = next((at for at, row in enumerate(fold.rows) if row.load_kg), None)
    if first is None or fold.based or fold.asks:
        return
    rest = [row for row in fold.rows[first + 1 :] if row.load_kg is None and not row.load_open]
    placed = fold.by_ordinals and all(row.load_kg is not None for row in fold.rows[: -len(rest) or None])
    if rest and (placed or not any(row.load_kg is not None for row in fold.rows[first + 1 :])):
        told = (fact for fact in fold.block.facts if fact.kind in ("load", "loads", "at", "rows", "bare"))
        fold.ask("load_kg", next(told, fold.block.facts[0]))


def _finish_minutes(fold: FoldState) -> None:
    if fold.minutes:
        n = 0
        if "emom" in fold.all_schemes:
            n = int(fold.minutes[-1] // 60)
        elif len(fold.minutes) == 2 and fold.minutes[0]:
            n = int(fold.minutes[1] // fold.minutes[0])
        if n and len(fold.rows) == 1 and n <= 60:
            fold.rows = [replace(fold.rows[0]) for _ in range(n)]


def _judged(fold: FoldState, attempt: Fact) -> bool:
    """Whether anything behind a try says that it went up."""
    behind = fold.block.facts[fold.place(attempt) + 1 :]
    words = {word for fact in behind for word in fold.span(fact.start, fact.end).lower().split()}
    return not words.isdisjoint(little("judging", "went_up", "it_went")) or any(
        (fact.kind == "scheme" and fact.value == "got")
        or (fact.kind == "fail" and fact.note.get("name") == "yes")
        or bool({"fine", "done", "more"} & set(fact.note.get("names", ())))
        for fact in behind
    )


def _finish_loads(fold: FoldState) -> None:
    """Loads that found no set, and sets whose load has no number."""
    loads = fold.load_list
    if loads:
        group = fold.last_group()
        if len(loads) == len(group):
            for row, kg in zip(group, loads, strict=True):
                row.load_kg = kg
        elif len(loads) >= 1 and group:
            fact = next(f for f in reversed(fold.block.facts) if f.kind == "load")
            fold.ask("load_kg", fact)
            for row in group:
                row.load_open = True
    if fold.attempt_load is not None:
        fold.rows.append(Row(1, load_kg=fold.attempt_load, group=fold.group + 1))
        if fold.attempt is not None and not _judged(fold, fold.attempt):
            fold.ask("reps", fold.attempt)  # "then tried 40": whether it went up is not said
            fold.rows[-1].reps = None
    if fold.second_load is not None and not fold.based:
        fact = fold.second_load
        kgs = {row.load_kg for row in fold.rows}
        if not any(k is not None and fact.value is not None and abs(k - fact.value) < 0.1 for k in kgs):
            near = [k for k in kgs if k and fact.value and abs(k - fact.value) / k < 0.02]
            if not near:
                fold.ask("load_kg", fact)
                for row in fold.rows:
                    row.load_kg, row.load_open = None, True
    if fold.waiting and fold.waiting_fact is not None:
        fold.ask("sets", fold.waiting_fact)
    facts = fold.block.facts
    at = next((i for i, fact in enumerate(facts) if fact.kind == "move"), None)
    if (
        not fold.rows
        and not fold.asks
        and at
        and facts[at - 1].kind == "scope"
        and facts[at - 1].value == "first"
        and (
            any(fact.kind == "sep" and fact.note.get("mark") == "!" for fact in facts[at:])
            or any(fact.kind == "scheme" and fact.value == "got" for fact in facts[:at])
        )
    ):
        side = next((fact.value for fact in facts[at:] if fact.kind == "side" and fact.value != "each"), None)
        fold.rows.append(Row(1, side=side))  # "my first muscle-up!"
    things = [fact for fact in fold.block.facts if fact.kind == "thing"]
    unsaid = [row for row in fold.rows if row.load_kg is None]
    if things and unsaid and not fold.based and not any(row.load_kg for row in fold.rows):
        fold.ask("load_kg", things[0])
        for row in unsaid:
            row.load_open = True
    vague = next((fact for fact in fold.block.facts if fact.kind == "vague"), None)
    each = len(fold.rows) == 1 and any(fact.kind == "side" and fact.note.get("plain") for fact in fold.block.facts)
    if vague is not None and each and not fold.based and not fold.block.one_sided:
        fold.rows, fold.bares = [], []  # "a few sets of chins, maybe 6 each"
    if vague is not None and not fold.rows:
        fold.ask("sets", vague)
    loaded = [f for f in fold.block.facts if f.kind == "load" and not f.note.get("none") and f.value]
    if (
        not fold.rows
        and not fold.asks
        and loaded
        and fold.block.movement
        and not fold.based
        and fold.block.move_at >= 0
    ):
        if "one_rm" in fold.all_schemes and len(loaded) == 1:
            fold.rows.append(Row(1, load_kg=fold.load))  # "1RM test: 52.5 kg"
        elif fold.count and fold.block.movement in BODY_ALONE and _either_told(fold, MOST_ALONE):
            reps = int(loaded[0].value)  # "ring rows, 3 sets with 12"
            fold.rows += [Row(reps, group=fold.group + 1) for _ in range(min(fold.count, MOST_ASKED))]
            fold.load = None
        else:
            fold.ask("reps", loaded[0])
            fold.rows += [Row(None, load_kg=fold.load) for _ in range(min(fold.count or 1, MOST_ASKED))]
            if fold.count and _either_told(fold):
                for row in fold.rows:
                    row.load_kg, row.load_open = None, True


def _finish_efforts(fold: FoldState) -> None:
    """Efforts said before the sets, or of all of them."""
    spent = fold.failure is not None or any(f.kind == "effort" and f.value == 10 for f in fold.block.facts)
    if spent:
        for _, row in fold.bares:
            row.load_open = False
    if fold.last_rpe is not None:
        for row in fold.tail(fold.rows):
            row.rpe = fold.last_rpe
        fold.effort_inside = True
    if fold.failure is not None:
        for row in fold.rows:
            row.rpe = row.rpe if row.rpe is not None else fold.failure
    if len(fold.rows) == 2 and fold.total is None and len(fold.bares) == 1 and fold.bares[0][0].note.get("before_move"):
        many, few = fold.rows[0].reps or 0, fold.rows[1].reps or 0
        if fold.bares[0][1] is fold.rows[0] and few and many % few == 0 and many // few <= 40 and fold.each_of:
            fold.rows = [replace(fold.rows[1]) for _ in range(many // few)]  # "50 dips in sets of ten"
    all_rpe = fold.all_rpe
    if all_rpe is not None:
        for row in fold.rows:
            row.rpe = row.rpe if row.rpe is not None else all_rpe
    for side, value in fold.side_efforts.items():
        for row in fold.rows:
            if row.side == side:
                row.rpe = value


def _finish_counts(fold: FoldState) -> None:
    """Counts, totals and bare numbers that stayed open."""
    if fold.count is not None and not fold.rows and not fold.based and "fail" not in fold.schemes and fold.block.facts:
        fact = next(f for f in fold.block.facts if f.kind == "count")
        fold.ask("reps", fact)
        fold.rows = [Row(None, load_kg=fold.load if fold.load_said else None) for _ in range(min(fold.count, 40))]
    elif fold.counted_ask is not None and not fold.unsaid():
        fold.asks.remove(fold.counted_ask)  # "4 sets, the last 6, the others 8"
    told = fold.count if fold.count is not None else fold.expected
    counted = next((f for f in fold.block.facts if f.kind == "count" and f.value == told), None)
    pending = fold.count is not None and len(fold.rows) < fold.count
    if counted is not None and (counted.note.keys() & {"of_plan", "only"} or _mended_after(fold, counted)):
        pending = False
    if counted is not None and fold.rows and not fold.based and not fold.asks and (pending or _too_few(fold, counted)):
        fold.ask("sets", counted)  # "second set only 3, the others 4. 4 sets in all"
    if fold.total is not None:
        amount, fact = fold.total
        sized = [row for row in fold.rows if row.reps and row is not total_row(fold, fact)]
        fold.rows = [row for row in fold.rows if row is not total_row(fold, fact)]
        if len(sized) == 1 and sized[0].reps and fold.each_of and (amount <= FEW_SETS or amount % sized[0].reps):
            if amount % sized[0].reps and amount <= MOST_TOTAL_SETS and amount == int(amount):
                fold.rows = [replace(sized[0], load_open=False) for _ in range(int(amount))]  # "sets of 5: 7 in total"
            else:
                fold.ask("sets", fact)  # "sets of 5, 10 in total": so many sets, or reps
        elif len(sized) == 1 and sized[0].reps and amount % sized[0].reps == 0 and amount / sized[0].reps <= 60:
            fold.rows = [replace(sized[0], load_open=False) for _ in range(int(amount // sized[0].reps))]
        elif (
            len(sized) == 2 and fold.each_of and sized[0].reps and (amount - (sized[1].reps or 0)) % sized[0].reps == 0
        ):
            many = int((amount - (sized[1].reps or 0)) // sized[0].reps)  # sets of 15, and a last one of 10
            fold.rows = [replace(sized[0], load_open=False) for _ in range(min(many, MOST_ASKED))] + sized[1:]
        elif not sized:
            fold.ask("sets", fact)
            fold.rows = [Row(None)]
    for fact, row in fold.bares:
        if fold.asked_load is not None and fact.note.get("before_move"):
            continue  # "mit 61 schaffe ich 7 Klimmzüge": the load is asked, the reps are told
        if row.load_open and row in fold.rows and row.load_kg is None and len(fold.bares) == 1 and row.side is None:
            fold.ask("reps", fact)
            row.reps = None
            row.hold_s = None
        elif len(fold.bares) > 1:
            row.load_open = False


def _either_told(fold: FoldState, most: int = MOST_EITHER) -> bool:
    """ "3 Sätze mit 8": a small number that may be the reps of each set as well as its load."""
    loads = [fact for fact in fold.block.facts if fact.kind == "load" and fact.value]
    plain = len(loads) == 1 and loads[0].note.get("how") == "at" and not loads[0].note.get("unit")
    return plain and loads[0].value == int(loads[0].value) <= most


def _goes_on(fold: FoldState) -> None:
    """ "5 pull-ups with 15 kg, then 4, 4 and 3": the list goes on with the load of its first set."""
    first = fold.rows[0] if len(fold.rows) >= LIST_GOES_ON and not fold.based else None
    rest = fold.rows[1:]
    if first is None or not first.load_kg or not first.reps or any(row.group == first.group for row in rest):
        return
    told = [fact for fact in fold.block.facts if fact.kind in ("rows", "bare")]
    listed = len(told) == 2 and bool(told[1].note.get("list")) and not first.side
    near = all(row.reps and 0 <= first.reps - row.reps <= MOST_DROPPED for row in rest)
    if listed and near and all(row.load_kg is None and not row.load_open for row in rest):
        for row in rest:
            row.load_kg = first.load_kg


def _heavy_by_reps(fold: FoldState) -> None:
    """ "Pull-ups 5x15 4x20 3x25": more kilograms for fewer reps as likely as more reps in fewer sets; asked."""
    if fold.block.movement not in LOADED or fold.based or fold.load_said:
        return
    told = [fact for fact in fold.block.facts if fact.kind == "rows"]
    reps = [fact.value[0].reps or 0 for fact in told]
    counts = [len(fact.value) for fact in told]
    plain = len(told) > 1 and all(fact.note.get("plain") and "own_load" not in fact.note for fact in told)
    rising = reps == sorted(set(reps)) and counts == sorted(counts, reverse=True)
    many = len(told) == 1 and bool(told[0].note.get("plain")) and "own_load" not in told[0].note
    if many and counts[0] >= MOST_DAILY and reps[0] <= MOST_BY_LOAD and len(fold.rows) == counts[0]:
        fold.ask("sets", told[0])  # "pull-ups 35 x 3": 35 sets, or kilograms
        fold.rows = []
        return
    if plain and rising and reps[0] >= LEAST_EITHER and len(fold.rows) == sum(counts):
        fold.ask("sets", Fact("rows", told[0].start, told[-1].end))
        fold.rows = []


def _a_load_alone(fold: FoldState) -> None:
    """ "Klimmzüge 25 x 3", "5 x 20", "20 5": one of two numbers may as well be a load; asked."""
    told = [fact for fact in fold.block.facts if fact.kind in ("rows", "bare", "count", "rounds")]
    loaded = any(fact.kind in ("load", "loads", "at", "assist") for fact in fold.block.facts)
    paced = fold.all_schemes & {"emom", "every", "total", "ladder"}
    if len(told) != 1 or told[0].kind != "rows" or loaded or fold.based or paced or fold.asks:
        return
    if any((entry.reps or 0) > MOST_REPS for entry in told[0].value):
        return  # neither reps nor kilograms
    fact, sets = told[0], len(told[0].value)
    reps = [entry.reps or 0 for entry in fact.value]
    digits = not any(char.isalpha() and char.lower() != "x" for char in fold.span(fact.start, fact.end))
    many = fact.note.get("plain") and sets >= LEAST_EITHER_SETS and reps[0] <= FEW_REPS
    long = fact.note.get("plain") and sets >= LEAST_LONG and reps[0] >= LEAST_LONG_REPS
    long = long and fold.block.movement in PULLS
    pair = fact.note.get("mark") == " " and sets == 2 and reps[0] >= LEAST_EITHER_SETS and reps[1] <= reps[0] / 2
    if digits and fold.block.movement in LOADED and (many or long or pair):
        fold.ask("sets", fact)
        fold.rows = []


def _weighted_by(fold: FoldState) -> None:
    """ "Weighted pull-ups 4x5": with how much is not said."""
    unsaid = all(row.load_kg is None and not row.load_open for row in fold.rows)
    if not fold.rows or not fold.weighted or not unsaid or fold.based or not fold.block.loadable or fold.asks:
        return
    fold.ask("load_kg", next(fact for fact in fold.block.facts if fact.kind == "weighted"))
    for row in fold.rows:
        row.load_open = True


def _finish_rows(fold: FoldState) -> None:
    """What holds for every set."""
    _weighted_by(fold)
    _goes_on(fold)
    _heavy_by_reps(fold)
    _a_load_alone(fold)
    if not fold.rows:
        return
    for row, before in fold.more_of:
        if row.load_kg is None and not row.load_open:
            row.load_kg = before.load_kg
    listed = len({row.group for row in fold.rows}) == 1 and ("ladder" in fold.all_schemes or fold.rows[-1].linked)
    pair = len(fold.rows) == 2 and {row.side for row in fold.rows} == {"left", "right"}
    if fold.block.rounds and (len(fold.rows) == 1 or listed or pair):
        fold.rows = [replace(row) for _ in range(fold.block.rounds) for row in fold.rows]
    finish_flags(fold)
    fold.rows = _without_pace(fold)
    if fold.side == "each" and fold.rows:
        fold.each()
    for row in fold.rows:
        if row.eccentric and row.hold_s and row.reps is None and not fold.block.hold:
            row.reps, row.hold_s = 1, None  # "negatives, left 8s 7s": the seconds of one lowering each
        if row.reps == 0 and not row.failed:
            row.failed = True
        if fold.assist is not None and row.assist_kg is None:
            row.assist_kg = fold.assist
    _help_of_all(fold)
    _begin_drop(fold)


def _without_pace(fold: FoldState) -> list[Row]:
    """ "Negatives (5s): left 3, right 3": seconds told once before all reps are how long each was lowered."""
    lowered = [row for row in fold.rows if row.eccentric and row.hold_s and row.reps is None]
    paced = len(lowered) == 1 < len(fold.rows) and fold.rows[0] is lowered[0] and not fold.block.hold
    told = all(row.eccentric and row.reps is not None for row in fold.rows[1:])
    return fold.rows[1:] if paced and told and not lowered[0].side else fold.rows


def _begin_drop(fold: FoldState) -> None:
    """ "3x5 +30, then a drop set: 5 with 30, 6 without": with no less weight than before it begins anew."""
    if not 0 < fold.drop_head < len(fold.rows) - 1:
        return
    before, first = fold.rows[fold.drop_head - 1 : fold.drop_head + 1]
    if before.load_kg and first.load_kg and first.load_kg >= before.load_kg:
        first.linked = False


def _help_of_all(fold: FoldState) -> None:
    """ "2 left (10 off) and 3 right" on the pulley: without help it would be another movement."""
    told = {row.assist_kg if row.assist_kg is not None else row.load_kg for row in fold.rows} - {None}
    if fold.block.movement != "one_arm_counterweight" or len(told) != 1:
        return
    for row in fold.rows:
        if row.load_kg is None and row.assist_kg is None and not row.load_open:
            row.assist_kg = next(iter(told))


def _mended_after(fold: FoldState, counted: Fact) -> bool:
    """ "Four sets, no wait, three sets of ten": the count was taken back."""
    return any(one.kind == "mend" and one.start >= counted.end for one in fold.block.facts)


def _too_few(fold: FoldState, counted: Fact) -> bool:
    """Whether sets were told one by one, by their place, and fewer than their number says."""
    placed = any(fact.kind == "scope" and isinstance(fact.value, int) for fact in fold.block.facts)
    pairs = {"left", "right"} <= {row.side for row in fold.rows}
    return placed and len(fold.rows) < int(counted.value) * (2 if pairs else 1)


def total_row(fold: FoldState, fact: Fact) -> Row | None:
    return next((row for f, row in fold.bares if f is fact), None)


def finish_flags(fold: FoldState) -> None:
    paused = "pause_pause" in fold.flags | fold.late
    for rows, flags in fold.scope_flags.values():
        fold.apply(rows, flags, "pause_pause" in flags)
    for side, flags in fold.side_flags.items():
        fold.apply([row for row in fold.rows if row.side == side], flags, paused=False)
    for group, flags in ((None, fold.flags), (fold.group, fold.late)):
        rows = fold.rows[fold.frozen :] if group is None else fold.last_group()
        fold.apply(rows, flags, paused)
    for rows, flags in fold.scope_flags.values():
        for row in rows if NO_PAUSE in flags else ():
            row.pauses = ()  # "1 s at the top, last set no hold"
