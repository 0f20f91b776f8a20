"""A report in several messages: "pull-ups 4x4 +20", then "last one @8", then "rest as planned". None counts twice."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, fields, replace
from datetime import date

from bot.conversation.desk import Desk
from bot.conversation.words import phrases
from bot.reading.days import named_days
from bot.reading.little import little
from bot.reading.mending.fields import NEAR_BODY
from bot.reading.mending.value_alone import value_alone
from bot.reading.message import Message, read_message
from bot.reading.movements import find_movements
from bot.reading.reading import Context, Reading, SetRead
from planner.facts import Part, PlannedSet, Session, WorkSet
from storage import facts

MENDS = {"correction", "undo"}
LEAST_EFFORT, MOST_EFFORT = 6, 10  # what "@" without a unit can be, as in the contract of reading
MOST_WORDS = 6  # of a load told alone
WORD = re.compile(r"[^\W\d_]+(?:'[^\W\d_]+)?")


@dataclass(frozen=True)
class Placed:
    """A message read beside what it speaks of: a plan, nothing, or the report that it puts right (`mends`)."""

    reading: Reading
    context: Context
    mends: bool = False

    def again(self, reading: Reading) -> Placed:
        """The same words with more known of them."""
        if not self.mends:
            return replace(self, reading=reading)
        others = tuple(one for one in reading.intents if one not in ("report", "correction"))
        return replace(self, reading=replace(reading, intents=("correction", *others)))


def told_on(desk: Desk, day: date, but_by: int | None = None) -> list[Session]:
    """The reports of a day with sets in them, in order of arrival; without those that came with message `but_by`."""
    own = (
        set()
        if but_by is None
        else {key for kind, key in facts.caused_by(desk.tx, desk.id, but_by) if kind == "session"}
    )
    told = [one for one in desk.record.sessions if one.on == day and one.sets and not one.is_test]
    return sorted((one for one in told if one.fact not in own), key=lambda one: one.fact or 0)


def beside(desk: Desk, told: list[Session], text: str, context: Context) -> Placed:
    """A message on a day that was told of: its plan is answered, and must not be answered twice.

    Args:
        told: The day's reports, not empty.
        context: With the day's plan.
    """
    alone = desk.read(text, replace(context, today=None))
    if MENDS & set(alone.intents):
        return Placed(alone, replace(context, today=None))
    more = _one_more_set(desk, told, alone, text, context)
    if more is not None:
        return more
    if (alone.sets or alone.session_rpe is not None) and not alone.ask:
        one = _of_one_movement(desk, told, alone, text, context) if len(alone.sets) < 2 else None
        whole = _with_its_load(desk, alone, told, text, context)
        return one or told_otherwise(told, whole.reading, text, context) or whole
    mended = (
        _of_one_movement(desk, told, alone, text, context)
        or _load_alone(desk, told, alone, text, context)
        or _more_of_the_last(desk, told, alone, text, context)
    )
    if mended is not None:
        return mended
    by_plan = desk.read(text, context)
    if not by_plan.sets:
        return Placed(by_plan, context)
    done = {work.movement for session in told for work in session.sets}
    fresh = tuple(one for one in by_plan.sets if one.movement not in done)
    speaks_of_done = not fresh and all(one.movement is None for one in alone.sets)
    if speaks_of_done or _differs(by_plan, done, context.today or ()):
        # "Last one @8", "one more at +20": of the report before.
        parts = _parts(context.today or ())
        last = replace(
            context, today=tuple(_as_asked(work, parts.get(work.movement, "main")) for work in told[-1].sets)
        )
        again = desk.read(text, last)
        if again.sets and (alone.sets or _is_change_of(told[-1].sets, again)):
            return Placed(again, last, mends=True).again(again)
        if again.sets:
            return Placed(alone, replace(context, today=None))  # "one more, 3 reps": too little to go by
    if fresh or by_plan.ask:
        by_plan = replace(by_plan, sets=fresh)  # "rest as planned": the rest is what was not told of
    return Placed(by_plan, context)


def _one_more_set(desk: Desk, told: Sequence[Session], alone: Reading, text: str, context: Context) -> Placed | None:
    """ "Archers 2 a side", after such a set was told: the plan says which archers, and it is another set, told as it
    was done. What puts right or takes back says so."""
    if any(one.movement is not None for one in alone.sets) or alone.session_rpe is not None or alone.pain:
        return None
    if not find_movements(read_message(text, context)):
        return None
    if puts_right(text) or _says(text, "only") or _was(text, context):
        return None
    by_plan = desk.read(text, context)
    names, sides = {one.movement for one in by_plan.sets}, [one.side for one in by_plan.sets]
    last = _last_of(list(told), str(next(iter(names), "")))
    alike = len(names) == 1 and len(set(sides)) == len(sides) and len({work.side for work in last}) == len(last)
    return Placed(by_plan, context) if alike and last and not by_plan.ask else None


def _is_change_of(told: Sequence[WorkSet], again: Reading) -> bool:
    """Whether each movement keeps its sets, and none of them changed both in work and in load."""
    for name in {one.movement for one in again.sets}:
        was = [work for work in told if work.movement == name]
        now = [one for one in again.sets if one.movement == name]
        if len(was) != len(now):
            return False
        pairs = zip(was, now, strict=True)
        if not again.ask and any(a.reps != b.reps and a.load_kg != b.load_kg for a, b in pairs):
            return False
    return bool(again.sets)


def _is_more_of(told: Sequence[WorkSet], again: Reading) -> bool:
    """Whether all told sets stand as they were, and further ones of the movement follow."""
    was, now = [_amount(work) for work in told], [_amount(one) for one in again.sets]
    same = {one.movement for one in again.sets} == {work.movement for work in told}
    return same and len(now) > len(was) and now[: len(was)] == was


def _is_fewer_of(told: Sequence[WorkSet], again: Reading) -> bool:
    """Whether the first of the told sets stand as they were, and the others are gone: "only 3 sets of pull-ups"."""
    was, now = [_amount(work) for work in told], [_amount(one) for one in again.sets]
    same = {one.movement for one in again.sets} == {work.movement for work in told}
    return same and 0 < len(now) < len(was) and now == was[: len(now)]


def _differs(by_plan: Reading, done: set[str], plan: tuple[PlannedSet, ...]) -> bool:
    """Whether the words change sets that were told of already, and leave the others as they were planned."""
    told = [_amount(one) for one in by_plan.sets if one.movement in done]
    rest = [(one.movement, _amount(one)) for one in by_plan.sets if one.movement not in done]
    planned = [(one.movement, _amount(one)) for one in plan if one.movement not in done]
    return told != [_amount(one) for one in plan if one.movement in done] and bool(told) and rest == planned


def _with_its_load(desk: Desk, alone: Reading, told: list[Session], text: str, context: Context) -> Placed:
    """A report that is whole by itself; a load that it leaves out is the plan's, or that of the same work before."""
    names = {one.movement for one in alone.sets}
    known = {work.movement for session in told for work in session.sets}
    bare = Placed(alone, replace(context, today=None))
    if not names & known:
        by_plan = desk.read(text, context)
        return Placed(by_plan, context) if names and _same_work(by_plan, alone) else bare
    if len(names) > 1 or all(one.load_kg for one in alone.sets):
        return bare
    last = _last_of(told, str(next(iter(names))))
    top = max(work.load_kg for work in last)
    beside = replace(context, today=tuple(_as_asked(work, "main") for work in last if work.load_kg == top))
    again = desk.read(text, beside)
    return Placed(again, beside) if _same_work(again, alone) else bare


