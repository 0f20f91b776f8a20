"""What stands by the coach's order is on the card, however much was said since."""

from __future__ import annotations


def card(chat, at="09:30"):
    return chat.answer("coach", "mira", at)


def test_a_hold_stays_on_the_card_behind_newer_orders(chat):
    chat.waits_until("08:00")
    chat.says("coach", "mira hold rung 3 weeks", "09:00")
    for at, day in enumerate(("thursday", "14 january", "18 january", "21 january")):
        chat.says("coach", f"mira 4x3 at 10 on {day}", f"09:0{at + 1}")

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
