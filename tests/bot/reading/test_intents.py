"""What the sender wants."""

from __future__ import annotations

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from bot.reading.intents import find_intents
from bot.reading.message import Message, read_message
from bot.reading.reading import Context


def said(text: str, language: str = "en", at: str = "2027-03-10T18:00:00+00:00") -> Message:
    """A message of Wednesday 10 March 2027, evening."""
    zone = ZoneInfo("Europe/London")
    return read_message(text, Context(datetime.fromisoformat(at), zone, "kg", language, 71.5))


TABLE = [
    ("en", "what's on today?", {"plan_today"}),
    ("en", "what does next week look like?", {"plan_week"}),
    ("en", "how come the weight dropped?", {"why"}),
    ("en", "how far off a one arm pull up am I now?", {"progress"}),
    ("en", "scrap that last entry pls", {"undo"}),
    ("en", "I'm back! start me up again", {"resume"}),
    ("en", "STOP", {"stop"}),
    ("en", "my dip belt broke", {"equipment"}),
    ("en", "tell the coach I'll be late", {"for_coach"}),
    ("en", "pull-ups 5x3 +20, no weight on the dips, why?", {"why"}),
    ("en", "I've got a cold, should I train?", {"ill"}),
    ("en", "could we move a session", {"move"}),
    ("en", "what do I have to do today", {"plan_today"}),
    ("en", "bought a 10kg and a 1.25 plate", {"equipment"}),
    ("en", "why only 3 sets today", {"why"}),
    ("de", "Was steht heute an?", {"plan_today"}),
    ("de", "lösch bitte den letzten Eintrag", {"undo"}),
    ("en", "pause for 2 weeks", {"pause"}),
    ("es", "pausa de 2 semanas", {"pause"}),
    ("de", "2 Wochen Pause", {"pause"}),
    ("de", "in Behandlung bis Freitag", set()),
    ("de", "nur 3 Sätze geschafft, musste weg", set()),
    ("de", "muss Freitag weg", {"away"}),
    ("de", "haha passt, bis morgen", {"smalltalk"}),
    ("es", "gracias crack", {"smalltalk"}),
    ("es", "¿qué toca hoy?", {"plan_today"}),
    ("es", "¿cómo voy con el front lever?", {"progress"}),
    ("es", "no me mandes más mensajes", {"stop"}),
]


@pytest.mark.parametrize(("language", "text", "expected"), TABLE)
def test_a_wish_is_read_from_its_words(language: str, text: str, expected: set[str]) -> None:
    assert {claim.value for claim in find_intents(said(text, language))} == expected


@pytest.mark.parametrize("text", ["archers 2x1, paused for 2 seconds at the top", "archers 2x1 with a pause of 3s"])
def test_a_pause_in_a_rep_is_no_break(text: str) -> None:
    assert "pause" not in {claim.value for claim in find_intents(said(text, "en"))}
