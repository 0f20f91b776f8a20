"""Standard input and output, whatever the shell and the machine made of them."""

from __future__ import annotations

import io
import os
import sys
from pathlib import Path
from typing import TextIO


def make_ready() -> None:
    """As the program starts: no stream is missing, and none ends a command for its encoding."""
    # A shell can close them; then there is nothing to read, and nobody reads. Open as long as the process is.
    sys.stdin = sys.stdin or Path(os.devnull).open(encoding="utf-8")  # noqa: SIM115
    sys.stdout = sys.stdout or Path(os.devnull).open("w", encoding="utf-8")  # noqa: SIM115
    for stream in (sys.stdin, sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")


def json_lines() -> tuple[TextIO, TextIO]:
    """Standard input and output for JSON, which is UTF-8 whatever the machine's own encoding is. What is none arrives
    marked, so that only its line is refused."""
    if isinstance(sys.stdin, io.TextIOWrapper):
        sys.stdin.reconfigure(encoding="utf-8-sig", errors="surrogateescape")
    if isinstance(sys.stdout, io.TextIOWrapper):
        # Half a character, as JSON can spell one, is spelt again.
        sys.stdout.reconfigure(encoding="utf-8", errors="backslashreplace")
    return sys.stdin, sys.stdout
