"""Messages that lean on the day's plan: "done", "all but the archers", "same but 2 on the last", "5, 5, 4".

The plan's sets are the ground; each clause of the message then keeps, leaves out or changes those it speaks of.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from bot.reading.facts import Fact
from bot.reading.message import Message
from bot.reading.movements import Mention, combine
from bot.reading.reading import Ask
from bot.reading.rows import Folded, Row

if TYPE_CHECKING:
    from bot.reading.assemble import Work

STRONG = frozenset("done planned same skipped except swap extra_set stopped last_time".split())
GLOBAL = frozenset("done planned same rest fine".split())
PARTS = {"part_warm_up": "warm_up", "part_main": "main", "part_accessory": "accessory", "part_skill": "skill"}
SURPLUS = 2  # so many reps over the plan are believed of a number without a word
VALUES = frozenset("rows bare loads load at count effort effort_range efforts instead delta fail assist".split())


@dataclass
class Clause:
    """A piece of the message between two separators."""

    facts: list[Fact]
    targets: list[int] = field(default_factory=list)  # rows of the plan it speaks of; empty: none named
    names: set[str] = field(default_factory=set)  # plan words in it
    outside: list[Fact] = field(default_factory=list)  # movements named that the plan has not
    sentence: int = 0


def ground(message: Message) -> list[Row]:
    """The plan's sets as rows. The planned effort is a ceiling: it is no report."""
    rows = []
    for at, one in enumerate(message.context.today or ()):
        rows.append(
            Row(
                one.reps,
                one.hold_s,
                one.load_kg,
                one.assist_kg,
                None,
                one.side,
                one.rom,
                one.eccentric,
                tuple(one.pauses),
                movement=one.movement,
                part=one.part,
                group=at,
            )
        )
    return rows


def plan_names(fact: Fact) -> set[str]:
    """The plan words of a fact."""
    if fact.kind == "plan":
        return set(fact.note.get("names", [fact.value]))
    return set(fact.note.get("names", ()))


def leans(message: Message, facts: list[Fact]) -> bool:
    """Whether the message is told against the plan, and there is one."""
    if not message.context.today:
        return False
    names = set().union(*(plan_names(fact) for fact in facts)) if facts else set()
    moves = [fact for fact in facts if fact.kind == "move" and fact.value.movement != "!"]
    if names & STRONG or any(fact.kind in ("instead", "delta") for fact in facts):
        return True
    if any(fact.kind == "count" and (fact.note.get("of_plan") or fact.note.get("only")) for fact in facts):
        return True
    if not moves and alone(facts, 0) and "fine" in plan_names(facts[0]) and any(f.kind == "effort" for f in facts):
        return True
    if any(alone(facts, i) for i, fact in enumerate(facts) if "all_lifts" in plan_names(fact)):
        return True
    if (
        not moves
        and any(f.kind == "scope" and f.value not in ("over", "all") for f in facts)
        and any(f.kind in ("load", "at", "fail") for f in facts)
    ):
        return True
    if (
        any(f.kind == "fail" and f.note.get("weak") for f in facts)
        and moves
        and not any(f.kind == "rows" for f in facts)
    ):
        return True
    if moves:
        known = {row.movement for row in ground(message)}
        worked = any(fact.kind in ("rows", "bare", "loads") for fact in facts)
        named = any(set(members(fact.value)) & known for fact in moves)
        if not worked and named and names & {"only", "fine", "rest"}:
            return True
        return bool(names & {"only"} and named and any(fact.kind == "scope" for fact in facts) and not worked)
    if names & {"only"} and any(fact.kind == "count" for fact in facts):
        return True
    return bool(names & set(PARTS) and names & {"fine", "only"})


def alone(facts: Sequence[Fact], at: int) -> bool:
    """Whether a fact is a clause by itself: "everything, 70 min"."""
    if at >= len(facts):
        return False
    left = at == 0 or facts[at - 1].kind in ("sep", "claim")
    return left and (at + 1 == len(facts) or facts[at + 1].kind in ("sep", "claim"))


def members(mention: Mention) -> tuple[str, ...]:
    """The movements that a mention may mean."""
    if mention.movement.startswith("?"):
        return combine().families.get(mention.movement[1:], ())
    return (mention.movement,)


