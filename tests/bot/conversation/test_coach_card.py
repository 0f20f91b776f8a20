"""What stands by the coach's order is on the card, however much was said since."""

from __future__ import annotations


def card(chat, at="09:30"):
    return chat.answer("coach", "mira", at)


def test_a_hold_stays_on_the_card_behind_newer_orders(chat):
    chat.waits_until("08:00")
    chat.says("coach", "mira hold rung 3 weeks", "09:00")
    for at, day in enumerate(("thursday", "14 january", "18 january", "21 january")):
        chat.says("coach", f"mira 4x{at + 1} at 10 on {day}", f"09:0{at + 1}")

    shown = card(chat)
    assert "rung held until Mon 25 Jan" in shown
    assert shown.count("Your order of") == 4


def test_of_two_locks_the_newer_is_on_the_card(chat):
    chat.waits_until("08:00")
    chat.says("coach", "mira lock 10", "09:00")
    chat.says("coach", "mira lock 12.5", "09:01")

    shown = card(chat)
    assert "load locked at +12.5 kg" in shown
    assert "load locked at +10 kg" not in shown


def test_what_was_lifted_is_no_longer_on_the_card(chat):
    chat.waits_until("08:00")
    chat.says("coach", "mira hold rung 3 weeks", "09:00")
    chat.says("coach", "mira unlock", "09:01")

    assert "rung held" not in card(chat)


def test_what_one_message_left_out_is_one_line(chat):
    chat.waits_until("08:00")
    chat.says("coach", "mira no archers", "09:00")

    assert card(chat).count("without") == 1


def test_what_waits_is_on_the_card_with_its_button(chat):
    chat.answer("mira", "tell the coach my grip feels weak", "09:00")
    (shown,) = [one for one in chat.says("coach", "mira", "09:30") if one["to"] == "coach"]

    assert "“tell the coach my grip feels weak”" in shown["text"]
    assert shown["buttons"] == ["No answer needed"]


def test_the_sets_done_are_shown_without_the_warm_up(chat):
    chat.waits_until("08:00")
    chat.answer("mira", "done as planned", "18:00")
    shown = card(chat, "19:00")

    assert "pull-ups 4×4 +11.25 kg" in shown
    assert "scapular" not in shown


def test_a_stop_is_told_once_in_words_for_the_coach(chat):
    chat.answer("mira", "I heard a pop in my left elbow", "09:00")
    shown = card(chat)

    assert "Only you can start the plan again" in shown
    assert "Your coach starts it" not in shown


def test_a_week_emptied_by_pain_says_why(chat):
    chat.answer("mira", "left elbow 7/10", "09:00")

    assert "left elbow 7/10" in chat.answer("coach", "mira week", "09:30")
