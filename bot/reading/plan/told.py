"""What the clauses of a message keep, leave out, change and add to the plan."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.adding import of_added, one_beyond, over_plan, sets_more_or_fewer
from bot.reading.plan.back_offs_counted import back_offs_counted
from bot.reading.plan.besides import beside_plan
from bot.reading.plan.change import change
from bot.reading.plan.choosing import addressed, exact_rows, main_rows, of_pair, per_side, pick, the_rows
from bot.reading.plan.clauses import Clause
from bot.reading.plan.each_lift import lifts_pointed_at
from bot.reading.plan.fewer import so_many_each
from bot.reading.plan.ground import GLOBAL, PARTS, plan_names
from bot.reading.plan.leaving import (
    against_the_rest,
    all_of_side,
    first_only,
    late_rest,
    left_out,
    no_time_for_it,
    one_side_only,
    put_off,
)
from bot.reading.plan.meant import meant
from bot.reading.plan.paused import paused
from bot.reading.plan.ranged import ranged
from bot.reading.plan.state import Said, Told
from bot.reading.plan.swapping import other_thing, other_work
from bot.reading.plan.unclear import of_something_else, unclear
from bot.reading.plan.up_to import kept_up_to, told_behind
from bot.reading.plan.value import near_load, near_reps
from bot.reading.reading import Ask

MOST_THERE = 1  # words beside "stopped": "stopped there"
OF_ONE_MORE = {"the", "more", "extra_set", "by", "fine"}  # beside the load of a set that no word names
WENT_UP = {"by", "sure"}  # what "went up" is where it says by how much
WEIGHT_NEAR = 2  # words from "more" to "weight"


def _ends_all(told: Told, said: Said) -> bool:
    """Whether "that was it" stands by or behind words that tell of the whole plan, or of the rest of it."""
    if said.names & {"rest", "planned"} or (said.names & {"done"} and not said.named):
        return True
    alone = not said.named and not said.values and not said.scoped
    return alone and (told.everything or told.rest)


def take(told: Told, clause: Clause) -> None:
    """One more clause."""
    said = Said.of(clause)
    if "no_rest" in said.names and _ends_all(told, said):
        said.names.discard("no_rest")  # "did the plan, last two sets were doubles, and that was it"
        if not said.names:
            return
    if "no_rest" in said.names:
        told.exclusive, told.rest, told.everything = True, False, False
        if not said.named and not said.values and not said.scoped:
            return
    if said.named and not said.values and not said.scoped and put_off(told.message, clause):
        for at in clause.targets:
            told.keep[at] = False  # "did the main work. Accessories tomorrow"
        return
    if _only_unplanned(told, said) or back_offs_counted(told, said) or beside_plan(told, said) or unclear(told, said):
        return
    if so_many_each(told, said) or (said.values and not said.named and told.unclear_in == clause.sentence):
        return
    if not said.values and not said.sided and _other_weight(told, said):
        told.everything = told.everything or "except" in said.names  # "everything, but more weight on the dips"
        lighter(told, clause)
        return
    if _stopped_there(told, said) or no_time_for_it(told, said) or against_the_rest(told, said):
        return
    if paused(told, said) or ranged(told, said):
        kept_whole(told, said)
        return
    _point(told, said)
    if kept_up_to(told, said):
        return
    _there(told, said)
    if all_of_side(told, said):
        return
    if of_added(told, said) or sets_more_or_fewer(told, said) or left_out(told, said) or first_only(told, said):
        return
    told.leaving = said.named and told.leaving and not said.values
    if said.scoped and not said.values and said.scoped[-1].value != "all":
        told.scope_at = said.scoped[-1], clause.sentence
    kept_whole(told, said)
    if other_thing(told, said) or other_work(told, said):
        return
    if not said.values:
        if said.sided and one_side_only(told, said):
            return
        if said.names & {"less", "more"} and all(fact.kind in ("plan", "move") for fact in clause.facts):
            # "same but heavier": by how much is not said
            told.ask("load_kg", clause)
            return
        if _other_loads(told, said):
            lighter(told, clause)  # "did everything a bit lighter", "done but went lighter"
            return
        only_named(told, said)
        return
    if all(fact.kind == "assist" and fact.value is None for fact in said.values):
        told.ask("assist_kg", clause)  # "the last one with help": of how many kilograms is not said
        return
    _set_in_mind(told, said)
    efforts_only = all(fact.kind in ("effort", "effort_range", "at") for fact in said.values)
    if efforts_only and not said.scoped and not said.named and told.pointed and told.pointed[0] == clause.sentence:
        for fact in said.values:
            for at in told.pointed[2] if fact.kind == "effort" and not fact.note.get("session") else ():
                told.rows[at].rpe = fact.value  # "last set only 2, rpe 9"
        return
    in_mind = bool(told.sticky) and told.sticky_at == clause.sentence
    if efforts_only and not said.scoped and not said.named and told.several and not in_mind:
        for fact in said.values:
            if fact.kind == "effort":
                told.work.session_rpe = fact.value
        return
    targets = clause.targets or of_excepted(told, said) or those_after(told, said)
    targets = targets or of_another(told, said) or told.sticky
    rest = "rest" in said.names or any(fact.kind == "scope" and fact.value == "rest" for fact in clause.facts)
    if not clause.targets and rest:
        # "pull-ups with 25 the first, the rest with 22.5"
        targets = [at for at in targets if not told.rows[at].touched] or targets
    if said.named:
        told.sticky, told.sticky_at = clause.targets, clause.sentence
    if not targets and (said.sided or of_pair(told.rows, said.values) or per_side(told.rows, clause.facts)):
        targets = [i for i, row in enumerate(told.rows) if row.side is not None]
    targets = targets or meant(told, said, efforts_only)
    if targets and not said.named and not set(targets) & set(main_rows(told.rows)) and not told.sticky:
        told.sticky, told.sticky_at = targets, clause.sentence  # "the first single was clean, the second not"
    if not targets:  # "without weight", of a plan that has none
        told.asks.append(Ask("sets", told.message.span(clause.facts[0].start, clause.facts[-1].end)))
        return
    if said.sided and _none_by_side(told, targets):
        told.ask("movement", clause)  # "missed the single on the left", where only other work has sides
        return
    if said.scoped and said.scoped[-1].value != "all":
        told.pointed = (clause.sentence, targets, pick(told.rows, targets, said.scoped[-1].value))
    missed = next((f.value for f in said.values if f.kind == "fail" and isinstance(f.value, int)), None)
    if missed is not None and not said.scoped and not any(f.note.get("rep") for f in said.values):
        told.pointed = (clause.sentence, targets, pick(told.rows, targets, missed))
    again = any(fact.kind == "link" and fact.value == "drop" for fact in clause.facts) or "turned_to" in said.names
    if again and len(targets) == told.step(targets[0]) and told.told_of.issuperset(targets) and not said.named:
        told.ask("sets", clause)  # "1 at 37.5, dropped to 32.5 and got 3": one more set, or that one
        told.unclear_in = clause.sentence
        return
    told.told_of.update(targets if any(fact.kind in ("rows", "bare", "load") for fact in said.values) else ())
    kept_before(told, said, targets)
    told_behind(told, said, targets)
    for at in targets:
        told.keep.setdefault(at, True)
    if said.named and any(f.kind == "count" and f.note.get("stopped") for f in said.values):
        for at in range(min(targets)):
            told.keep.setdefault(at, True)  # "out after the third set of pull-ups": what comes before them was done
    alter(told, clause, targets)


def _only_unplanned(told: Told, said: Said) -> bool:
    """ "Only did the warm-up" of a day that plans none: nothing of the plan, or what is asked."""
    if "only" not in said.names or not said.names & set(PARTS) or said.named or said.values or said.scoped:
        return False
    if any(clause.targets for clause in told.clauses):
        return False  # "only warm-up and pull-ups"
    told.ask("sets", said.clause)
    told.exclusive, told.rest, told.unplanned = True, False, True
    return True


def _stopped_there(told: Told, said: Said) -> bool:
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


def _point(told: Told, said: Said) -> None:
    """ "The first three as planned, then down to 22.5": what follows is of those after them."""
    if said.values or not said.scoped or said.scoped[-1].value == "all" or not said.names & GLOBAL - {"rest"}:
        return
    if lifts_pointed_at(told, said) is not None:
        return  # "did the first two exercises", whole
    targets = said.clause.targets or main_rows(told.rows)
    told.pointed = (said.clause.sentence, targets, pick(told.rows, targets, said.scoped[-1].value))


def _other_loads(told: Told, said: Said) -> bool:
    """Whether a clause says that loads were others, and not only how they felt."""
    if not said.clause.facts:
        return False
    tokens, end = told.message.tokens, said.clause.facts[-1].end
    if end < len(tokens) and tokens[end].text == "?":
        return False  # "why so light?"
    words = {tokens[n].text for fact in said.clause.facts for n in range(fact.start, fact.end)}
    whole = {"less", "all_lifts", "done"} <= said.names
    return whole or (bool(words & set(little("lighter_or_heavier"))) and not words & set(little("feels")))


def _other_weight(told: Told, said: Said) -> bool:
    """ "A bit more weight on the dips", "etwas weniger Gewicht": other loads than planned, and not by how much."""
    facts = said.clause.facts
    if not facts or _wished(told.message, facts[0].start, facts[-1].end):
        return False
    texts = [token.text for token in told.message.tokens]
    weight, amounts = little("weight", "put_on"), little("more_or_less")
    for fact in facts:
        if "other_load" in plan_names(fact):
            return True  # "had to drop the weight"
        if fact.kind == "plan" and plan_names(fact) & {"less", "more"}:
            if weight.intersection(texts[fact.end : fact.end + WEIGHT_NEAR]):
                return True
        elif fact.kind == "thing":
            words = set(texts[fact.start : fact.end])
            if words & weight and words & amounts:
                return True
    return False


def _wished(message: Message, start: int, end: int) -> bool:
    """Whether a clause says what would be, or will be: "could use more weight next time"."""
    if any(token.text in little("asked_for") for token in message.tokens[start:end]):
        return True
    return any(
        (hit.table == "unreal" and hit.name == "wanted")
        or ((hit.table, hit.name) == ("effort", "could") and not _had_to(message, hit.end))
        for at in range(max(0, start - WEIGHT_NEAR), end)
        for hit in message.beginning("grammar")[at]
    )


def _had_to(message: Message, at: int) -> bool:
    """ "Had to drop the weight": done, and no wish."""
    return any(token.text in little("had_to") for token in message.tokens[at : at + 1])


def lighter(told: Told, clause: Clause) -> None:
    """Done with less or more than planned: by how much is not said."""
    told.ask("load_kg", clause)
    scope = next((fact.value for fact in clause.facts if fact.kind == "scope" and fact.value != "all"), None)
    in_mind = told.sticky if told.sticky_at == clause.sentence else []
    rows = [told.rows[at] for at in clause.targets or in_mind] or told.rows
    for row in addressed(rows, scope, None) if scope is not None else rows:
        if row.load_kg:
            row.load_kg, row.load_open = None, True
    told.everything = told.everything or not any(told.keep.values())
    for at in clause.targets or in_mind:
        told.keep.setdefault(at, True)


def _none_by_side(told: Told, targets: list[int]) -> bool:
    """Whether the sets meant have no sides, while others of the plan do."""
    sided = [at for at, row in enumerate(told.rows) if row.side is not None]
    return bool(sided) and not set(sided) & set(targets)


def _set_in_mind(told: Told, said: Said) -> None:
    """ "The last one was a grinder, rpe 9.5": the effort is of the set that the sentence has named."""
    effort = len(said.values) == 1 and said.values[0].kind == "effort"
    if not effort or said.scoped or told.scope_at is None or told.scope_at[1] != said.clause.sentence:
        return
    if said.named or said.values[0].note.get("session"):
        return
    said.clause.facts.insert(0, told.scope_at[0])
    said.scoped.append(told.scope_at[0])


def _there(told: Told, said: Said) -> None:
    """ "Fine up to set 4, there I got 2": the value is of the set that the sentence has named."""
    if said.scoped or said.named or not said.values or told.scope_at is None or told.excepted is not None:
        return
    scope, sentence = told.scope_at
    words = [told.message.tokens[fact.start].text for fact in said.clause.facts if fact.kind == "word"]
    if sentence == said.clause.sentence and little("there").intersection(words):
        said.clause.facts.insert(0, scope)
        said.scoped.append(scope)


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
    if told.pointed is None or said.scoped or said.names - {"only", "the", "turned_to"} or len(said.values) != 1:
        return []
    sentence, targets, those = told.pointed
    if sentence != said.clause.sentence or said.values[0].kind not in ("bare", "load", "rows") or not those:
        return []
    after = [at for at in targets if at > max(those)]
    listed = said.values[0].kind == "rows"
    return after if not listed or len(said.values[0].value) == len(after) else []


def kept_whole(told: Told, said: Said) -> None:
    """ "Done", "the rest as planned", "dips fine"."""
    names, named = said.names, said.named
    if told.exclusive and not named and "rest" not in names:
        return
    if said.clause.outside and not named and said.clause.facts[0] is said.clause.outside[0]:
        return  # "barbell rows done", of a plan that has none: those, not all
    if said.names == {"done"} and of_something_else(told, said):
        return  # "mobility done, pull-ups 4 4 4 3"
    if (
        "rest" in names
        and said.values
        and any(row.touched for row in told.rows)
        and not names & {"planned", "done", "same"}
    ):
        return  # "first set 22.5, rest 20"
    if ("rest" in names and names & {"planned", "done", "fine", "same"}) or (
        "rest" in names and not named and not names & {"only"} and not late_rest(told.message, said.clause)
    ):
        told.rest = True
    elif names & (GLOBAL - {"rest"}) or "extra_set" in names:
        if named:
            for at in said.clause.targets:
                told.keep.setdefault(at, True)
            told.everything = told.everything or _all_but(said) or _including(told.message, said)
        elif told.sticky and told.sticky_at == said.clause.sentence and _its_sets(told.message, said):
            for at in told.sticky:
                told.keep.setdefault(at, True)  # "archers done, both rounds as planned": of them alone
        elif said.sided and not told.sticky and any(row.side is None for row in told.rows):
            sides = {f.value for f in said.clause.facts if f.kind == "side"}
            for at, row in enumerate(told.rows):
                if row.side in sides:
                    told.keep.setdefault(at, True)  # "left done, right not": of the one-armed work alone
        elif not said.sided or not told.sticky:
            surely = names & {"done", "planned", "same", "extra_set"}
            if surely == {"done"} and len(said.values) == 1 and _so_many(said.values[0]):
                surely = set()  # "4 sets done": those
            if surely == {"done"} and any(fact.kind == "rows" and len(fact.value) > 1 for fact in said.values):
                surely = set()  # "5 singles each arm done": those
            if names & {"done"} and the_rows(told.rows, said.values):
                surely = set()  # "did the 3s with 25": those alone
            fine = "fine" in names and (said.values or len(told.clauses) > 1) and not any(told.keep.values())
            told.everything = told.everything or bool(surely or fine)


def _its_sets(message: Message, said: Said) -> bool:
    """Whether a clause speaks of all sets, or rounds, and not of all that was planned."""
    return any(
        hit.table == "sets"
        for fact in said.scoped
        if fact.value == "all"
        for at in range(fact.start, fact.end)
        for hit in message.beginning("grammar")[at]
    )


def _all_but(said: Said) -> bool:
    """ "All as planned, only without weight on the pull-ups", in one clause: all, and a change of what it names."""
    facts = said.clause.facts
    move = next((at for at, fact in enumerate(facts) if fact.kind == "move"), 0)
    whole = next((at for at, fact in enumerate(facts) if plan_names(fact) & {"all_lifts"}), len(facts))
    sure = any(plan_names(fact) & {"planned", "done"} for fact in facts[:move])
    return whole < move and sure and any(fact.kind == "load" for fact in facts[whole:move])


def _including(message: Message, said: Said) -> bool:
    """ "All done including the leg raises": all, and not these alone."""
    move = next((fact for fact in said.clause.facts if fact.kind == "move"), None)
    if move is None:
        return False
    words = [token.text for token in message.tokens[said.clause.facts[0].start : move.start]]
    return bool(little("all_of_it").intersection(words)) and bool(little("including").intersection(words[-2:]))


def _so_many(fact: Fact) -> bool:
    """Whether a fact only counts the sets that were done."""
    return fact.kind == "count" and not fact.note.get("of_plan") and not fact.note.get("more")


def only_named(told: Told, said: Said) -> None:
    """A movement of the plan with no value beside it: it was done, or what follows is about it."""
    clause = said.clause
    if not said.named:
        return
    if not all(told.rows[at].part == "warm_up" for at in clause.targets):
        told.sticky, told.sticky_at = clause.targets, clause.sentence  # "warm-up, then 5x3": of the main lift
    if "stopped" in said.names:
        for at in range(max(clause.targets) + 1):
            told.keep.setdefault(at, True)
        told.exclusive = not told.everything
        return
    if said.names & {"only"}:
        if told.everything:
            told.ask("sets", clause)
        told.exclusive = not told.everything
        for at in clause.targets:
            told.keep.setdefault(at, True)
    elif not told.everything and not said.names - {*PARTS, "the"} - WENT_UP and len(told.clauses) > 1:
        for at in clause.targets:
            told.keep.setdefault(at, True)


def kept_before(told: Told, said: Said, targets: list[int]) -> None:
    """What a value implies of the other sets: "stopped after 3" keeps the warm-up, "one less" keeps all."""
    values, names = said.values, said.names
    if any(f.kind == "count" for f in values) and not said.scoped and not said.named:
        if "stopped" in names or any(f.note.get("only") for f in values) or "only" in names:
            told.stop_after = max(targets)
        for at in targets:
            told.keep.setdefault(at, True)
        over_plan(told, said, targets)
        if not told.everything and not told.rest:
            told.warmed_up(targets)
    elif any(f.kind == "count" and f.note.get("only") for f in values) and said.named and not said.scoped:
        over_plan(told, said, targets)  # "5 sets of dips rather than 4"
    elif the_rows(told.rows, values):
        return  # "the fours with 2.5 more": of the others nothing is said
    elif any(f.kind in ("delta", "instead", "fail") for f in values) and not said.named and not told.sticky:
        told.everything = told.everything or not any(told.keep.values())


def _loaded_again(told: Told, clause: Clause, targets: list[int]) -> bool:
    """Whether sets told with one load get another, and no words say which of them."""
    valued = [fact for fact in clause.facts if fact.kind in ("load", "bare") and fact.value]
    if len(valued) != 1 or any(fact.kind in ("scope", "instead", "rows", "count") for fact in clause.facts):
        return False
    rows = [told.rows[at] for at in targets]
    kg = valued[0].note.get("kg", valued[0].value)
    if valued[0].kind == "bare" and (near_reps(valued[0].value, rows) or not near_load(kg, rows)):
        return False
    before = told.loads.get(targets[0])
    return before is not None and before != kg and clause.names <= OF_ONE_MORE and not clause.targets


def alter(told: Told, clause: Clause, targets: list[int]) -> None:
    """The planned sets as the clause changes them; those told anew before, as it changes these."""
    rows = told.rows
    carried = [fact.value for fact in clause.facts if fact.kind == "load" and fact.value]
    if told.anew.get(targets[0]) and _loaded_again(told, clause, targets):
        told.ask("load_kg", clause)  # "3 sets with 15 and another with 10": of which set is not said
        return
    if told.anew.get(targets[0]) and not any(f.kind in ("rows", "count", "bare") for f in clause.facts):
        again = told.anew[targets[0]]
        changed = change(told.message, again, list(range(len(again))), clause, told.asks)
        if changed is not None:
            told.anew[targets[0]] = changed
        return
    changed = change(told.message, rows, targets, clause, told.asks)
    if changed is None:
        return
    if len(changed) == len(targets) and all(
        new.movement in (None, rows[at].movement) for new, at in zip(changed, targets, strict=True)
    ):
        for new, at in zip(changed, targets, strict=True):
            rows[at] = replace(new, movement=rows[at].movement, part=rows[at].part)
        one_beyond(told, clause, targets)
        return
    told_before = bool(told.anew.get(targets[0])) and not clause.targets
    listed = any(f.kind == "rows" for f in clause.facts)
    if told_before and listed and all(f.kind not in ("scope", "side", "count") for f in clause.facts):
        told.anew[targets[0]] += changed  # "2 sets of 3 and 3 sets of 2"
        return
    if listed and len(changed) < len(targets) and not told.up_to.isdisjoint(targets):
        told.ask("sets", clause)  # "fine up to set 4, there 2, 2 on set 5": not all that was done
    told.anew[targets[0]] = changed
    if len(carried) == 1:
        told.loads[targets[0]] = carried[0]
    for at in targets[1:]:
        told.anew[at] = []
