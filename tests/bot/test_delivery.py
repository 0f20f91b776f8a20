import asyncio
from datetime import UTC, datetime, timedelta

import pytest
from psycopg.errors import DeadlockDetected, ProgramLimitExceeded
from sqlalchemy.exc import OperationalError

from bot import delivery, metrics
from bot.channels.channel import Gone, Later, Moved, Refused
from bot.clock import VirtualClock
from bot.pacing import Window
from bot.roster import parse_roster
from storage import chats, outbox, pace, persons
from storage.loading import load_roster
from storage.outbox import Outgoing
from storage.persons import Who
from storage.store import Store
from tests.journeys.serving import ROSTER

NOW = datetime(2027, 1, 4, 7, tzinfo=UTC)


class Phone:
    """A channel that does what it was told for each address, and keeps what it took."""

    name = "phone"

    def __init__(self):
        self.took, self.trouble = [], {}

    async def send(self, message):
        for error in self.trouble.get(message.address, [])[:1]:
            self.trouble[message.address].pop(0)
            raise error
        self.took.append((message.address, message.text))
        return str(len(self.took))

    def calls(self, message):
        return 1


@pytest.fixture
def post():
    store = Store.open("sqlite://")
    with store.transaction() as tx:
        loaded = load_roster(tx, parse_roster(ROSTER), NOW)
        chats.bind_chat(tx, "phone", "coach", Who("coach", loaded.coach_id), NOW)
        for handle, athlete_id in loaded.athlete_ids.items():
            chats.bind_chat(tx, "phone", handle, Who("athlete", athlete_id), NOW)
    made = Post(store)
    yield made
    store.close()


class Post:
    def __init__(self, store):
        self.store, self.phone, self.clock = store, Phone(), VirtualClock(NOW)
        self.delivery = delivery.Delivery(store, self.phone, self.clock, 1000, self._here)
        self._count = 0

    async def _here(self, work):
        return work()

    def owe(self, address, text, **more):
        self._count += 1
        with self.store.transaction() as tx:
            values = {"importance": outbox.REPLY, "due_at": NOW, "cause": f"c{self._count}"} | more
            outbox.post(tx, Outgoing(channel="phone", address=address, to=address, text=text, **values))

    async def rounds(self, most=20):
        for _ in range(most):
            if not await self.delivery.deliver_once():
                return

    def owed(self):
        with self.store.reading() as tx:
            return outbox.next_open_at(tx)


async def test_each_chat_gets_its_messages_in_order(post):
    for number in range(3):
        post.owe("mira", f"m{number}")
        post.owe("tomas", f"t{number}")
    await post.rounds()
    assert [text for who, text in post.phone.took if who == "mira"] == ["m0", "m1", "m2"]
    assert [text for who, text in post.phone.took if who == "tomas"] == ["t0", "t1", "t2"]


async def test_alerts_go_before_plans(post):
    post.owe("mira", "plan", importance=outbox.PLAN)
    post.owe("mira", "alert", importance=outbox.ALERT)
    await post.rounds()
    assert [text for _, text in post.phone.took] == ["alert", "plan"]


async def test_a_chat_takes_a_short_burst_and_then_waits_its_window(post):
    for number in range(5):
        post.owe("mira", f"m{number}")
    post.owe("tomas", "t")
    await post.rounds()
    assert [text for _, text in post.phone.took] == ["m0", "t", "m1", "m2"]
    post.clock.move_to(NOW + outbox.CHAT_WINDOW)
    await post.rounds()
    assert [text for who, text in post.phone.took if who == "mira"] == ["m0", "m1", "m2", "m3", "m4"]


async def test_a_group_takes_twenty_a_minute(post):
    # Telegram's documentation: not more than 20 messages a minute to a group
    for number in range(30):
        post.owe("-100", f"m{number}")
    for second in range(0, 60, 3):
        post.clock.move_to(NOW + timedelta(seconds=second))
        await post.rounds()
    assert len(post.phone.took) == 20
    post.clock.move_to(NOW + timedelta(seconds=63))
    await post.rounds()
    assert len(post.phone.took) > 20


