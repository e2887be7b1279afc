"""Measuring a thread by a photo beside the scale card, at the bench; nothing is kept."""

from __future__ import annotations

from fastapi import APIRouter, Request
from starlette.responses import HTMLResponse, JSONResponse, Response

from api.bench.page import pdf, render
from api.shared import scale_photo
from api.web.identity import Builder, OwnForm
from api.web.language import language_of, translator_of
from api.web.state import settings_of, templates_of
from tagger.errors import Problem, TaggerError
from tagger.messages import Message
from tagger.papers import scale_card

router = APIRouter()


@router.get("/measure")
def measure(request: Request, me: Builder) -> Response:
    """What to print, how to lay it, and the form for the photo."""
    return _first(request)


@router.get("/measure/card-{paper}.pdf")
def card(request: Request, me: Builder, paper: str) -> Response:
    """The scale card to print, on A4 or Letter."""
    return pdf(
        scale_card.of(language_of(request), paper if paper in scale_card.PAPERS else "a4"), "scale-card"
    )


@router.post("/measure")
def lines(request: Request, me: Builder, form: OwnForm) -> Response:
    """The end as seen from above, with lines to be moved onto it."""
    check = str(form.get("check") or "")[:20]
    try:
        picture, look = scale_photo.take(scale_photo.sent_with(form)[0])
    except TaggerError as error:
        return _first(request, error.problems, check)
    values = scale_photo.started(look, picture, check, translator_of(request))
    title = Message("measure-lines-title")
    return render(request, "measure_lines.html", title=title, here="build", action="/bench/measure", **values)


@router.post("/measure/find")
def find(request: Request, me: Builder, form: OwnForm) -> Response:
    """The lines moved onto what the picture shows near them; to be looked at, then confirmed."""
    try:
        return JSONResponse(scale_photo.find(*scale_photo.sent_with(form)))
    except TaggerError as error:
        return JSONResponse(scale_photo.problems_as_json(error, translator_of(request)), 422)


@router.get("/measure/reading")
def reading(request: Request, me: Builder) -> Response:
    """Diameter and pitch under the lines, and on to what the end can be; ``part``: that alone, for the script."""
    t, asked = translator_of(request), dict(request.query_params)
    values = scale_photo.answered(
        asked, settings_of(request).length_unit, t, identify="/bench/identify", diameter_field="thread_od"
    )
    if "part" in asked:
        html = templates_of(request).get_template("measure/_reading.html").render(t=t, **values)
        return HTMLResponse(html, headers={"Cache-Control": "no-store"})
    status = 422 if values["problems"] else 200
    title = Message("measure-result-title")
    return render(request, "measure_reading.html", status=status, title=title, here="build", **values)


def _first(request: Request, problems: tuple[Problem, ...] = (), check: str = "") -> Response:
    return render(
        request,
        "measure.html",
        title=Message("measure-title"),
        status=422 if problems else 200,
        here="build",
        action="/bench/measure",
        check=check,
        problems=problems,
        field=scale_photo.field,
        **scale_photo.offered(settings_of(request).length_unit),
    )
