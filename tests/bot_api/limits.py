"""The limits that the Bot API keeps: lengths, markup, buttons, rates.

Source: the Bot API's own documentation, from memory; numbers as in python-telegram-bot's constants (22.8).
"""

from __future__ import annotations

import json
import re
from collections import defaultdict, deque
from html import unescape
from typing import Any

TEXT_UNITS = 4096
CAPTION_UNITS = 1024
BUTTON_DATA_BYTES = 64
BUTTONS = 100
CALLBACK_ANSWER_UNITS = 200
PHOTO_BYTES = 10 * 1024 * 1024
DOCUMENT_BYTES = 50 * 1024 * 1024
PER_SECOND = 30
CHAT_BURST = 5  # "short bursts pass": how many is not published
TAGS = {"b", "strong", "i", "em", "u", "ins", "s", "strike", "del", "code", "pre", "a", "blockquote", "tg-spoiler"}


class BadRequest(Exception):
    """400 with this description."""


def units(text: str) -> int:
    """Length as the service counts it: UTF-16 code units."""
    return len(text.encode("utf-16-le")) // 2


def shown(text: str, parse_mode: str | None) -> str:
    """The text as people see it.

    Raises:
        BadRequest: Markup that the service cannot parse.
    """
    if parse_mode is None:
        return text
    if parse_mode.upper() != "HTML":
        raise BadRequest("Bad Request: unsupported parse_mode")
    open_tags: list[str] = []
    for match in re.finditer(r"<(/?)([a-zA-Z-]*)([^>]*)(>?)", text):
        closing, tag, _, end = match.groups()
        if tag.lower() not in TAGS or not end:
            raise BadRequest(f'Bad Request: can\'t parse entities: Unsupported start tag "{tag}"')
        if not closing:
            open_tags.append(tag)
        elif not open_tags or open_tags.pop() != tag:
            raise BadRequest("Bad Request: can't parse entities: Unmatched end tag")
    if open_tags:
        raise BadRequest(f"Bad Request: can't parse entities: Can't find end tag corresponding to start tag \"{tag}\"")
    return unescape(re.sub(r"<[^>]*>", "", text))


def check_text(text: str, limit: int = TEXT_UNITS) -> None:
    if not text.strip():
        raise BadRequest("Bad Request: message text is empty")
    if units(text) > limit:
        raise BadRequest("Bad Request: message is too long")


def buttons_of(markup: str | None) -> list[tuple[str, str]]:
    """Label and data of each inline button.

    Raises:
        BadRequest: A button without a label, or data of no or more than 64 bytes.
    """
    if not markup:
        return []
    rows: list[list[dict[str, Any]]] = json.loads(markup).get("inline_keyboard", [])
    buttons = [(button.get("text", ""), button.get("callback_data", "")) for row in rows for button in row]
    if len(buttons) > BUTTONS:
        raise BadRequest("Bad Request: reply markup is too long")
    for label, data in buttons:
        if not label.strip():
            raise BadRequest("Bad Request: text buttons are unallowed in the inline keyboard")
        if not 1 <= len(data.encode()) <= BUTTON_DATA_BYTES:
            raise BadRequest("Bad Request: BUTTON_DATA_INVALID")
    return buttons


class Rates:
    """30 a second in all, one a second a chat with short bursts."""

    def __init__(self) -> None:
        self._all: deque[float] = deque()
        self._chats: dict[int, tuple[float, float]] = defaultdict(lambda: (float(CHAT_BURST), 0.0))

    def wait(self, chat: int, now: float) -> int:
        """Seconds to wait, 0 when the message may pass (it is then counted)."""
        while self._all and self._all[0] <= now - 1:
            self._all.popleft()
        left, since = self._chats[chat]
        left = min(float(CHAT_BURST), left + (now - since))
        if len(self._all) >= PER_SECOND or left < 1:
            self._chats[chat] = (left, now)
            return 1
        self._all.append(now)
        self._chats[chat] = (left - 1, now)
        return 0
