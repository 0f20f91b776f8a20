"""The facts of a message to its sets: block by block, or against the day's plan."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise

from bot.reading.assemble.by_days import cut_by_days, told
from bot.reading.assemble.efforts import all_rated, ask_of_heads, both_rated, settle_efforts
from bot.reading.assemble.movementless import other_training, so_many_only, without_movement
from bot.reading.assemble.of_rounds import of_a_round
from bot.reading.blocks import has_work, split
from bot.reading.bounds import ends_sentence, is_then
from bot.reading.facts import Fact
from bot.reading.fold.block import fold_block
from bot.reading.fold.sets import Work, put
from bot.reading.little import little
from bot.reading.message import Message
from bot.reading.movements.mention import Mention
from bot.reading.plan import fill_from_plan, in_terms, leans, read_bare, read_part, read_plan
from bot.reading.plan.choosing import main_rows
from bot.reading.plan.ground import members, planned
from bot.reading.plan.nicknames import as_planned
from bot.reading.plan.other_lift import other_lift
from bot.reading.plan.planned_load import felt_load, planned_load
from bot.reading.plan.sets_of_lift import sets_of_lift
from bot.reading.plan.sided import of_sides
from bot.reading.plan.so_many_of import sets_of_plan
from bot.reading.plan.value import weighed
from bot.reading.reading import Ask, SetRead

COUNTED = frozenset({"move", "rows", "bare", "count", "loads"})
MOST_OF_A_LOAD = 5  # tokens of a message that is a load and little else


def read_sets(message: Message, facts: list[Fact], work: Work) -> None:
    """Blocks to sets, with the day's plan where the message leans on it."""
    if message.context.today:
        facts = sets_of_plan(message, as_planned(message, other_lift(message, facts)), planned(message))
        facts = planned_load(message, sets_of_lift(message, facts, planned(message)), planned(message))
        facts = felt_load(message, facts, planned(message))
    _read(message, facts, work)
    if message.context.today and not (work.report or work.asks or work.sets):
        scopes = [fact for fact in facts if fact.kind == "scope" and fact.value not in ("all", "over")]
        values = [fact for fact in facts if fact.kind in ("bare", "load", "loads")]
        if scopes and values:
            # "first three sets 22.5 then 20": told of the plan's sets, in a way that no rule has read
            first, last = min(f.start for f in (*scopes, *values)), max(f.end for f in (*scopes, *values))
            work.asks.append(Ask("sets", message.span(first, last)))
            work.report = True
        loads = [fact for fact in values if fact.kind == "load" and fact.value]
        if loads and not scopes and len(message.tokens) <= MOST_OF_A_LOAD:
            work.asks.append(Ask("sets", message.span(loads[0].start, loads[0].end)))  # "20 kg today": all as planned?
            work.report = True
        for side, nothing in pairwise(facts):
            if (
                side.kind == "side"
                and nothing.note.get("names") == ["not"]
                and any(one.side for one in planned(message))
            ):
                # "on the left nothing went": and on the right?
                work.asks.append(Ask("sets", message.span(side.start, nothing.end)))
                work.report = True


def _uncounted(message: Message, facts: list[Fact]) -> Ask | None:
    """ "Hab ein paar Sätze geschafft", "hice unas cuantas series": work that nobody has counted is asked."""
    vague = next((fact for fact in facts if fact.kind == "vague"), None)
    if vague is None or any(fact.kind in COUNTED for fact in facts):
        return None
    did = any(fact.kind == "scheme" and fact.value == "got" for fact in facts)
    did = did or message.tokens[vague.start].text in little("did_it")
    grammar = message.beginning("grammar")[vague.start : vague.end + 1]
    ends = [hit.end for found in grammar for hit in found if (hit.table, hit.name) == ("sets", "sets")]
    if not did or not ends or any(token.text == "?" for token in message.tokens):
        return None
    return Ask("sets", message.span(vague.start, max(vague.end, *ends)))


