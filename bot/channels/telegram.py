"""Telegram through python-telegram-bot's `Bot`: receive, confirm after the commit, send, and name what went wrong."""

from __future__ import annotations

import logging
import os
import re
from collections.abc import AsyncIterator
from datetime import UTC, datetime, timedelta
from typing import Any

from telegram import Bot, InlineKeyboardButton, InlineKeyboardMarkup, Message
from telegram.error import (
    BadRequest,
    ChatMigrated,
    Forbidden,
    InvalidToken,
    NetworkError,
    RetryAfter,
    TelegramError,
    TimedOut,
)
from telegram.request import HTTPXRequest

from bot.channels.channel import Gone, Later, Moved, Refused
from storage.inbox import IncomingUpdate
from storage.outbox import Outgoing

# Waits as timedelta, as the library will always give them one day; until then it warns at every look.
os.environ.setdefault("PTB_TIMEDELTA", "true")

CHANNEL = "telegram"
KINDS = ["message", "edited_message", "callback_query", "my_chat_member"]
CLIPS = ("video", "video_note", "animation")
POLL_S = 25
# A send that timed out while reading was often delivered: it is waited for longer, and tried again late.
SEND_READ_S = 20.0
AFTER_TIMEOUT_S = 60.0
TOKEN_REFUSED_S = 60.0
LONGEST_TEXT = 3500
LONGEST_KEPT = 20_000
_ADDRESS = re.compile(r"-?[0-9]{1,19}")
GONE = ("chat not found", "user is deactivated", "bot was blocked", "bot was kicked", "peer_id_invalid")


def make_bot(token: str, root: str) -> Bot:
    """A bot that calls the Bot API server at `root`."""
    # httpx logs whole URLs, and the token stands in them.
    for name in ("httpx", "httpcore"):
        logging.getLogger(name).setLevel(logging.WARNING)
    return Bot(
        token,
        base_url=f"{root}/bot",
        base_file_url=f"{root}/file/bot",
        request=HTTPXRequest(connection_pool_size=64, read_timeout=SEND_READ_S, pool_timeout=30.0),
        get_updates_request=HTTPXRequest(connection_pool_size=2),
    )


class Telegram:
    """The channel as delivery sees it."""

    name = CHANNEL

    def __init__(self, bot: Bot) -> None:
        self.bot = bot

    async def send(self, message: Outgoing) -> str | None:
        """The next part of a message: its clip, then its file or the text, cut where it is long. Raises as `Channel`
        says."""
        try:
            return str((await self._call(message)).message_id)
        except RetryAfter as error:
            wait = error.retry_after
            seconds = wait.total_seconds() if isinstance(wait, timedelta) else float(wait)
            raise Later(seconds, everyone=True) from error
        except ChatMigrated as error:
            raise Moved(str(error.new_chat_id)) from error
        except Forbidden as error:
            raise Gone from error
        except InvalidToken as error:  # ours is wrong: no fault of the person's, and every message would meet it
            raise Later(TOKEN_REFUSED_S, everyone=True) from error
        except BadRequest as error:  # a NetworkError by inheritance: must come first
            if any(sign in str(error).casefold() for sign in GONE):
                raise Gone from error
            raise Refused(str(error), clip=_is_clip(message)) from error
        except TimedOut as error:
            raise Later(None if "pool" in str(error).casefold() else AFTER_TIMEOUT_S) from error
        except TelegramError as error:
            raise Later from error

    async def _call(self, message: Outgoing) -> Message:
        chat, at = int(message.address), message.parts_sent - bool(message.media)
        if _is_clip(message):
            return await self.bot.send_video(chat, str(message.media))
        if message.document:
            return await self.bot.send_document(
                chat, message.document, caption=message.text, filename=message.document_name
            )
        parts = split(message.text)
        # Shorter than it was where an erased athlete's lines were taken out meanwhile.
        at = min(at, len(parts) - 1)
        keyboard = _keyboard(message) if at == len(parts) - 1 else None
        return await self.bot.send_message(chat, parts[at], reply_markup=keyboard)

    def calls(self, message: Outgoing) -> int:
        """A clip or a file and each part of the text are calls of their own."""
        return bool(message.media) + (1 if message.document else len(split(message.text)))


def _is_clip(message: Outgoing) -> bool:
    """Whether the clip is what is sent next."""
    return bool(message.media) and message.parts_sent == 0


class Receiver:
    """The next batch of updates; the one before is confirmed by asking for it. Ask only after the commit."""

    def __init__(self, bot: Bot) -> None:
        self.bot = bot
        self._offset: int | None = None

    async def batches(self) -> AsyncIterator[list[Any]]:
        """Updates as the service's JSON has them; endless. The caller commits each batch before it takes the next.

        The library's own `get_updates` makes objects of a whole batch at once: one that it could not make would come
        again and again, with all that follow.
        """
        while True:
            asked = {"offset": self._offset, "timeout": POLL_S, "allowed_updates": KINDS}
            # By this name, which means the same, the library does not warn that it has a method of its own.
            found = await self.bot.do_api_request("get_Updates", api_kwargs=asked, read_timeout=POLL_S + 10.0)
            if not isinstance(found, list):
                raise NetworkError("the service's answer is no list of updates")
            if found:
                yield found
                numbers = [number for number in map(number_of, found) if number is not None]
                if not numbers:  # none can be confirmed, so all would come again at once, and again
                    raise NetworkError("no update of the service's answer has a number")
                self._offset = max(numbers) + 1


