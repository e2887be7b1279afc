"""Gauge sheets to print on the bench."""

from __future__ import annotations

from fastapi import APIRouter, Request
from starlette.responses import Response

from api.bench.page import render
from api.shared import gauge_sheets
from api.web.identity import Builder
from api.web.language import translator_of
from api.web.state import tables_of
from tagger.messages import Message

router = APIRouter()


@router.get("/gauges")
def gauges(request: Request, me: Builder) -> Response:
    """Which sheets there are; each opens as a PDF, which everybody may have."""
    offered = gauge_sheets.offered(tables_of(request), translator_of(request))
    return render(request, "gauges.html", title=Message("gauges-page-title"), here="build", **offered)
