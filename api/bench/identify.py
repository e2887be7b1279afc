"""Identifying an end by measuring it, on a page of its own or in a window over the build page."""

from __future__ import annotations

from typing import Any
from urllib.parse import urlencode

from fastapi import APIRouter, Request
from starlette.responses import HTMLResponse, Response

from api.bench.page import render, spoken
from api.shared import layers, looking
from api.web.identity import Builder
from api.web.language import translator_of
from api.web.state import settings_of, tables_of, templates_of
from tagger import phrases
from tagger.errors import Problem, TaggerError
from tagger.i18n import Translator
from tagger.messages import Message
from tagger.spec import Form, Series
from tagger.trade.identifying import guided, marks
from tagger.trade.identifying.identify import Identification, Measurements, identify
from tagger.trade.identifying.readings import CONES, FLANKS, ORIGINS, SAID, SEATS
from tagger.units import with_unit

router = APIRouter()
_CHOSEN = ("form", "seat", "cone", "flank", "series", "origin", "cannot", "found", "scale", *SAID)
FIELDS = ("thread_od", "thread_id", "tpi", "pitch", "hex", "nose", "tube_od", "flange_od", "bolt_spacing")
_HINTS = {"tpi": "12", "pitch": 1.5}
"""Examples for the fields that are no lengths."""


@router.get("/identify")
def identify_page(request: Request, me: Builder, end: str = "end_a", part: bool = False) -> Response:
    """Show what the measurements can be, best first, and what to measure next."""
    asked = {name: request.query_params.get(name, "").strip() for name in (*_CHOSEN, *FIELDS)}
    found: Identification | None = None
    problems: tuple[Problem, ...] = ()
    if any(asked.values()):
        try:
            given = _measured(asked, settings_of(request).length_unit)
            read = marks.read(given.pop("found") or "", given.pop("scale"), given)
            found = identify(Measurements.read(**read.values), tables_of(request), read.errors)
        except TaggerError as error:
            problems = error.problems
    end = end if end in ("end_a", "end_b") else "end_a"
    cannot = _cannot(asked, found)
    values = {**offered(request), "asked": asked, "found": found, "end": end, "problems": problems}
    values |= {"cannot": cannot, "without": urlencode({**asked, "end": end, "cannot": cannot})}
    values |= {"look": looking.address("/bench/identify/look", {**asked, "end": end})}
    values |= {"already_seen": _already_seen(asked, translator_of(request))}
    if part:
        html = templates_of(request).get_template("bench/_identify.html").render(**spoken(request), **values)
        return HTMLResponse(html, headers={"Cache-Control": "no-store"})
    return render(request, "identify.html", title=Message("bench-identify"), here="build", **values)


@router.get("/identify/look")
def look_page(request: Request, me: Builder, end: str = "end_a") -> Response:
    """One question after another, with pictures, each narrowing what the end can be."""
    asked = {name: request.query_params.get(name, "").strip() for name in (*_CHOSEN, *FIELDS)}
    keeps = {name: text for name, text in asked.items() if name not in guided.STEPS}
    keeps["end"] = end if end in ("end_a", "end_b") else "end_a"
    problems: tuple[Problem, ...] = ()
    values: dict[str, Any] = {}
    try:
        at = looking.Addresses("/bench/identify/look", "/bench/identify", keeps)
        values = looking.shown(guided.read(asked), at, tables_of(request), translator_of(request))
    except TaggerError as error:
        problems = error.problems
    title = Message("identify-looking-title")
    status = 422 if problems else 200
    return render(
        request, "identify_look.html", title=title, here="build", status=status, problems=problems, **values
    )


@router.get("/identify/layers")
def layers_page(request: Request, me: Builder) -> Response:
    """Which standards a hose cannot be, by its layers, its diameters and its lay line."""
    unit = settings_of(request).length_unit
    values, problems = layers.shown(request.query_params, unit, tables_of(request), translator_of(request))
    values |= {"action": "/bench/identify/layers", "problems": problems, "here": "build"}
    title = Message("identify-hose-title")
    return render(request, "identify_layers.html", title=title, status=422 if problems else 200, **values)


def _measured(asked: dict[str, str], unit: str) -> dict[str, str | None]:
    """What was typed, with the unit of the shop at each length that has none."""
    lengths = {name: with_unit(asked[name], unit) for name in FIELDS if name not in _HINTS}
    return {name: value or None for name, value in (asked | lengths).items()}


def offered(request: Request) -> dict[str, Any]:
    """What the form for measurements offers; empty at first."""
    t = translator_of(request)
    return {
        "measures": [(name, _hint(name, t)) for name in FIELDS],
        "forms": [(str(form), t(phrases.form(form))) for form in Form],
        "seats": [(seat, t("bench-identify-seat", seat=seat)) for seat in SEATS],
        "cones": [(cone, t(f"bench-identify-cone-{cone}")) for cone in CONES],
        "flanks": [(flank, t("bench-identify-flank", angle=flank)) for flank in FLANKS],
        "series": [(str(one), t("bench-identify-series", series=str(one))) for one in Series],
        "origins": [(origin, t(f"identify-origin-{origin}")) for origin in ORIGINS],
        "asked": dict.fromkeys((*_CHOSEN, *FIELDS), ""),
        "look": "/bench/identify/look",
        "already_seen": [],
    }


def _already_seen(asked: dict[str, str], t: Translator) -> list[str]:
    """What the eye said already, in words."""
    return [t(guided.told(name, (asked[name],))) for name in SAID if asked[name] in SAID[name]]


def _cannot(asked: dict[str, str], found: Identification | None) -> str:
    """What cannot be measured, once what is asked for next cannot be either."""
    wanted = found.measure_next.feature if found and found.measure_next else ""
    return ",".join(word for word in (asked["cannot"], wanted) if word)


def _hint(name: str, t: Translator) -> str:
    example = _HINTS.get(name)
    if example is None:
        return t("bench-identify-hint", example=27)
    return t.decimal(str(example))
