"""Progress is called so from the rule's smallest change on, to the athlete and on the coach's card."""

from __future__ import annotations

from tests.bot.conversation.conftest import Chat, athlete

LATE = "2027-02-08"


def lived():
    chat = Chat(athlete("mira"))
    for week in range(5):
        for weekday in (4, 7):
            on = (
                f"2027-01-{weekday + 7 * week:02}"
                if weekday + 7 * week <= 31
                else f"2027-02-{weekday + 7 * week - 31:02}"
            )
            chat.waits_until("08:00", on)
            chat.answer("mira", "pull-ups 4x4 +15 @7", "18:00", on)
            chat.answer("mira", "0", "18:01", on)
    return chat


def test_a_change_too_small_is_called_none_and_the_rule_decides():
    chat = lived()
    told = chat.answer("mira", "how far am I?", "09:00", LATE)
    assert ("no change worth the word" in told) != ("than four weeks ago." in told)

    chat.answer("coach", "mira rule strength.smallest_progress 0.1", "09:01", LATE)
    assert "no change worth the word (less than 6.2 kg)" in chat.answer("mira", "how far am I?", "09:02", LATE)
    assert "no change worth the word" in chat.answer("coach", "mira", "09:03", LATE)
    chat.close()
