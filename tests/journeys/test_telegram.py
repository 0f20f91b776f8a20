"""Journeys through Telegram: the service in full, the other end strict and, on purpose, unreliable."""

import asyncio
import json
import os
import signal
import subprocess
import sys
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from bot import delivery, serve
from tests.bot_api_server import Trouble
from tests.journeys.serving import COACH, MIRA, STRANGER, TOMAS, town, until

ROOT = Path(__file__).resolve().parents[2]
REPORT = "pull-ups 5x3 +7.5, last @8"


@pytest.fixture(autouse=True)
def _sweeps_are_quick(monkeypatch):
    monkeypatch.setattr(serve, "SWEEP_S", 0.3)
    monkeypatch.setattr(delivery, "_backoff", lambda attempts: 0.2)


def helps(here):
    """How often Mira was sent the help."""
    return sum("own words" in text for text in here.api.texts(MIRA))


async def test_a_coach_claims_the_bot_and_an_athlete_joins_and_is_answered(tmp_path):
    async with town(tmp_path) as here, here.running():
        await here.everyone_joins()
        await until(lambda: any("Welcome, Mira" in text for text in here.api.texts(MIRA)))
        before = len(here.api.texts(MIRA))
        here.api.says(MIRA, REPORT)
        await until(lambda: len(here.api.texts(MIRA)) > before)
        assert here.reports_of("mira") == 1
        assert "7.5" in here.api.texts(MIRA)[before]
    assert here.api.refused == []


async def test_a_code_works_once(tmp_path):
    async with town(tmp_path) as here, here.running():
        await here.joins(COACH, here.coach_code)
        await here.joins(STRANGER, here.coach_code)
        assert "does not work" in here.api.texts(STRANGER)[-1]
        before = len(here.api.texts(COACH))
        here.api.says(COACH, "roster")
        await until(lambda: len(here.api.texts(COACH)) > before)
        assert "· mira: " in here.api.texts(COACH)[-1]


async def test_an_athletes_data_goes_out_as_files_and_is_not_kept_in_the_outbox(tmp_path):
    async with town(tmp_path) as here, here.running():
        await here.everyone_joins()
        here.api.says(MIRA, "send me all my data")
        files = lambda: [one for one in here.api.accepted if one.picture and one.chat == MIRA]  # noqa: E731
        await until(lambda: len(files()) == 3)
        assert [one.text for one in files()] == ["my-page.txt", "everything.json", "tables.zip"]
        assert json.loads(files()[1].picture)["athlete"][0]["handle"] == "mira"
    assert here.api.refused == []


async def test_an_edit_changes_nothing_and_that_is_said_once_a_message(tmp_path):
    async with town(tmp_path) as here, here.running():
        here.everyone_is_here()
        here.api.says(MIRA, "pull-ups 5x3 +20")
        await until(lambda: here.reports_of("mira") == 1)
        told = lambda: [text for text in here.api.texts(MIRA) if "don't read edits" in text]  # noqa: E731
        here.api.edits(MIRA, "pull-ups 5x3 +22.5")
        await until(lambda: len(told()) == 1)
        here.api.edits(MIRA, "pull-ups 5x3 +22")
        here.api.says(MIRA, "that was 22.5, not 20")
        await until(lambda: any("now reads: pull-ups 5×3 +22.5 kg" in text for text in here.api.texts(MIRA)))
        assert here.reports_of("mira") == 1
        here.api.edits(MIRA, "that was 25, not 20")
        await until(lambda: len(told()) == 2)
        assert here.reports_of("mira") == 1
    assert here.api.refused == []


async def test_a_message_that_waited_a_day_at_the_service_tells_of_the_day_it_was_sent(tmp_path):
    async with town(tmp_path) as here, here.running():
        here.everyone_is_here()
        sent = datetime.now(UTC) - timedelta(days=1)  # noqa: TID251  the journey's clock is the machine's
        here.api.says(MIRA, "left elbow 3, bw 62.5", date=int(sent.timestamp()))
        await until(lambda: here.record_of("mira").pain)
        told, on = here.record_of("mira"), sent.astimezone(ZoneInfo("Europe/Zurich")).date()
        assert [one.on for one in told.pain] == [on]
        assert told.bodyweights[-1].on == on
    assert here.api.refused == []


async def test_a_stranger_learns_nothing_but_that_a_code_is_needed(tmp_path):
    async with town(tmp_path) as here, here.running():
        await here.everyone_joins()
        for text in ("what's today?", "roster", "mira", REPORT, "/start", "/start " + "x" * 32):
            here.api.says(STRANGER, text)
        await until(lambda: len(here.api.texts(STRANGER)) >= 2)
        await until(lambda: not here.owed())
        said = here.api.texts(STRANGER)
        assert ["by invitation" in text for text in said] == [True, False]  # once an hour; and that the code is none
        assert not any(mark in "\n".join(said) for mark in ("Mira", "Tomás", "Inês", "kg", "Pull"))


