"""Planned sets that were left out, put off, or the only ones done."""

from __future__ import annotations

from dataclasses import replace

from bot.reading.facts import Fact
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.plan.adding import change_added
from bot.reading.plan.choosing import main_rows, pick, the_rows
from bot.reading.plan.clauses import Clause
from bot.reading.plan.each_lift import each_lift, lifts_pointed_at
from bot.reading.plan.ground import GLOBAL, plan_names
from bot.reading.plan.state import Said, Told
from bot.reading.reading import Ask

GEAR = frozenset({"pulley", "ring", "band", "bar"})
TELLING = frozenset({"only", "extra_set", "swap", "instead"})  # words that say what was done
PLUS = frozenset({"by", "more"})  # "all done plus a 6th set"
LEAD_IN = 2  # words before a set that is one more than planned
LEAST_SAID = 2  # words of the plan before an exception


def left_out(told: Told, said: Said) -> bool:
    """Sets skipped: "all but the archers", "skipped the last two"; whether that is all that the clause says."""
    names, values, scoped, named, rows = said.names, said.values, said.scoped, said.named, told.rows
    if "minus" in names and any(fact.kind == "delta" and fact.value[1] == "load" for fact in values):
        names.discard("skipped")  # "on the dips I took 2.5 kg off"
    told.leaving = told.leaving and told.left[0] == said.clause.sentence
    if told.leaving and _and_the_rest(told.message, said.clause):
        told.ask("sets", said.clause)  # "skipped the pull-ups and the rest": what was before them?
        return True
    bare = all(fact.kind in ("move", "plan", "scope") or _of(told.message, fact) for fact in said.clause.facts)
    goes_on = told.leaving and named and bare and not names & (GLOBAL | TELLING)  # "no pull-ups, only dips"
    if any(fact.note.get("changed") for fact in values):
        names.discard("skipped")  # "cut the dips from 3 to 2 sets"
    if not (names & {"skipped", "except"} or goes_on):
        return False
    if "except" in names and said.clause.outside and named and names & {"swap", "instead"}:
        told.everything = True  # "all done except I did chin-ups, not pull-ups"
        return False
    if "except" in names and not values and _only_felt(told, said):
        return True
    if _nothing_done(said):
        return True
    if "skipped" in names and _but_some(said.clause):
        told.ask("sets", said.clause)  # "skipped all of it but the dips"
        return True
    if any("except" in plan_names(fact) for fact in said.clause.facts) or _only_skipped(said):
        told.everything = True
    whole = names & (GLOBAL - {"rest"}) or "all_lifts" in names or any(f.value == "all" for f in scoped)
    scoped = [f for f in scoped if f.value != "all"]
    if whole and ("except" not in names or "all_lifts" in names):
        told.everything = True
    targets = said.clause.targets
    if scoped and not targets and told.sticky_at == said.clause.sentence:
        targets = told.sticky  # "dips: dropped the last set"
    if said.sided and not targets:
        targets = [at for at, row in enumerate(rows) if row.side is not None]
    so_many = the_rows(rows, values) if "skipped" in names and not named and len(values) == 1 else []
    if so_many:
        targets, values = so_many, []  # "no time for the fives"
    only_so_many = "only" in names and any(f.kind == "count" for f in values)
    only_so_many = only_so_many or any(f.kind == "count" and f.note.get("was") for f in values)
    told_anew = only_so_many or any(f.kind in ("bare", "rows", "load", "instead", "delta") for f in values)
    if named and told_anew and "skipped" not in names:
        return False  # "done except rotations only 10 on the left"
    if scoped and told_anew:
        targets = []
    elif scoped:
        each = each_lift(told, said) or [targets or main_rows(rows)]
        whole_lifts = lifts_pointed_at(told, said)  # "everything but the last exercise"
        if "skipped" in names and "except" not in names and whole_lifts is None:
            for at in targets:
                told.keep.setdefault(at, True)  # "skipped the third set of dips": their others were done
        targets = [at for own in each for at in pick(rows, own, scoped[-1].value)]
        targets = whole_lifts if whole_lifts is not None else targets
        told.everything = told.everything or whole_lifts is not None
        if not named and not told.several:
            told.everything = True  # "skipped the last two": the others were done
    if said.sided and targets:
        side = next(f.value for f in said.clause.facts if f.kind == "side" and f.value in ("left", "right"))
        if named and "skipped" in names and not scoped:
            for at in targets:
                told.keep.setdefault(at, True)  # "one-arm chins: skipped the left": the right was done
        targets = [at for at in targets if rows[at].side == side]
    fewer = next((f.value for f in values if f.kind == "count" and not f.note.get("of_plan")), None)
    each = each_lift(told, said) if fewer and not scoped else []
    if fewer and each:
        targets = [at for own in each for at in own[-fewer * told.step(own[-1]) :]]  # "all but one set of each"
    elif fewer and targets and "skipped" in names and not scoped:
        # "dropped one set of dips": the last, and their others were done
        for at in targets:
            told.keep.setdefault(at, True)
        targets = targets[-fewer * told.step(targets[-1]) :]
    unknown = "except" in names or ("skipped" in names and any("rest" in one.names for one in told.clauses))
    unknown = unknown and "took" not in names  # "everything done but took forever"
    if unknown and not targets and not values and said.clause.facts[-1].kind == "word" and not _gear_away(told, said):
        # something is left out that no book knows: "didn't do the thingies, the rest done"
        facts = said.clause.facts
        told.asks.append(Ask("sets", told.message.span(facts[0].start, facts[-1].end)))
        return True
    if not targets or (names & {"planned"} and not names & {"except", "skipped"}):
        return False
    for at in targets:
        if told.keep.get(at) and rows[at].part == "warm_up" and not said.clause.part:
            continue  # "warm-up done … no pull-ups", of a day that warms up with them
        told.keep[at] = False
    told.leaving = True
    told.left = (said.clause.sentence, targets)
    if named and not scoped and not said.sided and not fewer and len({rows[at].movement for at in targets}) == 1:
        told.left_lift = said.clause.sentence, targets
    if (named or scoped) and "except" in names and not values:
        told.excepted = (said.clause.sentence, targets, bool(scoped))
    return not ("rest" in names and not named)


