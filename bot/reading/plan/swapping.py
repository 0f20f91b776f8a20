"""Work that the plan has not: another movement, or one in place of the planned one."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import FREE_WEIGHTS
from bot.reading.fold.block import fold_block
from bot.reading.fold.rows import Row
from bot.reading.fold.sets import resolve
from bot.reading.little import little
from bot.reading.movements.combine import combine
from bot.reading.plan.adding import change_added
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.clauses import Clause
from bot.reading.plan.ground import GLOBAL, plan_names
from bot.reading.plan.state import Said, Told
from bot.reading.reading import Ask
from planner.movements import movement

# Movements whose added load goes over to another of the same pattern.
LOADED = frozenset("pull_up chin_up neutral_grip_pull_up ring_pull_up dip ring_dip".split())

MOST_LATER = 2  # sentences: "Pull-ups on the neutral grip; sets and reps unchanged. Rest as it stood."
GRIPPED = frozenset({"pull_up", "chin_up", "neutral_grip_pull_up"})  # the grip alone tells these apart
RINGED = {"pull_up": "ring_pull_up", "dip": "ring_dip", "muscle_up": "ring_muscle_up"}


def other_work(told: Told, said: Said) -> bool:
    """Work that the plan has not: another movement, one more set; whether that is all that the clause says."""
    clause, names, rows = said.clause, said.names, told.rows
    became = (
        "became" in names and said.named and clause.facts[-1].start >= clause.outside[0].start
        if clause.outside
        else False
    )
    if clause.outside and (became or "swap" in names or ("instead" in names and (said.named or _in_place(told, said)))):
        return swapped(told, said)
    if _where_planned(told, said) or _for_the_left_out(told, said):
        return swapped(told, said)
    if "extra_set" in names:
        spoken = told.sticky if told.sticky_at == clause.sentence else []
        targets = clause.targets or spoken or main_rows(rows)  # "archers felt great, added a set"
        told.added[targets[-1]] = [replace(rows[at]) for at in targets[-told.step(targets[-1]) :]]
        told.added_in = (targets[-1], clause.sentence)
        told.everything = told.everything or bool(names & {"done", "planned", "same", "fine"})
        if any(fact.kind != "bare" for fact in said.values):
            change_added(told, clause)
        return True
    if clause.outside and any(f.kind in ("rows", "bare", "count") for f in clause.facts):
        move = clause.outside[0]
        work = [fact for fact in clause.facts if plan_names(fact) != {"by", "sure"}]  # "added 5 push-ups"
        folded = fold_block(told.message, move.value.movement, work, move)
        movement, unclear = resolve(told.message, move.value.movement, move)
        told.asks += [*folded.asks, unclear] if unclear else folded.asks  # "all done, then archers 3x3"
        for row in folded.rows:
            row.movement = movement
        told.extra += folded.rows
        return True
    if not said.values and (_other_grip(told, clause) or _on_rings(told, said)):
        return True
    if clause.outside and not said.values and stands_for(told, clause):
        fact = clause.outside[0]
        told.asks.append(Ask("movement", told.message.span(fact.start, fact.end)))
        return True
    return False


def _other_grip(told: Told, clause: Clause) -> bool:
    """ "Done, only in a neutral grip", "pull-ups underhand, the rest as planned": of the one lift that it changes."""
    mention = clause.outside[0].value if len(clause.outside) == 1 and not clause.targets else None
    grip = mention.features & combine().grips if mention is not None else set()
    if mention is None or not grip or not stands_for(told, clause, MOST_LATER):
        return False
    on_rings = {old for old, new in RINGED.items() if new == mention.movement}
    alike = on_rings if "ring" in grip else GRIPPED if mention.movement in GRIPPED else set()
    alike = alike & (mention.features - grip or alike)
    where = [at for at, row in enumerate(told.rows) if row.movement in alike and row.part != "warm_up"]
    if len({told.rows[at].movement for at in where}) != 1:
        return False
    put_in_place(told, clause, mention.movement, where)
    return True


def _on_rings(told: Told, said: Said) -> bool:
    """ "As planned, only on the rings": of the one movement of the plan that rings make another one, else asked."""
    clause = said.clause
    ringed = any(row.movement in RINGED.values() for row in told.rows)
    if said.named or clause.outside or ringed or not clause.facts:
        return False
    spoken = any(one.sentence == clause.sentence and one.names & GLOBAL for one in told.clauses)
    tokens, first, last = told.message.tokens, clause.facts[0].start, clause.facts[-1].end
    named = told.message.beginning("movements")
    rings = next((at for at in range(first, last) if any(hit.name == "ring" for hit in named[at])), None)
    spoken = spoken or (told.excepted is not None and clause.sentence - told.excepted[0] in (0, 1))
    if rings is None or not spoken or any(plan_names(fact) & {"skipped", "except"} for fact in clause.facts):
        return False
    led = {token.text for token in tokens[max(first, rings - 2) : rings + 2]}
    if led.isdisjoint(little("on_lift") | little("on_a_side")):
        return False
    where = [at for at, row in enumerate(told.rows) if row.movement in RINGED and row.part != "warm_up"]
    if told.excepted is not None and clause.sentence - told.excepted[0] in (0, 1):
        where = [at for at in told.excepted[1] if at in where] or where  # "all but the dips, which I did on rings"
    if len({told.rows[at].movement for at in where}) != 1:
        if where:
            told.ask("movement", clause)
        return bool(where)
    put_in_place(told, clause, RINGED[told.rows[where[0]].movement or ""], where)
    return True


def _rings_or_bars(told: Told, said: Said) -> bool:
    """ "Rings not bars for the dips", "dips on the bars instead of the rings": the first of both is what was used."""
    clause = said.clause
    turn = next((fact for fact in clause.facts if plan_names(fact) & {"instead"}), None)
    if turn is None or not clause.targets or clause.outside or "swap" in said.names:
        return False
    named = told.message.beginning("movements")
    span = range(clause.facts[0].start, clause.facts[-1].end)
    rings = next((at for at in span if any(hit.name == "ring" for hit in named[at])), None)
    if rings is None:
        return False
    where = RINGED if rings < turn.start else {new: old for old, new in RINGED.items()}
    own = [at for at in clause.targets if told.rows[at].movement in where]
    for new in {where[told.rows[at].movement or ""] for at in own}:
        put_in_place(told, clause, new, [at for at in own if where[told.rows[at].movement or ""] == new])
    return bool(own)


def _where_planned(told: Told, said: Said) -> bool:
    """ "Chin-ups where it said pull-ups", "chin-up grip for the pull-ups": two lifts of one pattern, and the word."""
    clause = said.clause
    moves = [fact for fact in clause.facts if fact.kind == "move"]
    if len(moves) != 2 or said.values or said.names - {"the", "same"}:
        return False
    if clause.outside == moves[1:]:  # "where it said chins I did pull-ups"
        led = [token.text for token in told.message.tokens[clause.facts[0].start : moves[0].start]]
        return bool(little("where_planned") & set(led)) and bool(little("it_said") & set(led))
    if clause.outside != moves[:1]:
        return False
    words = [token.text for token in told.message.tokens[moves[0].end : moves[1].start]]
    new = moves[0].value.movement
    alike = {movement(told.rows[at].movement or new).pattern for at in clause.targets}
    alike_ = alike == {movement(new).pattern} or bool(little("it_said") & set(words))
    return not new.startswith("?") and alike_ and bool(little("where_planned") & set(words))


def _for_the_left_out(told: Told, said: Said) -> bool:
    """ "No dips, did chins for the same sets and reps": the lift left out right before is the one it stands for."""
    clause = said.clause
    if told.left_lift is None or clause.targets or not clause.outside or said.values_of_work:
        return False
    sentence, rows = told.left_lift
    if sentence != clause.sentence or clause.outside[0].value.movement.startswith("?"):
        return False
    behind = told.clauses[next(at for at, one in enumerate(told.clauses) if one is clause) :]
    goes_on = [one for one in behind if one is clause or (one.sentence == sentence and not one.targets)]
    if not any("same" in one.names for one in goes_on):
        return False
    clause.targets = rows
    return True


def _in_place(told: Told, said: Said) -> bool:
    """ "Pull-ups on the bar instead of on the rings": what it stands for is told by its place alone."""
    facts = said.clause.facts
    closes = max(at for at, fact in enumerate(facts) if fact.kind == "move") < max(
        (at for at, fact in enumerate(facts) if plan_names(fact) & {"instead"}), default=-1
    )
    new = said.clause.outside[0].value.movement
    if not closes or said.values or "not_this" in said.names or new.startswith("?"):
        return False
    return {movement(told.rows[at].movement or new).pattern for at in main_rows(told.rows)} == {movement(new).pattern}


def other_thing(told: Told, said: Said) -> bool:
    """ "Done but with a band instead of weight": what stands for what, no book knows; asked.

    So is "typewriters instead of archers": the planned lift was not done.
    """
    clause = said.clause
    if "instead" not in said.names or said.values or clause.outside:
        return False
    if said.named and _rings_or_bars(told, said):
        return True
    if "not_this" in said.names:
        return False
    hits = told.message.beginning("movements")[clause.facts[0].start : clause.facts[-1].end]
    on_rings = any(hit.name == "ring" for found in hits for hit in found)
    if on_rings and any(row.movement in RINGED.values() for row in told.rows):
        return False  # "done, rings instead of the bar", as it was planned
    if said.named:
        return _unknown_for(told, said)
    words = [fact for fact in clause.facts if fact.kind == "word" and not fact.note.get("noise")]
    if not words or clause.facts[-1].kind != "word" or any(fact.kind == "claim" for fact in clause.facts):
        return False
    told.ask("sets", clause)
    return True


def _unknown_for(told: Told, said: Said) -> bool:
    """Whether words that no book knows stand for a planned lift, which is left out and asked."""
    facts, tokens = said.clause.facts, told.message.tokens
    led = next((at for at, fact in enumerate(facts) if "instead" in plan_names(fact)), 0)
    named = [fact for fact in facts if fact.kind == "move"]
    ahead = facts[:led]
    words = [tokens[fact.start] for fact in ahead if fact.kind == "word" and not fact.note.get("noise")]
    silent = all(f.kind == "word" or plan_names(f) <= {"the", "done", "only"} or f.value == "got" for f in ahead)
    glue, small = told.message.book("prose").words, little("used", "with", "the", "article")
    known = all(token.text in small or token.word in glue for token in words)
    if not named or any(fact.start < facts[led].start for fact in named) or not silent or known:
        return False
    told.ask("movement", said.clause)
    for at in said.clause.targets:
        told.keep[at] = False
    return True


def swapped(told: Told, said: Said) -> bool:
    """Another movement in place of the planned one: "did chins instead with 20", "swapped dips for push-ups 3x12".

    False where the clause goes on to change the sets.
    """
    clause = said.clause
    move = clause.outside[0]
    just_left = told.left[1] if told.left[0] == clause.sentence else []  # "no rows today, push-ups in their place"
    targets = clause.targets or just_left or main_rows(told.rows)
    told.sticky, told.sticky_at = targets, clause.sentence
    if move.value.movement.startswith("?"):
        told.ask("movement", clause)
        return True
    if not any(fact.kind in ("rows", "bare") for fact in said.values):
        for at in just_left:
            told.keep.pop(at, None)
        put_in_place(told, clause, move.value.movement, targets)
        clause.targets = targets
        return not said.values
    own = [f for f in clause.facts if f.kind != "move" or f is move]
    folded = fold_block(told.message, move.value.movement, own, move)
    told.asks += folded.asks
    loaded = any(told.rows[at].load_kg for at in targets) and goes_over(move.value.movement, told.rows[targets[0]])
    for row in folded.rows:
        row.movement = move.value.movement
        if loaded and row.load_kg is None and not row.load_open:
            row.load_open = True  # with the planned load, or without any
    if any(row.load_open for row in folded.rows) and not folded.asks:
        told.ask("load_kg", clause)
    for at in targets:
        told.keep[at], told.anew[at] = True, []
    told.anew[targets[0]] = folded.rows
    return True


def goes_over(new: str, row: Row) -> bool:
    """Whether the load of a planned set goes over to another movement: to one of the same pattern only."""
    same = movement(new).pattern == movement(row.movement or new).pattern
    return same and bool(LOADED & {new, row.movement})


def stands_for(told: Told, clause: Clause, later: int = 0) -> bool:
    """ "As planned but did chin-ups": whether a movement that the plan has not may stand for one that it has.

    `later`: so many sentences behind its own the rest may be told of.
    """
    spoken = any(0 <= one.sentence - clause.sentence <= later and one.names & GLOBAL for one in told.clauses)
    new = clause.outside[0].value.movement
    patterns = {movement(row.movement).pattern for row in told.rows if row.movement and row.part != "warm_up"}
    return spoken and not new.startswith("?") and movement(new).pattern in patterns


def put_in_place(told: Told, clause: Clause, new: str, where: list[int]) -> None:
    """Another movement in place of the planned one; its load goes over to one of the same pattern.

    A dumbbell or a bar has always some weight, and a belt holds it for a lift of another pattern too: where nobody says
    that it was the same, it is asked.
    """
    loaded = any(told.rows[at].load_kg for at in where)
    free = loaded and new in FREE_WEIGHTS
    belted = loaded and new in LOADED and all(told.rows[at].movement in LOADED for at in where)
    same = (free and _same_said(told, clause)) or (belted and _load_said(told, clause))
    for at in where:
        row = told.rows[at]
        if not goes_over(new, row) and not (same and row.load_kg):
            row.load_kg, row.load_open = (None, True) if free or belted else (0.0, row.load_open)
        two_handed = _two_handed(new, row)
        told.keep[at] = not (two_handed and row.side == "right")
        row.movement, row.side = new, None if two_handed else row.side
    loads = any(fact.kind in ("load", "loads", "at", "instead") for fact in clause.facts)
    if not loads and any(told.rows[at].load_open for at in where):
        told.ask("load_kg", clause)


def _two_handed(new: str, row: Row) -> bool:
    """Whether a pair of sets by side is one set of what stands in their place: hangs of both hands."""
    by_side = row.side is not None and row.movement is not None and movement(row.movement).one_sided
    return by_side and not movement(new).one_sided and new not in FREE_WEIGHTS


def _same_said(told: Told, clause: Clause) -> bool:
    """ "Hammer curls instead of curls, same dumbbells": whether the sentence says that more stayed as it was."""
    return any(
        "same" in one.names or any(fact.kind == "load" and fact.note.get("same") for fact in one.facts)
        for one in told.clauses
        if one.sentence == clause.sentence
    )


def _all_the_same(clause: Clause) -> bool:
    """ "…, all else the same", "todo igual pero fondos": of a day of one lift, its sets, reps and load."""
    whole = any((fact.kind, fact.value) == ("scope", "all") for fact in clause.facts) and "same" in clause.names
    return (whole and all(fact.kind != "word" for fact in clause.facts)) or {"rest", "same"} <= clause.names


def _load_said(told: Told, clause: Clause) -> bool:
    """ "Dips instead of chins, same sets, reps and weight": whether it is said that the load stayed as it was."""
    here = [one for one in told.clauses if one.facts and one.sentence - clause.sentence in (0, 1)]
    if any(fact.kind == "load" and fact.note.get("same") for one in here for fact in one.facts):
        return True
    if not told.several and any(_all_the_same(one) for one in here):
        return True
    if not any(one.names & {"same", "planned"} for one in here):
        return False
    start, end = here[0].facts[0].start, here[-1].facts[-1].end
    stays = little("load_stays") | (frozenset() if told.several else little("all_stays"))
    return any(token.text in stays for token in told.message.tokens[start:end])
