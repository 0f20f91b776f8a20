"""The door: only who knows the secret is let in, and what is no update changes nothing."""

import json
from types import SimpleNamespace

import httpx
import pytest

from bot import web
from bot.channels.telegram import make_bot
from bot.settings import Settings

REFUSED = (401, 403, 404)
SECRET = "door-secret-of-this-test"
UPDATE = {
    "update_id": 5,
    "message": {
        "message_id": 1,
        "date": 1_800_000_000,
        "chat": {"id": 42, "type": "private"},
        "from": {"id": 42, "is_bot": False, "first_name": "M"},
        "text": "pull-ups 5x3 +20",
    },
}


class Door:
    """The application with a service that only remembers what it was handed."""

    def __init__(self, secret: str | None) -> None:
        self.taken: list[object] = []
        settings = Settings(
            telegram_token="7:t",
            webhook_url="https://bot.example",
            webhook_secret=secret,
            listen="127.0.0.1:1",
        )

        async def accept(updates):
            self.taken += updates

        service = SimpleNamespace(settings=settings, bot=make_bot("7:t", "http://127.0.0.1:1"), accept=accept)
        self.client = httpx.AsyncClient(
            transport=httpx.ASGITransport(web.application(service)), base_url="http://bot.example"
        )

    async def knocks(self, body: bytes, **headers: str) -> int:
        return (await self.client.post(web.WEBHOOK_PATH, content=body, headers=headers)).status_code


async def test_an_update_with_the_secret_is_taken():
    door = Door(SECRET)
    assert await door.knocks(json.dumps(UPDATE).encode(), **{web.SECRET_HEADER: SECRET}) == 200
    assert len(door.taken) == 1


@pytest.mark.parametrize(
    "headers",
    [
        {},
        {web.SECRET_HEADER: ""},
        {web.SECRET_HEADER: "another"},
        {web.SECRET_HEADER: SECRET[:-1]},
        {web.SECRET_HEADER: SECRET + "x"},
        {web.SECRET_HEADER: SECRET.upper()},
        {"authorization": SECRET},
    ],
)
async def test_without_the_secret_nothing_is_taken_and_nothing_is_told(headers):
    door = Door(SECRET)
    assert await door.knocks(json.dumps(UPDATE).encode(), **headers) in REFUSED
    assert door.taken == []


async def test_a_service_without_a_secret_takes_nothing():
    door = Door(None)
    assert await door.knocks(json.dumps(UPDATE).encode(), **{web.SECRET_HEADER: ""}) in REFUSED
    assert door.taken == []


@pytest.mark.parametrize("body", [b"", b"{", b"[" * 100_000, b"\xff\xfe"])
async def test_what_is_no_json_is_let_go(body):
    door = Door(SECRET)
    assert await door.knocks(body, **{web.SECRET_HEADER: SECRET}) < 500
    assert door.taken == []


async def test_more_than_any_update_is_not_read_to_its_end():
    door = Door(SECRET)
    assert await door.knocks(b" " * (web.LONGEST_BODY + 1), **{web.SECRET_HEADER: SECRET}) < 500
    assert door.taken == []


@pytest.mark.parametrize("path", ["/", "/docs", "/openapi.json", "/telegram/", "/../etc/passwd"])
async def test_there_is_nothing_else_behind_the_door(path):
    assert (await Door(SECRET).client.get(path)).status_code in (307, 404, 405)


def test_the_secret_hides_in_the_settings():
    assert SECRET not in repr(Settings(webhook_secret=SECRET, telegram_token="7:t"))