def _same_work(one: Reading, other: Reading) -> bool:
    """Whether two readings differ in nothing but loads."""
    return not one.ask and [(a.movement, a.side, a.reps, a.hold_s, a.rpe) for a in one.sets] == [
        (b.movement, b.side, b.reps, b.hold_s, b.rpe) for b in other.sets
    ]


def _of_one_movement(desk: Desk, told: list[Session], alone: Reading, text: str, context: Context) -> Placed | None:
    """ "First set of dips was 6", "dips were at +10", after dips were told of: those are meant, and no more of them."""
    message = read_message(text, replace(context, language=alone.language))
    named = find_movements(message)
    if len(named) != 1 or alone.pain:
        return None
    start, end = named[0].spans[0]
    while start > 0 and message.tokens[start - 1].text in little("before_site"):
        start -= 1
    words = _without_days(message, text.replace(message.span(start, end), "", 1))
    every = phrases("every_set")[alone.language][0]
    last = _last_of(told, named[0].movement)
    if last and not alone.sets and alone.session_rpe is not None:
        return _with_effort(last, alone, context)
    effort = _at_effort(alone)
    if last and effort is not None:
        return _with_effort(last, replace(alone, session_rpe=effort, ask=()), context)
    changed = _against(desk, last, words, context) or _against(desk, last, f"{every} {words}", context, same_reps=True)
    if changed is None or not _has_reps_of(alone, changed.reading):
        changed = _each_so(last, alone, text, context)
    on = alone.performed_on
    return changed.again(replace(changed.reading, performed_on=on)) if changed is not None else None