class Unreadable(ValueError):
    """An update of a kind that we asked for, but whose fields are not what they should be."""


def number_of(update: Any) -> int | None:
    """The service's own number of an update; None where it has none."""
    number = update.get("update_id") if isinstance(update, dict) else None
    return number if isinstance(number, int) and not isinstance(number, bool) else None


def to_incoming(update: Any, now: datetime) -> IncomingUpdate | None:
    """What an update, as JSON has it, says to us; None where it says nothing (a kind we don't take, a group).

    Raises:
        Unreadable: It should say something, and cannot be understood.
    """
    number = number_of(update)
    if number is None:
        raise Unreadable("no number")
    try:
        said = _said(str(number), update, now)
    except Unreadable:
        raise
    except (TypeError, ValueError, KeyError, AttributeError, OverflowError, OSError) as error:
        raise Unreadable(type(error).__name__) from error
    if said is not None and not _ADDRESS.fullmatch(said.address):
        raise Unreadable("no chat")
    return said


def _said(key: str, update: dict[str, Any], now: datetime) -> IncomingUpdate | None:
    if "callback_query" in update:
        press = update["callback_query"]
        if press.get("message") is None or press.get("data") is None:
            return None
        data = {"data": _words(press["data"])[:64]}
        if press["from"]["id"] != press["message"]["chat"]["id"]:
            # In a private chat the two are one; a button that somebody else pressed is not its owner's word.
            raise Unreadable("pressed by somebody else")
        return IncomingUpdate(CHANNEL, key, _chat_of(press["message"]), "press", "", now, data)
    if "my_chat_member" in update:
        change = update["my_chat_member"]
        blocked = change["new_chat_member"]["status"] in ("kicked", "left")
        return IncomingUpdate(CHANNEL, key, _chat_of(change), "member", "", now, {"blocked": blocked})
    if "edited_message" in update:
        return _edited(key, update["edited_message"], now)
    message = update.get("message")
    if message is None or message["chat"]["type"] != "private":
        return None
    sent_at = datetime.fromtimestamp(_whole(message["date"]), UTC)
    address = _chat_of(message)
    for kind in CLIPS:
        if kind in message:
            media = {"media": _words(message[kind]["file_id"])}
            text = _words(message.get("caption", ""))[:LONGEST_KEPT]
            return IncomingUpdate(CHANNEL, key, address, "clip", text, sent_at, media)
    text = _words(message.get("text", message.get("caption", "")))
    return IncomingUpdate(CHANNEL, key, address, "text", text[:LONGEST_KEPT], sent_at)


def _edited(key: str, message: dict[str, Any], now: datetime) -> IncomingUpdate | None:
    """That words were edited, and which message; not the words, since what was said first is what counts.

    A place that moves on comes as an edit too, and says nothing.
    """
    if message["chat"]["type"] != "private" or not ("text" in message or "caption" in message):
        return None
    which = {"message": _whole(message["message_id"])}
    return IncomingUpdate(CHANNEL, key, _chat_of(message), "edit", "", now, which)


def _chat_of(message: dict[str, Any]) -> str:
    return str(_whole(message["chat"]["id"]))


def _whole(number: Any) -> int:
    if not isinstance(number, int) or isinstance(number, bool):
        raise TypeError("no whole number")
    return number


def _words(text: Any) -> str:
    if not isinstance(text, str):
        raise TypeError("no text")
    return _clean(text)


def _clean(text: str) -> str:
    """Without what no database keeps: the null character, and halves of a character."""
    return text.replace("\0", "").encode("utf-8", "replace").decode("utf-8")


async def answer_press(bot: Bot, update: Any) -> None:
    """Take the waiting sign off the button, before any work. A press too old for that is handled all the same."""
    press = update.get("callback_query") if isinstance(update, dict) else None
    query = press.get("id") if isinstance(press, dict) else None
    if isinstance(query, str):
        try:
            await bot.answer_callback_query(query)
        except (BadRequest, NetworkError, RetryAfter, Forbidden):
            return


def split(text: str, limit: int = LONGEST_TEXT) -> list[str]:
    """Parts of at most `limit` UTF-16 units, cut at line ends where there are any."""
    parts: list[str] = []
    current = ""
    for line in text.split("\n"):
        while _units(line) > limit:
            head = _head(line, limit)
            if current:
                parts.append(current)
                current = ""
            parts.append(head)
            line = line[len(head) :]
        joined = f"{current}\n{line}" if current else line
        if _units(joined) > limit:
            parts.append(current)
            joined = line
        current = joined
    if current.strip() or not parts:
        parts.append(current)
    return [part for part in parts if part.strip()] or ["…"]


def _units(text: str) -> int:
    return len(text.encode("utf-16-le", "surrogatepass")) // 2


def _head(text: str, limit: int) -> str:
    head = text[:limit]
    while _units(head) > limit:
        head = head[: len(head) - (_units(head) - limit + 1) // 2 - 1]
    return head


def _keyboard(message: Outgoing) -> InlineKeyboardMarkup | None:
    if not message.buttons:
        return None
    buttons = [InlineKeyboardButton(label, callback_data=data) for label, data in message.buttons]
    width = 6 if all(len(label) <= 4 for label, _ in message.buttons[:-1]) else 2
    rows = [buttons[at : at + width] for at in range(0, len(buttons), width)]
    return InlineKeyboardMarkup(rows)
