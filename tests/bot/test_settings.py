"""Settings from the environment, and that they reach what they set."""

import re
from pathlib import Path
from types import SimpleNamespace

import pytest
from pydantic import ValidationError

from bot import schedule, serve
from bot.channels.telegram import make_bot
from bot.clock import SystemClock
from bot.settings import Settings, unknown
from storage.retention import Keep
from storage.store import Store


@pytest.fixture(autouse=True)
def _bare(monkeypatch, tmp_path):
    monkeypatch.setenv("SLOWRUNG_HOME", str(tmp_path))


@pytest.mark.parametrize("days", [7, 30, 3650])
def test_how_long_words_are_kept_can_be_set(monkeypatch, days):
    monkeypatch.setenv("SLOWRUNG_KEEP_MESSAGES_DAYS", str(days))
    assert Settings().keep_messages_days == days


@pytest.mark.parametrize("days", ["0", "6", "-1", "never"])
def test_words_are_kept_a_week_at_least_so_that_corrections_find_them(monkeypatch, days):
    monkeypatch.setenv("SLOWRUNG_KEEP_MESSAGES_DAYS", days)
    with pytest.raises(ValidationError):
        Settings()


async def test_the_service_keeps_words_as_long_as_was_set(monkeypatch, tmp_path):
    asked = []
    monkeypatch.setattr(schedule, "sweep_and_beat", lambda _store, _now, _most, keep: asked.append(keep) or 0)
    settings = Settings(
        telegram_token="7:t", keep_messages_days=30, keep_codes_days=5, database_url=f"sqlite:///{tmp_path}/a.sqlite3"
    )
    store = Store.open(settings.database)
    service = serve.Service(settings, store, make_bot("7:t", "http://127.0.0.1:1"), SystemClock())
    await service._sweep()
    service._threads.shutdown()
    store.close()
    assert asked == [Keep(messages=30, done=365, codes=5)]


def test_secrets_hide_wherever_settings_are_shown():
    settings = Settings(telegram_token="7:hidden", webhook_secret="hidden")
    shown = f"{settings!r} {settings} {settings.model_dump()} {SimpleNamespace(s=settings)}"
    assert "hidden" not in shown


def test_the_sample_names_every_setting_and_none_that_there_is_not():
    sample = (Path(__file__).parents[2] / "deploy" / "slowrung.env.sample").read_text(encoding="utf-8")
    named = set(re.findall(r"SLOWRUNG_[A-Z_]+", sample))
    assert named == {f"SLOWRUNG_{name.upper()}" for name in Settings.model_fields}
    assert unknown(named) == []
