"""All settings, in one place. Each is read from the environment as TAGGER_<NAME>."""

from __future__ import annotations

import os
from collections.abc import Mapping
from enum import StrEnum
from pathlib import Path
from typing import Annotated, Literal, Self
from urllib.parse import urlsplit

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, ValidationError, field_validator

from tagger.errors import Problem, TaggerError, problems_of
from tagger.words import LANGUAGES

PREFIX = "TAGGER_"
_OF_THE_TESTS = "TAGGER_TEST_"


class SettingsError(TaggerError):
    """A setting that cannot be used."""


class ClockingSense(StrEnum):
    """How the shop says clocking. Spec, store and tag's symbol keep the standard's either way."""

    STANDARD = "standard"  # counter-clockwise, elbow A at 6 o'clock
    CLOCKWISE = "clockwise_from_12"  # 360 minus the standard's


def _paths(value: object) -> object:
    return [part for part in value.split(os.pathsep) if part] if isinstance(value, str) else value


def _words(value: object) -> object:
    return [part.strip() for part in value.split(",") if part.strip()] if isinstance(value, str) else value


class Settings(BaseModel):
    """The settings of one running shop; see README.md beside this file for each."""

    model_config = ConfigDict(frozen=True, extra="forbid", str_strip_whitespace=True)

    # where things are
    database_url: str | None = None
    base_url: str = "http://127.0.0.1:8000"
    host: str = "127.0.0.1"
    port: Annotated[int, Field(ge=1, le=65535)] = 8000
    trusted_proxies: Annotated[tuple[str, ...], BeforeValidator(_words)] = ()

    # the shop, as tags, pages and letters name it
    shop_name: str = "Hose shop"
    shop_phone: str = ""
    shop_email: str = ""
    shop_address: str = ""

    # how the shop works
    language: str = "en"
    clocking_sense: ClockingSense = ClockingSense.STANDARD
    label_template_dirs: Annotated[tuple[Path, ...], BeforeValidator(_paths)] = ()
    label_template: str = "hang_tag"
    printer_dpi: Annotated[int, Field(ge=100, le=1200)] = 203
    length_bands: Literal["", "sae", "din"] = ""
    tables_dir: Path | None = None
    gs1_prefix: Annotated[str, Field(pattern=r"^(\d{6,12})?$")] = ""

    # telling others about order requests
    webhook_url: str = ""
    webhook_secret: str = ""
    smtp_url: str = ""
    mail_from: str = ""
    mail_to: str = ""

    # guards
    session_hours: Annotated[int, Field(ge=1, le=720)] = 12
    public_requests_per_minute: Annotated[int, Field(ge=1)] = 120
    page_cache_seconds: Annotated[int, Field(ge=0, le=3600)] = 60
    demo: bool = False

    @classmethod
    def from_env(cls, environ: Mapping[str, str] | None = None, **given: object) -> Self:
        """Settings from the environment; ``given`` wins over it, where it is not None.

        Raises SettingsError naming every variable that is wrong, or that is no setting.
        """
        environ = os.environ if environ is None else environ
        found: dict[str, object] = {
            name.removeprefix(PREFIX).lower(): value
            for name, value in environ.items()
            if name.startswith(PREFIX) and not name.startswith(_OF_THE_TESTS) and value != ""
        }
        found.update({name: value for name, value in given.items() if value is not None})
        try:
            return cls.model_validate(found)
        except ValidationError as error:
            raise SettingsError(
                Problem(PREFIX + p.field.upper(), p.value, p.why, p.mend) for p in problems_of(error)
            ) from None

    @field_validator("base_url")
    @classmethod
    def _host_alone(cls, value: str) -> str:
        parts = urlsplit(value)
        if parts.scheme not in ("http", "https") or not parts.netloc or parts.path.strip("/"):
            raise ValueError("is not the address of a host, such as https://tags.example.com")
        return value.rstrip("/")

    @field_validator("language")
    @classmethod
    def _known_language(cls, value: str) -> str:
        if value not in LANGUAGES:
            raise ValueError(f"is not a language here; there are {', '.join(LANGUAGES)}")
        return value

    @property
    def secure(self) -> bool:
        """Whether the shop is reached by https, so that cookies need never travel in clear."""
        return self.base_url.startswith("https:")
