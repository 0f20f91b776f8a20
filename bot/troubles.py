"""What any command can meet outside of the program, told as one line. A fault of the program's own keeps its traceback.

Nothing is imported here before it is needed: `read` and `--help` start at once.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager

CLOSED_BY_READER = 0  # who reads had enough, as `head` does: nothing went wrong
CANNOT = 2


@contextmanager
def in_a_line() -> Iterator[None]:
    """End the process with a sentence where a file, a database or a pipe made trouble."""
    try:
        yield
    except BrokenPipeError:
        # The interpreter writes out what is left as it ends, and must not meet the closed pipe again.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        sys.exit(CLOSED_BY_READER)
    except Exception as error:
        sentence = told(error)
        if sentence is None:
            raise
        print(sentence, file=sys.stderr)
        sys.exit(CANNOT)


def told(error: Exception) -> str | None:
    """The sentence for an error of a file or a database; None where it is something else."""
    from storage.errors import StorageError, why

    if isinstance(error, StorageError):
        return str(error)
    if isinstance(error, OSError):
        where = "" if error.filename is None else f"{error.filename}: "
        return f"{where}{error.strerror or error}"
    if "sqlalchemy" in sys.modules:
        from sqlalchemy.exc import OperationalError

        if isinstance(error, OperationalError):
            return f"The database cannot be opened or written ({why(error)})."
    return None
