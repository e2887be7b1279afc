"""The page behind a tag: `/T/NUMBER/DIGITS`, `/t/NUMBER`, and the GS1 Digital Link forms."""

from __future__ import annotations

from fastapi import APIRouter, Request
from fastapi.responses import JSONResponse, RedirectResponse, Response
from markupsafe import Markup

from api.scan import machine, view
from api.scan.fill import fill
from api.scan.find import meant
from api.scan.pages import json_text, kept, page, refused, wants
from api.scan.view import Shop
from api.scan.visitor import reader_of
from api.settings import ClockingSense
from api.shared.known_tag import Tag, assessment_of, find
from api.web.language import translator_of
from api.web.state import keys_of, settings_of, store_of, tables_of
from tagger.code import number as tag_number
from tagger.errors import NumberError, PayloadError, StoreError

router = APIRouter()


@router.get("/T/{number}", include_in_schema=False)
@router.get("/t/{number}", include_in_schema=False)
def by_number(request: Request, number: str) -> Response:
    """A typed number."""
    return show(request, number, None)


@router.get("/T/{number}/{digits}", include_in_schema=False)
@router.get("/t/{number}/{digits}", include_in_schema=False)
def by_link(request: Request, number: str, digits: str) -> Response:
    """The link in the symbol."""
    return show(request, number, digits)


@router.get("/8004/{giai}", include_in_schema=False)
@router.get("/T/{digits}/8004/{giai}", include_in_schema=False)
@router.get("/t/{digits}/8004/{giai}", include_in_schema=False)
def by_giai(request: Request, giai: str, digits: str | None = None) -> Response:
    """GS1 Digital Link, application identifier 8004: company prefix and tag number."""
    return show(request, giai[-tag_number.LENGTH :], digits)


@router.get("/01/{gtin}/21/{serial}", include_in_schema=False)
def by_serial(request: Request, gtin: str, serial: str) -> Response:
    """GS1 Digital Link, a trade item's serial number: the tag number."""
    return show(request, serial, None)


def show(request: Request, number: str, digits: str | None) -> Response:
    """The tag's page, its JSON or its links, as the request wants it."""
    try:
        tag = find(store_of(request), number, digits, tables_of(request), keys_of(request))
    except NumberError as error:
        also = meant(number, translator_of(request))
        return refused(request, error, status=404, typed=number, also=also)
    except (PayloadError, StoreError) as error:
        return refused(request, error, status=404, typed=number)
    return answer(request, tag, request.query_params.get("linkType"))


def answer(request: Request, tag: Tag, link_type: str | None = None) -> Response:
    """The page, the JSON, or the links of a tag."""
    shop = shop_of(request)
    kinds = ("text/html", "application/json", "application/ld+json", "application/linkset+json")
    wanted = wants(request, *kinds)
    if link_type in ("all", "linkset") or wanted == "application/linkset+json":
        return _json(request, machine.linkset(tag, shop, translator_of(request)), "application/linkset+json")
    if target := machine.target(tag, link_type):
        return RedirectResponse(target, status_code=307)
    reader = reader_of(request)
    assessed = assessment_of(tag, reader.tables)
    if wanted == "application/ld+json":
        return _json(request, machine.json_ld(tag, reader, shop), wanted)
    if wanted == "application/json":
        return _json(request, machine.as_json(tag, assessed, shop), wanted)
    values = view.build(tag, assessed, reader, shop)
    return page(
        request,
        keep=True,
        status=200,
        title=reader.t("scan-tag-title", number=values["number"]),
        number=values["number"],
        body=Markup(fill("tag", values, reader.lang)),
        json_ld=json_text(machine.json_ld(tag, reader, shop)),
        links=machine.page_links(tag),
    )


def shop_of(request: Request) -> Shop:
    """Whose pages these are, from the settings."""
    settings = settings_of(request)
    clockwise = settings.clocking_sense == ClockingSense.CLOCKWISE
    return Shop(settings.base_url, settings.shop_name, settings.shop_phone, settings.shop_email, clockwise)


def _json(request: Request, value: object, kind: str) -> Response:
    return kept(request, JSONResponse(value, media_type=kind))
