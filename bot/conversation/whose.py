"""Sets with somebody's name in front, "tomas 4x3 at 50": whose they are is asked, and nothing is noted before.

What is asked never tells who is coached beside the sender: a name of the squad and any other first name are met alike.
"""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache
from pathlib import Path

import tomli

from bot.conversation.coach_vocabulary import plain
from bot.conversation.desk import Desk
from bot.conversation.placing import context_of, message_of
from bot.reading.first_names import first_names
from bot.reading.movements import find_movements
from bot.reading.reading import Ask, Reading
from storage import persons, questions

ABOUT = "whose"
MINE, OTHERS = "mine", "others"
WORDS = Path(__file__).with_name("whose.toml")
WORD = re.compile(r"[^\W\d_]+(?:-[^\W\d_]+)?")
HEAD = re.compile(
    r"\W*(?P<name>[^\W\d_]{2,}(?:-[^\W\d_]+)?)(?P<own>['’]s)?\s*(?P<mark>[:,–—-]?)\s*(?P<rest>.*)", re.DOTALL
)
FIGURE = re.compile(r"(\d)")
PAUSE = re.compile(r"[,.;!?]")
MOST_LEADING = 3  # small words before a name
MOST_BETWEEN = 2  # words between a name and the figures of its sets, where these are of no movement


def asked(desk: Desk, text: str) -> Reading | None:
    """What a message tells beside the sets that may be another's, with the question whose these are; None: hers."""
    named = [found for line in text.splitlines() if (found := _named(desk, line)) is not None]
    if not named:
        return None
    rest = own_part(desk, text, MINE) or ""
    told = desk.read(rest, context_of(desk, desk.said_at))
    if not told.sets:
        return None
    return replace(
        told,
        intents=tuple(one for one in told.intents if one in ("pain",)) or ("report",),
        sets=(),
        correction=None,
        session_rpe=None,
        duration_min=None,
        sleep_h=None,
        bodyweight_kg=None,
        dates=None,
        unread=(),
        ask=(Ask(ABOUT, named[0][0]),),
    )


def own_part(desk: Desk, text: str, answer: str) -> str | None:
    """What of the message is hers by an answer: all but the names, or all but their lines. None: it is no answer."""
    lines = [(line, _named(desk, line)) for line in text.splitlines()]
    kind = _kind(answer, {plain(found[0]) for _, found in lines if found is not None})
    if kind is None:
        return None
    kept = [line if found is None else found[1] for line, found in lines if found is None or kind == MINE]
    return "\n".join(kept).strip()


def is_of_nobody_here(desk: Desk, question: questions.Question, answer: str) -> bool:
    """Whether an answer says that nothing of the message is hers: it is settled then, and nothing was noted."""
    if question.about != ABOUT or question.id is None or own_part(desk, question.text, answer) != "":
        return False
    questions.close(desk.tx, question.id, desk.now)
    return True


def _kind(answer: str, names: set[str]) -> str | None:
    """Mine or another's, where all words of an answer say so: "mine", "not mine", "Tom's"."""
    words = {word.casefold() for word in WORD.findall(answer)} - {"s"}
    named = {word for word in words if {plain(word), plain(word).removesuffix("s")} & names}
    known = _table("answer")
    if not words <= known[MINE] | known[OTHERS] | known["small"] | named:
        return None
    return OTHERS if words & known[OTHERS] or named else MINE if words & known[MINE] else None


def _named(desk: Desk, line: str) -> tuple[str, str] | None:
    """The name that stands in front of sets, and the line without it; None where there is none but her own."""
    left = line.strip()
    for _ in range(MOST_LEADING):
        head = HEAD.fullmatch(left)
        if head is None:
            return None
        if head["name"].casefold() not in _table("beside")["before"]:
            break
        left = head["rest"]
    else:
        return None
    name = head["name"]
    if _is_movement(desk, left) or not (_is_told_of(desk, head["rest"]) and _is_another(desk, name)):
        return None
    return name, head["rest"]


def _is_told_of(desk: Desk, rest: str) -> bool:
    """Whether what follows a name is work, with no word of the sender before it: "pulled 4x3", "pull-ups 4x3"."""
    before, figure, _ = FIGURE.split(rest, maxsplit=1) if FIGURE.search(rest) else (rest, "", "")
    words = [word.casefold() for word in before.split()]
    if not figure or PAUSE.search(before) or set(words) & _table("beside")["sender"]:
        return False
    return len(words) <= MOST_BETWEEN or _is_movement(desk, rest)


def _is_movement(desk: Desk, words: str) -> bool:
    message = message_of(desk, words)
    return any(one.spans[0][0] == 0 for one in find_movements(message))


def _is_another(desk: Desk, name: str) -> bool:
    """Whether a word is a name, and neither hers nor her coach's, whom she speaks to."""
    own = {plain(one) for who in (desk.person, desk.coach) for one in who.name.split()}
    if plain(name) in own or name.casefold() == desk.athlete.handle.casefold():
        return False
    squad = persons.names_in_squad(desk.tx, desk.coach.id)
    return plain(name) in first_names() or name.casefold() in squad or plain(name) in {plain(one) for one in squad}


@cache
def _table(name: str) -> dict[str, frozenset[str]]:
    return {key: frozenset(words) for key, words in tomli.loads(WORDS.read_text(encoding="utf-8"))[name].items()}
