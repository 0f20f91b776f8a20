"""The sets that a clause goes on about without naming them: those that the sentence has named before."""

from __future__ import annotations

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.plan.choosing import exact_rows, main_rows, pick, the_rows
from bot.reading.plan.each_lift import lifts_pointed_at
from bot.reading.plan.ground import GLOBAL
from bot.reading.plan.state import Said, Told

WORK = frozenset({"rows", "bare"})
MOST_THERE = 1  # words beside "stopped": "stopped there"


def stopped_there(told: Told, said: Said) -> bool:
    """ "Missed the last rep of set 4 and called it a day": none of the sets after it was done."""
    if "quit" not in said.names or said.values or said.scoped or said.named or told.pointed is None:
        return False
    sentence, targets, those = told.pointed
    words = sum(fact.kind == "word" for fact in said.clause.facts)
    if sentence != said.clause.sentence or words > MOST_THERE or not those:
        return False
    for at in targets:
        if at > max(those):
            told.keep[at] = False
    if len(told.anew.get(targets[0], ())) == len(targets):
        told.anew[targets[0]] = told.anew[targets[0]][: targets.index(max(those)) + 1]
    return True


def point(told: Told, said: Said) -> None:
    """ "The first three as planned, then down to 22.5": what follows is of those after them."""
    if said.values or not said.scoped or said.scoped[-1].value == "all":
        return
    if not said.names & GLOBAL - {"rest"} and not _of_the_first(said):
        return
    if lifts_pointed_at(told, said) is not None:
        return  # "did the first two exercises", whole
    targets = said.clause.targets or main_rows(told.rows)
    told.pointed = (said.clause.sentence, targets, pick(told.rows, targets, said.scoped[-1].value))


def _of_the_first(said: Said) -> bool:
    """ "Did the first two at the plan weight": no word for a change."""
    scope = said.scoped[-1].value
    first = scope[0] if isinstance(scope, tuple) else scope
    return first == "first" and not said.names - {"the"} and any(fact.value == "got" for fact in said.clause.facts)


def not_pointed_at(told: Told, said: Said) -> list[int]:
    """ "The first two as planned, the rest with 25": the sets of that lift that were not pointed at."""
    if told.pointed is None or said.clause.sentence - told.pointed[0] not in (0, 1):
        return []
    _, targets, those = told.pointed
    for at in those:
        told.keep.setdefault(at, True)
    return [at for at in targets if at not in those] if those else []


def set_in_mind(told: Told, said: Said) -> None:
    """ "The last one was a grinder, rpe 9.5": the effort is of the set that the sentence has named.

    So is a miss of which no more is said: "last set went for 6 and missed".
    """
    one = said.values[0] if len(said.values) == 1 else None
    effort = one is not None and (one.kind == "effort" or (one.kind == "fail" and one.value is None))
    if one is not None and not effort and _goes_on(told, said, one):
        if one.kind == "count":  # "rang in the last set and I stopped at 3"
            one = Fact("bare", one.start, one.end, float(one.value), {"kg": float(one.value)})
            said.clause.facts[said.clause.facts.index(said.values[0])] = one
            said.values[0] = one
        effort = True
    if not effort or said.scoped or told.scope_at is None or told.scope_at[1] != said.clause.sentence:
        return
    if said.named or said.values[0].note.get("session") or _of_those_pointed_at(told, said):
        return
    said.clause.facts.insert(0, told.scope_at[0])
    said.scoped.append(told.scope_at[0])


def _goes_on(told: Told, said: Said, one: Fact) -> bool:
    """ "Got a call in the third set and only did 4": what a set came to that the clause before has named."""
    at = next((n for n, clause in enumerate(told.clauses) if clause is said.clause), 0)
    before = told.clauses[at - 1] if at else None
    if before is None or told.scope_at is None or not any(fact is told.scope_at[0] for fact in before.facts):
        return False
    if before.names - {"the", "only"} or said.names - {"the", "only", "quit", "stopped"}:
        return False
    stopped = one.kind == "count" and bool(one.note.get("stopped")) and bool(one.note.get("bare"))
    told_of_one = one.kind == "rows" and len(one.value) == 1 and bool(one.note.get("one"))
    return stopped or told_of_one or one.kind in ("bare", "instead") or (one.kind == "delta" and one.value[1] != "load")