async def test_a_press_is_answered_and_does_what_its_label_says(tmp_path):
    async with town(tmp_path) as here, here.running():
        here.everyone_is_here()
        here.api.says(MIRA, REPORT)
        await until(lambda: any(message.buttons for message in here.api.accepted if message.chat == MIRA))
        asked = next(message for message in reversed(here.api.accepted) if message.chat == MIRA and message.buttons)
        before = len(here.api.texts(MIRA))
        here.api.presses(MIRA, asked.buttons[0][0])
        await until(lambda: len(here.api.answered_presses) == 1)
        await until(lambda: len(here.api.texts(MIRA)) > before)


@pytest.mark.parametrize("data", ["", "a:1", "t:" + "9" * 60, "s:2", "\x00", "a:1:one_arm_pull_up:one_arm_pull_up"])
async def test_forged_presses_of_an_athlete_change_nothing_of_another(tmp_path, data):
    async with town(tmp_path) as here, here.running():
        here.everyone_is_here()
        known = here.record_of("tomas")
        before = len(here.api.answered_presses)
        here.api.sends_press(MIRA, data)
        await until(lambda: len(here.api.answered_presses) > before)
        here.api.says(MIRA, "help")
        await until(lambda: any("own words" in text for text in here.api.texts(MIRA)))
        assert here.record_of("tomas").orders == known.orders


async def test_an_update_delivered_twice_counts_once(tmp_path):
    async with town(tmp_path) as here, here.running():
        here.everyone_is_here()
        before = len(here.api.texts(MIRA))
        number = here.api.says(MIRA, REPORT)
        update = next(one for one in here.api.waiting() if one["update_id"] == number)
        await until(lambda: here.reports_of("mira") == 1)
        # As after a crash before the confirmation reached the service: a new loop asks from the start.
        here.api.delivers_again(number, update)
        here.api.says(MIRA, "help")
        await until(lambda: any("own words" in text for text in here.api.texts(MIRA)[before:]))
        assert here.reports_of("mira") == 1


CRASHES = {
    "before the commit": """
        from bot.serve import Service
        async def die(self, batch):
            if any(one.get("message", {}).get("text") == REPORT for one in batch): kill()
            return await accept(self, batch)
        accept, Service.accept = Service.accept, die
    """,
    "between commit and handling": """
        from bot import worker
        from storage import inbox
        def die(store, now):
            with store.reading() as tx:
                if (row := inbox.next_unhandled(tx, now)) and row.text == REPORT: kill()
            return handle(store, now)
        handle, worker.handle_next = worker.handle_next, die
    """,
    "within the transaction": """
        from storage import inbox
        def die(tx, incoming_id, now):
            if inbox.get(tx, incoming_id).text == REPORT: kill()
            return mark(tx, incoming_id, now)
        mark, inbox.mark_handled = inbox.mark_handled, die
    """,
    "between sending and marking": """
        from storage import outbox
        outbox.mark_sent = lambda tx, outgoing_id, now, service_id: kill()
    """,
}


@pytest.mark.parametrize("moment", CRASHES)
async def test_a_crash_loses_nothing_and_repeats_at_most_one_message(tmp_path, moment):
    async with town(tmp_path) as here:
        here.everyone_is_here()
        before = len(here.api.texts(MIRA))
        here.api.says(MIRA, REPORT)
        assert await asyncio.to_thread(_run_until_killed, here.settings, CRASHES[moment]) == -signal.SIGKILL
        async with here.running():
            await until(lambda: len(here.api.texts(MIRA)) > before and here.reports_of("mira") == 1)
            here.api.says(MIRA, "help")
            await until(lambda: any("own words" in text for text in here.api.texts(MIRA)[before:]))
            # A claim of the dead process runs out after its lease; nothing of this journey waits for that.
        answers = here.api.texts(MIRA)[before:]
        assert here.reports_of("mira") == 1
        assert len(answers) - len(set(answers)) <= 1


