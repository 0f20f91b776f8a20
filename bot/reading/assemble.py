"""All readers propose, the assembler resolves: claims, movements and sets to one reading. What conflicts is asked."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import date

from bot.reading.blocks import drop_list_marks, split
from bot.reading.facts import KG_PER_LB, Fact
from bot.reading.fold import Folder
from bot.reading.items import make_items
from bot.reading.lexicon import languages
from bot.reading.message import Claim, Message, read_message
from bot.reading.movements import Mention, combine, find_movements
from bot.reading.prose import drop_prose
from bot.reading.readers import find_claims, find_wishes
from bot.reading.reading import Ask, Context, Correction, PainRead, Reading, SetRead, Span
from bot.reading.rows import Block, Folded, Row
from bot.reading.scan import Scanner, scan
from bot.reading.strangers import drop_strangers
from bot.reading.ties import tie
from bot.reading.unreal import drop_unreal
from planner import movements as catalogue

MOST_ADDED = 1.6  # added load over this many bodyweights is asked about (common practice)
MOST_ADDED_UNKNOWN_KG = 110.0
MOST_REPS = 120
MOST_HOLD_S = 900.0
PLACES_IN_NAMES = frozenset({"hand_on_biceps", "hand_on_shoulder", "at_elbow", "at_shoulder"})  # no pain there
ASSISTED = frozenset({"one_arm_counterweight", "band_pull_up"})
FREE_WEIGHT = frozenset({"squat", "row", "lat_pulldown", "split_squat"})
# Beside these "@8" is effort: their only load is the body.
FREE_ONE_ARM = frozenset(
    "one_arm_pull_up one_arm_chin_up one_arm_hang one_arm_hand_on_biceps one_arm_hand_on_shoulder archer_ring_elbow "
    "archer_ring_shoulder".split()
)


@dataclass
class Work:
    """What the assembler found so far."""

    sets: list[SetRead] = field(default_factory=list)
    asks: list[Ask] = field(default_factory=list)
    unread: list[str] = field(default_factory=list)
    session_rpe: float | None = None
    report: bool = False
    places: list[tuple[int, int, int]] = field(default_factory=list)  # first set of a block, where its words stand


def one_sided(movement: str | None) -> bool:
    """Whether the catalogue has it as done one arm or leg at a time."""
    if movement is None:
        return False
    if movement.startswith("?"):
        return movement in ("?archer", "?one_arm")
    known = catalogue.catalogue().get(movement)
    return bool(known and known.one_sided)


def is_hold(movement: str | None) -> bool:
    if movement is None:
        return False
    if movement.startswith("?"):
        return movement in ("?front_lever", "?lever", "?planche", "?plank", "?tuck", "?straddle", "?hold")
    known = catalogue.catalogue().get(movement)
    return bool(known and known.hold)


def read(text: str, context: Context) -> Reading:
    """What a message says. Any text at all is good; nothing is raised, nothing is changed."""
    message = read_message(text, context)
    return assemble(message, settle(message, find_claims(message)))


def settle(message: Message, claims: list[Claim]) -> list[Claim]:
    """Claims that contradict each other or a movement's name: the surer one stays."""
    named: set[int] = set()
    for hit in (hits[0] for hits in message.movement_hits if hits):
        if hit.table == "part" and set(hit.name.split("+")) & PLACES_IN_NAMES:
            named.update(range(hit.start, hit.end))
    kept = [c for c in claims if not (c.kind == "pain" and named & set(range(c.start, c.end)))]
    kept = [
        c
        for c in kept
        if not (c.kind in ("day", "noise") and _in_scheme(message, c))
        and not ((c.kind == "day" and _counts_sets(message, c)) or (c.kind == "pain" and _counts_sides(message, c)))
    ]
    if any(c.kind == "day" and c.value is not None for c in kept):
        kept = [c for c in kept if not (c.kind == "day" and c.value is None)]  # "last month it was 5, today 8"
    return kept


def _in_scheme(message: Message, claim: Claim) -> bool:
    """The "3 day" of "another 5x3 day" is the end of a scheme."""
    if claim.start < 2 or claim.start >= claim.end:
        return False
    sets, times, reps = message.tokens[claim.start - 2 : claim.start + 1]
    return sets.kind == reps.kind == "num" and times.text == "x"


