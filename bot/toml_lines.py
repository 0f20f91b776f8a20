"""On which line of a TOML file each key stands, inline tables included, so that an error can name it.

The standard library's parser gives values without lines. This walks the text once beside it; the text must have passed
that parser before.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Mapping

KeyPath = tuple[str | int, ...]

_HEADER = re.compile(r"[ \t]*(\[\[?)([^\]\n]+)\]\]?[^\n]*")
_KEY = re.compile(r"""[ \t]*((?:[A-Za-z0-9_-]+|"[^"\n]*"|'[^'\n]*')(?:[ \t]*\.[ \t]*[A-Za-z0-9_-]+)*)[ \t]*=""")
_STRING = re.compile(r'"""(?:\\.|[^\\])*?"""|\'\'\'.*?\'\'\'|"(?:\\.|[^"\\\n])*"|\'[^\'\n]*\'', re.DOTALL)


def key_lines(text: str) -> Mapping[KeyPath, int]:
    """Path of keys and list positions, as in `("athlete", 0, "tests", 1, "rpe")`, to its line, from 1."""
    found: dict[KeyPath, int] = {}
    seen: Counter[str] = Counter()
    table: KeyPath = ()
    at = 0
    while at < len(text):
        if header := _HEADER.match(text, at):
            name = header[2].strip()
            table = _parts(name)
            if header[1] == "[[":
                table += (seen[name],)
                seen[name] += 1
            found[table] = _line(text, header.start(1))
            at = header.end()
        elif key := _KEY.match(text, at):
            path = table + _parts(key[1])
            found[path] = _line(text, key.start(1))
            at = _value(text, key.end(), path, found)
        else:
            at = text.find("\n", at) + 1 or len(text)
    return found


def _value(text: str, at: int, path: KeyPath, found: dict[KeyPath, int]) -> int:
    """Walk one value from `at`, noting keys of inline tables; gives where it ends."""
    at = _skip(text, at)
    if at < len(text) and text[at] == "[":
        position = 0
        at = _skip(text, at + 1, lines=True)
        while at < len(text) and text[at] != "]":
            found[(*path, position)] = _line(text, at)
            at = _skip(text, _value(text, at, (*path, position), found), lines=True)
            if text[at : at + 1] == ",":
                position, at = position + 1, _skip(text, at + 1, lines=True)
        return at + 1
    if at < len(text) and text[at] == "{":
        at = _skip(text, at + 1, lines=True)
        while key := _KEY.match(text, at):
            inner = path + _parts(key[1])
            found[inner] = _line(text, key.start(1))
            at = _skip(text, _value(text, key.end(), inner, found), lines=True)
            at = _skip(text, at + 1, lines=True) if text[at : at + 1] == "," else at
        return at + 1
    if string := _STRING.match(text, at):
        return string.end()
    while at < len(text) and text[at] not in ",]}#\n":
        at += 1
    return at


def _skip(text: str, at: int, lines: bool = False) -> int:
    """Past blanks; with `lines` past line ends and comments as well."""
    while at < len(text):
        if text[at] in " \t" or (lines and text[at] in "\r\n"):
            at += 1
        elif lines and text[at] == "#":
            at = text.find("\n", at) + 1 or len(text)
        else:
            break
    return at


def _parts(name: str) -> KeyPath:
    return tuple(part.strip().strip("\"'") for part in name.split("."))


def _line(text: str, at: int) -> int:
    return text.count("\n", 0, at) + 1
