"""What an athlete told of late, when they ask for it: "what did I do yesterday?"."""

from __future__ import annotations

from functools import cache
from itertools import product

from bot.conversation import days_told
from bot.conversation.desk import Desk
from bot.conversation.words import phrases
from bot.wording.sets import done_in_words

MOST_WORDS = 9
NEWEST = 3
EFFORT = ("begins", "ends", "words")


def is_asked(text: str) -> bool:
    """Whether a short question is for what was told."""
    asked, known = text.casefold().strip(" ?¿!.\n"), phrases("told_back")
    if len(asked.split()) > MOST_WORDS or any(sign.isdigit() for sign in asked):
        return False
    begun = asked.startswith(known["begins"])
    return begun or (asked.startswith(known["begins_if_done"]) and any(word in asked.split() for word in known["done"]))


def is_of_the_next(text: str) -> bool:
    """Whether a short question is for the next session."""
    asked = text.casefold().strip(" ?¿!.\n")
    short = len(asked.split()) <= MOST_WORDS and not any(sign.isdigit() for sign in asked)
    return short and asked.startswith(phrases("next_session")["begins"])


def is_of_effort(text: str) -> bool:
    """ "What does RPE mean?": a word of every plan."""
    return text.casefold().strip(" ?¿!.\n") in _of_effort()


@cache
def _of_effort() -> frozenset[str]:
    parts = (phrases("effort")[one] for one in EFFORT)
    return frozenset(f"{begin} {word}{end}" for begin, end, word in product(*parts))


def in_words(desk: Desk) -> str:
    """The newest days, the newest last."""
    say = desk.say
    told = days_told.newest(desk.record, NEWEST)
    if not told:
        return say.say("told-back-nothing")
    return "\n".join(say.say("told-back", day=say.day(one.on), work=done_in_words(one.sets, say)) for one in told)
