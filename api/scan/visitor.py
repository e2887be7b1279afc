"""Who reads a page: a language, with the shop's tables for the figures that are looked up."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from fastapi import Request

from api.web.language import language_of
from api.web.state import tables_of
from tagger.i18n import Translator
from tagger.trade.tables import Tables


@dataclass(frozen=True)
class Reader:
    """A visitor's language and the shop's tables."""

    lang: str
    tables: Tables

    @cached_property
    def t(self) -> Translator:
        return Translator(self.lang)


def reader_of(request: Request) -> Reader:
    """The visitor of this request."""
    return Reader(language_of(request), tables_of(request))
