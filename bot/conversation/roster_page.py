"""The coach's roster, a line each, and how long rungs take across it."""

from __future__ import annotations

from collections.abc import Sequence

from bot.conversation import plans
from bot.conversation.desk import Desk
from bot.conversation.reasons import rung_name
from bot.wording import Wording
from planner import ladders
from planner.stays import RungTimes, across
from planner.survival import weeks_until

MOST_RUNGS = 30


def roster(desks: Sequence[Desk], say: Wording) -> str:
    """Handle, rung, last and next session of each; who needs what stands in the summary."""
    lines = [say.say("roster-heading", count=len(desks))]
    for desk in desks:
        seen = desk.review
        done = [one.on for one in desk.record.sessions if one.sets and not one.is_test]
        rungs = say.listed([rung_name(one.rung, say) for one in seen.ladders])
        last = say.day(max(done)) if done else say.say("roster-none")
        coming = plans.next_work(desk)
        following = say.day(coming.on) if coming is not None else say.say("roster-none")
        lines.append(say.say("roster-line", handle=desk.athlete.handle, rungs=rungs, last=last, next=following))
        desk.leave()
    return "\n".join(lines)


def rungs(desks: Sequence[Desk], say: Wording) -> str:
    """Median and quartiles of the weeks on each rung, in the ladders' order."""
    found = across((desk.record, desk.today) for desk in desks)
    if not found:
        return say.say("rungs-none")
    known = ladders.known()
    ordered = sorted(found, key=lambda one: (one.ladder, known[one.ladder].order[one.rung]))
    return "\n".join([say.say("rungs-heading"), *(_line(one, say) for one in ordered[:MOST_RUNGS])])


def _line(times: RungTimes, say: Wording) -> str:
    left = sum(stay.left for stay in times.stays)
    values = {"rung": rung_name(times.rung, say), "left": left, "still": len(times.stays) - left}
    early, median, late = (weeks_until(times.steps, share) for share in (0.25, 0.5, 0.75))
    if median is None:
        longest = max(stay.weeks for stay in times.stays)
        return say.say("rungs-open", **values, weeks=say.number(longest, 0))
    shown = [say.say("rungs-unknown") if one is None else say.number(one, 0) for one in (early, late)]
    return say.say("rungs-line", **values, median=say.number(median, 0), early=shown[0], late=shown[1])