def _without_days(message: Message, words: str) -> str:
    """The words without the days in them, which are known already: "dips on monday were 12"."""
    for day in named_days(message).days:
        start = day.start - (day.start > 0 and message.tokens[day.start - 1].text in little("before_weekday"))
        words = words.replace(message.span(start, day.end), "", 1)
    return words


def _has_reps_of(alone: Reading, changed: Reading) -> bool:
    """Whether what is told as reps, read alone, is told as reps still: "it was 12 pull-ups" is no load."""
    told = {one.reps for one in alone.sets if one.reps is not None and not (one.load_kg or one.failed)}
    return not told or bool(told & {one.reps for one in changed.sets})


def puts_right(text: str) -> bool:
    """Whether words say that something was told wrong: "sorry", "it was"."""
    return _says(text, "sure")


def told_otherwise(told: list[Session], whole: Reading, text: str, context: Context) -> Placed | None:
    """ "Sorry, pull-ups were 4x5", of sets that were told before: in their place; None where it is more of them."""
    names = {one.movement for one in whole.sets}
    known = {work.movement for session in told for work in session.sets}
    if not names or whole.ask or not names <= known or not (puts_right(text) or _was(text, context)):
        return None
    if len(whole.sets) == 1:
        return _each_so(_last_of(told, str(*names)), whole, text, context)
    lighter = []
    for name in names:
        last = _last_of(told, str(name))
        top, now = max(work.load_kg for work in last), [one.load_kg for one in whole.sets if one.movement == name]
        lighter += [_as_said(work) for work in last if work.load_kg != top and set(now) == {top}]
    anew = replace(whole, sets=(*lighter, *whole.sets))
    return Placed(anew, replace(context, today=None), mends=True).again(anew)


def _says(text: str, name: str) -> bool:
    said = f" {' '.join(WORD.findall(text.casefold()))} "
    return any(f" {one} " in said for one in phrases("puts_right")[name])


def _was(text: str, context: Context) -> bool:
    """Whether "was" stands right behind the movement, "dips were 12": said of what was told."""
    message = read_message(text, context)
    ends = {named.spans[-1][1] for named in find_movements(message)}
    days = {day.end: day.start for day in named_days(message).days}
    behind = {at for at in ends if at < len(message.tokens) and message.tokens[at].text in phrases("puts_right")["was"]}
    return bool(behind) or any(
        end < len(message.tokens) and message.tokens[end].text in phrases("puts_right")["was"] and start - 1 in ends
        for end, start in days.items()
    )


def _each_so(last: Sequence[WorkSet], alone: Reading, text: str, context: Context) -> Placed | None:
    """ "Only 20 s hollow hold", "sorry it was 12 dips", after several sets: each of them was so."""
    if len(alone.sets) != 1 or alone.ask or not last:
        return None
    one, top = alone.sets[0], max(work.load_kg for work in last)
    meant = [work for work in last if work.load_kg == top and one.side in (None, work.side)]
    size = [work.hold_s if one.hold_s is not None else work.reps for work in meant]
    now = one.hold_s if one.hold_s is not None else one.reps
    less = now is not None and all(was is not None and now <= was for was in size)
    if not size or now is None or None in size or one.load_kg not in (0.0, top):
        return None
    if not (puts_right(text) or _was(text, context) or (less and _says(text, "only"))):
        return None
    sets = tuple(
        replace(_as_said(work), reps=one.reps, hold_s=one.hold_s, rpe=one.rpe or work.rpe)
        if any(work is same for same in meant)
        else _as_said(work)
        for work in last
    )
    whole = replace(alone, sets=sets)
    return Placed(whole, replace(context, today=None), mends=True).again(whole)


def _more_of_the_last(desk: Desk, told: list[Session], alone: Reading, text: str, context: Context) -> Placed | None:
    """ "2 more sets", of no movement: of the one told last, not of all that is planned."""
    if alone.pain or any(one.reps is not None or one.movement is not None for one in alone.sets):
        return None
    if [one.about for one in alone.ask] != ["movement"] or len(text.split()) > MOST_WORDS:
        return None
    last = _last_of(told, told[-1].sets[-1].movement)
    again = _against(desk, last, text, context)
    return again if again is not None and len(again.reading.sets) > len(last) else None


def _at_effort(alone: Reading) -> float | None:
    """The 9 of "dips were @9": with the load told before, an "@" is effort."""
    doubt = alone.ask[0] if len(alone.ask) == 1 else None
    if doubt is None or doubt.about != "load_kg" or not doubt.span.startswith("@") or alone.session_rpe is not None:
        return None
    value = doubt.span[1:].strip().replace(",", ".")
    plain = value.replace(".", "", 1).isdecimal()
    return float(value) if plain and LEAST_EFFORT <= float(value) <= MOST_EFFORT else None