def main_rows(rows: Sequence[Row]) -> list[int]:
    """The sets that a message means which names no movement: the main lift's, else the first that is no warm-up."""
    for parts in (("main",), ("skill",), ("accessory",), ("warm_up",)):
        inside = [i for i, row in enumerate(rows) if row.part in parts]
        if inside:
            first = rows[inside[0]].movement
            return [i for i in inside if rows[i].movement == first]
    return list(range(len(rows)))


def clauses_of(rows: Sequence[Row], facts: list[Fact]) -> list[Clause]:
    """Cut at every separator; a clause without a movement keeps the one before it in mind."""
    clauses: list[Clause] = []
    current: list[Fact] = []
    sentence = 0

    def close() -> None:
        if current:
            clauses.append(Clause(list(current), sentence=sentence))
            current.clear()

    for at, fact in enumerate(facts):
        if fact.kind == "sep" and fact.note.get("mark") not in ("(", ")"):
            close()
            sentence += fact.value == 3
            continue
        leaves = plan_names(fact) & {"except", "skipped"} if fact.kind == "plan" else set()
        if (
            leaves
            and any(f.kind in ("move", "plan") for f in current)
            and ("except" in leaves or _names_more(facts, at + 1))
        ):
            close()
        current.append(fact)
    close()
    clauses = _join_sides(clauses)
    for clause in clauses:
        for fact in clause.facts:
            clause.names |= plan_names(fact)
            if fact.kind == "move":
                wanted = set(members(fact.value))
                hits = [i for i, row in enumerate(rows) if row.movement in wanted]
                if hits:
                    clause.targets += [i for i in hits if i not in clause.targets]
                elif fact.value.movement != "!":
                    clause.outside.append(fact)
        for fact, after in zip(clause.facts, clause.facts[1:], strict=False):
            if fact.kind == "fail" and fact.note.get("name") == "no" and after.kind == "move":
                clause.names.add("skipped")
            if after.kind == "fail" and after.note.get("weak") and fact.kind == "move":
                clause.names.add("skipped" if after.note.get("name") == "no" else "done")
        clause.facts = [f for f in clause.facts if not (f.kind == "fail" and f.note.get("weak"))]
        if len(clause.facts) == 1 and "all_lifts" in clause.names:
            clause.names.add("done")
        for name, part in PARTS.items():
            if name in clause.names:
                clause.targets += [i for i, row in enumerate(rows) if row.part == part and i not in clause.targets]
        if "holds" in clause.names and not clause.targets:
            clause.targets = [i for i, row in enumerate(rows) if row.hold_s is not None]
    return clauses


def _join_sides(clauses: list[Clause]) -> list[Clause]:
    """ "left 2, right 2, left 2, right 1" is one list, set by set."""

    def sided(clause: Clause) -> bool:
        kinds = {fact.kind for fact in clause.facts}
        return {"side", "bare"} <= kinds and kinds <= {"side", "bare", "word", "move"}

    out: list[Clause] = []
    run: list[Clause] = []
    for clause in [*clauses, Clause([])]:
        if sided(clause) and (not run or clause.sentence == run[-1].sentence):
            run.append(clause)
            continue
        if len(run) > 2:
            out.append(Clause([fact for one in run for fact in one.facts], sentence=run[0].sentence))
        else:
            out += run
        run = []
        if clause.facts:
            if sided(clause):
                run = [clause]
            else:
                out.append(clause)
    return out


def _names_more(facts: Sequence[Fact], at: int) -> bool:
    """Whether a movement or part of the plan is named before the clause ends."""
    for fact in facts[at:]:
        if fact.kind == "sep":
            return False
        if fact.kind == "move" or plan_names(fact) & set(PARTS):
            return True
    return False


FoldBlock = Callable[..., Folded]


