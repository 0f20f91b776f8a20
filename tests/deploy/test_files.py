"""What the files for running it promise, they say."""

import re
from pathlib import Path

import pytest

from bot.settings import Settings

DEPLOY = Path(__file__).resolve().parents[2] / "deploy"


def read(name: str) -> str:
    return (DEPLOY / name).read_text(encoding="utf-8")


@pytest.mark.parametrize("name", ["slowrung.service", "slowrung-backup.service"])
def test_units_run_as_their_own_user_and_write_for_them_alone(name):
    lines = read(name).splitlines()
    assert {"User=slowrung", "UMask=0077", "NoNewPrivileges=true", "ProtectSystem=strict"} <= set(lines)


def test_the_container_installs_by_hash_runs_without_root_and_can_dump():
    text = read("Containerfile")
    assert "--require-hashes" in text
    assert text.index("USER slowrung") < text.index("ENTRYPOINT")
    assert "postgresql-client" in text


def test_every_setting_is_in_the_sample_or_has_no_business_there():
    named = set(re.findall(r"SLOWRUNG_([A-Z_]+)", read("slowrung.env.sample")))
    settings = {name.upper() for name in Settings.model_fields}
    assert named <= settings
    assert settings - named <= {"MESSAGES_PER_SECOND"}  # the service's published limit, nothing to turn


def test_settings_that_the_other_files_use_exist():
    settings = {name.upper() for name in Settings.model_fields}
    used = {name for path in DEPLOY.iterdir() for name in re.findall(r"SLOWRUNG_([A-Z_]+)", path.read_text("utf-8"))}
    assert used - {"TEST_POSTGRES_URL"} <= settings


def test_nothing_in_the_files_is_a_secret():
    for path in DEPLOY.iterdir():
        assert re.findall(r"\b\d{6,}:[A-Za-z0-9_-]{30,}", path.read_text("utf-8")) == [], path.name


def test_ports_are_published_on_this_machine_alone():
    ports = re.findall(r'ports: \["([^"]+)"\]', read("compose.yaml"))
    assert ports
    assert all(port.startswith("127.0.0.1:") for port in ports)
