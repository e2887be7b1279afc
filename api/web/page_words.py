"""What a page template needs to speak the reader's language."""

from __future__ import annotations

from datetime import date, datetime
from typing import Any
from urllib.parse import urlencode

from fastapi import Request
from starlette.responses import Response

from api.web.language import translator_of
from tagger import messages
from tagger.i18n import LANGUAGES
from tagger.i18n.figures import show_date
from tagger.messages import Message
from tagger.store.said import Said
from tagger.words import Words

_YEAR = 365 * 86400


def page_words(request: Request, elsewhere: str = "/bench/sign-in") -> dict[str, Any]:
    """Names for a template, in the language of the request.

    ``t`` renders messages and ``words`` a spec; ``said`` takes a message, what is kept of a print job, or
    somebody's own words;
    ``day`` and ``moment`` show dates; ``quantity`` makes figures for ``t.figure``; ``in_language``
    is the address of this page in another language, or ``elsewhere`` where it answers a form.
    """
    t = translator_of(request)
    words = Words(t.language)

    def said(what: Message | Said | str | None) -> str:
        if isinstance(what, Said):
            return what.text(t)
        return t(what) if isinstance(what, Message) else what or ""

    def day(of: date | None) -> str:
        return show_date(of, t) if of else ""

    def moment(at: datetime) -> str:
        return f"{show_date(at, t)} {at:%H:%M}"

    def in_language(code: str) -> str:
        if request.method != "GET":
            return f"{elsewhere}?{urlencode({'lang': code})}"
        kept = [(name, value) for name, value in request.query_params.multi_items() if name != "lang"]
        return f"{request.url.path}?{urlencode([*kept, ('lang', code)])}"

    return {
        "t": t,
        "words": words,
        "said": said,
        "day": day,
        "moment": moment,
        "quantity": messages,
        "languages": LANGUAGES,
        "in_language": in_language,
    }


def remember_language(request: Request, response: Response) -> None:
    """Keeps the language that was chosen on the page (``?lang``) in this browser."""
    chosen = request.query_params.get("lang")
    if chosen and chosen in LANGUAGES:
        response.set_cookie("lang", chosen, max_age=_YEAR, path="/", samesite="lax")
