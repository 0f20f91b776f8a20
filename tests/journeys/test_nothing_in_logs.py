"""What people write, and every secret, stays out of the logs: a journey with all that can fail, as loud as can be."""

import json
import logging

import pytest
import structlog
from sqlalchemy.exc import IntegrityError

from bot import conversation, delivery, logs, serve
from storage import notes
from tests.bot_api_server import Trouble
from tests.journeys.serving import COACH, MIRA, town, until

SAID = ("quillback", "zebrafish", "marmoset", "wolverine", "axolotl")


def as_loud_as_can_be(*secrets):
    """As the service sets it up, and then everything turned up."""
    logs.set_up_logs(*secrets)
    structlog.configure(wrapper_class=structlog.make_filtering_bound_logger(logging.DEBUG))
    logging.root.setLevel(logging.DEBUG)
    for name in ("httpx", "httpcore", "telegram", "sqlalchemy.engine", "asyncio", "apscheduler", "uvicorn"):
        logging.getLogger(name).setLevel(logging.DEBUG)


@pytest.fixture
def _levels_as_before():
    names = ("httpx", "httpcore", "telegram", "sqlalchemy.engine", "asyncio", "apscheduler", "uvicorn")
    before = {name: logging.getLogger(name).level for name in names}
    yield
    for name, level in before.items():
        logging.getLogger(name).setLevel(level)


@pytest.mark.usefixtures("_levels_as_before")
async def test_no_word_of_anybody_and_no_secret_is_in_the_logs(tmp_path, monkeypatch, capsys):
    monkeypatch.setattr(serve, "SWEEP_S", 0.3)
    monkeypatch.setattr(delivery, "_backoff", lambda attempts: 0.1)
    handle = conversation.handle

    def fails(tx, incoming, person, now):
        if "marmoset" in incoming.text:
            raise ValueError(f"cannot read {incoming.text}")
        if "wolverine" in incoming.text:
            # A promise of the database, broken with somebody's words among the values.
            notes.add_note(tx, 999_999, incoming.text, now)
        handle(tx, incoming, person, now)

    monkeypatch.setattr(conversation, "handle", fails)
    async with town(tmp_path) as here:
        as_loud_as_can_be(here.api.token)
        async with here.running():
            await here.everyone_joins()
            here.api.says(MIRA, "pull-ups 5x3 +7.5, felt like a quillback")
            here.api.says(COACH, "mira note: zebrafish")
            here.api.troubles.append(Trouble("refuse", chat=MIRA, status=400, description="axolotl cannot be sent"))
            here.api.troubles.append(Trouble("drop", chat=COACH, times=2))
            for word in ("marmoset", "wolverine"):
                before = len(here.api.texts(COACH))
                here.api.says(MIRA, f"{word} is my word")
                await until(lambda before=before: len(here.api.texts(COACH)) > before, seconds=40)
            codes = [text for text in here.api.texts(COACH) if "/start" in text]
        told = capsys.readouterr()
    lines = told.err + told.out
    assert "message failed" in lines  # it was loud, and the failures were met
    assert all(json.loads(line) for line in told.err.splitlines() if line.startswith("{"))
    assert codes
    secrets = [here.api.token, here.coach_code, *(word for text in codes for word in text.split() if len(word) == 32)]
    assert len(secrets) >= 4
    assert [word for word in (*SAID, *secrets, "Tomás", "+7.5") if word in lines] == []


def test_a_failed_statement_does_not_quote_its_values(memory_store):
    with pytest.raises(IntegrityError) as raised, memory_store.transaction() as tx:
        notes.add_note(tx, 999_999, "quillback", serve.SystemClock().now())
    assert "quillback" not in str(raised.value)


@pytest.fixture
def memory_store():
    from storage.store import Store

    made = Store.open("sqlite://")
    yield made
    made.close()


def test_secrets_are_taken_out_of_tracebacks_too(capsys):
    logs.set_up_logs("7:top-secret", "door-secret")
    try:
        raise OSError("https://service/bot7:top-secret/getMe with door-secret")
    except OSError:
        logging.getLogger("some.library").exception("call to /bot7:top-secret failed")
    structlog.get_logger("ours").info("step", url="/bot7:top-secret/x door-secret")
    told = capsys.readouterr().err
    assert "OSError" in told
    assert "top-secret" not in told
    assert "door-secret" not in told
