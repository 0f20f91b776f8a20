"""What delivery knows of a service: it takes messages, or says why not."""

from __future__ import annotations

from typing import Protocol

from storage.outbox import Outgoing


class Later(Exception):
    """Not now. `seconds`: the least to wait; None: nobody said. `everyone`: the service wants no message at all until
    then, not only none to this chat."""

    def __init__(self, seconds: float | None = None, *, everyone: bool = False) -> None:
        super().__init__("later")
        self.seconds, self.everyone = seconds, everyone


class Gone(Exception):
    """The person cannot be reached there any more: blocked, deactivated, no such chat."""


class Refused(Exception):
    """The service will never take this message, or (`clip`) not the clip that goes before its words."""

    def __init__(self, why: str, *, clip: bool = False) -> None:
        super().__init__(why)
        self.clip = clip


class Moved(Exception):
    """The chat lives at another address now."""

    def __init__(self, address: str) -> None:
        super().__init__("moved")
        self.address = address


class Channel(Protocol):
    """A service by its name in the database. It knows nothing of training."""

    name: str

    async def send(self, message: Outgoing) -> str | None:
        """Send a message, or of a long one the part after the `parts_sent` that were taken before; the service's id of
        it comes back.

        Raises:
            Later, Gone, Refused, Moved.
        """
        ...

    def calls(self, message: Outgoing) -> int:
        """How many parts it goes out in, each a call of the service."""
        ...
