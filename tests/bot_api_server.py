"""A strict Bot API server on loopback: the other end of the Telegram journeys.

It keeps the limits of the service, forgets updates only when an offset or a webhook's answer confirms them (or they
are a day old), records what it accepted, and can refuse, drop the line, or accept and then fall silent, on purpose.
"""

from __future__ import annotations

import asyncio
import contextlib
import json
import re
import time
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any, Literal
from urllib.parse import urlsplit

from tests.bot_api import limits
from tests.bot_api.http import Answer, Drop, HttpServer, Request
from tests.bot_api.pushing import Pusher

UPDATE_LIVES_S = 24 * 3600
PRESS_LIVES_S = 150
BOT_ID = 7_000_000_001


@dataclass(frozen=True)
class Accepted:
    """A message that the service took."""

    chat: int
    text: str
    buttons: list[tuple[str, str]]
    message_id: int
    picture: bytes | None = None


@dataclass
class Trouble:
    """What goes wrong with the next `times` calls of `method` (for `chat`, if named).

    refuse: answer `status` and do nothing. drop: close the line and do nothing. accept_and_drop: do it, then close the
    line. accept_and_sleep: do it, then answer after `seconds`.
    """

    how: Literal["refuse", "drop", "accept_and_drop", "accept_and_sleep"]
    method: str = "sendMessage"
    chat: int | None = None
    times: int = 1
    status: int = 500
    description: str = "Internal Server Error"
    retry_after: int | None = None
    seconds: float = 0.0


