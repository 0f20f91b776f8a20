"""Away and something said of what there is to train with: days of training with less, or days without training.

What is there is told by who trains there, "at my parents', only rings"; what is lacking leaves it open, "no belt
there". The two are never noted both; one button, or a few words, makes the other of the one.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date

from bot.conversation.desk import Buttons, Desk
from bot.conversation.words import phrases, starts
from bot.reading.reading import Reading, Span
from storage import facts, questions

KIND = "travel"
TRAIN, REST = "train", "rest"
NOTED = {TRAIN: "absence", REST: "equipment"}  # what an answer puts aside: the kind of fact that was noted


@dataclass(frozen=True)
class Told:
    """What a text says of equipment: kinds that are there, and that alone; kinds that are lacking."""

    there: frozenset[str]
    only: frozenset[str]
    lacking: frozenset[str]

    def of(self, usual: frozenset[str]) -> frozenset[str]:
        """What there is in all, beside what there was."""
        return (self.only or usual - self.lacking) | self.there


def told_of_equipment(text: str) -> Told | None:
    """Clause by clause: "only rings", "my belt broke", "a band too". None where no equipment is named."""
    there, alone, lacks = set[str](), set[str](), set[str]()
    manner = phrases("manner")
    for clause in re.split(r"[,.;!?\n]", text.casefold()):
        lacking, only = starts(clause, manner["lacking"]), starts(clause, manner["only"])
        named = sorted((at, kind) for kind, stems in phrases("equipment").items() for at in starts(clause, stems))
        for at, kind in named:
            before = max([one for one in (*lacking, *only) if one < at], default=-1)
            if before in only:
                alone.add(kind)
            elif before in lacking or (before < 0 and at == named[-1][0] and any(one > at for one in lacking)):
                lacks.add(kind)  # "no belt", "my belt broke"
            else:
                there.add(kind)
    return Told(frozenset(there), frozenset(alone), frozenset(lacks)) if there or alone or lacks else None


def trains_there(text: str) -> frozenset[str] | None:
    """With what somebody who is away trains there; None where they do not, or it is open."""
    told = told_of_equipment(text)
    return (told.only | told.there or None) if told is not None and not says_no_training(text) else None


def is_open(text: str) -> bool:
    """Whether only what is lacking there was told, and not that there is no training."""
    told = told_of_equipment(text)
    return told is not None and not told.only | told.there and not says_no_training(text)


def says_no_training(text: str) -> bool:
    return bool(starts(text.casefold(), phrases("travels")[REST]))


def offer(desk: Desk, other: str, since: date, until: date | None, text: str) -> Buttons:
    """The button that makes training with less of days without training, or the other way round."""
    questions.expire(desk.tx, desk.person, KIND, desk.now)
    data = {"other": other, "since": since.isoformat(), "until": until.isoformat() if until else None}
    asked = questions.ask(desk.tx, desk.person, KIND, desk.now, text=text, cause=desk.cause, data=data)
    return [(desk.say.say(f"button-travel-{other}"), f"q:{asked}:{other}")]


def completed(desk: Desk, question: questions.Question, answer: str) -> tuple[Reading, str] | None:
    """The other of the two, where a button or a few words say so; what was noted first is put aside."""
    other, said = question.data["other"], answer.strip(" .!").casefold()
    if answer != other and said not in phrases("travels")[f"says_{other}"]:
        return None
    assert question.id is not None
    questions.close(desk.tx, question.id, desk.now)
    brought = facts.caused_by(desk.tx, desk.id, question.cause) if question.cause is not None else []
    for kind, fact in brought:
        if kind == NOTED[other]:
            facts.withdraw(desk.tx, kind, fact, desk.now, by=desk.cause)
    desk.forget()
    since, until = (
        date.fromisoformat(day) if day else None for day in (question.data["since"], question.data["until"])
    )
    intent = "equipment" if other == TRAIN else "away"
    return Reading((intent,), dates=Span(since, until), language=desk.athlete.language), question.text
