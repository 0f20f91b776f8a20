"""`slowrung export`: the files that an athlete gets in the chat, written into a folder for whoever asks otherwise."""

from __future__ import annotations

from datetime import datetime
from pathlib import Path

from bot.conversation import privacy
from bot.conversation.desk import Desk, Mail
from storage import export
from storage.store import Store


class AlreadyThere(ValueError):
    """A file of that name is there; the sentence says what to do. Nothing was written."""


def write(store: Store, athlete_id: int, folder: Path, now: datetime) -> list[Path]:
    """Write everything stored of an athlete; the files. Nothing stored is changed, and no file is written over.

    Raises AlreadyThere.
    """
    with store.reading() as tx:
        desk = Desk.of(Mail(tx, now, ""), athlete_id)
        made = privacy.files(desk, export.everything(tx, athlete_id))
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    targets = {folder / name: content for name, content in made.items()}
    for path in targets:
        if path.exists():
            raise AlreadyThere(f"{path} is there already. Name another folder, or delete what is in it.")
    for path, content in targets.items():
        path.touch(mode=0o600, exist_ok=False)
        path.write_bytes(content)
    return list(targets)
