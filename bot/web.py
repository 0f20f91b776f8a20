"""The HTTP side: the webhook that answers after the commit, health that tells the truth, and metrics."""

from __future__ import annotations

import asyncio
import contextlib
import hmac
import json
import socket
from collections.abc import Iterator
from datetime import timedelta
from typing import TYPE_CHECKING

import uvicorn
from starlette.applications import Starlette
from starlette.requests import ClientDisconnect, Request
from starlette.responses import PlainTextResponse, Response
from starlette.routing import Route

from bot import metrics
from bot.settings import Settings, WrongSetting
from storage import health
from storage.away import is_away
from storage.migrations import HEAD

if TYPE_CHECKING:
    from bot.serve import Service

WEBHOOK_PATH = "/telegram"
SECRET_HEADER = "x-telegram-bot-api-secret-token"  # noqa: S105  the header's name
LONGEST_BODY = 1_000_000
WAITING_AT_MOST = 2048  # connections that nobody has taken up yet; the server's own number
RETRY_AFTER_S = "5"
SWEEP_LATE = timedelta(minutes=2)
# A morning's plans for many take some minutes; what is due for longer than this is stuck.
DUE_LATE = timedelta(minutes=30)
DATABASE_ANSWERS_S = 5.0


def application(service: Service) -> Starlette:
    """The routes of one service."""

    async def webhook(request: Request) -> Response:
        secret = service.settings.webhook_secret
        given = request.headers.get(SECRET_HEADER, "")
        if secret is None or not hmac.compare_digest(given.encode(), secret.get_secret_value().encode()):
            metrics.REFUSED.labels("secret").inc()
            return Response(status_code=401)
        try:
            body = await _body(request)
        except ClientDisconnect:
            return Response(status_code=400)
        if body is None:
            metrics.REFUSED.labels("size").inc()
            return Response(status_code=413)
        try:
            update = json.loads(body)
        except (ValueError, RecursionError):
            metrics.REFUSED.labels("junk").inc()
            return Response(status_code=400)
        try:
            # What is JSON and yet no update that we understand is taken, and set aside: it would only come again.
            await service.accept([update])
        except Exception as error:
            if not is_away(error):
                raise
            return Response(status_code=503, headers={"Retry-After": RETRY_AFTER_S})
        return Response(status_code=200)

    async def healthz(_request: Request) -> Response:
        return PlainTextResponse("alive\n")

    async def readyz(_request: Request) -> Response:
        try:
            seen = await asyncio.wait_for(service.in_thread(lambda: _ready(service)), DATABASE_ANSWERS_S)
        except Exception:
            return PlainTextResponse("the database is away\n", 503)
        if seen.revision != HEAD:
            return PlainTextResponse("the database has other tables\n", 503)
        if seen.sweep_age is None or seen.sweep_age > SWEEP_LATE:
            return PlainTextResponse("no sweep of late\n", 503)
        if seen.oldest_overdue is not None and seen.oldest_overdue > DUE_LATE:
            return PlainTextResponse("what is due is not done\n", 503)
        return PlainTextResponse("ready\n")

    async def counted(_request: Request) -> Response:
        try:
            seen = await service.in_thread(lambda: _look(service))
        except Exception as error:
            if not is_away(error):
                raise
            return PlainTextResponse("the database is away\n", 503)
        return Response(metrics.exposition(seen), media_type="text/plain; version=0.0.4")

    return Starlette(
        routes=[
            Route(WEBHOOK_PATH, webhook, methods=["POST"]),
            Route("/healthz", healthz),
            Route("/readyz", readyz),
            Route("/metrics", counted),
        ]
    )


class Server(uvicorn.Server):
    """uvicorn within our own loop: signals are the service's."""

    @contextlib.contextmanager
    def capture_signals(self) -> Iterator[None]:
        yield


def door(settings: Settings) -> socket.socket:
    """The socket of `SLOWRUNG_LISTEN`.

    Raises WrongSetting where it cannot be had.
    """
    assert settings.listen is not None
    host, _, port = settings.listen.rpartition(":")
    name = host.strip("[]") or "127.0.0.1"
    family = socket.AF_INET6 if ":" in name else socket.AF_INET
    try:
        return socket.create_server((name, int(port)), family=family, backlog=WAITING_AT_MOST)
    except (OSError, OverflowError) as error:
        raise WrongSetting(f"SLOWRUNG_LISTEN: nothing can be served at {settings.listen} ({error}).") from error


def server(service: Service) -> Server:
    """A server for that socket, not yet started."""
    config = uvicorn.Config(
        application(service),
        log_config=None,
        access_log=False,
        lifespan="off",
        server_header=False,
        timeout_graceful_shutdown=5,
    )
    return Server(config)


def _ready(service: Service) -> health.Readiness:
    with service.store.reading() as tx:
        return health.readiness(tx, service.clock.now())


def _look(service: Service) -> health.Health:
    with service.store.reading() as tx:
        return health.look(tx, service.clock.now())


async def _body(request: Request) -> bytes | None:
    """The body; None where it is longer than any update."""
    if _told_length(request) > LONGEST_BODY:
        return None
    body = b""
    async for chunk in request.stream():
        body += chunk
        if len(body) > LONGEST_BODY:
            return None
    return body


def _told_length(request: Request) -> int:
    told = request.headers.get("content-length", "")
    return int(told) if told.isascii() and told.isdigit() and len(told) < 20 else 0