def _run_until_killed(settings, patch):
    """The service in a process of its own that kills itself at one moment; its exit code."""
    lines = [line[8:] if line.startswith(" " * 8) else line for line in patch.splitlines()]
    script = "\n".join(
        [
            "import os, signal",
            f"REPORT = {REPORT!r}",
            "kill = lambda: os.kill(os.getpid(), signal.SIGKILL)",
            *lines,
            "from bot.main import run",
            "run()",
        ]
    )
    environment = os.environ | {
        "SLOWRUNG_TELEGRAM_TOKEN": settings.token(),
        "SLOWRUNG_TELEGRAM_API_URL": settings.telegram_api_url,
        "SLOWRUNG_DATABASE_URL": settings.database,
        "SLOWRUNG_HOME": str(settings.home),
    }
    done = subprocess.run(
        [sys.executable, "-c", script, "serve"], cwd=ROOT, env=environment, timeout=60, capture_output=True
    )
    return done.returncode


async def test_the_coach_is_told_when_an_athlete_has_blocked_the_bot(tmp_path):
    async with town(tmp_path) as here, here.running():
        here.everyone_is_here()
        await until(lambda: not here.owed())
        here.api.blocked_by.add(MIRA)
        before = len(here.api.texts(COACH))
        here.api.says(MIRA, REPORT)
        await until(lambda: any("Mira" in text for text in here.api.texts(COACH)[before:]))
        here.api.says(TOMAS, "help")
        await until(lambda: any("own words" in text for text in here.api.texts(TOMAS)))


@pytest.mark.parametrize(
    "trouble",
    [
        Trouble("refuse", status=429, description="Too Many Requests: retry after 1", retry_after=1),
        Trouble("refuse", status=500, times=3),
        Trouble("refuse", status=502, description="Bad Gateway"),
        Trouble("drop", times=2),
    ],
    ids=lambda trouble: f"{trouble.how} {trouble.status}",
)
async def test_trouble_at_the_service_delays_a_message_and_never_loses_or_doubles_it(tmp_path, trouble):
    async with town(tmp_path) as here, here.running():
        here.everyone_is_here()
        trouble.chat = MIRA
        here.api.troubles.append(trouble)
        here.api.says(MIRA, "help")
        await until(lambda: helps(here))
        assert trouble.times == 0
        await until(lambda: not here.owed())
        assert helps(here) == 1


async def test_a_message_that_was_taken_before_the_line_broke_comes_twice_at_most(tmp_path):
    async with town(tmp_path) as here, here.running():
        here.everyone_is_here()
        here.api.troubles.append(Trouble("accept_and_drop", chat=MIRA))
        here.api.says(MIRA, "help")
        await until(lambda: helps(here))
        await until(lambda: not here.owed())
        assert helps(here) <= 2


async def test_a_message_that_the_service_never_takes_holds_up_nobody(tmp_path):
    async with town(tmp_path) as here, here.running():
        here.everyone_is_here()
        await until(lambda: not here.owed())
        here.api.troubles.append(Trouble("refuse", chat=MIRA, status=400, description="Bad Request: no"))
        here.api.says(MIRA, "help")
        here.api.says(TOMAS, "help")
        await until(lambda: any("own words" in text for text in here.api.texts(TOMAS)))
        here.api.says(MIRA, "help")
        await until(lambda: any("own words" in text for text in here.api.texts(MIRA)))


async def test_a_service_that_is_away_at_start_is_waited_for(tmp_path, monkeypatch):
    monkeypatch.setattr(serve, "TROUBLE_S", 0.1)
    async with town(tmp_path) as here:
        here.api.troubles.append(Trouble("refuse", method="getMe", status=502, times=2))
        here.api.troubles.append(Trouble("drop", method="getUpdates", times=2))
        async with here.running():
            await here.joins(COACH, here.coach_code)


@pytest.mark.parametrize("text", ["", "🙂🙂", "x" * 4000, "reps 500 +900", "\u202e<b>&_*[", "/start", "5"])
async def test_odd_messages_get_a_short_answer(tmp_path, text):
    async with town(tmp_path) as here, here.running():
        here.everyone_is_here()
        before = len(here.api.texts(MIRA))
        here.api.says(MIRA, text)
        await until(lambda: len(here.api.texts(MIRA)) > before)
    assert [one for one in here.api.refused if one[1] == 400] == []


async def test_logs_carry_neither_words_nor_token(tmp_path, capfd):
    from bot.logs import set_up_logs

    async with town(tmp_path) as here:
        set_up_logs(here.api.token)
        async with here.running():
            here.everyone_is_here()
            here.api.troubles.append(Trouble("refuse", chat=MIRA, status=400, description="Bad Request: no"))
            here.api.says(MIRA, "my secret elbow hurts 4/10")
            await until(lambda: here.record_of("mira").pain)
            await until(lambda: not here.owed())
    logged = capfd.readouterr().err
    assert "serving" in logged
    assert not any(mark in logged for mark in ("elbow", here.api.token, "Mira"))