def _only_felt(told: Told, said: Said) -> bool:
    """ "All good but the dips felt heavy", "except the last set, that was slow": how it felt, and all of it was done.

    What it was in words that no book knows ("the last set was a mess") is asked.
    """
    facts, tokens = said.clause.facts, told.message.tokens
    led = next(at for at, fact in enumerate(facts) if "except" in plan_names(fact))
    last = next((at for at in range(len(facts) - 1, led, -1) if facts[at].kind in ("move", "scope")), led)
    if last == led or said.names & {"skipped", "not", "only", "rest"}:
        return False
    at = _place(told, said)
    behind = told.clauses[at + 1] if last == len(facts) - 1 and at + 1 < len(told.clauses) else None
    if behind is not None and behind.sentence != said.clause.sentence:
        behind = None
    judged = behind.facts if behind is not None else facts[last + 1 :]
    if not judged or not all(_of_feeling(fact) for fact in judged):
        return False
    words = [token.text for token in tokens[judged[0].start : judged[-1].end] if token.kind == "word"]
    felt = little("feels", "went_so")
    if felt.isdisjoint(words):
        return False
    if behind is None or words[0] in little("that_one", "relative"):
        known = felt | little("felt_so", "judged_so", "that_one", "relative", "beside_nothing")
        if any(word not in known for word in words):
            told.ask("sets", said.clause)
        told.everything = True
        return True
    return False


def _of_feeling(fact: Fact) -> bool:
    return fact.kind in ("word", "scheme") or (fact.kind == "plan" and plan_names(fact) <= {"the", "fine"})


def no_time_for_it(told: Told, said: Said) -> bool:
    """ "The dips, no time any more. The rest as planned": of what the clause before has named, and told nothing of."""
    facts = said.clause.facts
    why = len(facts) == 1 and plan_names(facts[0]) == {"skipped"} and facts[0].end - facts[0].start > 1
    at = _place(told, said)
    before = told.clauses[at - 1] if why and at else None
    if before is None or before.sentence != said.clause.sentence or not _names_only(before):
        return False
    for target in before.targets:
        told.keep[target] = False
    return True


