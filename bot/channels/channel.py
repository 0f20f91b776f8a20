"""What delivery knows of a service: it takes messages, or says why not."""

from __future__ import annotations

from typing import Protocol

from storage.outbox import Outgoing


class Later(Exception):
    """Not now. `seconds`: how long the service wants to be left alone; None: it did not say."""

    def __init__(self, seconds: float | None = None) -> None:
        super().__init__("later")
        self.seconds = seconds


class Gone(Exception):
    """The person cannot be reached there any more: blocked, deactivated, no such chat."""


class Refused(Exception):
    """The service will never take this message."""


class Moved(Exception):
    """The chat lives at another address now."""

    def __init__(self, address: str) -> None:
        super().__init__("moved")
        self.address = address


class Channel(Protocol):
    """A service by its name in the database. It knows nothing of training."""

    name: str

    async def send(self, message: Outgoing) -> str | None:
        """Send one message; the service's id of it comes back.

        Raises:
            Later, Gone, Refused, Moved.
        """
        ...
