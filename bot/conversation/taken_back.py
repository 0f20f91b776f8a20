"""What a message had brought is taken back, and what it had put aside stands again; both in words."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Any

from bot.conversation import absences, moments, reports
from bot.conversation.desk import Desk
from bot.conversation.reasons import order_in_words, place, until_in_words
from bot.wording import Wording
from bot.wording.sets import done_in_words
from planner import facts as f
from planner.facts import Record
from storage import facts
from storage.own_settings import last_cause_of_own, take_back_own

DAYS = frozenset({"absence", "move", "resume", "equipment"})  # kinds that change when there is training, or with what
Key = tuple[str, int]


def newest_cause(desk: Desk) -> int | None:
    """The message of the athlete that is undone next: the newest of which something stands."""
    causes = [facts.last_cause(desk.tx, desk.id), last_cause_of_own(desk.athlete)]
    return max((cause for cause in causes if cause is not None), default=None)


def take_back(desk: Desk, cause: int) -> str:
    """Undo a message, and say what is gone, what stands again, and when training is where that is another day."""
    say, before = desk.say, desk.record
    gone = facts.withdraw_caused_by(desk.tx, desk.id, cause, desk.now)
    again = facts.restore(desk.tx, desk.id, cause)
    settings = _settings_again(desk, cause)
    desk.forget()
    known = {session.fact for session in before.sessions}
    restored = [one for one in desk.record.sessions if one.fact not in known and one.sets]
    replaced = {one.on for one in restored}
    told = [
        words
        for kind, one in _found(before, gone)
        if getattr(one, "on", None) not in replaced or kind != "session"
        for words in _in_words(one, say)
    ]
    stands = [words for _, one in _found(desk.record, again) for words in _in_words(one, say)]
    lines = [say.say("undo-restored", day=say.day(one.on), work=done_in_words(one.sets, say)) for one in restored]
    if told:
        lines.append(say.say("undo-done", what="; ".join(told)))
    if stands or settings:
        lines.append(say.say("undo-again", what="; ".join([*stands, *settings])))
    lines = lines or [say.say("undo-done-other")]
    if DAYS & {kind for kind, _ in (*gone, *again)} and desk.review.next_training_on is not None:
        lines.append(say.say("next-training", day=say.long_day(desk.review.next_training_on)))
    return "\n".join(lines)


def _settings_again(desk: Desk, cause: int) -> list[str]:
    back = take_back_own(desk.tx, desk.athlete, cause) if last_cause_of_own(desk.athlete) is not None else {}
    desk.forget()
    if "plan_at" in back:
        moments.at_new_hours(desk.tx, [desk.id], desk.now)
    if back.get("silenced") is False:
        absences.plant_next_plan(desk)
        desk.tell_coach(desk.say_coach.say("stopped-no-more-for-coach", name=desk.person.name))
    elif "silenced" in back:
        absences.cancel_training(desk)
    say = desk.say
    return [
        say.say("undone-plan_at", at=f"{value:%H:%M}")
        if name == "plan_at"
        else say.say(f"undone-{name}-{str(value).casefold()}")
        for name, value in back.items()
    ]


def _found(record: Record, keys: Iterable[Key]) -> Iterator[tuple[str, Any]]:
    """The facts of a record by kind and id, in their order."""
    kinds: dict[str, Sequence[Any]] = {
        "session": record.sessions,
        "pain": record.pain,
        "sign": record.signs,
        "bodyweight": record.bodyweights,
        "absence": record.absences,
        "resume": record.resumes,
        "move": record.moves,
        "equipment": record.equipment,
        "clip": record.clips,
        "order": record.orders,
    }
    by_key = {(kind, one.fact): one for kind, told in kinds.items() for one in told}
    return ((key[0], by_key[key]) for key in keys if key in by_key)


def _in_words(one: Any, say: Wording) -> Iterator[str]:
    """A fact in a few words."""
    match one:
        case f.Session():
            if one.sets:
                yield done_in_words(one.sets, say)
            yield from reports.extras_of(one, say)
        case f.PainAnswer():
            where = place(one.site, one.side, say) if one.site else say.say("pain-somewhere")
            yield where if one.score is None else f"{where} {say.number(one.score)}/10"
        case f.WarningSign():
            yield say.say(f"sign-{one.sign}")
        case f.Bodyweight():
            yield say.load(one.kg)
        case f.Absence():
            until = say.say("absence-until", day=say.day(one.until)) if one.until else say.say("absence-open")
            yield say.say(f"undone-{one.kind}", since=say.day(one.since), until=until)
        case f.Move():
            yield say.say("undone-move", since=say.day(one.moved_from), until=say.day(one.moved_to))
        case f.Equipment():
            has = say.listed([say.say(f"equipment-{kind}") for kind in sorted(one.has)])
            until = until_in_words(one.until, say)
            equipment = has or say.say("equipment-nothing")
            yield say.say("undone-equipment", equipment=equipment, since=say.day(one.since), until=until)
        case f.Resume():
            yield say.say("undone-resume")
        case f.Clip():
            yield say.say("undone-clip", day=say.day(one.on))
        case f.Order():
            yield order_in_words(one, say)