def read_plan(message: Message, facts: list[Fact], work: Work, fold: FoldBlock) -> None:
    """Fill `work` from the plan and what the message says against it."""
    rows = ground(message)
    clauses = clauses_of(rows, facts)
    keep: dict[int, bool] = {}
    told: dict[int, list[Row]] = {}  # rows restated, by the first row they stand for
    everything = False
    rest = False
    extra: list[Row] = []
    added: dict[int, Row] = {}  # one more set after a planned one
    asks: list[Ask] = []
    sticky: list[int] = []
    sticky_at = -1  # the sentence that named it
    several = len({row.movement for row in rows if row.part != "warm_up"}) > 1
    stop_after: int | None = None

    if any("last_time" in clause.names for clause in clauses):
        fact = next(f for clause in clauses for f in clause.facts if "last_time" in plan_names(f))
        work.asks.append(Ask("sets", message.span(fact.start, fact.end)))
        work.report = True
        return

    mending = mended(message, facts)
    if mending is not None:
        work.asks.append(Ask("load_kg", message.span(mending.start, mending.end)))
        work.report = True
        return

    mode = ""
    for clause in clauses:
        names = clause.names
        values = [fact for fact in clause.facts if fact.kind in VALUES]
        scoped = [fact for fact in clause.facts if fact.kind == "scope" and fact.value not in ("over", "rest")]
        named = bool(clause.targets)
        if names & {"skipped", "except"} or (mode == "leave" and named and not values and not names & GLOBAL):
            for fact in clause.facts:
                if "except" in plan_names(fact):
                    everything = True
            if names & GLOBAL - {"rest"} and "except" not in names and not named:
                everything = True
            targets = clause.targets
            if scoped and any(f.kind in ("bare", "rows", "load", "instead", "delta") for f in values):
                targets = []
            elif scoped:
                targets = pick(rows, targets or main_rows(rows), scoped[-1].value)
            fewer = next((f.value for f in values if f.kind == "count" and not f.note.get("of_plan")), None)
            if fewer and targets and "skipped" in names and not scoped:
                # "dropped one set of dips": the last
                targets = targets[-fewer * (2 if rows[targets[-1]].side is not None else 1) :]
            if targets and not (names & {"planned"} and not names & {"except", "skipped"}):
                for at in targets:
                    keep[at] = False
                mode = "leave"
                if not ("rest" in names and not named):
                    if values and not scoped and "except" not in names:
                        pass
                    continue
        mode = "" if not named else mode if mode == "leave" and not values else ""
        if ("rest" in names and names & {"planned", "done", "fine", "same"}) or (
            "rest" in names and not named and not names & {"only"} and not late_rest(message, clause)
        ):
            rest = True
        elif names & (GLOBAL - {"rest"}) or "extra_set" in names:
            if named:
                for at in clause.targets:
                    keep.setdefault(at, True)
            elif not any(f.kind == "side" and f.value in ("left", "right") for f in clause.facts) or not sticky:
                surely = names & {"done", "planned", "same", "extra_set"}
                everything = everything or bool(surely or ("fine" in names and (values or len(clauses) > 1)))
        if "swap" in names and clause.outside:
            new = clause.outside[0].value.movement
            for at in clause.targets or main_rows(rows):
                rows[at].movement = new
                keep[at] = True
            continue
        if "extra_set" in names:
            targets = clause.targets or main_rows(rows)
            added[targets[-1]] = replace(rows[targets[-1]])
            everything = everything or bool(names & {"done", "planned", "same", "fine"})
            continue
        if clause.outside and any(f.kind in ("rows", "bare") for f in clause.facts):
            move = clause.outside[0]
            folded = fold(message, move.value.movement, clause.facts, move)
            asks += folded.asks
            for row in folded.rows:
                row.movement = move.value.movement
            extra += folded.rows
            continue
        if not values:
            if named:
                sticky, sticky_at = clause.targets, clause.sentence
                if names & {"only"}:
                    for at in pick(rows, clause.targets, scoped[-1].value) if scoped else clause.targets:
                        keep.setdefault(at, True)
                elif not everything and not names - set(PARTS) and len(clauses) > 1:
                    for at in clause.targets:
                        keep.setdefault(at, True)
            continue
        efforts_only = all(fact.kind in ("effort", "effort_range") for fact in values)
        targets = clause.targets or sticky
        whole = any(fact.value == "all" for fact in scoped) or "all_lifts" in names or "every" in names
        if efforts_only and not scoped and not named and several and not (sticky and sticky_at == clause.sentence):
            for fact in values:
                if fact.kind == "effort":
                    work.session_rpe = fact.value
            continue
        if named:
            sticky, sticky_at = clause.targets, clause.sentence
        if not targets and any(f.kind == "side" and f.value in ("left", "right") for f in clause.facts):
            targets = [i for i, row in enumerate(rows) if row.side is not None]
        if not targets:
            deltas = [f for f in values if f.kind in ("delta", "instead")]
            if deltas and (whole or deltas[0].kind == "instead"):
                targets = [i for i, row in enumerate(rows) if row.part != "warm_up" or not several]
            elif whole and efforts_only:
                targets = [i for i, row in enumerate(rows) if row.part != "warm_up"]
            else:
                counted = next((f for f in values if f.kind == "count" and f.note.get("of_plan")), None)
                targets = counted_rows(rows, counted.note["of_plan"]) if counted else []
                picked = the_rows(rows, values)
                targets = picked or targets or main_rows(rows)
        if any(f.kind == "count" for f in values) and not scoped and not named:
            stop_after = (
                max(targets)
                if "stopped" in names or any(f.note.get("only") for f in values) or "only" in names
                else stop_after
            )
            for at in targets:
                keep.setdefault(at, True)
            if not everything and not rest:
                for at, row in enumerate(rows):
                    if at < min(targets) and row.part == "warm_up":
                        keep.setdefault(at, True)
        elif any(f.kind in ("delta", "instead", "fail") for f in values) and not named and not sticky:
            everything = everything or not any(keep.values())
        for at in targets:
            keep.setdefault(at, True)
        changed = apply(message, rows, targets, clause, fold, asks)
        if (
            changed is not None
            and len(changed) == len(targets)
            and all(new.movement in (None, rows[at].movement) for new, at in zip(changed, targets, strict=True))
        ):
            for new, at in zip(changed, targets, strict=True):
                rows[at] = replace(new, movement=rows[at].movement, part=rows[at].part)
        elif changed is not None:
            told[targets[0]] = changed
            for at in targets[1:]:
                told[at] = []
    include_rest = everything or rest
    if not include_rest and not any(keep.values()) and not told and not extra:
        if any(value is False for value in keep.values()):
            fact = next(f for c in clauses for f in c.facts if plan_names(f) & {"skipped", "except"})
            work.asks.append(Ask("sets", message.span(fact.start, fact.end)))
            work.report = True
        return
    out: list[Row] = []
    for at, row in enumerate(rows):
        chosen = keep.get(at, include_rest)
        if stop_after is not None and at > stop_after and not rest and at not in told and keep.get(at) is None:
            chosen = False
        if not chosen:
            continue
        if at in told:
            out += told[at]
        else:
            out.append(row)
        if at in added:
            out.append(added[at])
    out += extra
    finish(message, out, asks, work)