def against_the_rest(told: Told, said: Said) -> bool:
    """ "The dips got the boot, the rest as planned": set against the rest in words that no book knows, and asked.

    "The dips were hell" tells how they felt: they were done.
    """
    at = _place(told, said)
    if not _names_only(said.clause) or at + 1 >= len(told.clauses):
        return False
    after = told.clauses[at + 1]
    if "rest" not in after.names or not after.names & GLOBAL - {"rest"} or after.targets:
        return False
    if not _strange(told.message, said.clause):
        return False
    told.ask("sets", said.clause)
    for target in said.clause.targets:
        told.keep[target] = False
    return True


def _place(told: Told, said: Said) -> int:
    return next(at for at, clause in enumerate(told.clauses) if clause is said.clause)


def _names_only(clause: Clause) -> bool:
    """Whether a clause names planned work, and no word that the reader knows tells what came of it."""
    silent = all(fact.kind in ("move", "plan", "word") or fact.value == "got" for fact in clause.facts)
    return silent and bool(clause.targets) and clause.names <= {"the"}


def _strange(message: Message, clause: Clause) -> bool:
    """Whether a clause has a word that tells neither of doing nor of how it felt."""
    known = little("felt_so") | little("the") | little("article")
    feels, glue = little("feels") | little("went_so"), message.book("prose").words
    if any(token.text in feels for token in message.tokens[clause.facts[0].start : clause.facts[-1].end]):
        return False
    words = [message.tokens[at] for fact in clause.facts if fact.kind == "word" for at in range(fact.start, fact.end)]
    return any(token.kind == "word" and token.text not in known and token.word not in glue for token in words)


def _nothing_done(said: Said) -> bool:
    """ "Skipped it all", "alles ausgelassen": all that was planned, and nothing else is told of it."""
    names = said.names - {"the", "every"}
    whole = names & {"done", "all_lifts"} or any(f.value == "all" for f in said.scoped)
    alone = not said.named and not said.values and all(f.value == "all" for f in said.scoped)
    return alone and bool(whole) and names <= {"skipped", "done", "all_lifts"} and "skipped" in names


def _only_skipped(said: Said) -> bool:
    """ "I only skipped the dips": the others were done."""
    order = [name for fact in said.clause.facts for name in plan_names(fact) if name in ("only", "skipped")]
    if order[:1] != ["only"] or "skipped" not in order or not said.named or said.values or said.scoped:
        return False
    facts = said.clause.facts
    led = next(at for at, fact in enumerate(facts) if "only" in plan_names(fact))
    gone = next(at for at, fact in enumerate(facts) if "skipped" in plan_names(fact))
    return all(fact.kind in ("move", "word", "claim") or plan_names(fact) <= {"the"} for fact in facts[led + 1 : gone])


def _but_some(clause: Clause) -> bool:
    """Whether an exception is made to what was left out: "skipped all of it but …"."""
    order = [plan_names(fact) & {"skipped", "done", "except"} for fact in clause.facts if plan_names(fact)]
    told = [names for names in order if names]
    return len(told) > LEAST_SAID and "skipped" in told[0] and "done" in told[1] and "except" in told[2]


def _gear_away(told: Told, said: Said) -> bool:
    """ "No rings there, did rows instead": what was not there is gear, and no work."""
    facts = said.clause.facts
    names = told.message.beginning("movements")[facts[0].start : facts[-1].end]
    return any(set(hit.name.split("+")) <= GEAR for found in names for hit in found)


def _and_the_rest(message: Message, clause: Clause) -> bool:
    """Whether a clause is no more than "… and the rest"."""
    tokens, first, last = message.tokens, clause.facts[0].start, clause.facts[-1].end
    if clause.names - {"the"} != {"rest"} or not first or tokens[first - 1].text not in little("and"):
        return False
    words = {token.text for token in tokens[first:last]}
    closed = last == len(tokens) or tokens[last].kind in ("sym", "nl")
    return closed and words.isdisjoint(little("all_of_it")) and all(plan_names(fact) for fact in clause.facts)


