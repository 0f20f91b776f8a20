"""All readers propose, the assembler resolves: claims, movements and sets to one reading. What conflicts is asked."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from bot.reading.assemble.beyond import ask_beyond
from bot.reading.assemble.conflicts import settle
from bot.reading.assemble.dated import dated
from bot.reading.assemble.joined import part_joined
from bot.reading.assemble.sets import read_sets
from bot.reading.blocks import drop_list_marks
from bot.reading.days.idle import trained_days
from bot.reading.everyday import everyday
from bot.reading.facts import Fact
from bot.reading.fold.sets import Work
from bot.reading.foretold import drop_foretold
from bot.reading.headings import heads_work
from bot.reading.intents import in_passing
from bot.reading.items import make_items
from bot.reading.lexicon import languages
from bot.reading.little import little
from bot.reading.message import Claim, Message, read_message
from bot.reading.movements import find_movements
from bot.reading.movements.mention import Mention
from bot.reading.pain.merging import merged
from bot.reading.plan.kinds import of_planned_kind
from bot.reading.prose import drop_prose
from bot.reading.readers import find_claims, find_wishes
from bot.reading.reading import Ask, Context, Correction, Reading, Span
from bot.reading.scan import Scanner, scan
from bot.reading.strangers import drop_practice, drop_strangers
from bot.reading.things import drop_things
from bot.reading.ties import tie
from bot.reading.unreal import drop_unreal, is_day

DISCOUNTED = 6  # so far behind a set stands that it does not count
LED = 5  # words of "did today's session" before its day
SPAN = 80  # characters of a message quoted where no words of it stand for the doubt


def read(text: str, context: Context) -> Reading:
    """What a message says. Any text at all is good; nothing is raised, nothing is changed."""
    message = read_message(text, context)
    reading = assemble(message, settle(message, find_claims(message)))
    message.notes.clear()  # they hold the message: so all of it is let go at once, without a search for such rings
    return reading


def assemble(message: Message, claims: Sequence[Claim]) -> Reading:
    """Resolve all claims, find movements and sets in what is left of the message."""
    taken = {at for claim in claims for at in range(claim.start, claim.end)}
    # "one day last week" is a day though nobody knows which; "one day" alone is a wish
    dated_tokens = {
        at
        for c in claims
        if c.kind == "day" and (c.value is not None or (c.start < c.end and message.tokens[c.start].value is not None))
        for at in range(c.start, c.end)
    }
    some_day = {at for c in claims if c.kind == "day" and c.ask is not None for at in range(c.start, c.end)}
    work = Work()
    blocking = [claim for claim in claims if claim.end > claim.start and claim.kind != "intent"]
    blocking = [claim for claim in blocking if claim.kind not in ("day", "noise") or not _of_done(message, claim)]
    corrections = [claim for claim in claims if claim.kind == "correction"]
    mentions = find_movements(message, taken)
    if not mentions and any(token.value is not None for token in message.tokens):
        # a word of another language's trade in an otherwise English (German …) message
        for language in languages():
            if language == message.language:
                continue
            found = find_movements(replace(message, language=language), taken)
            mentions = mentions or [one for one in found if one.movement != "!" or not _everyday(message, one)]
    of_planned_kind(message, mentions)
    for mention in mentions:
        if mention.doubt is not None:
            work.asks.append(Ask("movement", message.span(*mention.doubt)))
        if mention.spans[0][0] - 1 in message.doubts:
            # a typing error of several words right before it: "xrcher pull-ups"
            work.asks.append(Ask("movement", message.span(mention.spans[0][0] - 1, mention.spans[0][1])))
    items = make_items(message, mentions, blocking)
    context = message.context
    scanner = Scanner(items, context.unit, context.bodyweight_kg, planned=bool(context.today))
    facts = drop_list_marks(message, tie(message, scan(scanner)))
    real = drop_unreal(message, facts, dated_tokens, some_day)
    if any(claim.kind == "day" for claim in claims):
        gone = {id(fact.value) for fact in facts if is_day(fact)} - {id(fact.value) for fact in real if is_day(fact)}
        claims = [claim for claim in claims if id(claim) not in gone]
    facts = drop_foretold(message, drop_prose(message, drop_things(message, real)))
    if corrections:
        facts = corrected(facts, corrections[0].value)
    for drop in (drop_strangers, drop_practice):
        facts, strange = drop(message, facts)
        work.unread.extend(strange)
        work.report = work.report or bool(strange)
    facts, unclear = part_joined(message, facts)
    if unclear:
        work.asks.extend(unclear)
        work.report = True
    read_sets(message, facts, work)
    ask_beyond(message, work)
    if corrections and not restated(facts):
        work = Work()  # only the values that were wrong were told
    if work.sets:
        days = [claim for claim in claims if claim.kind == "day"]
        pains = [claim for claim in claims if claim.kind == "pain"]
        idle = {id(day) for day in days} - {id(day) for day in trained_days(message, days, pains)}
        claims = [claim for claim in claims if id(claim) not in idle]
    dated(message, work, [claim for claim in claims if claim.kind == "day"])
    return finish(message, claims, work, corrections)


def _of_done(message: Message, day: Claim) -> bool:
    """Whether a day is part of words for the whole plan: "did today's session"."""
    grammar = message.beginning("grammar")
    return any(
        hit.table == "plan" and hit.name == "done" and hit.end >= day.end
        for at in range(max(0, day.start - LED), day.start)
        for hit in grammar[at]
    )


def _everyday(message: Message, mention: Mention) -> bool:
    """Whether another language's exercise is a common word of this one: "all clean"."""
    words, common = message.tokens, everyday(message.language)
    return all(words[at].word in common for start, end in mention.spans for at in range(start, end))


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