def _counts_sets(message: Message, claim: Claim) -> bool:
    """ "the 3rd" of "missed the 3rd" and "2nd set" is no day."""
    if claim.end - claim.start > 3 or not any(token.kind == "num" for token in message.tokens[claim.start : claim.end]):
        return False
    hits = message.book("grammar").at(message.tokens, claim.end) if claim.end < len(message.tokens) else []
    if any(hit.table in ("sets", "reps") for hit in hits):
        return True
    return any(
        hit.table == "fail" and hit.name == "fail" and hit.end >= claim.start - 1
        for at in range(max(0, claim.start - 4), claim.start)
        for hit in message.book("grammar").at(message.tokens, at)
    )


def _counts_sides(message: Message, claim: Claim) -> bool:
    """ "right arm 1" beside a one-arm movement is a set, no pain in an arm."""
    if (
        claim.value is None
        or claim.value.site not in ("other", None)
        or (claim.value.side is None and claim.value.site is None)
    ):
        return False
    sides = [
        hit
        for at in range(claim.start, claim.end)
        for hit in message.book("grammar").at(message.tokens, at)
        if hit.table == "side" and hit.end <= claim.end
    ]
    covered = {at for hit in sides for at in range(hit.start, hit.end)}
    rest = [message.tokens[at] for at in range(claim.start, claim.end) if at not in covered]
    if not sides or any(token.kind == "word" and token.value is None for token in rest):
        return False
    return any(one_sided(mention.movement) for mention in find_movements(message))


def assemble(message: Message, claims: Sequence[Claim]) -> Reading:
    """Resolve all claims, find movements and sets in what is left of the message."""
    taken = {at for claim in claims for at in range(claim.start, claim.end)}
    dated_tokens = {at for c in claims if c.kind == "day" and c.value is not None for at in range(c.start, c.end)}
    work = Work()
    blocking = [claim for claim in claims if claim.end > claim.start and claim.kind != "intent"]
    days = [claim for claim in claims if claim.kind == "day"]
    corrections = [claim for claim in claims if claim.kind == "correction"]
    mentions = find_movements(message, taken)
    if not mentions and any(token.value is not None for token in message.tokens):
        # a word of another language's trade in an otherwise English (German …) message
        for language in languages():
            mentions = mentions or find_movements(replace(message, language=language), taken)
    items = make_items(message, mentions, blocking)
    scanner = Scanner(items, message.context.unit, message.context.bodyweight_kg)
    facts = drop_list_marks(message, tie(message, scan(scanner)))
    facts = drop_prose(message, drop_unreal(message, facts, dated_tokens))
    if corrections:
        facts = corrected(facts, corrections[0].value)
    facts, strange = drop_strangers(message, facts)
    work.unread.extend(strange)
    read_sets(message, facts, work)
    if corrections and not restated(facts):
        work = Work()  # only the values that were wrong were told
    dated(work, days)
    return finish(message, claims, work, corrections)


def corrected(facts: list[Fact], correction: Correction | None) -> list[Fact]:
    """The new value of a correction, told bare ("it was 22.5, not 20"), is what the correction says it is."""
    if correction is None or correction.field != "load_kg" or not isinstance(correction.now, (int, float)):
        return facts
    now = float(correction.now)
    return [
        replace(fact, kind="load", value=now)
        if fact.kind == "bare" and abs(fact.note.get("kg", fact.value) - now) < 0.05
        else fact
        for fact in facts
    ]


def restated(facts: list[Fact]) -> bool:
    """Whether whole sets are told ("they were 5x3 at 22.5")."""
    return any(fact.kind == "rows" and not fact.note.get("one") and len(fact.value) > 1 for fact in facts)