@dataclass
class BotApiServer:
    token: str = "7000000001:not-a-real-token-only-for-tests"
    now: Callable[[], float] = time.time
    keep_rates: bool = True
    accepted: list[Accepted] = field(default_factory=list)
    calls: list[tuple[str, dict[str, str]]] = field(default_factory=list)
    refused: list[tuple[str, int, str]] = field(default_factory=list)
    troubles: list[Trouble] = field(default_factory=list)
    blocked_by: set[int] = field(default_factory=set)
    known_chats: set[int] = field(default_factory=set)
    answered_presses: list[str] = field(default_factory=list)
    commands: list[dict[str, str]] = field(default_factory=list)
    webhook: str = ""
    unanswered: list[Accepted] = field(default_factory=list)  # taken, but the line broke before we could say so
    replicas: list[str] = field(default_factory=list)  # the roots that the webhook's public address leads to

    def __post_init__(self) -> None:
        self._http = HttpServer(self._serve)
        self._rates = limits.Rates()
        self._updates: list[tuple[float, dict[str, Any]]] = []
        self._said: list[dict[str, Any]] = []  # messages, kept for edits of them
        self._kinds: list[str] = []  # which updates are wanted; none named: all
        self._next_update = 500_000_000
        self._next_message = 1
        self._arrived = asyncio.Event()
        self._poll = 0
        self._presses: dict[str, float] = {}
        self._pusher: Pusher | None = None

    async def start(self, port: int = 0) -> str:
        """Start; the root for `SLOWRUNG_TELEGRAM_API_URL` comes back."""
        await self._http.start(port)
        return self.url

    @property
    def url(self) -> str:
        return f"http://127.0.0.1:{self._http.port}"

    async def stop(self) -> None:
        if self._pusher is not None:
            await self._pusher.stop()
        await self._http.stop()

    # What people do -------------------------------------------------------------------------------------------------

    def says(self, chat: int, text: str, **more: Any) -> int:
        """Someone writes; the update's id comes back. `more`: other fields of the message (video, caption)."""
        return self._update("message", self._message(chat, text=text, **more), chat)

    def edits(self, chat: int, text: str) -> int:
        """Someone edits the message they wrote last."""
        wrote = [message for message in self._said if message["chat"]["id"] == chat]
        message = wrote[-1] | {"text": text, "edit_date": int(self.now())}
        return self._update("edited_message", message, chat)

    def sends_video(self, chat: int, file_id: str, caption: str) -> int:
        video = {"file_id": file_id, "file_unique_id": file_id, "width": 1, "height": 1, "duration": 9}
        message = self._message(chat, video=video, caption=caption)
        return self._update("message", message, chat)

    def presses(self, chat: int, label: str) -> int:
        """Presses the button with this label on the newest message that has it."""
        for message in reversed(self.accepted):
            for text, data in message.buttons:
                if message.chat == chat and text == label:
                    return self.sends_press(chat, data, message.message_id)
        raise LookupError(f"no button {label!r} in chat {chat}")

    def sends_press(self, chat: int, data: str, message_id: int = 1) -> int:
        """A press with this data, forged or not."""
        query = f"press-{len(self._presses) + 1}"
        self._presses[query] = self.now()
        message = {"message_id": message_id, "date": int(self.now()), "chat": _chat(chat), "text": "…"}
        press = {"id": query, "from": _user(chat), "chat_instance": "1", "data": data, "message": message}
        return self._update("callback_query", press, chat)

    def blocks(self, chat: int, blocked: bool = True) -> int:
        (self.blocked_by.add if blocked else self.blocked_by.discard)(chat)
        bot = {"id": BOT_ID, "is_bot": True, "first_name": "Bot", "username": "slowrung_test_bot"}
        old, new = ("member", "kicked") if blocked else ("kicked", "member")

        def member(status: str) -> dict[str, Any]:
            return {"user": bot, "status": status} | ({"until_date": 0} if status == "kicked" else {})

        change = {
            "chat": _chat(chat),
            "from": _user(chat),
            "date": int(self.now()),
            "old_chat_member": member(old),
            "new_chat_member": member(new),
        }
        return self._update("my_chat_member", change, chat)

    def delivers_again(self, update_id: int, update: dict[str, Any]) -> None:
        """The same update once more, as after a confirmation that never arrived."""
        self._updates.append((self.now(), update | {"update_id": update_id}))
        self._arrived.set()

    def waiting(self) -> list[dict[str, Any]]:
        """Updates not yet confirmed."""
        return [update for _, update in self._updates]

    def texts(self, chat: int) -> list[str]:
        return [message.text for message in self.accepted if message.chat == chat]

    # The service ----------------------------------------------------------------------------------------------------

    def _message(self, chat: int, **content: Any) -> dict[str, Any]:
        self._next_message += 1
        message = {"message_id": self._next_message, "date": int(self.now()), "chat": _chat(chat), "from": _user(chat)}
        return message | content

    def _update(self, kind: str, content: dict[str, Any], chat: int) -> int:
        self.known_chats.add(chat)
        self._next_update += 1
        update = {"update_id": self._next_update, kind: content}
        self._updates.append((self.now(), update))
        if kind == "message":
            self._said.append(content)
        self._arrived.set()
        if self._pusher is not None and self._is_wanted(update):
            self._pusher.push(update, (chat, kind == "callback_query"))
        return self._next_update

    def _is_wanted(self, update: dict[str, Any]) -> bool:
        return not self._kinds or any(kind in update for kind in self._kinds)

    def _confirmed(self, update_id: int) -> None:
        self._updates = [(at, update) for at, update in self._updates if update["update_id"] != update_id]

    async def _serve(self, request: Request) -> Answer:
        parts = request.path.strip("/").split("/")
        if len(parts) != 2 or parts[0] != f"bot{self.token}":
            return self._refuse("", 401, "Unauthorized")
        method = parts[1]
        self.calls.append((method, request.fields))
        trouble = self._trouble(method, request.fields)
        if trouble is not None and trouble.how == "drop":
            raise Drop
        if trouble is not None and trouble.how == "refuse":
            return self._refuse(method, trouble.status, trouble.description, trouble.retry_after)
        action = getattr(self, f"_do_{method}", None)
        if action is None:
            return self._refuse(method, 404, "Not Found")
        try:
            result = await action(request)
        except limits.BadRequest as error:
            return self._refuse(method, 400, str(error))
        answer = result if isinstance(result, Answer) else Answer(200, {"ok": True, "result": result})
        if trouble is not None and trouble.how == "accept_and_drop":
            if method.startswith("send") and answer.status == 200:
                self.unanswered.append(self.accepted[-1])
            raise Drop
        if trouble is not None and trouble.how == "accept_and_sleep":
            await asyncio.sleep(trouble.seconds)
        return answer

    def _trouble(self, method: str, fields: dict[str, str]) -> Trouble | None:
        for trouble in self.troubles:
            if trouble.times > 0 and trouble.method == method and trouble.chat in (None, int(fields.get("chat_id", 0))):
                trouble.times -= 1
                return trouble
        return None

    def _refuse(self, method: str, status: int, description: str, retry_after: int | None = None) -> Answer:
        self.refused.append((method, status, description))
        body: dict[str, Any] = {"ok": False, "error_code": status, "description": description}
        if retry_after is not None:
            body["parameters"] = {"retry_after": retry_after}
        return Answer(status, body)

    async def _do_getMe(self, _request: Request) -> dict[str, Any]:  # noqa: N802
        return {"id": BOT_ID, "is_bot": True, "first_name": "Bot", "username": "slowrung_test_bot"}

    async def _do_deleteWebhook(self, _request: Request) -> bool:  # noqa: N802
        self.webhook = ""
        if self._pusher is not None:
            await self._pusher.stop()
            self._pusher = None
        return True

    async def _do_setWebhook(self, request: Request) -> bool:  # noqa: N802
        """Each replica sets the same one as it starts; what is under way goes on."""
        url, secret = request.fields["url"], request.fields.get("secret_token", "")
        if not re.fullmatch(r"[A-Za-z0-9_-]{0,256}", secret):
            raise limits.BadRequest("Bad Request: secret token contains unallowed characters")
        self.webhook = url
        self._kinds = json.loads(request.fields.get("allowed_updates", "[]"))
        if self._pusher is None:
            parts = urlsplit(url)
            roots = self.replicas or [f"{parts.scheme}://{parts.netloc}"]
            self._pusher = Pusher(roots, parts.path, secret, self._confirmed)
            for update in filter(self._is_wanted, self.waiting()):
                self._pusher.push(update, _lane(update))
        return True

    async def _do_setMyCommands(self, request: Request) -> bool:  # noqa: N802
        self.commands = json.loads(request.fields["commands"])
        for command in self.commands:
            if not 1 <= len(command["description"]) <= 256 or not command["command"].islower():
                raise limits.BadRequest("Bad Request: BOT_COMMAND_INVALID")
        return True

    async def _do_getUpdates(self, request: Request) -> Answer | list[dict[str, Any]]:  # noqa: N802
        if self.webhook:
            return self._refuse("getUpdates", 409, "Conflict: can't use getUpdates method while webhook is active")
        self._kinds = json.loads(request.fields.get("allowed_updates", "[]"))
        self._poll += 1
        mine, offset = self._poll, int(request.fields.get("offset", 0))
        limit, until = int(request.fields.get("limit", 100)), time.monotonic() + float(request.fields.get("timeout", 0))
        self._updates = [(at, update) for at, update in self._updates if update["update_id"] >= offset]
        while True:
            self._arrived.clear()
            if found := self._alive(offset)[:limit]:
                return found
            left = until - time.monotonic()
            if left <= 0:
                return []
            with contextlib.suppress(TimeoutError):
                await asyncio.wait_for(self._arrived.wait(), min(left, 0.5))
            if mine != self._poll:
                return self._refuse("getUpdates", 409, "Conflict: terminated by other getUpdates request")

    def _alive(self, offset: int) -> list[dict[str, Any]]:
        def alive(at: float, update: dict[str, Any]) -> bool:
            lives = PRESS_LIVES_S if "callback_query" in update else UPDATE_LIVES_S
            return update["update_id"] >= offset and self.now() - at < lives and self._is_wanted(update)

        return [update for at, update in self._updates if alive(at, update)]

    async def _do_answerCallbackQuery(self, request: Request) -> bool:  # noqa: N802
        query = request.fields["callback_query_id"]
        limits.check_text(request.fields.get("text") or "-", limits.CALLBACK_ANSWER_UNITS)
        if query not in self._presses or self.now() - self._presses[query] > PRESS_LIVES_S:
            raise limits.BadRequest("Bad Request: query is too old and response timeout expired or query ID is invalid")
        self.answered_presses.append(query)
        return True

    async def _do_sendMessage(self, request: Request) -> Answer | dict[str, Any]:  # noqa: N802
        fields = request.fields
        text = limits.shown(fields.get("text", ""), fields.get("parse_mode"))
        limits.check_text(text)
        return self._take(
            "sendMessage", int(fields["chat_id"]), text, limits.buttons_of(fields.get("reply_markup")), None
        )

    async def _do_sendPhoto(self, request: Request) -> Answer | dict[str, Any]:  # noqa: N802
        fields, photo = request.fields, next(iter(request.files.values()), b"")
        if not 0 < len(photo) <= limits.PHOTO_BYTES:
            raise limits.BadRequest("Bad Request: there is no photo in the request")
        caption = limits.shown(fields.get("caption", ""), fields.get("parse_mode"))
        limits.check_text(caption or "-", limits.CAPTION_UNITS)
        return self._take(
            "sendPhoto", int(fields["chat_id"]), caption, limits.buttons_of(fields.get("reply_markup")), photo
        )

    async def _do_sendDocument(self, request: Request) -> Answer | dict[str, Any]:  # noqa: N802
        fields, document = request.fields, next(iter(request.files.values()), b"")
        if not 0 < len(document) <= limits.DOCUMENT_BYTES:
            raise limits.BadRequest("Bad Request: there is no document in the request")
        caption = limits.shown(fields.get("caption", ""), fields.get("parse_mode"))
        limits.check_text(caption or "-", limits.CAPTION_UNITS)
        return self._take(
            "sendDocument", int(fields["chat_id"]), caption, limits.buttons_of(fields.get("reply_markup")), document
        )

    def _take(
        self, method: str, chat: int, text: str, buttons: list[tuple[str, str]], picture: bytes | None
    ) -> Answer | dict[str, Any]:
        if chat in self.blocked_by:
            return self._refuse(method, 403, "Forbidden: bot was blocked by the user")
        if chat not in self.known_chats:
            raise limits.BadRequest("Bad Request: chat not found")
        if self.keep_rates and (wait := self._rates.wait(chat, time.monotonic())):
            return self._refuse(method, 429, f"Too Many Requests: retry after {wait}", wait)
        self._next_message += 1
        self.accepted.append(Accepted(chat, text, buttons, self._next_message, picture))
        return {"message_id": self._next_message, "date": int(self.now()), "chat": _chat(chat), "text": text}


def _lane(update: dict[str, Any]) -> tuple[int, bool]:
    press = update.get("callback_query")
    if press is not None:
        return press["message"]["chat"]["id"], True
    return (update.get("message") or update["my_chat_member"])["chat"]["id"], False


def _chat(chat: int) -> dict[str, Any]:
    return {"id": chat, "type": "private", "first_name": f"P{chat}"}


def _user(chat: int) -> dict[str, Any]:
    return {"id": chat, "is_bot": False, "first_name": f"P{chat}"}
