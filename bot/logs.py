"""Structured logs: one JSON object a line, our own ids, no text of anybody's and no token."""

from __future__ import annotations

import logging
import sys
from collections.abc import MutableMapping
from typing import Any

import structlog


class Redacting(logging.Filter):
    """Takes the token out of what other libraries log."""

    def __init__(self, secret: str) -> None:
        super().__init__()
        self._secret = secret

    def filter(self, record: logging.LogRecord) -> bool:
        if self._secret in record.getMessage():
            record.msg, record.args = record.getMessage().replace(self._secret, "…"), ()
        return True


def set_up_logs(secret: str) -> None:
    """Our events as JSON on standard error; other libraries' warnings too, redacted."""
    handler = logging.StreamHandler(sys.stderr)
    handler.addFilter(Redacting(secret))
    logging.basicConfig(level=logging.WARNING, handlers=[handler], force=True)

    def redact(_logger: Any, _name: str, event: MutableMapping[str, Any]) -> MutableMapping[str, Any]:
        return {key: value.replace(secret, "…") if isinstance(value, str) else value for key, value in event.items()}

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
