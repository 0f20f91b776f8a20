import asyncio
from datetime import UTC, datetime, timedelta

import pytest

from bot import delivery
from bot.channels.channel import Gone, Later, Moved, Refused
from bot.clock import VirtualClock
from bot.roster import parse_roster
from storage import chats, outbox, persons
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
            values = {"importance": outbox.REPLY, "due_at": NOW} | more
            outbox.post(
                tx, Outgoing(channel="phone", address=address, to=address, text=text, cause=f"c{self._count}", **values)
            )

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


async def test_a_chat_takes_a_short_burst_and_then_one_a_second(post):
    for number in range(5):
        post.owe("mira", f"m{number}")
    await post.rounds()
    assert len(post.phone.took) == int(delivery.CHAT_BURST)
    pace = delivery.ChatPace()
    waits = [pace.wait_s("mira", at) for at in (0.0, 0.0, 0.0, 0.0, 0.5, 1.0, 1.0)]
    assert waits == [0, 0, 0, 1.0, 0.5, 0, 1.0]


async def test_what_the_service_wants_later_waits_as_long_and_holds_up_no_other_chat(post):
    post.phone.trouble["mira"] = [Later(30)]
    post.delivery._pace.pause = lambda seconds: None  # the pause of all is tried below
    post.owe("mira", "m")
    post.owe("tomas", "t")
    await post.rounds()
    assert post.phone.took == [("tomas", "t")]
    assert post.owed() == NOW + timedelta(seconds=30)
    post.clock.move_to(NOW + timedelta(seconds=30))
    await post.rounds()
    assert post.phone.took[-1] == ("mira", "m")


async def test_a_service_that_asks_for_a_pause_is_left_alone_by_all():
    pace = delivery.Pace(1000)
    pace.pause(0.2)
    loop = asyncio.get_running_loop()
    started = loop.time()
    await pace.wait()
    assert loop.time() - started >= 0.19


async def test_the_pace_is_kept_whoever_asks():
    pace = delivery.Pace(100)
    loop = asyncio.get_running_loop()
    started = loop.time()
    await asyncio.gather(*(pace.wait() for _ in range(21)))
    assert loop.time() - started >= 0.19


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


async def test_a_chat_that_moved_is_followed(post):
    post.phone.trouble["mira"] = [Moved("elsewhere")]
    post.owe("mira", "m")
    await post.rounds()
    assert post.phone.took == [("elsewhere", "m")]


async def test_what_is_stale_is_dropped(post):
    post.owe("mira", "yesterday", stale_after=NOW - timedelta(hours=1))
    post.owe("mira", "today", stale_after=NOW + timedelta(hours=1))
    await post.rounds()
    assert post.phone.took == [("mira", "today")]


async def test_what_nobody_could_send_for_a_day_and_a_half_is_given_up(post):
    post.phone.trouble["mira"] = [Later(1)]
    post.owe("mira", "m", due_at=NOW - delivery.LONGEST_OWED - timedelta(minutes=1))
    await post.rounds()
    assert post.owed() is None


async def test_a_claim_that_could_run_out_during_the_send_is_not_used(post):
    post.owe("mira", "m")
    with post.store.transaction() as tx:
        claimed = outbox.claim(tx, NOW, 10, "phone")
    post.clock.move_to(claimed[0].claimed_until - timedelta(seconds=5))
    await post.delivery._deliver(claimed[0])
    assert post.phone.took == []
    post.clock.move_to(claimed[0].claimed_until)
    await post.rounds()
    assert post.phone.took == [("mira", "m")]
