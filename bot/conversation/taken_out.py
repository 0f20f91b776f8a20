"""A movement is taken out of what was told: "delete the push-ups", "didn't do the hollow hold"."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from bot.conversation.desk import Desk
from bot.conversation.placing import message_of
from bot.conversation.words import folded
from bot.reading.days import named_days
from bot.reading.movements import find_movements
from bot.wording.sets import done_in_words
from storage import facts

LATELY = timedelta(days=7)
MOST_CHARACTERS = 80


def carried_out(desk: Desk, text: str) -> str | None:
    """Take the movement out of the newest report that has it; None where the words say anything else."""
    if len(text) > MOST_CHARACTERS:
        return None
    message, known = message_of(desk, text), folded("take_out")
    words = set(" ".join(one.text for one in message.tokens).split())
    if not any(words.issuperset(one.split()) for one in (*known["verbs"], *known["not_done"])):
        return None
    named, days = find_movements(message), named_days(message).days
    spoken = [*[span for one in named for span in one.spans], *[(day.start, day.end) for day in days]]
    inside = {at for start, end in spoken for at in range(start, end)}
    left = [one.text for at, one in enumerate(message.tokens) if at not in inside and one.kind not in ("sym", "nl")]
    said = f" {' '.join(left)} "
    deleted = [one for one in known["verbs"] if f" {one} " in said]
    denied = [one for one in known["not_done"] if f" {one} " in said]
    for one in (*deleted, *denied):
        said = said.replace(f" {one} ", " ")
    if len({one.movement for one in named}) != 1 or not set(said.split()) <= set(known["small"]):
        return None
    if not (deleted or denied) or len(days) > 1:
        return None
    if days and days[0].back is None:
        return None
    # Who did not do it speaks of today, and what is to be deleted can be of any day.
    on = days[0].back[1] if days and days[0].back is not None else desk.said_on if denied else None
    return _take_out(desk, str(named[0].movement), on)


def _take_out(desk: Desk, movement: str, on: date | None) -> str | None:
    say = desk.say
    reports = [
        one
        for one in desk.record.sessions
        if not one.is_test
        and one.fact is not None
        and (one.on == on if on is not None else desk.said_on - one.on <= LATELY)
        and any(work.movement == movement for work in one.sets)
    ]
    if not reports:
        return None
    meant = max(reports, key=lambda one: one.fact or 0)
    gone = tuple(work for work in meant.sets if work.movement == movement)
    kept = tuple(work for work in meant.sets if work.movement != movement)
    assert meant.fact is not None
    facts.replace_session(desk.tx, meant.fact, replace(meant, sets=kept), desk.said_at, desk.cause)
    desk.forget()
    told = say.say("undo-done", what=done_in_words(gone, say))
    if not kept:
        return told
    return f"{told} {say.say('report-now-reads', day=say.day(meant.on), work=done_in_words(kept, say))}"