def _of(message: Message, fact: Fact) -> bool:
    """The "of" in "all but the dips and the last set of pull-ups"."""
    words = {token.text for token in message.tokens[fact.start : fact.end]}
    return fact.kind == "word" and words <= little("of_another", "article", "all_that")


def first_only(told: Told, said: Said) -> bool:
    """ "The first two as planned", "only the first three sets": those, and not all."""
    did = any(fact.kind == "scheme" and fact.value == "got" for fact in said.clause.facts)
    values = [fact for fact in said.values if not (fact.kind == "load" and fact.note.get("same"))]
    if not said.scoped:
        return False
    if not said.names & {"skipped", "except", "not"} and _beyond(told, said):
        return True
    if values:
        return False
    closed = any("no_rest" in clause.names for clause in told.clauses)  # "warm-up and top set, nothing more"
    closed = closed or told.exclusive  # "only the warm-up and the first two sets of pull-ups"
    if not did and not closed and not said.names & {"only", "planned", "done", "same", "quit"}:
        return False
    scope = said.scoped[-1].value
    if scope == "all" or (scope == "last" and not said.names & {"only"}):
        return False
    if said.sided and "only" in said.names and (_side_of_set(told, said) or _first_of_side(told, said)):
        return True
    whole = lifts_pointed_at(told, said)
    each = [at for own in each_lift(told, said) for at in pick(told.rows, own, scope)]
    targets = whole if whole is not None else each
    targets = targets or pick(told.rows, said.clause.targets or main_rows(told.rows), scope)
    if not targets:
        told.asks.append(Ask("sets", told.message.span(said.scoped[-1].start, said.scoped[-1].end)))
        return True
    for at in targets:
        told.keep.setdefault(at, True)
    told.exclusive = told.exclusive or not told.everything
    told.warmed_up(targets)
    return True


def all_of_side(told: Told, said: Said) -> bool:
    """ "Right all, left only the first two": all of that side."""
    sides = {fact.value for fact in said.clause.facts if fact.kind == "side"}
    whole = any(fact.kind == "scope" and fact.value == "all" for fact in said.clause.facts)
    whole = whole or "all_lifts" in said.names  # "links alles"
    if not said.sided or len(sides) != 1 or not whole or said.values or said.names - {"done", "the", "all_lifts"}:
        return False
    if any(fact.kind not in ("side", "scope", "word", "scheme") for fact in said.clause.facts if fact.kind != "plan"):
        return False
    own = [at for at, row in enumerate(told.rows) if row.side in sides]
    for at in own:
        told.keep.setdefault(at, True)
    return bool(own)


def _sided(told: Told, said: Said) -> list[int]:
    """The sets of the one-armed work that a clause speaks of: what it names, or the main lift, or all there are."""
    meant = said.clause.targets or main_rows(told.rows)
    own = [at for at in meant if told.rows[at].side]
    return own or [at for at, row in enumerate(told.rows) if row.side]


def _side_of_set(told: Told, said: Said) -> bool:
    """ "Third set only right": of that set the one side alone, and both of the others."""
    facts = [fact for fact in said.clause.facts if fact.kind in ("side", "scope") or "only" in plan_names(fact)]
    led = next((at for at, fact in enumerate(facts) if fact.kind == "plan"), len(facts))
    bound = facts[led + 1] if led + 1 < len(facts) else facts[led - 1] if led else None
    if bound is None or bound.kind != "side" or len(facts) != LEAST_SAID + 1:
        return False
    sided = _sided(told, said)
    left_out = told.excepted is not None and not set(sided).isdisjoint(told.excepted[1])
    if len({told.rows[at].movement for at in sided}) > 1 or left_out:
        told.ask("sets", said.clause)  # "all but the archers: only the left on the last set": of the others or not?
        return True
    chosen = pick(told.rows, sided, said.scoped[-1].value)
    if not chosen:
        return False
    for at in sided:
        told.keep.setdefault(at, True)
        if at in chosen and told.rows[at].side != bound.value:
            told.keep[at] = False
    return True


