"""The trade's words in the visitor's language, and the same words in the other languages."""

from __future__ import annotations

from typing import Any

from fastapi import APIRouter, Request
from fastapi.responses import Response

from api.scan.pages import page, render
from api.scan.visitor import reader_of
from tagger.i18n import LANGUAGES, Translator
from tagger.trade.glossary import TERMS

router = APIRouter()


@router.get("/glossary", include_in_schema=False)
def glossary(request: Request) -> Response:
    """Each word with what it means; ``/glossary#dash_size`` leads to one of them."""
    return page(request, "glossary.html", **_told(reader_of(request).t))


def kept_page(request: Request, lang: str) -> str:
    """The same page for a phone to keep."""
    return render(request, "glossary.html", lang, **_told(Translator(lang)))


def _told(t: Translator) -> dict[str, Any]:
    others = [(language, Translator(language)) for language in LANGUAGES if language != t.language]
    words = [
        {
            "id": term,
            "term": t(f"glossary-term-{term}"),
            "means": t(f"glossary-means-{term}"),
            "others": [(language, other(f"glossary-term-{term}")) for language, other in others],
        }
        for term in TERMS
    ]
    return {"title": t("glossary-title"), "words": words}
