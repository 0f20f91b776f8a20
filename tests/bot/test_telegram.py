import asyncio
from datetime import UTC, datetime, timedelta
from types import SimpleNamespace

import pytest
from telegram.error import BadRequest, ChatMigrated, Forbidden, InvalidToken, NetworkError, RetryAfter, TimedOut

from bot.channels.channel import Gone, Later, Moved, Refused
from bot.channels.telegram import (
    LONGEST_TEXT,
    Receiver,
    Telegram,
    Unreadable,
    make_bot,
    number_of,
    split,
    to_incoming,
)
from storage.outbox import Outgoing
from tests.bot_api_server import BotApiServer

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
    assert (caught.value.seconds, caught.value.everyone) == (7, True)


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
    "data",
    [None, [], {}, "x", {"update_id": "1"}, {"update_id": True}, {"update_id": 1, "message": 5}],
    ids=repr,
)
def test_what_is_no_update_is_called_unreadable(data):
    with pytest.raises(Unreadable):
        to_incoming(data, NOW)


@pytest.mark.parametrize("data", [{"update_id": 1}, {"update_id": 1, "poll": {}}, {"update_id": 1, "x": 5}])
def test_a_kind_that_we_did_not_ask_for_says_nothing(data):
    assert to_incoming(data, NOW) is None


def _message(**content):
    chat = {"id": 5_000_000_001, "type": "private"}
    return {
        "message_id": 1,
        "date": 1_800_000_000,
        "chat": chat,
        "from": {"id": 1, "is_bot": False, "first_name": "M"},
    } | content


def test_a_message_keeps_its_words_its_hour_and_its_number():
    said = to_incoming({"update_id": 9, "message": _message(text="hi")}, NOW)
    assert (said.update_key, said.address, said.kind, said.text) == ("9", "5000000001", "text", "hi")
    assert said.sent_at == datetime.fromtimestamp(1_800_000_000, UTC)


@pytest.mark.parametrize("kind", ["video", "video_note", "animation"])
def test_a_clip_is_kept_by_the_services_id_of_it(kind):
    said = to_incoming({"update_id": 9, "message": _message(caption="top set", **{kind: {"file_id": "f1"}})}, NOW)
    assert (said.kind, said.text, said.data) == ("clip", "top set", {"media": "f1"})


def test_an_edit_says_which_message_and_not_what():
    said = to_incoming({"update_id": 9, "edited_message": _message(text="pull-ups 5x3 +22.5", edit_date=1)}, NOW)
    assert (said.kind, said.text, said.data, said.sent_at) == ("edit", "", {"message": 1}, NOW)


@pytest.mark.parametrize("content", [{"location": {}}, {"text": "hi", "chat": {"id": -5, "type": "group"}}], ids=repr)
def test_a_place_that_moves_on_and_an_edit_in_a_group_say_nothing(content):
    assert to_incoming({"update_id": 9, "edited_message": _message(**content)}, NOW) is None


@pytest.mark.parametrize("presser", [{"id": 5_000_000_002}, {"id": "5000000001"}, {}, None])
def test_a_button_that_somebody_else_pressed_is_set_aside(presser):
    press = {"id": "1", "data": "t:5", "message": _message(), "from": presser}
    with pytest.raises(Unreadable):
        to_incoming({"update_id": 1, "callback_query": press}, NOW)


def test_a_button_that_its_owner_pressed_is_taken():
    press = {"id": "1", "data": "t:5", "message": _message(), "from": {"id": 5_000_000_001}}
    assert to_incoming({"update_id": 1, "callback_query": press}, NOW).data == {"data": "t:5"}


def test_what_is_said_in_a_group_is_not_taken():
    group = _message(text="hi") | {"chat": {"id": -5, "type": "group", "title": "g"}}
    assert to_incoming({"update_id": 9, "message": group}, NOW) is None


@pytest.mark.parametrize(
    "wrong",
    [
        {"text": 7},
        {"date": "yesterday"},
        {"date": 10**30},
        {"chat": {"id": "5", "type": "private"}},
        {"chat": {"id": 10**30, "type": "private"}},
        {"chat": None},
        {"video": {"file_id": None}},
    ],
    ids=repr,
)
def test_a_field_of_the_wrong_kind_makes_an_update_unreadable_and_nothing_worse(wrong):
    with pytest.raises(Unreadable):
        to_incoming({"update_id": 9, "message": _message(text="hi") | wrong}, NOW)


