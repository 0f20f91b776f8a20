"""What is stored of an athlete, to hand over or to end: they ask in chat, and nobody has to allow it.

The end is asked for twice, within a day. Then the coach is told, and a due row waits until that and the farewell are
out; `carry_out` takes every row in one transaction, and the file is rewritten without them (`bot/schedule.py`).
"""

from __future__ import annotations

import io
import zipfile
from datetime import datetime, timedelta
from functools import cache
from pathlib import Path
from typing import Any

import tomli
from sqlmodel import Session as Tx

from bot.conversation.desk import Desk
from bot.conversation.reasons import order_in_words, place
from bot.wording import Wording
from bot.wording.sets import done_in_words, in_a_line
from storage import backup, due, erasure, export, outbox, persons, questions
from storage.due import Due
from storage.persons import Who

WORDS = Path(__file__).with_name("privacy.toml")
QUESTION = ERASE = "erase"
CONFIRM, KEEP = "x:erase", "x:keep"
CONFIRM_WITHIN = timedelta(days=1)
TRY_AGAIN_AFTER = timedelta(minutes=10)
WAIT_AT_MOST = timedelta(days=1)


@cache
def _words() -> dict[str, Any]:
    """Case-folded, as messages are: "weißt" is "weisst" there."""
    found = tomli.loads(WORDS.read_text(encoding="utf-8"))
    return {
        name: [one.casefold() for one in value] if isinstance(value, list) else value for name, value in found.items()
    }


def wanted(text: str) -> str | None:
    """ "ask" or "erase", where a message is about the athlete's data and nothing else."""
    words, known = _plain(text), _words()
    folded = f" {' '.join(words)} "
    if len(words) > known["words_at_most"] or not any(f" {phrase} " in folded for phrase in known["data"]):
        return None
    if set(words) & set(known["erase"]):
        return None if set(words) & set(known["not"]) else "erase"
    return "ask" if set(words) & set(known["ask"]) else None


def _plain(text: str) -> list[str]:
    return [word.strip(".,;:!?¡¿()\"'").casefold() for word in text.replace("’", "'").split()]


def calls_off(text: str) -> bool:
    """ "No", "don't delete it", "nein, doch nicht": whoever is not sure keeps what is stored."""
    words, known = set(_plain(text)), _words()
    return "?" not in text and bool(words & set(known["keep"])) and words <= {*known["keep"], *known["small"], ""}


def handle(desk: Desk, text: str, pressed: str | None) -> bool:
    """Answer a message or press about the athlete's data. False: it is about something else.

    Words that were written before the question came confirm nothing.
    """
    if pressed in (CONFIRM, KEEP):
        _confirmed(desk) if pressed == CONFIRM and _open(desk) else _kept(desk)
        return True
    kind = None if pressed is not None else wanted(text)
    if kind == "ask":
        hand_over(desk)
    elif kind == "erase" and _open(desk):
        asked = questions.open_question(desk.tx, desk.person, QUESTION)
        if asked is not None and desk.said_at > asked.asked_at.replace(microsecond=0):
            _confirmed(desk)
    elif kind == "erase":
        questions.ask(desk.tx, desk.person, QUESTION, desk.now)
        say = desk.say
        buttons = [(say.say("button-erase"), CONFIRM), (say.say("button-keep"), KEEP)]
        desk.tell(say.say("erase-sure", coach=desk.coach.name, days=backup.KEEP_ERASED.days), buttons=buttons)
    elif kind is None and pressed is None and calls_off(text) and _open(desk):
        return _called_off(desk)
    else:
        return kind is not None
    return True


def _open(desk: Desk) -> bool:
    asked = questions.open_question(desk.tx, desk.person, QUESTION)
    return asked is not None and desk.now - asked.asked_at <= CONFIRM_WITHIN


def _called_off(desk: Desk) -> bool:
    """Nothing is deleted; where something else was asked since, the words are left to answer that."""
    newest = next(iter(questions.stood_open(desk.tx, desk.person, desk.said_at)), None)
    if newest is not None and newest.kind != QUESTION:
        questions.expire(desk.tx, desk.person, QUESTION, desk.now)
        return False
    _kept(desk)
    return True


def _kept(desk: Desk) -> None:
    questions.expire(desk.tx, desk.person, QUESTION, desk.now)
    going = due.open_for(desk.tx, desk.person, ERASE)
    desk.tell(desk.say.say("erase-running" if going else "erase-kept"))


