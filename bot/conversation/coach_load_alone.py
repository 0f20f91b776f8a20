""" "mira 17.5", a load and no more: for the next session, as it is planned but for that? It is asked, never guessed."""

from __future__ import annotations

import re

from bot.conversation import coach_whom
from bot.conversation.coach_several import Names
from bot.conversation.coach_words import UNITS, names_of, whom
from bot.conversation.office import Office

ALONE = re.compile(rf"[+@]?\s*(\d{{1,3}}(?:[.,]\d{{1,2}})?)\s*({UNITS})?", re.IGNORECASE)


def is_asked(office: Office, text: str, names: Names) -> bool:
    """Ask whether the next session's main work is meant at that load; False where a message is something else."""
    handle = whom(text, names)
    desk = office.desk(handle)
    words = [word for word in text.split() if word.strip(",.:").casefold() not in names_of(handle, names)]
    found = ALONE.fullmatch(" ".join(words))
    if desk is None or found is None:
        return False
    day = desk.review.next_training_on
    main = [one for one in desk.plan(day).sets if one.part == "main"] if day is not None else []
    if day is None or not main or main[0].reps is None:
        return False
    load = f"{found[1]} {found[2] or desk.athlete.unit}"
    order = f"{desk.athlete.handle} {len(main)}x{main[0].reps} @{load} {day.isoformat()}"
    say = desk.say_coach
    question = say.say(
        "load-alone", name=desk.person.name, sets=len(main), reps=main[0].reps, load=load, day=say.day(day)
    )
    coach_whom.ask_about(office, desk, order, question, "button-set-it")
    return True
