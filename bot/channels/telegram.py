"""Telegram through python-telegram-bot's `Bot`: receive, confirm after the commit, send, and name what went wrong."""

from __future__ import annotations

import logging
import os
import re
from collections.abc import AsyncIterator
from datetime import UTC, datetime, timedelta
from typing import Any

from telegram import Bot, InlineKeyboardButton, InlineKeyboardMarkup, Update
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
KINDS = ["message", "callback_query", "my_chat_member"]
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
        get_updates_request=HTTPXRequest(connection_pool_size=2, read_timeout=POLL_S + 10.0),
    )


class Telegram:
    """The channel as delivery sees it."""

    name = CHANNEL

    def __init__(self, bot: Bot) -> None:
        self.bot = bot

    async def send(self, message: Outgoing) -> str | None:
        """Send a message, long ones in parts; the id of the last part comes back. Raises as `Channel` says."""
        try:
            if message.media:
                await self.bot.send_video(int(message.address), message.media)
            if message.document:
                file = await self.bot.send_document(
                    int(message.address), message.document, caption=message.text, filename=message.document_name
                )
                return str(file.message_id)
            parts = split(message.text)
            sent = None
            for at, part in enumerate(parts):
                keyboard = _keyboard(message) if at == len(parts) - 1 else None
                sent = await self.bot.send_message(int(message.address), part, reply_markup=keyboard)
            return None if sent is None else str(sent.message_id)
        except RetryAfter as error:
            wait = error.retry_after
            raise Later(wait.total_seconds() if isinstance(wait, timedelta) else float(wait)) from error
        except ChatMigrated as error:
            raise Moved(str(error.new_chat_id)) from error
        except Forbidden as error:
            raise Gone from error
        except InvalidToken as error:  # ours is wrong: no fault of the person's, and every message would meet it
            raise Later(TOKEN_REFUSED_S) from error
        except BadRequest as error:  # a NetworkError by inheritance: must come first
            if any(sign in str(error).casefold() for sign in GONE):
                raise Gone from error
            raise Refused(str(error)) from error
        except TimedOut as error:
            raise Later(None if "pool" in str(error).casefold() else AFTER_TIMEOUT_S) from error
        except TelegramError as error:
            raise Later from error


class Receiver:
    """The next batch of updates; the one before is confirmed by asking for it. Ask only after the commit."""

    def __init__(self, bot: Bot) -> None:
        self.bot = bot
        self._offset: int | None = None

    async def batches(self) -> AsyncIterator[list[Update]]:
        """Endless. The caller commits each batch before it takes the next."""
        while True:
            found = await self.bot.get_updates(offset=self._offset, timeout=POLL_S, allowed_updates=KINDS)
            if found:
                yield list(found)
                self._offset = found[-1].update_id + 1


def to_incoming(update: Update, now: datetime) -> IncomingUpdate | None:
    """What an update says to us; None where it says nothing (a kind we don't take, a group, an edit, nonsense)."""
    try:
        said = _said(update, now)
    except (TypeError, ValueError, AttributeError, OverflowError):
        # The library does not check what kind of thing stands in a field; one such must not hold up its batch for ever.
        return None
    return said if said is None or _ADDRESS.fullmatch(said.address) else None


def _said(update: Update, now: datetime) -> IncomingUpdate | None:
    key = str(update.update_id)
    if update.callback_query is not None:
        press = update.callback_query
        if press.message is None or press.data is None:
            return None
        return IncomingUpdate(
            CHANNEL, key, str(press.message.chat.id), "press", "", now, {"data": _clean(press.data)[:64]}
        )
    if update.my_chat_member is not None:
        change = update.my_chat_member
        blocked = change.new_chat_member.status in ("kicked", "left")
        return IncomingUpdate(CHANNEL, key, str(change.chat.id), "member", "", now, {"blocked": blocked})
    message = update.message
    if message is None or message.chat.type != "private":
        return None
    sent_at = message.date.astimezone(UTC)
    address = str(message.chat.id)
    clip = message.video or message.video_note or message.animation
    if clip is not None:
        media = {"media": _clean(clip.file_id)}
        return IncomingUpdate(
            CHANNEL, key, address, "clip", _clean(message.caption or "")[:LONGEST_KEPT], sent_at, media
        )
    text = _clean(message.text or message.caption or "")
    return IncomingUpdate(CHANNEL, key, address, "text", text[:LONGEST_KEPT], sent_at)


def _clean(text: str) -> str:
    """Without what no database keeps: the null character, and halves of a character."""
    return text.replace("\0", "").encode("utf-8", "replace").decode("utf-8")


def parse(data: Any, bot: Bot) -> Update | None:
    """An update from JSON; None for what is none."""
    if not isinstance(data, dict) or not isinstance(data.get("update_id"), int):
        return None
    try:
        return Update.de_json(data, bot)
    except (TypeError, ValueError, KeyError, AttributeError, OverflowError, TelegramError):
        return None


async def answer_press(bot: Bot, update: Update) -> None:
    """Take the waiting sign off the button, before any work. A press too old for that is handled all the same."""
    if update.callback_query is not None:
        try:
            await bot.answer_callback_query(update.callback_query.id)
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
