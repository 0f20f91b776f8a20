from datetime import UTC, datetime, timedelta

import pytest
from telegram import Bot
from telegram.error import BadRequest, ChatMigrated, Forbidden, InvalidToken, NetworkError, RetryAfter, TimedOut

from bot.channels.channel import Gone, Later, Moved, Refused
from bot.channels.telegram import LONGEST_TEXT, Telegram, make_bot, parse, split, to_incoming
from storage.outbox import Outgoing

NOW = datetime(2027, 1, 4, 7, tzinfo=UTC)
MESSAGE = Outgoing(channel="telegram", address="5000000001", to="mira", text="hello", cause="c", due_at=NOW)


class Line:
    """Stands where the bot does and fails in one way."""

    def __init__(self, error):
        self.error = error

    async def send_message(self, *_args, **_more):
        raise self.error


@pytest.mark.parametrize(
    ("error", "becomes"),
    [
        (RetryAfter(7), Later),
        (RetryAfter(timedelta(seconds=7)), Later),
        (ChatMigrated(-100), Moved),
        (Forbidden("bot was blocked by the user"), Gone),
        (BadRequest("Chat not found"), Gone),
        (BadRequest("can't parse entities"), Refused),  # a NetworkError by inheritance, and yet no reason to retry
        (TimedOut(), Later),
        (NetworkError("Bad Gateway"), Later),
        (InvalidToken(), Later),  # our own fault: nobody is gone
    ],
)
async def test_each_trouble_of_the_service_is_named_for_what_is_to_be_done(error, becomes):
    with pytest.raises(becomes):
        await Telegram(Line(error)).send(MESSAGE)


async def test_the_wait_that_the_service_asked_for_is_handed_on():
    with pytest.raises(Later) as caught:
        await Telegram(Line(RetryAfter(7))).send(MESSAGE)
    assert caught.value.seconds == 7


@pytest.mark.parametrize(
    "text",
    ["short", "line\n" * 2000, "x" * 10_000, "🙂" * 5000, "a\n" + "🙂é" * 4000 + "\nb", "\n\n\n", ""],
    ids=["short", "lines", "one line", "wide", "mixed", "blank", "empty"],
)
def test_long_texts_are_cut_into_parts_that_the_service_takes(text):
    parts = split(text)
    assert all(0 < len(part.encode("utf-16-le")) // 2 <= LONGEST_TEXT for part in parts)
    if text.strip():
        assert "".join(parts).replace("\n", "") == text.replace("\n", "")


@pytest.mark.parametrize(
    "data", [None, [], {}, "x", {"update_id": "1"}, {"update_id": 1, "message": 5}, {"update_id": 1}]
)
def test_junk_is_no_update_or_one_that_says_nothing(data):
    bot = Bot("7000000001:not-a-real-token-only-for-tests")
    update = parse(data, bot)
    assert update is None or to_incoming(update, NOW) is None


def _update(bot, **content):
    return parse({"update_id": 9, **content}, bot)


def _message(**content):
    chat = {"id": 5_000_000_001, "type": "private"}
    return {
        "message_id": 1,
        "date": 1_800_000_000,
        "chat": chat,
        "from": {"id": 1, "is_bot": False, "first_name": "M"},
    } | content


def test_a_message_keeps_its_words_its_hour_and_its_number():
    bot = make_bot("7000000001:not-a-real-token-only-for-tests", "http://127.0.0.1:9")
    said = to_incoming(_update(bot, message=_message(text="hi")), NOW)
    assert (said.update_key, said.address, said.kind, said.text) == ("9", "5000000001", "text", "hi")
    assert said.sent_at == datetime.fromtimestamp(1_800_000_000, UTC)


def test_what_is_said_in_a_group_is_not_taken():
    bot = make_bot("7000000001:not-a-real-token-only-for-tests", "http://127.0.0.1:9")
    group = _message(text="hi") | {"chat": {"id": -5, "type": "group", "title": "g"}}
    assert to_incoming(_update(bot, message=group), NOW) is None


def test_the_token_goes_to_the_server_that_was_named():
    bot = make_bot("7000000001:not-a-real-token-only-for-tests", "http://127.0.0.1:9000")
    assert bot.base_url == "http://127.0.0.1:9000/bot7000000001:not-a-real-token-only-for-tests"


@pytest.mark.parametrize("data", [7, 10**30, [], {}])
def test_a_press_whose_data_is_no_text_is_nothing_and_holds_up_nobody(data):
    message = {"message_id": 1, "date": 1_800_000_000, "chat": {"id": 5, "type": "private"}}
    who = {"id": 5, "is_bot": False, "first_name": "P"}
    press = {"id": "1", "from": who, "chat_instance": "1", "data": data, "message": message}
    update = parse({"update_id": 1, "callback_query": press}, Bot("7000000001:not-a-real-token-only-for-tests"))
    said = None if update is None else to_incoming(update, NOW)
    assert said is None or isinstance(said.data["data"], str)


def test_what_no_database_keeps_is_taken_out_of_a_text():
    message = {"message_id": 1, "date": 1_800_000_000, "chat": {"id": 5, "type": "private"}, "text": "a\0b\ud83dc"}
    update = parse({"update_id": 1, "message": message}, Bot("7000000001:not-a-real-token-only-for-tests"))
    assert to_incoming(update, NOW).text == "ab?c"
