"""Each coach their own athletes, each athlete their own chat; forged, foreign and repeated presses change nothing."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta

import pytest
import structlog

from bot import joining, worker
from planner import facts as f
from storage import chats, facts, inbox, invites, notes, outbox, persons
from storage.inbox import IncomingUpdate
from storage.persons import Who
from storage.records import record
from storage.roster import Roster, RosterCoach
from storage.store import Store
from tests.bot.conversation.conftest import athlete

NOW = datetime(2027, 1, 4, 9, tzinfo=UTC)
# Everything a coach can say or press about somebody; {id} and {name} are an athlete of another coach.
ORDERS = (
    "{name}", "roster {name}", "{name} 4x3 at 17.5 on thursday", "{name} lock 17.5", "{name} hold rung 3 weeks",
    "unlock {name}", "approve {name}", "restart {name}", "seen {name}", "pause {name}", "resume {name}", "why {name}",
    "week {name}", "tell {name}: hello there", "{name} note: secret", "invite {name}", "exclude dips {name}",
    "what if {name} rests a week",
)  # fmt: skip
PRESSES = ("a:{id}", "a:{id}:archer_elbow_full", "h:{id}", "s:{id}", "v:{id}", "v:{id}:1", "r:{id}")


class Two:
    """Two coaches on one bot, each with a handle of the same name among theirs, and one of their own."""

    def __init__(self) -> None:
        self.store = Store.open("sqlite://")
        self.ids: dict[str, int] = {}
        self._key = 0
        with self.store.transaction() as tx:
            for name, handles in (("Inês", ("mira", "anna")), ("Rui", ("mira", "zoltan"))):
                coach = RosterCoach(name, "Europe/Lisbon", summary_day=6, summary_at=time(18))
                joining.load(tx, Roster(coach, tuple(athlete(handle) for handle in handles)), NOW)
            for row in persons.all_coaches(tx):
                chats.bind_chat(tx, "phone", row.name, Who("coach", row.id), NOW)
                for one in persons.athletes_of(tx, row.id):
                    self.ids[f"{one.handle} of {row.name}"] = one.id
                    chats.bind_chat(tx, "phone", f"{one.handle} of {row.name}", Who("athlete", one.id), NOW)

    def hears(self, address: str, text: str = "", press: str | None = None, now: datetime = NOW) -> list[str]:
        """What goes to any address because of one message: "address: text"."""
        self._key += 1
        kind, data = ("text", {}) if press is None else ("press", {"data": press})
        with self.store.transaction() as tx:
            inbox.accept(tx, [IncomingUpdate("phone", str(self._key), address, kind, text, now, data)], now)
        worker.handle_all(self.store, now)
        said: list[str] = []
        with self.store.transaction() as tx:
            while found := outbox.claim(tx, now, 500):
                said += [f"{one.address}: {one.text}" for one in found]
                for one in found:
                    outbox.mark_sent(tx, one.id, now)
        return said

    def facts_of(self, whom: str) -> object:
        with self.store.reading() as tx:
            who = self.ids[whom]
            return (record(tx, who), notes.notes_of(tx, who))


@pytest.fixture
def two():
    made = Two()
    yield made
    made.store.close()


@pytest.mark.parametrize("order", ORDERS)
def test_no_words_of_a_coach_reach_another_coachs_athlete(two, order):
    before = two.facts_of("zoltan of Rui")
    said = two.hears("Inês", order.format(name="zoltan"))
    assert two.facts_of("zoltan of Rui") == before
    assert all(one.startswith("Inês: ") for one in said)
    assert not any("Zoltan" in one for one in said)


@pytest.mark.parametrize("press", PRESSES)
def test_no_press_of_a_coach_reaches_another_coachs_athlete_and_it_is_noted(two, press):
    foreign = two.ids["zoltan of Rui"]
    before = two.facts_of("zoltan of Rui")
    with structlog.testing.capture_logs() as logged:
        said = two.hears("Inês", press=press.format(id=foreign))
    assert two.facts_of("zoltan of Rui") == before
    assert len(said) == 1
    assert "Zoltan" not in said[0]
    assert [one["event"] for one in logged] == ["press refused"]
    assert press.format(id=foreign) not in repr(logged)


def test_the_same_handle_with_two_coaches_is_two_people(two):
    two.hears("Inês", "mira note: hers")
    two.hears("Rui", "mira 4x3 at 17.5")
    with two.store.reading() as tx:
        assert [row.text for row in notes.notes_of(tx, two.ids["mira of Inês"])] == ["hers"]
        assert notes.notes_of(tx, two.ids["mira of Rui"]) == []
        assert record(tx, two.ids["mira of Inês"]).orders == ()
        assert len(record(tx, two.ids["mira of Rui"]).orders) == 1


@pytest.mark.parametrize("question", ["roster", "summary", "rungs", "help"])
def test_what_a_coach_is_shown_of_everyone_is_of_their_own(two, question):
    said = "\n".join(two.hears("Inês", question))
    assert "zoltan" not in said.casefold()
    assert "Rui" not in said


@pytest.mark.parametrize("text", ["roster", "summary", "anna", "tell anna: hi", "anna 4x3 at 100", "approve anna"])
def test_an_athlete_has_no_words_of_a_coach(two, text):
    before = two.facts_of("anna of Inês")
    said = two.hears("mira of Inês", text)
    assert two.facts_of("anna of Inês") == before
    assert not any(one.startswith("anna") for one in said)


@pytest.mark.parametrize("press", [*PRESSES, "", "x", "t", "x:erased", "q:1", "\u0000", "a:" + "9" * 60])
def test_a_coachs_button_in_an_athletes_hands_decides_nothing(two, press):
    mine = two.ids["mira of Inês"]
    before = two.facts_of("mira of Inês")
    with structlog.testing.capture_logs() as logged:
        said = two.hears("mira of Inês", press=press.format(id=mine))
    assert two.facts_of("mira of Inês") == before
    assert len(said) == 1
    assert "press refused" in [one["event"] for one in logged]


@pytest.mark.parametrize("press", ["x:erase", "x:keep"])
def test_a_forged_press_erases_nobody(two, press):
    said = two.hears("mira of Inês", press=press)
    assert len(said) == 1
    with two.store.reading() as tx:
        assert not persons.athlete(tx, two.ids["mira of Inês"]).silenced


@pytest.mark.parametrize("press", [*PRESSES, "t:5", "x:erase", ""])
def test_a_press_from_a_chat_that_nobody_joined_from_changes_nothing(two, press):
    """A button that was passed on: its chat is not the one it was sent to."""
    before = [two.facts_of(whom) for whom in two.ids]
    said = two.hears("somewhere", press=press.format(id=two.ids["mira of Inês"]))
    assert [two.facts_of(whom) for whom in two.ids] == before
    assert all(one.startswith("somewhere: ") and "Mira" not in one for one in said)


def test_an_old_restart_button_restarts_once(two):
    mine = two.ids["mira of Inês"]
    two.hears("mira of Inês", "my fingers are numb and tingling since the session")
    two.hears("Inês", press=f"r:{mine}")
    with two.store.reading() as tx:
        assert [one.kind for one in record(tx, mine).orders] == ["restart"]
    two.hears("Inês", press=f"r:{mine}")
    two.hears("Inês", press=f"r:{mine}", now=NOW + timedelta(days=20))
    with two.store.reading() as tx:
        assert [one.kind for one in record(tx, mine).orders] == ["restart"]


def test_a_press_delivered_twice_counts_once(two):
    with two.store.transaction() as tx:
        update = IncomingUpdate("phone", "same", "Inês", "press", "", NOW, {"data": f"s:{two.ids['mira of Inês']}"})
        assert inbox.accept(tx, [update], NOW) == 1
        assert inbox.accept(tx, [update], NOW) == 0


# ---- codes ----------------------------------------------------------------------------------------------------------


def test_codes_have_more_than_128_random_bits_and_never_repeat(two):
    with two.store.transaction() as tx:
        codes = [invites.new_invite(tx, Who("athlete", 1), NOW) for _ in range(200)]
    assert len(set(codes)) == 200
    # 32 of 64 characters are 192 bits; every character occurs, so none is fixed.
    assert {len(code) for code in codes} == {32}
    assert len(set("".join(codes))) == 64


def test_after_ten_wrong_codes_the_right_one_waits_a_day_too(two):
    with two.store.transaction() as tx:
        code = invites.new_invite(tx, Who("athlete", two.ids["anna of Inês"]), NOW)
    for number in range(10):
        two.hears("guesser", f"/start {number:032}")
    two.hears("guesser", f"/start {code}")
    with two.store.reading() as tx:
        assert chats.who_at(tx, "phone", "guesser") is None
    two.hears("guesser", f"/start {code}", now=NOW + timedelta(days=1, seconds=1))
    with two.store.reading() as tx:
        assert chats.who_at(tx, "phone", "guesser") == Who("athlete", two.ids["anna of Inês"])


def test_an_expired_code_counts_as_a_try(two):
    with two.store.transaction() as tx:
        code = invites.new_invite(tx, Who("athlete", two.ids["anna of Inês"]), NOW)
    later = NOW + invites.VALID_FOR
    with two.store.transaction() as tx:
        for _ in range(invites.TRIES_A_DAY):
            assert invites.redeem(tx, code, "phone", "late", later) is None
        fresh = invites.new_invite(tx, Who("athlete", two.ids["anna of Inês"]), later)
        assert invites.redeem(tx, fresh, "phone", "late", later) is None


def test_a_code_of_one_coach_binds_to_nobody_of_the_other(two):
    with two.store.transaction() as tx:
        code = invites.new_invite(tx, Who("athlete", two.ids["zoltan of Rui"]), NOW)
    two.hears("new phone", f"/start {code}")
    said = two.hears("new phone", "help")
    assert said
    with two.store.reading() as tx:
        assert chats.who_at(tx, "phone", "new phone") == Who("athlete", two.ids["zoltan of Rui"])


def test_the_export_of_one_has_nothing_of_another(two):
    for whom in two.ids:
        two.hears(whom, f"bodyweight 61.4, word-of-{whom.split()[0]}")
    with two.store.transaction() as tx:
        facts.add(tx, two.ids["zoltan of Rui"], f.Bodyweight(date(2027, 1, 4), 99.25), "athlete", NOW, None)
    from storage import export

    with two.store.reading() as tx:
        given = export.files(tx, two.ids["anna of Inês"])["everything.json"].decode()
    assert "zoltan" not in given.casefold()
    assert "99.25" not in given
    assert "mira" not in given.casefold()