def mended(message: Message, facts: Sequence[Fact]) -> Fact | None:
    """What is asked of "that was 17.5 not 15" beside a plan: a report mended, or the load of the day; else None."""
    if any(fact.kind == "move" or plan_names(fact) & STRONG for fact in facts):
        return None
    told = [fact for fact in facts if fact.kind == "instead"]
    cues = {hit.end for hit in message.hits("mends") if hit.table == "cue"}
    return next((fact for fact in told if fact.start in cues), None)


def late_rest(message: Message, clause: Clause) -> bool:
    """ "rest tomorrow", "no time for the rest": the rest was not done."""
    words = {token.word for fact in clause.facts for token in message.tokens[fact.start : fact.end]}
    late = set(message.book("grammar").words) and {
        "tomorrow",
        "time",
        "no",
        "skipped",
        "later",
        "morgen",
        "zeit",
        "manana",
        "tiempo",
    }
    return bool(words & late)


def pick(rows: Sequence[Row], targets: list[int], scope: object) -> list[int]:
    """The rows among `targets` that a scope means."""
    if scope == "last":
        if len(targets) > 1 and {rows[targets[-1]].side, rows[targets[-2]].side} == {"left", "right"}:
            return targets[-2:]
        return targets[-1:]
    if scope == "first":
        if len(targets) > 1 and {rows[targets[0]].side, rows[targets[1]].side} == {"left", "right"}:
            return targets[:2]
        return targets[:1]
    if isinstance(scope, tuple) and scope[0] == "these":
        return [targets[at - 1] for at in scope[1] if 0 < at <= len(targets)]
    if isinstance(scope, tuple):
        return targets[: scope[1]] if scope[0] == "first" else targets[-scope[1] :]
    if isinstance(scope, int):
        return targets[scope - 1 : scope]
    return targets