def _of_those_pointed_at(told: Told, said: Said) -> bool:
    """ "First set was a 9, dropped to 20 for the rest, those were a 7": of several sets pointed at since."""
    if told.pointed is None or told.pointed[0] != said.clause.sentence or len(told.pointed[2]) < 2:
        return False
    words = {told.message.tokens[fact.start].text for fact in said.clause.facts if fact.kind == "word"}
    return not words.isdisjoint(little("those", "those_named"))


def missed_there(told: Told, said: Said) -> bool:
    """ "Last set went for 6 and missed": the miss is of the set pointed at, and what a try came to is asked."""
    if [(fact.kind, fact.value) for fact in said.values] != [("fail", None)] or said.scoped or said.named:
        return False
    if told.pointed is None or told.pointed[0] != said.clause.sentence or said.sided:
        return False
    those = told.pointed[2]
    at = next(n for n, clause in enumerate(told.clauses) if clause is said.clause)
    before = told.clauses[at - 1]
    if len(those) != 1 or told.anew.get(told.pointed[1][0]) or before.sentence != said.clause.sentence:
        return False
    row = told.rows[those[0]]
    tried = "took" in before.names or any(fact.value == "attempt" for fact in before.facts)
    if tried and not row.failed:
        row.reps = None
        told.ask("reps", said.clause)
    row.failed = True
    return True


def there_too(told: Told, said: Said) -> None:
    """ "Fine up to set 4, there I got 2": the value is of the set that the sentence has named."""
    if said.scoped or said.named or not said.values or told.scope_at is None or told.excepted is not None:
        return
    scope, sentence = told.scope_at
    words = [told.message.tokens[fact.start].text for fact in said.clause.facts if fact.kind == "word"]
    if sentence == said.clause.sentence and little("there").intersection(words):
        said.clause.facts.insert(0, scope)
        said.scoped.append(scope)


def of_the_same_set(told: Told, said: Said) -> None:
    """ "Down to 17.5 for the last one and got 3 reps": reps of one set, told behind the words that name it."""
    if said.scoped or said.named or said.sided or said.clause.outside or told.one_set is None:
        return
    scope, sentence, told_so_far = told.one_set
    if told_so_far & WORK:
        _load_of_the_same(told, said)
        return
    reps = [fact for fact in said.values if fact.kind in ("rows", "bare")]
    others = {str(fact.kind) for fact in said.values} - {"rows", "bare"}
    led = any(fact.kind == "scheme" and fact.value == "got" for fact in said.clause.facts) or "only" in said.names
    one = len(reps) == 1 and (len(reps[0].value) == 1 if reps[0].kind == "rows" else led)
    if sentence != said.clause.sentence or not one or not others <= {"load", "effort"} - told_so_far:
        return
    if said.names - {"only", "the", "took", "turned_to"}:
        return
    said.clause.facts.insert(0, scope)
    said.scoped.append(scope)


def _load_of_the_same(told: Told, said: Said) -> None:
    """ "Last set only 4 reps and with 12.5": the load of a set whose reps were told."""
    assert told.one_set is not None
    one = said.values[0] if len(said.values) == 1 else None
    if one is None or one.kind not in ("load", "instead") or said.names - {"the", "only", "took"}:
        return
    led = {told.message.tokens[at].text for at in range(max(0, one.start - 1), one.start + 1)}
    if told.one_set[1] == said.clause.sentence and led & little("with"):
        said.clause.facts.insert(0, told.one_set[0])
        said.scoped.append(told.one_set[0])


