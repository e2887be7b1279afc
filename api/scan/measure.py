"""Measuring a thread by a photo beside the scale card, for whoever has no caliper; nothing is kept."""

from __future__ import annotations

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, JSONResponse, Response

from api.scan.pages import page
from api.shared import scale_photo
from api.shared.photos import strangers_photo
from api.web.identity import SameSiteForm
from api.web.language import language_of, translator_of
from api.web.state import settings_of, templates_of
from tagger.errors import Problem, TaggerError
from tagger.papers import scale_card

router = APIRouter(include_in_schema=False)


@router.get("/measure")
def measure(request: Request) -> Response:
    """What to print, how to lay it, and the form for the photo."""
    return _first(request)


@router.get("/measure/card-{paper}.pdf")
def card(request: Request, paper: str) -> Response:
    """The scale card to print, on A4 or Letter."""
    body = scale_card.of(language_of(request), paper if paper in scale_card.PAPERS else "a4")
    return Response(body, media_type="application/pdf", headers=_named("scale-card"))


@router.post("/measure")
def lines(request: Request, form: SameSiteForm) -> Response:
    """The end as seen from above, with lines to be moved onto it."""
    t, check = translator_of(request), str(form.get("check") or "")[:20]
    try:
        with strangers_photo():
            picture, look = scale_photo.take(scale_photo.sent_with(form)[0])
    except TaggerError as error:
        return _first(request, error.problems, check)
    values = scale_photo.started(look, picture, check, t)
    return page(request, "measure_lines.html", title=t("measure-lines-title"), action="/measure", **values)


@router.post("/measure/find")
def find(request: Request, form: SameSiteForm) -> Response:
    """The lines moved onto what the picture shows near them; to be looked at, then confirmed."""
    try:
        with strangers_photo():
            return JSONResponse(scale_photo.find(*scale_photo.sent_with(form)))
    except TaggerError as error:
        return JSONResponse(scale_photo.problems_as_json(error, translator_of(request)), 422)


@router.get("/measure/reading")
def reading(request: Request) -> Response:
    """Diameter and pitch under the lines, and on to what the end can be; ``part``: that alone, for the script."""
    t, asked = translator_of(request), dict(request.query_params)
    values = scale_photo.answered(
        asked, settings_of(request).length_unit, t, identify="/identify", diameter_field="diameter"
    )
    if "part" in asked:
        html = templates_of(request).get_template("measure/_reading.html").render(t=t, **values)
        return HTMLResponse(html, headers={"Cache-Control": "no-store"})
    status = 422 if values["problems"] else 200
    return page(request, "measure_reading.html", status=status, title=t("measure-result-title"), **values)


def _first(request: Request, problems: tuple[Problem, ...] = (), check: str = "") -> Response:
    t = translator_of(request)
    return page(
        request,
        "measure.html",
        status=422 if problems else 200,
        title=t("measure-title"),
        action="/measure",
        csrf="",
        check=check,
        problems=problems,
        field=scale_photo.field,
        **scale_photo.offered(settings_of(request).length_unit),
    )


def _named(name: str) -> dict[str, str]:
    return {"Content-Disposition": f'inline; filename="{name}.pdf"', "Cache-Control": "no-store"}
