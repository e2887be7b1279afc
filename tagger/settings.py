"""The shop's settings that the command line and the web application share.

Each is read from the environment as TAGGER_<NAME>; api/README.md explains each. The web application
has more of its own (api/settings.py) and refuses unknown names; here an unknown name may be one of
those and is ignored.
"""

from __future__ import annotations

import os
from collections.abc import Iterable, Mapping, Sequence
from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Any, Final, Literal, Self
from urllib.parse import urlsplit

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, ValidationError, field_validator

from tagger.errors import Problem, TaggerError, problems_of
from tagger.i18n import LANGUAGES, SOURCE
from tagger.messages import Message
from tagger.spec import SpecValueError

if TYPE_CHECKING:  # a command that prints nothing loads no templates
    from tagger.printing.template import Template
    from tagger.signing import Keys
    from tagger.trade.tables import Tables

PREFIX = "TAGGER_"
LEAST_KEPT: Final = 30
"""Days: a slip of the keyboard must not erase whom to call about last week's hose."""
_OF_THE_TESTS = "TAGGER_TEST_"


class ClockingSense(StrEnum):
    """How the shop says clocking. Spec, store and tag's symbol keep the standard's either way."""

    STANDARD = "standard"  # counter-clockwise, elbow A at 6 o'clock
    CLOCKWISE = "clockwise_from_12"  # 360 minus the standard's


class SettingsError(TaggerError):
    """A setting that cannot be used."""


def _paths(value: object) -> object:
    return [part for part in value.split(os.pathsep) if part] if isinstance(value, str) else value


class ShopSettings(BaseModel):
    """The settings of one shop."""

    model_config = ConfigDict(frozen=True, extra="ignore", str_strip_whitespace=True)

    # where things are
    database_url: str | None = None
    base_url: str = "http://127.0.0.1:8000"
    host: str = "127.0.0.1"
    port: Annotated[int, Field(ge=1, le=65535)] = 8000

    # the shop, as its tags and papers name it
    shop_name: str = "Hose shop"
    shop_phone: str = ""
    shop_email: str = ""
    shop_address: str = ""

    # how the shop works
    language: str = SOURCE
    label_template_dirs: Annotated[tuple[Path, ...], BeforeValidator(_paths)] = ()
    label_template: str = "hang_tag"
    printer_dpi: Annotated[int, Field(ge=100, le=1200)] = 203
    length_bands: Literal["", "sae", "din"] = ""
    tables_dir: Path | None = None
    proof_first: bool = False
    clocking_sense: ClockingSense = ClockingSense.STANDARD
    gs1_prefix: Annotated[str, Field(pattern=r"^(\d{6,12})?$")] = ""
    signing_key: Path | None = None

    # how many days what is kept of people stays; 0: for ever
    keep_contacts_days: Annotated[int, Field(ge=0, le=36_500)] = 0
    keep_photos_days: Annotated[int, Field(ge=0, le=36_500)] = 0
    keep_reports_days: Annotated[int, Field(ge=0, le=36_500)] = 0

    @classmethod
    def from_env(cls, environ: Mapping[str, str] | None = None, **given: object) -> Self:
        """Settings from the environment; values in ``given`` that are not None take precedence.

        Raises SettingsError naming every variable that is wrong.
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
                Problem(PREFIX + p.field.upper(), p.value, p.message) for p in problems_of(error)
            ) from None

    @field_validator("base_url")
    @classmethod
    def _host_alone(cls, value: str) -> str:
        parts = urlsplit(value)
        if parts.scheme not in ("http", "https") or not parts.netloc or parts.path.strip("/"):
            raise SpecValueError(
                "", None, Message("spec-setting-address", example="https://tags.example.com")
            )
        return value.rstrip("/")

    @field_validator("language")
    @classmethod
    def _known_language(cls, value: str) -> str:
        if value not in LANGUAGES:
            raise SpecValueError("", None, Message("spec-setting-language", languages=tuple(LANGUAGES)))
        return value

    @field_validator("keep_contacts_days", "keep_photos_days", "keep_reports_days")
    @classmethod
    def _not_at_once(cls, value: int) -> int:
        if 0 < value < LEAST_KEPT:
            raise SpecValueError("", None, Message("spec-setting-days", least=LEAST_KEPT))
        return value

    def has_set(self, name: str) -> bool:
        """Whether the shop set this itself, instead of keeping the default."""
        return name in self.model_fields_set

    @property
    def shop_line(self) -> str:
        """Name and phone of the shop as its tags show them; empty where the shop set neither."""
        return ", ".join(
            said
            for name in ("shop_name", "shop_phone")
            if self.has_set(name) and (said := getattr(self, name))
        )

    def tables(self, kept: Iterable[tuple[str, Any]] = ()) -> Tables:
        """The trade's tables with the shop's own rows and its length tolerances.

        ``kept``: the rows that the shop keeps in its database, each with the name of its table. Raises TradeError.
        """
        from tagger.trade.tables import Tables

        return Tables.load(self.tables_dir, self.length_bands or None, kept)

    def keys(self) -> Keys:
        """The keys that sign the shop's tags, as their file is now; none where it is not set. Raises SigningError."""
        from tagger import signing

        return signing.load(self.signing_key) if self.signing_key else signing.NONE

    def template(self, name: str = "", languages: Sequence[str] = ()) -> Template:
        """A label template by its name, else the shop's, in ``languages``.

        Without them in the template's own, if the shop's language is one of those or is not set.
        Raises TemplateError for one that is not there.
        """
        from tagger.printing import template

        found = template.load(name or self.label_template, self.label_template_dirs)
        if not languages and self.has_set("language") and self.language not in found.languages:
            languages = (self.language,)
        return found.in_languages(list(languages)) if languages else found