def _first_of_side(told: Told, said: Said) -> bool:
    """ "Right all three, left only the first": those of that side, and no more of it."""
    sides = {fact.value for fact in said.clause.facts if fact.kind == "side"}
    meant = _sided(told, said)
    own = [at for at in meant if told.rows[at].side in sides]
    chosen = pick(told.rows, own, said.scoped[-1].value)
    if len(sides) != 1 or not chosen:
        return False
    if len({told.rows[at].movement for at in meant}) > 1:
        told.ask("sets", said.clause)
        return True
    for at in meant:
        told.keep.setdefault(at, True)  # "archers: left only the first two": the right as planned
    for at in own:
        told.keep[at] = at in chosen
    return True


def one_side_only(told: Told, said: Said) -> bool:
    """ "Rotations only right side": the other side was not done."""
    sides = {f.value for f in said.clause.facts if f.kind == "side"}
    own = [at for at, row in enumerate(told.rows) if row.side is not None]
    targets = said.clause.targets or told.sticky or own
    if len(sides) != 1 or "only" not in said.names or {told.rows[at].side for at in targets} != {"left", "right"}:
        return False
    for at in targets:
        told.keep[at] = told.rows[at].side in sides
    return True


def _beyond(told: Told, said: Said) -> bool:
    """ "Did a sixth set" of five planned: one more like the last."""
    targets = said.clause.targets or main_rows(told.rows)
    step = told.step(targets[-1])
    if said.scoped[-1].value != len(targets) // step + 1:
        return False
    before = [fact for fact in said.clause.facts if fact.end <= said.scoped[-1].start]
    start = said.scoped[-1].start
    words = {told.message.tokens[at].text for fact in before for at in range(fact.start, fact.end)}
    words |= {token.text for token in told.message.tokens[max(0, start - LEAD_IN) : start]}  # "plus ein vierter Satz"
    plus = any(plan_names(fact) & PLUS for fact in before) or bool(words & little("on_top"))
    if said.values and not plus and not words & little("an"):
        return False  # "only 2 reps on set six"
    told.added[targets[-1]] = [replace(told.rows[at]) for at in targets[-step:]]
    told.added_in = (targets[-1], said.clause.sentence)
    facts = said.clause.facts
    led = next((at for at, fact in enumerate(facts) if fact.kind in ("move", "scope")), 0)
    whole = any(plan_names(fact) & {"done", "planned"} for fact in facts[:led])
    told.everything = told.everything or (whole and plus)
    if said.values:  # "a sixth set of pull-ups with 3 reps"
        aside = ("scope", "move", "plan", "scheme")
        own = [fact for fact in facts if fact.kind not in aside]
        change_added(told, Clause(own, sentence=said.clause.sentence))
    for at in targets:
        told.keep.setdefault(at, True)
    return True


def load_left(told: Told, said: Said) -> bool:
    """ "All sets without weight, the 20 kg I left for another day": which weight was left is no change of any set."""
    if "skipped" not in said.names or said.named or said.scoped or said.sided or not said.values:
        return False
    before = [clause for clause in told.clauses if clause is not said.clause]
    unloaded = any(fact.kind == "load" and fact.note.get("none") for clause in before for fact in clause.facts)
    return unloaded and all(fact.kind == "load" and bool(fact.value) for fact in said.values)


def late_rest(message: Message, clause: Clause) -> bool:
    """ "rest tomorrow", "no time for the rest": the rest was not done."""
    words = {token.word for fact in clause.facts for token in message.tokens[fact.start : fact.end]}
    return not words.isdisjoint(little("not_now"))


def put_off(message: Message, clause: Clause) -> bool:
    """ "Accessories tomorrow", "dips later": what the clause names is yet to be done."""
    tokens = message.tokens[clause.facts[0].start : clause.facts[-1].end + 1]
    text = f" {' '.join(token.text for token in tokens)} "
    off = any(f" {words} " in text for words in little("another_time"))  # "archers another day"
    off = off or not little("put_off").isdisjoint(token.word for token in tokens)
    return off and not clause.names & {"done", "planned", "rest", "only"}  # "just pull-ups tonight"