def read_sets(message: Message, facts: list[Fact], work: Work) -> None:
    """Blocks to sets, with the day's plan where the message leans on it."""
    from bot.reading import plan

    if plan.leans(message, facts):
        plan.read_plan(message, facts, work, fold_block)
        return
    if message.context.today and all(f.value.movement == "!" for f in facts if f.kind == "move"):
        loose = [fact for fact in facts if fact.kind != "move"]
        plan.read_bare(message, loose, work, fold_block)
        if work.report:
            return
    loose, blocks = split(facts)
    if not blocks:
        if message.context.today:
            plan.read_bare(message, loose, work, fold_block)
        else:
            without_movement(message, loose, work)
        return
    efforts: list[tuple[float, int, list[SetRead]]] = []
    worked = 0
    inside = False
    rounds = None
    for move, own in blocks:
        mention: Mention = move.value
        if mention.movement == "!":
            other_training(message, move, own, work)
            continue
        for fact in own:
            if fact.kind == "rounds" and fact.start < move.start:
                rounds = fact.value
        folded = fold_block(message, mention.movement, own, move, rounds)
        if not folded.rows and not folded.asks:
            if folded.early_effort is not None:
                efforts.append((folded.early_effort, 3, []))
            continue
        worked += 1
        before = len(work.sets)
        at = next((f.start for f in own if f.kind in ("rows", "bare", "count", "fail", "load")), move.start)
        work.places.append((before, min(at, move.start), move.end))
        plan.fill_from_plan(message, mention, folded, own)
        put(message, mention.movement, folded, move, work)
        made = work.sets[before:]
        if folded.early_effort is not None:
            efforts.append((folded.early_effort, 3, []))
        inside = inside or folded.effort_inside
        for value, how in folded.efforts_open[-1:]:
            efforts.append((value, how, made))
    settle_efforts(work, efforts, worked, inside)


def settle_efforts(work: Work, efforts: list[tuple[float, int, list[SetRead]]], worked: int, inside: bool) -> None:
    """An effort closing a message of one movement is its last set's; after several, or before work, the session's."""
    for value, how, made in efforts:
        if how == 3:
            work.session_rpe = value
        elif (worked > 1 and not inside and len(efforts) == 1 and made and made[-1] is work.sets[-1]) or (
            worked > 1 and how == 2 and made and made[-1] is work.sets[-1] and len(efforts) == 1
        ):
            work.session_rpe = value
            for at in range(len(work.sets)):
                if any(work.sets[at] is one for one in made) and work.sets[at].rpe == value:
                    work.sets[at] = replace(work.sets[at], rpe=None)


def fold_block(
    message: Message,
    movement: str | None,
    facts: list[Fact],
    move: Fact | None,
    rounds: int | None = None,
    base: list[Row] | None = None,
) -> Folded:
    """One movement's facts to rows."""
    block = Block(movement, facts, one_sided(movement), is_hold(movement), base=base, rounds=rounds)
    family = combine().families.get(movement[1:], ()) if movement and movement.startswith("?") else (movement,)
    implied = any(one.movement in family for one in message.context.today or ())
    block.loadable = movement not in FREE_ONE_ARM and not implied
    if move is not None:
        block.move_at = move.start
        for i, fact in enumerate(facts):
            if fact is move:
                back = i - 1
                while back >= 0 and back > i - 3 and facts[back].kind in ("word", "weighted", "flag"):
                    back -= 1
                if back >= 0 and facts[back].kind == "bare":
                    facts[back].note["before_move"] = True
    unit = message.context.unit
    return Folder(block, message.span, lambda value, said=None: to_kg(value, said or unit)).fold()


def to_kg(value: float, unit: str) -> float:
    """A load as it was said, in kilograms."""
    return value * KG_PER_LB if unit == "lb" else value


def put(message: Message, movement: str | None, folded: Folded, move: Fact | None, work: Work) -> None:
    """Rows to sets: movement resolved, assistance, plausibility."""
    asks = list(folded.asks)
    known, ask = resolve(message, movement, move)
    if ask is not None:
        asks.append(ask)
    for row in folded.rows:
        work.sets.append(to_set(message, known if row.movement is None else row.movement, row, asks, move))
    seen: set[tuple[str, str]] = set()
    for one in asks:
        if (one.about, one.span) not in seen:
            seen.add((one.about, one.span))
            work.asks.append(one)
    work.report = True


def resolve(message: Message, movement: str | None, move: Fact | None) -> tuple[str | None, Ask | None]:
    """A family is the one in the day's plan, else it is asked."""
    if movement is None or not movement.startswith("?"):
        return movement, None
    members = combine().families.get(movement[1:], ())
    planned = []
    for one in message.context.today or ():
        if one.movement in members and one.movement not in planned:
            planned.append(one.movement)
    if len(planned) == 1:
        return planned[0], None
    span = message.span(move.start, move.end) if move is not None else message.text
    return None, Ask("movement", span)