def _with_effort(last: tuple[WorkSet, ...], alone: Reading, context: Context) -> Placed:
    """ "RPE 8 on dips", told after them: the effort is their last set's."""
    done = [_as_said(work) for work in last]
    whole = replace(alone, session_rpe=None, sets=(*done[:-1], replace(done[-1], rpe=alone.session_rpe)))
    beside = replace(context, today=tuple(_as_asked(work, "main") for work in last))
    return Placed(whole, beside, mends=True).again(whole)


def filled(reading: Reading, answer: str) -> Reading | None:
    """The told sets with the reps of the one that lacks them; None where the answer is no number or more are open."""
    open_sets = [one for one in reading.sets if one.reps is None and one.hold_s is None]
    if len(open_sets) != 1 or not answer.strip().isdecimal():
        return None
    sets = tuple(replace(one, reps=int(answer)) if one is open_sets[0] else one for one in reading.sets)
    return replace(reading, sets=sets, ask=())


def _load_alone(desk: Desk, told: list[Session], alone: Reading, text: str, context: Context) -> Placed | None:
    """ "With 20 kg", of the report before: the load of its main work."""
    if alone.sets or alone.pain or len(text.split()) > MOST_WORDS or not _is_load(text, context):
        return None
    parts = _parts(context.today or ())
    main = [work.movement for work in told[-1].sets if parts.get(work.movement, "main") == "main"]
    every = phrases("every_set")[alone.language][0]
    return _against(desk, _last_of(told, main[-1]), f"{every} {text}", context, same_reps=True) if main else None


def _last_of(told: list[Session], movement: str) -> tuple[WorkSet, ...]:
    """The sets of a movement in the last report that has it."""
    sets = next((one.sets for one in reversed(told) if any(work.movement == movement for work in one.sets)), ())
    return tuple(work for work in sets if work.movement == movement)


def _is_load(text: str, context: Context) -> bool:
    """Whether a message is a load and small words: "see you at 18" is none, nor is what somebody weighs."""
    said, body = value_alone(text, context), context.bodyweight_kg
    of_body = said is not None and body is not None and abs(said.kg - body) <= NEAR_BODY * body
    return said is not None and "load_kg" in said.fields and not of_body


def _against(
    desk: Desk, last: tuple[WorkSet, ...], words: str, context: Context, *, same_reps: bool = False
) -> Placed | None:
    """The words as a change of told sets, those of the most load; None where they change nothing for sure."""
    top = max((work.load_kg for work in last), default=0.0)
    meant = [work for work in last if work.load_kg == top]
    if not meant:
        return None
    beside = replace(context, today=tuple(_as_asked(work, "main") for work in meant))
    again = desk.read(words, beside)
    missed = [one.about for one in again.ask] == ["reps"] and any(one.failed for one in again.sets)
    if missed and not same_reps and _is_change_of(meant, again):
        return Placed(again, beside, mends=True).again(again)  # "last one failed": with how many reps is asked
    fewer = _is_fewer_of(meant, again) and _says(words, "only")
    if again.ask or again.pain or not (fewer or _is_change_of(meant, again) or _is_more_of(meant, again)):
        return None
    if same_reps and [one.reps for one in again.sets] != [work.reps for work in meant]:
        return None
    told_effort = not same_reps and any(one.rpe is not None for one in again.sets)
    if not told_effort and [_amount(one) for one in again.sets] == [_amount(work) for work in meant]:
        return None
    lighter = tuple(_as_said(work) for work in last if work.load_kg != top)
    whole = replace(again, sets=lighter + again.sets)
    return Placed(whole, beside, mends=True).again(whole)


def _amount(one: SetRead | WorkSet | PlannedSet) -> tuple[float | None, ...]:
    return one.reps, one.hold_s, one.load_kg, one.assist_kg


def _as_said(work: WorkSet) -> SetRead:
    known = {one.name: getattr(work, one.name) for one in fields(SetRead) if hasattr(work, one.name)}
    return SetRead(**known)


def _parts(plan: tuple[PlannedSet, ...]) -> dict[str, Part]:
    """What each movement is to the day; the work where it is its own warm-up too."""
    warm = {one.movement: one.part for one in plan if one.part == "warm_up"}
    return warm | {one.movement: one.part for one in plan if one.part != "warm_up"}


def _as_asked(work: WorkSet, part: Part) -> PlannedSet:
    return PlannedSet(
        movement=work.movement,
        part=part,
        reps=work.reps,
        side=work.side,
        hold_s=work.hold_s,
        load_kg=work.load_kg,
        assist_kg=work.assist_kg,
        rom=work.rom,
        eccentric=work.eccentric,
        pauses=work.pauses,
    )