def _read(message: Message, facts: list[Fact], work: Work) -> None:
    uncounted = _uncounted(message, facts)
    if uncounted is not None:
        work.asks.append(uncounted)
        work.report = True
        return
    in_plan = in_terms(message, facts) if message.context.today else facts
    if leans(message, in_plan):
        read_plan(message, in_plan, work)
        return
    if message.context.today and all(f.value.movement == "!" for f in facts if f.kind == "move"):
        loose = [fact for fact in facts if fact.kind != "move"]
        sided = of_sides(message, loose)
        if isinstance(sided, Ask):
            work.asks.append(sided)
            work.report = True
            return
        if sided is not None:
            _read_blocks(message, [(sided, [sided, *loose])], work)
            return
        read_bare(message, in_plan if len(loose) == len(facts) else in_terms(message, loose), work)
        if work.report:
            return
    loose, blocks = split(facts)
    if not blocks:
        if not message.context.today or so_many_only(loose):
            without_movement(message, loose, work)
        return
    unnamed = _unnamed(message, blocks[0])
    if unnamed:
        if message.context.today:
            read_bare(message, in_terms(message, unnamed), work)
        else:
            without_movement(message, unnamed, work)
        blocks[0] = (blocks[0][0], blocks[0][1][len(unnamed) :])
    _read_blocks(message, _renamed(blocks), work)


def _renamed(blocks: list[tuple[Fact, list[Fact]]]) -> list[tuple[Fact, list[Fact]]]:
    """ "Dips 3x8 +10, no wait, that was pull-ups": the movement named after the mend did the work before it.

    Where it is told with work of its own after that, that is the work, told again.
    """
    out: list[tuple[Fact, list[Fact]]] = []
    wrong: Fact | None = None
    for move, own in blocks:
        head = own[: next((at for at, fact in enumerate(own) if fact is move), 0)]
        tail = [fact for fact in out[-1][1] if fact.kind != "sep"][-1:] if out else []
        mends = any(fact.kind == "mend" for fact in [*tail, *head])
        mends = mends and all(fact.kind in ("mend", "word", "sep") for fact in head)
        if mends and not has_work(own) and out and has_work(out[-1][1]):
            before, work = out.pop()
            wrong = replace(move, start=before.start, end=before.end)
            out.append((wrong, [wrong if fact is before else fact for fact in work]))
            continue
        if out and out[-1][0] is wrong and move.value.movement == out[-1][0].value.movement and has_work(own):
            out.pop()
        out.append((move, own))
    return out


def _unnamed(message: Message, block: tuple[Fact, list[Fact]]) -> list[Fact]:
    """What stands apart before the first movement, where that has sets of its own: "+20: 4,4,4 / dips +10: 8,8,7"."""
    move, own = block
    at = next((i for i, fact in enumerate(own) if fact is move), 0)
    other_days = _days_before(move, own)
    if other_days:
        return own[:other_days]
    marks = [i + 1 for i in range(at) if own[i].kind == "sep" and own[i].note.get("mark") in ("/", ";", ",")]
    apart = marks[-1] if marks else 0
    if apart and own[apart - 1].note.get("mark") == "," and not _whole_lists(own[:apart], own[apart:at], own[at + 1 :]):
        apart = 0
    if apart and told(own[: apart - 1]) and told(own[apart:]):
        return own[:apart]
    if _another_work(own[:at], own[at + 1 :]):
        return own[:at]
    if not message.context.today:
        return []
    # "Top set 3 @ 30. One arm: left 1 right 1": on a day with a plan a sentence may leave the main lift unnamed.
    ends = [i + 1 for i in range(at) if ends_sentence(own[i])]
    apart = ends[-1] if ends else _whole_lift(message, own[:at])
    scoped = any(fact.kind == "scope" for fact in own[:apart])
    work = told(own[:apart]) or (scoped and any(fact.kind == "bare" for fact in own[:apart]))
    return own[:apart] if apart and work and has_work(own[at:]) else []


