"""Gauge sheets for anybody: the page that lists them, and each as a PDF at true scale."""

from __future__ import annotations

from fastapi import APIRouter, Request
from fastapi.responses import Response

from api.scan.pages import page, refused
from api.scan.visitor import reader_of
from api.shared import gauge_sheets
from api.web.state import settings_of
from tagger.errors import Problem, SpecError
from tagger.gauges import sheets, threads

router = APIRouter()


@router.get("/gauges", include_in_schema=False)
def listed(request: Request) -> Response:
    """Which sheets there are, on which paper."""
    reader = reader_of(request)
    return page(request, "gauges.html", title=reader.t("gauges-page-title"), **gauge_sheets.offered(reader.tables, reader.t))  # fmt: skip


@router.get("/gauges/sheet.pdf", include_in_schema=False)
def sheet(request: Request, kind: str = "", paper: str = "a4", family: str = "") -> Response:
    """One sheet in the visitor's language; of thread diameters one family."""
    reader = reader_of(request)
    if kind == "threads" and not family:
        family = str(threads.families(reader.tables)[0])
    try:
        body = sheets.to_pdf(kind, settings_of(request), reader.tables, paper=paper, family=family, language=reader.t.language)  # fmt: skip
    except SpecError as error:
        return refused(request, error, status=404, title=reader.t("gauges-page-title"))
    name = "-".join(part for part in ("gauge", kind, family, paper) if part)
    headers = {"Content-Disposition": f'inline; filename="{name}.pdf"', "Cache-Control": "no-store"}
    return Response(body, media_type="application/pdf", headers=headers)


@router.get("/gauges/hose", include_in_schema=False)
def hose(request: Request, od: str = "", scale: str = "") -> Response:
    """Which standards an outside diameter leaves, as the strips of the sheet have them; it excludes and never rates."""
    reader, left = reader_of(request), None
    problems: tuple[Problem, ...] = ()
    if od or scale:
        try:
            left = gauge_sheets.hoses_left(
                od, scale, settings_of(request).length_unit, reader.tables, reader.t
            )
        except SpecError as error:
            problems = error.problems
    asked = {"od": od[:20], "scale": scale[:20]}
    title = reader.t("gauges-hose-title")
    return page(request, "gauges_hose.html", status=422 if problems else 200, title=title, asked=asked, problems=problems, left=left)  # fmt: skip