async def test_another_replica_keeps_the_pace_of_the_same_chat(post):
    for number in range(4):
        post.owe("mira", f"m{number}")
    other = delivery.Delivery(post.store, post.phone, post.clock, 1000, post._here)
    taken = [await one.deliver_once() for one in (post.delivery, other, post.delivery, other)]
    assert taken == [1, 1, 1, 0]


async def test_replicas_share_the_moments_of_a_second(post):
    for number in range(20):
        post.owe(f"chat {number}", "m")
    one, other = (delivery.Delivery(post.store, post.phone, post.clock, 10, post._here) for _ in range(2))
    mine, theirs = one._claim()[0], other._claim()[0]
    assert len(mine) == 9  # ten a second, drawn apart a little
    assert theirs == []
    post.clock.move_to(NOW + timedelta(seconds=0.5))
    later = other._claim()[0]
    assert 4 <= len(later) <= 5
    assert not {turn.id for turn in mine} & {turn.id for turn in later}


async def test_a_long_message_whose_later_part_fails_repeats_none_before_it(post):
    tried, troubles = [], {1: [Later(30)], 2: [Later(), Later()]}

    async def send(message):
        tried.append((message.parts_sent, post.clock.now() - NOW))
        if troubles.get(message.parts_sent):
            raise troubles[message.parts_sent].pop()
        return str(message.parts_sent)

    post.phone.send, post.phone.calls = send, lambda message: 3
    post.owe("mira", "long")
    for second in range(60):
        post.clock.move_to(NOW + timedelta(seconds=second))
        await post.rounds()
    assert [part for part, _ in tried] == [0, 1, 1, 2, 2, 2]
    took = [at for at, after in zip(tried, [*tried[1:], (3, None)], strict=True) if at[0] != after[0]]
    assert [at.total_seconds() for _, at in took][:2] == [0, 31]  # a chat takes one a second
    assert post.owed() is None
    with post.store.reading() as tx:
        (row,) = outbox.posted_since(tx, 0, "c1", None)
    assert (row.service_id, row.given_up_because) == ("2", None)


async def test_parts_of_a_long_message_come_together_but_for_what_is_more_important(post):
    post.phone.calls = lambda message: 2 if "long" in message.text else 1
    post.owe("mira", "long plan", importance=outbox.PLAN)
    post.owe("mira", "next plan", importance=outbox.PLAN)
    await post.rounds(1)
    post.owe("mira", "alert", importance=outbox.ALERT)
    for second in (0, 1, 2):
        post.clock.move_to(NOW + timedelta(seconds=second))
        await post.rounds()
    assert [text for _, text in post.phone.took] == ["long plan", "alert", "long plan", "next plan"]


async def test_what_a_chat_wants_later_waits_as_long_and_holds_up_no_other_chat(post):
    post.phone.trouble["mira"] = [Later(30)]
    post.owe("mira", "m")
    post.owe("tomas", "t")
    await post.rounds()
    assert post.phone.took == [("tomas", "t")]
    assert post.owed() == NOW + timedelta(seconds=30)
    post.clock.move_to(NOW + timedelta(seconds=30))
    await post.rounds()
    assert post.phone.took[-1] == ("mira", "m")


async def test_a_service_that_asks_for_a_pause_is_left_alone_by_all_replicas(post):
    post.phone.trouble["mira"] = [Later(30, everyone=True)]
    post.owe("mira", "m")
    await post.rounds()
    post.owe("tomas", "t")
    other = delivery.Delivery(post.store, post.phone, post.clock, 1000, post._here)
    assert await other.deliver_once() == 0
    post.clock.move_to(NOW + timedelta(seconds=30))
    assert await other.deliver_once() == 2
    assert len(post.phone.took) == 2


async def test_a_pause_and_a_pace_from_before_the_clock_was_set_back_hold_nobody(post):
    with post.store.transaction() as tx:
        pace.pause(tx, "phone", NOW + timedelta(hours=1), NOW + timedelta(hours=2))
        pace.take(tx, "phone", NOW + timedelta(hours=1), NOW + timedelta(hours=1))
    post.owe("mira", "m")
    await post.rounds()
    assert post.phone.took == [("mira", "m")]


async def test_never_more_leave_in_a_second_than_is_permitted():
    window = Window(100)
    loop = asyncio.get_running_loop()
    started = loop.time()
    await asyncio.gather(*(window.wait() for _ in range(101)))
    assert loop.time() - started >= 1.0


