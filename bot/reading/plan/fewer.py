"""Fewer sets of several movements at once: "everything else only 2 sets", "accessories one set each"."""

from __future__ import annotations

from bot.reading.plan.state import Said, Told


def so_many_each(told: Told, said: Said) -> bool:
    """So many sets of each movement that the clause means, the first of those planned; whether that is what is said."""
    counts = [fact for fact in said.values if fact.kind == "count" and not fact.note.get("of_plan")]
    if len(counts) != 1 or len(said.values) != 1 or said.names & {"less", "more", "skipped", "except"}:
        return False
    if told.pointed is not None or any(fact.value not in ("all", "rest") for fact in said.scoped):
        return False
    own = _meant(told, said)
    if not own or (len(own) < 2 and "rest" not in said.names):
        return False
    for targets in own:
        many = counts[0].value * told.step(targets[0])
        if many > len(targets):
            told.ask("sets", said.clause)
            return True
        for place, at in enumerate(targets):
            told.keep[at] = place < many
    return True


def _meant(told: Told, said: Said) -> list[list[int]]:
    """The rows of each movement that the clause names, or that nothing has told of before."""
    rows = told.rows
    work = [at for at, row in enumerate(rows) if row.part != "warm_up"]
    spoken = {rows[at].movement for at in work if at in told.keep or at in told.anew or rows[at].touched}
    if said.named:
        meant = [at for at in said.clause.targets if rows[at].part != "warm_up"]
    elif "rest" in said.names and spoken:
        meant = [at for at in work if rows[at].movement not in spoken]
    else:
        return []
    return [
        [at for at in meant if rows[at].movement == name] for name in dict.fromkeys(rows[at].movement for at in meant)
    ]
