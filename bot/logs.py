"""Structured logs: one JSON object a line, our own ids, no text of anybody's and no token."""

from __future__ import annotations

import logging
import sys
from collections.abc import MutableMapping, Sequence
from typing import Any

import structlog


class Redacting(logging.Formatter):
    """Takes secrets out of what other libraries log: out of the whole text, a traceback with its URLs too."""

    def __init__(self, *secrets: str) -> None:
        super().__init__()
        self._secrets = secrets

    def format(self, record: logging.LogRecord) -> str:
        return _without(super().format(record), self._secrets)


def _without(text: str, secrets: Sequence[str]) -> str:
    for secret in secrets:
        text = text.replace(secret, "…")
    return text


def why_away(error: BaseException) -> str:
    """What the database's own code says (SQLITE_FULL, SQLITE_BUSY, 57P01 …): its words could quote somebody."""
    cause = getattr(error, "orig", None) or error
    code = getattr(cause, "sqlite_errorname", None) or getattr(cause, "sqlstate", None)
    return str(code or type(cause).__name__)


def set_up_logs(*secrets: str) -> None:
    """Our events as JSON on standard error; other libraries' warnings too, redacted."""
    handler = logging.StreamHandler(sys.stderr)
    handler.setFormatter(Redacting(*secrets))
    # Below that, the libraries tell what they send and fetch, word for word: never, whatever level somebody sets.
    handler.setLevel(logging.WARNING)
    logging.basicConfig(level=logging.WARNING, handlers=[handler], force=True)

    def redact(_logger: Any, _name: str, event: MutableMapping[str, Any]) -> MutableMapping[str, Any]:
        return {key: _without(value, secrets) if isinstance(value, str) else value for key, value in event.items()}

    structlog.configure(
        processors=[
            structlog.processors.add_log_level,
            structlog.processors.TimeStamper(fmt="iso", utc=True),
            redact,
            structlog.processors.JSONRenderer(),
        ],
        wrapper_class=structlog.make_filtering_bound_logger(logging.INFO),
        logger_factory=structlog.PrintLoggerFactory(sys.stderr),
        cache_logger_on_first_use=False,
    )


def log_beside() -> None:
    """For commands that speak on standard output: trouble goes to standard error, as words."""
    structlog.configure(
        processors=[structlog.processors.add_log_level, structlog.processors.KeyValueRenderer(key_order=["event"])],
        wrapper_class=structlog.make_filtering_bound_logger(logging.WARNING),
        logger_factory=structlog.PrintLoggerFactory(sys.stderr),
        cache_logger_on_first_use=False,
    )
