"""A roster goes in: everyone on it begins, and the coach gets the code that claims the bot."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from datetime import datetime
from typing import Any

from sqlmodel import Session

from bot import conversation
from bot.wording import Wording, wording_for
from storage import chats, invites, loading
from storage.persons import Who
from storage.roster import Roster


def load(tx: Session, roster: Roster, now: datetime, again: Collection[str] = ()) -> str:
    """Put a checked roster in; what to tell the operator comes back, with the coach's one-time code.

    `again`: handles to take up although their athlete once had everything erased.
    """
    loaded = loading.load_roster(tx, roster, now, again)
    who = Who("coach", loaded.coach_id)
    conversation.begin_coach(tx, loaded.coach_id, now)
    conversation.at_new_hours(tx, loaded.moved, now)
    say = wording_for(roster.coach.language)
    lines = [say.say("roster-loaded", count=len(loaded.athlete_ids), added=len(loaded.added))]
    if loaded.erased:
        again_how = " ".join(f"--again {handle}" for handle in loaded.erased)
        lines.append(say.say("roster-erased", names=", ".join(loaded.erased), how=again_how))
    if loaded.absent:
        lines.append(say.say("roster-absent", names=", ".join(loaded.absent)))
    if loaded.own:
        lines.append(say.say("roster-own", settings=", ".join(_own_in_words(say, loaded.own))))
    if not chats.addresses_of(tx, who, blocked=True):
        lines.append(say.say("roster-code", name=roster.coach.name, code=invites.new_invite(tx, who, now)))
    return "\n".join(lines)


def _own_in_words(say: Wording, own: Mapping[str, Mapping[str, Any]]) -> Iterator[str]:
    for handle, kept in own.items():
        if "plan_at" in kept:
            yield say.say("roster-own-plan-at", handle=handle, at=f"{kept['plan_at']:%H:%M}")
        if "unit" in kept:
            yield say.say("roster-own-unit", handle=handle, unit=kept["unit"])
