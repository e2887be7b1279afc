"""Languages of the public pages: gettext catalogues, read with babel; English is the source.

Two catalogues a language: ``tagger`` (the trade's words and the fitting steps) and ``api``
(the pages' own sentences). A page's text is looked up in both; a string without a
translation shows in English, and a test names it.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from typing import Final

from fastapi import Request

from api.web.state import settings_of, tables_of
from tagger import words
from tagger.trade.tables import Tables
from tagger.words import Words

LANGUAGES: Final = {"en": "English", "fr": "Français", "es": "Español", "de": "Deutsch"}
_CATALOGUES: Final = (("tagger", "tagger"), ("api", "api"))


@cache
def messages(lang: str) -> dict[str, str]:
    """Every translated string of one language; empty for English."""
    found: dict[str, str] = {}
    for package, domain in _CATALOGUES:
        found |= words.messages(package, lang, domain)
    return found


class Translator:
    """Looks strings up in one language.

    >>> Translator("en")("Length")
    'Length'
    """

    def __init__(self, lang: str) -> None:
        self.lang = lang if lang in LANGUAGES else "en"
        self._messages = messages(self.lang)

    def __call__(self, text: str, **figures: object) -> str:
        found = self._messages.get(text, text)
        return found.format(**figures) if figures else found

    def said(self, text: str) -> str:
        """A sentence that the library put together in English ("has 10 characters, a tag number has 11").

        Its pattern ("has {0} characters, a tag number has {1}") is what the catalogue holds; the
        figures in it are put into the translated pattern. English, or an unknown sentence, stays.
        Families and forms stand in it by their names.
        """
        return Words(self.lang).named(self._said(text))

    def _said(self, text: str) -> str:
        if self.lang == "en" or text in self._messages:
            return self._messages.get(text, text)
        for pattern, message in _patterns(self.lang):
            if found := pattern.fullmatch(text):
                return message.format(*(self._said(part) for part in found.groups()))
        return text


@cache
def _patterns(lang: str) -> list[tuple[re.Pattern[str], str]]:
    """Messages with numbered places, the longest first, as patterns of their English sentences."""
    numbered = [(key, text) for key, text in messages(lang).items() if "{0}" in key]
    return [(as_pattern(key), text) for key, text in sorted(numbered, key=lambda pair: -len(pair[0]))]


def as_pattern(message: str) -> re.Pattern[str]:
    """A pattern for the sentences a message makes.

    >>> as_pattern("has {0} characters").fullmatch("has 10 characters").groups()
    ('10',)
    """
    pieces = re.split(r"\{\d\}", message)
    return re.compile("(.*?)".join(re.escape(piece) for piece in pieces), re.DOTALL)


@dataclass(frozen=True)
class Reader:
    """Who reads the page: a language, with the shop's tables for the figures that are looked up."""

    lang: str
    tables: Tables

    @property
    def words(self) -> Words:
        return Words(self.lang)

    @property
    def t(self) -> Translator:
        return Translator(self.lang)


def reader_of(request: Request) -> Reader:
    """The visitor's language, and the shop's tables."""
    return Reader(choose(request), tables_of(request))


def choose(request: Request) -> str:
    """The visitor's language: the one chosen on the page, else the browser's first that we have,
    else the shop's."""
    for wanted in (request.query_params.get("lang"), request.cookies.get("lang")):
        if wanted in LANGUAGES:
            return str(wanted)
    return accepted(request.headers.get("accept-language", ""), settings_of(request).language)


def accepted(header: str, default: str = "en") -> str:
    """The best of our languages for an ``Accept-Language`` header (RFC 9110, 12.5.4).

    >>> accepted("nl, fr-CA;q=0.8, en;q=0.5"), accepted("zh"), accepted("de;q=0, es")
    ('fr', 'en', 'es')
    """
    ranked = []
    for place, part in enumerate(header.split(",")):
        name, _, weight = part.strip().partition(";")
        try:
            quality = float(weight.strip().removeprefix("q=")) if weight else 1.0
        except ValueError:
            quality = 0.0
        ranked.append((-quality, place, name.split("-")[0].lower()))
    for quality, _, name in sorted(ranked):
        if quality < 0 and name in LANGUAGES:
            return name
    return default
