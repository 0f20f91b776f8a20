"""What is counted while messages are handled and moments swept."""

from __future__ import annotations

from bot.metrics import REGISTRY
from tests.bot.conversation.conftest import Chat, athlete


def value(name, **labels):
    return REGISTRY.get_sample_value(name, labels) or 0.0


def test_messages_readings_moments_and_decisions_are_counted():
    names = [
        ("slowrung_messages_total", {"outcome": "done"}),
        ("slowrung_readings_total", {"outcome": "sure"}),
        ("slowrung_readings_total", {"outcome": "nothing"}),
        ("slowrung_due_total", {"kind": "plan"}),
    ]
    before = [value(name, **labels) for name, labels in names]
    chat = Chat(athlete("mira"))
    chat.waits_until("08:00")
    chat.answer("mira", "pull-ups 5x3 +20", "18:00")
    chat.answer("mira", "blorp zzz", "18:05")
    chat.close()

    after = [value(name, **labels) for name, labels in names]
    assert all(then > now for now, then in zip(before, after, strict=True))
    decided = [s for metric in REGISTRY.collect() if metric.name == "slowrung_decisions" for s in metric.samples]
    assert any(sample.value > 0 for sample in decided)
