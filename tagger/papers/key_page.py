"""The key page: the shop's public keys on A4, for who must check a tag without the shop's computers."""

from __future__ import annotations

from typing import Any, Final

from tagger.code.signature import SIGNED_TEXT
from tagger.i18n import Translator
from tagger.papers import document
from tagger.settings import ShopSettings
from tagger.signing import WELL_KNOWN, Keys

_WIDTHS: Final = (16, 74, 80)
_GROUP: Final = 8  # hexadecimal digits that stand together, for who types them


def made(keys: Keys, settings: ShopSettings, language: str | None = None) -> bytes:
    """The page as PDF, in ``language`` (default: the shop's)."""
    t = Translator(language or settings.language)
    title = t("keys-page-title")
    rows = [(str(key.id), t(key.validity()), _grouped(key.public)) for key in keys.keys]
    heading = (t("keys-page-key"), t("keys-page-days"), t("keys-page-public"))
    story: list[Any] = [
        *document.head(settings),
        document.text(title, 15, bold=True),
        document.gap(2),
        document.text(t("keys-page-why")),
        document.gap(3),
        document.table([heading, *rows], _WIDTHS, heading=True),
        document.gap(3),
        document.text(t("keys-page-how", address=settings.base_url + WELL_KNOWN)),
        document.text(t("keys-page-format", text=SIGNED_TEXT), 9),
    ]
    return document.to_pdf(story, title=title, settings=settings, numbered=True)


def _grouped(digits: str) -> str:
    groups = [digits[at : at + _GROUP] for at in range(0, len(digits), _GROUP)]
    half = len(groups) // 2
    return " ".join("\N{NO-BREAK SPACE}".join(line) for line in (groups[:half], groups[half:]))
