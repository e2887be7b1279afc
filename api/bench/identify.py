"""Identifying an end by measuring it, on a page of its own or in a window over the build page."""

from __future__ import annotations

from typing import Any

from fastapi import APIRouter, Request
from starlette.responses import HTMLResponse, Response

from api.bench.page import render
from api.web.identity import Builder
from api.web.state import tables_of, templates_of, words_of
from tagger.errors import Problem, TaggerError
from tagger.spec import Form
from tagger.trade.identifying.identify import Identification, Measurements, identify
from tagger.trade.identifying.readings import CONES, SEATS

router = APIRouter()
_CONES = {"outside": "stands out like a nose", "inside": "lies inside like a funnel"}
_CHOSEN = ("form", "seat", "cone")
FIELDS = {
    "thread_od": "Male thread, outside diameter",
    "thread_id": "Female thread, inside diameter",
    "tpi": "Threads per inch",
    "pitch": "or pitch, mm",
    "hex": "Hexagon across flats",
    "tube_od": "Tube outside diameter",
    "flange_od": "Flange head diameter",
    "bolt_spacing": "Bolt spacing, longer side",
}


@router.get("/identify")
def identify_page(request: Request, me: Builder, end: str = "end_a", part: bool = False) -> Response:
    """What the measurements can be, best first, and what to measure next."""
    asked = {name: request.query_params.get(name, "").strip() for name in (*_CHOSEN, *FIELDS)}
    found: Identification | None = None
    problems: tuple[Problem, ...] = ()
    if any(asked.values()):
        try:
            found = identify(
                Measurements.read(**{k: v or None for k, v in asked.items()}), tables_of(request)
            )
        except TaggerError as error:
            problems = error.problems
    end = end if end in ("end_a", "end_b") else "end_a"
    values = {**offered(request), "asked": asked, "found": found, "end": end, "problems": problems}
    if part:
        html = (
            templates_of(request)
            .get_template("bench/_identify.html")
            .render(**values, words=words_of(request))
        )
        return HTMLResponse(html, headers={"Cache-Control": "no-store"})
    return render(request, "identify.html", title="Identify an end", here="/bench/build", **values)


def offered(request: Request) -> dict[str, Any]:
    """What the form for measurements offers; empty at first."""
    return {
        "labels": FIELDS,
        "forms": [(str(form), words_of(request).form(form)) for form in Form],
        "seats": list(SEATS),
        "cones": [(cone, _CONES[cone]) for cone in CONES],
        "asked": dict.fromkeys((*_CHOSEN, *FIELDS), ""),
    }
