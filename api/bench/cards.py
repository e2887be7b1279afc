"""The fitter's card of a hose assembly, to print from its record."""

from __future__ import annotations

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import NOT_FOUND, pdf, refused
from api.web.identity import Builder
from api.web.language import paper_language
from api.web.state import settings_of, store_of, tables_of
from tagger.errors import TaggerError
from tagger.messages import Message
from tagger.papers import fitters_card
from tagger.record_tag import tags_of

router = APIRouter()


@router.get("/tag/{number}/card.pdf")
def card(request: Request, me: Builder, number: str) -> Response:
    """The card; refused for a hose that must not be used, or whose tag must not be printed yet."""
    store, settings = store_of(request), settings_of(request)
    try:
        known = store.assembly(number)
    except TaggerError as error:
        return refused(request, 404, NOT_FOUND, error)
    try:
        store.refuse_blocked([known.number])
        [tag] = tags_of(store, [known], settings)
        body = fitters_card.of_tag(tag, settings, tables_of(request), paper_language(request))
    except TaggerError as error:
        return refused(request, 422, Message("bench-record-no-card"), error)
    return pdf(body, f"fitters-card-{tag.shown_number}")