def test_the_token_goes_to_the_server_that_was_named():
    bot = make_bot("7000000001:not-a-real-token-only-for-tests", "http://127.0.0.1:9000")
    assert bot.base_url == "http://127.0.0.1:9000/bot7000000001:not-a-real-token-only-for-tests"


@pytest.mark.parametrize("data", [7, 10**30, [], {}])
def test_a_press_whose_data_is_no_text_is_unreadable(data):
    with pytest.raises(Unreadable):
        to_incoming({"update_id": 1, "callback_query": {"id": "1", "data": data, "message": _message()}}, NOW)


def test_what_no_database_keeps_is_taken_out_of_a_text():
    assert to_incoming({"update_id": 1, "message": _message(text="a\0b\ud83dc")}, NOW).text == "ab?c"


def test_each_part_of_a_long_text_counts_as_a_call():
    channel = Telegram(None)
    assert channel.calls(MESSAGE) == 1
    assert channel.calls(MESSAGE.model_copy(update={"text": "line\n" * 2000, "media": "f1"})) == 4


async def test_each_call_sends_the_part_that_comes_after_those_that_were_taken():
    class Phone:
        def __init__(self):
            self.took = []

        async def send_video(self, chat, media):
            self.took.append((chat, media, None))
            return SimpleNamespace(message_id=len(self.took))

        async def send_message(self, chat, text, reply_markup):
            self.took.append((chat, text, reply_markup and reply_markup.inline_keyboard[0][0].text))
            return SimpleNamespace(message_id=len(self.took))

    channel = Telegram(phone := Phone())
    long = MESSAGE.model_copy(update={"text": f"{'a' * 3000}\n{'b' * 3000}", "media": "f1", "buttons": [["OK", "t:1"]]})
    for part in range(channel.calls(long)):
        sent = await channel.send(long.model_copy(update={"parts_sent": part}))
        assert sent == str(part + 1)
    who = 5_000_000_001
    assert phone.took == [(who, "f1", None), (who, "a" * 3000, None), (who, "b" * 3000, "OK")]


async def test_a_clip_that_the_service_does_not_know_any_more_is_refused_alone():
    class Phone:
        async def send_video(self, *_):
            raise BadRequest("Wrong file identifier/http url specified")

        async def send_message(self, *_, **_more):
            raise BadRequest("Message text is empty")

    channel, clip = Telegram(Phone()), MESSAGE.model_copy(update={"media": "f1"})
    refused = []
    for parts in (0, 1):
        with pytest.raises(Refused) as found:
            await channel.send(clip.model_copy(update={"parts_sent": parts}))
        refused.append(found.value.clip)
    assert refused == [True, False]


async def test_a_message_that_became_shorter_meanwhile_ends_with_its_last_part():
    class Phone:
        async def send_message(self, _chat, text, **_more):
            self.said = text
            return SimpleNamespace(message_id=1)

    phone = Phone()
    await Telegram(phone).send(MESSAGE.model_copy(update={"parts_sent": 2}))
    assert phone.said == "hello"


async def test_updates_of_which_none_can_be_confirmed_are_not_fetched_again_at_once():
    class NoNumbers:
        asked = 0

        async def do_api_request(self, *_args, **_more):
            self.asked += 1
            return [{"message": {}}]

    bot = NoNumbers()
    batches = Receiver(bot).batches()
    assert await anext(batches) == [{"message": {}}]
    with pytest.raises(NetworkError):
        await anext(batches)
    assert bot.asked == 1


async def test_an_update_that_cannot_be_read_is_passed_on_and_polling_goes_on():
    api = BotApiServer()
    bot = make_bot(api.token, await api.start())
    await bot.initialize()
    good = api.says(1, "hi")
    api.delivers_again(good + 1, {"message": {"date": "never"}})
    api.delivers_again(good + 2, {"message": 5})
    batches = Receiver(bot).batches()
    first = await anext(batches)
    assert [number_of(update) for update in first] == [good, good + 1, good + 2]
    later = asyncio.create_task(anext(batches))
    await asyncio.sleep(0.1)
    assert api.waiting() == []
    api.delivers_again(good + 3, {"message": {}})
    assert [number_of(update) for update in await later] == [good + 3]
    await bot.shutdown()
    await api.stop()
