from __future__ import annotations

from collections.abc import Callable

import pytest

from bot.reading import read
from bot.reading.reading import Reading
from tests.bot.reading.messages import context


@pytest.fixture
def reads() -> Callable[..., Reading]:
    """reads(text, **context changes)"""
    return lambda text, **changes: read(text, context(**changes))