def _another_work(head: list[Fact], tail: list[Fact]) -> bool:
    """Whether whole sets stand apart before the movement and others right after it: "4x3 60 kg, then chins 3x5"."""
    said = [fact for fact in head if fact.kind not in ("word", "claim")]
    apart = bool(said) and said[-1].kind == "sep" and said[-1].note.get("mark") not in (":", "(")
    own = next((fact for fact in tail if fact.kind not in ("load", "word")), None)
    return apart and any(_plain(fact) for fact in said) and own is not None and _plain(own)


def _plain(fact: Fact) -> bool:
    return fact.kind == "rows" and len(fact.value) > 1 and bool(fact.note.get("plain"))


def _days_before(move: Fact, own: list[Fact]) -> int:
    """How many facts tell of days before the one that names the movement: "5x3 yesterday with 20, today 4x8 dips"."""
    before = 0
    at = next((i for i, fact in enumerate(own) if fact is move), 0)
    if at and own[at - 1].kind == "scope" and own[at - 1].value == "all":
        return 0  # "Monday 5x3, Wednesday 4x6. All pull-ups"
    if at and own[at - 1].kind == "sep" and not told(own[at:]):
        return 0  # "Monday 5x3, Wednesday 4x6, pull-ups"
    for part in cut_by_days(own):
        if any(fact is move for fact in part):
            return before if told(part) and before < len(own) else 0
        before += len(part)
    return 0


def _whole_lift(message: Message, head: list[Fact]) -> int:
    """Where "20 kg 3,3,3,3,3 then" ends before a movement: the plan's main lift, all its sets; 0: they are not."""
    then = next((at for at, fact in enumerate(head) if is_then(fact)), None)
    told = [fact for fact in head[:then] if fact.kind == "rows"]
    rows = planned(message)
    return (then or 0) + 1 if told and len(told) == 1 and len(told[0].value) == len(main_rows(rows)) else 0


def _whole_lists(head: list[Fact], lead: list[Fact], tail: list[Fact]) -> bool:
    """Whether a list stands apart before the movement and another right after it: "7 7 6 s, leg raises 10 9 8"."""
    lists = [fact for fact in head if fact.kind == "rows" and fact.note.get("list")]
    own = next((fact for fact in tail if fact.kind != "load"), None)
    return (
        bool(lists) and not any(fact.kind != "word" for fact in lead) and own is not None and bool(own.note.get("list"))
    )