def to_set(message: Message, movement: str | None, row: Row, asks: list[Ask], move: Fact | None) -> SetRead:
    load: float | None = row.load_kg if row.load_kg is not None else 0.0
    assist: float | None = row.assist_kg if row.assist_kg is not None else 0.0
    if row.load_open and row.load_kg is None:
        load = None
    if movement in ASSISTED and load and row.assist_kg is None:
        assist, load = load, 0.0
    elif movement in ASSISTED and row.load_open:
        assist, load = None, 0.0
    elif movement is not None and movement not in ASSISTED and row.assist_kg and not load and movement == "pull_up":
        movement = "band_pull_up"
    reps = row.reps
    hold = row.hold_s
    failed = row.failed
    if hold is not None and hold <= 0:
        hold, reps, failed = None, 0, True
    bodyweight = message.context.bodyweight_kg
    if load and movement is not None:
        most = MOST_ADDED * bodyweight if bodyweight else MOST_ADDED_UNKNOWN_KG
        if movement in FREE_WEIGHT:
            most *= 2
        if load > most:
            mark_load(message, move, load, asks)
            load = None
    if assist and assist > (bodyweight or 100):
        mark_load(message, move, assist, asks, "assist_kg")
        assist = None
    if reps is not None and reps > MOST_REPS:
        asks.append(Ask("reps", number_span(message, move, reps)))
        reps = None
    if hold is not None and hold > MOST_HOLD_S:
        asks.append(Ask("hold_s", number_span(message, move, hold)))
        hold = None
    return SetRead(
        movement,
        row.side,  # type: ignore[arg-type]
        reps,
        hold,
        load,
        assist,
        row.rpe,
        row.rom,  # type: ignore[arg-type]
        row.eccentric,
        tuple(row.pauses),  # type: ignore[arg-type]
        failed,
        row.linked,
    )


def number_span(message: Message, move: Fact | None, value: float) -> str:
    for at, token in enumerate(message.tokens):
        if token.kind == "num" and token.value == value:
            return message.span(at, at + 1)
    return message.span(move.start, move.end) if move is not None else message.text.strip()[:80]


def mark_load(message: Message, move: Fact | None, kg: float, asks: list[Ask], about: str = "load_kg") -> None:
    """Ask about a load over the plausible, by its own words."""
    for at, token in enumerate(message.tokens):
        if token.value is not None and (abs(token.value - kg) < 0.01 or abs(token.value * KG_PER_LB - kg) < 0.01):
            start = at - 1 if at and message.tokens[at - 1].text in ("+", "@") else at
            asks.append(Ask(about, message.span(start, at + 1)))
            return
    asks.append(Ask(about, message.span(move.start, move.end) if move else message.text.strip()[:80]))


def other_training(message: Message, move: Fact, own: list[Fact], work: Work) -> None:
    """Runs, swings, deadlifts: verbatim to `unread` when a number is told of them."""
    numbers = ("rows", "bare", "load", "loads", "at", "left", "count", "percent", "assist", "ask")
    start, end = move.start, move.end
    at = own.index(move)
    found = False
    for fact in reversed(own[:at]):
        if fact.kind == "sep":
            break
        if fact.kind in numbers or fact.note.get("noise") or _is_noise(fact):
            start, found = fact.start, True
    for fact in own[at + 1 :]:
        if fact.kind == "sep" and (
            (fact.value >= 2 and fact.note.get("mark") != ".") or fact.note.get("mark") in (".", "and", "(")
        ):
            break
        if fact.kind in numbers or fact.note.get("noise") or _is_noise(fact):
            end, found = fact.end, True
    if found:
        work.unread.append(message.span(start, end))
        work.report = True


def _is_noise(fact: Fact) -> bool:
    return fact.kind == "claim" and fact.value is not None and fact.value.kind == "noise"


def without_movement(message: Message, facts: list[Fact], work: Work) -> None:
    """Numbers of training without a movement and without a plan: asked."""
    told = [fact for fact in facts if fact.kind == "rows" and not fact.note.get("one")]
    loads = [fact for fact in facts if fact.kind in ("load", "at", "loads") and not fact.note.get("none")]
    if told and (len(told) > 1 or loads or not told[0].note.get("list") or len(told[0].value) > 2) and told:
        folded = fold_block(message, None, facts, None)
        span = message.span(told[0].start, told[-1].end)
        for row in folded.rows:
            work.sets.append(to_set(message, None, row, [], None))
        work.asks.extend(folded.asks)
        work.asks.insert(0, Ask("movement", span))
        work.report = True
        return
    if loads and any(fact.kind in ("bare", "count") for fact in facts):
        work.asks.append(Ask("movement", message.span(loads[0].start, loads[0].end)))
        work.report = True
        return
    for fact in facts:
        if fact.kind == "plan" and "last_time" in fact.note.get("names", ()):
            work.asks.append(Ask("sets", message.span(fact.start, fact.end)))
            work.report = True
            return
    counts = [fact for fact in facts if fact.kind == "count" and not fact.note.get("of_plan")]
    if counts and not told and not any(fact.kind == "word" and len(str(fact.value)) > 4 for fact in facts):
        work.asks.append(Ask("movement", message.span(counts[0].start, counts[0].end)))
        work.report = True
        return
    efforts = [fact for fact in facts if fact.kind == "effort"]
    if len(efforts) == 1 and not told:
        work.session_rpe = efforts[0].value