def counted_rows(rows: Sequence[Row], n: int) -> list[int]:
    """The sets of the movement that has n of them in the plan."""
    names = dict.fromkeys(row.movement for row in rows)
    for name in names:
        own = [i for i, row in enumerate(rows) if row.movement == name]
        if len(own) == n or len(own) == 2 * n:
            return own
    return []


def the_rows(rows: Sequence[Row], values: list[Fact]) -> list[int]:
    """ "the 3s": the sets of three."""
    for fact in values:
        if fact.kind == "rows" and fact.note.get("the"):
            reps = fact.value[0].reps
            return [i for i, row in enumerate(rows) if row.reps == reps and row.part != "warm_up"]
    return []


def apply(
    message: Message, rows: list[Row], targets: list[int], clause: Clause, fold: FoldBlock, asks: list[Ask]
) -> list[Row] | None:
    """The target rows as the clause changes them."""
    base = [rows[at] for at in targets]
    facts = clause.facts
    scoped = [f for f in facts if f.kind == "scope"]
    movement = base[0].movement if base else None
    stated = [f for f in facts if f.kind == "rows" and not f.note.get("the")]
    bare = [f for f in facts if f.kind == "bare"]
    move = next((f for f in facts if f.kind == "move"), None)
    if stated and (not [f for f in scoped if f.value != "all"] or len(stated[0].value) > 1):
        side = next((f.value for f in facts if f.kind == "side" and f.value in ("left", "right")), None)
        if len(stated) == 1 and len(stated[0].value) == 1 and stated[0].note.get("one"):
            whole = clause.names & {"every"} or any(f.value == "all" for f in scoped)
            if whole or side is not None:
                for row in base:
                    if side is None or row.side == side:
                        row.reps = stated[0].value[0].reps
                return base
        if (
            len(stated[0].value) == 1
            and stated[0].note.get("one")
            and clause.names & GLOBAL
            and len(base) > 1
            and len(stated) == 1
        ):
            asks.append(Ask("sets", message.span(stated[0].start, stated[0].end)))
            return base
        folded = fold(message, movement, facts, move)
        asks += folded.asks
        return fit(folded.rows, base, stated) if folded.rows else None
    order = {"scope": 0, "side": 1}
    facts = sorted(facts, key=lambda fact: order.get(fact.kind, 2))
    facts = [f for f in facts if not (f.kind == "rows" and f.note.get("the"))]
    if len([f for f in facts if f.kind == "side"]) > 2 and len(bare) > 2:
        folded = fold(message, movement, clause.facts, move)
        asks += folded.asks
        for at, row in enumerate(folded.rows):
            fill(row, base[min(at, len(base) - 1)])
        return folded.rows
    by_side = next((f.value for f in facts if f.kind == "side" and f.value in ("left", "right")), None)
    if by_side is not None and not [f for f in scoped if f.value != "all"]:
        counted = next((f.value for f in facts if f.kind == "count"), None)
        if counted is not None:
            own = [row for row in base if row.side == by_side][:counted]
            return [row for row in base if row.side != by_side or any(row is one for one in own)]
        if bare or any(f.kind == "instead" for f in facts):
            own = [row for row in base if row.side == by_side]
            rest = [f for f in facts if f.kind not in ("side", "scope")]
            if bare:
                for row in own:
                    row.reps = int(bare[-1].value) if row.reps is not None else row.reps
                return base
            folded = fold(message, movement, rest, None, None, own)
            for old, new in zip(own, folded.rows, strict=False):
                old.reps, old.load_kg, old.hold_s = new.reps, new.load_kg, new.hold_s
            return base
    folded = fold(message, movement, facts, None, None, base)
    asks += folded.asks
    return folded.rows


