"""The catalogues as parsed, for tests that compare languages."""

from __future__ import annotations

from collections.abc import Iterator

from fluent.syntax import FluentParser
from fluent.syntax import ast as ftl

from bot.wording.catalogue import CATALOGUES


def messages(language: str) -> dict[str, ftl.Message]:
    """Every message of a language by its id; junk and an id given twice fail here."""
    found: dict[str, ftl.Message] = {}
    for path in sorted((CATALOGUES / language).glob("*.ftl")):
        for entry in FluentParser().parse(path.read_text(encoding="utf-8")).body:
            assert not isinstance(entry, ftl.Junk), f"{path.name}: {entry.content[:60]!r}"
            if isinstance(entry, ftl.Message):
                assert entry.id.name not in found, f"{entry.id.name} stands twice"
                found[entry.id.name] = entry
    return found


def nodes(node: object) -> Iterator[object]:
    """A part of a message and all parts of it."""
    yield node
    for value in node if isinstance(node, list) else vars(node).values() if isinstance(node, ftl.BaseNode) else ():
        yield from nodes(value)


def slots(message: ftl.Message) -> set[str]:
    """The names of the values that a message shows or chooses by."""
    return {node.id.name for node in nodes(message) if isinstance(node, ftl.VariableReference)}


def choices(message: ftl.Message) -> dict[str, list[str]]:
    """By the name of a value: the cases that the message tells apart."""
    found: dict[str, list[str]] = {}
    for node in nodes(message):
        if isinstance(node, ftl.SelectExpression) and isinstance(node.selector, ftl.VariableReference):
            keys = [variant.key for variant in node.variants]
            found[node.selector.id.name] = [
                key.name if isinstance(key, ftl.Identifier) else key.value
                for key in keys
                if isinstance(key, (ftl.Identifier, ftl.NumberLiteral))
            ]
    return found


def fixed_words(message: ftl.Message) -> list[str]:
    """What a message says whatever its values are, piece by piece."""
    return [node.value.strip() for node in nodes(message) if isinstance(node, ftl.TextElement) and node.value.strip()]
