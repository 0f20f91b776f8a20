"""Orders that wait for a press or a word: whom "mria 4x3 at 20" is for, with a button for each who can be meant, or
whether an order is wanted all the same, or for all."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import timedelta

from rapidfuzz.distance import OSA

from bot.conversation import coach_remembered
from bot.conversation.coach_days import months, weekdays
from bot.conversation.coach_vocabulary import vocabulary, words_of
from bot.conversation.desk import Buttons, Desk
from bot.conversation.office import Office
from storage import questions

KIND = "whom"
PRESS = "w"
MOST_SHOWN = 8  # athletes offered where no name is near
# Letters of a name: with so few a slip is one letter more or two in the wrong order, with so many two letters.
SHORT, LONG = 3, 7
FEWEST_TYPED = 2  # letters of a name that was left half typed
ANSWERABLE = timedelta(days=1)
TYPED_WITHIN = timedelta(minutes=10)  # a name or a yes right after it answers the question
ALL = "all"  # in the place of an athlete's id, and of a handle

Names = Sequence[tuple[str, str]]


def near(text: str, names: Names, language: str, is_whole: Callable[[str, str], bool]) -> list[tuple[str, str]]:
    """The handles whose name a word of the message nearly is, each with the message as it would be then.

    Args:
        is_whole: Whether words are a whole order for a handle. Other words are talk, whatever they look like.
    """
    found: dict[str, str] = {}
    for word in words_of(text.replace(":", " : ")):
        if word in _known(language):
            continue
        for handle, name in names:
            called = {handle, *name.casefold().split()[:1]}
            if handle not in found and any(_is_slip(word, one) for one in called):
                meant = _instead(text, word, handle)
                if is_whole(meant, handle):
                    found[handle] = meant
    return list(found.items())


def _known(language: str) -> frozenset[str]:
    """The words that orders are made of: no slips of a name."""
    phrases = [phrase for table in ("verbs", "words") for one in vocabulary(language, table).values() for phrase in one]
    return frozenset(word for phrase in phrases for word in phrase.split()) | set(weekdays(language)) | months(language)


def _keep(office: Office, text: str, **data: object) -> int:
    """The question about an order, with what a press would carry out; its id."""
    return questions.ask(office.mail.tx, office.coach, KIND, office.mail.now, text=text, data=data)


def ask(office: Office, orders: Sequence[tuple[str, str]]) -> None:
    """The question whom, with a button for each handle, those first of whom the coach spoke last. What a press would
    carry out is kept with it, and a name typed next does the same."""
    rows, lately = {row.handle: row for row in office.rows}, coach_remembered.spoken_of(office)
    asked = _keep(office, office.incoming.text, orders=dict(orders))
    offered = [handle for handle in lately if handle in dict(orders)]
    if len(orders) <= MOST_SHOWN:
        offered += [handle for handle, _ in orders if handle not in offered]
    buttons: Buttons = [
        (rows[handle].name, f"{PRESS}:{rows[handle].id}:{asked}") for handle in offered[:MOST_SHOWN] if handle in rows
    ]
    if len(orders) == 1:
        question = office.say.say("coach-meant", name=rows[orders[0][0]].name)
    else:
        question = office.say.say("coach-whom" if len(orders) <= MOST_SHOWN else "coach-whom-typed")
    office.mail.post(office.coach, question, buttons=buttons)


def ask_for_all(office: Office, count: int) -> None:
    """Whether an order that is not lightly given is meant for everyone."""
    asked = _keep(office, office.order, orders={ALL: office.order}, for_all=True)
    buttons: Buttons = [(office.say.say("button-for-all", count=count), f"{PRESS}:{ALL}:{asked}")]
    office.mail.post(office.coach, office.say.say("order-all-sure", order=office.order, count=count), buttons=buttons)


def ask_whether(office: Office, desk: Desk, doubt: str) -> None:
    """The doubt about the order that is carried out just now, with the button that gives it all the same."""
    ask_about(office, desk, office.order, doubt, "button-all-the-same", sure=True)


def ask_about(office: Office, desk: Desk, order: str, question: str, button: str, *, sure: bool = False) -> None:
    """A question about one order for one athlete, with the button that gives it.

    Args:
        sure: Whether the button stands for an order that the coach was warned of.
    """
    asked = _keep(office, office.order, orders={desk.athlete.handle: order}, sure=sure)
    buttons: Buttons = [(desk.say_coach.say(button), f"{PRESS}:{desk.id}:{asked}")]
    desk.tell_coach(question, buttons=buttons)


def everyone(office: Office, text: str) -> list[tuple[str, str]]:
    """An order that names nobody, for each of the roster."""
    return [(row.handle, f"{row.handle} {text.strip()}") for row in office.rows]


def pressed(office: Office, data: str) -> str | None:
    """The order that a button stands for; None where it is forged, or its time is over."""
    _, athlete_id, asked_id = [*data.split(":"), "", ""][:3]
    handle = next((row.handle for row in office.rows if str(row.id) == athlete_id), ALL if athlete_id == ALL else None)
    asked = questions.find(office.mail.tx, office.coach, int(asked_id)) if _is_id(asked_id) else None
    if handle is None or asked is None or asked.id is None or asked.kind != KIND or asked.answered_at is not None:
        return None
    if office.mail.now - asked.asked_at > ANSWERABLE:
        return None
    return _answered(office, asked, handle)


def typed(office: Office, text: str) -> str | None:
    """The order that was asked about by the message before, where this one is a name, or a yes to the only one; ""
    after a no. With any other words the question is one for its buttons alone."""
    asked = questions.open_question(office.mail.tx, office.coach, KIND)
    questions.expire(office.mail.tx, office.coach, KIND, office.mail.now)
    if asked is None or office.mail.now - asked.asked_at > TYPED_WITHIN:
        return None
    language, orders = office.coach.language, asked.data["orders"]
    said = " ".join(words_of(text))
    if len(orders) == 1 and said in vocabulary(language, "words")["agreed"]:
        return _answered(office, asked, next(iter(orders)))
    if said in vocabulary(language, "words")["refused"]:
        return ""
    named = [row.handle for row in office.rows if said in (row.handle, row.name.casefold()) and row.handle in orders]
    return _answered(office, asked, named[0]) if len(named) == 1 and not asked.data.get("sure") else None


def _answered(office: Office, asked: questions.Question, handle: str) -> str | None:
    assert asked.id is not None
    questions.settle(office.mail.tx, asked.id, office.mail.now)
    office.sure, office.for_all = bool(asked.data.get("sure")), bool(asked.data.get("for_all"))
    order: str | None = asked.data["orders"].get(handle)
    return order


def _is_id(text: str) -> bool:
    return text.isascii() and text.isdecimal() and len(text) < 18


def _is_slip(word: str, name: str) -> bool:
    if word == name or not word.isalpha():
        return False
    if len(word) >= FEWEST_TYPED and name.startswith(word):
        return True
    if len(word) < SHORT:
        return False
    if len(name) <= SHORT:
        swapped = sorted(word) == sorted(name) and word[0] == name[0]
        return swapped or (len(word) == len(name) + 1 and OSA.distance(word, name) == 1)
    return OSA.distance(word, name) <= (2 if len(name) >= LONG else 1)


def _instead(text: str, word: str, handle: str) -> str:
    """The message with the handle in the place of a word."""
    parts = text.replace(":", " : ").split()
    at = next(place for place, part in enumerate(parts) if part.strip(",.;!?()").casefold().startswith(word))
    return " ".join([*parts[:at], handle, *parts[at + 1 :]]).replace(" : ", ": ")
