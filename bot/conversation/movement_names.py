"""The movement that someone names: as the reader understands it, a coach's own words included."""

from __future__ import annotations

from datetime import UTC, datetime
from zoneinfo import ZoneInfo

from bot.reading import read
from bot.reading.reading import Context
from bot.wording import Wording
from planner import movements

LEAST_STEM, MOST_OF_A_FAMILY = 5, 6
# The reader names movements of sets, so the name is given one; the day and zone are of no account.
_ANY_DAY = datetime(2027, 1, 4, 12, tzinfo=UTC)


def movement_called(name: str, language: str, nicknames: tuple[tuple[str, str], ...] = ()) -> str | None:
    """The movement id of `name` ("archers with low ring", "pull_up", a nickname); None where it is none or several."""
    folded = name.strip().casefold()
    plain = folded.replace(" ", "_").replace("-", "_")
    if not folded or movements.is_known(plain):
        return plain or None
    for phrase, movement in nicknames:
        if phrase == folded:
            return movement
    context = Context(sent_at=_ANY_DAY, timezone=ZoneInfo("UTC"), language=language, nicknames=nicknames)
    sets = read(f"{folded} 2x5", context).sets
    named = {one.movement for one in sets}
    # "Slow lowering one-arm pull-ups" are no one-arm pull-ups: what is said of the range or the way is not dropped.
    whole = all(not one.eccentric and not one.pauses and one.rom in (None, "full") for one in sets)
    found = named.pop() if len(named) == 1 and whole else None
    return found if found is not None and movements.is_known(found) else None


def family_called(name: str, say: Wording) -> list[str]:
    """The movements that a bare family name can mean: "archers", "front lever"; none where they are too many."""
    stem = _as_id(name.strip(" .,!?")).removesuffix("s")
    names = [(one, f"{one} {_as_id(say.movement(one))}") for one in movements.catalogue()]
    found = [one for one, called in names if len(stem) >= LEAST_STEM and stem in called]
    return found if len(found) <= MOST_OF_A_FAMILY else []


def _as_id(name: str) -> str:
    return name.casefold().replace(" ", "_").replace("-", "_")
