"""Counts, exports, and the description of the API itself."""

from __future__ import annotations

from datetime import UTC, date, datetime
from typing import Annotated, Any

from fastapi import APIRouter, Query, Request
from starlette.responses import Response, StreamingResponse

from api.rest.problem import RESPONSES
from api.rest.shared import MOST_ID, Answer, AsManager, EventOut, TheStore, paged
from api.shared.epcis import document_lines
from api.shared.full_export import archive
from api.web.page_words import page_words, remember_language
from api.web.state import settings_of, templates_of
from tagger.moments import Day, Moment
from tagger.store import Kind

router = APIRouter(responses=RESPONSES)


class TotalsOut(Answer):
    since: date
    registered: int
    printed: int
    reprints: int
    scans: int
    orders: int
    orders_from_tags: int


@router.get("/totals", tags=["figures"], summary="Get totals since a date")
def totals(store: TheStore, token: AsManager, since: Day) -> TotalsOut:
    start = datetime(since.year, since.month, since.day, tzinfo=UTC)
    return TotalsOut(since=since, **vars(store.totals(start)))


@router.get("/events", tags=["exports"], summary="List history events of all tags, oldest first")
def events(
    request: Request,
    response: Response,
    store: TheStore,
    token: AsManager,
    kind: Kind | None = None,
    since: Moment | None = None,
    after: Annotated[int, Query(ge=0, le=MOST_ID, description="ID of the last item received.")] = 0,
    limit: Annotated[int, Query(ge=1, le=1000)] = 500,
) -> list[EventOut]:
    found = store.events(kind=kind, since=since, after=after, limit=limit + 1)
    return [EventOut.of(e) for e in paged(request, response, found, limit, lambda e: e.id)]


@router.get(
    "/epcis",
    tags=["exports"],
    summary="Export the history as one EPCIS 2.0 document",
    response_class=Response,
)
def epcis(
    request: Request, store: TheStore, token: AsManager, after: Annotated[int, Query(ge=0, le=MOST_ID)] = 0
) -> Response:
    lines = document_lines(store, settings_of(request), after=after)
    return StreamingResponse(lines, media_type="application/ld+json")


@router.get(
    "/everything.zip", tags=["exports"], summary="Export all data in open formats", response_class=Response
)
def everything(request: Request, store: TheStore, token: AsManager) -> Response:
    return StreamingResponse(archive(store, settings_of(request).language), media_type="application/zip")


@router.get("/docs", include_in_schema=False)
def docs(request: Request) -> Response:
    """The routes in words; the same as openapi.json says to programs."""
    described: dict[str, Any] = request.app.openapi()
    routes = [
        (method.upper(), path, about.get("summary", ""), [p["name"] for p in about.get("parameters", [])])
        for path, methods in described["paths"].items()
        for method, about in methods.items()
        if path.startswith("/api/")
    ]
    response: Response = templates_of(request).TemplateResponse(
        request,
        "bench/api.html",
        {
            **page_words(request),
            "title": "JSON API",
            "routes": routes,
            "me": None,
            "problems": [],
            "note": "",
        },
    )
    remember_language(request, response)
    return response
