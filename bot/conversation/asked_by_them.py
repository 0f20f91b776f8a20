"""What athletes ask: "am I allowed to train?", "what does RPE mean": it states nothing, and answers no question."""

from __future__ import annotations

import re

from bot.conversation.words import phrases

CLAUSE = re.compile(r"[^.!?,;\n]+[.!?,;\n]?")
LEADING = " ¿¡-–—"


def without_questions(text: str) -> str:
    """What a message states beside what it asks for."""
    return " ".join(clause.strip() for clause in CLAUSE.findall(text) if not _asks(clause))


def is_question(text: str) -> bool:
    """Whether a message without figures begins as a question: "15?" may be a shy answer."""
    return not any(sign.isdigit() for sign in text) and begins_as_question(text)


def begins_as_question(text: str) -> bool:
    """Whether a message begins as a question, a question mark behind it or not."""
    words = text.casefold().strip(LEADING)
    begins = (*phrases("asks_leave")["begins"], *phrases("asks")["begins"])
    return any(re.match(rf"{re.escape(one)}\b", words) for one in begins)


def asks_leave(text: str) -> bool:
    """Whether a clause of a message begins as one that asks whether one may, a small word or two before it."""
    begins = "|".join(map(re.escape, phrases("asks_leave")["begins"]))
    asks = re.compile(rf"(?:\w+\s+){{0,2}}(?:{begins})\b")
    return any(asks.match(clause.casefold().strip(LEADING)) for clause in CLAUSE.findall(text))


def asks(text: str) -> bool:
    """Whether a clause of a message asks for something."""
    return any(_asks(clause.strip()) for clause in CLAUSE.findall(text))


def asks_for_advice(text: str) -> bool:
    """Whether a clause asks what would be best: "should I move it?". Who asks so has decided nothing yet."""
    clauses = [clause.casefold().strip(LEADING) for clause in CLAUSE.findall(text)]
    return any(
        re.match(rf"{re.escape(one)}\b", clause) for one in phrases("asks_advice")["begins"] for clause in clauses
    )


def _asks(clause: str) -> bool:
    return clause.endswith("?") or _begins(clause)


def _begins(clause: str) -> bool:
    words = clause.casefold().strip(LEADING)
    return any(re.match(rf"{re.escape(begin)}\b", words) for begin in phrases("asks_leave")["begins"])