async def test_trouble_without_a_word_of_when_waits_longer_each_time(post):
    post.phone.trouble["mira"] = [Later(), Later(), Later()]
    post.owe("mira", "m")
    waits = []
    for _ in range(3):
        await post.delivery.deliver_once()
        waits.append((post.owed() - post.clock.now()).total_seconds())
        post.clock.move_to(post.owed())
    assert waits == [2, 4, 8]


async def test_a_person_who_is_gone_gets_no_more_and_the_coach_is_told(post):
    post.phone.trouble["mira"] = [Gone()]
    post.owe("mira", "m")
    await post.rounds()
    assert [who for who, _ in post.phone.took] == ["coach"]
    with post.store.reading() as tx:
        coach = persons.all_coaches(tx)[0]
        mira = persons.athlete_by_handle(tx, coach.id, "mira")
        assert chats.addresses_of(tx, Who("athlete", mira.id)) == []


async def test_a_message_that_is_refused_is_given_up_and_the_next_goes(post):
    post.phone.trouble["mira"] = [Refused("no")]
    post.owe("mira", "poison")
    post.owe("mira", "m")
    await post.rounds()
    assert post.phone.took == [("mira", "m")]
    assert post.owed() is None


async def test_a_clip_that_is_refused_lets_its_words_go(post):
    post.phone.trouble["coach"] = [Refused("wrong file identifier", clip=True)]
    post.owe("coach", "Mira sent a clip", media="f1", buttons=[["Seen", "v:1:1"]])
    await post.rounds()
    assert post.phone.took == [("coach", "Mira sent a clip")]
    with post.store.reading() as tx:
        (row,) = outbox.posted_since(tx, 0, "c1", None)
    assert (row.media, row.given_up_because, row.attempts) == (None, None, 0)


async def test_what_is_owed_to_a_coach_who_is_gone_waits_and_goes_when_they_are_back(post):
    post.phone.trouble["coach"] = [Gone()]
    post.owe("coach", "alert", importance=outbox.ALERT)
    post.owe("coach", "reply")
    await post.rounds()
    assert (post.phone.took, post.owed()) == ([], None)
    post.clock.move_to(NOW + timedelta(days=5))
    await post.rounds()
    with post.store.transaction() as tx:
        chats.set_blocked(tx, "phone", "coach", False)
        outbox.hand_over(tx, Who("coach", 1), post.clock.now())
    await post.rounds()
    assert post.phone.took == [("coach", "alert"), ("coach", "reply")]


async def test_an_athlete_whose_words_found_the_coach_gone_is_told(post):
    post.phone.trouble["coach"] = [Gone()]
    post.owe("coach", "Mira: a pop", importance=outbox.ALERT, about="mira", cause="incoming:7")
    await post.rounds()
    assert [who for who, text in post.phone.took if "could not reach your coach" in text] == ["mira"]


async def test_what_nobody_has_foreseen_is_counted_tried_again_and_in_the_end_given_up(post):
    def failed():
        return metrics.REGISTRY.get_sample_value("slowrung_sends_total", {"outcome": "failed"}) or 0.0

    before = failed()
    post.phone.trouble["mira"] = [KeyError("a field")] * delivery.MOST_UNFORESEEN
    post.owe("mira", "hello")
    post.owe("tomas", "hello")
    for _ in range(delivery.MOST_UNFORESEEN + 1):
        await post.delivery.deliver_once()
        post.clock.move_to(post.clock.now() + timedelta(hours=1))
    assert failed() - before == delivery.MOST_UNFORESEEN
    assert post.phone.took == [("tomas", "hello")]
    assert post.owed() is None


async def test_a_chat_that_moved_is_followed(post):
    post.phone.trouble["mira"] = [Moved("elsewhere")]
    post.owe("mira", "m")
    await post.rounds()
    assert post.phone.took == [("elsewhere", "m")]


async def test_what_is_stale_is_dropped(post):
    post.owe("mira", "yesterday", stale_after=NOW - timedelta(hours=1))
    post.owe("mira", "today", stale_after=NOW + timedelta(hours=1))
    await post.rounds()
    assert [text for _, text in post.phone.took if "day" in text][:1] == ["today"]
    assert "yesterday" not in [text for _, text in post.phone.took]


