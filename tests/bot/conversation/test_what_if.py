"""A coach plays with a plan: what would change, and that nothing does."""

from datetime import date

from planner import what_if
from planner.facts import Athlete, Record, Weekly
from tests.bot.conversation.conftest import MONDAY


def test_three_days_are_compared_in_five_lines_and_nothing_is_changed(chat):
    before = chat.record()
    said = chat.answer("coach", "what if mira trains three days?", "08:00").splitlines()

    assert len(said) == 6
    assert said[0].startswith("Mira, 8 weeks")
    now, then = said[3].removeprefix("· Sessions: ").split(" → ")
    assert int(then) > int(now)
    assert chat.record().athlete == before.athlete
    assert chat.record().orders == before.orders


def test_a_held_rung_keeps_the_rung_and_gives_no_order(chat):
    said = chat.answer("coach", "what if mira holds rung 9 weeks", "08:00")

    assert "Rung at the end: " in said
    assert "archer" in said.casefold()
    assert chat.record().orders == ()


def test_a_rung_without_a_name_means_everyone_on_it(two):
    two.waits_until("08:00")
    heard = [one["text"] for one in two.says("coach", "what if we hold archers for a block", "08:05")]

    assert [text.split(",")[0] for text in heard] == ["Mira", "Tom"]


def test_what_cannot_be_rehearsed_says_what_can(chat):
    assert "“what if mira trains three days”" in chat.answer("coach", "what if mira sings", "08:00")


def test_days_are_put_apart_and_kept_where_they_can_be():
    record = Record(Athlete("mira", date.fromisoformat(MONDAY), 62.0, schedule=Weekly(frozenset({0, 3}))))

    assert what_if.with_days(record, 3).athlete.schedule.days >= {0, 3}
    assert what_if.with_days(record, 2).athlete.schedule.days == {0, 3}
