"""The HTTP side: the webhook that answers after the commit, health that tells the truth, and metrics."""

from __future__ import annotations

import contextlib
import hmac
import json
from collections.abc import Iterator
from datetime import timedelta
from typing import TYPE_CHECKING

import uvicorn
from sqlalchemy.exc import OperationalError
from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import PlainTextResponse, Response
from starlette.routing import Route

from bot import metrics
from bot.channels.telegram import parse
from storage import health

if TYPE_CHECKING:
    from bot.serve import Service

WEBHOOK_PATH = "/telegram"
SECRET_HEADER = "x-telegram-bot-api-secret-token"  # noqa: S105  the header's name
LONGEST_BODY = 1_000_000
RETRY_AFTER_S = "5"
SWEEP_LATE = timedelta(minutes=2)


def application(service: Service) -> Starlette:
    """The routes of one service."""

    async def webhook(request: Request) -> Response:
        secret = service.settings.webhook_secret
        given = request.headers.get(SECRET_HEADER, "")
        if secret is None or not hmac.compare_digest(given.encode(), secret.get_secret_value().encode()):
            metrics.REFUSED.labels("secret").inc()
            return Response(status_code=404)
        body = await _body(request)
        if body is None:
            metrics.REFUSED.labels("size").inc()
            return Response(status_code=200)  # it would only be sent again
        try:
            update = parse(json.loads(body), service.bot)
        except (ValueError, RecursionError):
            update = None
        if update is None:
            metrics.REFUSED.labels("junk").inc()
            return Response(status_code=200)
        try:
            await service.accept([update])
        except OperationalError:
            return Response(status_code=503, headers={"Retry-After": RETRY_AFTER_S})
        return Response(status_code=200)

    async def healthz(_request: Request) -> Response:
        return PlainTextResponse("alive\n")

    async def readyz(_request: Request) -> Response:
        try:
            seen = await service.in_thread(lambda: _look(service))
        except Exception:
            return PlainTextResponse("the database is away\n", 503)
        sweep = seen.beats.get("sweep")
        if sweep is None or sweep > SWEEP_LATE:
            return PlainTextResponse("no sweep of late\n", 503)
        return PlainTextResponse("ready\n")

    async def counted(_request: Request) -> Response:
        try:
            seen = await service.in_thread(lambda: _look(service))
        except OperationalError:
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


def server(service: Service) -> Server:
    """A server on `SLOWRUNG_LISTEN`, not yet started."""
    assert service.settings.listen is not None
    host, _, port = service.settings.listen.rpartition(":")
    config = uvicorn.Config(
        application(service),
        host=host.strip("[]") or "127.0.0.1",
        port=int(port),
        log_config=None,
        access_log=False,
        lifespan="off",
        server_header=False,
        timeout_graceful_shutdown=5,
    )
    return Server(config)


def _look(service: Service) -> health.Health:
    with service.store.reading() as tx:
        return health.look(tx, service.clock.now())


async def _body(request: Request) -> bytes | None:
    """The body; None where it is longer than any update."""
    body = b""
    async for chunk in request.stream():
        body += chunk
        if len(body) > LONGEST_BODY:
            return None
    return body
