"""The console command `slowrung`."""

from __future__ import annotations

import os
import sys

from bot import streams
from bot.troubles import in_a_line


def run() -> None:
    """The console command."""
    # What this program writes is health data: readable by its own user only.
    os.umask(0o077)
    streams.make_ready()
    try:
        if sys.argv[1:] == ["read"]:
            # Often started for one message: the library that reads options takes longer to load than the message.
            from bot.reading.command import run as read_all

            with in_a_line():
                read_all()
        else:
            from bot.commands import app

            app()
    except KeyboardInterrupt:
        sys.exit(130)


if __name__ == "__main__":
    run()
