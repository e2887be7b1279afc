"""The one list of languages: the folders that hold catalogues."""

from __future__ import annotations

from functools import cache
from importlib import resources
from importlib.resources.abc import Traversable
from types import MappingProxyType
from typing import Final

SOURCE: Final = "en"
"""The language the messages are written in first, and shown in where another lacks one."""

_NAME = "language-name"


def folder(language: str) -> Traversable:
    """Where a language's catalogues lie."""
    return resources.files("tagger.i18n").joinpath(language)


@cache
def _found() -> dict[str, str]:
    names: dict[str, str] = {}
    for place in resources.files("tagger.i18n").iterdir():
        file = place.joinpath("language.ftl")
        if place.is_dir() and file.is_file():
            names[place.name] = _own_name(file.read_text(encoding="utf-8"))
    ordered = sorted(names, key=lambda code: (code != SOURCE, names[code].casefold()))
    return {code: names[code] for code in ordered}


def _own_name(text: str) -> str:
    """What the language calls itself: the line ``language-name = Deutsch`` of its language.ftl."""
    return next(
        line.partition("=")[2].strip()
        for line in text.splitlines()
        if line.partition("=")[0].strip() == _NAME
    )


LANGUAGES: Final = MappingProxyType(_found())
"""Code to the language's own name, English first: {"en": "English", "de": "Deutsch", ...}."""


def negotiate(header: str, default: str = SOURCE) -> str:
    """The best of our languages for an ``Accept-Language`` header (RFC 9110, 12.5.4).

    >>> negotiate("nl, fr-CA;q=0.8, en;q=0.5"), negotiate("zh"), negotiate("DE;q=0, ES")
    ('fr', 'en', 'es')
    """
    from babel import negotiate_locale

    ranked = []
    for place, part in enumerate(header.split(",")):
        name, _, weight = part.strip().partition(";")
        try:
            quality = float(weight.strip().removeprefix("q=")) if weight else 1.0
        except ValueError:
            quality = 0.0
        if quality > 0:
            ranked.append((-quality, place, name))
    wanted = [name for _, _, name in sorted(ranked)]
    found = negotiate_locale(wanted, list(LANGUAGES), sep="-") or ""
    ours = {code.casefold(): code for code in LANGUAGES}  # the header may write "DE"
    return ours.get(found.casefold(), default)