def _read_blocks(message: Message, blocks: list[tuple[Fact, list[Fact]]], work: Work) -> None:
    """Each movement with its own facts."""
    efforts: list[tuple[float, int, list[SetRead]]] = []
    trained: set[str] = set()
    inside = False
    rounds = nth = None
    worn = _worn(blocks[0])
    made_by: list[tuple[int, int]] = []
    for move, own in _by_days(blocks):
        mention: Mention = move.value
        if mention.movement == "!":
            other_training(message, move, own, work)
            continue
        for fact in own:
            if fact.kind == "rounds" and fact.start < move.start:
                rounds = fact.value
        if mention.movement in trained:
            nth = of_a_round(message, work, own, mention.movement, nth)
            if nth is not None:
                continue
        own = [_same_load(fact, work) for fact in own]
        if mention.movement.startswith("?") and message.context.today and not has_work(own):
            mention = _of_plan(message, mention)  # "archers ok"
        base = [row for row in planned(message) if row.movement == mention.movement] if message.context.today else []
        if base and _told_of_plan(message, own, mention, move, work):
            trained.add(mention.movement)
            continue
        folded = fold_block(message, mention.movement, [weighed(fact, base) for fact in own], move, rounds)
        if not folded.rows and not folded.asks and work.sets and _the_same(own):
            work.asks.append(Ask("sets", message.span(own[0].start, own[-1].end).strip(" ,.;")))  # "dips the same"
            work.report = True
            continue
        if not folded.rows and not folded.asks and _as_before(message, own):
            work.asks.append(Ask("sets", message.span(own[0].start, own[-1].end).strip(" ,.;")))  # "dips wie Montag"
            work.report = True
            continue
        if not folded.rows and not folded.asks:
            if folded.early_effort is not None and not _rates_again(work, mention, folded.early_effort):
                efforts.append((folded.early_effort, 3, []))
            continue
        trained.add(mention.movement)
        for row in folded.rows:
            if worn is not None and row.load_kg is None and not row.load_open:
                row.load_kg = worn
        if any(ends_sentence(fact) for fact in own):
            worn = None
        before = len(work.sets)
        at = next((f.start for f in own if f.kind in ("rows", "bare", "count", "fail", "load")), move.start)
        apart = all(fact is not move for fact in own)
        work.places.append((before, at, at) if apart else (before, min(at, move.start), move.end))
        fill_from_plan(message, mention, folded, own)
        put(message, mention.movement, folded, move, work)
        made = work.sets[before:]
        if folded.early_effort is not None:
            efforts.append((folded.early_effort, 3, []))
        inside = inside or folded.effort_inside
        for value, how in folded.efforts_open[-1:]:
            efforts.append((value, how, made))
        if _for_both(own):
            _load_of_both(work, before)
        made_by.append((before, len(work.sets)))
    times = _circuit(blocks, [end - first for first, end in made_by])
    if times:
        _repeat_single(work, times)
    ask_of_heads(message, blocks, efforts, work)
    settle_efforts(work, efforts, len(trained), inside)
    both = both_rated(blocks[-1][1], len(trained))
    if both is not None:
        work.session_rpe = None
        for at in {end - 1 for first, end in made_by if end > first}:
            work.sets[at] = replace(work.sets[at], rpe=both)
    rated = all_rated(blocks[-1][1], len(trained))
    if rated is not None:
        work.sets[:] = [one if one.rpe is not None else replace(one, rpe=rated) for one in work.sets]


def _of_plan(message: Message, mention: Mention) -> Mention:
    """A family named, as the one movement of it that the day has."""
    own = {row.movement for row in planned(message)} & set(members(mention))
    return replace(mention, movement=str(own.pop())) if len(own) == 1 else mention


def _told_of_plan(message: Message, own: list[Fact], mention: Mention, move: Fact, work: Work) -> bool:
    """Whether a block leans on the plan where others tell their sets in full; then it is read so."""
    before = len(work.sets)
    if not read_part(message, in_terms(message, own), mention.movement, work):
        return False
    work.places.append((before, move.start, move.end))
    return True


def _rates_again(work: Work, mention: Mention, effort: float) -> bool:
    """ "Pull-ups 5x2, chin-ups 3x5, the last set of the chin-ups was a 9": the effort of the last set of those."""
    own = [at for at, one in enumerate(work.sets) if one.movement == mention.movement]
    if not own:
        return False
    for at in own[-2:] if work.sets[own[-1]].side is not None else own[-1:]:
        work.sets[at] = replace(work.sets[at], rpe=effort)
    return True


def _worn(block: tuple[Fact, list[Fact]]) -> float | None:
    """ "With the 8 kg vest: push-ups 3x15, squats 3x20": the load of all that the sentence goes on to list."""
    move, own = block
    head = [fact for fact in own if fact.end <= move.start]
    title = next((at for at, fact in enumerate(head) if fact.note.get("mark") == ":"), None)
    colon = title is not None
    head = head if title is None else head[: title + 1]  # "vest for everything: 4x8 push-ups, 4x5 chins"
    loads = [fact for fact in head if fact.kind == "load" and fact.value]
    if not colon or len(loads) != 1 or any(fact.kind in ("rows", "bare", "count") for fact in head):
        return None
    return float(loads[0].value)


