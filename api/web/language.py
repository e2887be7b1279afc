"""The language a request is answered in."""

from __future__ import annotations

from fastapi import Request

from api.web.state import settings_of
from tagger.i18n import LANGUAGES, Translator, negotiate


def language_of(request: Request) -> str:
    """The language chosen on the page (``?lang`` or its cookie), else the browser's, else the shop's."""
    for wanted in (request.query_params.get("lang"), request.cookies.get("lang")):
        if wanted in LANGUAGES:
            return str(wanted)
    return negotiate(request.headers.get("accept-language", ""), settings_of(request).language)


def paper_language(request: Request) -> str:
    """The language of a paper for a customer: the one asked for by ``?lang``, else the shop's."""
    wanted = request.query_params.get("lang", "")
    return wanted if wanted in LANGUAGES else settings_of(request).language


def translator_of(request: Request) -> Translator:
    """Messages in the language of the request."""
    return Translator(language_of(request))
