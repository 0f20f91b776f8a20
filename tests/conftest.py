"""What every test is given back: logging as it was before."""

from __future__ import annotations

import logging

import pytest
import structlog


@pytest.fixture(autouse=True)
def _logs_as_before():
    """A test that sets up logs writes to streams that are closed when it ends; nobody after it may."""
    handlers, level = logging.root.handlers[:], logging.root.level
    yield
    structlog.reset_defaults()
    logging.root.handlers[:] = handlers
    logging.root.setLevel(level)
