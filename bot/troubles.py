"""What any command can meet outside of the program, told as one line. A fault of the program's own keeps its traceback.

Nothing is imported here before it is needed: `read` and `--help` start at once.
"""

from __future__ import annotations

import os
import sys
from typing import Any

import typer
from typer.core import TyperGroup

CLOSED_BY_READER = 0  # who reads had enough, as `head` does: nothing went wrong
CANNOT = 2


class Commands(TyperGroup):
    """The commands, with one place for the errors of files, databases and pipes."""

    def invoke(self, ctx: Any) -> Any:
        try:
            return super().invoke(ctx)
        except BrokenPipeError as error:
            # The interpreter writes out what is left as it ends, and must not meet the closed pipe again.
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
            raise typer.Exit(CLOSED_BY_READER) from error
        except Exception as error:
            sentence = told(error)
            if sentence is None:
                raise
            typer.echo(sentence, err=True)
            raise typer.Exit(CANNOT) from error


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