def dated(work: Work, days: Sequence[Claim]) -> None:
    """Where one message tells of several days, each block's sets get the day named before them (or after them)."""
    told = sorted((c for c in days if c.value is not None and c.end > c.start), key=lambda claim: claim.start)
    if len({claim.value for claim in told}) < 2 or len(work.places) < 2:
        return
    heads = told[0].start <= work.places[0][2]
    bounds = [*(first for first, _, _ in work.places), len(work.sets)]
    for n, (first, start, end) in enumerate(work.places):
        if heads:
            before = [claim for claim in told if claim.start <= max(start, end)]
            day = before[-1].value if before else told[0].value
        else:
            after = [claim for claim in told if claim.start >= start]
            day = after[0].value if after else told[-1].value
        for at in range(first, bounds[n + 1]):
            work.sets[at] = replace(work.sets[at], on=day)
    if len({one.on for one in work.sets}) < 2:
        work.sets = [replace(one, on=None) for one in work.sets]


def finish(message: Message, claims: Sequence[Claim], work: Work, corrections: Sequence[Claim]) -> Reading:
    """One reading of it all."""
    pain: list[PainRead] = [c.value for c in claims if c.kind == "pain" and c.value is not None]
    flags = list(dict.fromkeys(c.value for c in claims if c.kind == "red_flag"))
    past = tuple(dict.fromkeys(c.value for c in claims if c.kind == "past_flag"))

    def one(kind: str) -> float | None:
        values = [c.value for c in claims if c.kind == kind and c.value is not None]
        return values[-1] if values else None

    bodyweight, sleep, duration = one("bodyweight"), one("sleep"), one("duration")
    session = one("session_rpe")
    session = session if session is not None else work.session_rpe
    spans: list[Span] = [c.value for c in claims if c.kind == "span" and c.value is not None]
    days: list[date] = [c.value for c in claims if c.kind == "day" and c.value is not None]
    asks = [*work.asks, *(c.ask for c in claims if c.ask is not None)]
    correction: Correction | None = next((c.value for c in corrections if c.value is not None), None)
    trained = bool(work.sets) or work.report
    wishes = find_wishes(message, claims)
    report = trained or duration is not None or session is not None
    report = report or any(c.kind in ("sleep", "duration", "session_rpe") and c.ask for c in claims)
    if sleep is not None and not wishes and not pain and bodyweight is None:
        report = True
    intents: list[str] = []
    if report and correction is None and "correction" not in wishes:
        intents.append("report")
    if pain or set(flags) - {"fever"} or any(c.kind == "pain" and c.ask for c in claims):
        intents.append("pain")
    if bodyweight is not None or any(c.kind == "bodyweight" and c.ask for c in claims):
        intents.append("bodyweight")
    if correction is not None and "correction" not in wishes:
        intents.append("correction")
    intents += [wish for wish in wishes if wish not in intents]
    if len(intents) > 1:
        intents = [i for i in intents if i not in ("smalltalk", "unknown")] or intents[:1]
    performed = None
    if "report" in intents or (correction is not None and (work.sets or days)):
        day_ask = any(a.about == "performed_on" for a in asks)
        performed = None if day_ask else max(days) if days else message.today
    if not intents:
        intents = ["unknown"]
    sets = work.sets
    return Reading(
        tuple(intents),
        performed,
        tuple(sets),
        tuple(pain),
        tuple(flags),
        bodyweight,
        session,
        duration,
        sleep,
        spans[-1] if spans else None,
        correction,
        tuple(dict.fromkeys(asks)),
        tuple(work.unread),
        message.language,
        past,
    )
