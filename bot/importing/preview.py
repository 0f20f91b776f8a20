"""What an import would write down, to be checked by a person: day by day, and what is left out by its lines."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from bot.conversation import asking
from bot.conversation.reasons import place
from bot.importing.entries import DateOrder, Entry, Stray
from bot.importing.load import Outcome, Understood
from bot.wording import Wording
from bot.wording.sets import done_in_words
from planner.facts import Session

MOST_DAYS, MOST_OF_A_DAY, MOST_LEFT_OUT, LONGEST = 20, 4, 30, 160


def told(outcome: Outcome, entries: Sequence[Entry | Stray], order: DateOrder, say: Wording) -> list[str]:
    """The count, the first days with what was understood of each, what is left out and why."""
    days = outcome.understood
    counts = {"days": len(days), "sets": outcome.sets, "silent": len(outcome.silent), "left": len(outcome.left_out)}
    lines = [say.say("import-counts", **counts)]
    for one in days[:MOST_DAYS]:
        lines += _of_day(one, say)
    if days[MOST_DAYS:]:
        sets = sum(len(session.sets) for one in days[MOST_DAYS:] for session in one.sessions)
        lines.append(say.say("import-more-days", count=len(days) - MOST_DAYS, sets=sets))
    either = next((one for one in entries if isinstance(one, Entry) and one.other is not None), None)
    if either is not None:
        day, other = (f"{say.day(one)} {one.year}" for one in (either.on, either.other or either.on))
        lines.append(say.say(f"import-order-{order}", line=either.line, day=day, other=other))
    left = outcome.left_out
    lines += [_left_out(one, say) for one in left[:MOST_LEFT_OUT]]
    if left[MOST_LEFT_OUT:]:
        lines.append(say.say("import-more", count=len(left) - MOST_LEFT_OUT))
    return lines


def _of_day(one: Understood, say: Wording) -> Iterator[str]:
    on, entry = one.entry.on, one.entry
    yield say.say("import-day", day=f"{say.long_day(on)} {on.year}", line=entry.line)
    parts = [part for session in one.sessions for part in _of_session(session, entry, say)]
    for pain in one.reading.pain:
        score = "–" if pain.score is None else say.number(pain.score)
        where = place(pain.site, pain.side, say) if pain.site else ""
        parts.append(say.say("data-pain", place=where, score=score))
    if one.reading.bodyweight_kg is not None:
        parts.append(say.say("card-bodyweight", weight=say.load(one.reading.bodyweight_kg)))
    shown = parts if len(parts) <= MOST_OF_A_DAY else parts[: MOST_OF_A_DAY - 1]
    yield from (f"  {part}" for part in shown)
    if shown != parts:
        yield f"  {say.say('import-more', count=len(parts) - len(shown))}"


def _of_session(session: Session, entry: Entry, say: Wording) -> Iterator[str]:
    day = "" if session.on == entry.on else f"{say.day(session.on)}: "
    if session.sets:
        yield day + done_in_words(session.sets, say)
    if session.session_rpe is not None:
        yield day + say.say("extra-session-rpe", rpe=say.number(session.session_rpe))
    if session.duration_min is not None:
        yield day + say.say("extra-duration", minutes=say.number(session.duration_min))
    if session.sleep_h is not None:
        yield day + say.say("extra-sleep", hours=say.number(session.sleep_h))


def _left_out(one: Stray, say: Wording) -> str:
    if one.why == "doubt":
        why = asking.in_words(one.values["doubt"], one.values["reading"], say)
        return say.say("import-left-doubt", line=one.line, question=why)
    values = {
        name: f"{say.day(value)} {value.year}" if name != "column" else value for name, value in one.values.items()
    }
    return say.say(f"import-left-{one.why}", line=one.line, text=_short(one.text), **values)


def _short(text: str) -> str:
    plain = " ".join(text.split())
    return plain if len(plain) <= LONGEST else f"{plain[:LONGEST]}…"
