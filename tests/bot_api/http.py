"""Just enough HTTP/1.1 on loopback to stand in for a web service: keep-alive, forms, JSON, uploads."""

from __future__ import annotations

import asyncio
import contextlib
import json
from collections.abc import Awaitable, Callable
from dataclasses import dataclass, field
from email.parser import BytesParser
from email.policy import HTTP
from typing import Any
from urllib.parse import parse_qsl


@dataclass
class Request:
    method: str
    path: str
    fields: dict[str, str]
    files: dict[str, bytes] = field(default_factory=dict)


@dataclass
class Answer:
    status: int
    body: dict[str, Any]
    headers: dict[str, str] = field(default_factory=dict)


class Drop(Exception):
    """Close the connection without an answer."""


Handler = Callable[[Request], Awaitable[Answer]]


class HttpServer:
    """Serves `handler` on a free port of 127.0.0.1."""

    def __init__(self, handler: Handler) -> None:
        self._handler = handler
        self._server: asyncio.Server | None = None
        self._open: set[asyncio.Task[None]] = set()
        self.port = 0

    async def start(self, port: int = 0) -> None:
        self._server = await asyncio.start_server(self._connected, "127.0.0.1", port)
        self.port = self._server.sockets[0].getsockname()[1]

    async def stop(self) -> None:
        if self._server is not None:
            self._server.close()
            for task in list(self._open):
                task.cancel()
            await asyncio.gather(*self._open, return_exceptions=True)
            self._server = None

    async def _connected(self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        task = asyncio.current_task()
        assert task is not None
        self._open.add(task)
        try:
            while (request := await _read(reader)) is not None:
                answer = await self._handler(request)
                writer.write(_bytes_of(answer))
                await writer.drain()
        except (Drop, ConnectionError, asyncio.IncompleteReadError, asyncio.CancelledError):
            pass
        finally:
            self._open.discard(task)
            writer.close()
            with contextlib.suppress(ConnectionError, asyncio.CancelledError):
                await writer.wait_closed()


async def _read(reader: asyncio.StreamReader) -> Request | None:
    line = await reader.readline()
    if not line:
        return None
    method, target, _ = line.decode("latin-1").split(" ", 2)
    headers: dict[str, str] = {}
    while (header := (await reader.readline()).decode("latin-1").strip()) != "":
        name, _, value = header.partition(":")
        headers[name.lower()] = value.strip()
    body = await reader.readexactly(int(headers.get("content-length", "0")))
    path, _, query = target.partition("?")
    fields, files = _parse(headers.get("content-type", ""), body)
    return Request(method, path, dict(parse_qsl(query, keep_blank_values=True)) | fields, files)


def _parse(content_type: str, body: bytes) -> tuple[dict[str, str], dict[str, bytes]]:
    if content_type.startswith("application/json"):
        data = json.loads(body)
        return {key: value if isinstance(value, str) else json.dumps(value) for key, value in data.items()}, {}
    if not content_type.startswith("multipart/form-data"):
        return dict(parse_qsl(body.decode(), keep_blank_values=True)), {}
    head = f"Content-Type: {content_type}\r\n\r\n".encode()
    fields, files = {}, {}
    for part in BytesParser(policy=HTTP).parsebytes(head + body).iter_parts():
        name = part.get_param("name", header="content-disposition")
        content = part.get_payload(decode=True)
        if part.get_filename() is None:
            fields[name] = content.decode()
        else:
            files[name] = content
    return fields, files


def _bytes_of(answer: Answer) -> bytes:
    body = json.dumps(answer.body).encode()
    lines = [f"HTTP/1.1 {answer.status} Status", "Content-Type: application/json", f"Content-Length: {len(body)}"]
    lines += [f"{name}: {value}" for name, value in answer.headers.items()]
    return "\r\n".join([*lines, "", ""]).encode() + body
