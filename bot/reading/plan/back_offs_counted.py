"""So many of the planned back-offs: "top triple done, only two back-off sets"."""

from __future__ import annotations

from bot.reading.plan.choosing import main_rows, pick
from bot.reading.plan.state import Said, Told


def back_offs_counted(told: Told, said: Said) -> bool:
    """Whether a clause tells how many back-offs were done, and no more; those are the first of the planned ones."""
    counted = next((fact for fact in said.values if fact.note.get("back_offs")), None)
    if counted is None:
        return False
    main = main_rows(told.rows)
    own = pick(told.rows, main, "back")
    sets = list(range(0, len(own), told.step(own[0]))) if own else []
    top_told = told.everything or any(told.keep.get(at) for at in pick(told.rows, main, "top"))
    if not own or counted.value > len(sets) or not top_told:
        told.ask("sets", said.clause)  # more than planned, or what of the top set?
        for at in main if not top_told else []:
            told.keep.setdefault(at, False)
        return True
    many = len(sets) - counted.value if "skipped" in said.names else counted.value
    done = own[: sets[many]] if many < len(sets) else own
    for at in own:
        told.keep[at] = at in done
    said.clause.facts.remove(counted)
    said.values.remove(counted)
    return not said.values
