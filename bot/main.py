"""The console command `slowrung`."""

from __future__ import annotations

import os
import sys


def run() -> None:
    """The console command."""
    # What this program writes is health data: readable by its own user only.
    os.umask(0o077)
    try:
        if sys.argv[1:] == ["read"]:
            # Often started for one message: the library that reads options takes longer to load than the message.
            from bot.reading.command import run as read_all

            read_all()
        else:
            from bot.commands import app

            app()
    except KeyboardInterrupt:
        sys.exit(130)
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        sys.exit(0)


if __name__ == "__main__":
    run()