def _confirmed(desk: Desk) -> None:
    """Say so to both; from now on nothing more is sent, and the rest is `carry_out`'s."""
    questions.expire(desk.tx, desk.person, None, desk.now)
    farewell = desk.say.say("erase-farewell", name=desk.person.name, days=backup.KEEP_ERASED.days)
    desk.tell(farewell, cause=_cause(desk.id))
    desk.mail.post(
        desk.coach,
        desk.say_coach.say("erase-for-coach", name=desk.person.name),
        about=desk.athlete.handle,
        cause=f"{_cause(desk.id)}:coach",
    )
    persons.update_athlete(desk.tx, desk.id, {"silenced": True})
    desk.plant(ERASE, desk.today, desk.now + TRY_AGAIN_AFTER)


def _cause(athlete_id: int) -> str:
    return f"erase:{athlete_id}"


def carry_out(tx: Tx, row: Due, now: datetime) -> None:
    """Erase the athlete of a due row. While the last words are not out yet, the row waits on; a day at most.

    It waits as well while a message of their coach is in work: that may wait for this athlete, and is cleaned of them.
    """
    assert row.athlete_id is not None
    cause = _cause(row.athlete_id)
    waited = now.date() - row.for_date
    owed = waited <= WAIT_AT_MOST and (outbox.is_owed(tx, cause) or outbox.is_owed(tx, f"{cause}:coach"))
    coach = Who("coach", persons.athlete(tx, row.athlete_id).coach_id)
    if owed or not persons.try_lock(tx, coach):
        due.schedule(tx, row.who, ERASE, row.for_date, now + TRY_AGAIN_AFTER)
    else:
        erasure.erase(tx, row.athlete_id, now)


# ---- Handing over --------------------------------------------------------------------------------------------------


def hand_over(desk: Desk) -> None:
    """What there is in numbers, then the files."""
    say = desk.say
    rows = export.everything(desk.tx, desk.id)
    sessions = [one for one in desk.record.sessions if one.sets]
    desk.tell(
        say.say(
            "data-overview",
            sessions=len(sessions),
            sets=sum(len(one.sets) for one in sessions),
            pain=len(desk.record.pain),
            weights=len(desk.record.bodyweights),
            messages=sum(one["kind"] == "text" for one in rows["incoming"]),
            coach=desk.coach.name,
        )
    )
    for name, content in files(desk, rows).items():
        desk.tell(say.say("data-file", name=name), file=(name, content))


def files(desk: Desk, rows: dict[str, list[dict[str, Any]]]) -> dict[str, bytes]:
    """A page to read, everything as JSON, and the tables as CSV in one archive, by name."""
    made = export.files(desk.tx, desk.id)
    return {
        desk.say.say("data-page-name"): page(desk, rows).encode(),
        "everything.json": made.pop("everything.json"),
        "tables.zip": _archive(made),
    }


def page(desk: Desk, rows: dict[str, list[dict[str, Any]]]) -> str:
    """All that stands of the athlete, day by day, in their language; then every stored row as it is."""
    say, row = desk.say, desk.athlete
    lines = [
        say.say("data-heading", name=row.name, day=say.long_day(desk.today)),
        say.say("data-who", handle=row.handle, zone=row.timezone, language=row.language, coach=desk.coach.name),
        say.say("card-bodyweight", weight=say.load(row.bodyweight_kg)),
    ]
    for day in export.diary(desk.tx, desk.id):
        lines += ["", f"{say.long_day(day.on)} {day.on.year}", *_of_day(day, say)]
    lines += ["", "", say.say("data-rows"), *export.in_lines(rows)]
    return "\n".join(lines) + "\n"


def _of_day(day: export.DiaryDay, say: Wording) -> list[str]:
    lines = []
    if day.plan is not None and day.plan.sets:
        lines.append(say.say("data-plan", work=in_a_line(day.plan.sets, say)))
    lines += [say.say("data-done", work=done_in_words(one.sets, say)) for one in day.sessions if one.sets]
    for one in day.pain:
        where = place(one.site, one.side, say) if one.site else ""
        lines.append(say.say("data-pain", place=where, score="–" if one.score is None else say.number(one.score)))
    lines += [say.say("data-sign", sign=say.say(f"sign-{one.sign}")) for one in day.signs]
    lines += [say.say("card-bodyweight", weight=say.load(one.kg)) for one in day.bodyweights]
    lines += [say.say("data-order", what=order_in_words(one, say)) for one in day.orders]
    return lines


def _archive(files: dict[str, bytes]) -> bytes:
    held = io.BytesIO()
    with zipfile.ZipFile(held, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, content in files.items():
            archive.writestr(zipfile.ZipInfo(name), content, zipfile.ZIP_DEFLATED)
    return held.getvalue()