def _circuit(blocks: list[tuple[Fact, list[Fact]]], made: list[int]) -> int:
    """How often a circuit was done whose rounds are told once: "3 sets: 5 chins, 8 dips", "5 chins, 10 dips, 6 rounds".

    0: it is none, or each movement has its own sets.
    """
    if len(made) < 2 or len(made) != len(blocks):
        return 0
    head, (move, tail) = blocks[0], blocks[-1]
    after = next((int(fact.value) for fact in tail if fact.kind == "rounds" and fact.start > move.start), 0)
    if after > 1 and made[-1] == after and set(made[:-1]) == {1}:
        return after
    aside = ("word", "scheme", "claim", "plan", "mend")
    led = [fact for fact in head[1] if fact.start < head[0].start and fact.kind not in aside]
    while led and led[0].kind == "sep":
        led = led[1:]  # "slept badly, 3 sets each: …"
    counts = bool(led) and led[0].kind == "count" and len(led) > 1 and led[1].note.get("mark") == ":"
    return made[0] if counts and made[0] > 1 and set(made[1:]) == {1} else 0


def _repeat_single(work: Work, times: int) -> None:
    """Movements that were told once in a circuit, as often as it was done."""
    sets: list[SetRead] = []
    places: list[tuple[int, int, int]] = []
    for n, (first, start, end) in enumerate(work.places):
        until = work.places[n + 1][0] if n + 1 < len(work.places) else len(work.sets)
        places.append((len(sets), start, end))
        own = work.sets[first:until]
        sets += [replace(own[0]) for _ in range(times)] if len(own) == 1 else own
    work.sets[:], work.places[:] = sets, places


def _the_same(own: list[Fact]) -> bool:
    """ "Dips the same": a movement of which nothing else is told."""
    told = [fact for fact in own if fact.kind not in ("word", "sep", "scheme")]
    last = told[2].kind == "plan" and "fine" in told[2].note.get("names", ()) if len(told) == 3 else len(told) == 2
    return last and told[0].kind == "move" and "same" in told[1].note.get("names", ())


def _as_before(message: Message, own: list[Fact]) -> bool:
    """ "Dips wie Montag", "pull-ups same as last week": work told by another day's, nothing else."""
    told = [fact for fact in own if fact.kind not in ("word", "sep")]
    if not told or told[0].kind != "move" or any(ends_sentence(fact) for fact in own[:-1]):
        return False
    if len(told) == 2 and told[1].kind == "plan" and "last_time" in told[1].note.get("names", ()):
        return True
    day = (
        len(told) > 1
        and told[-1].kind == "claim"
        and told[-1].value is not None
        and told[-1].value.kind in ("day", "noise")
    )
    led = day and message.tokens[told[-1].start - 1].text in little("like")
    return led and all(fact.kind in ("move", "plan", "claim") for fact in told)


def _same_load(fact: Fact, work: Work) -> Fact:
    """ "chins 3x5 same weight": that of the movement before."""
    if fact.kind != "load" or not fact.note.get("same") or not work.sets or not work.sets[-1].load_kg:
        return fact
    return replace(fact, value=work.sets[-1].load_kg, note={"how": "at"})


def _for_both(own: list[Fact]) -> bool:
    """ "4x4 pull-ups and 3x8 dips, both with 10 kg", "10 kg vest for both"."""
    told = [fact for fact in own if fact.kind not in ("word", "sep", "thing")]
    return any(
        {one.kind, after.kind} == {"plan", "load"}
        and any(fact.kind == "plan" and "all_lifts" in fact.note.get("names", ()) for fact in (one, after))
        and all(fact.value for fact in (one, after))
        for one, after in pairwise(told)
    )


def _load_of_both(work: Work, before: int) -> None:
    """The load of the newest movement for those before it that had none."""
    load = work.sets[-1].load_kg
    work.sets[:before] = [one if one.load_kg else replace(one, load_kg=load) for one in work.sets[:before]]


def _by_days(blocks: list[tuple[Fact, list[Fact]]]) -> Iterator[tuple[Fact, list[Fact]]]:
    """The blocks, each cut at the days that it tells of."""
    for move, own in blocks:
        if move.value.movement == "!":
            yield move, own
            continue
        for part in cut_by_days(own):
            yield move, part