def keep_one_set(told: Told, said: Said) -> None:
    """Remember the one set that a clause names, where its reps or its load are still to be told."""
    scope = said.scoped[-1] if said.scoped else None
    kinds: set[str] = {
        "load" if fact.kind == "bare" and "turned_to" in said.names else fact.kind for fact in said.values
    }
    one = scope is not None and (scope.value == "last" or isinstance(scope.value, int))
    half = kinds <= {"load", "effort", "at"} or kinds <= WORK
    half = one and half and len(said.scoped) == 1 and not said.sided
    if scope is not None and half and not said.names & {"skipped", "except", "done", "rest"}:
        told.one_set = scope, said.clause.sentence, kinds
    elif said.scoped or said.named or said.values or said.names - {"the"}:
        told.one_set = None


def other_side_of_set(told: Told, said: Said) -> None:
    """ "Set 2: 2 left, 1 right": the other side is of the set that was named with the first."""
    sides = {fact.value for fact in said.clause.facts if fact.kind == "side"}
    before, told.sided_set = told.sided_set, None
    if len(sides) != 1 or not sides <= {"left", "right"} or not said.values:
        return
    goes_on = before is not None and before[1] == said.clause.sentence and sides.isdisjoint({before[2]})
    if goes_on and before is not None and not said.scoped and not said.named:
        said.clause.facts.insert(0, before[0])
        said.scoped.append(before[0])
    elif len(said.scoped) == 1 and said.scoped[0].value != "all":
        told.sided_set = said.scoped[0], said.clause.sentence, next(iter(sides))


def of_excepted(told: Told, said: Said) -> list[int]:
    """ "All good apart from the dips, they felt heavy so I took 5 off": what was left out of the rest, and done.

    So too "all but the last set, which I took to 27.5", where nothing says "those".
    """
    if told.excepted is None or said.clause.sentence - told.excepted[0] not in (0, 1):
        return []
    sentence, rows, by_scope = told.excepted
    tokens = told.message.tokens
    words = {tokens[at].text for fact in said.clause.facts if fact.kind == "word" for at in range(fact.start, fact.end)}
    goes_on = by_scope and sentence == said.clause.sentence and _of_so_many(said, len(rows))
    if not goes_on and words.isdisjoint(little("those_named")):
        return []
    for at in rows:
        told.keep[at] = True
    return rows


def _of_so_many(said: Said, many: int) -> bool:
    """Whether a clause that names no set tells what so many sets were, and not how hard."""
    if said.scoped or any(fact.kind == "rows" and len(fact.value) != many for fact in said.values):
        return False
    return any(fact.kind in ("bare", "load", "rows", "delta", "instead") for fact in said.values)


def of_another(told: Told, said: Said) -> list[int]:
    """ "2x3 archers ok, 4x2 with 30 ok": a scheme that another movement has to the letter, and not the one in mind."""
    stated = [fact for fact in said.values if fact.kind == "rows"]
    own = exact_rows(told.rows, stated[0]) if told.sticky and len(stated) == 1 else []
    those = the_rows(told.rows, said.values) if told.sticky else []
    if those and not set(those) & set(told.sticky):
        return those  # "top single missed, the triples all there"
    return own if own and not exact_rows([told.rows[at] for at in told.sticky], stated[0]) else []


def those_after(told: Told, said: Said) -> list[int]:
    """ "The first three with 22.5, then 20": the sets after those pointed at in the same sentence."""
    if told.pointed is None or said.scoped or said.names - {"only", "the", "turned_to"}:
        return []
    sentence, targets, those = told.pointed
    after = [at for at in targets if at > max(those)] if those else []
    many = len(after) // told.step(after[0]) if after else 0
    values = [fact for fact in said.values if fact.kind != "count" or fact.value != many]  # "the next three with 25"
    if sentence != said.clause.sentence or len(values) != 1 or values[0].kind not in ("bare", "load", "rows"):
        return []
    if values[0].kind == "rows" and len(values[0].value) != len(after):
        return []
    if len(values) < len(said.values):
        for at in those:
            told.keep.setdefault(at, True)
    return after