def fit(new: list[Row], base: list[Row], stated: list[Fact]) -> list[Row]:
    """Restated sets with what the plan implies: its load, side, range; "5x3" as reps by sets where the plan does so."""
    if not base or not new:
        return new
    model = base[0]
    pairs = {row.side for row in base} == {"left", "right"}
    fact = stated[0]
    sided = any(row.side for row in new)
    planned_n = len(base) // 2 if pairs else len(base)
    if fact.note.get("plain") and len({row.reps for row in new}) == 1 and not sided:
        n, reps = len(new), new[0].reps
        if reps is not None and model.reps == n and planned_n == reps and n != reps:
            new = [replace(new[0], reps=n) for _ in range(reps)]
    out: list[Row] = []
    for at, row in enumerate(new):
        twin = base[min(at * (2 if pairs and not sided else 1), len(base) - 1)]
        fill(row, twin)
        if pairs and not sided:
            out += [replace(row, side="left"), replace(row, side="right")]
        else:
            out.append(row)
    return out


def fill_from_plan(message: Message, mention: Mention, folded: Folded, facts: Sequence[Fact]) -> None:
    """A movement told in full on a day that plans it: what the words leave out (its load, its sides) is the plan's."""
    rows = [row for row in ground(message) if row.movement in members(mention) and row.part != "warm_up"]
    names = {row.movement for row in rows}
    if len(names) != 1 or not folded.rows or any(fact.note.get("none") for fact in facts if fact.kind == "load"):
        return
    stated = [fact for fact in facts if fact.kind == "rows"] or [fact for fact in facts if fact.kind == "bare"]
    if not stated:
        return
    if any(row.reps is None and row.hold_s is None for row in folded.rows):
        lone = [fact for fact in facts if fact.kind == "bare"]
        if len(lone) != 1 or len(folded.rows) != 1:
            return
        planned = [row for row in rows if row.reps is not None]
        if planned and lone[0].value > max(row.reps or 0 for row in planned) + SURPLUS and rows[0].load_kg:
            return  # "pull ups 20" on a day of fours with a load: a load as likely as reps
        folded.rows[0].reps, folded.rows[0].load_open = int(lone[0].value), False
        folded.asks = [ask for ask in folded.asks if ask.about != "reps"]
    folded.rows[:] = fit(folded.rows, rows, stated)


def fill(row: Row, twin: Row) -> None:
    """What the words leave out is the plan's."""
    row.movement = twin.movement
    row.part = twin.part
    if row.load_kg is None and not row.load_open:
        row.load_kg = twin.load_kg
    elif row.load_kg is None and twin.load_kg is not None:
        row.load_kg, row.load_open = twin.load_kg, False
    if row.assist_kg is None:
        row.assist_kg = twin.assist_kg
    if row.rom == "full":
        row.rom = twin.rom
    row.eccentric = row.eccentric or twin.eccentric
    row.pauses = row.pauses or twin.pauses
    if twin.hold_s is not None and row.hold_s is None and row.reps is not None:
        row.hold_s, row.reps = float(row.reps), None


def read_bare(message: Message, facts: list[Fact], work: Work, fold: FoldBlock) -> None:
    """Numbers without a movement, on a day with a plan: they are the plan's."""
    stated = [f for f in facts if f.kind == "rows" and not (f.note.get("one") and not f.note.get("reps"))]
    loads = [f for f in facts if f.kind in ("load", "at", "loads")]
    if not stated and not (loads and any(f.kind in ("count", "bare") for f in facts)):
        return
    if stated and all(len(f.value) == 1 and not f.note.get("the") for f in stated) and not loads:
        return
    rows = ground(message)
    targets = the_rows(rows, facts) or best_rows(rows, stated)
    clause = Clause(list(facts), targets)
    asks: list[Ask] = []
    changed = apply(message, rows, targets, clause, fold, asks)
    if changed:
        finish(message, changed, asks, work)


def best_rows(rows: list[Row], stated: list[Fact]) -> list[int]:
    """The planned sets that restated ones fit best: a hold for seconds, else the main lift."""
    holds = any(entry.hold_s is not None for fact in stated for entry in fact.value)
    if holds:
        own = [i for i, row in enumerate(rows) if row.hold_s is not None]
        if own:
            first = rows[own[0]].movement
            return [i for i in own if rows[i].movement == first]
    return main_rows(rows)


def finish(message: Message, rows: list[Row], asks: list[Ask], work: Work) -> None:
    """Rows of the plan to sets."""
    from bot.reading.assemble import to_set

    for row in rows:
        work.sets.append(to_set(message, row.movement, row, asks, None))
    work.asks.extend(asks)
    work.report = True