def _discounted(message: Message) -> str | None:
    """The words that take one set back, "the last one with a swing, doesn't count"; None where there are none."""
    tokens = message.tokens
    scopes = [
        hit for found in message.beginning("grammar") for hit in found if hit.table == "scope" and hit.name != "all"
    ]
    for hit in message.hits("intents"):
        if hit.name != "undo" or not little("counts").intersection(token.text for token in tokens[hit.start : hit.end]):
            continue
        near = [one for one in scopes if 0 <= hit.start - one.end <= DISCOUNTED]
        if near:
            return message.span(near[0].start, hit.end)
    return None


def _only_heads(message: Message, wish: str) -> bool:
    """Whether words for a plan are the heading of what was done: "Today's training: pull-ups 5x4"."""
    tokens = message.tokens
    if wish not in ("plan_today", "plan_week") or any(token.text == "?" for token in tokens):
        return False
    ends = [hit.end for hit in message.hits("intents", "want") if hit.name == wish]
    return bool(ends) and all(heads_work(message, end) for end in ends)


def finish(message: Message, claims: Sequence[Claim], work: Work, corrections: Sequence[Claim]) -> Reading:
    """One reading of it all."""
    pain = merged([c.value for c in claims if c.kind == "pain" and c.value is not None])
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
    wishes = find_wishes(message, claims)
    if work.sets:
        wishes = [wish for wish in wishes if not _only_heads(message, wish)]
    discounted = _discounted(message) if work.sets and "undo" in wishes else None
    if discounted is not None:
        wishes = [wish for wish in wishes if wish != "undo"]  # "the last one doesn't count": one set, not the report
        asks.append(Ask("sets", discounted))
    ran = "missed" in wishes and bool(work.unread) and not work.asks  # "a run yesterday, not training today"
    trained = bool(work.sets) or (work.report and not ran)
    if work.sets and "missed" in wishes and spans == [Span(message.today, message.today)]:
        # "left the dips out today": what was trained was not missed
        wishes, spans = [wish for wish in wishes if wish != "missed"], []
    if work.sets and spans in ([], [Span(message.today, None)]):
        # "hotel gym, pull-ups 5x3": where one trained, no absence and no plan for the days to come
        here = [wish for wish in wishes if wish in ("away", "equipment") and in_passing(message, wish)]
        wishes = [wish for wish in wishes if wish not in here]
        spans = [] if "away" in here else spans
    report = trained or duration is not None or session is not None
    report = report or any(c.kind in ("sleep", "duration", "session_rpe") and c.ask for c in claims)
    if sleep is not None and not wishes and not pain and bodyweight is None:
        report = True
    intents: list[str] = []
    # "the dips were with 15, not 25. Today pull-ups 4x4"
    apart = correction is not None and correction.movement not in (None, *(one.movement for one in work.sets))
    if report and (correction is None or (apart and work.sets)) and "correction" not in wishes:
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
        told = [one.on for one in work.sets if one.on is not None]
        performed = None if day_ask else max(told or days) if days else message.today
    if not intents:
        intents = ["unknown"]
    sets = work.sets
    if not asks and any(one.load_kg is None or one.assist_kg is None for one in sets):
        sets = [replace(one, load_kg=one.load_kg or 0.0, assist_kg=one.assist_kg or 0.0) for one in sets]
    if any(one.movement is None for one in sets) and not any(a.about in ("movement", "sets") for a in asks):
        asks.append(Ask("movement", message.text.strip()[:SPAN]))  # never a set of nothing, unasked
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