async def test_whoever_was_owed_something_that_grew_too_old_is_told_once(post):
    post.phone.trouble["mira"] = [Later()] * 3
    post.owe("mira", "reply", due_at=NOW - outbox.LONGEST_OWED)
    post.owe("mira", "plan", importance=outbox.PLAN, stale_after=NOW)
    await post.rounds(1)
    post.owe("mira", "another plan", importance=outbox.PLAN, stale_after=NOW)
    for seconds in range(0, 100, 20):
        post.clock.move_to(NOW + timedelta(seconds=seconds))
        await post.rounds()
    assert [who for who, _ in post.phone.took] == ["mira"]
    assert "too old" in post.phone.took[0][1]


async def test_alerts_never_grow_old(post):
    post.owe("coach", "alert", importance=outbox.ALERT, due_at=NOW - timedelta(days=3), stale_after=NOW)
    await post.rounds()
    assert post.phone.took == [("coach", "alert")]


async def test_a_day_without_the_service_is_survived_with_few_tries_and_drained_by_importance(post):
    day, down = timedelta(days=1), NOW + timedelta(days=1)
    tries, most_at_once = 0, 0
    real = post.phone.send

    async def send(message):
        nonlocal tries
        if post.clock.now() < down:
            tries += 1
            raise Later()
        return await real(message)

    post.phone.send = send
    for number in range(40):
        post.owe(f"chat {number}", f"plan {number}", importance=outbox.PLAN, stale_after=NOW + day / 2)
        post.owe(f"chat {number}", f"reply {number}", due_at=NOW + day / 4)
        post.owe(f"chat {number}", f"summary {number}", importance=outbox.SUMMARY)
    post.owe("coach", "alert", importance=outbox.ALERT, due_at=NOW + day / 3)
    post.owe("tomas", "yesterday's plan", importance=outbox.PLAN, stale_after=NOW + day / 2)
    for minute in range(24 * 60):
        post.clock.move_to(NOW + timedelta(minutes=minute))
        most_at_once = max(most_at_once, await post.delivery.deliver_once())
    assert most_at_once <= delivery.MOST_CLAIMED
    assert tries < 2 * 24 * 60  # one at a time finds out whether the service is back
    post.clock.move_to(down)
    for second in range(60):
        post.clock.move_to(down + timedelta(seconds=second))
        await post.rounds(3)
    took = [text for _, text in post.phone.took]
    assert took[0] == "alert"
    assert not [text for text in took if "plan" in text.split()[0] or text.startswith("yesterday")]
    kinds = [text.split()[0] for text in took if text.split()[0] in ("reply", "summary")]
    assert kinds == sorted(kinds)
    assert len(kinds) == 80
    assert [text for who, text in post.phone.took if who == "tomas"] == [took_old(took)]
    assert post.owed() is None


def took_old(texts):
    """The one sentence that says that older messages were dropped."""
    (said,) = {text for text in texts if "too old" in text}
    return said


async def test_one_chat_that_always_fails_is_no_outage(post):
    post.phone.trouble["mira"] = [Later()] * 9
    post.owe("mira", "m")
    for minute in range(9):
        post.clock.move_to(NOW + timedelta(minutes=10 * minute))
        await post.delivery.deliver_once()
    assert not post.delivery._outage.on


async def test_what_was_sent_is_marked_though_the_database_was_away_for_a_while(post, monkeypatch):
    monkeypatch.setattr(delivery, "TROUBLE_S", 0.01)
    real, away = post.delivery._mark, iter([True, True, False])

    def mark(batch):
        if next(away):
            raise OperationalError("update", {}, Exception("away"))
        real(batch)

    monkeypatch.setattr(post.delivery, "_mark", mark)
    post.owe("mira", "m")
    await post.delivery.deliver_once()
    assert post.owed() is None
    assert len(post.phone.took) == 1


