"""Settings are read from the environment; wrong ones stop the start with words."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from api.settings import ClockingSense, Settings, SettingsError


def test_settings_come_from_the_environment() -> None:
    found = Settings.from_env(
        {
            "TAGGER_BASE_URL": "https://tags.example.com/",
            "TAGGER_PORT": "9000",
            "TAGGER_CLOCKING_SENSE": "clockwise_from_12",
            "TAGGER_LABEL_TEMPLATE_DIRS": os.pathsep.join(("/srv/a", "/srv/b")),
            "TAGGER_TRUSTED_PROXIES": "10.0.0.1, 10.0.0.2",
            "TAGGER_DEMO": "1",
            "TAGGER_SHOP_PHONE": "",
            "TAGGER_TEST_CHROMIUM": "/usr/bin/chromium",
            "PATH": "/bin",
        }
    )
    assert (found.base_url, found.port, found.secure) == ("https://tags.example.com", 9000, True)
    assert found.clocking_sense is ClockingSense.CLOCKWISE
    assert found.label_template_dirs == (Path("/srv/a"), Path("/srv/b"))
    assert found.trusted_proxies == ("10.0.0.1", "10.0.0.2")
    assert found.demo


def test_what_is_given_wins_over_the_environment() -> None:
    assert Settings.from_env({"TAGGER_PORT": "9000"}, port=9001, host=None).port == 9001


@pytest.mark.parametrize(
    ("name", "value", "words"),
    [
        ("TAGGER_PORT", "many", "TAGGER_PORT"),
        ("TAGGER_COLOUR", "red", "TAGGER_COLOUR: This is not a known field"),
        ("TAGGER_BASE_URL", "tags.example.com", "not the address of a host"),
        ("TAGGER_BASE_URL", "https://example.com/tags", "not the address of a host"),
        ("TAGGER_LANGUAGE", "xx", "language is not available"),
        ("TAGGER_GS1_PREFIX", "12", "TAGGER_GS1_PREFIX"),
        ("TAGGER_CLOCKING_SENSE", "left", "standard"),
    ],
)
def test_a_wrong_setting_is_named(name: str, value: str, words: str) -> None:
    with pytest.raises(SettingsError, match=words):
        Settings.from_env({name: value})
