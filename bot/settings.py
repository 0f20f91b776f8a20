"""Settings from the environment, read once. Only the token has no default."""

from __future__ import annotations

import difflib
import os
from collections.abc import Iterable
from pathlib import Path
from typing import Self

from pydantic import Field, SecretStr, ValidationError, field_validator, model_validator
from pydantic_settings import BaseSettings, SettingsConfigDict

DATABASE_FILE = "slowrung.sqlite3"
PREFIX = "SLOWRUNG_"
FOR_TESTS = f"{PREFIX}TEST_"  # the tests' own, of a shell in which somebody works on the house


class MissingSetting(ValueError):
    """Something that has no default was not given; the sentence names it."""


class WrongSetting(ValueError):
    """Settings that are no good; a line for each, that names it."""


def default_home() -> Path:
    """The user's data folder, as the XDG base directory specification names it."""
    base = os.environ.get("XDG_DATA_HOME") or str(Path.home() / ".local" / "share")
    return Path(base) / "slowrung"


class Settings(BaseSettings):
    """Every setting of the service; each is SLOWRUNG_ and its name in capitals.

    `telegram_api_url`: the root of the Bot API server; calls go to /bot<token>/method below it. `home`: where
    everything is written but a database that is named elsewhere. `webhook_url`: the public address that the service
    calls; none: long polling. `replicas`: how many of these share one token and database, for the rates.
    `keep_messages_days`: how long the words of a handled message are kept; its facts stay. `keep_done_days`: how long
    what fell due and was asked is known once it is done and answered. `keep_codes_days`: how long codes that were used
    or ran out, and who tried wrong ones. `listen`: HOST:PORT for the webhook, /healthz, /readyz and /metrics; none: no
    HTTP at all.
    """

    model_config = SettingsConfigDict(env_prefix=PREFIX, frozen=True, extra="ignore")

    telegram_token: SecretStr | None = None
    telegram_api_url: str = "https://api.telegram.org"
    database_url: str | None = None
    home: Path = Field(default_factory=default_home)
    messages_per_second: float = Field(default=25.0, gt=0, le=1000)
    replicas: int = Field(default=1, ge=1)
    keep_messages_days: int = Field(default=365, ge=7)
    keep_done_days: int = Field(default=365, ge=30)
    keep_codes_days: int = Field(default=30, ge=1)
    webhook_url: str | None = None
    webhook_secret: SecretStr | None = None
    listen: str | None = None

    @field_validator("telegram_api_url")
    @classmethod
    def _root(cls, url: str) -> str:
        if not url.startswith(("http://", "https://")):
            raise ValueError("must begin with http:// or https://")
        return url.rstrip("/")

    @field_validator("database_url")
    @classmethod
    def _known_database(cls, url: str | None) -> str | None:
        from storage.database import address
        from storage.errors import NoSuchDatabase

        if url is not None:
            try:
                address(url)
            except NoSuchDatabase as error:
                raise ValueError("must be sqlite:///PATH or postgresql://USER@HOST/NAME") from error
        return url

    @field_validator("listen")
    @classmethod
    def _host_and_port(cls, listen: str | None) -> str | None:
        if listen is not None and not listen.rpartition(":")[2].isdigit():
            raise ValueError("must be HOST:PORT")
        return listen

    @model_validator(mode="after")
    def _webhook_has_a_door(self) -> Self:
        if self.webhook_url is not None and self.listen is None:
            raise ValueError("SLOWRUNG_LISTEN must say where the webhook is served, such as 127.0.0.1:8080")
        return self

    @property
    def database(self) -> str:
        """The database's URL; a SQLite file in `home` where none is named."""
        return self.database_url or f"sqlite:///{self.home / DATABASE_FILE}"

    @property
    def backups(self) -> Path:
        return self.home / "backups"

    def token(self) -> str:
        """Raises MissingSetting."""
        if self.telegram_token is None or not self.telegram_token.get_secret_value():
            raise MissingSetting(
                "SLOWRUNG_TELEGRAM_TOKEN is not set. Ask the service's bot administration for a token and export it."
            )
        return self.telegram_token.get_secret_value()


def from_environment() -> Settings:
    """Raises WrongSetting."""
    try:
        return Settings()
    except ValidationError as error:
        wrong = error.errors(include_input=False)  # a secret may stand in it
        raise WrongSetting("\n".join(_told(one["loc"], one["msg"]) for one in wrong)) from None


def _told(where: tuple[str | int, ...], why: str) -> str:
    said = why.removeprefix("Value error, ")
    # What is wrong of several together names them itself.
    return f"{PREFIX}{'_'.join(map(str, where)).upper()}: {said}" if where else said


def unknown(names: Iterable[str]) -> list[tuple[str, str | None]]:
    """Names in an environment that look like settings and are none, each with the setting that may be meant."""
    known = [f"{PREFIX}{name.upper()}" for name in Settings.model_fields]
    strange = sorted(
        name
        for name in names
        if name.upper().startswith(PREFIX) and name.upper() not in known and not name.startswith(FOR_TESTS)
    )
    return [(name, next(iter(difflib.get_close_matches(name.upper(), known, 1, 0.8)), None)) for name in strange]