async def test_an_outcome_that_the_database_will_not_take_holds_up_no_other(post, monkeypatch):
    def refused(*_):
        raise OperationalError("update", {}, ProgramLimitExceeded("made here"))

    post.owe("mira", "m")
    post.owe("tomas", "t")
    real = outbox.mark_sent
    monkeypatch.setattr(outbox, "mark_sent", lambda tx, row, *more: refused() if row == 1 else real(tx, row, *more))
    await post.delivery.deliver_once()
    monkeypatch.undo()
    with post.store.reading() as tx:
        rows = {one.address: (one.sent_at, one.attempts) for one in outbox.posted_since(tx, 0, "c1", 2)}
    assert rows["mira"] == (None, 1)
    assert sorted(post.phone.took) == [("mira", "m"), ("tomas", "t")]


async def test_an_outcome_that_met_another_in_the_database_is_noted_at_once(post, monkeypatch):
    real, meetings = outbox.mark_sent, iter([True, False])

    def meets(tx, row, *more):
        real(tx, row, *more)
        if next(meetings):
            raise OperationalError("update", {}, DeadlockDetected("made here"))

    monkeypatch.setattr(outbox, "mark_sent", meets)
    post.owe("mira", "m")
    await post.delivery.deliver_once()
    assert post.owed() is None


async def test_what_cannot_be_noted_is_not_sent_for_ever_and_the_rest_is_noted(post, monkeypatch):
    def broken(*_):
        raise RuntimeError("cannot be noted")

    post.owe("mira", "m", importance=outbox.ALERT)
    post.owe("tomas", "t")
    real = outbox.mark_sent
    monkeypatch.setattr(outbox, "mark_sent", lambda tx, row, *more: broken() if row == 1 else real(tx, row, *more))
    gaps = []
    while post.owed() is not None and len(gaps) < 20:
        await post.delivery.deliver_once()
        gaps.append(((post.owed() or post.clock.now()) - post.clock.now()).total_seconds())
        post.clock.move_to(post.owed() or post.clock.now())
    assert gaps == [2, 4, 8, 16, 0]
    assert [text for _, text in post.phone.took] == ["m", "t", "m", "m", "m", "m"]


async def test_each_send_ends_with_its_own_mark_however_many_follow(post):
    noted, others = [], []

    async def slowly(work):
        await asyncio.sleep(0.01)
        return work()

    post.delivery._in_thread = slowly

    def settle(number):
        outcome = delivery.Outcome(Outgoing(id=number), lambda tx, now: noted.append(number))
        return asyncio.create_task(post.delivery._settle(outcome))

    first = settle(0)
    for number in range(1, 30):
        others.append(settle(number))
        await asyncio.sleep(0.002)
        if first.done():
            break
    assert first.done()
    assert not others[-1].done()
    await asyncio.gather(*others)
    assert noted == list(range(len(others) + 1))


async def test_on_stopping_what_is_being_sent_is_finished_and_the_rest_let_go(post):
    sending, goes_on = asyncio.Event(), asyncio.Event()
    real = post.phone.send

    async def send(message):
        sending.set()
        await goes_on.wait()
        return await real(message)

    post.phone.send = send
    post.delivery = delivery.Delivery(post.store, post.phone, post.clock, 2, post._here)
    post.owe("mira", "m")
    post.owe("tomas", "t")
    post.delivery._gap = timedelta(seconds=0.4)  # two moments, the second still ahead
    await post.delivery._begin()
    await sending.wait()
    asyncio.get_running_loop().call_later(0.05, goes_on.set)
    await post.delivery.finish(5)
    assert post.phone.took == [("mira", "m")]
    with post.store.transaction() as tx:
        assert [one.address for one in outbox.claim(tx, NOW, 10, "phone")] == ["tomas"]


async def test_a_send_without_an_answer_on_stopping_is_tried_again_later(post):
    async def send(message):
        await asyncio.sleep(60)

    post.phone.send = send
    post.owe("mira", "m")
    await post.delivery._begin()
    await asyncio.sleep(0.05)
    await post.delivery.finish(0.05)
    assert post.owed() == NOW + timedelta(seconds=delivery.AFTER_CUT_S)


async def test_a_claim_that_could_run_out_during_the_send_is_not_used(post):
    post.owe("mira", "m")
    turns, _ = post.delivery._claim()
    until = turns[0].message.claimed_until
    post.clock.move_to(until - timedelta(seconds=5))
    await post.delivery._deliver(turns[0])
    assert post.phone.took == []
    post.clock.move_to(until)
    await post.rounds()
    assert post.phone.took == [("mira", "m")]
